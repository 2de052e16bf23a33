package units

// The declarations below are the only list of units there is. A constant's
// comment holds its accepted spellings in quotes, the first one printed; a
// type's comment names the units it is shown in. quantities_gen.go (String,
// Parse…, accessors, the parser's table) is written from them by go generate.
//
// Base units are coherent: metre, kilogram, day, animal unit. What is measured
// counts as much as its dimension, hence several types a dimension.

// The factors everything below is made of, exact and untyped, so that no
// constant is rounded twice: the international yard and pound [YARD-1959] and
// the US gallon of 231 cubic inches [NIST-44].
const (
	foot    = 0.3048
	inch    = foot / 12
	acre    = 43560 * foot * foot
	hectare = 10000
	pound   = 0.45359237
	gallon  = 231 * inch * inch * inch
)

// Length is a distance on the ground or along a fence.
//
// Shown: m metric, ft US.
type Length float64

// Units of Length.
const (
	Metre      Length = 1            // "m", "metre", "metres", "meter", "meters"
	Millimetre Length = Metre / 1000 // "mm", "millimetre", "millimetres"
	Centimetre Length = Metre / 100  // "cm", "centimetre", "centimetres"
	Kilometre  Length = 1000 * Metre // "km", "kilometre", "kilometres"
	Yard       Length = 3 * foot     // "yd", "yard", "yards"
	Foot       Length = foot         // "ft", "foot", "feet"
	Inch       Length = inch         // "in", "inch", "inches"
	Mile       Length = 5280 * foot  // "mi", "mile", "miles"
)

// Height is the height of an undisturbed stand against a ruler. It is not a
// PlateHeight: the two carry densities that differ by two to four times.
//
// Shown: cm metric, in US.
type Height float64

// Units of Height.
const (
	HeightMetre      Height = 1                  // "m", "metre", "metres"
	HeightMillimetre Height = HeightMetre / 1000 // "mm", "millimetre", "millimetres"
	HeightCentimetre Height = HeightMetre / 100  // "cm", "centimetre", "centimetres"
	HeightFoot       Height = foot               // "ft", "foot", "feet"
	HeightInch       Height = inch               // "in", "inch", "inches"
)

// PlateHeight is the height of a stand pressed down by a plate meter.
//
// Shown: cm metric, in US.
type PlateHeight float64

// Units of PlateHeight.
const (
	PlateMetre      PlateHeight = 1                 // "m", "metre", "metres"
	PlateMillimetre PlateHeight = PlateMetre / 1000 // "mm", "millimetre", "millimetres"
	PlateCentimetre PlateHeight = PlateMetre / 100  // "cm", "centimetre", "centimetres"
	PlateInch       PlateHeight = inch              // "in", "inch", "inches"
)

// RainDepth is a depth of rain or of water given.
//
// Shown: mm metric, in US.
type RainDepth float64

// Units of RainDepth.
const (
	RainMetre      RainDepth = 1                // "m", "metre", "metres"
	RainMillimetre RainDepth = RainMetre / 1000 // "mm", "millimetre", "millimetres"
	RainCentimetre RainDepth = RainMetre / 100  // "cm", "centimetre", "centimetres"
	RainInch       RainDepth = inch             // "in", "inch", "inches"
)

// Area is an area of land.
//
// Shown: ha metric, ac US.
type Area float64

// Units of Area.
const (
	SquareMetre Area = 1               // "m2", "m²", "sq m"
	Hectare     Area = hectare         // "ha", "hectare", "hectares"
	SquareFoot  Area = foot * foot     // "ft2", "ft²", "sq ft"
	SquareYard  Area = 9 * foot * foot // "yd2", "yd²", "sq yd"
	Acre        Area = acre            // "ac", "acre", "acres"
)

// Volume is a volume of water or of anything heaped.
//
// Shown: L metric, gal US.
type Volume float64

// Units of Volume. The gallon is the US gallon.
const (
	CubicMetre Volume = 1                  // "m3", "m³", "cu m"
	Litre      Volume = CubicMetre / 1000  // "L", "l", "litre", "litres", "liter", "liters"
	CubicFoot  Volume = foot * foot * foot // "ft3", "ft³", "cu ft"
	CubicInch  Volume = inch * inch * inch // "in3", "in³", "cu in"
	Gallon     Volume = gallon             // "gal", "gallon", "gallons", "US gal"
	AcreFoot   Volume = acre * foot        // "ac-ft", "acre-ft", "acre-feet"
)

