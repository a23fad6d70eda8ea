import type { NoticeTexts } from '../notice-texts.ts';

export const fastenerTexts = {
  'thread-unknown': {
    says: 'Ein Gewinde {designation} ist nicht bekannt.',
    remedy: 'Schreiben wie M24, M24x2, 3/4-10 UNC oder 1 1/8-8UN.',
  },
  'no-coarse-pitch': {
    says: '{designation} hat keine Regelsteigung; gefertigt wird es mit Steigung {pitches} mm.',
    remedy: 'Die Steigung dazuschreiben: {example}.',
  },
  'grade-unknown': {
    says: 'Eine Festigkeitsklasse oder Güte {grade} ist nicht bekannt.',
    remedy: 'Schreiben wie auf dem Schraubenkopf oder im Zeugnis: 8.8, 10.9, A2-70, A193 B7, F3125 A325.',
  },
  'grade-not-in-size': {
    says: 'Güte {grade} ist für {size} nicht aufgeführt; die größte Größe ist {largest}.',
    remedy:
      'Größe und Güte mit dem Zeugnis vergleichen; für eine Sonderschraube die Vorspannkraft des Ingenieurs bei dieser Verbindung angeben.',
  },
  'no-proof-load': {
    says: 'Güte {grade} hat keine Prüfkraft, also darf keine Vorspannkraft daraus abgeleitet werden.',
    remedy: 'Eine zum Vorspannen bestimmte Güte verwenden, oder der Ingenieur gibt die Vorspannkraft dieser Verbindung an.',
  },
  'nut-unknown': {
    says: '{standard} führt keine Mutter der Klasse {nutClass} für {size}.',
    remedy: 'Mutternklasse und Größe mit dem Zeugnis vergleichen.',
  },
  'hexagon-unknown': {
    says: 'Kopf und Mutter der Familie {product} sind für {size} nicht bekannt.',
    remedy: 'Familie und Größe prüfen; oder die Schlüsselweite messen und bei dieser Verbindung angeben.',
  },
  'washer-unknown': {
    says: '{standard} führt keine Scheibe für {size}.',
    remedy: 'Scheibe und Größe prüfen; oder die Dicke bei dieser Verbindung angeben.',
  },
  'hole-unknown': {
    says: '{standard} führt kein Loch für {size}.',
    remedy: 'Die Größe prüfen; oder den Lochdurchmesser bei dieser Verbindung angeben.',
  },
  'clamped-material-unknown': {
    says: 'Eine Grenzflächenpressung ist für {material} nicht bekannt.',
    remedy: 'Den Werkstoff wie in seiner Norm nennen (S355, C45, EN-GJL-250), oder die Grenze bei dieser Verbindung angeben.',
  },
  'length-not-listed': {
    says: '{product} {size} wird nicht {boltLength} lang gefertigt.',
    remedy: 'Die aufgedruckte Länge auf der Schachtel prüfen; Längen gehen in Schritten von 5 mm.',
  },
} satisfies NoticeTexts<'fastener'>;
