#!/usr/bin/env python3
"""How fast and how large: the program beside a floor that draws the same pages by hand, in one run, as ratios.

    python3 tests/bench/bench.py [--require] [--smoke|--pages] [--most TAGS] [--rounds FACTOR]

Time is user and system time of whole processes. The two take turns, and a time's ratio is the median of those of each turn,
so that a machine that is busy or wanders spoils little. Memory is the largest resident set. See DEVELOPERS.md, "How fast, how
large".
"""

import argparse
import os
import statistics
import subprocess
import sys
import tempfile
from pathlib import Path

from studio import write_studio

HERE = Path(__file__).resolve().parent
ROOT = HERE.parent.parent
DATE = "2026-11-20"
CARDS = ("dye-cards", "dye-index", "dye-card", "dye-strip")

# Turns for each number of tags.
ROUNDS = {1: 15, 9: 15, 900: 7, 9_000: 3, 90_000: 1}
SMOKE_ROUNDS = {9: 1, 900: 1, 2_700: 1}
PAGES_ROUNDS = {1: 1, 9: 1, 18: 1}

# General engines that were given the same kind of tag, over a floor of the same kind: measured once, see the table in
# DEVELOPERS.md. The floor is what this run and that one have in common.
ENGINES = {
    "pdflatex": {9: 0.30 / 0.038, 900: 1.02 / 0.63, 9_000: 10.0 / 6.8},
    "Typst 0.14": {9: 0.32 / 0.038, 900: 1.13 / 0.63, 9_000: 9.8 / 6.8},
    "Chromium 156": {9: 2.3 / 0.038, 900: 6.3 / 0.63, 9_000: 135 / 6.8},
    "LibreOffice Writer": {9: 4.2 / 0.038, 900: 30 / 0.63, 9_000: 967 / 6.8},
}


class Cost:
    """What one program took, over all its turns."""

    def __init__(self):
        self.seconds, self.megabytes, self.bytes = [], [], 0

    @property
    def time(self):
        return statistics.median(self.seconds)

    @property
    def memory(self):
        return statistics.median(self.megabytes)


def time_over(one, other):
    return statistics.median(a / b for a, b in zip(one.seconds, other.seconds))


def measure(command, output, cost):
    words = [str(word) for word in command]
    result = subprocess.run(
        [sys.executable, "-I", "-S", HERE / "measure.py", *words], capture_output=True, text=True, check=False
    )
    if result.returncode != 0:
        sys.exit("failed, or took too long: " + " ".join(words) + "\n" + result.stderr)
    seconds, kilobytes = result.stdout.split()
    cost.seconds.append(float(seconds))
    cost.megabytes.append(int(kilobytes) / 1024)
    cost.bytes = os.path.getsize(output)


def take_turns(commands, rounds):
    """`commands`: by name, a command and the file it writes."""
    costs = {name: Cost() for name in commands}
    for _ in range(rounds):
        for name, (command, output) in commands.items():
            measure(command, output, costs[name])
    return costs


def look_at(one, other, *options):
    """Whether two files show the same pages, and what does not."""
    found = subprocess.run(
        [sys.executable, HERE / "same_pages.py", one, other, *options], capture_output=True, text=True, check=False
    )
    return found.returncode == 0, found.stdout + found.stderr


def check_same(one, other, *options):
    same, what = look_at(one, other, *options)
    if not same:
        sys.exit("not the same pages, so nothing can be compared:\n" + what)


