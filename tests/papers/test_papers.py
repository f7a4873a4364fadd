#!/usr/bin/env python3
"""The example studio's papers, read back by outside tools.

Sizes: ISO 216 (A6 105 x 148 mm, A5 148 x 210 mm, A4 210 x 297 mm), ISO/IEC 7810 (ID-1 85.60 x 53.98 mm),
ANSI letter (8.5 x 11 in). Run with --accept to take the pages as they are as the new reference pictures.
"""

import html
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
PICTURES = ROOT / "examples" / "pictures"
REFERENCE = HERE / "reference"
DATE = "2026-11-20"
POINT = 25.4 / 72

# Every bundled layout: its label in millimetres (None: from the record), and whether it has a back.
LAYOUTS = {
    "dye-card": ((105, 148), False),
    "dye-strip": ((50, 150), False),
    "dye-cards": ((148, 210), False),
    "dye-index": ((148, 210), False),
    "jar-wrap": (None, False),
    "jar-front": (None, False),
    "jar-lid": (None, False),
    "jar-to-give": (None, False),
    "hang-tag": ((53.98, 85.60), True),
    "fold-tag": ((52, 172), False),
    "wrap-band": ((198, 50), False),
    "till-label": ((63.5, 38.1), False),
    "jar-sheet": ((105, 148), False),
    "lot-sheet": ((148, 210), True),
    "pot-tag": ((60, 18), False),
    "stall-tent": ((198, 198), False),
    "shelf-strip": ((150, 34), False),
}
JARS = ("jar-wrap", "jar-front", "jar-lid", "jar-to-give", "jar-sheet")


def run(*command, check=True, env=None):
    result = subprocess.run([str(part) for part in command], capture_output=True, text=True, env=env, check=False)
    if check and result.returncode != 0:
        raise AssertionError(f"{command} ended with {result.returncode}:\n{result.stdout}{result.stderr}")
    return result


def render(layout, target, *options, env=None):
    return run(PROGRAM, "render", layout, STUDIO, "-o", target, "--date", DATE, *options, env=env)


def words_of(pdf):
    """A list of pages, each ((width, height), [(text, (left, top, right, bottom))]) of its trim, in millimetres."""
    text = run("pdftotext", "-bbox-layout", pdf, "-").stdout
    boxes = run("pdfinfo", "-box", "-f", "1", "-l", "9999", pdf).stdout
    trims = [[float(n) for n in numbers.split()] for numbers in re.findall(r"^Page.* TrimBox:(.*)$", boxes, re.M)]
    pages = []
    for match in re.finditer(r'<page width="([\d.]+)" height="([\d.]+)">(.*?)</page>', text, re.S):
        left, bottom, right, top = trims[len(pages)]
        size = ((right - left) * POINT, (top - bottom) * POINT)
        corner = (left, float(match[2]) - top)
        words = [
            (html.unescape(word[5]), tuple((float(word[i]) - corner[(i - 1) % 2]) * POINT for i in range(1, 5)))
            for word in re.finditer(
                r'<word xMin="([\d.-]+)" yMin="([\d.-]+)" xMax="([\d.-]+)" yMax="([\d.-]+)">(.*?)</word>', match[3]
            )
        ]
        pages.append((size, words))
    return pages


def plain_text(pdf):
    return run("pdftotext", "-raw", pdf, "-").stdout


