import { type Job, type JointPlan, type Notice, type Plan, planJob } from '../packages/core/src/index.ts';
import { type ReadJob, readJob } from '../packages/papers/src/read/index.ts';

/** Job folders held in memory: what a test gives, and a sound file for everything else. */
export type Files = Readonly<Record<string, string | Uint8Array>>;

export const bytesOf = (text: string): Uint8Array => new TextEncoder().encode(text);

/** Torques from 1 N·m to beyond 90 kN·m, 1 % apart: a wrench that serves every bolt. Invented. */
const EVERY_TORQUE = `scale,torque [N·m]\n${Array.from({ length: 1150 }, (_, i) => `${i + 1},${(1.01 ** i).toFixed(4)}`).join('\n')}\n`;

export const SOUND: Files = {
  'job.yaml': `title: Test job
site: Test yard
work-date: 2026-11-25
conditions: { zone: none }
lots:
  - { id: L1, k-class: K2, k: 0.13, variation: 0.03, tested: true, source: suitability test }
  - { id: L2, k-class: K1 }
  - { id: STUDS, k: 0.2, variation: 0.06, tested: true, source: torque test of the lot }
`,
  'tools.yaml': `tools:
  - serial: W-1
    name: click wrench for everything
    kind: click wrench
    repeatability: 2 %
    chart: charts/W-1.csv
    certificate: { number: C-1, serial: W-1, calibrated: 2026-06-01, due: 2027-05-31, uncertainty: 0.5 % }
`,
  'charts/W-1.csv': EVERY_TORQUE,
  'joints.csv': `joint,rule set,layout,bolts,size,grade,system,clamped thickness [mm],lot,bolt 1,direction,seen from
J1,en1090-torque,ring,8,M20,10.9,HV,40,L1,top,clockwise,outside
J2,en1090-combined,2x4,8,M24,10.9,HV,60,L2,corner,clockwise,above
`,
};

export const read = (files: Files = {}): ReadJob =>
  readJob((path) => {
    const file = { ...SOUND, ...files }[path];
    return file === undefined ? 'missing' : typeof file === 'string' ? bytesOf(file) : file;
  });

/** What was planned and what was said while reading; job.yaml must be sound. */
export function planned(files: Files = {}): { readonly job: Job; readonly plan: Plan; readonly notices: readonly Notice[] } {
  const { job, notices } = read(files);
  if (!job) throw new Error(`no job: ${notices.map(({ code }) => code).join(', ')}`);
  return { job, plan: planJob(job), notices };
}

export function jointOf(plan: Plan, tag: string): JointPlan {
  const joint = plan.joints.find((one) => one.tag === tag);
  if (!joint) throw new Error(`joint ${tag} is not in the plan`);
  return joint;
}

/** `code @ file, row, column`: what a notice is about, in one line. */
export const brief = ({ code, place }: Notice): string =>
  `${code} @ ${[place?.file, place?.row, place?.column].filter((part) => part !== undefined).join(', ')}`;
