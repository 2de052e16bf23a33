package rainfall

import (
	"fmt"
	"math"

	"example.org/soum/units"
)

// AirPressure returns the mean pressure of the air at an altitude.
//
// Empirical: 101.3 * pow((293 - 0.0065*altitude) / 293, 5.26)
//
// Where:
//   - altitude in m: above the sea; -500 to 9000
//   - result in kPa: mean of the year
//
// Source: FAO-56 eq. 7
func AirPressure(altitude units.Length) (units.Pressure, error) {
	pressure := 101.3 * math.Pow((293-0.0065*float64(altitude))/293, 5.26)
	return units.Answer(&formulaAirPressure, units.Pressure(pressure), float64(altitude))
}

// PsychrometricConstant returns how much vapour pressure goes with a degree
// between a dry and a wet thermometer.
//
// Empirical: 0.000665 * pressure
//
// Where:
//   - pressure in kPa: of the air; > 0
//   - result in kPa/°C: the constant
//
// Note: print reckons 0.000665 from the heat of evaporation at 20 °C, 2.45 MJ/kg.
//
// Source: FAO-56 eq. 8
func PsychrometricConstant(pressure units.Pressure) (units.PressureSlope, error) {
	constant := units.PressureSlope(0.000665 * float64(pressure))
	return units.Answer(&formulaPsychrometricConstant, constant, float64(pressure))
}

// saturation is the pressure in kPa of as much vapour as the air can hold.
func saturation(degrees float64) float64 {
	return 0.6108 * math.Exp(17.27*degrees/(degrees+237.3))
}

// SaturationPressure returns the pressure of as much vapour as air of a
// temperature can hold.
//
// Empirical: 0.6108 * exp(17.27*temperature/(temperature + 237.3))
//
// Where:
//   - temperature in °C: of the air; -100 to 100
//   - result in kPa: vapour pressure at saturation
//
// Note: of the dew point it is the vapour pressure that the air has (eq. 14); where
// no humidity was measured, print takes the lowest temperature of the day for the
// dew point (eq. 48), which holds for well watered land and not for dry.
//
// Source: FAO-56 eq. 11
func SaturationPressure(temperature units.Temperature) (units.Pressure, error) {
	return units.Answer(&formulaSaturationPressure, units.Pressure(saturation(float64(temperature))), float64(temperature))
}

// MeanSaturationPressure returns the vapour pressure at saturation over a day, a
// week or a month: the mean of those at its two ends of temperature.
//
// Empirical: (0.6108*exp(17.27*high/(high + 237.3)) + 0.6108*exp(17.27*low/(low + 237.3))) / 2
//
// Where:
//   - high in °C: mean of the daily highest temperatures; low to 100
//   - low in °C: mean of the daily lowest temperatures; -100 to 100
//   - result in kPa: mean vapour pressure at saturation
//
// Note: the saturation at the mean temperature is lower, and print warns of it.
//
// Source: FAO-56 eq. 12
func MeanSaturationPressure(high, low units.Temperature) (units.Pressure, error) {
	pressure := units.Pressure((saturation(float64(high)) + saturation(float64(low))) / 2)
	return units.Answer(&formulaMeanSaturationPressure, pressure, float64(high), float64(low))
}

// slope is the step of the saturation pressure in kPa with a degree.
func slope(degrees float64) float64 {
	over := degrees + 237.3
	return 4098 * saturation(degrees) / (over * over)
}

// SaturationSlope returns how fast the vapour pressure at saturation rises with
// the temperature.
//
// Empirical: 4098 * (0.6108 * exp(17.27*temperature/(temperature + 237.3))) / pow(temperature + 237.3, 2)
//
// Where:
//   - temperature in °C: mean of the day or month; -100 to 100
//   - result in kPa/°C: the slope
//
// Source: FAO-56 eq. 13
func SaturationSlope(temperature units.Temperature) (units.PressureSlope, error) {
	return units.Answer(&formulaSaturationSlope, units.PressureSlope(slope(float64(temperature))), float64(temperature))
}