// Mass is a plain mass: manure, mineral, a bale on a scale.
//
// Shown: kg metric, lb US.
type Mass float64

// Units of Mass.
const (
	Kilogram Mass = 1               // "kg", "kilogram", "kilograms"
	Gram     Mass = Kilogram / 1000 // "g", "gram", "grams"
	Tonne    Mass = 1000 * Kilogram // "t", "tonne", "tonnes"
	Pound    Mass = pound           // "lb", "lbs", "pound", "pounds"
	Ounce    Mass = pound / 16      // "oz", "ounce", "ounces"
	ShortTon Mass = 2000 * pound    // "short ton", "short tons"
)

// DryMatter is a mass of feed without its water.
//
// Shown: kg metric, lb US.
type DryMatter float64

// Units of DryMatter.
const (
	DryMatterKilogram DryMatter = 1                        // "kg", "kg DM", "kilogram", "kilograms"
	DryMatterGram     DryMatter = DryMatterKilogram / 1000 // "g", "g DM", "gram", "grams"
	DryMatterTonne    DryMatter = 1000 * DryMatterKilogram // "t", "t DM", "tonne", "tonnes"
	DryMatterPound    DryMatter = pound                    // "lb", "lb DM", "lbs", "pound", "pounds"
	DryMatterShortTon DryMatter = 2000 * pound             // "short ton", "short tons", "short ton DM"
)

// FreshFeed is a mass of feed as it lies, water and all.
//
// Shown: kg metric, lb US.
type FreshFeed float64

// Units of FreshFeed.
const (
	FreshKilogram FreshFeed = 1                    // "kg", "kilogram", "kilograms"
	FreshGram     FreshFeed = FreshKilogram / 1000 // "g", "gram", "grams"
	FreshTonne    FreshFeed = 1000 * FreshKilogram // "t", "tonne", "tonnes"
	FreshPound    FreshFeed = pound                // "lb", "lbs", "pound", "pounds"
	FreshOunce    FreshFeed = pound / 16           // "oz", "ounce", "ounces"
	FreshShortTon FreshFeed = 2000 * pound         // "short ton", "short tons"
)

// LiveWeight is the weight of a living animal, or of several.
//
// Shown: kg metric, lb US.
type LiveWeight float64

// Units of LiveWeight.
const (
	LiveKilogram LiveWeight = 1                   // "kg", "kilogram", "kilograms"
	LiveGram     LiveWeight = LiveKilogram / 1000 // "g", "gram", "grams"
	LiveTonne    LiveWeight = 1000 * LiveKilogram // "t", "tonne", "tonnes"
	LivePound    LiveWeight = pound               // "lb", "lbs", "pound", "pounds"
)

// Yield is dry matter standing on, or taken from, an area.
//
// Shown: kg/ha metric, lb/ac US.
type Yield float64

// Units of Yield.
const (
	KilogramPerSquareMetre Yield = 1                   // "kg/m2", "kg/m²"
	KilogramPerHectare     Yield = 1.0 / hectare       // "kg/ha", "kg DM/ha"
	TonnePerHectare        Yield = 1000.0 / hectare    // "t/ha", "t DM/ha"
	PoundPerAcre           Yield = pound / acre        // "lb/ac", "lb/acre", "lb DM/ac"
	ShortTonPerAcre        Yield = 2000 * pound / acre // "short ton/ac", "short tons/ac", "short ton/acre"
)

// Density is dry matter per area for each unit of ruler height. It is not a
// PlateDensity.
//
// Shown: kg/ha/cm metric, lb/ac/in US.
type Density float64

// Units of Density.
const (
	KilogramPerCubicMetre        Density = 1                   // "kg/m2/m", "kg/m²/m", "kg/m3"
	KilogramPerHectareCentimetre Density = 1.0 / 100           // "kg/ha/cm", "kg DM/ha/cm"
	PoundPerAcreInch             Density = pound / acre / inch // "lb/ac/in", "lb/acre/inch", "lb/ac-in", "lb/acre-inch"
)

