"""Sizes of drawworks by depth of well: functions of `ropewalk.drawworks`."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Any

from ropewalk import _core
from ropewalk._border import Quantity, QuantityLike, to_quantity, to_si
from ropewalk._names import to_name

__all__ = ["RigSize", "rig_sizes", "size_for_depth", "table"]


@dataclass(frozen=True, slots=True)
class RigSize:
    """A size of drawworks and the wells it is usual for, with the source.

    Attributes
    ----------
    standard, name
        Who says so, and the name of the class there.
    depth_si
        Deepest well of the class, m.
    hook_load_si
        Largest static hook load, N; None where the standard has none.
    power_from_si, power_to_si
        Input power of the drawworks, W.
    rope_diameter_si
        Diameter of the drilling line, m, or None.
    source
        Where it comes from.
    standing
        ``"from memory"`` or ``"common practice"``.
    """

    standard: str
    name: str
    depth_si: float
    hook_load_si: float | None
    power_from_si: float
    power_to_si: float
    rope_diameter_si: float | None
    source: str
    standing: str

    @property
    def depth(self) -> Quantity:
        """Deepest well of the class."""
        return to_quantity(self.depth_si, "length")

    @property
    def hook_load(self) -> Quantity | None:
        """Largest static hook load, or None."""
        return None if self.hook_load_si is None else to_quantity(self.hook_load_si, "force")

    @property
    def power(self) -> Quantity:
        """Input power of the drawworks, from and to."""
        return to_quantity([self.power_from_si, self.power_to_si], "power")


def rig_sizes() -> list[RigSize]:
    """Every size of drawworks there is, by standard and depth.

    Examples
    --------
    >>> import ropewalk as rw
    >>> sorted({size.standard for size in rw.drawworks.rig_sizes()})
    ['GB/T 23505', 'common practice']
    """
    return [_size(record) for record in _core.drawworks.rig_sizes()]


def size_for_depth(depth: QuantityLike, standard: str = "GB/T 23505") -> RigSize:
    """Smallest size of a standard whose depth reaches a well.

    A guide for a first look: casing program, mud and drag decide, not the depth alone.

    Parameters
    ----------
    depth : length
        Depth of the well.
    standard : str
        ``"GB/T 23505"`` or ``"common practice"``.

    Returns
    -------
    RigSize
        With its source and standing.

    Raises
    ------
    UnknownEntryError
        If there is no such standard, or the well is deeper than all its classes.

    Examples
    --------
    >>> import ropewalk as rw
    >>> size = rw.drawworks.size_for_depth("3400 m")
    >>> print(size.name, size.power.to("kW").magnitude)
    40 [735. 735.]
    """
    where = "drawworks.size_for_depth"
    depth_si = to_si(where, "depth", depth, "length")
    return _size(_core.drawworks.size_for_depth(depth_si, to_name(where, "standard", standard)))


def table(name: str) -> list[dict[str, Any]]:
    """Rows of one of this subject's tables, with source and standing of each value.

    Parameters
    ----------
    name : str
        ``"drawworks_sizes"`` or ``"drawworks_efficiencies"``.

    Raises
    ------
    UnknownEntryError
        If there is no such table.

    Examples
    --------
    >>> import ropewalk as rw
    >>> rows = rw.drawworks.table("drawworks_efficiencies")
    >>> [row["efficiency_low"] for row in rows if row["stage"] == "drive of drawworks"]
    [0.83, 0.87]
    """
    return list(_core.drawworks.table(to_name("drawworks.table", "name", name)))


def _size(record: dict[str, Any]) -> RigSize:
    return RigSize(
        standard=record["standard"],
        name=record["name"],
        depth_si=record["depth"],
        hook_load_si=record["hook_load"],
        power_from_si=record["power_from"],
        power_to_si=record["power_to"],
        rope_diameter_si=record["rope_diameter"],
        source=record["source"],
        standing=record["standing"],
    )
