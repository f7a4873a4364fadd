#!/usr/bin/env python3
"""Writes the invented studio whose tags the benchmark draws, and beside it what stands on them as plain lines for the floor.

    python3 tests/bench/studio.py FOLDER TAGS [--shared-codes]

A lot is nine skeins, and so one sheet; a last one takes the rest. No two lots share a name, a number, a link or a colour.
Each skein has a code to scan of its own; with --shared-codes the skeins of a lot share one.
"""

import argparse
import pathlib
import shutil

HERE = pathlib.Path(__file__).resolve().parent
LINK = "https://q.example/"  # short enough for codes of 25 × 25 modules
SKEINS = 9
ON_TAGS = ("id", "name", "skeins", "price", "colour", "link")

# Twenty-two each: 10,648 names, most of them too long for their line.
FIRST = (
    "Amber Ashen Bright Copper Dusky Early Faded Frosted Golden Hidden Inky "
    "Late Mossy Pale Quiet Rusty Salted Silver Smoky Sunken Velvet Wild"
).split()
SECOND = (
    "Acorn Barley Bramble Bracken Campion Curlew Fern Foxglove Gorse Hawthorn Heather "
    "Heron Ivy Lichen Magpie Nettle Otter Plover Rowan Sedge Sorrel Teasel"
).split()
THIRD = (
    "at Dusk|at the Weir|before Rain|behind the Barn|below the Mill|by Day|by the Slipway|in a Hedge|in April|in Flood|"
    "in November|in Long Grass|near the Ford|on Chalk|on the Moor|on a Wall|over Ice|past the Bend|under Snow|"
    "upstream|with Honey|without Coat"
).split("|")

STUDIO = """studio:
  name: Quillmoor Yarn Works
  market: eu
  units: both
  currency: EUR
  care: symbols
  link: {link}
"""
BASES = """bases:
  - id: plain-sock
    name: Plain Sock
    fibre: {wool: 75 %, polyamide: 25 %}
    superwash: yes
    skein: {weight: 100 g, length: 420 m}
    yarn weight: super fine
    care: [wash 30 gentle, no bleach, no tumble, iron low, dry clean P]
    care from: mill
"""
LOT = """  - id: {id}
    colourway: {name}
    base: plain-sock
    skeins: {skeins}
    dyed: 2026-11-09
    price: {price}
    colour: "{colour}"
    colour from: instrument
"""


def lots_of(tags):
    for number in range((tags + SKEINS - 1) // SKEINS):
        # Neighbours differ in every word, and no two have all three alike: each word with those before it tells the number.
        first = number % 22
        second = (number // 22 + 5 * first) % 22
        third = (number // 484 + 3 * first + second) % 22
        shade = ((number + 1) * 2654435761) % 2**24  # spreads neighbours far apart
        yield {
            "id": f"L{number + 10001}",
            "name": f"{FIRST[first]} {SECOND[second]} {THIRD[third]}",
            "skeins": min(SKEINS, tags - number * SKEINS),
            "price": f"{18 + number % 17}.{number * 5 % 100:02}",
            # In the middle of each channel: none that print could not show, none near black or white.
            "colour": f"#{64 + (shade >> 16) // 2:02x}{64 + (shade >> 8) % 256 // 2:02x}{64 + shade % 256 // 2:02x}",
        }


def write_studio(folder, tags, shared_codes=False):
    """The studio in `folder`, and in `tags.txt` one line a lot: its id, name, skeins, price, colour and link, to which the floor adds
    a skein's number where it ends with a dash."""
    folder = pathlib.Path(folder)
    (folder / "layouts").mkdir(parents=True, exist_ok=True)
    layout = (HERE / "bench-tag.yaml").read_text(encoding="utf-8")
    if shared_codes:
        layout = layout.replace("{lot.link}-{skein.number}", "{lot.link}")
    (folder / "layouts" / "bench-tag.yaml").write_text(layout, encoding="utf-8")
    (folder / "layouts" / "stocks").mkdir(exist_ok=True)
    shutil.copy(HERE / "bench-card.yaml", folder / "layouts" / "stocks")
    (folder / "studio.yaml").write_text(STUDIO.format(link=LINK), encoding="utf-8")
    (folder / "bases.yaml").write_text(BASES, encoding="utf-8")
    with open(folder / "lots.yaml", "w", encoding="utf-8") as lots, open(
        folder / "tags.txt", "w", encoding="utf-8"
    ) as lines:
        lots.write("lots:\n")
        for lot in lots_of(tags):
            lots.write(LOT.format(**lot))
            lot["link"] = LINK + lot["id"] + ("" if shared_codes else "-")
            lines.write("\t".join(str(lot[key]) for key in ON_TAGS) + "\n")


if __name__ == "__main__":
    parser = argparse.ArgumentParser(description=__doc__.splitlines()[0])
    parser.add_argument("folder")
    parser.add_argument("tags", type=int)
    parser.add_argument("--shared-codes", action="store_true")
    asked = parser.parse_args()
    write_studio(asked.folder, asked.tags, asked.shared_codes)
