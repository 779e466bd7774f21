"""The class `Stop`: a stop of the block, on a rigid and on an elastic line."""

from __future__ import annotations

import math
from dataclasses import dataclass
from typing import TYPE_CHECKING, Any, Literal

import numpy as np
import numpy.typing as npt

from ropewalk import _core
from ropewalk._border import NumberLike, Quantity, QuantityLike, to_one, to_quantity
from ropewalk._brake_fall_back import FallBack, fall_back_of
from ropewalk.errors import InadmissibleError

if TYPE_CHECKING:
    from ropewalk._reeving import Reeving

__all__ = ["CAUTION", "ElasticStop", "RigidStop", "Stop"]

Direction = Literal["hoisting", "lowering"]
Array = npt.NDArray[np.float64]

#: Printed with every result that someone could take for a permission.
CAUTION = (
    "Computed for brakes as given. Nobody stands under a load on the strength of it: local codes, "
    "the maker's manual, brake tests on the rig and licensed practice come first."
)

_WHERE = "brake.Stop"


@dataclass(frozen=True, slots=True)
class RigidStop:
    """What becomes of a stop if the line did not stretch.

    Attributes
    ----------
    stops
        False if the brake is weaker than the load: it goes on.
    stands_early
        True if the torque of the delay brought a lowered block to rest before the brake began. That
        is no stop: it is gone when the brake begins, and the load moves on until that holds it.
    slack
        True if a hoisted block slows by gravity alone, the brake slowing the drum harder: the line
        goes slack.
    time_si, distance_si
        Until standstill, hoisting to the highest point, s and m; infinite if there is none.
    highest_speed_si
        Largest speed on the way, m/s; infinite if the load gains speed without end.
    deceleration_si
        With the brake fully on, m/s²; negative if the load gains speed. Hoisting, gravity at most.
    fall_back
        What a hoisted block does after its highest point; None of a lowered one. A block that drops
        into a slack line takes the drum along, impulse for impulse; how hard the line then pulls,
        `Stop.on_line` says.
    holding_factor
        Torque of the brake over that of the load.
    finding
        What was found, in words, with its numbers.
    """

    stops: bool
    stands_early: bool
    slack: bool
    time_si: float
    distance_si: float
    highest_speed_si: float
    deceleration_si: float
    fall_back: FallBack | None
    holding_factor: float
    finding: str

    @property
    def time(self) -> Quantity:
        """Time until standstill."""
        return to_quantity(self.time_si, "time")

    @property
    def distance(self) -> Quantity:
        """Way of the block until standstill."""
        return to_quantity(self.distance_si, "length")

    @property
    def highest_speed(self) -> Quantity:
        """Largest speed on the way."""
        return to_quantity(self.highest_speed_si, "speed")

    @property
    def deceleration(self) -> Quantity:
        """Deceleration with the brake fully on."""
        return to_quantity(self.deceleration_si, "acceleration")

    def __str__(self) -> str:
        return f"{self.finding}\n{CAUTION}"


@dataclass(frozen=True, eq=False, slots=True)
class ElasticStop:
    """Course of a stop on an elastic line; travel and speed in the direction the block went.

    Attributes
    ----------
    stops
        Whether the drum stands at the end.
    time_si
        When the drum stands for good, s; infinite if it does not.
    drum_distance_si, block_distance_si
        Travel of the drum until then, brought to the block, and farthest travel of the block, m.
    peak_si, least_si
        Largest and smallest load on the line at the hook, N.
    peak_factor
        Largest over static load.
    slack
        True if the line went slack.
    fall_back
        What a hoisted block does after its highest point; None of a lowered one.
    times_si, drum_travel_si, block_travel_si, drum_speed_si, block_speed_si, hook_force_si
        The course, one value per step.
    """

    stops: bool
    time_si: float
    drum_distance_si: float
    block_distance_si: float
    peak_si: float
    least_si: float
    peak_factor: float
    slack: bool
    fall_back: FallBack | None
    times_si: Array
    drum_travel_si: Array
    block_travel_si: Array
    drum_speed_si: Array
    block_speed_si: Array
    hook_force_si: Array

    @property
    def peak(self) -> Quantity:
        """Largest load on the line at the hook."""
        return to_quantity(self.peak_si, "force")

    @property
    def time(self) -> Quantity:
        """When the drum stands for good."""
        return to_quantity(self.time_si, "time")

    @property
    def block_distance(self) -> Quantity:
        """Farthest travel of the block."""
        return to_quantity(self.block_distance_si, "length")

    def __repr__(self) -> str:
        end = f"drum stands after {self.time_si:.3f} s" if self.stops else "does not stop"
        return f"<ElasticStop: {end}, peak {self.peak_factor:.3f} of the load at rest>"


