/* Rows of three formulas by soum_eval beside plain loops, and a single call. */
#define _POSIX_C_SOURCE 199309L
#include <math.h>
#include <soum.h>
#include <stdio.h>
#include <stdlib.h>
#include <time.h>

enum { ROWS = 1000000, ROUNDS = 9, MOST = 4 };

static double args[MOST * ROWS], out[ROWS];
static int32_t status[ROWS];
static volatile double sink;

static double now(void)
{
	struct timespec t;
	clock_gettime(CLOCK_MONOTONIC, &t);
	return 1e9 * (double)t.tv_sec + (double)t.tv_nsec;
}

static void by_eval(const char *name, int32_t fn)
{
	const int32_t strides[MOST] = { 1, 1, 1, 1 };
	const int32_t n = ROWS;
	double best = 1e18;
	int round;

	for (round = 0; round < ROUNDS; round++) {
		double begin = now(), took;
		soum_eval(&fn, args, strides, &n, out, status);
		took = now() - begin;
		best = took < best ? took : best;
		sink = out[ROWS - 1];
	}
	printf("%s: %.4f\n", name, best / ROWS);
}

/* Each loop is a function of its own, so that no round is left out. */
static void product(void)
{
	int i;
	for (i = 0; i < ROWS; i++)
		out[i] = args[i] * args[ROWS + i];
}

static void power(void)
{
	int i;
	for (i = 0; i < ROWS; i++)
		out[i] = pow(args[i] / 453.59237, 0.75);
}

static void logistic(void)
{
	int i;
	for (i = 0; i < ROWS; i++) {
		double k = args[ROWS + i];
		out[i] = k / (1 + (k / args[i] - 1) * exp(-4 * args[2 * ROWS + i] * args[3 * ROWS + i] / k));
	}
}

static void by_loop(const char *name, void (*loop)(void))
{
	void (*volatile hidden)(void) = loop;
	double best = 1e18;
	int round;

	for (round = 0; round < ROUNDS; round++) {
		double begin = now(), took;
		hidden();
		took = now() - begin;
		best = took < best ? took : best;
		sink = out[ROWS - 1];
	}
	printf("%s: %.4f\n", name, best / ROWS);
}

static void fill(double a, double b, double c, double d)
{
	const double first[MOST] = { a, b, c, d };
	int k, i;
	for (k = 0; k < MOST; k++)
		for (i = 0; i < ROWS; i++)
			args[k * ROWS + i] = first[k] * (1 + (i % 1000) * 1e-4);
}

static void single(void)
{
	enum { CALLS = 200000 };
	double best = 1e18;
	int round, i;

	for (round = 0; round < ROUNDS; round++) {
		double begin = now(), took;
		int32_t code;
		for (i = 0; i < CALLS; i++)
			sink = soum_forage_standing(0.2 + i * 1e-9, 0.11, &code);
		took = now() - begin;
		best = took < best ? took : best;
	}
	printf("C call: %.4f\n", best / CALLS);
}

int main(void)
{
	if (soum_check() != 0)
		return 1;
	fill(0.2, 0.11, 0, 0);
	by_loop("C product loop", product);
	by_eval("C product", SOUM_FORAGE_STANDING);
	fill(300, 0, 0, 0);
	by_loop("C power loop", power);
	by_eval("C power", SOUM_HERD_METABOLIC_ANIMAL_UNITS);
	fill(0.2, 0.4, 0.005, 20);
	by_loop("C logistic loop", logistic);
	by_eval("C logistic", SOUM_FORAGE_REGROWN);
	single();
	return 0;
}
