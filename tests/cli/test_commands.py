#!/usr/bin/env python3
"""The commands as they are typed: exit statuses, what is said, and that no file is left half made."""

import os
import re
import shutil
import subprocess
import tempfile
import unittest
from pathlib import Path

ROOT = Path(__file__).resolve().parents[2]
PROGRAM = os.environ.get("DYELEAF", str(ROOT / "build" / "dyeleaf"))
DAY = ("--date", "2026-11-20")
EPOCH = "1795132800"  # the same day, so that no test depends on the clock

ALL_WELL, PROBLEMS, WRONG_USAGE = 0, 1, 2

RECORDS = """
studio: {name: Quillmoor Yarn Works, market: none}
dyes:
  - {id: sloe, name: Sloe, line: Fenlight acid, form: powder}
  - {id: moss, name: Møss, line: Fenlight acid, form: powder}
bases:
  - id: plain-sock
    name: Plain Sock
    fibre: {merino wool: 75 %, polyamide: 25 %}
    skein: {weight: 100 g, length: 420 m}
    care: [hand wash, no bleach, no tumble, no iron, no dry clean]
lots:
  - {id: "26-117", colourway: Hedge in October, base: plain-sock, skeins: 5, dyed: 2026-11-09}
"""

# A small layout for cells, so that the tests do not lean on the looks of the bundled ones.
LAYOUT = """
layout: small
for: skeins
shape: {width: 63.5 mm, height: 38.1 mm}
stock: a4-3x7-63x38
styles:
  body: {font: Inter, size: 9 pt}
front:
  column:
    padding: 4 mm
    holds:
      - {text: "{lot.colourway}", style: body}
"""


class Commands(unittest.TestCase):
    def setUp(self):
        scratch = tempfile.TemporaryDirectory()
        self.addCleanup(scratch.cleanup)
        self.here = Path(scratch.name)

    def run_it(self, *words, environment=None):
        variables = {**os.environ, "SOURCE_DATE_EPOCH": EPOCH, **(environment or {})}
        return subprocess.run(
            [PROGRAM, *map(str, words)], cwd=self.here, env=variables, capture_output=True, text=True, check=False
        )

    def expect(self, status, *words, **options):
        result = self.run_it(*words, **options)
        self.assertEqual(result.returncode, status, f"{words}\n{result.stdout}{result.stderr}")
        return result

    def studio_folder(self):
        return self.here / "studio"

    def studio(self, records=RECORDS, layout=LAYOUT):
        folder = self.studio_folder()
        (folder / "layouts" / "stocks").mkdir(parents=True)
        (folder / "records.yaml").write_text(records, encoding="utf-8")
        (folder / "layouts" / "small.yaml").write_text(layout, encoding="utf-8")
        return folder

    def files(self):
        return sorted(path.name for path in self.here.iterdir() if path.is_file())


class Usage(Commands):
    def test_help_and_version_go_to_standard_output(self):
        for words in (["--help"], ["-h"], ["render", "--help"], ["--version"]):
            result = self.expect(ALL_WELL, *words)
            self.assertNotEqual(result.stdout, "")
            self.assertEqual(result.stderr, "")
        self.assertRegex(self.run_it("--version").stdout, r"^dyeleaf \d+\.\d+\.\d+\n$")
        self.assertIn("dyeleaf new my-studio", self.run_it("--help").stdout)

    def test_wrong_usage_ends_with_2_and_says_what_to_type(self):
        for words, said in (
            ([], "Examples:"),
            (["rendr"], "did you mean “render”?"),
            (["check"], "dyeleaf check my-studio"),
            (["render", "hang-tag", "x"], "-o tags.pdf"),
            (["render", "hang-tag", "x", "-o", "tags.doc"], ".pdf, .png or .svg"),
            (["render", "hang-tag", "x", "-o", "tags.pdf", "--copies", "many"], "from 1 to 1000"),
            (["render", "hang-tag", "x", "-o", "tags.pdf", "--date", "20.11.2026"], "2026-11-02"),
            (["render", "hang-tag", "x", "-o", "tags.pdf", "--stok", "y"], "did you mean “--stock”?"),
        ):
            with self.subTest(words=words):
                result = self.expect(WRONG_USAGE, *words)
                self.assertEqual(result.stdout, "")
                self.assertIn(said, result.stderr)
        self.assertEqual(self.files(), [])


class New(Commands):
    def test_a_new_folder_checks_and_prints(self):
        result = self.expect(ALL_WELL, "new", "my studio")
        self.assertIn('dyeleaf check "my studio"', result.stdout)
        result = self.expect(ALL_WELL, "check", "my studio")
        self.assertIn(": no problems\n", result.stdout)
        self.assertEqual(result.stderr, "")
        self.expect(ALL_WELL, "list", "my studio")
        result = self.expect(ALL_WELL, "render", "dye-card", "my studio", "-o", "cards.pdf")
        self.assertRegex(result.stdout, r"^\d+ cards? on \d+ sheets? \(a4-card\)")
        self.assertTrue(result.stdout.endswith("wrote cards.pdf\n"))
        self.assertTrue((self.here / "cards.pdf").read_bytes().startswith(b"%PDF-"))

    def test_an_empty_folder_is_filled(self):
        (self.here / "empty").mkdir()
        self.expect(ALL_WELL, "new", "empty")
        self.expect(ALL_WELL, "check", "empty")

    def test_a_folder_with_files_stays_as_it_is(self):
        folder = self.here / "mine"
        folder.mkdir()
        (folder / "dyes.yaml").write_text("precious", encoding="utf-8")
        result = self.expect(PROBLEMS, "new", "mine")
        self.assertIn("nothing was changed", result.stderr)
        self.assertEqual([path.name for path in folder.iterdir()], ["dyes.yaml"])
        self.assertEqual((folder / "dyes.yaml").read_text(encoding="utf-8"), "precious")

    def test_a_file_in_the_way_stays_as_it_is(self):
        (self.here / "mine").write_text("precious", encoding="utf-8")
        self.expect(PROBLEMS, "new", "mine")
        self.assertEqual((self.here / "mine").read_text(encoding="utf-8"), "precious")


