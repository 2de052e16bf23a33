"""Units as constants: multiply on the way in, divide on the way out.

    8 * inch                  a height in base units, 0.2032 m
    yield_ / lb_per_acre      a yield in pounds an acre

parse reads text with a unit, show writes it. One name serves every quantity
that is measured so: lb is a pound of dry matter and of live weight alike.
"""

from . import _core
from ._units import *  # the constants, and quantities: made when the package is built


def parse(quantity, text):
    """Reads text with a unit as a quantity.

    Arguments:
        quantity: the quantity's name, such as "Area"; see quantities.
        text: such as "3.5 ac".

    Returns:
        The number in base units; of "Date", "Money" and "FeedPrice" text.

    Errors:
        DocumentError for a text that is not the quantity; it lists the units.
    """
    return _core.call("units.parse", {"quantity": quantity, "text": text})


def show(quantity, value, system=""):
    """Writes a quantity for people.

    Arguments:
        quantity: the quantity's name, such as "Area"; see quantities.
        value: the number in base units.
        system: "metric" or "US"; without it all digits in the base unit.

    Returns:
        Text with a unit, such as "3.5 ac".
    """
    given = {"quantity": quantity, "value": value}
    if system:
        given["system"] = system
    return _core.call("units.show", given)
