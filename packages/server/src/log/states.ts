import { type Fold, openFold, readEntry } from '@clampwright/record';
import type { Store } from '@clampwright/store';

const MOST_BOOKS = 20;
const ROWS = 1000;

/** The fold of every book lately asked for, kept in memory and brought up to date by what is new. */
export function openStates(store: Store) {
  const states = new Map<string, { fold: Fold; size: number; turn: Promise<unknown> }>();
  return async (job: string): Promise<{ readonly fold: Fold; readonly size: number }> => {
    const state = states.get(job) ?? { fold: openFold(), size: 0, turn: Promise.resolve() };
    // the one asked for last goes last
    states.delete(job);
    states.set(job, state);
    if (states.size > MOST_BOOKS) states.delete(states.keys().next().value!);
    const read = async () => {
      for (let rows = await store.rows(job, state.size, ROWS); rows.length > 0; rows = await store.rows(job, state.size, ROWS)) {
        for (const { bytes } of rows) {
          const kept = readEntry(bytes);
          if (!kept.ok) throw new Error(`entry ${state.size} of ${job} cannot be read`);
          state.fold.add(kept.value);
          state.size += 1;
        }
      }
    };
    const turn = state.turn.then(read, read);
    state.turn = turn.catch(() => undefined);
    await turn;
    return state;
  };
}
