import { describe, expect, test } from 'vitest';
import type { Kept } from '../entry/envelope.ts';
import { jointId, openingEntries, personId, TEST_STEPS, testSlice, testWriter } from '../test-book.ts';
import { type Fold, openFold } from './fold.ts';

const JOINT = jointId(1);
const by = personId(2);
const foldOf = (entries: readonly Kept[]): Fold => {
  const fold = openFold();
  for (const one of entries) fold.add(one);
  return fold;
};
const codes = (fold: Fold) => fold.nonconformances().flatMap(({ notice }) => (notice ? [notice.code] : []));

/** A joint of four bolts, and everything said before its first. */
function open() {
  const [planner, one, two] = [testWriter(1), testWriter(2), testWriter(3)];
  const entries = openingEntries(planner, [one, two], [testSlice(1, 4)]);
  const tighten = (bolt: number, step: string, more = {}, writer = one) =>
    writer.write(
      'bolt-tightened',
      { joint: JOINT, bolt, step, tool: 'SK-1', setting: step === 'first step' ? '2/3' : '2/4', end: 'stall', ...more },
      { by, seen: [entries.at(-1)!] },
    );
  const all = () => TEST_STEPS.flatMap((step) => [1, 2, 3, 4].map((bolt) => tighten(bolt, step)));
  return { planner, one, two, entries, tighten, all };
}