// PlateDensity is dry matter per area for each unit of compressed height.
//
// Shown: kg/ha/cm metric, lb/ac/in US.
type PlateDensity float64

// Units of PlateDensity.
const (
	PlateKilogramPerCubicMetre        PlateDensity = 1                   // "kg/m2/m", "kg/m²/m", "kg/m3"
	PlateKilogramPerHectareCentimetre PlateDensity = 1.0 / 100           // "kg/ha/cm", "kg DM/ha/cm"
	PlatePoundPerAcreInch             PlateDensity = pound / acre / inch // "lb/ac/in", "lb/acre/inch", "lb/ac-in", "lb/acre-inch"
)

// Growth is dry matter grown per area in a day, or the surplus of it.
//
// Shown: kg/ha/day metric, lb/ac/day US.
type Growth float64

// Units of Growth.
const (
	KilogramPerSquareMetreDay Growth = 1             // "kg/m2/day", "kg/m²/day"
	KilogramPerHectareDay     Growth = 1.0 / hectare // "kg/ha/day", "kg DM/ha/day", "kg/ha/d"
	PoundPerAcreDay           Growth = pound / acre  // "lb/ac/day", "lb/acre/day", "lb/ac/d"
)

// Demand is dry matter wanted, eaten or fed in a day.
//
// Shown: kg/day metric, lb/day US.
type Demand float64

// Units of Demand.
const (
	KilogramPerDay Demand = 1                     // "kg/day", "kg/d", "kg DM/day"
	GramPerDay     Demand = KilogramPerDay / 1000 // "g/day", "g/d", "g DM/day"
	PoundPerDay    Demand = pound                 // "lb/day", "lb/d", "lb DM/day"
)

// StockDensity is live weight per area, on the ground grazed now.
//
// Shown: kg/ha metric, lb/ac US.
type StockDensity float64

// Units of StockDensity.
const (
	StockKilogramPerSquareMetre StockDensity = 1             // "kg/m2", "kg/m²"
	StockKilogramPerHectare     StockDensity = 1.0 / hectare // "kg/ha"
	StockPoundPerAcre           StockDensity = pound / acre  // "lb/ac", "lb/acre"
)

// HeadRate is a number of animals per area.
//
// Shown: head/ha metric, head/ac US.
type HeadRate float64

// Units of HeadRate.
const (
	HeadPerSquareMetre HeadRate = 1             // "head/m2", "head/m²"
	HeadPerHectare     HeadRate = 1.0 / hectare // "head/ha"
	HeadPerAcre        HeadRate = 1 / acre      // "head/ac", "head/acre"
)

// AnimalUnits is a herd told in animal units. Which unit is meant (by weight,
// by metabolic weight, of a printed table) goes with the number in words.
//
// Shown: AU metric, AU US.
type AnimalUnits float64

// AnimalUnit is the unit of AnimalUnits.
const (
	AnimalUnit AnimalUnits = 1 // "AU", "animal unit", "animal units"
)

// UnitDays is grazing told in animal units times days.
//
// Shown: AUD metric, AUM US.
type UnitDays float64

// Units of UnitDays. The month is of 30 days, as the extension services reckon
// [NEB-AUM], and the year of twelve such months.
const (
	AnimalUnitDay   UnitDays = 1                    // "AUD", "AU-day", "AU-days"
	AnimalUnitMonth UnitDays = 30 * AnimalUnitDay   // "AUM", "AU-month", "AU-months"
	AnimalUnitYear  UnitDays = 12 * AnimalUnitMonth // "AUY", "AU-year", "AU-years"
)

// UnitRate is animal units per area.
//
// Shown: AU/ha metric, AU/ac US.
type UnitRate float64

// Units of UnitRate.
const (
	AnimalUnitPerSquareMetre UnitRate = 1             // "AU/m2", "AU/m²"
	AnimalUnitPerHectare     UnitRate = 1.0 / hectare // "AU/ha"
	AnimalUnitPerAcre        UnitRate = 1 / acre      // "AU/ac", "AU/acre"
)

// UseRate is grazing per area, in animal-unit days or months.
//
// Shown: AUD/ha metric, AUM/ac US.
type UseRate float64

