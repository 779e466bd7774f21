"""Design factors: relations, the table of minimums, and what is refused.

Printed examples run in reference_test.py.
"""

from __future__ import annotations

import pickle
from typing import Any

import pytest
from hypothesis import given
from hypothesis import strategies as st

import ropewalk as rw
from ropewalk.errors import InadmissibleError, UnitError, UnknownEntryError
from ropewalk.testing import assert_close, quantities

forces = quantities("force", "1 lbf", "2000 kip")


@given(forces, st.floats(1.0, 100.0))
def test_allowed_tension_has_the_minimum(strength: Any, least: float) -> None:
    allowed = rw.design_factor.allowed_rope_tension(strength, least)
    assert rw.design_factor.design_factor(strength, allowed) == pytest.approx(least, rel=1e-14)


@given(forces, st.floats(1e-3, 1.0), forces)
def test_derating_is_a_weaker_rope(strength: Any, kept: float, tension: Any) -> None:
    derated = rw.design_factor.derated(strength, kept, tension)
    assert derated == pytest.approx(
        rw.design_factor.design_factor(strength * kept, tension), rel=1e-12
    )


def test_largest_hook_load_of_a_line() -> None:
    # At the minimum the line has just that factor with this load on the hook.
    allowed = rw.design_factor.allowed_rope_tension("192 kip", 3.0)
    load = rw.reeving.hoisted_hook_load(allowed, 10, 1.04, 1)
    fast = rw.Reeving(10, 1.04, 1).tensions(load, "hoisting").fast_line
    assert rw.design_factor.design_factor("192 kip", fast) == pytest.approx(3.0, rel=1e-12)
    assert_close(fast, "64 kip", relative=1e-12)


def test_slack_rope_has_no_design_factor() -> None:
    with pytest.raises(InadmissibleError, match="rope_tension = 0"):
        rw.design_factor.design_factor("192 kip", "0 kip")
    with pytest.raises(UnitError, match="rope_tension must be a force"):
        rw.design_factor.design_factor("192 kip", 3.0)  # type: ignore[arg-type]


def test_every_minimum_is_found_by_its_names() -> None:
    entries = rw.design_factor.minimums()
    assert len(entries) == len({(entry.operation, entry.standard) for entry in entries})
    for entry in entries:
        found = rw.design_factor.minimum(entry.operation, entry.standard)
        assert found == entry
        assert pickle.loads(pickle.dumps(found)) == entry
        assert entry.source
        assert entry.standing in ("published", "from memory")


def test_regulations_ask_for_three_and_allow_two_in_rare_operations() -> None:
    # Wyoming Administrative Code, 053, OSHA oil and gas well drilling, ch. 6, section 6-6(a), and
    # well servicing, ch. 6, section 6-2(b); Michigan Administrative Code, R 408.15732(3).
    for standard in ("Wyoming drilling", "Wyoming servicing", "Michigan"):
        for operation, least in (
            ("hoisting other", 3.0),
            ("setting casing", 2.0),
            ("pulling on stuck pipe", 2.0),
        ):
            assert rw.design_factor.minimum(operation, standard).value == least


def test_design_factor_of_two_and_a_half_passes_setting_casing_only() -> None:
    # Wyoming Administrative Code, 053, well drilling, ch. 6, section 6-6(a).
    factor = rw.design_factor.design_factor("192 kip", "76.8 kip")
    assert factor == pytest.approx(2.5)
    assert factor < rw.design_factor.minimum("rotary drilling", "Wyoming drilling").value
    assert factor > rw.design_factor.minimum("setting casing", "Wyoming drilling").value


def test_values_from_memory_say_so() -> None:
    entry = rw.design_factor.minimum("mast raising")
    assert (entry.value, entry.standing) == (2.5, "from memory")
    assert "before Addendum 1 (2020)" in entry.edition


@pytest.mark.parametrize(
    ("operation", "standard", "field", "offer"),
    [
        (
            "fishing",
            "API RP 9B",
            "operation",
            "it has: cable tool, sand line, rotary drilling",
        ),
        (
            "mast raising",
            "Michigan",
            "operation",
            "it has: rotary drilling, hoisting other",
        ),
        (
            "rotary drilling",
            "Texas",
            "standard",
            "there are those of: API RP 9B, Wyoming drilling",
        ),
    ],
)
def test_unknown_names_get_an_offer(operation: str, standard: str, field: str, offer: str) -> None:
    with pytest.raises(UnknownEntryError, match=offer) as caught:
        rw.design_factor.minimum(operation, standard)
    assert caught.value.where == "design_factor.minimum"
    assert caught.value.field == field
