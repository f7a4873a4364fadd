#!/usr/bin/env python3
"""Draws what stands in for photographs in examples/studio/photos: invented yarn beside a grey card or paper, under
invented light. Nothing was photographed.

    python3 examples/pictures/draw_photos.py examples/studio/photos

Every surface has a known colour; shadows between the strands, shine, noise, the light's colour and the camera's exposure
are laid over it. Needs ImageMagick's `convert`, which packs the JPEGs."""

import math
import random
import struct
import subprocess
import sys
from pathlib import Path

WIDTH, HEIGHT = 640, 480


def light_of(hex_colour):
    """Linear light of an sRGB colour (IEC 61966-2-1)."""
    channels = (int(hex_colour[i:i + 2], 16) / 255 for i in (1, 3, 5))
    return [c / 12.92 if c <= 0.04045 else ((c + 0.055) / 1.055) ** 2.4 for c in channels]


def coded(light):
    light = min(max(light, 0.0), 1.0)
    return round(255 * (12.92 * light if light <= 0.0031308 else 1.055 * light ** (1 / 2.4) - 0.055))


class Yarn:
    """Wound closely from side to side: round strands of two plies."""

    def __init__(self, box, colour, strand, speckles=(), seed=1):
        self.box, self.colour, self.strand = box, light_of(colour), strand
        chance = random.Random(seed)
        left, top, right, bottom = box
        self.speckles = [(chance.uniform(left, right), chance.uniform(top, bottom), chance.uniform(3, 9),
                          light_of(chance.choice(speckles))) for _ in range(55 if speckles else 0)]
        self.lean = {}
        self.chance = chance

    def light(self, x, y):
        number, across = divmod(y + 2.2 * math.sin(x / 90), self.strand)
        lean = self.lean.setdefault(number, self.chance.uniform(0, 2 * math.pi))
        bulge = math.sin(math.pi * across / self.strand)        # 0 in the gap, 1 on the ridge
        ply = math.sin(2 * math.pi * (x / (1.9 * self.strand) + across / self.strand) + lean)
        shade = 0.35 + 0.75 * bulge ** 0.55 + 0.09 * ply
        shine = 0.05 * max(0.0, bulge * (0.6 + 0.4 * ply) - 0.82) / 0.18
        colour = self.colour
        for at_x, at_y, size, speckle in self.speckles:
            if (x - at_x) ** 2 + (y - at_y) ** 2 < size ** 2:
                colour = speckle
        return [channel * shade + shine for channel in colour]


class Flat:
    def __init__(self, box, colour, grain=0.0):
        self.box, self.colour, self.grain = box, light_of(colour), grain

    def light(self, x, y):
        streak = 1 + self.grain * (math.sin(y / 3 + 2 * math.sin(x / 70)) + math.sin(y / 11))
        return [channel * streak for channel in self.colour]


def draw(file, things, lamp, exposure, seed, turned=False):
    """`lamp`: how much of red, green and blue there is in the light. `turned`: held upright, stored on its side."""
    chance = random.Random(seed)
    table = Flat((0, 0, WIDTH, HEIGHT), "#8b7763", grain=0.06)
    rows = []
    for y in range(HEIGHT):
        row = bytearray()
        for x in range(WIDTH):
            thing = next((one for one in things if one.box[0] <= x < one.box[2] and one.box[1] <= y < one.box[3]), table)
            shadow = 1.0
            if thing is table:
                for box in (one.box for one in things):                  # falls to the lower right
                    if box[0] + 7 <= x < box[2] + 7 and box[1] + 7 <= y < box[3] + 7:
                        shadow = 0.6
            window = 1.03 - 0.05 * x / WIDTH                             # to the left
            for channel, share in zip(thing.light(x, y), lamp):
                row.append(coded(channel * share * exposure * window * shadow * (1 + chance.gauss(0, 0.02))))
        rows.append(bytes(row))
    pixels = b"P6 %d %d 255\n" % (WIDTH, HEIGHT) + b"".join(rows)
    turn = ["-rotate", "-90"] if turned else []
    command = ["convert", "ppm:-", *turn, "-strip", "-sampling-factor", "2x2", "-quality", "78", "jpg:-"]
    jpeg = subprocess.run(command, input=pixels, stdout=subprocess.PIPE, check=True).stdout
    # Exif 2.32: one entry, the orientation (tag 274), in big-endian order.
    entry = struct.pack(">HHHIHHI", 1, 0x0112, 3, 1, 6 if turned else 1, 0, 0)
    block = b"Exif\0\0" + b"MM\0\x2a" + struct.pack(">I", 8) + entry
    file.write_bytes(jpeg[:2] + b"\xff\xe1" + struct.pack(">H", len(block) + 2) + block + jpeg[2:])
    print(file, file.stat().st_size)


GREY = "#777777"     # a lightness of 50
PAPER = "#f1f1f0"    # a lightness of 95


def main():
    folder = Path(sys.argv[1])
    folder.mkdir(parents=True, exist_ok=True)
    # A north window late in the day.
    draw(folder / "milk-cap.jpg", [Yarn((60, 70, 330, 410), "#df9d43", 21, seed=3), Flat((400, 90, 580, 400), GREY)],
         (0.92, 0.97, 1.0), 0.85, 4, turned=True)
    # A kitchen in the evening: the lamp is warm, and the camera did not mind.
    draw(folder / "fox.jpg",
         [Yarn((40, 50, 230, 300), "#c77f43", 24, seed=5), Yarn((250, 50, 440, 300), "#b6612e", 24, seed=6),
          Flat((480, 40, 620, 320), PAPER)], (1.0, 0.84, 0.62), 0.9, 7)
    draw(folder / "26-121.jpg",
         [Yarn((50, 60, 400, 420), "#d9cdb6", 18, ("#5a4a86", "#d8a928", "#c2448c", "#2e8f9d"), seed=8),
          Flat((450, 110, 600, 380), GREY)], (0.98, 0.95, 0.86), 0.95, 9)


if __name__ == "__main__":
    main()
