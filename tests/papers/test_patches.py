#!/usr/bin/env python3
"""Patches of which print cannot tell all, as poppler draws them: twins, near-blacks, colours beyond sRGB, fluorescents.

Contrast: WCAG 2.1, 1.4.3 (4.5 to 1 for text) and 1.4.11 (3 to 1 for what is no text).
"""
import re
import tempfile
import unittest
from pathlib import Path

from test_papers import DATE, POINT, PROGRAM, run, words_of

RECORDS = """
studio: {name: Quillmoor Yarn Works, market: none}
bases:
  - {id: plain-sock, name: Plain Sock, fibre: {wool: 100 %}, skein: {weight: 100 g, length: 420 m}}
dyes:
  - {id: poppy, name: Poppy, line: Fenlight acid, code: F-1, swatches: [{depth: 2 %, base: plain-sock, colour: "#c83c2c"}]}
  - {id: rowan, name: Rowan, line: Fenlight acid, code: F-2, swatches: [{depth: 2 %, base: plain-sock, colour: "#c53d2e"}]}
  - {id: primrose, name: Primrose, line: Fenlight acid, code: F-3, swatches: [{depth: 1 %, base: plain-sock, colour: "#f4e37c"}]}
  - {id: cowslip, name: Cowslip, line: Fenlight acid, code: F-4, swatches: [{depth: 1 %, base: plain-sock, colour: "#f3e27e"}]}
  - {id: gorse, name: Gorse, line: Marsh, code: M-1, swatches: [{depth: 1 %, base: plain-sock, colour: "#d9a21c"}, {depth: 2 %, base: plain-sock, colour: "#d8a11d"}]}
  - {id: damselfly, name: Damselfly, line: Marsh, code: M-2, swatches: [{depth: 4 %, base: plain-sock, colour: "lab(44 -26 -40)"}]}
  - {id: raven, name: Raven, line: Marsh, code: M-3, swatches: [{depth: 4 %, base: plain-sock, colour: "#1b1c20"}]}
  - {id: wisp, name: Wisp, line: Marsh, code: M-4, fluorescent: yes, swatches: [{depth: 1 %, base: plain-sock, colour: "#d4e236"}]}
"""
DPI = 300


def luminance(pixel):
    linear = [c / 255 / 12.92 if c / 255 <= 0.04045 else ((c / 255 + 0.055) / 1.055) ** 2.4 for c in pixel]
    return 0.2126 * linear[0] + 0.7152 * linear[1] + 0.0722 * linear[2]


def contrast(pixels):
    """Between the lightest and the darkest of them."""
    light = [luminance(pixel) for pixel in pixels]
    return (max(light) + 0.05) / (min(light) + 0.05)


class Page:
    """The first page's pixels, in millimetres from the corner of its trim."""

    def __init__(self, pdf):
        boxes = run("pdfinfo", "-box", "-f", "1", "-l", "1", pdf).stdout
        media, trim = ([float(n) for n in re.search(rf"{box}:(.*)", boxes)[1].split()] for box in ("MediaBox", "TrimBox"))
        self.left, self.top = (trim[0] - media[0]) * POINT, (media[3] - trim[3]) * POINT
        picture = pdf.with_suffix("")
        run("pdftoppm", "-r", DPI, "-f", 1, "-l", 1, "-singlefile", pdf, picture)
        data = picture.with_suffix(".ppm").read_bytes()
        header = re.match(rb"P6\s+(\d+)\s+(\d+)\s+255\s", data)
        self.width, self.bytes = int(header[1]), data[header.end() :]

    def at(self, x, y):
        column, row = round((x + self.left) / 25.4 * DPI), round((y + self.top) / 25.4 * DPI)
        start = (row * self.width + column) * 3
        return tuple(self.bytes[start : start + 3])

    def within(self, left, top, right, bottom):
        step = 25.4 / DPI
        return [
            self.at(left + step * i, top + step * j)
            for i in range(int((right - left) / step))
            for j in range(int((bottom - top) / step))
        ]


