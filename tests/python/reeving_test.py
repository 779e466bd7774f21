"""The class `Reeving` and the row functions of reeving, as users call them.

Printed tables and examples run in reference_test.py; the closed forms are held against sums term by
term in tests/cpp/reeving_test.cpp.
"""

from __future__ import annotations

import copy
import pickle
from fractions import Fraction
from typing import Any

import numpy as np
import pytest
from hypothesis import given
from reevings import MOTIONS, frictions, lead_counts, line_counts, loads, reevings

import ropewalk as rw
from ropewalk.errors import InadmissibleError, UnitError, UnknownEntryError
from ropewalk.testing import assert_close


def exact_efficiency(lines: int, friction: float, lead: int) -> float:
    """EF of API RP 9B in exact fractions of the binary number that `friction` is."""
    k = Fraction(friction)
    total = sum((k**i for i in range(lines)), Fraction(0))
    return float(total / (lines * k ** (lines + lead)))


class TestEfficiency:
    @given(line_counts, frictions, lead_counts)
    def test_is_the_fraction_of_the_standard(self, lines: int, friction: float, lead: int) -> None:
        exact = exact_efficiency(lines, friction, lead)
        assert rw.reeving.efficiency(lines, friction, lead) == pytest.approx(exact, rel=2e-14)

    @given(line_counts, lead_counts)
    def test_is_one_without_friction(self, lines: int, lead: int) -> None:
        assert rw.reeving.efficiency(lines, 1.0, lead) == 1.0
        assert rw.reeving.lowering_efficiency(lines, 1.0, lead) == 1.0

    @given(line_counts, frictions, lead_counts)
    def test_lies_between_nothing_and_one(self, lines: int, friction: float, lead: int) -> None:
        for function in (rw.reeving.efficiency, rw.reeving.lowering_efficiency):
            assert 0.0 < function(lines, friction, lead) <= 1.0

    def test_leaves_one_without_a_jump(self) -> None:
        lines = np.arange(2, 65)
        for step in (1e-15, 1e-12, 1e-9):
            below = 1.0 - rw.reeving.efficiency(lines, 1.0 + step)
            assert np.all(np.abs(below - step * (lines + 1) / 2) < 70 * step * step + 1e-14 + step)

    @given(line_counts, frictions, lead_counts)
    def test_factor_is_one_over_lines_and_efficiency(
        self, lines: int, friction: float, lead: int
    ) -> None:
        factor = rw.reeving.fast_line_factor(lines, friction, lead)
        product = factor * lines * rw.reeving.efficiency(lines, friction, lead)
        assert product == pytest.approx(1.0, rel=1e-14)

    def test_two_drums_are_two_reevings(self) -> None:
        lines = np.arange(4, 65, 2)
        both = rw.reeving.two_drum_efficiency(lines, 1.04, 1)
        assert np.array_equal(both, rw.reeving.efficiency(lines / 2, 1.04, 1))
        with pytest.raises(InadmissibleError, match="must be even"):
            rw.reeving.two_drum_efficiency(7, 1.04)

    def test_lead_sheaves_may_be_left_out(self) -> None:
        assert rw.reeving.efficiency(10, 1.04) == rw.reeving.efficiency(10, 1.04, 0)
        assert rw.reeving.efficiency(10, sheave_friction=1.04) == rw.reeving.efficiency(10, 1.04)

    def test_part_of_a_line_is_refused(self) -> None:
        with pytest.raises(InadmissibleError, match=r"lines = 10\.5 is outside .*whole"):
            rw.reeving.efficiency(10.5, 1.04)


