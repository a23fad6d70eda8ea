import { boltsRemaining, drawSample, kStatistics } from '../packages/core/src/index.ts';
import { NO_NUMPY, python } from './python.ts';
import { median } from './timing.ts';

const MILLION = 1_000_000;
const NUMPY = `
import time, numpy as np
k = 0.12 + 0.005 * np.sin(np.arange(${MILLION}))
def work(): return k.mean(), k.std(ddof=1) / k.mean(), ((k >= 0.1) & (k <= 0.16)).all()
work(); t = []
for _ in range(9):
    s = time.perf_counter(); work(); t.append(time.perf_counter() - s)
print(sorted(t)[4] * 1000)
`;

/** Drawing an inspection sample, and the figures of a lot. */
export function aroundBench(): void {
  console.log('\naround the turn');
  const belief = { mean: 580, meanDeviation: 30, boltDeviation: 45 };
  const left = median(199, () => boltsRemaining(291_600, 4, belief));
  const bolts = boltsRemaining(291_600, 4, belief);
  console.log(`  bolts a battery still does, ${bolts.ok ? bolts.value.hopeful : 0} at best: ${left.toFixed(2)} ms (target under 1 ms)`);
  const joints = Array.from({ length: 10_000 }, (_, i) => ({ tag: `J${i}`, bolts: 100 }));
  const draw = median(5, () => drawSample(joints, 100_000, 7));
  console.log(`  inspection draw, 100 000 of 1 000 000 bolts: ${draw.toFixed(0)} ms (target under 200 ms)`);
  const factors = Array.from({ length: MILLION }, (_, i) => 0.12 + 0.005 * Math.sin(i));
  const lot = median(5, () => kStatistics(factors));
  console.log(`  k factors of ${MILLION} rows: ${lot.toFixed(0)} ms (target under 200 ms)`);
  const [numpy] = python(NUMPY) ?? [];
  if (numpy === undefined) console.log(NO_NUMPY);
  else console.log(`    the same in NumPy: ${numpy.toFixed(1)} ms; ratio ${(lot / numpy).toFixed(1)}`);
}
