#!/usr/bin/env python3
"""Printers that misprint are played on the finished files: the measuring sheet is read off as a dyer would, what she read
goes into the records, and then every label must land where it was meant to. Positions are read back by poppler and mupdf.
"""

import json
import re
import shutil
import subprocess
import sys
import tempfile
import unittest
import xml.etree.ElementTree as ElementTree
from pathlib import Path

sys.path.insert(0, str(Path(__file__).resolve().parent))
from test_papers import DATE, NUMBERED, ON_CARD, POINT, PROGRAM, REFERENCE, SHAPES, STUDIO, UNEVEN, run, words_of  # noqa: E402

A4 = (210.0, 297.0)
RECORDS = (
    "studio: {name: Quillmoor Yarn Works}\n"
    "bases: [{id: sock, name: Sock, fibre: {wool: 100 %}, skein: {weight: 100 g, length: 420 m}}]\n"
    'lots: [{id: "26-117", colourway: Hedge in October, base: sock, skeins: 32}]\n'
)


def upside_down(point, size=A4):
    return size[0] - point[0], size[1] - point[1]


def through_the_paper(point, size=A4):
    """Behind a point, as it is seen by whoever turns the sheet like a page."""
    return size[0] - point[0], point[1]


class Misprinter:
    """A printer that moves and stretches each side of paper that stands, and turns it on one edge or not at all."""

    def __init__(self, turn="long", front=(0.8, -1.3), back=(-0.6, 2.1), across=0.996, down=1.002):
        self.turn, self.front, self.back, self.across, self.down = turn, front, back, across, down

    def land(self, point, is_back, size=A4):
        """Where a point of a standing page falls on its side of the paper, seen after turning the sheet like a page."""
        by = self.front
        if is_back and self.turn != "hand":
            by = self.back
            if self.turn == "short":
                point = upside_down(point, size)
        x, y = size[0] / 2, size[1] / 2
        return x + (point[0] - x) * self.across + by[0], y + (point[1] - y) * self.down + by[1]


def strokes(pdf, page):
    """Every straight stroke of a page as its two ends in millimetres from the top left corner."""
    root = ElementTree.fromstring(run("mutool", "trace", pdf, page).stdout)
    lines = []
    for stroke in root.iter("stroke_path"):
        a, b, c, d, e, f = (float(n) for n in stroke.get("transform").split())
        points = [(float(step.get("x")), float(step.get("y"))) for step in stroke if step.tag in ("moveto", "lineto")]
        if len(points) != 2 or len(stroke) != 2:
            continue
        lines.append(tuple(((a * x + c * y + e) * POINT, (b * x + d * y + f) * POINT) for x, y in points))
    return lines


def is_across(line):
    return abs(line[0][1] - line[1][1]) < 1e-3


def length(line):
    return max(abs(line[0][0] - line[1][0]), abs(line[0][1] - line[1][1]))


def middle_of(line):
    return (line[0][0] + line[1][0]) / 2, (line[0][1] + line[1][1]) / 2


def scale_ticks(lines, across):
    """The 41 ticks of one scale: the middle of each, in order."""
    along, aside = (0, 1) if across else (1, 0)
    for base in (line for line in lines if is_across(line) == across and abs(length(line) - 20) < 0.3):
        side = round(base[0][aside], 2)
        first, last = sorted(end[along] for end in base)
        ticks = [
            middle_of(line) for line in lines
            if is_across(line) != across and any(round(end[aside], 2) == side for end in line)
            and first - 0.1 < line[0][along] < last + 0.1
        ]
        if len(ticks) > 2:
            return sorted(ticks, key=lambda point: point[along])
    raise AssertionError("there is no such scale")


