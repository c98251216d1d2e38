"""The house alone as a right-hand side of its own, integrated by LSODA hour by hour; reads JSON, prints the hour means of the air."""
import json
import sys

import numpy as np
from scipy.integrate import solve_ivp
from scipy.optimize import brentq

d = json.load(sys.stdin)
SIGMA = 5.670374419e-8
K = 273.15
names = ["air", "cover", "floor", "soil1", "soil2", "soil3", "barrels", "wall"]
capacity = np.array([d["capacity"][n] for n in names])


def rhs(_, y, h):
    a, c, f, s1, s2, s3, w, m = y[:8]
    te, ts = d["outside"][h], d["sky"][h]

    def leaving(inner):
        """Heat that the inner surface of the cover, without capacity, gets less what it gives [W], and its parts."""
        wet = min(max((f - inner) / 2, 0.0), 1.0)
        from_floor = (d["innerFloor"] + wet * d["latent"]) * (f - inner)
        from_air = d["innerAir"] * (a - inner)
        out = d["link"][h] * (inner - c)
        return from_air + from_floor - out, from_air, from_floor, out

    # The wall's surface is left out here: the layout has no back wall.
    inner = brentq(lambda t: leaving(t)[0], -120, 120, xtol=1e-11)
    _, from_air, from_floor, out = leaving(inner)
    sky = d["emissivity"] * SIGMA * d["coverM2"] * d["skyView"] * ((c + K) ** 4 - (ts + K) ** 4)
    # Long-wave to the surroundings is linear about the outdoor air in both programs.
    around = 4 * d["emissivity"] * SIGMA * d["coverM2"] * (1 - d["skyView"]) * (te + K) ** 3 * (c - te)
    af, aw = d["floorAir"] * (a - f), d["barrelAir"] * (a - w)
    f1, f2, f3 = d["floorSoil"] * (f - s1), d["soil12"] * (s1 - s2), d["soil23"] * (s2 - s3)
    sun = d["sun"][h]
    heat = [
        -from_air - af - aw - d["leak"][h] * (a - te) + sun * d["sunAir"],
        out - sky - around - d["film"][h] * d["coverM2"] * (c - te),
        af - from_floor - f1 - d["edge"] * (f - te) + sun * d["sunFloor"],
        f1 - f2,
        f2 - f3,
        f3 - d["soilDeep"] * (s3 - d["ground"][h]),
        aw + sun * d["sunBarrels"],
        0.0,
    ]
    return np.append(np.array(heat) / capacity, a)


y, means = np.array(d["start"] + [0.0]), []
for hour in range(len(d["outside"])):
    y[8] = 0
    y = solve_ivp(rhs, (0, 3600), y, method="LSODA", args=(hour,), rtol=1e-7, atol=1e-8).y[:, -1]
    means.append(y[8] / 3600)
print(json.dumps(means))
