"""The loads a rig is checked for: plan, stuck string, load asked for."""

from __future__ import annotations

from dataclasses import replace

import pytest
from rule_cases import KIP, RIG7

from ropewalk.check import Facts, check_rig


def of_kinds(*kinds: str):
    return replace(RIG7, operations=tuple(one for one in RIG7.operations if one.kind in kinds))


def stuck(rig) -> float:
    (case,) = [one for one in Facts(rig).loads if one.name == "pull on a stuck string"]
    return case.hook_load


@pytest.mark.parametrize(
    "kinds", [("drilling",), ("trip out",), ("short trip",), ("drilling", "round trip")]
)
def test_a_string_may_stick_without_a_round_trip_in_the_plan(kinds) -> None:
    rig = of_kinds(*kinds)
    heaviest = max(one.heaviest_hook_load(rig.block.weight) for one in rig.operations)
    # [stuck] of Rig 7 allows 100,000 lbf beyond the weight.
    assert stuck(rig) == pytest.approx(heaviest + 100.0 * KIP)
    assert any(
        one.rule.id == "line.design_factor" and one.subject == "pull on a stuck string"
        for one in check_rig(rig)
    )


def test_casing_sticks_where_nothing_else_is_in_the_plan() -> None:
    rig = of_kinds("casing")
    (casing,) = rig.operations
    load = casing.heaviest_hook_load(rig.block.weight)
    assert stuck(rig) == pytest.approx(load + 100.0 * KIP)


def test_nothing_sticks_where_no_string_moves() -> None:
    assert not Facts(of_kinds("waiting")).loads
