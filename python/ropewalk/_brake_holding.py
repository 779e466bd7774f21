"""What a brake holds: the classes `DiscBrake` and `BandBrake`."""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np

from ropewalk import _core
from ropewalk._border import (
    NumberLike,
    Quantity,
    QuantityLike,
    to_count,
    to_one,
    to_quantity,
    to_si,
)
from ropewalk._brake_finding import HoldingFinding, held
from ropewalk._brake_required import RequiredFactor
from ropewalk.errors import InadmissibleError

__all__ = ["BandBrake", "DiscBrake"]


@dataclass(frozen=True, init=False, slots=True)
class DiscBrake:
    """Disc brake of a drum: service calipers pressed on by oil, emergency calipers by springs.

    When hydraulic pressure is lost the service calipers are gone and the emergency calipers come
    on; so what the emergency calipers hold alone is what holds the load then.

    Parameters
    ----------
    discs
        Number of discs.
    service_per_disc, emergency_per_disc
        Calipers on each disc, two pads each; 0 if there are none.
    service_force
        Force of one service pad at full pressure.
    emergency_force
        Force of one emergency pad with the oil let off, see `spring_pad_force`.
    pad_radius
        Where the friction acts, see `pad_radius_uniform_wear`.
    lining_friction
        Friction of the pads. No default: it is the pad maker's, and falls with heat and wet.

    Raises
    ------
    InadmissibleError
        If there can be no such brake.

    Examples
    --------
    >>> import ropewalk as rw
    >>> brake = rw.brake.DiscBrake(
    ...     discs=2, service_per_disc=3, emergency_per_disc=1, service_force="75 kN",
    ...     emergency_force="70 kN", pad_radius="0.7 m", lining_friction=0.35,
    ... )
    >>> print(f"{brake.torque(service=False).to('kN*m').magnitude:.1f} kN*m by springs alone")
    68.6 kN*m by springs alone
    >>> [finding.enough for finding in brake.check("67.5 kN*m", 1.5)]
    [True, True, False]
    """

    discs: int
    service_per_disc: int
    emergency_per_disc: int
    service_force_si: float
    emergency_force_si: float
    pad_radius_si: float
    lining_friction: float

    def __init__(
        self,
        *,
        discs: int,
        service_per_disc: int,
        emergency_per_disc: int,
        service_force: QuantityLike,
        emergency_force: QuantityLike,
        pad_radius: QuantityLike,
        lining_friction: NumberLike,
    ) -> None:
        where = "brake.DiscBrake"
        values = {
            "discs": to_count(where, "discs", discs),
            "service_per_disc": to_count(where, "service_per_disc", service_per_disc),
            "emergency_per_disc": to_count(where, "emergency_per_disc", emergency_per_disc),
            "service_force_si": to_one(where, "service_force", service_force, "force"),
            "emergency_force_si": to_one(where, "emergency_force", emergency_force, "force"),
            "pad_radius_si": to_one(where, "pad_radius", pad_radius, "length"),
            "lining_friction": to_one(where, "lining_friction", lining_friction, "number"),
        }
        if not 1 <= values["discs"] <= 8:
            text = f"discs = {values['discs']} is outside [1, 8] (ropewalk's guard)"
            raise InadmissibleError(f"{where}(): {text}", where, "discs")
        for name, value in values.items():
            object.__setattr__(self, name, value if isinstance(value, int) else float(value))
        self.torque()  # says what is wrong, if anything is

    def torque(
        self,
        *,
        service: bool = True,
        emergency: bool = True,
        service_share: NumberLike = 1.0,
        lining_friction: NumberLike | None = None,
    ) -> Quantity:
        """Torque of the calipers that act.

        Parameters
        ----------
        service, emergency
            Which of them act.
        service_share
            Share of the full pressure that is on the service calipers.
        lining_friction
            Friction of hot or wet pads; that of the brake if left out. May be an array.
        """
        where = "brake.DiscBrake.torque"
        share = to_si(where, "service_share", service_share, "number")
        inside = (
            0.0 <= share <= 1.0
            if isinstance(share, float)
            else np.all((np.asarray(share) >= 0.0) & (np.asarray(share) <= 1.0))
        )
        if not inside:
            text = f"service_share must lie in [0, 1], got {share!r}"
            raise InadmissibleError(f"{where}(): {text}", where, "service_share")
        friction = (
            self.lining_friction
            if lining_friction is None
            else to_si(where, "lining_friction", lining_friction, "number")
        )
        torque = _core.brake.caliper_torque
        on_service = self.discs * self.service_per_disc * bool(service)
        on_springs = self.discs * self.emergency_per_disc * bool(emergency)
        radius = self.pad_radius_si
        return to_quantity(
            torque(self.service_force_si * share, friction, radius, on_service)
            + torque(self.emergency_force_si, friction, radius, on_springs),
            "torque",
        )

    def check(
        self,
        load_torque: QuantityLike,
        required: RequiredFactor | NumberLike,
        *,
        hoisting_torque: QuantityLike | None = None,
        motor_torque: QuantityLike | None = None,
        lining_friction: NumberLike | None = None,
    ) -> list[HoldingFinding]:
        """Hold the brake against a load: whole, by service calipers, by springs alone.

        A rule may refer its factor to another torque than that of the load at rest, its `base`. If
        that is not given, the finding says so instead of comparing with the wrong one.

        Parameters
        ----------
        load_torque
            Torque of the load at the drum, at rest.
        required
            Factor asked for, from `required_factor`, or your own, of the load at rest.
        hoisting_torque
            Torque of hoisting the load at the drum, friction of the sheaves included.
        motor_torque
            Rated torque of the motors at the drum.
        lining_friction
            As for `torque`.
        """
        states = {
            "all calipers": {},
            "service calipers alone": {"emergency": False},
            "emergency calipers alone (hydraulic pressure lost)": {"service": False},
        }
        others = {"hoisting torque": hoisting_torque, "motor torque": motor_torque}
        return [
            held(
                "brake.DiscBrake.check",
                state,
                self.torque(**acting, lining_friction=lining_friction),
                load_torque,
                required,
                others,
            )
            for state, acting in states.items()
        ]


