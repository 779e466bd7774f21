"""Rig files: what is read, what is refused, and in which words."""

from __future__ import annotations

import pickle
from pathlib import Path

import pytest

import ropewalk as rw
from ropewalk.rig.file import LARGEST_FILE

RIG7 = rw.rig.example("rig7").read_text(encoding="utf-8")


def load(tmp_path: Path, text: str) -> rw.Rig:
    path = tmp_path / "rig.toml"
    path.write_text(text, encoding="utf-8")
    return rw.load_rig(path)


def refused(tmp_path: Path, old: str, new: str) -> str:
    assert old in RIG7
    with pytest.raises(rw.rig.RigFileError) as caught:
        load(tmp_path, RIG7.replace(old, new, 1))
    return str(caught.value)


def test_rig7_says_that_it_is_invented() -> None:
    rig = rw.load_rig(rw.rig.example("rig7"))
    assert rig.invented
    assert "INVENTED" in RIG7


def test_rig7_as_written() -> None:
    rig = rw.load_rig(rw.rig.example("rig7"))
    assert rig.rope.diameter.m_as("in") == pytest.approx(1.375, rel=1e-12)
    assert rig.block.weight == pytest.approx(46_000 * 4.4482216152605, rel=1e-12)
    assert rig.crown.diameter == pytest.approx(54 * 0.0254, rel=1e-12)
    assert rig.heaviest_trip.depth == 3400.0
    assert rig.strings["drilling"].length_si == pytest.approx(3400.0)


def test_rig_is_frozen_and_pickles() -> None:
    rig = rw.load_rig(rw.rig.example("rig7"))
    with pytest.raises(AttributeError):
        rig.name = "other"  # type: ignore[misc]
    assert pickle.loads(pickle.dumps(rig)) == rig


def test_other_units_give_the_same_rig(tmp_path: Path) -> None:
    other = load(
        tmp_path,
        RIG7.replace('"46000 lbf"', '"46 kip"')
        .replace('"1.375 in"', '"34.925 mm"')
        .replace('"3150 m"', '"3.15 km"'),
    )
    rig = rw.load_rig(rw.rig.example("rig7"))
    assert other.block.weight == pytest.approx(rig.block.weight, rel=1e-14)
    assert other.rope.breaking_force_si == rig.rope.breaking_force_si


@pytest.mark.parametrize(
    ("old", "new", "words"),
    [
        ("sheave_friction", "sheave_fricton", ["unknown key", "did you mean 'sheave_friction'?"]),
        ("lines = 10\n", "", ["reeving.lines: missing"]),
        ("lines = 10", 'lines = "ten"', ["reeving.lines: got 'ten'", "integer"]),
        ("lines = 10", "lines = 1", ["lines", "2"]),
        ('"46000 lbf"', "46000", ["block.weight", "a force", "46000"]),
        ('"46000 lbf"', '"46000 lb"', ["block.weight", "force", "mass"]),
        ('"46000 lbf"', '"23 ton"', ["block.weight", "three meanings"]),
        ('"46000 lbf"', '"46000 lbs/ft"', ["block.weight"]),
        ('"46000 lbf"', '"-46000 lbf"', ["block.weight", "greater than 0"]),
        ('"54 in"', '"1 in"', ["crown.sheave_diameter", "bend_ratio"]),
        ('"manganese steel"', '"mangan"', ["crown.groove_material", "manganese steel"]),
        ('"Wyoming drilling"', '"nobody"', ["limits.design_factor_standard", "Michigan"]),
        ('"1.10 kg/liter"', '"11 kg/liter"', ["mud_density", "4000"]),
        ('"8 m"', '"40 m"', ["block.lowest must be more than block.highest"]),
        ('"6x19S IWRC"', '"6x20 IWRC"', ["6x20 IWRC"]),
        ('"1.375 in"', '"1.4 in"', ["1.4", "1.375"]),
        ('casing"\ndepth', 'liner"\ndepth', ["no string 'production_liner'", "drilling"]),
        ('depth = "3400 m"', 'depth = "3500 m"', ["3500 m", "more than the length of string"]),
        ("passes = 2.0", "# ", ["passes: missing"]),
        ('from_depth = "1200 m"', 'from_depth = "2300 m"', ["from_depth must be less than depth"]),
        (
            "drag_up = 0.08",
            "drag_up = 1.2",
            ["operation[1].drag_up: got 1.2", "less than or equal"],
        ),
        ("drag_up = 0.08", "drag_up = nan", ["operation[1].drag_up"]),
        ("ropewalk = 2", "ropewalk = 3", ["rig.toml:6: ropewalk: layout 3", "1 and 2 are read"]),
        ('"roller"', '"oiled"', ["reeving.sheave_friction", '"roller", "plain"']),
        ("[rope]", "[rope", ["not valid TOML", "line"]),
    ],
)
def test_wrong_files_are_refused_in_words(
    tmp_path: Path, old: str, new: str, words: list[str]
) -> None:
    message = refused(tmp_path, old, new)
    assert message.startswith("rig.toml")
    for word in words:
        assert word in message
    assert "Traceback" not in message


