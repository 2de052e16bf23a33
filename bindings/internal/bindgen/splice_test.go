package main

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// TestSplice: a part stands in the place of the whole line that names it, in comments
// of any language; what does not meet is refused.
func TestSplice(t *testing.T) {
	const text = "a\n\t/* generated: one */\nb\n% generated: two\n * generated: none of these words\n"
	got, err := splice(text, map[string]string{"one": "1\n", "two": "2\n3\n", "none": ""})
	require.NoError(t, err)
	assert.Equal(t, "a\n1\nb\n2\n3\n", string(got))
	_, err = splice(text, map[string]string{"one": "1\n", "none": ""})
	assert.ErrorContains(t, err, "two", "a place without a part")
	_, err = splice(text, map[string]string{"one": "", "two": "", "none": "", "three": ""})
	assert.ErrorContains(t, err, "three", "a part without a place")
	_, err = splice(text+"# generated: one\n", map[string]string{"one": "", "two": "", "none": ""})
	assert.ErrorContains(t, err, "one", "a part with two places")
}
