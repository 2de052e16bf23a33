// Package painted looks at the pictures that examples draw, for their tests.
package painted

import (
	"image/color"
	"image/png"
	"os"
)

// Colours gives the colours that occur in a PNG file.
func Colours(path string) (map[color.RGBA]bool, error) {
	file, err := os.Open(path)
	if err != nil {
		return nil, err
	}
	defer file.Close()
	picture, err := png.Decode(file)
	if err != nil {
		return nil, err
	}
	all := map[color.RGBA]bool{}
	for y := range picture.Bounds().Dy() {
		for x := range picture.Bounds().Dx() {
			all[color.RGBAModel.Convert(picture.At(x, y)).(color.RGBA)] = true
		}
	}
	return all, nil
}
