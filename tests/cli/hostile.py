"""A studio in a folder of its own, and what the program needs to be done with it."""

import os
import subprocess
import sys
import tempfile
import unittest
from pathlib import Path

ROOT = Path(__file__).resolve().parents[2]
PROGRAM = os.environ.get("DYELEAF", str(ROOT / "build" / "dyeleaf"))
DAY = ("--date", "2026-11-20")
# Seconds of processor time and MiB of memory, many times what is needed; sanitizers ask for more of both.
SANITIZED = "DYELEAF_SANITIZED" in os.environ
MOST_SECONDS, MOST_MIB = (6, 1200) if SANITIZED else (1, 150)

STUDIO = "studio: {name: Quillmoor Yarn Works, market: none}\n"
DYE = "dyes:\n  - {id: sloe, line: Fenlight acid, name: %s}\n"
STRIP = ("render", "dye-strip", "studio", "-o", "strip.pdf")
DATED = ("check", "render")
READERS = {
    "records.yaml": (("check", "studio"), ("list", "studio")),
    "layouts/mine.yaml": (("check", "studio"), ("layouts", "studio"), ("render", "mine", *STRIP[2:])),
    "layouts/stocks/mine.yaml": (("check", "studio"), ("stocks", "studio"), (*STRIP, "--stock", "mine")),
    "layouts/styles/house.yaml": (STRIP,),
    "layouts/languages/en.yaml": (("check", "studio"), ("list", "studio"), STRIP),
}
# Measures what the program needs, and hands on what it says and how it ended.
MEASURE = """
import resource, subprocess, sys
done = subprocess.run(sys.argv[1:], capture_output=True)
used = resource.getrusage(resource.RUSAGE_CHILDREN)
sys.stdout.buffer.write(done.stdout + done.stderr)
print("\\nUSED", done.returncode, used.ru_utime + used.ru_stime, used.ru_maxrss // 1024)
"""


class Hostile(unittest.TestCase):
    def setUp(self):
        scratch = tempfile.TemporaryDirectory()
        self.addCleanup(scratch.cleanup)
        self.here = Path(scratch.name)
        self.studio = self.here / "studio"
        self.studio.mkdir()
        (self.studio / "studio.yaml").write_text(STUDIO)

    def put(self, name, content):
        file = self.studio / name
        file.parent.mkdir(parents=True, exist_ok=True)
        file.write_bytes(content if isinstance(content, bytes) else content.encode())

    def run_it(self, *words, status, most_mib=MOST_MIB):
        done = subprocess.run(
            [sys.executable, "-c", MEASURE, PROGRAM, *map(str, words)],
            cwd=self.here,
            capture_output=True,
            check=True,
            timeout=60,
        )
        said, _, used = done.stdout.decode("utf-8").rpartition("\nUSED ")
        code, seconds, mib = used.split()
        self.assertIn(int(code), status if isinstance(status, tuple) else (status,), said)
        self.assertLess(float(seconds), MOST_SECONDS)
        self.assertLess(int(mib), most_mib)
        self.assertNotIn("Sanitizer", said)
        return said

    def everywhere(self, words, content):
        """Says so of every kind of file that is read, whichever command reads it."""
        for name, commands in READERS.items():
            self.put(name, content)
            for command in commands:
                with self.subTest(file=name, command=command[0]):
                    said = self.run_it(command[0], *command[1:], *DAY[: 2 * (command[0] in DATED)], status=1)
                    self.assertIn(name, said)
                    self.assertIn(words, said)
            (self.studio / name).unlink()

    def refused(self, words, name, content):
        self.put(name, content)
        said = self.run_it("check", "studio", *DAY, status=1)
        self.assertIn(words, said)
        return said
