// Package decl reads what the module declares of itself: quantities and their
// units, enumerations, functions and the sections of their doc comments. The
// generators write from it and the tests walk it, so that a thing is said once.
package decl

import (
	"fmt"
	"go/ast"
	"go/parser"
	"go/token"
	"os"
	"path"
	"path/filepath"
	"slices"
	"strings"
)

// packages are the paths of the module's public packages, in the order of their
// imports.
var packages = []string{"units", "herd", "forage", "rainfall", "grazing", "grazing/farm", "grazing/study", "grazing/fit"}

// Packages gives the paths of the module's public packages, lowest first.
func Packages() []string { return slices.Clone(packages) }

// PathOf gives the path of a public package by its name, "" where there is none.
func PathOf(name string) string {
	for _, p := range packages {
		if path.Base(p) == name {
			return p
		}
	}
	return ""
}

// Package is what one package declares.
type Package struct {
	Path       string // as in "grazing/farm"
	Name       string // as in "farm"
	Doc        string
	Quantities []Quantity
	Enums      []Enum
	Structs    []string                   // the exported ones
	Fields     map[string]*ast.StructType // of those, by name
	Functions  []Function
	Files      []*ast.File // the sources, without the tests
	Module     Module      // the packages that were read with it
	// Undocumented lists exported names without a doc comment.
	Undocumented []string
}

// Quantity is a float64 type with constants for its units.
type Quantity struct {
	Name   string
	Doc    string // without what it is shown in
	Metric string // the spelling shown in the metric system
	US     string
	Units  []Unit // the first is the base unit
}

// Unit is a constant of a quantity.
type Unit struct {
	Name      string   // the constant
	Spellings []string // as text, the first one printed
}

// Enum is an integer type with constants.
type Enum struct {
	Name      string
	Constants []string
}

// Function is an exported function, or an exported method of an exported type.
type Function struct {
	Package    string
	Receiver   string // "" for a function
	Name       string
	Doc        string
	Parameters []Parameter
	Results    []string
	Sections   []Section
	Position   string
	// Word tells that the first result is an enumeration of the package.
	Word bool
}

// Parameter is one parameter with what the section Where says of it.
type Parameter struct {
	Name, Type string
	Where      *Where
}

// Section is a headed part of a doc comment.
type Section struct {
	Head, Text string
}

// Document is the name of the parameter by which a method is given the document that
// it belongs to, where it is called as a function.
const Document = "document"

// OfDocument reports whether the function is a method of a document that users write
// and that answers: a farm, a question. Other languages call it as a function of its
// package with the document first.
func (f *Function) OfDocument() bool {
	return slices.Contains(documents, f.Package+"."+f.Receiver) && !slices.Contains(goOnly, f.Name) && len(f.Results) > 0
}

// documents are the types that own what is asked of them.
var documents = []string{"farm.Farm", "study.Study", "fit.Question"}

// goOnly are methods of documents that no other language has: what they give, or
// take, has no form there.
var goOnly = []string{"Check", "Clone", "JSON", "Seasons", "RunContext", "AnswerContext"}

// Full gives the function's name with its package, as in "forage.Available", or as
// in "farm.Plan" for a method of a document.
func (f *Function) Full() string {
	if f.Receiver != "" && !f.OfDocument() {
		return f.Package + "." + f.Receiver + "." + f.Name
	}
	return f.Package + "." + f.Name
}

// Section gives the text of a section and whether there is one.
func (f *Function) Section(head string) (string, bool) {
	for _, s := range f.Sections {
		if s.Head == head {
			return s.Text, true
		}
	}
	return "", false
}

// IsFormula reports whether the function is a formula: quantities, numbers and words
// in, one number and an error out, and a section that tells how the number comes
// about. What takes a text, money or an end of a printed span, or answers in money or
// with a row, is called by name.
func (f *Function) IsFormula() bool {
	return f.IsGuarded() && !f.Word && isNumber(f.Results[0]) &&
		slices.ContainsFunc(f.Sections, func(s Section) bool { return slices.Contains(ways, s.Head) }) &&
		!slices.ContainsFunc(f.Parameters, func(p Parameter) bool { return p.Unlimited() || p.Type == "units.End" })
}

// isNumber reports whether a result is a plain number or a quantity.
func isNumber(result string) bool {
	quantity := strings.HasPrefix(result, "units.") && !strings.Contains(result, "[")
	return result == "float64" || quantity && result != "units.Money" && result != "units.Date"
}

// ways are the sections that tell how the value of a formula comes about.
var ways = []string{"Formula", "Empirical", "Table", "Method"}

// IsGuarded reports whether the function's limits stand in its doc comment: a
// formula, or a look-up that has them.
func (f *Function) IsGuarded() bool {
	_, listed := f.Section("Where")
	return f.Receiver == "" && listed && len(f.Results) == 2 && f.Results[1] == "error"
}

