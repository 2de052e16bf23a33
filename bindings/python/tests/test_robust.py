"""Forks, threads, rubbish, faults: an answer or an error, never a crash."""

import ctypes
import json
import math
import os
import random
import sys
import threading
import time
import unittest

import soum
from soum import _core, _manifest, forage
from support import BY_NAME, FUNCTIONS, farm, parameters, run, small_farm

MANY = 200 if os.environ.get("SOUM_LONG") else 8  # children of fork()
LIBRARIES = os.environ.get("SOUM_TEST_LIBRARIES")  # where the test builds are


def resident():
    """Memory in use, in bytes."""
    with open("/proc/self/statm", encoding="ascii") as file:
        return int(file.read().split()[1]) * os.sysconf("SC_PAGE_SIZE")


def retyped(chance, document):
    """Puts something else in the place of one value of a document."""
    if isinstance(document, (dict, list)) and document and chance.random() < 0.85:
        key = chance.choice(list(document)) if isinstance(document, dict) else chance.randrange(len(document))
        document[key] = retyped(chance, document[key])
        if isinstance(document, dict) and chance.random() < 0.1:
            document[str(key) + "x"] = document.pop(key)
        return document
    return chance.choice(
        [None, True, 0, -1, 1e308, 1e-320, 2**40, "", "NaN", "8 in", "-3 m", "1e300 lb", "2001-02-30", "9999-12-31", [], {}, [[]], {"a": 1}]
    )


FORKS = """
import os, signal, sys, threading, time, warnings
warnings.simplefilter("ignore", DeprecationWarning)  # of forks beside threads
import soum
from soum import forage
from support import small_farm

threads, children, nested = map(int, sys.argv[1].split(",")) if len(sys.argv) > 1 else ARGUMENTS
farm = small_farm()
want = soum.farm.plan(farm)["verdict"]
assert forage.standing(2.0, 3.0) == 6.0
stop = False

def inside():
    while not stop:
        soum.farm.plan(farm)

def child(depth):
    good = forage.standing(2.0, 3.0) == 6.0 and soum.farm.plan(farm)["verdict"] == want
    if depth and good:
        good = wait(start(depth - 1)) == 0
    os._exit(0 if good and forage.standing([1, 2], 2) == [2.0, 4.0] else 1)

def start(depth):
    pid = os.fork()
    if pid == 0:
        try:
            child(depth)
        finally:
            os._exit(2)
    return pid

def wait(pid, seconds=30):
    end = time.monotonic() + seconds
    while time.monotonic() < end:
        done, status = os.waitpid(pid, os.WNOHANG)
        if done:
            return status
        time.sleep(0.002)
    os.kill(pid, signal.SIGKILL)
    os.waitpid(pid, 0)
    return "hung"

crew = [threading.Thread(target=inside) for _ in range(threads)]
for thread in crew:
    thread.start()
bad = []
for _ in range(children):
    status = wait(start(nested))
    if status != 0:
        bad.append(status)
        if len(bad) > 2:
            break
stop = True
for thread in crew:
    thread.join()
assert forage.standing(2.0, 3.0) == 6.0
assert not bad, bad
"""


