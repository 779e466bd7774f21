"""Drill strings: weights, hook loads and drag against identities, books and laws."""

from __future__ import annotations

import copy
import math
import pickle
from fractions import Fraction
from typing import Any

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

import ropewalk as rw
from ropewalk.drillstring import DrillString, Section
from ropewalk.errors import InadmissibleError, UnitError, UnknownEntryError
from ropewalk.testing import assert_close

STEEL = "65.5 ppg"


def rabia() -> DrillString:
    """The worked set of Rabia, Well Engineering and Construction (from memory)."""
    return DrillString(
        [
            Section("drill collars", "500 ft", "150 lb/ft"),
            Section("drill pipe", "9500 ft", "19.5 lb/ft"),
        ],
        mud_density="10 ppg",
        steel_density=STEEL,
    )


@st.composite
def strings(draw: Any) -> DrillString:
    """Strings of one to five sections."""
    sections = [
        Section(f"section {i}", rw.Q(draw(st.floats(1, 3000)), "m"), rw.Q(draw(w), "kg/m"))
        for i, w in enumerate([st.floats(1, 500)] * draw(st.integers(1, 5)))
    ]
    return DrillString(sections, rw.Q(draw(st.floats(0, 2500)), "kg/m**3"))


# Identities


@given(strings())
def test_the_sections_weigh_what_the_string_does(string: DrillString) -> None:
    mass = sum(section.mass.to("kg").magnitude for section in string.sections)
    assert_close(string.mass, rw.Q(mass, "kg"))
    assert_close(string.weight_in_air, rw.Q(mass, "kg") * rw.Q(9.80665, "m/s**2"))
    assert_close(string.weight_in_mud(), string.weight_in_air * string.buoyancy_factor)


@given(strings())
def test_pipe_alone_and_the_excess_of_the_bha_make_the_string(string: DrillString) -> None:
    alone = string.pipe_weight_si * string.length_si
    together = alone + string.bha_excess_weight_si
    weight = string.weight_in_mud_si(string.length_si)
    assert together == pytest.approx(weight, rel=1e-9, abs=1e-12 * alone)


@given(strings(), st.floats(0, 1), st.floats(0, 1))
def test_more_string_in_the_hole_never_weighs_less(
    string: DrillString, one: float, other: float
) -> None:
    shallow, deep = sorted((one, other))
    weights = string.weight_in_mud(rw.Q([shallow, deep], "m") * string.length_si).magnitude
    assert weights[0] <= weights[1] * (1 + 1e-12)


@given(strings(), st.floats(0, 1e5), st.floats(0, 1e5))
def test_drag_parts_the_hook_loads(string: DrillString, up: float, block: float) -> None:
    down = 0.5 * float(string.weight_in_mud_si(string.length_si))
    loads = {
        what: string.hook_load(
            what,
            block_weight=rw.Q(block, "N"),
            drag_up=rw.Q(up, "N"),
            drag_down=rw.Q(down, "N"),
        ).magnitude
        for what in ("hoisting", "rotating", "lowering")
    }
    assert loads["hoisting"] - loads["rotating"] == pytest.approx(up, abs=1e-6)
    assert loads["rotating"] - loads["lowering"] == pytest.approx(down, rel=1e-9)


def test_the_bha_is_in_the_hole_first() -> None:
    weights = rabia().weight_in_mud(rw.Q([0, 200, 500, 600], "ft")).to("lbf").magnitude
    in_air = weights / rabia().buoyancy_factor
    np.testing.assert_allclose(in_air, [0, 30_000, 75_000, 75_000 + 100 * 19.5])


def test_hook_load_over_many_depths_is_the_hook_load_at_each() -> None:
    depths = rw.Q([100.0, 400.0, 9000.0], "ft")
    many = rabia().hook_load("hoisting", depths, block_weight="23500 lbf", drag_up="10 kip")
    for depth, load in zip(depths, many, strict=True):
        assert_close(
            load, rabia().hook_load("hoisting", depth, block_weight="23500 lbf", drag_up="10 kip")
        )


# Published examples


