#!/usr/bin/env python3
"""Papers by their geometry, read back by outside tools: the chart of all stocks, lines and marks to cut along, rolls, and
where cards lie in a laminating pouch. Run with --accept to take the chart as it is as the new reference pictures."""

import os
import re
import sys
import tempfile
import unittest
from pathlib import Path

from test_papers import DATE, NUMBERED, POINT, PROGRAM, REFERENCE, ROOT, run, words_of

STOCKS = sorted(path.stem for path in (ROOT / "layouts" / "stocks").glob("*.yaml"))
RECORDS = """
studio: {name: Quillmoor Yarn Works}
bases: [{id: sock, name: Sock, fibre: {wool: 100 %}, skein: {weight: 100 g, length: 420 m}}]
lots: [{id: "26-117", colourway: Hedge in October, base: sock, skeins: SKEINS}]
"""
FRONT_ONLY = NUMBERED[: NUMBERED.index("back:")]


def strokes(pdf, page=1):
    """Every straight stroke as mupdf draws it, in millimetres: ((x, y), (x, y), width)."""
    trace = run("mutool", "trace", pdf, page).stdout
    found = []
    for head, body in re.findall(r"<stroke_path ([^>]*)>(.*?)</stroke_path>", trace, re.S):
        matrix = [float(value) for value in re.search(r'transform="([^"]*)"', head)[1].split()]
        width = float(re.search(r'linewidth="([^"]*)"', head)[1]) * (abs(matrix[0] * matrix[3]) or abs(matrix[1] * matrix[2])) ** 0.5
        points = [(float(x), float(y)) for x, y in re.findall(r'<(?:moveto|lineto) x="([^"]*)" y="([^"]*)"', body)]
        placed = [((matrix[0] * x + matrix[2] * y + matrix[4]) * POINT, (matrix[1] * x + matrix[3] * y + matrix[5]) * POINT)
                  for x, y in points]
        straight = len(placed) == 2 and "curveto" not in body
        found.append((*(placed if straight else (None, None)), width))
    return found


def chart(target, *folder):
    return run(PROGRAM, "stocks", *folder, "-o", target)


def draw_pages(pdf, folder):
    run("pdftoppm", "-r", "60", "-png", pdf, Path(folder) / "stocks")
    return sorted(Path(folder).glob("stocks-*.png"))


class Folder(unittest.TestCase):
    def setUp(self):
        scratch = tempfile.TemporaryDirectory()
        self.addCleanup(scratch.cleanup)
        self.here = Path(scratch.name)
        self.studio = self.here / "studio"
        (self.studio / "layouts" / "stocks").mkdir(parents=True)

    def own(self, name, text):
        (self.studio / "layouts" / "stocks" / f"{name}.yaml").write_text(f"stock: {name}\n{text}", encoding="utf-8")

    def render(self, stock, shape, layout=FRONT_ONLY, skeins=8, check=True):
        (self.studio / "records.yaml").write_text(RECORDS.replace("SKEINS", str(skeins)), encoding="utf-8")
        (self.studio / "layouts" / "numbered.yaml").write_text(layout.replace("SHAPE", shape), encoding="utf-8")
        pdf = self.here / "out.pdf"
        result = run(PROGRAM, "render", "numbered", self.studio, "-o", pdf, "--stock", stock, "--date", DATE, check=check)
        return pdf, result


