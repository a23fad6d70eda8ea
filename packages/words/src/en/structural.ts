import type { NoticeTexts } from '../notice-texts.ts';

export const structuralTexts = {
  'rotation-not-tabulated': {
    says: 'The table of rotations ends at a bolt length of {limit}; this bolt is {boltLength} long.',
    remedy: 'Find the rotation by a test in a tension calibrator with the steel of the joint, or use another method.',
  },
  'readings-wrong': {
    says: '{found} readings are given, the rule asks for {wanted}.',
    remedy: 'Take the readings it asks for, no more and no fewer.',
  },
} satisfies NoticeTexts<'structural'>;
