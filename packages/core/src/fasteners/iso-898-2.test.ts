import { expect, test } from 'vitest';
import { mm } from '../quantity.ts';
import { nutProofLoad } from './iso-898-2.ts';
import { metricThread } from './metric-threads.ts';

// proof loads, N, in a public extract of EN 20898-2 (coarse thread): size, class 8 style 1, class 10 style 1, class 12 style 2
const PRINTED = [
  [5, 12140, 14800, 16300],
  [6, 17200, 20900, 23100],
  [8, 31800, 38100, 42500],
  [10, 50500, 60300, 67300],
  [12, 74200, 88500, 100300],
  [14, 101200, 120800, 136900],
  [16, 138200, 164900, 186800],
  [18, 176600, 203500, 230400],
  [20, 225400, 259700, 294000],
  [22, 278800, 321200, 363600],
  [24, 324800, 374200, 423600],
  [27, 422300, 486500, 550800],
  [30, 516100, 594700, 673200],
  [33, 638500, 735600, 832800],
  [36, 751600, 866000, 980400],
  [39, 897900, 1035000, 1171000],
] as const;

test.each(PRINTED)('the nut proof loads of M%s are the printed ones to half a per cent', (d, class8, class10, class12) => {
  const thread = metricThread(mm(d))!;
  for (const [style, nutClass, printed] of [
    ['ISO 898-2 style 1', '8', class8],
    ['ISO 898-2 style 1', '10', class10],
    ['ISO 898-2 style 2', '12', class12],
  ] as const) {
    const found = nutProofLoad(style, nutClass, thread);
    expect(found.ok).toBe(true);
    if (found.ok) expect(Math.abs(found.value.value / printed - 1)).toBeLessThan(0.005);
  }
});

test('a class 12 nut of style 1 above M16 is refused, not invented', () => {
  expect(nutProofLoad('ISO 898-2 style 1', '12', metricThread(mm(24))!).ok).toBe(false);
});
