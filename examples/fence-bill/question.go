package main

import (
	"bytes"
	"encoding/json"
	"errors"
	"fmt"
	"io"
	"slices"
	"strings"
	"unicode/utf8"

	"example.org/soum/grazing"
	"example.org/soum/units"
)

// question is what the program reads: a few keys of its own, and the fence.
type question struct {
	Stock  grazing.FencedStock
	As     string // the animal that the wires are chosen for
	Land   units.Area
	Job    grazing.FenceJob
	Saves  *units.Money
	Grazed *units.UnitDays
}

// keys are the keys of the question, note and those beginning x- apart.
var keys = []string{"stock", "wired_as", "land", "job", "saves", "grazed"}

// read reads the document and checks it whole.
func read(data []byte) (*question, error) {
	d, err := open(data)
	if err != nil {
		return nil, err
	}
	var q question
	for _, key := range []func(document) error{q.readStock, q.readAs, q.readLand, q.readJob, q.readSaves, q.readGrazed} {
		if err := key(d); err != nil {
			return nil, err
		}
	}
	return &q, nil
}

func (q *question) readStock(d document) error {
	const allowed = `"quiet cattle", "small", "birds" or "horned"`
	text, err := d.text("stock", allowed)
	if err == nil && q.Stock.UnmarshalText([]byte(text)) != nil {
		err = d.wrong("stock", "is not stock that a moved fence holds", allowed)
	}
	return err
}

func (q *question) readAs(d document) (err error) {
	if q.As, err = d.text("wired_as", `the animal that the wires are chosen for, such as "sheep"`); err != nil {
		return err
	}
	animals := wiredAs()
	switch allowed := "one of: " + strings.Join(animals, ", "); {
	case q.As == barbed:
		return d.wrong("wired_as", "is a fence that nobody may electrify, and this one is electric", allowed)
	case !slices.Contains(animals, q.As):
		return d.wrong("wired_as", "is not an animal that an electric fence is printed for", allowed)
	}
	return nil
}

func (q *question) readLand(d document) error {
	text, err := d.text("land", `the land that the moved fence goes over, text with a unit, such as "5 ac"`)
	if err != nil {
		return err
	}
	if q.Land, err = units.ParseArea(text); err != nil {
		return fmt.Errorf("land: %w", err)
	}
	if !(q.Land > 0) {
		return d.wrong("land", "is not above 0", "an area above 0")
	}
	return nil
}

// readJob leaves the fence to the library, which tells the place in the fence.
func (q *question) readJob(d document) (err error) {
	switch raw := d["job"]; {
	case raw == nil:
		return errors.New("job: missing; an object: the fence and the prices")
	case raw[0] != '{':
		return d.wrong("job", "is not an object", "an object: the fence and the prices")
	default:
		if q.Job, err = grazing.ReadFenceJob(raw); err != nil {
			return fmt.Errorf("job.%w", err)
		}
		return nil
	}
}

func (q *question) readSaves(d document) error {
	if d["saves"] == nil {
		return nil
	}
	text, err := d.text("saves", `what the fence saves or brings in a year, before its upkeep, such as "500 USD"`)
	if err != nil {
		return err
	}
	saves, err := units.ParseMoney(text)
	if err != nil {
		return fmt.Errorf("saves: %w", err)
	}
	if currency := q.Job.Prices[0].Price.Currency; saves.Currency != currency {
		return d.wrong("saves", "is another currency than "+currency, "one currency in a file")
	}
	q.Saves = &saves
	return nil
}

func (q *question) readGrazed(d document) error {
	if d["grazed"] == nil {
		return nil
	}
	text, err := d.text("grazed", `what is grazed behind the fence in a year, such as "35 AUM"`)
	if err != nil {
		return err
	}
	grazed, err := units.ParseUnitDays(text)
	if err != nil {
		return fmt.Errorf("grazed: %w", err)
	}
	if !(grazed >= units.AnimalUnitDay) {
		return d.wrong("grazed", "is less than one animal unit grazes in a day", "1 AUD or more, or no such key")
	}
	q.Grazed = &grazed
	return nil
}

// document is the values of a JSON object by key.
type document map[string]json.RawMessage

// open takes a JSON object apart. A key that nobody knows is refused, and so is one that
// stands twice, of which the reader of the standard library would take the last.
func open(data []byte) (document, error) {
	if !utf8.Valid(data) {
		return nil, errors.New("document: not UTF-8 text; JSON in UTF-8")
	}
	data = bytes.TrimPrefix(data, []byte("\ufeff")) // some editors put a mark in front
	d := document{}
	decoder := json.NewDecoder(bytes.NewReader(data))
	if start, err := decoder.Token(); err != nil || start != json.Delim('{') {
		return nil, errors.New("document: not a JSON object; an object with the keys " + strings.Join(keys, ", "))
	}
	for decoder.More() {
		token, err := decoder.Token()
		if err != nil {
			return nil, notJSON("document", err)
		}
		key := fmt.Sprint(token)
		var value json.RawMessage
		if err := decoder.Decode(&value); err != nil {
			return nil, notJSON(key, err)
		}
		switch {
		case d[key] != nil:
			return nil, fmt.Errorf("%s: stands twice; each key once", key)
		case key != "note" && !strings.HasPrefix(key, "x-") && !slices.Contains(keys, key):
			return nil, fmt.Errorf("%s: unknown key; the keys here are %s, note, and any that begin with x-", key, strings.Join(keys, ", "))
		}
		d[key] = value
	}
	if _, err := decoder.Token(); err != nil {
		return nil, notJSON("document", err)
	}
	if _, err := decoder.Token(); !errors.Is(err, io.EOF) {
		return nil, errors.New("document: something stands behind the end of the object; one JSON object and nothing else")
	}
	return d, nil
}

func notJSON(path string, err error) error {
	if errors.Is(err, io.EOF) || errors.Is(err, io.ErrUnexpectedEOF) {
		return fmt.Errorf("%s: not JSON: the text ends before the object does", path)
	}
	return fmt.Errorf("%s: not JSON: %w", path, err)
}

// text gives the text of a key.
func (d document) text(key, allowed string) (text string, err error) {
	switch raw := d[key]; {
	case raw == nil:
		return "", errors.New(key + ": missing; " + allowed)
	case raw[0] != '"':
		return "", d.wrong(key, "is not text", allowed)
	default:
		return text, json.Unmarshal(raw, &text)
	}
}

// wrong tells the path, the value and what would be right.
func (d document) wrong(key, problem, allowed string) error {
	return fmt.Errorf("%s: %s %s; %s", key, d[key], problem, allowed)
}

// barbed is the row of a fence that nobody may electrify, and this one is electric.
const barbed = "any-behind-barbed-wire"

// wiredAs lists the animals that print has wires round the land for, or the least
// voltage: some have only the one.
func wiredAs() (animals []string) {
	add := func(animal string) {
		if animal != barbed && !slices.Contains(animals, animal) {
			animals = append(animals, animal)
		}
	}
	for _, row := range grazing.WireRows() {
		if row.Line == grazing.LineBoundary {
			add(row.Stock)
		}
	}
	for _, row := range grazing.VoltageRows() {
		if row.Aim == grazing.VoltageLeast {
			add(row.Stock)
		}
	}
	return animals
}