@dataclass(frozen=True, init=False, slots=True)
class Stop:
    """A stop of the block: what moves, and what brakes it from when on.

    Until the brake begins, `delay_torque` acts at the drum: the auxiliary brake or motor that kept
    the speed; None, just what keeps it. With ``"0 N*m"`` nothing does, as when power is lost
    while lowering: the load gains speed until the brake grips. More than the load's torque slows a
    lowered load, and may bring it to rest, but does not stop it: it is gone when the brake begins,
    and what stands then moves until the brake holds it. Neither it nor `build_up` has a
    default: left out, both would make the stop look shorter than it is.

    Parameters
    ----------
    direction : {"hoisting", "lowering"}
        The way the block goes.
    travel_speed
        Its speed when the stop is asked for.
    hook_load
        Everything hung on the lines.
    reeving : Reeving
        How the line is strung; friction of its sheaves helps while lowering.
    drum_radius
        Radius of the middle of the rope on the drum, by layer.
    brake_torque
        Torque of the brakes that act, fully on.
    rotating_mass
        All that turns, as a mass at the hook: J (N/R)² of a moment of inertia J at the drum shaft.
    delay
        From the moment the stop is asked for until the brake begins.
    build_up
        Time in which its torque then rises evenly.
    delay_torque
        Torque at the drum during the delay, see above.

    Raises
    ------
    UnitError
        If a unit is missing or wrong.
    InadmissibleError
        If there can be no such stop.

    Examples
    --------
    >>> import ropewalk as rw
    >>> stop = rw.brake.Stop(
    ...     "lowering", "1.5 m/s", "2000 kN", reeving=rw.Reeving(12, 1.0), drum_radius="0.5 m",
    ...     brake_torque="166.7 kN*m", rotating_mass="3456 tonne", delay="0.5 s",
    ...     build_up="0 s", delay_torque=None,
    ... )
    >>> print(f"{stop.rigid().distance:.2f}")
    2.81 meter
    >>> stop.on_line("21.72 MN/m")
    <ElasticStop: drum stands after 3.248 s, peak 1.111 of the load at rest>
    """

    direction: Direction
    travel_speed_si: float
    hook_load_si: float
    drum_load_si: float
    delay_force_si: float
    brake_force_si: float
    delay_si: float
    build_up_si: float
    rotating_mass_si: float

    def __init__(
        self,
        direction: Direction,
        travel_speed: QuantityLike,
        hook_load: QuantityLike,
        *,
        reeving: Reeving,
        drum_radius: QuantityLike,
        brake_torque: QuantityLike,
        rotating_mass: QuantityLike,
        delay: QuantityLike,
        build_up: QuantityLike,
        delay_torque: QuantityLike | None,
    ) -> None:
        if direction not in ("hoisting", "lowering"):
            text = f"direction must be 'hoisting' or 'lowering', got {direction!r}"
            raise InadmissibleError(f"{_WHERE}(): {text}", _WHERE, "direction")
        radius = to_one(_WHERE, "drum_radius", drum_radius, "length")
        if not 0.0 < radius <= 20.0:
            text = f"drum_radius = {radius:g} m is outside (0, 20] m (ropewalk's guard)"
            raise InadmissibleError(f"{_WHERE}(): {text}", _WHERE, "drum_radius")
        to_hook = reeving.lines / radius
        drum_load = _tension(reeving, hook_load, direction) * reeving.lines
        held = drum_load
        if delay_torque is not None:
            held = to_one(_WHERE, "delay_torque", delay_torque, "torque") * to_hook
        values: dict[str, Any] = {
            "direction": direction,
            "travel_speed_si": to_one(_WHERE, "travel_speed", travel_speed, "speed"),
            "hook_load_si": to_one(_WHERE, "hook_load", hook_load, "force"),
            "drum_load_si": float(drum_load),
            "delay_force_si": float(held),
            "brake_force_si": to_one(_WHERE, "brake_torque", brake_torque, "torque") * to_hook,
            "delay_si": to_one(_WHERE, "delay", delay, "time"),
            "build_up_si": to_one(_WHERE, "build_up", build_up, "time"),
            "rotating_mass_si": to_one(_WHERE, "rotating_mass", rotating_mass, "mass"),
        }
        _core.brake.rigid_stop(*values.values())  # says what is wrong, if anything is
        for name, value in values.items():
            object.__setattr__(self, name, value)

    def _values(self) -> dict[str, Any]:
        return {name.removesuffix("_si"): getattr(self, name) for name in self.__slots__}

    def rigid(self) -> RigidStop:
        """Stop on a line that does not stretch, in closed form.

        Source: Newton's second law, integrated.
        """
        record = _core.brake.rigid_stop(**self._values())
        # At rest the friction of the sheaves does not help to hold.
        factor = self.brake_force_si / self.hook_load_si
        si = {f"{k}_si": record[k] for k in ("time", "distance", "highest_speed", "deceleration")}
        return RigidStop(
            record["stops"],
            record["stands_early"],
            record["slack"],
            **si,
            fall_back=fall_back_of(record["fall_back"]),
            holding_factor=factor,
            finding=_finding(self, record, factor),
        )

    def on_line(
        self,
        line_stiffness: QuantityLike,
        *,
        damping_ratio: NumberLike = 0.0,
        time_limit: QuantityLike = "60 s",
    ) -> ElasticStop:
        """Stop on an elastic line: the load swings, and the line feels more than its weight.

        Load and turning parts are two masses, the line a spring between them that cannot push, the
        brake dry friction that holds the drum once it stands and slips when the line pulls harder.
        Integrated until the load has swung once after the drum stood. `stop_tension_factor` is the
        closed form of an even stop without sheave friction.

        Parameters
        ----------
        line_stiffness
            Of the strung line at the hook.
        damping_ratio
            Share of the critical damping; none published for a strung line, without it the peak is
            highest.
        time_limit
            How long to look.
        """
        where = f"{_WHERE}.on_line"
        record = _core.brake.elastic_stop(
            **self._values(),
            line_stiffness=to_one(where, "line_stiffness", line_stiffness, "force_per_length"),
            damping_ratio=to_one(where, "damping_ratio", damping_ratio, "number"),
            time_limit=to_one(where, "time_limit", time_limit, "time"),
        )
        stops = record.pop("stops")
        fall_back = fall_back_of(record.pop("fall_back"))
        return ElasticStop(
            stops=stops,
            fall_back=fall_back,
            peak_factor=record["peak"] / self.hook_load_si,
            slack=record["least"] <= 0.0,
            **{f"{name}_si": value for name, value in record.items()},
        )


