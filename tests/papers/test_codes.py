#!/usr/bin/env python3
"""Codes to scan, read back by zbar: every tag of a run of 500, at two resolutions and in four rotations; their quiet zones
and their dots.

Quiet zones: ISO/IEC 18004 (QR code, 4 modules all round), GS1 General Specifications (EAN-13 11 and 7, UPC-A 9 and 9),
ISO/IEC 15417 (Code 128, 10 at either end).
"""

import os
import re
import subprocess
import tempfile
import unittest
from pathlib import Path

HERE = Path(__file__).resolve().parent
ROOT = HERE.parent.parent
PROGRAM = os.environ.get("DYELEAF", str(ROOT / "build" / "dyeleaf"))
DATE = "2026-11-20"
LINK = "https://quillmoor.example/lot/"
LOTS, SKEINS = 25, 20

# On every tag a QR code and a Code 128 of its own, and the numbers of its lot.
TAG = """
layout: coded
for: skeins
shape: {width: 80 mm, height: 28 mm}
stock: a4-card
styles: {body: {font: Inter, size: 7 pt}}
front:
  row:
    padding: 1 mm
    align: start
    holds:
      - column:
          width: 56 mm
          gap: 1 mm
          holds:
            - {code: "{lot.ean}", as: ean-13, width: 46 mm, height: 13 mm, with: lot.ean}
            - {code: "{lot.upc}", as: upc-a, width: 46 mm, height: 13 mm, with: lot.upc}
            - {code: "{lot.id}:{skein.number}", as: code-128, width: fill, height: 11.5 mm}
      - {code: "{lot.link}?skein={skein.number}", as: qr, width: fill, height: 21 mm}
"""


def run(*command, check=True, **options):
    result = subprocess.run([str(part) for part in command], capture_output=True, check=False, **options)
    if check and result.returncode != 0:
        raise AssertionError(f"{command} ended with {result.returncode}:\n{result.stderr.decode()}")
    return result.stdout


def with_check_digit(digits):
    """GS1 General Specifications, 7.9."""
    total = sum(int(digit) * (3 if i % 2 == 0 else 1) for i, digit in enumerate(reversed(digits)))
    return digits + str(-total % 10)


def ean_of(lot):
    return with_check_digit(f"20000{lot:07}")  # 20 to 29: numbers that mean something inside one shop only


def upc_of(lot):
    return with_check_digit(f"4{lot * 7919:010}")


def render(studio, layout, target, *options):
    run(PROGRAM, "render", layout, studio, "-o", target, "--date", DATE, *options)


def make_studio(folder, resolution=None, lots=LOTS, skeins=SKEINS, tag=TAG):
    (folder / "layouts").mkdir(parents=True)
    (folder / "layouts" / "coded.yaml").write_text(tag, encoding="utf-8")
    lines = [f"studio: {{name: Quillmoor Yarn Works, link: \"{LINK}\"",
             f", resolution: {resolution} dpi" if resolution else "", "}\n",
             "bases: [{id: sock, name: Sock, fibre: {wool: 100 %}, skein: {weight: 100 g, length: 420 m}}]\n", "lots:\n"]
    for lot in range(lots):
        number = f'ean: "{ean_of(lot)}"' if lot % 2 == 0 else f'upc: "{upc_of(lot)}"'
        lines.append(f'  - {{id: "26-{lot + 100}", colourway: Colour {lot}, base: sock, skeins: {skeins}, {number}}}\n')
    (folder / "records.yaml").write_text("".join(lines), encoding="utf-8")
    return folder


def expected_codes():
    """Of each tag in turn."""
    return [
        {f"QR-Code:{LINK}26-{lot + 100}?skein={skein}", f"CODE-128:26-{lot + 100}:{skein}",
         f"EAN-13:{ean_of(lot)}" if lot % 2 == 0 else f"UPC-A:{upc_of(lot)}"}
        for lot in range(LOTS) for skein in range(1, SKEINS + 1)
    ]


