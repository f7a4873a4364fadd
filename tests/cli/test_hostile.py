#!/usr/bin/env python3
"""Input that means harm or is badly broken: each a clear complaint, soon, and without filling the memory."""

import os
import struct
import subprocess
import sys
import tempfile
import unittest
import xml.etree.ElementTree
import zlib
from pathlib import Path

ROOT = Path(__file__).resolve().parents[2]
PROGRAM = os.environ.get("DYELEAF", str(ROOT / "build" / "dyeleaf"))
DAY = ("--date", "2026-11-20")
# Seconds of processor time and MiB of memory, many times what is needed; sanitizers ask for more of both.
SANITIZED = "DYELEAF_SANITIZED" in os.environ
MOST_SECONDS, MOST_MIB = (6, 1200) if SANITIZED else (1, 150)

STUDIO = "studio: {name: Quillmoor Yarn Works, market: none}\n"
DYE = "dyes:\n  - {id: sloe, line: Fenlight acid, name: %s}\n"
# Measures what the program needs, and hands on what it says and how it ended.
MEASURE = """
import resource, subprocess, sys
done = subprocess.run(sys.argv[1:], capture_output=True)
used = resource.getrusage(resource.RUSAGE_CHILDREN)
sys.stdout.buffer.write(done.stdout + done.stderr)
print("\\nUSED", done.returncode, used.ru_utime + used.ru_stime, used.ru_maxrss // 1024)
"""


def png(width, height):
    """A PNG that declares its size and holds next to nothing."""

    def chunk(kind, data):
        return struct.pack(">I", len(data)) + kind + data + struct.pack(">I", zlib.crc32(kind + data))

    header = struct.pack(">IIBBBBB", width, height, 8, 2, 0, 0, 0)
    return b"\x89PNG\r\n\x1a\n" + chunk(b"IHDR", header) + chunk(b"IDAT", zlib.compress(b"\0" * 64)) + chunk(b"IEND", b"")


class Hostile(unittest.TestCase):
    def setUp(self):
        scratch = tempfile.TemporaryDirectory()
        self.addCleanup(scratch.cleanup)
        self.here = Path(scratch.name)
        self.studio = self.here / "studio"
        self.studio.mkdir()
        (self.studio / "studio.yaml").write_text(STUDIO)

    def put(self, name, content):
        (self.studio / name).write_bytes(content if isinstance(content, bytes) else content.encode())

    def run_it(self, *words, status):
        done = subprocess.run(
            [sys.executable, "-c", MEASURE, PROGRAM, *map(str, words)],
            cwd=self.here,
            capture_output=True,
            check=True,
            timeout=60,
        )
        said, _, used = done.stdout.decode("utf-8").rpartition("\nUSED ")
        code, seconds, mib = used.split()
        self.assertEqual(int(code), status, said)
        self.assertLess(float(seconds), MOST_SECONDS)
        self.assertLess(int(mib), MOST_MIB)
        self.assertNotIn("Sanitizer", said)
        return said

    def refused(self, words, name, content):
        self.put(name, content)
        said = self.run_it("check", "studio", *DAY, status=1)
        self.assertIn(words, said)
        return said


class Texts(Hostile):
    def test_aliases_that_multiply(self):
        lines = ["a0: &a0 [x, x, x, x, x, x, x, x, x]"]
        lines += [f"a{n}: &a{n} [{', '.join(f'*a{n - 1}' for _ in range(9))}]" for n in range(1, 20)]
        self.refused("there is too much in this file to be records", "bomb.yaml", "\n".join(lines))

    def test_brackets_in_brackets(self):
        self.refused("stand inside one another too deeply", "deep.yaml", "dyes: " + "[\n" * 20_000)
        self.refused("stand inside one another too deeply", "deep.yaml", "dyes: " + "{a: \n" * 20_000)

    def test_lists_in_lists_by_indentation(self):
        self.refused("stand inside one another too deeply", "deep.yaml", "dyes:\n  " + "- " * 5_000 + "x\n")

    def test_a_file_of_100_megabytes(self):
        with open(self.studio / "huge.yaml", "wb") as file:
            file.truncate(100_000_000)
        self.assertIn("the file is larger than 16 MiB", self.run_it("check", "studio", status=1))

    def test_a_text_of_a_megabyte(self):
        self.refused("this line is 1000", "long.yaml", DYE % ("a" * 1_000_000))
        self.refused("a single text of", "long.yaml", "notes: |\n" + ("  " + "a" * 998 + "\n") * 1_000)

    def test_nothing_but_nuls(self):
        self.refused("this is not a text file", "nul.yaml", b"\0" * 100_000)

    def test_a_name_that_runs_backwards_is_shown_and_not_obeyed(self):
        said = self.refused("makes text run backwards", "dyes.yaml", DYE % "Slo\u202eeols")
        self.assertIn("Slo.eols", said)
        self.assertNotIn("\u202e", said)
        said = self.refused("invisible control character", "dyes.yaml", DYE % '"Slo\\u202Eeols"')
        self.assertNotIn("\u202e", said)

    def test_orders_to_the_terminal_are_not_given(self):
        said = self.refused("invisible control character", "dyes.yaml", DYE % '"\\e[31mSloe"')
        self.assertNotIn("\x1b", said)

    def test_markup_prints_as_it_stands(self):
        name = "<b>Sloe</b> &amp; {dye.code} %s \\\\ $(reboot) </text>"
        self.put("dyes.yaml", DYE % f"'{name}'")
        self.run_it("render", "dye-strip", "studio", "-o", "card.pdf", *DAY, status=0)
        told = subprocess.run(
            ["pdftotext", "-raw", "card.pdf", "-"], cwd=self.here, capture_output=True, text=True, check=True
        ).stdout
        self.assertIn("".join(name.split()), "".join(told.split()))
        self.run_it("render", "dye-strip", "studio", "-o", "card.svg", *DAY, status=0)
        for card in self.here.glob("card*.svg"):
            xml.etree.ElementTree.parse(card)


