"""Every class of error and warning, with what it tells."""

import datetime
import decimal
import fractions
import math
import unittest
import warnings

import soum
from soum import forage, grazing, herd, rainfall, units as u
from support import close, quiet


class Errors(unittest.TestCase):
    def test_domain(self):
        with self.assertRaises(soum.DomainError) as caught:
            forage.available(height=4 * u.inch, residual=5 * u.inch, density=1)
        error = caught.exception
        self.assertIsInstance(error, ValueError)
        self.assertEqual(str(error), "forage.Available: residual is 5 in, must be from 0 in to height (4 in)")
        self.assertEqual((error.function, error.argument, error.index), ("forage.Available", "residual", 2))
        self.assertEqual((error.low, error.unit), (0, "in"))
        self.assertAlmostEqual(error.value, 5)
        self.assertAlmostEqual(error.high, 4)
        self.assertIn("UMAINE-STICK", error.source)

    def test_no_number_is_impossible(self):
        for bad in (math.nan, math.inf, -math.inf, None):
            with self.assertRaises(soum.DomainError) as caught:
                forage.standing(bad, 1)
            self.assertEqual(caught.exception.argument, "height")
            self.assertFalse(math.isfinite(caught.exception.value))

    def test_result_overflows(self):
        with self.assertRaisesRegex(soum.DomainError, "the result overflows") as caught:
            forage.standing(1e200, 1e200)
        self.assertEqual((caught.exception.argument, caught.exception.index), ("result", 0))

    def test_range(self):
        value, raised = quiet(forage.usable_share, "9 days")
        self.assertAlmostEqual(value, 0.60)  # the printed share of 6 and 7 days
        self.assertEqual(len(raised), 1)
        warning = raised[0].message
        self.assertIs(type(warning), soum.RangeWarning)
        self.assertIsInstance(warning, UserWarning)
        self.assertIn("outside what PSU-STAY covers", str(warning))
        self.assertEqual((warning.argument, warning.value, warning.low, warning.high), ("stay", 9, 1, 7))
        self.assertEqual(raised[0].filename, quiet.__code__.co_filename, "the warning points at the caller")
        _, raised = quiet(lambda: forage.usable_share(9.0))
        self.assertEqual(raised[0].filename, __file__)
        _, raised = quiet(lambda: forage.usable_share([9.0]))
        self.assertEqual(raised[0].filename, __file__)
        _, raised = quiet(lambda: soum.call("forage.UsableShare", {"stay": 9}))
        self.assertEqual(raised[0].filename, __file__)

    def test_gap(self):
        for rain in ("27 in", ["27 in"]):  # 25 and 30 in are printed, nothing between
            _, raised = quiet(rainfall.passes, rain)
            warning = raised[0].message
            self.assertIs(type(warning), soum.RangeWarning)
            self.assertEqual((warning.low, warning.high, warning.gap, warning.unit), (25, 30, True, "in"))
        _, raised = quiet(forage.usable_share, "9 days")
        self.assertIs(raised[0].message.gap, False)

    def test_range_as_an_error(self):
        with warnings.catch_warnings():
            warnings.simplefilter("error", soum.RangeWarning)
            with self.assertRaises(soum.RangeWarning):
                forage.usable_share(9)
            self.assertAlmostEqual(forage.usable_share(1), 0.8)  # printed for one day

    def test_document(self):
        with self.assertRaises(soum.DocumentError) as caught:
            soum.farm.plan({"version": 1})
        error = caught.exception
        self.assertIsInstance(error, ValueError)
        self.assertEqual(error.path, "today")
        self.assertTrue(error.problem and error.allowed)
        with self.assertRaises(soum.DocumentError) as caught:
            forage.density_of("lawn", "good", "low")
        self.assertIn("mixed-pasture", str(caught.exception))
        with self.assertRaises(soum.DocumentError) as caught:
            soum.farm.land_for(3)
        self.assertIn("object", str(caught.exception))

    def test_wrong_text(self):
        with self.assertRaises(soum.DocumentError) as caught:
            forage.available("8 lb", 0.1, 1)
        self.assertEqual(caught.exception.path, "height")
        self.assertIn("m, mm, cm, ft, in", str(caught.exception))
        with self.assertRaisesRegex(soum.DocumentError, "head is '3', must be a plain number"):
            herd.demand("3", "150 lb", "3 %", "100 %")
        with self.assertRaisesRegex(soum.DocumentError, "one of the words twenty five pounds"):
            herd.unit_demand("a lot")
        with self.assertRaisesRegex(soum.DocumentError, "one of the words twenty five pounds"):
            herd.unit_demand(2)
        with self.assertRaisesRegex(soum.DocumentError, "no such word"):
            forage.density_of("mixed-pasture", "splendid", "low")

    def test_wrong_kinds(self):
        for bad in ({}, {1}, b"8 in", object(), 1j, [[1, 2], [3, 4]], [object()]):
            with self.assertRaises(TypeError, msg=repr(bad)):
                forage.available(bad, 0.1, 1)
        with self.assertRaises(TypeError):
            forage.available(1, 2)
        with self.assertRaises(TypeError):
            soum.farm.plan({"version": object()})
        with self.assertRaises(TypeError):
            soum.show_work(len, {})

    def test_beyond_all_numbers(self):
        with self.assertRaises(OverflowError):
            forage.standing(10**400, 1)
        self.assertEqual(forage.standing(2, 3), 6.0)

    def test_domain_of_a_word(self):
        with self.assertRaisesRegex(soum.DomainError, "no figure is printed") as caught:
            herd.manure_per_unit_year("unknown")
        self.assertEqual(caught.exception.argument, "kind")

    def test_domain_of_a_list(self):
        with self.assertRaises(soum.DomainError):
            herd.total_units([30, math.nan], [1.6, 1.7])


