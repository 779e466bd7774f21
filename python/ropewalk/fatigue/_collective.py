"""Many tensions in one life: load collectives and the damage sum."""

from __future__ import annotations

from typing import Any

import numpy as np

from ropewalk import _core
from ropewalk._border import NumberLike, to_si

__all__ = ["collective_life", "equivalent_force_ratio", "force_spectrum_factor", "miner_sum"]


def _numbers(where: str, name: str, values: Any) -> Any:
    return np.atleast_1d(to_si(where, name, values, "number"))


def equivalent_force_ratio(
    shares: NumberLike, force_ratios: NumberLike, exponent: NumberLike
) -> float:
    r"""Equivalent force of a load collective, relative to the reference force (Feyrer).

    .. math:: k = \left(\sum u_i k_i^{-p}\right)^{-1/p}, \quad \sum u_i = 1

    A rope under the constant force k S0 lives as long as under the collective.

    Source: Feyrer, Wire Ropes, 2nd ed. (2015), eqs. 3.92 and 3.93.

    Parameters
    ----------
    shares : array of numbers
        Shares u_i of all cycles, or numbers of cycles: they are divided by their sum.
    force_ratios : array of numbers
        S_i/S0.
    exponent : number
        p = d lg N / d lg S, below 0; a model's `tension_exponent` gives it.

    Examples
    --------
    >>> import ropewalk as rw
    >>> round(rw.fatigue.equivalent_force_ratio([0.5, 0.3, 0.2], [1.0, 0.7, 0.4], -3), 5)
    0.85073
    """
    where = "fatigue.equivalent_force_ratio"
    return float(
        _core.fatigue.equivalent_force_ratio(
            _numbers(where, "shares", shares),
            _numbers(where, "force_ratios", force_ratios),
            to_si(where, "exponent", exponent, "number"),
        )
    )


def force_spectrum_factor(shares: NumberLike, force_ratios: NumberLike) -> float:
    r"""Rope force spectrum factor k_r of EN 13001-3-2.

    .. math:: k_r = \sum \frac{w_i}{w} \left(\frac{F_i}{F}\right)^3

    Source: EN 13001-3-2:2014, from memory.

    Parameters
    ----------
    shares : array of numbers
        Numbers of bendings w_i, or their shares.
    force_ratios : array of numbers
        F_i/F, relative to the design rope force, 0 to 1.

    Examples
    --------
    >>> import ropewalk as rw
    >>> round(rw.fatigue.force_spectrum_factor([0.2, 0.3, 0.5], [1.0, 0.8, 0.5]), 4)
    0.4161
    """
    where = "fatigue.force_spectrum_factor"
    return float(
        _core.fatigue.force_spectrum_factor(
            _numbers(where, "shares", shares), _numbers(where, "force_ratios", force_ratios)
        )
    )


def miner_sum(counts: NumberLike, lives: NumberLike) -> float:
    r"""Damage sum of Palmgren (1924) and Miner (1945).

    .. math:: D = \sum \frac{n_i}{N_i}

    The end that N_i counts to is expected at D = 1.

    Parameters
    ----------
    counts : array of numbers
        Cycles n_i run at each level.
    lives : array of numbers
        Cycles N_i the rope bears at that level alone.

    Examples
    --------
    >>> import ropewalk as rw
    >>> rw.fatigue.miner_sum([2000, 9000, 25_000], [10_000, 30_000, 50_000])
    1.0
    """
    where = "fatigue.miner_sum"
    return float(
        _core.fatigue.miner_sum(_numbers(where, "counts", counts), _numbers(where, "lives", lives))
    )


def collective_life(shares: NumberLike, lives: NumberLike) -> float:
    r"""Life under a load collective by the damage sum.

    .. math:: N = 1 / \sum (u_i / N_i), \quad \sum u_i = 1

    Source: Feyrer, Wire Ropes, 2nd ed. (2015), eq. 3.92.

    Parameters
    ----------
    shares : array of numbers
        Shares u_i of all cycles, or numbers of cycles.
    lives : array of numbers
        Cycles N_i the rope bears at that level alone.

    Examples
    --------
    >>> import ropewalk as rw
    >>> rw.fatigue.collective_life([0.5, 0.5], [10_000, 30_000])
    15000.0
    """
    where = "fatigue.collective_life"
    return float(
        _core.fatigue.collective_life(
            _numbers(where, "shares", shares), _numbers(where, "lives", lives)
        )
    )
