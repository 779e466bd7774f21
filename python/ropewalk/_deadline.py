"""The weight indicator and the anchor: the classes of `ropewalk.deadline`."""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING

from ropewalk import _core
from ropewalk._border import (
    NumberLike,
    Quantity,
    QuantityLike,
    to_count,
    to_one_within,
    to_quantity,
    to_si,
)
from ropewalk._reeving import Reeving
from ropewalk._tensions import Motion
from ropewalk.errors import InadmissibleError, UnitError

if TYPE_CHECKING:
    from typing import Any

    from ropewalk.rig import Rig

__all__ = ["Anchor", "AnchorCheck", "WeightIndicator", "check_anchor"]

_INDICATOR = "deadline.WeightIndicator"
_ANCHOR = "deadline.Anchor"
_WORKING_STRENGTH_RULES = "Wyoming servicing"


@dataclass(frozen=True, init=False, slots=True)
class WeightIndicator:
    r"""A weight indicator at the dead line: it multiplies the tension there by a number of lines.

    .. math:: W_\mathrm{ind} = N_\mathrm{set} T_\mathrm{dead}

    At rest the trade takes all lines alike, so that it shows the hook load; how far that may be off
    says `hook_load_at_rest`. While the blocks move, sheave friction makes it show less (hoisting)
    or more (lowering). The tensions are those of `Reeving.tensions`, each sheave by itself, the
    dead-line sheave fixed or turning as the reeving says.

    Parameters
    ----------
    reeving
        How the line is strung; an even number of lines, since an odd one has no dead line.
    lines_set
        Number of lines the indicator is set for; that of the reeving if left out.

    Raises
    ------
    InadmissibleError
        For an odd number of lines, or a setting that cannot be.

    Examples
    --------
    >>> import ropewalk as rw
    >>> indicator = rw.WeightIndicator(rw.Reeving(10, "roller"))
    >>> print(f"{indicator.reading('400 kip', 'hoisting').to('kip'):.1f}")
    333.2 kip
    >>> print(f"{indicator.hook_load('474.2 kip', 'lowering').to('kip'):.1f}")
    400.0 kip
    """

    reeving: Reeving
    lines_set: int

    def __init__(self, reeving: Reeving, lines_set: int | None = None) -> None:
        if not isinstance(reeving, Reeving):
            text = f"reeving must be a ropewalk.Reeving, got {reeving!r}"
            raise UnitError(f"{_INDICATOR}(): {text}", _INDICATOR, "reeving")
        count = reeving.lines if lines_set is None else to_count(_INDICATOR, "lines_set", lines_set)
        object.__setattr__(self, "reeving", reeving)
        object.__setattr__(self, "lines_set", max(-(2**31), min(count, 2**31 - 1)))
        _ = self._indicator  # the core refuses one that cannot be

    @classmethod
    def of_rig(cls, rig: Rig) -> WeightIndicator:
        """Weight indicator of a rig: its reeving, and the lines set in ``[deadline]`` if given."""
        section = rig.deadline
        return cls(rig.reeving, None if section is None else section.lines_set)

    @property
    def _indicator(self) -> Any:
        """The computing half, made anew: cheap, and this stays plain data."""
        return _core.deadline.Indicator(self.reeving._arrangement, self.lines_set)

    def ratio(self, motion: Motion) -> float:
        """Reading over true hook load.

        Parameters
        ----------
        motion : {"static", "hoisting", "lowering"}
            What the blocks do.
        """
        return float(self._indicator.ratio(str(motion)))

    def reading(self, hook_load: QuantityLike, motion: Motion) -> Quantity:
        """What the indicator shows under a hook load, one or many.

        Parameters
        ----------
        hook_load
            Everything that hangs on the lines.
        motion : {"static", "hoisting", "lowering"}
            What the blocks do, slowly.
        """
        load = self._force("reading", "hook_load", hook_load)
        return to_quantity(load * self.ratio(motion), "force", hook_load)

    def hook_load(self, reading: QuantityLike, motion: Motion) -> Quantity:
        """True hook load behind a reading, one or many.

        Parameters
        ----------
        reading
            What the indicator shows.
        motion : {"static", "hoisting", "lowering"}
            What the blocks do, slowly.
        """
        shown = self._force("hook_load", "reading", reading)
        return to_quantity(shown / self.ratio(motion), "force", reading)

    def hook_load_at_rest(self, reading: QuantityLike) -> tuple[Quantity, Quantity]:
        """Least and largest hook load behind a reading at rest, one or many.

        Blocks that have stopped keep friction in their sheaves, and nobody sees which way: the
        tensions lie anywhere from those of lowering to those of hoisting. `hook_load` with
        ``"static"`` is the custom of the trade, between the two.

        Parameters
        ----------
        reading
            What the indicator shows.

        Examples
        --------
        >>> import ropewalk as rw
        >>> indicator = rw.WeightIndicator(rw.Reeving(10, "roller"))
        >>> least, largest = indicator.hook_load_at_rest("400 kip")
        >>> print(f"{least.to('kip'):.0f} to {largest.to('kip'):.0f}")
        337 kip to 480 kip
        """
        return self.hook_load(reading, "lowering"), self.hook_load(reading, "hoisting")

    def error_of(self, believed: WeightIndicator, motion: Motion) -> float:
        """Error of the hook load that is worked out with what is believed of this indicator.

        Parameters
        ----------
        believed
            The indicator as it is taken to be: with another friction, another number of lines, the
            dead-line sheave fixed instead of turning.
        motion : {"static", "hoisting", "lowering"}
            What the blocks do, slowly.

        Returns
        -------
        error
            Hook load worked out, less the true one, over the true one.

        Examples
        --------
        Ten lines, but the indicator was left on eight, and friction is not thought of:

        >>> import ropewalk as rw
        >>> actual = rw.WeightIndicator(rw.Reeving(10, 1.04), lines_set=8)
        >>> believed = rw.WeightIndicator(rw.Reeving(8, 1.0))
        >>> print(f"{100 * actual.error_of(believed, 'static'):.1f} %")
        -20.0 %
        >>> print(f"{100 * actual.error_of(believed, 'hoisting'):.1f} %")
        -33.4 %
        """
        return float(self._indicator.error_of(believed._indicator, str(motion)))

    def _force(self, method: str, name: str, value: Any) -> Any:
        where = f"{_INDICATOR}.{method}"
        si = to_si(where, name, value, "force")
        # The limits of the reeving for a hook load, and its refusal of what is not finite.
        self.reeving._arrangement.tensions("static", si)
        return si