def test_rabias_hook_load() -> None:
    # From memory; the book rounds the buoyancy factor to 0.847, 0.04 % on the weight in mud.
    string = rabia()
    assert_close(string.weight_in_air, "260250 lbf", absolute="0.5 lbf")
    assert_close(string.weight_in_mud(), "220432 lbf", relative=5e-4)
    load = string.hook_load("rotating", block_weight="23500 lbf")
    assert_close(load, "243932 lbf", relative=5e-4)


def test_rabias_casing_load() -> None:
    # From memory, with the same rounding.
    casing = DrillString(
        [Section("casing 7 in", "10000 ft", "29 lb/ft")], "10 ppg", steel_density=STEEL
    )
    assert_close(casing.weight_in_mud(), "245630 lbf", relative=5e-4)
    load = casing.hook_load("hoisting", block_weight="23500 lbf")
    assert_close(load, "269130 lbf", relative=5e-4)
    assert casing.bha_excess_weight_si == 0.0
    assert casing.bha_length_si == 0.0


def test_excess_weight_of_a_bha_of_several_parts() -> None:
    # drillingformulas.com, round trip ton-miles calculation (after Lapeyrouse): 120 ft of 85 lb/ft
    # collars, 450 ft of 49 lb/ft heavy-weight pipe, tools of 94 ft and 8,300 lb, 13.3 lb/ft pipe,
    # 10.0 ppg; Wc = 26,866 lb with the buoyancy factor rounded to 0.847.
    string = DrillString(
        [
            Section("tools", "94 ft", rw.Q(8300 / 94, "lb/ft")),
            Section("drill collars", "120 ft", "85 lb/ft"),
            Section("heavy-weight drill pipe", "450 ft", "49 lb/ft"),
            Section("drill pipe", "4836 ft", "13.3 lb/ft"),
        ],
        mud_density="10.0 ppg",
        steel_density=STEEL,
    )
    assert_close(string.bha_excess_weight, "26866 lbf", relative=5e-4)
    assert_close(string.bha_length, "664 ft")


def test_steel_of_7850_is_the_default() -> None:
    # BF = 1 − SG/7.85, ONGC tally book, drilling services.
    string = DrillString([Section("pipe", "1 m", "1 kg/m")], "1200 kg/m**3")
    assert string.buoyancy_factor == pytest.approx(1 - 1.2 / 7.85, rel=1e-12)


# The table of tubulars


def test_every_tubular_names_its_source() -> None:
    records = rw.drillstring.tubulars()
    assert {record["kind"] for record in records} == {
        "drill pipe",
        "heavy-weight drill pipe",
        "drill collar",
        "casing",
    }
    for record in records:
        assert record["source"]
        assert record["standing"] in ("published", "from memory", "derived")


def test_sizes_in_designations_are_the_sizes_in_the_columns() -> None:
    def inches(text: str) -> float:
        return float(sum(Fraction(part) for part in text.split()))

    for record in rw.drillstring.tubulars():
        name = record["designation"].split(" ", 1)[1]
        outer, _, rest = name.partition(" in")
        outer, _, inner = outer.partition(" x ")
        assert inches(outer) == record["outer_diameter [in]"], name
        if inner:
            assert inches(inner) == record["inner_diameter [in]"], name
        if record["nominal_weight [lb/ft]"] is not None:
            assert float(rest.split()[0]) == record["nominal_weight [lb/ft]"], name


def test_casing_weighs_what_its_wall_says() -> None:
    # Nominal weight counts threads and coupling, so it is a little more than the plain tube. Inner
    # diameters of API 5CT, from memory.
    for designation, outer, inner in (
        ("casing 7 in 29.00", "7 in", "6.184 in"),
        ("casing 9 5/8 in 47.00", "9.625 in", "8.681 in"),
        ("casing 13 3/8 in 68.00", "13.375 in", "12.415 in"),
    ):
        nominal = Section.from_table(designation, "1 m").mass_per_length
        plain = rw.drillstring.tube_mass_per_length(outer, inner, "7850 kg/m**3")
        assert 1.0 < (nominal / plain).to("dimensionless").magnitude < 1.05


