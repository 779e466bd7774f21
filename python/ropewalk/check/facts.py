"""What is known of one rig: loads, tensions, and results that several rules take."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from dataclasses import dataclass
from functools import cache, cached_property, lru_cache
from typing import TYPE_CHECKING, Any, TypeVar

from ropewalk import _core, si
from ropewalk._units import Q, registry
from ropewalk.check.rule import Absent, NotApplicable
from ropewalk.rig.plan import STUCK

if TYPE_CHECKING:
    from ropewalk.rig import Rig

__all__ = ["Facts", "LoadCase"]

Result = TypeVar("Result")


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
        Everything on the lines, with drag, N.
    """

    name: str
    service: str
    hook_load: float


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
            LoadCase(one.title, one.service, one.heaviest_hook_load(rig.block.weight))
            for one in rig.operations
            if one.string is not None
        ]
        trips = any(one.kind == "round trip" for one in rig.operations)
        if trips and rig.limits.overpull:
            cases.append(LoadCase("pull on a stuck string", STUCK, rig.stuck_hook_load))
        asked = rig.limits.hook_load
        if asked is not None:
            cases.append(LoadCase("hook load asked for", "hoisting other", asked))
        return tuple(cases)

    @property
    def largest(self) -> LoadCase:
        """The heaviest of `loads`.

        Raises
        ------
        NotApplicable
            If the file has no plan and asks for no load.
        """
        if not self.loads:
            raise NotApplicable("the file has no [[operation]] and no limits.hook_load: no load")
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
            raise NotApplicable("the file has no [[operation]] and no limits.hook_load: no load")
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
    """Return an SI number with its unit, ``"612.3 kN"``."""
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
