"""How many lines to string: pull, speed, trip time and life of the line side by side."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, fields, replace
from typing import TYPE_CHECKING, Any

import numpy as np

from ropewalk._border import Quantity, to_count, to_quantity
from ropewalk.errors import InadmissibleError, RopewalkError

if TYPE_CHECKING:
    import xarray as xr

    from ropewalk._units import QuantityLike
    from ropewalk.drawworks import Hoist, Limits
    from ropewalk.fatigue import LifeModel
    from ropewalk.line import SlipCutProgram
    from ropewalk.rig import Operation, Rig

_WHERE = "study.lines_strung"


@dataclass(slots=True)
class _Row:
    """What is found for one number of lines, SI; NaN where `reason` says that it cannot be."""

    pull: float = np.nan
    pull_by_line: float = np.nan
    hook_speed: float = np.nan
    gear: int = 0
    efficiency: float = np.nan
    fast_line_tension: float = np.nan
    design_factor: float = np.nan
    crown_load: float = np.nan
    layer: int = 0
    rope_on_drum: float = np.nan
    trip_time: float = np.nan
    moving_time: float = np.nan
    driven: float = np.nan
    braked: float = np.nan
    holds: bool = False
    reason: str = ""


#: Unit and long name of every variable.
_VARIABLES = {
    "pull": ("N", "largest hook load the motors hoist, on the highest layer"),
    "pull_by_line": ("N", "hook load at which the fast line is at its minimum design factor"),
    "hook_speed": ("m/s", "steady hoisting speed of the heaviest load, on the highest layer"),
    "gear": ("1", "gear of that speed"),
    "efficiency": ("1", "power at the hook over power of the motors, in that gear"),
    "fast_line_tension": ("N", "fast-line tension at the heaviest load, hoisting"),
    "design_factor": ("1", "breaking force over fast-line tension"),
    "crown_load": ("N", "load on the crown block at the heaviest load, hoisting"),
    "layer": ("1", "layer of the drum with the block at its highest"),
    "rope_on_drum": ("m", "rope on the drum with the block at its highest"),
    "trip_time": ("s", "time of one round trip, connections included"),
    "moving_time": ("s", "time in which the block moves in one round trip"),
    "driven": ("J", "energy the motors give in one round trip"),
    "braked": ("J", "energy the brakes take in one round trip"),
    "holds": ("1", "drum, motors, line and rated parts can do the job, by the rig file"),
    "reason": ("1", "why not"),
    "line_life": ("J", "work of the line until its worst place reaches discard, by the map"),
    "line_life_end": ("1", "what ended the life by the map"),
    "line_life_trips": ("1", "the same in round trips of this operation"),
}


def lines_strung(
    rig: Rig,
    *,
    lines: Sequence[int],
    limits: Limits,
    connection_time: QuantityLike,
    operation: Operation | None = None,
    model: LifeModel | None = None,
    program: SlipCutProgram | None = None,
    threads: int = 1,
) -> xr.Dataset:
    """Compare numbers of lines for the heaviest job of a rig.

    More lines pull more and spare the fast line; they also cost speed, efficiency, drum and rope:
    every foot of the block takes more line over more sheaves. The table shows both sides.

    Parameters
    ----------
    rig
        The rig; its file has ``[drawworks.motors]``, ``[drum]`` and ``[line]``.
    lines
        Even numbers of lines.
    limits
        Speeds and accelerations of the block, `ropewalk.drawworks.Limits`.
    connection_time
        From one loaded stroke to the next while the block is not moving; yours to give.
    operation
        The job, one with stands of a string; the heaviest round trip of the plan if left out.
    model
        Life model; the one the rig file gives constants for if left out.
    program
        When the line is slipped and cut, for ``line_life``; never, if left out.
    threads
        For ``line_life``; any number gives the same answer.

    Returns
    -------
    xarray.Dataset
        Dimension lines; unit and long name on every variable. A number of lines that cannot be has
        NaN and its ``reason``. ``holds`` asks for the drum, the motors, the design factor of the
        line, and the ratings of all parts of the load path (`ropewalk.suspension.rig_margins`).

    Raises
    ------
    RigFileError
        If the rig file lacks something it takes.
    InadmissibleError
        For a number of lines that is not even, and for other arguments that cannot be.

    Examples
    --------
    >>> import ropewalk as rw
    >>> rig = rw.load_rig(rw.rig.example("rig7"))
    >>> data = rw.lines_strung(
    ...     rig,
    ...     lines=[8, 10, 12],
    ...     limits=rw.drawworks.Limits("0.8 m/s", "0.4 m/s**2"),
    ...     connection_time="2 min",
    ... )
    >>> data.holds.values
    array([ True,  True,  True])
    >>> bool((data.fast_line_tension.diff("lines") < 0).all())
    True
    """
    from ropewalk.rig import hoist

    counts = [_even(number) for number in lines]
    job = rig.heaviest_trip if operation is None else operation
    rows = [_row(rig, hoist(rig, count), job, limits, connection_time) for count in counts]
    life, end = _lives(rig, counts, model, program, threads)
    work = job.work(rig.block.weight) / job.times
    return _dataset(
        rig,
        job,
        counts,
        rows,
        {"line_life": life, "line_life_end": end, "line_life_trips": life / work},
    )


def _even(number: Any) -> int:
    count = to_count(_WHERE, "lines", number)
    if count < 2 or count % 2:
        text = f"lines = {count} must be an even number from 2 up"
        raise InadmissibleError(f"{_WHERE}(): {text}", _WHERE, "lines")
    return count


def _row(
    rig: Rig, hoist: Hoist, job: Operation, limits: Limits, connection_time: QuantityLike
) -> _Row:
    """Return what one number of lines does; what cannot be is told in the row."""
    from ropewalk import design_factor
    from ropewalk.rig import trip

    load = to_quantity(job.heaviest_hook_load(rig.block.weight), "force")
    tensions = hoist.reeving.tensions(load, motion="hoisting")
    minimum = design_factor.minimum(job.service, rig.design_factor_standard)
    breaking = rig.rope.breaking_force_si
    row = _Row(
        fast_line_tension=float(tensions.fast_line_si),
        design_factor=breaking / float(tensions.fast_line_si),
        crown_load=float(tensions.crown_load_si),
        pull_by_line=breaking / minimum.value / tensions.fast_line_factor,
    )
    reasons = _overloads(rig, hoist, load)
    if row.design_factor < minimum.value:
        reasons.append(
            f"design factor {row.design_factor:.2f} is less than {minimum.value:g} "
            f"({minimum.standard})"
        )
    # The drum must hold the rope of the highest position, whether the job takes it or not.
    top = to_quantity(max(job.base_height + job.stand_length, rig.travel), "length")
    try:
        row.layer = hoist.layer_at(top)
    except InadmissibleError as error:
        if error.field != "block_height":
            raise
        row.reason = "; ".join([str(error), *reasons])  # more rope than the drum holds
        return row
    lowest = hoist.drum.length_of(hoist.wraps_at_lowest).m_as("m")
    row.rope_on_drum = lowest + hoist.reeving.lines * top.m_as("m")
    gears = range(1, hoist.gears + 1)
    row.pull = max(hoist.drive(gear, row.layer).pull.m_as("N") for gear in gears)
    speeds = [hoist.speed(load, gear=gear, layer=row.layer).m_as("m/s") for gear in gears]
    row.hook_speed = max(speeds)
    if row.hook_speed > 0.0:
        row.gear = int(np.argmax(speeds)) + 1
        row.efficiency = hoist.drive(row.gear, row.layer).efficiency
    done = trip(rig, job, limits=limits, connection_time=connection_time, lines=hoist.reeving.lines)
    if done.possible:
        row.trip_time = done.time.m_as("s")
        row.moving_time = done.moving_time.m_as("s")
        row.driven, row.braked = done.driven.m_as("J"), done.braked.m_as("J")
        if row.gear == 0:  # the heaviest load may be more than a stand of the trip: a jar, a kelly
            reasons.insert(0, f"hook load {load:g~P} is not below the pull {row.pull:g} N")
    else:
        reasons.insert(0, done.reason)
    row.reason = "; ".join(reasons)
    row.holds = not reasons
    return row


def _overloads(rig: Rig, hoist: Hoist, load: Quantity) -> list[str]:
    """Return the parts of the load path beyond their rating; the line has its design factor."""
    from ropewalk.suspension import rig_margins

    margins = rig_margins(replace(rig, reeving=hoist.reeving), load)
    rows = zip(margins.names, margins.load_si, margins.rating_si, strict=True)
    return [
        f"{name} carries {carried:.6g} N, rated {rated:.6g} N"
        for name, carried, rated in rows
        if carried > rated and name != "drilling line"
    ]


def _lives(
    rig: Rig,
    lines: Sequence[int],
    model: LifeModel | None,
    program: SlipCutProgram | None,
    threads: int,
) -> tuple[Any, Any]:
    """Return the lives by the map, or why there are none."""
    from ropewalk.line import Campaign
    from ropewalk.line._setup import line_model
    from ropewalk.study.line_life import life_of_designs

    try:
        chosen = line_model(rig) if model is None else model
    except RopewalkError as error:
        return np.full(len(lines), np.nan), np.full(len(lines), str(error), dtype=object)
    designs = [(replace(rig, reeving=replace(rig.reeving, lines=n)), chosen, 1.0) for n in lines]
    return life_of_designs(designs, Campaign.from_plan(rig), program=program, threads=threads)


def _dataset(
    rig: Rig, job: Operation, lines: Sequence[int], rows: Sequence[_Row], lives: dict[str, Any]
) -> xr.Dataset:
    import xarray as xr

    from ropewalk import design_factor
    from ropewalk._version import __version__
    from ropewalk.line._setup import drum_of
    from ropewalk.study.dataset import CAUTION

    columns = {one.name: [getattr(row, one.name) for row in rows] for one in fields(_Row)} | lives
    minimum = design_factor.minimum(job.service, rig.design_factor_standard)
    invented = " (invented)" if rig.invented else ""
    return xr.Dataset(
        {
            name: ("lines", columns[name], {"units": unit, "long_name": text})
            for name, (unit, text) in _VARIABLES.items()
        },
        coords={"lines": ("lines", list(lines), {"units": "1", "long_name": "lines strung"})},
        attrs={
            "title": f"{rig.name}, {rig.site}{invented}: lines strung for {job.kind}s from "
            f"{job.depth:.0f} m",
            "heaviest_hook_load": job.heaviest_hook_load(rig.block.weight),
            "rig_lines": rig.reeving.lines,
            "design_factor_minimum": minimum.value,
            "design_factor_source": str(minimum.source),
            "drum_capacity": drum_of(rig).capacity_si,
            "ropewalk_version": __version__,
            "caution": CAUTION,
        },
    )