// Units of UseRate.
const (
	AnimalUnitDayPerSquareMetre UseRate = 1              // "AUD/m2", "AUD/m²"
	AnimalUnitDayPerHectare     UseRate = 1.0 / hectare  // "AUD/ha"
	AnimalUnitDayPerAcre        UseRate = 1 / acre       // "AUD/ac", "AUD/acre", "cow-days/ac"
	AnimalUnitMonthPerHectare   UseRate = 30.0 / hectare // "AUM/ha"
	AnimalUnitMonthPerAcre      UseRate = 30 / acre      // "AUM/ac", "AUM/acre"
)

// UseDensity is grazing per area for each unit of ruler height.
//
// Shown: AUD/ha/cm metric, AUD/ac/in US.
type UseDensity float64

// Units of UseDensity.
const (
	AnimalUnitDayPerCubicMetre        UseDensity = 1                                // "AUD/m2/m", "AUD/m²/m"
	AnimalUnitDayPerHectareCentimetre UseDensity = AnimalUnitDayPerCubicMetre / 100 // "AUD/ha/cm"
	AnimalUnitDayPerAcreInch          UseDensity = 1 / (acre * inch)                // "AUD/ac/in", "AUD/acre/inch", "cow-days/ac/in"
)

// LandPerUse is land for each animal-unit day, month or year.
//
// Shown: ha/AUM metric, ac/AUM US.
type LandPerUse float64

// Units of LandPerUse.
const (
	SquareMetrePerAnimalUnitDay LandPerUse = 1              // "m2/AUD", "m²/AUD"
	HectarePerAnimalUnitMonth   LandPerUse = hectare / 30.0 // "ha/AUM"
	AcrePerAnimalUnitMonth      LandPerUse = acre / 30      // "ac/AUM", "acre/AUM", "acres/AUM"
	AcrePerAnimalUnitYear       LandPerUse = acre / 360     // "ac/AUY", "acre/AUY", "acres/AUY"
)

// WaterRate is water drunk, or delivered, in a day.
//
// Shown: L/day metric, gal/day US.
type WaterRate float64

// Units of WaterRate.
const (
	CubicMetrePerDay WaterRate = 1                       // "m3/day", "m³/day"
	LitrePerDay      WaterRate = CubicMetrePerDay / 1000 // "L/day", "l/day", "L/d", "l/d"
	GallonPerDay     WaterRate = gallon                  // "gal/day", "gal/d"
)

// Days is a length of time.
//
// Shown: days metric, days US.
type Days float64

// Units of Days.
const (
	Day  Days = 1        // "days", "day", "d"
	Week Days = 7 * Day  // "weeks", "week"
	Hour Days = Day / 24 // "h", "hour", "hours"
)

// Fraction is a share of a whole: 0.28 is 28 %. A percentage is never guessed
// from its size, so text carries its unit like any other quantity.
//
// Shown: % metric, % US.
type Fraction float64

// Units of Fraction.
const (
	Whole            Fraction = 1            // "share", "of 1"
	Percent          Fraction = Whole / 100  // "%", "percent", "per cent"
	PoundPerShortTon Fraction = Whole / 2000 // "lb/short ton"
)

// TemperatureDifference is a step between two temperatures, never a
// temperature.
//
// Shown: °C metric, °F US.
type TemperatureDifference float64

// Units of TemperatureDifference.
const (
	CelsiusDegree    TemperatureDifference = 1                   // "°C", "C", "K"
	FahrenheitDegree TemperatureDifference = CelsiusDegree / 1.8 // "°F", "F"
)

// Milk is milk given in a day.
//
// Shown: kg/day metric, lb/day US.
type Milk float64

// Units of Milk.
const (
	MilkKilogramPerDay Milk = 1     // "kg/day", "kg/d"
	MilkPoundPerDay    Milk = pound // "lb/day", "lb/d"
)

// LiveGain is live weight put on in a day.
//
// Shown: kg/day metric, lb/day US.
type LiveGain float64

// Units of LiveGain.
const (
	GainKilogramPerDay LiveGain = 1                         // "kg/day", "kg/d"
	GainGramPerDay     LiveGain = GainKilogramPerDay / 1000 // "g/day", "g/d"
	GainPoundPerDay    LiveGain = pound                     // "lb/day", "lb/d"
)

// NutrientRate is a part of the feed wanted or eaten in a day: protein, or total
// digestible nutrients. It is not a Demand, which is the dry matter of it all.
//
// Shown: kg/day metric, lb/day US.
type NutrientRate float64

