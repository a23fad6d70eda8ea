import { philox } from './philox.ts';

/** Highest whole number that may seed a simulation: 2⁵³ − 1. */
export const MOST_SEED = Number.MAX_SAFE_INTEGER;
const WORD = 0x1_0000_0000;

/** The random numbers of one stream: the same ones for the same seed, run and stream, whoever asks and whenever. */
export class Draws {
  private readonly words = new Uint32Array(4);
  private readonly waiting = new Float64Array(4);
  private left = 0;
  private next = 0;
  private run = 0;
  private stream = 0;
  private readonly low: number;
  private readonly high: number;

  constructor(seed: number) {
    this.low = seed >>> 0;
    this.high = Math.floor(seed / WORD);
  }

  /** Begins a stream anew. */
  start(run: number, stream: number): void {
    this.run = run;
    this.stream = stream;
    this.next = 0;
    this.left = 0;
  }

  /** Uniform in (0, 1). */
  uniform(): number {
    this.block();
    return (this.words[0]! + 0.5) / WORD;
  }

  /** Standard normal: Box and Muller, four from the four words of a counter. */
  normal(): number {
    if (this.left === 0) {
      this.block();
      const { words, waiting } = this;
      for (let pair = 0; pair < 4; pair += 2) {
        const radius = Math.sqrt(-2 * Math.log((words[pair]! + 0.5) / WORD));
        const angle = (words[pair + 1]! * (2 * Math.PI)) / WORD;
        waiting[pair] = radius * Math.cos(angle);
        waiting[pair + 1] = radius * Math.sin(angle);
      }
      this.left = 4;
    }
    this.left -= 1;
    return this.waiting[this.left]!;
  }

  private block(): void {
    philox(this.next, this.stream, this.run, 0, this.low, this.high, this.words);
    this.next += 1;
  }
}
