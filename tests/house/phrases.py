#!/usr/bin/env python3
# SPDX-License-Identifier: MIT
"""What the core and the sheets say, and whether every language knows it. In the source folder:

phrases.py check     complains of phrases missing or left over, and of placeholders that differ
phrases.py update    brings resources/translations/*.phrases.json up to date; what is to be
                     translated gets an empty "said", which the program refuses to read
phrases.py list      one English phrase a line, with the place where it was found
"""

import json
import re
import sys
from pathlib import Path

BOOKS = Path("resources/translations")
SOURCES = ("src/base", "src/shape", "src/catalogue", "src/planning", "src/sheets", "include")
# Functions whose first argument is a phrase (base/worded.h, sheets/text.h).
SPEAKERS = re.compile(r'\b(?:worded|toBeWorded|inLanguage|printed)\(\s*((?:"(?:[^"\\]|\\.)*"\s*)+)')
# Enumerators whose names in files are said as they are, or with spaces for hyphens.
NAMES_AS_THEY_ARE = ("BackingKind", "HoldMethod", "Side")
NAMES_WITH_SPACES = ("EdgeName", "KeepOutName", "Measure", "NeedlePoint", "PanelName")
# Texts of the program's own data (JsonCursor::ownLabel).
DATA = {
    "resources/rules": {"name", "arm-through", "because", "basis", "text", "note", "turn-reason"},
    "resources/kinds": {"name", "behind", "step", "otherwise", "basis"},
    "resources/help": {"word", "also", "meaning", "basis"},
}
NOT_SAID = {Path("resources/rules/currencies.json")}  # codes
FIELD = re.compile(r"\{([^{}]*)\}|%(\d)")


def literal(pieces):
    """The text of adjacent string literals."""
    return "".join(json.loads(f'"{piece}"') for piece in re.findall(r'"((?:[^"\\]|\\.)*)"', pieces))


def without_comments(code):
    return re.sub(r"^\s*//.*$", "", code, flags=re.M)


def names_of(enumeration, code):
    for table in re.finditer(rf"struct EnumNames<{enumeration}> \{{(.*?)\}};", code, re.S):
        yield from re.findall(r'"([^"]+)"', table[1])


def code_phrases():
    for folder in SOURCES:
        for path in sorted(Path(folder).rglob("*")):
            if path.suffix not in (".cpp", ".h", ".in") or path.name == "worded.h":
                continue
            code = without_comments(path.read_text(encoding="utf-8"))
            for match in SPEAKERS.finditer(code):
                yield literal(match[1]), str(path)
            for name in NAMES_AS_THEY_ARE:
                for each in names_of(name, code):
                    yield each, str(path)
            for name in NAMES_WITH_SPACES:
                for each in names_of(name, code):
                    yield each.replace("-", " "), str(path)


def data_phrases():
    def texts(node, keys, key=""):
        if isinstance(node, dict):
            for name, value in node.items():
                yield from texts(value, keys, name)
        elif isinstance(node, list):
            for value in node:
                yield from texts(value, keys, key)
        elif isinstance(node, str) and key in keys:
            yield node

    for folder, keys in DATA.items():
        for path in sorted(set(Path(folder).glob("*.json")) - NOT_SAID):
            for text in texts(json.loads(path.read_text(encoding="utf-8")), keys):
                yield text, str(path)


def needed():
    """English phrase to the first file that says it."""
    found = {}
    for phrase, path in [*code_phrases(), *data_phrases()]:
        # Figures and names of standards are the same in every language.
        if re.search("[A-Za-z]", FIELD.sub("", phrase)):
            found.setdefault(phrase, path)
    return found


def fields(text):
    """Placeholders, numbered by their place where they are not."""
    named, count = [], 0
    for inner, percent in FIELD.findall(text):
        if percent:
            named.append("%" + percent)
            continue
        name, _, form = inner.partition(":")
        named.append((name or str(count), form.replace("L", "")))
        count += 1
    return sorted(map(str, named))


def complaints_of(path, phrases):
    book = json.loads(path.read_text(encoding="utf-8"))
    known = {each["english"]: each["said"] for each in book["phrases"]}
    complaints = [f"missing: {each!r} ({phrases[each]})" for each in phrases if each not in known]
    complaints += [f"no longer said: {each!r}" for each in known if each not in phrases]
    for english, said in known.items():
        if not said.strip():
            complaints.append(f"not translated: {english!r}")
        elif set(fields(said)) != set(fields(english)):
            complaints.append(f"other placeholders: {english!r}: {said!r}")
    if list(known) != sorted(known):
        complaints.append("phrases are not in order")
    print(f"{path}: {len(known)} phrases, {len(phrases)} needed")
    return [f"{path}: {each}" for each in complaints]


def update(path, phrases):
    book = json.loads(path.read_text(encoding="utf-8"))
    known = {each["english"]: each["said"] for each in book["phrases"]}
    book["phrases"] = [{"english": each, "said": known.get(each, "")} for each in sorted(phrases)]
    path.write_text(written(book), encoding="utf-8")


def written(book):
    """One line for each phrase, so that a change of one is a change of one line."""
    lists = {key: value for key, value in book.items() if isinstance(value, list)}
    text = json.dumps({key: value for key, value in book.items() if key not in lists}, indent=2,
                      ensure_ascii=False)[:-2]
    for key, values in lists.items():
        lines = ",\n".join("    " + json.dumps(each, ensure_ascii=False) for each in values)
        text += f',\n  "{key}": [\n{lines}\n  ]'
    return text + "\n}\n"


def main(verb):
    phrases = needed()
    complaints = [f"{path}: begins or ends with a space: {each!r}"
                  for each, path in phrases.items() if each != each.strip()]
    books = sorted(BOOKS.glob("*.phrases.json"))
    if verb == "list":
        for phrase, path in sorted(phrases.items()):
            print(f"{path}: {phrase}")
        return 0
    if verb == "update":
        for path in books:
            update(path, phrases)
        return 0
    if not books:
        complaints.append(f"no phrasebook in {BOOKS}")
    for path in books:
        complaints += complaints_of(path, phrases)
    for complaint in complaints:
        print(complaint)
    if complaints:
        print("bring the books up to date with `tests/house/phrases.py update`, and translate")
    return 1 if complaints else 0


if __name__ == "__main__":
    sys.exit(main(sys.argv[1] if len(sys.argv) > 1 else "check"))