// VapourPressure returns the vapour pressure of the air from both ends of the
// day's humidity: the highest goes with the lowest temperature.
//
// Empirical: (0.6108*exp(17.27*low/(low + 237.3))*most/100 + 0.6108*exp(17.27*high/(high + 237.3))*least/100) / 2
//
// Where:
//   - high in °C: highest temperature of the day; low to 100
//   - low in °C: lowest temperature of the day; -100 to 100
//   - most in %: highest relative humidity of the day; least to 100
//   - least in %: lowest relative humidity of the day; 0 to 100
//   - result in kPa: vapour pressure
//
// Note: by the mean of the humidity alone: VapourPressureOfMean, which print takes
// for the poorer way. Without any humidity: SaturationPressure of the lowest
// temperature.
//
// Source: FAO-56 eq. 17
func VapourPressure(high, low units.Temperature, most, least units.Fraction) (units.Pressure, error) {
	pressure := (saturation(float64(low))*float64(most) + saturation(float64(high))*float64(least)) / 2
	return units.Answer(&formulaVapourPressure, units.Pressure(pressure), float64(high), float64(low), float64(most), float64(least))
}

// VapourPressureOfMean returns the vapour pressure of the air from the mean
// relative humidity.
//
// Empirical: humidity / 100 * (0.6108*exp(17.27*high/(high + 237.3)) + 0.6108*exp(17.27*low/(low + 237.3))) / 2
//
// Where:
//   - high in °C: mean of the daily highest temperatures; low to 100
//   - low in °C: mean of the daily lowest temperatures; -100 to 100
//   - humidity in %: mean relative humidity; 0 to 100
//   - result in kPa: vapour pressure
//
// Source: FAO-56 eq. 19
func VapourPressureOfMean(high, low units.Temperature, humidity units.Fraction) (units.Pressure, error) {
	pressure := float64(humidity) * (saturation(float64(high)) + saturation(float64(low))) / 2
	return units.Answer(&formulaVapourPressureOfMean, units.Pressure(pressure), float64(high), float64(low), float64(humidity))
}

// WindAtTwoMetres returns the speed of the wind at 2 m over short grass from that
// at another height.
//
// Empirical: wind * 4.87 / log(67.8*height - 5.42)
//
// Where:
//   - wind in m/s: as measured; >= 0
//   - height in m: of the instrument over the ground; >= 0.2
//   - result in m/s: at 2 m
//
// Source: FAO-56 eq. 47
func WindAtTwoMetres(wind units.Speed, height units.Length) (units.Speed, error) {
	calm := units.Speed(float64(wind) * 4.87 / math.Log(67.8*float64(height)-5.42))
	return units.Answer(&formulaWindAtTwoMetres, calm, float64(wind), float64(height))
}

// yearTurn is the angle of the year at a day, 365 days to the round.
func yearTurn(day float64) float64 { return 2 * math.Pi / 365 * day }

func inverseDistance(day float64) float64 { return 1 + 0.033*math.Cos(yearTurn(day)) }

func declination(day float64) float64 { return 0.409 * math.Sin(yearTurn(day)-1.39) }

// sunset is the angle from noon to sunset. Where the sun does not set it is half a
// round, where it does not rise nothing.
func sunset(latitude, declination float64) float64 {
	return math.Acos(max(-1, min(1, -math.Tan(latitude)*math.Tan(declination))))
}

// extraterrestrial is the radiation above the air in MJ/m²/day.
func extraterrestrial(latitude, day float64) float64 {
	tilt := declination(day)
	angle := sunset(latitude, tilt)
	sinus, cosinus := math.Sin(latitude)*math.Sin(tilt), math.Cos(latitude)*math.Cos(tilt)
	return max(0, 24*60/math.Pi*0.0820*inverseDistance(day)*(angle*sinus+cosinus*math.Sin(angle)))
}

