import type { NoticeTexts } from '../notice-texts.ts';

export const rotationalCapacityTexts = {
  'lot-torque-high': {
    says: 'Lot {lot}, assembly {assembly}: it took {found}; {limit} is the most it may take.',
    remedy: 'The combination of lots has failed: clean and lubricate as its maker says and test again, or return it.',
  },
  'lot-damaged': {
    says: 'Lot {lot}, assembly {assembly}: stripped or broken.',
    remedy: 'The combination of lots has failed: set it aside.',
  },
} satisfies NoticeTexts<'rotational-capacity'>;
