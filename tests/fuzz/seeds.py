"""Lays out what each fuzzer starts from: the files of the project, and every case of the case files by itself."""
import re
import shutil
import sys
from pathlib import Path

PROJECT = Path(__file__).resolve().parents[2]


def cases(folder):
    """The YAML of each case in a folder of case files."""
    for path in sorted((PROJECT / "tests/cases" / folder).glob("*.case")):
        for case in re.split(r"^=== .*\n", path.read_text(), flags=re.M)[1:]:
            yield case.split("\n--- boxes")[0].encode()


def values():
    """What stands behind a colon or in braces in the records' cases."""
    for case in cases("records"):
        for value in re.findall(rb": ([^{}\[\],#\n]+|\"[^\"\n]*\")", case):
            yield value.strip()


def files(*patterns):
    for pattern in patterns:
        for path in sorted(PROJECT.glob(pattern)):
            yield path.read_bytes()


def found(name):
    """What fuzzers have found before: tests/fuzz/found/NAME."""
    return files(f"tests/fuzz/found/{name}/*")


SEEDS = {
    "records": lambda: [*files("examples/*/*.yaml"), *cases("records")],
    "layouts": lambda: [*files("layouts/*.yaml", "layouts/styles/*.yaml"), *cases("design"), *cases("layout")],
    "stocks": lambda: [*files("layouts/stocks/*.yaml"), *cases("sheets")],
    "languages": lambda: [*files("layouts/languages/*.yaml")],
    "values": lambda: [*values()],
    "pictures": lambda: [*files("examples/**/*.jpg", "examples/**/*.png", "examples/**/*.svg")],
}


def main(name, folder):
    folder = Path(folder)
    shutil.rmtree(folder, ignore_errors=True)
    folder.mkdir(parents=True)
    seeds = sorted(set([*SEEDS[name](), *found(name)]))
    assert seeds, f"no seeds for {name}"
    for number, seed in enumerate(seeds):
        (folder / f"{number:04}").write_bytes(seed)


if __name__ == "__main__":
    main(*sys.argv[1:])
