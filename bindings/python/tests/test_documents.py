"""Farms in, plans out."""

import copy
import json
import unittest

import soum
from soum import units as u
from support import farm, small_farm


class Documents(unittest.TestCase):
    def test_plan(self):
        plan = soum.farm.plan(farm())
        self.assertIn("From 2001-04-20 to 2001-10-31", plan["verdict"]["english"])
        self.assertTrue(plan["moves"] and plan["months"])
        self.assertIsInstance(plan["moves"][0]["date"], str)
        json.dumps(plan, allow_nan=False)

    def test_the_farm_stays(self):
        given = small_farm()
        before = copy.deepcopy(given)
        soum.farm.plan(given)
        self.assertEqual(given, before)

    def test_explain_ends_in_the_plan(self):
        plan = soum.farm.plan(farm())
        day = plan["moves"][0]["date"]
        explained = soum.farm.explain(farm(), day)
        steps = [step for e in explained for step in e["steps"]]
        self.assertTrue(steps)
        self.assertTrue(all(step["source"] and step["answer"] for step in steps))
        with self.assertRaises(soum.DocumentError) as caught:
            soum.farm.explain(farm(), "1999-01-01")
        self.assertEqual(caught.exception.path, "date")

    def test_first_farm(self):
        answers = {
            "today": "2026-05-01", "units": "US", "area_m2": 8 * u.acre, "pasture": "mixed-pasture",
            "rain_m": "30 in", "stock": [{"class": "ewe", "head": 9}],
        }
        first = soum.farm.first(answers)
        plan = soum.farm.plan(first)
        self.assertTrue(plan["verdict"]["english"])

    def test_paths(self):
        for change, path in (
            (lambda f: f["land"][0].update(width="30 lb"), "land[0].width"),
            (lambda f: f["land"][0].update(width=30), "land[0].width"),
            (lambda f: f["groups"][0].update(head=-1), "groups[0].head"),
            (lambda f: f["rotations"][0].update(land=["b"]), "rotations[0].land[0]"),
            (lambda f: f.update(colour="green"), "colour"),
        ):
            wrong = small_farm()
            change(wrong)
            with self.assertRaises(soum.DocumentError) as caught:
                soum.farm.plan(wrong)
            self.assertEqual(caught.exception.path, path)
            self.assertTrue(caught.exception.allowed)

    def test_nested_too_deep(self):
        deep = {}
        for _ in range(100):
            deep = {"x-a": deep}
        with self.assertRaisesRegex(soum.DocumentError, "nested"):
            soum.farm.plan(deep)
        for _ in range(10_000):
            deep = [deep]
        with self.assertRaisesRegex(soum.DocumentError, "nested"):
            soum.farm.plan(deep)
        within = []
        within.append(within)
        with self.assertRaisesRegex(soum.DocumentError, "nested"):
            soum.farm.plan(within)


if __name__ == "__main__":
    unittest.main()
