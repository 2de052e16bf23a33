/*
 * Plans the season of a farm file and prints what the land carries.
 *
 *     cc -std=c99 plan.c $(pkg-config --cflags --libs soum) -o plan
 *     ./plan farm.json
 */
#include <soum.h>

/* Reads a file into {"document": …}; NULL where it cannot be read. */
static char *request(const char *path)
{
	FILE *file = fopen(path, "rb");
	char *text = NULL;
	long size;

	if (!file)
		return NULL;
	if (fseek(file, 0, SEEK_END) == 0 && (size = ftell(file)) >= 0 && fseek(file, 0, SEEK_SET) == 0
		&& (text = malloc((size_t)size + 16)) != NULL) {
		strcpy(text, "{\"document\": ");
		size = (long)fread(text + 13, 1, (size_t)size, file);
		strcpy(text + 13 + size, "}");
	}
	fclose(file);
	return text;
}

int main(int count, char **arguments)
{
	char words[2000], *farm, *answer;
	const char *verdict;
	int32_t status;

	if (count != 2 || soum_check() != 0) {
		fprintf(stderr, count != 2 ? "usage: plan FARM.json\n" : "plan: header and library are of two builds\n");
		return 2;
	}
	farm = request(arguments[1]);
	answer = farm ? soum_ask("farm.Plan", farm, &status) : NULL;
	free(farm);
	if (!answer) {
		fprintf(stderr, "plan: %s cannot be read\n", arguments[1]);
		return 2;
	}
	if (status < 0) {
		soum_text(answer, "message", words, sizeof words);
		fprintf(stderr, "plan: %s\n", words);
		free(answer);
		return 1;
	}
	verdict = strstr(answer, "\"verdict\":");
	if (verdict && soum_text(verdict, "english", words, sizeof words) > 0)
		printf("%s\n", words);
	free(answer);
	return 0;
}
