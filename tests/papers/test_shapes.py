#!/usr/bin/env python3
"""Labels that are not rectangles, read back by outside tools: sectors round tapering jars, text on a circle, signs that
are folded.

The sector is checked against the development of a cone, s = sqrt(h² + (R - r)²), rho = s R / (R - r),
theta = 2 pi (R - r) / s, worked out here from the example's record; glyph places are those that mupdf traces.
"""

import math
import os
import re
import subprocess
import sys
import tempfile
import unittest
from pathlib import Path

HERE = Path(__file__).resolve().parent
ROOT = HERE.parent.parent
PROGRAM = os.environ.get("DYELEAF", str(ROOT / "build" / "dyeleaf"))
STUDIO = ROOT / "examples" / "studio"
DATE = "2026-11-20"
POINT = 25.4 / 72
JAR = "tide-cup"


def run(*command, check=True):
    result = subprocess.run([str(part) for part in command], capture_output=True, text=True, errors="replace",
                            check=False)
    if check and result.returncode != 0:
        raise AssertionError(f"{command} ended with {result.returncode}:\n{result.stdout}{result.stderr}")
    return result


def render(layout, target, *options, studio=STUDIO):
    return run(PROGRAM, "render", layout, studio, "-o", target, "--date", DATE, *options)


def recorded():
    """Diameters of the example's jar at the label's edges and the label's height, in millimetres."""
    text = (STUDIO / "jars.yaml").read_text(encoding="utf-8")
    record = text[text.index(f"id: {JAR}") :]
    top, bottom = (float(n) for n in re.search(r"strip: \{top: ([\d.]+) mm, bottom: ([\d.]+) mm\}", record).groups())
    height = float(re.search(r"height: ([\d.]+) mm", record)[1])
    return top / math.pi, bottom / math.pi, height - 4  # of the paper's middle: a strip includes its thickness


def cone():
    """Radius of the middle and the slope, by the development of a cone."""
    top, bottom, height = recorded()
    taper = (top - bottom) / 2
    slope = math.hypot(height, taper)
    outer = slope * top / 2 / taper
    return outer - slope / 2, slope


def glyphs(pdf):
    """Every glyph that mupdf traces: its character, where it stands in millimetres, and how it is turned (radians)."""
    found = []
    for span in re.finditer(r"<fill_text[^>]*transform=\"([^\"]*)\"(.*?)</fill_text>", run("mutool", "trace", pdf).stdout,
                            re.S):
        a, b, c, d, e, f = (float(n) for n in span[1].split())
        for inner in re.finditer(r'<span[^>]*trm="([^"]*)"(.*?)</span>', span[2], re.S):
            trm = [float(n) for n in inner[1].split()]
            turn = math.atan2(trm[0] * b + trm[1] * d, trm[0] * a + trm[1] * c)
            for glyph in re.finditer(r'<g unicode="(.*?)" glyph="[^"]*" x="([\d.e-]+)" y="([\d.e-]+)"', inner[2]):
                x, y = float(glyph[2]), float(glyph[3])
                found.append((glyph[1], (a * x + c * y + e) * POINT, (b * x + d * y + f) * POINT, turn))
    return found


