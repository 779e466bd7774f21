"""The life models that need no reference life, each with the constants it takes."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Any, Literal, TypeAlias

from ropewalk import _core
from ropewalk._border import Quantity, QuantityLike
from ropewalk._names import to_name
from ropewalk.fatigue._hoist_rope import optimal_rope_diameter
from ropewalk.fatigue._model import LifeModel, one_number, optional_number

__all__ = ["DruckerTachau", "En13001", "FeyrerForm", "FeyrerSecondEdition", "PowerLaw"]

#: What the constants of a fitted model count to.
Basis: TypeAlias = Literal["discard", "breakage"]


@dataclass(frozen=True)
class DruckerTachau(LifeModel):
    r"""Bearing-pressure ratio against bends to failure, for ropes of the 6x19 class.

    .. math:: B = \frac{2F}{d D S_u}, \quad N = N_1 (B/B_1)^m

    through the published points (0.0028, 200 000 bends) and (0.0014, 1 000 000 bends), straight on
    log-log paper; ``fatigue.table("drucker_tachau_points")`` says where they are from. Valid
    between them. S_u is the ultimate strength of the wire (`wire_strength`).

    Needs `rope_tension`, `rope_diameter`, `sheave_diameter`, `wire_strength`.

    Source: D. C. Drucker and H. Tachau, A new design criterion for wire rope, Trans. ASME 67
    (1945).

    Parameters
    ----------
    scatter : float, optional
        Standard deviation of lg N, if you have one; none is published.

    Examples
    --------
    >>> import ropewalk as rw
    >>> model = rw.fatigue.DruckerTachau()
    >>> life = model.cycles(
    ...     rope_tension="12096 lbf",
    ...     rope_diameter="1 in",
    ...     sheave_diameter="72 in",
    ...     wire_strength="240 ksi",
    ... )
    >>> round(life.cycles)
    1000000
    """

    scatter: float | None = None

    def __post_init__(self) -> None:
        self._set(scatter=optional_number(self, "scatter", self.scatter))

    def _make(self) -> Any:
        return _core.fatigue.LifeModel.drucker_tachau(self.scatter)


@dataclass(frozen=True)
class PowerLaw(LifeModel):
    r"""Life as a power of the bearing pressure, both constants yours.

    .. math:: N = A (p/R_0)^{-m}, \quad p = 2F/(dD)

    The form of Drucker & Tachau (1945). Needs `rope_tension`, `rope_diameter`, `sheave_diameter`,
    `wire_strength`.

    Parameters
    ----------
    scale : float
        A, the cycles the line has at p = R0.
    exponent : float
        m, above 0.
    basis : {"discard", "breakage"}
        What the fitted lives count to.
    scatter : float, optional
        Standard deviation of lg N.
    fitted_over : pair of floats, optional
        Least and largest p/R0 of the data; lives outside are then marked.

    Examples
    --------
    >>> import ropewalk as rw
    >>> model = rw.fatigue.PowerLaw(0.25, 2.3, basis="discard")  # invented constants
    >>> model.tension_exponent(36)
    -2.3
    """

    scale: float
    exponent: float
    basis: Basis
    scatter: float | None = None
    fitted_over: tuple[float, float] | None = None

    def __post_init__(self) -> None:
        low_high = self.fitted_over
        if low_high is not None:
            low, high = low_high
            low_high = one_number(self, "fitted_over", low), one_number(self, "fitted_over", high)
        self._set(
            scale=one_number(self, "scale", self.scale),
            exponent=one_number(self, "exponent", self.exponent),
            basis=to_name("fatigue.PowerLaw", "basis", self.basis),
            scatter=optional_number(self, "scatter", self.scatter),
            fitted_over=low_high,
        )

    def _make(self) -> Any:
        return _core.fatigue.LifeModel.power_law(
            self.scale, self.exponent, self.basis, self.scatter, self.fitted_over
        )


@dataclass(frozen=True, kw_only=True)
class FeyrerForm(LifeModel):
    r"""Feyrer's regression of bending tests, form of the first edition, constants yours.

    .. math::
        \lg N = b_0 + (b_1 + b_4 \lg\tfrac{D}{d})
            (\lg\tfrac{S}{d^2} - 0.4 \lg\tfrac{R_0}{1770})
            + b_2 \lg\tfrac{D}{d} + b_3 \lg d + \frac{1}{b_5 + \lg(l/d)}

    with S in N, d in mm, R0 in N/mm². The constants belong to a rope construction and to what is
    counted to; the book tabulates them and they are entered from there: none are bundled.

    **b3 is not the same in the two editions.** Here it goes with lg d and the product of tension
    and D/d has b4; in the second edition that product has b3 (`FeyrerSecondEdition`). Constants go
    with the form they were fitted in.

    Valid for D/d 10 to 63, d 8 to 44 mm, S/d² 40 to 500 N/mm², l/d at least 10, R0 1370 to
    2160 N/mm² (from memory). Needs `rope_tension`, `rope_diameter`, `sheave_diameter`,
    `wire_strength`, `bend_length`.

    Source: K. Feyrer, Wire Ropes: Tension, Endurance, Reliability, 1st ed. (2007); the form from
    memory.

    Parameters
    ----------
    b0, b1, b2, b3, b4, b5 : float
        Constants.
    basis : {"discard", "breakage"}
        What the constants count to.
    scatter : float, optional
        Standard deviation of lg N.

    Examples
    --------
    >>> import ropewalk as rw
    >>> model = rw.fatigue.FeyrerForm(  # invented constants
    ...     b0=1.0, b1=0.5, b2=6.5, b3=-0.3, b4=-1.8, b5=1.2, basis="discard"
    ... )
    >>> round(model.tension_exponent(25), 3)
    -2.016
    """

    b0: float
    b1: float
    b2: float
    b3: float
    b4: float
    b5: float
    basis: Basis
    scatter: float | None = None

    def __post_init__(self) -> None:
        names = ("b0", "b1", "b2", "b3", "b4", "b5")
        self._set(
            **{name: one_number(self, name, getattr(self, name)) for name in names},
            basis=to_name("fatigue.FeyrerForm", "basis", self.basis),
            scatter=optional_number(self, "scatter", self.scatter),
        )

    def _make(self) -> Any:
        return _core.fatigue.LifeModel.feyrer_form(
            self.b0, self.b1, self.b2, self.b3, self.b4, self.b5, self.basis, self.scatter
        )

    def optimal_rope_diameter(
        self, rope_tension: QuantityLike, sheave_diameter: QuantityLike, wire_strength: QuantityLike
    ) -> Quantity:
        """Rope diameter that lives longest under one tension on one sheave, l/d being kept."""
        return optimal_rope_diameter(
            rope_tension, sheave_diameter, wire_strength, self.b1, self.b2, self.b3, self.b4
        )


@dataclass(frozen=True, kw_only=True)
class FeyrerSecondEdition(LifeModel):
    r"""Feyrer's regression of bending tests, form of the second edition, constants yours.

    .. math::
        \lg N = b_0 + (b_1 + b_3 \lg\tfrac{D}{d})
            (\lg\tfrac{S}{d^2} - 0.4 \lg\tfrac{R_0}{1770})
            + b_2 \lg\tfrac{D}{d} + \lg f_d + \lg f_L + \lg f_C

    with f_d and f_L as in `size_factor` and `length_factor`, f_C from `core_factor`. Note that b3
    belongs to the product of tension and D/d here, not to the size as in `FeyrerForm`.

    Valid and needed as for `FeyrerForm`.

    Source: K. Feyrer, Wire Ropes, 2nd ed. (2015), eqs. 3.55 and 3.85, put together from Table 3.14a
    (factors) and eq. 3.93b (which coefficients the tension has).

    Parameters
    ----------
    b0, b1, b2, b3 : float
        Constants.
    basis : {"discard", "breakage"}
        What the constants count to.
    core_factor : float, default 1.0
        Factor f_C of core and number of strands.
    scatter : float, optional
        Standard deviation of lg N.

    Examples
    --------
    >>> import ropewalk as rw
    >>> core = rw.fatigue.core_factor("IWRC", strands=6)
    >>> model = rw.fatigue.FeyrerSecondEdition(  # invented constants
    ...     b0=1.5, b1=0.5, b2=6.5, b3=-1.8, basis="breakage", core_factor=core.value
    ... )
    >>> model.describe().validity[0].quantity
    'bend_ratio'
    """

    b0: float
    b1: float
    b2: float
    b3: float
    basis: Basis
    core_factor: float = 1.0
    scatter: float | None = None

    def __post_init__(self) -> None:
        names = ("b0", "b1", "b2", "b3", "core_factor")
        self._set(
            **{name: one_number(self, name, getattr(self, name)) for name in names},
            basis=to_name("fatigue.FeyrerSecondEdition", "basis", self.basis),
            scatter=optional_number(self, "scatter", self.scatter),
        )

    def _make(self) -> Any:
        return _core.fatigue.LifeModel.feyrer_second_edition(
            self.b0, self.b1, self.b2, self.b3, self.core_factor, self.basis, self.scatter
        )


@dataclass(frozen=True)
class En13001(LifeModel):
    r"""Bendings that the fatigue proof of EN 13001-3-2 allows under a constant force.

    .. math:: w = w_D \left(\frac{F_u f_f}{\gamma_{rf} F}\right)^3,
        \quad w_D = 5 \cdot 10^5, \; \gamma_{rf} = 7

    The proof solved for the number of bendings. It is the limit of a proof of competence with its
    safety in it, not an estimate of a mean life. All numbers are from memory of the standard: check
    them against it before a proof is signed.

    Valid up to the top class of force histories, s_r = 4. Needs `rope_tension`, `breaking_force`.

    Source: EN 13001-3-2:2014, from memory; solved by hand.

    Parameters
    ----------
    further_influences : float
        Product f_f of the factors f_f1, f_f2, … of the standard's tables; it has no default.

    Examples
    --------
    >>> import ropewalk as rw
    >>> proof = rw.fatigue.En13001(1.0)
    >>> round(proof.cycles(rope_tension="100 kN", breaking_force="700 kN").cycles)
    500000
    """

    further_influences: float

    def __post_init__(self) -> None:
        name = "further_influences"
        self._set(further_influences=one_number(self, name, self.further_influences))

    def _make(self) -> Any:
        return _core.fatigue.LifeModel.en13001(self.further_influences)
