"""Answers, one a line, to questions on standard input: a name and its numbers. General statistics routines only."""

import sys

from functools import cache
from math import isnan, pi, sqrt

from numpy import array
from numpy.polynomial.hermite_e import hermegauss
from scipy.integrate import quad
from scipy.optimize import brentq
from scipy.stats import beta, binom, chi2, nct, norm


def noncentral_t(t, nu, delta):
    answer = nct.cdf(t, nu, delta)
    return noncentral_t_by_integral(t, nu, delta) if isnan(answer) else answer  # none in far tails, SciPy 1.17


def noncentral_t_by_integral(t, nu, delta):
    def integrand(chi_squared):
        return chi2.pdf(chi_squared, nu) * norm.cdf(t * sqrt(chi_squared / nu) - delta)

    if nu == 1:  # the density has a pole at zero: by the root instead
        def rooted(chi):
            return 2 * norm.pdf(chi) * norm.cdf(t * chi - delta)

        knee = min(max(delta / t, 0), 9) if t else 0
        return pieces(rooted, [0, max(knee - 8 / max(abs(t), 1), 0), knee, knee + 8 / max(abs(t), 1), 39])
    knee = nu * (delta / t) ** 2 if t and delta / t > 0 else nu
    return pieces(integrand, [0, chi2.ppf(1e-9, nu), knee * 0.9, knee, knee * 1.1, nu, chi2.isf(1e-9, nu), chi2.isf(1e-16, nu)])


def pieces(function, ends):
    ends = sorted(ends)
    return sum(
        quad(function, a, b, epsabs=1e-13, epsrel=1e-12, limit=400)[0] for a, b in zip(ends, ends[1:]) if b > a
    )


def one_sided(n, share, confidence):
    return nct.ppf(confidence, n - 1, norm.ppf(share) * sqrt(n)) / sqrt(n)


def radius(x, share):
    return brentq(lambda r: norm.cdf(x + r) - norm.cdf(x - r) - share, 0, abs(x) + 9, xtol=1e-14)


@cache
def radii(n, share):
    """Nodes and weights of the mean over the sample's mean, and the radius at each."""
    z, weights = hermegauss(120)
    return weights / sqrt(2 * pi), array([radius(x / sqrt(n), share) for x in z])


def fit(n, share, k):
    if k <= 0:
        return 0.0
    weights, r = radii(n, share)
    return weights @ chi2.sf((n - 1) * (r / k) ** 2, n - 1)


def two_sided(n, share, confidence):
    return brentq(lambda k: fit(n, share, k) - confidence, 0.01, 2000, xtol=1e-11, rtol=1e-12)


def shifted_fit(n, share, mean, deviation, lower, upper, common):
    def integrand(shift):
        margin = min(mean + shift - lower, upper - mean - shift)
        return norm.pdf(shift, scale=common) * fit(n, share, margin / deviation)

    middle = (lower + upper) / 2 - mean
    ends = sorted([max(-7 * common, lower - mean), min(7 * common, upper - mean)])
    inner = [e for e in (middle, 0, -common, common) if ends[0] < e < ends[1]]
    marks = [ends[0], *sorted(inner), ends[1]]
    return sum(quad(integrand, a, b, epsabs=1e-9, epsrel=1e-8, limit=100)[0] for a, b in zip(marks, marks[1:]))


def shifted_one_sided(n, share, margin, deviation, common):
    delta = norm.ppf(share) * sqrt(n)

    def integrand(shift):
        return norm.pdf(shift, scale=common) * nct.cdf(sqrt(n) * (margin + shift) / deviation, n - 1, delta)

    return quad(integrand, -8 * common, 8 * common, epsabs=1e-11, epsrel=1e-10, limit=400)[0]


def binomial_at_most(k, n, share):
    return binom.cdf(k, n, share)


def share_at_least(k, n, confidence):
    return beta.ppf(1 - confidence, k, n - k + 1)


for line in sys.stdin:
    name, *numbers = line.split()
    print(repr(float(globals()[name](*(int(x) if x.isdigit() else float(x) for x in numbers)))), flush=True)
