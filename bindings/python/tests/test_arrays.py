"""Lists and arrays in, lists and arrays out."""

import array
import math
import unittest

import soum
from soum import _core, forage, herd, units as u
from support import close, quiet, run

try:
    import numpy
except ImportError:
    numpy = None


class Lists(unittest.TestCase):
    def test_lists(self):
        self.assertEqual(forage.standing([1, 2.0, 3], 2), [2.0, 4.0, 6.0])
        self.assertEqual(forage.standing((1, 2), [3, 4]), [3.0, 8.0])
        self.assertEqual(forage.standing(range(3), 2), [0.0, 2.0, 4.0])
        self.assertEqual(forage.standing(array.array("i", [1, 2]), 2), [2.0, 4.0])
        self.assertEqual(forage.standing([], 2), [])
        got = forage.standing(["8 in", "20 cm", 0.1], "250 lb/ac/in")
        for value, height in zip(got, (8 * u.inch, 0.2, 0.1)):
            self.assertTrue(close(value, forage.standing(height, 250 * u.lb_per_acre_inch)))

    def test_words(self):
        weights = [100.0, 200.0]
        both = herd.manure_mass(["beef cow", "heifer"], weights, 1)
        self.assertEqual(both, [herd.manure_mass("beef cow", 100.0, 1), herd.manure_mass("heifer", 200.0, 1)])

    def test_lengths(self):
        with self.assertRaisesRegex(ValueError, "of one length, they are: height 2, density 3"):
            forage.standing([1, 2], [1, 2, 3])

    def test_bad_rows(self):
        value, raised = quiet(forage.available, [0.3, 0.1, None, 0.4], 0.2, 1)
        self.assertAlmostEqual(value[0], 0.1)
        self.assertTrue(math.isnan(value[1]) and math.isnan(value[2]))
        self.assertEqual([type(w.message) for w in raised], [soum.DomainWarning])
        warning = raised[0].message
        self.assertEqual((warning.rows, warning.first, warning.argument), (2, 1, "residual"))
        self.assertIn("2 of 4, the first at 1: forage.Available: residual is", str(warning))
        value, raised = quiet(forage.usable_share, [9, -1, 1, 8])
        self.assertEqual({type(w.message) for w in raised}, {soum.DomainWarning, soum.RangeWarning})
        self.assertEqual({w.message.rows for w in raised}, {1, 2})
        self.assertAlmostEqual(value[2], 0.8)

    def test_without_numpy(self):
        run(
            "import sys; sys.modules['numpy'] = None\n"
            "from soum import forage\n"
            "assert forage.standing([1, 2], 2) == [2.0, 4.0]"
        )

    def test_numpy_is_not_imported(self):
        run("import sys\nfrom soum import forage\nforage.standing([1, 2], 2)\nassert 'numpy' not in sys.modules")


@unittest.skipIf(numpy is None, "NumPy is not installed")
class Arrays(unittest.TestCase):
    def same(self, got, want):
        self.assertEqual(got.shape, want.shape)
        self.assertEqual(got.dtype, numpy.float64)
        numpy.testing.assert_allclose(got, want, rtol=1e-12, atol=0)

    def test_shapes(self):
        random = numpy.random.default_rng(1)
        height = random.uniform(0.2, 0.4, 50)
        density = random.uniform(1, 2, 50)
        self.same(forage.standing(height, density), height * density)
        self.same(forage.standing(height, 2), height * 2)
        self.same(forage.standing(0.3, density), 0.3 * density)
        self.same(forage.standing(height[::3], density[::3]), height[::3] * density[::3])
        self.same(forage.standing(height[::-1], density), height[::-1] * density)
        grid = height.reshape(5, 10)
        self.same(forage.standing(grid, density[:10]), grid * density[:10])
        self.same(forage.standing(grid.T, 2), grid.T * 2)
        self.same(forage.standing(height[:, None], density[None, :7]), height[:, None] * density[None, :7])
        self.same(forage.standing(numpy.asfortranarray(grid), grid), grid * grid)
        self.same(forage.standing(height[:1], density), height[0] * density)
        self.same(forage.standing(height[:1], 2), height[:1] * 2)
        self.same(forage.standing(list(height), density), height * density)
        self.same(forage.standing(numpy.empty((0, 3)), 2), numpy.empty((0, 3)))
        with self.assertRaises(ValueError):
            forage.standing(height, density[:7])

    def test_kinds(self):
        for kind in ("float32", "float16", "int8", "int64", "uint16", ">f8", "longdouble"):
            values = numpy.arange(4).astype(kind)
            self.same(forage.standing(values, 2.5), values.astype(float) * 2.5)
        for bad in (numpy.array([1j]), numpy.array([True]), numpy.array(["2001-01-01"], dtype="datetime64[D]")):
            with self.assertRaises(TypeError):
                forage.standing(bad, 1)
        texts = numpy.array(["8 in", "20 cm"])
        self.same(forage.standing(texts, 2), numpy.array([8 * u.inch, 0.2]) * 2)
        self.same(forage.standing(numpy.array(["8 in", 0.2], dtype=object), 2), numpy.array([8 * u.inch, 0.2]) * 2)
        kinds = numpy.array([["beef cow"], ["heifer"]])
        got = herd.manure_mass(kinds, numpy.array([100.0, 200.0]), 1)
        want = [[herd.manure_mass(k, w, 1) for w in (100.0, 200.0)] for k in ("beef cow", "heifer")]
        self.same(got, numpy.array(want))

    def test_scalars_of_numpy(self):
        for two in (numpy.float64(2), numpy.float32(2), numpy.int16(2), numpy.array(2.0), numpy.array("200 cm")):
            value = forage.standing(two, 3)
            self.assertIs(type(value), float)
            self.assertEqual(value, 6)
        with self.assertRaises(soum.DomainError):
            forage.standing(numpy.array(-1.0), 3)

    def test_masked(self):
        values = numpy.ma.array([1.0, 2.0], mask=[False, True])
        got, raised = quiet(forage.standing, values, 2)
        self.assertEqual(got[0], 2)
        self.assertTrue(numpy.isnan(got[1]))
        self.assertEqual(len(raised), 1)

    def test_the_arguments_stay(self):
        values = numpy.arange(5.0)
        values.flags.writeable = False
        forage.standing(values, 2)
        numpy.testing.assert_array_equal(values, numpy.arange(5.0))

    def test_many_rows(self):
        for rows in (_core._CHUNK - 1, _core._CHUNK, _core._CHUNK + 1, 3 * _core._CHUNK + 7):
            height = numpy.linspace(0.3, 0.4, rows)
            residual = numpy.full(rows, 0.1)
            self.same(forage.available(height, residual, 2), (height - residual) * 2)
        height[[5, _core._CHUNK + 2]] = 0.05
        height[9] = numpy.inf
        got, raised = quiet(forage.available, height, residual, 2)
        self.assertEqual(list(numpy.flatnonzero(numpy.isnan(got))), [5, 9, _core._CHUNK + 2])
        self.assertEqual(len(raised), 1)
        self.assertEqual((raised[0].message.rows, raised[0].message.first), (3, 5))

    def test_place_in_a_grid(self):
        _, raised = quiet(forage.usable_share, numpy.array([[1.0, 2.0], [3.0, 30.0]]))
        self.assertEqual(raised[0].message.first, (1, 1))

    def test_work_takes_arrays(self):
        self.assertAlmostEqual(herd.total_units(numpy.array([30, 1]), numpy.array([1.6, 1.7])), 49.7)


if __name__ == "__main__":
    unittest.main()
