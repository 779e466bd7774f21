"""What a life model is asked about, and what it answers."""

from __future__ import annotations

from dataclasses import dataclass, field
from statistics import NormalDist
from typing import TYPE_CHECKING, Any, NamedTuple, TypeAlias

import numpy as np
import numpy.typing as npt

from ropewalk._border import NumberLike, Quantity, QuantityLike, arguments, to_quantity
from ropewalk.errors import InadmissibleError, RowStatus, UnitError

if TYPE_CHECKING:
    from ropewalk.fatigue._factors import EnduranceFactors
    from ropewalk.rope import Rope

__all__ = ["BendPoint", "Life", "LifeBand"]

Cycles: TypeAlias = float | npt.NDArray[np.float64]

#: Roles of the arguments of a bend, in the order of the core.
ROLES = {
    "rope_tension": "force",
    "rope_diameter": "length",
    "sheave_diameter": "length",
    "wire_strength": "stress",
    "breaking_force": "force",
    "bend_length": "length",
    "life_factor": "number",
}


def bend_values(
    where: str,
    *,
    rope: Rope | None,
    factors: EnduranceFactors | None,
    **given: Any,
) -> dict[str, Any]:
    """SI values of the arguments of a bend, those of the rope among them; None where not given."""
    if rope is not None:
        for name in ("diameter_si", "wire_strength_si", "breaking_force_si"):
            if not hasattr(rope, name):
                text = f"rope must be a ropewalk.Rope, got {rope!r}"
                raise UnitError(f"{where}(): {text}", where, "rope")
        if given["rope_diameter"] is not None:
            text = "give rope or rope_diameter, not both"
            raise InadmissibleError(f"{where}(): {text}", where, "rope_diameter")
    named = {name: value for name, value in given.items() if value is not None}
    values: dict[str, Any] = dict.fromkeys(ROLES)
    values.update(zip(named, arguments(where, **named), strict=True))
    if rope is not None:
        values["rope_diameter"] = rope.diameter_si
        # What the caller gives stands above the catalog.
        for name in ("wire_strength", "breaking_force"):
            if values[name] is None:
                values[name] = getattr(rope, f"{name}_si")
    if factors is not None:
        if not hasattr(factors, "product"):
            text = f"factors must be EnduranceFactors, got {factors!r}"
            raise UnitError(f"{where}(): {text}", where, "factors")
        factor = values["life_factor"]
        values["life_factor"] = factors.product * (1.0 if factor is None else factor)
    return values


@dataclass(frozen=True, init=False)
class BendPoint:
    """One bend: a rope under a tension over a sheave.

    Parameters
    ----------
    rope_tension : force
        Tension in the rope.
    sheave_diameter : length, optional
        Tread diameter of the sheave.
    rope : Rope, optional
        Gives diameter, wire strength and breaking force.
    rope_diameter : length, optional
        Nominal diameter, where there is no `rope`.
    wire_strength : stress, optional
        Tensile strength of the wires.
    breaking_force : force, optional
        Minimum breaking force of the rope.
    bend_length : length, optional
        Length of the rope piece that passes the sheave under the highest tension.
    factors : EnduranceFactors, optional
        What multiplies the life.

    Examples
    --------
    >>> import ropewalk as rw
    >>> point = rw.fatigue.BendPoint(
    ...     rope_tension="40 kip",
    ...     rope_diameter="1-3/8 in",
    ...     sheave_diameter="60 in",
    ...     wire_strength="1770 MPa",
    ... )
    >>> round(point.bend_ratio, 2)
    43.64
    """

    rope_tension_si: float
    rope_diameter_si: float | None
    sheave_diameter_si: float | None
    wire_strength_si: float | None
    breaking_force_si: float | None
    bend_length_si: float | None
    life_factor: float | None

    def __init__(
        self,
        *,
        rope_tension: QuantityLike,
        sheave_diameter: QuantityLike | None = None,
        rope: Rope | None = None,
        rope_diameter: QuantityLike | None = None,
        wire_strength: QuantityLike | None = None,
        breaking_force: QuantityLike | None = None,
        bend_length: QuantityLike | None = None,
        factors: EnduranceFactors | None = None,
        life_factor: NumberLike | None = None,
    ) -> None:
        where = "fatigue.BendPoint"
        values = bend_values(
            where,
            rope=rope,
            factors=factors,
            rope_tension=rope_tension,
            rope_diameter=rope_diameter,
            sheave_diameter=sheave_diameter,
            wire_strength=wire_strength,
            breaking_force=breaking_force,
            bend_length=bend_length,
            life_factor=life_factor,
        )
        for name, value in values.items():
            if np.ndim(value):
                text = f"{name} must be one value, got an array; a point is one bend"
                raise InadmissibleError(f"{where}(): {text}", where, name)
            object.__setattr__(self, name if name == "life_factor" else f"{name}_si", value)

    @property
    def si(self) -> dict[str, float | None]:
        """Arguments as the core takes them."""
        return {n: getattr(self, n if n == "life_factor" else f"{n}_si") for n in ROLES}

    @property
    def rope_tension(self) -> Quantity:
        """Tension in the rope."""
        quantity: Quantity = to_quantity(self.rope_tension_si, "force")
        return quantity

    @property
    def bend_ratio(self) -> float | None:
        """Sheave diameter over rope diameter; None if one of them is not given."""
        if self.rope_diameter_si is None or self.sheave_diameter_si is None:
            return None
        return self.sheave_diameter_si / self.rope_diameter_si


