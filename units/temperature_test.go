package units_test

import (
	"math"
	"testing"

	"pgregory.net/rapid"

	"example.org/soum/units"
)

// TestTemperatureIsNoDifference: 10 °F is −12.2 °C, 10 °F of difference is
// 5.6 °C; (10 − 32) ÷ 1.8 = −12.22, 10 ÷ 1.8 = 5.56.
func TestTemperatureIsNoDifference(t *testing.T) {
	temperature, err := units.ParseTemperature("10 °F")
	if err != nil || math.Abs(temperature.Celsius()+12.2222) > 0.0001 {
		t.Errorf("10 °F is %v (%v)", temperature, err)
	}
	step, err := units.ParseTemperatureDifference("10 °F")
	if err != nil || math.Abs(step.CelsiusDegrees()-5.5556) > 0.0001 {
		t.Errorf("a difference of 10 °F is %v (%v)", step, err)
	}
	if got := units.Fahrenheit(60).Sub(units.Fahrenheit(50)); math.Abs(float64(got-step)) > 1e-12 {
		t.Errorf("from 50 to 60 °F are %v, want %v", got, step)
	}
	if got := units.Fahrenheit(50).Add(step).Fahrenheit(); math.Abs(got-60) > 1e-12 {
		t.Errorf("10 °F above 50 °F are %v °F, want 60", got)
	}
}

func TestTemperatureSpellings(t *testing.T) {
	for _, unit := range []string{"°C", "C", "degC"} {
		if got, err := units.ParseTemperature("20" + unit); err != nil || got != 20 {
			t.Errorf("20%s: %v, %v", unit, got, err)
		}
	}
	for _, unit := range []string{"°F", "F", "degF"} {
		if got, err := units.ParseTemperature("68 " + unit); err != nil || math.Abs(float64(got)-20) > 1e-12 {
			t.Errorf("68 %s: %v, %v", unit, got, err)
		}
	}
	for text, want := range map[string]string{
		"20":    `"20": the unit is missing; temperature takes a number and one of: °C, °F`,
		"20 K":  `"20 K": no unit "K"; temperature takes a number and one of: °C, °F`,
		"warm":  `"warm": no number in front; temperature takes a number and one of: °C, °F`,
		"2,0 C": `"2,0 C": write the number without commas, with a decimal point; temperature takes a number and one of: °C, °F`,
	} {
		if _, err := units.ParseTemperature(text); err == nil || err.Error() != want {
			t.Errorf("got  %v\nwant %s", err, want)
		}
	}
}

func TestScalesAreInverse(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		f := rapid.Float64Range(-200, 200).Draw(t, "°F")
		if back := units.Fahrenheit(f).Fahrenheit(); math.Abs(back-f) > 1e-12*(math.Abs(f)+32) {
			t.Fatalf("%v °F comes back as %v", f, back)
		}
	})
}
