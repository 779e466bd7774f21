"""The life models that scale a life you know."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Any

from ropewalk import _core
from ropewalk._border import NumberLike, Quantity, QuantityLike, to_quantity, to_si
from ropewalk.fatigue._hoist_rope import optimal_rope_diameter
from ropewalk.fatigue._model import LifeModel, one_number, optional_number

__all__ = ["En81", "HandbookRelativeLife"]

_REFERENCE = {
    "reference_tension": "force",
    "reference_rope_diameter": "length",
    "reference_sheave_diameter": "length",
}


@dataclass(frozen=True, init=False)
class _Relative(LifeModel):
    """Reference point of a model that gives ratios of lives only."""

    reference_life: float
    reference_tension_si: float
    reference_rope_diameter_si: float
    reference_sheave_diameter_si: float

    def _set_reference(self, reference_life: NumberLike, **reference: QuantityLike) -> None:
        where = f"fatigue.{type(self).__name__}"
        fields = {
            f"{name}_si": to_si(where, name, value, _REFERENCE[name])
            for name, value in reference.items()
        }
        for name, value in fields.items():
            fields[name] = one_number(self, name.removesuffix("_si"), value)
        fields["reference_life"] = one_number(self, "reference_life", reference_life)
        for name, value in fields.items():
            object.__setattr__(self, name, value)

    @property
    def _reference(self) -> tuple[float, float, float, float]:
        return (
            self.reference_life,
            self.reference_tension_si,
            self.reference_rope_diameter_si,
            self.reference_sheave_diameter_si,
        )

    @property
    def reference_tension(self) -> Quantity:
        """Tension at which the life is known."""
        quantity: Quantity = to_quantity(self.reference_tension_si, "force")
        return quantity

    @property
    def reference_rope_diameter(self) -> Quantity:
        """Rope diameter at which the life is known."""
        quantity: Quantity = to_quantity(self.reference_rope_diameter_si, "length")
        return quantity

    @property
    def reference_sheave_diameter(self) -> Quantity:
        """Sheave diameter at which the life is known."""
        quantity: Quantity = to_quantity(self.reference_sheave_diameter_si, "length")
        return quantity


@dataclass(frozen=True, init=False)
class En81(_Relative):
    r"""Relative bending life in the exponents of EN 81-50, scaled by a life you know.

    .. math::
        N = N_{ref} \cdot 10^{\varphi - \varphi_{ref}}, \quad
        \varphi = (b_1 + b_4 \lg\tfrac{D}{d}) \lg\tfrac{S}{d^2} + b_2 \lg\tfrac{D}{d}

    with b1 = 1.8870, b2 = 8.567, b4 = -2.894, S in N and d in mm
    (``fatigue.table("en81_50_exponents")``). The standard's equation for the safety factor of lift
    suspension ropes, solved for the bends, has this form; its own constant counts equivalent
    sheaves and is no life. It knows tension as a share of the breaking force; S/d² stands for it
    here, with F_min/d² = 482.4 N/mm².

    Valid for D/d of at least 40, the least of the lift standard (from memory): it is a lift-rope
    formula. Needs `rope_tension`, `rope_diameter`, `sheave_diameter`; the rope should be like the
    reference rope in construction and grade.

    Source: EN 81-50:2014, 5.12 (exponents from memory); recast by hand.

    Parameters
    ----------
    reference_life : float
        Cycles at the reference point.
    reference_tension : force
    reference_rope_diameter, reference_sheave_diameter : length
        Where they were had.
    scatter : float, optional
        Standard deviation of lg N.

    Examples
    --------
    >>> import ropewalk as rw
    >>> model = rw.fatigue.En81(
    ...     reference_life=200_000,  # invented
    ...     reference_tension="40 kip",
    ...     reference_rope_diameter="1.25 in",
    ...     reference_sheave_diameter="60 in",
    ... )
    >>> life = model.cycles(
    ...     rope_tension="30 kip", rope_diameter="1.25 in", sheave_diameter="60 in"
    ... )
    >>> round(life.cycles / 200_000, 3)
    2.356
    """

    scatter: float | None

    def __init__(
        self,
        *,
        reference_life: NumberLike,
        reference_tension: QuantityLike,
        reference_rope_diameter: QuantityLike,
        reference_sheave_diameter: QuantityLike,
        scatter: float | None = None,
    ) -> None:
        self._set_reference(
            reference_life,
            reference_tension=reference_tension,
            reference_rope_diameter=reference_rope_diameter,
            reference_sheave_diameter=reference_sheave_diameter,
        )
        self._set(scatter=optional_number(self, "scatter", scatter))

    def _make(self) -> Any:
        return _core.fatigue.LifeModel.en81(*self._reference, self.scatter)

    def optimal_rope_diameter(
        self, rope_tension: QuantityLike, sheave_diameter: QuantityLike
    ) -> Quantity:
        """Rope diameter that lives longest under one tension on one sheave."""
        b = {row["symbol"]: row["value"] for row in _core.fatigue.table("en81_50_exponents")}
        # The form has no term for size and none for the wire strength.
        return optimal_rope_diameter(
            rope_tension, sheave_diameter, "1770 MPa", b["b1"], b["b2"], 0.0, b["b4"]
        )


@dataclass(frozen=True, init=False)
class HandbookRelativeLife(_Relative):
    r"""Relative bending life over D/d from a handbook table, scaled by a life you know.

    .. math:: N = N_{ref} \frac{L(D/d)}{L(D_{ref}/d_{ref})} \left(\frac{S}{S_{ref}}\right)^{-m}

    with L from the seven points of ``fatigue.table("relative_bending_life")``, straight between
    them on log-log paper. The table says nothing of tension: without an exponent a tension other
    than the reference tension lies outside the published range.

    Valid for D/d 12 to 30. Needs `rope_tension`, `rope_diameter`, `sheave_diameter`.

    Source: a block maker's rigging handbook, page on sheave size and wire rope life.

    Parameters
    ----------
    reference_life : float
        Cycles at the reference point.
    reference_tension : force
    reference_rope_diameter, reference_sheave_diameter : length
        Where they were had.
    tension_exponent : float, optional
        m, above 0, if you have one.
    scatter : float, optional
        Standard deviation of lg N.

    Examples
    --------
    >>> import ropewalk as rw
    >>> model = rw.fatigue.HandbookRelativeLife(
    ...     reference_life=10_000,  # invented
    ...     reference_tension="20 kip",
    ...     reference_rope_diameter="1 in",
    ...     reference_sheave_diameter="16 in",
    ... )
    >>> life = model.cycles(
    ...     rope_tension="20 kip", rope_diameter="1 in", sheave_diameter="30 in"
    ... )
    >>> round(life.cycles / 10_000, 1)
    4.8
    """

    exponent: float | None
    scatter: float | None

    def __init__(
        self,
        *,
        reference_life: NumberLike,
        reference_tension: QuantityLike,
        reference_rope_diameter: QuantityLike,
        reference_sheave_diameter: QuantityLike,
        tension_exponent: float | None = None,
        scatter: float | None = None,
    ) -> None:
        self._set_reference(
            reference_life,
            reference_tension=reference_tension,
            reference_rope_diameter=reference_rope_diameter,
            reference_sheave_diameter=reference_sheave_diameter,
        )
        self._set(
            exponent=optional_number(self, "tension_exponent", tension_exponent),
            scatter=optional_number(self, "scatter", scatter),
        )

    def _make(self) -> Any:
        return _core.fatigue.LifeModel.handbook_relative_life(
            *self._reference, self.exponent, self.scatter
        )