class Scratch(unittest.TestCase):
    def setUp(self):
        scratch = tempfile.TemporaryDirectory()
        self.addCleanup(scratch.cleanup)
        self.here = Path(scratch.name)
        self.studio = self.here / "studio"
        (self.studio / "layouts" / "stocks").mkdir(parents=True)
        (self.studio / "layouts" / "stocks" / "uneven.yaml").write_text(UNEVEN, encoding="utf-8")
        (self.studio / "records.yaml").write_text(RECORDS, encoding="utf-8")

    def measure(self, *options):
        pdf = self.here / "measure.pdf"
        run(PROGRAM, "measure", self.studio, "-o", pdf, *options)
        return pdf

    def read_off(self, printer, pdf, page):
        """What the dyer reads on one side: where the creases, which are the middle of the paper, cut the two scales."""
        lines = strokes(pdf, page)
        readings = []
        for across in (True, False):
            along = 0 if across else 1
            ticks = [printer.land(tick, page == 2)[along] for tick in scale_ticks(lines, across)]
            # Upright for the reader: figures grow to the right and down.
            ticks.sort()
            self.assertEqual(41, len(ticks))
            readings.append((A4[along] / 2 - ticks[0]) / (ticks[-1] - ticks[0]) * 20)
        return readings

    def measured_lines(self, printer, pdf):
        lines = strokes(pdf, 1)
        found = []
        for across, drawn in ((True, 150), (False, 200)):
            line, = [one for one in lines if is_across(one) == across and abs(length(one) - drawn) < 0.06 * drawn
                     and length(one) > 120]
            ends = [printer.land(end, False) for end in line]
            found.append(length(ends))
        return found

    def record(self, printer, backs, digits=3):
        pdf = self.measure("--backs", backs.replace(" ", "-"))
        front, back = (self.read_off(printer, pdf, page) for page in (1, 2))
        lines = self.measured_lines(printer, pdf)
        pair = lambda numbers: "{across: %.*f mm, down: %.*f mm}" % (digits, numbers[0], digits, numbers[1])  # noqa: E731
        (self.studio / "printers.yaml").write_text(
            f"printers:\n  - printer: workroom\n    tray: rear\n    paper: A4\n    backs: {backs}\n"
            f"    front: {pair(front)}\n    back: {pair(back)}\n    lines: {pair(lines)}\n", encoding="utf-8")


