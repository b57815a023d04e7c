"""Writes robust-reference.json: Theil-Sen by scipy, adjusted p values by statsmodels.

Re-run by hand, from the project's folder, with Debian's python3-scipy and python3-statsmodels:

    /usr/bin/python3 tests/domain/statistics/reference/charts-reference.py

Last run with Python 3.11.2, scipy 1.10.1, statsmodels 0.13.5 (all are written into the file). The seed is fixed: the same
versions give the same file. One case a line.
"""

import json
import sys

import numpy as np
import scipy
import statsmodels
from scipy import stats
from statsmodels.stats.multitest import multipletests

SEED = 20260108


def curves(random):
    for case in range(220):
        n = int(random.integers(2, 26))
        scatter = random.choice([0.05, 0.4])
        times = 7 * np.arange(1, n + 1) ** -random.uniform(-0.1, 0.7) * np.exp(random.normal(0, scatter, n))
        if case % 3 == 0:
            times[random.integers(0, n)] *= 50
        # Times that are told in whole minutes are often equal.
        times = np.maximum(1, np.round(times)) if case % 4 == 0 else np.round(times, 4)
        level = float(random.choice([0.8, 0.9, 0.95]))
        fit = stats.theilslopes(np.log(times), np.log(np.arange(1, n + 1)), level, method="separate")
        yield [times.tolist(), level, *(float(each) for each in fit)]


def adjusted(random):
    for case in range(220):
        n = int(random.integers(1, 15))
        p = random.uniform(0, random.choice([1, 0.05]), n)
        if case % 5 == 0:
            p = np.round(p, 1)
        p = [float(each) for each in p]
        yield [p] + [multipletests(p, method=name)[1].tolist() for name in ("fdr_bh", "holm")]


def main():
    blocks = {
        "theilSen": ("times, level, slope, intercept, low, high of log time over log number", curves),
        "adjusted": ("p values, false discovery, Holm", adjusted),
    }
    made = f"Python {sys.version.split()[0]}, scipy {scipy.__version__}, statsmodels {statsmodels.__version__}, seed {SEED}"
    parts = [f'  "made": "{made}"']
    for at, (name, (columns, make)) in enumerate(blocks.items()):
        rows = ",\n      ".join(json.dumps(row, separators=(",", ":")) for row in make(np.random.default_rng([SEED, at])))
        parts.append(f'  "{name}": {{\n    "columns": "{columns}",\n    "cases": [\n      {rows}\n    ]\n  }}')
    with open("tests/domain/statistics/reference/robust-reference.json", "w", encoding="utf-8") as file:
        file.write("{\n" + ",\n".join(parts) + "\n}\n")


main()
