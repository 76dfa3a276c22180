#!/usr/bin/env python3
# SPDX-License-Identifier: MIT
"""The shipped currencies are those of ISO 4217: check_currencies.py SOURCE_DIR.

Codes come from Debian's iso-codes, minor units from tests/data/iso-4217-minor-units.txt, which
java.util.Currency of OpenJDK 17.0.15 wrote; neither is ours.
"""

import json
import sys
from pathlib import Path

ISO_CODES = Path("/usr/share/iso-codes/json/iso_4217.json")
# Nothing is paid in these: metals, bond market units, units of account, tests, no currency.
NOT_PAID_IN = set("UYW XAG XAU XBA XBB XBC XBD XDR XPD XPT XSU XTS XUA XXX".split())


def main():
    source = Path(sys.argv[1])
    table = json.loads((source / "resources/rules/currencies.json").read_text(encoding="utf-8"))
    shipped = {entry["code"]: entry["minor-digits"] for entry in table["currencies"]}
    standard = {entry["alpha_3"] for entry in json.loads(ISO_CODES.read_text())["4217"]}
    lines = (source / "tests/data/iso-4217-minor-units.txt").read_text().splitlines()
    digits = {code: int(number) for code, number in (line.split() for line in lines)}
    complaints = [f"{code} is no currency of ISO 4217" for code in sorted(set(shipped) - standard)]
    complaints += [f"{code} is missing" for code in sorted(standard - NOT_PAID_IN - set(shipped))]
    for code, number in sorted(shipped.items()):
        if digits.get(code) != number:
            complaints.append(f"{code} has {digits.get(code)} decimals, not {number}")
    if len({code for code in shipped if shipped[code] != 2}) < 10:
        complaints.append("hardly any currency without two decimals: the table is not the standard's")
    for complaint in complaints:
        print(complaint)
    print(f"{len(shipped)} currencies, {len(complaints)} complaints")
    return 1 if complaints else 0


if __name__ == "__main__":
    sys.exit(main())
