"""Every function of the manifest is here, documented, and gives the numbers."""

import ast
import inspect
import os
import unittest

import soum
from soum import documents, farm as farms, fit, forage, grazing, herd, rainfall, study, units
from support import BY_NAME, CALLS, EXAMPLES, FUNCTIONS, MANIFEST, STRIP, checks, close, farm, found, parameters, quiet, run
from support import small_farm, snake


class Parity(unittest.TestCase):
    def test_every_function_is_present_and_documented(self):
        for function in FUNCTIONS:
            with self.subTest(function["name"]):
                python = found(function)
                names = [snake(p["snake"]) for p in parameters(function)]
                self.assertEqual(list(inspect.signature(python).parameters), names)
                doc = inspect.getdoc(python)
                self.assertGreater(len(doc.splitlines()[0]), 20)
                for section in function["sections"]:
                    self.assertIn(section["head"] + ":", doc)
                for name in names:
                    self.assertIn(f"    {name}: ", doc)
                self.assertIn(python.__name__, inspect.getmodule(python).__all__)

    def test_nothing_else_is_exported(self):
        for module in (herd, forage, rainfall, grazing, farms, study, fit):
            want = {snake(f["snake"]) for f in FUNCTIONS if "soum." + f["package"] == module.__name__}
            self.assertEqual(set(module.__all__), want)
            public = {n for n in vars(module) if not n.startswith("_")}
            self.assertEqual(public, want)

    def test_every_formula_is_callable(self):
        good = {}
        for check in checks():
            if not check["error"]:
                good.setdefault(check["function"], check)
        for function in FUNCTIONS:
            if function["kind"] == "formula":
                with self.subTest(function["name"]):
                    check = good[function["name"]]
                    values = [check["arguments"][p["name"]] for p in parameters(function)]
                    python = found(function)
                    value = python(*values)
                    self.assertIs(type(value), float)
                    self.assertTrue(close(value, check["exact"]))
                    named = {snake(p["snake"]): v for p, v in zip(parameters(function), values)}
                    self.assertEqual(python(**named), value)
                    self.assertEqual(soum.call(function["name"], check["arguments"]), value)
                    lists = [[v, v] for v in values]
                    self.assertEqual(python(*lists), [value, value])

    def test_every_lookup_and_work_is_callable(self):
        self.assertEqual({f["name"] for f in FUNCTIONS if f["kind"] != "formula"}, set(CALLS))
        for name, arguments in CALLS.items():
            with self.subTest(name):
                function = BY_NAME[name]
                given = {snake(p["snake"]): arguments[p["name"]] for p in parameters(function)}
                value = found(function)(**given)
                self.assertIsNotNone(value)
                if len(function["results"]) > 1:
                    self.assertIsInstance(value, tuple)
                    self.assertEqual(len(value), len(function["results"]))

    def test_an_unknown_function_is_told(self):
        with self.assertRaisesRegex(soum.UnknownFunctionError, 'no function "forage.Nothing"'):
            soum.call("forage.Nothing", {})
        with self.assertRaisesRegex(AttributeError, "nothing"):
            soum.forage.nothing
        with self.assertRaisesRegex(AttributeError, "pasture"):
            soum.pasture

    def test_every_struct_is_a_type(self):
        for struct in MANIFEST["structs"]:
            package, name = struct["name"].split(".")
            made = getattr(documents, name if package.title() == name else package.title() + name)
            self.assertEqual(set(made.__annotations__), {f["name"] for f in struct["fields"]}, struct["name"])
            self.assertEqual(made.__doc__, struct["doc"])

    def test_every_unit_is_a_constant(self):
        for unit in MANIFEST["units"]:
            self.assertEqual(getattr(units, snake(unit["name"])), unit["factor"])
            for quantity in unit["quantities"]:
                if quantity != "TemperatureDifference":
                    self.assertTrue(close(units.parse(quantity, "1 " + unit["symbol"]), unit["factor"]))
        self.assertEqual(set(units.quantities), {q["name"] for q in MANIFEST["quantities"]})

    def test_the_stubs_tell_the_same_names(self):
        for module in (herd, forage, rainfall, grazing, farms, study, fit, units, soum):
            path = os.path.splitext(module.__file__)[0] + ".pyi"
            with open(path, encoding="utf-8") as file:
                tree = ast.parse(file.read())
            defined = {n.name: n for n in tree.body if isinstance(n, ast.FunctionDef)}
            for name, node in defined.items():
                told = [a.arg for a in node.args.args]
                self.assertEqual(told, list(inspect.signature(getattr(module, name)).parameters), name)
            if module in (herd, forage, rainfall, grazing, farms, study, fit):
                self.assertEqual(set(defined), set(module.__all__))
        self.assertTrue(os.path.exists(os.path.join(os.path.dirname(soum.__file__), "py.typed")))

    def test_version(self):
        self.assertEqual(soum.__version__, MANIFEST["version"])
        self.assertIn(MANIFEST["version"], run("import runpy; runpy.run_module('soum', run_name='__main__')"))
        try:
            from importlib import metadata
        except ImportError:
            return
        self.assertEqual(metadata.version("soum"), MANIFEST["version"])
        self.assertNotIn(os.path.dirname(EXAMPLES), soum.__file__, "the tests run on what is installed")