class Papers(unittest.TestCase):
    @classmethod
    def setUpClass(cls):
        cls.folder = tempfile.TemporaryDirectory()
        cls.pdfs = {}
        cls.single = {}
        for layout in LAYOUTS:
            cls.pdfs[layout] = Path(cls.folder.name) / f"{layout}.pdf"
            render(layout, cls.pdfs[layout])
            # One label a page, whose trim box is the label: sizes and edges can be read off directly.
            cls.single[layout] = Path(cls.folder.name) / f"{layout}-single.pdf"
            render(layout, cls.single[layout], "--stock", "page")

    @classmethod
    def tearDownClass(cls):
        cls.folder.cleanup()

    def test_sound_files(self):
        for pdf in [*self.pdfs.values(), *self.single.values()]:
            with self.subTest(pdf.name):
                self.assertIn("No syntax or stream encoding errors found", run("qpdf", "--check", pdf).stdout)
                self.assertEqual("", run("mutool", "info", pdf).stderr)
                ghostscript = run("gs", "-q", "-dNOPAUSE", "-dBATCH", "-sDEVICE=nullpage", pdf)
                self.assertEqual("", ghostscript.stdout + ghostscript.stderr)

    def test_sheets_are_a4_or_letter(self):
        for layout, pdf in self.pdfs.items():
            for (width, height), _ in words_of(pdf):
                self.assertAlmostEqual(210, min(width, height), delta=0.1, msg=layout)
                self.assertAlmostEqual(297, max(width, height), delta=0.1, msg=layout)
        letter = Path(self.folder.name) / "letter.pdf"
        for layout in LAYOUTS:
            render(layout, letter, "--stock", "letter-card")
            for (width, height), _ in words_of(letter):
                self.assertAlmostEqual(8.5 * 25.4, min(width, height), delta=0.1, msg=layout)
                self.assertAlmostEqual(11 * 25.4, max(width, height), delta=0.1, msg=layout)

    def test_label_sizes(self):
        for layout, (size, _) in LAYOUTS.items():
            if size is None:
                continue
            for page, _ in words_of(self.single[layout]):
                self.assertAlmostEqual(size[0], page[0], delta=0.1, msg=layout)
                self.assertAlmostEqual(size[1], page[1], delta=0.1, msg=layout)

    def test_jar_wrap_is_as_long_as_the_jar_is_round(self):
        # pi (D + 0.1) + 5 mm overlap: 42 mm gives 137.3 mm, worked value of common practice.
        pdf = Path(self.folder.name) / "sloe-jar.pdf"
        render("jar-wrap", pdf, "--stock", "page", "--only", self.jar_of_42_mm())
        ((width, _), _), = words_of(pdf)
        self.assertAlmostEqual(137.3, width, delta=0.1)

    def jar_of_42_mm(self):
        text = (STUDIO / "jars.yaml").read_text(encoding="utf-8")
        for record in re.split(r"\n  - ", text)[1:]:
            if re.search(r"diameter: 42 mm", record):
                return re.search(r"id: (\S+?)[,\s]", record)[1]
        raise AssertionError("the example studio has no jar of 42 mm")

    def test_every_text_inside_its_trim(self):
        for layout, pdf in self.single.items():
            pages = words_of(pdf)
            self.assertTrue(pages)
            for number, ((width, height), words) in enumerate(pages, 1):
                self.assertTrue(words or LAYOUTS[layout][1], f"{layout} page {number} has no text")
                for text, (left, top, right, bottom) in words:
                    where = f"{layout} page {number}: {text}"
                    self.assertGreaterEqual(left, 0, where)
                    self.assertGreaterEqual(top, 0, where)
                    self.assertLessEqual(right, width + 0.01, where)
                    self.assertLessEqual(bottom, height + 0.01, where)

    def test_fonts_embedded_and_subset(self):
        for pdf in self.pdfs.values():
            rows = run("pdffonts", pdf).stdout.splitlines()[2:]
            self.assertTrue(rows)
            for row in rows:
                with self.subTest(f"{pdf.name} {row}"):
                    self.assertRegex(row, r"^[A-Z]{6}\+(Inter|Vollkorn)")
                    self.assertRegex(row, r"yes yes yes +\d+ +\d+ *$")  # embedded, subset, with Unicode values

    def test_reading_order(self):
        """What stands first on the paper comes first in the text."""
        order = {
            "hang-tag": [
                "Quillmoor Yarn Works", "Hedge in", "Plain Sock", "100 g · 420 m", "€26.00",
                "75 % wool · 25 % polyamide", "Wash 30 °C, gentle", "Do not bleach", "Lot 26-117", "skein 1 of 12",
                "wool@quillmoor.example",
            ],
            "jar-wrap": [
                "1 part Sloe : 1 part fine table salt", "18 g", "mixed 2 Nov 2026", "dye lot 77120", "SL", "50 %",
                "dye by weight", "Sloe", "Fenlight acid", "NOT FOOD", "Wear a dust mask", "Danger",
                "May cause an allergic skin reaction. May cause allergy or asthma", "Do not breathe",
                "Keep airtight and dry", "supplier’s sheet: H317 H334",
            ],
            "jar-to-give": [
                "Sloe", "50 % dye by weight", "Fenlight Violet powder 412", "Danger", "May cause an allergic skin",
                "Avoid breathing dust. Wear protective gloves.", "NOT FOOD", "Wear a dust mask", "Keep airtight",
                "36 g", "Quillmoor Yarn Works",
            ],
            "dye-card": ["F-308", "Fenlight acid", "Campion", "Plain Sock", "0.25 %", "25 mL", "Even steps on Plain Sock",
                         "cut corner: estimated between swatches", "0.25 %", "0.35 %", "0.5 %", "Does not break", "card 1 of 43"],
        }
        for layout, expected in order.items():
            text = " ".join(plain_text(self.single[layout]).replace("\u00a0", " ").split())
            at = 0
            for words in expected:
                found = text.find(words, at)
                self.assertNotEqual(-1, found, f"{layout}: “{words}” does not follow “{text[max(0, at - 40):at]}”")
                at = found + len(words)

    def test_cautions_on_every_jar_label(self):
        for layout in JARS:
            # In reading order, since some stand round a rim.
            for number, page in enumerate(plain_text(self.single[layout]).split("\f")[:-1], 1):
                text = " ".join(page.split())
                where = f"{layout} page {number}: {text}"
                for caution in ("NOT FOOD", "dust mask", "irtight"):
                    self.assertIn(caution, text, where)
                self.assertRegex(text, r"(Danger|Warning):? (H\d{3}|May|Cause|Harmful)|not on file|lists no|no codes on sheet",
                                 where)

    def test_not_food_is_large_enough(self):
        # At least 14 pt (common practice): Inter's capitals stand 0.727 em tall, its line box as poppler sees it more.
        for layout in JARS:
            for _, words in words_of(self.single[layout]):
                height = max(box[3] - box[1] for text, box in words if text == "FOOD")
                self.assertGreaterEqual(height, 14 * POINT, layout)

    def test_test_line_on_every_sheet(self):
        for layout, pdf in self.pdfs.items():
            for number, (_, words) in enumerate(words_of(pdf), 1):
                self.assertIn("100", [text for text, _ in words], f"{layout} sheet {number}")
                foot = max(box[1] for text, box in words if text == "100")
                caption = [box for _, box in words if abs(box[1] - foot) < 0.5]
                width = max(box[2] for box in caption) - min(box[0] for box in caption)
                self.assertLess(width, 100, f"{layout} sheet {number}: the caption runs past the test line")

    def test_skeins_of_a_lot(self):
        text = plain_text(self.single["hang-tag"])
        self.assertRegex(text, r"skein 1 of \d+")

    def test_private_notes_stay_private(self):
        notes = re.findall(r"(?:private notes|customer): *\"?([^\n#\"]+)", "".join(
            path.read_text(encoding="utf-8") for path in STUDIO.glob("*.yaml")))
        self.assertTrue(notes, "the example studio should hold a private note to keep")
        for pdf in self.single.values():
            text = " ".join(plain_text(pdf).split())
            for note in notes:
                self.assertNotIn(note.strip(" }"), text)

    def test_same_bytes(self):
        first = self.pdfs["dye-cards"].read_bytes()
        surroundings = [
            {"LC_ALL": "C", "TZ": "UTC"},
            {"LC_ALL": "de_DE.UTF-8", "LANG": "tr_TR.UTF-8", "TZ": "Pacific/Kiritimati"},
            {"LC_ALL": "C.UTF-8", "TZ": "America/Los_Angeles", "HOME": "/nonexistent"},
        ]
        for extra in surroundings:
            with self.subTest(extra):
                pdf = Path(self.folder.name) / "again.pdf"
                result = render("dye-cards", pdf, env={"PATH": os.environ["PATH"], **extra})
                self.assertEqual("", result.stderr.replace(self.warnings(result.stderr), ""))
                self.assertEqual(first, pdf.read_bytes())

    @staticmethod
    def warnings(stderr):
        return stderr if "warning: " in stderr else ""

    def test_the_machines_fonts_do_not_matter(self):
        # An empty fontconfig set-up and the machine's own give the same bytes.
        with tempfile.NamedTemporaryFile("w", suffix=".conf") as conf:
            conf.write('<?xml version="1.0"?><!DOCTYPE fontconfig SYSTEM "fonts.dtd"><fontconfig></fontconfig>')
            conf.flush()
            pdf = Path(self.folder.name) / "no-fonts.pdf"
            render("jar-wrap", pdf, env={**os.environ, "FONTCONFIG_FILE": conf.name})
            self.assertEqual(self.pdfs["jar-wrap"].read_bytes(), pdf.read_bytes())

    def test_pictures(self):
        """The first page of each layout against its reference, as poppler draws it at 60 dpi."""
        for layout in LAYOUTS:
            with self.subTest(layout):
                reference = REFERENCE / f"{layout}.png"
                self.assertTrue(reference.exists(), "no reference picture; look at the page, then run with --accept")
                picture = Path(self.folder.name) / f"{layout}.png"
                draw(self.pdfs[layout], picture)
                result = run("compare", "-metric", "AE", "-fuzz", "12%", reference, picture, "null:", check=False)
                different = float(result.stderr.split()[0])
                self.assertLessEqual(different, 60, f"{different} pixels differ from {reference}")

    def test_pictures_of_the_readme(self):
        """The README shows what the program makes now."""
        run(PICTURES / "make.sh", PROGRAM, self.folder.name)
        shown = sorted(PICTURES.glob("*.png"))
        self.assertGreaterEqual(len(shown), 6)
        for picture in shown:
            with self.subTest(picture.name):
                made = Path(self.folder.name) / picture.name
                result = run("compare", "-metric", "AE", "-fuzz", "12%", picture, made, "null:", check=False)
                self.assertLessEqual(float(result.stderr.split()[0]), 60, "run examples/pictures/make.sh")


