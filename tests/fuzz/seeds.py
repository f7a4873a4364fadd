"""Lays out what each fuzzer starts from: the files of the project, every case of the case files by itself, small pictures."""
import re
import shutil
import struct
import subprocess
import sys
from pathlib import Path

PROJECT = Path(__file__).resolve().parents[2]


def cases(folder):
    """The YAML of each case in a folder of case files."""
    for path in sorted((PROJECT / "tests/cases" / folder).glob("*.case")):
        for case in re.split(r"^=== .*\n", path.read_text(), flags=re.M)[1:]:
            yield case.split("\n--- boxes")[0].encode()


def values(wanted):
    """What stands behind a colon in the records and their cases, be it in brackets or braces, where it looks like `wanted`."""
    value = re.compile(rb":[ ]+(\{(?:[^{}]|\{[^{}]*\})*\}|\[[^][\n]*\]|\"[^\"\n]*\"|[^{}\[\],#\n]+)")
    for text in [*cases("records"), *files("examples/*/*.yaml")]:
        for found in value.findall(text):
            if re.search(wanted, found):
                yield found.strip().strip(b'"')


def files(*patterns):
    for pattern in patterns:
        for path in sorted(PROJECT.glob(pattern)):
            yield path.read_bytes()


def found(name):
    """What fuzzers have found before: tests/fuzz/found/NAME."""
    return files(f"tests/fuzz/found/{name}/*")


def small_pictures():
    """Of every kind that cameras and picture programs write, a few pixels each."""
    kinds = {
        "jpg": ["", "-interlace JPEG", "-colorspace Gray", "-colorspace CMYK", "-sampling-factor 2x2 -quality 30"],
        "png": ["", "-depth 16", "-interlace PNG", "-type Palette", "-type Grayscale", "-alpha on -type TrueColorAlpha"],
    }
    for kind, all_options in kinds.items():
        for options in all_options:
            command = ["convert", "-size", "16x12", "gradient:red-blue", *options.split(), "-strip", f"{kind}:-"]
            picture = subprocess.run(command, capture_output=True, check=True).stdout
            yield picture
            if kind == "jpg":
                yield picture[:2] + exif() + picture[2:]


def exif():
    """Which way up, and in which colours: Exif 2.32, 4.5 and 4.6, with a folder inside the first."""

    def folder(entries, next_folder):
        parts = [struct.pack("<HHII", tag, kind, count, value) for tag, kind, count, value in entries]
        return struct.pack("<H", len(parts)) + b"".join(parts) + struct.pack("<I", next_folder)

    first = folder([(274, 3, 1, 6), (34665, 4, 1, 38)], 0)
    block = b"Exif\0\0II*\0" + struct.pack("<I", 8) + first + folder([(40961, 3, 1, 1)], 8)
    return b"\xff\xe1" + struct.pack(">H", len(block) + 2) + block


def small_profiles():
    """Of screens and printers, by tables and by curves, as Ghostscript has them."""
    folder = Path("/usr/share/color/icc/ghostscript")
    return [path.read_bytes() for path in sorted(folder.glob("*.icc")) if path.stat().st_size <= 16384]


SEEDS = {
    "records": lambda: [*files("examples/*/*.yaml"), *cases("records")],
    "layouts": lambda: [*files("layouts/*.yaml", "layouts/styles/*.yaml"), *cases("design"), *cases("layout")],
    "stocks": lambda: [*files("layouts/stocks/*.yaml"), *cases("sheets")],
    "languages": lambda: [*files("layouts/languages/*.yaml")],
    "colours": lambda: [*values(rb"#|\(|reflectance|photo")],
    "quantities": lambda: [*values(rb"^[-+.]?\d[^-/]*$|(weight|length):")],
    "dates": lambda: [*values(rb"\d{4}|\d[-/.]\d|month|year|unknown")],
    "pictures": lambda: [*small_pictures(), *files("examples/studio/*.svg")],
    "profiles": lambda: [*small_profiles()],
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