class Chart(Folder):
    def test_it_shows_every_stock_with_its_cells_counted(self):
        self.own("mine", "paper: A4\ncells: {columns: 2, rows: 3, width: 80 mm, height: 60 mm, left: 20 mm, top: 30 mm, "
                         "gutter: 10 mm}\n")
        pdf = self.here / "stocks.pdf"
        self.assertIn(f"{len(STOCKS) + 1} stocks on ", chart(pdf, self.studio).stdout)
        run("qpdf", "--check", pdf)
        text = " ".join(run("pdftotext", pdf, "-").stdout.split())
        for stock in STOCKS:
            self.assertIn(stock, text)
        self.assertIn("mine (yours)", text)
        self.assertIn("7 cells, 63.5 × 38.1 mm".replace(" ", ""), text.replace("\u00a0", " ").replace(" ", ""))
        # 30 cells on one stock, 24 on another, 21 on a third: as many numbers from 1 as there are cells.
        words = re.findall(r"\S+", text)
        self.assertEqual(1, sum(word == "30" for word in words))
        self.assertLessEqual(2, sum(word == "24" for word in words))

    def test_no_line_is_a_hairline_and_every_text_is_on_the_page(self):
        pdf = self.here / "stocks.pdf"
        chart(pdf)
        pages = words_of(pdf)
        for number, ((width, height), words) in enumerate(pages, 1):
            for _, (left, top, right, bottom) in words:
                self.assertTrue(10 < left and right < width - 10 and 10 < top and bottom < height - 4)
            lines = strokes(pdf, number)
            self.assertLess(50, len(lines))
            self.assertLessEqual(0.2499, min(line[2] for line in lines))

    def test_cells_lie_where_the_sheet_has_them(self):
        """The drawing of 3 × 10 cells on Letter: numbers a sixth of 2.75 in and of 1 in apart."""
        self.own("alone", "paper: A4\n")
        pdf = self.here / "stocks.pdf"
        chart(pdf)
        for _, words in words_of(pdf):
            thirty = [box for text, box in words if text == "30"]
            if thirty:
                centre = lambda box: ((box[0] + box[2]) / 2, (box[1] + box[3]) / 2)
                x, y = centre(thirty[0])
                near = {text: centre(box) for text, box in words if text in ("29", "27") and abs(centre(box)[0] - x) < 15
                        and abs(centre(box)[1] - y) < 6}
                self.assertAlmostEqual(x - near["29"][0], 2.75 * 25.4 / 6, delta=0.1)
                self.assertAlmostEqual(y - near["27"][1], 25.4 / 6, delta=0.1)
                return
        self.fail("no stock of 30 cells")

    def test_it_speaks_the_studios_language(self):
        (self.studio / "records.yaml").write_text("studio: {name: Moorwolle, language: de}\n", encoding="utf-8")
        pdf = self.here / "stocks.pdf"
        chart(pdf, self.studio)
        self.assertIn("63,5", run("pdftotext", pdf, "-").stdout)

    def test_same_bytes(self):
        for name, locale in (("one", "C"), ("two", "de_DE.UTF-8")):
            run(PROGRAM, "stocks", "-o", self.here / f"{name}.pdf", env={**os.environ, "LC_ALL": locale, "TZ": "Asia/Tokyo"})
        self.assertEqual((self.here / "one.pdf").read_bytes(), (self.here / "two.pdf").read_bytes())

    def test_pictures(self):
        pdf = self.here / "stocks.pdf"
        chart(pdf)
        pages = draw_pages(pdf, self.here)
        self.assertEqual([page.name for page in pages], [page.name for page in sorted(REFERENCE.glob("stocks-*.png"))])
        for page in pages:
            result = run("compare", "-metric", "AE", "-fuzz", "12%", REFERENCE / page.name, page, "null:", check=False)
            self.assertLessEqual(float(result.stderr.split()[0]), 60, f"{page.name} looks otherwise than its reference")


class Cuts(Folder):
    def test_full_lines_are_drawn_beside_every_label(self):
        """Eight tags of 85 × 55 mm, two by four on A4: every edge has a line just outside it."""
        pdf, _ = self.render("a4-card-full-lines", "{width: 85 mm, height: 55 mm}")
        lines = [line for line in strokes(pdf) if line[0]]
        self.assertLessEqual(0.2499, min(line[2] for line in lines))
        (_, _), words = words_of(pdf)[0]
        half = 0.125 * POINT
        for text, box in words:
            if not re.fullmatch(r"F\d+", text):
                continue
            x, y = (box[0] + box[2]) / 2, None
            for edge in (x - 42.5 - half, x + 42.5 + half):
                runs = [line for line in lines if abs(line[0][0] - edge) < 0.02 and abs(line[1][0] - edge) < 0.02]
                self.assertTrue(runs, f"{text} has no line at {edge}")

    def test_single_cuts_leave_the_labels_clear(self):
        pdf, _ = self.render("a4-card-single-cuts", "{width: 60 mm, height: 50 mm}", skeins=9)
        marks = [line for line in strokes(pdf) if line[0] and abs(abs(line[0][0] - line[1][0]) + abs(line[0][1] - line[1][1]) - 5) < 0.01]
        self.assertEqual(2 * (4 + 4), len(marks))
        upright = sorted({round(line[0][0], 1) for line in marks if abs(line[0][0] - line[1][0]) < 0.01})
        self.assertEqual([60.0, 60.0, 60.0], [round(b - a, 1) for a, b in zip(upright, upright[1:])])