class MeasuringSheet(Scratch):
    def test_scales_and_lines_are_true(self):
        """Ticks half a millimetre apart about the middle of the page; lines of 150 and 200 mm."""
        for backs in ("long-edge", "short-edge", "by-hand"):
            pdf = self.measure("--backs", backs)
            for page in (1, 2):
                lines = strokes(pdf, page)
                for across in (True, False):
                    along = 0 if across else 1
                    ticks = [tick[along] for tick in scale_ticks(lines, across)]
                    self.assertEqual(41, len(ticks), (backs, page, across))
                    for i, tick in enumerate(ticks):
                        self.assertAlmostEqual(A4[along] / 2 - 10 + 0.5 * i, tick, delta=0.002)
            for true, drawn in zip((150, 200), self.measured_lines(Misprinter("long", (0, 0), (0, 0), 1, 1), pdf)):
                self.assertAlmostEqual(true, drawn, delta=0.002)

    def test_f_and_b_rings_and_crosses_meet(self):
        """Upright for whoever turns the sheet like a page, and on each other against the light, however it is turned."""
        for turn, backs in (("long", "long-edge"), ("short", "short-edge"), ("hand", "by-hand")):
            pdf = self.measure("--backs", backs)
            true = Misprinter(turn, (0, 0), (0, 0), 1, 1)
            (_, front), (_, back) = words_of(pdf)
            (f,), (b,) = ([box for text, box in words if text == letter]
                          for words, letter in ((front, "F"), (back, "B")))
            corners = [through_the_paper(true.land(corner, True)) for corner in ((b[0], b[1]), (b[2], b[3]))]
            left, right = sorted(x for x, _ in corners)
            self.assertLess(left, f[2])
            self.assertGreater(right, f[0])
            for one, other in zip(sorted(y for _, y in corners), (f[1], f[3])):
                self.assertAlmostEqual(one, other, delta=0.05)
            crosses = sorted({tuple(round(part, 2) for part in through_the_paper(true.land(middle_of(line), True)))
                              for line in strokes(pdf, 2) if abs(length(line) - 4) < 0.01 and self.is_cross(line, pdf)})
            rings = sorted(self.rings(pdf))
            self.assertEqual(2, len(rings))
            self.assertEqual(2, len(crosses))
            for ring, cross in zip(rings, crosses):
                self.assertAlmostEqual(ring[0], cross[0], delta=0.02)
                self.assertAlmostEqual(ring[1], cross[1], delta=0.02)

    @staticmethod
    def is_cross(line, pdf):
        return any(other != line and abs(middle_of(other)[0] - middle_of(line)[0]) < 0.01
                   and abs(middle_of(other)[1] - middle_of(line)[1]) < 0.01 for other in strokes(pdf, 2))

    @staticmethod
    def rings(pdf):
        root = ElementTree.fromstring(run("mutool", "trace", pdf, "1").stdout)
        for stroke in root.iter("stroke_path"):
            curves = [step for step in stroke if step.tag == "curveto"]
            if len(curves) != 4 or any(step.tag == "lineto" for step in stroke):
                continue
            a, b, c, d, e, f = (float(n) for n in stroke.get("transform").split())
            ends = [(float(step.get("x3")), float(step.get("y3"))) for step in curves]
            x, y = (sum(end[i] for end in ends) / 4 for i in (0, 1))
            yield (a * x + c * y + e) * POINT, (b * x + d * y + f) * POINT

    def test_every_word_inside_every_paper(self):
        for language in ("en", "de", "fr"):
            (self.studio / "records.yaml").write_text(
                RECORDS.replace("Works}", f"Works, language: {language}}}"), encoding="utf-8")
            for paper in ("A5", "half-letter", "A4", "Letter", "Legal", "A3"):
                for backs in ("long-edge", "by-hand"):
                    for (width, height), words in words_of(self.measure("--paper", paper, "--backs", backs)):
                        self.assertLess(width, height)
                        for text, (left, top, right, bottom) in words:
                            self.assertGreaterEqual(min(left, top, width - right, height - bottom), 6, (paper, text))
                        self.assert_apart(words, f"{paper} {language} {backs}")

    def assert_apart(self, words, where):
        for i, (one, a) in enumerate(words):
            for other, b in words[i + 1:]:
                across = min(a[2], b[2]) - max(a[0], b[0])
                down = min(a[3], b[3]) - max(a[1], b[1])
                # Lines of a paragraph may share the room of ascenders and descenders.
                self.assertFalse(across > 0.3 and down > 1.2, f"{where}: “{one}” and “{other}” lie on each other")

    def test_same_bytes_and_sound(self):
        pdf = self.measure()
        before = pdf.read_bytes()
        self.assertEqual(before, self.measure().read_bytes())
        self.assertIn("No syntax or stream encoding errors found", run("qpdf", "--check", pdf).stdout)
        for _, matrix in (found := re.findall(r'linewidth="([\d.]+)"[^>]*transform="([^"]+)"',
                                              run("mutool", "trace", pdf, "1-2").stdout)):
            self.assertTrue(matrix)
        self.assertTrue(all(float(width) >= 0.2499 for width, _ in found))

    def test_picture(self):
        for page, name in ((1, "measuring-front"), (2, "measuring-back")):
            picture = self.here / f"{name}.png"
            draw_page(self.measure("--printer", "workroom"), page, picture)
            result = run("compare", "-metric", "AE", "-fuzz", "12%", REFERENCE / f"{name}.png", picture, "null:", check=False)
            self.assertLessEqual(float(result.stderr.split()[0]), 60, name)