@unittest.skipUnless(hasattr(os, "fork"), "this system does not fork")
class Fork(unittest.TestCase):
    def forks(self, threads, children, nested):
        run(FORKS.replace("ARGUMENTS", repr((threads, children, nested))), seconds=300)

    def test_alone(self):
        self.forks(0, MANY, 0)

    def test_with_a_thread_inside(self):
        self.forks(1, MANY, 0)

    def test_with_three_threads_inside(self):
        self.forks(3, MANY, 0)

    def test_children_of_children(self):
        self.forks(1, MANY // 2, 2)

    def test_without_memfd(self):
        run("import os; del os.memfd_create\n" + FORKS.replace("ARGUMENTS", "(1, 5, 1)"))

    def test_before_the_first_call(self):
        run(
            "import os\nfrom soum import forage, _core\npid = os.fork()\n"
            "assert forage.standing(2, 3) == 6.0 and _core._generation == 0\n"
            "if pid: assert os.waitpid(pid, 0)[1] == 0"
        )

    def test_pool_of_processes(self):
        run(
            "import multiprocessing, warnings\nwarnings.simplefilter('ignore', DeprecationWarning)\n"
            "from soum import forage\nassert forage.standing(2, 3) == 6.0\n"
            "with multiprocessing.get_context('fork').Pool(2) as pool:\n"
            "    assert pool.starmap(forage.standing, [(i, 2) for i in range(20)]) == [2.0 * i for i in range(20)]"
        )


class Threads(unittest.TestCase):
    def test_eight_threads(self):
        plan = soum.farm.plan(small_farm())
        wrong, begin = [], threading.Barrier(8)

        def work(seed):
            chance = random.Random(seed)
            begin.wait()
            for i in range(300):
                height = chance.random() + 1
                if forage.standing(height, 2.0) != height * 2:
                    wrong.append(height)
                rows = [chance.random() for _ in range(50)]
                if forage.standing(rows, 2.0) != [r * 2 for r in rows]:
                    wrong.append(rows)
                try:
                    forage.standing(-height, 2.0)
                    wrong.append("no error")
                except soum.DomainError as error:
                    if abs(error.value + height / 0.0254) > 1e-9 * abs(error.value):
                        wrong.append(error)
                if i % 30 == 0 and soum.farm.plan(small_farm()) != plan:
                    wrong.append("plan")

        threads = [threading.Thread(target=work, args=(seed,)) for seed in range(8)]
        for thread in threads:
            thread.start()
        for thread in threads:
            thread.join(60)
            self.assertFalse(thread.is_alive())
        self.assertEqual(wrong, [])

    def test_a_call_within_a_call(self):
        class Late:
            def __float__(self):
                return forage.standing(2.0, 3.0)

        self.assertEqual(forage.standing(Late(), 2.0), 12.0)


class Rubbish(unittest.TestCase):
    def documents(self, count):
        """Names with JSON that was spoiled: cut, doubled, flipped, retyped."""
        chance = random.Random(7)
        seeds = [("farm.Plan", json.dumps({"document": small_farm()}))]
        seeds += [("farm.Explain", json.dumps({"document": small_farm(), "date": "2001-05-03"}))]
        for function in FUNCTIONS:
            if not any(p["type"]["kind"] == "struct" for p in parameters(function)):
                seeds.append((function["name"], json.dumps({p["name"]: 1 for p in parameters(function)})))
        seeds += [
            ("units.parse", '{"quantity": "Area", "text": "3 ac"}'),
            ("units.show", '{"quantity": "Area", "value": 3, "system": "US"}'),
            ("formula.show", '{"function": "forage.Standing", "system": "US", "arguments": {"height": 1, "density": 2}}'),
        ]
        pieces = [b"null", b"1e999", b"-0", b'"8 in"', b"[", b"]", b"{", b"}", b'"', b"\\", b"\x00", b"\xff", b"[[]]",
                  b'"\\ud800"', b"1e308", b'"NaN"', b'{"a":1,"a":2}', b"true", b"-1", b'""', b",", b":"]
        for _ in range(count):
            name, text = chance.choice(seeds) if chance.random() < 0.7 else seeds[0]
            if chance.random() < 0.5:
                yield name, json.dumps(retyped(chance, json.loads(text))).encode()
                continue
            data = bytearray(text.encode())
            for _ in range(chance.randint(1, 4)):
                at = chance.randrange(len(data) + 1)
                how = chance.randrange(4)
                if how == 0:
                    del data[at:]
                elif how == 1:
                    data[at : at + chance.randint(0, 9)] = chance.choice(pieces)
                elif how == 2 and data:
                    data[min(at, len(data) - 1)] = chance.randrange(256)
                else:
                    data[at:at] = data[max(0, at - chance.randint(0, 40)) : at]
            if chance.random() < 0.02:
                name = chance.choice(["", "forage", "forage.", "é", "x" * 500, "farm.plan"])
            yield name, bytes(data)

    def test_ten_thousand_bad_documents(self):
        statuses = {}
        before = 0
        for i, (name, data) in enumerate(self.documents(10_000)):
            answer, status = _core.call_bytes(name, data)
            statuses[status] = statuses.get(status, 0) + 1
            answer = json.loads(answer)
            self.assertIn("value", answer)
            self.assertNotEqual(status, _core._BROKEN, (name, data, answer))
            if i == 2_000 and os.path.exists("/proc/self/statm"):
                before = resident()
        self.assertLessEqual({-2, -3}, set(statuses), statuses)
        self.assertGreater(statuses[-2], 5_000, statuses)
        if before:
            self.assertLess(resident() - before, 24 << 20, "memory stays flat")
        self.assertEqual(forage.standing(2.0, 3.0), 6.0)

    def test_nested_ten_thousand_deep(self):
        for data in (b"[" * 10_000, b'{"document":' * 10_000 + b"1" + b"}" * 10_000, b'{"document":' + b"[" * 10_000 + b"]" * 10_000 + b"}"):
            answer, status = _core.call_bytes("farm.Plan", data)
            self.assertEqual(status, -2)
            self.assertIn(b"nested", answer)

    def test_any_numbers_through_eval(self):
        library = _core.load()
        special = [0.0, -0.0, 1.0, -1.0, math.nan, math.inf, -math.inf, sys.float_info.max, 5e-324, 0.5, 100.0]
        chance = random.Random(3)
        at = ctypes.byref
        for function in FUNCTIONS:
            if function["kind"] != "formula":
                continue
            count, rows = len(parameters(function)), 60
            fixed = (ctypes.c_int32 * (2 + count))(function["index"], rows, *[1] * count)
            values = (ctypes.c_double * (count * rows))(*[chance.choice(special) for _ in range(count * rows)])
            out, status = (ctypes.c_double * rows)(), (ctypes.c_int32 * rows)()
            library.eval(at(fixed), values, at(fixed, 8), at(fixed, 4), out, status)
            for value, code in zip(out, status):
                self.assertEqual(math.isnan(value), code < 0, function["name"])
                self.assertFalse(math.isinf(value))
                self.assertTrue(-count <= code <= count or code == -100)
            self.assertTrue(any(status))
        for rows in (0, -1, -(2**31)):
            fixed[1] = rows
            out[0], status[0] = 7.0, 7
            library.eval(at(fixed), values, at(fixed, 8), at(fixed, 4), out, status)
            self.assertEqual((out[0], status[0]), (7.0, 7), "no rows, nothing written")
        for index in (-1, 10_000, 2**31 - 1, -(2**31)):
            fixed[0], fixed[1] = index, 3
            library.eval(at(fixed), values, at(fixed, 8), at(fixed, 4), out, status)
            self.assertEqual(list(status[:3]), [-999] * 3)
            self.assertTrue(math.isnan(out[0]))

    def test_small_room(self):
        library = _core.load()
        data = b'{"quantity": "Area", "value": 4046.8564224, "system": "US"}'
        length, status = ctypes.c_int32(len(data)), ctypes.c_int32()
        room, buffer = ctypes.c_int32(8), ctypes.create_string_buffer(b"\x7f" * 64, 64)
        at = ctypes.byref
        library.call(b"units.show", data, at(length), buffer, at(room), at(status))
        self.assertEqual(status.value, 0)
        self.assertGreater(room.value, 8)
        self.assertEqual(buffer.raw[8:9], b"\x7f", "nothing beyond the room")

    def test_a_plan_longer_than_the_room(self):
        _core._buffers[:] = [ctypes.create_string_buffer(16)]
        self.assertTrue(soum.farm.plan(farm())["moves"])


class Signals(unittest.TestCase):
    def test_interrupt_and_pipe(self):
        run(
            "import os, signal\nfrom soum import forage\nforage.standing(2, 3)\n"
            "try:\n    os.kill(os.getpid(), signal.SIGINT)\n    signal.pause()\nexcept KeyboardInterrupt:\n    pass\n"
            "else:\n    raise SystemExit('no interrupt')\n"
            "r, w = os.pipe(); os.close(r)\n"
            "try:\n    os.write(w, b'x')\nexcept BrokenPipeError:\n    pass\nelse:\n    raise SystemExit('no broken pipe')\n"
            "assert forage.standing(2, 3) == 6.0",
            seconds=30,
        )


@unittest.skipUnless(LIBRARIES, "the builds for tests are not there: run bindings/python/test")
class OtherBuilds(unittest.TestCase):
    def test_a_library_of_another_build_is_refused(self):
        told = run(
            "import soum\nfrom soum import _manifest, forage\n_manifest.NUMBER += 1\n"
            "for i in range(2):\n"
            "    try:\n        forage.standing(2, 3)\n    except soum.LibraryError as error:\n        print(error)\n"
        )
        self.assertEqual(told.count("of another build"), 2)
        self.assertIn(str(_manifest.NUMBER + 1), told)
        self.assertIn(str(_manifest.NUMBER), told)

    def test_no_library(self):
        code = "import soum\nfrom soum import forage\ntry:\n    forage.standing(2, 3)\nexcept soum.LibraryError as e:\n    print(e)"
        self.assertIn("cannot be loaded", run(code, SOUM_LIBRARY=os.path.join(LIBRARIES, "none")))
        self.assertIn("cannot be loaded", run(code, SOUM_LIBRARY=os.path.abspath(__file__)))

    def test_a_fault_inside_becomes_an_error(self):
        count = sum(f["kind"] == "formula" for f in FUNCTIONS)
        told = run(
            "import soum\nfrom soum import _core, forage\n"
            f"fault = _core.formula({count}, 'test.Fault', (('x', 'x', 'Days'),))\n"
            f"beyond = _core.formula({count + 1}, 'test.Beyond', (('x', 'x', 'Days'),))\n"
            "for function, value in ((fault, 1.0), (fault, [1.0, 2.0]), (beyond, 1.0)):\n"
            "    for i in range(2):\n"
            "        try:\n            function(value)\n        except soum.LibraryError as error:\n            print('told', error)\n"
            "try:\n    soum.call('test.fault', {})\nexcept soum.LibraryError as error:\n    print('told', error)\n"
            "assert forage.standing(2, 3) == 6.0\n",
            SOUM_LIBRARY=os.path.join(LIBRARIES, "fault"),
        )
        self.assertEqual(told.count("told"), 7, told)
        self.assertIn("a fault put in for a test", told)


class Cost(unittest.TestCase):
    """Generous bounds: a slip of ten times fails, a busy computer does not."""

    def test_import(self):
        told = run(
            "import time; t = time.perf_counter(); from soum import forage, grazing, herd, rainfall, units\n"
            "import sys; print((time.perf_counter() - t) * 1e3, 'ctypes' in sys.modules, 'json' in sys.modules)"
        )
        milliseconds, *loaded = told.split()
        self.assertLess(float(milliseconds), 150)
        self.assertEqual(loaded, ["False", "False"])

    def test_scalar(self):
        forage.available(0.3, 0.1, 2.0)
        begin = time.perf_counter()
        for _ in range(20_000):
            forage.available(0.3, 0.1, 2.0)
        self.assertLess((time.perf_counter() - begin) / 20_000, 7e-6)


if __name__ == "__main__":
    unittest.main()
