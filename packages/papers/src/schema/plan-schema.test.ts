import { readFileSync } from 'node:fs';
import { type Plan, planInteraction, planJob } from '@clampwright/core';
import { Ajv2020 } from 'ajv/dist/2020.js';
import { expect, expectTypeOf, test } from 'vitest';
import type { z } from 'zod';
import { readJob } from '../read/index.ts';
import { testPlan } from '../test-plan.ts';
import { type plan, planSchema } from './plan-schema.ts';

test('docs/schemas/plan.schema.json says what is written now (vitest -u writes it anew)', async () => {
  await expect(`${JSON.stringify(planSchema(), null, 1)}\n`).toMatchFileSnapshot('../../../../docs/schemas/plan.schema.json');
});

/** Every field a type has, however deep; what a notice carries is open. */
type Fields<T> = T extends string | number | boolean | null | undefined
  ? never
  : T extends readonly (infer E)[]
    ? Fields<E>
    : { [K in keyof T & string]: K | (K extends 'params' ? never : `${K}.${Fields<NonNullable<T[K]>> & string}`) }[keyof T & string];

type Writable<T> = T extends string | number | boolean | null | undefined
  ? T
  : T extends readonly (infer E)[]
    ? Writable<E>[]
    : { -readonly [K in keyof T]: Writable<T[K]> };

test('every plan the engine can make is one by its types, with no field more or less', () => {
  expectTypeOf<Writable<Plan>>().toExtend<z.infer<typeof plan>>();
  expectTypeOf<Fields<Plan['sums']>>().toEqualTypeOf<Fields<z.infer<typeof plan>['sums']>>();
  expectTypeOf<Fields<Plan['tools']>>().toEqualTypeOf<Fields<z.infer<typeof plan>['tools']>>();
  expectTypeOf<Fields<Plan['joints']>>().toEqualTypeOf<Fields<z.infer<typeof plan>['joints']>>();
});

// an independent reader of JSON Schema
const fits = new Ajv2020({ strict: false, allErrors: true }).compile(planSchema() as object);
const plain = (one: Plan) =>
  JSON.parse(JSON.stringify(one)) as Record<string, never> & { joints: { subgroups: { tightening?: { steps: object[] } }[] }[] };

test('the plan of the demo, with rounds and batteries, is valid by it', () => {
  const { job } = readJob((path) => {
    try {
      return new Uint8Array(readFileSync(`demo/${path}`));
    } catch {
      return 'missing';
    }
  });
  const demo = plain(planInteraction(job!, planJob(job!)));
  expect(JSON.stringify(demo)).toContain('"rounds"');
  expect(JSON.stringify(demo)).toContain('"supply"');
  expect([fits(demo), fits.errors]).toEqual([true, null]);
  expect([fits(plain(testPlan())), fits.errors]).toEqual([true, null]);
});

test('a damaged plan is not', () => {
  const sound = plain(testPlan());
  const broken = (change: (one: typeof sound) => void) => {
    const one = structuredClone(sound);
    change(one);
    return fits(one);
  };
  expect(broken(() => undefined)).toBe(true);
  expect(broken((one) => Object.assign(one, { version: 2 }))).toBe(false);
  expect(broken((one) => Object.assign(one, { mood: 'good' }))).toBe(false);
  expect(broken((one) => Object.assign(one.joints[0]!, { verdict: 'maybe' }))).toBe(false);
  expect(broken((one) => Object.assign(one.joints[0]!, { boltCount: '8' }))).toBe(false);
  expect(broken((one) => Object.assign(one.joints[0]!.subgroups[0]!.tightening!.steps[0]!, { end: { kind: 'mark at angle' } }))).toBe(
    false,
  );
});
