"""The house alone as a right-hand side of its own, integrated by LSODA hour by hour; reads JSON, prints the hour means of the air."""
import json
import sys

import numpy as np
from scipy.integrate import solve_ivp
from scipy.optimize import brentq

d = json.load(sys.stdin)
SIGMA = 5.670374419e-8
area, rsi_sheet = d["coverM2"], d["sheet"]


def lost(cover, h):
    """Heat through the sheet [W]: convection and two long-wave exchanges at the outer surface, no capacity there."""
    ta, ts = d["air"][h], d["sky"][h]

    def leaving(outer):
        k = outer + 273.15
        radiation = d["emissivity"] * SIGMA * (
            d["skyView"] * (k**4 - (ts + 273.15) ** 4) + (1 - d["skyView"]) * (k**4 - (ta + 273.15) ** 4))
        return d["film"][h] * (outer - ta) + radiation

    outer = brentq(lambda t: (cover - t) / rsi_sheet[h] - leaving(t), -90, 90, xtol=1e-10)
    return area * (cover - outer) / rsi_sheet[h]


def rhs(_, y, h):
    a, c, f, m, e, w, _mean = y
    ac, af, aw = d["airCover"] * (a - c), d["airFloor"] * (a - f), d["airBarrels"] * (a - w)
    fc, fm, me = d["floorCover"] * (f - c), d["floorMiddle"] * (f - m), d["middleDeep"] * (m - e)
    sun = d["sun"][h]
    return [
        (-ac - af - aw - d["leak"][h] * (a - d["air"][h]) + sun * d["sunAir"]) / d["airCapacity"],
        (ac + fc - lost(c, h)) / d["coverCapacity"],
        (af - fc - fm - d["edge"] * (f - d["air"][h]) + sun * d["sunFloor"]) / d["floorCapacity"],
        (fm - me) / d["middleCapacity"],
        (me - d["deepGround"] * (e - d["ground"][h])) / d["deepCapacity"],
        (aw + sun * d["sunBarrels"]) / d["barrelCapacity"],
        a,
    ]


y, means = np.array(d["start"] + [0.0]), []
for hour in range(len(d["air"])):
    y[6] = 0
    y = solve_ivp(rhs, (0, 3600), y, method="LSODA", args=(hour,), rtol=1e-8, atol=1e-8).y[:, -1]
    means.append(y[6] / 3600)
print(json.dumps(means))