// Units of NutrientRate.
const (
	NutrientKilogramPerDay NutrientRate = 1                             // "kg/day", "kg/d"
	NutrientGramPerDay     NutrientRate = NutrientKilogramPerDay / 1000 // "g/day", "g/d"
	NutrientPoundPerDay    NutrientRate = pound                         // "lb/day", "lb/d"
)

// calorie is the joules in a calorie, or the megajoules in a megacalorie: the
// thermochemical calorie of feeding tables [NIST-SP811].
const calorie = 4.184

// EnergyRate is energy of feed wanted or eaten in a day. Which energy is meant
// (digestible, metabolizable, net) goes with the number in words.
//
// Shown: MJ/day metric, Mcal/day US.
type EnergyRate float64

// Units of EnergyRate.
const (
	MegajoulePerDay   EnergyRate = 1                        // "MJ/day", "MJ/d"
	KilojoulePerDay   EnergyRate = MegajoulePerDay / 1000   // "kJ/day", "kJ/d"
	MegacaloriePerDay EnergyRate = calorie                  // "Mcal/day", "Mcal/d"
	KilocaloriePerDay EnergyRate = MegacaloriePerDay / 1000 // "kcal/day", "kcal/d"
)

// EnergyDensity is energy in a mass of dry matter.
//
// Shown: MJ/kg metric, Mcal/lb US.
type EnergyDensity float64

// Units of EnergyDensity.
const (
	MegajoulePerKilogram   EnergyDensity = 1                      // "MJ/kg", "MJ/kg DM"
	MegacaloriePerKilogram EnergyDensity = calorie                // "Mcal/kg", "Mcal/kg DM"
	KilocaloriePerKilogram EnergyDensity = calorie / 1000         // "kcal/kg", "kcal/kg DM"
	MegacaloriePerPound    EnergyDensity = calorie / pound        // "Mcal/lb", "Mcal/lb DM"
	KilocaloriePerPound    EnergyDensity = calorie / 1000 / pound // "kcal/lb", "kcal/lb DM"
)

// Speed is the speed of the wind.
//
// Shown: m/s metric, mph US.
type Speed float64

// Units of Speed. The day is the base unit of time.
const (
	MetrePerDay      Speed = 1                // "m/day", "m/d"
	MetrePerSecond   Speed = 86400            // "m/s"
	KilometrePerHour Speed = 24 * 1000        // "km/h", "kph"
	MilePerHour      Speed = 24 * 5280 * foot // "mph", "mi/h"
)

// RainRate is a depth of water in a time: what evaporates, what a crop uses, what
// a sprinkler gives.
//
// Shown: mm/day metric, in/day US.
type RainRate float64

// Units of RainRate.
const (
	RainMetrePerDay       RainRate = 1                           // "m/day", "m/d"
	RainMillimetrePerDay  RainRate = RainMetrePerDay / 1000      // "mm/day", "mm/d"
	RainInchPerDay        RainRate = inch                        // "in/day", "in/d"
	RainInchPerWeek       RainRate = inch / 7                    // "in/week"
	RainMillimetrePerHour RainRate = 24 * RainMetrePerDay / 1000 // "mm/h"
	RainInchPerHour       RainRate = 24 * inch                   // "in/h"
)

// Radiation is energy of light or heat on an area in a day.
//
// Shown: MJ/m2/day metric, MJ/m2/day US.
type Radiation float64

// Units of Radiation. A watt is 0.0864 MJ in a day.
const (
	MegajoulePerSquareMetreDay Radiation = 1      // "MJ/m2/day", "MJ/m²/day", "MJ/m2/d"
	WattPerSquareMetre         Radiation = 0.0864 // "W/m2", "W/m²"
)

// Pressure is the pressure of the air, or of the vapour in it.
//
// Shown: kPa metric, kPa US.
type Pressure float64

// Units of Pressure.
const (
	Kilopascal Pressure = 1                 // "kPa"
	Pascal     Pressure = Kilopascal / 1000 // "Pa"
	Millibar   Pressure = Kilopascal / 10   // "mbar", "hPa"
)

// PressureSlope is a step of pressure with a degree.
//
// Shown: kPa/°C metric, kPa/°C US.
type PressureSlope float64

