package main

import (
	"bytes"
	"os"
	"path/filepath"
	"strings"
	"testing"
)

// told runs the program.
func told(args ...string) (out, problems string, status int) {
	var o, p bytes.Buffer
	status = run(args, &o, &p)
	return o.String(), p.String(), status
}

// The sums: twenty readings sum to 160 in, mean 8; the squares of their distances
// to 38, over 19 is 2, deviation 1.414, over √20 is 0.3162; t of 95 % and 19 is 2.093:
// 0.662 either way. 8 × 300 = 2,400 lb/ac, 7.338 × 300 = 2,201, 8.662 × 300 = 2,599.
// (8 - 4) × 300 = 1,200, of which 80 % are 960 and 240 are lost. 67.5 ÷ 960 × 43,560 ÷
// 100 = 30.6 ft; with 4.662 in above 26.3, with 3.338 in 36.7. Deviation over mean is
// 17.68 %: 2.145 × 17.68 ÷ √15 = 9.79, 2.160 × 17.68 ÷ √14 = 10.21: fifteen readings.
const american = `20 readings: the grass is 8 in high, give or take 0.662 in: the true mean lies between 7.34 in and 8.66 in nineteen times in twenty.
A mean within a tenth takes 15 readings on grass as uneven as this.
At 300 lb/ac/in that is 2,400 lb/ac standing (2,201 lb/ac to 2,599 lb/ac).
Left at 4 in, 1,200 lb/ac stand above, of which 960 lb/ac may be eaten in a day; 240 lb/ac are trampled.
Animals that eat 67.5 lb/day need a strip of 30.6 ft in a lane of 100 ft.
By the readings alone it is 26.3 ft to 36.7 ft, and the density is less sure than the height: look at what is left tomorrow, and move the fence by that.
`

// The same by 2.54 cm, 1.12085 kg/ha, 0.45359 kg and 0.3048 m: 20.3 cm, 1.68 cm, 18.6
// to 22.0; 132.4 kg/ha/cm; 2,690 (2,467 to 2,913); 10.2; 1,345, 1,076, 269; 30.6 kg;
// 9.34 m in 30.5 m; 8.01 to 11.2 m.
const metric = `20 readings: the grass is 20.3 cm high, give or take 1.68 cm: the true mean lies between 18.6 cm and 22 cm nineteen times in twenty.
A mean within a tenth takes 15 readings on grass as uneven as this.
At 132 kg/ha/cm that is 2,690 kg/ha standing (2,467 kg/ha to 2,913 kg/ha).
Left at 10.2 cm, 1,345 kg/ha stand above, of which 1,076 kg/ha may be eaten in a day; 269 kg/ha are trampled.
Animals that eat 30.6 kg/day need a strip of 9.34 m in a lane of 30.5 m.
By the readings alone it is 8.01 m to 11.2 m, and the density is less sure than the height: look at what is left tomorrow, and move the fence by that.
`

func TestTheWalkBecomesAStrip(t *testing.T) {
	for _, c := range []struct {
		args []string
		want string
	}{
		{nil, american},
		{[]string{"-units", "US"}, american},
		{[]string{"-units", "metric"}, metric},
		{[]string{"-file", "data/walk.csv", "-density", "300 lb/ac/in", "-leave", "4 in", "-demand", "67.5 lb/day", "-width", "100 ft"}, american},
	} {
		if out, problems, status := told(c.args...); out != c.want || problems != "" || status != 0 {
			t.Errorf("%q: status %d, %q\ngot\n%swant\n%s", c.args, status, problems, out, c.want)
		}
	}
}

// A file in centimetres, with a place not read, other columns and a byte-order
// mark: mean of 18, 22 and 20 is 20 cm, above 8 cm 12; deviation 2, over √3 is 1.155, t
// of two degrees 4.303: 4.97 cm.
func TestFileOfOnesOwn(t *testing.T) {
	path := write(t, "\ufeffheight (cm),by\n18,me\n,nobody\n22,me\n20,you\n")
	out, problems, status := told("-file", path, "-units", "metric", "-leave", "8 cm", "-density", "100 kg/ha/cm")
	for _, want := range []string{
		"3 readings (1 not read): the grass is 20 cm high, give or take 4.97 cm",
		"2,000 kg/ha standing", "1,200 kg/ha stand above, of which 960 kg/ha",
	} {
		if !strings.Contains(out, want) || status != 0 {
			t.Errorf("%q is not in\n%s%s", want, out, problems)
		}
	}
	// Two places far apart: the interval reaches below what is to be left.
	out, _, _ = told("-file", write(t, "height (in)\n5\n9\n"))
	if !strings.Contains(out, "whether anything stands above 4 in at all") {
		t.Error(out)
	}
	// All alike: no scatter, no doubt.
	out, _, status = told("-file", write(t, "height (in)\n8\n8\n"))
	if !strings.Contains(out, "30.6 ft to 30.6 ft") || strings.Contains(out, "uneven") || status != 0 {
		t.Error(out)
	}
}

func TestWhatIsWrongIsSaidInOneLine(t *testing.T) {
	for says, args := range map[string][]string{
		"no such file":                  {"-file", "data/nowhere.csv"},
		"no head of columns":            {"-file", write(t, "")},
		`"height (in)" or`:              {"-file", write(t, "height\n8\n")},
		"a ruler's height":              {"-file", write(t, "plate (cm)\n8\n")},
		"line 3":                        {"-file", write(t, "height (in)\n8\neight\n")},
		"gal":                           {"-file", write(t, "height (gal)\n8\n")},
		"wrong number of fields":        {"-file", write(t, "place,height (in)\n8\n")},
		"number of readings is 1":       {"-file", write(t, "height (in)\n8\n")},
		"reading is -2.54 cm":           {"-file", write(t, "height (in)\n8\n-1\n")},
		"forage.Available":              {"-leave", "9 in"},
		"-units":                        {"-units", "cubits"},
		"-leave":                        {"-leave", "4"},
		"-demand":                       {"-demand", "much"},
		"\"walk.csv\" is no flag":       {"walk.csv"},
		"provided but not defined":      {"-herd", "3"},
		"grazing.StripLength: width is": {"-width", "0 ft"},
	} {
		out, problems, status := told(args...)
		if status != 2 || out != "" || !strings.Contains(problems, says) || strings.Count(problems, "\n") != 1 {
			t.Errorf("%q: status %d, %q, want %q\n%s", args, status, problems, says, out)
		}
	}
	if out, problems, status := told("-help"); status != 0 || problems != "" || !strings.Contains(out, "-density") {
		t.Error(out, problems, status)
	}
}

func write(t *testing.T, text string) string {
	t.Helper()
	path := filepath.Join(t.TempDir(), "walk.csv")
	if err := os.WriteFile(path, []byte(text), 0o600); err != nil {
		t.Fatal(err)
	}
	return path
}
