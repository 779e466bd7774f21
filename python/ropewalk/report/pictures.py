"""Pictures of a rig for its report: every one that the rig file has the data for."""

from __future__ import annotations

import io
from collections.abc import Callable, Iterator
from dataclasses import dataclass
from typing import TYPE_CHECKING

from ropewalk._units import Q
from ropewalk.errors import RopewalkError

if TYPE_CHECKING:
    from matplotlib.axes import Axes
    from matplotlib.figure import Figure

    from ropewalk.rig import Rig

__all__ = ["Picture", "pictures"]

_DOTS_PER_INCH = 110
_SPEEDS = 40


@dataclass(frozen=True, slots=True)
class Picture:
    """One picture.

    Attributes
    ----------
    name
        For its file, without ending.
    title
        What it shows, with the loads it is drawn for.
    png
        The picture; empty if it could not be drawn.
    problem
        Why it could not.
    """

    name: str
    title: str
    png: bytes = b""
    problem: str = ""


def pictures(rig: Rig) -> tuple[Picture, ...]:
    """Draw what a rig has the data for; what it has not is left out, what cannot be says why.

    Parameters
    ----------
    rig
        The rig.

    Examples
    --------
    >>> import ropewalk as rw
    >>> from ropewalk.report.pictures import pictures
    >>> rig = rw.load_rig(rw.rig.example("osprey-sound"))
    >>> "leg-loads" in [picture.name for picture in pictures(rig)]
    False
    """
    return tuple(_picture(*planned) for planned in _planned(rig))


def _picture(name: str, title: str, draw: Callable[[], Figure]) -> Picture:
    sink = io.BytesIO()
    try:
        # No date and no version of the library: the same rig gives the same bytes.
        draw().savefig(sink, format="png", dpi=_DOTS_PER_INCH, metadata={"Software": None})
    except RopewalkError as error:
        return Picture(name, title, problem=str(error).splitlines()[0])
    return Picture(name, title, sink.getvalue())


def _planned(rig: Rig) -> Iterator[tuple[str, str, Callable[[], Figure]]]:
    from ropewalk import plot

    if rig.operations and any(one.kind == "round trip" for one in rig.operations):
        load = Q(rig.largest_hook_load, "N")
        heaviest = f"largest hook load of the plan, {load.m_as('kN'):.0f} kN"
        yield (
            "string-up",
            f"Tension of every line, {heaviest}, hoisted",
            lambda: _drawn(lambda ax: plot.string_up(ax, rig, load, "hoisting")),
        )
        yield (
            "load-path",
            f"From crown to elevator: load and rating, {heaviest}",
            lambda: _load_path(rig),
        )
        if rig.mast is not None:
            yield "leg-loads", f"Loads of the legs, {heaviest}, hoisted", lambda: _leg_loads(rig)
        if rig.overtravel is not None and rig.brake is not None and rig.drum is not None:
            for place in range(len(rig.overtravel.devices)):
                yield (
                    f"stopping-{place + 1}",
                    "Stopping distance on the brake that springs press on, uppermost layer: "
                    f"{rig.overtravel.devices[place].name}",
                    lambda place=place: _stopping(rig, place),  # type: ignore[misc]
                )
    if rig.drawworks is not None and rig.drum is not None and rig.line is not None:
        yield (
            "load-and-speed",
            "Hook load the drawworks hoists steadily against speed",
            lambda: _load_and_speed(rig),
        )
    if rig.drum is not None and rig.line is not None and rig.operations:
        yield "line-damage", "Where the wear of the line goes", lambda: _line_damage(rig)


def _drawn(draw: Callable[[Axes], object], size: tuple[float, float] = (7.5, 4.8)) -> Figure:
    from matplotlib.figure import Figure

    figure = Figure(figsize=size, layout="constrained")
    draw(figure.subplots())
    return figure


def _load_path(rig: Rig) -> Figure:
    from ropewalk.plot import load_path
    from ropewalk.suspension import rig_margins

    return _drawn(lambda ax: load_path(ax, rig_margins(rig), unit="kN"))


def _leg_loads(rig: Rig) -> Figure:
    from ropewalk.plot import leg_loads

    assert rig.mast is not None
    mast = rig.mast.mast
    loads = mast.leg_loads(
        Q(rig.largest_hook_load, "N"),
        rig.reeving,
        crown_block_weight=Q(rig.mast.crown_block_weight, "N"),
    )
    return _drawn(
        lambda ax: leg_loads(ax, mast, loads, force_unit="kN", length_unit="m"), (6.0, 6.0)
    )


def _load_and_speed(rig: Rig) -> Figure:
    from ropewalk.plot import load_against_speed
    from ropewalk.rig import hoist

    def draw(ax: Axes) -> None:
        load_against_speed(ax, hoist(rig), load_unit="kN", speed_unit="m/s")
        ax.legend(frameon=False)

    return _drawn(draw)


def _stopping(rig: Rig, place: int) -> Figure:
    import numpy as np
    from matplotlib.figure import Figure

    from ropewalk.overtravel import stopping_envelope
    from ropewalk.plot import stopping_distance_by_speed
    from ropewalk.rig import braked_hoist

    assert rig.overtravel is not None
    assert rig.drum is not None
    guard = rig.overtravel
    device = guard.devices[place]
    layer = rig.drum.layers
    light, heavy = rig.block.weight, rig.largest_hook_load
    figure = Figure(figsize=(10.0, 4.6), layout="constrained")
    rooms = {
        "hoisting": (guard.hoisting_speed, guard.crown - guard.margin - device.crown_si),
        "lowering": (guard.lowering_speed, device.floor_si - guard.floor - guard.margin),
    }
    for ax, (direction, (fastest, room)) in zip(figure.subplots(1, 2), rooms.items(), strict=True):
        envelope = stopping_envelope(
            braked_hoist(rig),
            direction,  # type: ignore[arg-type]
            Q(np.array([light, 0.5 * (light + heavy), heavy]), "N"),
            Q(np.linspace(fastest / _SPEEDS, fastest, _SPEEDS), "m/s"),
            reaction_time=Q(device.reaction_time_si, "s"),
            drive_acceleration=Q(device.drive_acceleration_si, "m/s**2"),
            layers=[layer],
        )
        way = Q(room, "m") if room > 0.0 else None
        stopping_distance_by_speed(ax, envelope, layer=layer, room=way, load_unit="kN")
        ax.set_title(direction if room > 0.0 else f"{direction}: no room left")
    return figure


def _line_damage(rig: Rig) -> Figure:
    from ropewalk.line import SlipCutProgram, run_line
    from ropewalk.plot import line_figure

    program = None if rig.program is None else SlipCutProgram.of_practice(rig.program)
    return line_figure(run_line(rig, program=program, outside_validity="ignore"))
