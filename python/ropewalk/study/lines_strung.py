"""How many lines to string: pull, speed, trip time and life of the line side by side."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, fields, replace
from typing import TYPE_CHECKING, Any

import numpy as np

from ropewalk._border import to_count, to_quantity
from ropewalk._drawworks_trip import to_connection_time
from ropewalk.errors import InadmissibleError
from ropewalk.study.service_loads import (
    SERVICE_VARIABLES,
    ServiceLoad,
    ServiceRow,
    service_columns,
    service_loads,
    service_row,
)

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
    mast_rating: float = np.nan
    holds: bool = False
    reason: str = ""


#: Unit and long name of every variable.
_VARIABLES = {
    "pull": ("N", "largest hook load motors and line hoist, on the highest layer"),
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
    "mast_rating": ("N", "static hook load rating of the mast at the lines strung; NaN if none"),
    "holds": ("1", "drum, motors, line and rated parts can do job and plan, by the rig file"),
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
    """Compare numbers of lines for the heaviest trip of a rig, and the loads of its whole plan.

    More lines pull more and spare the fast line; they also cost speed, efficiency, drum and rope:
    every foot of the block takes more line over more sheaves. The table shows both sides. Times,
    energies and the columns without a service are for one job, the trip. The heaviest loads of the
    plan may be others: casing, jarring, the pull allowed on a stuck string
    (`ropewalk.rig.Rig.stuck_hook_load`). The columns along ``service`` are for the heaviest load of
    each service, against the design factor that service asks for.

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
        Dimensions lines and service; unit and long name on every variable. A number of lines that
        cannot be has NaN and its ``reason``. ``holds`` asks for the drum, for the job, and for the
        heaviest load of every service: the pull on the highest layer of the drum (with the overload
        of the motors, if `limits` allow it), the design factor of the line, and the ratings of all
        parts of the load path at the lines strung, mast included
        (`ropewalk.suspension.rig_margins`).

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
    array([False,  True,  True])
    >>> str(data.reason.values[0]).partition(":")[0]
    'string stuck after 5 x round trip, 3400 m'
    >>> bool((data.fast_line_tension.diff("lines") < 0).all())
    True
    """
    from ropewalk.rig import hoist

    # Whether the drum holds a row or not, what is given must be.
    waiting = to_quantity(to_connection_time(_WHERE, connection_time), "time")
    counts = [_even(number) for number in lines]
    job = rig.heaviest_trip if operation is None else operation
    loads = service_loads(rig, job)
    rows, services = [], []
    for count in counts:
        row, of_services = _row(rig, hoist(rig, count), job, loads, limits, waiting)
        rows.append(row)
        services.append(of_services)
    life, end = _lives(rig, counts, model, program, threads)
    work = job.work(rig.block.weight) / job.times
    lives = {"line_life": life, "line_life_end": end, "line_life_trips": life / work}
    return _dataset(rig, job, counts, rows, lives, loads, service_columns(services))


def _even(number: Any) -> int:
    count = to_count(_WHERE, "lines", number)
    if count < 2 or count % 2:
        text = f"lines = {count} must be an even number from 2 up"
        raise InadmissibleError(f"{_WHERE}(): {text}", _WHERE, "lines")
    return count


def _row(
    rig: Rig,
    hoist: Hoist,
    job: Operation,
    loads: Sequence[ServiceLoad],
    limits: Limits,
    connection_time: QuantityLike,
) -> tuple[_Row, list[ServiceRow]]:
    """Return what one number of lines does; what cannot be is told in the row."""
    from ropewalk import design_factor
    from ropewalk.rig import trip
    from ropewalk.suspension import rig_suspension

    load = to_quantity(job.heaviest_hook_load(rig.block.weight), "force")
    tensions = hoist.reeving.tensions(load, motion="hoisting")
    minimum = design_factor.minimum(job.service, rig.design_factor_standard)
    breaking = rig.rope.breaking_force_si
    mast = rig_suspension(replace(rig, reeving=hoist.reeving)).mast_si
    row = _Row(
        fast_line_tension=float(tensions.fast_line_si),
        design_factor=breaking / float(tensions.fast_line_si),
        crown_load=float(tensions.crown_load_si),
        pull_by_line=breaking / minimum.value / tensions.fast_line_factor,
        mast_rating=np.nan if mast is None else mast,
    )
    reasons = _pull(rig, hoist, job, row, limits)
    services = [service_row(rig, hoist, one, row.pull) for one in loads]
    for one in services:
        reasons += one.reasons
    if not np.isnan(row.pull):
        done = trip(
            rig, job, limits=limits, connection_time=connection_time, lines=hoist.reeving.lines
        )
        if done.possible:
            row.trip_time = done.time.m_as("s")
            row.moving_time = done.moving_time.m_as("s")
            row.driven, row.braked = done.driven.m_as("J"), done.braked.m_as("J")
        else:
            reasons.insert(0, done.reason)
    row.reason = "; ".join(reasons)
    row.holds = not reasons
    return row, services


def _pull(rig: Rig, hoist: Hoist, job: Operation, row: _Row, limits: Limits) -> list[str]:
    """Enter layer, pull and speed into a row; return why there are none, if so."""
    load = to_quantity(job.heaviest_hook_load(rig.block.weight), "force")
    # The drum must hold the rope of the highest position, whether the job takes it or not.
    top = to_quantity(max(job.base_height + job.stand_length, rig.travel), "length")
    try:
        row.layer = hoist.layer_at(top)
    except InadmissibleError as error:
        if error.field != "block_height":
            raise
        return [str(error)]  # more rope than the drum holds
    lowest = hoist.drum.length_of(hoist.wraps_at_lowest).m_as("m")
    row.rope_on_drum = lowest + hoist.reeving.lines * top.m_as("m")
    gears = range(1, hoist.gears + 1)
    row.pull = max(
        hoist.drive(gear, row.layer, overload=limits.overload).pull.m_as("N") for gear in gears
    )
    speeds = [hoist.speed(load, gear=gear, layer=row.layer).m_as("m/s") for gear in gears]
    row.hook_speed = max(speeds)
    if row.hook_speed > 0.0:
        row.gear = int(np.argmax(speeds)) + 1
        row.efficiency = hoist.drive(row.gear, row.layer).efficiency
    return []


def _lives(
    rig: Rig,
    lines: Sequence[int],
    model: LifeModel | None,
    program: SlipCutProgram | None,
    threads: int,
) -> tuple[Any, Any]:
    """Return the lives by the map; none, and why, of a rig file without constants for a model."""
    from ropewalk.line import Campaign
    from ropewalk.line._setup import line_model
    from ropewalk.study.line_life import life_of_designs

    try:
        chosen = line_model(rig) if model is None else model
    except InadmissibleError as error:
        if error.field != "model":
            raise
        return np.full(len(lines), np.nan), np.full(len(lines), str(error), dtype=object)
    designs = [(replace(rig, reeving=replace(rig.reeving, lines=n)), chosen, 1.0) for n in lines]
    return life_of_designs(designs, Campaign.from_plan(rig), program=program, threads=threads)


def _dataset(
    rig: Rig,
    job: Operation,
    lines: Sequence[int],
    rows: Sequence[_Row],
    lives: dict[str, Any],
    loads: Sequence[ServiceLoad],
    services: dict[str, Any],
) -> xr.Dataset:
    import xarray as xr

    from ropewalk import design_factor
    from ropewalk._version import __version__
    from ropewalk.rig.line_parts import drum_of
    from ropewalk.study.dataset import CAUTION

    columns = {one.name: [getattr(row, one.name) for row in rows] for one in fields(_Row)} | lives
    minimum = design_factor.minimum(job.service, rig.design_factor_standard)
    invented = " (invented)" if rig.invented else ""
    return xr.Dataset(
        {
            **{
                name: ("lines", columns[name], {"units": unit, "long_name": text})
                for name, (unit, text) in _VARIABLES.items()
            },
            **{
                name: (*services[name], {"units": unit, "long_name": text})
                for name, (unit, text) in SERVICE_VARIABLES.items()
            },
        },
        coords={
            "lines": ("lines", list(lines), {"units": "1", "long_name": "lines strung"}),
            **_service_coords(loads),
        },
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


def _service_coords(loads: Sequence[ServiceLoad]) -> dict[str, Any]:
    """Return the service, its heaviest load, where that comes from, and the factor asked for."""
    columns: dict[str, tuple[list[Any], str, str]] = {
        "service": ([one.service for one in loads], "1", "service"),
        "service_hook_load": ([one.hook_load for one in loads], "N", "its heaviest hook load"),
        "service_job": ([one.title for one in loads], "1", "job with that load"),
        "service_minimum": ([one.minimum for one in loads], "1", "minimum design factor"),
    }
    return {
        name: ("service", values, {"units": unit, "long_name": text})
        for name, (values, unit, text) in columns.items()
    }
