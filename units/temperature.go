package units

import "math"

// Temperature is a temperature on the Celsius scale. A step between two
// temperatures is a TemperatureDifference, since 10 °F of difference is not
// 10 °F.
type Temperature float64

const (
	fahrenheitPerCelsius = 1.8
	fahrenheitAtZero     = 32
)

// Celsius gives a temperature from degrees Celsius.
func Celsius(degrees float64) Temperature { return Temperature(degrees) }

// Fahrenheit gives a temperature from degrees Fahrenheit.
func Fahrenheit(degrees float64) Temperature {
	return Temperature((degrees - fahrenheitAtZero) / fahrenheitPerCelsius)
}

// Celsius gives the temperature in degrees Celsius.
func (t Temperature) Celsius() float64 { return float64(t) }

// Fahrenheit gives the temperature in degrees Fahrenheit.
func (t Temperature) Fahrenheit() float64 {
	return float64(t)*fahrenheitPerCelsius + fahrenheitAtZero
}

// Sub gives the step from other to t.
func (t Temperature) Sub(other Temperature) TemperatureDifference {
	return TemperatureDifference(t - other)
}

// Add gives the temperature a step warmer.
func (t Temperature) Add(step TemperatureDifference) Temperature { return t + Temperature(step) }

// String prints degrees Celsius. ParseTemperature reads it back.
func (t Temperature) String() string { return exact(float64(t), "°C") }

// In prints the temperature for people.
func (t Temperature) In(s System) string {
	if s == US {
		return readable(t.Fahrenheit(), "°F")
	}
	return readable(t.Celsius(), "°C")
}

// ParseTemperature reads a temperature such as "20 °C" or "68 °F".
func ParseTemperature(text string) (Temperature, error) {
	value, unit, problem := split(text)
	if problem == "" {
		switch unit {
		case "°C", "C", "degC":
			return Celsius(value), nil
		case "°F", "F", "degF":
			return Fahrenheit(value), nil
		}
		problem = unknown(unit)
	}
	return Temperature(math.NaN()), &ParseError{Quantity: "Temperature", Text: text, Problem: problem, Accepts: []string{"°C", "°F"}}
}

// UnmarshalText reads a temperature as ParseTemperature does.
func (t *Temperature) UnmarshalText(text []byte) error {
	temperature, err := ParseTemperature(string(text))
	if err == nil {
		*t = temperature
	}
	return err
}
