"""The arithmetic of grazing several kinds of stock over a few acres.

    from soum import forage, units as u

    left = forage.available(height=8*u.inch, residual=3*u.inch, density=250*u.lb_per_acre_inch)
    left / u.lb_per_acre                                        # 1250.0
    forage.available(height="8 in", residual="3 in", density="250 lb/ac/in")

Modules: units, herd, forage, rainfall, grazing, farm, study, fit. Numbers are in base units:
multiply by a unit on the way in, divide on the way out; text carries its unit.
Formulas take lists and NumPy arrays, too, and give back the same.

What is impossible raises DomainError; in lists and arrays such rows are NaN
and one DomainWarning counts them. What lies outside a source's range gives the
value and a RangeWarning. A wrong document raises DocumentError with its path.
"""

from . import _core
from ._errors import (
    DocumentError,
    DomainError,
    DomainWarning,
    LibraryError,
    RangeWarning,
    UnknownFunctionError,
)
from ._manifest import VERSION as __version__

__all__ = [
    "DocumentError",
    "DomainError",
    "DomainWarning",
    "LibraryError",
    "RangeWarning",
    "UnknownFunctionError",
    "call",
    "farm",
    "fit",
    "forage",
    "grazing",
    "herd",
    "rainfall",
    "show_work",
    "study",
    "units",
]

_MODULES = ("documents", "farm", "fit", "forage", "grazing", "herd", "rainfall", "study", "units")


def __getattr__(name):
    if name in _MODULES:
        import importlib

        return importlib.import_module("." + name, __name__)
    raise AttributeError(f"module {__name__!r} has no attribute {name!r}")


def __dir__():
    return sorted(set(globals()) | set(_MODULES))


def call(function, arguments):
    """Calls any function of the library by its full name.

    Arguments:
        function: such as "forage.Available", as in bindings/api.json.
        arguments: a dict of its arguments by the names they have there.

    Returns:
        What the function gives, as numbers, text, lists and dicts.
    """
    return _core.call(function, arguments)


def show_work(function, arguments, system="metric"):
    """Shows a formula with its numbers put in.

    Arguments:
        function: a formula of this package, such as forage.available, or its
            full name, "forage.Available".
        arguments: a dict of its arguments, as the formula takes them.
        system: "metric" or "US": the units of the text.

    Returns:
        A dict: text is the whole step in one line; function, result, symbols,
        numbers, factor, answer, value and source are its parts.
    """
    given = {}
    made = _core.made_of(function)
    if made is None and callable(function):
        raise TypeError(f"{getattr(function, '__qualname__', function)} is no formula of soum")
    names = {here: there for here, there, _ in made.parameters} if made else {}
    for name, value in arguments.items():
        given[names.get(name, name)] = value
    return _core.call("formula.show", {"function": made.name if made else function, "arguments": given, "system": system})
