/*
 * Ten ewes of 150 lb, in milk, eat 4.5 % of their weight a day, all from
 * pasture. The grass stands 8 in high at 250 lb an acre and inch; 4 in are to be
 * left. The lane is 100 ft wide. How long is tomorrow's strip?
 *
 *     cc -std=c99 strip.c $(pkg-config --cflags --libs soum) -o strip
 */
#include <soum.h>

int main(void)
{
	char text[5][40];
	double demand = soum_herd_demand(10, 150 * SOUM_LB, 4.5 * SOUM_PERCENT, 100 * SOUM_PERCENT, NULL);
	double available = soum_forage_available(8 * SOUM_INCH, 4 * SOUM_INCH, 250 * SOUM_LB_PER_ACRE_INCH, NULL);
	double use = soum_forage_usable_share(1 * SOUM_DAY, NULL);
	double area = soum_grazing_stay_area(demand, 1 * SOUM_DAY, available, use, NULL);
	double length = soum_grazing_strip_length(area, 100 * SOUM_FOOT, NULL);

	soum_show(text[0], sizeof text[0], "Demand", demand, "US");
	soum_show(text[1], sizeof text[1], "Yield", available, "US");
	soum_show(text[2], sizeof text[2], "Fraction", use, "US");
	soum_show(text[3], sizeof text[3], "Area", area, "US");
	soum_show(text[4], sizeof text[4], "Length", length, "US");
	printf("They want %s; %s stand above what is left, of which %s are eaten in a day.\n", text[0], text[1], text[2]);
	printf("That is %s: a strip of %s.\n", text[3], text[4]);
	return 0;
}
