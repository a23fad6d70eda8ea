import { gearOf, type SettingChart } from '../chart/setting-chart.ts';
import type { Job, Joint, Tool } from '../job/job.ts';
import type { Millimetre } from '../quantity.ts';
import type { PreloadWindow } from '../scatter/all-inside.ts';
import type { ScatterSource } from '../scatter/contributions.ts';
import { turnsOf } from '../schedule/schedule.ts';
import type {
  SimulatedJob,
  SimulatedJoint,
  SimulatedPart,
  SimulatedRound,
  SimulatedSetting,
  TorqueSetting,
} from '../simulation/simulated-job.ts';
import type { NotSimulated } from '../simulation/simulation-result.ts';
import { embeddingOf } from '../stiffness/embedding.ts';
import { type InteractionTask, interactionTask } from './interaction-task.ts';
import type { JointPlan, Plan, StepPlan, StepSetting, SubgroupPlan, TighteningPlan } from './plan.ts';
import { jointKind } from './plan-interaction.ts';
import { preloadWindow } from './preload-scatter.ts';
import { threadOf } from './resolve-bolt.ts';

/** Faces under head and nut, and one joint between plates, machined or blasted: what a steel joint has at least. Own choice. */
const EMBEDDING = embeddingOf('axial', '10<=Rz<40', 2, 1);

/** A plan as it is played, and the joints that cannot be: a plan that stops, an end signal that no torque sets. */
export function simulatedJob(job: Job, plan: Plan): { readonly job: SimulatedJob; readonly notSimulated: readonly NotSimulated[] } {
  const tools = job.tools.map(({ serial, chart }) => ({ serial, certificate: chart.certificate.uncertainty / 2 }));
  const lots = [...new Set(plan.joints.flatMap(({ subgroups }) => subgroups.map(lotOf)))].sort();
  const byTag = new Map(job.joints.map((joint) => [joint.tag, joint]));
  const places: Places = { tools: job.tools, toolAt: new Map(tools.map(({ serial }, at) => [serial, at])), lots };
  const tasks = new Map<string, InteractionTask | undefined>();
  const joints: SimulatedJoint[] = [];
  const notSimulated: NotSimulated[] = [];
  for (const planned of plan.joints) {
    const joint = byTag.get(planned.tag)!;
    const why = whyNot(planned);
    if (why) notSimulated.push({ tag: planned.tag, why });
    else joints.push(simulatedJoint(joint, planned, places, planned.interaction && taskOf(joint, planned, tasks)));
  }
  return { job: { tools, lots, joints }, notSimulated };
}

interface Places {
  readonly tools: readonly Tool[];
  readonly toolAt: ReadonlyMap<string, number>;
  readonly lots: readonly string[];
}

/** Joints of one kind share one matrix. */
function taskOf(joint: Joint, planned: JointPlan, tasks: Map<string, InteractionTask | undefined>): InteractionTask | undefined {
  const key = jointKind(joint, planned);
  if (!tasks.has(key)) {
    const found = interactionTask(joint, planned);
    tasks.set(key, found?.ok ? found.value : undefined);
  }
  return tasks.get(key);
}

const lotOf = ({ lot, size, grade }: SubgroupPlan): string => lot ?? `${size} ${grade}`;

/** Snug brings the plies together, a re-check comes hours later: neither sets the preload. */
const played = ({ steps }: TighteningPlan): readonly StepPlan[] =>
  steps.filter(({ end, name }) => end.kind !== 'firm contact' && name !== 're-check');

function whyNot({ subgroups }: JointPlan): NotSimulated['why'] | undefined {
  for (const { tightening } of subgroups) {
    if (!tightening) return 'stops';
    const steps = played(tightening);
    if (steps.some(({ torque, setting }) => torque && !setting)) return 'stops';
    const turns = steps.some(({ end }) => end.kind === 'mark at angle');
    if (!steps[0]?.setting || steps.some(({ setting, end }) => !setting && end.kind !== 'mark at angle')) return 'no set torque';
    if (turns && tightening.resilience === undefined) return 'rotation unknown';
  }
  return undefined;
}

function simulatedJoint(joint: Joint, planned: JointPlan, places: Places, task: InteractionTask | undefined): SimulatedJoint {
  const gasket =
    planned.flange !== undefined ||
    joint.members?.kind === 'standard flange' ||
    (joint.members?.kind === 'ring' && joint.members.gasket !== undefined);
  const parts = planned.subgroups.map((subgroup) => partOf(subgroup, places, gasket));
  return task && planned.interaction
    ? {
        tag: planned.tag,
        parts,
        rounds: playedRounds(planned, places, task),
        members: { compliance: task.task.compliance, gasketSet: task.members.gasketSet },
      }
    : { tag: planned.tag, parts, rounds: plannedRounds(planned, places) };
}