def _tension(reeving: Reeving, hook_load: QuantityLike, direction: Direction) -> float:
    load = to_quantity(to_one(_WHERE, "hook_load", hook_load, "force"), "force")
    return float(reeving.tensions(load, direction).fast_line.m_as("N"))


def _finding(stop: Stop, record: dict[str, Any], factor: float) -> str:
    if not record["stops"]:
        return (
            f"does not stop: the brake has {factor:.2f} times the torque of the load, which "
            f"changes speed by {-record['deceleration']:+.2f} m/s2"
        )
    text = f"stops in {record['distance']:.2f} m and {record['time']:.2f} s"
    if math.isclose(record["highest_speed"], stop.travel_speed_si, rel_tol=1e-9):
        text += f" from {stop.travel_speed_si:.2f} m/s"
    else:
        text += (
            f" from {stop.travel_speed_si:.2f} m/s, after reaching "
            f"{record['highest_speed']:.2f} m/s"
        )
    if record["stands_early"]:
        share = stop.delay_force_si / stop.drum_load_si
        text += (
            f"; before the brake begins, {share:.2f} times the torque of the load brings it to "
            "rest, which is no stop: when that lets go the load moves until the brake holds it"
        )
    if record["slack"]:
        text += "; the line goes slack, the brake slows the drum harder than gravity the block"
    back = fall_back_of(record["fall_back"])
    if back is not None and (back.falls or not back.holds):
        text += f"; {back}"
    if factor < 1.0:
        text += f"; the brake has {factor:.2f} times the torque of the load and does not hold it"
    return text
