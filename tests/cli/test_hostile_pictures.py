#!/usr/bin/env python3
"""Pictures, fonts and profiles that mean harm or are badly broken: each a clear complaint, soon, and in little memory."""

import os
import random
import struct
import subprocess
import unittest
import zlib
from pathlib import Path

from hostile import DAY, DYE, ROOT, STUDIO, Hostile


def chunk(kind, data):
    return struct.pack(">I", len(data)) + kind + data + struct.pack(">I", zlib.crc32(kind + data))


def png(width, height, data=zlib.compress(b"\0" * 64), extra=b""):
    """A PNG that declares its size and holds next to nothing."""
    header = struct.pack(">IIBBBBB", width, height, 8, 2, 0, 0, 0)
    return b"\x89PNG\r\n\x1a\n" + chunk(b"IHDR", header) + extra + chunk(b"IDAT", data) + chunk(b"IEND", b"")


WHOLE_PNG = zlib.compress(b"\0" * 64 * 193)  # of 64 × 64 pixels


def jpeg(*options):
    command = ["convert", "-size", "64x64", "plasma:grey-red", *options, "jpg:-"]
    return subprocess.run(command, capture_output=True, check=True).stdout


def declared(picture, width, height):
    """A JPEG that says it is so large."""
    frame = picture.index(b"\xff\xc2" if b"\xff\xc2" in picture else b"\xff\xc0")
    return picture[: frame + 5] + struct.pack(">HH", height, width) + picture[frame + 9 :]


def with_marker(picture, kind, *blocks):
    for block in blocks:
        picture = picture[:2] + b"\xff" + kind + struct.pack(">H", len(block) + 2) + block + picture[2:]
    return picture


