/* Tests the installed header and library; counts and names what is wrong. */
#include "support.h"

static int checked, wrong;

static void expect(int good, const char *what)
{
	checked++;
	if (!good) {
		wrong++;
		printf("wrong: %s\n", what);
	}
}

/* A result against its print, and to 1e-12 against what Go computes. */
void check(double got, int32_t status, double printed, double tolerance, double exact, int32_t wanted, const char *what)
{
	int good = status == wanted;

	if (wanted < 0)
		good = good && (isnan(got) || isnan(exact));
	else
		good = good && fabs(got - printed) <= tolerance && fabs(got - exact) <= 1e-12 * fabs(exact);
	if (!good)
		printf("got %.17g status %d, wanted %.17g (%.17g) status %d\n", got, (int)status, printed, exact, (int)wanted);
	expect(good, what);
}

/* The number that a function called by name answers. */
double asked(const char *name, const char *arguments, int32_t *status)
{
	char *answer = soum_ask(name, arguments, status);
	double value = NAN;

	if (answer && strncmp(answer, "{\"value\":null", 13) != 0)
		value = strtod(answer + 9, NULL);
	free(answer);
	return value;
}

void worded(const char *name, const char *arguments, const char *word, int32_t wanted)
{
	char text[200];
	int32_t status = SOUM_BROKEN;
	char *answer = soum_ask(name, arguments, &status);

	expect(answer && status == wanted, name);
	if (answer && wanted >= 0)
		expect(soum_text(answer, "value", text, sizeof text) >= 0 && strcmp(text, word) == 0, name);
	free(answer);
}

void answered(const char *name, const char *arguments)
{
	int32_t status = SOUM_BROKEN;
	char *answer = soum_ask(name, arguments, &status);

	if (answer && status < 0)
		printf("%s\n", answer);
	expect(answer && status >= 0 && strncmp(answer, "{\"value\":", 9) == 0, name);
	free(answer);
}

static void numbers(void)
{
	double columns[] = { 0.2, 0.3, 0.1, 0.15, 0.1 }; /* three heights, one residual, one density */
	const int32_t strides[] = { 1, 0, 0 };
	double out[3], odd[] = { NAN, INFINITY, -INFINITY, -1 };
	int32_t status[3], code;
	int i;

	soum_rows(SOUM_FORAGE_AVAILABLE, columns, strides, 3, out, status);
	expect(fabs(out[0] - 0.005) < 1e-15 && fabs(out[1] - 0.015) < 1e-15, "rows");
	expect(isnan(out[2]) && status[0] == 0 && status[1] == 0 && status[2] == -2, "an impossible row");
	out[0] = 7, status[0] = 7;
	soum_rows(SOUM_FORAGE_AVAILABLE, columns, strides, 0, out, status);
	soum_rows(SOUM_FORAGE_AVAILABLE, columns, strides, -1, out, status);
	expect(out[0] == 7 && status[0] == 7, "no rows");
	soum_rows(-1, columns, strides, 1, out, status);
	expect(isnan(out[0]) && status[0] == SOUM_NO_FORMULA, "no formula");
	for (i = 0; i < 4; i++) {
		soum_forage_standing(odd[i], 1, &code);
		expect(code == -1, "NaN, infinities and less than nothing");
	}
	expect(isnan(soum_forage_standing(1e200, 1e200, &code)) && code == SOUM_RESULT, "overflow");
	expect(soum_forage_standing(2, 3, NULL) == 6, "no status wanted");
	expect(fabs(soum_forage_usable_share(9, &code) - 0.6) < 1e-12 && code == 1, "beyond the source's range");
	expect(strstr(soum_reason(SOUM_FORAGE_USABLE_SHARE, 1), "forage.UsableShare: limits of stay: > 0; 1 to 7 [PSU-STAY] (days)") != NULL, "reason of a range");
	expect(strstr(soum_reason(SOUM_FORAGE_AVAILABLE, -2), "residual: 0 to height (in)") != NULL, "reason of a domain");
	expect(strcmp(soum_reason(0, 0), "good") == 0, "no reason");
	expect(strstr(soum_reason(0, SOUM_RESULT), "overflows") != NULL, "reason of an overflow");
	expect(strstr(soum_reason(-1, -1), "no formula") != NULL && strstr(soum_reason(0, SOUM_NO_FORMULA), "no formula") != NULL, "reason of no formula");
	expect(strstr(soum_reason(0, SOUM_BROKEN), "fault") != NULL && strstr(soum_reason(0, 8), "fault") != NULL && strstr(soum_reason(SOUM_FORAGE_USABLE_SHARE, 2), "fault") != NULL, "reason of a fault");
}

