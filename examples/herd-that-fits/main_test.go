package main

// Example runs the program. Sums that show in it: 3 cows of 1.3 animal units, 5
// ewes of 0.15, 2 goats of 60 kg (0.132) and 60 hens of 0.004 are 5.15; 21 goats at
// 150 USD and 60 hens at 8 are 3,630 USD, less 650.93 for hay 2,979.07; 8 cows take
// 40 places of 30. In every month what is left is what is to be had, less what is
// wanted, plus hay.
func Example() {
	main()
	// Output:
	// For animal units: 3 cows, 5 ewes, 2 goats and 60 hens: 5.15 animal units. With parts of animals allowed it would be 5.45 animal units; no herd of whole animals is better. It is fed 13.7 short tons of hay, 3.68 short tons of it bought for 662.93 USD. 1 short ton more of April grass would carry 0.312 more cows (0.406 animal units more). 1 short ton more of hay in store would carry 0.259 more cows (0.337 animal units more). 1 short ton more of hay that may be bought would carry 0.259 more cows (0.337 animal units more).
	//
	//   lb of dry matter  to be had  wanted    hay   left
	//   January                   0   3,509  3,509      0
	//   February                  0   3,169  3,169      0
	//   March                     0   3,588  3,588      0
	//   April                   250   4,261  4,011      0
	//   May                  11,294   4,403      0  6,891
	//   June                  7,730   4,261      0  3,469
	//   July                  4,638   4,403      0    235
	//   August                4,388   3,938      0    450
	//   September             5,784   3,811      0  1,973
	//   October               2,992   3,938    946      0
	//   November                  0   3,435  3,435      0
	//   December                  0   3,509  3,509      0
	//   reckoned for hungry stock: 4.76 animal units, with parts of animals
	//   reckoned half way between: 5.45 animal units, with parts of animals
	//   reckoned for modest eaters: 6.39 animal units, with parts of animals
	//
	// For margin: 21 goats and 60 hens: 2979.07 USD. With parts of animals allowed it would be 2987.55 USD; no herd of whole animals is better. It is fed 13.6 short tons of hay, 3.62 short tons of it bought for 650.93 USD. 1 short ton more of April grass would bring 249.50 USD more, with 1.66 more goats. 1 short ton more of hay in store would bring 202.10 USD more, with 1.35 more goats. 1 short ton more of October grass would bring 147.93 USD more, with 0.986 more goats.
	//
	// For least hay: 2 goats: 1.1 short tons of hay. With parts of animals allowed it would be 1.1 short tons of hay; no herd of whole animals is better. It is fed 1.1 short tons of hay from the store. Asking for 1 less in the need of milk (at least 10 lb of milk a day) would save 0.126 short tons of hay. 1 short ton more of April grass would save 0.0661 short tons of hay. 1 ac more of hillside would save 0.0309 short tons of hay.
	//
	// With 8 cows asked for: Nothing fits: the room of barn (30 places) and at least 8 cows do not go together; leave out either and the other can be kept.
}
