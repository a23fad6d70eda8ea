import {
  byCoefficients,
  MPa,
  mm,
  N,
  Nmm,
  preloadForTorque,
  shankTorsion,
  torqueForPreload,
  yieldUtilisation,
} from '../packages/core/src/index.ts';
import { NO_NUMPY, python } from './python.ts';
import { median } from './timing.ts';

const COUNT = 1_000_000;

/** The same arithmetic in NumPy: torque for preload by the exact wedge, its inverse, and the yield share, over a million bolts. */
const NUMPY = `
import time, numpy as np
n = ${COUNT}
F = np.linspace(100e3, 300e3, n)
d, P, mt, mb, D = 24.0, 3.0, 0.12, 0.13, 29.8
def work():
    d2 = d - 0.6495190528 * P
    dS = d - 0.9381943042 * P
    phi = np.arctan(P / (np.pi * d2)); rho = np.arctan(mt / np.cos(np.pi / 6))
    thread = d2 / 2 * np.tan(rho + phi)
    arm = thread + mb * D / 2
    T = F * arm
    back = T / arm
    sigma = F / (np.pi / 4 * dS ** 2)
    tau = F * thread / (np.pi / 12 * dS ** 3)
    return T, back, np.sqrt(sigma ** 2 + 3 * tau ** 2) / 940
work()
t = []
for _ in range(9):
    s = time.perf_counter(); work(); t.append(time.perf_counter() - s)
print(sorted(t)[4] * 1000)
`;

export function torqueBench(): void {
  const size = { diameter: mm(24), pitch: mm(3) };
  const friction = byCoefficients(0.12, 0.13, mm(29.8), { standard: 'bench', provenance: 'memory' });
  const out = new Float64Array(3 * COUNT);
  const ms = median(5, () => {
    for (let i = 0; i < COUNT; i += 1) {
      const preload = N(100_000 + (200_000 * i) / COUNT);
      const torque = torqueForPreload(friction, size, preload);
      out[3 * i] = torque;
      out[3 * i + 1] = preloadForTorque(friction, size, Nmm(torque));
      out[3 * i + 2] = yieldUtilisation(preload, shankTorsion(friction, size, preload).value, size, MPa(940));
    }
  });
  console.log(`\ntorque, preload and yield share of ${COUNT} bolts, one by one through the public functions: ${ms.toFixed(0)} ms`);
  const [numpy] = python(NUMPY) ?? [];
  if (numpy === undefined) console.log(NO_NUMPY);
  else console.log(`  the same vectorised in NumPy, geometry once for all: ${numpy.toFixed(0)} ms; ratio ${(ms / numpy).toFixed(1)}`);
}