class LifeBand(NamedTuple):
    """Lives between which a rope ends with a given probability."""

    low: Cycles
    high: Cycles


@dataclass(frozen=True, eq=False, repr=False)
class Life:
    """Bending cycles a model gives, and what they mean.

    Attributes
    ----------
    cycles : float or array
        Median life in bending cycles (straight - bent - straight); endurance factors included.
    status : RowStatus or array of uint8
        Per row: fine, outside the published range, or no value.
    model : str
        Model that was asked, ``"fatigue.DruckerTachau"``.
    basis : str
        What the cycles count to: ``"discard"``, ``"breakage"``, ``"design"`` (limit of a proof of
        competence) or ``"as reference"``.
    scatter : float or None
        Standard deviation of the decimal logarithm of life; None if nobody gave one.
    source, standing : str
        Where the model is from, and how far it can be relied on.
    """

    cycles: Cycles
    status: Any
    model: str
    basis: str
    scatter: float | None
    source: str = field(default="")
    standing: str = field(default="")

    @property
    def holds(self) -> Any:
        """True where the model is inside its published range."""
        return self.status == 0

    def quantile(self, probability: float) -> Cycles:
        """Life that a share `probability` of ropes does not reach, life being lognormal.

        Raises
        ------
        InadmissibleError
            If no scatter is known: none is published with these models, it has to be given.
        """
        where = f"{self.model}.quantile"
        if self.scatter is None:
            text = (
                "the scatter of life is not published with this model; give the standard "
                "deviation of lg N, scatter=…, when the model is made"
            )
            raise InadmissibleError(f"{where}(): {text}", where, "scatter")
        if not 0.0 < probability < 1.0:
            text = f"probability must be between 0 and 1, got {probability!r}"
            raise InadmissibleError(f"{where}(): {text}", where, "probability")
        shift: Cycles = self.cycles * 10.0 ** (NormalDist().inv_cdf(probability) * self.scatter)
        return shift

    def band(self, probability: float = 0.8) -> LifeBand:
        """Lives between which the share `probability` of ropes ends, the rest equally outside.

        Examples
        --------
        >>> import ropewalk as rw
        >>> life = rw.fatigue.DruckerTachau(scatter=0.2).cycles(
        ...     rope_tension="30 kip",
        ...     rope_diameter="1.25 in",
        ...     sheave_diameter="80 in",
        ...     wire_strength="240 ksi",
        ... )
        >>> low, high = life.band(0.8)
        >>> round(low / life.cycles, 3), round(life.cycles / high, 3)
        (0.554, 0.554)
        """
        if not 0.0 < probability < 1.0:
            where = f"{self.model}.band"
            text = f"probability must be between 0 and 1, got {probability!r}"
            raise InadmissibleError(f"{where}(): {text}", where, "probability")
        tail = 0.5 * (1.0 - probability)
        return LifeBand(self.quantile(tail), self.quantile(1.0 - tail))

    def __repr__(self) -> str:
        ends = {
            "discard": "to discard",
            "breakage": "to breakage",
            "design": "to the limit of the proof",
            "as reference": "counted as the reference life",
        }
        if np.ndim(self.cycles):
            marked = int(np.count_nonzero(self.status))
            rows = f"{np.size(self.cycles)} lives {ends[self.basis]}"
            place = f"{marked} of them outside the published range or without a value"
        else:
            rows = f"{self.cycles:.4g} cycles {ends[self.basis]}"
            inside = self.status == RowStatus.OK
            place = "inside the published range" if inside else "outside the published range"
        return f"<Life: {rows}, {place}, {self.model}>"
