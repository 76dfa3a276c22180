#!/usr/bin/env python3
# SPDX-License-Identifier: MIT
"""The demo order shows what it is meant to show: check_demo.py CREASELINE, run in the source folder."""

import json
import subprocess
import sys
from pathlib import Path

DEMO = Path(__file__).resolve().parents[2] / "demo"
ORDER = DEMO / "regatta.order.json"
SHOP = DEMO / "workshop.shop.json"

# Code of a finding, and the line of the order that is made to give it.
MEANT = [
    ("sewn-in-parts", "7"),
    ("fits-only-turned", "4"),
    ("too-dense", "7"),
    ("measure-assumed", "5"),
    ("backing-not-in-stock", "1"),
]
# Stops may come from these lines only: a demo full of trouble would teach nothing.
LINES_WITH_STOPS = {"2"}


class Complaints(list):
    def expect(self, holds, what):
        if not holds:
            self.append(what)


def read(path):
    return json.loads(path.read_text(encoding="utf-8"))


def check_order(complaints):
    order = read(ORDER)
    blanks = {b["id"]: b for b in (read(DEMO / path) for path in order["blanks"])}
    designs = {d["id"]: d for d in (read(DEMO / path) for path in order["designs"])}
    lines = order["lines"]
    sizes = {size for line in lines for size in line["sizes"]}
    kinds = {blanks[line["blank"]]["kind"] for line in lines}
    locations = {p["location"] for line in lines for p in line["placements"]}
    garments = sum(quantity for line in lines for quantity in line["sizes"].values())
    complaints.expect(len(lines) >= 6, f"{len(lines)} lines, at least 6")
    complaints.expect(garments >= 40, f"{garments} garments, at least 40")
    complaints.expect({"YS", "4XL"} <= sizes, f"sizes from YS to 4XL, not {sorted(sizes)}")
    complaints.expect(len(kinds) == 5, f"five kinds, not {sorted(kinds)}")
    complaints.expect(len(locations) >= 7, f"seven locations, not {sorted(locations)}")
    ordered = {p["design"] for line in lines for p in line["placements"]}
    lettered = [d for d in ordered if len(designs[d].get("pieces", [])) == 3]
    complaints.expect(lettered, "no appliqué design with three letters is ordered")
    for design in lettered:
        for piece in designs[design]["pieces"]:
            kinds_of_blocks = [b["kind"] for b in designs[design]["blocks"]
                               if b.get("piece") == piece["name"]]
            complaints.expect(kinds_of_blocks == ["placement-line", "tack-down", "cover"],
                              f"{design}, piece {piece['name']}: {kinds_of_blocks}")
    complaints.expect(ordered == set(designs), f"never ordered: {sorted(set(designs) - ordered)}")
    return garments


def minor(amount):
    """'18.50 EUR' in cents."""
    number, currency = amount.split()
    assert currency == "EUR", amount
    euros, cents = number.split(".")
    return int(euros) * 100 + int(cents)


def check_cost(complaints, plan):
    cost = plan["cost"]
    fields = {entry["field"] for entry in cost["not-counted"]}
    complaints.expect(fields == {"backing-stock", "blank-price", "held"},
                      f"not counted: {sorted(fields)}")
    complaints.expect(not cost["complete"], "the cost says that it is complete")
    total = minor(cost["total"])
    for part, amounts in (("items", [minor(item["amount"]) for item in cost["items"]]),
                          ("lines", [minor(line["total"]) for line in cost["lines"]])):
        complaints.expect(sum(amounts) == total, f"{part} do not add up to {total} cents")
    supplied = [line for line in cost["lines"] if line["line"] == "7"]
    complaints.expect(supplied and "blanks" not in supplied[0]["amounts"],
                      "line 7 brings its own garments")


def check_plan(complaints, creaseline, garments):
    done = subprocess.run([creaseline, "plan", ORDER, "--shop", SHOP, "--json", "--quiet"],
                          text=True, capture_output=True, check=False)
    complaints.expect(done.returncode == 1, f"exit code {done.returncode}, not 1: {done.stderr}")
    if not done.stdout:
        return
    plan = json.loads(done.stdout)
    findings = plan["findings"]
    complaints.expect(plan["counts"]["garments"] == garments, "garments are not all planned")
    for code, line in MEANT:
        complaints.expect(any(f["code"] == code and f["line"] == line for f in findings),
                          f"line {line} does not show {code}")
    pocket = [f for f in findings if f["line"] == "2" and "pocket" in f["text"] and
              f["code"] in ("no-frame-suits", "frame-meets-garment")]
    complaints.expect(pocket, "no frame of line 2 meets the pocket")
    complaints.expect(any("YS" in f["sizes"] for f in pocket), "the pocket is not met on YS")
    stops = {f["line"] for f in findings if f["severity"] == "stop"}
    complaints.expect(stops <= LINES_WITH_STOPS, f"stops on lines {sorted(stops)}")
    complaints.expect(stops, "no stop at all")
    used = {p["frame"]["frame"] for p in plan["placements"] if p["frame"]}
    complaints.expect(len(used) >= 4, f"only these frames are used: {sorted(used)}")
    check_cost(complaints, plan)
    for finding in findings:
        if finding["severity"] == "stop":
            complaints.expect(finding["remedies"], f"no remedy: {finding['place']}: {finding['text']}")


def main():
    if len(sys.argv) != 2:
        print("usage: check_demo.py CREASELINE", file=sys.stderr)
        return 2
    complaints = Complaints()
    check_plan(complaints, sys.argv[1], check_order(complaints))
    for complaint in complaints:
        print(complaint)
    return 1 if complaints else 0


if __name__ == "__main__":
    sys.exit(main())
