"""Rig files: compensator and sea of a floater, read and refused."""

from __future__ import annotations

import math
import pickle
from pathlib import Path

import pytest

import ropewalk as rw
from ropewalk.errors import InadmissibleError
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
    assert rig.weight_on_compensator is not None
    assert_close(rw.Q(rig.weight_on_compensator, "N"), "45 kip")
    carried = heaviest - rig.block.weight + rig.weight_on_compensator
    assert rig.compensator.rated_load_si is not None
    assert carried < rig.compensator.rated_load_si
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
    (finding,) = rw.compensator.rig_findings(rig)
    assert finding.kind == "offset"
    assert "4.00 m leaves nothing of the half stroke of 3.81 m" in finding.text


def test_a_compensator_below_its_load_is_a_finding(tmp_path: Path) -> None:
    rig = load(tmp_path, TEXT.replace('rated_load = "600000 lbf"', 'rated_load = "300000 lbf"'))
    (finding,) = rw.compensator.rig_findings(rig)
    # By hand: 120 m of 150 lb/ft, 150 m of 49.3 and 3330 m of 20.85 in mud of 1.25 kg/liter, and
    # 45 kip of hook and top drive.
    feet = [120 / 0.3048, 150 / 0.3048, 3330 / 0.3048]
    in_air = sum(one * mass for one, mass in zip(feet, (150.0, 49.3, 20.85), strict=True))
    load_kip = in_air * (1.0 - 1.25 / 7.85) / 1000.0 + 45.0
    assert finding.kind == "rating"
    assert f"{load_kip * 4.4482216152605:.0f} kN on the gas" in finding.text
    assert "rated 1334 kN" in finding.text
    assert "3600 m, off bottom" in finding.text


def test_a_stroke_exceeded_too_often_is_a_finding(tmp_path: Path) -> None:
    rig = load(tmp_path, TEXT.replace('stroke = "25 ft"', 'stroke = "12 ft"'))
    assert rig.sea is not None
    assert rig.compensator is not None
    (finding,) = rw.compensator.rig_findings(rig)
    assert finding.kind == "exceedance"
    # 6 ft less 0.8 m are 1.03 m; the heave exceeded with 1 % is deviation times
    # sqrt(-2 ln(1 - 0.99^(1/N))), from the Rayleigh law.
    heave = rig.sea.heave()
    cycles = 10800.0 / heave.zero_crossing_period.magnitude
    largest = heave.deviation_si * math.sqrt(-2.0 * math.log(1.0 - 0.99 ** (1.0 / cycles)))
    for word in ("1.03 m", "in 3 h", "allowed is 0.01", f"heave of {largest:.2f} m"):
        assert word in finding.text


def test_a_compensator_carries_what_hangs_below_it(tmp_path: Path) -> None:
    below = 'weight_below = "45000 lbf" # hook, top drive, links, elevator\n'
    assert below in TEXT
    unknown = load(tmp_path, TEXT.replace(below, ""))
    assert unknown.weight_on_compensator is None
    with pytest.raises(InadmissibleError, match=r"no compensator\.weight_below"):
        rw.compensator.rig_findings(unknown)
    crown = TEXT.replace('mounting = "block"', 'mounting = "crown"')
    assert load(tmp_path, crown.replace(below, "")).weight_on_compensator == pytest.approx(
        105e3 * 4.4482216152605
    )
    with pytest.raises(rw.rig.RigFileError, match="all of block.weight"):
        load(tmp_path, crown)
    with pytest.raises(rw.rig.RigFileError, match="must be less than block.weight"):
        load(tmp_path, TEXT.replace('weight_below = "45000 lbf"', 'weight_below = "105001 lbf"'))
    with pytest.raises(InadmissibleError, match="no compensator"):
        rw.compensator.rig_findings(rw.load_rig(rw.rig.example("rig7")))


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
