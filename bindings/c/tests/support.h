/* What the generated and the hand-written tests share. */
#include <math.h>
#include <soum.h>

void check(double got, int32_t status, double printed, double tolerance, double exact, int32_t wanted, const char *what);
double asked(const char *name, const char *arguments, int32_t *status);
void worded(const char *name, const char *arguments, const char *word, int32_t wanted);
void answered(const char *name, const char *arguments);
void generated(void);
