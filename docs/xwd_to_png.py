#!/usr/bin/env python3
# SPDX-License-Identifier: MIT
"""Cuts a rectangle out of an X window dump and writes it as PNG:
xwd_to_png.py DUMP PNG X Y WIDTH HEIGHT

Reads what Xvfb keeps with -fbdir: XWD version 7, 32 bits a pixel. Colours are reduced to those of a
palette where 256 are enough, else kept."""

import struct
import sys
import zlib
from pathlib import Path


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


def write_png(path, width, height, rows):
    palette = sorted({pixel for row in rows for pixel in row})
    if len(palette) <= 256:
        index = {pixel: number for number, pixel in enumerate(palette)}
        lines = [b"\0" + bytes(index[pixel] for pixel in row) for row in rows]
        kind, extra = 3, chunk(b"PLTE", b"".join(map(bytes, palette)))
    else:
        lines = [b"\0" + b"".join(map(bytes, row)) for row in rows]
        kind, extra = 2, b""
    header = struct.pack(">IIBBBBB", width, height, 8, kind, 0, 0, 0)
    path.write_bytes(b"\x89PNG\r\n\x1a\n" + chunk(b"IHDR", header) + extra +
                     chunk(b"IDAT", zlib.compress(b"".join(lines), 9)) + chunk(b"IEND", b""))


def main(arguments):
    if len(arguments) != 6:
        raise SystemExit(__doc__)
    dump = Path(arguments[0]).read_bytes()
    write_png(Path(arguments[1]), *read_rows(dump, *map(int, arguments[2:])))


if __name__ == "__main__":
    main(sys.argv[1:])
