package main

import (
	"fmt"
	"image/color"

	"gonum.org/v1/plot"
	"gonum.org/v1/plot/plotter"
	"gonum.org/v1/plot/vg"

	"example.org/soum/rainfall"
	"example.org/soum/units"
)

var (
	blue  = color.RGBA{0x00, 0x72, 0xb2, 0xff}
	brown = color.RGBA{0xd5, 0x5e, 0x00, 0xff}
	pale  = color.RGBA{0xbb, 0xbb, 0xbb, 0xff}
	ink   = color.RGBA{0x33, 0x33, 0x33, 0xff}
)

// draw writes the years as bars, those of the driest fifth in brown, with the nine
// deciles as lines.
func draw(path string, years []rainfall.YearRain, system units.System) error {
	deciles, err := rainfall.Deciles(rainfall.Depths(years), rainfall.RuleWeibull)
	if err != nil {
		return err
	}
	unit, name := units.RainMillimetre, "mm"
	if system == units.US {
		unit, name = units.RainInch, "in"
	}
	p := plot.New()
	p.Title.Text = "Rain of the years and its deciles; the driest fifth in brown"
	p.Title.Padding = vg.Points(8)
	p.Y.Label.Text = name
	first, last := years[0].Year, years[len(years)-1].Year
	for _, y := range years {
		const half = 0.35
		top := float64(y.Rain / unit)
		x := float64(y.Year)
		bar, err := plotter.NewPolygon(plotter.XYs{{X: x - half}, {X: x + half}, {X: x + half, Y: top}, {X: x - half, Y: top}})
		if err != nil {
			return err
		}
		bar.Color, bar.LineStyle.Width = blue, 0
		if decile, err := rainfall.DecileOf(y.Rain, deciles); err != nil {
			return err
		} else if decile <= 2 {
			bar.Color = brown
		}
		p.Add(bar)
	}
	for i, d := range deciles {
		y := float64(d / unit)
		line, err := plotter.NewLine(plotter.XYs{{X: float64(first) - 1, Y: y}, {X: float64(last) + 1, Y: y}})
		if err != nil {
			return err
		}
		line.Color, line.Width = pale, 0.6
		if i == 4 { // the median
			line.Color, line.Width = ink, 1.2
		}
		p.Add(line)
	}
	var marks plotter.XYLabels
	for i := 0; i < len(deciles); i += 2 {
		marks.XYs = append(marks.XYs, plotter.XY{X: float64(last) + 1.1, Y: float64(deciles[i] / unit)})
		marks.Labels = append(marks.Labels, fmt.Sprintf("%d %%", (i+1)*10))
	}
	labels, err := plotter.NewLabels(marks)
	if err != nil {
		return err
	}
	for i := range labels.TextStyle {
		labels.TextStyle[i].YAlign = -0.5
	}
	p.Add(labels)
	p.X.Min, p.X.Max, p.Y.Min = float64(first)-1, float64(last)+3, 0
	return p.Save(9*vg.Inch, 4.5*vg.Inch, path)
}
