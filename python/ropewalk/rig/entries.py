"""Every value of a rig file that has been read: where it stands, how it is written, from where."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from functools import cache
from typing import Any

from pydantic import BaseModel

from ropewalk._signature import ROLES
from ropewalk.rig.declared import SI
from ropewalk.rig.origins import Layer, Origin, layer_of
from ropewalk.rig.parameters import Shape, defaults, shape_of
from ropewalk.rig.problems import KeyPath


@dataclass(frozen=True, slots=True)
class Entry:
    """One value.

    Attributes
    ----------
    path
        Where it stands in today's layout.
    value
        As the sections have it; quantities as SI numbers.
    written
        As the file has it, a bare number with the unit the file declares for it; for a default
        the value, a quantity with its SI unit.
    role
        Kind of quantity; empty for all others.
    origin
        Where it comes from.
    """

    path: KeyPath
    value: Any
    written: Any
    role: str
    origin: Origin


def entries(file: BaseModel, layers: Sequence[Layer]) -> Iterator[Entry]:
    """Every value of a file, in the order of the sections; what nothing holds for is left out."""
    return _section(file, layers, (), "")


def tables(file: BaseModel) -> Iterator[KeyPath]:
    """Every table of a file that is there, also one in which nothing is given."""
    return _tables(file, ())


def _tables(value: Any, path: KeyPath) -> Iterator[KeyPath]:
    if isinstance(value, BaseModel):
        if path:
            yield path
        # A section that nobody gave is there with its defaults.
        names = [name for name in type(value).model_fields if name in value.model_fields_set]
        for name in names:
            yield from _tables(getattr(value, name), (*path, name))
    elif isinstance(value, dict):
        for key, inner in value.items():
            yield from _tables(inner, (*path, key))
    elif isinstance(value, list):
        for i, inner in enumerate(value):
            yield from _tables(inner, (*path, i))


def _section(
    section: BaseModel, layers: Sequence[Layer], path: KeyPath, generic: str
) -> Iterator[Entry]:
    """Values of a section; `generic` is its path in the list of parameters."""
    for name, shape in _shapes(type(section)).items():
        value = getattr(section, name)
        given = name in section.model_fields_set
        inner = f"{generic}.{name}".lstrip(".")
        yield from _inside(value, shape, given, layers, (*path, name), inner)


@cache
def _shapes(section: type[BaseModel]) -> dict[str, Shape]:
    return {name: shape_of(field) for name, field in section.model_fields.items()}


def _inside(
    value: Any, shape: Shape, given: bool, layers: Sequence[Layer], path: KeyPath, generic: str
) -> Iterator[Entry]:
    item = shape.item
    if isinstance(value, BaseModel):
        yield from _section(value, layers, path, generic)
    elif shape.kind == "named" and item is not None and value is not None:
        for key, inner in value.items():
            yield from _inside(inner, item, given, layers, (*path, key), f"{generic}.*")
    elif shape.kind == "list" and item is not None and item.section is not None and value:
        for i, inner in enumerate(value):
            yield from _inside(inner, item, given, layers, (*path, i), f"{generic}[]")
    else:
        role = item.role if shape.kind == "list" and item is not None else shape.role
        if given:
            layer = layer_of(path, layers)
            place = layer.place(path)
            kind = "include" if layer.included else "file"
            written = _with_units(_raw(path, layer), role, layer)
            yield Entry(path, value, written, role, Origin(kind, place.file, place.line))  # type: ignore[arg-type]
            return
        known = defaults()
        source, standing = known.get(generic) or known.get(f"{generic}[]") or ("", "")
        if source:
            written = f"{value!r} {ROLES[role].si_unit}" if role else value
            yield Entry(
                path, value, written, role, Origin("default", source=source, standing=standing)
            )


def _raw(path: KeyPath, layer: Layer) -> Any:
    """Value of a place as its file has it; there must be one."""
    data: Any = layer.data
    for part in path:
        data = data[part]
    return data


def _with_units(raw: Any, role: str, layer: Layer) -> Any:
    """A value as it is written; a bare number of a quantity with the unit that is meant."""
    if not role:
        return raw
    if isinstance(raw, list):
        return [_with_units(one, role, layer) for one in raw]
    if isinstance(raw, str):
        return raw
    units = layer.data["units"]
    return f"{raw!r} {SI[role] if units == 'SI' else units[role]}"
