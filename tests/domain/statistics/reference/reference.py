"""Writes scipy-reference.json: what scipy, statsmodels and mpmath compute for the statistics of src/domain/statistics.

Re-run by hand, from the project's folder, with Debian's python3-scipy, python3-statsmodels and python3-mpmath:

    /usr/bin/python3 tests/domain/statistics/reference/reference.py

Last run with Python 3.11.2, scipy 1.10.1, statsmodels 0.13.5, mpmath 1.2.1 (all are written into the file); it takes
some minutes. The seed is fixed: the same versions give the same file. One case a line.
"""

import json
import sys

import mpmath
import numpy as np
import scipy
import statsmodels
from scipy import optimize, special, stats
from statsmodels.stats.proportion import confint_proportions_2indep, proportion_confint

mpmath.mp.dps = 30
SEED = 20260106
LEVELS = [0.8, 0.9, 0.95, 0.99]


def counts(random, case):
    n = [0, 1, 2, 10, 10**6][case % 25] if case % 25 < 5 else int(round(10 ** random.uniform(0, 6)))
    k = [0, n, int(random.integers(0, n + 1)), int(random.binomial(n, 0.05))][case // 25 % 4 if case % 25 < 5 else case % 4]
    return k, n


def intervals(random):
    for case in range(250):
        k, n = counts(random, case)
        level = float(random.choice(LEVELS))
        if n == 0:
            yield [k, n, level, 0, 1, 0, 1]
            continue
        wilson = proportion_confint(k, n, 1 - level, "wilson")
        jeffreys = proportion_confint(k, n, 1 - level, "jeffreys")
        low, high = (0 if k == 0 else float(jeffreys[0])), (1 if k == n else float(jeffreys[1]))
        yield [k, n, level, float(wilson[0]), float(wilson[1]), low, high]


def beta_binomial(random):
    """pmf by mpmath's log-gamma; cdf as the sum of scipy's pmf, and its quantile."""
    for case in range(220):
        n = [0, 1, 2, 10**6][case % 20] if case % 20 < 4 else int(round(10 ** random.uniform(0, 5)))
        alpha, beta = (float(10 ** random.uniform(-1, 3)) for _ in range(2))
        k = [0, n, int(random.integers(0, n + 1)), int(stats.betabinom.rvs(n, alpha, beta, random_state=random))][case % 4]
        g = mpmath.loggamma
        pmf = float(
            mpmath.exp(
                g(n + 1) - g(k + 1) - g(n - k + 1) + g(k + mpmath.mpf(alpha)) + g(n - k + mpmath.mpf(beta))
                - g(n + mpmath.mpf(alpha) + mpmath.mpf(beta))
                + g(mpmath.mpf(alpha) + mpmath.mpf(beta)) - g(mpmath.mpf(alpha)) - g(mpmath.mpf(beta))
            )
        )
        sums = np.cumsum(stats.betabinom.pmf(np.arange(n + 1), n, alpha, beta))
        p = float(random.uniform(0.001, 0.999))
        yield [k, n, alpha, beta, pmf, float(sums[k] / sums[-1]), p, int(np.searchsorted(sums / sums[-1], p))]


def newcombe(random):
    for case in range(220):
        first, second = counts(random, case), counts(random, case + 7 * (case % 3))
        if first[1] == 0 or second[1] == 0:
            continue
        level = float(random.choice(LEVELS))
        found = confint_proportions_2indep(*first, *second, method="newcomb", compare="diff", alpha=1 - level)
        yield [*first, *second, level, float(found[0]), float(found[1])]


def some_groups(random, most):
    size = int(random.integers(2, 9))
    precision, mean = float(10 ** random.uniform(0.5, 2.5)), float(random.uniform(0.05, 0.95))
    n = random.integers(1, most, size)
    k = random.binomial(n, random.beta(precision * mean, precision * (1 - mean), size))
    return k, n


def slope(logs, k, n):
    alpha, beta = np.exp(logs)
    psi = special.digamma
    lost = psi(n + alpha + beta) - psi(alpha + beta)
    return [
        alpha * np.sum(psi(k + alpha) - psi(alpha) - lost),
        beta * np.sum(psi(n - k + beta) - psi(beta) - lost),
    ]


def likeliest(random):
    """The population by scipy's minimiser, then the root of the slope. Only groups whose rates differ by more than chance."""
    made = 0
    while made < 200:
        k, n = some_groups(random, [12, 60, 400][made % 3])
        mean = k.sum() / n.sum()
        if not 0 < mean < 1:
            continue
        spread = np.sum(k * (k - 1) / mean + (n - k) * (n - k - 1) / (1 - mean) - n * (n - 1))
        if spread < 0.05 * n.sum():
            continue

        def height(logs):
            a, b = np.exp(logs)
            return -np.sum(special.betaln(k + a, n - k + b) - special.betaln(a, b))

        best = min(
            (optimize.minimize(height, np.log([s * mean, s * (1 - mean)]), method="Nelder-Mead") for s in (1, 10, 100)),
            key=lambda found: found.fun,
        )
        root = optimize.root(slope, best.x, args=(k, n), tol=1e-14)
        alpha, beta = np.exp(root.x)
        if np.max(np.abs(root.fun)) > 1e-9 or not 1e-2 < alpha + beta < 1e5:
            continue
        made += 1
        yield [k.tolist(), n.tolist(), float(alpha), float(beta)]


def pooled(random):
    """Means and 90 % intervals by brute force: the whole grid over the population, each group an exact mixture of betas."""
    for case in range(200):
        k, n = some_groups(random, [12, 40, 200][case % 3])
        if case % 20 == 0:
            k = k * 0
        if case % 20 == 1:
            k = n.copy()
        logs = np.linspace(0, np.log(1e6), 80)
        # As wide as the belief about the mean is at the least precision, and fine enough for the greatest.
        good, bad = (1 + np.sum(2 * each / (n + 1)) for each in (k, n - k))
        reach = [6 / np.sqrt(each) + 16 / each for each in (good, bad)]
        logits = np.log(good / bad) + np.linspace(-reach[0], reach[1], 800)
        t, u = (each.ravel() for each in np.meshgrid(logs, logits))
        s, m = np.exp(t), special.expit(u)
        a, b = s * m, s * special.expit(-u)
        weight = np.log(PRIOR(s)) + t + np.log(m) + np.log(special.expit(-u)) - len(k) * special.betaln(a, b)
        for each_k, each_n in zip(k, n):
            weight += special.betaln(each_k + a, each_n - each_k + b)
        weight = np.exp(weight - weight.max())
        keep = weight > 1e-8
        a, b, weight = a[keep], b[keep], weight[keep] / weight[keep].sum()
        answers = []
        for each_k, each_n in zip(k[:2], n[:2]):
            x, y = each_k + a, each_n - each_k + b
            miss = lambda at, p: np.sum(weight * special.betainc(x, y, at)) - p
            answers.append(
                [float(np.sum(weight * x / (x + y)))]
                + [float(optimize.brentq(miss, 0, 1, args=(p,), xtol=1e-9)) for p in (0.05, 0.95)]
            )
        yield [k.tolist(), n.tolist(), answers]


def PRIOR(s):
    """Density of the precision: the weight 10 ÷ (10 + s) of a group of ten pieces is uniform."""
    return 10 / (s + 10) ** 2


BLOCKS = {
    "intervals": ("k, n, level, Wilson low and high, Jeffreys low and high (0 at k = 0, 1 at k = n)", intervals),
    "betaBinomial": ("k, n, alpha, beta, pmf, cdf, p, quantile at p", beta_binomial),
    "newcombe": ("k1, n1, k2, n2, level, low, high", newcombe),
    "likeliestPopulation": ("k of each group, n of each group, alpha, beta", likeliest),
    "empiricalBayes": ("k of each group, n of each group, mean and 5 % and 95 % points of the first two groups", pooled),
}


def main():
    made = (
        f"Python {sys.version.split()[0]}, scipy {scipy.__version__}, statsmodels {statsmodels.__version__}, "
        f"mpmath {mpmath.__version__}, seed {SEED}"
    )
    blocks = []
    for index, (name, (columns, cases)) in enumerate(BLOCKS.items()):
        rows = ",\n      ".join(json.dumps(case, separators=(",", ":")) for case in cases(np.random.default_rng([SEED, index])))
        blocks.append(f'  "{name}": {{\n    "columns": "{columns}",\n    "cases": [\n      {rows}\n    ]\n  }}')
        print(name, file=sys.stderr)
    text = ",\n".join([f'  "made": "{made}"', *blocks])
    with open("tests/domain/statistics/reference/scipy-reference.json", "w", encoding="utf-8") as file:
        file.write(f"{{\n{text}\n}}\n")


main()
