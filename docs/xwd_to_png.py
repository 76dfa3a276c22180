#!/usr/bin/env python3
# SPDX-License-Identifier: MIT
"""Cuts a rectangle out of an X window dump and writes it as PNG:
xwd_to_png.py DUMP PNG X Y WIDTH HEIGHT

Reads what Xvfb keeps with -fbdir: XWD version 7, 32 bits a pixel. The picture gets the 256 colours
that are most frequent; the rest, tints on the edges of letters and lines, become the nearest of them."""

import struct
import sys
import zlib
from collections import Counter
from pathlib import Path

LARGEST_PALETTE = 256


def chunk(kind, data):
    return struct.pack(">I", len(data)) + kind + data + struct.pack(">I", zlib.crc32(kind + data))


def read_rows(dump, x, y, width, height):
    """Rows of (red, green, blue) pixels of the rectangle."""
    header = struct.unpack(">25I", dump[:100])
    size, version, image_format, _, full_width, full_height = header[:6]
    little_endian, bits, stride, colours = header[7] == 0, header[11], header[12], header[19]
    if version != 7 or image_format != 2 or bits != 32:
        raise SystemExit(f"dump of version {version}, format {image_format}, {bits} bits a pixel")
    width, height = min(width, full_width - x), min(height, full_height - y)
    first = size + colours * 12
    rows = []
    for row in range(y, y + height):
        start = first + row * stride + x * 4
        pixels = dump[start:start + width * 4]
        order = (2, 1, 0) if little_endian else (1, 2, 3)
        rows.append(list(zip(*(pixels[channel::4] for channel in order))))
    return width, height, rows


def nearest(pixel, palette):
    """Number of the palette's colour with the least squared distance."""
    return min(range(len(palette)),
               key=lambda number: sum((a - b) ** 2 for a, b in zip(pixel, palette[number])))


def write_png(path, width, height, rows):
    counted = Counter(pixel for row in rows for pixel in row)
    # Equal counts in the order of the colours, so that the same screen gives the same file.
    frequent = sorted(counted, key=lambda pixel: (-counted[pixel], pixel))
    palette = frequent[:LARGEST_PALETTE]
    index = {pixel: nearest(pixel, palette) for pixel in frequent}
    lines = b"".join(b"\0" + bytes(index[pixel] for pixel in row) for row in rows)
    indexed_colours = 3
    header = struct.pack(">IIBBBBB", width, height, 8, indexed_colours, 0, 0, 0)
    path.write_bytes(b"\x89PNG\r\n\x1a\n" + chunk(b"IHDR", header) +
                     chunk(b"PLTE", b"".join(map(bytes, palette))) +
                     chunk(b"IDAT", zlib.compress(lines, 9)) + chunk(b"IEND", b""))


def main(arguments):
    if len(arguments) != 6:
        raise SystemExit(__doc__)
    dump = Path(arguments[0]).read_bytes()
    write_png(Path(arguments[1]), *read_rows(dump, *map(int, arguments[2:])))


if __name__ == "__main__":
    main(sys.argv[1:])