// InverseDistance returns how near the sun is: the inverse of its distance, squared,
// over that of the mean.
//
// Method: 1 + 0.033 cos(2π day / 365)
//
// Where:
//   - day: day of the year, 1 for 1 January; 1 to 366
//
// Source: FAO-56 eq. 23
func InverseDistance(day float64) (float64, error) {
	return units.Answer(&formulaInverseDistance, inverseDistance(day), day)
}

// SolarDeclination returns how far north of the equator the sun stands at noon.
//
// Method: 0.409 sin(2π day / 365 - 1.39), in radians
//
// Where:
//   - day: day of the year, 1 for 1 January; 1 to 366
//
// Source: FAO-56 eq. 24
func SolarDeclination(day float64) (units.Angle, error) {
	return units.Answer(&formulaSolarDeclination, units.Angle(declination(day)), day)
}

// SunsetAngle returns the angle that the earth turns from noon to sunset.
//
// Method: arccos(-tan(latitude) tan(declination)); half a round where the sun does
// not set, nothing where it does not rise
//
// Where:
//   - latitude in °: north of the equator, south below 0; -90 to 90
//   - declination in °: of the sun; -90 to 90
//
// Source: FAO-56 eq. 25; ours: the two ends beyond the polar circles
func SunsetAngle(latitude, declination units.Angle) (units.Angle, error) {
	angle := units.Angle(sunset(float64(latitude), float64(declination)))
	return units.Answer(&formulaSunsetAngle, angle, float64(latitude), float64(declination))
}

// ExtraterrestrialRadiation returns the sun's radiation on level ground as it would
// be without the air.
//
// Method: 24 × 60 / π × 0.0820 d (w sin(latitude) sin(t) + cos(latitude) cos(t)
// sin(w)), with d by InverseDistance, t by SolarDeclination and w by SunsetAngle
//
// Uses: InverseDistance, SolarDeclination, SunsetAngle
//
// Where:
//   - latitude in °: north of the equator, south below 0; -90 to 90
//   - day: day of the year, 1 for 1 January; 1 to 366
//
// Note: for a month the day of its 15th gives the printed table within 0.16
// MJ/m²/day; the other printed rule, the whole part of 30.4 times the month less 15,
// is up to 0.7 off in single months. Which day is taken is the user's to say.
//
// Source: FAO-56 eq. 21
func ExtraterrestrialRadiation(latitude units.Angle, day float64) (units.Radiation, error) {
	radiation := units.Radiation(extraterrestrial(float64(latitude), day))
	return units.Answer(&formulaExtraterrestrialRadiation, radiation, float64(latitude), day)
}

// DaylightHours returns how long the sun can shine.
//
// Method: 24 h × w / π, with w by SunsetAngle
//
// Uses: SolarDeclination, SunsetAngle
//
// Where:
//   - latitude in °: north of the equator, south below 0; -90 to 90
//   - day: day of the year, 1 for 1 January; 1 to 366
//
// Source: FAO-56 eq. 34
func DaylightHours(latitude units.Angle, day float64) (units.Days, error) {
	light := units.Days(sunset(float64(latitude), declination(day)) / math.Pi)
	return units.Answer(&formulaDaylightHours, light, float64(latitude), day)
}

// SolarRadiation returns the sun's radiation on the ground from the hours of
// sunshine.
//
// Formula: (0.25 + 0.50*sunshine/daylight) * extraterrestrial
//
// Where:
//   - sunshine in h: of bright sunshine in the day; 0 to daylight
//   - daylight in h: that the sun can shine (DaylightHours); > 0
//   - extraterrestrial in MJ/m2/day: radiation above the air; >= 0
//
// Note: 0.25 and 0.50 are what print advises where nobody has measured the
// place's own. More sunshine than daylight is refused: such records are about.
//
// Source: FAO-56 eq. 35
func SolarRadiation(sunshine, daylight units.Days, extraterrestrial units.Radiation) (units.Radiation, error) {
	solar := units.Radiation((0.25 + 0.50*float64(sunshine)/float64(daylight)) * float64(extraterrestrial))
	return units.Answer(&formulaSolarRadiation, solar, float64(sunshine), float64(daylight), float64(extraterrestrial))
}

