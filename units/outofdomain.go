package units

// OutOfDomain gives the error of an impossible argument of a function that has no
// Formula, because it also takes a list, a record or a text: a says what the argument is
// called and what is possible, index is its place among the parameters, from 1.
func OutOfDomain(function string, index int, a Argument, value float64) error {
	var none Formula
	return &DomainError{
		Function: function, Argument: a.Name, Index: index,
		Value: value / a.Factor, Low: a.Domain.Low / a.Factor, High: a.Domain.High / a.Factor,
		Unit: a.Unit, wanted: none.wanted(&a.Domain, &a, nil),
	}
}
