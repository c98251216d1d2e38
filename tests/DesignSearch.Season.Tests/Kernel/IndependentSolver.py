"""The house alone as a right-hand side of its own, integrated by LSODA hour by hour; reads JSON, prints the hour means of the air."""
import json
import sys

import numpy as np
from scipy.integrate import solve_ivp
from scipy.optimize import brentq

d = json.load(sys.stdin)
SIGMA = 5.670374419e-8
K = 273.15
names = ["air", "cover", "floor", "soil1", "soil2", "soil3", "barrels", "wall", "contents"]
capacity = np.array([d["capacity"][n] for n in names])


ice, melts = d["barrelIce"], d["barrelMelts"]
water = d["capacity"]["barrels"]


def barrels_at(held):
    """Barrels by what they hold against water at 0 degrees; freezing is spread over a tenth of a kelvin in both programs."""
    return held / water if held > 0 else held / melts / 10 if held > -melts else (held + melts) / ice - 0.1


def held_at(w):
    return w * water if w > 0 else w * 10 * melts if w > -0.1 else (w + 0.1) * ice - melts


capacity[6] = 1.0


def rhs(_, y, h):
    a, c, f, s1, s2, s3, held, m, k = y[:9]
    w = barrels_at(held)
    te, ts = d["outside"][h], d["sky"][h]
    around_c = te - d["aroundBelow"][h]
    # What passes the cover as radiation: linear about the mean of 5 degrees and what lies beyond, in both programs.
    beyond = d["skyView"] * ts + (1 - d["skyView"]) * around_c
    cubed = ((beyond + 5) / 2 + K) ** 3
    floor_out, inner_out = d["floorOut"] * cubed * d["passes"][h], d["innerOut"] * cubed * d["passes"][h]
    air_out = d["airOut"] * cubed * d["passes"][h]
    floor_cover = d["floorCover"] * d["passes"][h]

    def leaving(inner):
        """Heat that the inner surface of the cover, without capacity, gets less what it gives [W], and its parts."""
        wet = min(max((f - inner) / 2, 0.0), 1.0)
        from_floor = (d["innerFloor"] + wet * d["latent"]) * (f - inner)
        from_air = (d["innerAir"] + d["innerAirPerRoot"] * abs(a - inner) ** (1 / 3)) * (a - inner)
        from_contents = d["contentsInner"] * (k - inner)
        out = d["link"][h] * (inner - c)
        return from_air + from_floor + from_contents - out - inner_out * (inner - beyond), from_air, from_floor, out, from_contents

    # The wall's surface is left out here: the layout has no back wall.
    inner = brentq(lambda t: leaving(t)[0], -120, 120, xtol=1e-11)
    _, from_air, from_floor, out, from_contents = leaving(inner)
    sky = d["emissivity"] * SIGMA * d["coverM2"] * d["skyView"] * ((c + K) ** 4 - (ts + K) ** 4)
    # Long-wave to the surroundings is linear about their temperature in both programs.
    around = 4 * d["emissivity"] * SIGMA * d["coverM2"] * (1 - d["skyView"]) * (around_c + K) ** 3 * (c - around_c)
    film = d["floorAir"] + d["floorAirSwing"] * min(max(f - a, -1.0), 1.0)
    af, aw, ak = film * (a - f), d["barrelAir"] * (a - w), d["contentsAir"] * (a - k)
    f1, f2, f3 = d["floorSoil"] * (f - s1), d["soil12"] * (s1 - s2), d["soil23"] * (s2 - s3)
    sun = d["sun"][h]
    heat = [
        -from_air - af - aw - ak - air_out * (a - beyond) - d["leak"][h] * (a - te) + sun * d["sunAir"],
        out + floor_cover * (f - c) - sky - around - d["film"][h] * d["coverM2"] * (c - te),
        af - from_floor - floor_cover * (f - c) - floor_out * (f - beyond) - f1 - d["edge"] * (f - te) + sun * d["sunFloor"],
        f1 - f2,
        f2 - f3,
        f3 - d["soilDeep"] * (s3 - d["ground"][h]),
        aw + sun * d["sunBarrels"],
        0.0,
        ak - from_contents + sun * d["sunContents"],
    ]
    return np.append(np.array(heat) / capacity, a)


y, means = np.array(d["start"] + [0.0]), []
y[6] = held_at(y[6])
for hour in range(len(d["outside"])):
    y[9] = 0
    y = solve_ivp(rhs, (0, 3600), y, method="LSODA", args=(hour,), rtol=1e-7, atol=1e-8).y[:, -1]
    means.append(y[9] / 3600)
print(json.dumps(means))