// SiteOfSun is where the temperatures were read that the sun's radiation is told
// from.
type SiteOfSun int

// The sites.
const (
	SiteInterior SiteOfSun = iota + 1 // land masses dominate
	SiteCoastal                       // on or near the coast of a large land mass
)

// siteFactors are the adjustment coefficients per root of a degree.
var siteFactors = [...]float64{SiteInterior: 0.16, SiteCoastal: 0.19}

// RadiationByTemperature returns the sun's radiation on the ground from the span of
// the day's temperature, where no sunshine was measured: clear days have warm noons
// and cold nights.
//
// Method: k √(high − low) × extraterrestrial, with k 0.16 in the interior and 0.19 on
// the coast
//
// Where:
//   - site: interior or coast
//   - high in °C: mean of the daily highest temperatures; low to 100
//   - low in °C: mean of the daily lowest temperatures; -100 to 100
//   - extraterrestrial in MJ/m2/day: radiation above the air; >= 0
//
// Source: FAO-56 eq. 50; the coefficient of the coast from memory
func RadiationByTemperature(site SiteOfSun, high, low units.Temperature, extraterrestrial units.Radiation) (units.Radiation, error) {
	factor := 0.0
	if site == SiteInterior || site == SiteCoastal {
		factor = siteFactors[site]
	}
	solar := units.Radiation(factor * math.Sqrt(float64(high-low)) * float64(extraterrestrial))
	return units.Answer(&formulaRadiationByTemperature, solar, float64(site), float64(high), float64(low), float64(extraterrestrial))
}

// ClearSkyRadiation returns the sun's radiation on the ground under a clear sky.
//
// Empirical: (0.75 + 0.00002*altitude) * extraterrestrial
//
// Where:
//   - altitude in m: above the sea; -500 to 9000
//   - extraterrestrial in MJ/m2/day: radiation above the air; >= 0
//   - result in MJ/m2/day: radiation on the ground
//
// Source: FAO-56 eq. 37
func ClearSkyRadiation(altitude units.Length, extraterrestrial units.Radiation) (units.Radiation, error) {
	clear := units.Radiation((0.75 + 0.00002*float64(altitude)) * float64(extraterrestrial))
	return units.Answer(&formulaClearSkyRadiation, clear, float64(altitude), float64(extraterrestrial))
}

// NetShortwave returns what short grass keeps of the sun's radiation.
//
// Formula: (1 - 0.23) * solar
//
// Where:
//   - solar in MJ/m2/day: on the ground; >= 0
//
// Note: 0.23 is what the reference grass throws back.
//
// Source: FAO-56 eq. 38
func NetShortwave(solar units.Radiation) (units.Radiation, error) {
	return units.Answer(&formulaNetShortwave, units.Radiation((1-0.23)*float64(solar)), float64(solar))
}

// blackbody is the radiation of a black body in MJ/m²/day.
func blackbody(degrees float64) float64 {
	kelvin := degrees + 273.16
	return 4.903e-9 * (kelvin * kelvin) * (kelvin * kelvin)
}

// BlackbodyRadiation returns what a black body radiates.
//
// Empirical: 0.000000004903 * pow(temperature + 273.16, 4)
//
// Where:
//   - temperature in °C: of the body; -100 to 100
//   - result in MJ/m2/day: radiation
//
// Source: FAO-56 table 2.8, and eq. 39
func BlackbodyRadiation(temperature units.Temperature) (units.Radiation, error) {
	return units.Answer(&formulaBlackbodyRadiation, units.Radiation(blackbody(float64(temperature))), float64(temperature))
}

func netLongwave(high, low, vapour, solar, clear float64) float64 {
	black := (blackbody(high) + blackbody(low)) / 2
	return black * (0.34 - 0.14*math.Sqrt(vapour)) * (1.35*min(solar/clear, 1) - 0.35)
}

