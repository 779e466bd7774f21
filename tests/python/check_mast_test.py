"""Rules for the mast: load at the lines strung, legs in the wind."""

from __future__ import annotations

from dataclasses import replace
from typing import Any

import pytest
from rule_cases import KIP, OSPREY, RIG7, about, asked, status, verdict


def strung(lines: int, load: float) -> Any:
    """A nameplate of 1000 kip for 12 lines, dead line at a leg, other lines strung."""
    rig = asked(RIG7, load)
    return replace(
        rig,
        reeving=replace(rig.reeving, lines=lines),
        mast=replace(rig.mast, hook_load_rating=1000.0 * KIP, rated_lines=12),
    )


# Equal load of the leg that bears most, W/4 + W/n (Bourgoyne et al., Applied Drilling Engineering,
# SPE, 1986, ch. 1): reference-cases/mast/lyons_std-4a.toml has 888.89 for 8 lines.
EIGHT = 1000.0 * KIP * (1 / 4 + 1 / 12) / (1 / 4 + 1 / 8)


@pytest.mark.parametrize(
    ("lines", "load", "expected"),
    [
        (8, 888.0 * KIP, "pass"),
        (8, EIGHT, "pass"),
        (8, 889.0 * KIP, "fail"),
        (12, 1000.0 * KIP, "pass"),
        (14, 1000.0 * KIP, "pass"),
        (14, 1001.0 * KIP, "fail"),  # more lines do not raise the rating
        (9, 100.0 * KIP, "not computed"),
    ],
)
def test_load_of_the_mast(lines: int, load: float, expected: str) -> None:
    assert status("mast.load", strung(lines, load)) == expected


def test_the_rating_at_eight_lines_is_that_of_the_reference_case() -> None:
    found = verdict("mast.load", strung(8, 100.0 * KIP))
    assert found.limit == pytest.approx(888.89 * KIP, rel=1e-5)
    assert "API Spec 4F" in found.source
    assert found.inputs["strung"] == "8 lines"


def test_an_odd_number_of_lines_says_why() -> None:
    assert "dead line is not on the mast" in verdict("mast.load", strung(9, 1e6)).reason


def test_without_mast_or_load_there_is_nothing_to_say() -> None:
    assert status("mast.load", OSPREY) == "not applicable"
    assert status("mast.load", asked(RIG7, None)) == "not applicable"


# Block alone, at rest: 46 kip on ten lines. Leg B has neither dead nor fast line near it:
# W/4 and a quarter of the crown block, 9.5 kip.
LEG_B = (46.0 + 9.5) / 4.0 * KIP


def windy(on_b: float) -> Any:
    return replace(RIG7, mast=replace(RIG7.mast, on_legs=(5e4, on_b, 5e4, 5e4)))


@pytest.mark.parametrize(
    ("on_b", "expected"),
    [(-0.9 * LEG_B, "pass"), (-1.1 * LEG_B, "warn"), (0.0, "pass")],
)
def test_a_leg_lifted_by_the_wind(on_b: float, expected: str) -> None:
    found = about("mast.uplift", windy(on_b))
    assert list(found) == ["leg A", "leg B", "leg C", "leg D"]
    assert str(found["leg B"].status) == expected
    assert found["leg B"].value == pytest.approx(LEG_B + on_b, rel=1e-12)
    assert str(found["leg A"].status) == "pass"


def test_a_leg_that_bears_nothing_is_not_lifted() -> None:
    # A quarter of 4 kN and of no crown block: numbers that floats have exactly.
    rig = replace(
        RIG7,
        block=replace(RIG7.block, weight=4096.0),
        mast=replace(RIG7.mast, crown_block_weight=0.0, on_legs=(0.0, -1024.0, 0.0, 0.0)),
    )
    found = about("mast.uplift", rig)["leg B"]
    assert (found.value, found.limit, str(found.status)) == (0.0, 0.0, "pass")


def test_uplift_needs_to_know_the_wind() -> None:
    assert "on_legs" in verdict("mast.uplift", RIG7).reason
    assert status("mast.uplift", RIG7) == "not applicable"
    assert status("mast.uplift", OSPREY) == "not applicable"
