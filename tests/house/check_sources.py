#!/usr/bin/env python3
# SPDX-License-Identifier: MIT
"""Checks of the sources' form: check_sources.py CHECK [BUILD FOLDER], run in the source folder."""

import json
import re
import shlex
import subprocess
import sys
import tempfile
from concurrent.futures import ThreadPoolExecutor
from pathlib import Path

ROOT = Path(__file__).resolve().parents[2]
CORE_LAYERS = ("base", "shape", "catalogue", "planning")
QT_INCLUDE = re.compile(r'#\s*include\s*[<"](Qt?[A-Z]\w*|Qt\w+/\w+)(\.h)?[>"]')
FOREIGN_MACRO = re.compile(r"\b(QVERIFY2?|QCOMPARE|QTEST_\w+|QFAIL|QSKIP|EXPECT_[A-Z]+|ASSERT_[A-Z]+)\b")
LONGEST_FILE = 450
# clang-tidy takes seconds a file; these layers hold the numbers.
TIDY_LAYERS = ("base", "shape", "planning")
# The path-sensitive analyzer doubles the time; the tests run under sanitizers instead. A heap
# includes sources on purpose.
TIDY_LEAVES_OUT = "-clang-analyzer-*,-bugprone-suspicious-include"
# Sources of a layer that clang-tidy goes through at once, at most.
TIDY_HEAP = 40


def files(folders, suffixes):
    """Files of ours below the folders, in order."""
    found = []
    for folder in folders:
        found += [p for p in sorted((ROOT / folder).rglob("*")) if p.suffix in suffixes]
    return found


def sources():
    return files(("include", "src", "tests"), (".h", ".cpp"))


def grep(paths, pattern):
    hits = []
    for path in paths:
        for number, line in enumerate(path.read_text(encoding="utf-8").splitlines(), 1):
            if pattern.search(line):
                hits.append(f"{path.relative_to(ROOT)}:{number}: {line.strip()}")
    return hits


def core_without_qt():
    folders = [f"{top}/{layer}" for layer in CORE_LAYERS
               for top in ("include/creaseline", "src", "tests")]
    return grep(files(folders, (".h", ".cpp")), QT_INCLUDE)


def catch_only():
    return grep(files(("tests",), (".h", ".cpp")), FOREIGN_MACRO)


def file_form():
    complaints = []
    for path in sources():
        lines = path.read_text(encoding="utf-8").splitlines()
        name = path.relative_to(ROOT)
        if not lines or lines[0] != "// SPDX-License-Identifier: MIT":
            complaints.append(f"{name}:1: first line is not the licence identifier")
        if len(lines) > LONGEST_FILE:
            complaints.append(f"{name}: {len(lines)} lines, at most {LONGEST_FILE}")
        if path.suffix == ".h" and "#pragma once" not in lines:
            complaints.append(f"{name}: no #pragma once")
    return complaints


def run_all(commands):
    """Runs the commands two at a time; complaints are the outputs of those that fail."""
    def run(command):
        done = subprocess.run(command, cwd=ROOT, text=True, capture_output=True, check=False)
        return done.stdout + done.stderr if done.returncode != 0 else ""
    with ThreadPoolExecutor(max_workers=2) as pool:
        return [text for text in pool.map(run, commands) if text]


def formatted():
    return run_all([["clang-format", "--dry-run", "-Werror", *map(str, sources())]])


def tidy(build):
    """Goes through heaps of sources: most of clang-tidy's time goes into headers, and a heap goes
    through them once. A heap that does not compile, as names of two sources meet, is halved."""
    database = json.loads((Path(build) / "compile_commands.json").read_text(encoding="utf-8"))
    layers = [str(ROOT / "src" / layer) + "/" for layer in TIDY_LAYERS]
    entries = {entry["file"]: entry for entry in database if entry["file"].startswith(tuple(layers))}
    if not entries:
        return [f"no source to check in {build}/compile_commands.json"]
    command = next(iter(entries.values()))["command"]
    flags = shlex.split(re.sub(r"^(\S*ccache )?\S+ (.*?) -o \S+ -c .*$", r"\2", command))
    heaps = []
    for layer in layers:
        paths = sorted(path for path in entries if path.startswith(layer))
        count = -(-len(paths) // TIDY_HEAP)
        heaps += [paths[start::count] for start in range(count)]
    heaps.sort(key=len, reverse=True)
    print(f"{len(entries)} sources in {len(heaps)} heaps")

    with tempfile.TemporaryDirectory() as folder:
        def complaints(paths):
            heap = Path(folder) / f"{paths[0].replace('/', '-')}-{len(paths)}.cpp"
            heap.write_text("".join(f'#include "{path}"\n' for path in paths), encoding="utf-8")
            done = subprocess.run(
                ["clang-tidy", "--quiet", f"--config-file={ROOT / '.clang-tidy'}",
                 "--checks=" + TIDY_LEAVES_OUT, str(heap), "--", *flags],
                cwd=ROOT, text=True, capture_output=True, check=False)
            text = done.stdout + done.stderr
            if "[clang-diagnostic-error]" in text and len(paths) > 1:
                half = len(paths) // 2
                return complaints(paths[:half]) + complaints(paths[half:])
            return text if done.returncode != 0 else ""

        with ThreadPoolExecutor(max_workers=2) as pool:
            return [text for text in pool.map(complaints, heaps) if text]


def main(arguments):
    checks = {"core-without-qt": core_without_qt, "catch-only": catch_only,
              "file-form": file_form, "format": formatted, "tidy": tidy}
    if not arguments or arguments[0] not in checks:
        print("usage: check_sources.py", "|".join(checks), file=sys.stderr)
        return 2
    if not sources():
        print("no sources found", file=sys.stderr)
        return 1
    complaints = checks[arguments[0]](*arguments[1:])
    for complaint in complaints:
        print(complaint)
    print(f"{len(sources())} sources, {len(complaints)} complaints")
    return 1 if complaints else 0


if __name__ == "__main__":
    sys.exit(main(sys.argv[1:]))
