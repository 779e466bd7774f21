"""Strategies for reevings and what hangs on them."""

from __future__ import annotations

from hypothesis import strategies as st

import ropewalk as rw
from ropewalk.testing import quantities

MOTIONS: tuple[rw.reeving.Motion, ...] = ("static", "hoisting", "lowering")

line_counts = st.integers(2, 64)
frictions = st.one_of(st.just(1.0), st.floats(1.0, 2.0), st.floats(1.0, 1.0 + 1e-9))
lead_counts = st.integers(0, 16)
loads = quantities("force", "1 lbf", "2000 kip")
accelerations = quantities("acceleration", "-9.80665 m/s**2", "10 m/s**2")


@st.composite
def reevings(draw: st.DrawFn) -> rw.Reeving:
    """Any reeving that can be: one friction or one for each sheave, lead sheaves, dead line."""
    lines = draw(line_counts)
    lead = draw(lead_counts)
    if draw(st.booleans()):
        return rw.Reeving(lines, draw(frictions), lead)
    turns = lines % 2 == 0 and draw(st.booleans())
    return rw.Reeving(
        lines,
        draw(st.lists(frictions, min_size=lines, max_size=lines)),
        lead,
        lead_sheave_friction=draw(st.lists(frictions, min_size=lead, max_size=lead))
        if lead
        else None,
        dead_line_sheave_turns=turns,
        dead_line_sheave_friction=draw(frictions) if turns else None,
    )