class TestLineTension:
    @given(loads, line_counts, frictions, lead_counts)
    def test_hoisted_hook_load_turns_fast_line_tension_round(
        self, load: Any, lines: int, friction: float, lead: int
    ) -> None:
        fast = rw.reeving.fast_line_tension(load, lines, friction, lead)
        if fast.m_as("N") <= 1e9:
            assert_close(rw.reeving.hoisted_hook_load(fast, lines, friction, lead), load)

    def test_efficiency_of_a_textbook(self) -> None:
        # Bourgoyne, Millheim, Chenevert & Young, Applied Drilling Engineering (SPE, 1986),
        # Example 1.2; Rabia, Well Engineering & Construction, hoisting example (from memory).
        at = rw.reeving.fast_line_tension_at_efficiency
        assert_close(at("300000 lbf", 8, 0.841), "44590 lbf", absolute="0.5 lbf")
        assert_close(at("243932 lbf", 10, 0.81), "30115 lbf", absolute="0.5 lbf")
        assert_close(at("269130 lbf", 10, 0.81), "33226 lbf", absolute="0.5 lbf")

    def test_dynamic_factors_of_the_well_engineers_notebook(self) -> None:
        # SIEP, Well Engineers Notebook, ed. 2 (2001), p. B-1: multiples of W/N for k = 1.04.
        lines = np.array([2, 4, 6, 8, 10, 12])
        load = rw.Q(lines, "N")
        fast = rw.reeving.fast_line_tension(load, lines, 1.04).m_as("N")
        dead = rw.reeving.dead_line_tension(load, lines, 1.04).m_as("N")
        assert fast.round(3).tolist() == [1.060, 1.102, 1.145, 1.188, 1.233, 1.279]
        assert dead.round(3).tolist() == [0.980, 0.942, 0.905, 0.868, 0.833, 0.799]


class TestKinematics:
    def test_sheave_passes_its_number_times_the_block(self) -> None:
        reeving = rw.Reeving(12, "roller")
        assert_close(reeving.line_speeds("38.1 ft/min"), rw.Q(38.1 * np.arange(1, 13), "ft/min"))
        travel = reeving.line_travel(rw.Q([93.0, -31.0], "ft"))
        assert travel.shape == (2, 12)
        assert_close(travel[1], rw.Q(-31.0 * np.arange(1, 13), "ft"))

    def test_results_join_the_registry_of_the_caller(self, foreign: Any) -> None:
        speeds = rw.Reeving(4, 1.04).line_speeds(foreign.Quantity(1.0, "m/s"))
        assert speeds[0] + foreign.Quantity(1.0, "m/s") == foreign.Quantity(2.0, "m/s")

    def test_sheaves_turn_as_the_rope_runs(self) -> None:
        reeving = rw.Reeving(4, "roller")
        diameters = rw.Q([60.0, 60.0, 50.0, 72.0], "in")
        turning = reeving.sheave_rotations("2 ft/s", diameters)
        rim = turning.m_as("rad/s") * diameters.m_as("m") / 2
        assert rim == pytest.approx(reeving.line_speeds("2 ft/s").m_as("m/s"))
        one = reeving.sheave_rotations("2 ft/s", "60 in")
        assert one[0] == turning[0]
        with pytest.raises(InadmissibleError, match="sheave_diameter has 3 values"):
            reeving.sheave_rotations("2 ft/s", diameters[:3])