class Bench:
    def __init__(self, asked, folder):
        self.asked, self.folder = asked, folder

    def program(self, layout, studio, output):
        return [self.asked.dyeleaf, "render", layout, studio, "-o", output, "--date", DATE], output

    def floor(self, kind, source, output, *options):
        return [self.asked.floor, kind, ROOT / "fonts", source, output, *options], output

    def compare(self, name, program, floor, rounds, *options):
        outputs = [self.folder / f"{name}-{who}.pdf" for who in ("program", "plain", "tagged")]
        costs = take_turns(
            {
                "plain": floor(outputs[1]),
                "program": program(outputs[0]),
                "tagged": floor(outputs[2], "--tagged"),
            },
            rounds,
        )
        check_same(outputs[0], outputs[1], *options)
        check_same(outputs[0], outputs[2], *options)
        for output in outputs:
            output.unlink()
        return costs

    def check_eyes(self):
        """A little that is not the same has to be seen, or nothing that follows can be believed."""
        studio = self.folder / "eyes"
        write_studio(studio, 9)
        lots = (studio / "tags.txt").read_text(encoding="utf-8")
        drawn = []
        slips = {
            "": ("", ""),
            "a word": ("Acorn", "Acom"),
            "a code": ("L10001-", "L10007-"),
            "a colour": ("#5b7c98", "#5b7c9c"),
        }
        for what, slip in slips.items():
            drawn.append(self.folder / f"eyes-{len(drawn)}.pdf")
            (studio / "slip.txt").write_text(lots.replace(*slip), encoding="utf-8")
            subprocess.run(self.floor("tags", studio / "slip.txt", drawn[-1])[0], check=True)
            same, _ = look_at(drawn[0], drawn[-1])
            if same and what:
                sys.exit(f"same_pages.py does not see that {what} differs")
            if not same and not what:
                sys.exit("same_pages.py takes a file for another one than itself")

    def tags(self, count, rounds, shared_codes=False):
        studio = self.folder / f"studio-{count}"
        write_studio(studio, count, shared_codes)
        return self.compare(
            f"tags-{count}",
            lambda output: self.program("bench-tag", studio, output),
            lambda output, *options: self.floor("tags", studio / "tags.txt", output, *options),
            rounds,
        )

    def cards(self, layout, rounds):
        studio = ROOT / "examples" / "studio"
        drawing = self.folder / f"{layout}.txt"
        subprocess.run([self.asked.list, layout, studio, ROOT, DATE, drawing], check=True)
        return self.compare(
            layout,
            lambda output: self.program(layout, studio, output),
            lambda output, *options: self.floor("list", drawing, output, *options),
            rounds,
            "--all",
        )


HEAD = """
                           seconds            │           megabytes         │             bytes
              floor  tagged dyeleaf   ×   × t │  floor tagged dyeleaf     × │     floor    tagged   dyeleaf     ×   × t"""


def print_row(name, costs, tags=1):
    plain, tagged, program = costs["plain"], costs["tagged"], costs["program"]
    sizes = [cost.bytes / tags for cost in (plain, tagged, program)]
    print(
        f"{name:>11} {plain.time:7.3f} {tagged.time:7.3f} {program.time:7.3f} {time_over(program, plain):5.2f} "
        f"{time_over(program, tagged):5.2f} │ {plain.memory:6.1f} {tagged.memory:6.1f} {program.memory:7.1f} "
        f"{program.memory / plain.memory:5.2f} │ {sizes[0]:9.0f} {sizes[1]:9.0f} {sizes[2]:9.0f} "
        f"{sizes[2] / sizes[0]:5.2f} {sizes[2] / sizes[1]:5.2f}",
        flush=True,
    )


def total(all_costs):
    """Of several runs as if they were one."""
    sums = {}
    for who in ("plain", "tagged", "program"):
        costs = [one[who] for one in all_costs]
        sums[who] = Cost()
        sums[who].seconds = [sum(turn) for turn in zip(*(cost.seconds for cost in costs))]
        sums[who].megabytes = [max(cost.memory for cost in costs)]
        sums[who].bytes = sum(cost.bytes for cost in costs)
    return sums


class Bounds:
    def __init__(self):
        self.all_hold = True

    def check(self, what, figure, most):
        holds = figure <= most
        self.all_hold = self.all_hold and holds
        print(f"  {what:<62} {figure:6.2f}   at most {most:5.2f}   {'holds' if holds else 'DOES NOT HOLD'}")


