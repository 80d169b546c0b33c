#!/usr/bin/env python3
"""Steps through days and prints the check values of DayTest.

Written from the equations of the air model, not from the program: both kinds of dust are stepped
through the default shop a hundredth of a minute at a time, and the sum of lognormals is Lo's
(2013). Figures of operations are read in the shipped table.
"""

import csv
import math
import os

HERE = os.path.dirname(os.path.abspath(__file__))
TABLE = os.path.join(HERE, "../../main/resources/motebook/reference/operations.csv")
with open(TABLE, encoding="utf-8") as rows:
    OPERATIONS = {row["key"]: row for row in csv.DictReader(rows)}

VOLUME, CLOSED, SETTLING = 100.0, 1 / 60, {"coarse": 5.2 / 60, "fine": 0.3 / 60}
STEP = 0.01


def beta(air_speed):
    return math.pi * 0.8**2 * air_speed


def first_hour(settling):
    """Mean near-field concentration over an hour for 1 mg/min in the clean default shop."""
    loss, room, total = CLOSED + settling, 0.0, 0.0
    for _ in range(round(60 / STEP)):
        half = room + STEP / 2 * (1 / VOLUME - loss * room)
        after = room + STEP * (1 / VOLUME - loss * half)
        total += STEP * (room + after) / 2
        room = after
    return 1 / beta(6) + total / 60


MC, MF = first_hour(SETTLING["coarse"]), first_hour(SETTLING["fine"])
FINE = 0.167 * MC / (0.833 * MF + 0.167 * MC)
SHARE = {"fine": FINE, "coarse": 1 - FINE}
U = (1 - FINE) * MC + FINE * MF


def emission(operation, factor=1.0):
    return float(OPERATIONS[operation]["reference_mg_m3"]) * factor / U


def indoors(sessions, gaps):
    """Typical TWA of each session's dust; sessions are (from, to, operation), gaps (from, to)."""
    end = max(to for _, to, _ in sessions)
    doses = [0.0] * len(sessions)
    for which, (begin, stop, operation) in enumerate(sessions):
        for kind, share in SHARE.items():
            source, loss, room = emission(operation) * share, CLOSED + SETTLING[kind], 0.0
            for i in range(round(end / STEP)):
                at = i * STEP
                running = begin <= at + STEP / 2 < stop
                gain = source / VOLUME if running else 0.0
                half = room + STEP / 2 * (gain - loss * room)
                after = room + STEP * (gain - loss * half)
                breathed = any(a <= at + STEP / 2 < b for a, b, _ in sessions) or any(
                    a <= at + STEP / 2 < b for a, b in gaps
                )
                if breathed:
                    doses[which] += STEP * (room + after) / 2
                if running:
                    doses[which] += STEP * source / beta(6)
                room = after
    return [dose / 480 for dose in doses]


def parts(operation, material=None, outdoors=False):
    """Log variances by name; the material is its range of the sanding factor."""
    row = OPERATIONS[operation]
    figure = (math.log(float(row["high_mg_m3"]) / float(row["low_mg_m3"])) / 3.29) ** 2
    named = {"operation " + operation: figure, "model": math.log(2) ** 2}
    if row["family"] == "sanding":
        named["material"] = (math.log(material[1] / material[0]) / 3.29) ** 2
    if outdoors:
        named["outdoors"] = math.log(2) ** 2
    named["own " + operation] = max(math.log(float(row["gsd"])) ** 2 - figure, math.log(1.67) ** 2)
    return named


def lognormal_sum(typicals, doubts):
    """Median and 90 % range of the sum."""
    expected = [t * math.exp(sum(d.values()) / 2) for t, d in zip(typicals, doubts)]
    total = sum(expected)
    variance = sum(
        sum(d[name] for name in d if name in e) * x * y
        for d, x in zip(doubts, expected)
        for e, y in zip(doubts, expected)
    ) / total**2
    median = total * math.exp(-variance / 2)
    spread = math.exp(1.645 * math.sqrt(variance))
    return median, median / spread, median * spread


if __name__ == "__main__":
    oak = (0.8, 1.2)
    gap = indoors([(0, 60, "orbital-sanding"), (80, 90, "drilling")], [(60, 80)])
    doubts = [parts("orbital-sanding", oak), parts("drilling")]
    print("a gap of twenty minutes: typical %.5f, central %.5f" % (sum(gap), lognormal_sum(gap, doubts)[0]))

    # Decker 2002: a day of deck building, in the yard with air of 15 m/min at the face.
    decks = [(90, "circular-saw"), (120, "drilling"), (270, "assembly")]
    day = [emission(op) / beta(15) * minutes / 480 for minutes, op in decks]
    doubts = [parts(op, outdoors=True) for _, op in decks]
    print("deck building: typical %.5f, central %.5f, range %.5f to %.5f" % ((sum(day),) + lognormal_sum(day, doubts)))

    # An hour of orbital sanding of oak in the yard.
    sanding = [emission("orbital-sanding") / beta(15) * 60 / 480]
    print("sanding in the yard: typical %.5f, central %.5f, range %.5f to %.5f" % ((sanding[0],) + lognormal_sum(sanding, [parts("orbital-sanding", oak, outdoors=True)])))