class Check(Commands):
    def test_sound_records_are_counted(self):
        self.studio()
        result = self.expect(ALL_WELL, "check", "studio")
        self.assertEqual(result.stdout, "2 dyes, 1 base, 1 lot: no problems\nwhether everything fits its label is checked when you render it\n")
        self.assertEqual(result.stderr, "")

    def test_what_no_print_shows_is_listed(self):
        strong = 'form: powder, swatches: [{depth: 4 %, base: plain-sock, colour: "lab(44 -26 -40)"}]}'
        glowing = 'form: powder, fluorescent: yes, swatches: [{depth: 1 %, base: plain-sock, colour: "#f77ea0"}]}'
        records = RECORDS.replace("form: powder}", strong, 1).replace("form: powder}", glowing, 1)
        self.studio(records)
        result = self.expect(ALL_WELL, "check", "studio")
        self.assertEqual(
            result.stdout.splitlines()[1:5],
            [
                "No print shows these as they are, so tie real yarn to their cards:",
                "  COLOUR OF                  ΔE00  ON PAPER",
                "  Sloe at 4 % on Plain Sock  6.6   the nearest colour, with a +",
                "  Møss at 1 % on Plain Sock        hatched: fluorescent",
            ],
        )

    def test_every_problem_is_shown_in_order_of_its_place(self):
        self.studio(RECORDS.replace("name: Sloe", "nmae: Sloe").replace("length: 420 m", "length: 420"))
        result = self.expect(PROBLEMS, "check", "studio")
        found = re.findall(r"records\.yaml:(\d+):(\d+): error", result.stderr)
        places = [(int(line), int(column)) for line, column in found]
        self.assertGreaterEqual(len(places), 2)
        self.assertEqual(places, sorted(places))
        self.assertIn("“nmae”", result.stderr)
        self.assertRegex(result.stdout, r"\d errors")

    def test_her_own_layouts_and_stocks_are_checked(self):
        folder = self.studio(layout=LAYOUT.replace("lot.colourway", "lot.colorway"))
        (folder / "layouts" / "stocks" / "odd.yaml").write_text("stock: odd\npapr: A4\n", encoding="utf-8")
        result = self.expect(PROBLEMS, "check", "studio")
        self.assertIn("layouts/small.yaml:", result.stderr)
        self.assertIn("lot.colourway", result.stderr)
        self.assertIn("layouts/stocks/odd.yaml:", result.stderr)

    def test_a_layout_for_a_stock_that_is_not_there_is_a_problem(self):
        self.studio(layout=LAYOUT.replace("a4-3x7-63x38", "a4-crad"))
        self.assertIn("did you mean “a4-card”?", self.expect(PROBLEMS, "check", "studio").stderr)

    def test_days_to_come_are_warned_of_as_seen_from_today(self):
        self.studio()
        told = "warning: lot “26-117” was dyed in the future: 2026-11-09"
        self.assertIn(told, self.expect(ALL_WELL, "check", "studio", "--date", "2026-11-08").stderr)
        epoch = {"SOURCE_DATE_EPOCH": "1794096000"}  # 2026-11-08T00:00:00Z
        self.assertIn(told, self.expect(ALL_WELL, "check", "studio", environment=epoch).stderr)
        self.assertEqual(self.expect(ALL_WELL, "check", "studio", "--date", "2026-11-09").stderr, "")

    def test_warnings_alone_are_no_failure(self):
        self.studio(layout=LAYOUT.replace("layout: small", "layout: other"))
        result = self.expect(ALL_WELL, "check", "studio")
        self.assertIn("warning: this file is called “small”, but says it is “other”", result.stderr)
        self.assertIn(": 1 warning\n", result.stdout)

    def test_a_folder_that_is_not_there(self):
        result = self.expect(PROBLEMS, "check", "nowhere")
        self.assertIn("nowhere", result.stderr)
        self.assertEqual(result.stdout, "")


