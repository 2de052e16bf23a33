"""Ten ewes of 150 lb, in milk, eat 4.5 % of their weight a day, all from
pasture. The grass stands 8 in high at 250 lb an acre and inch; 4 in are to be
left. The lane is 100 ft wide. How long is tomorrow's strip?
"""

from soum import forage, grazing, herd, units as u

demand = herd.demand(head=10, weight=150 * u.lb, intake=4.5 * u.percent, pasture=100 * u.percent)
available = forage.available(height="8 in", residual="4 in", density="250 lb/ac/in")
use = forage.usable_share(stay=1 * u.day)
area = grazing.stay_area(demand, 1 * u.day, available, use)
length = grazing.strip_length(area, width=100 * u.foot)

print(
    f"They want {u.show('Demand', demand, 'US')}; {u.show('Yield', available, 'US')} stand above what is left, "
    f"of which {u.show('Fraction', use, 'US')} are eaten in a day."
)
print(f"That is {u.show('Area', area, 'US')}: a strip of {u.show('Length', length, 'US')}.")
