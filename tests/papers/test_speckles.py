#!/usr/bin/env python3
"""Pictures of speckled yarn, measured on paper as poppler, mupdf and Ghostscript draw it."""

import json
import math
import os
import re
import subprocess
import tempfile
import unittest
from pathlib import Path

ROOT = Path(__file__).resolve().parent.parent.parent
PROGRAM = os.environ.get("DYELEAF", str(ROOT / "build" / "dyeleaf"))
STUDIO = ROOT / "examples" / "studio"
DATE = "2026-11-20"
DPI = 150
DYE_LAYOUTS = ("dye-card", "dye-cards", "dye-strip")

# One square of the pattern, which repeats after 100 mm, on yarn as white as paper.
LAYOUT = """
layout: yarn
for: dyes
shape: {width: 100 mm, height: 100 mm}
front: {column: {holds: [{speckles: dye.speckled, height: fill}]}}
"""
RECORDS = """
studio: {name: Quillmoor Yarn Works}
bases: [{id: sock, name: Sock, fibre: {wool: 100 %}, skein: {weight: 100 g, length: 420 m}, colour: "#ffffff"}]
dyes:
  - {id: DYE, name: Dye, line: Line, speckle: {grade: clean, spread: 4 mm, density: 0.05 per cm2}, BREAKS
     swatches: [{depth: 1 %, base: sock, colour: "#101010"}]}
"""


def run(*command):
    result = subprocess.run([str(part) for part in command], capture_output=True, text=True, check=False)
    if result.returncode != 0:
        raise AssertionError(f"{command} ended with {result.returncode}:\n{result.stdout}{result.stderr}")
    return result


def pixels(pgm):
    """Rows of greys, 0 to 255."""
    data = Path(pgm).read_bytes()
    head = re.match(rb"P5\s(?:#.*\n)?(\d+)\s(\d+)\s(\d+)\s", data)
    width, height = int(head[1]), int(head[2])
    rest = data[head.end():]
    return [rest[row * width:(row + 1) * width] for row in range(height)]


def spots(rows, inked):
    """The areas in mm² of what is inked and hangs together, inside the frame round the picture."""
    margin = 6
    left = {(x, y) for y in range(margin, len(rows) - margin) for x in range(margin, len(rows[0]) - margin)
            if rows[y][x] < inked}
    areas = []
    while left:
        stack, area = [left.pop()], 0
        while stack:
            x, y = stack.pop()
            area += 1
            for place in ((x + 1, y), (x - 1, y), (x, y + 1), (x, y - 1)):
                if place in left:
                    left.remove(place)
                    stack.append(place)
        areas.append(area * (25.4 / DPI) ** 2)
    return sorted(areas, reverse=True)


class Speckles(unittest.TestCase):
    def setUp(self):
        scratch = tempfile.TemporaryDirectory()
        self.addCleanup(scratch.cleanup)
        self.here = Path(scratch.name)

    def drawn(self, dye="sloe", breaks=""):
        """The picture by each renderer."""
        studio = self.here / dye
        (studio / "layouts").mkdir(parents=True, exist_ok=True)
        (studio / "layouts" / "yarn.yaml").write_text(LAYOUT, encoding="utf-8")
        (studio / "records.yaml").write_text(RECORDS.replace("DYE", dye).replace("BREAKS", breaks), encoding="utf-8")
        pdf = self.here / f"{dye}.pdf"
        run(PROGRAM, "render", "yarn", studio, "-o", pdf, "--stock", "page", "--date", DATE)
        stem = self.here / dye
        run("pdftoppm", "-r", DPI, "-gray", "-singlefile", pdf, f"{stem}-poppler")
        run("mutool", "draw", "-r", DPI, "-c", "gray", "-o", f"{stem}-mupdf.pgm", pdf)
        run("gs", "-q", "-dNOPAUSE", "-dBATCH", "-sDEVICE=pgmraw", "-dGraphicsAlphaBits=4", f"-r{DPI}",
            f"-sOutputFile={stem}-ghostscript.pgm", pdf)
        return {name: pixels(f"{stem}-{name}.pgm") for name in ("poppler", "mupdf", "ghostscript")}

    def test_true_size(self):
        # 0.05 to a cm² are five on 100 cm²: two whole ones of 4 mm, the others 0.22 to 0.62 times as wide.
        whole = math.pi / 4 * 4**2
        # Ghostscript inks every dot that a shape touches, here half of 0.17 mm all round.
        for renderer, rows in self.drawn().items():
            with self.subTest(renderer):
                areas = spots(rows, 128)
                self.assertEqual(5, len(areas))
                for area in areas[:2]:
                    self.assertAlmostEqual(whole, area, delta=0.045 * whole)
                for area in areas[2:]:
                    self.assertLess(area, 0.63**2 * whole)
                    self.assertGreater(area, 0.2**2 * whole)

    def test_renderers_agree(self):
        drawn = self.drawn(breaks='breaks into: [{name: rust, colour: "#804020", halo: 5 mm}],')
        ink = {name: sum(255 - grey for row in rows[6:-6] for grey in row[6:-6]) for name, rows in drawn.items()}
        for name, sum_of_ink in ink.items():
            self.assertAlmostEqual(1, sum_of_ink / ink["poppler"], delta=0.03, msg=name)

    def test_halos_reach_as_far_as_recorded(self):
        breaks = 'breaks into: [{name: rust, colour: "#804020", halo: 5 mm}],'
        whole = math.pi / 4 * (4 + 2 * 5) ** 2
        for renderer, rows in self.drawn(breaks=breaks).items():
            with self.subTest(renderer):
                areas = spots(rows, 250)
                for area in areas[:2]:
                    self.assertAlmostEqual(whole, area, delta=0.03 * whole)

    def test_every_dye_fits_with_every_ink(self):
        pdf = self.here / "cards.pdf"
        for layout in DYE_LAYOUTS:
            for stock in ("a4-card", "letter-card"):
                for ink in ([], ["--mono"], ["--save-ink"]):
                    with self.subTest(f"{layout} {stock} {ink}"):
                        result = run(PROGRAM, "render", layout, STUDIO, "-o", pdf, "--date", DATE, "--stock", stock, *ink)
                        self.assertEqual("", result.stderr)

    def test_cards_stay_small(self):
        pdf = self.here / "cards.pdf"
        run(PROGRAM, "render", "dye-card", STUDIO, "-o", pdf, "--date", DATE)
        dyes = len(re.findall(r"^  - id: ", "".join(path.read_text(encoding="utf-8")
                                                    for path in STUDIO.glob("dyes-*.yaml")), re.M))
        self.assertLess(pdf.stat().st_size / dyes, 40_000)

    def test_pictures_have_words(self):
        pdf = self.here / "card.pdf"
        run(PROGRAM, "render", "dye-card", STUDIO, "-o", pdf, "--date", DATE, "--only", "thrift")
        text = json.dumps(json.loads(run("qpdf", "--json", pdf).stdout), ensure_ascii=False).replace("\u00a0", " ")
        self.assertIn("Thrift: Hazy speckles, 5 mm, on Plain Sock; halos of coral 2 mm, lilac grey 5 mm; true size on "
                      "Plain Sock · number assumed", text)

    def test_nobody_has_tried(self):
        pdf = self.here / "card.pdf"
        run(PROGRAM, "render", "dye-card", STUDIO, "-o", pdf, "--date", DATE, "--only", "alder-b")
        words = run("pdftotext", "-raw", pdf, "-").stdout
        self.assertIn("Speckle: not tried", words)
        self.assertNotIn("True size", words)


if __name__ == "__main__":
    unittest.main()
