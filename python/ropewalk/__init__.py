"""Unit-safe computations for drilling hoists and their wire rope.

>>> import ropewalk as rw
>>> pressure = rw.sheave.bearing_pressure("30000 lbf", "1.25 in", "50 in")
>>> print(f"{pressure.to('psi'):.1f}")
960.0 pound_force_per_square_inch

Subjects are modules: `rope`, `sheave`, `reeving`, `drum`, `drawworks`, `brake`, `overtravel`,
`compensator`, `mast`, `suspension`, `deadline`, `dynamics`, `rainflow`, `fatigue`, `fit`,
`design_factor`, `drillstring`, `work`; on top of them stand `line`, `rig` and `study`. `units`
is the pint registry in use, `Q` makes a quantity, `si` is the same functions on plain SI numbers.

Nothing is loaded before it is used, and importing changes no state outside this package.
"""

from __future__ import annotations

import importlib
from typing import TYPE_CHECKING, Any

if TYPE_CHECKING:
    import pint

    from ropewalk import (
        brake,
        check,
        compensator,
        deadline,
        design_factor,
        drawworks,
        drillstring,
        drum,
        dynamics,
        errors,
        fatigue,
        fit,
        line,
        mast,
        overtravel,
        plot,
        rainflow,
        reeving,
        report,
        rig,
        rope,
        sheave,
        si,
        study,
        suspension,
        testing,
        work,
    )
    from ropewalk._units import Q, Quantity, QuantityLike
    from ropewalk._version import __version__
    from ropewalk.compensator import Compensator, SeaState
    from ropewalk.deadline import WeightIndicator
    from ropewalk.drillstring import DrillString
    from ropewalk.drum import Drum
    from ropewalk.errors import RopewalkError
    from ropewalk.line import (
        Campaign,
        SlipCutProgram,
        compare_programs,
        optimize_program,
        run_line,
    )
    from ropewalk.mast import Mast
    from ropewalk.reeving import Reeving
    from ropewalk.rig import Rig, load_rig
    from ropewalk.rope import Rope
    from ropewalk.study.lines_strung import lines_strung
    from ropewalk.study.sheave_life import sheave_life
    from ropewalk.study.sweep import sweep
    from ropewalk.suspension import Suspension

    units: pint.UnitRegistry[Any]

__all__ = [
    "Campaign",
    "Compensator",
    "DrillString",
    "Drum",
    "Mast",
    "Q",
    "Quantity",
    "QuantityLike",
    "Reeving",
    "Rig",
    "Rope",
    "RopewalkError",
    "SeaState",
    "SlipCutProgram",
    "Suspension",
    "WeightIndicator",
    "__version__",
    "brake",
    "check",
    "compare_programs",
    "compensator",
    "deadline",
    "design_factor",
    "drawworks",
    "drillstring",
    "drum",
    "dynamics",
    "errors",
    "fatigue",
    "fit",
    "line",
    "lines_strung",
    "load_rig",
    "mast",
    "optimize_program",
    "overtravel",
    "plot",
    "rainflow",
    "reeving",
    "report",
    "rig",
    "rope",
    "run_line",
    "sheave",
    "sheave_life",
    "si",
    "study",
    "suspension",
    "sweep",
    "testing",
    "units",
    "work",
]

_SUBMODULES = {
    "brake",
    "check",
    "compensator",
    "deadline",
    "design_factor",
    "drawworks",
    "drillstring",
    "drum",
    "dynamics",
    "errors",
    "fatigue",
    "fit",
    "line",
    "overtravel",
    "mast",
    "plot",
    "rainflow",
    "reeving",
    "report",
    "rig",
    "rope",
    "sheave",
    "si",
    "study",
    "suspension",
    "testing",
    "work",
}
_HOMES = {
    "Campaign": "line",
    "Compensator": "compensator",
    "SeaState": "compensator",
    "DrillString": "drillstring",
    "SlipCutProgram": "line",
    "compare_programs": "line",
    "optimize_program": "line",
    "run_line": "line",
    "Drum": "drum",
    "Mast": "mast",
    "Q": "_units",
    "Quantity": "_units",
    "QuantityLike": "_units",
    "Reeving": "reeving",
    "Rig": "rig",
    "Rope": "rope",
    "WeightIndicator": "deadline",
    "RopewalkError": "errors",
    "Suspension": "suspension",
    "__version__": "_version",
    "lines_strung": "study",
    "load_rig": "rig",
    "sheave_life": "study",
    "sweep": "study",
}


def __getattr__(name: str) -> Any:
    if name == "units":
        # Never stored: a program may set its application registry at any moment.
        from ropewalk._units import registry

        return registry()
    if name in _SUBMODULES:
        return importlib.import_module(f"{__name__}.{name}")
    if name in _HOMES:
        value = getattr(importlib.import_module(f"{__name__}.{_HOMES[name]}"), name)
        globals()[name] = value
        return value
    raise AttributeError(f"module {__name__!r} has no attribute {name!r}")


def __dir__() -> list[str]:
    return sorted({*globals(), *__all__})
