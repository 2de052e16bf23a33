package farm

import (
	"fmt"
	"maps"
	"slices"
	"time"

	"example.org/soum/forage"
	"example.org/soum/rainfall"
	"example.org/soum/units"
)

// rainOn gives every land the growth that comes of the rain, and with it the first day of
// grass.
func (r *ready) rainOn(met *problems) error {
	if err := r.settleSoil(met); err != nil {
		return fmt.Errorf("rain.balance: %w", err)
	}
	for i := range r.lands {
		at, land := &r.lands[i], &r.input.Lands[i]
		same := 0
		for !r.lands[same].growsLike(at) {
			same++
		}
		if same < i {
			land.Peak = r.input.Lands[same].Peak
			continue
		}
		if land.Peak = r.peaks(at, land.Peak, met); met.err != nil {
			return pathed("land", i, met.err)
		}
	}
	r.settleGrass()
	return nil
}

// peaks gives the potential growth of every day: the month's share of the
// annual yield, by the rain so far, spread over the month's days, and raised
// from the mean of a grazed stand to the fastest growth of the curve. It is written over
// what it was under other rain.
func (r *ready) peaks(at *site, peaks []float64, met *problems) []float64 {
	meanToPeak, err := forage.MeanToPeak(at.leave, at.turnIn, at.ceiling)
	met.keep(err, r.start, r.input.Days)
	if peaks == nil {
		peaks = make([]float64, r.input.Days)
	}
	for _, m := range r.months {
		date := r.date(m.from)
		share := at.pasture.Shares[m.month-time.January] * r.rainScale(at, date, met)
		mean, err := forage.MonthGrowth(at.annual, share, units.Days(m.days))
		met.keep(err, date, m.to-m.from)
		peak, err := forage.PeakGrowth(mean, meanToPeak)
		met.keep(err, date, m.to-m.from)
		for day := m.from; day < m.to; day++ {
			peaks[day] = float64(peak)
		}
	}
	return peaks
}

// rainScale gives forage as a share of normal, by the water of the soil where an
// account of it is kept, and else by the rain of the key months so far; 1 where
// the rain is not known.
func (r *ready) rainScale(at *site, date units.Date, met *problems) units.Fraction {
	if r.soil != nil {
		return r.soilOn(date).Growth
	}
	if !r.rainKnown() {
		return 1
	}
	days := min(date.DaysInMonth()-date.Day()+1, int(r.farm.Season.To.Sub(date))+1)
	share, err := rainfall.KeyRainShare(date, at.pasture.KeyMonths, r.record, r.farm.Rain.normals())
	met.keep(err, date, days)
	scale, err := rainfall.ForageShare(share)
	met.keep(err, date, days)
	return scale
}

// rainKnown tells whether this year's rain and its normals are known.
func (r *ready) rainKnown() bool { return len(r.farm.Rain.Normal) == 12 && len(r.record) > 0 }

// Series returns the rain of the months in the document, in order. A key that is not
// a month, which Check refuses, is left out.
func (r *Rain) Series() []rainfall.MonthlyRain {
	var all []rainfall.MonthlyRain
	for _, key := range slices.Sorted(maps.Keys(r.Months)) {
		if first, err := firstOfMonth(key); err == nil {
			all = append(all, rainfall.MonthlyRain{Year: first.Year(), Month: first.Month(), Rain: r.Months[key]})
		}
	}
	return all
}

// firstOfMonth gives the first day of a month such as "2000-04".
func firstOfMonth(key string) (units.Date, error) {
	return units.ParseDate(key + "-01")
}

func (r *Rain) normals() (all [12]units.RainDepth) {
	copy(all[:], r.Normal)
	return all
}

// normalYear gives the rain of a normal year, 0 where it is not known.
func (r *Rain) normalYear() units.RainDepth {
	if len(r.Normal) == 0 {
		return r.Year
	}
	sum := units.RainDepth(0)
	for _, depth := range r.Normal {
		sum += depth
	}
	return sum
}

// grown gives what stands after a day of the season's own growth.
func (r *ready) grown(land, day int, mass units.Yield) (units.Yield, error) {
	ceiling := r.lands[land].ceiling
	after, err := forage.Regrown(mass, ceiling, units.Growth(r.input.Lands[land].Peak[day]), units.Day)
	if units.Impossible(err) {
		return mass, err
	}
	return min(after, ceiling), nil
}