@dataclass(frozen=True, init=False, slots=True)
class Anchor:
    """A dead-line anchor: wraps on its drum, and clamps that hold what the wraps leave.

    Friction and what a clamp holds are published for no anchor: both are yours to give, from the
    maker or a test. The maker's manual comes before anything computed here.

    Parameters
    ----------
    wraps
        Laps of the line on the anchor drum.
    friction
        Between rope and anchor drum.
    clamp_holding
        Pull that one clamp holds.
    clamps
        Equal clamps behind the wraps.

    Raises
    ------
    InadmissibleError
        For an anchor that cannot be.

    Examples
    --------
    >>> import ropewalk as rw
    >>> anchor = rw.deadline.Anchor(wraps=4, friction=0.1, clamp_holding="10 kip")
    >>> print(f"{anchor.capacity.to('kip'):.1f}")
    123.5 kip
    >>> print(f"{anchor.left_for_clamps('50 kip').to('lbf'):.0f}")
    4050 force_pound
    """

    wraps: float
    friction: float
    clamp_holding_si: float
    clamps: int

    def __init__(
        self,
        wraps: NumberLike,
        friction: NumberLike,
        clamp_holding: QuantityLike,
        clamps: int = 1,
    ) -> None:
        values = {
            "wraps": to_si(_ANCHOR, "wraps", wraps, "number"),
            "friction": to_si(_ANCHOR, "friction", friction, "number"),
            "clamp_holding_si": to_si(_ANCHOR, "clamp_holding", clamp_holding, "force"),
        }
        for name, value in values.items():
            object.__setattr__(self, name, float(value))
        object.__setattr__(self, "clamps", to_count(_ANCHOR, "clamps", clamps))
        _ = self.capacity_si  # the core refuses one that cannot be

    @property
    def clamp_holding(self) -> Quantity:
        """Pull that one clamp holds."""
        return to_quantity(self.clamp_holding_si, "force")

    @property
    def capacity_si(self) -> float:
        """Pull at which the line slips through, N."""
        return float(
            _core.deadline.anchor_capacity(
                self.clamps, self.clamp_holding_si, self.friction, self.wraps
            )
        )

    @property
    def capacity(self) -> Quantity:
        """Pull at which the line slips through."""
        return to_quantity(self.capacity_si, "force")

    def left_for_clamps(self, dead_line_tension: QuantityLike) -> Quantity:
        """Tension that the wraps leave for the clamps to hold, one or many."""
        where = f"{_ANCHOR}.left_for_clamps"
        tension = to_si(where, "dead_line_tension", dead_line_tension, "force")
        left = _core.drum.clamp_force(tension, self.friction, self.wraps)
        return to_quantity(left, "force", dead_line_tension)