class Numbers(unittest.TestCase):
    def test_kinds_of_numbers(self):
        want = 1250 * u.lb_per_acre  # 5 in of 250 lb
        for height, residual in (
            (8 * u.inch, 3 * u.inch),
            ("8 in", "3 in"),
            ("8 in", 3 * u.inch),
            (decimal.Decimal("0.2032"), decimal.Decimal("0.0762")),
            (fractions.Fraction(2032, 10000), fractions.Fraction(762, 10000)),
        ):
            self.assertTrue(close(forage.available(height, residual, "250 lb/ac/in"), want, 1e-9))
        self.assertEqual(forage.available(3, 1, 2), 4.0)
        self.assertEqual(forage.available(True, 0, 2), 2.0)

    def test_parse_and_show(self):
        self.assertAlmostEqual(u.parse("Area", "1 ac"), 4046.8564224)
        self.assertEqual(u.show("Area", 4046.8564224, "US"), "1 ac")
        self.assertEqual(u.show("Area", 4046.8564224), "4046.8564224 m2")
        self.assertEqual(u.parse("Area", u.show("Area", 12.5)), 12.5)
        self.assertAlmostEqual(u.parse("Temperature", "50 °F"), 10)
        with self.assertRaisesRegex(soum.DocumentError, "is no quantity"):
            u.parse("Colour", "1 lb")
        with self.assertRaisesRegex(soum.DocumentError, "m2, ha"):
            u.parse("Area", "1 lb")
        with self.assertRaises(soum.DocumentError):
            u.show("Area", 1, "furlongs")
        self.assertEqual(u.parse("Date", "2001-04-05"), "2001-04-05")

    def test_dates(self):
        record = [{"year": 2001, "month": m, "rain": 0.03} for m in (4, 5)]
        given = dict(key_months=[4, 5], record=record, normals=[0.04] * 12)
        self.assertAlmostEqual(rainfall.key_rain_share("2001-06-01", **given), 0.75)
        self.assertAlmostEqual(rainfall.key_rain_share(datetime.date(2001, 6, 1), **given), 0.75)
        with self.assertRaises(TypeError):
            rainfall.key_rain_share(datetime.datetime(2001, 6, 1, 12), **given)

    def test_show_work(self):
        given = {"height": "8 in", "residual": "3 in", "density": "250 lb/ac/in"}
        want = "available = (height − residual) × density = (8 in − 3 in) × 250 lb/ac/in = 1,250 lb/ac"
        for name in (forage.available, "forage.Available"):
            step = soum.show_work(name, given, "US")
            self.assertTrue(step["text"].startswith(want), step["text"])
            self.assertTrue(close(step["value"], 1250 * u.lb_per_acre, 1e-9))
            self.assertIn("UMAINE-STICK", step["source"])
        self.assertIn("kg/ha", soum.show_work(forage.available, given)["text"])
        step = soum.show_work(forage.height_of, {"yield_": "1000 lb/ac", "density": "250 lb/ac/in"}, "US")
        self.assertIn("4 in", step["text"])
        step = soum.show_work("forage.PeakGrowth", {"mean": 1, "mean_to_peak": 0.5})
        self.assertEqual(step["value"], 2)
        with self.assertRaisesRegex(soum.DocumentError, "is no formula"):
            soum.show_work("forage.Pastures", {})


if __name__ == "__main__":
    unittest.main()
