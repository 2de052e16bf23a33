package document

import (
	"bytes"
	"encoding/json"
	"errors"
	"fmt"
	"io"
	"unicode/utf8"
)

// deepest is how far objects and lists may stand inside one another, so that a
// hostile document cannot exhaust the stack.
const deepest = 64

// kind is what a node of a document is.
type kind int

const (
	nothing kind = iota + 1 // null
	truth
	number
	text
	list
	object
)

// node is a value of a document.
type node struct {
	kind  kind
	text  string   // a text's letters, a number's digits, true or false
	names []string // an object's keys, in order
	items []node   // an object's values or a list's items
}

// reader builds the tree of a document.
type reader struct {
	data   []byte
	tokens *json.Decoder
	whole  map[string]bool // the arguments that are documents
}

// readTree reads data into a tree: one object and nothing behind it. wants says what
// the object is; paths begin anew within the keys of it that whole names.
func readTree(data []byte, wants string, whole map[string]bool) (*node, error) {
	var top *place
	if !utf8.Valid(data) {
		return nil, top.problem(Error{Problem: "not UTF-8 text", Allowed: "JSON in UTF-8"})
	}
	data = bytes.TrimPrefix(data, []byte("\ufeff")) // some editors put a mark in front
	if len(bytes.TrimSpace(data)) == 0 {
		return nil, top.problem(Error{Problem: "empty", Allowed: wants})
	}
	r := &reader{data: data, tokens: json.NewDecoder(bytes.NewReader(data)), whole: whole}
	r.tokens.UseNumber()
	tree, err := r.value(nil, 1)
	if err != nil {
		return nil, err
	}
	if tree.kind != object {
		return nil, top.problem(Error{Value: tree.show(), Problem: tree.what(), Allowed: wants})
	}
	if _, err := r.tokens.Token(); !errors.Is(err, io.EOF) {
		return nil, top.problem(Error{Problem: "something stands behind the end of the object", Allowed: "one JSON object and nothing else"})
	}
	return &tree, nil
}

// value reads one value; depth counts the objects and lists it stands in, with
// itself.
func (r *reader) value(at *place, depth int) (node, error) {
	token, err := r.tokens.Token()
	if err != nil {
		return node{}, r.syntax(at, err)
	}
	switch token := token.(type) {
	case json.Delim:
		if depth > deepest {
			return node{}, at.problem(Error{Problem: fmt.Sprintf("is nested more than %d deep", deepest), Allowed: "a flatter document"})
		}
		if token == '{' {
			return r.object(at, depth)
		}
		return r.list(at, depth)
	case json.Number:
		return node{kind: number, text: token.String()}, nil
	case string:
		return node{kind: text, text: token}, nil
	case bool:
		return node{kind: truth, text: fmt.Sprint(token)}, nil
	}
	return node{kind: nothing}, nil
}

func (r *reader) object(at *place, depth int) (node, error) {
	n := node{kind: object}
	seen := map[string]bool{}
	for r.tokens.More() {
		token, err := r.tokens.Token()
		if err != nil {
			return n, r.syntax(at, err)
		}
		key, isText := token.(string)
		if !isText {
			return n, at.problem(Error{Problem: "not JSON: a key is not text", Allowed: "keys in quotes"})
		}
		if seen[key] {
			return n, at.of(key).problem(Error{Problem: "this key stands twice in its object", Allowed: "each key once"})
		}
		seen[key] = true
		within := at.of(key)
		if depth == 1 && r.whole[key] {
			within = nil
		}
		item, err := r.value(within, depth+1)
		if err != nil {
			return n, err
		}
		n.names = append(n.names, key)
		n.items = append(n.items, item)
	}
	return n, r.end(at)
}

func (r *reader) list(at *place, depth int) (node, error) {
	n := node{kind: list}
	for r.tokens.More() {
		item, err := r.value(at.item(len(n.items)), depth+1)
		if err != nil {
			return n, err
		}
		n.items = append(n.items, item)
	}
	return n, r.end(at)
}

// end reads the closing bracket.
func (r *reader) end(at *place) error {
	if _, err := r.tokens.Token(); err != nil {
		return r.syntax(at, err)
	}
	return nil
}

// syntax tells where a text stops being JSON.
func (r *reader) syntax(at *place, err error) error {
	if errors.Is(err, io.EOF) || errors.Is(err, io.ErrUnexpectedEOF) {
		return at.problem(Error{Problem: "not JSON: the text ends before the object does", Allowed: "a whole JSON object"})
	}
	offset := r.tokens.InputOffset()
	var syntax *json.SyntaxError
	if errors.As(err, &syntax) {
		offset = max(offset, syntax.Offset-1)
	}
	before := r.data[:min(max(offset, 0), int64(len(r.data)))]
	line := bytes.Count(before, []byte("\n")) + 1
	column := utf8.RuneCount(before[bytes.LastIndexByte(before, '\n')+1:]) + 1
	return at.problem(Error{Problem: fmt.Sprintf("not JSON at line %d, column %d: %v", line, column, err)})
}

// show writes a node for an error.
func (n *node) show() string {
	switch n.kind {
	case nothing:
		return "null"
	case text:
		return quoted(n.text)
	case list:
		return "[…]"
	case object:
		return "{…}"
	}
	if len(n.text) > longest {
		return n.text[:longest] + "…"
	}
	return n.text
}

// what says what a node is, reading on from show.
func (n *node) what() string {
	switch n.kind {
	case nothing:
		return "is not taken"
	case truth:
		return "is a yes or no"
	case number:
		return "is a bare number"
	case text:
		return "is text"
	case list:
		return "is a list"
	}
	return "is an object"
}

// plain gives a node as encoding/json would, with the digits of numbers kept.
func (n *node) plain() any {
	switch n.kind {
	case truth:
		return n.text == "true"
	case number:
		return json.Number(n.text)
	case text:
		return n.text
	case list:
		all := make([]any, len(n.items))
		for i := range n.items {
			all[i] = n.items[i].plain()
		}
		return all
	case object:
		all := make(map[string]any, len(n.items))
		for i := range n.items {
			all[n.names[i]] = n.items[i].plain()
		}
		return all
	}
	return nil
}