// NetLongwave returns the heat that the ground loses by radiation.
//
// Empirical: 0.000000004903 * (pow(high + 273.16, 4) + pow(low + 273.16, 4)) / 2 * (0.34 - 0.14*sqrt(vapour)) * (1.35*min(solar/clear, 1) - 0.35)
//
// Where:
//   - high in °C: highest temperature of the day; low to 100
//   - low in °C: lowest temperature of the day; -100 to 100
//   - vapour in kPa: vapour pressure of the air; >= 0
//   - solar in MJ/m2/day: radiation of the sun on the ground; >= 0
//   - clear in MJ/m2/day: the same under a clear sky; > 0
//   - result in MJ/m2/day: loss of heat
//
// Note: as in print, the share of the clear sky is never taken above 1.
//
// Source: FAO-56 eq. 39
func NetLongwave(high, low units.Temperature, vapour units.Pressure, solar, clear units.Radiation) (units.Radiation, error) {
	loss := units.Radiation(netLongwave(float64(high), float64(low), float64(vapour), float64(solar), float64(clear)))
	return units.Answer(&formulaNetLongwave, loss, float64(high), float64(low), float64(vapour), float64(solar), float64(clear))
}

// NetRadiation returns the radiation that short grass keeps.
//
// Formula: shortwave - longwave
//
// Where:
//   - shortwave in MJ/m2/day: kept of the sun's (NetShortwave); any
//   - longwave in MJ/m2/day: lost (NetLongwave); any
//
// Source: FAO-56 eq. 40
func NetRadiation(shortwave, longwave units.Radiation) (units.Radiation, error) {
	return units.Answer(&formulaNetRadiation, shortwave-longwave, float64(shortwave), float64(longwave))
}

// HeatFluxSpan is what the temperatures are of that the heat going into the soil is
// reckoned from.
type HeatFluxSpan int

// The two spans.
const (
	FluxMonthsAround HeatFluxSpan = iota + 1 // the month before and the month after
	FluxMonthBefore                          // the month before and the month itself, where the next is not known
)

// fluxFactors are in MJ/m²/day a degree.
var fluxFactors = [...]float64{FluxMonthsAround: 0.07, FluxMonthBefore: 0.14}

// SoilHeatFlux returns the heat that goes into the soil over a month; below 0 it
// comes out.
//
// Method: 0.07 (later − earlier) with the months before and after, 0.14 (later −
// earlier) with the month before and the month itself
//
// Where:
//   - span: which two months
//   - earlier in °C: mean temperature of the earlier; -100 to 100
//   - later in °C: mean temperature of the later; -100 to 100
//
// Note: over a day print takes it for nothing (eq. 42). Over months it counts:
// left out, a spring month evaporates too much and an autumn month too little.
//
// Source: FAO-56 eq. 43 and 44
func SoilHeatFlux(span HeatFluxSpan, earlier, later units.Temperature) (units.Radiation, error) {
	factor := 0.0
	if span == FluxMonthsAround || span == FluxMonthBefore {
		factor = fluxFactors[span]
	}
	flux := units.Radiation(factor * float64(later-earlier))
	return units.Answer(&formulaSoilHeatFlux, flux, float64(span), float64(earlier), float64(later))
}

// penmanMonteith is the reference evapotranspiration in mm a day; wind in m/s.
func penmanMonteith(slope, net, soil, constant, mean, wind, saturated, vapour float64) float64 {
	drying := constant * 900 / (mean + 273) * wind * (saturated - vapour)
	return (0.408*slope*(net-soil) + drying) / (slope + constant*(1+0.34*wind))
}

