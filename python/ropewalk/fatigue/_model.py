"""The common face of all life models."""

from __future__ import annotations

from dataclasses import dataclass
from functools import lru_cache
from typing import TYPE_CHECKING, Any, NamedTuple

import numpy as np

from ropewalk._border import NumberLike, QuantityLike, to_si
from ropewalk._face import Policy, check_options
from ropewalk.errors import InadmissibleError, RowStatus
from ropewalk.fatigue._life import BendPoint, Life, bend_values

if TYPE_CHECKING:
    from ropewalk.fatigue._factors import EnduranceFactors
    from ropewalk.rope import Rope

__all__ = ["Applicability", "BrokenRange", "LifeModel", "ModelDescription", "ValidityRange"]


class ValidityRange(NamedTuple):
    """Range of one quantity in which a model is published."""

    quantity: str
    unit: str
    low: float
    high: float
    source: str
    standing: str


class BrokenRange(NamedTuple):
    """A range that a point leaves, and the value that leaves it."""

    range: ValidityRange
    value: float

    def __str__(self) -> str:
        quantity, unit, low, high, source, standing = self.range
        unit = f" {unit}" if unit else ""
        return (
            f"{quantity} = {self.value:.4g}{unit} is outside {low:.4g} to {high:.4g}{unit} "
            f"({source}; {standing})"
        )


class ModelDescription(NamedTuple):
    """A life model in words and numbers."""

    name: str
    title: str
    equation: str
    basis: str
    scale: str
    source: str
    standing: str
    scatter: float | None
    scatter_standing: str
    needs: tuple[str, ...]
    validity: tuple[ValidityRange, ...]


@dataclass(frozen=True)
class Applicability:
    """Whether a model holds at a point, and if not, why.

    Attributes
    ----------
    model
        The model.
    missing
        Arguments the model needs and the point does not have.
    broken
        Published ranges the point leaves, with who says so.
    """

    model: LifeModel
    missing: tuple[str, ...]
    broken: tuple[BrokenRange, ...]

    @property
    def holds(self) -> bool:
        """True if nothing is missing and no range is left."""
        return not self.missing and not self.broken

    @property
    def reason(self) -> str:
        """Why the model does not hold; empty if it does."""
        texts = [f"{name} is not given" for name in self.missing]
        return "; ".join(texts + [str(one) for one in self.broken])


def one_number(model: LifeModel, name: str, value: Any) -> float:
    """One constant of a model as a number; refuses arrays and whatever has a unit."""
    where = f"fatigue.{type(model).__name__}"
    number = to_si(where, name, value, "number")
    if np.ndim(number):
        text = f"{name} must be one number, got an array"
        raise InadmissibleError(f"{where}(): {text}", where, name)
    return float(number)


def optional_number(model: LifeModel, name: str, value: Any) -> float | None:
    """One constant that may be left out."""
    return None if value is None else one_number(model, name, value)


@lru_cache(maxsize=256)
def _native(model: LifeModel) -> Any:
    return model._make()


