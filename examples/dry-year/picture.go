package main

import (
	"image/color"
	"math"
	"time"

	"gonum.org/v1/plot"
	"gonum.org/v1/plot/plotter"
	"gonum.org/v1/plot/vg"

	"example.org/soum/grazing/farm"
	"example.org/soum/grazing/study"
	"example.org/soum/units"
)

var (
	outer = color.RGBA{0xc6, 0xdb, 0xef, 0xff}
	inner = color.RGBA{0x6b, 0xae, 0xd6, 0xff}
	blue  = color.RGBA{0x08, 0x45, 0x94, 0xff}
	brown = color.RGBA{0xd5, 0x5e, 0x00, 0xff}
)

// draw writes the fan: the hay left today and at the end of each month, in nine
// seasons of ten and in the middle half of them, with the middle season as a line.
func draw(path string, holding *farm.Farm, p *study.Point) error {
	unit, name := units.DryMatter(1000), "t of dry matter"
	if holding.Units == units.US {
		unit, name = 907.18474, "short tons of dry matter"
	}
	fan := plot.New()
	fan.Title.Text = "Hay left, less feed wanted: below 0 it is missing"
	fan.Title.Padding = vg.Points(8)
	fan.Y.Label.Text = name
	points := func(of func(*study.Spread) units.DryMatter) plotter.XYs {
		xys := plotter.XYs{{Y: float64(dryMatter(holding) / unit)}} // today, all is there
		for i := range p.Months {
			m := &p.Months[i]
			first, _ := units.NewDate(m.Year, time.Month(m.Month), 1)
			last := min(first.Add(first.DaysInMonth()-1), holding.Season.To)
			xys = append(xys, plotter.XY{X: float64(last.Sub(holding.Today)), Y: float64(of(&m.Left) / unit)})
		}
		return xys
	}
	low := points(func(s *study.Spread) units.DryMatter { return s.Low })
	lower := points(func(s *study.Spread) units.DryMatter { return s.Lower })
	middle := points(func(s *study.Spread) units.DryMatter { return s.Middle })
	upper := points(func(s *study.Spread) units.DryMatter { return s.Upper })
	high := points(func(s *study.Spread) units.DryMatter { return s.High })
	for _, band := range []struct {
		low, high plotter.XYs
		colour    color.Color
		name      string
	}{{low, high, outer, "nine seasons of ten"}, {lower, upper, inner, "the middle half"}} {
		outline := append(plotter.XYs{}, band.low...)
		for i := len(band.high) - 1; i >= 0; i-- {
			outline = append(outline, band.high[i])
		}
		area, err := plotter.NewPolygon(outline)
		if err != nil {
			return err
		}
		area.Color, area.LineStyle.Width = band.colour, 0
		fan.Add(area)
		fan.Legend.Add(band.name, area)
	}
	line, err := plotter.NewLine(middle)
	if err != nil {
		return err
	}
	line.Color, line.Width = blue, 2
	nothing, err := plotter.NewLine(plotter.XYs{{X: middle[0].X}, {X: middle[len(middle)-1].X}})
	if err != nil {
		return err
	}
	nothing.Color, nothing.Width = brown, 1.2
	fan.Add(line, nothing)
	fan.Legend.Add("the middle season", line)
	fan.Legend.Add("nothing left", nothing)
	fan.Legend.Left = true
	fan.Legend.XOffs, fan.Legend.YOffs = vg.Points(10), vg.Points(10)
	ticks := plot.ConstantTicks{{Value: 0, Label: "today"}}
	for i, xy := range middle[1:] {
		ticks = append(ticks, plot.Tick{Value: xy.X, Label: time.Month(p.Months[i].Month).String()[:3]})
	}
	fan.X.Tick.Marker = ticks
	fan.X.Label.Text = "end of the month"
	fan.Y.Min, fan.Y.Max = min(0, fan.Y.Min), fan.Y.Max+(fan.Y.Max-fan.Y.Min)/20
	fan.Y.Tick.Marker = plot.TickerFunc(byFives)
	fan.Legend.Padding = vg.Points(3)
	return fan.Save(9*vg.Inch, 4.5*vg.Inch, path)
}

// dryMatter is what animals can eat of the hay in store.
func dryMatter(holding *farm.Farm) units.DryMatter {
	dry := holding.Feed.DryMatter
	if dry == 0 {
		dry = 90 * units.Percent // what the farm document means where it leaves it out
	}
	return units.DryMatter(float64(holding.Feed.Hay) * float64(dry) * float64(1-holding.Feed.Waste))
}

// byFives marks every fifth, tenth … so that there are at most ten marks.
func byFives(low, high float64) (ticks []plot.Tick) {
	step := 1.0
	for (high-low)/step > 10 {
		step *= 5
		if (high-low)/step < 2 {
			step /= 2.5
		}
	}
	for y := math.Ceil(low/step) * step; y <= high; y += step {
		ticks = append(ticks, plot.Tick{Value: y, Label: units.Number(y)})
	}
	return ticks
}