class TestReeving:
    @given(reevings())
    def test_survives_copies_pickles_and_repr(self, reeving: rw.Reeving) -> None:
        assert pickle.loads(pickle.dumps(reeving)) == reeving
        assert copy.deepcopy(reeving) == reeving
        assert hash(copy.copy(reeving)) == hash(reeving)
        assert eval(repr(reeving), {"Reeving": rw.Reeving}) == reeving

    @given(reevings())
    def test_crown_has_one_sheave_more_than_the_block(self, reeving: rw.Reeving) -> None:
        # Common practice, no source.
        assert reeving.crown_sheaves == reeving.traveling_sheaves + 1
        turning_on_crown = sum(reeving.on_crown) + (reeving.lines % 2 == 0)
        assert turning_on_crown == reeving.crown_sheaves
        assert reeving.on_crown[-1]  # the fast line leaves the crown

    def test_bearing_names_stand_for_the_tabulated_friction(self) -> None:
        assert rw.Reeving(10, "roller") == rw.Reeving(10, 1.04)
        assert rw.Reeving(10, "plain", 2).lead_sheave_frictions == (1.09, 1.09)
        assert rw.Reeving(4, 1.04, 2, "plain").lead_sheave_frictions == (1.09, 1.09)
        assert [row["standing"] for row in rw.reeving.sheave_frictions()] == ["published"] * 2
        with pytest.raises(UnknownEntryError, match="'wooden' bearings; there is: roller, plain"):
            rw.Reeving(10, "wooden")

    def test_list_of_equal_frictions_is_one_friction(self) -> None:
        for motion in MOTIONS:
            one = rw.Reeving(10, 1.04).tensions("400 kip", motion)
            each = rw.Reeving(10, [1.04] * 10)
            many = each.tensions("400 kip", motion)
            assert np.array_equal(one.lines_si, many.lines_si)
            assert each.sheave_frictions == (1.04,) * 10

    def test_dead_line_sheave_that_turns(self) -> None:
        turning = rw.Reeving(8, 1.04, dead_line_sheave_turns=True)
        for motion, ratio in (
            ("hoisting", 1 / 1.04),
            ("lowering", 1.04),
            ("static", 1.0),
        ):
            tensions = turning.tensions("400 kip", motion)
            assert_close(tensions.dead_line, tensions.lines[0] * ratio, relative=1e-14)

    def test_cannot_be_changed(self) -> None:
        with pytest.raises(AttributeError):
            rw.Reeving(10, 1.04).lines = 8  # type: ignore[misc]

    @pytest.mark.parametrize(
        ("arguments", "error", "field"),
        [
            ({"lines": 1}, InadmissibleError, "lines"),
            ({"lines": 10.5}, InadmissibleError, "lines"),
            ({"lines": 10**30}, InadmissibleError, "lines"),
            ({"lines": "10 ft"}, UnitError, "lines"),
            ({"lines": True}, UnitError, "lines"),
            ({"sheave_friction": 0.96}, InadmissibleError, "sheave_friction"),
            ({"sheave_friction": float("nan")}, InadmissibleError, "sheave_friction"),
            ({"sheave_friction": None}, UnitError, "sheave_friction"),
            ({"sheave_friction": []}, InadmissibleError, "sheave_friction"),
            ({"sheave_friction": [1.04] * 9}, InadmissibleError, "sheave_friction"),
            ({"sheave_friction": [[1.04] * 10]}, InadmissibleError, "sheave_friction"),
            (
                {"sheave_friction": [1.04] * 9 + [3.0]},
                InadmissibleError,
                "sheave_friction",
            ),
            ({"lead_sheaves": 17}, InadmissibleError, "lead_sheaves"),
            ({"lead_sheave_friction": 1.04}, InadmissibleError, "lead_sheave_friction"),
            (
                {"lead_sheaves": 2, "lead_sheave_friction": [1.04] * 3},
                InadmissibleError,
                "lead_sheave_friction",
            ),
            (
                {"sheave_friction": [1.04] * 10, "lead_sheaves": 1},
                InadmissibleError,
                "lead_sheave_friction",
            ),
            (
                {"sheave_friction": [1.04] * 10, "dead_line_sheave_turns": True},
                InadmissibleError,
                "dead_line_sheave_friction",
            ),
            (
                {"dead_line_sheave_friction": 1.04},
                InadmissibleError,
                "dead_line_sheave_friction",
            ),
            (
                {
                    "dead_line_sheave_turns": True,
                    "dead_line_sheave_friction": [1.04, 1.05],
                },
                InadmissibleError,
                "dead_line_sheave_friction",
            ),
            (
                {"lines": 9, "dead_line_sheave_turns": True},
                InadmissibleError,
                "dead_line_sheave_t",
            ),
            ({"dead_line_sheave_turns": 1}, UnitError, "dead_line_sheave_turns"),
        ],
    )
    def test_refuses_what_cannot_be_by_name(
        self, arguments: dict[str, Any], error: type[rw.RopewalkError], field: str
    ) -> None:
        with pytest.raises(error) as caught:
            rw.Reeving(**{"lines": 10, "sheave_friction": 1.04, **arguments})
        assert caught.value.where == "reeving.Reeving"
        assert caught.value.field.startswith(field)
        assert str(caught.value).startswith(f"reeving.Reeving(): {field}")