@dataclass(frozen=True, slots=True)
class AnchorCheck:
    """Whether the anchor of a rig holds its plan; a finding, not a permission to lift.

    Attributes
    ----------
    pull_si
        Largest tension of the dead line: lowering the hook load it was checked for, N.
    capacity_si
        Pull at which the line slips through the anchor, N.
    breaking_force_si
        Of the line, N.
    working_strength_si
        Breaking force over the least design factor that any operation has in the rules that ask for
        an anchor as strong as the working strength of the line, N.
    """

    pull_si: float
    capacity_si: float
    breaking_force_si: float
    working_strength_si: float

    @property
    def margin(self) -> float:
        """Capacity over pull."""
        return self.capacity_si / self.pull_si

    @property
    def holds(self) -> bool:
        """Whether the capacity is at least the pull."""
        return self.capacity_si >= self.pull_si

    @property
    def as_strong_as_the_line(self) -> bool:
        """Whether the capacity is at least the working strength of the line."""
        return self.capacity_si >= self.working_strength_si

    @property
    def text(self) -> str:
        """The finding in one line, with its numbers."""
        word = "holds" if self.holds else "does not hold"
        working = "above" if self.as_strong_as_the_line else "below"
        breaking = "above" if self.capacity_si >= self.breaking_force_si else "below"
        return (
            f"the anchor {word} the largest dead-line pull of {self.pull_si / 1e3:.0f} kN: it "
            f"slips at {self.capacity_si / 1e3:.0f} kN, {working} the working strength of the "
            f"line, {self.working_strength_si / 1e3:.0f} kN, and {breaking} its breaking force, "
            f"{self.breaking_force_si / 1e3:.0f} kN; the maker's manual and local rules come first"
        )


def check_anchor(rig: Rig, hook_load: QuantityLike | None = None) -> AnchorCheck:
    """Hold the anchor of a rig against the largest pull of its plan.

    A regulation asks for an anchor at least as strong as the working strength of the line (Wyoming
    Administrative Code, OSHA oil and gas well servicing, 6-2(a)); what the working strength is, it
    leaves to the reader. Here it is the most that the least design factor of the same rules,
    6-2(b), allows.

    Parameters
    ----------
    rig
        A rig with ``[deadline]``.
    hook_load
        Load to hold it against; the largest of the plan, the allowed pull on a stuck string
        included, if left out.

    Raises
    ------
    InadmissibleError
        If the rig has no ``[deadline]``, an odd number of lines, or the load is not one force,
        more than 0.

    Examples
    --------
    >>> import ropewalk as rw
    >>> check = rw.deadline.check_anchor(rw.load_rig(rw.rig.example("rig7")))
    >>> check.holds
    True
    """
    section = rig.deadline
    if section is None:
        text = f"{rig.name} has no [deadline]"
        raise InadmissibleError(f"deadline.check_anchor(): {text}", "deadline.check_anchor", "rig")
    share = WeightIndicator(rig.reeving).ratio("lowering") / rig.reeving.lines
    if hook_load is None:
        largest = rig.largest_hook_load
    else:
        largest = to_one_within(
            "deadline.check_anchor", "hook_load", hook_load, "force", 0.0, 1e9, above=True
        )
    breaking_force = rig.rope.breaking_force.magnitude
    least_factor = min(
        row["value"]
        for row in _core.design_factor.minimums()
        if row["standard"] == _WORKING_STRENGTH_RULES
    )
    return AnchorCheck(
        pull_si=share * largest,
        capacity_si=section.anchor.capacity_si,
        breaking_force_si=breaking_force,
        working_strength_si=breaking_force / least_factor,
    )