def test_every_problem_of_a_file_is_named_at_once(tmp_path: Path) -> None:
    text = RIG7.replace('"46000 lbf"', "46000").replace('grade = "EIPS"\n', "")
    with pytest.raises(rw.rig.RigFileError) as caught:
        load(tmp_path, text)
    assert len(caught.value.problems) == 2
    assert "2 problems" in str(caught.value)


def test_unreadable_files(tmp_path: Path) -> None:
    with pytest.raises(rw.rig.RigFileError, match="cannot be read"):
        rw.load_rig(tmp_path / "none.toml")
    binary = tmp_path / "binary.toml"
    binary.write_bytes(b"\xff\xfe\x00name")
    with pytest.raises(rw.rig.RigFileError, match="not UTF-8"):
        rw.load_rig(binary)
    huge = tmp_path / "huge.toml"
    huge.write_bytes(b"#" * (LARGEST_FILE + 1))
    with pytest.raises(rw.rig.RigFileError, match="larger than"):
        rw.load_rig(huge)
    nested = tmp_path / "nested.toml"
    nested.write_text("a = " + "[" * 100_000)
    with pytest.raises(rw.rig.RigFileError, match=r"nested too deeply|not valid TOML"):
        rw.load_rig(nested)


def test_unknown_example() -> None:
    with pytest.raises(rw.rig.RigFileError, match="rig7"):
        rw.rig.example("rig8")


def test_work_of_the_plan_is_that_of_its_parts() -> None:
    """The closed forms on hand-made input: 5 round trips are five times one."""
    rig = rw.load_rig(rw.rig.example("rig7"))
    trip = rig.heaviest_trip
    once = rw.work.round_trip(
        rw.Q(trip.depth, "m"),
        rw.Q(trip.stand_length, "m"),
        trip.string.pipe_weight,
        trip.string.bha_excess_weight,
        rw.Q(rig.block.weight, "N"),
    ).m_as("J")
    assert trip.work(rig.block.weight) == pytest.approx(5 * once, rel=1e-14)


def test_a_casing_string_of_two_weights_works_like_their_mean(tmp_path: Path) -> None:
    """A third of 40 lb/ft and two thirds of 58 lb/ft weigh as 52 lb/ft all the way."""
    one = (
        '  { name = "casing 9 5/8 in 47 lb/ft", length = "2200 m", '
        'mass_per_length = "47 lb/ft" },\n'
    )
    assert one in RIG7
    two = "".join(
        f'  {{ name = "part", length = "{length} m", mass_per_length = "{weight} lb/ft" }},\n'
        for length, weight in ((1466.6666666666667, 58), (733.3333333333333, 40))
    )
    mixed = load(tmp_path, RIG7.replace(one, two))
    mean = load(tmp_path, RIG7.replace(one, one.replace('"47 lb/ft"', '"52 lb/ft"')))
    works = [
        next(op for op in rig.operations if op.kind == "casing").work(rig.block.weight)
        for rig in (mixed, mean)
    ]
    assert works[0] == pytest.approx(works[1], rel=1e-12)


# Facts of the trade. Common practice, no source: the ranges are typed here a second time, and each
# is tried on both sides of both ends.
USUAL = [
    ("rope.diameter", "in", 0.875, 2.0),
    ("crown.sheave_diameter", "in", 42.0, 72.0),
    ("crown.rated_load", "short_ton_force", 420.0, 1400.0),
    ("block.sheave_diameter", "in", 24.0, 72.0),
    ("block.rated_load", "short_ton_force", 100.0, 1250.0),
    ("drawworks.power", "hp", 550.0, 4000.0),
    ("plan.depth", "ft", 3000.0, 40000.0),
]


def test_usual_ranges_are_those_of_the_trade() -> None:
    found = rw.rig.practice(rw.load_rig(rw.rig.example("rig7")))
    assert [(one.key, one.unit, one.low, one.high) for one in found] == USUAL
    assert {one.source for one in found} == {"common practice, no source"}
    assert all(one.holds for one in found)


@pytest.mark.parametrize(("key", "unit", "low", "high"), USUAL[1:-1])
def test_unusual_parts_are_noticed(
    tmp_path: Path, key: str, unit: str, low: float, high: float
) -> None:
    section, name = key.split(".")
    for value, usual in ((low, True), (high, True), (0.99 * low, False), (1.01 * high, False)):
        head, _, tail = RIG7.partition(f"[{section}]")
        old = next(line for line in tail.splitlines() if line.startswith(name))
        new = f'{name} = "{value!r} {unit}"'
        rig = load(tmp_path, f"{head}[{section}]{tail.replace(old, new, 1)}")
        found = {one.key: one for one in rw.rig.practice(rig)}[key]
        assert found.holds is usual
        assert found.value.m_as(unit) == pytest.approx(value, rel=1e-12)


def test_every_line_size_of_the_trade_is_in_the_catalog() -> None:
    """Drilling line 7/8 to 2 in: common practice, no source."""
    sizes = {round(entry["diameter [m]"] / 0.0254, 6) for entry in rw.rope.catalog(grade="EIPS")}
    assert min(sizes) == 0.875
    assert max(sizes) == 2.0
