#!/usr/bin/env python3
"""Photographs and logos on paper, read back by outside tools: poppler takes the pictures out of the PDF again, and
ImageMagick says how a photograph looks once it is turned upright (Exif 2.32, tag 274). And colours read from photographs."""

import os
import re
import struct
import subprocess
import tempfile
import unittest
from pathlib import Path

ROOT = Path(__file__).resolve().parents[2]
PROGRAM = os.environ.get("DYELEAF", str(ROOT / "build" / "dyeleaf"))

RECORDS = """
studio: {name: Quillmoor Yarn Works, market: none%s}
bases:
  - id: plain-sock
    name: Plain Sock
    fibre: {merino wool: 75 %%, polyamide: 25 %%}
    skein: {weight: 100 g, length: 420 m}
    care: [hand wash, no bleach, no tumble, no iron, no dry clean]
lots:
  - {id: "26-117", colourway: Hedge in October, base: plain-sock, skeins: 3, dyed: 2026-11-09, picture: photo.jpg}
"""
LAYOUT = """
layout: portrait
for: skeins
shape: {width: 60 mm, height: 60 mm}
stock: page
front:
  column:
    padding: 10 mm
    holds:
      - {picture: lot.picture, height: fill}
"""
LOGO = """<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 40 20">
  <path d="M0 0H20V20H0Z" fill="%s"/><circle cx="30" cy="10" r="8" fill="none" stroke="%s"/></svg>"""


def run(*command, check=True):
    result = subprocess.run([str(part) for part in command], capture_output=True, text=True, check=False)
    if check and result.returncode != 0:
        raise AssertionError(f"{command} ended with {result.returncode}:\n{result.stdout}{result.stderr}")
    return result


def most_memory(mib):
    """A limit to set in a shell. Sanitizers lay claim to more addresses than there is memory: theirs is none."""
    return ":" if "DYELEAF_SANITIZED" in os.environ else f"ulimit -v {mib * 1000}"


def oriented(jpeg, orientation):
    """With an Exif block of one entry (Exif 2.32, 4.6.2), in big-endian order."""
    entry = struct.pack(">HHHIHHI", 1, 0x0112, 3, 1, orientation, 0, 0)
    block = b"Exif\0\0" + b"MM\0\x2a" + struct.pack(">I", 8) + entry
    return jpeg[:2] + b"\xff\xe1" + struct.pack(">H", len(block) + 2) + block + jpeg[2:]


