import type { NoticeTexts } from '../notice-texts.ts';

export const structuralTexts = {
  'rotation-not-tabulated': {
    says: 'Die Tabelle der Drehwinkel endet bei einer Schraubenlänge von {limit}; diese Schraube ist {boltLength} lang.',
    remedy:
      'Den Drehwinkel durch eine Prüfung im Vorspannkraft-Messgerät mit dem Stahl der Verbindung bestimmen, oder ein anderes Verfahren nehmen.',
  },
  'readings-wrong': {
    says: '{found} Ablesungen sind angegeben, die Regel verlangt {wanted}.',
    remedy: 'Die verlangten Ablesungen nehmen, nicht mehr und nicht weniger.',
  },
} satisfies NoticeTexts<'structural'>;