class Render(Commands):
    def render(self, *options, status=ALL_WELL, layout="small", output="out.pdf", **more):
        return self.expect(status, "render", layout, "studio", "-o", output, *DAY, *options, **more)

    def test_it_says_what_it_made(self):
        self.studio()
        self.assertEqual(
            self.render().stdout,
            "5 tags on 1 sheet (a4-3x7-63x38)\n"
            "the last sheet then has 16 free cells: use it next time with --used 1-5\nwrote out.pdf\n",
        )
        self.assertEqual(self.files(), ["out.pdf"])

    def test_only_and_copies(self):
        self.studio()
        self.assertIn("2 tags on", self.render("--only", "26-117:2-3").stdout)
        self.assertIn("6 tags on", self.render("--only", "26-117:2-3", "--copies", "3").stdout)
        result = self.render("--only", "26-171", status=PROBLEMS)
        self.assertIn("26-117", result.stderr)

    def test_skip_leaves_cells_free_and_warns_of_lasers(self):
        self.studio()
        result = self.render("--skip", "20")
        self.assertIn("5 tags on 2 sheets (a4-3x7-63x38), 1 warning\n", result.stdout)
        self.assertIn("laser printer", result.stderr)
        self.assertIn("21 cells", self.render("--skip", "21", status=PROBLEMS).stderr)

    def test_used_cells_stay_free(self):
        self.studio()
        result = self.render("--used", "1-4,7,12-19")
        self.assertIn("5 tags on 1 sheet (a4-3x7-63x38), 1 warning\n", result.stdout)
        self.assertIn("3 free cells: use it next time with --used 1-10,12-19", result.stdout)
        self.assertIn("laser printer", result.stderr)
        self.assertNotIn("free cell", self.render("--used", "1-16").stdout)  # then the sheet is full
        self.assertIn("there is no cell 22", self.render("--used", "3,22", status=PROBLEMS).stderr)
        self.assertIn("all 21 cells", self.render("--used", "1-21", status=PROBLEMS).stderr)
        result = self.render("--used", "1", "--stock", "a4-card", status=PROBLEMS)
        self.assertIn("count ready-cut cells, and “a4-card” has none", result.stderr)
        self.assertIn("--used takes the cells", self.render("--used", "4-1", status=WRONG_USAGE).stderr)

    def test_copies_of_one(self):
        self.studio()
        self.assertIn("9 tags on", self.render("--copies", "26-117:3=5").stdout)
        self.assertIn("18 tags on", self.render("--copies", "3", "--copies", "26-117:1-2=4", "--copies", "26-117:2=5").stdout)
        self.assertIn("15 tags on", self.render("--copies", "Hedge in October=3").stdout)
        self.assertIn("did you mean “26-117”", self.render("--copies", "26-171=2", status=PROBLEMS).stderr)
        result = self.render("--only", "26-117:1", "--copies", "26-117:2=2", status=PROBLEMS)
        self.assertIn("“26-117:2” is not among what --only chooses", result.stderr)
        result = self.render("--copies", "sloe=2", layout="dye-cards", status=PROBLEMS)
        self.assertIn("several dyes on one card", result.stderr)

    def test_piles_hold_consecutive_tags(self):
        self.studio()
        stock = self.studio_folder() / "layouts" / "stocks" / "two.yaml"
        stock.write_text(
            "stock: two\npaper: A4\ncells: {columns: 1, rows: 2, width: 63.5 mm, height: 38.1 mm, left: 20 mm, "
            "top: 20 mm, down: 60 mm}\n", encoding="utf-8")
        cells = [line.split()[:3] for line in self.proof("--piles", "--stock", "two").stdout.splitlines() if "26-117:" in line]
        self.assertEqual(cells, [
            ["1", "1", "26-117:1"], ["1", "2", "26-117:4"],
            ["2", "1", "26-117:2"], ["2", "2", "26-117:5"],
            ["3", "1", "26-117:3"],
        ])

    def proof(self, *options, status=ALL_WELL, layout="small"):
        return self.expect(status, "proof", layout, "studio", *DAY, *options)

    def test_a_proof_lists_everything_and_writes_nothing(self):
        self.studio(layout=LAYOUT.replace("size: 9 pt", "size: 40 pt, smallest: 40 pt, lines: 1"))
        before = sorted(path for path in self.here.rglob("*"))
        result = self.proof("--used", "2", "--copies", "26-117:1=2", "--only", "26-117:1-2")
        self.assertEqual(sorted(path for path in self.here.rglob("*")), before)
        self.assertEqual(
            result.stdout,
            "small: 3 tags on 1 sheet (a4-3x7-63x38), 1 warning\n"
            "the last sheet then has 17 free cells: use it next time with --used 1-4\n\n"
            "  SHEET  CELL  LABEL             SIZE\n"
            "  1      1     26-117:1, 1 of 2  63.5 × 38.1 mm\n"
            "           warning: the text “Hedge in October” does not fit at its smallest size and is cut with … "
            "(studio/layouts/small.yaml:12)\n"
            "  1      3     26-117:1, 2 of 2  63.5 × 38.1 mm\n"
            "  1      4     26-117:2          63.5 × 38.1 mm\n"
            "           warning: the text “Hedge in October” does not fit at its smallest size and is cut with … "
            "(studio/layouts/small.yaml:12)\n",
        )
        self.assertIn("laser printer", result.stderr)

    def test_a_proof_says_how_large_an_oval_is_both_ways(self):
        self.studio(layout=re.sub(r"shape: \{[^}]*\}", "shape: {width: 60 mm, height: 40 mm, round: yes}", LAYOUT))
        self.assertIn("60 × 40 mm oval\n", self.proof("--stock", "a4-3x6-oval-60x40").stdout)

    def test_a_proof_of_what_cannot_be_printed(self):
        self.studio()
        result = self.proof("--used", "22", status=PROBLEMS)
        self.assertEqual(result.stdout, "")
        self.assertIn("there is no cell 22", result.stderr)
        self.assertIn("there is no option “--output", self.expect(WRONG_USAGE, "proof", "small", "studio", "--output=x.pdf").stderr)

    def test_only_what_has_changed(self):
        folder = self.studio()
        result = self.render("--changed")
        self.assertIn("5 tags on 1 sheet", result.stdout)
        self.assertIn("0 tags left out: unchanged since last remembered; once these are printed", result.stdout)
        self.assertFalse((folder / "printed.txt").exists())  # kept only where it is asked for
        result = self.render("--changed", "--remember", "--only", "26-117:1-3")
        self.assertIn("remembered in studio/printed.txt\n", result.stdout)
        result = self.render("--changed")
        self.assertIn("2 tags on 1 sheet", result.stdout)
        self.assertIn("3 tags left out", result.stdout)
        self.render("--remember")

        (self.here / "out.pdf").write_text("old", encoding="utf-8")
        result = self.expect(ALL_WELL, "render", "small", "studio", "-o", "out.pdf", "--date", "2027-01-01", "--changed")
        self.assertEqual(
            result.stdout, "nothing to print\n5 tags left out: unchanged since last remembered\n"
        )
        self.assertEqual((self.here / "out.pdf").read_text(encoding="utf-8"), "old")
        # A file that was only touched, or changed in what does not print, is no change.
        (folder / "records.yaml").write_text(RECORDS + "\n# a remark\n", encoding="utf-8")
        self.assertIn("nothing to print", self.render("--changed").stdout)
        (folder / "records.yaml").write_text(RECORDS.replace("Hedge in", "Hedge late in"), encoding="utf-8")
        self.assertIn("5 tags on", self.render("--changed").stdout)
        # Taken back, it is as it was printed.
        (folder / "records.yaml").write_text(RECORDS, encoding="utf-8")
        self.assertIn("nothing to print", self.render("--changed").stdout)
        layout = folder / "layouts" / "small.yaml"
        layout.write_text(LAYOUT.replace("size: 9 pt", "size: 10 pt"), encoding="utf-8")
        self.assertIn("5 tags on", self.render("--changed").stdout)
        self.assertIn("5 tags on", self.proof("--changed").stdout)

    def test_a_new_dye_does_not_change_the_other_cards(self):
        folder = self.studio()
        self.render("--remember", layout="dye-card")
        more = RECORDS.replace("dyes:\n", "dyes:\n  - {id: haw, name: Haw, line: Fenlight acid, form: powder}\n")
        (folder / "records.yaml").write_text(more, encoding="utf-8")
        result = self.render("--changed", layout="dye-card")
        self.assertIn("1 card on 1 sheet", result.stdout)
        self.assertIn("2 cards left out", result.stdout)

    def test_nothing_is_remembered_of_what_was_not_written(self):
        folder = self.studio()
        self.render("--remember", output="nowhere/out.pdf", status=PROBLEMS)
        self.assertFalse((folder / "printed.txt").exists())

    def test_a_spoilt_note_costs_paper_not_sense(self):
        folder = self.studio()
        self.render("--remember")
        note = folder / "printed.txt"
        lines = note.read_text(encoding="utf-8").splitlines(keepends=True)
        note.write_text("".join(lines[:-1]) + lines[-1][:20], encoding="utf-8")
        result = self.render("--changed")
        self.assertIn("1 tag on 1 sheet", result.stdout)
        self.assertRegex(result.stderr, r"studio/printed\.txt:7:1: warning: this line is not one that dyeleaf wrote")

    def test_another_stock_can_be_named(self):
        self.studio()
        self.assertIn("(letter-card)", self.render("--stock", "letter-card").stdout)
        self.assertIn("5 tags on 5 sheets (page)", self.render("--stock", "page").stdout)
        result = self.render("--stock", "leter-card", status=PROBLEMS)
        self.assertIn("did you mean “letter-card”?", result.stderr)

    def test_a_stock_that_does_not_take_the_labels_names_those_that_do(self):
        self.studio()
        result = self.render("--stock", "a4-4x6-round-38", status=PROBLEMS)
        self.assertIn("63.5 × 38.1 mm", result.stderr)
        self.assertRegex(result.stderr, r"these take it: .*a4-3x7-63x38.*page")

    def test_her_own_stock_comes_before_the_bundled_one(self):
        folder = self.studio()
        (folder / "layouts" / "stocks" / "a4-card.yaml").write_text("stock: a4-card\npaper: A3\n", encoding="utf-8")
        self.render("--stock", "a4-card", "--dpi", "50", output="sheet.png")
        self.assertAlmostEqual(self.width_of("sheet.png"), 297 / 25.4 * 50, delta=1)

    def width_of(self, picture):
        return int.from_bytes((self.here / picture).read_bytes()[16:20], "big")

    def test_a_layout_file_can_be_named(self):
        folder = self.studio()
        (folder / "layouts" / "small.yaml").rename(self.here / "tag.yaml")
        result = self.render(layout="tag.yaml")
        self.assertIn("wrote out.pdf", result.stdout)

    def test_her_own_fonts_folder_is_read(self):
        folder = self.studio()
        (folder / "fonts").mkdir()
        (folder / "fonts" / "letter.ttf").write_text("this is no font", encoding="utf-8")
        result = self.render()
        self.assertRegex(result.stderr, r"warning: .*letter\.ttf|letter\.ttf: warning")

    def test_an_unknown_layout_is_answered_with_the_nearest(self):
        self.studio()
        self.assertIn("did you mean “hang-tag”?", self.render(layout="hang-tga", status=PROBLEMS).stderr)
        self.assertIn("known here:", self.render(layout="qqqqqqqqqq", status=PROBLEMS).stderr)

    def test_one_complaint_about_many_labels_is_said_once(self):
        self.studio(layout=LAYOUT.replace("size: 9 pt", "size: 90 pt, smallest: 90 pt"))
        result = self.render("--only", "26-117:1-2")
        self.assertEqual(result.stderr.count("warning:"), result.stderr.count("“26-117:1” and “26-117:2”: "))
        result = self.render()
        self.assertIn("“26-117:1”, “26-117:2”, “26-117:3” and 2 more: ", result.stderr)

    def test_a_layout_for_what_is_not_recorded(self):
        self.studio(layout=LAYOUT)
        result = self.render(layout="jar-lid", status=PROBLEMS)
        self.assertIn("there are no jars", result.stderr)

    def test_a_code_too_large_for_its_tag_is_no_paper(self):
        folder = self.studio(RECORDS.replace("market: none", f"market: none, link: https://quillmoor.example/{'a' * 200}/"))
        result = self.run_it("render", "hang-tag", folder, "-o", "tags.pdf", *DAY)
        self.assertEqual(PROBLEMS, result.returncode)
        self.assertRegex(result.stderr, r"“26-117:1”.*: the code “https://quillmoor.example/a+…” needs 2\d\.\d × 2\d\.\d mm to be "
                                        r"scanned, and its place is \d+(\.\d)? mm too narrow")
        self.assertFalse((self.here / "tags.pdf").exists())

    def test_a_wrong_digit_is_told_with_the_right_one(self):
        folder = self.studio(RECORDS.replace("name: Plain Sock", 'name: Plain Sock\n    ean: "2000000100021"'))
        result = self.run_it("check", folder, *DAY)
        self.assertEqual(PROBLEMS, result.returncode)
        self.assertIn("the last digit of “2000000100021” checks the others, and does not fit them", result.stderr)
        self.assertIn("it would be 9, as in \"2000000100029\"", result.stderr)

    def test_errors_leave_the_old_file_as_it_was(self):
        folder = self.studio()
        (self.here / "out.pdf").write_text("old", encoding="utf-8")
        (folder / "records.yaml").write_text(RECORDS.replace("skeins: 5", "skeins: many"), encoding="utf-8")
        result = self.render(status=PROBLEMS)
        self.assertIn("nothing was written", result.stderr)
        self.assertEqual(result.stdout, "")
        self.assertEqual((self.here / "out.pdf").read_text(encoding="utf-8"), "old")
        self.assertEqual(self.files(), ["out.pdf"])

    def test_an_old_file_is_replaced(self):
        self.studio()
        (self.here / "out.pdf").write_text("old", encoding="utf-8")
        self.render()
        self.assertTrue((self.here / "out.pdf").read_bytes().startswith(b"%PDF-"))

    def test_a_folder_that_is_not_there_to_write_to(self):
        self.studio()
        result = self.render(output="nowhere/out.pdf", status=PROBLEMS)
        self.assertIn("nowhere/out.pdf", result.stderr)
        self.assertNotIn("wrote", result.stdout)
        self.assertEqual(self.files(), [])

    def test_pictures_are_numbered_where_there_are_several(self):
        self.studio()
        self.render("--dpi", "40", output="one.png")
        self.render("--dpi", "40", "--skip", "20", output="two.png")
        self.render("--stock", "page", "--only", "26-117:1-2", output="page.svg")
        self.assertEqual(self.files(), ["one.png", "page-1.svg", "page-2.svg", "two-1.png", "two-2.png"])
        self.assertTrue((self.here / "one.png").read_bytes().startswith(b"\x89PNG\r\n"))
        self.assertIn("<svg", (self.here / "page-1.svg").read_text(encoding="utf-8"))

    def test_pages_of_an_earlier_run_are_pointed_out(self):
        self.studio()
        self.render("--stock", "page", "--only", "26-117:1-3", output="page.svg")
        result = self.render("--stock", "page", "--only", "26-117:1-2", output="page.svg")
        self.assertIn("warning: “page-3.svg” was there before and is no page of this run", result.stderr)

    def test_dots_to_the_inch_make_the_picture_larger(self):
        self.studio()
        for dpi in (50, 100):
            self.render("--dpi", dpi, output="sheet.png")
            self.assertAlmostEqual(self.width_of("sheet.png"), 210 / 25.4 * dpi, delta=1)

    def test_same_records_same_bytes(self):
        self.studio()
        self.render(output="one.pdf")
        self.render(output="two.pdf", environment={"LC_ALL": "C", "TZ": "Pacific/Auckland"})
        self.assertEqual((self.here / "one.pdf").read_bytes(), (self.here / "two.pdf").read_bytes())

    def test_the_epoch_is_today(self):
        self.studio()
        epoch = {"SOURCE_DATE_EPOCH": EPOCH}
        self.render(output="day.pdf")
        self.expect(ALL_WELL, "render", "small", "studio", "-o", "epoch.pdf", environment=epoch)
        self.assertEqual((self.here / "day.pdf").read_bytes(), (self.here / "epoch.pdf").read_bytes())
        result = self.expect(
            PROBLEMS, "render", "small", "studio", "-o", "x.pdf", environment={"SOURCE_DATE_EPOCH": "soon"}
        )
        self.assertIn("SOURCE_DATE_EPOCH", result.stderr)

    def test_backs_follow_their_fronts(self):
        self.studio(layout=LAYOUT + "back:\n  column:\n    holds:\n      - {text: back, style: body}\n")
        result = self.render("--dpi", "40", output="tag.png")
        self.assertIn("5 tags on 1 sheet, front and back, flip on the long edge (a4-3x7-63x38)", result.stdout)
        self.assertEqual(self.files(), ["tag-1.png", "tag-2.png"])

    BACK = "back:\n  column:\n    padding: 4 mm\n    holds:\n      - {text: back, style: body}\n"

    def test_backs_are_turned_as_the_studio_or_the_command_says(self):
        folder = self.studio(layout=LAYOUT + self.BACK)
        self.assertIn("flip on the short edge", self.render("--backs", "short-edge").stdout)
        (folder / "records.yaml").write_text(RECORDS.replace("market:", "backs: short edge, market:"), encoding="utf-8")
        self.assertIn("flip on the short edge", self.render().stdout)
        self.assertIn("flip on the long edge", self.render("--backs", "long-edge").stdout)
        result = self.render("--backs", "by-hand", "--stock", "a4-3x3-54x86", status=PROBLEMS)
        self.assertIn("63.5 × 38.1 mm", result.stderr)
        result = self.render("--backs", "by-hand", "--copies", "10")
        self.assertIn("50 tags on 3 sheets, front and back (a4-3x7-63x38)\nprint pages 1 to 3, turn the pile over on its "
                      "long edge, print pages 4 to 6\n", result.stdout)
        self.assertIn("--backs takes", self.render("--backs", "sideways", status=WRONG_USAGE).stderr)

    def test_backs_of_a_layout_without(self):
        self.studio()
        self.assertIn("the layout “small” has no back", self.render("--backs", "long-edge").stderr)

    def test_a_back_too_near_its_edge(self):
        self.studio(layout=LAYOUT + self.BACK.replace("4 mm", "1 mm"))
        self.assertIn("comes closer than 2 mm to the edge on the back", self.render().stderr)

    def test_a_back_with_too_little_paper_to_run_on_to(self):
        folder = self.studio(layout=LAYOUT.replace("38.1 mm}", "38.1 mm, bleed: 3 mm}") + self.BACK)
        (folder / "layouts" / "stocks" / "tight.yaml").write_text("stock: tight\npaper: A4\ngap: 3 mm\n", encoding="utf-8")
        self.assertEqual(self.render("--stock", "a4-card").stderr, "")
        self.assertIn("“tight” leaves 1.5 mm for colours that run past the edge", self.render("--stock", "tight").stderr)

    def test_nothing_but_complaints_is_said_where_nobody_watches(self):
        self.studio()
        self.assertEqual(self.render("--copies", "300").stderr, "")