// Units of PressureSlope.
const (
	KilopascalPerCelsius PressureSlope = 1 // "kPa/°C", "kPa/C", "kPa/K"
)

// Angle is an angle: a latitude (north is above 0), the sun's declination.
//
// Shown: ° metric, ° US.
type Angle float64

// Units of Angle.
const (
	Radian Angle = 1                                                 // "rad", "radian", "radians"
	Degree Angle = 3.14159265358979323846264338327950288419716 / 180 // "°", "deg", "degree", "degrees"
)

// WaterHolding is the depth of water that a depth of soil holds for plants.
//
// Shown: mm/m metric, in/ft US.
type WaterHolding float64

// Units of WaterHolding.
const (
	HoldingMetrePerMetre      WaterHolding = 1           // "m/m", "cm/cm", "in/in"
	HoldingMillimetrePerMetre WaterHolding = 1.0 / 1000  // "mm/m"
	HoldingInchPerFoot        WaterHolding = inch / foot // "in/ft"
)

// DegreeDays is warmth over a base, summed over days.
//
// Shown: °C day metric, °F day US.
type DegreeDays float64

// Units of DegreeDays.
const (
	CelsiusDay    DegreeDays = 1                // "°C day", "°C days", "C day"
	FahrenheitDay DegreeDays = CelsiusDay / 1.8 // "°F day", "°F days", "F day"
)

// Concentration is a share of a mass that is told in parts of a million: nitrate
// or prussic acid in feed. Whether of dry matter or of feed as it lies goes with
// the number in words.
//
// Shown: ppm metric, ppm US.
type Concentration float64

// Units of Concentration.
const (
	KilogramPerKilogram Concentration = 1                             // "kg/kg"
	PartPerHundred      Concentration = KilogramPerKilogram / 100     // "%"
	PartPerMillion      Concentration = KilogramPerKilogram / 1000000 // "ppm", "mg/kg"
)

// Dressing is a mass of a fertiliser, or of a nutrient in it, given to an area.
//
// Shown: kg/ha metric, lb/ac US.
type Dressing float64

// Units of Dressing.
const (
	DressingKilogramPerSquareMetre Dressing = 1             // "kg/m2", "kg/m²"
	DressingKilogramPerHectare     Dressing = 1.0 / hectare // "kg/ha"
	DressingPoundPerAcre           Dressing = pound / acre  // "lb/ac", "lb/acre"
)

// FeedDensity is feed as it lies in a volume: how tight a bale is.
//
// Shown: kg/m3 metric, lb/ft3 US.
type FeedDensity float64

// Units of FeedDensity.
const (
	FeedKilogramPerCubicMetre FeedDensity = 1                            // "kg/m3", "kg/m³"
	FeedPoundPerCubicFoot     FeedDensity = pound / (foot * foot * foot) // "lb/ft3", "lb/ft³", "lb/cu ft"
)

// RainUse is dry matter grown for each depth of rain or of water used.
//
// Shown: kg/ha/mm metric, lb/ac/in US.
type RainUse float64

// Units of RainUse.
const (
	UseKilogramPerCubicMetre        RainUse = 1                          // "kg/m2/m", "kg/m²/m", "kg/m3"
	UseKilogramPerHectareMillimetre RainUse = 1.0 / 10                   // "kg/ha/mm", "kg DM/ha/mm"
	UsePoundPerAcreInch             RainUse = pound / acre / inch        // "lb/ac/in", "lb/acre/inch"
	UseShortTonPerAcreInch          RainUse = 2000 * pound / acre / inch // "short ton/ac/in", "short tons/ac/in"
)

// Voltage is the voltage of an electric fence.
//
// Shown: V metric, V US.
type Voltage float64

// Units of Voltage.
const (
	Volt     Voltage = 1           // "V", "volt", "volts"
	Kilovolt Voltage = 1000 * Volt // "kV", "kilovolt", "kilovolts"
)

// PulseEnergy is the energy in each pulse of a fence energizer.
//
// Shown: J metric, J US.
type PulseEnergy float64

// Units of PulseEnergy.
const (
	Joule      PulseEnergy = 1            // "J", "joule", "joules"
	Millijoule PulseEnergy = Joule / 1000 // "mJ", "millijoule", "millijoules"
)
