"""Types of arguments, for the stubs; nothing here is needed at run time."""

from __future__ import annotations

from typing import Any, List, Protocol, Sequence, SupportsFloat, Tuple, Union


class Array(Protocol):
    """What NumPy can read as an array."""

    def __array__(self, *args: Any, **kwargs: Any) -> Any: ...


Scalar = Union[SupportsFloat, str]  # a number in base units, or text with a unit
Values = Union[Scalar, Sequence[Union[SupportsFloat, str, None]]]
Words = Union[List[str], Tuple[str, ...], Array]  # no Sequence: text is one, too