PRINTER = """
printers:
  - {printer: workroom, tray: rear, paper: A4, front: {across: 10.5 mm, down: 9.5 mm}, back: {across: 10 mm, down: 12 mm},
     lines: {across: 149.4 mm, down: 200 mm}}
"""


class Printers(Commands):
    BACK = Render.BACK

    def printers(self, printers=PRINTER):
        folder = self.studio(layout=LAYOUT + self.BACK)
        (folder / "printers.yaml").write_text(printers, encoding="utf-8")

    def render(self, *options, status=ALL_WELL, output="x.pdf"):
        return self.expect(status, "render", "small", "studio", "-o", output, *DAY, *options)

    def test_the_only_printer_is_corrected_and_named(self):
        self.printers()
        said = ("corrected for workroom, rear: fronts 0.5 mm right and 0.5 mm up, backs 2 mm down, "
                "0.4 % wider\n")
        self.assertIn(said, self.render().stdout)
        self.assertIn(said, self.expect(ALL_WELL, "proof", "small", "studio", *DAY).stdout)
        plain = self.render("--printer", "none", output="plain.pdf")
        self.assertNotIn("corrected", plain.stdout)
        self.assertNotEqual((self.here / "x.pdf").read_bytes(), (self.here / "plain.pdf").read_bytes())

    def test_one_of_several_must_be_named(self):
        self.printers(PRINTER + "  - {printer: office, paper: A4, front: {across: 10 mm, down: 10 mm}}\n"
                      "  - {printer: workroom, tray: cassette, paper: A4, front: {across: 10 mm, down: 10 mm}}\n")
        self.assertIn("not corrected for a printer; say which one prints: --printer workroom --tray rear, or --printer "
                      "office, or --printer workroom --tray cassette\n", self.render().stdout)
        self.assertIn("corrected for office: nothing to move; its backs were not measured, and stay where it puts them\n",
                      self.render("--printer", "Office").stdout)
        self.assertIn("corrected for workroom, cassette", self.render("--tray", "cassette").stdout)
        result = self.render("--printer", "workroom", status=PROBLEMS)
        self.assertIn("more than one printer that could be meant", result.stderr)
        result = self.render("--printer", "workrom", status=PROBLEMS)
        self.assertIn("there is no printer called “workrom” in your records", result.stderr)
        self.assertIn("did you mean “workroom”?", result.stderr)
        result = self.render("--printer", "office", "--tray", "rear", status=PROBLEMS)
        self.assertIn("there is no tray called “rear”", result.stderr)

    def test_other_paper_print_shops_and_pictures_are_left_alone(self):
        self.printers()
        result = self.render("--stock", "a3-card")
        self.assertIn("not corrected for a printer: measured are workroom, rear on A4, and this paper is 297 × 420 mm\n",
                      result.stdout)
        for options, output in ((("--stock", "page"), "x.pdf"), ((), "x.png")):
            self.assertNotIn("corrected", self.render(*options, output=output).stdout)
            result = self.render("--printer", "workroom", *options, output=output)
            self.assertIn("warning: nothing is corrected for a printer: this is a", result.stderr)
        (self.studio_folder() / "layouts" / "small.yaml").write_text(LAYOUT, encoding="utf-8")
        result = self.render("--printer", "workroom", "--stock", "roll-102x152")
        self.assertIn("nothing is corrected for a printer: this is a roll, and sheets were measured\n", result.stderr)
        self.studio_folder().joinpath("printers.yaml").unlink()
        result = self.render("--printer", "workroom", status=PROBLEMS)
        self.assertIn("no printer is in your records", result.stderr)

    def test_a_printer_turns_backs_in_its_own_way(self):
        self.printers(PRINTER.replace("paper: A4", "paper: A4, backs: short edge"))
        self.assertIn("flip on the short edge", self.render().stdout)
        self.assertIn("flip on the long edge", self.render("--backs", "long-edge").stdout)
        self.assertIn("front and back (a4", self.render("--backs", "by-hand").stdout)

    def test_labels_moved_to_the_edge(self):
        self.printers(PRINTER.replace("across: 10.5 mm", "across: 6 mm"))
        self.assertIn("corrected for workroom, rear, labels that were 7.25 mm from the left edge of the page reach to",
                      self.render("--copies", "30").stderr)

    def test_readings_that_cannot_be(self):
        for change, said in (
            (("149.4 mm", "140 mm"), "studio/printers.yaml:4:13: error: the line across of the measuring sheet is 150 mm "
             "long, and came out 140 mm long: more than 5 % off cannot be put right"),
            (("149.4 mm", "145.5 mm"), "warning: the line across of the measuring sheet is 150 mm long, and came out "
             "145.5 mm long: that looks like “fit to page”"),
            (("down: 12 mm", "down: 16 mm"), "warning: “workroom, rear” prints 6 mm beside the middle of the paper: back, "
             "down 16 mm"),
            (("down: 12 mm", "down: 21 mm"), "the most is 20 mm"),
            (("paper: A4", "paper: A44"), "printers.yaml:3:44: error: there is no paper called “A44”"),
            (("tray", "tary"), "did you mean “tray”?"),
            (("\nprinters:", PRINTER), "“workroom, rear” is recorded twice on A4"),
        ):
            with self.subTest(change):
                shutil.rmtree(self.studio_folder(), ignore_errors=True)
                self.printers(PRINTER.replace(*change, 1))
                self.assertIn(said, self.run_it("check", "studio", *DAY).stderr)


