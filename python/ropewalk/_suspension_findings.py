"""What the load path of a rig file has wrong: elevators by string, parts beyond their rating."""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING

from ropewalk._border import Quantity, to_quantity
from ropewalk._suspension_rig import rig_margins
from ropewalk.errors import InadmissibleError

if TYPE_CHECKING:
    from ropewalk.rig import Rig

__all__ = ["ElevatorLoad", "LoadPathFinding", "rig_elevators", "rig_findings"]


@dataclass(frozen=True, slots=True)
class ElevatorLoad:
    """The largest load of the plan on the elevator of one string.

    Attributes
    ----------
    string
        Name of the string.
    elevator
        Type of the elevator, or the name of the part that carries the string.
    operation
        What loads it most.
    load_si
        String in mud with its drag and the pull allowed on it, and the elevator's own weight, N.
    rating_si
        Its load rating, N.
    """

    string: str
    elevator: str
    operation: str
    load_si: float
    rating_si: float

    @property
    def load(self) -> Quantity:
        """Largest load."""
        return to_quantity(self.load_si, "force")

    @property
    def rating(self) -> Quantity:
        """Load rating."""
        return to_quantity(self.rating_si, "force")

    @property
    def margin(self) -> Quantity:
        """Rating less load; negative: overloaded."""
        return to_quantity(self.rating_si - self.load_si, "force")


@dataclass(frozen=True, slots=True)
class LoadPathFinding:
    """One thing wrong with the load path of a rig.

    Attributes
    ----------
    kind
        ``"elevator overloaded"``, ``"part overloaded"`` or ``"bearing governs"``.
    part
        What it concerns.
    text
        What it is, with its numbers.
    """

    kind: str
    part: str
    text: str


def rig_elevators(rig: Rig) -> list[ElevatorLoad]:
    """Largest load of the plan on the elevator of every string.

    A string without an elevator of its own in ``[[suspension.elevator]]`` hangs in the last part of
    ``[suspension]``. A kelly hangs above the elevator and is left out; the overpull allowed counts
    for the string of the heaviest trip. Static: what is dynamic comes on top.

    Parameters
    ----------
    rig
        The hoist; its file has ``[suspension]``.

    Raises
    ------
    InadmissibleError
        If the rig has no suspension.

    Examples
    --------
    >>> import ropewalk as rw
    >>> rig = rw.load_rig(rw.rig.example("rig7"))
    >>> for one in rw.suspension.rig_elevators(rig):
    ...     print(f"{one.string}: {one.elevator}, {one.load.to('kip'):.0f}")
    drilling: tapered 18 degree center latch, 392 kip
    production_casing: slip type, 328 kip
    """
    where = "suspension.rig_elevators"
    if rig.suspension is None:
        text = f"{rig.name} has no suspension: its file has no [suspension]"
        raise InadmissibleError(f"{where}(): {text}", where, "rig")
    last = rig.suspension.parts[-1]
    of_string = {one.string: one for one in rig.suspension.elevators}
    largest: dict[str, tuple[float, str]] = {}

    def meet(string: str, load: float, operation: str) -> None:
        if load > largest.get(string, (-1.0, ""))[0]:
            largest[string] = (load, operation)

    for one in rig.operations:
        if one.string is not None:
            below = one.heaviest_hook_load(0.0) - one.kelly_weight
            meet(one.string_name, below, one.title)
    trip = rig.heaviest_trip
    stuck = rig.stuck_hook_load - rig.block.weight
    meet(trip.string_name, stuck, f"{trip.title}, with the overpull allowed")
    found = []
    for string, (load, operation) in largest.items():
        own = of_string.get(string)
        name, rating, weight = (
            (last.name, last.rating, last.weight)
            if own is None
            else (own.kind, own.rated_load, own.weight)
        )
        found.append(ElevatorLoad(string, name, operation, load + weight, rating))
    return found


def rig_findings(rig: Rig) -> list[LoadPathFinding]:
    """What the load path of a rig has wrong under the largest loads of its plan.

    Elevators below the load of their string, parts of the load path beyond their rating, and parts
    whose bearing carries less than their nameplate. An empty list is no permission to lift.

    Parameters
    ----------
    rig
        The hoist; its file has ``[suspension]``.

    Raises
    ------
    InadmissibleError
        If the rig has no suspension, or a mast but an odd number of lines.

    Examples
    --------
    >>> import ropewalk as rw
    >>> rw.suspension.rig_findings(rw.load_rig(rw.rig.example("rig7")))
    []
    """
    elevators = rig_elevators(rig)
    found = [_about_elevator(one) for one in elevators if one.load_si > one.rating_si]
    margins = rig_margins(rig)
    assert rig.suspension is not None
    # The last part is judged by the strings it carries, above.
    last = rig.suspension.parts[-1].name
    for name, load, rating in zip(margins.names, margins.load_si, margins.rating_si, strict=True):
        if load > rating and name != last:
            text = (
                f"{name}: {load / 1e3:.0f} kN at a hook load of {margins.hook_load_si / 1e3:.0f} "
                f"kN, rated {rating / 1e3:.0f} kN, {(load - rating) / 1e3:.0f} kN too much"
            )
            found.append(LoadPathFinding("part overloaded", name, text))
    nameplates = {one.name: one.rated_load for one in rig.suspension.parts}
    nameplates["traveling block"] = rig.block.sheaves.rated_load
    for name, rating in zip(margins.names, margins.rating_si, strict=True):
        if name in nameplates and rating < nameplates[name]:
            text = (
                f"{name}: its bearing is rated {rating / 1e3:.0f} kN, less than the "
                f"{nameplates[name] / 1e3:.0f} kN of its nameplate; the bearing governs"
            )
            found.append(LoadPathFinding("bearing governs", name, text))
    return found


def _about_elevator(one: ElevatorLoad) -> LoadPathFinding:
    text = (
        f"{one.elevator} of {one.string}: {one.load_si / 1e3:.0f} kN ({one.operation}), rated "
        f"{one.rating_si / 1e3:.0f} kN, {(one.load_si - one.rating_si) / 1e3:.0f} kN too much"
    )
    return LoadPathFinding("elevator overloaded", one.elevator, text)
