import { type Choice, chooseSetting } from '../chart/choose-setting.ts';
import { levelOf, type Notice, notice } from '../notice/index.ts';
import type { Millimetre } from '../quantity.ts';
import { reactionForce } from '../reaction/reaction.ts';
import type { Tightening } from '../rules/rule-set.ts';
import type { ThreadSize } from '../torque/thread-arm.ts';
import { torqueArm } from '../torque/tightening-torque.ts';
import type { ReadyTool } from './context.ts';
import type { StepPlan, StepSetting } from './plan.ts';

/** Coefficient of variation of friction that is not measured: ±25 % lubricated (NASA NSTS 08307), taken as two standard deviations. */
export const UNMEASURED_VARIATION = 0.125;
/** Limit of V_k of class K2 (EN 14399-1), for a tested lot whose own variation was not entered. */
export const TESTED_VARIATION = 0.06;

export interface SettledSteps {
  readonly steps: readonly StepPlan[];
  readonly notices: readonly Notice[];
}

/**
 * The setting of every step that ends at a set torque: all from one tool where one covers them, else each from the tool
 * that serves it best, and the plan says so. A step no tool serves keeps its torque and gets the reasons.
 */
export function settleSteps(tightening: Tightening, size: ThreadSize, tools: readonly ReadyTool[], tested: boolean): SettledSteps {
  const usable = tools.filter((ready) => ready.usable);
  const found = tightening.steps.map((step) =>
    step.torque ? usable.map((ready) => pick(tightening, size, step, ready, tested)) : undefined,
  );
  const single = bestSingle(found);
  const notices: Notice[] = [];
  const serials = new Set<string>();
  const steps = tightening.steps.map((step, at): StepPlan => {
    const plain: StepPlan = {
      name: step.name,
      end: step.end,
      order: step.order,
      source: step.source,
      ...(step.torque ? { torque: step.torque } : {}),
    };
    const choices = found[at];
    if (!choices) return plain;
    const index = single ?? bestOf(choices);
    const choice = index === undefined ? undefined : choices[index];
    const ready = index === undefined ? undefined : usable[index];
    if (!choice?.ok || !ready) {
      notices.push(...whyNot(tools, choices));
      return plain;
    }
    serials.add(ready.tool.serial);
    if (choice.value.best.interpolated) notices.push(notice('setting-interpolated', { setting: choice.value.best.text }));
    return { ...plain, setting: withReaction(choice.value, ready) };
  });
  if (serials.size > 1) notices.push(notice('several-tools', { tools: [...serials].join(', ') }));
  return { steps, notices: worst(notices) };
}

type Found = ReturnType<typeof chooseSetting>;

function pick(tightening: Tightening, size: ThreadSize, step: Tightening['steps'][number], { tool }: ReadyTool, tested: boolean): Found {
  const { friction } = tightening;
  const arm: Millimetre = friction ? torqueArm(friction, size) : ((step.torque!.wanted / tightening.target.value) as Millimetre);
  // an early step is weighed by its own aim, in proportion to its torque; only the last one meets the ceiling
  const target = step.aim ?? ((step.torque!.wanted / arm) as typeof tightening.target.value);
  return chooseSetting(tool.chart, {
    ...step.torque!,
    arm,
    target,
    aboveCounts: step.aim === undefined || tightening.meaning === 'aim',
    ceiling: step.aim === undefined ? null : (tightening.ceiling?.value ?? null),
    frictionVariation: friction?.variation ?? (tested ? TESTED_VARIATION : UNMEASURED_VARIATION),
  });
}

/** The one tool that serves every step with the least loss, if there is one. */
function bestSingle(found: readonly (readonly Found[] | undefined)[]): number | undefined {
  const asked = found.filter((choices) => choices !== undefined);
  const count = asked[0]?.length ?? 0;
  let best: number | undefined;
  let least = Number.POSITIVE_INFINITY;
  for (let tool = 0; tool < count; tool += 1) {
    const losses = asked.map((choices) => lossOf(choices[tool]!));
    const loss = losses.at(-1)!;
    if (losses.every(Number.isFinite) && loss < least - 1e-12) {
      least = loss;
      best = tool;
    }
  }
  return best;
}

function bestOf(choices: readonly Found[]): number | undefined {
  let best: number | undefined;
  for (let tool = 0; tool < choices.length; tool += 1) {
    if (choices[tool]!.ok && (best === undefined || lossOf(choices[tool]!) < lossOf(choices[best]!))) best = tool;
  }
  return best;
}

const lossOf = (found: Found): number => (found.ok ? found.value.best.loss : Number.POSITIVE_INFINITY);

/** Why no tool serves a step: what each usable chart says, or what keeps the tools from being used at all. */
function whyNot(tools: readonly ReadyTool[], choices: readonly Found[]): Notice[] {
  if (tools.length === 0) return [notice('no-tool', {})];
  if (choices.length > 0) return choices.flatMap((found) => (found.ok ? [] : found.notices));
  return tools.flatMap(({ tool, notices }) => {
    const stops = notices.filter(({ code }) => levelOf(code) === 'stop');
    return stops.length > 0 ? stops : [notice('tool-chart-faulty', { serial: tool.serial })];
  });
}

function withReaction(choice: Choice, { tool }: ReadyTool): StepSetting {
  return {
    ...choice.best,
    tool: tool.serial,
    ...(tool.arm === undefined ? {} : { reaction: reactionForce(choice.best.torque, tool.arm) }),
    ...(choice.next ? { next: choice.next } : {}),
  };
}

/** A tool that is too small or too coarse at several steps is said once, for the last; one that is too large, for the first. */
function worst(notices: readonly Notice[]): Notice[] {
  const kept = new Map<string, Notice>();
  for (const one of notices) {
    const key = 'tool' in one.params ? `${one.code}/${one.params.tool}` : JSON.stringify(one);
    if (one.code !== 'tool-too-large' || !kept.has(key)) kept.set(key, one);
  }
  return [...kept.values()];
}

/** The same reason met at several steps is said once. */
export const unique = (notices: readonly Notice[]): Notice[] => [...new Map(notices.map((one) => [JSON.stringify(one), one])).values()];