class Measure(Commands):
    def test_a_sheet_for_nobody_yet(self):
        result = self.expect(ALL_WELL, "measure", "-o", "measure.pdf")
        self.assertEqual("a measuring sheet for A4, front and back, flip on the long edge\nwrote measure.pdf\n",
                         result.stdout)
        self.assertTrue((self.here / "measure.pdf").read_bytes().startswith(b"%PDF-"))
        result = self.expect(ALL_WELL, "measure", "-o", "measure.pdf", "--backs", "by-hand", "--paper", "letter")
        self.assertIn("for Letter, front and back, print page 1, turn the sheet over on its long edge, print page 2",
                      result.stdout)

    def test_wrong_usage(self):
        for words, said in (
            ([], "dyeleaf measure my-studio -o measure.pdf"),
            (["-o", "x.png"], "ends in .pdf"),
            (["-o", "x.pdf", "--backs", "top"], "--backs takes long-edge"),
            (["-o", "x.pdf", "--corrected"], "--corrected needs the folder"),
        ):
            self.assertIn(said, self.expect(WRONG_USAGE, "measure", *words).stderr)
        self.assertEqual([], self.files())

    def test_papers_that_will_not_do(self):
        for paper, said in (("A44", "there is no paper called “A44”"), ("A7", "does not fit on “A7”, which is 74 × 105 mm")):
            result = self.expect(PROBLEMS, "measure", "-o", "x.pdf", "--paper", paper)
            self.assertIn(said, result.stderr)
        self.assertEqual([], self.files())

    def test_a_proof_needs_readings(self):
        folder = self.studio()
        self.assertIn("no printer is in your records",
                      self.expect(PROBLEMS, "measure", "studio", "-o", "x.pdf", "--corrected").stderr)
        (folder / "printers.yaml").write_text(PRINTER, encoding="utf-8")
        result = self.expect(ALL_WELL, "measure", "studio", "-o", "x.pdf", "--corrected")
        self.assertIn("corrected for workroom, rear: fronts 0.5 mm", result.stdout)
        self.assertIn("measured are workroom, rear on A4", self.expect(
            PROBLEMS, "measure", "studio", "-o", "x.pdf", "--corrected", "--paper", "A3").stderr)


