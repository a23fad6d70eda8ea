import type { NoticeTexts } from '../notice-texts.ts';

export const modelTexts = {
  'model-broken': {
    says: 'Das Modell kann nicht gelesen werden: Die Datei ist beschädigt oder unvollständig.',
    remedy: 'Noch einmal aus dem Modellierprogramm ausgeben.',
  },
  'model-text': {
    says: 'Der Text des Modells ist hier beschädigt: {problem}.',
    remedy: 'Noch einmal ausgeben; kam es per E-Mail, gepackt schicken lassen.',
  },
  'model-not-step': {
    says: 'Das ist keine IFC-Datei im STEP-Text.',
    remedy: 'IFC ausgeben (Endung .ifc), nicht IFC-XML und kein Bild des Modells.',
  },
  'model-packed': { says: 'Das Modell ist gepackt.', remedy: 'Auspacken: Die IFC-Datei liegt darin.' },
  'model-schema': { says: 'Das Schema {schema} wird nicht gelesen.', remedy: 'Als IFC 2x3, IFC 4 oder IFC 4.3 ausgeben.' },
  'model-unit-missing': {
    says: 'Das Modell nennt seine Längeneinheit nicht; Meter wurden angenommen.',
    remedy: 'Ein bekanntes Maß prüfen.',
  },
  'model-without-bolts': {
    says: 'Das Modell enthält keine Schraube, die verstanden wurde.',
    remedy:
      'Mit Schrauben als mechanischen Verbindungsmitteln ausgeben (IfcMechanicalFastener); viele Programme lassen sie weg, wenn man es nicht verlangt.',
  },
  'fastener-unreadable': { says: 'Dieses Verbindungsmittel kann nicht gelesen werden.', remedy: 'Im Modell ansehen.' },
  'fastener-no-bolt': { says: 'Das ist keine Schraube, sondern {kind}, und wird ausgelassen.', remedy: 'Nichts, wenn es so ist.' },
  'fastener-without-place': {
    says: 'Wo dieses Verbindungsmittel ist, lässt sich nicht sagen: Seine Platzierung fehlt, läuft im Kreis oder hängt an einem Raster.',
    remedy: 'Mit lokalen Platzierungen ausgeben oder die Verbindung von Hand eintragen.',
  },
  'fastener-without-size': {
    says: 'Hier wurde keine Schraubengröße gefunden; gelesen wurde, und keine Größe ist: {tried}.',
    remedy: 'Die Größe in der geschriebenen Liste ergänzen, oder dem Verbindungsmittel im Modell seinen Nenndurchmesser geben.',
  },
  'fastener-without-grade': {
    says: 'Für die Schrauben von „{tag}“ wurde keine Güte gefunden.',
    remedy: 'Die Güte in der geschriebenen Liste ergänzen.',
  },
  'fastener-contradicts': {
    says: 'Das Modell sagt zweierlei über dieses Verbindungsmittel ({what}): {first}, und {second}. Nichts davon wurde übernommen.',
    remedy: 'Den Modellierer fragen und in der geschriebenen Liste ergänzen.',
  },
  'fastener-count': {
    says: 'Das Modell sagt hier {said} Schrauben und zeigt {found}.',
    remedy: 'Mit der Zeichnung vergleichen; nicht gezeigte Stellen stehen nicht in der Liste.',
  },
  'joint-not-flat': {
    says: 'Die Schrauben von „{tag}“ stehen bis zu {off} mm aus einer Ebene heraus.',
    remedy: 'Prüfen, ob sie eine Verbindung sind.',
  },
  'bolts-on-one-spot': {
    says: 'In „{tag}“ {bolts, plural, one {steht eine Schraube} other {stehen # Schrauben}}, wo schon eine andere ist.',
    remedy: 'Das Modell enthält sie vielleicht doppelt: prüfen, bevor die Liste benutzt wird.',
  },
  'joint-by-distance': {
    says: 'Nichts im Modell hält die {bolts, plural, one {Schraube} other {# Schrauben}} von „{tag}“ zusammen; sie wurden nach Abstand gruppiert.',
    remedy: 'Die Verbindung mit der Zeichnung vergleichen und ihr ein Schild geben.',
  },
  'grip-open': { says: 'Die Klemmlänge von „{tag}“ ist offen: {why}.', remedy: 'In der geschriebenen Liste ergänzen.' },
} satisfies NoticeTexts<'model'>;
