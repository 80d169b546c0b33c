#!/usr/bin/env python3
"""Steps through one lacquering in a room and prints the check values of FumesTest.

25 min of finishing with 250 mL nitrocellulose lacquer and 50 mL lacquer thinner, 100 m3, doors
open (3 /h), air speed 6 m/min; nothing breathed before or after. Limits: the stricter of OSHA's
and NIOSH's 8-hour figures; n-butanol has OSHA's alone, for NIOSH's is a ceiling. Written from the
equations, not from the program: explicit steps of a hundredth of a minute.
"""

import math

# millilitres, volatile g/L, share within the session, later rate per h, weight shares
USED = [
    (250, 690, 0.95, 1.5,
     {"toluene": 0.30, "acetone": 0.05, "mek": 0.10, "mibk": 0.05, "isopropanol": 0.05,
      "ethanol": 0.10, "butanol": 0.05, "butyl-acetate": 0.15, "xylenes": 0.07,
      "mineral-spirits": 0.08}),
    (50, 830, 0.98, 2.0,
     {"toluene": 0.30, "acetone": 0.30, "mek": 0.10, "methanol": 0.10, "butyl-acetate": 0.10,
      "isopropanol": 0.05, "xylenes": 0.05}),
]
# g/mol, 8-hour limit in ppm
SOLVENTS = {
    "toluene": (92.14, 100), "acetone": (58.08, 250), "mek": (72.11, 200), "mibk": (100.16, 50),
    "isopropanol": (60.10, 400), "ethanol": (46.07, 1000), "butanol": (74.12, 100),
    "butyl-acetate": (116.16, 150), "xylenes": (106.17, 100), "mineral-spirits": (138, 62),
    "methanol": (32.04, 200),
}
MINUTES, VOLUME, LOSS, BETA = 25, 100.0, 3 / 60, math.pi * 0.8**2 * 6


def breathed(step=0.01):
    """mg/m3 x min breathed of each solvent."""
    dose = dict.fromkeys(SOLVENTS, 0.0)
    for millilitres, volatile, within, _later, shares in USED:
        for solvent, share in shares.items():
            mass = millilitres * volatile * share
            rate = mass * within / MINUTES
            room = 0.0
            for _ in range(round(MINUTES / step)):
                before = room
                half = room + step / 2 * (rate / VOLUME - LOSS * room)
                room += step * (rate / VOLUME - LOSS * half)
                dose[solvent] += step * ((before + room) / 2 + rate / BETA)
    return dose


if __name__ == "__main__":
    index = 0.0
    for solvent, dose in breathed().items():
        grams, limit = SOLVENTS[solvent]
        ppm = dose / 480 * 24.45 / grams
        index += ppm / limit
        print(f"{solvent} {ppm:.5f} ppm")
    print(f"index {index:.6f}")