class Overviews(Commands):
    def test_facts_shows_values_and_where_they_come_from(self):
        folder = self.studio()
        result = self.expect(ALL_WELL, "facts", folder, "26-117:2", *DAY)
        self.assertRegex(result.stdout, r"(?m)^Skein 26-117:2, studio/records.yaml on line \d+$")
        self.assertRegex(result.stdout, r"(?m)^  skein\.of +2 of 5$")
        self.assertRegex(result.stdout, r"(?m)^  lot\.dyed +9 Nov 2026$")
        self.assertRegex(result.stdout, r"(?m)^  printed\.date +20 Nov 2026\n +.*today")
        self.assertIn("not recorded, or not so here: skein.pot", result.stdout)
        self.assertNotIn("words.", result.stdout)

    def test_facts_tells_estimated_shades_from_recorded_ones(self):
        swatches = ('swatches: [{depth: 0.5 %, base: plain-sock, colour: "#8d7fa8"}, '
                    '{depth: 2 %, base: plain-sock, colour: "#4c436f"}]')
        folder = self.studio(RECORDS.replace("form: powder}", "form: powder, " + swatches + "}", 1))
        shown = self.expect(ALL_WELL, "facts", folder, "sloe", *DAY).stdout
        ramp = shown[shown.index("  dye.ramp "):]
        self.assertRegex(ramp, r"shade\.patch +#8d7fa8, Sloe at 0\.5.% on Plain Sock\n")
        self.assertRegex(ramp, r"shade\.patch +#\w{6}, Sloe at [0-9.]+.% on Plain Sock, estimated between swatches\n")
        self.assertRegex(ramp, r"dye\.ramp\.note +cut corner: estimated, some swatches by eye or photo\n")

    def test_facts_of_what_is_not_there(self):
        result = self.expect(PROBLEMS, "facts", self.studio(), "sole", *DAY)
        self.assertEqual(result.stdout, "")
        self.assertIn("there is no record with the id “sole”", result.stderr)
        self.assertIn("did you mean “sloe”?", result.stderr)
        self.expect(WRONG_USAGE, "facts", self.studio_folder())

    def test_the_studio_chooses_the_language(self):
        folder = self.studio(RECORDS.replace("market: none", "market: none, language: xx"))
        result = self.expect(PROBLEMS, "check", folder)
        self.assertIn("there is no language called “xx”", result.stderr)
        self.assertIn("write one of these: ", result.stderr)
        (folder / "layouts" / "languages").mkdir()
        words = folder / "layouts" / "languages" / "xx.yaml"
        words.write_text('numbers: {place: "{number}. von {count}"}\n', encoding="utf-8")
        result = self.expect(ALL_WELL, "facts", folder, "26-117:2", *DAY)
        self.assertRegex(result.stdout, r"(?m)^  skein\.of +2\. von 5$")
        self.assertRegex(result.stdout, r"(?m)^  lot\.dyed +9 Nov 2026$")  # what it leaves out is English
        words.write_text('numbers: {place: "von {count}"}\n', encoding="utf-8")
        result = self.expect(PROBLEMS, "check", folder)
        self.assertIn("xx.yaml:1:18", result.stderr)
        self.assertIn("the program fills {count} and {number} here", result.stderr)

    def test_her_own_words_take_the_place_of_the_bundled_ones(self):
        folder = self.studio()
        (folder / "layouts" / "languages").mkdir()
        (folder / "layouts" / "languages" / "en.yaml").write_text('dates: {day: "{month} {day}, {year}"}\n')
        result = self.expect(ALL_WELL, "facts", folder, "26-117", *DAY)
        self.assertRegex(result.stdout, r"(?m)^  lot\.dyed +Nov 9, 2026$")

    def test_statements_are_read_where_one_is_recorded(self):
        folder = self.studio(RECORDS.replace("form: powder}", "form: powder, hazards: [H317]}", 1))
        said = r"(?m)^  dye\.hazard_statements\.text +May cause an allergic skin reaction"
        self.assertRegex(self.expect(ALL_WELL, "facts", folder, "sloe", *DAY).stdout, said)

    def test_her_own_words_may_be_statements(self):
        folder = self.studio()  # which records none
        (folder / "layouts" / "languages").mkdir()
        (folder / "layouts" / "languages" / "en.yaml").write_text("statements: {un: {H317: May itch}}\n")
        self.expect(ALL_WELL, "check", folder)

    def test_list_shows_ids_in_columns(self):
        self.studio()
        lines = self.expect(ALL_WELL, "list", "studio").stdout.splitlines()
        sloe = next(line for line in lines if line.split()[:1] == ["sloe"])
        moss = next(line for line in lines if line.split()[:1] == ["moss"])
        self.assertEqual(sloe.index("Fenlight"), moss.index("Fenlight"))
        self.assertIn("Lots", lines)
        self.assertTrue(any("26-117" in line and "5 skeins" in line for line in lines))

    def test_layouts_shows_all_and_marks_hers(self):
        self.studio()
        plain = self.expect(ALL_WELL, "layouts")
        self.assertEqual(plain.stderr, "")
        for layout in sorted((ROOT / "layouts").glob("*.yaml")):
            self.assertRegex(plain.stdout, rf"(?m)^  {layout.stem} ")
        self.assertNotIn("(yours)", plain.stdout)
        self.assertIn("small (yours)", self.expect(ALL_WELL, "layouts", "studio").stdout)

    def test_a_folder_without_layouts_of_its_own_must_be_there(self):
        for command in ("layouts", "stocks"):
            result = self.run_it(command, "nowhere")
            self.assertEqual(PROBLEMS, result.returncode)
            self.assertIn("there is no folder “nowhere”", result.stderr)

    def test_stocks_shows_all(self):
        result = self.expect(ALL_WELL, "stocks")
        self.assertEqual(result.stderr, "")
        for stock in sorted((ROOT / "layouts" / "stocks").glob("*.yaml")):
            self.assertRegex(result.stdout, rf"(?m)^  {stock.stem} ")
        self.assertIn("3 × 7 of 63.5 × 38.1 mm", result.stdout)
        self.assertIn("2 × 7 of 99.1 × 38.1 mm, rounded", result.stdout)
        self.assertIn("3 × 6 oval, 60 × 40 mm", result.stdout)
        self.assertIn("roll, 62 mm", result.stdout)
        self.assertIn("3 × 10 of 2.625 × 1 in", result.stdout)
        self.assertIn("cut along full lines", result.stdout)
        self.assertIn("cut along marks, laminated in one pouch", result.stdout)

    def test_stocks_are_drawn_into_a_pdf(self):
        self.studio()
        result = self.expect(ALL_WELL, "stocks", "studio", "-o", "stocks.pdf")
        self.assertRegex(result.stdout, r"^\d+ stocks on \d+ pages\nwrote stocks.pdf\n$")
        self.assertTrue((self.here / "stocks.pdf").read_bytes().startswith(b"%PDF"))
        wrong = self.run_it("stocks", "-o", "stocks.png")
        self.assertEqual(WRONG_USAGE, wrong.returncode)
        self.assertIn("stocks draws a PDF, and “stocks.png” is none: -o stocks.pdf", wrong.stderr)

    def test_a_stock_with_a_mistake_is_not_drawn(self):
        folder = self.studio()
        (folder / "layouts" / "stocks" / "odd.yaml").write_text("stock: odd\npapr: A4\n", encoding="utf-8")
        result = self.expect(PROBLEMS, "stocks", "studio", "-o", "stocks.pdf")
        self.assertIn("layouts/stocks/odd.yaml:", result.stderr)
        self.assertFalse((self.here / "stocks.pdf").exists())


class CompareLots(Commands):
    MORE = """\
  - {id: "26-120", colourway: Hedge in October, base: plain-sock, skeins: 4, colour: "lab(50 0 0)", colour from: instrument}
  - {id: "26-121", colourway: Hedge in October, base: plain-sock, skeins: 4, colour: "lab(51 0 0)", colour from: instrument}
  - {id: "26-122", colourway: Hedge in October, base: plain-sock, skeins: 4, colour: "lab(58 0 0)", colour from: photo}
"""

    def test_it_says_how_far_lots_are_apart(self):
        self.studio(RECORDS + self.MORE)
        result = self.expect(ALL_WELL, "compare", "studio")
        self.assertEqual(
            result.stdout,
            """\
Hedge in October on Plain Sock
  LOT     AND LOT  ΔE00  ΔE76  COLOURS
  26-120  26-121   1.0   1.0   measured      alike
  26-120  26-122   7.7   8.0   not measured  seem to differ visibly: compare the yarn by eye in daylight
  26-121  26-122   6.7   7.0   not measured  seem to differ visibly: compare the yarn by eye in daylight

No colour is recorded of 26-117, so nothing is said of it.
""",
        )

    def test_the_studio_says_what_is_too_much(self):
        self.studio(RECORDS.replace("market: none", "market: none, lots differ: {a little: 0.5, visibly: 0.9, too much: 7}") + self.MORE)
        shown = self.expect(ALL_WELL, "compare", "studio").stdout
        self.assertEqual(1, shown.count("seem to differ too much for one name: compare the yarn by eye in daylight"))
        self.assertEqual(1, shown.count("  differ visibly: tell the buyer, and alternate skeins where they meet"))
        self.assertEqual(1, shown.count("seem to differ visibly"))

    def test_nothing_to_compare_is_said(self):
        self.studio()
        shown = self.expect(ALL_WELL, "compare", "studio").stdout
        self.assertIn("There are no two lots of one colourway on one base with a colour each.\n", shown)

    def test_records_with_errors_are_not_compared(self):
        self.studio(RECORDS + self.MORE.replace("lab(50 0 0)", "lab(50 0)"))
        result = self.expect(PROBLEMS, "compare", "studio")
        self.assertEqual("", result.stdout)
        self.assertIn("nothing is compared before the errors are put right", result.stderr)


