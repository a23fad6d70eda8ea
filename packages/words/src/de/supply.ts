import type { NoticeTexts } from '../notice-texts.ts';

export const supplyTexts = {
  'battery-rating': {
    says: 'Akku {serial}: Nennspannung oder Kapazität ist unbekannt oder unsinnig.',
    remedy: 'Beides vom Typenschild lesen, V und Ah.',
  },
  'battery-health': {
    says: 'Akku {serial}: Der Zustand liegt nicht zwischen 0 und 100 %.',
    remedy: '100 % für einen neuen eintragen; weniger nach seinen Ladezyklen.',
  },
  'battery-gauge': {
    says: 'Akku {serial}: „{lit}“ ist keine Ablesung einer Anzeige mit vier Balken.',
    remedy: 'Die leuchtenden Balken zählen: 0 bis 4.',
  },
  'battery-temperature': { says: 'Akku {serial}: Seine Temperatur ist unsinnig.', remedy: '°C des Akkus eintragen, nicht der Luft.' },
  'battery-charge': {
    says: 'Akku {serial}: Seine Ladung liegt unter leer oder über voll.',
    remedy: 'Die Anzeige noch einmal ablesen: 0 bis 4 Balken.',
  },
  'battery-cells': {
    says: 'Akku {serial}: Seine Zellen, Strom oder Abschaltung des Werkzeugs oder das Drehmoment liegt nicht über null.',
    remedy: 'Zellen aus dem Datenblatt des Akkus nehmen, Strom und Abschaltung vom Prüfstand.',
  },
  'gauge-reading': { says: '„{lit}“ ist keine Ablesung einer Anzeige mit vier Balken.', remedy: 'Die leuchtenden Balken zählen: 0 bis 4.' },
  'energy-impossible': {
    says: 'Die Energie eines vollen Akkus ist unbekannt oder nicht über null.',
    remedy: 'V und Ah vom Typenschild lesen.',
  },
  'draw-impossible': {
    says: 'Der Verbrauch einer Schraube liegt nicht über null, oder sein kleinster Wert liegt über dem größten.',
    remedy: 'Aus Drehmoment und Drehwinkel ermitteln, oder aus aufgezeichneten Schritten der Ladeanzeige.',
  },
  'battery-no-working': {
    says: 'Akku {serial} hat {celsius} °C; er arbeitet von {low} bis {high} °C.',
    remedy: 'Einen warm gehaltenen nehmen, oder abkühlen lassen.',
  },
  'battery-no-charging': {
    says: 'Akku {serial} hat {celsius} °C; geladen werden darf er von {low} bis {high} °C.',
    remedy: 'Nie einen laden, der aus dem Frost kommt: zuerst warm werden oder abkühlen lassen.',
  },
  'battery-first-charge': { says: 'Akku {serial} ist neu und nur teilweise geladen.', remedy: 'Vor seinem ersten Einsatz voll laden.' },
  'battery-low': {
    says: 'Akku {serial} zeigt einen Balken oder keinen: Das garantiert nichts.',
    remedy: 'Jetzt entscheiden: wechseln, oder reicht er für die restlichen Schrauben? Nie einen Winkelschritt damit beginnen.',
  },
  'battery-cannot-push': {
    says: 'Der Schritt braucht {torque}; Akku {serial} kann bei {celsius} °C und seiner Ladung {greatest} drücken.',
    remedy: 'Einen warmen und vollen Akku nehmen, einen größeren, oder ein anderes Werkzeug. Die Schraube nicht versuchen.',
  },
  'batteries-too-few': {
    says: '{pulls, plural, one {# Zug ist} other {# Züge sind}} von den vorhandenen Akkus nicht gedeckt; {more, plural, one {# voller mehr ist} other {# volle mehr sind}} nötig.',
    remedy: 'Vor der ersten Verbindung mitbringen oder laden.',
  },
  'batteries-too-weak': {
    says: 'Kein vorhandener Akku schafft sicher auch nur eine dieser Schrauben.',
    remedy: 'Ein Werkzeug mit größerem Akku nehmen, oder eines am Netz.',
  },
  'joint-not-covered': {
    says: 'Die vorhandenen Akkus decken nicht jeden Schritt der Verbindung {joint}.',
    remedy: 'Nicht beginnen, bevor sie es tun.',
  },
  'pull-without-draw': {
    says: 'Was Schraube {bolt} der Verbindung {joint} einem Akku entnimmt, ist nicht bekannt.',
    remedy: 'Drehmoment und Drehwinkel eintragen.',
  },
  'draw-assumed': {
    says: 'Der Verbrauch einer Schraube stützt sich auf {drops, plural, =0 {keinen aufgezeichneten Schritt} one {# aufgezeichneten Schritt} other {# aufgezeichnete Schritte}} der Ladeanzeige: Er ist eine Annahme.',
    remedy: 'Die Schraube aufzeichnen, bei der die Anzeige fällt; jeder Schritt schärft ihn.',
  },
  'drop-count': {
    says: '„{bolts}“ Schrauben zwischen zwei Schritten der Ladeanzeige kann nicht sein.',
    remedy: 'Eintragen, wie viele Schrauben dazwischen fertig wurden.',
  },
  'log-too-short': {
    says: 'Eine Aufzeichnung von {found, plural, =0 {nichts} one {# Ablesung} other {# Ablesungen}} sagt zu wenig; nötig sind {least}.',
    remedy: 'Mehr Ladungen oder Aufträge aufzeichnen. Aus so wenigen wird nichts geschätzt.',
  },
  'log-impossible': {
    says: 'Eine Aufzeichnung enthält Ablesungen unter null oder gar keine, oder ihr Vertrauen liegt nicht zwischen 50 und 100 %.',
    remedy: 'Den Eintrag berichtigen. So, wie er steht, wird nichts daraus gelernt.',
  },
  'works-all-alike': {
    says: 'Alle Aufträge brauchten dieselbe Arbeit: Grundverbrauch und Wirkungsgrad lassen sich nicht trennen.',
    remedy: 'Auch Aufträge mit anderem Drehmoment oder Drehwinkel aufzeichnen.',
  },
  'socket-reading': {
    says: 'Laden unterwegs: Die Sicherung der Steckdose oder der Strom liegt nicht über null.',
    remedy: 'Die Sicherung an der Steckdose oder im Sicherungskasten ablesen; nie raten.',
  },
  'socket-fuse': {
    says: 'Laden unterwegs zöge {current} A; die Steckdose ist mit {fuse} A abgesichert.',
    remedy:
      'Mit weniger Strom laden, oder an einer Steckdose mit größerer Sicherung. Nie eine größere Sicherung in dieselbe Steckdose setzen.',
  },
  'socket-near-fuse': {
    says: 'Laden unterwegs zieht {current} A aus einer mit {fuse} A abgesicherten Steckdose: mehr, als sie auf Dauer geben soll.',
    remedy: 'Immer nur einen Akku, bei laufendem Motor.',
  },
  'supply-reading': {
    says: 'Werkzeug {serial}: Eine Ablesung seiner Versorgung fehlt oder liegt nicht über null.',
    remedy: 'Am laufenden Werkzeug messen.',
  },
  'supply-weak': {
    says: 'Werkzeug {serial}: vorhanden {what}; verlangt {wanted}.',
    remedy: 'Kürzere und dickere Leitung oder Schlauch, eine andere Steckdose, oder eine größere Quelle.',
  },
  'supply-unprotected': {
    says: 'Werkzeug {serial}: kein Fehlerstromschutzschalter.',
    remedy: 'Einen zwischen Steckdose und Werkzeug setzen, bevor es eingesteckt wird.',
  },
  'supply-dry-air': {
    says: 'Werkzeug {serial}: Seine Luft führt kein Öl.',
    remedy: 'Den Öler füllen: Ein trockener Motor verliert Drehmoment.',
  },
  'supply-hose-changed': {
    says: 'Werkzeug {serial}: Sein Schlauch hat eine andere Länge als bei der Kalibrierung.',
    remedy: 'Das Werkzeug mit diesem Schlauch vor der ersten Schraube prüfen.',
  },
  'supply-hose': {
    says: 'Werkzeug {serial}: Die Schläuche sind bis {rating} bar zugelassen; {wanted} bar können anliegen.',
    remedy: 'Schläuche und Kupplungen nehmen, die für die Pumpe zugelassen sind; nach Schnitten und Knicken sehen.',
  },
  'valve-impossible': {
    says: 'Schieber {tag}: Ein Maß, ein Beiwert oder eine Last liegt nicht über null.',
    remedy: 'Sein Datenblatt noch einmal lesen.',
  },
  'valve-limit-missing': {
    says: 'Schieber {tag}: Das größte Spindeldrehmoment des Betreibers ist nicht eingetragen.',
    remedy: 'Schriftlich geben lassen; bis dahin von Hand.',
  },
  'valve-permission-missing': {
    says: 'Schieber {tag}: Niemand vom Betrieb hat erlaubt, ihn zu bewegen.',
    remedy: 'Eintragen, wer es erlaubt hat, und für wann.',
  },
  'valve-direction-missing': {
    says: 'Schieber {tag}: In welche Richtung er öffnet, ist nicht eingetragen.',
    remedy: 'Das Handrad ansehen: Manche öffnen im Uhrzeigersinn.',
  },
  'valve-thermal-binding': {
    says: 'Schieber {tag} wurde bei anderer Temperatur geschlossen: Der Keil kann klemmen.',
    remedy: 'Nicht mit Gewalt. Den Betrieb fragen; die Temperaturen sich ausgleichen lassen.',
  },
  'valve-needs-more': {
    says: 'Schieber {tag} braucht {needed}; der Betreiber erlaubt {limit}.',
    remedy: 'Den Betrieb bitten, den Druck wegzunehmen, oder Packung und Spindel gängig machen.',
  },
  'valve-may-need-more': {
    says: 'Schieber {tag} kann {needed} brauchen; der Betreiber erlaubt {limit}.',
    remedy: 'Bewegt er sich an der Grenze nicht, anhalten und melden. Die Einstellung wird nicht erhöht.',
  },
  'valve-stem-yields': {
    says: 'Schieber {tag}: An der Grenze des Betreibers steht seine Spindel bei {found}; sie fließt bei {allowed}.',
    remedy: 'Den Betreiber um eine Grenze bitten, die die Spindel aushält.',
  },
  'valve-long-unmoved': {
    says: 'Schieber {tag} wurde seit Jahren nicht bewegt.',
    remedy: 'Sachte gängig machen, ein paar Umdrehungen hin und her, von Hand oder mit der niedrigsten Einstellung.',
  },
  'valve-turns-differ': {
    says: 'Schieber {tag}: {turns} Umdrehungen nach Hub und Steigung; ein Wasserwerksschieber dieser Größe macht {low} bis {high}.',
    remedy: 'Gangzahl oder Hub kann falsch sein. Die Umdrehungen von Hand zählen, bevor ein Werkzeug aufgesetzt wird.',
  },
  'valve-few-turns': {
    says: 'Schieber {tag} macht {turns} Umdrehungen: Beide Enden gehören der Hand, und für ein Werkzeug bleibt nichts.',
    remedy: 'Von Hand drehen.',
  },
  'valve-by-hand': { says: 'Schieber {tag}: Keine Einstellung liegt unter {limit}.', remedy: 'Von Hand drehen.' },
} satisfies NoticeTexts<'supply'>;
