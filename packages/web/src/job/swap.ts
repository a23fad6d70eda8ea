import { type CivilDate, type Job, type JointPlan, jointWithTool, levelOf, type Notice, type StepPlan, type Tool } from '@clampwright/core';
import type { BodyOf } from '@clampwright/record';

type SwappedSetting = BodyOf<'tool-swapped'>['settings'][number];

/** What it means to go on with another tool. */
export interface Swap {
  readonly tool: Tool;
  readonly settings: readonly SwappedSetting[];
  /** what speaks against it and did not before, or must be known */
  readonly notices: readonly Notice[];
  /** the settings do not cover every step, or something forbids it */
  readonly stops: boolean;
}

/**
 * Settings of another tool for all bolts and steps that the plan gives to `from`, from its own chart, by the same rule set, as the planner would
 * have them. The whole joint is judged again for it: calibration on the day, reaction force, sockets, ignition source.
 */
export function swapTo(job: Job, card: JointPlan, from: string, tool: Tool, on: CivilDate): Swap {
  const planned = jointWithTool(job, card.tag, tool, on);
  const known = new Set(card.reasons.map(alike));
  const notices = (planned?.reasons ?? []).filter((one) => !known.has(alike(one)));
  // rounds of several settings were made from the chart of the planned tool: for another they are the planner's to make
  const several = card.interaction?.mode === 'several settings a round';
  const wanted = card.subgroups.flatMap(({ id, positions, tightening }) =>
    (tightening?.steps ?? []).filter(({ setting }) => setting?.tool === from).map((step) => ({ id, positions, step })),
  );
  const settings = wanted.flatMap(({ id, positions, step: { name } }): SwappedSetting[] => {
    const setting = stepIn(planned, id, name)?.setting;
    if (!setting) return [];
    const { text, torque, reaction } = setting;
    return [
      {
        step: name,
        setting: text,
        positions: [...positions],
        torqueNewtonMillimetre: Math.round(torque),
        ...(reaction === undefined ? {} : { reactionNewton: Math.round(reaction) }),
      },
    ];
  });
  return {
    tool,
    settings,
    notices,
    stops: several || settings.length < wanted.length || settings.length === 0 || notices.some(({ code }) => levelOf(code) !== 'attention'),
  };
}

const alike = ({ code, params }: Notice): string => JSON.stringify([code, params]);

const stepIn = (plan: JointPlan | undefined, subgroup: string, name: string): StepPlan | undefined =>
  plan?.subgroups.find(({ id }) => id === subgroup)?.tightening?.steps.find((step) => step.name === name);