def test_a_section_from_the_table() -> None:
    # Lyons, Guo and Seidel, Air and Gas Drilling Manual, 2nd ed. (2001), p. 3-24: 6.99 lb/ft.
    section = Section.from_table("DP 2 3/8 in 6.65 E75 NC26", "1000 ft")
    assert_close(section.mass, "6990 lb")
    assert section.name == "DP 2 3/8 in 6.65 E75 NC26"


def test_an_unknown_designation_is_refused_with_an_offer() -> None:
    with pytest.raises(UnknownEntryError, match=r"DC 8 x 2 13/16 in"):
        Section.from_table("DC 8 x 3 in", "500 ft")


def test_an_unknown_kind_is_refused_with_an_offer() -> None:
    with pytest.raises(UnknownEntryError, match="drill pipe, heavy-weight drill pipe"):
        rw.drillstring.tubulars("tubing")


# Drag

FRICTIONS = st.floats(0, 1)
ANGLES = st.floats(0, math.pi / 2)


@given(FRICTIONS, ANGLES)
def test_up_and_down_lie_evenly_about_rotating(friction: float, inclination: float) -> None:
    angle = rw.Q(inclination, "rad")
    down, rotating, up = rw.drillstring.slant_pull(
        "18 lbf/ft", "5000 ft", angle, friction, np.array([-1, 0, 1])
    ).magnitude
    assert up + down == pytest.approx(2 * rotating, rel=1e-9, abs=1e-6)
    assert down <= rotating <= up


@given(FRICTIONS, ANGLES)
def test_a_straight_element_is_a_slant(friction: float, inclination: float) -> None:
    angle = rw.Q(inclination, "rad")
    step = rw.drillstring.drag_tension_change(
        "50 kip", "18 lbf/ft", "90 ft", angle, "0 deg", "0 deg", friction, 1
    )
    assert_close(step, rw.drillstring.slant_pull("18 lbf/ft", "90 ft", angle, friction, 1))


@given(FRICTIONS, st.sampled_from([-1, 1]))
def test_a_weightless_bend_is_a_capstan(friction: float, direction: int) -> None:
    # Euler and Eytelwein: F₂ = F₁ exp(± μ θ); the sum over elements differs by (μ θ)² / 2n.
    elements, angle = 500, math.pi / 2
    tension = 1000.0
    for _ in range(elements):
        tension += rw.si.drillstring.drag_tension_change(
            tension, 0.0, 1.0, 1.0, angle / elements, 0.0, friction, direction
        )
    assert tension == pytest.approx(1000 * math.exp(direction * friction * angle), rel=3e-3)


# What cannot be


def test_a_weight_in_pounds_is_no_force() -> None:
    with pytest.raises(UnitError, match="block_weight"):
        rabia().hook_load(block_weight="23500 lb")


@pytest.mark.parametrize(
    ("call", "text"),
    [
        (lambda: Section("pipe", "-1 m", "20 lb/ft"), "length = -1 m is outside"),
        (lambda: DrillString([], "10 ppg"), "at least one section"),
        (lambda: DrillString(["pipe"], "10 ppg"), "Section objects"),
        (lambda: rabia().hook_load("stuck", block_weight="0 N"), "'hoisting', 'lowering'"),
        (lambda: rabia().weight_in_mud("10001 ft"), "length of the string"),
        (
            lambda: rabia().hook_load("lowering", "100 ft", block_weight="0 N", drag_down="50 kip"),
            "would not go down",
        ),
        (
            lambda: DrillString([Section("pipe", "1 m", "1 kg/m")], "10 ppg", "5 ppg"),
            "mud_density must be less",
        ),
    ],
    ids=["length", "empty", "no section", "operation", "too deep", "drag", "floating"],
)
def test_what_cannot_be_is_refused(call: Any, text: str) -> None:
    with pytest.raises(InadmissibleError, match=text):
        call()


def test_strings_are_values() -> None:
    string = rabia()
    assert string == rabia()
    assert hash(string) == hash(rabia())
    assert pickle.loads(pickle.dumps(string)) == string
    assert copy.deepcopy(string) == string
    assert eval(repr(string)) == string
    with pytest.raises(AttributeError):
        string.mud_density_si = 0.0  # type: ignore[misc]
