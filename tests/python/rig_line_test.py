"""Rig files: drum, string-up of the line and present program, read and refused."""

from __future__ import annotations

import math
from datetime import datetime
from pathlib import Path

import pytest

import ropewalk as rw

RIG7 = rw.rig.example("rig7").read_text(encoding="utf-8")


def load(tmp_path: Path, text: str) -> rw.Rig:
    path = tmp_path / "rig.toml"
    path.write_text(text, encoding="utf-8")
    return rw.load_rig(path)


def without(*sections: str) -> str:
    """Rig 7 without some of its tables."""
    text = RIG7
    for name in sections:
        before, _, after = text.partition(f"[{name}]\n")
        text = before + after[after.index("\n[") + 1 :]
    return text


def test_drum_line_and_program_of_rig7() -> None:
    rig = rw.load_rig(rw.rig.example("rig7"))
    assert rig.drum == rw.rig.DrumShape(
        pytest.approx(28 * 0.0254), 40.0, 4, 3**0.5 / 2, crossovers_per_lap=2
    )
    assert rig.line is not None
    assert (rig.line.supply, rig.line.dead_line, rig.line.fast_line) == (1500.0, 45.0, 55.0)
    assert rig.line.wear.pick_up == 1.0
    # The practice of Lyons (1996), p. 614: 20 ft slipped every 200 ton-miles, 80 ft cut.
    assert rig.program is not None
    assert rig.program.slip == pytest.approx(20 * 0.3048)
    assert rig.program.cut == pytest.approx(80 * 0.3048)
    assert rig.program.every == pytest.approx(200 * 14.31744e6, rel=1e-6)
    assert rig.program.every_trips is None
    assert rig.travel == 29.0


def test_rig7_can_be_strung_up_and_lasts_its_plan() -> None:
    """By hand: line strung, laps on the drum with the block up, cuts of the planned work."""
    rig = rw.load_rig(rw.rig.example("rig7"))
    assert rig.line is not None
    assert rig.drum is not None
    assert rig.program is not None
    lines, rope = rig.reeving.lines, rig.rope.diameter_si
    arcs = (lines + 1) * math.pi / 2 * (rig.crown.diameter + rope)
    lap = math.pi * (rig.drum.barrel_diameter + rope)
    strung = rig.line.dead_line + lines * rig.block.lowest + arcs + rig.line.fast_line
    assert strung + rig.line.wraps_at_lowest * lap < rig.line.supply
    # Nested layers rise by √3/2 of the rope, so that a lap grows by π √3 d.
    laps = [lap + layer * math.pi * math.sqrt(3.0) * rope for layer in range(rig.drum.layers)]
    held = rig.drum.laps_per_layer * sum(laps)
    assert lines * rig.travel + rig.line.wraps_at_lowest * lap < held
    assert rig.program.every is not None
    work = rw.Campaign.from_plan(rig).work.m_as("J")
    slips = work / rig.program.every
    left = rig.line.supply - strung - rig.line.wraps_at_lowest * lap
    assert 2 < slips / 4 < 10
    assert slips * rig.program.slip < left


def test_a_rig_without_them_has_none(tmp_path: Path) -> None:
    rig = load(tmp_path, without("drum", "line", "line.wear", "program"))
    assert (rig.drum, rig.line, rig.program) == (None, None, None)


def test_wear_counts_nothing_unless_given(tmp_path: Path) -> None:
    rig = load(tmp_path, without("line.wear"))
    assert rig.line is not None
    assert rig.line.wear == rw.rig.Wear()
    assert rig.line.wear.crossover == rig.line.wear.anchor == 0.0


def test_reverse_bends_are_read(tmp_path: Path) -> None:
    text = RIG7.replace("[line.wear]\n", "[line.wear]\nreverse_bend = 2.0\n").replace(
        "wraps_at_lowest = 8", 'reverse_bends = ["drum", "crown sheave 5"]\nwraps_at_lowest = 8'
    )
    rig = load(tmp_path, text)
    assert rig.line is not None
    assert rig.line.reverse_bends == ("drum", "crown sheave 5")
    assert rig.line.wear.reverse_bend == 2.0


def test_trips_may_be_counted_instead_of_work(tmp_path: Path) -> None:
    rig = load(tmp_path, RIG7.replace('every = "200 ton_mile"', "every_trips = 2"))
    assert rig.program is not None
    assert (rig.program.every, rig.program.every_trips) == (None, 2.0)


