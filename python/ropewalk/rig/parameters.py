"""The one list of what a rig file can have, made from the sections that read it.

Reader, JSON Schema, table of the documentation, names in sweeps and texts of errors all come from
here, so that a key cannot mean two things.
"""

from __future__ import annotations

import types
import typing
from collections.abc import Iterator
from csv import DictReader
from dataclasses import dataclass
from datetime import datetime
from functools import cache
from importlib.resources import files
from typing import Annotated, Any, Literal, Union

from pydantic import BaseModel
from pydantic.fields import FieldInfo

from ropewalk._signature import ROLES
from ropewalk.rig._fields import RoleOf

#: What a value is.
Kind = Literal[
    "quantity",
    "whole number",
    "number",
    "text",
    "choice",
    "flag",
    "date",
    "text or number",
    "text, number or false",
    "text or list",
    "text or table",
]


@dataclass(frozen=True, slots=True)
class RigParameter:
    """One value of a rig file.

    Attributes
    ----------
    path
        Where it stands: ``"rope.diameter"``, in lists of tables ``"drawworks.gear[].ratio"``, in
        named tables ``"string.*[].length"``.
    kind
        ``"quantity"``, ``"whole number"``, ``"number"``, ``"text"``, ``"choice"``, ``"flag"``,
        ``"date"``; ``"text or number"``, ``"text, number or false"``, ``"text or list"``,
        ``"text or table"`` where the text says more.
    role
        Kind of quantity, a key of `ROLES`; empty for all others.
    unit, display_unit
        Coherent SI unit of the role, and one that people use.
    required
        True if its table cannot do without it.
    default
        What holds if it is left out, in SI; None if nothing does.
    default_source, default_standing
        Where the default comes from, and what stands behind it: ``"definition"``,
        ``"common practice"`` or ``"published"``.
    low, high
        Bounds, in SI; None if there are none.
    low_open
        True if the lower bound itself is refused.
    choices
        What a choice is made from.
    text
        One line that says what it is.
    """

    path: str
    kind: Kind
    role: str
    unit: str
    display_unit: str
    required: bool
    default: Any
    default_source: str
    default_standing: str
    low: float | None
    high: float | None
    low_open: bool
    choices: tuple[str, ...]
    text: str


@dataclass(frozen=True, slots=True)
class Shape:
    """What a field takes: a value, a section, or a list or named tables of `item`."""

    kind: Kind | Literal["section", "list", "named"]
    role: str = ""
    low: float | None = None
    high: float | None = None
    low_open: bool = False
    choices: tuple[str, ...] = ()
    section: type[BaseModel] | None = None
    item: Shape | None = None
    fewest: int = 0


def shape_of(field: FieldInfo) -> Shape:
    """What a field of a section takes."""
    return _shape(field.annotation, list(field.metadata))


def _shape(annotation: Any, metadata: list[Any]) -> Shape:
    origin, inner = typing.get_origin(annotation), typing.get_args(annotation)
    if origin is Annotated:
        return _shape(inner[0], [*inner[1:], *metadata])
    if origin in (Union, types.UnionType):
        kinds = [one for one in inner if one is not type(None)]
        if len(kinds) == 1:
            return _shape(kinds[0], metadata)
        if float in kinds:
            off = any(typing.get_origin(one) is Literal for one in kinds)
            return Shape("text, number or false" if off else "text or number")
        tables = any(typing.get_origin(one) is dict for one in kinds)
        return Shape("text or table" if tables else "text or list")
    if origin is list:
        fewest = _bound(metadata, "min_length")
        return Shape("list", item=_shape(inner[0], []), fewest=int(fewest or 0))
    if origin is dict:
        return Shape("named", item=_shape(inner[1], []))
    if origin is Literal:
        if all(isinstance(one, str) for one in inner):
            return Shape("choice", choices=tuple(inner))
        return Shape("whole number", low=float(min(inner)), high=float(max(inner)))
    if isinstance(annotation, type) and issubclass(annotation, BaseModel):
        return Shape("section", section=annotation)
    role = next((one.name for one in metadata if isinstance(one, RoleOf)), "")
    kind = "quantity" if role else _KINDS[annotation]
    above, low = _bound(metadata, "gt"), _bound(metadata, "ge")
    return Shape(
        kind,
        role,
        low=low if above is None else above,
        high=_bound(metadata, "le"),
        low_open=above is not None,
    )


_KINDS: dict[Any, Kind] = {
    int: "whole number",
    float: "number",
    str: "text",
    bool: "flag",
    datetime: "date",
}


def _bound(metadata: list[Any], name: str) -> float | None:
    for one in metadata:
        if isinstance(one, FieldInfo):
            found = _bound(list(one.metadata), name)
        else:
            found = getattr(one, name, None)
        if found is not None:
            return float(found)
    return None


def walk(section: type[BaseModel], path: str = "") -> Iterator[tuple[str, FieldInfo, Shape]]:
    """Every value in a section, in the order it is written: path, field, shape."""
    for name, field in section.model_fields.items():
        yield from _inside(f"{path}.{name}".removeprefix("."), field, shape_of(field))


def _inside(path: str, field: FieldInfo, shape: Shape) -> Iterator[tuple[str, FieldInfo, Shape]]:
    if shape.section is not None:
        yield from walk(shape.section, path)
    elif shape.item is not None:
        below = f"{path}.*" if shape.kind == "named" else f"{path}[]"
        yield from _inside(below, field, shape.item)
    else:
        yield path, field, shape


@cache
def defaults() -> dict[str, tuple[str, str]]:
    """Source and standing of every default by path."""
    text = (files("ropewalk") / "data" / "rig-defaults.csv").read_text(encoding="utf-8")
    return {row["path"]: (row["source"], row["standing"]) for row in DictReader(text.splitlines())}


@cache
def parameters() -> tuple[RigParameter, ...]:
    """Everything a rig file can have, in the order of the sections.

    Returns
    -------
    tuple of RigParameter
        One for each value.

    Examples
    --------
    >>> import ropewalk as rw
    >>> known = {one.path: one for one in rw.rig.parameters()}
    >>> known["rope.diameter"].role, known["rope.diameter"].unit
    ('length', 'm')
    >>> known["reeving.lead_sheaves"].default_standing
    'definition'
    """
    from ropewalk.rig.sections import RigFile

    return tuple(_parameter(*one) for one in walk(RigFile))


def _parameter(path: str, field: FieldInfo, shape: Shape) -> RigParameter:
    role = ROLES[shape.role] if shape.role else None
    default = None if field.is_required() else field.get_default(call_default_factory=True)
    if isinstance(default, list):
        default = tuple(default)
    source, standing = defaults().get(path, ("", ""))
    return RigParameter(
        path=path,
        kind=typing.cast(Kind, shape.kind),
        role=shape.role,
        unit=role.si_unit if role else "",
        display_unit=role.unit if role else "",
        required=field.is_required(),
        default=default,
        default_source=source,
        default_standing=standing,
        low=shape.low,
        high=shape.high,
        low_open=shape.low_open,
        choices=shape.choices,
        text=field.description or "",
    )
