import type { Organisation } from '@clampwright/papers/out';
import type { Store } from '@clampwright/store';
import { openCheckpoints } from './checkpoints.ts';
import { type RateLimit, rateLimit } from './limits.ts';
import { type Live, openLive } from './live.ts';
import { type LogKey, logKey, type Yard, yardOf } from './log-key.ts';
import { type Metrics, openMetrics } from './metrics.ts';
import { openStates } from './states.ts';

/** What the handlers work with. */
export interface Context {
  readonly store: Store;
  readonly log: LogKey;
  readonly yard: Yard;
  readonly now: () => Date;
  /** over TLS: cookies are marked so */
  readonly secure: boolean;
  /** whose reports it hands out */
  readonly organisation: Organisation | undefined;
  readonly states: ReturnType<typeof openStates>;
  readonly checkpoints: ReturnType<typeof openCheckpoints>;
  readonly live: Live;
  readonly metrics: Metrics;
  /** by name, and by address: a yard may share one */
  readonly signIns: RateLimit;
  readonly signInsFrom: RateLimit;
  readonly enrolments: RateLimit;
  readonly questions: RateLimit;
  /** aborted when the server stops: streams end */
  readonly stopping: AbortController;
}

export interface ContextOptions {
  readonly now?: () => Date;
  readonly secure?: boolean;
  readonly organisation?: Organisation;
}

export async function openContext(
  store: Store,
  { now = () => new Date(), secure = false, organisation }: ContextOptions = {},
): Promise<Context> {
  const log = await logKey(store);
  return {
    store,
    log,
    yard: await yardOf(store),
    now,
    secure,
    organisation,
    states: openStates(store),
    checkpoints: openCheckpoints(store, log),
    live: openLive(async (job) => (await store.tail(job)).size),
    metrics: openMetrics(),
    signIns: rateLimit({ most: 10, seconds: 600, now }),
    signInsFrom: rateLimit({ most: 60, seconds: 600, now }),
    enrolments: rateLimit({ most: 10, seconds: 600, now }),
    questions: rateLimit({ most: 3000, seconds: 60, now }),
    stopping: new AbortController(),
  };
}
