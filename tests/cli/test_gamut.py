#!/usr/bin/env python3
"""What a printer makes of the recorded colours, beside transicc of Little CMS."""

import os
import re
import subprocess
import tempfile
import unittest
from pathlib import Path

ROOT = Path(__file__).resolve().parents[2]
PROGRAM = os.environ.get("DYELEAF", str(ROOT / "build" / "dyeleaf"))
PROFILES = Path("/usr/share/color/icc/ghostscript")  # of Ghostscript
PRESS = PROFILES / "default_cmyk.icc"
ALL_WELL, PROBLEMS, WRONG_USAGE = 0, 1, 2

COLOURS = ["31 12 -24", "50 60 40", "95 0 0", "60 -30 20", "20 0 0", "75 5 60", "32 40 -70"]
RECORDS = """
studio: {name: Quillmoor, market: none}
bases: [{id: plain, name: Plain, fibre: {wool: 100 %}, skein: {weight: 100 g, length: 400 m}}]
dyes:
  - id: sloe
    name: Sloe
    line: Fenlight
    breaks into: [{name: rust, colour: "lab(45 30 40)"}]
    swatches:
""" + "".join(
    f"      - {{depth: {number + 1} %, base: plain, colour: lab({colour})}}\n" for number, colour in enumerate(COLOURS)
)
LAYOUT = """
layout: patch
for: dyes
shape: {width: 60 mm, height: 30 mm}
stock: page
styles: {body: {font: Inter, size: 9 pt}}
front:
  column:
    holds:
      - {swatch: dye.swatch.deepest, width: 20 mm, height: 20 mm}
"""


def transicc(colour, *words):
    said = subprocess.run(["transicc", "-n", "-c0", *map(str, words)], input="\n".join(colour.split()) + "\n",
                          capture_output=True, text=True, check=False).stdout
    return said.strip().splitlines()[-1]


def printed(colour, back="-t1"):
    """What comes of a colour that is sent by relative colorimetric with black point compensation."""
    inks = transicc(colour, "-t1", "-b", "-i", "*Lab", "-o", PRESS)
    return [float(number) for number in transicc(inks, back, "-i", PRESS, "-o", "*Lab").split()]


class Gamut(unittest.TestCase):
    def setUp(self):
        scratch = tempfile.TemporaryDirectory()
        self.addCleanup(scratch.cleanup)
        self.here = Path(scratch.name)
        (self.here / "studio" / "layouts").mkdir(parents=True)
        (self.here / "studio" / "dyes.yaml").write_text(RECORDS)
        (self.here / "studio" / "layouts" / "patch.yaml").write_text(LAYOUT)

    def run_it(self, status, *words):
        result = subprocess.run([PROGRAM, *map(str, words)], cwd=self.here, capture_output=True, text=True, check=False)
        self.assertEqual(status, result.returncode, result.stderr)
        return result

    def test_every_colour_comes_out_as_transicc_says(self):
        said = self.run_it(ALL_WELL, "gamut", "studio", "--profile", PRESS).stdout
        for number, colour in enumerate(COLOURS):
            row = re.search(rf"(\S+ \S+ \S+)  +(\S+ \S+ \S+)  +(\S+ \S+ \S+)  +Sloe at {number + 1} % on Plain", said)
            self.assertIsNotNone(row, said)
            # A blue beyond sRGB is sent as the nearest that pages can hold.
            if colour == "32 40 -70":
                continue
            self.assertEqual(colour, row[1])
            for found, wanted in zip(row[2].split() + row[3].split(), printed(colour) + printed(colour, "-t3")):
                self.assertAlmostEqual(float(found), wanted, delta=0.56)
        self.assertIn("rust in Sloe", said)
        differences = [float(one) for one in re.findall(r"^ +(\d+\.\d)  ", said, re.M)]
        self.assertEqual(sorted(differences, reverse=True), differences)
        self.assertEqual(len(COLOURS) + 1, len(differences))
        self.assertRegex(said, r"Sloe at 7 % on Plain .beyond its inks")
        self.assertNotRegex(said, r"Sloe at 6 % on Plain .*beyond its inks")

    def test_a_proof_shows_the_colours_of_the_printer(self):
        said = self.run_it(ALL_WELL, "render", "patch", "studio", "-o", "patch.svg", "--as-printed-by", PRESS).stdout
        self.assertIn("not for printing", said)
        svg = (self.here / "patch.svg").read_text()
        fills = {tuple(float(part) for part in parts) for parts in re.findall(r'rgb\(([\d.]+)%, *([\d.]+)%, *([\d.]+)%\)', svg)}
        deepest = transicc("32 40 -70", "-t1", "-i", "*Lab", "-o", "*sRGB").split()
        sent = transicc(" ".join(str(min(255, max(0, float(part)))) for part in deepest), "-t1", "-i", "*sRGB", "-o", "*Lab")
        shown = transicc(" ".join(map(str, printed(sent))), "-t1", "-i", "*Lab", "-o", "*sRGB").split()
        wanted = [float(part) / 2.55 for part in shown]
        self.assertTrue(any(all(abs(a - b) < 1 for a, b in zip(fill, wanted)) for fill in fills), (fills, wanted))

    def test_a_sheet_that_is_a_proof_says_so(self):
        self.run_it(ALL_WELL, "render", "patch", "studio", "-o", "patch.pdf", "--stock", "a4-card", "--as-printed-by", PRESS)
        text = subprocess.run(["pdftotext", "patch.pdf", "-"], cwd=self.here, capture_output=True, text=True, check=True).stdout
        self.assertIn("Colour proof for the screen, not for printing", text)
        self.assertNotIn("Print at actual size", text)

    def test_what_is_no_printers_profile_is_refused(self):
        (self.here / "words.icc").write_text("no profile")
        whole = PRESS.read_bytes()
        (self.here / "short.icc").write_bytes(whole[: len(whole) // 2])
        (self.here / "hollow.icc").write_bytes(whole[:132] + bytes(len(whole) - 132))
        with open(self.here / "huge.icc", "wb") as huge:
            huge.truncate(200 << 20)
        for file, complaint in (
            ("none.icc", "cannot be read"),
            ("studio", "cannot be read"),
            ("words.icc", "is no whole ICC profile"),
            ("short.icc", "is no whole ICC profile"),
            ("hollow.icc", "does not say which inks"),
            ("huge.icc", "is far too large for a profile"),
            (PROFILES / "srgb.icc", "is the profile of a screen, a camera or a colour space, and of no printer"),
        ):
            for command in (("gamut", "studio", "--profile", file),
                            ("render", "patch", "studio", "-o", "out.pdf", "--as-printed-by", file)):
                said = self.run_it(PROBLEMS, *command)
                self.assertIn(complaint, said.stderr)
                self.assertIn("help: ", said.stderr)
                self.assertEqual("", said.stdout)
                self.assertFalse((self.here / "out.pdf").exists())

    def test_the_command_says_what_it_needs(self):
        self.assertIn("--profile my-printer.icc", self.run_it(WRONG_USAGE, "gamut", "studio").stderr)
        said = self.run_it(WRONG_USAGE, "render", "patch", "studio", "-o", "out.pdf", "--as-printed-by", PRESS, "--remember")
        self.assertIn("a proof is not printed", said.stderr)


if __name__ == "__main__":
    unittest.main()