class Shapes(unittest.TestCase):
    @classmethod
    def setUpClass(cls):
        cls.folder = tempfile.TemporaryDirectory()
        cls.pdf = Path(cls.folder.name) / "wrap.pdf"
        render("jar-wrap", cls.pdf, "--only", JAR, "--stock", "page")

    @classmethod
    def tearDownClass(cls):
        cls.folder.cleanup()

    def file(self, name):
        return Path(self.folder.name) / name

    def page_size(self, pdf):
        width, height = re.search(r"Page size: +([\d.]+) x ([\d.]+)", run("pdfinfo", pdf).stdout).groups()
        return float(width) * POINT, float(height) * POINT

    def test_a_tapered_wrap_is_as_large_as_its_sector(self):
        radius, slope = cone()
        top, bottom, _ = recorded()
        half = (math.pi * (top + bottom) / 2 + 5) / radius / 2
        outer, inner = radius + slope / 2, radius - slope / 2
        width, height = self.page_size(self.pdf)
        self.assertAlmostEqual(2 * outer * math.sin(half), width, delta=0.15)
        self.assertAlmostEqual(outer - inner * math.cos(half), height, delta=0.15)

    def test_letters_stand_upright_on_arcs_about_one_centre(self):
        radius, slope = cone()
        width, _ = self.page_size(self.pdf)
        centre = (width / 2, radius + slope / 2)
        letters = glyphs(self.pdf)
        self.assertGreater(len(letters), 300)
        for character, x, y, turn in letters:
            # A letter is turned about its own middle: by its left end it is off by less than half its width.
            angle = math.atan2(x - centre[0], centre[1] - y)
            self.assertAlmostEqual(angle, turn, delta=5 / radius, msg=character)
            self.assertLessEqual(radius - slope / 2, math.hypot(x - centre[0], y - centre[1]))
            self.assertGreaterEqual(radius + slope / 2, math.hypot(x - centre[0], y - centre[1]))
        # The letters of one line are at one distance from the centre.
        line = "".join(g[0] for g in letters).index("Dye powder: keep from children")
        radii = [math.hypot(x - centre[0], y - centre[1]) for _, x, y, _ in letters[line : line + 30]]
        self.assertLess(max(radii) - min(radii), 0.02)

    def test_the_seam_lies_opposite_the_front(self):
        pdf = self.file("sloe.pdf")
        render("jar-wrap", pdf, "--only", "sloe-shaker", "--stock", "page")
        text = run("pdftotext", "-bbox", pdf, "-").stdout
        left = {word: float(x) * POINT for x, word in re.findall(r'xMin="([\d.]+)"[^>]*>(SL|Danger)<', text)}
        front = (left["SL"] + left["Danger"] - 3) / 2  # panels stand 3 mm apart
        self.assertAlmostEqual((self.page_size(pdf)[0] - 5) / 2, front, delta=1)  # less what is stuck over

    def test_words_on_an_arc_are_found(self):
        raw = " ".join(run("pdftotext", "-raw", self.pdf, "-").stdout.replace("\u00a0", " ").split())
        at = 0
        for words in ("TI 25 %", "dye by weight", "Slack Water", "NOT FOOD", "Wear a dust mask", "Danger",
                      "May cause an allergic skin reaction.", "Keep airtight and dry."):
            found = raw.find(words, at)
            self.assertNotEqual(-1, found, f"“{words}” does not follow in: {raw}")
            at = found
        words = re.findall(r"<word [^>]*>(.*?)</word>", run("pdftotext", "-bbox", self.pdf, "-").stdout)
        for word in ("FOOD", "Slack", "powder:", "mask", "H334"):
            self.assertIn(word, words)

    def test_the_tagged_text_of_a_bent_label_is_whole(self):
        """Each paragraph of the structure tree owns every word of its text."""
        objects = run("qpdf", "--qdf", "--object-streams=disable", self.pdf, "-").stdout
        spelled = objects.count("/ActualText")
        self.assertGreater(spelled, 60)
        self.assertIn("No syntax or stream encoding errors found", run("qpdf", "--check", self.pdf).stdout)
        structure = run("pdfinfo", "-struct-text", self.pdf).stdout
        for words in ("NOT FOOD", "Slack Water", "Danger"):
            self.assertIn(words, " ".join(structure.replace('"', "").split()))

    def test_copies_are_as_readable_as_the_first(self):
        pdf = self.file("copies.pdf")
        render("jar-front", pdf, "--only", JAR, "--copies", "3")
        raw = " ".join(run("pdftotext", "-raw", pdf, "-").stdout.split())
        self.assertEqual(3, raw.count("NOT FOOD"))
        self.assertEqual(3, raw.count("Slack Water"))

    def test_a_lid_says_its_cautions_round_the_rim(self):
        pdf = self.file("lid.pdf")
        render("jar-lid", pdf, "--only", "sloe-shaker", "--stock", "page")
        raw = " ".join(run("pdftotext", "-raw", pdf, "-").stdout.split())
        for words in ("NOT FOOD", "Wear a dust mask", "Keep airtight", "SL"):
            self.assertIn(words, raw)
        radius = self.page_size(pdf)[0] / 2
        turned = [(c, x, y, t) for c, x, y, t in glyphs(pdf) if abs(t) > 1e-4]
        rims = {"top": [], "bottom": []}
        for character, x, y, turn in turned:
            rims["top" if y < radius else "bottom"].append((character, math.hypot(x - radius, y - radius)))
            self.assertLess(abs(turn), math.pi / 2 + 0.2, "nothing stands on its head")
        self.assertEqual("NOTFOOD", "".join(c for c, _ in rims["top"]).replace(" ", ""))
        for part in rims.values():
            distances = [d for _, d in part]
            self.assertGreater(min(distances), radius / 2)
            self.assertLess(max(distances), radius - 1)

    def test_every_jar_label_fits_in_every_language(self):
        text = (STUDIO / "studio.yaml").read_text(encoding="utf-8")
        for language in ("de", "fr"):
            studio = self.file(language)
            run("cp", "-r", STUDIO, studio)
            (studio / "studio.yaml").write_text(re.sub(r"\n  language: en", f"\n  language: {language}", text))
            result = render("jar-lid", self.file("lids.pdf"), studio=studio)
            self.assertNotIn("error", result.stderr)

    def test_a_sign_is_read_from_both_sides(self):
        pdf = self.file("tent.pdf")
        render("stall-tent", pdf, "--only", "plain-sock", "--stock", "page")
        letters = [g for g in glyphs(pdf) if g[0] in "PlainSock"]
        upright = [(c, x, y) for c, x, y, t in letters if abs(t) < 0.01]
        turned = [(c, x, y) for c, x, y, t in letters if abs(abs(t) - math.pi) < 0.01]
        self.assertEqual(len(upright), len(turned))
        self.assertGreaterEqual(len(upright), 9)
        for (c, x, y), (other, x2, y2) in zip(sorted(upright), sorted(turned, key=lambda g: (g[0], -g[1], -g[2]))):
            self.assertEqual(c, other)
            self.assertAlmostEqual(198, x + x2, delta=0.05)  # turned about the middle of the fold
            self.assertAlmostEqual(198, y + y2, delta=0.05)
            self.assertGreater(y, 99)

    def test_a_label_too_long_for_the_paper_is_an_error_with_the_largest_that_fits(self):
        studio = self.file("large")
        run("cp", "-r", STUDIO, studio)
        jars = studio / "jars.yaml"
        text = jars.read_text(encoding="utf-8")
        text = re.sub(r"strip: \{top: [\d.]+ mm, bottom: [\d.]+ mm\}", "diameter: {top: 110 mm, bottom: 100 mm}", text)
        jars.write_text(text, encoding="utf-8")
        pdf = self.file("large.pdf")
        result = run(PROGRAM, "render", "jar-wrap", studio, "-o", pdf, "--date", DATE, "--only", JAR, check=False)
        self.assertEqual(1, result.returncode)
        self.assertRegex(result.stderr, r"the label is 3\d\d\.?\d* × \d+\.?\d* mm round its arc; “a4-card” takes at most")
        self.assertFalse(pdf.exists())


if __name__ == "__main__":
    unittest.main(argv=sys.argv)
