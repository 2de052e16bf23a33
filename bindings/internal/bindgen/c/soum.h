/*
 * soum.h: the arithmetic of grazing several kinds of stock over a few acres.
 *
 *     int32_t status;
 *     double left = soum_forage_available(8 * SOUM_INCH, 3 * SOUM_INCH,
 *         250 * SOUM_LB_PER_ACRE_INCH, &status);
 *     printf("%g lb/ac\n", left / SOUM_LB_PER_ACRE);              (1250 lb/ac)
 *
 * Numbers are in base units: kg, m, m2, m3, day, and products of these. The
 * constants below turn others into them and back.
 *
 * There are two doors. Formulas go through soum_eval, by number, a row or a
 * million rows at a time; each also has an inline function here. All else, look-
 * ups and whole plans, goes through soum_call, by name, JSON in and JSON out.
 *
 * Who owns what. All memory is the caller's. The library reads its arguments
 * and writes its results during the call, and keeps no pointer after it. Only
 * soum_ask gives memory away: free() it.
 *
 * Threads may call at the same time.
 *
 * The process. The library holds a Go runtime. At its first call it adds a few
 * threads and handlers for the signals SEGV, BUS, FPE, PIPE and URG; do not
 * dlclose it. It does not survive fork(): a child that has not called exec() must
 * not call the library, and hangs if it does. Call it first in the child, or let
 * the child dlopen() a copy of the file under another name.
 *
 * The numbers are planning figures: walk the ground, and trust your eye and your
 * stock over them.
 */
#ifndef SOUM_H
#define SOUM_H

#include <stddef.h>
#include <stdint.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

