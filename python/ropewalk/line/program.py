"""The program by which a line is slipped and cut."""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING, Any, Literal

import numpy as np
import numpy.typing as npt

from ropewalk._border import Quantity, QuantityLike, to_quantity, to_si
from ropewalk.errors import InadmissibleError

if TYPE_CHECKING:
    from ropewalk.line.campaign import Campaign
    from ropewalk.rig import Practice

_WHERE = "SlipCutProgram"
#: Slips before a cut; anything more is a slip of the pen.
_MOST_SLIPS = 10_000
#: What may be counted between slips.
Trigger = Literal["work", "trips", "time", "damage"]


@dataclass(frozen=True, init=False, repr=False)
class SlipCutProgram:
    """When and how much line is slipped and cut.

    A slip is made at the first place where the campaign allows a stop once the interval since the
    last slip is full; every so many slips, what they brought onto the drum is cut.

    Parameters
    ----------
    slip : length
        Line slipped each time.
    cut : length
        Line cut each time: a whole number of slips, so that the drum neither fills nor empties.
    every : energy, optional
        Work of the line between slips.
    trips : number, optional
        Round trips between slips.
    time : time, optional
        Time between slips; the campaign needs dates.
    damage : number, optional
        Damage that any one place may take on between slips, 1 being discard: what it has gained
        since the last slip, whatever it had before.

    Exactly one of `every`, `trips`, `time` and `damage` is given.

    Raises
    ------
    UnitError, InadmissibleError
        For an argument without its unit, or a program that cannot be.

    Examples
    --------
    Lyons (1996), p. 614: 80 ft cut every 800 ton-miles, in four slips of 20 ft:

    >>> import ropewalk as rw
    >>> program = rw.SlipCutProgram(slip="20 ft", cut="80 ft", every="200 ton_mile")
    >>> program.slips_per_cut, f"{program.goal.to('ton_mile/ft').magnitude:.1f}"
    (4, '10.0')
    """

    slip_si: float
    cut_si: float
    trigger: Trigger
    interval_si: float

    def __init__(
        self,
        slip: QuantityLike,
        cut: QuantityLike,
        every: QuantityLike | None = None,
        *,
        trips: float | None = None,
        time: QuantityLike | None = None,
        damage: float | None = None,
    ) -> None:
        given = {"work": every, "trips": trips, "time": time, "damage": damage}
        chosen = [name for name, value in given.items() if value is not None]
        if len(chosen) != 1:
            text = (
                "give exactly one of every (work), trips, time and damage: when to slip; got "
                f"{', '.join(chosen) or 'none'}"
            )
            raise InadmissibleError(f"{_WHERE}(): {text}", _WHERE, "every")
        trigger = chosen[0]
        role = {"work": "energy", "time": "time"}.get(trigger, "number")
        name = "every" if trigger == "work" else trigger
        interval = float(to_si(_WHERE, name, given[trigger], role))
        values = {
            "slip": float(to_si(_WHERE, "slip", slip, "length")),
            "cut": float(to_si(_WHERE, "cut", cut, "length")),
            name: interval,
        }
        for field, value in values.items():
            if not 0.0 < value < np.inf:
                text = f"{field} = {value:.6g} must be more than 0 and finite"
                raise InadmissibleError(f"{_WHERE}(): {text}", _WHERE, field)
        slips = values["cut"] / values["slip"]
        if abs(slips - round(slips)) > 0.01 or round(slips) < 1:
            text = (
                f"cut = {values['cut']:.6g} m is {slips:.3f} slips of {values['slip']:.6g} m; it "
                "must be a whole number of them, as the slips bring onto the drum what is cut"
            )
            raise InadmissibleError(f"{_WHERE}(): {text}", _WHERE, "cut")
        if slips > _MOST_SLIPS + 0.5:
            text = (
                f"cut = {values['cut']:.6g} m is {slips:.6g} slips of {values['slip']:.6g} m; "
                f"{_MOST_SLIPS} at most (ropewalk's guard)"
            )
            raise InadmissibleError(f"{_WHERE}(): {text}", _WHERE, "cut")
        object.__setattr__(self, "slip_si", values["cut"] / round(slips))
        object.__setattr__(self, "cut_si", values["cut"])
        object.__setattr__(self, "trigger", trigger)
        object.__setattr__(self, "interval_si", interval)

    @classmethod
    def of_practice(cls, practice: Practice) -> SlipCutProgram:
        """Program a rig file gives as its present practice."""
        slip, cut = to_quantity(practice.slip, "length"), to_quantity(practice.cut, "length")
        if practice.every is not None:
            return cls(slip, cut, to_quantity(practice.every, "energy"))
        return cls(slip, cut, trips=practice.every_trips)

    @classmethod
    def by_goal(
        cls, goal: QuantityLike, cut: QuantityLike, *, slips_per_cut: int = 1
    ) -> SlipCutProgram:
        """Fixed work per length cut: the handbook's way, with the goal number of the user.

        Parameters
        ----------
        goal : energy per length
            Work of the line per length cut, ``"10 ton_mile/ft"``.
        cut : length
            Line cut each time.
        slips_per_cut : int
            In how many equal slips.

        Examples
        --------
        >>> import ropewalk as rw
        >>> program = rw.SlipCutProgram.by_goal("10 ton_mile/ft", "80 ft", slips_per_cut=4)
        >>> f"{program.every.to('ton_mile').magnitude:.0f}"
        '200'
        """
        per_length = float(to_si(f"{_WHERE}.by_goal", "goal", goal, "force"))
        length = float(to_si(f"{_WHERE}.by_goal", "cut", cut, "length"))
        every = to_quantity(per_length * length / slips_per_cut, "energy")
        return cls(
            to_quantity(length / slips_per_cut, "length"), to_quantity(length, "length"), every
        )

    @property
    def slips_per_cut(self) -> int:
        """Slips that make one cut."""
        return round(self.cut_si / self.slip_si)

    @property
    def slip(self) -> Quantity:
        """Line slipped each time."""
        return to_quantity(self.slip_si, "length")

    @property
    def cut(self) -> Quantity:
        """Line cut each time."""
        return to_quantity(self.cut_si, "length")

    @property
    def every(self) -> Any:
        """Interval between slips: an energy, a time, or a number of trips or of damage."""
        role = {"work": "energy", "time": "time"}.get(self.trigger)
        return self.interval_si if role is None else to_quantity(self.interval_si, role)

    @property
    def goal(self) -> Quantity:
        """Work per length cut; only of a program that counts work."""
        if self.trigger != "work":
            text = f"a program by {self.trigger} has no work per length cut"
            raise InadmissibleError(f"{_WHERE}.goal: {text}", _WHERE, "every")
        return to_quantity(self.interval_si / self.slip_si, "force")

    @property
    def title(self) -> str:
        """One line for tables and legends."""
        unit, factor = {
            "work": ("GJ", 1e-9),
            "trips": ("round trips", 1.0),
            "time": ("days", 1.0 / 86400.0),
            "damage": ("damage", 1.0),
        }[self.trigger]
        return (
            f"slip {self.slip_si:.1f} m every {self.interval_si * factor:.3g} {unit}, "
            f"cut {self.cut_si:.1f} m"
        )

    def __repr__(self) -> str:
        return f"<SlipCutProgram: {self.title}>"

    def _core(self, campaign: Campaign) -> dict[str, Any]:
        """Arguments of the core."""
        return {**self._core_numbers(), "clock": clock_of(campaign, self.trigger)}

    def _core_numbers(self) -> dict[str, Any]:
        """Those of them that do not depend on the campaign."""
        return {
            "trigger": "damage" if self.trigger == "damage" else "clock",
            "interval": self.interval_si,
            "slip": self.slip_si,
            "slips_per_cut": self.slips_per_cut,
            "cut": self.cut_si,
        }


#: Arguments of the core for a line that is slipped only where the campaign says so.
NO_PROGRAM: dict[str, Any] = {
    "trigger": "none",
    "clock": np.empty(0),
    "interval": 0.0,
    "slip": 0.0,
    "slips_per_cut": 1,
    "cut": 0.0,
}


def clock_of(campaign: Campaign, trigger: Trigger) -> npt.NDArray[np.float64]:
    """What every row of a campaign adds to the clock of a program.

    Raises
    ------
    InadmissibleError
        If the campaign has no dates and the program goes by time.
    """
    if trigger == "work":
        return np.ascontiguousarray(campaign.work_si)
    if trigger == "trips":
        return np.diff(campaign.trips, prepend=0.0)
    if trigger == "damage":
        return np.empty(0)
    if not np.isfinite(campaign.time_si).all():
        row = int(np.argmin(np.isfinite(campaign.time_si)))
        text = (
            f"row {row} of the campaign has no date: a program by time needs start and end of "
            "every operation"
        )
        raise InadmissibleError(f"{_WHERE}(): {text}", _WHERE, "time")
    return np.diff(campaign.time_si, prepend=0.0)
