import type { NoticeTexts } from '../notice-texts.ts';

export const aroundTexts = {
  'loosening-torque': {
    says: 'Das Drehmoment, mit dem angezogen wurde, liegt nicht über null.',
    remedy: 'Eintragen, oder Vorspannkraft und Reibung, aus denen es folgt.',
  },
  'loosening-unknown': {
    says: 'Nichts sagt, womit {joint} angezogen wurde.',
    remedy: 'Erst planen, oder Drehmoment und Werkzeug eintragen; dann lösen.',
  },
  'loosening-release-missing': {
    says: 'Eine Druckverbindung wird erst geöffnet, wenn die Absperrung nachgewiesen ist; eingetragen ist kein Erlaubnisschein oder niemand, der freigegeben hat.',
    remedy: 'Den Erlaubnisschein für Absperrung oder Öffnen der Leitung eintragen und den Namen dessen, der freigegeben hat.',
  },
  'loosening-setting-only': {
    says: '{setting} ist nur zum Lösen.',
    remedy: 'Damit darf nie angezogen werden: Drehrichtung sperren und zurückstellen, bevor die nächste Schraube angezogen wird.',
  },
  'loosening-tool-small': {
    says: 'Losbrechen kann {needed} brauchen; die größte Einstellung ist {largest}.',
    remedy:
      'Ein größeres Werkzeug oder einen Drehmomentvervielfältiger nehmen. Nie den Arm verlängern, nie auf ein Werkzeug unter Last schlagen.',
  },
  'loosening-tool-near': {
    says: 'Losbrechen kann {needed} brauchen: fast alles, was das Werkzeug hat, {largest}.',
    remedy: 'Ein größeres Werkzeug und Rostlöser bereithalten.',
  },
  'loosening-socket': {
    says: 'Losbrechen kann {needed} brauchen; Stecknuss und Antrieb sind bis {rating} zugelassen.',
    remedy: 'Kraftnuss und Antrieb der nächsten Größe nehmen.',
  },
  'loosening-bolt': {
    says: 'Losbrechen kann {needed} brauchen; eine festgefressene Schraube hält nur {limit}.',
    remedy: 'Bei diesem Drehmoment anhalten und anders vorgehen: Rostlöser, Wärme mit Erlaubnisschein, Mutter trennen oder sprengen.',
  },
  'loosening-penetrant': {
    says: 'Solche Muttern fressen oder reißen.',
    remedy: 'Mit Rostlöser tränken, die herausstehenden Gewindegänge säubern und einen Mutternsprenger bereithalten.',
  },
  'lot-test-missing': {
    says: '{file} enthält keine Eignungsprüfung von Los {lot}.',
    remedy: 'Die Reihe unter suitability mit der Kennung dieses Loses eintragen. Bis dahin stehen seine Verbindungen auf Stopp.',
  },
  'lot-friction-twice': {
    says: 'Für Los {lot} sind Reibung und eine Eignungsprüfung eingetragen; es zählt die Prüfung.',
    remedy: 'Eines von beiden behalten.',
  },
  'lot-test-few': {
    says: 'Los {lot}: {found, plural, =0 {keine Garnitur} one {# Garnitur} other {# Garnituren}} geprüft; verlangt sind {wanted}.',
    remedy: 'Mehr Garnituren dieses Loses prüfen.',
  },
  'lot-test-reading': {
    says: 'Los {lot}, Garnitur {assembly}: Eine Ablesung liegt nicht über null.',
    remedy: 'Das Prüfprotokoll noch einmal lesen oder eine weitere Garnitur prüfen.',
  },
  'lot-test-size': { says: 'Los {lot}: Größe oder vorgegebene Vorspannkraft fehlt.', remedy: 'Beides eintragen.' },
  'lot-k-class-none': {
    says: 'Los {lot} erfüllt keine k-Klasse: k_m = {mean}, V_k = {variation}.',
    remedy: 'Nur mit einem Verfahren verwenden, das keine Reibung braucht, oder zurückgeben.',
  },
  'lot-force-low': {
    says: 'Los {lot}: Eine Garnitur erreichte {found}; verlangt sind {wanted}.',
    remedy: 'Das Los hat nicht bestanden: beiseitelegen und ein anderes prüfen.',
  },
  'lot-rotation-low': {
    says: 'Los {lot}: Eine Garnitur drehte weniger, als sie vor dem Versagen muss.',
    remedy: 'Das Los hat nicht bestanden: beiseitelegen und ein anderes prüfen.',
  },
  'lot-rotation-untested': {
    says: 'Los {lot}: Die Drehwinkelreserve wurde nicht gemessen.',
    remedy: 'Messen, wo das Verfahren Schrauben über die Streckgrenze dreht.',
  },
  'lot-test-future': {
    says: 'Los {lot} soll am {tested} geprüft worden sein, nach dem Tag der Arbeit.',
    remedy: 'Das Datum noch einmal lesen.',
  },
  'lot-test-old': {
    says: 'Die Prüfung von Los {lot} ist {days} Tage alt; erlaubt sind {allowed}.',
    remedy: 'Neu prüfen: Schmierstoffe altern.',
  },
  'lot-test-temperature': {
    says: 'Schrauben von Los {lot} liegen {apart} °C von ihrer Prüftemperatur entfernt.',
    remedy: 'Bei der Temperatur der Arbeit prüfen; über {usual} °C Abstand ist die Reibung eine andere.',
  },
  'lot-retest': {
    says: 'Los {lot} wurde nach seiner Prüfung nass oder neu geschmiert.',
    remedy: 'Seine Reibung ist unbekannt: vor der Verwendung neu prüfen.',
  },
  'sample-none': {
    says: 'Keine Verbindung verlangt eine Stichprobe.',
    remedy: 'execution-class in job.yaml eintragen oder die Zahl der Schrauben angeben.',
  },
  'sample-size': {
    says: '„{size}“ Schrauben lassen sich nicht aus {bolts} ziehen.',
    remedy: 'Eine ganze Zahl von 1 bis zur Zahl der Schrauben angeben.',
  },
  'sample-seed': { says: '„{seed}“ ist kein Startwert.', remedy: 'Eine ganze Zahl ab 0 angeben und aufzeichnen.' },
  'sequential-limits': {
    says: 'Ein Plan vom Typ {type} braucht von {least} bis {most} Schrauben.',
    remedy: 'Die Linien der Norm für diesen Typ eintragen.',
  },
  'sequential-short': {
    says: 'Die Linien reichen nicht bis {most} Schrauben.',
    remedy: 'Annahme und Ablehnung für jede Zahl von Schrauben eintragen.',
  },
  'sequential-crossed': {
    says: 'Nach {bolts} Schrauben würde dieselbe Zahl annehmen und ablehnen.',
    remedy: 'Beide Linien noch einmal lesen.',
  },
  'sequential-undecided': {
    says: 'Nach {most} Schrauben muss der Plan annehmen oder ablehnen.',
    remedy: 'Für die letzte Schraube beide Grenzen eintragen, um eins auseinander.',
  },
  'sequential-over': {
    says: 'Das Ergebnis steht fest ({verdict}): Keine weitere Schraube zählt.',
    remedy: 'Einen neuen Plan beginnen, wenn mehr angesehen werden soll.',
  },
  'sequential-twice': {
    says: 'Schraube {bolt} wurde schon angesehen.',
    remedy: 'Die nächste gezogene Schraube nehmen; eine Schraube zählt einmal.',
  },
  'gap-none': { says: 'Kein Spalt wurde abgelesen.', remedy: 'An 4 oder 8 Stellen rund um den Flansch ablesen.' },
  'gap-points': { says: 'Durchgang {pass} hat {points} Ablesungen.', remedy: 'Den Spalt an 4 oder 8 Stellen ablesen.' },
  'gap-negative': { says: 'Durchgang {pass}, Stelle {point}: Ein Spalt liegt nicht unter null.', remedy: 'Noch einmal ablesen.' },
  'gap-uneven': {
    says: 'Der Spalt weicht rund um den Flansch um {spread} ab; erlaubt ist {allowed}.',
    remedy: 'Anhalten. Die enge Seite entlasten, die weite Seite mit niedrigen Einstellungen beiziehen und neu ablesen.',
  },
} satisfies NoticeTexts<'around'>;
