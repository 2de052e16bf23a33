"""What if it rains less, and what if there were more ewes?

An invented farm: eight acres of orchardgrass and clover of medium yield, ewes
of 150 lb on grass from mid April to the end of October. Of what grows, 65 % end
in the animals, as print has it for six to eight paddocks. The table tells the
hay wanted in those 200 days, for every number of ewes and every rain. It adds
up the season and does not ask when grass grows: farm.plan does.

Arrays go through the formulas at once; NumPy is used where it is installed.
"""

from soum import forage, grazing, herd, rainfall, units as u

EWES = [10, 15, 20, 25, 30, 35]
RAIN = [50, 60, 70, 80, 90, 100]  # % of the normal of the key months
LAND = 8 * u.acre
SEASON = 200 * u.day
USE = 65 * u.percent

try:
    import numpy
except ImportError:
    numpy = None


def study():
    """Gives what the rows need, what the columns grow, and the hay wanted."""
    usual = forage.yield_of("orchardgrass-legume", "medium")
    if numpy:
        ewes, rain = numpy.array(EWES)[:, None], numpy.array(RAIN)[None, :]
        demand = herd.demand(ewes, "150 lb", "3 %", "100 %")
        grown = usual * rainfall.forage_share(rain * u.percent)
        need = herd.feed(demand, SEASON)
        eaten = forage.usable(grown, LAND, USE)
        hay = numpy.maximum(0, need - eaten)
        land = grazing.stay_area(demand, SEASON, grown, USE)
        return hay.tolist(), land.tolist()
    demand = herd.demand(EWES, "150 lb", "3 %", "100 %")
    grown = [usual * share for share in rainfall.forage_share([r * u.percent for r in RAIN])]
    need = herd.feed(demand, SEASON)
    eaten = forage.usable(grown, LAND, USE)
    hay = [[max(0.0, n - e) for e in eaten] for n in need]
    land = [grazing.stay_area([d] * len(grown), SEASON, grown, USE) for d in demand]
    return hay, land


def table(title, rows, unit, form):
    """Prints a table of ewes by rain."""
    print(title)
    print("  ewes |" + "".join(f"{r:>5} %" for r in RAIN) + "   of the normal rain")
    print("  -----+" + "-" * 7 * len(RAIN))
    for head, row in zip(EWES, rows):
        print(f"  {head:>4} |" + "".join(format(value / unit, form).rjust(7) for value in row))
    print()


hay, land = study()
table("Hay wanted, short tons of dry matter", hay, u.short_ton, ".1f")
table("Land that would do without hay, acres", land, u.acre, ".1f")

for percent in (100, 70):
    column = RAIN.index(percent)
    enough = [head for head, row in zip(EWES, hay) if row[column] == 0]
    print(f"With {percent} % of the rain the grass feeds {max(enough)} ewes without hay, of the numbers tried.")
print("Planning figures: grass differs from the average by tens of per cent, so walk the ground.")
