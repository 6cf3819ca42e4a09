"""One-hour floods of one space by scipy's solve_ivp (LSODA) at relative accuracy 1e-6; prints seconds a run as JSON.

The rates are the program's own, straight below a millimetre of head, in plain numbers: no array is made in them.
Each flood is solved with t_eval and with dense_output, and the quicker counts. Where the answer is the time of an
event, it is solved with the event, and once more without, told when to end.
"""
import json
import math
import sys
import time

import numpy
import scipy
from scipy.integrate import solve_ivp

G = 9.80665
LINEAR_BELOW = 1e-3
STRAIGHT = 1 / math.sqrt(LINEAR_BELOW)
HOUR = 3600.0
RUNS = 40
sqrt = math.sqrt


def strength(diameter):
    return 0.6 * math.pi / 4 * diameter**2 * sqrt(2 * G)


def closing(strong, pumped, sea, fall):
    """dy/dt = K·r(sea − fall·y) − Q."""

    def rate(_t, y):
        head = sea - fall * y.item()
        if head >= LINEAR_BELOW:
            return (strong * sqrt(head) - pumped,)
        if head <= -LINEAR_BELOW:
            return (-strong * sqrt(-head) - pumped,)
        return (strong * head * STRAIGHT - pumped,)

    return rate


def held(i):
    """Level in a space held in place [m]."""
    rate = closing(strength(i["d"]) / i["Ap"], i.get("Qp", 0.0) / i["Ap"], i["H"], 1.0)
    return [(rate, HOUR)], i.get("h0", 0.0), None


def box(i, pumped):
    space = i["mu"] * i["comp_length"] * i["B"]
    return closing(strength(i["d"]), pumped, i["T0"], 1 / space - 1 / (i["L"] * i["B"]))


def sinks(i):
    """Water in a box that sinks evenly [m³]."""
    return [(box(i, i.get("Qp", 0.0)), HOUR)], 0.0, None


def is_lost(i):
    """The same to the deck edge; the pump starts late."""
    edge = (i["D"] - i["T0"]) * i["L"] * i["B"]
    return [(box(i, 0.0), i["pump_starts"]), (box(i, i["Qp"]), HOUR)], 0.0, edge


def pumped_out(i):
    """Level in a space pumped out along a parabola [m]."""
    bend = (i["shutoff_head"] - i["lift_ref"]) / i["Q_at_7m"] ** 2
    spare = i["shutoff_head"] - i["discharge_z"]

    def rate(_t, y):
        return (-sqrt((spare + y.item()) / bend) / i["Ap"],)

    return [(rate, HOUR)], i["h0"], i["h1"]


def event_at(level):
    def value(_t, y):
        return y.item() - level

    value.terminal = True
    return value


def solve(legs, start, more):
    """Every leg in turn; an event ends the run."""
    began, y = 0.0, start
    rates = 0
    for rate, end in legs:
        wanted = {**more, "t_eval": [t for t in (0.0, 1800.0, end) if began <= t <= end]} if "t_eval" in more else more
        run = solve_ivp(rate, (began, end), numpy.array([y]), method="LSODA", rtol=1e-6, atol=1e-9, **wanted)
        rates += run.nfev
        if run.status == 0:
            began, y = end, run.y[0, -1]
    return run, rates


def seconds_of(act):
    times = []
    for _ in range(RUNS):
        began = time.perf_counter()
        act()
        times.append(time.perf_counter() - began)
    return sorted(times)[len(times) // 2]


def quickest(legs, start, events):
    manners = ({"t_eval": True}, {"dense_output": True})
    return min(seconds_of(lambda more=more: solve(legs, start, {**more, **events})) for more in manners)


def measure(case):
    legs, start, threshold = case
    events = {} if threshold is None else {"events": event_at(threshold)}
    run, rates = solve(legs, start, {"dense_output": True, **events})
    if threshold is None:
        return {"seconds": quickest(legs, start, {}), "answer": float(run.sol(1800.0)[0]), "rates": rates}
    answer = float(run.t_events[0][0])
    told = [*legs[:-1], (legs[-1][0], answer)]
    return {"seconds": quickest(legs, start, events), "told": quickest(told, start, {}), "answer": answer, "rates": rates}


FAMILIES = {"held": held, "sinks": sinks, "is-lost": is_lost, "pumped-out": pumped_out}

asked = json.load(sys.stdin)
cases = {name: measure(FAMILIES[one["family"]](one["inputs"])) for name, one in asked.items()}
print(json.dumps({"version": scipy.__version__, "cases": cases}))
