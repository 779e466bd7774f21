"""What the pictures of a line have in common: shades, words, the rope they show."""

from __future__ import annotations

from typing import TYPE_CHECKING

import numpy as np
import numpy.typing as npt

if TYPE_CHECKING:
    from ropewalk.line import LineHistory

# Told apart without color: the shades of gray differ.
ROPE = "#0b3c5d"
SHADES = {"crown": "#0b3c5d", "traveling": "#6f97b3", "drum": "#c9d8e2"}
_OTHER = "#eeeeee"
POSITION = "position along the rope from the first drum end [m]"


def shade_of(name: str) -> str:
    return next((shade for key, shade in SHADES.items() if name.startswith(key)), _OTHER)


def curve_of(history: LineHistory) -> tuple[npt.NDArray[np.float64], npt.NDArray[np.float64]]:
    """Position and damage of all rope that was ever strung up, anchor included."""
    position = history.damage.position.to_numpy()
    # A little more than the line as it is strung up, which leaves room for names.
    reached = position <= 1.1 * history.anchor_si
    return position[reached], history.damage_si[reached]
