"""Hoists for the tests of drawworks, and hypothesis strategies for them."""

from __future__ import annotations

from typing import Any

from hypothesis import strategies as st

import ropewalk as rw

dw = rw.drawworks

STAND = "28.5 m"


def machine(**changed: Any) -> dw.Drawworks:
    """Two motors of 750 hp and two gears, of usual sizes."""
    given = {
        "motors": dw.Motors(2, "750 hp", "800 rpm", "1600 rpm", "15 kg*m**2", overload=1.3),
        "gears": [dw.Gear(10.0, 0.95), dw.Gear(5.0, 0.96)],
        "drum_efficiency": 0.97,
        "drum_inertia": "1500 kg*m**2",
    }
    return dw.Drawworks(**{**given, **changed})


def hoist(lines: int = 10, *, layers: int = 4, friction: float = 1.04, **changed: Any) -> dw.Hoist:
    given = {
        "drawworks": machine(),
        "reeving": rw.Reeving(lines, friction),
        "drum": rw.Drum("28 in", "1-3/8 in", laps_per_layer=40, layers=layers),
        "wraps_at_lowest": 8,
    }
    return dw.Hoist(**{**given, **changed})


#: A drum so wide that a stand stays on its first layer.
ONE_LAYER = rw.Drum("28 in", "1-3/8 in", laps_per_layer=400, layers=1)

loads = st.floats(1e5, 2.1e6)
speeds = st.floats(0.05, 3.0)
accelerations = st.floats(0.02, 2.0)


@st.composite
def hoists(draw: Any) -> dw.Hoist:
    """From small to large, with and without inertia, losses and a limit of the line."""
    power = draw(st.floats(2e5, 3e6))
    base = draw(st.floats(500.0, 1200.0))
    return hoist(
        draw(st.sampled_from([6, 8, 10, 12])),
        friction=draw(st.floats(1.0, 1.09)),
        drawworks=dw.Drawworks(
            dw.Motors(
                draw(st.integers(1, 4)),
                rw.Q(power, "W"),
                rw.Q(base, "rpm"),
                rw.Q(base * draw(st.floats(1.0, 3.0)), "rpm"),
                rw.Q(draw(st.sampled_from([0.0, 5.0, 40.0])), "kg*m**2"),
            ),
            [
                dw.Gear(draw(st.floats(3.0, 25.0)), draw(st.floats(0.7, 1.0)))
                for _ in range(draw(st.integers(1, 3)))
            ],
            draw(st.floats(0.9, 1.0)),
            rw.Q(draw(st.sampled_from([0.0, 500.0, 5000.0])), "kg*m**2"),
        ),
        line_limit=draw(st.none() | st.floats(5e4, 5e5).map(lambda f: rw.Q(f, "N"))),
        sheave_mass=rw.Q(draw(st.sampled_from([0.0, 3e3])), "kg"),
    )
