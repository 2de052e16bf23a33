package main

import (
	"bytes"
	"fmt"
	"image/color"
	"slices"
	"strings"
	"time"

	"gonum.org/v1/plot"
	"gonum.org/v1/plot/font"
	"gonum.org/v1/plot/plotter"
	"gonum.org/v1/plot/vg"
	"gonum.org/v1/plot/vg/draw"
	"gonum.org/v1/plot/vg/vgsvg"

	"example.org/soum/grazing/farm"
	"example.org/soum/units"
)

// The size of a picture, and the part of its width that is kept for the legend.
const (
	pictureWidth = 11.4 * vg.Inch
	legendWidth  = 2 * vg.Inch
	margin       = 0.15 * vg.Inch
	thinLine     = 0.6
	thickLine    = 1.6
)

// colours are told apart by most colour-blind eyes too; with more things than
// colours they begin anew, in the order of the legend.
var colours = []color.RGBA{
	{0x00, 0x72, 0xb2, 0xff}, {0xe6, 0x9f, 0x00, 0xff}, {0x00, 0x9e, 0x73, 0xff}, {0xcc, 0x79, 0xa7, 0xff},
	{0x56, 0xb4, 0xe9, 0xff}, {0xd5, 0x5e, 0x00, 0xff}, {0xb8, 0xc0, 0x3c, 0xff}, {0x7a, 0x52, 0xa0, 0xff},
	{0x8c, 0x8c, 0x8c, 0xff}, {0x6b, 0x8e, 0x23, 0xff},
}

func colour(i int) color.RGBA { return colours[i%len(colours)] }

var (
	ink  = color.RGBA{0x33, 0x33, 0x33, 0xff}
	pale = color.RGBA{0xdd, 0xdd, 0xdd, 0xff}
)

// standingGrass draws the standing grass of each land, one on another, and below
// it what grows, what is wanted and what is fed.
func standingGrass(holding *farm.Farm, plan *farm.Plan) ([]byte, error) {
	unit := unitOf(units.DryMatter(0), holding.Units)
	upper, lower := seasonPlot(plan), seasonPlot(plan)
	upper.Title.Text = "Standing grass by land, stubble included"
	upper.Y.Label.Text = unit + " of dry matter"
	lower.Title.Text = "Growth and demand"
	lower.Y.Label.Text = unit + " of dry matter a day"
	lands, err := stackLands(upper, holding, plan)
	if err != nil {
		return nil, err
	}
	lines, err := dayLines(lower, holding.Units, plan)
	if err != nil {
		return nil, err
	}
	height := max(7, 1.5+0.4*float64(len(holding.Land))) // room for the legend
	return picture(vg.Length(height)*vg.Inch, []*plot.Plot{upper, lower}, []*plot.Legend{lands, lines})
}

// stackLands adds a band for each land, the last of the document on top, as in
// the legend.
func stackLands(p *plot.Plot, holding *farm.Farm, plan *farm.Plan) (*plot.Legend, error) {
	legend := newLegend()
	below := make([]float64, len(plan.Days))
	var bands []*plotter.Polygon
	for i := range holding.Land {
		top := make([]float64, len(plan.Days))
		for d := range plan.Days {
			top[d] = below[d] + inUnit(plan.Days[d].Lands[i], holding.Units)
		}
		band, err := plotter.NewPolygon(outline(plan, below, top))
		if err != nil {
			return nil, err
		}
		band.Color, band.LineStyle.Width, band.LineStyle.Color = colour(i), thinLine, color.White
		p.Add(band)
		bands = append(bands, band)
		below = top
	}
	for i := len(bands) - 1; i >= 0; i-- {
		legend.Add(label(holding.Land[i].ID), bands[i])
	}
	fromNothing(p)
	return legend, nil
}

// outline goes along the top of a band and back along its foot.
func outline(plan *farm.Plan, below, top []float64) plotter.XYs {
	var points plotter.XYs
	for d := range plan.Days {
		points = append(points, plotter.XY{X: float64(plan.Days[d].Date), Y: top[d]})
	}
	for d := len(plan.Days) - 1; d >= 0; d-- {
		points = append(points, plotter.XY{X: float64(plan.Days[d].Date), Y: below[d]})
	}
	return points
}

// dayLines adds what grows, is wanted and is fed each day.
func dayLines(p *plot.Plot, s units.System, plan *farm.Plan) (*plot.Legend, error) {
	legend := newLegend()
	for i, line := range []struct {
		name string
		of   func(*farm.PlanDay) units.DryMatter
	}{
		{"grown", func(d *farm.PlanDay) units.DryMatter { return d.Grown }},
		{"wanted by all", func(d *farm.PlanDay) units.DryMatter { return d.Wanted }},
		{"fed instead", func(d *farm.PlanDay) units.DryMatter { return d.Fed }},
	} {
		points := make(plotter.XYs, len(plan.Days))
		for d := range plan.Days {
			points[d] = plotter.XY{X: float64(plan.Days[d].Date), Y: inUnit(line.of(&plan.Days[d]), s)}
		}
		drawn, err := plotter.NewLine(points)
		if err != nil {
			return nil, err
		}
		drawn.StepStyle = plotter.PostStep
		drawn.Width, drawn.Color = thickLine, []color.RGBA{colour(2), ink, colour(5)}[i]
		p.Add(drawn)
		legend.Add(line.name, drawn)
	}
	fromNothing(p)
	return legend, nil
}

