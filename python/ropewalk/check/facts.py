"""What is known of one rig: loads, tensions, and results that several rules take."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from dataclasses import dataclass
from functools import cache, cached_property, lru_cache
from typing import TYPE_CHECKING, Any, TypeVar

from ropewalk import _core, si
from ropewalk._units import Q, registry
from ropewalk.check.rule import Absent
from ropewalk.rig.plan import STUCK

if TYPE_CHECKING:
    from ropewalk.rig import Rig

__all__ = ["Facts", "LoadCase", "NoLoad"]

Result = TypeVar("Result")

#: Standard gravity, m/s².
_GRAVITY = 9.80665


@dataclass(frozen=True, slots=True)
class LoadCase:
    """One hook load the hoist must carry.

    Attributes
    ----------
    name
        The operation, or where else the load comes from.
    service
        Service of the table of minimum design factors.
    hook_load
        Everything on the lines, with drag, N; at rest or at constant speed.
    string
        Name of the string that hangs there; empty if the load is not that of a string.
    acceleration
        Of the block while this load is hoisted, m/s²; 0 where the plan does not say.
    """

    name: str
    service: str
    hook_load: float
    string: str = ""
    acceleration: float = 0.0

    @property
    def in_motion(self) -> float:
        """Hook load while the block speeds up, N; drag is taken for weight, on the safe side."""
        return self.hook_load * (1.0 + self.acceleration / _GRAVITY)


class NoLoad(Absent):
    """The file has no plan and asks for no load."""

    def __init__(self) -> None:
        super().__init__("operation")
        self.args = ("the file has no [[operation]] and no limits.hook_load: no load",)


class Facts:
    """A rig and what the rules compute from it, each once.

    Parameters
    ----------
    rig
        The rig, in SI.
    """

    def __init__(self, rig: Rig) -> None:
        self.rig = rig
        self._known: dict[str, Any] = {}

    def once(self, name: str, compute: Callable[[], Result]) -> Result:
        """Return what `compute` gives, or gave before under this name; errors are kept too."""
        if name not in self._known:
            try:
                self._known[name] = compute()
            except Exception as error:
                self._known[name] = error
        found = self._known[name]
        if isinstance(found, Exception):
            raise found
        return found  # type: ignore[no-any-return]

    def need(self, section: str) -> Any:
        """Return a table of the rig.

        Raises
        ------
        Absent
            If the file does not have it.
        """
        found = getattr(self.rig, section)
        if found is None:
            raise Absent(section)
        return found

    @cached_property
    def loads(self) -> tuple[LoadCase, ...]:
        """The heaviest load of every operation, of the allowed overpull, and the one asked for."""
        rig = self.rig
        cases = [
            LoadCase(
                one.title,
                one.service,
                one.heaviest_hook_load(rig.block.weight),
                one.string_name,
                one.block_acceleration,
            )
            for one in rig.operations
            if one.string is not None
        ]
        if rig.limits.overpull:
            # A string may stick whatever is done with it; casing is pulled where nothing else is.
            free = [one for one in cases if one.service != STUCK]
            drilling = [one for one in free if one.service == "rotary drilling"]
            if free:
                stuck = max(drilling or free, key=lambda case: case.hook_load)
                pull = stuck.hook_load + rig.limits.overpull
                cases.append(LoadCase("pull on a stuck string", STUCK, pull, stuck.string))
        asked = rig.limits.hook_load
        if asked is not None:
            cases.append(LoadCase("hook load asked for", "hoisting other", asked))
        return tuple(cases)

    @property
    def largest(self) -> LoadCase:
        """The heaviest of `loads`.

        Raises
        ------
        Absent
            If the file has no plan and asks for no load.
        """
        if not self.loads:
            raise NoLoad
        return max(self.loads, key=lambda case: case.hook_load)

    @property
    def by_service(self) -> tuple[LoadCase, ...]:
        """The heaviest load of each service."""
        heaviest: dict[str, LoadCase] = {}
        for case in self.loads:
            known = heaviest.get(case.service)
            if known is None or case.hook_load > known.hook_load:
                heaviest[case.service] = case
        if not heaviest:
            raise NoLoad
        return tuple(heaviest.values())

    def fast_line(self, hook_load: float) -> float:
        """Tension of the fast line while a load is hoisted, N."""
        reeving = self.rig.reeving
        return float(
            si.reeving.fast_line_tension(
                hook_load, reeving.lines, reeving.sheave_friction, reeving.lead_sheaves
            )
        )

    def text(self, value: float, role: str) -> str:
        """Return an SI number with its unit, for the inputs of a verdict."""
        return text(value, role)


def text(value: float, role: str) -> str:
    """Return an SI number with a unit of a handy size.

    >>> text(612345.0, "force"), text(0.034925, "length"), text(0.0, "length"), text(8.5, "length")
    ('612.3 kN', '34.92 mm', '0 m', '8.5 m')
    """
    if role == "length" and 0.0 < abs(value) < 1.0:
        return f"{1e3 * value:.4g} mm"
    for factor, unit in _LARGER.get(role, ()):
        if abs(value) >= factor:
            return f"{value / factor:.4g} {unit}"
    return f"{value:.4g} {_unit(role)}".rstrip()


@cache
def _unit(role: str) -> str:
    from ropewalk._signature import ROLES

    return ROLES[role].si_unit.replace("**2", "²").replace("**3", "³").replace("*", "·")


def si_of(value: float, unit: str) -> float:
    """SI number of a value from a table of ropewalk."""
    return _si_of(value, unit, registry().Quantity)


@lru_cache(maxsize=256)
def _si_of(value: float, unit: str, _: type[Any]) -> float:
    return float(Q(value, unit).to_base_units().magnitude)


@cache
def practice_table(name: str) -> tuple[Mapping[str, Any], ...]:
    """Rows of a table of the core, read once."""
    return tuple(_core.table(name))


#: Units that read better than the coherent one, largest first.
_LARGER: dict[str, tuple[tuple[float, str], ...]] = {
    "force": ((1e3, "kN"),),
    "power": ((1e3, "kW"),),
    "energy": ((1e9, "GJ"), (1e6, "MJ")),
    "stress": ((1e6, "MPa"),),
    "torque": ((1e3, "kN·m"),),
}
