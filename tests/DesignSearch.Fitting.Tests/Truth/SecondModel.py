"""A greenhouse by another hand: air, outer skin, floor skin, a shelf of pots and a column of eight soil nodes, radiation linear about the air.

Reads a list of houses as JSON, writes for each what loggers and meter would have written every ten minutes, and what more heat its nights take for each kelvin
that it is held warmer. Steps of five minutes, backward Euler, the factors of each hour by SciPy.

Inside, air that rises by itself gives c dT^(1/3) (1.31 upright, 1.51 under a ceiling, the usual correlations; 1.7 to 2 of greenhouses, from memory), so the loss of
a house grows faster than its difference, as hot boxes show (Geoola et al. 2009, Polymer Testing 28:470-474); a fan's 0 to 2.5 W/(m2K) are blended in as the root of
the cubes (Churchill, from memory). Outside 4 + 3.1 v (from memory). The sun's beam is what the shadow of an upright box takes from it, not what the floor would.
"""
import json
import math
import sys

import numpy as np
from scipy.linalg import lu_factor, lu_solve

STEP = 300.0
SIGMA = 5.670374e-8
SOIL = [0.03, 0.05, 0.08, 0.12, 0.18, 0.27, 0.40, 0.60]
AIR, SKIN, FLOOR, POTS, FIRST = 0, 1, 2, 3, 4
NODES = FIRST + len(SOIL)


def film(h, difference):
    """Air to the skin's inside, for the difference of air and the skin's outside [W/(m2K)]."""
    value = 3.0
    for _ in range(8):
        at_film = difference / value / (1 / value + h["sheet_r"])
        value = (h["rises"] ** 3 * max(at_film, 0.01) + h["stirred"] ** 3) ** (1 / 3)
    return value


def sun_in(h, hour):
    """Sun that passes the cover [W]: a box as high as the middle of the roof, of whose sides the sky sees a half and the ground the other."""
    beam, diffuse, ground = h["beam"][hour], h["diffuse"][hour], 0.2 * h["sun"][hour]
    zenith, off = math.radians(h["zenith"][hour]), math.radians(h["azimuth"][hour] - h["ridge"])
    floor, sides = h["length"] * h["width"], 2 * (h["length"] + h["width"]) * h["height"]
    shadow = floor * math.cos(zenith) + math.sin(zenith) * h["height"] * (h["length"] * abs(math.sin(off)) + h["width"] * abs(math.cos(off)))
    return h["through"] * (beam * max(shadow, 0) * (zenith < math.pi / 2) + diffuse * (floor + sides / 2) + ground * sides / 2)


def links(h, out, wind, t):
    """Conductances between nodes, and to the outside, of one hour that begins at t."""
    g = np.zeros((NODES, NODES))

    def join(a, b, w):
        g[a, b] += w
        g[b, a] += w

    # Air to the skin through inner film and sheet; floor to the skin by long-wave through the same sheet.
    inner = 1 / (1 / film(h, abs(t[AIR] - t[SKIN])) + h["sheet_r"])
    join(AIR, SKIN, inner * h["cover"])
    join(AIR, FLOOR, h["floor_film"] * h["floor"])
    join(AIR, POTS, h["pots_w"] * h["floor"])
    join(FLOOR, SKIN, 1 / (1 / 4.6 + h["sheet_r"]) * h["floor"])
    previous, thick = FLOOR, 0.0
    for i, d in enumerate(SOIL):
        join(previous, FIRST + i, h["soil_k"] * h["floor"] / ((thick + d) / 2 if i else d / 2))
        previous, thick = FIRST + i, d
    outer = np.zeros(NODES)
    # What does not see the sky sees ground and hedges, as warm as the air.
    around = 0.88 * (1 - h["view"]) * 4 * SIGMA * (out + 273.15) ** 3
    outer[SKIN] = h["cover"] * (4.0 + 3.1 * h["shelter"] * wind + around)
    leak = h["leak"] + h["leak_wind"] * h["shelter"] * wind
    outer[AIR] = leak * h["volume"] / 3600 * 1260 * math.exp(-h["elevation"] / 8434)
    outer[FLOOR] = h["edge"]
    return g, outer


def run(h, setting, log):
    hours = len(h["out"])
    store = np.array([h["air_c"] * h["floor"], 2500 * h["cover"], 2e6 * 0.01 * h["floor"], h["pots_c"] * h["floor"]] + [2.1e6 * d * h["floor"] for d in SOIL])
    t = np.full(NODES, h["out"][0])
    t[FIRST:] = np.linspace(h["out"][0] + 3, h["ground"], len(SOIL))
    deep = h["soil_k"] * h["floor"] / 1.0
    heat_sum, rows, kwh = 0.0, [], 0.0
    for hour in range(hours):
        out, sky, wind, sun = h["out"][hour], h["sky"][hour], h["wind"][hour], h["sun"][hour]
        g, outer = links(h, out, wind, t)
        mean = (out + sky) / 2 + 273.15
        radiant = 0.88 * h["view"] * h["cover"] * 4 * SIGMA * mean**3
        matrix = np.diag(store / STEP + g.sum(1) + outer) - g
        matrix[SKIN, SKIN] += radiant
        matrix[-1, -1] += deep
        wanted = setting[hour]
        source = outer * out
        source[SKIN] += radiant * sky
        source[-1] += deep * h["ground"]
        inside = sun_in(h, hour)
        source[AIR] += 0.35 * inside
        source[FLOOR] += 0.40 * inside
        source[POTS] += 0.10 * inside
        if t[AIR] > 26:
            matrix[AIR, AIR] += 300
            source[AIR] += 300 * out
        free = lu_factor(matrix)
        unit = np.zeros(NODES)
        unit[AIR] = 1
        answer = lu_solve(free, unit)[AIR]
        for step in range(int(3600 / STEP)):
            new = lu_solve(free, store / STEP * t + source)
            watts = 0.0
            if wanted is not None:
                watts = min(max((wanted - new[AIR]) / answer, 0), h["heater"] if log else 1e6)
                new = new + lu_solve(free, unit) * watts
            t = new
            kwh += watts * STEP / 3.6e6
            if hour >= h["before"] and sun <= 0:
                heat_sum += watts * STEP / 3.6e6
            if log and hour >= h["before"] and step % 2 == 1:
                rows.append((round(t[AIR], 3), round(kwh, 4)))
    return heat_sum, rows


def main():
    answers = []
    for h in json.load(sys.stdin):
        hours = len(h["out"])
        night = [(hour - h["before"]) % 24 for hour in range(hours)]
        held = [8.0 if hour >= h["before"] and (n >= 17 or n < 8) else None for hour, n in enumerate(night)]
        _, rows = run(h, held, True)
        low, _ = run(h, [6.0] * hours, False)
        high, _ = run(h, [10.0] * hours, False)
        dark = sum(1 for hour in range(h["before"], hours) if h["sun"][hour] <= 0)
        answers.append({"rows": rows, "slope": 1000 * (high - low) / 4 / dark})
    json.dump(answers, sys.stdout)


if __name__ == "__main__":
    main()
