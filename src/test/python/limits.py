#!/usr/bin/env python3
"""Derives the check values of LimitsOfDayTest, LimitReachTest and NightShiftTest without the program.

    python3 src/test/python/limits.py

Reads the shipped figures (src/main/resources/motebook/reference), nothing else; Python 3.9 or
newer, no package. The room is stepped by Runge and Kutta of the fourth order where the program has
closed forms; sums of lognormals are Lo's, and the chance that two correlated ones exceed 1
together is integrated as well. Written from the description of the model in DEVELOPERS.md.
"""
import csv
import math
import os

HERE = os.path.dirname(os.path.abspath(__file__))
TABLES = os.path.join(HERE, "../../main/resources/motebook/reference")


def by_key(name):
    with open(os.path.join(TABLES, name + ".csv"), encoding="utf-8") as file:
        return {row["key"]: row for row in csv.DictReader(file)}


OPERATIONS, MATERIALS = by_key("operations"), by_key("materials")

# The shop: 100 m3, one air change an hour, 6 m/min.
VOLUME, CHANGES, BETA = 100.0, 1 / 60, math.pi * 0.8**2 * 6.0
SETTLING = {"coarse": 5.2 / 60, "fine": 0.3 / 60}
STEP = 0.05  # min


def mean_room(settling, emission, worked, until):
    """Integral over each minute of the room's air for an emission while worked(t), mg min/m3."""
    loss = CHANGES + settling
    rate = lambda c, on: (emission if on else 0) / VOLUME - loss * c
    c, minutes = 0.0, []
    for minute in range(until):
        on, total = worked(minute), 0.0
        for _ in range(round(1 / STEP)):
            a = rate(c, on)
            b = rate(c + STEP / 2 * a, on)
            d = rate(c + STEP / 2 * b, on)
            e = rate(c + STEP * d, on)
            following = c + STEP / 6 * (a + 2 * b + 2 * d + e)
            # Simpson's rule with the middle by the cubic through both ends and slopes
            middle = (c + following) / 2 + STEP / 8 * (a - rate(following, on))
            total += STEP / 6 * (c + 4 * middle + following)
            c = following
        minutes.append(total)
    return minutes


def first_hour(kind):
    return 1 / BETA + sum(mean_room(SETTLING[kind], 1.0, lambda t: True, 60)) / 60


MC, MF = first_hour("coarse"), first_hour("fine")
FINE = 0.167 * MC / (0.833 * MF + 0.167 * MC)
UNIT = (1 - FINE) * MC + FINE * MF


def square(x):
    return x * x


class Job:
    def __init__(self, operation, material, start, end, own=None):
        row, wood = OPERATIONS[operation], MATERIALS[material]
        sands = row["family"] == "sanding"
        factor = float(wood["sanding_factor" if sands else "cutting_factor"])
        self.emission = float(row["reference_mg_m3"]) * factor / UNIT
        self.start, self.end = start, end
        u2 = square(math.log(float(row["high_mg_m3"]) / float(row["low_mg_m3"])) / 3.29)
        self.parts = {
            "operation " + operation: u2,
            "model": square(math.log(2)),
            own or f"own {operation} {material}": max(
                square(math.log(float(row["gsd"]))) - u2, square(math.log(1.67))
            ),
        }
        if sands:
            ends = float(wood["sanding_high"]), float(wood["sanding_low"])
            self.parts["material " + material] = square(math.log(ends[0] / ends[1]) / 3.29)
        until = 26 * 60
        on = lambda t: start <= t < end
        self.room = [
            c + f
            for c, f in zip(
                mean_room(SETTLING["coarse"], self.emission * (1 - FINE), on, until),
                mean_room(SETTLING["fine"], self.emission * FINE, on, until),
            )
        ]

    def breathed(self, minutes):
        """Inhalable dust of it over some minutes of its person, mg min/m3."""
        near = sum(1 for m in minutes if self.start <= m < self.end) * self.emission / BETA
        return near + sum(self.room[m] for m in minutes)

    def variance(self):
        return sum(self.parts.values())


def covariance(one, other):
    return sum(v for name, v in one.parts.items() if name in other.parts)