static void texts(void)
{
	char text[60];
	int32_t status;
	double acre = soum_parse("Area", "1 ac", &status);

	expect(status == 0 && fabs(acre - SOUM_ACRE) < 1e-9, "parse");
	soum_parse("Area", "1 lb", &status);
	expect(status == SOUM_BAD_DOCUMENT, "parse a wrong unit");
	soum_parse("Area", "\"\\\n\x01", &status);
	expect(status == SOUM_BAD_DOCUMENT, "parse rubbish");
	soum_parse("Area",
		"1111111111111111111111111111111111111111111111111111111111111111111111111111111111111111111111111111"
		"1111111111111111111111111111111111111111111111111111111111111111111111111111111111111111111111111111"
		"1111111111111111111111111111111111111111111111111111111111111111111111111111111111111111111111111111"
		"1111111111111111111111111111111111111111111111111111111111111111111111111111111111111111111111111111 ac", &status);
	expect(status == SOUM_BAD_DOCUMENT, "parse a text without end");
	expect(soum_show(text, sizeof text, "Area", acre, "US") == 0 && strcmp(text, "1 ac") == 0, "show");
	expect(soum_show(text, 6, "Area", 12 * acre, "US") == 0 && strlen(text) < 6, "show in a small room");
	expect(soum_show(text, 0, "Area", acre, "US") == 0, "show in no room");
	expect(soum_show(text, sizeof text, "Area", acre, "furlongs") == SOUM_BAD_DOCUMENT && text[0] == '\0', "show in no system");
	soum_show(text, sizeof text, "Area", NAN, "US");
	expect(strstr(text, "NaN") != NULL, "show NaN");
	expect(soum_text("{\"a\":\"b\",\"key\":\"\\u00b0C \\\"x\\\" \\u2212 \\\\ \\n\"}", "key", text, sizeof text) > 0
		&& strcmp(text, "\xc2\xb0" "C \"x\" \xe2\x88\x92 \\ \n") == 0, "text with escapes");
	expect(soum_text("{\"key\":3}", "key", text, sizeof text) == -1 && text[0] == '\0', "no text");
	expect(soum_text("\"key\":\"\\", "key", text, sizeof text) == 0, "a broken end");
}

static void documents(void)
{
	static char deep[10001];
	char text[300], *answer;
	uint8_t small[16];
	int32_t status, length = 2, room;

	answer = soum_ask("forage.Nothing", "{}", &status);
	expect(status == SOUM_NO_SUCH_NAME && soum_text(answer, "message", text, sizeof text) > 0 && strstr(text, "no function") != NULL, "no such name");
	free(answer);
	answer = soum_ask("farm.Plan", "{\"document\": {\"version\": 1}}", &status);
	expect(status == SOUM_BAD_DOCUMENT && soum_text(answer, "path", text, sizeof text) > 0 && strcmp(text, "today") == 0, "the path in a document");
	free(answer);
	answer = soum_ask("forage.Available", "{\"height\": 0.1, \"residual\": 0.2, \"density\": 1}", &status);
	expect(status == SOUM_IMPOSSIBLE && strstr(answer, "\"argument\":\"residual\"") != NULL, "impossible by name");
	free(answer);
	answer = soum_ask("forage.UsableShare", "{\"stay\": \"9 days\"}", &status);
	expect(status == SOUM_WARNED && strstr(answer, "\"warning\":") != NULL, "a warning by name");
	free(answer);
	answer = soum_ask("formula.show", "{\"function\": \"forage.Available\", \"system\": \"US\", \"arguments\": "
		"{\"height\": \"8 in\", \"residual\": \"3 in\", \"density\": \"250 lb/ac/in\"}}", &status);
	expect(status == 0 && soum_text(answer, "text", text, sizeof text) > 0 && strstr(text, "= 1,250 lb/ac") != NULL, "work shown");
	free(answer);
	memset(deep, '[', sizeof deep - 1);
	free(soum_ask("farm.Plan", deep, &status));
	expect(status == SOUM_BAD_DOCUMENT, "nested too deep");
	memset(small, 0x7f, sizeof small);
	room = 8;
	soum_call("forage.Pastures", (const uint8_t *)"{}", &length, small, &room, &status);
	expect(status == 0 && room > 1000 && small[8] == 0x7f, "a small room is not overrun");
	length = 0, room = 8;
	soum_call("forage.Pastures", (const uint8_t *)"", &length, small, &room, &status);
	expect(status == SOUM_BAD_DOCUMENT, "no document at all");
}

int main(void)
{
	expect(soum_check() == 0, "header and library are of one build");
	generated();
	numbers();
	texts();
	documents();
	printf("%d checks, %d wrong\n", checked, wrong);
	return wrong != 0;
}
