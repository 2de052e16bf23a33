/* Registers the three entries of the Go archive for .C(). */
#include <stddef.h>
#include <stdint.h>
#include <R_ext/Rdynload.h>

extern void soum_abi(int32_t *version);
extern void soum_eval(int32_t *fn, double *args, int32_t *strides, int32_t *n,
                      double *out, int32_t *status);
extern void soum_call(uint8_t *name, uint8_t *in, int32_t *inlen, uint8_t *out,
                      int32_t *outlen, int32_t *status);

static const R_CMethodDef entries[] = {
    {"soum_abi", (DL_FUNC) &soum_abi, 1},
    {"soum_eval", (DL_FUNC) &soum_eval, 6},
    {"soum_call", (DL_FUNC) &soum_call, 6},
    {NULL, NULL, 0}
};

void R_init_soum(DllInfo *dll)
{
    R_registerRoutines(dll, entries, NULL, NULL, NULL);
    R_useDynamicSymbols(dll, FALSE);
}
