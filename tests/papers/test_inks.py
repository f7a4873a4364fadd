#!/usr/bin/env python3
"""The example studio's papers in mono and with sparing ink: the same words in less ink."""
import tempfile
import unittest
from collections import Counter
from pathlib import Path

from test_papers import LAYOUTS, draw, plain_text, render, run

INKS = {"mono": ["--mono"], "sparing": ["--save-ink"], "mono and sparing": ["--mono", "--save-ink"]}
# Those with coloured patches or dark panels, which sparing ink leaves bare.
SOLID = {"dye-card", "dye-cards", "dye-index", "dye-strip", "jar-front", "jar-wrap", "hang-tag"}


def coverage(pdf):
    """How much of all four inks covers the pages, in per cent of a page, as Ghostscript counts it."""
    pages = run("gs", "-q", "-o", "-", "-sDEVICE=ink_cov", pdf).stdout.splitlines()
    return sum(sum(float(ink) for ink in page.split()[:4]) for page in pages)


def saturation(pdf, picture):
    draw(pdf, picture)
    return float(run("convert", picture, "-colorspace", "HSL", "-channel", "G", "-separate", "-format", "%[fx:maxima]",
                     "info:").stdout)


class Inks(unittest.TestCase):
    @classmethod
    def setUpClass(cls):
        cls.folder = tempfile.TemporaryDirectory()
        cls.pdfs, cls.said = {}, {}
        for layout in LAYOUTS:
            for ink, options in {"plain": [], **INKS}.items():
                pdf = Path(cls.folder.name) / f"{layout} {ink}.pdf"
                cls.said[layout, ink] = render(layout, pdf, *options).stderr
                cls.pdfs[layout, ink] = pdf

    @classmethod
    def tearDownClass(cls):
        cls.folder.cleanup()

    def test_no_ink_brings_a_warning(self):
        for layout in LAYOUTS:
            for ink in INKS:
                with self.subTest(f"{layout} {ink}"):
                    self.assertEqual(self.said[layout, "plain"], self.said[layout, ink])

    def test_no_word_is_lost(self):
        for layout in LAYOUTS:
            words = Counter(plain_text(self.pdfs[layout, "plain"]).split())
            for ink in INKS:
                with self.subTest(f"{layout} {ink}"):
                    self.assertEqual(Counter(), words - Counter(plain_text(self.pdfs[layout, ink]).split()))

    def test_mono_has_no_colour(self):
        picture = Path(self.folder.name) / "page.png"
        for layout in LAYOUTS:
            for ink in ("mono", "mono and sparing"):
                with self.subTest(f"{layout} {ink}"):
                    self.assertEqual(0, saturation(self.pdfs[layout, ink], picture))
        self.assertNotEqual(0, saturation(self.pdfs["dye-cards", "plain"], picture))
        self.assertNotEqual(0, saturation(self.pdfs["dye-cards", "sparing"], picture))

    def test_mono_names_its_pictograms(self):
        self.assertRegex(plain_text(self.pdfs["jar-wrap", "mono"]), r"health\s+hazard")
        self.assertNotRegex(plain_text(self.pdfs["jar-wrap", "plain"]), r"health\s+hazard")

    def test_sparing_ink_spares_ink(self):
        for layout in LAYOUTS:
            with self.subTest(layout):
                plain, sparing = (coverage(self.pdfs[layout, ink]) for ink in ("plain", "sparing"))
                self.assertLessEqual(sparing, plain * (0.95 if layout in SOLID else 1.0001))

    def test_the_index_explains_the_patterns(self):
        for ink in INKS:
            self.assertIn("turquoise", plain_text(self.pdfs["dye-index", ink]))
        self.assertNotIn("turquoise", plain_text(self.pdfs["dye-index", "plain"]))


if __name__ == "__main__":
    unittest.main()
