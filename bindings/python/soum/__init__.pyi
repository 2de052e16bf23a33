from typing import Any, Callable, Literal, Mapping

from . import documents as documents
from . import farm as farm
from . import fit as fit
from . import forage as forage
from . import grazing as grazing
from . import herd as herd
from . import rainfall as rainfall
from . import study as study
from . import units as units

__version__: str

class _Limits:
    function: str
    argument: str
    index: int
    value: Any
    low: Any
    high: Any
    gap: bool
    unit: str
    source: str

class DomainError(_Limits, ValueError): ...

class DomainWarning(_Limits, UserWarning):
    rows: int
    first: Any

class RangeWarning(_Limits, UserWarning):
    rows: int
    first: Any

class DocumentError(ValueError):
    path: str
    problem: str
    allowed: str
    value: Any

class UnknownFunctionError(LookupError): ...
class LibraryError(RuntimeError): ...

def call(function: str, arguments: Mapping[str, Any]) -> Any: ...
def show_work(
    function: str | Callable[..., Any],
    arguments: Mapping[str, Any],
    system: Literal["metric", "US"] = ...,
) -> documents.UnitsStep: ...
