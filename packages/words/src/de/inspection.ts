import type { NoticeTexts } from '../notice-texts.ts';

export const inspectionTexts = {
  'moment-unreadable': { says: 'Eine Zeit fehlt oder ist keine.', remedy: 'Datum, Uhrzeit und Zeitzone eintragen.' },
  'inspection-too-early': {
    says: '{hours} h seit der letzten Schraube; geprüft wird ab {from} h.',
    remedy: 'Warten: Frische Verbindungen setzen sich noch und würden zu leicht bestehen.',
  },
  'inspection-too-late': {
    says: '{hours} h seit der letzten Schraube; die Prüfung war innerhalb von {until} h fällig.',
    remedy: 'Trotzdem prüfen, es im Protokoll sagen und den Ingenieur beurteilen lassen.',
  },
  'recheck-open': {
    says: 'Verbindung {joint} wurde seit ihrem letzten Durchgang nicht nachgeprüft.',
    remedy: 'Nach {hours} h noch einmal rundum gehen, bevor Druck daraufkommt.',
  },
  'recheck-too-early': {
    says: 'Verbindung {joint} wurde weniger als {hours} h nach ihrem letzten Durchgang nachgeprüft: Die Dichtung hatte sich noch nicht gesetzt.',
    remedy: 'Jetzt noch einmal rundum gehen, bevor Druck daraufkommt.',
  },
  'inspected-not-drawn': {
    says: 'Schraube {bolt} der Verbindung {joint} gehört nicht zur gezogenen Stichprobe.',
    remedy: 'Die gezogenen Schrauben prüfen; andere dürfen auch angesehen werden, in einem eigenen Protokoll.',
  },
  'inspected-twice': {
    says: 'Schraube {bolt} der Verbindung {joint} steht zweimal im Protokoll.',
    remedy: 'Eine Schraube zählt einmal. Den falschen Eintrag berichtigen.',
  },
  'torque-proves-nothing': {
    says: 'Diese Schrauben werden von ihrem Verfahren über die Streckgrenze gedreht, oder ihr Drehmoment beweist nichts.',
    remedy: 'Markierungen, Fühlerlehren oder Abscherenden ansehen, wie es das Verfahren sagt; keine Drehmomentprüfung.',
  },
  'inspected-with-own-tool': {
    says: 'Werkzeug {tool} hat diese Schrauben angezogen; es kann sie nicht prüfen.',
    remedy: 'Den eigenen kalibrierten Schlüssel des Prüfers verwenden.',
  },
} satisfies NoticeTexts<'inspection'>;
