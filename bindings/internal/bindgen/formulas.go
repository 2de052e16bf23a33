package main

import (
	"bytes"
	"fmt"
	"math"
	"slices"
	"strconv"
	"strings"

	"example.org/soum/internal/decl"
)

// formulas writes a package's table of formulas and the guards of look-ups, nil where
// it has neither.
func formulas(p, units *decl.Package) ([]byte, error) {
	var b bytes.Buffer
	b.WriteString(heading + "package " + p.Name + "\n\nimport (\n\"math\"\n\n\"example.org/soum/units\"\n)\n\nvar inf = math.Inf(1)\n")
	var names []string
	found := false
	for i := range p.Functions {
		f := &p.Functions[i]
		if !f.IsGuarded() {
			continue
		}
		found = true
		source, _ := f.Section("Source")
		if source == "" {
			return nil, fmt.Errorf("%s: no section Source", f.Full())
		}
		fmt.Fprintf(&b, "\nvar formula%s = units.Formula{\nName: %q, Source: %q,\n", f.Name, f.Full(), strings.Join(strings.Fields(source), " "))
		if err := expression(&b, f, units); err != nil {
			return nil, fmt.Errorf("%s: %w", f.Full(), err)
		}
		b.WriteString("Arguments: []units.Argument{\n")
		if f.IsFormula() {
			names = append(names, f.Name)
		}
		for _, a := range f.Arguments() {
			if err := argument(&b, f, a, p, units); err != nil {
				return nil, fmt.Errorf("%s: %s: %w", f.Full(), a.Name, err)
			}
		}
		b.WriteString("},\n}\n")
	}
	if !found {
		return nil, nil
	}
	b.WriteString("\n// Formulas gives the package's formulas, as their doc comments declare them.\n//\n// Check: TestFormulasAreAsDocumented\n//\n// Source: definition: written from the doc comments\nfunc Formulas() []units.Formula {\nreturn []units.Formula{\n")
	for _, name := range names {
		fmt.Fprintf(&b, "formula%s,\n", name)
	}
	b.WriteString("}\n}\n")
	return b.Bytes(), nil
}

func argument(b *bytes.Buffer, f *decl.Function, a decl.Parameter, p, units *decl.Package) error {
	factor := "1"
	domain := a.Where.Domain
	if q := quantity(a.Type, units); q != nil {
		constant, err := unitConstant(q, a.Where.Unit)
		if err != nil {
			return err
		}
		factor = constant
	} else if e := enum(a.Type, p); e != nil {
		domain = &decl.Interval{Low: 1, High: float64(len(e.Constants))}
	} else if a.Type != "float64" && a.Type != "int" && a.Type != "units.Temperature" &&
		(f.IsFormula() || a.Type != "time.Month" && !a.Unlimited()) {
		return fmt.Errorf("a formula takes no %s", a.Type)
	}
	if domain == nil {
		domain = &decl.Interval{Low: math.Inf(-1), High: math.Inf(1)}
	}
	fmt.Fprintf(b, "{Name: %q, %sUnit: %q, Factor: %s, Domain: %s", a.Name, kindOf(a.Type, p, units), a.Where.Unit, factor, limits(f, domain, factor))
	if a.Where.Range != nil {
		fmt.Fprintf(b, ", Range: %s", limits(f, a.Where.Range, factor))
	}
	b.WriteString("},\n")
	return nil
}

// limits writes an interval in base units.
func limits(f *decl.Function, i *decl.Interval, factor string) string {
	var parts []string
	bound := func(field string, v float64, of string) {
		at := -1
		if of != "" {
			at = slices.IndexFunc(f.Arguments(), func(p decl.Parameter) bool { return p.Name == of })
			v = 0
		}
		text := strconv.FormatFloat(v, 'g', -1, 64)
		switch {
		case math.IsInf(v, 1):
			text = "inf"
		case math.IsInf(v, -1):
			text = "-inf"
		case factor != "1" && v != 0:
			text += " * " + factor
		}
		parts = append(parts, field+": "+text, field+"Of: "+strconv.Itoa(at))
	}
	bound("Low", i.Low, i.LowOf)
	bound("High", i.High, i.HighOf)
	if i.LowOpen {
		parts = append(parts, "LowOpen: true")
	}
	if i.HighOpen {
		parts = append(parts, "HighOpen: true")
	}
	if i.Source != "" {
		parts = append(parts, fmt.Sprintf("Source: %q", i.Source))
	}
	return "units.Limits{" + strings.Join(parts, ", ") + "}"
}

func quantity(name string, units *decl.Package) *decl.Quantity {
	for i := range units.Quantities {
		if q := &units.Quantities[i]; "units."+q.Name == name && len(q.Units) > 0 {
			return q
		}
	}
	return nil
}

func unitConstant(q *decl.Quantity, spelling string) (string, error) {
	for _, u := range q.Units {
		if slices.Contains(u.Spellings, spelling) {
			return "float64(units." + u.Name + ")", nil
		}
	}
	return "", fmt.Errorf("%q is no unit of %s", spelling, q.Name)
}

func enum(name string, p *decl.Package) *decl.Enum {
	of := p
	if pkg, short, found := strings.Cut(name, "."); found {
		if of, name = p.Module.Package(pkg), short; of == nil {
			return nil
		}
	}
	for i := range of.Enums {
		if of.Enums[i].Name == name {
			return &of.Enums[i]
		}
	}
	return nil
}

// kindOf writes what an argument is: a quantity, or a word of an enumeration.
func kindOf(name string, p, units *decl.Package) string {
	if quantity(name, units) != nil || name == "units.Temperature" {
		return fmt.Sprintf("Quantity: %q, ", strings.TrimPrefix(name, "units."))
	}
	if e := enum(name, p); e != nil {
		return fmt.Sprintf("Words: %#v, ", e.Words())
	}
	return ""
}
