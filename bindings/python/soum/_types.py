"""Types, for the stubs and for documents; nothing here is needed at run time."""

from __future__ import annotations

from typing import Any, List, Protocol, Sequence, SupportsFloat, Tuple, TypedDict, Union


class Array(Protocol):
    """What NumPy can read as an array."""

    def __array__(self, *args: Any, **kwargs: Any) -> Any: ...


Scalar = Union[SupportsFloat, str]  # a number in base units, or text with a unit
Values = Union[Scalar, Sequence[Union[SupportsFloat, str, None]]]
Words = Union[List[str], Tuple[str, ...], Array]  # no Sequence: text is one, too

Quantity = Union[float, str]  # of a document
Span = TypedDict("Span", {"low": Quantity, "high": Quantity}, total=False)


class UnitsStep(TypedDict, total=False):
    """A formula with its numbers put in: how an answer came about."""

    function: str
    result: str
    symbols: str
    numbers: str
    factor: str
    answer: str
    value: float
    source: str
    text: str
