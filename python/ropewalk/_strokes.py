"""What the block does, stroke by stroke: the record `ropewalk.work` gives."""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np
import numpy.typing as npt

from ropewalk import _core
from ropewalk._border import Quantity, to_quantity

Array = npt.NDArray[np.float64]


@dataclass(frozen=True, eq=False, repr=False, slots=True)
class Strokes:
    """What the block does: one entry per stroke, up under `load_up` and down under `load_down`.

    Attributes
    ----------
    depth_si
        Depth of the bit at the lower end of the stroke, m.
    load_up_si, load_down_si
        Everything hung on the lines, N.
    travel_si
        Travel of the block, m, the same up and down.
    """

    depth_si: Array
    load_up_si: Array
    load_down_si: Array
    travel_si: Array

    def __post_init__(self) -> None:
        for column in self._columns():
            column.setflags(write=False)

    def _columns(self) -> tuple[Array, Array, Array, Array]:
        return self.depth_si, self.load_up_si, self.load_down_si, self.travel_si

    def __len__(self) -> int:
        return len(self.depth_si)

    def __eq__(self, other: object) -> bool:
        if not isinstance(other, Strokes):
            return NotImplemented
        return all(map(np.array_equal, self._columns(), other._columns()))

    __hash__ = None  # type: ignore[assignment]

    def __add__(self, other: Strokes) -> Strokes:
        """One after the other: a round trip is a trip out + a trip in."""
        if not isinstance(other, Strokes):
            return NotImplemented
        return Strokes(*map(np.concatenate, zip(self._columns(), other._columns(), strict=True)))

    def __repr__(self) -> str:
        return f"<Strokes: {len(self)} strokes, {self.work.to('ton_mile').magnitude:.6g} ton_mile>"

    @property
    def depth(self) -> Quantity:
        """Depth of the bit at the lower end of each stroke."""
        return to_quantity(self.depth_si, "length")

    @property
    def load_up(self) -> Quantity:
        """Everything hung on the lines while the block goes up."""
        return to_quantity(self.load_up_si, "force")

    @property
    def load_down(self) -> Quantity:
        """Everything hung on the lines while the block goes down."""
        return to_quantity(self.load_down_si, "force")

    @property
    def travel(self) -> Quantity:
        """Travel of the block, the same up and down."""
        return to_quantity(self.travel_si, "length")

    @property
    def work_by_stroke_si(self) -> Array:
        """Work of each stroke, up and down, J."""
        lift = _core.work.lift
        up = np.asarray(lift(self.load_up_si, self.travel_si))
        down = np.asarray(lift(self.load_down_si, self.travel_si))
        work: Array = up + down
        return work

    @property
    def work_by_stroke(self) -> Quantity:
        """Work of each stroke, up and down."""
        return to_quantity(self.work_by_stroke_si, "energy")

    @property
    def work(self) -> Quantity:
        """Work of all strokes together."""
        return to_quantity(float(self.work_by_stroke_si.sum()), "energy")
