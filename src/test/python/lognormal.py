"""Derives the reference values of the fifteen-value example in the statistics tests.

The results, mg/m3, are those of Mulhausen and Damiano 1998, A Strategy for Assessing and Managing
Occupational Exposures, 2nd edition, Table V.2. Written with SciPy 1.17.1; the tests do not need it.
Run: python3 src/test/python/lognormal.py
"""

import numpy as np
from scipy import optimize, special, stats

FIFTEEN = [1.3, 1.8, 1.2, 4.5, 2.0, 2.1, 5.5, 2.2, 3.0, 2.4, 2.5, 2.5, 3.5, 2.8, 2.9]


def show(name, *values):
    print(f"{name:40s}", *(f"{value:.9g}" for value in values))


x = np.array(FIFTEEN)
y = np.log(x)
n, mean, s = len(y), y.mean(), y.std(ddof=1)
show("GM GSD mean", np.exp(mean), np.exp(s), x.mean())
show("95th percentile, z = 1.645", np.exp(mean + 1.645 * s))


def upper(confidence):
    """exp(mean + K s), K from the exact non-central t."""
    k = stats.nct.ppf(confidence, n - 1, stats.norm.ppf(0.95) * np.sqrt(n)) / np.sqrt(n)
    return np.exp(mean + k * s)


show("UTL95,95 UTL95,70", upper(0.95), upper(0.70))


def over(limit):
    """Share over a limit, %, with its 90 % interval."""
    u = (np.log(limit) - mean) / s

    def distance(p):
        root = optimize.brentq(lambda d: stats.nct.cdf(u * np.sqrt(n), n - 1, d) - p, -30, 30, xtol=1e-13)
        return root / np.sqrt(n)

    return [100 * stats.norm.sf(z) for z in (u, distance(0.05), distance(0.95))]


show("% over 5, low90, high90", *over(5))
show("% over 2, low90, high90", *over(2))

# The unbiased mean: GM times 0F1(; (n-1)/2; (n-1)^2 s^2 / (4n)), through the Bessel function.
b, z = (n - 1) / 2, (n - 1) ** 2 * s**2 / (4 * n)
unbiased = np.exp(mean) * special.gamma(b) * z ** ((1 - b) / 2) * special.iv(b - 1, 2 * np.sqrt(z))
show("unbiased mean, lognormal mean", unbiased, np.exp(mean + s**2 / 2))
show("Shapiro-Wilk of the logarithms, W p", *stats.shapiro(y))

# The two lowest known only to lie below 1.5: maximum likelihood.
known = np.log(x[x > 1.5])


def minus_log_likelihood(p):
    known_part = stats.norm.logpdf(known, p[0], np.exp(p[1])).sum()
    return -known_part - 2 * stats.norm.logcdf(np.log(1.5), p[0], np.exp(p[1]))


fit = optimize.minimize(
    minus_log_likelihood, [mean, np.log(s)], method="Nelder-Mead", options=dict(xatol=1e-13, fatol=1e-14, maxiter=10000)
)
show("two below 1.5: GM GSD", np.exp(fit.x[0]), np.exp(np.exp(fit.x[1])))
