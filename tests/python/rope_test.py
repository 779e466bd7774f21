"""Ropes: the look-up, the class and its sources, the lists; identities of the factor formulas."""

from __future__ import annotations

import copy
import dataclasses
import math
import pickle
from typing import Any

import pandas as pd
import pytest
from hypothesis import assume, given
from hypothesis import strategies as st

import ropewalk as rw
from ropewalk.errors import InadmissibleError, UnitError, UnknownEntryError

#: Eighths of an inch of a drilling line, 7/8 in to 2 in (common practice, no source).
DRILLING_LINE_EIGHTHS = range(7, 17)
CATALOG = rw.rope.catalog()


def drilling_line(grade: str = "EIPS", diameter: str = "1.375 in") -> rw.Rope:
    return rw.Rope("6x19 IWRC", grade=grade, diameter=diameter)


def certified(**values: Any) -> rw.Rope:
    usual = {
        "grade": "EIPS",
        "diameter": "1.5 in",
        "breaking_force": "240 kip",
        "mass_per_length": "4.3 lb/ft",
    }
    return rw.Rope.custom("6x31WS IWRC", **{**usual, **values})


def names(rope: dict[str, Any]) -> dict[str, Any]:
    return {"construction": rope["construction"], "grade": rope["grade"], "diameter": rope["size"]}


# The catalog


@pytest.mark.parametrize("eighths", DRILLING_LINE_EIGHTHS)
@pytest.mark.parametrize("grade", ["IPS", "EIPS", "EEIPS"])
def test_every_size_of_a_drilling_line_is_there(eighths: int, grade: str) -> None:
    rope = rw.Rope("6x19 IWRC", grade=grade, diameter=rw.Q(eighths / 8, "in"))
    assert math.isclose(rope.diameter.m_as("in"), eighths / 8)


@pytest.mark.parametrize("record", CATALOG, ids=lambda rope: "-".join(names(rope).values()))
def test_every_record_is_found_by_its_own_names(record: dict[str, Any]) -> None:
    rope = rw.Rope(**names(record))
    assert rope.breaking_force.m_as("N") == record["breaking_force [N]"]
    assert rope.mass_per_length.m_as("kg/m") == record["mass_per_length [kg/m]"]
    assert rope.weight_per_length.m_as("N/m") == record["weight_per_length [N/m]"]
    assert rope.metallic_area.m_as("m**2") == record["metallic_area [m2]"]
    assert rope.outer_wire_diameter.m_as("m") == record["outer_wire_diameter [m]"]
    assert rope.modulus.m_as("Pa") == record["modulus [Pa]"]
    assert rope.modulus_low_load.m_as("Pa") == record["modulus_low_load [Pa]"]
    assert rope.wire_strength.m_as("Pa") == record["wire_strength [Pa]"]


def test_records_make_a_data_frame() -> None:
    frame = pd.DataFrame(CATALOG)
    assert len(frame) == len(CATALOG)
    assert not frame.isna().any().any()
    standings = frame.filter(regex="_standing$")
    assert set(standings.to_numpy().ravel()) == {"published", "from memory", "derived"}


def test_filters_leave_out_the_others() -> None:
    some = rw.rope.catalog(construction="6x37 iwrc", grade="eip")
    assert {rope["construction"] for rope in some} == {"6x36 IWRC"}
    assert {rope["grade"] for rope in some} == {"EIPS"}
    assert len(some) == len(DRILLING_LINE_EIGHTHS)
    assert len(rw.rope.catalog(diameter="35 mm")) == 2
    with pytest.raises(UnknownEntryError, match="nearest sizes 1.25 in"):
        rw.rope.catalog(construction="6x19 IWRC", diameter="1.3 in")
    with pytest.raises(UnknownEntryError, match="6x26WS IWRC"):
        rw.rope.catalog(construction="6x20 IWRC")


@given(st.floats(0.2, 4.0))
def test_a_size_that_is_not_listed_is_never_replaced(inches: float) -> None:
    assume(min(abs(inches - eighths / 8) for eighths in DRILLING_LINE_EIGHTHS) > 1e-5)
    with pytest.raises(UnknownEntryError, match=r"nearest sizes|smallest size|largest size"):
        rw.Rope("6x19 IWRC", grade="EIPS", diameter=rw.Q(inches, "in"))


@pytest.mark.parametrize("diameter", ["1.375 in", "1-3/8 in", "1 3/8 in", "34.925 mm", "34.925mm"])
def test_a_size_may_be_written_in_any_unit(diameter: str) -> None:
    assert drilling_line(diameter=diameter) == drilling_line()