@dataclass(frozen=True, init=False, slots=True)
class BandBrake:
    """Band brake of a drum: bands round its rims, pulled by one lever.

    Parameters
    ----------
    bands
        Number of bands.
    wrap_angle, rim_diameter
        Angle of the rim the lining covers, and diameter of the rim.
    lining_friction
        Friction of the lining. No default: it is the maker's, and falls with heat and wet.
    lever_ratio
        Tension in each band over the force on the lever.

    Raises
    ------
    InadmissibleError
        If there can be no such brake.

    Examples
    --------
    >>> import ropewalk as rw
    >>> brake = rw.brake.BandBrake(
    ...     bands=2, wrap_angle="280 deg", rim_diameter="1.18 m", lining_friction=0.35,
    ...     lever_ratio=40,
    ... )
    >>> torque = brake.torque("631 N"), brake.torque("631 N", helped=False)
    >>> [f"{one.to('kN*m').magnitude:.1f}" for one in torque]
    ['135.0', '24.4']
    """

    bands: int
    wrap_angle_si: float
    rim_diameter_si: float
    lining_friction: float
    lever_ratio: float

    def __init__(
        self,
        *,
        bands: int,
        wrap_angle: QuantityLike,
        rim_diameter: QuantityLike,
        lining_friction: NumberLike,
        lever_ratio: NumberLike,
    ) -> None:
        where = "brake.BandBrake"
        values = {
            "bands": to_count(where, "bands", bands),
            "wrap_angle_si": to_one(where, "wrap_angle", wrap_angle, "angle"),
            "rim_diameter_si": to_one(where, "rim_diameter", rim_diameter, "length"),
            "lining_friction": to_one(where, "lining_friction", lining_friction, "number"),
            "lever_ratio": to_one(where, "lever_ratio", lever_ratio, "number"),
        }
        if not 0.0 < values["lever_ratio"] <= 1e4:
            text = f"lever_ratio = {values['lever_ratio']} is outside (0, 10000] (ropewalk's guard)"
            raise InadmissibleError(f"{where}(): {text}", where, "lever_ratio")
        for name, value in values.items():
            object.__setattr__(self, name, value if isinstance(value, int) else float(value))
        self.torque("1 N")  # says what is wrong, if anything is

    def torque(
        self,
        lever_force: QuantityLike,
        *,
        helped: bool = True,
        lining_friction: NumberLike | None = None,
    ) -> Quantity:
        """Torque at a force on the lever.

        Parameters
        ----------
        lever_force
            Force on the lever.
        helped
            True if the rim turns from the lever end toward the anchor and helps, as the load does
            on a brake rigged for it; False the other way.
        lining_friction
            Friction of a hot or wet lining; that of the brake if left out.
        """
        where = "brake.BandBrake.torque"
        function = _core.brake.band_torque if helped else _core.brake.band_torque_reversed
        friction = (
            self.lining_friction
            if lining_friction is None
            else to_si(where, "lining_friction", lining_friction, "number")
        )
        tension = self.lever_ratio * to_si(where, "lever_force", lever_force, "force")
        torque = function(tension, friction, self.wrap_angle_si, self.rim_diameter_si, self.bands)
        return to_quantity(torque, "torque")

    def check(
        self,
        lever_force: QuantityLike,
        load_torque: QuantityLike,
        required: RequiredFactor | NumberLike,
        *,
        hoisting_torque: QuantityLike | None = None,
        motor_torque: QuantityLike | None = None,
        lining_friction: NumberLike | None = None,
    ) -> list[HoldingFinding]:
        """Hold the brake against a load both ways: the load helping it, and working against it.

        A band rigged for the falling load is helped by it. The second finding is that of a band
        rigged, or a drum spooled, the other way. Arguments as for `torque` and `DiscBrake.check`.
        """
        others = {"hoisting torque": hoisting_torque, "motor torque": motor_torque}
        ways = {"bands, the load helping": True, "bands, the load against them": False}
        return [
            held(
                "brake.BandBrake.check",
                state,
                self.torque(lever_force, helped=helped, lining_friction=lining_friction),
                load_torque,
                required,
                others,
            )
            for state, helped in ways.items()
        ]