class Patches(unittest.TestCase):
    def setUp(self):
        scratch = tempfile.TemporaryDirectory()
        self.addCleanup(scratch.cleanup)
        self.folder = Path(scratch.name)
        (self.folder / "records.yaml").write_text(RECORDS, encoding="utf-8")

    def render(self, layout, *options):
        pdf = self.folder / f"{layout}.pdf"
        said = run(PROGRAM, "render", layout, self.folder, "-o", pdf, "--date", DATE, *options).stderr
        # None of these has hazards on file, which is all there is to say of them.
        self.assertNotIn("error", said)
        self.assertNotRegex(said, "hardly|stronger|does not fit|too (tall|wide|small)")
        return pdf

    def one_page(self, layout, *options):
        return self.render(layout, "--stock", "page", *options)

    def codes_in_patches(self, pdf, rights):
        """Codes that stand left of what stands beside the patches."""
        return sorted(
            (text, box) for _, words in words_of(pdf)[:1] for text, box in words
            if re.fullmatch(r"[FM]-\d", text) and box[2] < rights
        )

    def test_twins_carry_their_codes(self):
        for ink in ([], ["--mono"], ["--save-ink"]):
            with self.subTest(ink):
                pdf = self.one_page("dye-index", *ink)
                patches = 7 + 13  # where their column ends
                found = self.codes_in_patches(pdf, patches)
                second = [
                    (text, box) for _, words in words_of(pdf) for text, box in words
                    if re.fullmatch(r"[FM]-\d", text) and 74 < box[0] and box[2] < 74 + 2 + patches - 7
                ]
                self.assertEqual(["F-1", "F-2", "F-3", "F-4"], sorted(text for text, _ in found + second))
                page = Page(pdf)
                for _, box in found + second:
                    self.assertGreaterEqual(contrast(page.within(*box)), 4.5)
                    self.assertGreater(box[3] - box[1], 6 * POINT)

    def test_a_dyes_own_colours_need_none(self):
        text = run("pdftotext", "-raw", self.one_page("dye-card", "--only", "gorse"), "-").stdout
        self.assertEqual(1, text.count("M-1"))

    def test_cards_of_several_dyes(self):
        text = run("pdftotext", "-l", "1", "-raw", self.one_page("dye-cards"), "-").stdout
        for code in ("F-1", "F-2", "F-3", "F-4"):
            self.assertEqual(2, text.count(code), text)

    def patch(self, pdf):
        """The rectangle of the patch of a dye-card with one: between its base's name and its depth."""
        words = words_of(pdf)[0][1]
        base = next(box for text, box in words if text == "Plain")
        depth = next(box for text, box in words if text == "%")
        return 7, base[3] + 0.9, 98, depth[1] - 0.9

    def test_beyond_print_is_marked_whatever_the_ink(self):
        for ink in ([], ["--mono"], ["--save-ink"], ["--mono", "--save-ink"]):
            with self.subTest(ink):
                pdf = self.one_page("dye-card", "--only", "damselfly", *ink)
                left, top, right, bottom = self.patch(pdf)
                corner = Page(pdf).within(right - 2.4, top + 1.2, right - 1.2, top + 2.4)
                self.assertGreaterEqual(contrast(corner), 4.5)
                self.assertIn("+: stronger than print can show", run("pdftotext", "-raw", pdf, "-").stdout)
        shown = self.one_page("dye-card", "--only", "poppy")
        self.assertNotIn("stronger", run("pdftotext", "-raw", shown, "-").stdout)

    def test_a_black_patch_is_no_black_bar(self):
        pdf = self.one_page("dye-card", "--only", "raven")
        left, top, right, bottom = self.patch(pdf)
        page, middle = Page(pdf), (top + bottom) / 2
        for x in (left + 0.2, right - 1.2):
            self.assertGreaterEqual(contrast(page.within(x, middle, x + 1, middle + 0.2)), 3)
        self.assertLess(contrast(page.within(left + 5, middle, right - 5, middle + 0.2)), 1.1)

    def window(self, pdf):
        """How high the frame for yarn is: between the two lowest grey lines right across the card."""
        page = Page(pdf)
        step = 25.4 / DPI
        rows = [
            y * step for y in range(int(70 / step), int(142 / step))
            if all(max(page.at(x, y * step)) < 235 and min(page.at(x, y * step)) > 90 for x in (20, 30, 36, 69, 75, 85))
        ]
        lines = [y for i, y in enumerate(rows) if i == 0 or y - rows[i - 1] > 2 * step]
        return lines[-1] - lines[-2]

    def test_what_only_yarn_shows_has_more_room_for_yarn(self):
        usual = self.window(self.one_page("dye-card", "--only", "gorse"))
        self.assertAlmostEqual(12, usual, delta=0.4)
        for dye in ("damselfly", "wisp"):
            pdf = self.one_page("dye-card", "--only", dye)
            self.assertAlmostEqual(22, self.window(pdf), delta=0.4)
            self.assertIn("Only the yarn shows this colour", run("pdftotext", "-raw", pdf, "-").stdout)

    def test_all_of_it_fits_on_a4_and_letter(self):
        for layout in ("dye-card", "dye-cards", "dye-strip", "dye-index"):
            for stock in ("a4-card", "letter-card"):
                self.render(layout, "--stock", stock)


if __name__ == "__main__":
    unittest.main()
