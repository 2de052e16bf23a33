"""Rows of three formulas beside NumPy's own expressions, a single call, the import."""

import subprocess
import sys
import time

ROWS, ROUNDS = 1_000_000, 9


def best(what, per, rounds=ROUNDS):
    shortest = float("inf")
    for _ in range(rounds):
        begin = time.perf_counter_ns()
        what()
        shortest = min(shortest, time.perf_counter_ns() - begin)
    return shortest / per


def tell(name, nanoseconds):
    print(f"{name}: {nanoseconds:.4f}")


def inside(code):
    """The shortest time that a piece of code takes in a process of its own."""
    timed = f"import time; begin = time.perf_counter_ns(); {code}; print(time.perf_counter_ns() - begin)"
    return min(int(subprocess.check_output([sys.executable, "-c", timed])) for _ in range(ROUNDS))


whole = inside("import soum")
tell("Python import", whole)
tell("Python load", inside("import soum; soum.forage.standing(0.2, 0.11)") - whole)

from soum import forage, herd  # noqa: E402

CALLS = 100_000


def calls():
    standing = forage.standing
    for _ in range(CALLS):
        standing(0.2, 0.11)


def nothing():
    for _ in range(CALLS):
        pass


tell("Python call", best(calls, CALLS) - best(nothing, CALLS))

try:
    import numpy as np
except ImportError:
    sys.exit()


def column(first):
    return first * (1 + (np.arange(ROWS) % 1000) * 1e-4)


height, density = column(0.2), column(0.11)


def guarded():
    """The same answers with NumPy: NaN, and a status that names the argument or the result."""
    values = height * density
    status = np.where(~np.isfinite(values), -100, 0)
    status = np.where(~np.isfinite(density) | (density < 0), -2, status)
    status = np.where(~np.isfinite(height) | (height < 0), -1, status).astype(np.int32)
    return np.where(status < 0, np.nan, values), status


tell("NumPy product", best(lambda: height * density, ROWS))
tell("NumPy product guarded", best(guarded, ROWS))
tell("Python product", best(lambda: forage.standing(height, density), ROWS))
weight = column(300.0)
tell("NumPy power", best(lambda: (weight / 453.59237) ** 0.75, ROWS))
tell("Python power", best(lambda: herd.metabolic_animal_units(weight), ROWS))
start, ceiling, peak, days = column(0.2), column(0.4), column(0.005), column(20.0)
tell("NumPy logistic", best(lambda: ceiling / (1 + (ceiling / start - 1) * np.exp(-4 * peak * days / ceiling)), ROWS))
tell("Python logistic", best(lambda: forage.regrown(start, ceiling, peak, days), ROWS))
