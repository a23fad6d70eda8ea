import { findGrade } from '../fasteners/find-grade.ts';
import { strengthAt } from '../fasteners/grade.ts';
import { DISASSEMBLY, loosenInSteps } from '../flanges/disassembly.ts';
import type { Job } from '../job/job.ts';
import type { FastenerState } from '../loosening/conditions.ts';
import { type LooseningPlan, planLoosening } from '../loosening/plan-loosening.ts';
import { mayBeReused, type ReuseVerdict } from '../loosening/reuse.ts';
import { type Notice, notice } from '../notice/index.ts';
import { type Millimetre, mm, type NewtonMillimetre, Nmm } from '../quantity.ts';
import { shankTorqueAtYield } from '../torque/torsional-failure.ts';
import type { JointPlan, Plan, SubgroupPlan } from './plan.ts';
import { threadOf } from './resolve-bolt.ts';

/** Bolts of one kind in a joint that is taken apart. */
export interface LooseningOfJoint {
  readonly tag: string;
  readonly bolts: number;
  readonly size: string;
  readonly tool?: string;
  /** absent where nothing says what it was tightened with */
  readonly plan?: LooseningPlan;
  readonly reuse: ReuseVerdict;
  readonly notices: readonly Notice[];
}

/** What somebody says of the joints before they are opened. */
export interface LooseningAsked {
  readonly state: FastenerState;
  /** who gave the joints free; pressure joints hold without */
  readonly releasedBy?: string;
  readonly tags?: readonly string[];
}

/** How the joints of a plan are taken apart again: with the tool, torque and preload they were, or would be, tightened with. */
export function looseningOf(job: Job, plan: Plan, { state, releasedBy, tags }: LooseningAsked): LooseningOfJoint[] {
  const toolBySerial = new Map(job.tools.map((tool) => [tool.serial, tool]));
  return plan.joints
    .filter(({ tag }) => !tags || tags.includes(tag))
    .flatMap((joint) =>
      joint.subgroups.map((subgroup): LooseningOfJoint => {
        const { tightening, size, grade, system, positions } = subgroup;
        const last = tightening?.steps.findLast(({ setting }) => setting)?.setting;
        const tool = last && toolBySerial.get(last.tool);
        const pastYield = tightening?.steps.some(({ end }) => end.kind === 'mark at angle') ?? false;
        const named = {
          tag: joint.tag,
          bolts: positions.length,
          size: `${size} ${grade}`,
          reuse: mayBeReused({ grade, system, galvanised: false, pastYield }),
        };
        if (!tightening || !last || !tool) return { ...named, notices: [notice('loosening-unknown', { joint: joint.tag })] };
        const boltLimit = limitOf(subgroup);
        const found = planLoosening({
          state,
          tightened: Nmm((last.torque / last.preload) * (pastYield ? (tightening.yieldPreload?.value ?? last.preload) : last.preload)),
          preload: tightening.target.value,
          chart: tool.chart,
          list: inSubgroup(joint, subgroup),
          staged: staged(joint, subgroup),
          pressure: joint.permits.pressure,
          ...(boltLimit === undefined ? {} : { boltLimit }),
          ...(tightening.rotation ? { rotation: tightening.rotation.expected } : {}),
          ...(joint.permits.permit === undefined ? {} : { permit: joint.permits.permit }),
          ...(releasedBy === undefined ? {} : { releasedBy }),
        });
        return found.ok
          ? { ...named, tool: tool.serial, plan: found.value, notices: found.value.notices }
          : { ...named, notices: found.notices };
      }),
    );
}

/** What the shank stands elastically with the preload in it: beyond that a seized nut takes the bolt along. */
function limitOf({ size, grade, tightening }: SubgroupPlan): NewtonMillimetre | undefined {
  const [thread, found] = [threadOf(size), findGrade(grade)];
  if (!thread || !found.ok || !tightening) return undefined;
  const strength = strengthAt(found.value, thread.diameter, thread.designation);
  return strength.ok && strength.value.yield !== null
    ? shankTorqueAtYield(strength.value.yield, thread, tightening.target.value, 'elastic')
    : undefined;
}

const inSubgroup = ({ sequence }: JointPlan, { positions }: SubgroupPlan) => {
  const own = new Set(positions);
  return sequence.list.map((bolts) => bolts.filter((bolt) => own.has(bolt))).filter((bolts) => bolts.length > 0);
};

function staged({ layout, permits }: JointPlan, { size }: SubgroupPlan): boolean {
  const diameter = threadOf(size)?.diameter ?? (0 as Millimetre);
  const outside = layout.kind === 'ring' ? (layout.circle ?? mm(0)) : mm(0);
  return (
    permits.pressure ||
    outside > DISASSEMBLY.outsideDiameter ||
    loosenInSteps({ outsideDiameter: outside, thickness: mm(0), boltDiameter: diameter })
  );
}
