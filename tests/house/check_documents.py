#!/usr/bin/env python3
# SPDX-License-Identifier: MIT
"""Links of the documents lead somewhere, pictures are used and small, and commands named exist."""

import re
import sys
from pathlib import Path

ROOT = Path(__file__).resolve().parents[2]
LARGEST_PICTURE = 200 * 1000
LINK = re.compile(r"!?\[[^\]]*\]\(([^)\s]+)\)")
HEADING = re.compile(r"^#+\s+(.*)$", re.MULTILINE)
SCRIPT = re.compile(r"`((?:demo|tests|docs|\.ci)/[\w.-]+(?:/[\w.-]+)*)")


def anchor(heading):
    """The fragment that a heading gets: lower case, blanks to hyphens, other marks dropped."""
    return re.sub(r"[^\w\- ]", "", heading.replace("`", "").lower()).replace(" ", "-")


def outside_code(text):
    return re.sub(r"```.*?```", "", text, flags=re.DOTALL)


def check(document, used):
    text = outside_code(document.read_text(encoding="utf-8"))
    name = document.relative_to(ROOT)
    complaints = []
    for target in LINK.findall(text):
        if re.match(r"[a-z]+:", target):
            continue
        path, _, fragment = target.partition("#")
        file = (document.parent / path).resolve() if path else document
        used.add(file)
        if not file.exists():
            complaints.append(f"{name}: link to {target}: no such file")
        elif fragment and file.suffix == ".md":
            headings = HEADING.findall(outside_code(file.read_text(encoding="utf-8")))
            if fragment not in map(anchor, headings):
                complaints.append(f"{name}: link to {target}: no such heading")
    for script in SCRIPT.findall(text):
        if not (ROOT / script).exists():
            complaints.append(f"{name}: names {script}, which is not there")
    return complaints


def main():
    documents = sorted(ROOT.glob("*.md")) + sorted((ROOT / "docs").glob("*.md"))
    used = set()
    complaints = []
    for document in documents:
        complaints += check(document, used)
    for picture in sorted((ROOT / "docs" / "pictures").glob("*")):
        size = picture.stat().st_size
        if size > LARGEST_PICTURE:
            complaints.append(f"{picture.name}: {size} bytes, at most {LARGEST_PICTURE}")
        if picture not in used:
            complaints.append(f"{picture.name}: no document shows it")
    for complaint in complaints:
        print(complaint)
    print(f"{len(documents)} documents, {len(complaints)} complaints")
    return 1 if complaints or not documents else 0


if __name__ == "__main__":
    sys.exit(main())