// fromNothing lets an axis begin at 0 and end a little above the highest value.
func fromNothing(p *plot.Plot) {
	p.Y.Min, p.Y.Max = 0, max(p.Y.Max*1.08, 1)
	p.Y.Tick.Marker = readableTicks{}
}

// readableTicks writes numbers as the text does.
type readableTicks struct{}

// Ticks labels the major ticks of the library.
func (readableTicks) Ticks(low, high float64) []plot.Tick {
	ticks := plot.DefaultTicks{}.Ticks(low, high)
	for i := range ticks {
		if !ticks[i].IsMinor() {
			ticks[i].Label = roomy(units.Number(ticks[i].Value))
		}
	}
	return ticks
}

// longestLabel is what fits beside a picture.
const longestLabel = 18

// label gives a name of the user's, its middle cut out where it is long.
func label(id string) string {
	letters := []rune(oneLine(id))
	if len(letters) <= longestLabel {
		return string(letters)
	}
	half := longestLabel / 2
	return string(letters[:half]) + "…" + string(letters[len(letters)-half+1:])
}

// roomy adds blanks to a label at the left of an axis. Its room is measured by
// the font of the plot; a viewer may have only a wider one.
func roomy(text string) string { return text + strings.Repeat(" ", 1+len(text)/2) }

// A lane is drawn so many times as high as a paddock, so that its strips are
// seen; between lands is a gap.
const (
	laneHeight    = 3.0
	paddockHeight = 1.0
	landGap       = 0.25
)

// band is the height of a land in the picture; from its foot up goes the lane
// from its start.
type band struct{ foot, high float64 }

// whereTheyStand draws on which ground each group is, day by day.
func whereTheyStand(holding *farm.Farm, plan *farm.Plan) ([]byte, error) {
	p := seasonPlot(plan)
	p.Title.Text = "Where each group stands, day by day (the start of a lane is the foot of its band)"
	bands, height := landBands(holding)
	var ticks plot.ConstantTicks
	for i := range holding.Land {
		at := bands[holding.Land[i].ID]
		ticks = append(ticks, plot.Tick{Value: at.foot + at.high/2, Label: roomy(label(holding.Land[i].ID))})
		if err := addBlock(p, float64(plan.Today), float64(plan.To)+1, at.foot, at.foot+at.high, color.RGBA{0xf4, 0xf4, 0xf0, 0xff}); err != nil {
			return nil, err
		}
	}
	p.Add(monthLines())
	p.Y.Tick.Marker, p.Y.Tick.Length, p.Y.LineStyle.Width = ticks, 0, 0
	p.Y.Min, p.Y.Max = -height, 0
	legend, err := addGroups(p, holding, plan, bands)
	if err != nil {
		return nil, err
	}
	return picture(vg.Length(min(max(height*0.42, 3), 40))*vg.Inch, []*plot.Plot{p}, []*plot.Legend{legend})
}

// landBands puts the lands below one another, in the order of the document.
func landBands(holding *farm.Farm) (map[string]band, float64) {
	bands, used := map[string]band{}, 0.0
	for i := range holding.Land {
		high := laneHeight
		if holding.Land[i].Length == 0 {
			high = paddockHeight
		}
		used += high + landGap
		bands[holding.Land[i].ID] = band{-used, high}
	}
	return bands, used
}

// addGroups draws a block for each visit, a colour for each group, and the cuts.
func addGroups(p *plot.Plot, holding *farm.Farm, plan *farm.Plan, bands map[string]band) (*plot.Legend, error) {
	legend := newLegend()
	length := map[string]units.Length{}
	for i := range holding.Land {
		length[holding.Land[i].ID] = holding.Land[i].Length
	}
	for g := range holding.Groups {
		for _, m := range slices.Concat(plan.UnderWay, plan.Moves) {
			low, high := bands[m.Land].piece(m.From, m.To, length[m.Land])
			for _, v := range m.Visits {
				if v.Group != holding.Groups[g].ID {
					continue
				}
				if err := addBlock(p, float64(v.From), float64(v.To)+1, low, high, colour(g)); err != nil {
					return nil, err
				}
			}
		}
		legend.Add(label(holding.Groups[g].ID), swatch{colour(g)})
	}
	for _, cut := range holding.Cuts {
		to := cut.To
		if to == 0 {
			to = length[cut.Land]
		}
		low, high := bands[cut.Land].piece(cut.From, to, length[cut.Land])
		if err := addBlock(p, float64(cut.Date), float64(cut.Date)+1, low, high, ink); err != nil {
			return nil, err
		}
	}
	if len(holding.Cuts) > 0 {
		legend.Add("cut for hay", swatch{ink})
	}
	return legend, nil
}

