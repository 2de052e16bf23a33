package farm

import (
	"go/ast"
	"go/parser"
	"go/token"
	"path/filepath"
	"strconv"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// TestNotesHaveTheirArguments counts the places of every text that a notebook is given
// and what is given for them, since no vet does.
func TestNotesHaveTheirArguments(t *testing.T) {
	before := map[string]int{"say": 0, "add": 2, "warn": 2} // arguments before the text
	texts := 0
	paths, err := filepath.Glob("*.go")
	require.NoError(t, err)
	for _, path := range paths {
		set := token.NewFileSet()
		file, err := parser.ParseFile(set, path, nil, parser.SkipObjectResolution)
		require.NoError(t, err)
		ast.Inspect(file, func(n ast.Node) bool {
			call, ok := n.(*ast.CallExpr)
			if !ok {
				return true
			}
			method, ok := call.Fun.(*ast.SelectorExpr)
			if !ok {
				return true
			}
			at, ok := before[method.Sel.Name]
			if !ok || len(call.Args) <= at {
				return true
			}
			literal, ok := call.Args[at].(*ast.BasicLit)
			if !ok || literal.Kind != token.STRING {
				return true
			}
			text, err := strconv.Unquote(literal.Value)
			require.NoError(t, err)
			text = strings.ReplaceAll(text, "%%", "")
			assert.Equal(t, strings.Count(text, "%s"), len(call.Args)-at-1, "%s", set.Position(call.Pos()))
			assert.Equal(t, strings.Count(text, "%s"), strings.Count(text, "%"), "%s", set.Position(call.Pos()))
			texts++
			return true
		})
	}
	assert.Greater(t, texts, 40)
}

// TestCapital begins a sentence with a capital, of another length where it has one.
func TestCapital(t *testing.T) {
	for small, capital := range map[string]string{
		"cows": "Cows", "Cows": "Cows", "älf": "Älf", "ⱥx": "Ⱥx", "ßo": "ßo", "3 ewes": "3 ewes", "": "", "\xff": "\xff", "日": "日",
	} {
		var n notebook
		n.add("first", nil, "before.")
		n.add("code", nil, "%s go.", said(small))
		var plan Plan
		n.tell(&plan)
		assert.Equal(t, capital+" go.", plan.Notes[1].English)
		n.clear()
		n.warn("code", nil, "%s go.", said(small)) // stands behind a colon
		n.tell(&plan)
		assert.Equal(t, small+" go.", plan.Cautions[0].Why)
	}
}
