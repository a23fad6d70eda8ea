import type { NoticeTexts } from '../notice-texts.ts';

export const interactionTexts = {
  'compliance-size': {
    says: 'Eine Nachgiebigkeitsmatrix von {bolts} Schrauben kann nicht verwendet werden; zwischen 1 und {most} geht.',
    remedy: 'Die Verbindung teilen.',
  },
  'compliance-not-square': {
    says: 'Die Nachgiebigkeitsmatrix hat nicht {bolts} Zeilen mit je {bolts} Zahlen.',
    remedy: 'Eine Zeile und eine Spalte für jede Schraube eintragen.',
  },
  'compliance-not-symmetric': {
    says: 'Die Nachgiebigkeitsmatrix ist bei den Schrauben {first} und {second} nicht symmetrisch.',
    remedy:
      'Was Schraube {first} mit Schraube {second} macht, muss gleich dem sein, was {second} mit {first} macht; das Paar neu messen oder eintragen.',
  },
  'compliance-not-definite': {
    says: 'Die Nachgiebigkeitsmatrix ist nicht die einer elastischen Verbindung: Sie ist nicht positiv definit.',
    remedy:
      'Nach einem falschen Vorzeichen, einer falschen Einheit (mm/N) oder einer auf der Diagonale fehlenden Schraubennachgiebigkeit suchen.',
  },
  'members-impossible': {
    says: 'Wie die Schrauben aufeinander wirken, wurde nicht berechnet: Die Maße beschreiben Unmögliches ({what}).',
    remedy: 'In members.yaml berichtigen.',
  },
  'members-unknown': {
    says: 'Wie die Schrauben aufeinander wirken, wurde nicht berechnet; nicht bekannt: {what}.',
    remedy: 'In der Verbindungsliste oder in members.yaml eintragen.',
  },
  'gasket-modulus-needed': {
    says: 'Wie die Schrauben aufeinander wirken, wurde nicht berechnet: Für diese Dichtung ist nichts typisch.',
    remedy: 'Dicke und Modul in members.yaml eintragen (Herstellerdaten, EN 13555).',
  },
  'gasket-modulus-assumed': {
    says: 'Die Steifigkeit der Dichtung ist nur typisch für ihre Art; davon hängt ab, wie die Schrauben aufeinander wirken.',
    remedy: 'Den Modul des Herstellers (EN 13555) für diese Dichtung in members.yaml eintragen.',
  },
  'gasket-load-above': {
    says: 'Die Schrauben zusammen drücken mit {force} auf die Dichtung; ihre größte Montagepressung erlaubt {greatest}.',
    remedy:
      'Den Ingenieur um eine niedrigere Schraubenspannung oder eine andere Dichtung bitten; keine Einstellung bei dieser Schraubenspannung schont sie.',
  },
  'gasket-load-below': {
    says: 'Die Schrauben zusammen drücken mit {force} auf die Dichtung; ihre kleinste Montagepressung verlangt {least}.',
    remedy:
      'Den Ingenieur um eine höhere Schraubenspannung oder eine andere Dichtung bitten; keine Einstellung bei dieser Schraubenspannung bringt sie zum Sitzen.',
  },
  'uneven-by-custom': {
    says: 'Das Anziehen einer Schraube entlastet ihre Nachbarn: Nach {rounds} Durchgängen weichen die Kräfte noch um {spread} ab.',
    remedy:
      'Rundum gehen, bis sich keine Mutter mehr bewegt: mit {more, plural, one {# weiteren Durchgang} other {# weiteren Durchgängen}} rechnen, bis jede Schraube innerhalb von {wanted} ist.',
  },
  'uneven-still': {
    says: 'Nach {rounds} Durchgängen liegt eine Schraube noch {worst} neben ihrem Ziel; verlangt war {wanted}.',
    remedy:
      'Den Ingenieur fragen: andere Dichtung oder anderer Schmierstoff, mehrere Werkzeuge zugleich, oder ein Ablauf mit Kräften über dem Ziel.',
  },
  'peak-above-ceiling': {
    says: 'Während andere angezogen werden, steigt eine Schraube auf {peak}; über {ceiling} kann sie Schaden nehmen.',
    remedy:
      'Den Ingenieur fragen: mehr Durchgänge mit steigenden Einstellungen, mehrere Werkzeuge zugleich, oder eine niedrigere Vorspannkraft.',
  },
  'above-target-approval': {
    says: 'Dieser Ablauf bringt Schrauben zeitweise auf {peak}; das Ziel ist {target}.',
    remedy: 'Der Ingenieur genehmigt den Ablauf für diese Verbindung, und eine zweite Person bestätigt jeden Wechsel der Einstellung.',
  },
  'above-target-refused': {
    says: 'Nach {rule} darf keine Schraube über ihrem Ziel stehen; die für diese Verbindung angegebene größte Schraubenkraft wird nicht genutzt.',
    remedy: 'Mit einer Einstellung je Durchgang anziehen.',
  },
  'several-settings-none': {
    says: 'Unter {cap} wurde kein Ablauf mit mehreren Einstellungen gefunden.',
    remedy: 'Mit einer Einstellung je Durchgang anziehen, oder den Ingenieur um eine andere größte Schraubenkraft bitten.',
  },
} satisfies NoticeTexts<'interaction'>;