class Corrected(Scratch):
    def labels(self, *options):
        pdf = self.here / "out.pdf"
        run(PROGRAM, "render", "numbered", self.studio, "-o", pdf, "--date", DATE, *options)
        return words_of(pdf)

    def centres(self, page, letter):
        size, words = page
        found = {
            int(text[1:]): ((box[0] + box[2]) / 2, (box[1] + box[3]) / 2)
            for text, box in words if re.fullmatch(letter + r"\d+", text)
        }
        self.assertTrue(found)
        # As the corrected pages stand: turned to the left.
        if size[0] > size[1]:
            found = {number: (y, size[0] - x) for number, (x, y) in found.items()}
        return found

    def check(self, printer, backs, stock, shape):
        (self.studio / "layouts" / "numbered.yaml").write_text(NUMBERED.replace("SHAPE", shape), encoding="utf-8")
        options = ("--stock", stock)
        wanted = self.labels(*options, "--printer", "none", "--backs", backs.replace(" ", "-"))
        printed = self.labels(*options)
        self.assertEqual(len(wanted), len(printed))
        true = Misprinter(printer.turn, (0, 0), (0, 0), 1, 1)
        hand = printer.turn == "hand"
        for i, (meant, page) in enumerate(zip(wanted, printed)):
            is_back = i >= len(wanted) / 2 if hand else i % 2 == 1
            self.assertLess(page[0][0], page[0][1])
            letter = "B" if is_back else "F"
            places = self.centres(meant, letter)
            drawn = self.centres(page, letter)
            self.assertEqual(set(places), set(drawn))
            for number, place in places.items():
                for should, does in zip(true.land(place, is_back), printer.land(drawn[number], is_back)):
                    self.assertAlmostEqual(should, does, delta=0.05, msg=f"{stock} {shape} {backs} {letter}{number}")

    def test_labels_land_where_they_were_meant_to(self):
        for turn, backs in (("long", "long edge"), ("short", "short edge"), ("hand", "by hand")):
            printer = Misprinter(turn)
            self.record(printer, backs)
            for stock, shape in (("a4-3x3-54x86", SHAPES["a4-3x3-54x86"][0]), ("a4-card", ON_CARD[0]),
                                 ("a4-card", ON_CARD[1]), ("uneven", SHAPES["uneven"][0])):
                self.check(printer, backs, stock, shape)

    def test_readings_of_a_duplex_printer_hold_on_the_other_edge(self):
        self.record(Misprinter("long"), "long edge")
        records = (self.studio / "printers.yaml").read_text(encoding="utf-8")
        (self.studio / "printers.yaml").write_text(records.replace("long edge", "short edge"), encoding="utf-8")
        self.check(Misprinter("short"), "short edge", "a4-3x3-54x86", SHAPES["a4-3x3-54x86"][0])

    def test_a_corrected_measuring_sheet_reads_true(self):
        for turn, backs in (("long", "long edge"), ("short", "short edge"), ("hand", "by hand")):
            printer = Misprinter(turn)
            self.record(printer, backs)
            proof = self.measure("--corrected")
            for page in (1, 2):
                for reading in self.read_off(printer, proof, page):
                    self.assertAlmostEqual(10, reading, delta=0.02)
            for true, came_out in zip((150, 200), self.measured_lines(printer, proof)):
                self.assertAlmostEqual(true, came_out, delta=0.02)

    def test_the_test_line_is_100_mm_on_that_printer(self):
        printer = Misprinter("long")
        self.record(printer, "long edge")
        (self.studio / "layouts" / "numbered.yaml").write_text(NUMBERED.replace("SHAPE", ON_CARD[0]), encoding="utf-8")
        self.labels("--stock", "a4-card")
        line, = [one for one in strokes(self.here / "out.pdf", 1) if length(one) > 90]
        self.assertAlmostEqual(100, length([printer.land(end, False) for end in line]), delta=0.02)

    def test_the_sheet_to_lay_cards_on_is_corrected_too(self):
        printer = Misprinter("long")
        self.record(printer, "long edge")
        (self.studio / "layouts" / "numbered.yaml").write_text(NUMBERED.replace("SHAPE", ON_CARD[0]), encoding="utf-8")
        lines = []
        for options in (("--printer", "none"), ()):
            pages = len(self.labels("--stock", "a4-card-in-a4-pouch", *options))
            line, = [one for one in strokes(self.here / "out.pdf", pages) if length(one) > 90]
            lines.append(line)
        meant, drawn = lines
        for should, does in zip(meant, drawn):
            for a, b in zip(should, printer.land(does, False)):
                self.assertAlmostEqual(a, b, delta=0.05)

    def test_reading_to_half_a_millimetre_is_enough_for_a_quarter(self):
        printer = Misprinter("long")
        self.record(printer, "long edge")
        exact = (self.studio / "printers.yaml").read_text(encoding="utf-8")
        rough = re.sub(r"([\d.]+) mm", lambda number: f"{round(float(number[1]) * 2) / 2} mm", exact)
        (self.studio / "printers.yaml").write_text(rough, encoding="utf-8")
        proof = self.measure("--corrected")
        for page in (1, 2):
            for reading in self.read_off(printer, proof, page):
                self.assertAlmostEqual(10, reading, delta=0.3)

    def test_boxes_are_the_pages_own(self):
        self.record(Misprinter("long"), "long edge")
        (self.studio / "layouts" / "numbered.yaml").write_text(NUMBERED.replace("SHAPE", ON_CARD[1]), encoding="utf-8")
        self.labels("--stock", "a4-card")
        boxes = run("pdfinfo", "-box", self.here / "out.pdf").stdout
        for name in ("MediaBox", "TrimBox", "BleedBox"):
            left, bottom, right, top = (float(n) * POINT for n in re.search(name + r": *([\d. ]+)", boxes)[1].split())
            self.assertEqual((0, 0), (left, bottom))
            self.assertAlmostEqual(210, right, delta=0.01)
            self.assertAlmostEqual(297, top, delta=0.01)

    def test_links_move_with_their_words(self):
        self.record(Misprinter("short", front=(4, -3), back=(-4, 3)), "short edge")
        shutil.copy(self.studio / "printers.yaml", self.here / "printers.yaml")
        shutil.copytree(STUDIO, self.here / "quillmoor")
        shutil.copy(self.here / "printers.yaml", self.here / "quillmoor" / "printers.yaml")
        pdf = self.here / "tags.pdf"
        run(PROGRAM, "render", "hang-tag", self.here / "quillmoor", "-o", pdf, "--date", DATE, "--only", "26-117:1")
        (_, (size, words)) = words_of(pdf)
        box, = [box for text, box in words if "@" in text]
        middle = (box[0] + box[2]) / 2, size[1] - (box[1] + box[3]) / 2
        links = []
        while (text := run("mutool", "show", "-g", pdf, f"pages/2/Annots/{len(links) + 1}/Rect").stdout).startswith("["):
            links.append([n * POINT for n in json.loads(text.replace(" ", ","))])
        found = [one for one in links if one[0] < middle[0] < one[2] and one[1] < middle[1] < one[3]]
        self.assertEqual(1, len(found), (links, middle))
        self.assertAlmostEqual(box[3] - box[1], found[0][3] - found[0][1], delta=1)


def draw_page(pdf, page, picture):
    run("pdftoppm", "-r", "60", "-f", page, "-l", page, "-singlefile", "-png", pdf, picture.with_suffix(""))


def accept():
    with tempfile.TemporaryDirectory() as folder:
        pdf = Path(folder) / "measure.pdf"
        subprocess.run([PROGRAM, "measure", "-o", pdf, "--printer", "workroom"], check=True)
        for page, name in ((1, "measuring-front"), (2, "measuring-back")):
            draw_page(pdf, page, REFERENCE / f"{name}.png")


if __name__ == "__main__":
    if "--accept" in sys.argv:
        accept()
    else:
        unittest.main()
