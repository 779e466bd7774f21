"""The life models a rig file has constants for, in the form a study takes them."""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING, Any

import numpy as np
import numpy.typing as npt

from ropewalk._units import Q

if TYPE_CHECKING:
    from ropewalk.rig import Life
    from ropewalk.rope import Rope

Array = npt.NDArray[np.float64]


@dataclass(frozen=True, slots=True)
class LifeModel:
    """A fatigue model with the name it has in a study.

    Attributes
    ----------
    name
        Name in tables and legends.
    model
        One of the models of `ropewalk.fatigue`.
    rope_class
        Class of rope the model is published for; empty if it is for any.
    """

    name: str
    model: Any
    rope_class: str = ""

    @property
    def source(self) -> str:
        """Publication the model is from."""
        return str(self.model.source)

    @property
    def counts_to(self) -> str:
        """What the life ends with, ``"discard"`` or ``"breakage"``; relative models as the rig."""
        basis = str(self.model.describe().basis)
        return "discard" if basis == "as reference" else basis

    def cycles_si(
        self,
        tension: npt.ArrayLike,
        rope: Rope,
        sheave_diameter: Array,
        life_factor: float = 1.0,
    ) -> tuple[Array, npt.NDArray[np.bool_]]:
        """Return cycles, and where the model is outside its published range.

        Parameters
        ----------
        tension
            Rope tension, N; shapes of `tension` and `sheave_diameter` are broadcast.
        rope
            The rope.
        sheave_diameter
            Tread diameter, m.
        life_factor
            Multiplies the life.
        """
        life = self.model.cycles(
            rope_tension=Q(np.asarray(tension), "N"),
            rope=rope,
            sheave_diameter=Q(sheave_diameter, "m"),
            life_factor=life_factor,
            outside_validity="ignore",
        )
        outside = np.asarray(life.status) != 0
        if self.rope_class and rope.rope_class != self.rope_class:
            outside = np.ones_like(outside)
        return np.asarray(life.cycles), outside


def models_of(life: Life, rope: Rope) -> tuple[LifeModel, ...]:
    """Every life model the rig file gives the constants for.

    Parameters
    ----------
    life
        The ``[life]`` of the rig.
    rope
        The rope that the constants belong to.
    """
    from ropewalk import fatigue

    models = [LifeModel("bearing-pressure ratio", fatigue.DruckerTachau(), "6x19")]
    if life.reference is not None:
        reference: dict[str, Any] = {
            "reference_life": life.reference.cycles,
            "reference_tension": Q(life.reference.rope_tension, "N"),
            "reference_rope_diameter": rope.diameter,
            "reference_sheave_diameter": Q(life.reference.sheave_diameter, "m"),
        }
        models.append(LifeModel("lift-rope exponents", fatigue.En81(**reference)))
        by_ratio = fatigue.HandbookRelativeLife(
            **reference, tension_exponent=life.reference.tension_exponent
        )
        models.append(LifeModel("relative life by D/d", by_ratio))
    if (law := life.power_law) is not None:
        fitted = fatigue.PowerLaw(
            law.scale,
            law.exponent,
            basis="discard",
            fitted_over=(law.fitted_from, law.fitted_to),
        )
        models.append(LifeModel("power law", fitted))
    return tuple(models)