// Unlimited reports whether a parameter has no limits that a doc comment could tell:
// a text, a day, money.
func (p *Parameter) Unlimited() bool {
	return slices.Contains([]string{"string", "units.Date", "units.Money", "units.FeedPrice"}, p.Type)
}

// Root finds the folder that holds the module's go.mod, upward from the
// working directory.
func Root() (string, error) {
	dir, err := os.Getwd()
	if err != nil {
		return "", err
	}
	for {
		data, err := os.ReadFile(filepath.Join(dir, "go.mod"))
		if err == nil && strings.HasPrefix(string(data), "module example.org/soum\n") {
			return dir, nil
		}
		up := filepath.Dir(dir)
		if up == dir {
			return "", fmt.Errorf("no go.mod of this module above the working directory")
		}
		dir = up
	}
}

// Module is the module's public packages, lowest first.
type Module []*Package

// ReadModule reads the public packages of the module below root, each once.
func ReadModule(root string) (Module, error) {
	var all Module
	for _, name := range packages {
		p, err := Read(root, name)
		if err != nil {
			return nil, err
		}
		all = append(all, p)
	}
	for _, p := range all {
		p.Module = all
	}
	return all, nil
}

// Package gives the package of a name, nil where there is none.
func (m Module) Package(name string) *Package {
	for _, p := range m {
		if p.Name == name {
			return p
		}
	}
	return nil
}

// Read reads one package of the module below root.
func Read(root, name string) (*Package, error) {
	set := token.NewFileSet()
	paths, err := filepath.Glob(filepath.Join(root, filepath.FromSlash(name), "*.go"))
	if err != nil {
		return nil, err
	}
	p := &Package{Path: name, Name: path.Base(name), Fields: map[string]*ast.StructType{}}
	kinds := map[string]string{} // type name → underlying type
	for _, source := range paths {
		if strings.HasSuffix(source, "_test.go") {
			continue
		}
		file, err := parser.ParseFile(set, source, nil, parser.ParseComments|parser.SkipObjectResolution)
		if err != nil {
			return nil, err
		}
		p.Files = append(p.Files, file)
		if file.Doc != nil {
			p.Doc += file.Doc.Text()
		}
		for _, d := range file.Decls {
			if g, ok := d.(*ast.GenDecl); ok && g.Tok == token.TYPE {
				p.addTypes(g, kinds, set)
			}
		}
	}
	for _, file := range p.Files {
		for _, d := range file.Decls {
			switch d := d.(type) {
			case *ast.GenDecl:
				p.addValues(d, kinds)
			case *ast.FuncDecl:
				if err := p.addFunction(d, set); err != nil {
					return nil, err
				}
			}
		}
	}
	for i := range p.Functions {
		f := &p.Functions[i]
		f.Word = len(f.Results) > 0 && slices.ContainsFunc(p.Enums, func(e Enum) bool { return e.Name == f.Results[0] })
	}
	return p, nil
}

// addTypes collects the package's types.
func (p *Package) addTypes(g *ast.GenDecl, kinds map[string]string, set *token.FileSet) {
	for _, s := range g.Specs {
		spec := s.(*ast.TypeSpec)
		doc := spec.Doc.Text() + g.Doc.Text()
		if spec.Name.IsExported() && strings.TrimSpace(doc) == "" {
			p.Undocumented = append(p.Undocumented, spec.Name.Name)
		}
		if fields, ok := spec.Type.(*ast.StructType); ok && spec.Name.IsExported() {
			p.Structs = append(p.Structs, spec.Name.Name)
			p.Fields[spec.Name.Name] = fields
			p.noteFields(spec.Name.Name, fields, set)
		}
		under, ok := spec.Type.(*ast.Ident)
		if !ok {
			continue
		}
		kinds[spec.Name.Name] = under.Name
		if under.Name == "float64" && spec.Name.IsExported() {
			head, _, _ := strings.Cut(doc, "\nShown: ")
			q := Quantity{Name: spec.Name.Name, Doc: strings.Join(strings.Fields(head), " ")}
			for line := range strings.Lines(doc) {
				shown, found := strings.CutPrefix(strings.TrimSpace(line), "Shown: ")
				if !found {
					continue
				}
				metric, us, _ := strings.Cut(strings.TrimSuffix(shown, "."), ", ")
				q.Metric = strings.TrimSuffix(metric, " metric")
				q.US = strings.TrimSuffix(us, " US")
			}
			p.Quantities = append(p.Quantities, q)
		}
		if under.Name == "int" && spec.Name.IsExported() {
			p.Enums = append(p.Enums, Enum{Name: spec.Name.Name})
		}
	}
}

