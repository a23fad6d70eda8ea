import type { NoticeTexts } from '../notice-texts.ts';

export const simulationTexts = {
  'simulation-runs': { says: '“{runs}” is not a number of runs.', remedy: 'Give a whole number from 1 to {most}.' },
  'simulation-seed': { says: '“{seed}” is not a seed.', remedy: 'Give a whole number from 0 on; the same seed gives the same figures.' },
  'mistake-unknown': { says: '“{name}” is not a mistake that is played.', remedy: 'Choose from {known}.' },
  'mistake-rate': { says: '“{rate}” is not a rate of {name}.', remedy: 'Give a share of the pulls from 0 to {most}.' },
} satisfies NoticeTexts<'simulation'>;
