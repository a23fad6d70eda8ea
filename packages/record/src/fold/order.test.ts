import fc from 'fast-check';
import { expect, test } from 'vitest';
import type { Kept } from '../entry/envelope.ts';
import { jointId, openingEntries, personId, TEST_STEPS, type TestWriter, testSlice, testWriter, wholeState } from '../test-book.ts';
import { openFold } from './fold.ts';

const by = personId(2);
const joint = fc.integer({ min: 1, max: 2 }).map(jointId);
const bolt = fc.integer({ min: 1, max: 7 });
const tool = fc.constantFrom('SK-1', 'SK-2');
type Act = (writer: TestWriter, known: readonly Kept[]) => Kept;

const act: fc.Arbitrary<Act> = fc.oneof(
  {
    weight: 6,
    arbitrary: fc.tuple(joint, bolt, fc.constantFrom(...TEST_STEPS), tool, fc.constantFrom('2/3', '2/4')).map(
      ([j, b, step, t, setting]): Act =>
        (w, seen) =>
          w.write(
            'bolt-tightened',
            { joint: j, bolt: b, step, tool: t, setting, battery: 'B1', end: 'stall' },
            { by, seen: seen.slice(-2) },
          ),
    ),
  },
  fc.tuple(joint, bolt).map(
    ([j, b]): Act =>
      (w) =>
        w.write('bolt-replaced', { joint: j, bolts: [b], reason: 'spun' }, { by }),
  ),
  fc.tuple(joint, bolt).map(
    ([j, b]): Act =>
      (w) =>
        w.write('loosened', { joint: j, bolts: [b] }, { by: personId(9) }),
  ),
  fc.tuple(joint, fc.constantFrom(...TEST_STEPS)).map(
    ([j, step]): Act =>
      (w) =>
        w.write('batch-tightened', { joint: j, bolts: [1, 2, 3], step, end: 'stall' }, { by }),
  ),
  joint.map(
    (j): Act =>
      (w) =>
        w.write('joint-signed', { joint: j, as: 'crew' }, { by }),
  ),
  fc.tuple(tool, fc.boolean()).map(
    ([t, passed]): Act =>
      (w) =>
        w.write('tool-checked', { tool: t, setting: '2/3', passed }, { by }),
  ),
  fc.boolean().map(
    (back): Act =>
      (w) =>
        back
          ? w.write('person-enrolled', { person: by, name: 'c'.repeat(64) as never, roles: ['crew'] })
          : w.write('person-revoked', { person: by, reason: 'left' }),
  ),
  fc.nat().map(
    (at): Act =>
      (w, known) =>
        w.write('correction', { corrects: known[at % known.length]!.hash, reason: 'wrong' }, { by }),
  ),
  fc.constant<Act>((w) => w.write('battery-changed', { tool: 'SK-1', battery: 'B1' }, { by })),
  fc.constantFrom('use as is' as const, 'replace' as const).map(
    (disposition): Act =>
      (w, known) =>
        w.write(
          'nonconformance-settled',
          { nonconformance: `bolt-tightened-twice:${known.at(-1)!.hash}:1`, disposition, authority: 'engineer', reason: 'x' },
          { by },
        ),
  ),
);

/** Three devices, one of them copied half-way, each knowing what it was told when it last looked. */
const day = fc.array(fc.tuple(fc.integer({ min: 0, max: 3 }), act, fc.boolean()), { minLength: 5, maxLength: 60 }).map((acts) => {
  const planner = testWriter(1);
  const writers = [testWriter(2), testWriter(3), testWriter(4)];
  const entries = openingEntries(planner, writers, [testSlice(1, 4), testSlice(2, 6)]);
  const told: Kept[][] = [[...entries], [...entries], [...entries], [...entries]];
  acts.forEach(([who, write, sync], at) => {
    if (at === Math.floor(acts.length / 2)) writers.push(writers[0]!.clone());
    const device = who % writers.length;
    if (sync) told[device] = [...entries];
    const one = write(writers[device]!, told[device]!);
    entries.push(one);
    told[device]!.push(one);
  });
  return entries;
});

test('any order of arrival, with entries arriving twice, folds to the same state', () => {
  fc.assert(
    fc.property(
      day.chain((entries) =>
        fc.tuple(
          fc.constant(entries),
          fc.shuffledSubarray([...entries, ...entries.slice(3)], { minLength: entries.length * 2 - 3 }),
          fc.nat(),
        ),
      ),
      ([entries, shuffled, ask]) => {
        const straight = openFold();
        for (const one of entries) straight.add(one);
        const mixed = openFold();
        shuffled.forEach((one, at) => {
          mixed.add(one);
          // asking on the way must not change the answer
          if ((at * 7 + ask) % 5 === 0) wholeState(mixed);
        });
        expect(mixed.size()).toBe(straight.size());
        expect(wholeState(mixed)).toEqual(wholeState(straight));
      },
    ),
    { seed: 20261125, numRuns: 150 },
  );
});

test('every tightening that was told and not corrected is in the state of its bolt, or was taken out with it', () => {
  fc.assert(
    fc.property(day, (entries) => {
      const fold = openFold();
      for (const one of entries) fold.add(one);
      const known = new Set(fold.ids('joint').flatMap((id) => fold.state('joint', id).history));
      for (const { hash, entry } of entries) if (entry.kind === 'bolt-tightened') expect(known.has(hash)).toBe(true);
    }),
    { seed: 7, numRuns: 50 },
  );
});
