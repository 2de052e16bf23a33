package main

import (
	"bytes"
	"encoding/csv"
	"encoding/json"
	"errors"
	"fmt"
	"io"
	"io/fs"
	"os"
	"path/filepath"
	"slices"
	"strconv"

	"example.org/soum/grazing/farm"
	"example.org/soum/herd"
)

// output is a file to be written; the path "-" is standard output.
type output struct {
	path string
	data []byte
}

const standardOutput = "-"

// outputs makes all that was asked for in memory.
func (o *options) outputs(holding *farm.Farm, plan *farm.Plan) ([]output, error) {
	var all []output
	for _, made := range []struct {
		path string
		make func(*farm.Farm, *farm.Plan) ([]byte, error)
	}{
		{o.json, planJSON}, {o.save, farmJSON}, {o.moves, movesCSV}, {o.calendar, calendar},
		{o.picture("standing-grass.svg"), standingGrass}, {o.picture("where-they-stand.svg"), whereTheyStand},
	} {
		if made.path == "" {
			continue
		}
		data, err := made.make(holding, plan)
		if err != nil {
			return nil, err
		}
		all = append(all, output{made.path, data})
	}
	if err := o.distinct(all); err != nil {
		return nil, err
	}
	for _, file := range all {
		if file.path == standardOutput {
			return all, nil
		}
	}
	room, err := holding.CarriesEach()
	if err != nil {
		return nil, inputError{err}
	}
	return append(all, output{standardOutput, []byte(o.text(holding, plan, room))}), nil
}

// picture gives the path of a picture, "" where none was asked for.
func (o *options) picture(name string) string {
	if o.images == "" {
		return ""
	}
	return filepath.Join(o.images, name)
}

// distinct refuses to write one file twice, or over what was read.
func (o *options) distinct(files []output) error {
	seen := map[string]bool{}
	for _, input := range []string{o.farm, o.log, o.heights} {
		if input != "" && input != standardInput {
			seen[same(input)] = true
		}
	}
	for _, file := range files {
		if seen[same(file.path)] {
			return wrong("%s would be written over: give each file a name of its own", file.path)
		}
		seen[same(file.path)] = true
	}
	return nil
}

// same gives a path that is the same for the same file, so far as can be told.
func same(path string) string {
	if path == standardOutput {
		return path
	}
	if real, err := filepath.EvalSymlinks(path); err == nil {
		path = real
	}
	if whole, err := filepath.Abs(path); err == nil {
		path = whole
	}
	return path
}

// planJSON gives the whole plan.
func planJSON(_ *farm.Farm, plan *farm.Plan) ([]byte, error) {
	data, err := json.MarshalIndent(plan, "", "  ")
	return append(data, '\n'), err
}

// movesHeader names the columns; those of a log of moves have its names, so that
// farm.ReadMoves and -log take the file back, edited where it went otherwise.
var movesHeader = []string{
	"date", "rotation", "paddock", "pass", "from (m)", "to (m)", "length_m", "paces", "rolls", "area (m2)", "stay_days",
	"height_m", "leave_m", "left (m)", "stock_density_kg_m2", "ready_again", "group", "in", "out", "animals (AU)", "eaten_kg",
}

// movesCSV gives all moves, those of ground under way first, a row for each visit of a group. Out is the day on which
// it leaves; an animal unit is what eats 26 lb of dry matter a day.
func movesCSV(_ *farm.Farm, plan *farm.Plan) ([]byte, error) {
	unit, err := herd.UnitDemand(herd.UnitTwentySixPounds)
	if err != nil {
		return nil, err
	}
	var b bytes.Buffer
	w := csv.NewWriter(&b)
	rows := [][]string{movesHeader}
	for _, m := range slices.Concat(plan.UnderWay, plan.Moves) {
		row := moveCells(&m)
		for _, v := range m.Visits {
			out := v.To.Add(1)
			animals := float64(v.Eaten) / float64(out.Sub(v.From)) / float64(unit)
			rows = append(rows, append(row[:len(row):len(row)], v.Group, v.From.String(), out.String(), decimal(animals), decimal(float64(v.Eaten))))
		}
	}
	err = w.WriteAll(rows)
	return b.Bytes(), err
}

