#!/usr/bin/env python3
# SPDX-License-Identifier: MIT
"""Looks whether every translation knows all texts of the desk, and no other:
check_translation.py LUPDATE, run in the source folder."""

import shutil
import subprocess
import sys
import tempfile
import xml.etree.ElementTree as ElementTree
from pathlib import Path

TRANSLATIONS = Path("resources/translations")


def messages(file):
    """What identifies each text: context, source, comment, and whether it is counted."""
    found = set()
    for context in ElementTree.parse(file).getroot().iter("context"):
        name = context.findtext("name")
        for message in context.iter("message"):
            found.add((name, message.findtext("source"), message.findtext("comment") or "",
                       message.get("numerus") == "yes"))
    return found


def complaints_of(lupdate, file, folder):
    fresh = Path(folder) / file.name
    shutil.copyfile(file, fresh)
    done = subprocess.run([lupdate, "-no-obsolete", "-locations", "none", "src", "include", "-ts",
                           str(fresh)], text=True, capture_output=True, check=False)
    if done.returncode != 0:
        return [f"{lupdate} failed: {done.stderr}"]
    # A class that lacks Q_OBJECT would ask for its texts under another name.
    complaints = [line for line in done.stderr.splitlines() if line.strip()]
    known, needed = messages(file), messages(fresh)
    complaints += [f"{file}: missing: {each}" for each in sorted(needed - known)]
    complaints += [f"{file}: no longer used: {each}" for each in sorted(known - needed)]
    print(f"{file}: {len(known)} texts, {len(needed)} needed")
    return complaints


def main(lupdate):
    files = sorted(TRANSLATIONS.glob("*.ts"))
    if not files:
        print(f"no translation in {TRANSLATIONS}")
        return 1
    complaints = []
    with tempfile.TemporaryDirectory() as folder:
        for file in files:
            complaints += complaints_of(lupdate, file, folder)
    for complaint in complaints:
        print(complaint)
    if complaints:
        print("bring it up to date with the target \"translations\" (DEVELOPERS.md), and translate")
    return 1 if complaints else 0


if __name__ == "__main__":
    sys.exit(main(*sys.argv[1:]))
