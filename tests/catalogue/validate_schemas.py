# SPDX-License-Identifier: MIT
"""Checks the shipped files against their schemas with a validator that is not ours.

Validator: jsonschema for Python (Debian python3-jsonschema), JSON Schema draft 2020-12. Every
shipped file must be valid, and corrupted copies of each must be refused, so that a schema which
lets everything through cannot pass. Usage: validate_schemas.py SOURCE_DIR [PROGRAM]; with the
program, the plan that it reports for the demo order is checked as well.
"""

import copy
import json
import pathlib
import subprocess
import sys

import jsonschema

FORMATS = {
    "creaseline-" + name: name
    for name in (
        "order shop blank design kind locations placement-rules backing-rules "
        "frame-edge-rules cautions monogram-rules currencies defaults measure-words trade-words "
        "phrases plan"
    ).split()
}


def load_validators(folder):
    schemas = {
        path.name: json.loads(path.read_text(encoding="utf-8"))
        for path in sorted(folder.glob("*.schema.json"))
    }
    validators = {}
    for name, schema in schemas.items():
        jsonschema.Draft202012Validator.check_schema(schema)
        assert schema["$id"] == name, f"{name}: $id is {schema['$id']}"
        # The store answers every reference; nothing is fetched.
        resolver = jsonschema.RefResolver(name, schema, store=schemas)
        validators[name] = jsonschema.Draft202012Validator(schema, resolver=resolver)
    return validators


def first_list(document):
    """The key of the first list of objects in the document, or None."""
    for key, value in document.items():
        if isinstance(value, list) and value and isinstance(value[0], dict):
            return key
    return None


def corruptions(document):
    """Named copies of the document, each wrong in one way."""

    def changed(change):
        twin = copy.deepcopy(document)
        change(twin)
        return twin

    yield "a newer version", changed(lambda d: d.update(version=2))
    yield "another format", changed(lambda d: d.update(format="creaseline-nothing"))
    yield "a missing format", changed(lambda d: d.pop("format"))
    yield "an unknown key", changed(lambda d: d.update(colourr="navy"))
    yield "a list instead of the object", [document]
    for key in ("id", "name"):
        if key in document:
            yield f"a number for {key}", changed(lambda d, key=key: d.update({key: 7}))
            yield f"an empty {key}", changed(lambda d, key=key: d.update({key: ""}))
    key = first_list(document)
    if key is not None:
        yield f"a text for {key}", changed(lambda d: d.update({key: "none"}))
        yield f"a number in {key}", changed(lambda d: d[key].append(7))
        for member in document[key][0]:
            if document["format"] == "creaseline-plan" and member in ("frame", "reason"):
                continue  # null is a value that a plan may have there
            yield f"null for {key}/0/{member}", changed(
                lambda d, member=member: d[key][0].update({member: None})
            )
    for key in ("width", "height"):
        if key in document:
            for wrong in (20, "20", "-20 mm", "0 mm", "20 miles"):
                yield f"{key} {wrong!r}", changed(lambda d, k=key, w=wrong: d.update({k: w}))


def plan_of_demo(program, source):
    """The demo order's plan as the command line writes it; exit code 1 means stops, as wanted."""
    order, shop = (next((source / "demo").glob("*." + kind + ".json")) for kind in ("order", "shop"))
    command = [program, "plan", str(order), "--shop", str(shop), "--json"]
    result = subprocess.run(command, capture_output=True, check=False)
    assert result.returncode in (0, 1), result.stderr.decode()
    return json.loads(result.stdout)


def main(arguments):
    source = pathlib.Path(arguments[1])
    validators = load_validators(source / "resources" / "schema")
    files = [
        path
        for pattern in (
            "resources/kinds/*.json",
            "resources/rules/*.json",
            "resources/import/*.json",
            "resources/help/*.json",
            "resources/translations/*.json",
            "demo/**/*.json",
        )
        for path in sorted(source.glob(pattern))
    ]
    documents = [(path, json.loads(path.read_text(encoding="utf-8"))) for path in files]
    if len(arguments) > 2:
        documents.append(("plan of the demo", plan_of_demo(arguments[2], source)))
    failures = []
    used = set()
    corrupted = 0
    for path, document in documents:
        name = FORMATS.get(document.get("format"))
        if name is None:
            failures.append(f"{path}: unknown format {document.get('format')!r}")
            continue
        used.add(name)
        validator = validators[name + ".schema.json"]
        for error in validator.iter_errors(document):
            place = "/".join(str(part) for part in error.absolute_path)
            failures.append(f"{path}: /{place}: {error.message[:300]}")
        for what, wrong in corruptions(document):
            corrupted += 1
            if validator.is_valid(wrong):
                failures.append(f"{path}: the schema lets {what} through")
    expected = set(FORMATS.values()) - (set() if len(arguments) > 2 else {"plan"})
    for name in sorted(expected - used):
        failures.append(f"no file was checked against {name}.schema.json")
    for failure in failures:
        print(failure)
    print(f"{len(documents)} documents, {corrupted} corrupted copies, {len(failures)} failures")
    return 1 if failures else 0


if __name__ == "__main__":
    sys.exit(main(sys.argv))
