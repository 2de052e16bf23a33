"""The documents that go in and come out, as types for a type checker.

A document is a plain dict; nothing here needs to be used. Going in, a quantity
is text with a unit ("3.5 ac"; a farm takes nothing else); coming out it is a
number in base units, and in a farm or a row, which can go in again, text.
"""

from ._documents import *  # one for each kind of object: made when the package is built
from ._types import Quantity, Span, UnitsStep
