package main

import (
	"fmt"
	"regexp"
)

// place is a line of a file beside the generator that stands for what is written from
// the manifest: a comment of the file's language that says "generated: NAME".
var place = regexp.MustCompile(`(?m)^.*\bgenerated: ([a-z]+)\b.*\n`)

// splice puts each part in its place in a text. A part without a place, and a place
// without its part, are refused.
func splice(text string, parts map[string]string) ([]byte, error) {
	missing := ""
	text = place.ReplaceAllStringFunc(text, func(line string) string {
		name := place.FindStringSubmatch(line)[1]
		part, found := parts[name]
		if !found {
			missing += " " + name
		}
		delete(parts, name)
		return part
	})
	for name := range parts {
		missing += " " + name
	}
	if missing != "" {
		return nil, fmt.Errorf("these are a part without a place, or a place without a part:%s", missing)
	}
	return []byte(text), nil
}
