"""Which sheaves one section of line runs over in a stroke of the block."""

from __future__ import annotations

import numpy as np
import numpy.typing as npt


def sheave_windows(lines: int, highest: float, lowest: float) -> list[tuple[int, int]]:
    """Return every run of turning sheaves that a section of line can pass in one full stroke.

    A section at the distance x from the dead end passes turning sheave m while the length of line
    between the blocks goes from `lowest` to `highest`, if m·highest ≤ x ≤ m·lowest: sheave m sits m
    lengths of line from the dead end. The rope on the arcs of the sheaves is neglected.

    Parameters
    ----------
    lines
        Lines strung, N.
    highest, lowest
        Length of line between the blocks with the block at its highest and lowest, m.

    Returns
    -------
    list of (first, last)
        Sheave numbers, counted from the dead line, both included; longest runs only.

    Examples
    --------
    >>> sheave_windows(10, highest=8.0, lowest=37.0)[-1]
    (3, 10)
    >>> sheave_windows(4, highest=10.0, lowest=11.0)
    [(1, 1), (2, 2), (3, 3), (4, 4)]
    """
    windows: list[tuple[int, int]] = []
    for last in range(1, lines + 1):
        # The section farthest from the dead end that still passes sheave `last` and the one
        # nearest to it differ; the nearest, x = last·highest, passes the most sheaves before it.
        first = max(1, int(np.ceil(last * highest / lowest - 1e-12)))
        if windows and windows[-1][0] == first:
            windows[-1] = (first, last)
        else:
            windows.append((first, last))
    return windows


def worst_section_damage(
    per_sheave: npt.NDArray[np.float64], windows: list[tuple[int, int]]
) -> npt.NDArray[np.float64]:
    """Return the damage of the section that suffers most.

    Parameters
    ----------
    per_sheave
        Damage at each turning sheave, shape (..., N), sheave 1 first.
    windows
        Runs of sheaves one section can pass, from `sheave_windows`.

    Returns
    -------
    numpy.ndarray
        Largest sum over a run, shape (...).
    """
    sums = [per_sheave[..., first - 1 : last].sum(axis=-1) for first, last in windows]
    worst: npt.NDArray[np.float64] = np.max(sums, axis=0)
    return worst