def scan(*pictures):
    """What zbar reads on each of the pictures."""
    text = run("zbarimg", "-q", "--xml", "-Supca.enable", *pictures, check=False).decode()  # it fails where no code is
    found = {Path(source[1]): [f"{symbol[1]}:{symbol[2]}" for symbol in re.finditer(
        r"<symbol type='([^']+)'.*?<data><!\[CDATA\[(.*?)\]\]></data>", source[2], re.S)]
        for source in re.finditer(r"<source href='([^']*)'>(.*?)</source>", text, re.S)}
    return [found.get(picture, []) for picture in pictures]


def pages_of(pdf, folder, dpi, *options):
    folder.mkdir()
    run("pdftoppm", "-r", dpi, *options, pdf, folder / "page")
    return sorted(folder.iterdir())


class Picture:
    """Grey values of a picture, read by ImageMagick."""

    def __init__(self, path):
        data = run("convert", path, "-colorspace", "Gray", "-depth", "8", "pgm:-")
        header = re.match(rb"P5\s+(\d+)\s+(\d+)\s+(\d+)\s", data)
        self.width, self.height = int(header[1]), int(header[2])
        self.data = data[header.end():]

    def row(self, y, left=0, right=None):
        right = self.width if right is None else right
        return self.data[y * self.width + left:y * self.width + right]

    def column(self, x, top, bottom):
        return self.data[top * self.width + x:bottom * self.width + x:self.width]


def runs_of(values):
    """Lengths of equal values in turn."""
    lengths, last = [], None
    for value in values:
        if value == last:
            lengths[-1] += 1
        else:
            lengths.append(1)
            last = value
    return lengths


class ReadBack(unittest.TestCase):
    @classmethod
    def setUpClass(cls):
        cls.scratch = tempfile.TemporaryDirectory()
        cls.here = Path(cls.scratch.name)
        cls.pdf = cls.here / "tags.pdf"
        render(make_studio(cls.here / "studio"), "coded", cls.pdf, "--stock", "page")

    @classmethod
    def tearDownClass(cls):
        cls.scratch.cleanup()

    def check_pages(self, pages, where):
        self.assertEqual(LOTS * SKEINS, len(pages))
        for page, expected, found in zip(pages, expected_codes(), scan(*pages)):
            self.assertEqual(expected, set(found), f"{page.name}, {where}")

    def check_all_turns(self, dpi):
        pages = pages_of(self.pdf, self.here / str(dpi), dpi, "-gray")
        for turn in (0, 90, 180, 270):
            if turn > 0:
                run("mogrify", "-rotate", 90, *pages)
            self.check_pages(pages, f"{dpi} dpi, turned by {turn}°")

    def test_every_tag_at_300_dpi_in_four_rotations(self):
        self.check_all_turns(300)

    def test_every_tag_at_203_dpi_in_four_rotations(self):
        self.check_all_turns(203)

    def test_every_tag_for_a_printer_of_203_dpi_in_black_and_white(self):
        pdf = self.here / "coarse.pdf"
        render(make_studio(self.here / "coarse", 203), "coded", pdf, "--stock", "page")
        self.check_pages(pages_of(pdf, self.here / "mono", 203, "-mono"), "black and white at 203 dpi")


GROUND = """
layout: ground
for: lots
shape: {width: 73 mm, height: 47 mm}
stock: a4-card
styles: {body: {font: Inter, size: 7 pt}}
front: {column: {background: "#c9a227", padding: 5.37 mm, align: start, holds: [CODE]}}
"""
# Box, module in dots of 300 to the inch, white modules left, right, above and below.
CODES = {
    "qr": ('{code: "{lot.link}", as: qr, height: 19 mm}', 6, (4, 4, 4, 4)),
    "ean-13": ('{code: "{lot.ean}", as: ean-13, height: 24 mm}', 6, (11, 7, 0, 0)),
    "upc-a": ('{code: "400000100012", as: upc-a, height: 24 mm}', 6, (9, 9, 0, 0)),
    "code-128": ('{code: "{lot.id}", as: code-128, width: 40 mm}', 3, (10, 10, 0, 0)),
}
WHITE, BLACK = 255, 0


