"""Over-travel: stopping distances, with and without power, the line slack; the envelope."""

from __future__ import annotations

from typing import Any

import numpy as np
import pytest
from braked_hoists import hoist, stop
from hypothesis import given, settings
from hypothesis import strategies as st
from matplotlib.figure import Figure

import ropewalk as rw
from ropewalk import plot
from ropewalk.errors import InadmissibleError
from ropewalk.testing import assert_close

quick = settings(max_examples=40, deadline=None)


@quick
@given(st.floats(0.0, 5.0), st.floats(0.0, 2.0), st.floats(0.0, 1.0), st.floats(0.1, 5.0))
def test_speed_and_distance_undo_each_other(v: float, t: float, d: float, a: float) -> None:
    rest = rw.Q(t, "s"), rw.Q(d, "m/s**2"), rw.Q(a, "m/s**2")
    way = rw.overtravel.stopping_distance(rw.Q(v, "m/s"), *rest)
    assert_close(rw.overtravel.allowed_speed(way, *rest), rw.Q(v, "m/s"), absolute="1e-9 m/s")


def test_distance_is_that_of_the_rigid_stop() -> None:
    """A drive that keeps the speed, then a brake all at once: `brake.Stop` in closed form."""
    slow = hoist().deceleration("lowering", "800 kN", "0 m")
    distance = rw.overtravel.stopping_distance("1.2 m/s", "0.6 s", "0 m/s**2", slow)
    assert_close(stop("800 kN", 1, None).rigid().distance, distance)


@pytest.mark.parametrize("load", [200.0, 800.0, 2000.0])
@pytest.mark.parametrize("layer", [1, 3])
@pytest.mark.parametrize("lost", [True, False])
def test_without_power_a_lowered_load_falls_until_the_brake_grips(
    load: float, layer: int, lost: bool
) -> None:
    given = hoist(), "lowering", rw.Q(load, "kN"), rw.Q(1.2, "m/s")
    rest = {"reaction_time": "0.6 s", "drive_acceleration": "0 m/s**2", "layers": [layer]}
    envelope = rw.overtravel.stopping_envelope(*given, power_lost=lost, **rest)
    expected = stop(rw.Q(load, "kN"), layer, "0 N*m" if lost else None).rigid().distance_si
    assert float(envelope.distance.squeeze()) == pytest.approx(expected, rel=1e-12)


def test_a_drive_that_pulls_harder_than_the_fall_counts() -> None:
    def distance(drive: str) -> float:
        envelope = rw.overtravel.stopping_envelope(
            hoist(),
            "lowering",
            "200 kN",
            "1 m/s",
            reaction_time="0.6 s",
            drive_acceleration=drive,
            layers=[1],
        )
        return float(envelope.distance.squeeze())

    assert distance("0 m/s**2") == distance("0.05 m/s**2") < distance("0.5 m/s**2")


def test_hoisted_a_block_slows_by_gravity_at_most() -> None:
    """Thrown up at v, a body rises by v²/(2g), whatever stops the drum below it."""
    hard = hoist(rotating_mass="10 tonne", brake_torque="400 kN*m")
    envelope = rw.overtravel.stopping_envelope(
        hard,
        "hoisting",
        rw.Q([200.0, 9000.0], "kN"),
        "2 m/s",
        reaction_time="0 s",
        drive_acceleration="0 m/s**2",
        layers=[1],
    )
    assert float(envelope.distance.sel(hook_load=2e5).squeeze()) == pytest.approx(
        2.0**2 / (2.0 * 9.80665)
    )
    assert envelope.slack.sel(hook_load=2e5).all()
    assert float(hard.deceleration("hoisting", "200 kN", "0 m").magnitude) == 9.80665
    # The turning mass of the usual hoist keeps the line taut.
    assert hoist().deceleration("hoisting", "200 kN", "0 m").magnitude < 9.80665


def test_the_envelope_grows_with_layer_and_speed() -> None:
    loads, speeds = rw.Q([200.0, 800.0, 4000.0], "kN"), rw.Q([0.5, 1.0, 2.0], "m/s")
    envelope = rw.overtravel.stopping_envelope(
        hoist(),
        "lowering",
        loads,
        speeds,
        reaction_time="0.6 s",
        drive_acceleration="0 m/s**2",
        power_lost=False,
    )
    assert envelope.distance.attrs["units"] == "m"
    heavy = envelope.distance.sel(hook_load=4e6)
    # By hand: 0.0801 · 4 MN · 0.373 m = 119.5 kN·m in the first layer, more in the others.
    assert np.isinf(heavy.sel(layer=[2, 3, 4])).all()
    # By forces of its own, the subject `brake` says the same.
    by_forces = stop("800 kN", 3, None, speed="1 m/s").rigid().distance_si
    assert float(envelope.distance.sel(hook_load=8e5, layer=3, speed=1.0)) == pytest.approx(
        by_forces
    )
    assert (envelope.distance.diff("speed") > 0).where(np.isfinite(envelope.distance)).all()


@pytest.mark.parametrize(
    ("argument", "value"),
    [
        ("direction", "static"),
        ("direction", ["hoisting"]),
        ("layers", [1.7]),
        ("layers", [9]),
        ("hook_load", rw.Q([[200.0], [300.0]], "kN")),
        ("reaction_time", rw.Q([0.5, 0.6], "s")),
        ("reaction_time", "-1 s"),
        ("drive_acceleration", "-1 m/s**2"),
        ("drive_acceleration", rw.Q([0.0, 0.1], "m/s**2")),
    ],
)
def test_an_envelope_says_what_is_wrong(argument: str, value: Any) -> None:
    values: dict[str, Any] = {
        "direction": "lowering",
        "hook_load": "200 kN",
        "travel_speed": "1 m/s",
        "reaction_time": "0.6 s",
        "drive_acceleration": "0 m/s**2",
    }
    with pytest.raises(InadmissibleError, match=argument.removesuffix("s")):
        rw.overtravel.stopping_envelope(hoist(), **{**values, argument: value})


def test_the_picture_of_the_envelope_shows_the_data() -> None:
    envelope = rw.overtravel.stopping_envelope(
        hoist(),
        "lowering",
        rw.Q([200.0, 6000.0], "kN"),
        rw.Q([0.5, 1.0], "m/s"),
        reaction_time="0.6 s",
        drive_acceleration="0 m/s**2",
    )
    ax = plot.stopping_distance_by_speed(Figure().subplots(), envelope, layer=2, room="2 m")
    light, heavy = ax.get_lines()[:2]
    np.testing.assert_allclose(light.get_ydata(), envelope.distance.sel(hook_load=2e5, layer=2))
    assert np.isnan(heavy.get_ydata()).all()
    assert "does not stop" in str(heavy.get_label())
    assert "[m/s]" in ax.get_xlabel()
