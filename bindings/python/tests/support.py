"""What the tests share: the manifest, the printed checks, a farm."""

import importlib
import json
import math
import os
import subprocess
import sys
import warnings

HERE = os.path.dirname(os.path.abspath(__file__))
BINDINGS = os.path.dirname(os.path.dirname(HERE))
ROOT = os.path.dirname(BINDINGS)
EXAMPLES = os.path.join(os.path.dirname(HERE), "examples")

STRIP = (
    "They want 67.5 lb/day; 1,000 lb/ac stand above what is left, of which 80 % are eaten in a day.\n"
    "That is 0.0844 ac: a strip of 36.8 ft.\n"
)


def read_json(*path):
    with open(os.path.join(*path), encoding="utf-8") as file:
        return json.load(file)


MANIFEST = read_json(BINDINGS, "api.json")
CALLS = read_json(BINDINGS, "calls.json")  # one of every look-up and work
FUNCTIONS = MANIFEST["functions"]
BY_NAME = {f["name"]: f for f in FUNCTIONS}

KEYWORDS = {"yield": "yield_", "from": "from_"}


def snake(name):
    return KEYWORDS.get(name, name)


def found(function):
    """The Python function of a function of the manifest."""
    return getattr(importlib.import_module("soum." + function["package"]), snake(function["snake"]))


def parameters(function):
    return function["parameters"] or []


def checks():
    """The check lines, each with the table and source that a line before them names."""
    table = {}
    with open(os.environ["SOUM_TEST_CHECKS"], encoding="utf-8") as file:
        for line in file:
            read = json.loads(line)
            if "table" in read:
                table = read
            else:
                yield {**table, **read}


def farm():
    return read_json(ROOT, "examples", "season", "data", "farm.json")


def small_farm():
    return {
        "version": 1,
        "today": "2001-05-01",
        "season": {"from": "2001-05-01", "to": "2001-05-20"},
        "land": [
            {"id": "a", "width": "30 m", "length": "100 m", "height": "12 cm", "pasture": "mixed-pasture"},
        ],
        "groups": [{"id": "g", "head": 3, "class": "ewe"}],
        "rotations": [{"land": ["a"], "groups": [{"group": "g"}], "shortest_rest": "20 days"}],
    }


def quiet(function, *arguments, **named):
    """Calls a function; gives its value and the warnings."""
    with warnings.catch_warnings(record=True) as raised:
        warnings.simplefilter("always")
        value = function(*arguments, **named)
    return value, raised


def close(a, b, relative=1e-12):
    return a == b or math.isclose(a, b, rel_tol=relative, abs_tol=0)


def run(code, seconds=120, **environment):
    """Runs code in a Python of its own, bounded in time; gives what it printed."""
    done = subprocess.run(
        [sys.executable, "-c", code],
        cwd=HERE,
        env={**os.environ, **environment},
        timeout=seconds,
        stdout=subprocess.PIPE,
        stderr=subprocess.STDOUT,
        text=True,
    )
    if done.returncode != 0:
        raise AssertionError(f"exit {done.returncode}:\n{done.stdout}")
    return done.stdout
