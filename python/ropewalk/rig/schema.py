"""The rig file as JSON Schema and as a table, both made from the sections that read it."""

from __future__ import annotations

from typing import Any

from pydantic import BaseModel
from pydantic.fields import FieldInfo

from ropewalk._signature import ROLES
from ropewalk._units import LONGEST_TEXT
from ropewalk.rig.parameters import RigParameter, Shape, parameters, shape_of

_DIALECT = "https://json-schema.org/draft/2020-12/schema"
#: A number, also as 1-3/8, and a unit.
_QUANTITY = (
    r"^\s*[+-]?([0-9][0-9_]*\.?[0-9]*|\.[0-9]+)([eE][+-]?[0-9]+|((-|\s+)[0-9]+)?/[0-9]+)?"
    r"\s*[^\s0-9.,+-].*$"
)
_DATE = r"^[0-9]{4}-[0-9]{2}-[0-9]{2}([Tt ][0-9]{2}:[0-9]{2}.*)?$"


def schema() -> dict[str, Any]:
    """JSON Schema (draft 2020-12) of a rig file of the layout of today.

    Quantities are text with a unit; numbers pass for them only in a file that declares ``units``.
    A file that includes others need not be whole; what they make together is.

    Returns
    -------
    dict
        The schema, to be written as JSON.

    Examples
    --------
    >>> import ropewalk as rw
    >>> schema = rw.rig.schema()
    >>> schema["properties"]["rope"]["properties"]["diameter"]["description"]
    'Nominal diameter. A length with its unit, e.g. in.'
    """
    from ropewalk.rig.sections import RigFile

    top = _section(RigFile)
    top["properties"]["units"]["anyOf"] = [
        {"const": "SI"},
        {
            "type": "object",
            "properties": {name: {"type": "string"} for name, role in ROLES.items() if role.unit},
            "additionalProperties": False,
        },
    ]
    whole = _whole(RigFile)
    whole["dependentRequired"] = {one: [other for other in _PLAN if other != one] for one in _PLAN}
    return {
        "$schema": _DIALECT,
        "title": "Rig file of ropewalk",
        "description": "Layout 2. TOML; a date of TOML is text here.",
        **top,
        "allOf": [
            {"if": {"not": {"required": ["units"]}}, "then": _with_units(RigFile)},
            {"if": {"not": {"required": ["include"]}}, "then": whole},
        ],
    }


_PLAN = ("mud", "string", "operation")


def _section(section: type[BaseModel], *, whole: bool = False) -> dict[str, Any]:
    """Object of a section; `whole` in lists, which no include adds to."""
    made: dict[str, Any] = {
        "type": "object",
        "properties": {
            name: _field(field, whole=whole) for name, field in section.model_fields.items()
        },
        "additionalProperties": False,
    }
    if whole and (required := _required(section)):
        made["required"] = required
    return made


def _required(section: type[BaseModel]) -> list[str]:
    return [name for name, field in section.model_fields.items() if field.is_required()]


def _field(field: FieldInfo, *, whole: bool) -> dict[str, Any]:
    shape = shape_of(field)
    made = _shape(shape, whole=whole)
    text = field.description or ""
    if shape.kind == "quantity":
        role = ROLES[shape.role]
        text += f" {role.phrase[0].upper()}{role.phrase[1:]} with its unit, e.g. {role.unit}."
    if text:
        made["description"] = text.strip()
    if not field.is_required() and shape.section is None and shape.kind != "quantity":
        default = field.get_default(call_default_factory=True)
        if default not in (None, []):
            made["default"] = default
    return made


def _shape(shape: Shape, *, whole: bool) -> dict[str, Any]:
    if shape.section is not None:
        return _section(shape.section, whole=whole)
    if shape.kind == "list" and shape.item is not None:
        items = {"type": "array", "items": _shape(shape.item, whole=True)}
        return {**items, "minItems": shape.fewest} if shape.fewest else items
    if shape.kind == "named" and shape.item is not None:
        return {"type": "object", "additionalProperties": _shape(shape.item, whole=whole)}
    if shape.kind == "choice":
        return {"enum": list(shape.choices)}
    if shape.kind == "quantity":
        # Bounds are in SI here and hold for neither text nor numbers in units of the file.
        return {"type": ["string", "number"], "pattern": _QUANTITY, "maxLength": LONGEST_TEXT}
    made: dict[str, Any] = dict(_VALUES[shape.kind])
    if shape.low is not None:
        made["exclusiveMinimum" if shape.low_open else "minimum"] = shape.low
    if shape.high is not None:
        made["maximum"] = shape.high
    return made


