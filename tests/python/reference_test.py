"""Every reference case through the public Python functions, and the rules the cases keep."""

from __future__ import annotations

import json
import re
from collections import Counter
from collections.abc import Mapping
from typing import Any

import jsonschema
import pytest
from reference_cases import FOLDER, STANDINGS, Case, Expected, all_cases, case_files, read_file

import ropewalk as rw

CASES = all_cases()
SUBJECTS = {
    "units",
    "rope",
    "sheave",
    "reeving",
    "drum",
    "brake",
    "overtravel",
    "deadline",
    "dynamics",
    "rainflow",
    "fit",
    "drawworks",
    "compensator",
    "mast",
    "suspension",
    "fatigue",
    "design_factor",
    "drillstring",
    "work",
}

_STEP = re.compile(r"(?P<name>\w+)|\[(?P<index>-?\d+)\]")


def named(path: str) -> Any:
    """The public object of ropewalk that ``"reeving.efficiency"`` names."""
    found: Any = rw
    for part in path.split("."):
        found = getattr(found, part)
    return found


def built(value: Any) -> Any:
    """An input as it stands in the file; a table that names a function is what it returns."""
    if isinstance(value, Mapping):
        return named(value["function"])(**built_all(value.get("inputs", {})))
    return [built(item) for item in value] if isinstance(value, list) else value


def built_all(inputs: Mapping[str, Any]) -> dict[str, Any]:
    return {name: built(value) for name, value in inputs.items()}


def called(case: Case) -> Any:
    """Call what the case names: a function, a class, or a method of an object it constructs."""
    if case.construct is None:
        return named(case.function)(**built_all(case.inputs))
    owner, _, name = case.function.rpartition(".")
    target = getattr(named(owner)(**built_all(case.construct)), name)
    return target(**built_all(case.inputs)) if callable(target) else target


def attribute_of(result: Any, path: str) -> Any:
    """Follow ``"fast_line"`` or ``"lines[0]"`` from a result; ``"result"`` is the result itself."""
    for step in _STEP.finditer(path):
        if step["index"]:
            result = result[int(step["index"])]
        elif step.start() > 0 or step["name"] != "result":
            result = getattr(result, step["name"])
    return result


def in_printed_unit(value: Any, expected: Expected) -> float:
    """The value as a number in the unit of the printed one; a missing unit on one side fails."""
    unit = expected.printed.unit
    if hasattr(value, "dimensionality"):
        assert unit, f"{expected.attribute} is {value}, but the case prints a plain number"
        return float(value.to(rw.units.parse_units(unit)).magnitude)
    assert not unit, f"{expected.attribute} is a plain number, but the case prints {unit}"
    return float(value)


@pytest.mark.parametrize("case", CASES, ids=lambda case: case.id)
def test_case(case: Case) -> None:
    result = called(case)
    for expected in case.expected:
        value = in_printed_unit(attribute_of(result, expected.attribute), expected)
        value *= case.multiply_by
        assert expected.agrees_with(value), (
            f"{case.function} gives {expected.attribute} = {value!r} {expected.printed.unit}; "
            f"{case.source} has {expected.printed.value} (tolerance {expected.tolerance}, "
            f"{case.standing})"
        )


SCHEMA = json.loads((FOLDER / "schema.json").read_text(encoding="utf-8"))
VALIDATOR = jsonschema.Draft202012Validator(SCHEMA)


@pytest.mark.parametrize(
    "path",
    [*case_files(), FOLDER / "errata.toml"],
    ids=lambda path: path.relative_to(FOLDER).as_posix(),
)
def test_file_keeps_the_schema(path: Any) -> None:
    errors = [
        f"{error.json_path}: {error.message}" for error in VALIDATOR.iter_errors(read_file(path))
    ]
    assert not errors, "\n".join(errors)


@pytest.mark.parametrize(
    "broken",
    [
        {},
        {"title": "t", "source": "s", "standing": "guessed", "case": []},
        {
            "title": "t",
            "source": "s",
            "standing": "published",
            "case": [{"id": "a", "function": "reeving.efficiency", "expected": {"result": 0.5}}],
        },
        {
            "title": "t",
            "source": "s",
            "standing": "published",
            "case": [
                {
                    "id": "a",
                    "function": "reeving.efficiency",
                    "expected": {"result": "0.5"},
                    "tolerance": "1 %",
                }
            ],
        },
    ],
    ids=["empty", "unknown standing", "number instead of text", "tolerance without reason"],
)
def test_the_schema_refuses(broken: dict[str, Any]) -> None:
    assert not VALIDATOR.is_valid(broken)


def test_the_schema_itself_is_one() -> None:
    jsonschema.Draft202012Validator.check_schema(SCHEMA)


def test_the_set_is_wide_enough() -> None:
    entries = sum(len(read_file(path)["case"]) for path in case_files())
    assert entries >= 45
    assert len({case.publication for case in CASES}) >= 12


def test_every_subject_has_cases() -> None:
    assert {case.subject for case in CASES} == SUBJECTS


def test_ids_are_unique() -> None:
    repeated = [name for name, times in Counter(case.id for case in CASES).items() if times > 1]
    assert not repeated


def test_every_case_names_its_source_and_standing() -> None:
    assert all(case.source.strip() and case.publication for case in CASES)
    assert {case.standing for case in CASES} == set(STANDINGS)


def test_errata_are_unique() -> None:
    errata = read_file(FOLDER / "errata.toml")["erratum"]
    assert len({erratum["id"] for erratum in errata}) == len(errata)
