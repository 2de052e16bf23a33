package english_test

import (
	"testing"

	"github.com/stretchr/testify/assert"

	"example.org/soum/internal/english"
)

func TestListed(t *testing.T) {
	for text, ids := range map[string][]string{"": nil, "a": {"a"}, "a and b": {"b", "a"}, "a, b and c": {"c", "a", "b"}} {
		assert.Equal(t, text, english.Listed(ids))
	}
}

func TestCapital(t *testing.T) {
	for text, want := range map[string]string{"": "", "cows": "Cows", "Cows": "Cows", "élan": "Élan", "ß": "ß", "ıx": "Ix", "2 cows": "2 cows"} {
		assert.Equal(t, want, english.Capital([]byte(text)), text)
	}
}

func TestCounts(t *testing.T) {
	assert.Equal(t, "once, 2 times, day, days", english.Often(1)+", "+english.Often(2)+", "+english.Word(1, "day")+", "+english.Word(0, "day"))
	assert.Equal(t, "on 2 May; from 2 May to 3 May", english.OnDays("2 May", "2 May")+"; "+english.OnDays("2 May", "3 May"))
}
