"""The compensator itself: what load, bit and rope see of the heave of the vessel."""

from __future__ import annotations

from dataclasses import dataclass
from functools import partial
from typing import Any, Literal

from ropewalk import _core
from ropewalk._border import (
    NumberLike,
    Quantity,
    QuantityLike,
    arguments,
    to_count,
    to_one,
    to_one_within,
    to_quantity,
)
from ropewalk._compensator_bands import BitWeightBand, LoadBand, RopeMotion
from ropewalk._names import to_name
from ropewalk.errors import InadmissibleError, UnknownEntryError

__all__ = ["Compensator"]

_WHERE = "compensator.Compensator"
_MOUNTINGS = ("block", "crown")

Mounting = Literal["block", "crown"]


@dataclass(frozen=True, init=False, repr=False, slots=True)
class Compensator:
    """A passive heave compensator: a gas spring between the load and the vessel.

    Nothing in it is a permission to work: a compensator holds its load overhead on gas under high
    pressure. Its maker's manual, local rules and licensed people come first.

    Parameters
    ----------
    mounting : {"block", "crown"}
        Between traveling block and hook, or under the crown block.
    stroke
        Whole travel of the load against the vessel.
    effective_area
        Gas volume taken up per travel of the load, see `effective_area`.
    gas_volume
        Gas at mid-stroke: cylinders, bottles, pipes.
    polytropic_exponent
        1 slow; 1.4 fast for an ideal gas; more for nitrogen at high pressure. No default: waves
        lie between, and it is measured or bounded from both sides.
    seal_friction
        Friction each way as a share of the load, 0.02 for 2 percent. No default.
    moving_mass
        Mass that has to be accelerated with the stroke, referred to the load.
    rated_load
        Load it is rated to compensate, from its nameplate; none if left out.

    Raises
    ------
    InadmissibleError
        If there can be no such compensator.

    Examples
    --------
    >>> import ropewalk as rw
    >>> compensator = rw.Compensator(
    ...     "block", "25 ft", "0.1 m**2", "6 m**3", polytropic_exponent=1.2, seal_friction=0.02
    ... )
    >>> band = compensator.load_band("2000 kN", "6 m")
    >>> print(f"{band.lowest.to('kN').magnitude:.0f} to {band.highest.to('kN').magnitude:.0f} kN")
    1846 to 2167 kN
    """

    mounting: str
    stroke_si: float
    effective_area_si: float
    gas_volume_si: float
    polytropic_exponent: float
    seal_friction: float
    moving_mass_si: float
    rated_load_si: float | None

    def __init__(
        self,
        mounting: Mounting,
        stroke: QuantityLike,
        effective_area: QuantityLike,
        gas_volume: QuantityLike,
        *,
        polytropic_exponent: NumberLike,
        seal_friction: NumberLike,
        moving_mass: QuantityLike = "0 kg",
        rated_load: QuantityLike | None = None,
    ) -> None:
        place = to_name(_WHERE, "mounting", mounting)
        if place not in _MOUNTINGS:
            text = f"mounting must be 'block' or 'crown', got {mounting!r}"
            raise UnknownEntryError(f"{_WHERE}(): {text}", _WHERE, "mounting")
        within = partial(to_one_within, _WHERE)
        values = {
            "mounting": place,
            "stroke_si": within("stroke", stroke, "length", 0.0, 40.0, above=True),
            "effective_area_si": to_one(_WHERE, "effective_area", effective_area, "area"),
            "gas_volume_si": to_one(_WHERE, "gas_volume", gas_volume, "volume"),
            "polytropic_exponent": to_one(
                _WHERE, "polytropic_exponent", polytropic_exponent, "number"
            ),
            "seal_friction": within("seal_friction", seal_friction, "number", 0.0, 1.0),
            "moving_mass_si": within("moving_mass", moving_mass, "mass", 0.0, 1e7),
            "rated_load_si": (
                None
                if rated_load is None
                else within("rated_load", rated_load, "force", 0.0, 1e9, above=True)
            ),
        }
        for name, value in values.items():
            object.__setattr__(self, name, value)
        # The gas load fully compressed says what is wrong with the rest, if anything is.
        self._gas_load(1e6, self.stroke_si / 2.0)

    def __repr__(self) -> str:
        return (
            f"Compensator({self.mounting!r}, '{self.stroke_si!r} m', "
            f"'{self.effective_area_si!r} m**2', '{self.gas_volume_si!r} m**3', "
            f"polytropic_exponent={self.polytropic_exponent!r}, "
            f"seal_friction={self.seal_friction!r}, moving_mass='{self.moving_mass_si!r} kg', "
            + ("rated_load=None)" if self.rated_load_si is None else self._rating_text())
        )

    def _rating_text(self) -> str:
        return f"rated_load='{self.rated_load_si!r} N')"

    @property
    def stroke(self) -> Quantity:
        """Whole travel of the load against the vessel."""
        return to_quantity(self.stroke_si, "length")

    @property
    def gas_volume(self) -> Quantity:
        """Gas at mid-stroke."""
        return to_quantity(self.gas_volume_si, "volume")

    @property
    def rated_load(self) -> Quantity | None:
        """Load it is rated to compensate; None if not known."""
        return None if self.rated_load_si is None else to_quantity(self.rated_load_si, "force")

    def _gas_load(self, mean_load: float, travel: Any) -> Any:
        return _core.compensator.gas_load(
            mean_load, self.effective_area_si, self.gas_volume_si, self.polytropic_exponent, travel
        )

    def pressure(self, mean_load: QuantityLike) -> Quantity:
        """Gas pressure that carries a load at mid-stroke, over that outside."""
        (load,) = arguments(f"{_WHERE}.pressure", mean_load=mean_load)
        at_middle = self._gas_load(load, 0.0)  # refuses a load that cannot be
        return to_quantity(at_middle / self.effective_area_si, "stress", like=mean_load)

    def load(self, mean_load: QuantityLike, spring_travel: QuantityLike) -> Quantity:
        """Load without friction at one travel from mid-stroke or many, as `gas_load` has it."""
        load, travel = arguments(f"{_WHERE}.load", mean_load=mean_load, spring_travel=spring_travel)
        return to_quantity(self._gas_load(load, travel), "force", like=mean_load)

    def stiffness(self, mean_load: QuantityLike) -> Quantity:
        """Stiffness at mid-stroke under a load."""
        (load,) = arguments(f"{_WHERE}.stiffness", mean_load=mean_load)
        return to_quantity(self._stiffness(load), "force_per_length", like=mean_load)

    def _stiffness(self, load: Any) -> Any:
        return _core.compensator.gas_stiffness(
            load, self.effective_area_si, self.gas_volume_si, self.polytropic_exponent
        )

    def natural_period(self, mean_load: QuantityLike, hanging_mass: QuantityLike) -> Quantity:
        """Natural period of a string that hangs free, as `natural_period` has it.

        Waves of about this period move the string more than the vessel moves.

        Examples
        --------
        >>> import ropewalk as rw
        >>> compensator = rw.Compensator(
        ...     "block", "25 ft", "0.1 m**2", "6 m**3", polytropic_exponent=1.2, seal_friction=0.02
        ... )
        >>> print(f"{compensator.natural_period('2000 kN', '204 tonne').magnitude:.1f} s")
        14.2 s
        """
        load, mass = arguments(
            f"{_WHERE}.natural_period", mean_load=mean_load, hanging_mass=hanging_mass
        )
        period = _core.compensator.natural_period(mass, self._stiffness(load))
        return to_quantity(period, "time", like=mean_load)

    def load_band(
        self,
        mean_load: QuantityLike,
        heave_height: QuantityLike,
        heave_period: QuantityLike | None = None,
    ) -> LoadBand:
        """Band of loads while the vessel heaves and the load stays where it is.

        Parameters
        ----------
        mean_load
            Load at mid-stroke.
        heave_height
            Heave from crest to trough, about mid-stroke.
        heave_period
            Period of heave, for the force on the moving mass; without it none.

        Returns
        -------
        LoadBand
            Also where the heave is more than the stroke: the band says by how much.
        """
        return self._load_band(f"{_WHERE}.load_band", mean_load, heave_height, heave_period)

    def _load_band(
        self,
        where: str,
        mean_load: QuantityLike,
        heave_height: QuantityLike,
        heave_period: QuantityLike | None = None,
    ) -> LoadBand:
        load = to_one(where, "mean_load", mean_load, "force")
        amplitude = _amplitude(where, heave_height)
        inertia = 0.0
        if heave_period is not None:
            period = to_one(where, "heave_period", heave_period, "time")
            acceleration = _core.compensator.heave_acceleration(2.0 * amplitude, period)
            inertia = self.moving_mass_si * acceleration
        rise = self._gas_load(load, amplitude) - load
        friction = self.seal_friction * load
        over = None
        if self.rated_load_si is not None:
            over = load + rise + friction + inertia - self.rated_load_si
        return LoadBand(
            mean_si=load,
            gas_rise_si=rise,
            gas_fall_si=load - self._gas_load(load, -amplitude),
            friction_si=friction,
            inertia_si=inertia,
            stroke_left_si=self.stroke_si / 2.0 - amplitude,
            over_rating_si=over,
        )

    def bit_weight_band(
        self, mean_load: QuantityLike, heave_height: QuantityLike, string_stiffness: QuantityLike
    ) -> BitWeightBand:
        """Band of weight on bit, gas spring and string in series, seals against the motion.

        Where the heave takes more than the stroke, the compensator stands at its end and the
        string alone gives way for the rest.

        Parameters
        ----------
        mean_load
            Load of the compensator at mid-stroke.
        heave_height
            Heave from crest to trough, about mid-stroke.
        string_stiffness
            Stiffness of the string, see `ropewalk.dynamics.string_stiffness`.

        Examples
        --------
        >>> import ropewalk as rw
        >>> compensator = rw.Compensator(
        ...     "block", "25 ft", "0.1 m**2", "6 m**3", polytropic_exponent=1.2, seal_friction=0.02
        ... )
        >>> band = compensator.bit_weight_band("2000 kN", "6 m", "234.6 kN/m")
        >>> print(f"{band.less.to('kN'):.0f} of {band.uncompensated.to('kN'):.0f}")
        140 kilonewton of 704 kilonewton
        """
        where = f"{_WHERE}.bit_weight_band"
        load = to_one(where, "mean_load", mean_load, "force")
        stiffness = to_one(where, "string_stiffness", string_stiffness, "force_per_length")
        amplitude = _amplitude(where, heave_height)
        up, down = (
            _core.compensator.bit_weight_change(
                load,
                self.effective_area_si,
                self.gas_volume_si,
                self.polytropic_exponent,
                self.seal_friction * load,
                stiffness,
                heave,
            )
            for heave in (amplitude, -amplitude)
        )
        # The string stretches by change/k; what it leaves of the heave, the stroke has to take.
        at_end = stiffness * (amplitude - self.stroke_si / 2.0)
        return BitWeightBand(
            less_si=max(up, at_end),
            more_si=max(-down, at_end),
            uncompensated_si=stiffness * amplitude,
            strokes_out=min(up, -down) < at_end,
        )

    def rope_motion(
        self,
        mean_load: QuantityLike,
        heave_height: QuantityLike,
        lines: int,
        *,
        arm_length: QuantityLike | None = None,
        sheave_diameter: QuantityLike | None = None,
    ) -> RopeMotion:
        """What the drilling line sees of one cycle of heave.

        Block-mounted, block and lines go with the vessel and only the tension changes.
        Crown-mounted, the crown block stays with the string; swinging arms keep the path of fast
        and dead line as long as it is, and the line rolls on their sheaves as far as they turn.

        Parameters
        ----------
        mean_load, heave_height
            As for `load_band`.
        lines
            Number of lines strung.
        arm_length, sheave_diameter
            Swinging arm and its sheave; needed for a crown-mounted compensator.
        """
        where = f"{_WHERE}.rope_motion"
        strung = to_count(where, "lines", lines)
        if not 2 <= strung <= 64:
            raise InadmissibleError(
                f"{where}(): lines = {strung} is outside [2, 64] (ropewalk's guard)", where, "lines"
            )
        band = self._load_band(where, mean_load, heave_height)
        change = band.gas_rise_si + band.gas_fall_si + 2.0 * band.friction_si
        roll = 0.0
        if self.mounting == "crown":
            if arm_length is None or sheave_diameter is None:
                text = "a crown-mounted compensator needs arm_length and sheave_diameter"
                raise InadmissibleError(f"{where}(): {text}", where, "arm_length")
            diameter, arm, travel = arguments(
                where,
                sheave_diameter=sheave_diameter,
                arm_length=arm_length,
                heave_height=heave_height,
            )
            roll = _core.compensator.swing_arm_roll(diameter, arm, travel)
        return RopeMotion(change / strung, 0.0, roll, band.stroke_left_si)


def _amplitude(where: str, heave_height: QuantityLike) -> float:
    """Half of a heave from crest to trough, m."""
    return to_one_within(where, "heave_height", heave_height, "length", 0.0, 100.0) / 2.0
