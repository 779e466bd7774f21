"""Reading a rig file: every wrong key and value at once, each with its place and what would do."""

from __future__ import annotations

import difflib
import tomllib
from collections.abc import Iterator, Mapping
from contextlib import contextmanager
from pathlib import Path
from typing import Any, TypeVar, get_args

from pydantic import BaseModel, ValidationError

from ropewalk.errors import RopewalkError
from ropewalk.rig.plan_sections import PlanFile
from ropewalk.rig.sections import RigFile

Layout = TypeVar("Layout", bound=BaseModel)

#: A rig file is a page of text; anything larger is a mistake.
LARGEST_FILE = 4_000_000


class RigFileError(RopewalkError, ValueError):
    """A rig file cannot be used; `problems` has one line per wrong place."""

    def __init__(self, message: str, where: str = "", field: str = "") -> None:
        super().__init__(message, where, field)
        self.problems = tuple(message.splitlines()[1:]) or (message,)


@contextmanager
def named(key: str) -> Iterator[None]:
    """Put the key of the rig file before the message of a subject."""
    try:
        yield
    except RopewalkError as error:
        raise RigFileError(f"{key}: {error}") from error


def read_rig_file(path: str | Path) -> RigFile:
    """Read and check a rig file (TOML).

    Parameters
    ----------
    path
        The file.

    Raises
    ------
    RigFileError
        If the file cannot be read, is no TOML, or has a wrong key or value; the message names
        every one of them.
    """
    path = Path(path)
    return parse_rig(_toml_of(path), path.name)


def read_plan_file(path: str | Path) -> PlanFile:
    """Read and check a well plan in a file of its own (TOML), as `read_rig_file` does a rig."""
    path = Path(path)
    return _parse(PlanFile, _toml_of(path), path.name)


def parse_rig(data: Mapping[str, Any], name: str = "rig") -> RigFile:
    """Check rig data that has already been read; `name` stands for the file in messages."""
    return _parse(RigFile, data, name)


def _parse(layout: type[Layout], data: Mapping[str, Any], name: str) -> Layout:
    try:
        return layout.model_validate(data)
    except ValidationError as error:
        lines = [_problem(item, layout) for item in error.errors(include_url=False)]
        count = "1 problem" if len(lines) == 1 else f"{len(lines)} problems"
        raise RigFileError("\n".join([f"{name}: {count}", *lines]), name) from None


def _toml_of(path: Path) -> dict[str, Any]:
    try:
        if path.stat().st_size > LARGEST_FILE:
            raise RigFileError(f"{path.name}: larger than {LARGEST_FILE} bytes, not a rig file")
        return tomllib.loads(path.read_text(encoding="utf-8"))
    except OSError as error:
        raise RigFileError(f"{path}: cannot be read: {error.strerror}") from error
    except UnicodeDecodeError as error:
        raise RigFileError(f"{path.name}: not UTF-8 text at byte {error.start}") from None
    except tomllib.TOMLDecodeError as error:
        raise RigFileError(f"{path.name}: not valid TOML: {error}") from None
    except RecursionError:
        raise RigFileError(f"{path.name}: nested too deeply") from None


def _problem(item: Any, layout: type[BaseModel]) -> str:
    location = item["loc"]
    place = _place(location)
    if item["type"] == "extra_forbidden":
        return f"  {place}: unknown key{_did_you_mean(location, layout)}"
    if item["type"] == "missing":
        return f"  {place}: missing"
    if item["type"] == "quantity":
        return f"  {place}: {item['msg'].removeprefix(': ')}"
    return f"  {place} = {item['input']!r}: {item['msg'][0].lower()}{item['msg'][1:]}"


def _place(location: tuple[int | str, ...]) -> str:
    text = ""
    for part in location:
        text += f"[{part + 1}]" if isinstance(part, int) else f".{part}"
    return text.removeprefix(".")


def _did_you_mean(location: tuple[int | str, ...], layout: type[BaseModel]) -> str:
    known = sorted(_section_at(location[:-1], layout).model_fields)
    close = difflib.get_close_matches(str(location[-1]), known, n=1, cutoff=0.5)
    return f"; did you mean {close[0]!r}?" if close else f"; known here: {', '.join(known)}"


def _section_at(location: tuple[int | str, ...], layout: type[BaseModel]) -> type[BaseModel]:
    """Return the model of the table at `location`, following lists and named tables inside."""
    section = layout
    for part in location:
        field = section.model_fields.get(part) if isinstance(part, str) else None
        if field is not None:
            section = _model_in(field.annotation) or section
    return section


def _model_in(annotation: Any) -> type[BaseModel] | None:
    if isinstance(annotation, type) and issubclass(annotation, BaseModel):
        return annotation
    for inner in get_args(annotation):
        if (found := _model_in(inner)) is not None:
            return found
    return None