@pytest.mark.parametrize(
    ("wrong", "error", "part"),
    [
        ({"construction": "6x20 IWRC"}, UnknownEntryError, "6x19 IWRC, 6x36 FC"),
        ({"grade": "XXXIP"}, UnknownEntryError, "IPS, EIPS, EEIPS"),
        ({"diameter": "3 in"}, UnknownEntryError, r"largest size 2 in \(50.8 mm\)"),
        ({"diameter": 1.375}, UnitError, "diameter must be a length"),
        ({"diameter": "1.375 lb"}, UnitError, "diameter must be a length"),
        ({"diameter": "-1 in"}, InadmissibleError, r"diameter = -0.0254 m is outside \(0, 1\] m"),
        ({"diameter": rw.Q([1.0, 1.25], "in")}, UnitError, "diameter"),
        ({"construction": 619}, UnitError, "construction must be text, got 619"),
        ({"grade": None}, UnitError, "grade must be text, got None"),
    ],
)
def test_what_is_not_there_is_refused_by_name(
    wrong: dict[str, Any], error: type[Exception], part: str
) -> None:
    right = {"construction": "6x19 IWRC", "grade": "EIPS", "diameter": "1.375 in"}
    with pytest.raises(error, match=part) as refusal:
        rw.Rope(**{**right, **wrong})
    assert str(refusal.value).startswith("rope.Rope(): ")


# The class


def test_values_are_those_of_the_api_example() -> None:
    # API RP 9B, 14th ed. (2015), Addendum 1 (2020), 2.3.3.4: 1-3/8 in EIPS, 192,000 lb (87.1 t).
    rope = drilling_line()
    assert math.isclose(rope.breaking_force.m_as("lbf"), 192_000)
    assert round(rope.breaking_force.m_as("tonne_force"), 1) == 87.1
    assert rope.sources["breaking_force"].standing == "published"
    assert "RP 9B" in rope.sources["breaking_force"].source


def test_weight_is_mass_times_standard_gravity() -> None:
    rope = drilling_line()
    assert math.isclose(rope.weight_per_length.m_as("lbf/ft"), rope.mass_per_length.m_as("lb/ft"))


def test_every_known_property_has_a_source() -> None:
    for rope in (
        drilling_line(),
        rw.Rope.metric("35(W)x7", wire_grade="1960 MPa", diameter="3 cm"),
    ):
        numbers = {
            field.name.removesuffix("_si")
            for field in dataclasses.fields(rope)
            if field.name.endswith("_si") and getattr(rope, field.name) is not None
        }
        assert set(rope.sources) == numbers - {"diameter"}
        assert all(source and standing for source, standing in rope.sources.values())


@pytest.mark.parametrize(
    "rope",
    [
        drilling_line(),
        rw.Rope.metric("6x36 IWRC", wire_grade="1770 MPa", diameter="32 mm"),
        certified(),
    ],
    ids=["catalog", "metric", "custom"],
)
def test_copies_are_equal_and_nothing_can_be_changed(rope: rw.Rope) -> None:
    for twin in (copy.copy(rope), copy.deepcopy(rope), pickle.loads(pickle.dumps(rope))):
        assert twin == rope
        assert hash(twin) == hash(rope)
        assert twin.sources == rope.sources
        assert repr(twin) == repr(rope)
    with pytest.raises(dataclasses.FrozenInstanceError):
        rope.breaking_force_si = 1.0  # type: ignore[misc]
    rope.sources.clear()
    assert rope.sources


def test_ropes_that_differ_are_not_equal() -> None:
    ropes = {
        drilling_line(),
        drilling_line("IPS"),
        drilling_line(diameter="1.5 in"),
        rw.Rope("6x19S IWRC", grade="EIPS", diameter="1.375 in"),
        certified(),
        certified(breaking_force="241 kip"),
    }
    assert len(ropes) == 6


@pytest.mark.parametrize(
    "rope",
    [drilling_line(), rw.Rope.metric("6x36 IWRC", wire_grade="1770 MPa", diameter="32 mm")],
    ids=["catalog", "metric"],
)
def test_what_it_prints_makes_it_again(rope: rw.Rope) -> None:
    assert eval(repr(rope), {"Rope": rw.Rope}) == rope


def test_it_reads_as_people_say_it() -> None:
    assert str(drilling_line()) == "6x19 IWRC, EIPS, 1.375 in"
    assert "240 kip" not in repr(certified())
    assert "1067.57 kN" in repr(certified())  # 240,000 x 4.4482216 N


# Ropes made from factors and certificates


@given(
    st.sampled_from(["6x7 FC", "6x19 IWRC", "6x36 FC", "8x36 IWRC"]),
    st.floats(1370, 2160),
    st.floats(8, 60),
    st.floats(0.5, 2.0),
)
def test_a_metric_rope_grows_with_the_square_of_its_size(
    rope_class: str, grade: float, size: float, times: float
) -> None:
    small = rw.Rope.metric(rope_class, wire_grade=rw.Q(grade, "MPa"), diameter=rw.Q(size, "mm"))
    large = rw.Rope.metric(
        rope_class, wire_grade=rw.Q(grade, "MPa"), diameter=rw.Q(size * times, "mm")
    )
    for name in ("breaking_force_si", "mass_per_length_si", "metallic_area_si"):
        assert math.isclose(getattr(large, name), times**2 * getattr(small, name), rel_tol=1e-12)