# Shapes that fill the cells of each bundled stock; on plain card a tag that stands and a strip that lies.
SHAPES = {
    "a4-3x3-54x86": ["{width: 54 mm, height: 86 mm}"],
    "a4-3x7-63x38": ["{width: 63.5 mm, height: 38.1 mm}"],
    "a4-4x6-round-38": ["{round: 38 mm}"],
    "letter-3x10-67x25": ["{width: 2.625 in, height: 1 in}"],
    "a4-2x5-85x54": ["{width: 85 mm, height: 54 mm}"],
    "a4-2x7-99x38-rounded": ["{width: 99.1 mm, height: 38.1 mm, corner: 2 mm}"],
    "a4-3x6-oval-60x40": ["{round: 40 mm}"],
    "letter-2x5-102x51-rounded": ["{width: 4 in, height: 2 in, corner: 0.1 in}"],
    "a4-card-in-a4-pouch": ["{width: 54 mm, height: 86 mm}"],
    "a4-card-in-a6-pouches": ["{width: 54 mm, height: 86 mm}"],
    "a4-card-in-a7-pouches": ["{width: 54 mm, height: 86 mm}"],
    "letter-card-in-letter-pouch": ["{width: 54 mm, height: 86 mm}"],
    "roll-62": [], # printed on one side
    "roll-102x152": [],
    "uneven": ["{width: 70 mm, height: 30 mm}"],
}
# The bundled stocks are alike on either side of their middle; this one is not, and lies.
UNEVEN = """
stock: uneven
paper: A4
sideways: yes
margin: 5 mm
cells: {columns: 3, rows: 4, width: 70 mm, height: 30 mm, left: 8 mm, top: 31 mm, across: 81 mm, down: 34 mm}
"""
ON_CARD = ["{width: 54 mm, height: 86 mm}", "{width: 150 mm, height: 50 mm}", "{width: 50 mm, height: 150 mm}"]
NUMBERED = """
layout: numbered
for: skeins
shape: SHAPE
front: {column: {padding: 6 mm, holds: [{text: "F{skein.number}", style: {font: Inter}, align: centre}]}}
back: {column: {padding: 6 mm, holds: [{text: "B{skein.number}", style: {font: Inter}, align: centre}]}}
"""


