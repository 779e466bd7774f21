"""Which life models hold at a point, and what each of them says there."""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from dataclasses import dataclass
from typing import NamedTuple

from ropewalk import _core
from ropewalk.errors import RopewalkError
from ropewalk.fatigue._life import BendPoint, Life
from ropewalk.fatigue._model import Applicability, LifeModel

__all__ = ["CatalogEntry", "ComparedLife", "Comparison", "catalog", "compare", "models_at"]


class CatalogEntry(NamedTuple):
    """One kind of life model.

    Attributes
    ----------
    name
        Class in `ropewalk.fatigue`.
    title
        What it is, in a line.
    equation
        Its equation.
    basis
        What its cycles count to.
    scale
        ``"absolute"``, or who gives the constants or the reference life.
    source, standing
        Where it is from, and how far it can be relied on.
    """

    name: str
    title: str
    equation: str
    basis: str
    scale: str
    source: str
    standing: str


def catalog() -> tuple[CatalogEntry, ...]:
    """Every kind of life model, with what it counts to and where it is from.

    Examples
    --------
    >>> import ropewalk as rw
    >>> [entry.name for entry in rw.fatigue.catalog()][:2]
    ['DruckerTachau', 'FeyrerForm']
    """
    entries = []
    for row in _core.fatigue.table("fatigue_models"):
        row["name"] = row.pop("model").removeprefix("fatigue.")
        entries.append(CatalogEntry(**row))
    return tuple(entries)


def models_at(point: BendPoint, models: Iterable[LifeModel]) -> tuple[Applicability, ...]:
    """Whether each model holds at a point and, if not, what is missing or which range is left.

    Examples
    --------
    >>> import ropewalk as rw
    >>> point = rw.fatigue.BendPoint(
    ...     rope_tension="30 kip", rope_diameter="1.25 in", sheave_diameter="50 in",
    ...     wire_strength="240 ksi",
    ... )
    >>> models = [rw.fatigue.DruckerTachau(), rw.fatigue.En13001(1.0)]
    >>> for found in rw.fatigue.models_at(point, models):
    ...     print(found.model.name, found.holds, found.reason[:40])
    fatigue.DruckerTachau False pressure_ratio = 0.004 is outside 0.0014
    fatigue.En13001 False breaking_force is not given
    """
    return tuple(model.applicability(point) for model in models)


@dataclass(frozen=True)
class ComparedLife:
    """What one model says at a point.

    Attributes
    ----------
    applicability
        Whether it holds there.
    life
        Its life, computed even outside the published range; None if an argument is missing.
    """

    applicability: Applicability
    life: Life | None

    @property
    def model(self) -> LifeModel:
        """The model."""
        return self.applicability.model


@dataclass(frozen=True)
class Comparison:
    """The models at one point, side by side; prints as a table."""

    point: BendPoint
    rows: tuple[ComparedLife, ...]

    def __iter__(self) -> Iterator[ComparedLife]:
        return iter(self.rows)

    def __len__(self) -> int:
        return len(self.rows)

    def __str__(self) -> str:
        lines = [f"{'model':<24} {'cycles':>11}  {'counts to':<14} holds"]
        for row in self.rows:
            name = row.model.name.removeprefix("fatigue.")
            cycles = "-" if row.life is None else f"{row.life.cycles:.4g}"
            basis = row.model.describe().basis
            holds = "yes" if row.applicability.holds else f"no: {row.applicability.reason}"
            lines.append(f"{name:<24} {cycles:>11}  {basis:<14} {holds}")
        lines.append(
            "Estimates for comparison. When a rope comes off is decided by inspection, the rope "
            "maker's manual, local codes and licensed practice."
        )
        return "\n".join(lines)


def compare(point: BendPoint, models: Iterable[LifeModel]) -> Comparison:
    """Ask several models about one bend; lives outside a published range are given and marked.

    Lives that count to different ends (discard, breakage, the limit of a proof) do not mean the
    same; the table says what each counts to.

    Examples
    --------
    >>> import ropewalk as rw
    >>> point = rw.fatigue.BendPoint(
    ...     rope_tension="12096 lbf", rope_diameter="1 in", sheave_diameter="72 in",
    ...     wire_strength="240 ksi", breaking_force="84672 lbf",
    ... )
    >>> found = rw.fatigue.compare(point, [rw.fatigue.DruckerTachau(), rw.fatigue.En13001(1.0)])
    >>> [round(row.life.cycles) for row in found]
    [1000000, 500000]
    """
    rows = []
    for found in models_at(point, models):
        life = None
        if not found.missing:
            try:
                life = found.model.at(point, outside_validity="ignore")
            except RopewalkError:
                life = None  # the equation overflows there
        rows.append(ComparedLife(found, life))
    return Comparison(point, tuple(rows))
