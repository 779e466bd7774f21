"""Rig files: units they declare, and what they may leave out."""

from __future__ import annotations

import tomllib
from pathlib import Path

import pytest
from rig_files import PLAN, SMALL, load, refused, write

import ropewalk as rw
from ropewalk.rig.file import parse_rig
from ropewalk.testing import assert_close

# Units of a file


def test_bare_numbers_in_the_units_declared(tmp_path: Path) -> None:
    si = (
        SMALL.replace("[rig]", 'units = "SI"\n[rig]', 1)
        .replace('"46000 lbf"', f"{46000 * 4.4482216152605!r}")
        .replace('"8 m"', "8")
    )
    trade = (
        SMALL.replace("[rig]", 'units = { length = "in", force = "kip" }\n[rig]', 1)
        .replace('"46000 lbf"', "46")
        .replace('"1.375 in"', "1.375")
    )
    for text in (si, trade):
        rig = load(tmp_path, text)
        assert_close(rw.Q(rig.block.weight, "N"), "46000 lbf")
        # A value with its own unit keeps it.
        assert rig.block.lowest == 37.0
        assert rig.rope.diameter_si == pytest.approx(1.375 * 0.0254, rel=1e-15)


def test_si_declares_the_unit_of_every_role() -> None:
    lines = ["ropewalk = 2", 'units = "SI"']
    file = parse_rig(tomllib.loads(SMALL.replace(lines[0], "\n".join(lines))))
    assert file.units == "SI"
    drum = '[drawworks]\ndrum_inertia = 1500\npower = "1500 hp"\n'
    text = SMALL.replace('[drawworks]\npower = "1500 hp"\n', drum).replace(
        lines[0], "\n".join(lines)
    )
    assert parse_rig(tomllib.loads(text)).drawworks.drum_inertia == 1500.0


@pytest.mark.parametrize(
    ("units", "words"),
    [
        ('"US"', ["units: must be", '"SI"']),
        ("3", ["units: must be"]),
        ('{ lenght = "ft" }', ["units.lenght", "did you mean 'length'?"]),
        ('{ number = "ft" }', ["units.number", "no kind of quantity"]),
        ('{ length = "lbf" }', ["units.length", "a unit of a length", "a force"]),
        ('{ length = "furlongs per" }', ["units.length"]),
        ('{ force = "ton" }', ["units.force", "three meanings"]),
        ("{ length = 3 }", ["units.length", "must be a unit"]),
    ],
)
def test_wrong_units_are_refused(tmp_path: Path, units: str, words: list[str]) -> None:
    error = refused(write(tmp_path, SMALL.replace("[rig]", f"units = {units}\n[rig]", 1)))
    assert "rig.toml:3: units" in str(error)
    for word in words:
        assert word in str(error)


def test_units_of_another_role_do_not_help_and_true_is_no_number(tmp_path: Path) -> None:
    lengths = SMALL.replace("[rig]", 'units = { length = "ft" }\n[rig]', 1)
    error = refused(write(tmp_path, lengths.replace('"46000 lbf"', "46000")))
    assert "block.weight: must be a force with a unit, got 46000" in str(error)
    error = refused(write(tmp_path, lengths.replace('"8 m"', "true")))
    assert "block.highest: must be a length" in str(error)


# What a file may leave out


def test_a_small_rig_has_what_it_has(tmp_path: Path) -> None:
    rig = load(tmp_path, SMALL)
    assert (rig.operations, rig.strings, rig.life) == ((), {}, None)
    assert rig.limits == rw.rig.Limits()
    assert len(rw.rig.practice(rig)) == 6
    for ask, section in (
        (lambda: rig.known_life, r"\[life\]"),
        (lambda: rig.heaviest_trip, r"\[\[operation\]\]"),
        (lambda: rig.stuck_hook_load, r"\[stuck\]"),
        (lambda: rig.design_factor_standard, r"\[limits\] design_factor_standard"),
        (lambda: rig.largest_hook_load, r"no \[\[operation\]\] and no \[limits\] hook_load"),
        (lambda: rw.Campaign.from_plan(rig), r"\[\[operation\]\]"),
        (lambda: rw.suspension.rig_margins(rig, "300 kip"), r"\[limits\]"),
    ):
        with pytest.raises(rw.rig.RigFileError, match=section):
            ask()


def test_the_largest_hook_load_takes_what_there_is(tmp_path: Path) -> None:
    asked = '[limits]\nhook_load = "{} kip"\n'
    alone = load(tmp_path, SMALL + asked.format(300))
    assert_close(rw.Q(alone.largest_hook_load, "N"), "300 kip")
    planned = load(tmp_path, SMALL + PLAN)
    trip = planned.heaviest_trip.heaviest_hook_load(planned.block.weight)
    assert planned.largest_hook_load == trip
    stuck = load(tmp_path, f'{SMALL}{PLAN}[stuck]\noverpull = "100 kN"\n')
    assert stuck.largest_hook_load == pytest.approx(trip + 100e3, rel=1e-14)
    small, large = (load(tmp_path, SMALL + PLAN + asked.format(one)) for one in (1, 900))
    assert small.largest_hook_load == trip
    assert_close(rw.Q(large.largest_hook_load, "N"), "900 kip")


def test_a_plan_has_mud_strings_and_operations_or_none_of_them(tmp_path: Path) -> None:
    text = SMALL + PLAN[: PLAN.index("[[operation]]")]
    error = refused(write(tmp_path, text))
    assert "given together or not at all; missing: operation" in str(error)
    line = text[: text.index("[mud]")].count("\n") + 1
    assert error.places == (rw.rig.Place("rig.toml", line, "mud"),)
