"""Places of a line in words: the worst ones, and what lies in reach of every sheave."""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING, Any

import numpy as np

from ropewalk.line._labels import positions
from ropewalk.line._setup import tackle_of

if TYPE_CHECKING:
    from ropewalk.line.history import LineHistory

#: Share of the travel within which the block is said to be at its end.
_NEAR = 0.05


@dataclass(frozen=True, slots=True)
class Window:
    """Rope in reach of one sheave or of a drum layer: positions in m."""

    name: str
    start_si: float
    end_si: float


@dataclass(frozen=True, slots=True)
class WorstPlace:
    """One of the worst places of a line.

    Attributes
    ----------
    position_si
        Position along the rope, m.
    damage
        Damage there, 1 being the median life.
    cause
        Chief cause.
    share
        Its share in the damage there.
    block_height_si
        Height of the block when the place was at that sheave, m; None for other causes.
    cut_off
        True if the place has been cut off.
    text
        In words, ``"crown sheave 3, block at the floor"``.
    """

    position_si: float
    damage: float
    cause: str
    share: float
    block_height_si: float | None
    cut_off: bool
    text: str


def windows(history: LineHistory) -> list[Window]:
    """Rope in reach of every sheave at the end of the run, from the dead line to the drum."""
    tackle = tackle_of(history.rig)
    anchor, drum_end = history.anchor_si, history.drum_end_si
    block = history.rig.block
    found = [_window(one, anchor, block.lowest, block.highest) for one in _sheaves(tackle)]
    drum = next(c for c in tackle.contacts if c["layer"] == 1)
    top = anchor - drum["near"] - drum["multiple"] * block.highest
    return [*found, Window("drum", drum_end, top)]


def _sheaves(tackle: Any) -> list[dict[str, Any]]:
    return [one for one in tackle.contacts if one["layer"] == 0]


def _window(contact: dict[str, Any], anchor: float, longest: float, shortest: float) -> Window:
    multiple = contact["multiple"]
    return Window(
        contact["cause"],
        anchor - contact["far"] - multiple * longest,
        anchor - contact["near"] - multiple * shortest,
    )


def worst_places(history: LineHistory, count: int, apart: float) -> list[WorstPlace]:
    """Worst places, largest damage first, at least `apart` m from each other."""
    damage = history.damage_si
    where = positions(history)
    left = damage.copy()
    found: list[WorstPlace] = []
    while len(found) < count and left.max() > 0.0:
        bin_ = int(left.argmax())
        found.append(_place(history, bin_, float(where[bin_])))
        left[np.abs(where - where[bin_]) < apart] = 0.0
    return found


def _place(history: LineHistory, bin_: int, position: float) -> WorstPlace:
    here = history.damage_by_cause.to_numpy()[:, bin_]
    chief = int(here.argmax())
    cause = history.line.causes[chief]
    height = _block_height(history, cause, position)
    text = cause if height is None else f"{cause}, {_height_text(history, height)}"
    return WorstPlace(
        position_si=position,
        damage=float(history.damage_si[bin_]),
        cause=cause,
        share=float(here[chief] / here.sum()),
        block_height_si=height,
        cut_off=position < history.drum_end_si,
        text=text,
    )


def _block_height(history: LineHistory, cause: str, position: float) -> float | None:
    """Height of the block with the place on its sheave, the last time it was in reach."""
    contacts = {one["cause"]: one for one in _sheaves(tackle_of(history.rig))}
    if cause not in contacts:
        return None
    contact, block = contacts[cause], history.rig.block
    middle = 0.5 * (contact["near"] + contact["far"])
    for anchor, _ in reversed(history.native.epoch_positions):
        window = _window(contact, anchor, block.lowest, block.highest)
        if window.start_si <= position <= window.end_si:
            line = (anchor - middle - position) / contact["multiple"]
            return float(np.clip(block.lowest - line, 0.0, block.lowest - block.highest))
    return None


def _height_text(history: LineHistory, height: float) -> str:
    travel = history.rig.block.lowest - history.rig.block.highest
    if height < _NEAR * travel:
        return "block at the floor"
    if height > (1.0 - _NEAR) * travel:
        return "block at its highest"
    return f"block {height:.1f} m above its lowest"
