#!/usr/bin/env python3
"""Works out the life of a cartridge by Wheeler and Jonas with Wood's estimates, for ReckonContractTest.

Toluene with the shipped figures, two cartridges of 26 g, 53.3 L/min, 22 C, to 10 % breakthrough.
Written from the equations (constants from memory), not from the program.
"""

import math

R_GAS, W0, B, BED = 1.987, 0.454, 3.56e-5, 0.0855
GRAMS, LITRES_PER_MIN, DENSITY, RATIO = 52.0, 53.3, 0.40, 9.0  # RATIO is (C0 - Cb)/Cb
MOLAR, LIQUID, INDEX, KPA_20, KPA_25 = 92.14, 0.867, 1.4941, 2.92, 3.80


def minutes(ppm, celsius=22.0):
    kelvin = 273.15 + celsius
    part = (1 / 293.15 - 1 / kelvin) / (1 / 293.15 - 1 / 298.15)
    saturated = math.exp(math.log(KPA_20) + part * math.log(KPA_25 / KPA_20))
    here = ppm * 1e-6 * 101.325
    inlet = here * 1000 * MOLAR / (8.314462 * kelvin) * 1e-6  # g/cm3
    polar = (INDEX**2 - 1) / (INDEX**2 + 2) * MOLAR / LIQUID
    potential = R_GAS * kelvin * math.log(saturated / here)
    held = W0 * LIQUID * math.exp(-B * W0 * polar**-1.8 * potential**2)
    rate = 1 / (BED * (0.000825 + (0.063 - 0.0055 * math.log(RATIO)) / polar))
    flow = LITRES_PER_MIN * 1000
    return held * GRAMS / (inlet * flow) - held * DENSITY / (rate * inlet) * math.log(RATIO)


if __name__ == "__main__":
    for ppm in (1000, 500):
        print(f"toluene {ppm} ppm: {minutes(ppm):.4f} min")