class Substitutes(Commands):
    DYES = """\
  - id: dusk
    name: Dusk
    line: Fenlight acid
    code: F-1
    class: acid, levelling
    hazards: [H317]
    swatches:
      - {depth: 1 %, base: plain-sock, colour: "lab(50 0 -20)", colour from: instrument}
      - {depth: 2 %, base: plain-sock, colour: "lab(40 0 -24)", colour from: instrument}
      - {depth: 2 %, base: fell-dk}
  - id: mole
    name: Mole
    line: Tarnbeck milling
    code: T-9
    class: acid, milling
    breaks into: []
    speckle: {grade: soft}
    hazards: [H317, H319]
    in stock: 40 g
    swatches:
      - {depth: 0.8 %, base: plain-sock, colour: "lab(52 0 -20)", colour from: instrument}
      - {depth: 2 %, base: plain-sock, colour: "lab(44 1.5 -24)", colour from: instrument}
  - id: dusk-t
    name: Dusk
    line: Tarnbeck milling
    code: T-4
    class: acid, milling
    status: discontinued
    breaks into: [rust, lilac]
    bleeds: yes
    swatches:
      - {depth: 1 %, base: plain-sock, colour: "lab(50.5 0 -20)", colour from: photo}
  - id: ash
    name: Ash
    line: Fenlight acid
    speckle: {grade: blotchy}
    swatches:
      - {depth: 4 %, base: plain-sock, colour: "lab(50 0 0)", colour from: instrument}
"""
    FELL = "  - {id: fell-dk, name: Fell DK, fibre: {wool: 100 %}, skein: {weight: 100 g, length: 210 m}, care: [hand wash, no bleach, no tumble, no iron, no dry clean]}\nlots:"

    def setUp(self):
        super().setUp()
        self.studio(RECORDS.replace("bases:\n", self.DYES + "bases:\n").replace("lots:", self.FELL))

    def near(self, *words, status=ALL_WELL):
        return self.expect(status, "near", "studio", *words)

    def test_it_ranks_what_was_dyed_alike_and_says_why(self):
        result = self.near("F-1")
        self.assertEqual("", result.stderr)
        self.assertEqual(
            result.stdout,
            """\
Nearest to Dusk (F-1, Fenlight acid) at 1 %, 2 % on Plain Sock
     CODE  NAME  LINE              ΔE00  COLOURS                                            COMPARED AT
  1  T-4   Dusk  Tarnbeck milling  0.5   not measured  not told apart by photograph or eye  1 % on Plain Sock
     blue too
     discontinued · another class: acid, milling · breaks into rust + lilac · speckle: not tried · bleeds · no hazard data on file
  2  T-9   Mole  Tarnbeck milling  2.9   measured      differ a little                      0.8 % for 1 %, 2 % on Plain Sock
     blue too · lighter · furthest off at 2 % on Plain Sock: 3.9
     another class: acid, milling · does not break · soft speckles · hazards: with H319 · 40 g in stock

Not comparable:
  sloe  Sloe  Fenlight acid  never swatched
  moss  Møss  Fenlight acid  never swatched
  ash   Ash   Fenlight acid  not swatched at a like depth on Plain Sock

ΔE00 is the mean where several swatches are compared; --depth and --base choose which.
""",
        )

    def test_a_photograph_only_makes_it_seem_so(self):
        records = self.studio_folder() / "records.yaml"
        text = records.read_text(encoding="utf-8")
        for lightness, said in ((58, "not measured  seem to differ visibly"), (75, "not measured  seems another colour")):
            records.write_text(text.replace("lab(50.5 0 -20)", f"lab({lightness} 0 -20)"), encoding="utf-8")
            self.assertIn(said, self.near("F-1").stdout)

    def test_what_nobody_has_tried_passes_no_filter_and_is_counted(self):
        shown = self.near("F-1", "--depth", "1 %", "--holds-together", "--speckles", "soft", "--in-stock").stdout
        self.assertEqual(
            shown,
            """\
Nearest to Dusk (F-1, Fenlight acid) at 1 % on Plain Sock
     CODE  NAME  LINE              ΔE00  COLOURS          COMPARED AT
  1  T-9   Mole  Tarnbeck milling  2.0   measured  alike  0.8 % for 1 % on Plain Sock
     blue too · lighter
     another class: acid, milling · does not break · soft speckles · hazards: with H319 · 40 g in stock

Left out by --holds-together: 1 (breaks), 3 (nobody has tried)
""",
        )
        shown = self.near("F-1", "--speckles", "clean").stdout
        self.assertIn("Left out by --speckles: 2 (speckles worse than clean), 3 (nobody has tried)\n", shown)
        self.assertIn("  none of your other dyes can be compared with it so\n", shown)
        shown = self.near("F-1", "--in-stock").stdout
        self.assertIn("Left out by --in-stock: 1 (discontinued or used up), 3 (stock not on record)\n", shown)
        shown = self.near("F-1", "--line", "tarnbeck MILLING", "--class", "acid", "--most", "1").stdout
        self.assertIn("Left out by --line: 3 (of another line)\n", shown)
        self.assertIn("1 more is further off: --most 2 shows all\n", shown)

    def test_slips_are_told_with_what_to_write(self):
        for words, said in (
            (["F-2"], "error: there is no dye “F-2”\n  help: did you mean “F-1”?\n"),
            (
                ["dusk "],
                "error: there is no dye “dusk ”\n  help: did you mean “dusk”?\n",
            ),
            (
                ["DUSK"],
                "error: 2 dyes are called “DUSK”\n"
                "  help: say which by its id: “dusk” for Dusk (F-1, Fenlight acid), “dusk-t” for Dusk (T-4, Tarnbeck milling)\n",
            ),
            (["mole", "--base", "plain sok"], "error: there is no base “plain sok”\n  help: did you mean “Plain Sock”?\n"),
            (["mole", "--line", "Tarnbeck"], "error: there is no line “Tarnbeck”\n  help: did you mean “Tarnbeck milling”?\n"),
            (["mole", "--class", "acit"], "error: there is no class of dyes “acit”\n"),
            (
                ["mole", "--depth", "1%"],
                "error: Mole was never swatched at 1 %\n"
                "  help: its swatches are: 0.8 % on Plain Sock, 2 % on Plain Sock\n",
            ),
            (["sloe"], "error: Sloe was never swatched\n"),
            (["dusk", "--base", "Fell DK"], "error: no colour is recorded of Dusk on Fell DK, so nothing can be near it\n"),
        ):
            with self.subTest(words=words):
                result = self.near(*words, status=PROBLEMS)
                self.assertEqual("", result.stdout)
                self.assertIn(said.split("\n")[0].removeprefix("error: "), result.stderr)
                for line in said.splitlines():
                    self.assertIn(line.strip().removeprefix("error: "), result.stderr)

    def test_wrong_usage_says_what_to_type(self):
        for words, said in (
            (["near", "studio"], "near needs your folder and a dye: dyeleaf near my-studio sloe"),
            (["near", "studio", "dusk", "--depth", "2"], "--depth takes a depth with its %, such as 0.5%, not “2”"),
            (["near", "studio", "dusk", "--speckles", "fine"], "--speckles takes clean, soft, hazy or blotchy, not “fine”"),
            (["near", "studio", "dusk", "--most", "0"], "--most takes a whole number from 1 to 1000"),
            (["near", "studio", "dusk", "--hold-together"], "did you mean “--holds-together”?"),
        ):
            with self.subTest(words=words):
                self.assertIn(said, self.expect(WRONG_USAGE, *words).stderr)

    def test_records_with_errors_are_not_compared(self):
        records = self.studio_folder() / "records.yaml"
        records.write_text(records.read_text(encoding="utf-8").replace("in stock: 40 g", "in stock: some"), encoding="utf-8")
        result = self.near("dusk", status=PROBLEMS)
        self.assertEqual("", result.stdout)
        self.assertIn("nothing is compared before the errors are put right", result.stderr)


