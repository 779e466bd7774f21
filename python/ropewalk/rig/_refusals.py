"""Texts of what the sections refuse: from pydantic's errors to lines with place and key."""

from __future__ import annotations

import difflib
import re
from collections.abc import Mapping, Sequence
from typing import Any

from pydantic import BaseModel, ValidationError

from ropewalk.errors import RopewalkError
from ropewalk.rig.origins import Layer, place_of
from ropewalk.rig.parameters import Shape, shape_of
from ropewalk.rig.problems import (
    MOST_PROBLEMS,
    KeyPath,
    Place,
    RigFileError,
    key_text,
    refusal,
    value_text,
)

#: Keys that stand elsewhere in the layout of today.
_MOVED: dict[KeyPath, str] = {("limits", "overpull"): "overpull stands in [stuck]"}

_KEY = r"[A-Za-z0-9_-]+(?:\[\d+\])*"
#: A key, and no name of a function.
_LEADING_KEY = re.compile(rf"{_KEY}(?:\.{_KEY})*+(?![\w(])")


def refused_sections(
    error: ValidationError,
    layout: type[BaseModel],
    data: Mapping[str, Any],
    layers: Sequence[Layer],
) -> RigFileError:
    """Error with every problem of `error` and its place in the files."""
    items = error.errors(include_url=False, include_context=False)
    problems = [_problem(item, layout, data, layers) for item in items[:MOST_PROBLEMS]]
    return refusal(layers[-1].name, problems, len(items))


def placed(error: RopewalkError, layout: type[BaseModel], layers: Sequence[Layer]) -> RigFileError:
    """Error of what was made from a file, with the place of the key its text begins with."""
    name, text = layers[-1].name, str(error)
    place = Place(name, 0, "")
    if (match := _LEADING_KEY.match(text)) and (path := _path(match.group()))[0] in (
        layout.model_fields
    ):
        found = place_of(path, layers)
        place = found._replace(key=match.group())
        text = f"{place._replace(key='')}: {text}"
    else:
        text = f"{name}: {text}"
    return RigFileError(text, name, place.key, [place])


def _path(key: str) -> KeyPath:
    return tuple(
        int(match[1]) - 1 if match[1] else match.group()
        for match in re.finditer(r"\[(\d+)\]|[^.\[]+", key)
    )


def _problem(
    item: Any, layout: type[BaseModel], data: Mapping[str, Any], layers: Sequence[Layer]
) -> tuple[Place, str]:
    path: KeyPath = item["loc"]
    place = place_of(path, layers)
    if item["type"] == "missing":
        # Its table has a place; it itself has none.
        place = place_of(path[:-1], layers)._replace(key=key_text(path))
        return place, f"missing{_meaning(path, layout)}"
    if item["type"] == "extra_forbidden":
        return place, f"unknown key{_did_you_mean(path, layout)}"
    if item["type"] in ("quantity", "even"):
        return place, item["msg"].removeprefix(": ")
    written = value_text(_value_at(path, data))
    return place, f"got {written}; {item['msg'][0].lower()}{item['msg'][1:]}"


def _value_at(path: KeyPath, data: Any) -> Any:
    for part in path:
        data = data[part]
    return data


def _meaning(path: KeyPath, layout: type[BaseModel]) -> str:
    section = section_at(path[:-1], layout)
    field = section.model_fields.get(str(path[-1]))
    return f"; {field.description}" if field is not None and field.description else ""


def _did_you_mean(path: KeyPath, layout: type[BaseModel]) -> str:
    if path in _MOVED:
        return f"; {_MOVED[path]}"
    known = sorted(section_at(path[:-1], layout).model_fields)
    close = difflib.get_close_matches(str(path[-1])[:60], known, n=1, cutoff=0.5)
    return f"; did you mean {close[0]!r}?" if close else f"; known here: {', '.join(known)}"


def section_at(path: KeyPath, layout: type[BaseModel]) -> type[BaseModel]:
    """Return the section at `path`, following lists and named tables."""
    section = layout
    for part in path:
        field = section.model_fields.get(part) if isinstance(part, str) else None
        if field is not None:
            section = _section_in(shape_of(field)) or section
    return section


def _section_in(shape: Shape) -> type[BaseModel] | None:
    if shape.item is not None:
        return _section_in(shape.item)
    return shape.section
