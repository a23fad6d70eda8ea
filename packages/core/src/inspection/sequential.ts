import { type Notice, notice } from '../notice/index.ts';
import { done, type Outcome, refused } from '../outcome.ts';
import { ACTION_ON_REJECT, SEQUENTIAL_LIMITS } from './en-1090-inspection.ts';

/**
 * Lines of a sequential plan, from the standard the inspector holds: after n bolts accept with no more than `accept` defects, reject with
 * `reject` or more, else go on. We give no lines of our own: those of EN 1090-2 annex M stand in the standard.
 */
export interface SequentialLines {
  readonly least: number;
  readonly most: number;
  /** defects that still accept, and that reject, after 1, 2, 3 … bolts; `null`: neither yet */
  readonly accept: readonly (number | null)[];
  readonly reject: readonly (number | null)[];
}

export interface SequentialState {
  readonly type: 'A' | 'B';
  readonly lines: SequentialLines;
  readonly inspected: readonly { readonly bolt: string; readonly defect: boolean }[];
  readonly verdict: 'go on' | 'accept' | 'reject';
}

/** Begins a plan; refuses lines that cross, have a gap or do not reach the largest sample, all at once. */
export function beginSequential(type: 'A' | 'B', lines: SequentialLines): Outcome<SequentialState> {
  const limits = SEQUENTIAL_LIMITS[type];
  const faults: Notice[] = [];
  if (lines.least < limits.least || lines.most > limits.most || lines.least > lines.most) {
    faults.push(notice('sequential-limits', { type, least: limits.least, most: limits.most }));
  }
  if (lines.accept.length < lines.most || lines.reject.length < lines.most) faults.push(notice('sequential-short', { most: lines.most }));
  const crossed = lines.accept.findIndex((accept, at) => accept !== null && (lines.reject[at] ?? Number.POSITIVE_INFINITY) <= accept);
  if (crossed >= 0) faults.push(notice('sequential-crossed', { bolts: crossed + 1 }));
  const last = lines.most - 1;
  const [accept, reject] = [lines.accept[last], lines.reject[last]];
  if (typeof accept !== 'number' || typeof reject !== 'number' || reject > accept + 1) {
    faults.push(notice('sequential-undecided', { most: lines.most }));
  }
  return faults.length > 0 ? refused(...faults) : done({ type, lines, inspected: [], verdict: 'go on' });
}

/** One more bolt. Refuses a bolt that was seen before, and one after the verdict. */
export function nextSequential(state: SequentialState, bolt: string, defect: boolean): Outcome<SequentialState> {
  if (state.verdict !== 'go on') return refused(notice('sequential-over', { verdict: state.verdict }));
  if (state.inspected.some((one) => one.bolt === bolt)) return refused(notice('sequential-twice', { bolt }));
  const inspected = [...state.inspected, { bolt, defect }];
  return done({ ...state, inspected, verdict: verdictOf(state.lines, inspected.length, inspected.filter((one) => one.defect).length) });
}

function verdictOf({ least, accept, reject }: SequentialLines, bolts: number, defects: number): SequentialState['verdict'] {
  const at = bolts - 1;
  const rejects = reject[at];
  if (typeof rejects === 'number' && defects >= rejects) return 'reject';
  const accepts = accept[at];
  return bolts >= least && typeof accepts === 'number' && defects <= accepts ? 'accept' : 'go on';
}

/** What a reject triggers. EN 1090-2:2018 12.5.2 and annex M (from memory). */
export const afterReject = ({ type }: Pick<SequentialState, 'type'>): (typeof ACTION_ON_REJECT)['A' | 'B'] => ACTION_ON_REJECT[type];