def check_bounds(by_tags):
    bounds = Bounds()
    over_floor = {n: time_over(costs["program"], costs["plain"]) for n, costs in by_tags.items()}

    print("\nBounds, against the plain floor:")
    for n in (900, 9_000):
        if n in by_tags:
            bounds.check(f"time of {n} tags over the floor's", over_floor[n], 1.25)
    if 1 in by_tags:
        bounds.check("time of one tag from a cold start over the floor's", over_floor[1], 1.5)
    for n in (900, 9_000):
        if n in by_tags:
            bytes_over = by_tags[n]["program"].bytes / by_tags[n]["plain"].bytes
            bounds.check(f"bytes of {n} tags over the floor's", bytes_over, 1.05)
    if 90_000 in by_tags:
        programs = {n: costs["program"] for n, costs in by_tags.items()}
        per_tag = (programs[90_000].time / 90_000) / (programs[9_000].time / 9_000)
        bounds.check("time per tag at 90,000 over that at 9,000", per_tag, 1.1)
        bounds.check("peak memory at 90,000 over that at 900", programs[90_000].memory / programs[900].memory, 2)

    print("\nAgainst general engines, by way of the floor (theirs were measured once, see DEVELOPERS.md):")
    for engine, over in ENGINES.items():
        for n, engine_over_floor in over.items():
            if n in over_floor:
                bounds.check(f"time of {n} tags over that of {engine}", over_floor[n] / engine_over_floor, 1)
    return bounds.all_hold


# In no build and on no machine a matter of luck: far from what is wanted, and nearer than a fault would leave it.
def check_smoke(by_tags):
    bounds = Bounds()
    program = {n: costs["program"] for n, costs in by_tags.items()}
    print("\nBounds, wide ones:")
    bounds.check("time of 900 tags over the floor's", time_over(program[900], by_tags[900]["plain"]), 3)
    bounds.check("bytes of 900 tags over the floor's", program[900].bytes / by_tags[900]["plain"].bytes, 1.5)
    bounds.check("peak memory at 2,700 over that at 900", program[2_700].memory / program[900].memory, 1.5)
    return bounds.all_hold


def run(asked, folder):
    bench = Bench(asked, folder)
    rounds = PAGES_ROUNDS if asked.pages else SMOKE_ROUNDS if asked.smoke else ROUNDS
    by_tags = {}
    bench.check_eyes()
    print(HEAD)
    for n in rounds:
        if n <= asked.most:
            by_tags[n] = bench.tags(n, max(1, round(rounds[n] * asked.rounds)))
            print_row(f"{n:,} tag" + "s"[: n > 1], by_tags[n], n)
    if asked.pages or asked.smoke:
        print_row("9, shared", bench.tags(9, 1, shared_codes=True), 9)
        print_row("dye-index", bench.cards("dye-index", 1))
        return asked.pages or check_smoke(by_tags)
    print_row("900, shared", bench.tags(900, max(1, round(rounds[900] * asked.rounds)), shared_codes=True), 900)
    cards = []
    for layout in CARDS:
        cards.append(bench.cards(layout, max(1, round(5 * asked.rounds))))
        print_row(layout, cards[-1])
    print_row("all cards", total(cards))
    print("× over the floor, × t over the floor with tags; bytes are those of a tag, of cards those of the file.")
    print("Shared: the tags of a lot share one code to scan, which the floor draws as a form; else each has its own.")
    return check_bounds(by_tags)


def main():
    build = ROOT / "build"
    parser = argparse.ArgumentParser(description=__doc__.splitlines()[0])
    parser.add_argument("--dyeleaf", type=Path, default=build / "dyeleaf")
    parser.add_argument("--floor", type=Path, default=build / "tests" / "bench_floor")
    parser.add_argument("--list", type=Path, default=build / "tests" / "bench_drawing_list")
    parser.add_argument("--most", type=int, default=90_000, help="the largest number of tags")
    parser.add_argument("--rounds", type=float, default=1, help="so many times the usual turns")
    parser.add_argument("--smoke", action="store_true", help="few tags, wide bounds: a test that takes seconds")
    parser.add_argument("--pages", action="store_true", help="look whether the pages are the same, no more")
    parser.add_argument("--require", action="store_true", help="fail where a bound does not hold")
    asked = parser.parse_args()
    with tempfile.TemporaryDirectory() as folder:
        sound = run(asked, Path(folder))
    sys.exit(0 if sound or not asked.require else 1)


if __name__ == "__main__":
    main()
