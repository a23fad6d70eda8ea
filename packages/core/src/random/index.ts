/** Random numbers that follow from a seed: the same ones for the same seed, whoever asks and whenever. */
export { Draws, MOST_SEED } from './draws.ts';
export { philox } from './philox.ts';
