#!/usr/bin/env python3
"""What a print shop and a screen reader ask of the PDFs, read back by qpdf, poppler, mupdf and Ghostscript.

Bleed of 3 mm, lines of 0.25 pt and more, text 3 mm inside the trim: common practice of print shops.
"""

import json
import os
import re
import subprocess
import sys
import tempfile
import unittest
import xml.etree.ElementTree as ElementTree
from pathlib import Path

sys.path.insert(0, str(Path(__file__).resolve().parent))
from test_papers import LAYOUTS, POINT, render, run, words_of  # noqa: E402

GHOSTSCRIPTS_SRGB = Path("/usr/share/color/icc/ghostscript/srgb.icc")
TAG = (53.98, 85.60)  # ISO/IEC 7810 ID-1
BLEED = 3.0
MARKS = 1 + 5 + 1  # off the bleed, long, to the page's edge


def objects(pdf):
    """The file's objects as qpdf's JSON has them, and the trailer."""
    text = run("qpdf", "--json=2", "--json-stream-data=none", pdf).stdout
    return json.loads(text)["qpdf"][1]


class Press(unittest.TestCase):
    @classmethod
    def setUpClass(cls):
        cls.folder = tempfile.TemporaryDirectory()
        cls.files = {}
        for name, layout, *options in (
            ("tags", "hang-tag", "--stock", "page", "--only", "26-117:1-3"),
            ("copies", "hang-tag", "--stock", "page", "--only", "26-117:1-2", "--copies", "2"),
            ("marked", "hang-tag", "--stock", "page-marks", "--only", "26-117:1-2"),
            ("sheets", "hang-tag"),
            ("lids", "jar-lid", "--stock", "page-marks"),
            ("wraps", "jar-wrap", "--copies", "2"),
            ("cards", "dye-cards", "--stock", "page"),
        ):
            cls.files[name] = Path(cls.folder.name) / f"{name}.pdf"
            render(layout, cls.files[name], *options)

    @classmethod
    def tearDownClass(cls):
        cls.folder.cleanup()

    def catalog(self, name):
        found = objects(self.files[name])
        root = found[f"obj:{found['trailer']['value']['/Root']}"]["value"]
        return found, root

    def boxes(self, name):
        """Each page's media, bleed and trim box, as left, bottom, right, top in millimetres."""
        text = run("pdfinfo", "-box", "-f", "1", "-l", "999", self.files[name]).stdout
        pages = {}
        for page, box, numbers in re.findall(r"^Page +(\d+) (\w+)Box: +(.*)$", text, re.M):
            pages.setdefault(int(page), {})[box] = [float(number) * POINT for number in numbers.split()]
        return list(pages.values())

    def assert_box(self, expected, box):
        for wanted, found in zip(expected, box):
            self.assertAlmostEqual(wanted, found, delta=0.1)

    def test_sound(self):
        for pdf in self.files.values():
            with self.subTest(pdf.name):
                self.assertIn("No syntax or stream encoding errors found", run("qpdf", "--check", pdf).stdout)
                self.assertEqual("", run("pdftotext", pdf, "-").stderr)
                self.assertEqual("", run("mutool", "draw", "-q", "-N", "-F", "text", "-o", "/dev/null", pdf).stderr)
                ghostscript = run("gs", "-q", "-dNOPAUSE", "-dBATCH", "-sDEVICE=nullpage", pdf)
                self.assertEqual("", ghostscript.stdout + ghostscript.stderr)

    def test_a_page_keeps_its_bleed(self):
        width, height = TAG
        pages = self.boxes("tags")
        self.assertEqual(6, len(pages))  # three tags, front and back
        for page in pages:
            self.assert_box([0, 0, width + 2 * BLEED, height + 2 * BLEED], page["Media"])
            self.assert_box([0, 0, width + 2 * BLEED, height + 2 * BLEED], page["Bleed"])
            self.assert_box([BLEED, BLEED, BLEED + width, BLEED + height], page["Trim"])

    def test_marks_stand_outside_the_bleed(self):
        width, height = TAG
        for page in self.boxes("marked"):
            rim = BLEED + MARKS
            self.assert_box([0, 0, width + 2 * rim, height + 2 * rim], page["Media"])
            self.assert_box([MARKS, MARKS, MARKS + width + 2 * BLEED, MARKS + height + 2 * BLEED], page["Bleed"])
            self.assert_box([rim, rim, rim + width, rim + height], page["Trim"])

    def test_a_label_without_bleed_is_the_page(self):
        for page in self.boxes("cards"):
            self.assert_box(page["Media"], page["Trim"])
            self.assert_box(page["Media"], page["Bleed"])

    def test_a_sheet_is_trimmed_to_its_paper(self):
        for page in self.boxes("sheets"):
            for box in ("Media", "Bleed", "Trim"):
                self.assert_box([0, 0, 210, 297], page[box])

    def test_colour_runs_to_the_edge_of_the_bleed(self):
        picture = Path(self.folder.name) / "bleed.ppm"
        run("pdftoppm", "-r", "127", "-f", "1", "-singlefile", self.files["tags"], picture.with_suffix(""))
        width = round((TAG[0] + 2 * BLEED) * 5)
        # 1 mm inside the page, beyond the trim, at the height of the patch that reaches the edge.
        for x in (3, width - 4):
            colours = {run("convert", picture, "-format", f"%[pixel:p{{{x},{y}}}]", "info:").stdout
                       for y in range(5, 455, 10)}
            self.assertGreater(len(colours), 1, f"nothing but paper at x = {x}")

    def test_words_keep_their_distance_from_the_cut(self):
        for (width, height), words in words_of(self.files["marked"]):
            for text, (left, top, right, bottom) in words:
                self.assertGreaterEqual(min(left, top, width - right, height - bottom), 2.99, text)

    def test_output_intent(self):
        found, root = self.catalog("tags")
        intent = found[f"obj:{root['/OutputIntents'][0]}"]["value"]
        self.assertEqual("/GTS_PDFA1", intent["/S"])
        self.assertEqual("u:sRGB", intent["/OutputConditionIdentifier"])
        number = intent["/DestOutputProfile"].split()[0]
        profile = Path(self.folder.name) / "srgb.icc"
        profile.write_bytes(subprocess.run(["qpdf", f"--show-object={number}", "--filtered-stream-data",
                                            str(self.files["tags"])], capture_output=True, check=True).stdout)
        self.assertEqual(profile.stat().st_size, int.from_bytes(profile.read_bytes()[:4], "big"))
        if not GHOSTSCRIPTS_SRGB.exists():
            self.skipTest("no other sRGB profile to compare with")
        for colour in ("#000000", "#ffffff", "#808080", "#8d7fa8", "#c01020", "#0a3c5a", "#ffff00", "#03080d"):
            shown = run("convert", "-size", "1x1", f"xc:{colour}", "-depth", "16", "-intent", "Relative", "-profile", profile, "-profile",
                        GHOSTSCRIPTS_SRGB, "-format", "%[fx:r*255] %[fx:g*255] %[fx:b*255]", "info:").stdout
            for channel, value in enumerate(shown.split()):
                self.assertAlmostEqual(int(colour[1 + 2 * channel:3 + 2 * channel], 16), float(value), delta=1)

    def test_xmp_says_what_the_information_says(self):
        names = {"dc": "http://purl.org/dc/elements/1.1/", "pdf": "http://ns.adobe.com/pdf/1.3/",
                 "rdf": "http://www.w3.org/1999/02/22-rdf-syntax-ns#"}
        for name, pdf in self.files.items():
            tree = ElementTree.fromstring(run("pdfinfo", "-meta", pdf).stdout.strip())
            info = dict(re.findall(r"^(\w+): +(.*)$", run("pdfinfo", pdf).stdout, re.M))
            found, root = self.catalog(name)
            self.assertEqual(info["Title"], tree.find(".//dc:title//rdf:li", names).text)
            self.assertEqual(info["Author"], tree.find(".//dc:creator//rdf:li", names).text)
            self.assertEqual(info["Producer"], tree.find(".//pdf:Producer", names).text)
            self.assertEqual("False", tree.find(".//pdf:Trapped", names).text)
            self.assertEqual("/False", found[f"obj:{found['trailer']['value']['/Info']}"]["value"]["/Trapped"])
            self.assertEqual(root["/Lang"], "u:" + tree.find(".//dc:language//rdf:li", names).text)

    def page_labels(self, name):
        found, root = self.catalog(name)
        return [label["/P"] for label in found[f"obj:{root['/PageLabels']}"]["value"]["/Nums"][1::2]]

    def outline(self, name):
        return re.findall(r'"([^"]*)"', run("mutool", "show", self.files[name], "outline").stdout)

    def test_page_labels_and_outline(self):
        self.assertEqual(["u:1 front", "u:1 back", "u:2 front", "u:2 back", "u:3 front", "u:3 back"],
                         self.page_labels("tags"))
        self.assertEqual(["26-117:1", "26-117:2", "26-117:3"], self.outline("tags"))
        self.assertEqual(["26-117:1", "26-117:2"], self.outline("copies"))
        self.assertEqual("u:1", self.page_labels("wraps")[0])
        sheets = self.outline("sheets")
        self.assertEqual(len(self.boxes("sheets")), 2 * len(sheets))
        self.assertTrue(sheets[0].startswith(f"sheet 1 of {len(sheets)}: 26-117:1 – "), sheets[0])

    def links(self, name):
        found, _ = self.catalog(name)
        return [o["value"] for o in found.values() if isinstance(o.get("value"), dict)
                and o["value"].get("/Subtype") == "/Link"]

    def test_contact_lines_and_codes_are_links(self):
        urls = run("pdfinfo", "-url", self.files["tags"]).stdout
        self.assertIn("mailto:wool@quillmoor.example", urls)
        self.assertIn("https://quillmoor.example/lot/26-117", urls)
        links = self.links("tags")
        self.assertEqual(6, len(links))  # of three tags
        self.assertEqual([], self.links("marked"))  # ISO 15930-7 allows none on a page for the press
        for link in links:
            left, bottom, right, top = link["/Rect"]
            is_code = link["/A"]["/URI"].startswith("u:https:")
            self.assertGreater(right - left, 20)
            self.assertGreater(top - bottom, 4)
            self.assertLess(top - bottom, 60 if is_code else 20)
            self.assertEqual(4, link["/F"])
            self.assertIn("/StructParent", link)

    def test_structure_in_reading_order(self):
        text = run("pdfinfo", "-struct-text", self.files["tags"]).stdout.replace("\u00a0", " ")
        at = 0
        for words in ('Sect "26-117:1"', "Quillmoor Yarn Works", "Hedge in", "Plain Sock", "€26.00", "75 % wool",
                      "Wash 30", "Lot 26-117", "skein 1 of 12", "Link", "wool@quillmoor.example", 'Sect "26-117:2"'):
            found = text.find(words, at)
            self.assertNotEqual(-1, found, f"“{words}” does not follow “{text[max(0, at - 60):at]}”")
            at = found
        self.assertIn("Tagged:          yes", run("pdfinfo", self.files["tags"]).stdout)

    def test_every_figure_has_words(self):
        for name in self.files:
            found, root = self.catalog(name)
            elements = [o["value"] for o in found.values() if isinstance(o.get("value"), dict) and "/S" in o["value"]
                        and "/P" in o["value"]]
            figures = [element for element in elements if element["/S"] == "/Figure"]
            for figure in figures:
                self.assertTrue(figure.get("/Alt", "")[2:].strip(), f"{name}: a figure without words")
            self.assertTrue(root["/MarkInfo"]["/Marked"])
        found, _ = self.catalog("wraps")
        alternatives = {o["value"]["/Alt"] for o in found.values() if isinstance(o.get("value"), dict)
                        and "/Alt" in o["value"]}
        self.assertTrue(any("health hazard" in text for text in alternatives), alternatives)

    def test_a_second_copy_says_all_its_words(self):
        found, _ = self.catalog("wraps")
        said = [o["value"]["/ActualText"] for o in found.values() if isinstance(o.get("value"), dict)
                and "/ActualText" in o["value"]]
        whole = [text for text in said if "NOT FOOD" in text and "Fenlight acid" in text]
        self.assertTrue(whole)
        self.assertTrue(any("health hazard" in text for text in whole))

    def test_all_ink_is_read_or_decoration(self):
        """Outside marked content nothing is painted, and each page's contents are numbered from 0 on."""
        for name, pdf in self.files.items():
            with tempfile.NamedTemporaryFile(suffix=".pdf") as plain:
                run("qpdf", "--qdf", "--object-streams=disable", pdf, plain.name)
                text = Path(plain.name).read_bytes().decode("latin-1")
            streams = re.findall(r"%% Contents for page \d+\n.*?\nstream\n(.*?)\nendstream", text, re.S)
            self.assertEqual(len(self.boxes(name)), len(streams))
            for stream in streams:
                depth, numbers = 0, []
                stream = re.sub(r"\((?:\\.|[^\\()])*\)", "()", stream)
                for token in stream.split():
                    if token in ("BDC", "BMC"):
                        depth += 1
                    elif token == "EMC":
                        depth -= 1
                    elif token in ("f", "f*", "S", "B", "Do", "Tj", "TJ", "sh"):
                        self.assertGreater(depth, 0, f"{name}: {token} outside")
                    self.assertLessEqual(depth, 2)
                self.assertEqual(0, depth)
                numbers = [int(n) for n in re.findall(r"/MCID (\d+)", stream)]
                self.assertEqual(list(range(len(numbers))), numbers)

    def test_no_hairlines(self):
        for layout in LAYOUTS:
            pdf = Path(self.folder.name) / "lines.pdf"
            for stock in (("--stock", "page-marks"), ()):
                render(layout, pdf, *stock)
                trace = run("mutool", "trace", pdf, "1-4").stdout
                strokes = re.findall(r'<stroke_path [^>]*linewidth="([\d.]+)"[^>]*transform="([^"]+)"', trace)
                for width, matrix in strokes:
                    a, b, c, d, *_ = (float(part) for part in matrix.split())
                    self.assertGreaterEqual(float(width) * abs(a * d - b * c) ** 0.5, 0.2499, layout)

    def test_three_renderers_agree(self):
        for name in ("tags", "marked", "wraps", "cards"):
            pictures = []
            for tool, command in (
                ("poppler", ("pdftoppm", "-r", "100", "-f", "1", "-l", "1", "-singlefile", "-png", "{pdf}", "{stem}")),
                ("mupdf", ("mutool", "draw", "-q", "-N", "-r", "100", "-o", "{stem}.png", "{pdf}", "1")),
                ("ghostscript", ("gs", "-q", "-dNOPAUSE", "-dBATCH", "-sDEVICE=png16m", "-r100", "-dFirstPage=1",
                                 "-dLastPage=1", "-dTextAlphaBits=4", "-dGraphicsAlphaBits=4", "-sOutputFile={stem}.png",
                                 "{pdf}")),
            ):
                stem = Path(self.folder.name) / f"{name}-{tool}"
                run(*(part.format(pdf=self.files[name], stem=stem) for part in command))
                pictures.append(stem.with_suffix(".png"))
            size = run("identify", "-format", "%wx%h", pictures[0]).stdout
            for other in pictures[1:]:
                with self.subTest(f"{name} {other.name}"):
                    # Pages are rounded to whole pixels differently; edges are softened before they are compared.
                    soften = ("-blur", "0x2", "-gravity", "NorthWest", "-extent", size, "-shave", "4x4")
                    blurred = [Path(self.folder.name) / f"blurred-{i}.png" for i in (0, 1)]
                    run("convert", pictures[0], *soften, blurred[0])
                    run("convert", other, *soften, blurred[1])
                    result = run("compare", "-metric", "AE", "-fuzz", "20%", *blurred, "null:", check=False)
                    width, height = map(int, size.split("x"))
                    different = float(result.stderr.split()[0])
                    self.assertLess(different, width * height * 0.005, f"{different} of {size} pixels differ")

    def test_same_bytes(self):
        again = Path(self.folder.name) / "again.pdf"
        render("hang-tag", again, "--stock", "page-marks", "--only", "26-117:1-2",
               env={"PATH": os.environ["PATH"], "LC_ALL": "de_DE.UTF-8", "TZ": "Pacific/Kiritimati"})
        self.assertEqual(self.files["marked"].read_bytes(), again.read_bytes())


if __name__ == "__main__":
    unittest.main()