class Checks(unittest.TestCase):
    """The check lines: what print says, and what Go computes."""

    def test_every_check(self):
        count = 0
        for check in checks():
            count += 1
            told = {key: check[key] for key in ("arguments", "table", "source", "note") if key in check}
            with self.subTest(check["function"], **told):
                self.one(check)
        self.assertGreater(count, 500)

    def one(self, check):
        if check["function"] == "units.parse":
            value, raised = quiet(units.parse, **check["arguments"])
            function = None
        else:
            function = BY_NAME[check["function"]]
            given = {snake(p["snake"]): check["arguments"][p["name"]] for p in parameters(function)}
            if check["error"].startswith("domain"):
                with self.assertRaises(soum.DomainError) as caught:
                    found(function)(**given)
                self.assertEqual("domain " + caught.exception.argument, check["error"])
                self.assertEqual(caught.exception.function, check["function"])
                return
            value, raised = quiet(found(function), **given)
        told = ["range " + w.message.argument for w in raised]
        self.assertEqual(told, [check["error"]] if check["error"] else [])
        if isinstance(check["exact"], (int, float)):
            self.assertTrue(close(value, check["exact"]), f"{value} is not Go's {check['exact']}")
        if isinstance(check["value"], (int, float)):
            self.assertLessEqual(abs(value - check["value"]), check["tolerance"])
        else:
            self.assertEqual(value, check["value"])


class Examples(unittest.TestCase):
    def run_example(self, name, before=""):
        path = os.path.join(EXAMPLES, name)
        return run(f"{before}\nimport runpy; runpy.run_path({path!r}, run_name='__main__')")

    def test_strip(self):
        self.assertEqual(self.run_example("strip.py"), STRIP)

    def test_what_if(self):
        text = self.run_example("what_if.py")
        # 25 ewes of 150 lb at 3 %: 112.5 lb a day, 22,500 lb in 200 days. 8 ac of
        # 6,000 lb at 65 % are 31,200 lb in a usual year, and 70 % of that 21,840:
        # 660 lb, or 0.3 short tons, are wanting.
        row = next(line for line in text.splitlines() if line.strip().startswith("25 |"))
        self.assertEqual(row.split("|")[1].split(), ["3.5", "1.9", "0.3", "0.0", "0.0", "0.0"])
        self.assertEqual(self.run_example("what_if.py", "import sys; sys.modules['numpy'] = None"), text)


if __name__ == "__main__":
    unittest.main()
