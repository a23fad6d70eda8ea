import { ASSEMBLY_CHECKS, CAUTIONS, ROUND_ORDERS } from '@clampwright/core';
import { z } from 'zod';

const text = z.string();
const number = z.number();
const count = z.int().nonnegative();
const position = z.int().positive();
const positions = z.array(position);
const share = number.describe('a fraction: 0.04 is 4 %');
const force = number.describe('N');
const torque = number.describe('N·mm');
const length = number.describe('mm');
const angle = number.describe('rad');
const date = z.string().regex(/^\d{4}-\d{2}-\d{2}$/);

const source = z.strictObject({
  standard: text,
  edition: text.optional(),
  clause: text.optional(),
  provenance: z.enum(['published', 'computed', 'memory', 'common-practice', 'certificate', 'engineer']),
});
const cited = (value: typeof number) => z.strictObject({ value, source });
const place = z.strictObject({
  file: text.optional(),
  sheet: text.optional(),
  row: position.optional(),
  column: text.optional(),
  letter: text.optional(),
  path: text.optional(),
  read: text.optional(),
});
const measure = z.strictObject({ dimension: z.enum(['force', 'torque', 'length', 'stress', 'angle', 'percent']), value: number });
const notice = z
  .strictObject({ code: text, params: z.record(z.string(), z.union([text, number, measure])), place: place.optional() })
  .describe('what is wrong; texts are made from the code. Codes are never used again for something else');

const point = z.strictObject({ x: length, y: length });
const layout = z.discriminatedUnion('kind', [
  z.strictObject({ kind: z.literal('ring'), boltCount: position, circle: length.optional() }),
  z.strictObject({ kind: z.literal('group'), bolts: z.array(point), stiffest: point.optional() }),
]);
const datum = z.strictObject({ boltOne: text, direction: z.enum(['clockwise', 'counter-clockwise']), viewedFrom: text });

const plainEnd = <K extends string>(kind: K) => z.strictObject({ kind: z.literal(kind) });
const end = z.discriminatedUnion('kind', [
  plainEnd('firm contact'),
  plainEnd('stall'),
  z.strictObject({ kind: z.literal('mark at angle'), angle, minus: angle, plus: angle }),
  plainEnd('spline off'),
  plainEnd('outer socket stops'),
  plainEnd('indicator starts to flatten'),
  z.strictObject({ kind: z.literal('feeler refused'), thickness: length }),
  plainEnd('no nut moves'),
]);
const chosen = {
  labels: z.array(text),
  text,
  torque,
  preload: force,
  preloadLow: force,
  preloadHigh: force,
  loss: share,
  interpolated: z.boolean(),
};
const step = z.strictObject({
  name: z.enum(['snug', 'first step', 'second step', 'round 1', 'round 2', 'round 3', 'circular round', 'tighten', 're-check']),
  end,
  order: z.enum(['sequence', 'circular']),
  torque: z.strictObject({ wanted: torque, low: torque, high: torque }).optional(),
  setting: z.strictObject({ ...chosen, tool: text, reaction: force.optional(), next: z.strictObject(chosen).optional() }).optional(),
  source,
});
const scatterSource = z.enum(['certificate', 'repeatability', 'lot mean', 'bolt to bolt']);
const rotation = { expected: angle, low: angle, high: angle };
const tightening = z.strictObject({
  target: cited(force),
  meaning: z.enum(['at least', 'aim']),
  formula: text,
  aboveTarget: z.discriminatedUnion('allowed', [
    z.strictObject({ allowed: z.literal(false), source }),
    z.strictObject({ allowed: z.literal('with the engineer’s figure for this joint'), source }),
  ]),
  friction: z.strictObject({ text, source }).optional(),
  steps: z.array(step),
  controlTorque: cited(torque).optional(),
  ceiling: cited(force).optional(),
  resilience: number.describe('mm/N').optional(),
  contributions: z.array(z.strictObject({ source: scatterSource, variation: share, shared: z.boolean() })).optional(),
  rotation: z.strictObject({ ...rotation, afterLead: z.strictObject(rotation).optional(), source }).optional(),
  scatter: z
    .strictObject({ shares: z.array(z.strictObject({ source: scatterSource, share })), one: share, all: share, bolts: position })
    .optional(),
  yieldPreload: z.strictObject({ value: force, estimate: z.boolean() }).optional(),
  utilisation: z.strictObject({ value: share, estimate: z.boolean() }).optional(),
});
const subgroup = z.strictObject({
  id: text,
  positions,
  size: text,
  grade: text,
  system: text,
  length: length.optional(),
  clampThickness: length.optional(),
  lot: text.optional(),
  turned: z.enum(['nut', 'head']),
  acrossFlats: length.optional(),
  tightening: tightening.optional(),
});

