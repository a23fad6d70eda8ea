import type { Organisation } from '../typeset/chrome.ts';
import { ENGLISH_ALONE, type Languages } from '../typeset/text.ts';
import type { Letters } from './letters.ts';

/** What every printed paper is given beside its content. */
export interface PaperOptions {
  readonly letters: Letters;
  readonly organisation?: Organisation;
  /** what the paper speaks, and beneath it; English where nothing is said */
  readonly languages?: Languages;
  /** instant the paper is said to be made */
  readonly made: Date;
  /** told as the work goes on, so that nobody waits in the dark */
  readonly progress?: (done: number, of: number) => void;
}

export const languagesOf = ({ languages }: Pick<PaperOptions, 'languages'>): Languages => languages ?? ENGLISH_ALONE;

const BREATH_MS = 40;

/** Counts the steps of a paper that is composed twice. */
export function twice(steps: number, progress: PaperOptions['progress']): () => Promise<void> {
  const rest = breath();
  let done = 0;
  return () => {
    done += 1;
    progress?.(done, 2 * steps);
    return rest();
  };
}

/** Now and then lets others at the processor: a server that answers, a page that scrolls. */
export function breath(): () => Promise<void> {
  let since = performance.now();
  return async () => {
    if (performance.now() - since < BREATH_MS) return;
    await new Promise((resolve) => setTimeout(resolve));
    since = performance.now();
  };
}
