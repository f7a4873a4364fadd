#!/usr/bin/env python3
"""Records, layouts and folders that mean harm or are badly broken: each a clear complaint, soon, and in little memory."""

import os
import random
import socket
import subprocess
import unittest
import xml.etree.ElementTree
from pathlib import Path

from hostile import DAY, DYE, PROGRAM, READERS, STRIP, Hostile


def make_socket(file):
    with socket.socket(socket.AF_UNIX) as made:
        made.bind(str(file))


class Texts(Hostile):
    def test_aliases_that_multiply(self):
        lines = ["a0: &a0 [x, x, x, x, x, x, x, x, x]"]
        lines += [f"a{n}: &a{n} [{', '.join(f'*a{n - 1}' for _ in range(9))}]" for n in range(1, 20)]
        self.everywhere("there is too much in this file to be records", "\n".join(lines))

    def test_merged_keys_that_multiply(self):
        lines = ["b0: &b0 {k: v}"]
        lines += [f"b{n}: &b{n}\n  <<: [{', '.join(f'*b{n - 1}' for _ in range(9))}]" for n in range(1, 20)]
        self.everywhere("there is too much in this file to be records", "\n".join(lines))

    def test_brackets_in_brackets(self):
        self.everywhere("stand inside one another too deeply", "dyes: " + "[\n" * 20_000)
        self.everywhere("stand inside one another too deeply", "dyes: " + "{a: \n" * 20_000)

    def test_lists_in_lists_by_indentation(self):
        self.everywhere("stand inside one another too deeply", "dyes:\n  " + "- " * 5_000 + "x\n")

    def test_a_file_of_100_megabytes(self):
        for name, commands in READERS.items():
            self.put(name, "")
            os.truncate(self.studio / name, 100_000_000)
            for command in commands:
                self.assertIn(f"{name}: error: the file is larger than 16 MiB", self.run_it(*command, status=1))
            (self.studio / name).unlink()
        self.put("dyes.yaml", DYE % "Sloe")
        self.put("printed.txt", "")
        os.truncate(self.studio / "printed.txt", 100_000_000)
        self.assertIn("printed.txt: error: the file is larger", self.run_it(*STRIP, "--remember", status=1))

    def test_a_text_of_a_megabyte(self):
        self.everywhere("this line is 1000", DYE % ("a" * 1_000_000))
        self.everywhere("a single text of", "notes: |\n" + ("  " + "a" * 998 + "\n") * 1_000)

    def test_what_is_no_text(self):
        self.everywhere("this is not a text file", b"\0" * 100_000)
        self.everywhere("a character here is not UTF-8", random.Random(1).randbytes(100_000).replace(b"\0", b"\xff"))
        self.everywhere("the file is saved as UTF-16", (DYE % "Sloe").encode("utf-16"))
        self.everywhere("the lines end in a way that no system uses now", (DYE % "Sloe").replace("\n", "\r"))

    def test_more_mistakes_than_anybody_reads(self):
        for name in READERS:
            self.put(name, "".join(f"k{n}: v\n" for n in range(6_000)))
            for command in READERS[name]:
                said = self.run_it(*command, status=1)
                self.assertRegex(said, r"… and \d+ more errors")
                self.assertLess(len(said), 500_000)
            (self.studio / name).unlink()

    def test_a_studio_of_thousands_of_files(self):
        for number in range(3_000):
            self.put(f"{number}.yaml", f"dyes: [{{id: d{number}, line: Fenlight, name: Dye {number}}}]\n")
        self.assertIn("d2999", self.run_it("list", "studio", status=0))
        self.assertIn("3000 dyes", self.run_it("check", "studio", *DAY, status=0))

    def test_markup_in_the_names_of_files_and_in_words_typed(self):
        names = ["line\nbreak", "\x1b[31mred", "back\u202ewards", os.fsdecode(b"latin\xe9\x9b31m")]
        self.put("dyes.yaml", DYE % "Sloe")
        for name in names:
            for folder, ending in (("", "yaml"), ("layouts", "yaml"), ("layouts/stocks", "yaml"), ("fonts", "ttf")):
                self.put(Path(folder) / f"{name}.{ending}", "a: [")
        typed = [(*STRIP, "--only"), (*STRIP, "--stock"), ("facts", "studio"), ("near", "studio"), ("check",), ("new",),
                 ("render", "dye-strip", "studio", "-o"), ("gamut", "studio", "--profile"), (), ("check", "studio"),
                 ("list", "studio", "--also-read"), ("measure", "-o", "m.pdf", "--paper"), (*STRIP, "--used"),
                 ("near", "studio", "sloe", "--line"), ("check", "studio", "--date")]
        commands = [(*words, name) for words in typed for name in names]
        commands += [("check", "studio"), ("layouts", "studio"), ("stocks", "studio")]
        commands += [("render", "nothing", "studio", "-o", "x.pdf")]
        for command in commands:
            said = subprocess.run([PROGRAM, *command], cwd=self.here, capture_output=True, check=False, timeout=20)
            text = (said.stdout + said.stderr).decode("utf-8")  # it is: no byte of a name is let through
            for mark in ("\x1b", "\u202e", "\r", "line\nbreak"):
                self.assertNotIn(mark, text, command)

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
        makers = {
            "this is a folder": lambda file: file.mkdir(),
            "this is not a plain file": os.mkfifo,
            "this is not a plain file ": make_socket,
            "this is a link to a file outside": lambda file: file.symlink_to("/dev/zero"),
            "this is a link that leads nowhere": lambda file: file.symlink_to("nowhere"),
            "this is a link that leads nowhere ": lambda file: file.symlink_to(file.name),
        }
        for name, commands in READERS.items():
            file = self.studio / name
            file.parent.mkdir(parents=True, exist_ok=True)
            for words, make in makers.items():
                make(file)
                for command in commands:
                    with self.subTest(file=name, command=command[0], words=words):
                        self.assertIn(f"studio/{name}: error: {words.strip()}", self.run_it(*command, status=1))
                file.rmdir() if file.is_dir() else file.unlink()

    def test_what_is_no_folder(self):
        for name in ("layouts", "layouts/stocks", "layouts/styles", "layouts/languages", "fonts"):
            folder = self.studio / name
            folder.parent.mkdir(exist_ok=True)
            to_itself = lambda path: path.symlink_to(path.name)
            to_a_device = lambda path: path.symlink_to("/dev/zero")
            for make in (Path.touch, os.mkfifo, to_itself, to_a_device):
                make(folder)
                for command in (("check", "studio"), ("layouts", "studio"), ("stocks", "studio"), STRIP):
                    self.assertIn(f"studio/{name}: error: this is not a folder", self.run_it(*command, status=1))
                folder.unlink()

    def test_typed_names_of_what_is_no_file(self):
        self.put("dyes.yaml", DYE % "Sloe")
        os.mkfifo(self.here / "pipe.yaml")
        (self.here / "zero.yaml").symlink_to("/dev/zero")
        for folder in ("/dev/zero", "/etc/passwd", "pipe.yaml", "nowhere", "/proc/self/fd", "/"):
            for command in (("check",), ("list",), ("lot",)):
                self.assertIn("error: ", self.run_it(*command, folder, status=1))
        for layout in ("pipe.yaml", "zero.yaml", "/dev/zero", "/etc/passwd", "../nowhere.yaml", "studio"):
            self.assertIn("error: ", self.run_it("render", layout, "studio", "-o", "x.pdf", status=1))
        for stock in ("/etc/passwd", "../../a4-card", "./a4-card", "pipe.yaml"):
            self.assertIn("there is no stock called", self.run_it(*STRIP, "--stock", stock, status=1))

    def test_a_folder_too_deep_for_a_name(self):
        self.put("dyes.yaml", DYE % "Sloe")
        here = os.open(self.studio, os.O_RDONLY)
        for _ in range(100):
            os.mkdir("d" * 200, dir_fd=here)
            deeper = os.open("d" * 200, os.O_RDONLY, dir_fd=here)
            os.close(here)
            here = deeper
        os.close(here)
        self.run_it("check", "studio", *DAY, status=0)

    def test_pictures_outside_the_folder(self):
        (self.here / "secret.png").write_text("a picture")
        (self.studio / "link.png").symlink_to(self.here / "secret.png")
        (self.studio / "up").symlink_to(self.here)
        for name in ("../secret.png", str(self.here / "secret.png"), "up/../../secret.png"):
            self.put("studio.yaml", f"studio: {{name: Quillmoor, market: none, logo: '{name}'}}\n")
            self.assertIn("the picture must lie in the folder of this file", self.run_it("check", "studio", status=1))
        for name in ("link.png", "up/secret.png"):
            self.put("studio.yaml", f"studio: {{name: Quillmoor, market: none, logo: '{name}'}}\n")
            self.assertIn("is a link to a file outside the folder", self.run_it("check", "studio", status=1))


    def test_links_that_lead_out_of_the_folder(self):
        outside = self.here / "outside"
        (outside / "stocks").mkdir(parents=True)
        (outside / "secret.yaml").write_text("password: 1234\n")
        (outside / "stocks" / "secret.yaml").write_text("password: 1234\n")
        layouts = self.studio / "layouts"
        layouts.mkdir()
        (self.studio / "fonts").mkdir()
        for link, target in (
            (self.studio / "dyes.yaml", outside / "secret.yaml"),
            (self.studio / "printed.txt", outside / "secret.yaml"),
            (self.studio / "fonts" / "secret.ttf", outside / "secret.yaml"),
            (layouts / "secret.yml", Path("/etc/passwd")),
            (layouts / "styles", Path("/etc")),
            (layouts / "stocks", outside / "stocks"),
        ):
            link.symlink_to(target)
            kind = "folder" if target.is_dir() else "file"
            for command in (("check",), ("list",), ("layouts",), ("render", "dye-card", "-o", "x.pdf"), ("lot",)):
                said = self.run_it(*command, "studio", status=1)
                self.assertIn(f"{link.relative_to(self.here)}: error: this is a link to a {kind} outside the folder", said)
                self.assertNotIn("1234", said)
            link.unlink()

    def test_links_that_are_allowed(self):
        outside = self.here / "outside"
        outside.mkdir()
        (outside / "dyes.yaml").write_text(DYE % "Sloe")
        (self.studio / "dyes.yaml").symlink_to(outside / "dyes.yaml")
        self.assertIn("--also-read ", self.run_it("check", "studio", status=1))
        self.run_it("check", "studio", "--also-read", "outside", *DAY, status=0)
        said = self.run_it("check", "studio", "--also-read", "inside", "--also-read", "outside", status=1)
        self.assertIn("there is no folder “inside”", said)
        (outside / "dyes.yaml").unlink()
        (outside / "dyes.yaml").symlink_to("/etc/passwd")
        said = self.run_it("check", "studio", "--also-read", "outside", status=1)
        self.assertIn("this is a link to a file outside the folder", said)

    def test_a_note_that_is_a_link_is_not_written_through(self):
        secret = self.here / "secret.txt"
        secret.write_text("mine\n")
        (self.studio / "printed.txt").symlink_to(secret)
        self.put("dyes.yaml", DYE % "Sloe")
        self.run_it("render", "dye-strip", "studio", "-o", "card.pdf", "--remember", *DAY, status=1)
        self.assertEqual(secret.read_text(), "mine\n")


if __name__ == "__main__":
    unittest.main()
