"""Rig files: compensator and sea of a floater, read and refused."""

from __future__ import annotations

import pickle
from pathlib import Path

import pytest

import ropewalk as rw
from ropewalk.testing import assert_close

FLOATER = rw.rig.example("osprey-sound")
TEXT = FLOATER.read_text(encoding="utf-8")


def load(tmp_path: Path, text: str) -> rw.Rig:
    path = tmp_path / "rig.toml"
    path.write_text(text, encoding="utf-8")
    return rw.load_rig(path)


@pytest.fixture(scope="module")
def rig() -> rw.Rig:
    return rw.load_rig(FLOATER)


def test_the_floater_says_that_it_is_invented(rig: rw.Rig) -> None:
    assert rig.invented
    assert rig.name == "Osprey Sound"
    assert "INVENTED" in TEXT
    assert pickle.loads(pickle.dumps(rig)).sea == rig.sea


def test_compensator_and_sea_as_written(rig: rw.Rig) -> None:
    assert rig.compensator is not None
    assert rig.sea is not None
    assert rig.compensator.mounting == "block"
    assert_close(rig.compensator.stroke, "25 ft")
    assert_close(rig.compensator.rated_load, "600 kip")
    assert rig.compensator.seal_friction == 0.02
    assert (rig.sea.state.significant_height_si, rig.sea.state.peak_period_si) == (4.5, 11.0)
    assert (rig.sea.duration, rig.sea.exceedance) == (3 * 3600.0, 0.01)
    assert rig.sea.response.ratio("10 s") == 0.22
    # The steepness of that sea, 11/√4.5 = 5.2, is that of a fully developed one.
    assert rig.sea.state.peak_factor == 1.0


def test_the_floater_is_of_a_size_that_occurs(rig: rw.Rig) -> None:
    assert rig.compensator is not None
    (usual,) = rw.compensator.table("compensator_practice")
    stroke = rig.compensator.stroke.m_as("ft")
    assert usual["stroke_min [ft]"] <= stroke * (1 + 1e-12)
    assert stroke <= usual["stroke_max [ft]"] * (1 + 1e-12)
    assert usual["seal_friction_min"] <= rig.compensator.seal_friction <= usual["seal_friction_max"]
    heaviest = rig.heaviest_trip.heaviest_hook_load(rig.block.weight)
    assert heaviest - rig.block.weight < rig.compensator.rated_load_si
    assert rig.stuck_hook_load < rig.block.sheaves.rated_load


def test_the_drum_of_the_floater_holds_its_line(rig: rw.Rig) -> None:
    assert rig.drum is not None
    assert rig.line is not None
    shape = rig.drum
    drum = rw.Drum(
        rw.Q(shape.barrel_diameter, "m"),
        rw.Q(rig.rope.diameter_si, "m"),
        shape.laps_per_layer,
        shape.layers,
        shape.layer_height,
        shape.crossovers_per_lap,
    )
    full = drum.height_when_full(lines=rig.reeving.lines, wraps_at_lowest=rig.line.wraps_at_lowest)
    assert full.m_as("m") > rig.travel


def test_stroke_exceedance_in_the_sea_of_the_file(rig: rw.Rig) -> None:
    assert rig.compensator is not None
    assert rig.sea is not None
    half = rw.Q(25 * 0.3048 / 2 - 0.8, "m")
    chance = rig.sea.stroke_exceedance(rig.compensator)
    assert chance == rig.sea.heave().exceedance(half, "3 hour")
    assert chance < rig.sea.exceedance


def test_an_offset_that_takes_the_whole_stroke_is_a_finding(tmp_path: Path) -> None:
    rig = load(tmp_path, TEXT.replace('offset = "0.8 m"', 'offset = "4 m"'))
    assert rig.compensator is not None
    assert rig.sea is not None
    assert rig.sea.stroke_exceedance(rig.compensator) == 1.0


def test_a_hull_stands_for_a_table(tmp_path: Path) -> None:
    before, _, after = TEXT.partition("[sea.response]\n")
    hull = '[sea.hull]\nlength = "200 m"\nbeam = "36 m"\ndraft = "10 m"\nheading = "180 deg"\n'
    rig = load(tmp_path, before + hull + after[after.index("\n[mud]") :])
    assert rig.sea is not None
    ship = rw.compensator.HeaveOperator.box_hull("200 m", "36 m", "10 m", "180 deg")
    assert rig.sea.response.ratio("14 s") == ship.ratio("14 s")
    with pytest.raises(rw.rig.RigFileError, match="one of response"):
        load(tmp_path, TEXT.replace("[mud]", hull + "\n[mud]", 1))


def test_a_land_rig_has_neither() -> None:
    rig = rw.load_rig(rw.rig.example("rig7"))
    assert rig.compensator is None
    assert rig.sea is None


@pytest.mark.parametrize(
    ("old", "new", "message"),
    [
        ('mounting = "block"', 'mounting = "roof"', "compensator.mounting"),
        ('stroke = "25 ft"', "stroke = 25", "compensator.stroke"),
        ('gas_volume = "10 m**3"', 'gas_volume = "10 m"', "compensator.gas_volume"),
        ('gas_volume = "10 m**3"', 'gas_volume = "0.4 m**3"', "compensator: .*no gas is left"),
        ("polytropic_exponent = 1.2", "", "compensator.polytropic_exponent: missing"),
        ("seal_friction = 0.02", "seal_friction = 2.0", "compensator.seal_friction"),
        ("exceedance = 0.01", "exceedence = 0.01", "did you mean 'exceedance'"),
        ('peak_period = "11 s"', 'peak_period = "0.1 s"', "sea: .*peak_period"),
        ('"10 s", "12 s"', '"12 s", "10 s"', "sea.response: .*periods must rise"),
        ("ratios = [0.00, ", "ratios = [", "sea.response: .*a ratio for each period"),
    ],
)
def test_wrong_entries_are_named(tmp_path: Path, old: str, new: str, message: str) -> None:
    assert old in TEXT
    with pytest.raises(rw.rig.RigFileError, match=message):
        load(tmp_path, TEXT.replace(old, new, 1))