class Ink(unittest.TestCase):
    """One code on a coloured label, dot by dot."""

    def setUp(self):
        scratch = tempfile.TemporaryDirectory()
        self.addCleanup(scratch.cleanup)
        self.here = Path(scratch.name)

    def each_code(self):
        for name, (box, module, quiet) in CODES.items():
            studio = make_studio(self.here / name, lots=1, skeins=1, tag=GROUND.replace("CODE", box))
            (studio / "layouts" / "coded.yaml").rename(studio / "layouts" / "ground.yaml")
            yield name, studio, module, quiet

    @staticmethod
    def bounds(picture, values):
        """Left, top, right and bottom of the pixels that have one of the values."""
        wanted = bytes(values)
        others = bytes(set(range(256)) - set(wanted))
        rows, left, right = [], picture.width, 0
        for y in range(picture.height):
            row = picture.row(y)
            if len(row.translate(None, wanted)) == len(row):
                continue
            rows.append(y)
            left = min(left, len(row) - len(row.lstrip(others)))
            right = max(right, len(row.rstrip(others)))
        return left, rows[0], right, rows[-1] + 1

    def test_quiet_zones_and_crisp_modules(self):
        for name, studio, module, quiet in self.each_code():
            with self.subTest(name):
                target = self.here / f"{name}.png"
                render(studio, "ground", target, "--stock", "page", "--dpi", 300)
                picture = Picture(target)
                ground = self.bounds(picture, [WHITE, BLACK])
                rows = range(picture.height)
                if name != "qr":  # the rows of the bars, above what people read
                    rows = range(ground[1] + 3, ground[1] + 60)
                ink = self.bounds(picture, [BLACK])
                left, top, right, bottom = ink if name == "qr" else self.bars_of(picture, rows)
                self.assertGreaterEqual(left - ground[0], quiet[0] * module)
                self.assertGreaterEqual(ground[2] - right, quiet[1] * module)
                self.assertGreaterEqual(top - ground[1], quiet[2] * module)
                self.assertGreaterEqual(ground[3] - bottom, quiet[3] * module)
                # Every row and column of the code is made of whole modules in pure black and white.
                for y in range(top, bottom) if name == "qr" else rows:
                    row = picture.row(y, left, right)
                    self.assertEqual(set(), set(row) - {WHITE, BLACK})
                    self.assertEqual({0}, {length % module for length in runs_of(row)}, f"row {y}: {runs_of(row)}")
                    around = picture.row(y, left - quiet[0] * module, left) + picture.row(y, right, right + quiet[1] * module)
                    self.assertEqual({WHITE}, set(around))
                if name == "qr":
                    for x in range(left, right):
                        self.assertEqual({0}, {length % module for length in runs_of(picture.column(x, top, bottom))})

    def bars_of(self, picture, rows):
        spans = [(picture.row(y).find(BLACK), picture.row(y).rfind(BLACK) + 1) for y in rows]
        self.assertEqual(1, len(set(spans)), "bars of different widths")
        return spans[0][0], rows[0], spans[0][1], rows[-1] + 1

    def test_edges_in_the_pdf_are_whole_dots_apart(self):
        # Cairo keeps places to 1/256 pt.
        dot, step = 72 / 300, 1 / 256
        for name, studio, module, _ in self.each_code():
            with self.subTest(name):
                target = self.here / f"{name}.pdf"
                render(studio, "ground", target)
                trace = run("mutool", "trace", target).decode()
                paths = re.findall(r"<fill_path[^>]*>(.*?)</fill_path>", trace, re.S)
                points = max(([(float(x), float(y)) for x, y in re.findall(r'x="([\d.-]+)" y="([\d.-]+)"', path)]
                              for path in paths), key=len)
                self.assertGreater(len(points), 80)
                for axis in (0, 1) if name == "qr" else (0,):
                    edges = {(point[axis] - points[0][axis]) / dot for point in points}
                    # A fifth of a dot lies between a dark module and its whole dots.
                    off = {round(edge - module * round(edge / module), 2) for edge in edges}
                    self.assertTrue(all(min(abs(one - wanted) for wanted in (-0.2, 0, 0.2)) <= 2 * step / dot for one in off), off)

    def test_black_and_white_rasters_have_whole_modules(self):
        # Poppler inks every dot that a shape touches.
        for name, studio, module, _ in self.each_code():
            with self.subTest(name):
                target = self.here / f"{name}.pdf"
                (studio / "layouts" / "ground.yaml").write_text(
                    GROUND.replace('background: "#c9a227", ', "").replace("CODE", CODES[name][0]), encoding="utf-8")
                render(studio, "ground", target, "--stock", "page")
                page, = pages_of(target, self.here / f"{name}-mono", 300, "-mono")
                picture = Picture(page)
                left, top, right, bottom = self.bounds(picture, [BLACK])
                rows = range(top, bottom) if name == "qr" else range(top, top + 60)
                left, _, right, _ = (left, top, right, bottom) if name == "qr" else self.bars_of(picture, rows)
                for y in rows:
                    self.assertEqual({0}, {length % module for length in runs_of(picture.row(y, left, right))})
                if name == "qr":
                    for x in range(left, right):
                        self.assertEqual({0}, {length % module for length in runs_of(picture.column(x, top, bottom))})

    def check_pair_of_bars(self, printers=""):
        # Labels 76 mm apart, which is no whole number of dots; modules of six.
        tag = GROUND.replace('background: "#c9a227", ', "").replace("73 mm", "70 mm").replace("CODE", CODES["ean-13"][0])
        target = self.here / "copies.pdf"
        studio = make_studio(self.here / "copies", lots=1, skeins=1, tag=tag)
        (studio / "printers.yaml").write_text(f"printers: [{printers}]\n", encoding="utf-8")
        render(studio, "coded", target, "--copies", 2)
        page, = pages_of(target, self.here / "copies-mono", 300, "-mono")
        picture = Picture(page)
        across = [runs_of(picture.row(y))[1:-1] for y in range(picture.height)]
        # On each 30 bars and the white between.
        bars = [lengths for lengths in across if len(lengths) == 2 * 59 + 1]
        self.assertGreater(len(bars), 100)
        for lengths in bars:
            self.assertEqual({0}, {length % 6 for length in lengths[:59] + lengths[60:]})

    def test_copies_have_whole_modules_wherever_they_lie(self):
        self.check_pair_of_bars()

    def test_modules_stay_whole_where_a_page_is_stretched_for_its_printer(self):
        self.check_pair_of_bars("{printer: workroom, paper: A4, front: {across: 11 mm, down: 9 mm}, "
                                "lines: {across: 149.4 mm, down: 200.4 mm}}")

    def test_vectors_only(self):
        for name, studio, _, _ in self.each_code():
            with self.subTest(name):
                target = self.here / f"{name}.pdf"
                render(studio, "ground", target)
                self.assertEqual(2, len(run("pdfimages", "-list", target).splitlines()))  # the head of the list alone

    def test_black_on_white_in_mono(self):
        for name, studio, _, _ in self.each_code():
            with self.subTest(name):
                target = self.here / f"{name}.png"
                render(studio, "ground", target, "--stock", "page", "--dpi", 300, "--mono")
                self.assertEqual(1, len(scan(target)[0]))


class OnTags(unittest.TestCase):
    """The bundled tags of the example studio."""

    def test_each_leads_to_its_lot(self):
        with tempfile.TemporaryDirectory() as scratch:
            for layout in ("hang-tag", "fold-tag", "wrap-band"):
                for stock in ("a4-card", "letter-card"):
                    pdf = Path(scratch) / f"{layout}-{stock}.pdf"
                    render(ROOT / "examples" / "studio", layout, pdf, "--stock", stock, "--only", "26-117", "--only", "0077")
                    found = [code for codes in scan(*pages_of(pdf, pdf.with_suffix(""), 300, "-gray")) for code in codes]
                    self.assertEqual(12, found.count(f"QR-Code:{LINK}26-117"), f"{layout} on {stock}")
                    self.assertEqual(9, found.count(f"QR-Code:{LINK}0077"), f"{layout} on {stock}")
                    links = re.findall(rb"/URI \((https://[^)]*lot/[^)]*)\)", run("qpdf", "--qdf", "--object-streams=disable", pdf, "-"))
                    self.assertEqual({b"https://quillmoor.example/lot/26-117", b"https://quillmoor.example/lot/0077"}, set(links))
                    self.assertEqual(21, len(links))


if __name__ == "__main__":
    unittest.main()