_STRING = {"type": "string"}
_VALUES: dict[str, dict[str, Any]] = {
    "whole number": {"type": "integer"},
    "number": {"type": "number"},
    "text": _STRING,
    "flag": {"type": "boolean"},
    "date": {"type": "string", "pattern": _DATE},
    "text or number": {"type": ["string", "number"]},
    "text, number or false": {"anyOf": [{"type": ["string", "number"]}, {"const": False}]},
    "text or list": {"anyOf": [_STRING, {"type": "array", "items": _STRING}]},
    "text or table": {"anyOf": [_STRING, {"type": "object", "additionalProperties": _STRING}]},
}


def _with_units(section: type[BaseModel]) -> dict[str, Any]:
    """What holds besides where no units are declared: quantities are text."""
    inner = {name: _as_text(shape_of(field)) for name, field in section.model_fields.items()}
    return {"properties": {name: made for name, made in inner.items() if made}}


def _as_text(shape: Shape) -> dict[str, Any]:
    if shape.kind == "quantity":
        return _STRING
    if shape.section is not None:
        made = _with_units(shape.section)
        return made if made["properties"] else {}
    if shape.item is None or not (inner := _as_text(shape.item)):
        return {}
    return {"items" if shape.kind == "list" else "additionalProperties": inner}


def _whole(section: type[BaseModel]) -> dict[str, Any]:
    """What holds besides where nothing is included: every table has all it needs."""
    inner = {
        name: _whole(shape.section)
        for name, field in section.model_fields.items()
        if (shape := shape_of(field)).section is not None
    }
    made: dict[str, Any] = {}
    if required := _required(section):
        made["required"] = required
    if properties := {name: one for name, one in inner.items() if one}:
        made["properties"] = properties
    return made


def table() -> str:
    """Every key of a rig file as Markdown, one table for each table of the file."""
    lines = [
        "# The keys of a rig file",
        "",
        "Made from the sections that read the file; `ropewalk.rig.parameters()` is the same list.",
        "Quantities are written with a unit, in any unit of their kind; the one named is usual.",
        "A key without a default that is not required is left out where it does not apply.",
    ]
    last = None
    for one in parameters():
        head, _, key = one.path.rpartition(".")
        if head != last:
            title = f"`{head}`" if head else "At the top"
            lines += ["", f"## {title}", "", "| key | value | needed | bounds | meaning |"]
            lines.append("|---|---|---|---|---|")
            last = head
        cells = (f"`{key}`", _value(one), _needed(one), _bounds(one), one.text)
        lines.append("| " + " | ".join(cell.replace("|", "\\|") for cell in cells) + " |")
    return "\n".join(lines) + "\n"


def _value(one: RigParameter) -> str:
    if one.role:
        return f"{ROLES[one.role].name}, `{one.display_unit}`"
    if one.choices:
        return " or ".join(f'`"{choice}"`' for choice in one.choices)
    return "true or false" if one.kind == "flag" else one.kind


def _needed(one: RigParameter) -> str:
    if one.required:
        return "yes"
    if one.default is None:
        return "no"
    return f"{_plain(one.default)} ({one.default_standing}: {one.default_source})"


def _plain(default: Any) -> str:
    if isinstance(default, bool):
        return str(default).lower()
    if isinstance(default, (int, float)):
        return f"{default:g}"
    return '""' if default == "" else "none" if default in ((), {}) else str(default)


def _bounds(one: RigParameter) -> str:
    unit = f" {one.unit}" if one.unit else ""
    if one.low is None and one.high is None:
        return ""
    if one.low == one.high:
        return f"{one.low:g}"
    if one.high is None:
        return f"{'over' if one.low_open else 'from'} {one.low:g}{unit if one.low else ''}"
    return f"{'over ' if one.low_open else ''}{one.low:g} to {one.high:g}{unit}"