describe('the fold', () => {
  test('finds nothing to object to in a joint done as planned', () => {
    const { one, entries, all } = open();
    const fold = foldOf([...entries, ...all(), one.write('joint-signed', { joint: JOINT, as: 'crew' }, { by })]);
    expect(codes(fold)).toEqual([]);
    const joint = fold.state('joint', JOINT);
    expect([...joint.bolts.values()].map(({ steps }) => Object.keys(steps))).toEqual(Array(4).fill([...TEST_STEPS]));
    expect(joint.signatures).toHaveLength(1);
    expect(fold.state('tool', 'SK-1')).toMatchObject({ tightened: 8, due: '2027-06-01' });
  });
  test('keeps a bolt that was tightened twice, and says so until a named person settles it', () => {
    const { one, two, entries, tighten } = open();
    const fold = foldOf([...entries, tighten(1, 'first step'), tighten(1, 'first step', {}, two)]);
    expect(codes(fold)).toEqual(['bolt-tightened-twice']);
    expect(fold.state('joint', JOINT).bolts.get(1)!.steps['first step']).toHaveLength(2);
    const { id } = fold.nonconformances()[0]!;
    fold.add(
      one.write('nonconformance-settled', { nonconformance: id, disposition: 'use as is', authority: 'engineer', reason: 'same setting' }),
    );
    expect(fold.nonconformances()[0]!.state).toBe('open');
    fold.add(
      two.write('nonconformance-settled', { nonconformance: id, disposition: 'rework', authority: 'engineer', reason: 'loosen' }, { by }),
    );
    expect(fold.nonconformances()[0]!.state).toBe('to be inspected again');
    fold.add(two.write('nonconformance-reinspected', { nonconformance: id, passed: true }, { by }));
    expect(fold.nonconformances()[0]!.state).toBe('settled');
  });
  test('names a second decision that differs as disputed', () => {
    const { one, two, entries, tighten } = open();
    const fold = foldOf([...entries, tighten(1, 'second step')]);
    const { id } = fold.nonconformances()[0]!;
    const settle = (writer: typeof one, disposition: 'replace' | 'use as is') =>
      writer.write('nonconformance-settled', { nonconformance: id, disposition, authority: 'engineer', reason: 'x' }, { by });
    fold.add(settle(one, 'use as is'));
    fold.add(settle(two, 'replace'));
    expect(fold.nonconformances()[0]!.state).toBe('disputed');
  });
  test.each([
    ['a step before the one before it', (o: ReturnType<typeof open>) => [o.tighten(1, 'second step')], ['step-too-early']],
    ['a bolt out of sequence', (o: ReturnType<typeof open>) => [o.tighten(3, 'first step')], ['bolt-out-of-order']],
    [
      'a bolt the joint has not',
      (o: ReturnType<typeof open>) => [o.tighten(9, 'first step')],
      ['bolt-not-in-joint', 'setting-not-issued', 'bolt-out-of-order'],
    ],
    ['a step nobody planned', (o: ReturnType<typeof open>) => [o.tighten(1, 'third step')], ['step-not-issued']],
    [
      'a setting that is not from the plan',
      (o: ReturnType<typeof open>) => [o.tighten(1, 'first step', { setting: '3/1' })],
      ['setting-not-issued'],
    ],
    [
      'a tool nobody knows',
      (o: ReturnType<typeof open>) => [o.tighten(1, 'first step', { tool: 'X' })],
      ['tool-not-known', 'tool-not-checked', 'setting-not-issued'],
    ],
    [
      'a card of another issue',
      (o: ReturnType<typeof open>) => [o.tighten(1, 'first step', { card: 'a'.repeat(64) })],
      ['plan-slice-differs'],
    ],
    [
      'work after the plan was withdrawn',
      (o: ReturnType<typeof open>) => {
        const withdrawn = o.planner.write('plan-withdrawn', { number: 'P-1', reason: 'new gasket' });
        o.entries.push(withdrawn);
        return [withdrawn, o.tighten(1, 'first step')];
      },
      ['plan-was-withdrawn'],
    ],
    [
      'another datum',
      (o: ReturnType<typeof open>) => [
        o.one.write(
          'datum-confirmed',
          { joint: JOINT, boltOne: 'top', direction: 'clockwise', viewedFrom: 'inside' },
          { by, seen: [o.entries.at(-1)!] },
        ),
      ],
      ['datum-differs'],
    ],
    [
      'a signature over open bolts',
      (o: ReturnType<typeof open>) => [o.one.write('joint-signed', { joint: JOINT, as: 'crew' }, { by, seen: [o.entries.at(-1)!] })],
      ['bolts-left-open'],
    ],
    [
      'nobody named',
      (o: ReturnType<typeof open>) => [o.one.write('loosened', { joint: JOINT, bolts: [1] }, { seen: [o.entries.at(-1)!] })],
      ['person-not-named'],
    ],
    [
      'somebody not enrolled',
      (o: ReturnType<typeof open>) => [
        o.one.write('loosened', { joint: JOINT, bolts: [1] }, { by: personId(77), seen: [o.entries.at(-1)!] }),
      ],
      ['person-not-known'],
    ],
    [
      'a qualification that had run out',
      (o: ReturnType<typeof open>) => [
        o.one.write('loosened', { joint: JOINT, bolts: [1] }, { by, seen: [o.entries.at(-1)!], day: '2027-04-01' }),
      ],
      ['person-not-qualified'],
    ],
    [
      'a tool after its date',
      (o: ReturnType<typeof open>) => [
        o.one.write(
          'bolt-tightened',
          { joint: JOINT, bolt: 1, step: 'first step', tool: 'SK-1', setting: '2/3', end: 'stall' },
          { by: personId(1), seen: [o.entries.at(-1)!], day: '2027-06-02' },
        ),
      ],
      ['tool-expired', 'tool-not-checked'],
    ],
  ])('shows %s', (_, work, expected) => {
    const opened = open();
    expect(codes(foldOf([...opened.entries, ...work(opened)]))).toEqual(expected);
  });
  test('shows a copied device, and both of what it told', () => {
    const { one, entries, tighten } = open();
    const before = tighten(1, 'first step');
    const copy = one.clone();
    const fold = foldOf([...entries, before, tighten(2, 'first step'), tighten(3, 'first step', {}, copy)]);
    expect(codes(fold)).toContain('device-forked');
    expect(fold.state('joint', JOINT).bolts.size).toBe(3);
  });
  test('strikes what was corrected, keeps it, and takes it back when the correction is corrected', () => {
    const { one, entries, tighten } = open();
    const wrong = tighten(3, 'first step');
    const fold = foldOf([...entries, wrong]);
    expect(codes(fold)).toEqual(['bolt-out-of-order']);
    const struck = one.write('correction', { corrects: wrong.hash, reason: 'wrong bolt touched' }, { by });
    fold.add(struck);
    expect(codes(fold)).toEqual([]);
    expect(fold.state('joint', JOINT).bolts.size).toBe(0);
    expect(fold.find(wrong.hash)).toEqual(wrong);
    fold.add(one.write('correction', { corrects: struck.hash, reason: 'it was right' }, { by }));
    expect(codes(fold)).toEqual(['bolt-out-of-order']);
  });
  test('lets a replaced or loosened bolt begin again', () => {
    const { one, entries, tighten } = open();
    const fold = foldOf([
      ...entries,
      tighten(1, 'first step'),
      one.write('loosened', { joint: JOINT, bolts: [1] }, { by }),
      tighten(1, 'first step'),
    ]);
    expect(codes(fold)).toEqual([]);
  });
  test('takes settings from the chart of a tool that was swapped in', () => {
    const { one, planner, entries, tighten } = open();
    entries.push(
      planner.write('tool-registered', {
        tool: 'SK-2',
        name: 'spare',
        kind: 'battery',
        chart: 'b'.repeat(64) as never,
        certificate: 'C',
        due: '2027-01-01',
      }),
      planner.write('tool-checked', { tool: 'SK-2', setting: '5/1', passed: true }),
    );
    const swap = one.write(
      'tool-swapped',
      { joint: JOINT, from: 'SK-1', to: 'SK-2', chart: 'b'.repeat(64) as never, settings: [{ step: 'first step', setting: '5/1' }] },
      { by, seen: [entries.at(-1)!] },
    );
    const fold = foldOf([...entries, swap, tighten(1, 'first step', { tool: 'SK-2', setting: '5/1' })]);
    expect(codes(fold)).toEqual([]);
  });
  test('a new certificate takes the settings of the old one away until its own chart is read; what was is kept', () => {
    const { planner } = open();
    const tell = (certificate: string, chart: string) =>
      planner.write('tool-registered', {
        tool: 'SK-9',
        name: 'hired',
        kind: 'battery',
        chart: chart.repeat(64) as never,
        certificate,
        due: '2027-01-01',
      });
    const load = (certificate: string, sheet: string) =>
      planner.write('chart-loaded', { tool: 'SK-9', certificate, sheet: sheet.repeat(64) as never });
    const entries = [tell('C1', 'a'), load('C1', 'b'), tell('C2', 'c')];
    expect(foldOf(entries).state('tool', 'SK-9').sheet).toBe(undefined);
    entries.push(load('C1', 'b'));
    expect(foldOf(entries).state('tool', 'SK-9').sheet).toBe(undefined);
    entries.push(load('C2', 'd'), planner.write('tool-withdrawn', { tool: 'SK-9', reason: 'went back' }));
    const tool = foldOf(entries).state('tool', 'SK-9');
    expect([tool.sheet, tool.withdrawnFor]).toEqual(['d'.repeat(64), 'went back']);
    expect([tool.certificates.map(({ number }) => number), tool.charts.map(({ certificate }) => certificate)]).toEqual([
      ['C1', 'C2'],
      ['C1', 'C1', 'C2'],
    ]);
  });
  test('judges what a device signed before its enrolment was told by it as soon as that has come', () => {
    const { planner, entries, tighten } = open();
    const late = testWriter(9);
    const pulls = [1, 2, 3, 4].map((bolt) => tighten(bolt, 'first step', {}, late));
    const fold = foldOf([...entries, ...pulls]);
    expect(codes(fold)).toEqual(Array(4).fill('device-not-enrolled'));
    const before = fold.state('joint', JOINT).bolts.size;
    const enrol = (seen: Kept) =>
      planner.write('device-enrolled', { device: late.device, key: '0'.repeat(64), name: 'phone 9' }, { seen: [seen] });
    fold.add(enrol(pulls.at(-1)!));
    expect(codes(fold)).toEqual([]);
    expect(fold.state('joint', JOINT).bolts.size).toBe(before);
    // revoked: what it signed before stays right, what comes after does not
    const revoked = planner.write('device-revoked', { device: late.device, reason: 'lost' }, { seen: [pulls.at(-1)!] });
    fold.add(revoked);
    expect(codes(fold)).toEqual([]);
    const after = late.write('loosened', { joint: JOINT, bolts: [2] }, { by, seen: [revoked] });
    fold.add(after);
    expect(codes(fold)).toEqual(['device-was-revoked']);
    // enrolled again afterwards: what was signed while it was revoked stays so
    fold.add(enrol(after));
    expect(codes(fold)).toEqual(['device-was-revoked']);
  });
  test('counts the bolts of each charge of a battery, once', () => {
    const { one, planner, entries, tighten } = open();
    const change = (battery: string, out?: string) =>
      one.write('battery-changed', { tool: 'SK-1', battery, ...(out === undefined ? {} : { out }) });
    entries.push(planner.write('battery-registered', { battery: 'B1', name: '18 V, 5 A·h', chargeMilliampereHour: 5000 }));
    entries.push(change('B1'));
    for (const bolt of [1, 2, 3]) entries.push(tighten(bolt, 'first step', { battery: 'B1' }));
    entries.push(change('B2', 'B1'), change('B1', 'B2'), tighten(4, 'first step', { battery: 'B1' }), change('B1'));
    const { charges, chargeMilliampereHour } = foldOf(entries).state('battery', 'B1');
    expect([charges.map(({ bolts }) => bolts), chargeMilliampereHour]).toEqual([[3, 1], 5000]);
  });
  test('shows what it cannot read, and does not drop it', () => {
    const { one, entries } = open();
    const later = one.write('note-written', { text: 'x' });
    const unknown = { ...later, entry: { ...later.entry, kind: 'bolt-sung-to' } };
    expect(codes(foldOf([...entries, unknown]))).toEqual(['entry-not-readable']);
  });
});