def test_layer_height_may_be_a_number_of_rope_diameters(tmp_path: Path) -> None:
    rig = load(tmp_path, RIG7.replace('layer_height = "nested"', "layer_height = 0.9"))
    assert rig.drum is not None
    assert rig.drum.layer_height == 0.9


def test_dates_of_the_plan(tmp_path: Path) -> None:
    rig = rw.load_rig(rw.rig.example("rig7"))
    assert rig.operations[0].start == datetime(2026, 3, 2, 6)
    first = load(tmp_path, RIG7.replace("2026-03-02T06:00:00", "2026-03-02", 1)).operations[0]
    assert first.start == datetime(2026, 3, 2)


def test_an_idle_operation_moves_nothing() -> None:
    rig = rw.load_rig(rw.rig.example("rig7"))
    waiting = next(one for one in rig.operations if one.kind == "waiting")
    assert waiting.string is None
    assert waiting.work(rig.block.weight) == 0.0
    assert waiting.heaviest_hook_load(rig.block.weight) == rig.block.weight
    assert (waiting.title, waiting.service) == ("waiting", "")


def test_a_jar_pulls_beyond_the_weight() -> None:
    rig = rw.load_rig(rw.rig.example("rig7"))
    jarring = next(one for one in rig.operations if one.kind == "jarring")
    weight = float(jarring.string_weight(3000.0)[0])
    expected = 1.12 * weight + 60_000 * 4.4482216152605 + rig.block.weight
    assert jarring.heaviest_hook_load(rig.block.weight) == pytest.approx(expected, rel=1e-12)
    assert jarring.service == "pulling on stuck pipe"


@pytest.mark.parametrize(
    ("old", "new", "words"),
    [
        ('"28 in"', "28", ["drum.barrel_diameter", "a length"]),
        ("layers = 4", "layers = 0", ["drum.layers = 0"]),
        ('layer_height = "nested"', 'layer_height = "high"', ["drum.layer_height", '"stacked"']),
        ('layer_height = "nested"', "layer_height = 3.0", ["drum.layer_height", "up to 2"]),
        ("laps_per_layer", "laps_per_lay", ["drum.laps_per_lay", "did you mean 'laps_per_layer'?"]),
        ('supply = "1500 m"\n', "", ["line.supply: missing"]),
        ("wraps_at_lowest = 8", "wraps_at_lowest = -8", ["line.wraps_at_lowest = -8"]),
        ("pick_up = 1.0", "pick_up = -1.0", ["line.wear.pick_up = -1"]),
        ("pick_up = 1.0", 'pick_up = "1 m"', ["line.wear.pick_up"]),
        ('crossover_length = "0.6 m"\n', "", ["line.wear.crossover_length: missing"]),
        (
            "wraps_at_lowest = 8",
            'reverse_bends = ["drum"]\nwraps_at_lowest = 8',
            ["line.wear.reverse_bend: missing", "DIN 15020"],
        ),
        (
            "wraps_at_lowest = 8",
            'reverse_bends = ["lead sheave 1"]\nwraps_at_lowest = 8',
            ["line.wear.reverse_bend"],
        ),
        ("[line.wear]", "[line.wear]\nreverse_bend = 0.5", ["reverse_bend = 0.5", "at least"]),
        ('slip = "20 ft"', 'slip = "0 ft"', ["program.slip"]),
        ('every = "200 ton_mile"', "", ["one of every", "every_trips"]),
        ('every = "200 ton_mile"', 'every = "200 ton_mile"\nevery_trips = 2', ["one of every"]),
        ('every = "200 ton_mile"', 'every = "200 ft"', ["program.every", "energy"]),
    ],
)
def test_wrong_tables_are_refused_in_words(
    tmp_path: Path, old: str, new: str, words: list[str]
) -> None:
    assert old in RIG7
    with pytest.raises(rw.rig.RigFileError) as caught:
        load(tmp_path, RIG7.replace(old, new, 1))
    for word in words:
        assert word in str(caught.value)


def test_a_sheave_the_rig_does_not_have(tmp_path: Path) -> None:
    text = RIG7.replace("[line.wear]\n", "[line.wear]\nreverse_bend = 2.0\n").replace(
        "wraps_at_lowest = 8", 'reverse_bends = ["lead sheave 1"]\nwraps_at_lowest = 8'
    )
    with pytest.raises(rw.rig.RigFileError, match="no 'lead sheave 1' on this rig; there are:"):
        load(tmp_path, text)
