import { describe, expect, test } from 'vitest';
import { Draws } from '../random/index.ts';
import { forecastWork, type ToldPulls } from './forecast.ts';

const MINUTE = 60_000;
const each = (device: string, times: readonly number[]): ToldPulls[] => times.map((at) => ({ device, at: at * MINUTE, bolts: 1 }));

describe('a forecast of what is left', () => {
  test('is an own estimate, without bounds, until the log has said enough', () => {
    const few = each(
      'a',
      Array.from({ length: 20 }, (_, i) => i),
    );
    expect(forecastWork(few, 100)).toEqual({ each: 0.6, likely: 60, basis: { kind: 'usual' } });
    expect(forecastWork([], 0).likely).toBe(0);
  });
  test('leaves breaks out, and takes each device for itself', () => {
    const one = Array.from({ length: 31 }, (_, i) => i + (i > 15 ? 240 : 0));
    const { each: pace, basis } = forecastWork(
      [
        ...each('a', one),
        ...each(
          'b',
          one.map((at) => at + 0.5),
        ),
      ],
      10,
    );
    expect(pace).toBeCloseTo(1, 12);
    expect(basis).toEqual({ kind: 'log', bolts: 40, minutes: 40 });
  });
  test('takes bolts that were told together as so many', () => {
    const told = Array.from({ length: 8 }, (_, i) => ({ device: 'a', at: i * 12 * MINUTE, bolts: 12 }));
    expect(forecastWork(told, 24).each).toBeCloseTo(1, 12);
  });
  test('holds what comes in nine of ten cases', () => {
    const draws = new Draws(20261128);
    const pull = () => 0.5 + draws.uniform() * 1.5;
    let held = 0;
    const runs = 400;
    for (let run = 0; run < runs; run += 1) {
      let at = 0;
      const times = Array.from({ length: 81 }, () => {
        at += pull();
        return at;
      });
      const { low, high } = forecastWork(each('a', times), 60).bounds!;
      const came = Array.from({ length: 60 }, pull).reduce((sum, one) => sum + one, 0);
      if (low <= came && came <= high) held += 1;
    }
    expect(held / runs).toBeGreaterThan(0.86);
    expect(held / runs).toBeLessThan(0.95);
  });
});
