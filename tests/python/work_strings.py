"""Strings that the tests of work are run with."""

from __future__ import annotations

from typing import Any

from hypothesis import strategies as st

import ropewalk as rw

# Rabia, Well Engineering and Construction (from memory): stand, pipe, excess, block.
RABIA_FACTOR = 1 - 10 / 65.5
RABIA = (
    "93 ft",
    rw.Q(19.5 * RABIA_FACTOR, "lbf/ft"),
    rw.Q(130.5 * 500 * RABIA_FACTOR, "lbf"),
    "23500 lbf",
)
STRING = ("60 ft", "11.35 lbf/ft", "17845 lbf", "15000 lbf")  # Lapeyrouse (2002), p. 44


@st.composite
def strings(draw: Any) -> tuple[float, float, float, float]:
    """Stand, pipe weight, excess and block weight in SI."""
    return (
        draw(st.floats(5, 40)),
        draw(st.floats(0, 2000)),
        draw(st.floats(0, 1e6)),
        draw(st.floats(1e3, 1e6)),
    )


DEPTHS = st.floats(1, 9000)