// noteFields lists the exported fields of a struct that nothing explains: a
// comment, that of the lines right above, or a tag that tells what a document may
// hold there. The fields that every object of a document has are explained once.
func (p *Package) noteFields(of string, fields *ast.StructType, set *token.FileSet) {
	explained, last := false, 0
	for _, f := range fields.Fields.List {
		grouped := set.Position(f.Pos()).Line == last+1
		has := strings.TrimSpace(f.Doc.Text()+f.Comment.Text()) != ""
		if f.Tag != nil {
			has = has || strings.Contains(f.Tag.Value, "allowed:") || strings.Contains(f.Tag.Value, `document:"extra"`) || strings.Contains(f.Tag.Value, `json:"note,omitempty"`)
		}
		explained = has || (explained && f.Doc == nil && grouped)
		last = set.Position(f.End()).Line
		for _, n := range f.Names {
			if n.IsExported() && !has && !explained {
				p.Undocumented = append(p.Undocumented, of+"."+n.Name)
			}
		}
	}
}

// addValues collects constants: units of quantities, members of enumerations.
func (p *Package) addValues(g *ast.GenDecl, kinds map[string]string) {
	if g.Tok != token.CONST && g.Tok != token.VAR {
		return
	}
	last := ""
	for _, s := range g.Specs {
		spec := s.(*ast.ValueSpec)
		if id, ok := spec.Type.(*ast.Ident); ok {
			last = id.Name
		} else if spec.Values != nil {
			last = ""
		}
		comment := spec.Comment.Text()
		for _, n := range spec.Names {
			if !n.IsExported() {
				continue
			}
			if strings.TrimSpace(comment+spec.Doc.Text()+g.Doc.Text()) == "" {
				p.Undocumented = append(p.Undocumented, n.Name)
			}
			if g.Tok == token.CONST {
				p.addConstant(n.Name, last, comment)
			}
		}
	}
}

func (p *Package) addConstant(name, of, comment string) {
	for i := range p.Quantities {
		if q := &p.Quantities[i]; q.Name == of {
			q.Units = append(q.Units, Unit{Name: name, Spellings: quoted(comment)})
		}
	}
	for i := range p.Enums {
		if e := &p.Enums[i]; e.Name == of {
			e.Constants = append(e.Constants, name)
		}
	}
}

// quoted gives the texts between double quotes.
func quoted(comment string) []string {
	var all []string
	for i, part := range strings.Split(comment, `"`) {
		if i%2 == 1 {
			all = append(all, part)
		}
	}
	return all
}

func (p *Package) addFunction(d *ast.FuncDecl, set *token.FileSet) error {
	if !d.Name.IsExported() {
		return nil
	}
	f := Function{Package: p.Name, Name: d.Name.Name, Doc: d.Doc.Text(), Position: set.Position(d.Pos()).String()}
	if d.Recv != nil {
		f.Receiver = strings.TrimPrefix(TypeText(d.Recv.List[0].Type), "*")
		f.Receiver, _, _ = strings.Cut(f.Receiver, "[")
		if !ast.IsExported(f.Receiver) {
			return nil
		}
	}
	if strings.TrimSpace(f.Doc) == "" && !p.isText(&f) {
		p.Undocumented = append(p.Undocumented, f.Full())
	}
	for _, field := range d.Type.Params.List {
		for _, n := range field.Names {
			f.Parameters = append(f.Parameters, Parameter{Name: n.Name, Type: TypeText(field.Type)})
		}
	}
	if d.Type.Results != nil {
		for _, field := range d.Type.Results.List {
			for range max(1, len(field.Names)) {
				f.Results = append(f.Results, TypeText(field.Type))
			}
		}
	}
	if err := f.readDoc(); err != nil {
		return fmt.Errorf("%s: %s: %w", f.Position, f.Full(), err)
	}
	p.Functions = append(p.Functions, f)
	return nil
}

// isText tells whether a function is one of those by which every enumeration is text:
// they are all alike, and the words stand beside them.
func (p *Package) isText(f *Function) bool {
	return slices.Contains([]string{"String", "MarshalText", "UnmarshalText"}, f.Name) &&
		slices.ContainsFunc(p.Enums, func(e Enum) bool { return e.Name == f.Receiver })
}

// TypeText writes a type as the source does.
func TypeText(e ast.Expr) string {
	switch t := e.(type) {
	case *ast.Ident:
		return t.Name
	case *ast.SelectorExpr:
		return TypeText(t.X) + "." + t.Sel.Name
	case *ast.StarExpr:
		return "*" + TypeText(t.X)
	case *ast.ArrayType:
		if t.Len != nil {
			return "[…]" + TypeText(t.Elt)
		}
		return "[]" + TypeText(t.Elt)
	case *ast.Ellipsis:
		return "..." + TypeText(t.Elt)
	case *ast.IndexExpr:
		return TypeText(t.X) + "[" + TypeText(t.Index) + "]"
	case *ast.MapType:
		return "map[" + TypeText(t.Key) + "]" + TypeText(t.Value)
	}
	return fmt.Sprintf("%T", e)
}