function partOf(subgroup: SubgroupPlan, { lots }: Places, gasket: boolean): SimulatedPart {
  const tightening = subgroup.tightening!;
  const of = (source: ScatterSource) => tightening.contributions?.find((one) => one.source === source)?.variation ?? 0;
  const { resilience, yieldPreload, target } = tightening;
  return {
    bolts: subgroup.positions.map((position) => position - 1),
    lot: lots.indexOf(lotOf(subgroup)),
    lotMean: of('lot mean'),
    boltToBolt: of('bolt to bolt'),
    target: target.value,
    window: windowOf(tightening),
    pitch: threadOf(subgroup.size)!.pitch,
    ...(resilience === undefined ? {} : { resilience }),
    ...(gasket ? {} : { embedding: EMBEDDING }),
    ...(yieldPreload ? { yield: yieldPreload.value } : {}),
  };
}

/** A method that ends at an angle means bolts to reach yield: nothing is too much then but what its own angle allows. */
const windowOf = (tightening: TighteningPlan): PreloadWindow => ({
  ...preloadWindow(tightening),
  ...(played(tightening).at(-1)?.end.kind === 'mark at angle' ? { high: Number.MAX_VALUE } : {}),
});

/** Step by step, each bolt by itself, in the order of the sequence. */
function plannedRounds({ subgroups, sequence, boltCount }: JointPlan, places: Places): SimulatedRound[] {
  const turns = sequence.list.map((bolts) => bolts.map((bolt) => bolt - 1));
  const steps = subgroups.map(({ tightening }) => played(tightening!));
  return Array.from({ length: Math.max(...steps.map(({ length }) => length)) }, (_, round) => {
    const settingOf = new Array<number>(boltCount).fill(-1);
    const settings: SimulatedSetting[] = [];
    for (const [at, { positions, tightening }] of subgroups.entries()) {
      const step = steps[at]![round];
      if (!step) continue;
      settings.push(settingFor(step, tightening!, places));
      for (const position of positions) settingOf[position - 1] = settings.length - 1;
    }
    return { turns, settings, settingOf };
  });
}

function settingFor({ setting, end }: StepPlan, tightening: TighteningPlan, places: Places): SimulatedSetting {
  if (setting) return torqueSetting(setting, tightening, places);
  const { torque, preload } = tightening.steps.findLast((step) => step.setting)!.setting!;
  const { angle, minus, plus } = end as Extract<StepPlan['end'], { kind: 'mark at angle' }>;
  return { kind: 'angle', arm: torque / preload, angle, minus, plus };
}

/** The rounds of a joint whose bolts act on each other, as its plan has them. */
function playedRounds(
  { interaction, subgroups, boltCount }: JointPlan,
  places: Places,
  { task, final }: InteractionTask,
): SimulatedRound[] {
  const { tightening } = subgroups[0]!;
  const arm = final.torque / final.preload;
  return interaction!.rounds.map(({ way, settings }) => {
    const settingOf = new Array<number>(boltCount).fill(-1);
    for (const [at, { bolts }] of settings.entries()) for (const bolt of bolts) settingOf[bolt - 1] = at;
    return {
      turns: turnsOf(task, way).map((bolts) => (typeof bolts === 'number' ? [bolts] : bolts)),
      settings: settings.map(({ torque }) => torqueSetting({ tool: final.tool, torque, preload: torque / arm }, tightening!, places)),
      settingOf,
    };
  });
}

function torqueSetting(
  { tool, torque, preload }: Pick<StepSetting, 'tool'> & { readonly torque: number; readonly preload: number },
  { contributions }: TighteningPlan,
  { tools, toolAt }: Places,
): TorqueSetting {
  const at = toolAt.get(tool)!;
  const arm = torque / preload;
  return {
    kind: 'torque',
    tool: at,
    repeatability: contributions?.find(({ source }) => source === 'repeatability')?.variation ?? 0,
    level: preload,
    arm: arm as Millimetre,
    beside: torquesBeside(tools[at]!.chart, torque).map((other) => other / arm),
  };
}

/** Torques one step above and below on the same gear: what a hand may set by mistake. */
function torquesBeside({ settings }: SettingChart, torque: number): number[] {
  const at = settings.findIndex((one) => one.torque === torque);
  if (at < 0) return [];
  return [settings[at - 1], settings[at + 1]].flatMap((one) =>
    one && !one.looseningOnly && gearOf(one) === gearOf(settings[at]!) ? [one.torque] : [],
  );
}
