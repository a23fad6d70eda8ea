import type { CivilDate } from './date.ts';
import type { Job, Joint, Lot, Tool } from './job/job.ts';
import type { GasketGiven } from './members/members.ts';
import { MPa, mm, Nm } from './quantity.ts';
import { byNutFactor } from './torque/friction.ts';

/** An invented job for tests: one splice, one tool of six gears, one tested lot. Not part of the product. */

const day = (text: string) => text as CivilDate;

export const testTool: Tool = {
  serial: 'T1',
  name: 'invented wrench',
  kind: 'hydraulic',
  arm: mm(180),
  sockets: [],
  chart: {
    scales: [{ name: 'gear' }, { name: 'step' }],
    repeatability: 0.03,
    interpolation: false,
    certificate: { number: 'C1', serial: 'T1', calibrated: day('2026-06-01'), due: day('2027-05-31'), uncertainty: 0.01 },
    settings: Array.from({ length: 132 }, (_, i) => ({
      labels: [String(1 + Math.floor(i / 12)), String(1 + (i % 12))],
      torque: Nm(20 * 1.045 ** i),
    })),
  },
};

export const testLot: Lot = {
  id: 'L1',
  kClass: 'K2',
  tested: true,
  failed: false,
  friction: byNutFactor(0.13, { standard: 'suitability test', provenance: 'certificate' }, 0.03),
};

export const testJoint: Joint = {
  tag: 'J1',
  title: 'splice',
  rule: 'en1090-torque',
  layout: { kind: 'ring', boltCount: 8, circle: mm(600) },
  datum: { boltOne: 'top', direction: 'clockwise', viewedFrom: 'outside' },
  tools: [],
  toolsAtOnce: 1,
  pressure: false,
  access: { reactionPoint: 'neighbouring nut' },
  subgroups: [
    {
      id: 'all',
      positions: [1, 2, 3, 4, 5, 6, 7, 8],
      size: 'M24',
      grade: '10.9',
      system: 'HV',
      clampThickness: mm(48),
      slopedFaces: 0,
      lot: 'L1',
      turned: 'nut',
      retightened: false,
      given: {},
    },
  ],
};

export const testJob = (joints: readonly Joint[] = [testJoint], change: Partial<Job> = {}): Job => ({
  title: 'test',
  site: 'Skerrow Sound',
  workDate: day('2026-11-25'),
  units: 'metric',
  conditions: { wet: false, atHeight: false, zone: 'none' },
  people: [],
  joints,
  tools: [testTool],
  lots: [testLot],
  ...change,
});

/** The test joint with another rule and other words in its one subgroup. */
export const jointWith = (rule: string, subgroup: Partial<Joint['subgroups'][number]>, change: Partial<Joint> = {}): Joint => ({
  ...testJoint,
  ...change,
  rule,
  subgroups: [{ ...testJoint.subgroups[0]!, ...subgroup }],
});

/** A gasketed ring of twelve whose members are known, for tests of how bolts act on each other. */
export const testFlange = (gasket: GasketGiven, change: Partial<Joint> = {}): Joint =>
  jointWith(
    'flange-bolt-stress',
    {
      positions: Array.from({ length: 12 }, (_, i) => i + 1),
      size: 'M20',
      grade: '8.8',
      system: 'plain',
      clampThickness: mm(52),
      given: { boltStress: MPa(290) },
    },
    {
      tag: 'R1',
      layout: { kind: 'ring', boltCount: 12, circle: mm(295) },
      members: {
        kind: 'ring',
        inner: mm(219),
        outer: mm(340),
        thickness: mm(24),
        wall: { thickness: mm(6), side: 'inside' },
        gasket,
      },
      ...change,
    },
  );
