"""The drawworks of a rig, and the hoist it makes with drum and line."""

from __future__ import annotations

from dataclasses import dataclass, replace
from typing import TYPE_CHECKING

from ropewalk.rig.file import RigFileError

if TYPE_CHECKING:
    from ropewalk._units import QuantityLike
    from ropewalk.drawworks import Drawworks, Hoist, Limits, Trip
    from ropewalk.rig.assembly import Rig
    from ropewalk.rig.drawworks_sections import DrawworksSection
    from ropewalk.rig.plan import Operation


@dataclass(frozen=True, slots=True)
class DrawworksParts:
    """The drawworks and what the rig file says of the line on it, in SI.

    Attributes
    ----------
    machine
        Motors, gears, drum shaft.
    line_pull
        Rated pull of the fast line, N, or None.
    sheave_inertia
        Moment of inertia of one sheave of the blocks, kg·m².
    """

    machine: Drawworks
    line_pull: float | None
    sheave_inertia: float


def make_drawworks(section: DrawworksSection) -> DrawworksParts | None:
    """Return the drawworks of ``[drawworks]``, None where only its power is given."""
    given = {
        "drawworks.motors": section.motors is not None,
        "drawworks.gear": bool(section.gear),
        "drawworks.drum_efficiency": section.drum_efficiency is not None,
    }
    if not any(given.values()):
        return None
    missing = [name for name, there in given.items() if not there]
    if missing or section.motors is None or section.drum_efficiency is None:
        raise RigFileError(
            f"{', '.join(missing)}: missing; {', '.join(given)} are given together or not at all"
        )
    from ropewalk._units import Q
    from ropewalk.drawworks import Drawworks, Gear, Motors

    motors = section.motors
    if motors.top_speed < motors.base_speed:
        raise RigFileError(
            f"drawworks.motors.top_speed = {motors.top_speed:.6g} rad/s is less than base_speed = "
            f"{motors.base_speed:.6g} rad/s"
        )
    return DrawworksParts(
        machine=Drawworks(
            Motors(
                motors.count,
                Q(section.power / motors.count, "W"),
                Q(motors.base_speed, "rad/s"),
                Q(motors.top_speed, "rad/s"),
                Q(motors.inertia, "kg*m**2"),
                motors.overload,
                None if motors.overload_time is None else Q(motors.overload_time, "s"),
            ),
            [Gear(g.ratio, g.efficiency, Q(g.inertia, "kg*m**2")) for g in section.gear],
            section.drum_efficiency,
            Q(section.drum_inertia, "kg*m**2"),
        ),
        line_pull=section.line_pull,
        sheave_inertia=section.sheave_inertia,
    )


def hoist(rig: Rig, lines: int | None = None) -> Hoist:
    """Return the hoist a rig makes with its drawworks, drum and line.

    Parameters
    ----------
    rig
        The rig; its file has ``[drawworks.motors]``, ``[drum]`` and ``[line]``.
    lines
        Number of lines strung; those of the rig if left out.

    Returns
    -------
    ropewalk.drawworks.Hoist
        With the rated pull of the fast line as its limit, if the file has one.

    Raises
    ------
    RigFileError
        If the rig file lacks something it takes.

    Examples
    --------
    >>> import ropewalk as rw
    >>> hoist = rw.rig.hoist(rw.load_rig(rw.rig.example("rig7")))
    >>> hoist.gears
    2
    """
    parts, line = rig.drawworks, rig.line
    missing = [
        name
        for name, part in (
            ("[drawworks.motors]", parts),
            ("[drum]", rig.drum),
            ("[line]", line),
        )
        if part is None
    ]
    if parts is None or line is None or rig.drum is None:
        raise RigFileError(f"{rig.name} has no {' and no '.join(missing)}: a hoist needs them")
    from ropewalk import si
    from ropewalk._units import Q
    from ropewalk.drawworks import Hoist

    reeving = rig.reeving if lines is None else replace(rig.reeving, lines=lines)
    sheaves = 0.5 * (rig.crown.diameter + rig.block.sheaves.diameter) + rig.rope.diameter_si
    mass = si.drawworks.sheave_equivalent_mass(parts.sheave_inertia, reeving.lines, sheaves)
    return Hoist(
        parts.machine,
        reeving,
        rig.drum.with_rope(rig.rope.diameter_si),
        line.wraps_at_lowest,
        line_limit=None if parts.line_pull is None else Q(parts.line_pull, "N"),
        sheave_mass=Q(mass, "kg"),
    )


def trip(
    rig: Rig,
    operation: Operation,
    *,
    limits: Limits,
    connection_time: QuantityLike,
    lines: int | None = None,
) -> Trip:
    """Return the round trip from the depth of an operation of the plan, stand by stand.

    Parameters
    ----------
    rig
        The rig, as `hoist` takes it.
    operation
        One with a string and a stand length.
    limits
        Speeds and accelerations.
    connection_time
        After every loaded stroke; yours to give.
    lines
        Number of lines strung; those of the rig if left out.

    Raises
    ------
    RigFileError
        As `hoist`, or if no string moves in the operation.

    Examples
    --------
    >>> import ropewalk as rw
    >>> rig = rw.load_rig(rw.rig.example("rig7"))
    >>> limits = rw.drawworks.Limits("0.8 m/s", "0.4 m/s**2")
    >>> trip = rw.rig.trip(rig, rig.heaviest_trip, limits=limits, connection_time="2 min")
    >>> trip.stands, trip.possible
    (120, True)
    """
    if operation.string is None or operation.stand_length <= 0.0:
        raise RigFileError(f"{operation.title}: no stands of a string move in this operation")
    from ropewalk._drawworks_trip import to_connection_time, trip_of_loads
    from ropewalk.rig.plan import trip_strokes

    loads = trip_strokes(operation, rig.block.weight)
    return trip_of_loads(
        hoist(rig, lines),
        pulling=loads.pulling,
        running=loads.running,
        block=loads.block,
        stand_length=operation.stand_length,
        limits=limits,
        connection_time=to_connection_time("rig.trip", connection_time),
        base_height=operation.base_height,
    )