class LifeModel:
    """Bending-over-sheave life: what all models have in common."""

    def _make(self) -> Any:
        """Make the compiled model; raises for constants that cannot be."""
        raise NotImplementedError

    def _set(self, **fields: Any) -> None:
        """Store the fields of a frozen model and let the core look at them."""
        for name, value in fields.items():
            object.__setattr__(self, name, value)
        _native(self)

    def _describe(self) -> dict[str, Any]:
        description: dict[str, Any] = _native(self).describe()
        return description

    @property
    def name(self) -> str:
        """Name in messages, ``"fatigue.DruckerTachau"``."""
        return str(_native(self).name)

    @property
    def source(self) -> str:
        """Publication the model is from."""
        return str(self._describe()["source"])

    def describe(self) -> ModelDescription:
        """Describe the model: equation, needs, where it holds, how far it can be relied on."""
        record = self._describe()
        record["needs"] = tuple(record["needs"])
        record["validity"] = tuple(ValidityRange(**one) for one in record["validity"])
        return ModelDescription(**record)

    def cycles(
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
        outside_validity: Policy = "raise",
        threads: int = 1,
    ) -> Life:
        """Bending cycles, for one bend or for arrays of them.

        Parameters
        ----------
        rope_tension : force
            Tension in the rope.
        sheave_diameter : length, optional
            Tread diameter of the sheave; `describe` tells which arguments a model needs.
        rope : Rope, optional
            Gives diameter, wire strength and breaking force.
        rope_diameter : length, optional
            Nominal diameter, where there is no `rope`.
        wire_strength, breaking_force : stress and force, optional
            Stand above what the rope says.
        bend_length : length, optional
            Length of the rope piece that passes the sheave under the highest tension.
        factors : EnduranceFactors, optional
            What multiplies the life.
        life_factor : number, optional
            One more multiplier; may be an array.
        outside_validity : {"raise", "warn", "ignore"}, default "raise"
            What to do outside the range the model is published for. With ``"warn"`` and
            ``"ignore"`` the life is computed by the same equation and its status says so.
        threads : int, default 1
            Threads for arrays; any number gives the same answer.

        Returns
        -------
        Life

        Raises
        ------
        UnitError, InadmissibleError, ValidityError
            For an argument without its unit, one that cannot be or is missing, and a bend outside
            the published range.
        """
        where = self.name
        check_options(where, outside_validity, threads)
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
        return self._life(values, outside_validity, threads)

    def cycles_si(
        self,
        rope_tension: NumberLike,
        rope_diameter: NumberLike | None = None,
        sheave_diameter: NumberLike | None = None,
        wire_strength: NumberLike | None = None,
        breaking_force: NumberLike | None = None,
        bend_length: NumberLike | None = None,
        life_factor: NumberLike | None = None,
        *,
        outside_validity: Policy = "raise",
        threads: int = 1,
    ) -> tuple[Any, Any]:
        """Cycles and status from plain SI numbers or float64 arrays: N, m, m, Pa, N, m.

        For hot loops; units are not looked at, everything else is.
        """
        found: tuple[Any, Any] = _native(self).cycles(
            rope_tension,
            rope_diameter,
            sheave_diameter,
            wire_strength,
            breaking_force,
            bend_length,
            life_factor,
            outside_validity=outside_validity,
            threads=threads,
        )
        return found

    def at(self, point: BendPoint, *, outside_validity: Policy = "raise") -> Life:
        """Bending cycles at a point."""
        check_options(self.name, outside_validity, 1)
        return self._life(point.si, outside_validity, 1)

    def _life(self, si: dict[str, Any], outside_validity: Policy, threads: int) -> Life:
        model = _native(self)
        cycles, status = model.cycles(**si, outside_validity=outside_validity, threads=threads)
        about = self._describe()
        return Life(
            cycles=cycles,
            status=RowStatus(status) if isinstance(status, int) else status,
            model=about["name"],
            basis=about["basis"],
            scatter=about["scatter"],
            source=about["source"],
            standing=about["standing"],
        )

    def applicability(self, point: BendPoint) -> Applicability:
        """Whether the model holds at a point: what is missing, which range is left, who says so."""
        found = _native(self).applicability(**point.si)
        broken = []
        for record in found["broken"]:
            value = record.pop("value")
            broken.append(BrokenRange(ValidityRange(**record), value))
        return Applicability(self, tuple(found["missing"]), tuple(broken))

    def tension_exponent(self, bend_ratio: NumberLike) -> float | None:
        """Slope d lg N / d lg S of life against tension at D/d; None if the model has none.

        It is the exponent of `equivalent_force_ratio`.
        """
        ratio = to_si(f"{self.name}.tension_exponent", "bend_ratio", bend_ratio, "number")
        slope: float | None = _native(self).tension_exponent(ratio)
        return slope