class NextLot(Commands):
    def lot(self, *options, status=ALL_WELL, **more):
        return self.expect(status, "lot", "studio", *options, **more)

    def test_it_shows_the_next_code_and_what_a_lot_needs(self):
        self.studio(RECORDS.replace("market: none", "market: none, currency: EUR, lot codes: yy-nnn-c"))
        result = self.lot(*DAY)
        self.assertEqual(result.stderr, "")
        self.assertEqual(
            result.stdout,
            """\
  # Lot 26-118-Y: copy this into your file, below the last lot, and fill in what is empty.
  - id: "26-118-Y"
    colourway:            # the name on the tag
    base: plain-sock
    skeins:               # how many go into the pots; one that gets spoilt stays counted
    dyed: 2026-11-20
    price:                # of one skein, or delete this line
""",
        )
        self.assertEqual((self.here / "studio" / "records.yaml").read_text(encoding="utf-8").count("26-118"), 0)

    def test_what_it_shows_can_be_copied_and_filled_in(self):
        folder = self.studio(RECORDS.replace("  - id: plain-sock", "  - {id: fell, name: Fell, fibre: {wool: 100 %}, skein: {weight: 50 g, length: 90 m}}\n  - id: plain-sock"))
        records = folder / "records.yaml"
        for number in ("26-118", "26-119"):
            shown = self.lot(*DAY).stdout
            self.assertIn(f'  - id: "{number}"\n', shown)
            self.assertIn("base:                 # one of: fell, plain-sock\n", shown)
            self.assertIn("write “lot codes: yymm-nn”", shown)
            with records.open("a", encoding="utf-8") as file:
                file.write(shown)
            unfilled = self.expect(PROBLEMS, "check", "studio").stderr
            self.assertIn("nothing stands after “colourway”", unfilled)
            text = records.read_text(encoding="utf-8")
            for key, value in (("colourway", "Fog"), ("base", "fell"), ("skeins", "4")):
                text = re.sub(rf"(?m)^    {key}: +#", f"    {key}: {value}  #", text)
            records.write_text(text, encoding="utf-8")
            self.expect(ALL_WELL, "check", "studio")

    def test_the_list_is_begun_where_there_is_none(self):
        self.studio(RECORDS[: RECORDS.index("lots:")])
        self.assertTrue(self.lot(*DAY).stdout.startswith("lots:\n  # Lot 26-001: "))

    def test_dashes_stand_as_hers_do(self):
        self.studio(RECORDS.replace("  - {id: \"26-117\"", "- {id: \"26-117\""))
        self.assertIn('\n- id: "26-118"\n  colourway: ', self.lot(*DAY).stdout)

    def test_the_epoch_is_today(self):
        self.studio()
        shown = self.lot(environment={"SOURCE_DATE_EPOCH": "1798761600"}).stdout  # 2027-01-01T00:00:00Z
        self.assertIn('- id: "27-001"', shown)
        self.assertIn("dyed: 2027-01-01", shown)

    def test_no_code_before_the_records_are_sound(self):
        self.studio(RECORDS.replace("skeins: 5", "skeins: many"))
        result = self.lot(*DAY, status=PROBLEMS)
        self.assertEqual(result.stdout, "")
        self.assertIn("no code is given out", result.stderr)

    def test_wrong_usage(self):
        self.assertIn("dyeleaf lot my-studio", self.expect(WRONG_USAGE, "lot").stderr)
        self.assertIn("2026-11-02", self.expect(WRONG_USAGE, "lot", "x", "--date", "2026-11").stderr)


class DataFolder(Commands):
    def test_the_program_finds_its_data_beside_itself_once_installed(self):
        share = self.here / "usr" / "share" / "dyeleaf"
        shutil.copytree(ROOT / "layouts", share / "layouts")
        shutil.copytree(ROOT / "fonts", share / "fonts")
        (self.here / "usr" / "bin").mkdir()
        program = shutil.copy(PROGRAM, self.here / "usr" / "bin" / "dyeleaf")
        (share / "layouts" / "stocks" / "only-here.yaml").write_text("stock: only-here\npaper: A4\n", encoding="utf-8")
        result = subprocess.run([program, "stocks"], capture_output=True, text=True, check=True)
        self.assertIn("only-here", result.stdout)

    def picture_studio(self, key="", picture=b"", name="moor.jpg"):
        folder = self.studio(RECORDS.replace("market: none", "market: none" + key))
        if picture:
            (folder / name).write_bytes(picture)
        return folder

    def test_a_logo_that_is_not_there(self):
        self.picture_studio(", logo: moon.svg", b"<svg xmlns='http://www.w3.org/2000/svg' viewBox='0 0 1 1'/>", "moor.svg")
        for command in (("check", "studio"), ("render", "small", "studio", "-o", "out.pdf")):
            self.assertEqual(
                "studio/records.yaml:2:58: error: there is no picture called “moon.svg” beside this file\n"
                "  2 | studio: {name: Quillmoor Yarn Works, market: none, logo: moon.svg}\n"
                "    |                                                          ^^^^^^^^\n"
                "  help: did you mean “moor.svg”?\n",
                self.expect(PROBLEMS, *command).stderr.replace("1 error: nothing was written\n", ""))
        self.assertFalse((self.here / "out.pdf").exists())

    def test_a_logo_that_cannot_be_printed(self):
        words = b"<svg xmlns='http://www.w3.org/2000/svg' viewBox='0 0 9 9'>\n<text>Quillmoor</text></svg>"
        for picture, complaint in (
            (b"\0\0\0\x18ftypheic\0\0\0\0", "is a HEIC file, which cannot be printed\n"),
            (words, "has words in it, and their font is not known here (on its line 2)\n"),
            (b"Dear picture", "is not a picture\n"),
        ):
            self.picture_studio(", logo: moor.jpg", picture)
            said = self.expect(PROBLEMS, "check", "studio").stderr
            self.assertIn("records.yaml:2:58: error: the picture “moor.jpg” " + complaint, said)
            self.assertIn("  help: ", said)
            shutil.rmtree(self.studio_folder())

    def test_a_logo_outside_the_folder(self):
        self.picture_studio(", logo: ../moor.jpg")
        said = self.expect(PROBLEMS, "check", "studio").stderr
        self.assertIn("records.yaml:2:58: error: the picture must lie in the folder of this file\n", said)
        self.assertIn("  help: copy it there and write its name alone, or allow its folder with --also-read FOLDER\n", said)
        (self.here / "moor.jpg").write_text("<svg xmlns='http://www.w3.org/2000/svg' viewBox='0 0 1 1'/>")
        self.expect(ALL_WELL, "check", "studio", "--also-read", ".")
        self.expect(ALL_WELL, "render", "small", "studio", "-o", "out.pdf", "--also-read", ".")

    def test_a_layout_that_places_what_is_no_picture(self):
        for placed, complaint, help_line in (
            ("lot.id", "“lot.id” is a text, which cannot be placed here", "a picture into picture"),
            ("studio.lgo", "there is no fact called “studio.lgo” here", "did you mean “studio.logo”?"),
            ("moor.jpg", "there is no picture called “moor.jpg” beside this file", "put the picture there: a JPEG, PNG or SVG file"),
        ):
            self.studio(layout=LAYOUT + f"      - {{picture: {placed}, height: 9 mm}}\n")
            said = self.expect(PROBLEMS, "render", "small", "studio", "-o", "out.pdf").stderr
            self.assertIn(f"small.yaml:13:19: error: {complaint}\n", said)
            self.assertIn(help_line, said)
            shutil.rmtree(self.studio_folder())

    def test_a_coarse_picture_is_pointed_out_once(self):
        self.studio(layout=LAYOUT + "      - {picture: moor.png, height: 25.4 mm}\n")
        subprocess.run(["convert", "-size", "100x100", "xc:gray", "studio/layouts/moor.png"], cwd=self.here, check=True)
        said = self.expect(ALL_WELL, "render", "small", "studio", "-o", "out.pdf").stderr
        self.assertIn(
            "small.yaml:13:10: warning: the picture “moor.png” prints at 25.4 × 25.4 mm with only 100 pixels to the "
            "inch, and will look coarse\n", said)
        self.assertIn(
            "  help: it has 100 × 100 pixels, sharp up to 16.9 × 16.9 mm: make the box that small, or take a picture "
            "of 150 × 150 pixels or more\n", said)
        self.assertEqual(1, said.count("warning: "))

    def test_a_wrong_home_is_said(self):
        result = self.expect(PROBLEMS, "stocks", environment={"DYELEAF_HOME": "/nowhere"})
        self.assertIn("DYELEAF_HOME", result.stderr)


if __name__ == "__main__":
    unittest.main()
