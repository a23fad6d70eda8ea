"""Reference values for chanceAllInside: SciPy's adaptive quadrature, tight, split at the window's edges. Run: python3 all-inside.scipy.py > all-inside.scipy.json"""
import json
import numpy as np
import scipy
from scipy.integrate import quad
from scipy.stats import norm

rows = []
for shared in (0.0, 0.002, 0.01, 0.03, 0.08):
    for individual in (0.003, 0.02, 0.05, 0.12):
        for low, high in ((90, 110), (95, 130), (70, 101), (99.5, 100.5)):
            for n in (1, 8, 24, 120, 500):
                def inner(z):
                    m = 100 * (1 + shared * z)
                    a, b = (low - m) / (100 * individual), (high - m) / (100 * individual)
                    p = norm.sf(a) - norm.sf(b) if a > 0 else norm.cdf(b) - norm.cdf(a)
                    return norm.pdf(z) * p**n
                if shared == 0:
                    value = inner(0) / norm.pdf(0)
                else:
                    w = individual / shared
                    cuts = [c for e in (low, high) for k in range(-9, 10) for c in [(e / 100 - 1) / shared + k * w] if -9 < c < 9]
                    cuts = sorted(set([-9.0, 9.0, *cuts, *np.arange(-8, 9).tolist()]))
                    value = sum(quad(inner, a, b, epsabs=1e-13, epsrel=1e-12, limit=200)[0] for a, b in zip(cuts, cuts[1:]))
                rows.append([shared, individual, low, high, n, value])
print(json.dumps({"made": f"SciPy {scipy.__version__}, all-inside.scipy.py", "columns": "shared individual low high bolts chance", "rows": rows}))
