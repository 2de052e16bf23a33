package enum_test

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"example.org/soum/internal/enum"
	"example.org/soum/units"
)

type colour int

var list = []string{"", "red", "light green"}

func TestWords(t *testing.T) {
	for constant, word := range map[colour]string{-1: "", 0: "", 1: "red", 2: "light green", 3: "", 1 << 40: ""} {
		assert.Equal(t, word, enum.Word(list, constant))
		if word == "" {
			continue
		}
		var back colour
		require.NoError(t, enum.Read(list, []byte(word), &back))
		assert.Equal(t, constant, back)
	}
}

// TestNoWord: the constant stays as it was, and the error has the words.
func TestNoWord(t *testing.T) {
	for _, text := range []string{"", "Red", "green", "1"} {
		kept := colour(2)
		err := enum.Read(list, []byte(text), &kept)
		want := &units.ParseError{Quantity: "enum_test.colour", Text: text, Problem: "no such word", Accepts: []string{"red", "light green"}, Word: true}
		assert.Equal(t, want, err)
		assert.Equal(t, colour(2), kept)
	}
}

func TestNothingOnTheHeap(t *testing.T) {
	var into colour
	text, length := []byte("light green"), 0
	assert.Zero(t, testing.AllocsPerRun(100, func() {
		length += len(enum.Word(list, into)) + len(enum.Word(list, 7))
		if enum.Read(list, text, &into) != nil {
			t.Error("not read")
		}
	}))
	assert.Positive(t, length)
}
