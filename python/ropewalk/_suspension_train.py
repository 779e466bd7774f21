"""The load path from crown to elevator: the classes `Part`, `Suspension` and `Margins`."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from typing import TYPE_CHECKING, Any

import numpy as np
import numpy.typing as npt

from ropewalk import _core
from ropewalk._border import Quantity, QuantityLike, to_quantity, to_si
from ropewalk._names import to_name
from ropewalk._reeving import Reeving
from ropewalk._tensions import Motion
from ropewalk.errors import InadmissibleError, UnitError

if TYPE_CHECKING:
    import pandas as pd

__all__ = ["Margins", "Part", "Suspension"]

_WHERE = "suspension.Suspension"
_FIXED = ("mast", "crown block", "drilling line")


@dataclass(frozen=True, init=False, repr=False, slots=True)
class Part:
    """One part that hangs on the lines: block, hook or hook block, top drive, links, elevator.

    Parameters
    ----------
    name
        What it is called in results.
    rating
        Its load rating, from the nameplate; of links the rating of the set.
    weight
        Its own weight.

    Examples
    --------
    >>> import ropewalk as rw
    >>> rw.suspension.Part("elevator", rating="2250 kN", weight="3 kN")
    Part('elevator', '2250000.0 N', '3000.0 N')
    """

    name: str
    rating_si: float
    weight_si: float

    def __init__(self, name: str, rating: QuantityLike, weight: QuantityLike) -> None:
        where = "suspension.Part"
        values: dict[str, Any] = {
            "rating_si": to_si(where, "rating", rating, "force"),
            "weight_si": to_si(where, "weight", weight, "force"),
        }
        object.__setattr__(self, "name", to_name(where, "name", name))
        for field, value in values.items():
            least = "more than 0" if field == "rating_si" else "not less than 0"
            sound = np.ndim(value) == 0 and 0.0 <= value < np.inf
            if not sound or (field == "rating_si" and value == 0.0):
                text = f"{field[:-3]} of {name!r} must be one force, {least}, got {value!r} N"
                raise InadmissibleError(f"{where}(): {text}", where, field[:-3])
            object.__setattr__(self, field, float(value))

    def __repr__(self) -> str:
        return f"Part({self.name!r}, '{self.rating_si!r} N', '{self.weight_si!r} N')"

    @property
    def rating(self) -> Quantity:
        """Load rating."""
        return to_quantity(self.rating_si, "force")

    @property
    def weight(self) -> Quantity:
        """Own weight."""
        return to_quantity(self.weight_si, "force")


@dataclass(frozen=True, eq=False)
class Margins:
    """What every part of the load path carries under one hook load, against its rating.

    Attributes
    ----------
    names
        Parts, from the mast or the crown down.
    hook_load_si
        Hook load they are for, N.
    motion
        What the blocks do.
    load_si, rating_si, margin_si
        Load, rating, and rating less load, of every part, N; a negative margin is an overload.
    utilization
        Load over rating.
    hook_load_at_rating_si
        Hook load that brings the part to its rating, N.
    weakest
        The part that comes to its rating first as the hook load grows.
    """

    names: tuple[str, ...]
    hook_load_si: float
    motion: Motion
    load_si: npt.NDArray[np.float64]
    rating_si: npt.NDArray[np.float64]
    margin_si: npt.NDArray[np.float64]
    utilization: npt.NDArray[np.float64]
    hook_load_at_rating_si: npt.NDArray[np.float64]
    weakest: str

    @property
    def hook_load(self) -> Quantity:
        """Hook load the margins are for."""
        return to_quantity(self.hook_load_si, "force")

    @property
    def load(self) -> Quantity:
        """Load of every part."""
        return to_quantity(self.load_si, "force")

    @property
    def rating(self) -> Quantity:
        """Rating of every part."""
        return to_quantity(self.rating_si, "force")

    @property
    def margin(self) -> Quantity:
        """Rating less load of every part; negative: overloaded."""
        return to_quantity(self.margin_si, "force")

    @property
    def hook_load_at_rating(self) -> Quantity:
        """Hook load that brings every part to its rating."""
        return to_quantity(self.hook_load_at_rating_si, "force")

    @property
    def largest_hook_load(self) -> Quantity:
        """Hook load at which the weakest part comes to its rating. Not a permission to pull it."""
        return to_quantity(float(self.hook_load_at_rating_si.min()), "force")

    @property
    def overloaded(self) -> tuple[str, ...]:
        """Parts beyond their rating."""
        beyond = zip(self.names, self.margin_si, strict=True)
        return tuple(name for name, margin in beyond if margin < 0.0)

    def to_dataframe(self, unit: str = "kip") -> pd.DataFrame:
        """Make a table with one row a part, forces in `unit`.

        Examples
        --------
        >>> import ropewalk as rw
        >>> rig = rw.load_rig(rw.rig.example("rig7"))
        >>> table = rw.suspension.rig_margins(rig).to_dataframe("short_ton_force")
        >>> list(table.columns)[-1]
        'hook load at rating [short_ton_force]'
        """
        import pandas as pd

        columns: dict[str, Any] = {
            f"load [{unit}]": self.load.m_as(unit),
            f"rating [{unit}]": self.rating.m_as(unit),
            f"margin [{unit}]": self.margin.m_as(unit),
            "load/rating": self.utilization,
            f"hook load at rating [{unit}]": self.hook_load_at_rating.m_as(unit),
        }
        return pd.DataFrame(columns, index=pd.Index(self.names, name="part"))

    def __repr__(self) -> str:
        at_rating = self.largest_hook_load.magnitude / 1000.0
        return (
            f"Margins(hook_load={self.hook_load_si / 1000.0:.6g} kN, motion={self.motion!r}, "
            f"parts={len(self.names)}, weakest={self.weakest!r} at {at_rating:.6g} kN, "
            f"overloaded={self.overloaded!r})"
        )


class Suspension:
    r"""The load path of a hoist: mast, crown block, drilling line, and all that hangs on it.

    Each part sees another load. Under the hook load W, everything that hangs on the lines,

    - the mast is rated in W itself, for the lines strung,
    - the crown block carries W, the fast line and the dead line,
    - the line carries its largest tension: that of the fast line, of the dead end while lowering,
    - a part that hangs carries W less the weight of all that hangs above it: it is counted with
      its own weight, so that the traveling block carries W.

    Parameters
    ----------
    hanging : sequence of Part
        From the traveling block down.
    crown_block, mast, line : force, optional
        Rating of the crown block; static hook load rating of the mast at the lines strung
        (`ropewalk.mast.rating_at_lines`); largest tension of the line allowed, breaking force over
        the design factor asked for. Left out where they are not known.

    Raises
    ------
    InadmissibleError
        If nothing hangs, two parts have one name, or a rating cannot be.

    Examples
    --------
    >>> import ropewalk as rw
    >>> suspension = rw.Suspension(
    ...     [
    ...         rw.suspension.Part("traveling block", "350 short_ton_force", "14 kip"),
    ...         rw.suspension.Part("hook", "350 short_ton_force", "6 kip"),
    ...         rw.suspension.Part("links", "350 short_ton_force", "1.2 kip"),
    ...         rw.suspension.Part("elevator", "250 short_ton_force", "0.8 kip"),
    ...     ],
    ...     crown_block="500 short_ton_force",
    ... )
    >>> margins = suspension.margins("400 kip", rw.Reeving(10, "roller"))
    >>> margins.weakest, f"{margins.largest_hook_load.to('kip'):.1f}"
    ('elevator', '521.2 kip')
    """

    def __init__(
        self,
        hanging: Sequence[Part],
        *,
        crown_block: QuantityLike | None = None,
        mast: QuantityLike | None = None,
        line: QuantityLike | None = None,
    ) -> None:
        self.hanging = tuple(hanging)
        for part in self.hanging:
            if not isinstance(part, Part):
                text = f"hanging must hold ropewalk.suspension.Part, got {part!r}"
                raise UnitError(f"{_WHERE}(): {text}", _WHERE, "hanging")
        if not self.hanging:
            raise InadmissibleError(f"{_WHERE}(): hanging is empty", _WHERE, "hanging")
        names = [part.name for part in self.hanging]
        for i, name in enumerate(names):
            if name in (*_FIXED, *names[:i]):
                text = f"hanging has {name!r} twice, or it names a fixed part; results go by name"
                raise InadmissibleError(f"{_WHERE}(): {text}", _WHERE, "hanging")
        self.mast_si = _optional_force("mast", mast)
        self.crown_block_si = _optional_force("crown_block", crown_block)
        self.line_si = _optional_force("line", line)

    def __repr__(self) -> str:
        fixed = (("crown_block", self.crown_block_si), ("mast", self.mast_si))
        named = [*fixed, ("line", self.line_si)]
        ratings = "".join(f", {name}='{si!r} N'" for name, si in named if si is not None)
        return f"Suspension({list(self.hanging)!r}{ratings})"

    @property
    def weight(self) -> Quantity:
        """Weight of all parts that hang."""
        return to_quantity(sum(part.weight_si for part in self.hanging), "force")

    def margins(
        self, hook_load: QuantityLike, reeving: Reeving, motion: Motion = "hoisting"
    ) -> Margins:
        """Load and margin of every part under one hook load.

        Parameters
        ----------
        hook_load
            Everything that hangs on the lines, the parts themselves included.
        reeving
            How the line is strung; gives the loads of crown block and line.
        motion
            ``"hoisting"``, ``"static"`` or ``"lowering"``.

        Raises
        ------
        InadmissibleError
            If the hook load is less than the weight of the parts above one of them.
        """
        load = to_si(f"{_WHERE}.margins", "hook_load", hook_load, "force")
        parts = self._parts(reeving, motion)
        found = _core.suspension.margins(parts, load)
        return Margins(
            names=tuple(name for name, *_ in parts),
            hook_load_si=float(load),
            motion=motion,
            load_si=found["load"],
            rating_si=np.array([rating for _, rating, *_ in parts]),
            margin_si=found["margin"],
            utilization=found["utilization"],
            hook_load_at_rating_si=found["hook_load_at_rating"],
            weakest=parts[_core.suspension.weakest(parts)][0],
        )

    def _parts(self, reeving: Reeving, motion: Motion) -> list[tuple[str, float, float, float]]:
        """Name, rating, multiple of the hook load and weight above, as the core takes them."""
        of_one_newton = reeving.tensions(to_quantity(1.0, "force"), motion)
        # Hoisting it is the fast line; lowering, the friction of the sheaves loads the dead end.
        tightest = max(
            float(of_one_newton.fast_line_si),
            float(of_one_newton.fast_line_at_crown_si),
            float(of_one_newton.dead_line_si),
            float(of_one_newton.lines_si.max()),
        )
        fixed = (
            ("mast", self.mast_si, 1.0),
            ("crown block", self.crown_block_si, float(of_one_newton.crown_load_si)),
            ("drilling line", self.line_si, tightest),
        )
        parts = [(name, rating, of, 0.0) for name, rating, of in fixed if rating is not None]
        above = 0.0
        for part in self.hanging:
            parts.append((part.name, part.rating_si, 1.0, above))
            above += part.weight_si
        return parts


def _optional_force(field: str, value: QuantityLike | None) -> float | None:
    if value is None:
        return None
    force = to_si(_WHERE, field, value, "force")
    if np.ndim(force) or not 0.0 < force < np.inf:
        text = f"{field} must be one force, more than 0, got {value!r}"
        raise InadmissibleError(f"{_WHERE}(): {text}", _WHERE, field)
    return float(force)
