"""What can go wrong, as exceptions and warnings."""


class _Limits:
    """What an argument was, and what it may be.

    function and argument name the place, index is the argument's, from 1 (0
    for the result). value, low and high are in unit, the unit that the source
    takes ("" for a plain number). gap is true where the source covers what is
    up to low and from high on, and nothing between. source tells whose limits
    they are.
    """

    def __init__(self, message, report=None):
        super().__init__(message)
        report = report or {}
        self.function = report.get("function", "")
        self.argument = report.get("argument", "")
        self.index = report.get("index", 0)
        self.value = _number(report.get("value"))
        self.low = _number(report.get("low"))
        self.high = _number(report.get("high"))
        self.gap = report.get("gap", False)
        self.unit = report.get("unit", "")
        self.source = report.get("source", "")


def _number(value):
    """JSON knows no infinities and no NaN: they come as text. A word stays one."""
    return float(value) if isinstance(value, (int, float)) or value in ("NaN", "+Inf", "-Inf") else value


class DomainError(_Limits, ValueError):
    """An argument is impossible: there is no value."""


class DomainWarning(_Limits, UserWarning):
    """Some rows of arrays are impossible: their values are NaN.

    rows counts them, first is the index of the first; the other attributes
    tell of that one.
    """

    rows = 0
    first = None


class RangeWarning(_Limits, UserWarning):
    """An argument lies outside what the source covers; the value is given.

    Where arrays were given, rows counts such rows and first is the index of
    the first; the other attributes tell of that one.
    """

    rows = 1
    first = None


class DocumentError(ValueError):
    """A document or an argument is wrong.

    path tells where, problem what is wrong there, allowed what would be right;
    value is what stood there, where that can be shown.
    """

    def __init__(self, message, path="", problem="", allowed="", value=None):
        super().__init__(message)
        self.path = path
        self.problem = problem
        self.allowed = allowed
        self.value = value


class UnknownFunctionError(LookupError):
    """The library has no function of this name."""


class LibraryError(RuntimeError):
    """The native library is missing, of another build, or at fault."""
