/* Compiled against a header of another build: the library must be refused. */
#include <soum.h>

int main(void)
{
	return soum_check() == -1 ? 0 : 1;
}
