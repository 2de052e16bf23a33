package herd_test

import (
	"testing"

	"example.org/soum/internal/check"
)

func TestPrintedTables(t *testing.T) { check.Tables(t) }

func TestFormulasAreAsDocumented(t *testing.T) { check.Formulas(t, "herd") }
