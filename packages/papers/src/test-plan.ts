import {
  byNutFactor,
  civilDate,
  type Job,
  type Joint,
  kN,
  MPa,
  mm,
  Nm,
  type Plan,
  planJob,
  type Setting,
  type Tool,
} from '@clampwright/core';

const day = (text: string) => civilDate(text)!;

/** Three gears of twelve steps, four per cent apart: invented. */
const gears = (lowest: number): Setting[] =>
  Array.from({ length: 36 }, (_, i) => ({
    labels: [String(Math.floor(i / 12) + 1), String((i % 12) + 1)],
    torque: Nm(lowest * 1.045 ** i),
    deviation: 0.012,
    shots: 5,
  }));

const tool = (serial: string, lowest: number, due: string): Tool => ({
  serial,
  name: 'battery wrench, 3 gears of 12 steps',
  kind: 'battery',
  arm: mm(170),
  armRating: Nm(4000),
  sockets: [
    { acrossFlats: mm(41), outerDiameter: mm(58) },
    { acrossFlats: mm(60), outerDiameter: mm(84) },
    { acrossFlats: mm(36.5), outerDiameter: mm(50) },
  ],
  chart: {
    scales: [{ name: 'gear' }, { name: 'step' }],
    settings: gears(lowest),
    certificate: { number: `C-${serial}`, serial, calibrated: day('2026-06-01'), due: day(due), uncertainty: 0.01 },
    repeatability: 0.04,
    interpolation: false,
  },
});

const grid = (rows: number, columns: number) =>
  Array.from({ length: rows * columns }, (_, i) => ({ x: mm((i % columns) * 80), y: mm(Math.floor(i / columns) * 110) }));
const upTo = (count: number, from = 1) => Array.from({ length: count - from + 1 }, (_, i) => from + i);

const common = {
  tools: [],
  toolsAtOnce: 1,
  pressure: false,
  access: { reactionPoint: 'tight neighbouring nut', reactionLimit: kN(90) },
} as const;
const bolt = { slopedFaces: 0, turned: 'nut', retightened: false, given: {} } as const;
const datum = { boltOne: 'seaward corner by the pier', direction: 'clockwise', viewedFrom: 'below' } as const;

export const SPLICE: Joint = {
  ...common,
  tag: 'FB-S1',
  title: 'Footbridge: bottom flange splice',
  rule: 'en1090-torque',
  layout: { kind: 'group', bolts: grid(2, 4) },
  datum,
  tools: ['SK-1'],
  subgroups: [
    { ...bolt, id: 'A', positions: upTo(4), size: 'M24', grade: '10.9', system: 'HV', length: mm(95), clampThickness: mm(56), lot: 'K2' },
    {
      ...bolt,
      id: 'B',
      positions: upTo(8, 5),
      size: 'M24',
      grade: '10.9',
      system: 'HV',
      length: mm(110),
      clampThickness: mm(70),
      lot: 'K3',
    },
  ],
};

export const RING: Joint = {
  ...common,
  tag: 'TB-R1',
  title: 'Tower base ring: lower flange',
  rule: 'en1090-combined',
  layout: { kind: 'ring', boltCount: 72, circle: mm(4200) },
  datum: { boltOne: 'weld seam at the door', direction: 'clockwise', viewedFrom: 'inside' },
  tools: ['SK-2'],
  subgroups: [
    { ...bolt, id: '', positions: upTo(72), size: 'M36', grade: '10.9', system: 'HV', length: mm(210), clampThickness: mm(152), lot: 'K2' },
  ],
};

export const FLANGE: Joint = {
  ...common,
  tag: 'PH/F 1 é',
  title: 'Pump house: suction line',
  rule: 'flange-bolt-stress',
  layout: { kind: 'ring', boltCount: 12, circle: mm(330.2) },
  flange: 'B16.5 NPS 8 Class 300',
  datum: { boltOne: 'top of the pipe', direction: 'counter-clockwise', viewedFrom: 'pump side' },
  pressure: true,
  permit: 'LB-2218',
  tools: ['SK-3'],
  subgroups: [
    {
      ...bolt,
      id: '',
      positions: upTo(12),
      size: '7/8-9 UNC',
      grade: 'A193 B7',
      system: 'plain',
      lot: 'B7',
      given: { boltStress: MPa(345) },
    },
  ],
};

/** No permit, no bolt stress, and a tool nobody knows. */
export const STOPPED: Joint = {
  ...FLANGE,
  tag: 'PH-F4',
  title: 'Pump house: <script>alert("valve")</script> & bonnet',
  datum: { ...FLANGE.datum!, viewedFrom: 'valve side' },
  permit: undefined!,
  tools: ['SK-9'],
  subgroups: FLANGE.subgroups.map((one) => ({ ...one, given: {} })),
};

const { permit: _, ...withoutPermit } = STOPPED;

const certificate = { standard: 'suitability test', provenance: 'certificate' } as const;
const lot = (id: string, k: number) =>
  ({ id, kClass: 'K2', friction: byNutFactor(k, certificate, 0.04), tested: true, failed: false }) as const;

/** The invented yard Skerrow Sound: splice, tower ring, pipe flange, and one joint that stops. */
export const testJob = (joints: readonly Joint[] = [SPLICE, RING, FLANGE, withoutPermit]): Job => ({
  title: 'Skerrow Sound, spring outage',
  site: 'Skerrow Sound tidal yard',
  workDate: day('2026-11-25'),
  units: 'metric',
  conditions: { wet: false, atHeight: true, zone: 'none' },
  people: [{ name: 'Ailsa Rennick', role: 'operator' }],
  joints,
  tools: [tool('SK-1', 300, '2027-06-01'), tool('SK-2', 700, '2026-12-04'), tool('SK-3', 79, '2027-06-01'), tool('SK-4', 79, '2026-10-05')],
  lots: [lot('K2', 0.128), lot('K3', 0.131), lot('B7', 0.17)],
});

export const testPlan = (joints?: readonly Joint[]): Plan => planJob(testJob(joints));