class Rolls(Folder):
    def test_every_page_is_as_wide_as_the_roll(self):
        pdf, result = self.render("roll-62", "{width: 90 mm, height: 50 mm}", skeins=2)
        self.assertIn("2 tags on 2 sheets (roll-62)", result.stdout)
        boxes = run("pdfinfo", "-box", "-f", "1", "-l", "2", pdf).stdout
        for width, height in re.findall(r"Page +\d+ size: +([\d.]+) x ([\d.]+)", boxes):
            self.assertAlmostEqual(float(width) * POINT, 62, delta=0.1)
            self.assertAlmostEqual(float(height) * POINT, 94, delta=0.1)  # the label's length and the gap
        trim = [float(value) * POINT for value in re.search(r"Page +1 TrimBox: +(.*)", boxes)[1].split()]
        for value, known in zip(trim, (6, 2, 56, 92)):
            self.assertAlmostEqual(value, known, delta=0.1)

    def test_a_layout_with_a_back_is_refused(self):
        _, result = self.render("roll-62", "{width: 50 mm, height: 50 mm}", NUMBERED, check=False)
        self.assertEqual(1, result.returncode)
        self.assertIn("“numbered” has a front and a back, and the roll “roll-62” is printed on one side", result.stderr)


class Pouches(Folder):
    def test_the_last_page_shows_where_each_card_lies(self):
        """Cards lie in the pouch where they were printed, two films apart; the film is cut 4 mm outside them."""
        pdf, result = self.render("a4-card-in-a4-pouch", "{width: 74 mm, height: 105 mm}", skeins=9)
        self.assertIn("the outlines of the last page", result.stdout)
        pages = words_of(pdf)
        self.assertEqual(4, len(pages))  # 4 + 4 + 1 cards, and where to lay them
        centre = lambda box: ((box[0] + box[2]) / 2, (box[1] + box[3]) / 2)
        printed = {text[1:]: centre(box) for text, box in pages[0][1] if re.fullmatch(r"F\d", text)}
        laid = {text: centre(box) for text, box in pages[-1][1] if text in printed}
        self.assertEqual({"1", "2", "3", "4"}, set(laid))
        for number, (x, y) in laid.items():
            self.assertAlmostEqual(x, printed[number][0], delta=0.2)
        self.assertAlmostEqual(laid["2"][0] - laid["1"][0], 74 + 8, delta=0.3)
        self.assertAlmostEqual(laid["3"][1] - laid["1"][1], 105 + 8, delta=0.3)

    def test_a_card_that_leaves_too_little_film_is_refused(self):
        _, result = self.render("a4-card-in-a7-pouches", "{width: 80 mm, height: 100 mm}", check=False)
        self.assertEqual(1, result.returncode)
        self.assertIn("80 + 2 × 3 = 86 mm; the pouch of “a4-card-in-a7-pouches” is 80 mm wide: 6 mm are missing", result.stderr)


class Measures(Folder):
    def test_a_sheet_that_does_not_add_up_is_shown_with_its_sum(self):
        self.own("mine", "paper: Letter\ncells: {columns: 3, rows: 1, width: 63.5 mm, height: 38.1 mm, left: 7.25 mm, "
                         "gutter: 2.5 mm, right: 7.25 mm, top: 10 mm}\n")
        result = run(PROGRAM, "stocks", self.studio, "-o", self.here / "stocks.pdf", check=False)
        self.assertEqual(1, result.returncode)
        self.assertIn("7.25 + 3 × 63.5 + 2 × 2.5 + 7.25 = 210 mm, the sheet is 215.9 mm wide: 5.9 mm left over", result.stderr)
        self.assertFalse((self.here / "stocks.pdf").exists())


def accept():
    for old in REFERENCE.glob("stocks-*.png"):
        old.unlink()
    with tempfile.TemporaryDirectory() as folder:
        pdf = Path(folder) / "stocks.pdf"
        chart(pdf)
        for page in draw_pages(pdf, folder):
            (REFERENCE / page.name).write_bytes(page.read_bytes())
            print(f"accepted {page.name}")


if __name__ == "__main__":
    if "--accept" in sys.argv:
        accept()
    else:
        unittest.main()
