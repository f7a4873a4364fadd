#!/usr/bin/env python3
"""Whether two PDFs show the same pages: the same number of them, the same words on each, the same picture.

    python3 tests/bench/same_pages.py ONE OTHER [--all]

Looked at are the first page and the last, with --all every one. Edges may fall a little otherwise within a pixel.
"""

import re
import subprocess
import sys

DPI = 100
TILE = 25  # pixels: a quarter of an inch
# Of 255, on average in a tile: so much is due to edges alone, mostly in codes to scan; another code makes a hundred of it.
EDGES = 40
FLAT = 2  # of 255: where neither page has an edge, its colour may be rounded otherwise


def run(*command):
    return subprocess.run([str(part) for part in command], capture_output=True, check=True).stdout


def pages_in(pdf):
    return int(re.search(rb"^Pages:\s+(\d+)", run("pdfinfo", pdf), re.M)[1])


def words_on(pdf, page):
    return sorted(run("pdftotext", "-raw", "-f", page, "-l", page, pdf, "-").decode().split())


def picture_of(pdf, page):
    """A size, and the rows of a picture in colour."""
    data = run("pdftoppm", "-r", DPI, "-f", page, "-l", page, pdf)
    head = re.match(rb"P6\s+(\d+)\s+(\d+)\s+255\s", data)
    width, height = int(head[1]), int(head[2])
    row = 3 * width
    return (width, height), [data[head.end() + y * row : head.end() + (y + 1) * row] for y in range(height)]


def is_flat(rows, x, y):
    """Whether there is one colour alone, above and below too."""
    pieces = [row[3 * x : 3 * (x + TILE)] for row in rows[max(0, y - 1) : y + 2]]
    return all(piece == pieces[0][:3] * (len(pieces[0]) // 3) for piece in pieces)


def difference(one, other, width):
    """Where two pictures differ, in tiles from the top left corner, and how; nothing where they do not."""
    steps = {}
    for y, (row, other_row) in enumerate(zip(one, other)):
        if row == other_row:
            continue
        for x in range(0, width, TILE):
            a, b = row[3 * x : 3 * (x + TILE)], other_row[3 * x : 3 * (x + TILE)]
            if a == b:
                continue
            apart = [abs(i - j) for i, j in zip(a, b)]
            if max(apart) > FLAT and is_flat(one, x, y) and is_flat(other, x, y):
                return f"at {x},{y} of {DPI} to the inch, colour {a[:3].hex()}, other {b[:3].hex()}"
            tile = (x // TILE, y // TILE)
            steps[tile] = steps.get(tile, 0) + sum(apart)
    worst = max(steps, key=steps.get, default=None)
    if worst and steps[worst] > EDGES * 3 * TILE * TILE:
        return f"at {worst[0] * TILE},{worst[1] * TILE} of {DPI} to the inch, by {steps[worst] / (3 * TILE * TILE):.0f} of 255"
    return ""


def differ(one, other, page):
    """What is not the same on that page; nothing where all is."""
    words, others = words_on(one, page), words_on(other, page)
    if words != others:
        apart = sorted(set(words) ^ set(others)) or ["some of them more often"]
        return "other words: " + " ".join(apart[:12])
    size, rows = picture_of(one, page)
    other_size, other_rows = picture_of(other, page)
    if size != other_size:
        return f"another size: {size}, {other_size}"
    where = difference(rows, other_rows, size[0])
    return f"another picture {where}" if where else ""


def main(one, other, *options):
    count = pages_in(one)
    if count != pages_in(other):
        return f"{one} and {other} have {count} and {pages_in(other)} pages"
    pages = range(1, count + 1) if "--all" in options else sorted({1, count})
    for page in pages:
        if found := differ(one, other, page):
            return f"page {page} of {one} and {other}: {found}"
    return ""


if __name__ == "__main__":
    problem = main(*sys.argv[1:])
    print(problem, end="\n" if problem else "")
    sys.exit(bool(problem))
