"""Units a rig file declares for its bare numbers, in ``units``."""

from __future__ import annotations

import difflib
from collections.abc import Mapping
from typing import Any

from pydantic import BaseModel

from ropewalk._border import to_si
from ropewalk._signature import ROLES
from ropewalk.errors import RopewalkError
from ropewalk.rig._fields import NoUnits
from ropewalk.rig.parameters import Shape, shape_of
from ropewalk.rig.problems import KeyPath, value_text

#: Role → unit in which a bare number is meant.
Units = Mapping[str, str]

_WITH_UNIT = {name: role for name, role in ROLES.items() if role.has_unit}
#: What ``units = "SI"`` declares.
SI: Units = {name: role.si_unit for name, role in _WITH_UNIT.items()}


def declared(units: Any) -> tuple[Units | None, list[tuple[KeyPath, str]]]:
    """Units by role of the value of ``units``, and what is wrong with it, by its place.

    >>> declared({"length": "ft"})
    ({'length': 'ft'}, [])
    """
    if units is None:
        return None, []
    if units == "SI":
        return SI, []
    if not isinstance(units, dict):
        text = f'must be "SI" or a table of units by kind of quantity, got {value_text(units)}'
        return None, [(("units",), text)]
    wrong: list[tuple[KeyPath, str]] = []
    for name, unit in units.items():
        if (problem := _problem(name, unit)) is not None:
            wrong.append((("units", name), problem))
    return dict(units), wrong


def _problem(name: str, unit: Any) -> str | None:
    role = _WITH_UNIT.get(name)
    if role is None:
        close = difflib.get_close_matches(name[:60], list(_WITH_UNIT), n=1, cutoff=0.5)
        rest = f"did you mean {close[0]!r}?" if close else f"there are: {', '.join(_WITH_UNIT)}"
        return f"no kind of quantity; {rest}"
    if not isinstance(unit, str):
        return f'must be a unit, e.g. "{role.unit}", got {value_text(unit)}'
    try:
        to_si("", "", f"1 {unit}", role)
    except RopewalkError as error:
        return f"must be a unit of {role.phrase}: {str(error).removeprefix('(): ').strip()}"
    return None


def bound(data: Mapping[str, Any], section: type[BaseModel], units: Units | None) -> dict[str, Any]:
    """Data of an included file whose bare numbers keep the units that file declares.

    Where a quantity belongs, a number becomes text with its unit; without one it becomes `NoUnits`,
    so that units of the file that includes it do not reach it.
    """
    fields = section.model_fields
    return {
        key: _bound(value, shape_of(fields[key]), units) if key in fields else value
        for key, value in data.items()
    }


def _bound(value: Any, shape: Shape, units: Units | None) -> Any:
    if shape.kind == "quantity" and type(value) in (int, float):
        unit = (units or {}).get(shape.role)
        return f"{value!r} {unit}" if unit else NoUnits(value)
    if shape.section is not None and isinstance(value, dict):
        return bound(value, shape.section, units)
    if shape.item is not None and isinstance(value, list):
        return [_bound(one, shape.item, units) for one in value]
    if shape.item is not None and isinstance(value, dict):
        return {key: _bound(one, shape.item, units) for key, one in value.items()}
    return value
