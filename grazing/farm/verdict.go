package farm

import (
	"example.org/soum/internal/english"
	"fmt"
	"slices"
	"strings"

	"example.org/soum/forage"
	"example.org/soum/grazing"
	"example.org/soum/herd"
	"example.org/soum/internal/document"
	"example.org/soum/internal/rows"
	"example.org/soum/internal/season"
	"example.org/soum/units"
)

// Verdict is what the plan comes to.
type Verdict struct {
	Carries  bool              `json:"carries"`               // no feed beyond what the farm allows
	Limit    Limit             `json:"limit"`                 // what bound where it does not
	Short    *Dates            `json:"short"`                 // the first and the last day of feed that the farm does not have; none where it carries, or water bound
	TurnOut  []TurnOut         `json:"turn_out"`              // of each rotation whose leaders wait for grass
	Over     []Over            `json:"over"`                  // land whose grass outgrows the animals
	Herd     units.AnimalUnits `json:"herd_animal_units"`     // by weight ÷ 1,000 lb, on the season's first day
	Textbook units.AnimalUnits `json:"textbook_animal_units"` // annual yield × use ÷ demand; the verdict follows the season
	Growth   string            `json:"growth"`                // whose growth it is, in a sentence
	English  string            `json:"english"`               // what it comes to, in one paragraph
}

// Dates is days from one to another.
type Dates struct {
	From units.Date `json:"from"` // the first
	To   units.Date `json:"to"`   // the last
}

// TurnOut is the day on which the leaders of a rotation go out to grass.
type TurnOut struct {
	Group string     `json:"group"` // the leader's id
	Date  units.Date `json:"date"`  // the first day on which grass of the rotation is high enough for them
}

// Over is land whose grass outgrows the animals.
type Over struct {
	Land   string       `json:"land"`     // the land's id
	Height units.Height `json:"height_m"` // that it outgrows: mow_above, or half way from turn-in to where growth ends
	First  units.Date   `json:"first"`    // the first day on which a piece of it has
	Last   units.Date   `json:"last"`     // the last
}

// verdict compares the season with what the farm allows.
func verdict(r *ready, result *season.Result, plan *Plan, met *problems) (v Verdict) {
	short := r.needs(result, -1)
	v.Limit = short.limit
	v.Carries = v.Limit == LimitNone && r.waterHolds(r.drinks(), -1, 1)
	switch {
	case v.Limit != LimitNone:
		v.Short = &Dates{r.date(short.from), r.date(short.to)}
	case !v.Carries:
		v.Limit = LimitWater
	}
	v.TurnOut, v.Over = document.Listed(turnOuts(r, result)), document.Listed(over(r, plan))
	for g := range r.herd {
		state := r.state(g, r.first)
		each, err := herd.AnimalUnits(state.Weight)
		met.keep(err, r.start, 1)
		v.Herd += units.AnimalUnits(state.Head) * each
	}
	v.Textbook = textbook(r, met)
	v.Growth = r.growthText()
	v.English = strings.Join(slices.DeleteFunc([]string{
		r.answer(&v, &plan.Hay), turnOutText(v.TurnOut), r.shortText(&v, short, &plan.Hay), overText(v.Over), r.openingText(plan), r.winterText(&plan.Hay),
		fmt.Sprintf("The textbook sum (yield × use ÷ demand) gives %s; the season, which counts rest and the months, decides.", r.text(v.Textbook)),
	}, func(text string) bool { return text == "" }), " ")
	return v
}

// turnOuts gives the first move of each rotation where it comes after a wait for grass.
func turnOuts(r *ready, result *season.Result) (all []TurnOut) {
	for i := range r.input.Rotations {
		first := slices.IndexFunc(result.Moves, func(m season.Move) bool { return m.Rotation == i && m.Day >= 0 })
		if first >= 0 && r.turnsOutLater(i, result.Moves[first].Day) {
			all = append(all, TurnOut{Group: r.farm.Rotations[i].Groups[0].Group, Date: r.date(result.Moves[first].Day)})
		}
	}
	return all
}

// turnsOutLater tells whether a rotation's first move of the season comes after a wait for
// grass.
func (r *ready) turnsOutLater(rotation, first int) bool {
	of := &r.input.Rotations[rotation]
	thisSeason := func(_, bitten int) bool { return bitten >= r.input.From }
	return first > r.first && !r.bitten(of, thisSeason) && r.input.Groups[of.Members[0].Group].Demand[r.first] > 0
}

// over gives the days on which each land is in the plan's surplus.
func over(r *ready, plan *Plan) []Over {
	all := make([]Over, 0, len(r.lands))
	for i := range plan.Surplus {
		s := &plan.Surplus[i]
		at := slices.IndexFunc(all, func(o Over) bool { return o.Land == s.Land })
		if at < 0 {
			land := r.farm.landIndex(s.Land)
			at, all = len(all), append(all, Over{Land: s.Land, Height: r.outgrown(&r.farm.Land[land], r.lands[land].pasture), First: s.Date})
		}
		all[at].Last = s.Date
	}
	return all
}

// textbook gives the carrying capacity of the handbook: what the land in
// rotation grows in a normal year, times the share eaten in a day's stay, over
// the demand of an animal unit (26 lb a day) for the season's days.
func textbook(r *ready, met *problems) (total units.AnimalUnits) {
	use, err := forage.UsableShare(units.Day)
	met.keep(err, r.start, 1)
	demand, err := herd.UnitDemand(herd.UnitTwentySixPounds)
	met.keep(err, r.start, 1)
	days := units.Days(r.input.Days - r.first)
	for i := range r.farm.Land {
		if r.farm.rotationOf(r.farm.Land[i].ID) == nil {
			continue
		}
		grown := r.lands[i].annual * units.Yield(rows.SumShares(r.lands[i].pasture))
		rate, err := grazing.CarryingCapacity(grown, use, demand, days)
		met.keep(err, r.start, 1)
		total += units.AnimalUnits(float64(rate) * float64(r.farm.Land[i].area()))
	}
	return total
}

