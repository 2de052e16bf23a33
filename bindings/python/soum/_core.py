"""The way to the native library.

The library is loaded at the first call. It holds a Go runtime, which does not
survive a fork: after one, the child loads a private copy at its first call.
Numbers go through soum_eval, everything else through soum_call as JSON.
"""

import _thread
import os
import sys

from . import _manifest
from ._errors import (
    DocumentError,
    DomainError,
    DomainWarning,
    LibraryError,
    RangeWarning,
    UnknownFunctionError,
)
from ._fast import TAKE

_MOST = 8  # arguments that a formula may have
_RESULT, _BROKEN, _NO_FORMULA = -100, -998, -999  # statuses of soum_eval
_NO_NAME = -3  # status of soum_call
_CHUNK = 16384  # rows at a time, so that columns stay in the processor's cache

_DEPTH = 6  # frames from the caller of a formula to _one and _lists

_library = None
_generation = 0  # forks since a library was loaded
_touched = False  # whether this process, or one it was forked from, loaded one
_pools = []  # all rooms, which belong to the library that made them
_buffers = []
_lock = _thread.allocate_lock()


# -- loading ------------------------------------------------------------------


def library_path():
    """Where the native library is: beside this module, or SOUM_LIBRARY."""
    chosen = os.environ.get("SOUM_LIBRARY")
    if chosen:
        return chosen
    name = {"win32": "soum.dll", "darwin": "libsoum.dylib"}.get(sys.platform, "libsoum.so")
    return os.path.join(os.path.dirname(os.path.abspath(__file__)), name)


class _Library:
    """A loaded library."""

    def __init__(self, path):
        import ctypes

        self.ctypes = ctypes
        self.path = path
        try:
            handle = _private_copy(ctypes, path) if _generation else ctypes.CDLL(path)
        except OSError as error:
            raise LibraryError(
                f"the native library {path} cannot be loaded: {error}; "
                "pip install builds it, and needs Go for that"
            ) from error
        held = ctypes.PyDLL(path, handle=handle._handle)
        try:
            abi = handle.soum_abi
            self.eval = handle.soum_eval  # lets other threads run meanwhile
            self.quick = held.soum_eval  # keeps them waiting, which costs less
            self.call = handle.soum_call
        except AttributeError as error:
            raise LibraryError(f"{path} is no library of soum: {error}") from error
        for function in (abi, self.eval, self.quick, self.call):
            function.restype = None
        version = (ctypes.c_int32 * 2)()
        abi(version)
        if tuple(version) != (_manifest.ABI, _manifest.NUMBER):
            raise LibraryError(
                f"the native library {path} is of another build: it has interface {version[0]} and "
                f"manifest {version[1]}, this package wants {_manifest.ABI} and {_manifest.NUMBER}; "
                "install the two together"
            )


def _private_copy(ctypes, path):
    """Loads the library under another name: a runtime of its own."""
    with open(path, "rb") as file:
        content = file.read()
    try:
        copy = os.memfd_create("soum")
    except (AttributeError, OSError):
        return _temporary_copy(ctypes, content)
    try:
        with os.fdopen(copy, "wb", closefd=False) as file:
            file.write(content)
        # The loader knows libraries by name: each generation needs another.
        return ctypes.CDLL("/proc/self/" + "./" * _generation + f"fd/{copy}")
    except OSError:
        return _temporary_copy(ctypes, content)
    finally:
        os.close(copy)


def _temporary_copy(ctypes, content):
    import tempfile

    with tempfile.NamedTemporaryFile(prefix=f"soum-{os.getpid()}-", suffix=".so") as file:
        file.write(content)
        file.flush()
        return ctypes.CDLL(file.name)


def load():
    """Gives the library, loaded if it is not."""
    global _library, _touched
    with _lock:
        if _library is None:
            if not _touched and hasattr(os, "register_at_fork"):
                os.register_at_fork(after_in_child=_forked)
            _touched = True
            _library = _Library(library_path())
        return _library


def _forked():
    """Forgets the parent's library in a child: its threads are not here."""
    global _library, _generation, _lock
    _lock = _thread.allocate_lock()
    _library = None
    _generation += 1
    _buffers.clear()
    for pool in _pools:
        pool.clear()


# -- functions by name ----------------------------------------------------------


