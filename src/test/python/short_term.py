#!/usr/bin/env python3
"""Steps through short jobs with finishes and prints the check values of ShortTermTest.

A room of 100 m3, 1 air change an hour (3 with doors open), air speed 6 m/min; the person breathes
near field and room during a session, the room in a short gap, nothing after. The worst 15 minutes
are the highest of all windows that begin on a grid of a hundredth of a minute. Written from the
equations, not from the program: Heun steps of a hundredth of a minute.
"""

import math

VOLUME, BETA, STEP = 100.0, math.pi * 0.8**2 * 6, 0.01
# volatile g/L, share within the session, later rate per h, weight shares
LACQUER = (690, 0.95, 1.5, {"toluene": 0.30, "butanol": 0.05, "acetone": 0.05})
THINNER = (830, 0.98, 2.0, {"toluene": 0.30, "acetone": 0.30, "methanol": 0.10})
GRAMS = {"toluene": 92.14, "butanol": 74.12, "acetone": 58.08, "methanol": 32.04}


def air(jobs, breathes, until):
    """What is breathed at each step, mg/m3 of each finish's vapour.

    jobs: (from, to, millilitres, finish, air changes per h while it lasts); breathes: (from, to).
    """
    courses = []
    for begin, end, millilitres, (volatile, within, later, _), _ in jobs:
        mass, room, course = millilitres * volatile, 0.0, []

        def rate(t):
            if t < begin:
                return 0.0
            if t < end:
                return mass * within / (end - begin)
            return mass * (1 - within) * later / 60 * math.exp(-later / 60 * (t - end))

        for i in range(round(until / STEP)):
            t = i * STEP
            loss = max([1.0] + [job[4] for job in jobs if job[0] <= t < job[1]]) / 60
            # what is given off within a step, at its middle
            given = rate(t + STEP / 2)
            first = given / VOLUME - loss * room
            second = given / VOLUME - loss * (room + STEP * first)
            after = room + STEP * (first + second) / 2
            there = any(a <= t < b for a, b in breathes)
            near = given / BETA if begin <= t < end else 0.0
            course.append(((room + after) / 2 + near) if there else 0.0)
            room = after
        courses.append(course)
    return courses


def worst(jobs, breathes, until=240):
    courses = air(jobs, breathes, until)
    window = round(15 / STEP)
    for solvent, grams in GRAMS.items():
        mixed = [
            sum(c * job[3][3].get(solvent, 0.0) for c, job in zip(at, jobs))
            for at in zip(*courses)
        ]
        mixed = [0.0] * window + mixed + [0.0] * window
        total = best = sum(mixed[:window])
        for i in range(window, len(mixed)):
            total += mixed[i] - mixed[i - window]
            best = max(best, total)
        if best > 0:
            print(f"  {solvent} {best * STEP / 15 * 24.45 / grams:.4f} ppm")


if __name__ == "__main__":
    print("25 min, 250 mL lacquer and 50 mL thinner, doors open")
    worst([(0, 25, 250, LACQUER, 3), (0, 25, 50, THINNER, 3)], [(0, 25)])
    print("6 min with 60 mL thinner, doors closed, then away")
    worst([(0, 6, 60, THINNER, 1)], [(0, 6)])
    print("10 min with 100 mL lacquer, 8 min in the room, 10 min with 40 mL thinner, closed")
    worst([(0, 10, 100, LACQUER, 1), (18, 28, 40, THINNER, 1)], [(0, 28)])
    print("somebody who comes 2 min after 20 min with 200 mL lacquer and stays an hour")
    worst([(0, 20, 200, LACQUER, 1)], [(22, 82)])