class Places(Hostile):
    def test_what_is_no_file(self):
        (self.studio / "folder.yaml").mkdir()
        os.mkfifo(self.studio / "pipe.yaml")
        (self.studio / "device.yaml").symlink_to("/dev/zero")
        (self.studio / "gone.yaml").symlink_to("nowhere")
        (self.studio / "round.yaml").symlink_to("round.yaml")
        said = self.run_it("check", "studio", status=1)
        for name in ("folder", "pipe", "device", "gone", "round"):
            self.assertIn(f"studio/{name}.yaml: error: ", said)

    def test_pictures_outside_the_folder(self):
        (self.here / "secret.png").write_bytes(png(2, 2))
        (self.studio / "link.png").symlink_to(self.here / "secret.png")
        (self.studio / "up").symlink_to(self.here)
        for name in ("../secret.png", str(self.here / "secret.png"), "up/../../secret.png"):
            self.put("studio.yaml", f"studio: {{name: Quillmoor, market: none, logo: '{name}'}}\n")
            self.assertIn("the picture must lie in the folder of this file", self.run_it("check", "studio", status=1))
        for name in ("link.png", "up/secret.png"):
            self.put("studio.yaml", f"studio: {{name: Quillmoor, market: none, logo: '{name}'}}\n")
            self.assertIn("is a link to a file outside the folder", self.run_it("check", "studio", status=1))


class Pictures(Hostile):
    def refused_picture(self, words, name, content):
        self.put(name, content)
        self.refused(words, "studio.yaml", f"studio: {{name: Quillmoor, market: none, logo: {name}}}\n")

    def test_more_pixels_than_any_memory_holds(self):
        self.refused_picture("50000", "huge.png", png(50_000, 50_000))
        self.refused_picture("huge.png” is broken", "huge.png", png(0xFFFFFFFF, 0xFFFFFFFF))
        jpeg = self.jpeg()
        frame = jpeg.index(b"\xff\xc0")
        self.refused_picture("65500", "huge.jpg", jpeg[: frame + 5] + struct.pack(">HH", 65_500, 65_500) + jpeg[frame + 9 :])

    def test_pictures_cut_short(self):
        jpeg = self.jpeg()
        for length in (0, 1, 2, 20, len(jpeg) // 2, len(jpeg) - 2):
            self.refused_picture("cut.jpg", "cut.jpg", jpeg[:length])
        whole = png(4, 4)
        for length in (1, 8, 20, len(whole) - 12):
            self.refused_picture("cut.png", "cut.png", whole[:length])

    def test_a_drawing_that_refers_to_itself_and_to_the_world(self):
        self.refused_picture("bomb.svg", "bomb.svg", '<!DOCTYPE svg [<!ENTITY a "&b;&b;"><!ENTITY b "&a;&a;">]><svg>&a;</svg>')
        drawing = '<svg xmlns="http://www.w3.org/2000/svg" width="9" height="9"><g id="a"><use href="#a"/></g></svg>'
        self.put("round.svg", drawing)
        self.put("studio.yaml", "studio: {name: Quillmoor, market: none, logo: round.svg}\n")
        said = subprocess.run([PROGRAM, "check", "studio"], cwd=self.here, capture_output=True, timeout=20, check=False)
        self.assertIn(said.returncode, (0, 1))
        self.refused_picture("out.svg", "out.svg", drawing.replace("#a\"/>", "file:///etc/passwd#a\"/>"))

    def jpeg(self):
        made = self.here / "made.jpg"
        subprocess.run(["convert", "-size", "64x64", "plasma:grey-red", made], check=True)
        return made.read_bytes()


class Fonts(Hostile):
    def test_fonts_that_are_none(self):
        fonts = self.studio / "fonts"
        fonts.mkdir()
        (fonts / "junk.ttf").write_bytes(os.urandom(2000))
        (fonts / "text.otf").write_text("not a font")
        (fonts / "empty.ttf").write_bytes(b"")
        inter = next((ROOT / "fonts").rglob("*.ttf")).read_bytes()
        (fonts / "cut.ttf").write_bytes(inter[:4000])
        self.put("dyes.yaml", DYE % "Sloe")
        said = self.run_it("render", "dye-strip", "studio", "-o", "card.pdf", *DAY, status=0)
        for name in ("junk.ttf", "text.otf", "empty.ttf", "cut.ttf"):
            self.assertIn(f"{name}” is not a font that can be read", said)


if __name__ == "__main__":
    unittest.main()
