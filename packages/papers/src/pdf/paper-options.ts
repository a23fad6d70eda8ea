import type { Organisation } from '../typeset/chrome.ts';
import type { Letters } from './letters.ts';

/** What every printed paper is given beside its content. */
export interface PaperOptions {
  readonly letters: Letters;
  readonly organisation?: Organisation;
  /** instant the paper is said to be made */
  readonly made: Date;
  /** told as the work goes on, so that nobody waits in the dark */
  readonly progress?: (done: number, of: number) => void;
}