// moveCells gives what all visits of a move have in common. What a move has
// not, such as the length of a paddock grazed whole, is left empty.
func moveCells(m *farm.Move) []string {
	from, to, again := "", "", ""
	if m.Length != 0 {
		from, to = decimal(float64(m.From)), decimal(float64(m.To))
	}
	if m.ReadyAgain != nil {
		again = m.ReadyAgain.String()
	}
	return []string{
		m.Date.String(), strconv.Itoa(m.Rotation), m.Land, strconv.Itoa(m.Pass), from, to, given(float64(m.Length)), given(m.Paces), given(m.Rolls),
		decimal(float64(m.Area)), decimal(float64(m.Stay)), decimal(float64(m.Height)), decimal(float64(m.Leave)), given(float64(m.Left)),
		decimal(float64(m.Density)), again,
	}
}

func decimal(v float64) string { return strconv.FormatFloat(v, 'g', -1, 64) }

// given leaves a 0 empty.
func given(v float64) string {
	if v == 0 {
		return ""
	}
	return decimal(v)
}

// writeAll writes files beside their places, then puts all of them there, then
// prints: a failure leaves no half of a file and prints nothing.
func writeAll(files []output, out io.Writer) (err error) {
	var staged []staging
	defer func() {
		for _, s := range staged {
			os.Remove(s.from) // what is in its place already is no longer there
		}
	}()
	for _, file := range files {
		if file.path == standardOutput {
			continue
		}
		s, err := stage(file)
		if err != nil {
			return err
		}
		staged = append(staged, s)
	}
	for _, s := range staged {
		if err := s.place(); err != nil {
			return err
		}
	}
	for _, file := range files {
		if file.path == standardOutput {
			if _, err := out.Write(file.data); err != nil {
				return err
			}
		}
	}
	return nil
}

// staging is a file that waits beside its place; from is empty for what can
// only be written to, such as a pipe.
type staging struct {
	from, to string
	data     []byte
}

// stage writes a file beside its place, in a directory that it makes if need be
// for pictures.
func stage(file output) (staging, error) {
	path := same(file.path)
	at, err := os.Stat(path)
	switch {
	case err == nil && at.IsDir():
		return staging{}, fmt.Errorf("%s is a directory", file.path)
	case err == nil && !at.Mode().IsRegular():
		return staging{to: path, data: file.data}, nil
	case err != nil && !errors.Is(err, fs.ErrNotExist):
		return staging{}, err
	}
	if filepath.Ext(path) == ".svg" {
		if err := os.MkdirAll(filepath.Dir(path), 0o777); err != nil {
			return staging{}, err
		}
	}
	s := staging{from: fmt.Sprintf("%s.%d.part", path, os.Getpid()), to: path}
	if err := writeNew(s.from, file.data); err != nil {
		return staging{}, err
	}
	return s, nil
}

// place puts a file into its place.
func (s staging) place() error {
	if s.from != "" {
		return os.Rename(s.from, s.to)
	}
	f, err := os.OpenFile(s.to, os.O_WRONLY, 0)
	if err != nil {
		return err
	}
	_, err = f.Write(s.data)
	return errors.Join(err, f.Close())
}

// writeNew writes a file that must not be there yet, and removes it again where
// that fails half way.
func writeNew(path string, data []byte) error {
	f, err := os.OpenFile(path, os.O_WRONLY|os.O_CREATE|os.O_EXCL, 0o666)
	if err != nil {
		return err
	}
	_, err = f.Write(data)
	if err = errors.Join(err, f.Close()); err != nil {
		os.Remove(path)
	}
	return err
}
