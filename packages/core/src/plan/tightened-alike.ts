import { type RoundOrder, turnsOf } from '../schedule/schedule.ts';
import type { RoundPlan, RoundSetting } from './interaction-plan.ts';
import type { JointPlan, StepPlan, StepSetting } from './plan.ts';
import { synchronous } from './synchronous.ts';

/** Bolts of a joint that are tightened in the same steps at the same settings. */
export interface TightenedAlike {
  /** of the subgroup they belong to */
  readonly subgroup: string;
  readonly positions: readonly number[];
  readonly steps: readonly StepPlan[];
}

/**
 * The steps a crew carries out at each bolt. Those of the subgroups; where rounds of several settings were opted for, these rounds stand
 * in place of the passes in sequence, each with the setting that it gives the bolt.
 */
export function tightenedAlike({ subgroups, interaction }: JointPlan): TightenedAlike[] {
  const plain = subgroups.map(({ id, positions, tightening }) => ({ subgroup: id, positions, steps: tightening?.steps ?? [] }));
  if (interaction?.mode !== 'several settings a round') return plain;
  return plain.flatMap(({ subgroup, positions, steps }) => {
    const groups = new Map<string, number[]>();
    for (const bolt of positions) {
      const key = interaction.rounds.map(({ settings }) => settings.findIndex(({ bolts }) => bolts.includes(bolt))).join();
      groups.set(key, [...(groups.get(key) ?? []), bolt]);
    }
    return [...groups.values()].map((bolts) => ({ subgroup, positions: bolts, steps: byRounds(steps, interaction.rounds, bolts[0]!) }));
  });
}

const isPass = ({ order, end }: StepPlan): boolean => order === 'sequence' && end.kind !== 'firm contact';

function byRounds(steps: readonly StepPlan[], rounds: readonly RoundPlan[], bolt: number): StepPlan[] {
  const first = steps.findIndex(isPass);
  const final = steps.findLast(isPass);
  if (!final?.setting) return [...steps];
  const { setting } = final;
  const instead = rounds.map(({ way, settings }, at): StepPlan => {
    const own = settings.find(({ bolts }) => bolts.includes(bolt))!;
    return {
      name: `round ${at + 1}` as StepPlan['name'],
      end: { kind: 'stall' },
      order: way === 'in sequence' ? 'sequence' : 'circular',
      setting: atLevel(setting, own),
      source: final.source,
    };
  });
  return [...steps.slice(0, first), ...instead, ...steps.slice(first).filter((step) => !isPass(step))];
}

/** The final setting's tool at another level of its chart: what follows from the torque follows it. */
function atLevel(final: StepSetting, { text, labels, torque }: RoundSetting): StepSetting {
  const share = torque / final.torque;
  const scaled = <Q extends number>(value: Q): Q => (value * share) as Q;
  const { next: _, ...rest } = final;
  return {
    ...rest,
    text,
    labels,
    torque,
    preload: scaled(final.preload),
    preloadLow: scaled(final.preloadLow),
    preloadHigh: scaled(final.preloadHigh),
    ...(final.reaction === undefined ? {} : { reaction: scaled(final.reaction) }),
  };
}

/** The order in which a crew takes the bolts in a step that is such a round; a line holds those taken together. Else undefined. */
export function orderOfRound(plan: JointPlan, step: string): readonly (readonly number[])[] | undefined {
  const { interaction, sequence } = plan;
  if (interaction?.mode !== 'several settings a round') return undefined;
  const way = interaction.rounds.find((_, at) => step === `round ${at + 1}`)?.way;
  return way && linesOf({ star: sequence.list, circular: synchronous(plan) }, way);
}

const linesOf = (lists: Parameters<typeof turnsOf>[0], way: RoundOrder): readonly (readonly number[])[] =>
  turnsOf(lists, way).map((turn) => (typeof turn === 'number' ? [turn] : turn));
