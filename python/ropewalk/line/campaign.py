"""A campaign: what the hoist did, stroke by stroke in time order."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, fields
from datetime import datetime
from pathlib import Path
from typing import TYPE_CHECKING, Any, Literal

import numpy as np
import numpy.typing as npt

from ropewalk._border import Quantity, QuantityLike, to_quantity, to_si
from ropewalk.errors import InadmissibleError

if TYPE_CHECKING:
    import xarray as xr

    from ropewalk.rig import Rig

Array = npt.NDArray[np.float64]

#: Bounds of the columns: the smallest and the largest value, and the unit.
_RANGES = {
    "hook_load": (0.0, 1e9, "N"),
    "height_from": (0.0, 200.0, "m"),
    "height_to": (0.0, 200.0, "m"),
    "count": (1.0, 1e12, ""),
}


@dataclass(frozen=True, slots=True)
class PlannedOperation:
    """One operation of a campaign and its rows.

    Attributes
    ----------
    kind, title
        What it is: ``"round trip"``, ``"3 x round trip, 2200 m"``.
    start, end
        Dates, or None.
    first_row, last_row
        Its rows, both included; an operation without strokes ends before it begins.
    """

    kind: str
    title: str
    start: datetime | None
    end: datetime | None
    first_row: int
    last_row: int


@dataclass(frozen=True, slots=True)
class LineEvent:
    """A slip or cut of the plan, made after a row; −1 if before the first.

    Attributes
    ----------
    row
        Row after which it is made.
    kind
        ``"slip"`` or ``"cut"``.
    length_si
        Line slipped or cut, m.
    """

    row: int
    kind: Literal["slip", "cut"]
    length_si: float


@dataclass(frozen=True, eq=False, repr=False, slots=True)
class Campaign:
    """What the hoist did: one row a stroke of the block, in time order; read-only columns, in SI.

    Made by `from_plan` or `from_strokes`.

    Attributes
    ----------
    hook_load_si
        Everything hung on the lines, dynamic part included, N.
    height_from_si, height_to_si
        Height of the block above its lowest position, m.
    count
        How many equal strokes the row stands for, one after the other.
    operation
        Index into `operations`.
    pick_up
        True where the load is taken up from the slips, at the height where the stroke begins.
    may_stop
        True where the string hangs in the slips after the row and the line may be slipped.
    time_si
        Time at the end of the row since `start`, s; NaN where the operation has no dates.
    trips
        Round trips to the surface completed by the end of the row; a trip out or in is half of one,
        a short trip none.
    operations
        The operations, in time order.
    events
        Slips and cuts of the plan, in time order.
    start
        Where time begins, or None.

    Examples
    --------
    >>> import ropewalk as rw
    >>> campaign = rw.Campaign.from_plan(rw.rig.example("rig7"))
    >>> bool(campaign.pick_up[1]), campaign.operations[0].kind
    (True, 'drilling')
    """

    hook_load_si: Array
    height_from_si: Array
    height_to_si: Array
    count: Array
    operation: npt.NDArray[np.int64]
    pick_up: npt.NDArray[np.bool_]
    may_stop: npt.NDArray[np.bool_]
    time_si: Array
    trips: Array
    operations: tuple[PlannedOperation, ...]
    events: tuple[LineEvent, ...] = ()
    start: datetime | None = None

    def __post_init__(self) -> None:
        for column in self._columns().values():
            column.setflags(write=False)

    def _columns(self) -> dict[str, npt.NDArray[Any]]:
        values = {field.name: getattr(self, field.name) for field in fields(self)}
        return {k: column for k, column in values.items() if isinstance(column, np.ndarray)}

    @classmethod
    def from_plan(cls, rig: Rig | str | Path, plan: str | Path | None = None) -> Campaign:
        """Campaign of a well plan: every operation stroke by stroke.

        Parameters
        ----------
        rig
            A rig, or the path of a rig file.
        plan
            Path of a TOML file with other ``[mud]``, ``[string]`` and ``[[operation]]`` tables and
            ``ropewalk = 1``; the plan of the rig if left out.

        Raises
        ------
        RigFileError
            If a file cannot be used.
        InadmissibleError
            If an operation has a stroke that cannot be, or the plan none at all.

        Examples
        --------
        >>> import ropewalk as rw
        >>> rig = rw.load_rig(rw.rig.example("rig7"))
        >>> len(rw.Campaign.from_plan(rig).operations) == len(rig.operations)
        True
        """
        from ropewalk.line._plan import campaign_of_plan

        return campaign_of_plan(rig, plan)

    @classmethod
    def from_strokes(
        cls,
        hook_load: QuantityLike,
        height_from: QuantityLike,
        height_to: QuantityLike,
        *,
        count: npt.ArrayLike | None = None,
        operation: npt.ArrayLike | None = None,
        names: Sequence[str] | None = None,
        pick_up: npt.ArrayLike | None = None,
        may_stop: npt.ArrayLike | None = None,
        time: QuantityLike | None = None,
        trips: npt.ArrayLike | None = None,
    ) -> Campaign:
        """Campaign of strokes that are known, from a record for instance.

        Every argument is one value or one for each row.

        Parameters
        ----------
        hook_load
            Everything hung on the lines, dynamic part included.
        height_from, height_to
            Height of the block above its lowest position, before and after.
        count
            How many equal strokes the row stands for; 1 if left out.
        operation
            Index of the operation the row belongs to, never less than the one before; 0 if left
            out.
        names
            Names of the operations, by index.
        pick_up
            True where the load is taken up from rest at `height_from`; nowhere if left out.
        may_stop
            True where the line may be slipped after the row; nowhere if left out.
        time
            Time at the end of each row.
        trips
            Round trips completed by the end of each row; none if left out.

        Raises
        ------
        UnitError
            If a unit is missing or wrong.
        InadmissibleError
            If there is no row, or a value that cannot be; the message names the row.

        Examples
        --------
        >>> import ropewalk as rw
        >>> heights = rw.Q([0.0, 28.5], "m"), rw.Q([28.5, 0.0], "m")
        >>> campaign = rw.Campaign.from_strokes(rw.Q([400.0, 46.0], "kip"), *heights)
        >>> len(campaign), f"{campaign.work.to('ton_mile').magnitude:.3f} ton-mile"
        (2, '3.949 ton-mile')
        """
        from ropewalk.line._strokes import campaign_of_strokes

        where = "Campaign.from_strokes"
        return campaign_of_strokes(
            to_si(where, "hook_load", hook_load, "force"),
            to_si(where, "height_from", height_from, "length"),
            to_si(where, "height_to", height_to, "length"),
            time=np.nan if time is None else to_si(where, "time", time, "time"),
            count=1.0 if count is None else count,
            operation=0 if operation is None else operation,
            names=names,
            pick_up=False if pick_up is None else pick_up,
            may_stop=False if may_stop is None else may_stop,
            trips=0.0 if trips is None else trips,
        )

    def __len__(self) -> int:
        return len(self.hook_load_si)

    def __eq__(self, other: object) -> bool:
        if not isinstance(other, Campaign):
            return NotImplemented
        mine, others = self._columns(), other._columns()
        rest = (self.operations, self.events, self.start)
        return rest == (other.operations, other.events, other.start) and all(
            np.array_equal(mine[name], others[name], equal_nan=name == "time_si") for name in mine
        )

    __hash__ = None  # type: ignore[assignment]

    def __repr__(self) -> str:
        work = self.work.to("ton_mile").magnitude
        return (
            f"<Campaign: {len(self)} rows, {self.strokes:.0f} strokes, "
            f"{len(self.operations)} operations, {work:.6g} ton_mile>"
        )

    @property
    def strokes(self) -> float:
        """Strokes of the block, rows counted as often as they are repeated."""
        return float(self.count.sum())

    @property
    def hook_load(self) -> Quantity:
        """Everything hung on the lines, one per row."""
        return to_quantity(self.hook_load_si, "force")

    @property
    def height_from(self) -> Quantity:
        """Height of the block where each row begins."""
        return to_quantity(self.height_from_si, "length")

    @property
    def height_to(self) -> Quantity:
        """Height of the block where each row ends."""
        return to_quantity(self.height_to_si, "length")

    @property
    def time(self) -> Quantity:
        """Time at the end of each row since `start`."""
        return to_quantity(self.time_si, "time")

    @property
    def work_si(self) -> Array:
        """Work of each row, load times travel times count, J."""
        travel = np.abs(self.height_to_si - self.height_from_si)
        work: Array = self.hook_load_si * travel * self.count
        return work

    @property
    def work(self) -> Quantity:
        """Work of all rows together."""
        return to_quantity(float(self.work_si.sum()), "energy")

    @property
    def work_by_operation(self) -> Quantity:
        """Work of each of `operations`."""
        work = np.bincount(self.operation, self.work_si, minlength=len(self.operations))
        return to_quantity(work, "energy")

    def dataset(self) -> xr.Dataset:
        """Columns and operations as a labelled table; ``.to_dataframe()`` makes pandas of it.

        Returns
        -------
        xarray.Dataset
            The columns along ``row``, and ``title``, ``kind`` and ``work_by_operation`` along
            ``plan``, the index in column ``operation``. Units stand in the attributes.
        """
        from ropewalk.line._table import campaign_dataset

        return campaign_dataset(self)


def check_range(where: str, name: str, column: Array) -> None:
    """Refuse the first value of a column that cannot be, by its row.

    Raises
    ------
    InadmissibleError
        With column, row, value and range.
    """
    low, high, unit = _RANGES[name]
    wrong = ~((column >= low) & (column <= high))
    if wrong.any():
        row = int(wrong.argmax())
        text = f"row {row}: {name} = {column[row]:.6g} {unit}".rstrip()
        raise InadmissibleError(
            f"{where}(): {text} is outside [{low:g}, {high:g}] {unit}".rstrip()
            + " (ropewalk's guard against slips of the pen)",
            where,
            name,
        )