def of_many_scans(side, scans):
    """A grey JPEG whose scans say in a few bytes that nothing changes (ISO/IEC 10918-1, G.1.2.2)."""
    frame = struct.pack(">HBHHBBBB", 11, 8, side, side, 1, 1, 0x11, 0)
    tables = struct.pack(">HB", 67, 0) + b"\1" * 64
    codes = struct.pack(">HB", 20, 0x10) + b"\1" + bytes(15) + b"\xe0"  # one code: a run of 16384 blocks or more
    runs = (side // 8 + 1) ** 2 // 16384 + 1
    scan = b"\xff\xda" + struct.pack(">HBBBBBB", 8, 1, 1, 0, 1, 63, 0) + bytes(runs * 15 // 8 + 1)
    return b"\xff\xd8\xff\xdb" + tables + b"\xff\xc2" + frame + b"\xff\xc4" + codes + scan * scans + b"\xff\xd9"


EXIF = b"Exif\0\0II*\0\x08\0\0\0"


def layout_of(box, font="Inter"):
    return f"""layout: mine
for: dyes
shape: {{width: 60 mm, height: 60 mm}}
stock: page
styles: {{body: {{font: {font}, size: 9 pt}}}}
front: {{column: [{box}]}}
"""


LAYOUT = layout_of("{picture: studio.logo, width: 40 mm, height: 40 mm, alt: our mark}")
PHOTOGRAPHED = """
bases: [{id: plain, name: Plain, fibre: {wool: 100 %%}, skein: {weight: 100 g, length: 400 m}}]
dyes:
  - id: sloe
    line: Fenlight acid
    name: Sloe
    swatches:
      - depth: 1 %%
        base: plain
        colour:
          photo: %s
          swatch: {across: 0 to 40 %%, down: 0 to 100 %%}
          grey: {across: 50 to 90 %%, down: 0 to 100 %%, lightness: 50}
"""


class Tried(Hostile):
    def tried(self, name, content, status):
        """As a logo that is looked at, drawn in a PDF and in a PNG, and as a photograph of a swatch: what is said."""
        self.put(name, content)
        self.put("layouts/mine.yaml", LAYOUT)
        self.put("studio.yaml", f"studio: {{name: Quillmoor, market: none, logo: {name}}}\n")
        self.put("dyes.yaml", DYE % "Sloe")
        said = [self.run_it("check", "studio", *DAY, status=status)]
        said += [self.run_it("render", "mine", "studio", "-o", f"x.{kind}", *DAY, status=status) for kind in ("pdf", "png")]
        self.put("studio.yaml", STUDIO)
        self.put("dyes.yaml", PHOTOGRAPHED % name)
        self.run_it("check", "studio", *DAY, status=(0, 1))
        return said

    def refused_picture(self, words, name, content):
        for said in self.tried(name, content, status=1):
            self.assertIn(f"the picture “{name}” ", said)
            self.assertIn(words, said)


class Pictures(Tried):
    def test_more_pixels_than_any_memory_holds(self):
        self.refused_picture("is 50000 × 50000 pixels large", "huge.png", png(50_000, 50_000))
        self.refused_picture("is broken", "huge.png", png(0xFFFFFFFF, 0xFFFFFFFF))
        for picture in (jpeg(), jpeg("-interlace", "JPEG")):
            self.refused_picture("is 50000 × 50000 pixels large", "huge.jpg", declared(picture, 50_000, 50_000))
        entries = struct.pack("<HHII", 256, 4, 1, 50_000) + struct.pack("<HHII", 257, 4, 1, 50_000)
        self.refused_picture("is a TIFF file", "huge.tif", b"II*\0" + struct.pack("<IH", 8, 2) + entries + bytes(4))

    def test_a_progressive_picture_that_fills_the_memory(self):
        picture = declared(jpeg("-interlace", "JPEG"), 10_000, 10_000)
        self.refused_picture("is a progressive JPEG, and too large", "huge.jpg", picture)

    def test_scans_without_end(self):
        self.refused_picture("is broken", "scans.jpg", of_many_scans(3_000, 20_000))

    def test_pictures_cut_short(self):
        whole = jpeg()
        for length in (0, 1, 2, 20, len(whole) // 2, len(whole) - 2):
            self.refused_picture("", "cut.jpg", whole[:length])
        whole = png(64, 64, WHOLE_PNG)
        for length in (1, 8, 20, len(whole) - 12):
            self.refused_picture("", "cut.png", whole[:length])

    def test_exif_in_circles(self):
        def entry(tag, kind, count, value):
            return struct.pack("<HHII", tag, kind, count, value)

        for folder in (
            struct.pack("<H", 1) + entry(34665, 4, 1, 8) + struct.pack("<I", 8),
            struct.pack("<H", 1) + entry(274, 3, 0xFFFFFFFF, 0xFFFFFFF0) + bytes(4),
            struct.pack("<H", 1) + entry(274, 3, 1, 99) + struct.pack("<I", 0xFFFFFFFF),
            struct.pack("<H", 0xFFFF) + bytes(200),
        ):
            self.tried("circle.jpg", with_marker(jpeg(), b"\xe1", EXIF + folder), status=0)
        self.tried("many.jpg", with_marker(jpeg(), b"\xe1", *[EXIF] * 3_000), status=0)

    def test_profiles_and_remarks_larger_than_the_picture(self):
        piece = b"ICC_PROFILE\0\x01\xff" + bytes(60_000)
        self.tried("profile.jpg", with_marker(jpeg(), b"\xe2", *[piece] * 100), status=0)
        self.tried("remark.jpg", with_marker(jpeg(), b"\xfe", *[bytes(65_000)] * 100), status=0)
        bomb = zlib.compress(bytes(100_000_000), 9)
        self.tried("profile.png", png(64, 64, WHOLE_PNG, chunk(b"iCCP", b"x\0\0" + bomb)), status=0)
        self.tried("remark.png", png(64, 64, WHOLE_PNG, chunk(b"zTXt", b"x\0\0" + bomb) * 5), status=0)
        self.tried("chunks.png", png(64, 64, WHOLE_PNG, chunk(b"tEXt", b"a\0b") * 100_000), status=0)

    def test_a_picture_of_more_than_100_megabytes(self):
        self.put("huge.jpg", jpeg())
        os.truncate(self.studio / "huge.jpg", 110_000_000)
        self.refused("is larger than 100 MB", "studio.yaml", "studio: {name: Quillmoor, market: none, logo: huge.jpg}\n")

    def test_what_is_no_picture(self):
        (self.studio / "folder.jpg").mkdir()
        os.mkfifo(self.studio / "pipe.jpg")
        (self.studio / "round.jpg").symlink_to("round.jpg")
        for name in ("folder.jpg", "pipe.jpg", "round.jpg"):
            self.refused("pict", "studio.yaml", f"studio: {{name: Quillmoor, market: none, logo: {name}}}\n")

class Drawings(Tried):
    def drawing(self, inside, size=9):
        return (f'<svg xmlns="http://www.w3.org/2000/svg" xmlns:xlink="http://www.w3.org/1999/xlink" '
                f'width="{size}" height="{size}">{inside}</svg>')

    def refused_drawing(self, words, inside):
        self.refused_picture(words, "bad.svg", self.drawing(inside))

    def refused_when_drawn(self, words, inside):
        """What only drawing it can tell."""
        self.put("bad.svg", self.drawing(inside))
        self.put("layouts/mine.yaml", LAYOUT)
        self.put("studio.yaml", "studio: {name: Quillmoor, market: none, logo: bad.svg}\n")
        self.put("dyes.yaml", DYE % "Sloe")
        for kind in ("pdf", "png", "svg"):
            said = self.run_it("render", "mine", "studio", "-o", f"x.{kind}", *DAY, status=1)
            self.assertIn(f"the drawing “studio/bad.svg” {words}", said)

    def test_entities(self):
        laughs = "".join(f'<!ENTITY l{n} "{f"&l{n - 1};" * 10}">' for n in range(1, 12))
        for inside in ("&l11;", '<g id="&l11;"/>'):
            self.refused_picture("", "bad.svg", f'<!DOCTYPE svg [<!ENTITY l0 "x">{laughs}]>{self.drawing(inside)}')
        stranger = '<!DOCTYPE svg [<!ENTITY x SYSTEM "file:///etc/passwd">]>' + self.drawing("<desc>&x;</desc>")
        self.refused_picture("has an abbreviation in it", "bad.svg", stranger)

    def test_what_lies_outside(self):
        for inside in (
            '<use href="file:///etc/passwd#a"/>',
            '<use xlink:href="other.svg#a"/>',
            '<rect fill="url(file:///etc/passwd#a)" width="3" height="3"/>',
            "<style>@import 'other.css';</style>",
            "<style>rect { fill: url('other.svg#a') }</style>",
        ):
            self.refused_drawing("needs something that lies outside the file", inside)

    def test_elements_in_elements(self):
        self.refused_drawing("is broken", "<g>" * 100_000 + "</g>" * 100_000)
        nested = "<g opacity='0.5'>" * 200 + '<rect width="9" height="9"/>' + "</g>" * 200
        self.tried("nested.svg", self.drawing(nested), status=0)

    def test_parts_that_multiply(self):
        uses = '<g id="a0"><rect width="1" height="1"/></g>'
        uses += "".join(f'<g id="a{n}">' + f'<use xlink:href="#a{n - 1}"/>' * 10 + "</g>" for n in range(1, 20))
        self.refused_drawing("draws its parts over and over", f'<defs>{uses}</defs><use href="#a19"/>')
        masks = "".join(
            f'<mask id="m{n}">' + f'<rect width="9" height="9" mask="url(#m{n + 1})"/>' * 8 + "</mask>" for n in range(12)
        )
        self.refused_drawing("draws its parts over and over", masks + '<rect width="9" height="9" mask="url(#m0)"/>')

    def test_lines_that_cross_without_end(self):
        chance = random.Random(1)
        lines = "".join(f"L{chance.random() * 9:.2f} {chance.random() * 9:.2f}" for _ in range(100_000))
        self.refused_when_drawn("takes too long to draw", f'<path d="M0 0{lines}"/>')

    def test_drawings_that_show_nothing(self):
        for inside in ("", '<g id="a"><use href="#a"/></g>', '<rect width="9" height="9" fill="none"/>'):
            self.tried("blank.svg", self.drawing(inside), status=0)

    def test_sizes_that_cannot_be(self):
        for size in ("1e9", "nan", "-5", "0", ""):
            self.refused_picture("does not say how wide", "bad.svg", self.drawing('<rect width="9" height="9"/>', size))
        self.tried("huge.svg", self.drawing('<rect width="1e9" height="1e9"/>', 1_000_000_000), status=0)


class Fonts(Hostile):
    def test_fonts_that_are_none(self):
        sound = next((ROOT / "fonts").rglob("*.ttf")).read_bytes()
        self.put("dyes.yaml", DYE % "Sloe")
        self.put("fonts/junk.ttf", random.Random(1).randbytes(200_000))
        self.put("fonts/text.otf", "not a font")
        self.put("fonts/empty.ttf", b"")
        self.put("fonts/cut.ttf", sound[:4000])
        self.put("fonts/zeros.ttf", "")
        os.truncate(self.studio / "fonts" / "zeros.ttf", 100_000_000)
        for command in (("check", "studio"), ("layouts", "studio"), ("render", "dye-strip", "studio", "-o", "card.pdf")):
            said = self.run_it(*command, status=0)
            for name in ("junk.ttf", "text.otf", "empty.ttf", "cut.ttf", "zeros.ttf"):
                self.assertIn(f"{name}” is not a font that can be read", said)

    def test_fonts_with_something_missing(self):
        self.put("dyes.yaml", DYE % "Sloe")
        for font in sorted((ROOT / "fonts").rglob("*.ttf"))[:2]:
            sound = font.read_bytes()
            for part in (0.2, 0.5, 0.8, 0.99):
                self.put("fonts/cut.ttf", sound[: int(len(sound) * part)])
                self.run_it("render", "dye-strip", "studio", "-o", "card.pdf", *DAY, status=0)

    def test_fonts_with_something_spoilt(self):
        sound = (ROOT / "fonts" / "Vollkorn-SemiBold.ttf").read_bytes()
        for coding in ("ascii", "utf-16-be"):  # a family of its own
            sound = sound.replace("Vollkorn".encode(coding), "Quillorn".encode(coding))
        tables = [struct.unpack(">4sIII", sound[at : at + 16]) for at in range(12, 12 + 16 * sound[5], 16)]
        self.put("layouts/mine.yaml", layout_of('{text: "{dye.name}"}', font="Quillorn"))
        self.put("dyes.yaml", DYE % "Sloe fi affluent ÄÖ 123")
        chance = random.Random(7)
        for name, _, start, length in tables:
            if name == b"name":
                continue
            spoilt = bytearray(sound)
            for _ in range(chance.choice((1, 20, 200))):
                spoilt[start + chance.randrange(length)] = chance.choice((0, 255, chance.randrange(256)))
            self.put("fonts/spoilt.ttf", bytes(spoilt))
            for file in ("x.pdf", "x.png"):
                with self.subTest(table=name, file=file):
                    self.run_it("render", "mine", "studio", "-o", file, *DAY, status=(0, 1))

    def test_what_is_no_file(self):
        self.put("dyes.yaml", DYE % "Sloe")
        (self.studio / "fonts" / "folder.ttf").mkdir(parents=True)
        os.mkfifo(self.studio / "fonts" / "pipe.ttf")
        (self.studio / "fonts" / "round.ttf").symlink_to("round.ttf")
        self.run_it("render", "dye-strip", "studio", "-o", "card.pdf", *DAY, status=0)


class Profiles(Hostile):
    def refused_profile(self, file):
        self.put("dyes.yaml", DYE % "Sloe")
        for command in (("gamut", "studio", "--profile"), ("render", "dye-strip", "studio", "-o", "x.png", "--as-printed-by")):
            self.assertIn(f"error: “{file}” ", self.run_it(*command, file, status=1))

    def test_profiles_that_are_none(self):
        file = self.here / "printer.icc"
        sound = Path("/usr/share/color/icc/ghostscript/default_cmyk.icc").read_bytes()
        for content in (
            b"",
            b"not a profile",
            random.Random(1).randbytes(100_000),
            sound[:5_000],
            sound[:-1],
            sound[:128] + struct.pack(">I", 0xFFFFFFFF) + sound[132:],
            sound[:132] + b"\xff" * 1_200 + sound[1_332:],
        ):
            file.write_bytes(content)
            self.refused_profile(file)

    def test_profiles_with_something_spoilt(self):
        sound = Path("/usr/share/color/icc/ghostscript/default_cmyk.icc").read_bytes()
        self.put("dyes.yaml", DYE % "Sloe")
        chance = random.Random(5)
        for _ in range(20):
            spoilt = bytearray(sound)
            for _ in range(40):
                spoilt[chance.randrange(128, 1_400)] = chance.randrange(256)
            (self.here / "printer.icc").write_bytes(spoilt)
            # Little CMS allows a table to have 512 MiB.
            self.run_it("gamut", "studio", "--profile", "printer.icc", status=(0, 1), most_mib=1_200)

    def test_what_is_no_file(self):
        os.mkfifo(self.here / "pipe.icc")
        (self.here / "huge.icc").touch()
        os.truncate(self.here / "huge.icc", 10_000_000_000)
        for file in ("pipe.icc", "huge.icc", "/dev/zero", "/dev/null", "/", "nowhere.icc"):
            self.refused_profile(file)


if __name__ == "__main__":
    unittest.main()