// PenmanMonteith returns the reference evapotranspiration: what short grass uses
// that is never short of water.
//
// Empirical: (0.408*slope*(net - soil) + constant*900/(temperature + 273)*wind*(saturated - vapour)) / (slope + constant*(1 + 0.34*wind))
//
// Where:
//   - slope in kPa/°C: of the vapour pressure at saturation (SaturationSlope); > 0
//   - net in MJ/m2/day: radiation kept (NetRadiation); any
//   - soil in MJ/m2/day: heat into the soil (SoilHeatFlux); any
//   - constant in kPa/°C: PsychrometricConstant; > 0
//   - temperature in °C: mean of the day or month; -100 to 100
//   - wind in m/s: at 2 m (WindAtTwoMetres); >= 0
//   - saturated in kPa: vapour pressure at saturation (MeanSaturationPressure); >= vapour
//   - vapour in kPa: vapour pressure of the air; >= 0
//   - result in mm/day: reference evapotranspiration
//
// Note: below 0 the ground gains water by dew. ReferenceWater goes from weather to
// this in one call.
//
// Source: FAO-56 eq. 6
func PenmanMonteith(slope units.PressureSlope, net, soil units.Radiation, constant units.PressureSlope, temperature units.Temperature, wind units.Speed, saturated, vapour units.Pressure) (units.RainRate, error) {
	arguments := [...]float64{float64(slope), float64(net), float64(soil), float64(constant), float64(temperature), float64(wind), float64(saturated), float64(vapour)}
	used := penmanMonteith(arguments[0], arguments[1], arguments[2], arguments[3], arguments[4], arguments[5]/float64(units.MetrePerSecond), arguments[6], arguments[7])
	return units.Answer(&formulaPenmanMonteith, units.RainRate(used)*units.RainMillimetrePerDay, arguments[:]...)
}

// ReferenceWater returns the reference evapotranspiration by Penman-Monteith from
// the weather of a day or the means of a month.
//
// Method: the steps of print in order: AirPressure, PsychrometricConstant,
// SaturationSlope at the mean of high and low, MeanSaturationPressure,
// ClearSkyRadiation, NetShortwave, NetLongwave,
// NetRadiation, PenmanMonteith
//
// Uses: AirPressure, PsychrometricConstant, SaturationSlope,
// MeanSaturationPressure, ClearSkyRadiation, NetShortwave, NetLongwave,
// NetRadiation, PenmanMonteith
//
// Where:
//   - altitude in m: above the sea; -500 to 9000
//   - extraterrestrial in MJ/m2/day: radiation above the air (ExtraterrestrialRadiation); > 0
//   - high in °C: highest temperature of the day, or the month's mean of them; low to 100
//   - low in °C: lowest temperature of the day, or the month's mean of them; -100 to 100
//   - vapour in kPa: vapour pressure of the air (VapourPressure); >= 0
//   - wind in m/s: at 2 m (WindAtTwoMetres); >= 0
//   - solar in MJ/m2/day: radiation of the sun on the ground (SolarRadiation); >= 0
//   - soil in MJ/m2/day: heat into the soil (SoilHeatFlux), 0 for a day; any
//
// Note: a vapour pressure above what the air can hold is reckoned with all the
// same: humidity beyond 100 % is a fault of the instrument. A polar night, without
// radiation above the air, is refused: it has no share of a clear sky.
//
// Source: FAO-56 eq. 6 and those of its steps
func ReferenceWater(altitude units.Length, extraterrestrial units.Radiation, high, low units.Temperature, vapour units.Pressure, wind units.Speed, solar, soil units.Radiation) (units.RainRate, error) {
	warm, cold, metres := float64(high), float64(low), float64(altitude)
	mean := (warm + cold) / 2
	constant := 0.000665 * 101.3 * math.Pow((293-0.0065*metres)/293, 5.26)
	clear := (0.75 + 0.00002*metres) * float64(extraterrestrial)
	net := (1-0.23)*float64(solar) - netLongwave(warm, cold, float64(vapour), float64(solar), clear)
	used := penmanMonteith(slope(mean), net, float64(soil), constant, mean, float64(wind/units.MetrePerSecond), (saturation(warm)+saturation(cold))/2, float64(vapour))
	return units.Answer(&formulaReferenceWater, units.RainRate(used)*units.RainMillimetrePerDay,
		metres, float64(extraterrestrial), warm, cold, float64(vapour), float64(wind), float64(solar), float64(soil))
}

