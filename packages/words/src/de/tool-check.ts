import type { NoticeTexts } from '../notice-texts.ts';

export const toolCheckTexts = {
  'check-empty': { says: 'Die Prüfung hat keine Ablesung.', remedy: 'Drei Züge bei der Arbeitseinstellung machen und jeden eintragen.' },
  'check-reading': { says: 'Zug {shot} ist kein Drehmoment über null.', remedy: 'Eintragen, was die Referenz zeigte.' },
  'check-limit': {
    says: 'Die Prüfung hat kein Drehmoment zum Vergleichen, oder ihre Grenze liegt nicht zwischen 0 und 50 %.',
    remedy: 'Beides eintragen.',
  },
  'check-failed': {
    says: 'Ein Zug oder der Mittelwert liegt {worst} neben {expected}; die Grenze ist {limit}.',
    remedy: 'Das Werkzeug beiseitelegen. Jede Schraube noch einmal ansehen, die es seit seiner letzten guten Prüfung gedreht hat.',
  },
  'check-few-shots': {
    says: 'Nur {shots, plural, one {# Zug} other {# Züge}}: Das sagt nichts über die Streuung.',
    remedy: '{wanted} Züge machen.',
  },
  'certificate-word-missing': { says: 'Dem abgetippten Kalibrierschein fehlt: {word}.', remedy: 'Auf dem Papier lesen und eintragen.' },
  'certificate-uncertainty-absurd': {
    says: 'Die Unsicherheit des Kalibrierscheins liegt nicht zwischen 0 und 20 %.',
    remedy: 'Die erweiterte Unsicherheit (k = 2) als Anteil der Ablesung eintragen.',
  },
  'certificate-other-serial': {
    says: 'Der Kalibrierschein gilt für Seriennummer {serial}; das Werkzeug ist {tool}.',
    remedy:
      'Eine Einstelltabelle gehört zu einer Seriennummer: den Kalibrierschein dieses Werkzeugs besorgen, oder das andere Werkzeug nehmen.',
  },
  'certificate-dates-crossed': {
    says: 'Kalibriert am {calibrated}, fällig am {due}: Das kann nicht sein.',
    remedy: 'Beide Daten noch einmal lesen.',
  },
  'certificate-from-future': {
    says: 'Der Kalibrierschein sagt kalibriert am {calibrated}, nach dem Tag der Arbeit.',
    remedy: 'Das Datum noch einmal lesen, oder den Tag der Arbeit.',
  },
  'certificate-unchecked': {
    says: 'Niemand hat den abgetippten Kalibrierschein gegen das Papier gelesen.',
    remedy: 'Eine zweite Person liest jede Zahl laut vom Papier und bestätigt.',
  },
  'certificate-same-person': {
    says: '{person} hat den Kalibrierschein abgetippt und kann ihn nicht auch prüfen.',
    remedy: 'Eine andere Person liest ihn gegen das Papier.',
  },
} satisfies NoticeTexts<'tool-check'>;
