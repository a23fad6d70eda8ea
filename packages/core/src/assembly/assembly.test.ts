import { describe, expect, test } from 'vitest';
import { mm } from '../quantity.ts';
import { assemblyChecks } from './checks.ts';
import { type GapReading, judgeGaps } from './gap-readings.ts';
import { fitUpNotices, gasketNotices, slipSurfaceNotices, threadNotices } from './measured-checks.ts';

describe('checks before the first bolt', () => {
  const splice = { rule: 'en1090-torque', system: 'HV', slopedFaces: 0, gasket: false, slipResistant: true, packs: true } as const;
  const names = (joint: Parameters<typeof assemblyChecks>[0]) => assemblyChecks(joint).map(({ check }) => check);
  test('a slip-resistant splice: surfaces, packs, washers, nuts, threads; snug comes last', () => {
    const found = names(splice);
    for (const check of [
      'slip surfaces as specified',
      'packing plates',
      'washer chamfer outward',
      'nut marking outward',
      'clear threads in grip',
    ])
      expect(found).toContain(check);
    expect(found.at(-1)).toBe('snug: firm contact');
    expect(found).not.toContain('gasket new and of the list');
  });
  test('a gasketed flange: faces, gasket, gap', () => {
    const found = names({ rule: 'flange-bolt-stress', system: 'plain', slopedFaces: 0, gasket: true, slipResistant: false, packs: false });
    for (const check of ['flange faces clean', 'gasket new and of the list', 'flange gap and alignment']) expect(found).toContain(check);
    expect(found).not.toContain('washer chamfer outward');
  });
  test('a slope asks for a bevel washer', () => expect(names({ ...splice, slopedFaces: 1 })).toContain('bevel washers on slopes'));
});

describe('gaps round a flange', () => {
  const pass = (number: number, ...gaps: number[]): GapReading => ({ pass: number, gaps: gaps.map((gap) => mm(gap)) });
  /** ASME PCC-1:2013 appendix E: widest less narrowest 1/32 in (from memory). */
  test('within 1/32 in go on, beyond it stop and say where it is widest', () => {
    const good = judgeGaps([pass(1, 2.1, 2.5, 2.3, 2.0)]);
    expect(good.ok && good.value).toMatchObject({ inside: true, notices: [] });
    const wide = judgeGaps([pass(1, 3, 3, 3, 3), pass(2, 2.1, 3.2, 2.3, 2.0)]);
    expect(wide.ok && wide.value).toMatchObject({ inside: false, widest: 1 });
    expect(wide.ok && wide.value.closed).toBeCloseTo(1, 9);
  });
  test('another number of points and gaps below zero are refused, all at once', () => {
    const wrong = judgeGaps([pass(1, 2, 2, 2), pass(2, 2, -1, 2, 2)]);
    expect(wrong.ok ? [] : wrong.notices.map(({ code }) => code)).toEqual(['gap-points', 'gap-negative']);
    expect(judgeGaps([]).ok).toBe(false);
  });
});

describe('what is measured before the first bolt', () => {
  const codes = (notices: readonly { readonly code: string }[]) => notices.map(({ code }) => code);
  /** EN 1090-2:2018 8.2.2 (from memory): one pitch beyond the nut, four full threads under a preloaded one, one else. */
  test('threads beyond and under the nut', () => {
    const bolt = { bolt: 3, pitch: mm(3), protrusion: mm(3), clearThreads: 4, preloaded: true };
    expect(threadNotices(bolt)).toEqual([]);
    expect(codes(threadNotices({ ...bolt, protrusion: mm(2.9), clearThreads: 3 }))).toEqual(['protrusion-short', 'clear-threads-few']);
    expect(threadNotices({ ...bolt, clearThreads: 1, preloaded: false })).toEqual([]);
  });
  /** EN 1090-2:2018 8.3: 2 mm in general, 1 mm where preloaded; packing plates of 2 mm or more, three at most. */
  test('steps between plates and what is packed', () => {
    expect(fitUpNotices({ step: mm(1), preloaded: true, packs: [mm(2), mm(3), mm(2)] })).toEqual([]);
    expect(codes(fitUpNotices({ step: mm(2.1), preloaded: false, packs: [mm(1)] }))).toEqual(['plates-step', 'packs-wrong']);
    expect(codes(fitUpNotices({ step: mm(0), preloaded: true, packs: [mm(2), mm(2), mm(2), mm(2)] }))).toEqual(['packs-wrong']);
  });
  test('a slip surface of another class, or of none that anybody could name, is not the specified one', () => {
    expect(slipSurfaceNotices('B', 'B')).toEqual([]);
    expect(codes(slipSurfaceNotices('B', 'D'))).toEqual(['slip-surface-other']);
    expect(codes(slipSurfaceNotices('B', undefined))).toEqual(['slip-surface-other']);
  });
  test('the gasket of the list, new, between faces somebody looked at', () => {
    const wanted = { type: 'spiral wound', rating: 'PN 40' };
    expect(gasketNotices({ ...wanted, isNew: true, facesSound: true }, wanted)).toEqual([]);
    expect(codes(gasketNotices({ ...wanted, isNew: true }, wanted))).toEqual(['gasket-faces']);
    expect(codes(gasketNotices({ ...wanted, type: 'flat', isNew: false, facesSound: false }, wanted))).toHaveLength(3);
  });
});
