"""The one table of arguments and functions that the Python face works from.

Units, names and meanings stand here and nowhere else: conversion, messages and the Parameters and
Returns sections of docstrings are made from this table, and a test holds it against the dimensions
the compiled core reports.

To add a row function, add one entry to `SIGNATURES` in the file of its subject, and one entry to
`PARAMETERS` there for each argument no other function has (to ``parameters.py`` if two subjects
share it). The same argument has the same name and role everywhere.
"""

from __future__ import annotations

from ropewalk._signature import (
    brake,
    compensator,
    deadline,
    design_factor,
    drawworks,
    drillstring,
    drum,
    dynamics,
    fatigue,
    mast,
    overtravel,
    parameters,
    reeving,
    rope,
    sheave,
    suspension,
    work,
)
from ropewalk._signature.records import Parameter, Role, Signature
from ropewalk._signature.roles import ROLES

__all__ = ["PARAMETERS", "ROLES", "SIGNATURES", "Parameter", "Role", "Signature"]

_SUBJECTS = (
    sheave,
    reeving,
    drum,
    brake,
    overtravel,
    deadline,
    dynamics,
    drawworks,
    compensator,
    mast,
    suspension,
    rope,
    fatigue,
    design_factor,
    drillstring,
    work,
)


def _merged_parameters() -> dict[str, Parameter]:
    merged = dict(parameters.PARAMETERS)
    for subject in _SUBJECTS:
        twice = merged.keys() & subject.PARAMETERS.keys()
        if twice:
            raise ValueError(f"{subject.__name__} defines again: {', '.join(sorted(twice))}")
        merged.update(subject.PARAMETERS)
    return merged


#: Argument name → what it is.
PARAMETERS = _merged_parameters()

#: "subject.function" → its arguments and result.
SIGNATURES: dict[str, Signature] = {
    name: signature for subject in _SUBJECTS for name, signature in subject.SIGNATURES.items()
}