// HargreavesSamani returns the reference evapotranspiration from temperature alone.
//
// Empirical: 0.0023 * ((high + low)/2 + 17.8) * sqrt(high - low) * 0.408 * extraterrestrial
//
// Where:
//   - high in °C: mean of the daily highest temperatures; low to 100
//   - low in °C: mean of the daily lowest temperatures; -17.8 to 100
//   - extraterrestrial in MJ/m2/day: radiation above the air; >= 0
//   - result in mm/day: reference evapotranspiration
//
// Note: too low in wind and too high in damp air; print wants it checked against
// Penman-Monteith where that is to be had, and over five days or longer. Where the
// mean is under -17.8 °C the expression turns below 0, so lower temperatures are
// refused. A form without the 0.408, for radiation already in mm, is about.
//
// Source: FAO-56 eq. 52
func HargreavesSamani(high, low units.Temperature, extraterrestrial units.Radiation) (units.RainRate, error) {
	used := 0.0023 * ((float64(high)+float64(low))/2 + 17.8) * math.Sqrt(float64(high-low)) * 0.408 * float64(extraterrestrial)
	return units.Answer(&formulaHargreavesSamani, units.RainRate(used)*units.RainMillimetrePerDay, float64(high), float64(low), float64(extraterrestrial))
}

// Thornthwaite returns the potential evapotranspiration of a month from its mean
// temperature; a month at or below freezing has none.
//
// Empirical: 16 * daylight/12 * days/30 * pow(10*max(temperature, 0)/index, 0.000000675*pow(index, 3) - 0.0000771*pow(index, 2) + 0.01792*index + 0.49239)
//
// Where:
//   - temperature in °C: mean of the month; -100 to 60
//   - index: heat index of the year (ThornthwaiteIndex); > 0 and <= 520
//   - daylight in h: that the sun can shine, on the month's 15th (DaylightHours); 0 to 24
//   - days in days: of the month; > 0
//   - result in mm: potential evapotranspiration
//
// Note: made for the humid eastern states of America; too low in dry air. Above
// 26.5 °C a table of the author's stands in place of the formula; the formula runs
// on here, as in the public package that the check is made with.
//
// Source: SPEI-PACKAGE, which carries the formula of Thornthwaite 1948
func Thornthwaite(temperature units.Temperature, index float64, daylight, days units.Days) (units.RainDepth, error) {
	power := 6.75e-7*index*index*index - 7.71e-5*index*index + 0.01792*index + 0.49239
	used := 16 * float64(daylight/units.Hour) / 12 * float64(days) / 30 * math.Pow(10*max(float64(temperature), 0)/index, power)
	return units.Answer(&formulaThornthwaite, units.RainDepth(used)*units.RainMillimetre, float64(temperature), index, float64(daylight), float64(days))
}

// ThornthwaiteIndex gives the heat index of the year, from the mean temperatures of
// its twelve months: the sum of (temperature / 5) to the power of 1.514, months at or
// below freezing left out.
//
// Errors: a *document.Error with the place for other than twelve months, a mean outside
// -100 to 60 °C, and a year without a month above freezing, which has no index
//
// Check: TestThornthwaiteNottingham, TestThornthwaiteIndexRefuses
//
// Source: SPEI-PACKAGE, which carries the formula of Thornthwaite 1948
func ThornthwaiteIndex(means []units.Temperature) (float64, error) {
	if len(means) != 12 {
		return math.NaN(), wrong("means", count(len(means), "value"), "are not a year", "twelve, a mean for each month")
	}
	index := 0.0
	for i, mean := range means {
		if !(mean >= -100 && mean <= 60) {
			return math.NaN(), wrong(fmt.Sprintf("means[%d]", i), mean.String(), "is not the mean temperature of a month", "-100 °C to 60 °C")
		}
		if mean > 0 {
			index += math.Pow(float64(mean)/5, 1.514)
		}
	}
	if index == 0 {
		return math.NaN(), wrong("means", "", "has no month above 0 °C, and such a year has no heat index", "one month or more above 0 °C")
	}
	return index, nil
}