class Pictures(unittest.TestCase):
    def setUp(self):
        scratch = tempfile.TemporaryDirectory()
        self.addCleanup(scratch.cleanup)
        self.here = Path(scratch.name)
        (self.here / "studio" / "layouts").mkdir(parents=True)
        self.write("records.yaml", RECORDS % "")
        self.write("layouts/portrait.yaml", LAYOUT)
        self.write("photo.jpg", self.photo())

    def write(self, name, content):
        path = self.here / "studio" / name
        path.write_bytes(content if isinstance(content, bytes) else content.encode())
        return path

    def photo(self, *options):
        """300 x 200 pixels: four quarters in different colours, sampled and packed as cameras do."""
        quarters = ["(", "xc:#c04030", "xc:#307040", "+append", ")", "(", "xc:#304090", "xc:#e0c050", "+append", ")"]
        file = self.here / "made.jpg"
        run("convert", *quarters, "-append", "-sample", "300x200!", "-quality", "90", *options, file)
        return file.read_bytes()

    def render(self, *options, layout="portrait", suffix="pdf"):
        target = self.here / f"out.{suffix}"
        result = run(PROGRAM, "render", layout, self.here / "studio", "-o", target, "--date", "2026-11-20", *options)
        self.assertEqual("", result.stderr)
        return target

    def images(self, pdf):
        return run("pdfimages", "-list", pdf).stdout.splitlines()[2:]

    def test_a_photograph_is_passed_on_unchanged_and_once(self):
        for name, options in {"baseline": (), "progressive": ("-interlace", "JPEG"), "grey": ("-colorspace", "Gray")}.items():
            with self.subTest(name):
                photo = oriented(self.photo(*options), 6)
                self.write("photo.jpg", photo)
                pdf = self.render()
                run("pdfimages", "-all", pdf, self.here / "taken")
                self.assertEqual(photo, (self.here / "taken-000.jpg").read_bytes())
                objects = {line.split()[10] for line in self.images(pdf)}
                self.assertEqual((3, 1), (len(self.images(pdf)), len(objects)))
                self.assertIn("No syntax or stream encoding errors found", run("qpdf", "--check", pdf).stdout)

    def test_a_photograph_keeps_the_colours_of_its_own_profile(self):
        # Adobe RGB (1998) as ghostscript ships it; ImageMagick and lcms say what its colours are in sRGB.
        profiles = Path("/usr/share/color/icc/ghostscript")
        photo = self.write("photo.jpg", self.photo("-profile", profiles / "srgb.icc", "-profile", profiles / "a98.icc"))
        pdf = self.render()
        self.assertEqual(["icc"] * 3, [line.split()[5] for line in self.images(pdf)])
        run("pdfimages", "-all", pdf, self.here / "taken")
        self.assertEqual(photo.read_bytes(), (self.here / "taken-000.jpg").read_bytes())
        self.assertIn("No syntax or stream encoding errors found", run("qpdf", "--check", pdf).stdout)
        run("gs", "-q", "-dNOPAUSE", "-dBATCH", "-sDEVICE=png16m", "-r127", "-dLastPage=1", f"-sOutputFile={self.here}/page.png", pdf)
        for x, y, wanted in ((100, 110, "#c04030"), (200, 110, "#307040"), (100, 190, "#304090"), (200, 190, "#e0c050")):
            colour = run("convert", self.here / "page.png", "-depth", "8", "-format", f"%[hex:p{{{x},{y}}}]", "info:").stdout
            for channel in (0, 2, 4):
                self.assertAlmostEqual(int(wanted[1 + channel:3 + channel], 16), int(colour[channel:channel + 2], 16), delta=6)

    def test_all_eight_orientations_look_as_they_should(self):
        for orientation in range(1, 9):
            photo = self.write("photo.jpg", oriented(self.photo(), orientation))
            for suffix in ("pdf", "png"):
                with self.subTest(f"{orientation} as {suffix}"):
                    page = self.render("--only", "26-117:1", "--dpi", "127", suffix=suffix)
                    if suffix == "pdf":
                        run("pdftoppm", "-r", "127", "-singlefile", "-png", page, self.here / "page")
                        page = self.here / "page.png"
                    # 40 x 40 mm inside a padding of 10 mm: 200 x 200 pixels, the picture in their middle.
                    wanted = self.here / "wanted.png"
                    run("convert", photo, "-auto-orient", "-resize", "200x200", "-gravity", "center", "-extent", "200x200", wanted)
                    run("convert", page, "-crop", "200x200+50+50", "+repage", self.here / "found.png")
                    # Edges may fall on other pixels; a wrong turn would move at least a quarter of the picture.
                    compared = run("compare", "-metric", "AE", "-fuzz", "8%", wanted, self.here / "found.png", "null:", check=False)
                    self.assertLess(float(compared.stderr.split()[0]), 2000)

    def test_a_logo_is_drawn_not_rastered(self):
        self.write("records.yaml", RECORDS % ", logo: logo.svg")
        self.write("logo.svg", LOGO % ("#a04020", "#204060"))
        for layout in ("hang-tag", "fold-tag", "wrap-band"):
            with self.subTest(layout):
                pdf = self.render(layout=layout)
                self.assertEqual([], self.images(pdf))
                run("pdftoppm", "-r", "100", "-f", "1", "-l", "1", "-singlefile", "-png", pdf, self.here / "page")
                # #a04020 is there, as a patch of some size.
                counted = ("-fuzz", "3%", "-fill", "white", "+opaque", "#a04020", "-fill", "black", "-opaque", "#a04020")
                ink = run("convert", self.here / "page.png", *counted, "-format", "%[fx:(1-mean)*w*h]", "info:").stdout
                self.assertGreater(float(ink), 200)

    def test_a_logo_is_grey_where_all_is_grey(self):
        self.write("records.yaml", RECORDS % ", logo: logo.svg")
        for name, colours, images in (("colours", ("#a04020", "#204060"), True), ("greys", ("#222", "black"), False)):
            with self.subTest(name):
                self.write("logo.svg", LOGO % colours)
                pdf = self.render("--mono", layout="hang-tag")
                self.assertEqual(images, bool(self.images(pdf)))
                run("pdftoppm", "-r", "100", "-f", "1", "-l", "1", "-singlefile", "-png", pdf, self.here / "page")
                saturation = ("-colorspace", "HSL", "-channel", "G", "-separate", "-format", "%[fx:maxima]", "info:")
                self.assertEqual("0", run("convert", self.here / "page.png", *saturation).stdout)

    def test_tags_without_a_logo_keep_their_place(self):
        plain = self.render(layout="hang-tag", suffix="png").with_name("out-1.png").read_bytes()
        self.write("records.yaml", RECORDS % ", logo: logo.svg")
        self.write("logo.svg", LOGO % ("black", "black"))
        self.assertNotEqual(plain, self.render(layout="hang-tag", suffix="png").with_name("out-1.png").read_bytes())

    def test_words_stand_in_for_pictures(self):
        self.write("records.yaml", RECORDS % ", logo: logo.svg, language: de")
        self.write("logo.svg", LOGO % ("black", "black"))
        tags = run("pdfinfo", "-struct-text", self.render("--only", "26-117:1", layout="hang-tag")).stdout
        self.assertIn("Figure", tags)
        self.assertIn(b"Logo von Quillmoor Yarn Works", self.alternative_texts(self.here / "out.pdf"))
        self.write("layouts/portrait.yaml", LAYOUT.replace("height: fill", 'height: fill, alt: "{base.name}, drying"'))
        self.render("--only", "26-117:1")
        self.assertIn(b"Plain Sock, drying", self.alternative_texts(self.here / "out.pdf"))

    def alternative_texts(self, pdf):
        plain = self.here / "plain.pdf"
        run("qpdf", "--qdf", "--object-streams=disable", pdf, plain)
        return b"\n".join(line for line in plain.read_bytes().splitlines() if b"/Alt" in line)

    def test_same_bytes(self):
        self.write("records.yaml", RECORDS % ", logo: logo.svg")
        self.write("logo.svg", LOGO % ("#a04020", "#204060"))
        for layout, suffix in (("portrait", "pdf"), ("hang-tag", "pdf"), ("hang-tag", "svg")):
            pages = []
            for _ in range(2):
                target = self.render("--only", "26-117:1", layout=layout, suffix=suffix)
                pages.append(next(self.here.glob(f"out*.{suffix}")).read_bytes())
                for page in self.here.glob(f"out*.{suffix}"):
                    page.unlink()
            self.assertEqual(*pages, msg=f"{layout}, {target.name}")

    def test_a_large_photograph_takes_little_memory(self):
        # 10 000 x 10 000 pixels are 400 MB unpacked; passed on as they are, they need not be.
        photo = self.here / "studio" / "photo.jpg"
        run("convert", "-size", "10000x10000", "xc:#7a5c8a", photo)
        peak = run("bash", "-c", f'{most_memory(2000)}; exec "$@"', "-", PROGRAM, "render", "portrait",
                   self.here / "studio", "-o", self.here / "large.pdf", "--only", "26-117:1")
        self.assertEqual("", peak.stderr)
        self.assertLess((self.here / "large.pdf").stat().st_size, photo.stat().st_size + 60_000)


