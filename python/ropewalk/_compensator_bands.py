"""What load, bit and rope see of a heave: the results of `ropewalk.compensator.Compensator`."""

from __future__ import annotations

from dataclasses import dataclass

from ropewalk._border import Quantity, to_quantity

__all__ = ["BitWeightBand", "LoadBand", "RopeMotion"]


@dataclass(frozen=True, slots=True)
class LoadBand:
    """Between which loads a compensator carries its load while the vessel heaves.

    Attributes
    ----------
    mean_si
        Load at mid-stroke, N.
    gas_rise_si, gas_fall_si
        Rise and fall of the gas load at the ends of the heave, N, both positive.
    friction_si
        Seal friction each way, N.
    inertia_si
        Largest force on the moving mass, N; 0 where no period was given.
    stroke_left_si
        Half stroke less the amplitude of heave, m; negative: it strokes out, and the load is no
        longer held.
    over_rating_si
        Highest load less the rated load, N; positive: more than it is rated for. None if the
        compensator has no rating.
    """

    mean_si: float
    gas_rise_si: float
    gas_fall_si: float
    friction_si: float
    inertia_si: float
    stroke_left_si: float
    over_rating_si: float | None

    @property
    def highest(self) -> Quantity:
        """Highest load: the largest value of each part at once, which is on the safe side."""
        return to_quantity(
            self.mean_si + self.gas_rise_si + self.friction_si + self.inertia_si, "force"
        )

    @property
    def lowest(self) -> Quantity:
        """Lowest load, in the same way."""
        return to_quantity(
            self.mean_si - self.gas_fall_si - self.friction_si - self.inertia_si, "force"
        )

    @property
    def share(self) -> float:
        """Largest change over the mean load, 0.06 for 6 percent."""
        rise = self.gas_rise_si + self.friction_si + self.inertia_si
        fall = self.gas_fall_si + self.friction_si + self.inertia_si
        return max(rise, fall) / self.mean_si


@dataclass(frozen=True, slots=True)
class BitWeightBand:
    """How weight on bit changes while the vessel heaves, bit on bottom.

    Attributes
    ----------
    less_si, more_si
        Weight taken off and put on at the ends of the heave, N, both positive. More taken off than
        is on the bit: it lifts off.
    uncompensated_si
        The same without a compensator, the string stretched by the heave, N.
    strokes_out
        The compensator comes to an end of its stroke, and the string takes the rest of the heave.
    """

    less_si: float
    more_si: float
    uncompensated_si: float
    strokes_out: bool

    @property
    def less(self) -> Quantity:
        """Weight taken off the bit, vessel at its highest."""
        return to_quantity(self.less_si, "force")

    @property
    def more(self) -> Quantity:
        """Weight put on the bit, vessel at its lowest."""
        return to_quantity(self.more_si, "force")

    @property
    def uncompensated(self) -> Quantity:
        """Change of weight on bit without a compensator."""
        return to_quantity(self.uncompensated_si, "force")


@dataclass(frozen=True, slots=True)
class RopeMotion:
    """What the drilling line sees of one cycle of heave with a passive compensator.

    Attributes
    ----------
    tension_change_si
        Change of tension in each line between the ends of the heave, N.
    drum_travel_si
        Rope that runs on and off the drum, m: none, the drum stands.
    sheave_roll_si
        Rope that rolls on the sheaves on the swinging arms from one end of the heave to the other,
        m; 0 for a block-mounted compensator, whose lines do not move.
    stroke_left_si
        As in `LoadBand`; negative: it strokes out, and the rest does not hold.
    """

    tension_change_si: float
    drum_travel_si: float
    sheave_roll_si: float
    stroke_left_si: float

    @property
    def tension_change(self) -> Quantity:
        """Change of tension in each line between the ends of the heave."""
        return to_quantity(self.tension_change_si, "force")

    @property
    def sheave_roll(self) -> Quantity:
        """Rope that rolls on the sheaves on the swinging arms."""
        return to_quantity(self.sheave_roll_si, "length")