// growthText says whose growth the plan uses.
func (r *ready) growthText() string {
	var printed, own []string
	for i := range r.farm.Land {
		l := &r.farm.Land[i]
		of, name := &printed, l.Pasture.Name
		if l.Yield != 0 || l.Pasture.Row != nil {
			of, name = &own, l.ID
		}
		if !slices.Contains(*of, name) {
			*of = append(*of, name)
		}
	}
	text := "Growth is your own figure"
	if printed != nil {
		text = fmt.Sprintf("Growth is as printed for %s, not measured on this land", english.Listed(printed))
	}
	if printed != nil && own != nil {
		text += fmt.Sprintf("; on %s it is your own figure", english.Listed(own))
	}
	switch {
	case r.soil != nil:
		return text + "; the account of the soil's water lowers it in dry months."
	case r.rainKnown():
		return text + "; this year's rain did not set it, and lowers it only where the key months were dry."
	}
	return text + "; this year's rain did not set it."
}

// answer says whether the land carries the herd.
func (r *ready) answer(v *Verdict, hay *HayNeed) string {
	text := fmt.Sprintf("From %s to %s ", r.date(r.first), r.farm.Season.To)
	counted := hay.counted()
	switch {
	case v.Carries && counted == 0:
		return text + fmt.Sprintf("the land carries this herd (%s) on grass alone.", r.text(v.Herd))
	case v.Carries:
		return text + fmt.Sprintf("the land carries this herd (%s) with %s of dry matter out of the hay it has.", r.text(v.Herd), r.text(counted))
	case v.Limit == LimitWater:
		return text + fmt.Sprintf("this herd (%s) drinks more than the water source gives.", r.text(v.Herd))
	}
	return text + fmt.Sprintf("the land does not carry this herd (%s) as planned: %s, and feed for %s of dry matter is wanted.", r.text(v.Herd), limitWords[v.Limit], r.text(counted))
}

// counted gives the feed that counts against the land.
func (h *HayNeed) counted() units.DryMatter {
	if counted := h.Eaten - h.Opening; counted >= 1e-9*h.Eaten { // beyond rounding
		return counted
	}
	return 0
}

// shortText tells the days for which the farm has no feed.
func (r *ready) shortText(v *Verdict, short shortage, hay *HayNeed) string {
	if v.Short == nil {
		return ""
	}
	text := fmt.Sprintf("It is short %s, first for %s.", english.OnDays(v.Short.From.String(), v.Short.To.String()), r.farm.Groups[short.group].ID)
	if hay.Short > 0 {
		return text + fmt.Sprintf(" Hay of %s is to be found beyond the %s in store and the %s of the cuts.", r.text(hay.Short), r.text(hay.Store), r.text(hay.Made))
	}
	return text + " Over the season there is hay enough, but it is cut too late."
}

func turnOutText(all []TurnOut) string {
	texts := make([]string, len(all))
	for i, t := range all {
		texts[i] = english.Capital(fmt.Appendf(nil, "%s turn out on %s, the first day on which their grass is high enough.", t.Group, t.Date))
	}
	return strings.Join(texts, " ")
}

func overText(all []Over) string {
	if len(all) == 0 {
		return ""
	}
	const most = 4
	text := []byte("Grass gets ahead of the animals on ")
	for i, o := range all[:min(most, len(all))] {
		if i > 0 {
			text = append(text, ", "...)
		}
		text = fmt.Appendf(text, "%s (from %s)", o.Land, o.First)
	}
	if others := len(all) - most; others > 0 {
		text = fmt.Appendf(text, " and %d more", others)
	}
	return string(append(text, ": cut it, close it up, or add stock. Nothing is cut unless the document says so."...))
}

// openingText tells the feed that does not count against the land, and its days.
func (r *ready) openingText(plan *Plan) string {
	if plan.Hay.Opening == 0 {
		return ""
	}
	var from, to units.Date
	var apart, what []string
	for i := range plan.Feeding {
		f := &plan.Feeding[i]
		switch {
		case f.Counts || !r.grazer(r.farm.groupIndex(f.Group)):
		case f.Why == FeedNoLand:
			if !slices.Contains(apart, f.Group) {
				apart = append(apart, f.Group)
			}
		default:
			if from == 0 {
				from = f.From
			}
			to = max(to, f.To)
		}
	}
	if from != 0 {
		what = append(what, english.OnDays(from.String(), to.String())+", while they wait for their first grass")
	}
	if apart != nil {
		what = append(what, "for "+english.Listed(apart)+", in no rotation")
	}
	text := fmt.Sprintf("Feed of %s is wanted %s; it does not count against the land.", r.text(plan.Hay.Opening), strings.Join(what, " and "))
	if plan.Verdict.Carries && plan.Hay.Short > 0 {
		text += fmt.Sprintf(" For it %s of hay is to be found.", r.text(plan.Hay.Short))
	}
	return text
}

// winterText tells the hay until there is grass again.
func (r *ready) winterText(hay *HayNeed) string {
	w := hay.Winter
	if w == nil || w.Carried == 0 {
		return ""
	}
	left := "none"
	if over := hay.Store + hay.Made - hay.Carried; over > 0 {
		left = r.text(over)
	}
	return fmt.Sprintf("From %s until grass or the season begins again (%s by this year's dates) the grazers of the last day want %s of hay; %s of this year's is left for it.", w.From, w.To.Add(1), r.text(w.Carried), left)
}