PHOTO_RECORDS = """
studio: {name: Quillmoor Yarn Works, market: none%(studio)s}
bases:
  - id: plain-sock
    name: Plain Sock
    fibre: {merino wool: 75 %%, polyamide: 25 %%}
    skein: {weight: 100 g, length: 420 m}
    care: [hand wash, no bleach, no tumble, no iron, no dry clean]
dyes:
  - id: sloe
    name: Sloe
    line: Fenlight acid
    swatches: [{depth: 1 %%, base: plain-sock, colour: %(colour)s, dyed: 2026-03-14}]
lots:
  - {id: "26-117", colourway: Hedge, base: plain-sock, skeins: 3, dyed: 2026-11-09, colour: %(colour)s}
"""
PROFILES = Path("/usr/share/color/icc/ghostscript")


class ColoursFromPhotographs(unittest.TestCase):
    """Pictures by ImageMagick, colours by lcms's own transicc."""

    def setUp(self):
        scratch = tempfile.TemporaryDirectory()
        self.addCleanup(scratch.cleanup)
        self.here = Path(scratch.name)
        self.studio = self.here / "studio"
        self.studio.mkdir()
        self.photo = self.studio / "photo.jpg"

    def records(self, name="photo.jpg", swatch="across: 10 to 40 %, down: 10 to 90 %",
                grey="across: 60 to 90 %, down: 10 to 90 %", light="grey: {%s, lightness: 50}", studio=""):
        colour = "{photo: %s, swatch: {%s}, %s}" % (name, swatch, light % grey)
        (self.studio / "records.yaml").write_text(PHOTO_RECORDS % {"colour": colour, "studio": studio}, encoding="utf-8")

    def check(self):
        return run(PROGRAM, "check", self.studio, "--date", "2026-11-20", check=False)

    def lab(self):
        """As `check` lists it."""
        result = self.check()
        self.assertEqual((0, ""), (result.returncode, result.stderr))
        listed = re.search(r"lab\((\S+) (\S+) (\S+)\)", result.stdout)
        return [float(number) for number in listed.groups()]

    def side_by_side(self, colour, grey, *options, file=None):
        """The colour on the left half, the grey on the right."""
        run("convert", f"xc:{colour}", f"xc:{grey}", "+append", "-sample", "300x200!", "-quality", "95", *options,
            file or self.photo)

    def true_lab(self, colour):
        numbers = " ".join(str(int(colour[i:i + 2], 16)) for i in (1, 3, 5))
        said = subprocess.run(["transicc", "-t", "1", "-n", "-i", PROFILES / "srgb.icc", "-o", "*Lab"], input=numbers,
                              capture_output=True, text=True, check=False).stdout
        return [float(number) for number in said.split()[:3]]

    def assert_lab(self, wanted, found, delta):
        for one, other in zip(wanted, found):
            self.assertAlmostEqual(one, other, delta=delta, msg=f"{wanted}, {found}")

    def test_colours_are_read_through_the_profile_in_the_file(self):
        self.records()
        for colour in ("#8d5a9e", "#c04030", "#3f7a5c", "#e0c050"):
            for name, options in {
                "none": ("-strip",),
                "sRGB": ("-profile", PROFILES / "srgb.icc"),
                "Adobe RGB": ("-profile", PROFILES / "srgb.icc", "-profile", PROFILES / "a98.icc"),
                "ROMM RGB": ("-profile", PROFILES / "srgb.icc", "-profile", PROFILES / "rommrgb.icc"),
            }.items():
                with self.subTest(f"{colour}, {name}"):
                    self.side_by_side(colour, "#777777", *options)
                    self.assert_lab(self.true_lab(colour), self.lab(), 1.5)  # eight bits, and JPEG's own steps
        self.assertIn("READ AS", self.check().stdout)

    def test_png_pictures_of_16_bits_are_exact(self):
        self.records("photo.png")
        png = self.studio / "photo.png"
        for name, options in {
            "none": ("-strip",),
            "Adobe RGB": ("-profile", PROFILES / "srgb.icc", "-profile", PROFILES / "a98.icc"),
            "interlaced": ("-strip", "-interlace", "PNG"),
        }.items():
            with self.subTest(name):
                self.side_by_side("#8d5a9e", "#777777", "-depth", "16", *options, file=png)
                self.assert_lab(self.true_lab("#8d5a9e"), self.lab(), 0.2)

    def test_a_cast_is_taken_off_and_exposure_made_good(self):
        self.records()
        # In linear light: less blue and green, as by a lamp, and a stop too dark.
        lamp = ("-colorspace", "RGB", "-channel", "R", "-evaluate", "multiply", "0.5", "-channel", "G", "-evaluate", "multiply",
                "0.44", "-channel", "B", "-evaluate", "multiply", "0.33", "+channel", "-colorspace", "sRGB", "-strip")
        for colour in ("#8d5a9e", "#c04030", "#3f7a5c"):
            with self.subTest(colour):
                self.side_by_side(colour, "#777777", *lamp)
                self.assert_lab(self.true_lab(colour), self.lab(), 5)

    def test_rectangles_count_in_the_picture_as_it_is_seen(self):
        quarters = ["(", "xc:#c04030", "xc:#307040", "+append", ")", "(", "xc:#304090", "xc:#777777", "+append", ")"]
        run("convert", *quarters, "-append", "-sample", "300x200!", "-strip", "-quality", "95", self.here / "made.jpg")
        jpeg = (self.here / "made.jpg").read_bytes()
        for orientation in range(1, 9):
            self.photo.write_bytes(oriented(jpeg, orientation))
            seen = {}
            for x in (0, 1):
                for y in (0, 1):
                    seen[x, y] = run("convert", self.photo, "-auto-orient", "-sample", "2x2!", "-depth", "8", "-format",
                                     f"%[hex:p{{{x},{y}}}]", "info:").stdout[:6]
            grey = next(place for place, colour in seen.items() if all(abs(int(colour[i:i + 2], 16) - 0x77) < 4 for i in (0, 2, 4)))
            area = lambda x, y: f"across: {50 * x + 10} to {50 * x + 40} %, down: {50 * y + 10} to {50 * y + 40} %"
            for place in set(seen) - {grey}:
                with self.subTest(f"{orientation}, {place}"):
                    self.records(swatch=area(*place), grey=area(*grey))
                    self.assert_lab(self.true_lab("#" + seen[place]), self.lab(), 1.5)

    def complaint(self):
        result = self.check()
        self.assertEqual(1, result.returncode, result.stdout)
        return re.search(r"error: (.*)", result.stderr).group(1)

    def test_what_cannot_be_read_says_why(self):
        self.records()
        self.side_by_side("#8d5a9e", "#777777", "-colorspace", "CMYK")
        self.assertEqual("the picture “photo.jpg” is in the four inks of a press (CMYK)", self.complaint())
        self.side_by_side("#8d5a9e", "#777777", "-colorspace", "Gray")
        self.assertEqual("the picture “photo.jpg” is in shades of grey", self.complaint())
        self.side_by_side("#8d5a9e", "#777777")
        whole = self.photo.read_bytes()
        self.photo.write_bytes(whole[:len(whole) * 2 // 3])
        self.assertIn("is broken", self.complaint())
        self.photo.write_bytes(b"\0\0\0\x18ftypheic\0\0\0\0")
        self.assertIn("is a HEIC file", self.complaint())
        for profile, words in (("default_cmyk.icc", "has a colour profile for the four inks of a press"),
                               ("sgray.icc", "has a colour profile for greys"),
                               ("lab.icc", "has a colour profile that is not for red, green and blue"),
                               (None, "has a broken colour profile")):
            icc = (PROFILES / profile).read_bytes() if profile else b"torn" * 100
            pieces = [icc[i:i + 60000] for i in range(0, len(icc), 60000)]
            markers = b""
            for number, piece in enumerate(pieces, 1):  # ICC.1:2010, B.4
                block = b"ICC_PROFILE\0" + bytes((number, len(pieces))) + piece
                markers += b"\xff\xe2" + struct.pack(">H", len(block) + 2) + block
            self.photo.write_bytes(whole[:2] + markers + whole[2:])
            self.assertEqual(f"the picture “photo.jpg” {words}", self.complaint())
        self.photo.write_bytes(whole)
        self.records(swatch="across: 10 to 400 px, down: 10 to 90 %")
        self.assertEqual("“across” ends at 400 px, and the picture is 300 pixels wide", self.complaint())
        self.records(swatch="across: 10 to 65 %, down: 10 to 90 %")
        self.assertEqual("this rectangle lies over that of the swatch", self.complaint())
        self.records(name="logo.svg")
        (self.studio / "logo.svg").write_text(LOGO % ("black", "black"), encoding="utf-8")
        self.assertEqual("the picture “logo.svg” is a drawing", self.complaint())
        self.records(name="phto.jpg")
        self.assertIn("there is no picture called “phto.jpg”", self.complaint())

    def test_a_doubtful_photograph_is_warned_of(self):
        self.records(light="white: {%s, lightness: 95}")
        self.side_by_side("#8d5a9e", "#ffffff", "-strip")
        result = self.check()
        self.assertEqual(0, result.returncode)
        self.assertIn("the white beside Sloe at 1 % on Plain Sock is over-exposed", result.stderr)

    def test_a_large_photograph_is_read_once_and_quickly(self):
        run("convert", "-size", "4032x3024", "plasma:#a05030-#b06040", "-fill", "#777777", "-draw", "rectangle 2016,0 4032,3024",
            "-strip", "-quality", "92", self.photo)
        self.records()
        peak = run("bash", "-c", f'{most_memory(400)}; time -p "$@"', "-", PROGRAM, "check", self.studio)
        seconds = float(re.search(r"user (\S+)", peak.stderr).group(1))
        self.assertLess(seconds, 4)  # well under one where the program is built to be used

    def test_paper_says_that_a_colour_is_from_a_photograph(self):
        self.side_by_side("#8d5a9e", "#777777", "-strip")
        for studio, words in (("", "from a photo"), (", language: de", "nach Foto"), (", language: fr", "d’après photo")):
            self.records(studio=studio)
            for layout in ("hang-tag", "dye-card", "dye-cards", "dye-strip", "dye-index"):
                for ink in ((), ("--mono",), ("--mono", "--save-ink")):
                    with self.subTest(f"{layout}, {words}, {ink}"):
                        target = self.here / "out.pdf"
                        result = run(PROGRAM, "render", layout, self.studio, "-o", target, "--date", "2026-11-20", *ink)
                        self.assertEqual("", result.stderr)
                        text = " ".join(run("pdftotext", target, "-").stdout.split())
                        self.assertIn(words, text)


if __name__ == "__main__":
    unittest.main()