def call_bytes(name, data):
    """Calls soum_call with JSON as bytes; gives the answer's bytes and status."""
    library = _library or load()
    ctypes = library.ctypes
    try:
        buffer = _buffers.pop()
    except IndexError:
        buffer = ctypes.create_string_buffer(1 << 17)
    name = name.encode()
    length, status = ctypes.c_int32(len(data)), ctypes.c_int32()
    while True:
        room = ctypes.c_int32(len(buffer))
        library.call(name, data, ctypes.byref(length), buffer, ctypes.byref(room), ctypes.byref(status))
        if room.value <= len(buffer):
            break
        buffer = ctypes.create_string_buffer(room.value + room.value // 4)
    answer = ctypes.string_at(buffer, room.value)
    _buffers.append(buffer)
    return answer, status.value


def call(name, arguments, stacklevel=3):
    """Calls a function of the library by its full name, such as
    "forage.Available", with a dict of its arguments by their names there."""
    import json

    answer, status = call_bytes(name, _encode(arguments))
    answer = json.loads(answer)
    if "warning" in answer:
        report = answer["warning"]
        _warn(RangeWarning(report["message"], report), stacklevel)
    if "error" in answer:
        raise _failure(answer["error"], status)
    return answer["value"]


def _encode(arguments):
    import json

    try:
        return json.dumps(arguments, default=_plain, allow_nan=False).encode()
    except ValueError:
        pass  # a NaN or an infinity, or a list within itself
    except RecursionError:
        raise _too_deep() from None
    try:
        return json.dumps(_finite(arguments), allow_nan=False).encode()
    except RecursionError:
        raise _too_deep() from None


def _too_deep():
    return DocumentError("the document is nested too deep", problem="is nested too deep", allowed="a flatter document")


def _plain(value):
    """Turns what JSON does not know into what it does."""
    if hasattr(value, "tolist"):  # arrays and scalars of NumPy
        return value.tolist()
    kind = type(value).__name__
    if hasattr(value, "isoformat") and not hasattr(value, "hour"):
        return value.isoformat()
    if kind == "Decimal":
        return str(value)  # money is text
    if hasattr(value, "__float__"):
        return float(value)
    if hasattr(value, "__iter__"):
        return list(value)
    raise TypeError(f"a {kind} is neither number, text, date, list nor dict")


def _finite(value):
    """Writes NaN as None and infinities as text."""
    if isinstance(value, float):
        if value != value:
            return None
        return value if value - value == 0 else ("Infinity" if value > 0 else "-Infinity")
    if isinstance(value, (str, int)) or value is None:
        return value
    if isinstance(value, dict):
        return {key: _finite(item) for key, item in value.items()}
    if isinstance(value, (list, tuple)):
        return [_finite(item) for item in value]
    return _finite(_plain(value))


def _failure(report, status):
    """Makes the exception that a report of the library tells of."""
    kind, message = report["kind"], report["message"]
    if kind == "domain":
        return DomainError(message, report)
    if kind == "document":
        return DocumentError(
            message, report.get("path", ""), report.get("problem", ""), report.get("allowed", ""), report.get("value")
        )
    if status == _NO_NAME:
        return UnknownFunctionError(message)
    return LibraryError(message + "\n" + report.get("problem", ""))


def _warn(warning, stacklevel):
    import warnings

    warnings.warn(warning, stacklevel=stacklevel + 1)


# -- formulas -------------------------------------------------------------------


class _Formula:
    """A formula: its number, its name, and its arguments as (name here, name
    in the library, quantity or enumeration)."""

    __slots__ = ("index", "name", "parameters", "pool")

    def __init__(self, index, name, parameters):
        self.index = index
        self.name = name
        self.parameters = parameters
        self.pool = []
        _pools.append(self.pool)


def formula(index, name, parameters):
    """Gives the function that computes a formula."""
    made = _Formula(index, name, parameters)
    run = TAKE[len(parameters)](lambda *values: _slow(made, values), made.pool)
    run.made = made
    return run


def made_of(function):
    """Finds a formula by its documented function, or by its full name; None
    where there is none."""
    if isinstance(function, str):
        import importlib

        module, _, _ = function.partition(".")
        if module not in ("forage", "grazing", "herd", "rainfall"):  # those with formulas
            return None
        for value in vars(importlib.import_module("." + module, __package__)).values():
            made = getattr(value, "made", None)
            if made and made.name == function:
                return made
        return None
    run = getattr(function, "__globals__", {}).get("_" + getattr(function, "__name__", "").rstrip("_"))
    return getattr(run, "made", None)


def _slow(made, values):
    """Computes a formula for whatever it was given."""
    columns, array, several = [], False, False
    for parameter, value in zip(made.parameters, values):
        column = _column(made, parameter, value)
        if type(column) is not float:
            several = True
            array = array or hasattr(column, "dtype")
        columns.append(column)
    if not several:
        return _one(made, columns)
    if array:
        return _arrays(made, columns)
    return _lists(made, columns)


def _column(made, parameter, value):
    """Reads an argument: a float, or an array of this language or of NumPy."""
    if type(value) is float:
        return value if "." not in parameter[2] else _item(made, parameter, value)
    if isinstance(value, str) or not hasattr(value, "__len__"):
        if hasattr(value, "__array__"):  # a scalar of NumPy
            value = value.item()
        return _item(made, parameter, value)
    if hasattr(value, "__array__"):
        return _array(made, parameter, value)
    if isinstance(value, (dict, set, frozenset, bytes, bytearray)):
        raise _wrong_type(made, parameter, value)
    from array import array

    if "." not in parameter[2]:
        try:
            return array("d", value)
        except TypeError:
            pass  # text or gaps among the numbers
    return array("d", [_item(made, parameter, item) for item in value])


def _array(made, parameter, value):
    import numpy

    if hasattr(value, "filled"):  # what is masked is a gap
        value = value.astype(float).filled(numpy.nan)
    value = numpy.asarray(value)
    if value.ndim == 0:
        return _item(made, parameter, value.item())
    if value.dtype.kind in "fiu" and "." not in parameter[2]:
        return value
    if value.dtype.kind not in "OUT":
        raise _wrong_type(made, parameter, value)
    items = [_item(made, parameter, item) for item in value.reshape(-1).tolist()]
    return numpy.array(items, dtype=float).reshape(value.shape)


def _item(made, parameter, value):
    """Reads one number, one text with a unit or one word."""
    name, _, kind = parameter
    if "." in kind:
        words = _manifest.WORDS[kind]
        if isinstance(value, str) and value in words:
            return float(words.index(value) + 1)
        raise DocumentError(
            f"{made.name}: {name} is {value!r}, must be one of the words {', '.join(words)}",
            name, "is no such word", ", ".join(words), value,
        )
    if isinstance(value, (int, float)):
        return float(value)
    if isinstance(value, str):
        return _text(made, name, kind, value)
    if value is None:
        return float("nan")  # a gap
    try:
        return float(value)
    except (TypeError, ValueError):
        raise _wrong_type(made, parameter, value) from None


def _text(made, name, kind, text):
    if not kind:
        raise DocumentError(
            f"{made.name}: {name} is {text!r}, must be a plain number", name, "is text", "a number", text
        )
    try:
        return float(call("units.parse", {"quantity": kind, "text": text}))
    except DocumentError as error:
        raise DocumentError(f"{made.name}: {name}: {error}", name, str(error), error.allowed, text) from None


def _wrong_type(made, parameter, value):
    return TypeError(
        f"{made.name}: {parameter[0]} is a {type(value).__name__}, must be a number, "
        "text with a unit, or a list or array of them"
    )


def _one(made, values):
    """Computes one row."""
    try:
        room = made.pool.pop()
    except IndexError:
        room = _room(made)
    compute, numbers, status = room
    for k, value in enumerate(values):
        numbers[k] = value
    compute()
    value, code = numbers[_MOST], status[0]
    made.pool.append(room)
    if code:
        report = _report(made, values, code)
        if code < 0:
            raise DomainError(report["message"], report)
        _warn(RangeWarning(report["message"], report), _DEPTH)
    return value


def _room(made):
    """Makes memory for one row, and the call that computes it."""
    from array import array
    from functools import partial

    library = _library or load()
    ctypes = library.ctypes
    numbers = array("d", bytes(8 * (_MOST + 1)))
    status = array("i", bytes(4))
    fixed = (ctypes.c_int32 * (2 + _MOST))(made.index, 1)  # formula, rows, strides
    shared = (ctypes.c_double * (_MOST + 1)).from_buffer(numbers)
    code = ctypes.c_int32.from_buffer(status)
    at = ctypes.byref
    compute = partial(
        library.quick, at(fixed), at(shared), at(fixed, 8), at(fixed, 4), at(shared, 8 * _MOST), at(code)
    )
    return compute, numbers, status


def _report(made, values, code):
    """Asks the library what it says of a row that is not plainly good."""
    import json

    _refuse(made, code)
    arguments = {}
    for parameter, value in zip(made.parameters, values):
        if "." in parameter[2]:
            value = _manifest.WORDS[parameter[2]][int(value) - 1]
        elif value != value:
            value = "NaN"
        arguments[parameter[1]] = value
    answer = json.loads(call_bytes(made.name, _encode(arguments))[0])
    return answer.get("error") or answer.get("warning")


def _refuse(made, code):
    if code == _NO_FORMULA:
        raise LibraryError(f"the library knows no formula {made.index}, {made.name}: it is of another build")
    if code <= _BROKEN:
        raise LibraryError(f"a fault of the library in {made.name}")


class _Tally:
    """Counts the rows that are not plainly good, and remembers the first."""

    def __init__(self):
        self.counts = {DomainWarning: 0, RangeWarning: 0}
        self.firsts = {}

    def add(self, kind, count, row, code, values):
        if count:
            self.counts[kind] += count
            if kind not in self.firsts:
                self.firsts[kind] = (row, code, values)

    def warn(self, made, rows, place):
        for kind, (row, code, values) in self.firsts.items():
            report = _report(made, values, code)
            count = self.counts[kind]
            what = "impossible, there is NaN" if kind is DomainWarning else "outside what the source covers"
            first = place(row)
            warning = kind(f"rows {what}: {count} of {rows}, the first at {first}: {report['message']}", report)
            warning.rows, warning.first = count, first
            _warn(warning, _DEPTH + 1)


def _lists(made, columns):
    """Computes lists, without NumPy."""
    from array import array

    library = _library or load()
    ctypes = library.ctypes
    rows = {len(c) for c in columns if type(c) is not float}
    if len(rows) > 1:
        told = ", ".join(f"{p[0]} {len(c)}" for p, c in zip(made.parameters, columns) if type(c) is not float)
        raise ValueError(f"{made.name}: the lists must be of one length, they are: {told}")
    n = rows.pop()
    if n == 0:
        return []
    block, strides = array("d"), []
    for column in columns:
        strides.append(type(column) is not float)
        block.extend(column) if strides[-1] else block.append(column)
    out, status = array("d", bytes(8 * n)), array("i", bytes(4 * n))
    fixed = (ctypes.c_int32 * (2 + _MOST))(made.index, n, *strides)
    at = ctypes.byref
    library.eval(
        at(fixed),
        (ctypes.c_double * len(block)).from_buffer(block),
        at(fixed, 8),
        at(fixed, 4),
        (ctypes.c_double * n).from_buffer(out),
        (ctypes.c_int32 * n).from_buffer(status),
    )
    if any(status):
        tally = _Tally()
        for i, code in enumerate(status):
            if code:
                row = [c[i] if type(c) is not float else c for c in columns]
                tally.add(DomainWarning if code < 0 else RangeWarning, 1, i, code, row)
        tally.warn(made, n, lambda i: i)
    return out.tolist()


def _arrays(made, columns):
    """Computes NumPy arrays, broadcast together, a chunk of rows at a time."""
    import numpy

    library = _library or load()
    pointer = library.ctypes.c_void_p
    columns = [c if type(c) is float else numpy.asarray(c) for c in columns]
    shape = numpy.broadcast_shapes(*(c.shape for c in columns if type(c) is not float))
    out = numpy.empty(shape)
    rows = out.size
    if rows == 0:
        return out
    flat = []
    for column in columns:
        if type(column) is not float:
            if column.size == 1:
                column = float(column.reshape(-1)[0])
            else:
                column = numpy.broadcast_to(column, shape).reshape(-1)
        flat.append(column)
    several = [type(c) is not float for c in flat]
    step = min(rows, _CHUNK)
    block = numpy.empty(sum(step if s else 1 for s in several))
    status = numpy.empty(step, dtype=numpy.int32)
    fixed = (library.ctypes.c_int32 * (2 + _MOST))(made.index, step, *several)
    at = library.ctypes.byref
    ahead = (at(fixed), pointer(_address(block)), at(fixed, 8), at(fixed, 4))
    codes, begin = pointer(_address(status)), _address(out)
    tally = None
    for first in range(0, rows, step):
        n = min(step, rows - first)
        fixed[1] = n
        place = 0
        for k, column in enumerate(flat):
            if several[k]:
                block[place : place + n] = column[first : first + n]
                place += n
            else:
                block[place] = column
                place += 1
        library.eval(*ahead, pointer(begin + 8 * first), codes)
        if status[:n].any():
            tally = tally or _Tally()
            _count(numpy, tally, status[:n], first, flat)
    if tally:
        tally.warn(made, rows, lambda i: i if len(shape) == 1 else tuple(int(j) for j in numpy.unravel_index(i, shape)))
    return out


def _address(array):
    return array.__array_interface__["data"][0]


def _count(numpy, tally, status, first, flat):
    for kind, wrong in ((DomainWarning, status < 0), (RangeWarning, status > 0)):
        count = int(numpy.count_nonzero(wrong))
        if count:
            i = int(wrong.argmax())
            row = [float(c[first + i]) if type(c) is not float else c for c in flat]
            tally.add(kind, count, first + i, int(status[i]), row)