// piece gives the part of a band from one distance to another; the whole of it
// for a paddock.
func (b band) piece(from, to, length units.Length) (low, high float64) {
	if length == 0 {
		return b.foot, b.foot + b.high
	}
	return b.foot + b.high*float64(from/length), b.foot + b.high*float64(to/length)
}

// addBlock fills a rectangle.
func addBlock(p *plot.Plot, left, right, low, high float64, fill color.Color) error {
	block, err := plotter.NewPolygon(plotter.XYs{{X: left, Y: low}, {X: right, Y: low}, {X: right, Y: high}, {X: left, Y: high}})
	if err != nil {
		return err
	}
	block.Color, block.LineStyle.Width = fill, 0
	p.Add(block)
	return nil
}

// swatch is a colour in a legend.
type swatch struct{ color.Color }

// Thumbnail fills its place in the legend.
func (s swatch) Thumbnail(c *draw.Canvas) {
	corners := []vg.Point{c.Min, {X: c.Min.X, Y: c.Max.Y}, c.Max, {X: c.Max.X, Y: c.Min.Y}}
	c.FillPolygon(s.Color, corners)
}

// seasonPlot is an empty plot over the days of the plan.
func seasonPlot(plan *farm.Plan) *plot.Plot {
	p := plot.New()
	for _, f := range []*font.Font{&p.Title.TextStyle.Font, &p.Y.Label.TextStyle.Font, &p.X.Tick.Label.Font, &p.Y.Tick.Label.Font} {
		f.Variant = "Sans"
	}
	p.Title.TextStyle.Font.Size, p.Title.Padding = 13, 6
	p.X.Min, p.X.Max = float64(plan.Days[0].Date), float64(plan.To)+1
	p.X.Tick.Marker = monthTicks(plan)
	p.Add(monthLines())
	return p
}

// monthTicks marks the first day and the first of each month, with fewer labels
// where a plan is long.
func monthTicks(plan *farm.Plan) plot.ConstantTicks {
	first := plan.Days[0].Date
	ticks := plot.ConstantTicks{{Value: float64(first), Label: dayMonth(first)}}
	apart := 1 + len(plan.Months)/13
	room := float64(len(plan.Days)) / 14
	for i := range plan.Days {
		d := plan.Days[i].Date
		if d.Day() != 1 || i == 0 {
			continue
		}
		tick := plot.Tick{Value: float64(d)}
		if (int(d.Month())-1)%apart == 0 {
			tick.Label = dayMonth(d)
			if d.Month() == time.January {
				tick.Label += fmt.Sprintf(" %d", d.Year())
			}
			if i < int(room) {
				ticks[0].Label = ""
			}
		}
		ticks = append(ticks, tick)
	}
	return ticks
}

// monthLines draws the first of each month behind the rest.
func monthLines() *plotter.Grid {
	grid := plotter.NewGrid()
	grid.Horizontal.Color = nil
	grid.Vertical.Color, grid.Vertical.Width = pale, thinLine
	return grid
}

func newLegend() *plot.Legend {
	l := plot.NewLegend()
	l.Top, l.Left = true, true
	l.TextStyle.Font.Size, l.TextStyle.Font.Variant = 10, "Sans"
	l.Padding = 3
	l.ThumbnailWidth = font.Length(16)
	return &l
}

// picture draws plots below one another, each with its legend at the right.
func picture(height vg.Length, plots []*plot.Plot, legends []*plot.Legend) ([]byte, error) {
	canvas := vgsvg.New(pictureWidth, height)
	whole := draw.New(canvas)
	whole.FillPolygon(color.White, []vg.Point{whole.Min, {X: whole.Min.X, Y: whole.Max.Y}, whole.Max, {X: whole.Max.X, Y: whole.Min.Y}})
	left := draw.Crop(whole, margin, -legendWidth, margin, -margin)
	rows := make([][]*plot.Plot, len(plots))
	for i := range plots {
		rows[i] = []*plot.Plot{plots[i]}
	}
	tiles := draw.Tiles{Rows: len(plots), Cols: 1, PadY: 0.2 * vg.Inch}
	for i, place := range plot.Align(rows, tiles, left) {
		plots[i].Draw(place[0])
		beside := draw.Crop(whole, 0, -margin, 0, 0)
		beside.Min = vg.Point{X: whole.Max.X - legendWidth + margin, Y: place[0].Min.Y}
		beside.Max.Y = place[0].Max.Y - 0.3*vg.Inch
		legends[i].Draw(beside)
	}
	var b bytes.Buffer
	_, err := canvas.WriteTo(&b)
	return b.Bytes(), err
}
