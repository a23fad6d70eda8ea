import type { MemberModel } from '../members/member-compliance.ts';
import type { Newton, NewtonMillimetre } from '../quantity.ts';
import type { RoundOrder } from '../schedule/schedule.ts';

/** How the bolts of a joint act on each other, and the rounds it takes to leave them even. */
export interface InteractionPlan {
  readonly model: MemberModel;
  /** force every bolt should end with: the mean preload of the final setting */
  readonly target: Newton;
  /** wanted largest |F − target|, share of target */
  readonly wanted: number;
  /** one setting a round and nothing above the final one; or several, above the target for a while, with the engineer's approval */
  readonly mode: 'one setting a round' | 'several settings a round';
  readonly rounds: readonly RoundPlan[];
  /** what crews are used to, on the same joint */
  readonly custom: readonly RoundPlan[];
  /** the one-setting schedule beside it, where several settings were opted for */
  readonly oneSetting?: readonly RoundPlan[];
}

export interface RoundPlan {
  readonly way: RoundOrder;
  /** settings in use, lowest first, each with its bolts in the order they are tightened; all bolts where there is one */
  readonly settings: readonly RoundSetting[];
  /** largest |F − target| after the round, share of target; (greatest − least)/mean */
  readonly worst: number;
  readonly spread: number;
  /** force of every bolt after the round, bolt 1 first, N, whole */
  readonly force: readonly number[];
  readonly peak: Newton;
  /** pulls in which the nut moves; changes of setting inside the round */
  readonly pulls: number;
  readonly changes: number;
  readonly minutes: number;
  /** work of the tool on the nuts, J */
  readonly energy: number;
}

export interface RoundSetting {
  readonly text: string;
  readonly labels: readonly string[];
  readonly torque: NewtonMillimetre;
  readonly bolts: readonly number[];
}
