"""Design factor of a rope: its strength over the tension it carries, and what is asked for.

A design factor above the minimum does not make a lift safe. Local rules, the rope maker, the rig's
manuals and the newest edition of the standard come first, and a worn rope has less than its nominal
strength.
"""

from __future__ import annotations

from dataclasses import dataclass
from functools import cache, lru_cache

from ropewalk import _core
from ropewalk._face import NumberLike, Policy, Quantity, QuantityLike, face

__all__ = [
    "Minimum",
    "allowed_rope_tension",
    "derated",
    "design_factor",
    "minimum",
    "minimums",
]


@face("design_factor.design_factor")
def design_factor(
    breaking_force: QuantityLike,
    rope_tension: QuantityLike,
    *,
    outside_validity: Policy = "raise",
    return_status: bool = False,
    threads: int = 1,
) -> float:
    """Design factor of a rope, API RP 9B.

    .. math:: DF = B / W

    with B the nominal breaking force (`breaking_force`) and W the tension of the most loaded part
    (`rope_tension`): on a drilling rig that of the fast line while hoisting.

    Source: API RP 9B, 14th ed. (2015) with Addendum 1 (2020), 2.3.3.4, eq. (1).

    Examples
    --------
    The example of the standard: 1-3/8 in EIPS line, 10 lines, 400,000 lb on the hook.

    >>> import ropewalk as rw
    >>> fast_line = rw.reeving.fast_line_tension("400 kip", 10, 1.04, 0)
    >>> print(f"{rw.design_factor.design_factor('192 kip', fast_line):.1f}")
    3.9
    """
    ...


@face("design_factor.derated")
def derated(
    breaking_force: QuantityLike,
    strength_efficiency: NumberLike,
    rope_tension: QuantityLike,
    *,
    outside_validity: Policy = "raise",
    return_status: bool = False,
    threads: int = 1,
) -> float:
    r"""Design factor of a rope bent over a sheave, fitting or drum, API RP 9B.

    .. math:: DF = \eta B / W

    with η the share of its strength that the bent rope keeps (`strength_efficiency`, see
    `ropewalk.sheave.strength_efficiency`).

    Source: API RP 9B, 14th ed. (2015) with Addendum 1 (2020), 2.3.3.5.

    Examples
    --------
    The example of the standard: 1-1/4 in EIPS bridle line over an equalizer sheave of D/d = 27.

    >>> import ropewalk as rw
    >>> print(f"{rw.design_factor.derated('159.8 kip', 0.96, '60 kip'):.2f}")
    2.56
    """
    ...


@face("design_factor.allowed_rope_tension")
def allowed_rope_tension(
    breaking_force: QuantityLike,
    minimum_design_factor: NumberLike,
    *,
    outside_validity: Policy = "raise",
    return_status: bool = False,
    threads: int = 1,
) -> Quantity:
    r"""Largest rope tension that keeps a minimum design factor.

    .. math:: W = B / DF_{\min}

    Source: the definition of the design factor, turned round.

    Examples
    --------
    Hook load that a 1-3/8 in EIPS line may hoist on 10 lines at a design factor of 3:

    >>> import ropewalk as rw
    >>> fast_line = rw.design_factor.allowed_rope_tension("192 kip", 3.0)
    >>> print(f"{rw.reeving.hoisted_hook_load(fast_line, 10, 1.04, 0).to('kip'):.1f}")
    519.1 kip
    """
    ...


@dataclass(frozen=True, slots=True)
class Minimum:
    """A minimum design factor and who asks for it.

    Attributes
    ----------
    operation
        ``"rotary drilling"``, ``"setting casing"``, …
    standard
        Standard or regulation.
    edition
        Editions that have this value.
    value
        The least design factor.
    basis
        The tension the factor is taken on. Regulations often mean the static load, where
        API RP 9B takes the fast line while hoisting.
    source
        Clause or table.
    standing
        ``"published"``, or ``"from memory"`` if not yet compared with a printed copy.
    """

    operation: str
    standard: str
    edition: str
    value: float
    basis: str
    source: str
    standing: str


def minimum(operation: str, standard: str = "API RP 9B") -> Minimum:
    """Minimum design factor that a standard asks for in an operation.

    Parameters
    ----------
    operation : str
        ``"rotary drilling"``, ``"setting casing"``, ``"pulling on stuck pipe"``,
        ``"mast raising"``, ``"sand line"``, ``"cable tool"``, ``"hoisting other"``.
    standard : str
        Standard or regulation; `minimums` lists them.

    Raises
    ------
    UnknownEntryError
        If there is no such standard or operation; the message offers what there is.

    Notes
    -----
    The values of API RP 9B are those of the editions up to the 14th. Addendum 1 (2020) replaces
    the table; look there before relying on them.

    Examples
    --------
    >>> import ropewalk as rw
    >>> rw.design_factor.minimum("setting casing").value
    2.0
    >>> rw.design_factor.minimum("rotary drilling", standard="Michigan").standing
    'published'
    """
    if not (isinstance(operation, str) and isinstance(standard, str)):
        return Minimum(
            **_core.design_factor.minimum(operation, standard)
        )  # which says what it takes
    return _minimum(operation, standard)


@lru_cache(maxsize=256)
def _minimum(operation: str, standard: str) -> Minimum:
    return Minimum(**_core.design_factor.minimum(operation, standard))


def minimums() -> list[Minimum]:
    """Every minimum design factor there is, by standard.

    Examples
    --------
    >>> import ropewalk as rw
    >>> sorted({entry.standard for entry in rw.design_factor.minimums()})
    ['API RP 9B', 'Michigan', 'Wyoming drilling', 'Wyoming servicing']
    """
    return list(_minimums())


@cache
def _minimums() -> tuple[Minimum, ...]:
    return tuple(Minimum(**record) for record in _core.design_factor.minimums())