def lo(jobs, typical):
    """Median and sigma of the sum by Lo's formula."""
    means = [t * math.exp(job.variance() / 2) for job, t in zip(jobs, typical)]
    total = sum(means)
    s2 = (
        sum(
            covariance(a, b) * x * y
            for a, x in zip(jobs, means)
            for b, y in zip(jobs, means)
        )
        / total**2
    )
    return total * math.exp(-s2 / 2), math.sqrt(s2)


def above(z):
    return 0.5 * math.erfc(z / math.sqrt(2))


def both_over_one(v1, v2, c, w1, w2):
    """P(w1 e^x + w2 e^y > 1) for normals of variances v1, v2 and covariance c, by midpoints."""
    n, total = 40_000, 0.0
    width = 20 / n
    left = math.sqrt(v2 - c * c / v1)
    for i in range(n):
        z = -10 + (i + 0.5) * width
        rest = 1 - w1 * math.exp(math.sqrt(v1) * z)
        over = 1.0 if rest <= 0 else above((math.log(rest / w2) - c / math.sqrt(v1) * z) / left)
        total += over * math.exp(-z * z / 2) / math.sqrt(2 * math.pi) * width
    return total


def say(what, value):
    print(f"{what:58} {value:.9g}")


def cedar_and_oak():
    cedar = Job("circular-saw", "red-cedar", 540, 600)
    oak = Job("circular-saw", "oak", 660, 720)
    minutes = [*range(540, 600), *range(660, 720)]
    shares = [cedar.breathed(minutes) / 480 / 0.5, oak.breathed(minutes) / 480 / 1.0]
    median, sigma = lo([cedar, oak], shares)
    say("cedar and oak: index", median)
    say("cedar and oak: chance of an index over 1", above(-math.log(median) / sigma))
    exact = both_over_one(
        cedar.variance(), oak.variance(), covariance(cedar, oak), shares[0], shares[1]
    )
    say("cedar and oak: the same integrated", exact)
    # With a third of the emission, as behind a hood, so that the chance is a middling one.
    exact = both_over_one(
        cedar.variance(), oak.variance(), covariance(cedar, oak), shares[0] / 6, shares[1] / 6
    )
    median, sigma = lo([cedar, oak], [share / 6 for share in shares])
    say("a sixth of it: chance of an index over 1", above(-math.log(median) / sigma))
    say("a sixth of it: the same integrated", exact)


def reach():
    """Orbital sanding of oak from 9:00; then the same around half an hour of a circular saw."""
    first = lambda over: next(m for m in range(1, 900) if over(m))
    z20 = 1.6448536269514722  # above it lies one in twenty

    def alone(minutes):
        job = Job("orbital-sanding", "oak", 540, 540 + minutes)
        return lo([job], [job.breathed(range(540, 540 + minutes)) / 480])

    def over(figure, minutes, z):
        median, sigma = figure(minutes)
        return median * math.exp(z * sigma) >= 1

    say("orbital sanding: minutes to even chances", first(lambda m: over(alone, m, 0)))
    say("orbital sanding: minutes to one in twenty", first(lambda m: over(alone, m, z20)))

    def around(minutes):
        """Assembly from 9:00 until the circular saw at 9:20 to 9:50, and on after it."""
        before = min(minutes, 20)
        saw = Job("circular-saw", "oak", 560, 590)
        jobs = [saw, Job("assembly", "oak", 540, 540 + before, "own assembly")]
        mine = [*range(540, 540 + before), *range(560, 590)]
        if minutes > 20:
            jobs.append(Job("assembly", "oak", 590, 570 + minutes, "own assembly"))
            mine += range(590, 570 + minutes)
        if before < 20:
            mine += range(540 + before, 560)  # a gap of up to 30 min is spent in the room
        return lo(jobs, [job.breathed(mine) / 480 for job in jobs])

    say("assembly around a saw: minutes to even chances", first(lambda m: over(around, m, 0)))


def night():
    """Orbital sanding of oak from 23:00 to 1:00, in the air of one night and as one job."""
    job = Job("orbital-sanding", "oak", 1380, 1500)
    say("night: 8-hour TWA, typical and median", job.breathed(range(1380, 1500)) / 480)
    half = Job("orbital-sanding", "oak", 0, 60)
    say("each date alone", half.breathed(range(0, 60)) / 480)


cedar_and_oak()
night()
reach()
