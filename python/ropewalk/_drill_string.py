"""A drill string as it hangs in mud: the classes of `ropewalk.drillstring`."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass
from typing import Any, Literal, TypeAlias

from ropewalk import _core
from ropewalk._border import Quantity, QuantityLike, to_quantity, to_si
from ropewalk._names import to_name
from ropewalk.errors import InadmissibleError

#: What the string does while its load is read.
Operation: TypeAlias = Literal["hoisting", "lowering", "rotating"]


@dataclass(frozen=True, init=False, repr=False, slots=True)
class Section:
    """Length of one kind of pipe.

    Parameters
    ----------
    name
        What it is, for people.
    length
        Its length, ``"9500 ft"``.
    mass_per_length
        In air, tool joints or couplings included, ``"20.85 lb/ft"``.

    Examples
    --------
    >>> import ropewalk as rw
    >>> rw.drillstring.Section("drill collars", "500 ft", "150 lb/ft").mass.to("lb").magnitude
    75000.0
    """

    name: str
    length_si: float
    mass_per_length_si: float

    def __init__(self, name: str, length: QuantityLike, mass_per_length: QuantityLike) -> None:
        where = "drillstring.Section"
        length_si = to_si(where, "length", length, "length")
        mass_per_length_si = to_si(where, "mass_per_length", mass_per_length, "mass_per_length")
        _core.drillstring.check_section(length_si, mass_per_length_si)
        object.__setattr__(self, "name", str(name))
        object.__setattr__(self, "length_si", float(length_si))
        object.__setattr__(self, "mass_per_length_si", float(mass_per_length_si))

    @classmethod
    def from_table(cls, designation: str, length: QuantityLike, name: str = "") -> Section:
        """Section of a pipe of the table `tubulars`.

        Parameters
        ----------
        designation
            As in the table, ``"DP 5 in 19.50 E75 NC50"``, ``"DC 8 x 2 13/16 in"``.
        length
            Its length.
        name
            What it is, for people; the designation if left out.
        """
        entry = to_name("drillstring.Section.from_table", "designation", designation)
        mass_per_length = _core.drillstring.tubular_mass_per_length(entry)
        return cls(name or designation, length, to_quantity(mass_per_length, "mass_per_length"))

    def __repr__(self) -> str:
        return f"Section({self.name!r}, '{self.length_si!r} m', '{self.mass_per_length_si!r} kg/m')"

    @property
    def length(self) -> Quantity:
        """Length."""
        return to_quantity(self.length_si, "length")

    @property
    def mass_per_length(self) -> Quantity:
        """Mass per length in air."""
        return to_quantity(self.mass_per_length_si, "mass_per_length")

    @property
    def mass(self) -> Quantity:
        """Mass of the whole section."""
        return to_quantity(self.length_si * self.mass_per_length_si, "mass")


@dataclass(frozen=True, init=False, repr=False, slots=True)
class DrillString:
    """A drill string in mud.

    The topmost section is the drill pipe; all below it is the bottom-hole assembly (BHA). While the
    string is tripped the BHA is in the hole first: at a depth less than its length the string
    consists of the lowest sections, down to that depth.

    Parameters
    ----------
    sections
        From the bit upwards.
    mud_density
        Density of the mud, inside and outside the string.
    steel_density
        Density of the string.

    Examples
    --------
    >>> import ropewalk as rw
    >>> string = rw.drillstring.DrillString(
    ...     [
    ...         rw.drillstring.Section("drill collars", "300 ft", "83 lb/ft"),
    ...         rw.drillstring.Section("drill pipe", "3700 ft", "13.3 lb/ft"),
    ...     ],
    ...     mud_density="9.6 ppg",
    ...     steel_density="65.5 ppg",
    ... )
    >>> f"{string.bha_excess_weight.to('lbf').magnitude:.0f} lbf"
    '17845 lbf'
    >>> f"{string.hook_load(block_weight='15000 lbf').to('lbf').magnitude:.0f} lbf"
    '78248 lbf'
    """

    sections: tuple[Section, ...]
    mud_density_si: float
    steel_density_si: float

    def __init__(
        self,
        sections: Iterable[Section],
        mud_density: QuantityLike,
        steel_density: QuantityLike = "7850 kg/m**3",
    ) -> None:
        where = "drillstring.DrillString"
        mud = to_si(where, "mud_density", mud_density, "density")
        steel = to_si(where, "steel_density", steel_density, "density")
        parts = tuple(sections)
        if not all(isinstance(part, Section) for part in parts):
            text = "sections must be Section objects, from the bit upwards"
            raise InadmissibleError(f"{where}(): {text}", where, "sections")
        object.__setattr__(self, "sections", parts)
        object.__setattr__(self, "mud_density_si", mud)
        object.__setattr__(self, "steel_density_si", steel)
        self._string()  # says what is wrong, if anything is

    def __repr__(self) -> str:
        listed = ", ".join(map(repr, self.sections))
        return (
            f"DrillString([{listed}], '{self.mud_density_si!r} kg/m**3', "
            f"'{self.steel_density_si!r} kg/m**3')"
        )

    def _string(self) -> Any:
        """The computing half, made anew: cheap, and the string stays plain data."""
        return _core.drillstring.DrillString(
            [section.length_si for section in self.sections],
            [section.mass_per_length_si for section in self.sections],
            self.mud_density_si,
            self.steel_density_si,
        )

    @property
    def length_si(self) -> float:
        """Length of the whole string, m."""
        return float(self._string().length)

    @property
    def pipe_weight_si(self) -> float:
        """Weight of the drill pipe in mud, N/m."""
        return float(self._string().pipe_weight)

    @property
    def bha_length_si(self) -> float:
        """Length of the bottom-hole assembly, m."""
        return float(self._string().bha_length)

    @property
    def bha_excess_weight_si(self) -> float:
        """Weight of the BHA in mud less that of the same length of drill pipe, N."""
        return float(self._string().bha_excess_weight)

    def weight_in_mud_si(self, depth: Any) -> Any:
        """Weight in mud of the lowest `depth`, m, of the string, N."""
        return self._string().weight_in_mud(depth)

    @property
    def length(self) -> Quantity:
        """Length of the whole string."""
        return to_quantity(self.length_si, "length")

    @property
    def mass(self) -> Quantity:
        """Mass of the whole string."""
        return to_quantity(self._string().mass, "mass")

    @property
    def buoyancy_factor(self) -> float:
        """Weight in mud over weight in air."""
        return float(self._string().buoyancy_factor)

    @property
    def weight_in_air(self) -> Quantity:
        """Weight of the whole string in air."""
        return to_quantity(self._string().weight_in_air, "force")

    @property
    def pipe_weight(self) -> Quantity:
        """Weight of the drill pipe in mud per length, the :math:`W_m` of API RP 9B."""
        return to_quantity(self.pipe_weight_si, "force_per_length")

    @property
    def bha_length(self) -> Quantity:
        """Length of the bottom-hole assembly."""
        return to_quantity(self.bha_length_si, "length")

    @property
    def bha_excess_weight(self) -> Quantity:
        """Weight of the BHA in mud less that of the same length of pipe, the C of API RP 9B."""
        return to_quantity(self.bha_excess_weight_si, "force")

    def weight_in_mud(self, depth: QuantityLike | None = None) -> Quantity:
        """Weight in mud of the string down to `depth`, one depth or many; all of it if left out."""
        where = "drillstring.DrillString.weight_in_mud"
        depth_si = self.length_si if depth is None else to_si(where, "depth", depth, "length")
        return to_quantity(self.weight_in_mud_si(depth_si), "force")

    def hook_load(
        self,
        operation: Operation = "hoisting",
        depth: QuantityLike | None = None,
        *,
        block_weight: QuantityLike,
        drag_up: QuantityLike = "0 N",
        drag_down: QuantityLike = "0 N",
    ) -> Quantity:
        """Everything hung on the lines: string in mud, drag, block assembly.

        Parameters
        ----------
        operation
            ``"hoisting"`` adds `drag_up`, ``"lowering"`` takes off `drag_down`, ``"rotating"`` off
            bottom has no drag along the pipe.
        depth
            Depth of the bit, one or many; the length of the string if left out.
        block_weight
            Traveling block, hook or top drive, elevators.
        drag_up, drag_down
            Drag along the pipe, as a force.

        Raises
        ------
        InadmissibleError
            If the string is shorter than `depth`, or weighs less than `drag_down`.
        """
        where = "drillstring.DrillString.hook_load"
        string = self._string()
        load = string.hook_load(
            to_name(where, "operation", operation),
            string.length if depth is None else to_si(where, "depth", depth, "length"),
            drag_up=to_si(where, "drag_up", drag_up, "force"),
            drag_down=to_si(where, "drag_down", drag_down, "force"),
            block_weight=to_si(where, "block_weight", block_weight, "force"),
        )
        return to_quantity(load, "force")
