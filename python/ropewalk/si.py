"""The same functions on plain SI numbers and float64 arrays: the compiled core itself.

For hot loops, optimizers and whoever keeps track of units elsewhere. Units are not checked here,
but an argument that carries one is refused; admissible and valid ranges are checked as always.

>>> import ropewalk as rw
>>> rw.si.sheave.bearing_pressure(1000.0, 0.01, 1.0)
200000.0
"""

from __future__ import annotations

from typing import TYPE_CHECKING, Any

if TYPE_CHECKING:
    from ropewalk._core import (
        brake,
        compensator,
        deadline,
        design_factor,
        drawworks,
        drillstring,
        drum,
        dynamics,
        fatigue,
        fit,
        mast,
        overtravel,
        rainflow,
        reeving,
        rope,
        sheave,
        suspension,
        work,
    )

__all__ = [
    "brake",
    "compensator",
    "deadline",
    "design_factor",
    "drawworks",
    "drillstring",
    "drum",
    "dynamics",
    "fatigue",
    "fit",
    "mast",
    "overtravel",
    "rainflow",
    "reeving",
    "rope",
    "sheave",
    "suspension",
    "work",
]


def __getattr__(name: str) -> Any:
    if name not in __all__:
        raise AttributeError(f"module {__name__!r} has no attribute {name!r}")
    from ropewalk import _core

    subject = getattr(_core, name)
    globals()[name] = subject
    return subject


def __dir__() -> list[str]:
    return sorted({*globals(), *__all__})
