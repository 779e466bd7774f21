"""Reads the reference cases and decides whether a value agrees with a printed one.

The format and the rule of agreement are described in ``reference-cases/README.md``; the C++ suite
reads the same files with the same rule (``tests/cpp/reference_cases.hpp``).
"""

from __future__ import annotations

import math
import re
import tomllib
from collections.abc import Iterator, Mapping
from dataclasses import dataclass
from decimal import Decimal
from pathlib import Path
from string import Template
from typing import Any

FOLDER = Path(__file__).resolve().parents[2] / "reference-cases"
STANDINGS = ("published", "from memory", "derived")

_NUMBER = re.compile(r"[+-]?\d+(?:\.(?P<decimals>\d*))?(?:[eE](?P<exponent>[+-]?\d+))?")


@dataclass(frozen=True)
class PrintedNumber:
    """A number with the digits a publication prints, and its unit as text."""

    value: Decimal
    half_unit: Decimal  # half a unit of the last printed digit
    unit: str

    @classmethod
    def parse(cls, text: str) -> PrintedNumber:
        """Read ``"0.8420"``, ``"4.92e4 lbf"`` or ``"12 ft/min"``; no thousands separators."""
        number, _, unit = text.partition(" ")
        match = _NUMBER.fullmatch(number)
        if match is None:
            raise ValueError(f"{text!r} does not begin with a printed number")
        last_digit = int(match["exponent"] or 0) - len(match["decimals"] or "")
        return cls(Decimal(number), Decimal(5).scaleb(last_digit - 1), unit.strip())


@dataclass(frozen=True)
class Expected:
    """What a publication prints for one attribute of a result, and how far off is still equal."""

    attribute: str
    printed: PrintedNumber
    tolerance: Decimal  # absolute, in the unit of the printed number

    def agrees_with(self, value: float) -> bool:
        """Whether ``value``, in the printed unit, rounds to what is printed.

        A value that lies on the limit itself agrees, so the limit is widened by the rounding of a
        binary fraction.
        """
        if not math.isfinite(value):
            return False
        slack = Decimal("1e-12") * abs(self.printed.value)
        return abs(Decimal(value) - self.printed.value) <= self.tolerance + slack


def tolerance_of(printed: PrintedNumber, stated: str | None) -> Decimal:
    """Half a unit of the last printed digit, or what a case states: ``"0.5 %"``, ``"0.002"``."""
    if stated is None:
        return printed.half_unit
    if stated.endswith("%"):
        return abs(printed.value) * Decimal(stated.removesuffix("%").strip()) / 100
    return Decimal(stated)


@dataclass(frozen=True)
class Case:
    """One call of a public function and what is printed for its result."""

    subject: str
    file: str
    label: str
    source: str
    standing: str
    function: str
    construct: Mapping[str, Any] | None
    inputs: Mapping[str, Any]
    multiply_by: float  # what the result is multiplied by before it is compared
    expected: tuple[Expected, ...]

    @property
    def id(self) -> str:
        return f"{self.subject}/{self.file}/{self.label}"

    @property
    def publication(self) -> str:
        """The source up to its first comma: editions and tables of one work count once."""
        return self.source.partition(",")[0].strip()


def case_files() -> list[Path]:
    """Every file of cases, by subject and name; the errata are not cases."""
    return sorted(FOLDER.glob("*/*.toml"))


def read_file(path: Path) -> dict[str, Any]:
    with path.open("rb") as stream:
        return tomllib.load(stream)


def cases_of(path: Path) -> Iterator[Case]:
    """The cases of one file, a table spread into one case per row."""
    document = read_file(path)
    for entry in document["case"]:
        for label, inputs, printed in _rows(entry):
            expected = tuple(
                Expected(attribute, number, tolerance_of(number, entry.get("tolerance")))
                for attribute, number in printed.items()
            )
            yield Case(
                subject=path.parent.name,
                file=path.stem,
                label=label,
                source=entry.get("source", document["source"]),
                standing=entry.get("standing", document["standing"]),
                function=entry["function"],
                construct=entry.get("construct"),
                inputs=inputs,
                multiply_by=entry.get("multiply_by", 1.0),
                expected=expected,
            )


def all_cases() -> list[Case]:
    return [case for path in case_files() for case in cases_of(path)]


def _rows(
    entry: Mapping[str, Any],
) -> Iterator[tuple[str, dict[str, Any], dict[str, PrintedNumber]]]:
    inputs = dict(entry.get("inputs", {}))
    if "expected" in entry:
        printed = {key: PrintedNumber.parse(text) for key, text in entry["expected"].items()}
        yield entry["id"], inputs, printed
        return
    table = entry["table"]
    width = len(table["given"])
    for row in table["rows"]:
        if len(row) != width + len(table["printed"]):
            raise ValueError(f"{entry['id']}: row {row} does not fill its columns")
        given = dict(zip(table["given"], row[:width], strict=True))
        texts = dict(zip(table["printed"], row[width:], strict=True))
        label = f"{entry['id']}[{', '.join(str(value) for value in given.values())}]"
        printed = {key: PrintedNumber.parse(text) for key, text in texts.items()}
        words = {name[1:]: str(value) for name, value in given.items() if name[0] == "$"}
        passed = {name: value for name, value in given.items() if name[0] != "$"}
        yield label, _filled(inputs, words) | passed, printed


def _filled(value: Any, words: Mapping[str, str]) -> Any:
    """Put the columns of a row into the texts that name them: ``"$d in"``."""
    if isinstance(value, str):
        return Template(value).substitute(words)
    if isinstance(value, dict):
        return {key: _filled(item, words) for key, item in value.items()}
    return [_filled(item, words) for item in value] if isinstance(value, list) else value
