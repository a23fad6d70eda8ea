import type { NoticeTexts } from '../notice-texts.ts';

export const ruleTexts = {
  'rule-unknown': {
    says: 'Ein Regelwerk {rule} ist nicht bekannt.',
    remedy: 'Eines von denen wählen, die „clampwright init“ in job.yaml aufführt.',
  },
  'edition-unknown': { says: 'Das Regelwerk hat keine Ausgabe {edition}.', remedy: 'Bekannte Ausgaben: {known}.' },
  'structural-size-too-small': {
    says: '{size} liegt unter M12, der kleinsten Größe, die EN 1090-2 vorspannen lässt.',
    remedy: 'Den Ingenieur um eine andere Größe bitten, oder um eine eigene Vorgabe der Vorspannkraft für diese Verbindung.',
  },
  'grade-not-preloadable': {
    says: 'Güte {grade} darf nach {rule} nicht vorgespannt werden.',
    remedy: 'Die Güte verwenden, für die das Regelwerk gemacht ist, oder der Ingenieur gibt Vorspannkraft und Verfahren vor.',
  },
  'k-class-needed': {
    says: 'Das Verfahren ({method}) braucht die k-Klasse des Loses ({needed}); keine ist angegeben.',
    remedy: 'Die k-Klasse vom Etikett des Loses eintragen.',
  },
  'k-class-insufficient': {
    says: 'Das Verfahren ({method}) braucht k-Klasse {needed}; das Los hat {kClass}.',
    remedy: 'Ein Los der richtigen Klasse verwenden, oder ein Verfahren, das diese annimmt.',
  },
  'lot-untested': {
    says: 'Das Verfahren ({method}) braucht k_m genau dieses Loses; weder Prüfung noch Zeugnis davon ist eingetragen.',
    remedy: 'k_m und V_k aus dem Zeugnis des Loses eintragen, oder eine Eignungsprüfung machen.',
  },
  'clamp-thickness-needed': {
    says: 'Der Winkel hängt von der Klemmlänge ab, die nicht angegeben ist.',
    remedy: 'Σt eintragen: alle Bleche, Futter und Scheiben zwischen Kopf und Mutter.',
  },
  'bolt-length-needed': {
    says: 'Der Drehwinkel hängt von der Schraubenlänge ab, die nicht angegeben ist.',
    remedy: 'Die Nennlänge der Schraube eintragen.',
  },
  'angle-not-tabulated': {
    says: 'Bei {thickness} Klemmlänge gibt die Tabelle keinen Winkel; sie endet bei {limit}.',
    remedy: 'Den Winkel durch eine Verfahrensprüfung an dieser Verbindung bestimmen lassen, oder das Verfahren wechseln.',
  },
  'assembly-needed': {
    says: 'Das Verfahren ({method}) braucht Schraube, Mutter und Scheibe als eine Garnitur zum Vorspannen (EN 14399); die Verbindung nennt kein System oder gewöhnliche Schrauben.',
    remedy:
      'In die Spalte „System“ der Verbindungsliste {needed} schreiben, wie es auf dem Etikett der Lieferung steht, oder ein Verfahren für gewöhnliche Schrauben wählen.',
  },
  'system-needed': {
    says: 'Das Verfahren ({method}) ist für Garnituren {needed} gemacht.',
    remedy: '{needed} verwenden, oder ein anderes Verfahren.',
  },
  'size-not-in-table': {
    says: '{size} hat keinen Wert in {table}.',
    remedy: 'Die gültige Ausgabe lesen, oder der Ingenieur gibt den Wert für diese Verbindung an.',
  },
  'bolt-stress-needed': {
    says: 'Für diesen Flansch ist keine Montagespannung der Schrauben angegeben.',
    remedy: 'Den Ingenieur fragen: Sie folgt aus Dichtung, Flansch und Schrauben zusammen.',
  },
  'bolt-stress-above-yield': {
    says: 'Die Schraubenspannung von {stress} erreicht die Streckgrenze, {yield}.',
    remedy: 'Spannung, Querschnitt und Güte mit dem Ingenieur prüfen.',
  },
  'bolt-stress-high': {
    says: 'Die Schraubenspannung ist {share} der Streckgrenze; mehr als {usual} ist für einen Flansch unüblich.',
    remedy: 'Der Ingenieur bestätigt Dichtungspressung und Flanschverdrehung.',
  },
  'friction-unknown': {
    says: 'Von der Reibung dieses Loses und Schmierstoffs ist nichts bekannt.',
    remedy: 'Einen k-Faktor oder Reibungszahlen mit ihrer Quelle eintragen; eine unbekannte wird nicht durch eine übliche ersetzt.',
  },
  'coefficients-needed': {
    says: 'VDI 2230 braucht die Reibungszahlen von Gewinde und Auflage, keinen k-Faktor.',
    remedy: 'Beide Reibungszahlen eintragen, oder eine Reibungsklasse.',
  },
  'figure-needed': {
    says: 'Die Verbindung soll nach Vorgabe angezogen werden, aber weder Vorspannkraft noch Drehmoment ist angegeben.',
    remedy: 'Vorspannkraft oder Drehmoment des Ingenieurs für diese Verbindung eintragen.',
  },
  'preload-basis-needed': {
    says: 'Ein Drehmoment allein sagt nicht, welche Vorspannkraft es gibt, und eine Vorspannkraft nicht, welches Drehmoment.',
    remedy: 'Den k-Faktor von Los und Schmierstoff eintragen, oder Vorspannkraft und Drehmoment beide.',
  },
  'tested-torque-needed': {
    says: 'Ein kalibrierter Schlüssel wird nach einer Prüfung dieses Loses eingestellt; ein Drehmoment aus Tabelle oder Formel zählt nicht.',
    remedy: 'Vor dem Einbau mindestens drei Garnituren des Loses im Vorspannkraft-Messgerät prüfen und das Ergebnis eintragen.',
  },
} satisfies NoticeTexts<'rule'>;