const round = z.strictObject({
  way: z.enum(ROUND_ORDERS),
  settings: z.array(z.strictObject({ text, labels: z.array(text), torque, bolts: positions })),
  worst: share,
  spread: share,
  force: z.array(force),
  peak: force,
  pulls: count,
  changes: count,
  minutes: number,
  energy: number.describe('J'),
});
const interaction = z.strictObject({
  model: z.enum(['ring section', 'plate on a bed', 'given matrix']),
  target: force,
  wanted: share,
  mode: z.enum(['one setting a round', 'several settings a round']),
  rounds: z.array(round),
  custom: z.array(round),
  oneSetting: z.array(round).optional(),
});

const kit = z.array(
  z.strictObject({ kind: z.enum(['bolt', 'socket', 'tool', 'feeler gauge', 'marker', 'gap gauge']), text, count: position }),
);
const joint = z.strictObject({
  tag: text,
  title: text,
  verdict: z.enum(['ready', 'attention', 'stop']),
  reasons: z.array(notice),
  rule: z.strictObject({ id: text, title: text, edition: text, stepWord: z.enum(['step', 'pass']) }),
  layout,
  flange: text.optional(),
  datum: datum.optional(),
  reactionPoint: text.optional(),
  boltCount: count,
  subgroups: z.array(subgroup),
  sequence: z.strictObject({
    list: z.array(positions).describe('bolts in the order they are tightened; those of one entry at the same moment'),
    painted: z.array(position).describe('the number painted at each position, bolt 1 first'),
    pattern: z.enum(['star', 'outwards', 'engineer']),
  }),
  interaction: interaction.optional(),
  work: z
    .strictObject({
      pulls: count,
      minutes: number,
      energy: number.describe('J'),
      draw: number.describe('J').optional(),
      assumed: z.boolean(),
      ends: z.enum(['torque', 'angle']),
      safeStop: z.enum(['after a whole round', 'after the first step, before marking', 'after all bolts are snug']),
    })
    .optional(),
  checks: z.array(z.strictObject({ check: z.enum(ASSEMBLY_CHECKS), source })),
  inspection: z
    .strictObject({
      method: z.enum(['control torque', 'angle marks', 'spline', 'feeler', 'pre-installation and routine observed', 'circular re-check']),
      window: z.strictObject({ from: number, until: number.optional() }).describe('h after the last bolt').optional(),
      torqueProves: z.boolean(),
      source,
      sample: count.optional(),
    })
    .optional(),
  permits: z.strictObject({
    pressure: z.boolean(),
    permit: text.optional(),
    zone: text.optional(),
    hotWorkPermit: text.optional(),
    gasTest: text.optional(),
  }),
  kit,
  cautions: z.array(z.enum(CAUTIONS)),
});

/** plan.json, field by field: strict, so that a field the plan gains is missed here by a test. */
export const plan = z.strictObject({
  format: z.literal('clampwright-plan'),
  version: z.literal(1),
  engine: text,
  job: z.strictObject({
    title: text,
    site: text,
    workDate: date,
    units: z.enum(['metric', 'US']),
    people: z.array(z.strictObject({ name: text, role: text })),
  }),
  joints: z.array(joint),
  tools: z.array(z.strictObject({ serial: text, name: text, kind: text, certificate: text, due: date, notices: z.array(notice) })),
  reasons: z.array(notice),
  sums: z.strictObject({
    joints: count,
    bolts: count,
    ready: count,
    attention: count,
    stop: count,
    kit,
    minutes: number,
    energy: number.describe('J'),
    supply: z
      .strictObject({
        draw: number.describe('J'),
        turns: z.array(z.strictObject({ serial: text, pulls: count, joints: z.array(text), chance: share })),
        more: count.nullable(),
        chargers: count,
        notToBegin: z.array(text),
      })
      .optional(),
    crews: z.array(z.strictObject({ crew: position, joints: z.array(text), minutes: number, shifts: number })),
  }),
});

/** plan.json as JSON Schema (draft 2020-12), for readers that are not ours. Quantities are in N, N·mm, mm, rad, J and minutes. */
export const planSchema = (): unknown => ({
  $id: 'clampwright-plan-1',
  title: 'Bolting plan, version 1 (plan.json)',
  ...z.toJSONSchema(plan, { reused: 'ref' }),
});
