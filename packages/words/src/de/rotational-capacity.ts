import type { NoticeTexts } from '../notice-texts.ts';

export const rotationalCapacityTexts = {
  'lot-torque-high': {
    says: 'Los {lot}, Garnitur {assembly}: Sie brauchte {found}; höchstens {limit} sind erlaubt.',
    remedy:
      'Die Zusammenstellung der Lose hat nicht bestanden: reinigen und schmieren, wie ihr Hersteller es sagt, und neu prüfen, oder zurückgeben.',
  },
  'lot-damaged': {
    says: 'Los {lot}, Garnitur {assembly}: ausgerissen oder gebrochen.',
    remedy: 'Die Zusammenstellung der Lose hat nicht bestanden: beiseitelegen.',
  },
} satisfies NoticeTexts<'rotational-capacity'>;