class BothSides(unittest.TestCase):
    """Every skein's tag has its own number on both sides; the pages are laid on each other as the paper is."""

    def setUp(self):
        scratch = tempfile.TemporaryDirectory()
        self.addCleanup(scratch.cleanup)
        self.here = Path(scratch.name)

    def pages(self, stock, shape, *options):
        studio = self.here / "studio"
        (studio / "layouts" / "stocks").mkdir(parents=True, exist_ok=True)
        (studio / "layouts" / "stocks" / "uneven.yaml").write_text(UNEVEN, encoding="utf-8")
        (studio / "layouts" / "numbered.yaml").write_text(NUMBERED.replace("SHAPE", shape), encoding="utf-8")
        (studio / "records.yaml").write_text(
            "studio: {name: Quillmoor Yarn Works}\n"
            "bases: [{id: sock, name: Sock, fibre: {wool: 100 %}, skein: {weight: 100 g, length: 420 m}}]\n"
            'lots: [{id: "26-117", colourway: Hedge in October, base: sock, skeins: 32}]\n', encoding="utf-8")
        pdf = self.here / "out.pdf"
        run(PROGRAM, "render", "numbered", studio, "-o", pdf, "--stock", stock, "--date", DATE, *options)
        return words_of(pdf)

    @staticmethod
    def numbers(page, letter):
        """{number: centre of its word}, and the paper."""
        size, words = page
        return size, {
            int(text[1:]): ((box[0] + box[2]) / 2, (box[1] + box[3]) / 2)
            for text, box in words if re.fullmatch(letter + r"\d+", text)
        }

    def check_pair(self, front, back, edge, where):
        (width, height), fronts = self.numbers(front, "F")
        paper, backs = self.numbers(back, "B")
        self.assertEqual((width, height), paper, where)
        self.assertTrue(fronts, where)
        self.assertEqual(set(fronts), set(backs), where)
        # About an upright edge the paper turns like a page, about a lying one like the sheet of a pad.
        upright = (edge == "long") == (width <= height)
        for number, (x, y) in fronts.items():
            seen_x, seen_y = backs[number]
            behind = (width - seen_x, seen_y) if upright else (seen_x, height - seen_y)
            self.assertAlmostEqual(x, behind[0], delta=0.2, msg=f"{where}, tag {number}")
            self.assertAlmostEqual(y, behind[1], delta=0.2, msg=f"{where}, tag {number}")

    def test_backs_lie_behind_their_fronts(self):
        stocks = sorted(path.stem for path in (ROOT / "layouts" / "stocks").glob("*.yaml"))
        for stock in [*stocks, "uneven"]:
            for shape in SHAPES.get(stock, ON_CARD):
                for edge in ("long", "short"):
                    pages = self.pages(stock, shape, "--backs", f"{edge}-edge")
                    if stock.endswith("-pouch"):
                        pages.pop()  # where to lay the cards
                    self.assertEqual(0, len(pages) % 2)
                    for front, back in zip(pages[::2], pages[1::2]):
                        self.check_pair(front, back, edge, f"{stock} {shape} {edge}")

    def test_by_hand_all_fronts_come_first(self):
        for how in ("by-hand", "by-hand-reversed"):
            pages = self.pages("a4-3x3-54x86", "{width: 54 mm, height: 86 mm}", "--backs", how)
            self.assertEqual(8, len(pages))
            backs = pages[4:] if how == "by-hand" else pages[:3:-1]
            for front, back in zip(pages[:4], backs):
                self.check_pair(front, back, "long", how)

    def test_used_cells_stay_empty_on_both_sides(self):
        front, back, *_ = self.pages("a4-3x3-54x86", "{width: 54 mm, height: 86 mm}", "--used", "1,5-9")
        self.check_pair(front, back, "long", "used")
        self.assertEqual({1, 2, 3}, set(self.numbers(front, "F")[1]))
        # Cells 2 to 4: 60 mm and 92 mm apart from a first one at 18 and 11 mm; the words stand in their middle.
        centres = self.numbers(front, "F")[1]
        for number, x in ((1, 18 + 60 + 27), (2, 18 + 120 + 27), (3, 18 + 27)):
            self.assertAlmostEqual(x, centres[number][0], delta=0.2)
        self.assertAlmostEqual(92, centres[3][1] - centres[1][1], delta=0.05)

    def test_piles(self):
        pages = self.pages("a4-3x3-54x86", "{width: 54 mm, height: 86 mm}", "--piles")
        fronts = [self.numbers(page, "F")[1] for page in pages[::2]]
        # 32 tags on 9 + 9 + 9 + 5: at each place consecutive numbers down through the pile.
        piles = {}
        for sheet in fronts:
            for number, (x, y) in sheet.items():
                piles.setdefault((round(y), round(x)), []).append(number)
        self.assertEqual(list(range(1, 33)), [number for place in sorted(piles) for number in piles[place]])
        self.assertEqual([4] * 5 + [3] * 4, [len(piles[place]) for place in sorted(piles)])
        for front, back in zip(pages[::2], pages[1::2]):
            self.check_pair(front, back, "long", "piles")


def draw(pdf, picture):
    run("pdftoppm", "-r", "60", "-f", "1", "-l", "1", "-singlefile", "-png", pdf, picture.with_suffix(""))


def accept():
    REFERENCE.mkdir(exist_ok=True)
    with tempfile.TemporaryDirectory() as folder:
        for layout in LAYOUTS:
            pdf = Path(folder) / "page.pdf"
            render(layout, pdf)
            draw(pdf, REFERENCE / f"{layout}.png")
            print(f"accepted {layout}")


if __name__ == "__main__":
    if "--accept" in sys.argv:
        accept()
    else:
        unittest.main()