def test_a_metric_rope_is_what_the_formulas_say() -> None:
    [factors] = [
        row for row in rw.rope.factors() if (row["rope_class"], row["core"]) == ("6x19", "FC")
    ]
    rope = rw.Rope.metric("6x19 FC", wire_grade="1960 MPa", diameter="28 mm")
    force = rw.rope.breaking_force_from_factor("28 mm", "1960 MPa", factors["strength_factor"])
    area = rw.rope.area_from_factor("28 mm", factors["area_factor"])
    mass = rw.rope.mass_from_factor(
        "28 mm", rw.Q(factors["mass_factor [kg/100m/mm2]"], "kg/hm/mm**2")
    )
    assert math.isclose(rope.breaking_force.m_as("N"), force.m_as("N"))
    assert math.isclose(rope.metallic_area.m_as("m**2"), area.m_as("m**2"))
    assert math.isclose(rope.mass_per_length.m_as("kg/m"), mass.m_as("kg/m"))
    assert rope.wire_strength.m_as("MPa") == pytest.approx(1960)
    assert rope.sources["wire_strength"].standing == "given"


def test_unknown_classes_are_refused_with_those_there_are() -> None:
    with pytest.raises(UnknownEntryError, match="6x36 IWRC"):
        rw.Rope.metric("7x19", wire_grade="1770 MPa", diameter="32 mm")
    with pytest.raises(UnitError, match="wire_grade must be a stress"):
        rw.Rope.metric("6x36 IWRC", wire_grade="1770 N", diameter="32 mm")


def test_what_is_not_known_is_refused_not_guessed() -> None:
    with pytest.raises(UnknownEntryError, match="rope.Rope.modulus: not known for 6x31WS IWRC"):
        certified().modulus  # noqa: B018 - the look-up is the test
    rope = rw.Rope.metric("35(W)x7", wire_grade="1960 MPa", diameter="32 mm")
    with pytest.raises(UnknownEntryError, match="mass_per_length"):
        rope.mass_per_length  # noqa: B018


def test_a_certificate_is_taken_as_it_stands() -> None:
    rope = certified(
        metallic_area="1.1 in**2",
        outer_wire_diameter="0.1 in",
        modulus="15e6 psi",
        wire_strength="285 ksi",
        source="certificate 1188 (invented)",
    )
    assert rope.breaking_force.m_as("kip") == pytest.approx(240)
    assert rope.metallic_area.m_as("in**2") == pytest.approx(1.1)
    assert rope.outer_wire_diameter.m_as("in") == pytest.approx(0.1)
    assert rope.modulus.m_as("psi") == pytest.approx(15e6)
    assert rope.wire_strength.m_as("ksi") == pytest.approx(285)
    assert set(rope.sources.values()) == {("certificate 1188 (invented)", "given")}


@pytest.mark.parametrize(
    ("wrong", "error"),
    [
        ({"breaking_force": "0 lbf"}, InadmissibleError),
        ({"breaking_force": "240 lb"}, UnitError),
        ({"mass_per_length": "4.3 lbf/ft"}, UnitError),
        ({"mass_per_length": "-1 lb/ft"}, InadmissibleError),
        ({"metallic_area": "1.8 in**2"}, InadmissibleError),  # the circle has 1.767
        ({"outer_wire_diameter": "1.6 in"}, InadmissibleError),
        ({"modulus": "nan psi"}, UnitError),
        ({"modulus": rw.Q(float("nan"), "psi")}, InadmissibleError),
        ({"wire_strength": "0 ksi"}, InadmissibleError),
        ({"source": 1188}, UnitError),
    ],
)
def test_a_certificate_that_cannot_be_is_refused(
    wrong: dict[str, Any], error: type[Exception]
) -> None:
    with pytest.raises(error, match=next(iter(wrong))):
        certified(**wrong)


# Lists


def test_lists_name_their_sources() -> None:
    for row in [*rw.rope.factors(), *rw.rope.grades()]:
        assert row["standing"] in {"published", "from memory", "derived"}
        assert len(row["source"].split()) > 3  # a citation, not a key
    for row in rw.rope.constructions():
        for value in ("structure", "area_factor", "outer_wire_ratio", "modulus"):
            assert row[f"{value}_standing"] in {"published", "from memory", "derived"}
            assert len(row[f"{value}_source"].split()) > 3


def test_every_construction_and_grade_of_the_catalog_is_listed() -> None:
    constructions = {row["construction"] for row in rw.rope.constructions()}
    assert {rope["construction"] for rope in CATALOG} == constructions
    plow = {row["grade"] for row in rw.rope.grades()}
    assert {rope["grade"] for rope in CATALOG} - plow == {"1770 MPa", "1960 MPa"}