#ifdef __cplusplus
extern "C" {
#endif

/* generated: version */

/*
 * Computes formula fn for n rows. The columns of arguments stand one after the
 * other in args: column k has n values where strides[k] is 1, and one value for
 * all rows where it is 0. For row i, status[i] is
 *
 *     0   good, out[i] is the value;
 *    -k   argument k (from 1) is impossible, out[i] is NaN;
 *     k   argument k lies outside what the source covers, out[i] is the value;
 *
 * or one of the four below 0 that follow. n of 0 or less does nothing.
 */
void soum_eval(const int32_t *fn, const double *args, const int32_t *strides,
	const int32_t *n, double *out, int32_t *status);

#define SOUM_RESULT (-100)     /* the result overflows */
#define SOUM_BROKEN (-998)     /* a fault of the library itself */
#define SOUM_NO_FORMULA (-999) /* there is no formula of this number */

/*
 * Calls a function by its name, such as "forage.Pastures". in holds a JSON
 * object of its arguments, inlen bytes of it. The answer is a JSON object with
 * "value", and "warning" or "error" where there is one; it is written to out as
 * far as there is room and has no 0 at its end. *outlen is the room on the way in
 * and the whole length on the way out: where that is more, call again with more.
 */
void soum_call(const char *name, const uint8_t *in, const int32_t *inlen,
	uint8_t *out, int32_t *outlen, int32_t *status);

#define SOUM_GOOD 0
#define SOUM_WARNED 1          /* the value, and a range warning beside it */
#define SOUM_IMPOSSIBLE (-1)   /* a domain error: there is no value */
#define SOUM_BAD_DOCUMENT (-2) /* a document or an argument is wrong; "path" tells where */
#define SOUM_NO_SUCH_NAME (-3) /* there is no function of this name */

/* Gives the library's SOUM_ABI and SOUM_NUMBER, two numbers. */
void soum_abi(int32_t *version);


/* units --------------------------------------------------------------------- */

/*
 * Multiply on the way in, divide on the way out: 8 * SOUM_INCH is a height, and
 * a yield / SOUM_LB_PER_ACRE is in pounds an acre.
 */
/* generated: units */


/* words --------------------------------------------------------------------- */

/* The words of enumerations, as formulas take them; in JSON they are text. */
/* generated: words */


/* formulas by number -------------------------------------------------------- */

/* For soum_eval. The number of arguments stands beside. */
enum soum_formula {
	/* generated: numbers */
};


/* helpers ------------------------------------------------------------------- */

/* Tells whether header and library are of one build: 0 if so, -1 if not. */
static inline int soum_check(void)
{
	int32_t version[2] = { 0, 0 };

	soum_abi(version);
	return version[0] == SOUM_ABI && version[1] == SOUM_NUMBER ? 0 : -1;
}

/* soum_eval with numbers by value. */
static inline void soum_rows(int32_t formula, const double *columns, const int32_t *strides,
	int32_t n, double *out, int32_t *status)
{
	soum_eval(&formula, columns, strides, &n, out, status);
}

/* One row; status may be NULL. */
static inline double soum_one(int32_t formula, const double *given, int32_t *status)
{
	static const int32_t strides[8] = { 0, 0, 0, 0, 0, 0, 0, 0 };
	const int32_t n = 1;
	double value;
	int32_t code;

	soum_eval(&formula, given, strides, &n, &value, &code);
	if (status)
		*status = code;
	return value;
}

/*
 * soum_call with text: gives the answer as a string, which the caller frees, or
 * NULL where memory is wanting. status may be NULL.
 */
static inline char *soum_ask(const char *name, const char *arguments, int32_t *status)
{
	const int32_t length = (int32_t)strlen(arguments);
	int32_t room = 65536, size, code;
	char *answer = NULL, *more;

	for (;;) {
		more = (char *)realloc(answer, (size_t)room + 1);
		if (!more) {
			free(answer);
			return NULL;
		}
		answer = more;
		size = room;
		soum_call(name, (const uint8_t *)arguments, &length, (uint8_t *)answer, &size, &code);
		if (size <= room)
			break;
		room = size;
	}
	answer[size] = '\0';
	if (status)
		*status = code;
	return answer;
}

/*
 * Copies the text of the first "key": "text" in JSON, for programs without a JSON
 * library at hand. Gives the length of the copy; -1, and "", where there is no
 * such key with a text. What does not fit is cut off.
 */
static inline int soum_text(const char *json, const char *key, char *text, size_t room)
{
	const size_t length = strlen(key);
	const char *at = json;
	size_t n = 0;

	if (room)
		text[0] = '\0';
	for (;; at++) {
		at = strchr(at, '"');
		if (!at)
			return -1;
		if (strncmp(at + 1, key, length) == 0 && strncmp(at + 1 + length, "\":\"", 3) == 0)
			break;
	}
	for (at += length + 4; *at && *at != '"' && n + 4 < room; at++) {
		unsigned code = 0;
		int i;

		if (*at != '\\') {
			text[n++] = *at;
			continue;
		}
		switch (*++at) {
		case 'n':
			text[n++] = '\n';
			break;
		case 't':
			text[n++] = '\t';
			break;
		case 'u':
			for (i = 1; i <= 4 && at[1]; i++, at++)
				code = code * 16 + (unsigned)(at[1] <= '9' ? at[1] - '0' : (at[1] | 32) - 'a' + 10);
			if (code >= 0x800)
				text[n++] = (char)(0xe0 | code >> 12);
			if (code >= 0x80)
				text[n++] = (char)(code >= 0x800 ? 0x80 | (code >> 6 & 63) : 0xc0 | code >> 6);
			text[n++] = (char)(code >= 0x80 ? 0x80 | (code & 63) : code);
			break;
		default:
			if (*at)
				text[n++] = *at;
			else
				at--;
		}
	}
	if (room)
		text[n] = '\0';
	return (int)n;
}

/* Puts the decimal point of the program's locale in the place of another. */
static inline void soum_point(char *number, char from, char to)
{
	for (; *number; number++)
		if (*number == from)
			*number = to;
}

static inline char soum_local_point(void)
{
	char half[8];

	snprintf(half, sizeof half, "%.1f", 0.5);
	return half[1];
}

/*
 * Writes a quantity for people: soum_show(text, sizeof text, "Area", area, "US").
 * The system is "metric" or "US". Gives the status of soum_call, SOUM_BROKEN
 * where memory is wanting; what does not fit is cut off.
 */
static inline int32_t soum_show(char *text, size_t room, const char *quantity, double value,
	const char *system)
{
	char number[40], arguments[160], *answer;
	int32_t status = SOUM_BROKEN;

	snprintf(number, sizeof number, "%.17g", value);
	soum_point(number, soum_local_point(), '.');
	snprintf(arguments, sizeof arguments,
		value - value == 0 ? "{\"quantity\":\"%.40s\",\"value\":%s,\"system\":\"%.20s\"}"
				   : "{\"quantity\":\"%.40s\",\"value\":\"%s\",\"system\":\"%.20s\"}",
		quantity, number, system);
	if (room)
		text[0] = '\0';
	answer = soum_ask("units.show", arguments, &status);
	if (answer && status == SOUM_GOOD)
		soum_text(answer, "value", text, room);
	free(answer);
	return status;
}

/*
 * Reads text with a unit: soum_parse("Area", "3.5 ac", &status) in base units.
 * Gives 0 and a status below 0 where the text is not the quantity.
 */
static inline double soum_parse(const char *quantity, const char *text, int32_t *status)
{
	char arguments[400], *answer, *at = arguments;
	double value = 0;
	int32_t code = SOUM_BAD_DOCUMENT;

	at += snprintf(arguments, sizeof arguments, "{\"quantity\":\"%.40s\",\"text\":\"", quantity);
	for (; *text && at < arguments + 380; text++) {
		if (*text == '"' || *text == '\\')
			*at++ = '\\';
		*at++ = (unsigned char)*text < 32 ? ' ' : *text;
	}
	strcpy(at, "\"}");
	if (!*text) {
		answer = soum_ask("units.parse", arguments, &code);
		if (answer && code == SOUM_GOOD && strncmp(answer, "{\"value\":", 9) == 0) {
			soum_point(answer, '.', soum_local_point());
			value = strtod(answer + 9, NULL);
		}
		if (!answer)
			code = SOUM_BROKEN;
		free(answer);
	}
	if (status)
		*status = code;
	return value;
}

/*
 * Tells what a status other than 0 means: the argument and its limits, in the
 * unit that the source takes. The text is the library's, do not free it.
 */
static inline const char *soum_reason(int32_t formula, int32_t status)
{
	static const char *const limits[][8] = {
		/* generated: limits */
	};
	const int32_t formulas = (int32_t)(sizeof limits / sizeof limits[0]);
	const int32_t place = status < 0 ? -status : status;

	if (status == 0)
		return "good";
	if (status == SOUM_RESULT)
		return "the result overflows";
	if (status == SOUM_NO_FORMULA || formula < 0 || formula >= formulas)
		return "there is no formula of this number";
	if (status == SOUM_BROKEN || place > 8 || !limits[formula][place - 1])
		return "a fault of the library";
	return limits[formula][place - 1];
}

/* generated: formulas */


/* everything else ----------------------------------------------------------- */

/*
 * Look-ups and whole plans go through soum_call, or soum_ask, with a JSON object
 * of the arguments named here. A farm is the document of a farm file. What their
 * objects hold is told in bindings/api.json and the schemas beside it.
 *
 * generated: calls
 *
 *   units.parse                 quantity, text
 *       The number in base units of a text with a unit.
 *   units.show                  quantity, value, system
 *       Text for people; system is "metric", "US" or left out.
 *   formula.show                function, arguments, system
 *       A formula's step with its numbers put in, as parts and as text.
 *
 * Formulas may be called so, too, and then take text with a unit:
 *     soum_ask("forage.Available",
 *         "{\"height\": \"8 in\", \"residual\": \"3 in\", \"density\": \"250 lb/ac/in\"}", &status)
 */

#ifdef __cplusplus
}
#endif

#endif
