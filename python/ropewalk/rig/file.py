"""Reading a rig file: every wrong key and value at once, each with its place and what would do."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass, field
from functools import cached_property
from pathlib import Path
from typing import Any, Generic, TypeVar

from pydantic import BaseModel, ValidationError

from ropewalk.rig._fields import Context
from ropewalk.rig._refusals import refused_sections
from ropewalk.rig.declared import Units, bound, declared
from ropewalk.rig.entries import entries
from ropewalk.rig.include import LARGEST_FILE, Files, check_plain, merge, read_files
from ropewalk.rig.origins import Layer, Origin
from ropewalk.rig.plan_sections import PlanFile
from ropewalk.rig.problems import Place, RigFileError, key_text, refusal
from ropewalk.rig.sections import RigFile
from ropewalk.rig.upgrade import upgrade

__all__ = [
    "LARGEST_FILE",
    "Reading",
    "RigFileError",
    "parse_rig",
    "read",
    "read_plan",
    "read_plan_file",
    "read_rig_file",
]

Layout = TypeVar("Layout", bound=BaseModel)


@dataclass(frozen=True)
class Reading(Generic[Layout]):
    """A rig file, or a well plan, that has been read and checked.

    Attributes
    ----------
    file
        Its sections; quantities as SI numbers.
    notes
        What was read otherwise than it is written: keys of older layouts.
    """

    file: Layout
    notes: tuple[str, ...]
    layers: tuple[Layer, ...] = field(repr=False, compare=False)

    @cached_property
    def origins(self) -> Mapping[str, Origin]:
        """Where every value comes from, by its key, ``"operation[2].drag_up"``.

        Keys are those of today's layout; entries of lists count from 1.
        """
        return {key_text(one.path): one.origin for one in entries(self.file, self.layers)}


def read(path: str | Path) -> Reading[RigFile]:
    """Read and check a rig file (TOML) and what it includes.

    Parameters
    ----------
    path
        The file.

    Returns
    -------
    Reading
        Sections, notes, and the origin of every value.

    Raises
    ------
    RigFileError
        If a file cannot be read, is no TOML, or has a wrong key or value; the message names
        every one of them, with file and line.

    Examples
    --------
    >>> import ropewalk as rw
    >>> reading = rw.rig.read(rw.rig.example("rig7"))
    >>> reading.file.reeving.lines
    10
    >>> str(reading.origins["reeving.lead_sheaves"])
    'default, definition: none unless given'
    """
    return _parse(RigFile, read_files(path))


def read_plan(path: str | Path) -> Reading[PlanFile]:
    """Read and check a well plan in a file of its own (TOML), as `read` does a rig."""
    return _parse(PlanFile, read_files(path))


def read_rig_file(path: str | Path) -> RigFile:
    """Read and check a rig file, as `read` does, and return its sections alone."""
    return read(path).file


def read_plan_file(path: str | Path) -> PlanFile:
    """Read and check a well plan, as `read_plan` does, and return its sections alone."""
    return read_plan(path).file


def parse_rig(data: Mapping[str, Any], name: str = "rig") -> RigFile:
    """Check rig data that has already been read; `name` stands for the file in messages.

    Raises
    ------
    RigFileError
        As by `read`; and if the data include a file, which have no folder to look for it.
    """
    plain = dict(data)
    check_plain(plain, name)
    if "include" in plain:
        raise refusal(name, [(Place(name, 0, "include"), "only in a file, which has a folder")])
    today, notes, renamed = upgrade(plain, name)
    units, wrong = declared(today.get("units"))
    if wrong:
        raise refusal(name, [(Place(name, 0, key_text(path)), text) for path, text in wrong])
    layer = Layer(name, "", today, renamed=renamed)
    return _parse(RigFile, Files([layer], [units], notes)).file


def data_of(reading: Reading[Layout]) -> tuple[dict[str, Any], Units | None]:
    """Return the data of all files of a reading in one, and the units of bare numbers in them."""
    units = [declared(layer.data.get("units"))[0] for layer in reading.layers]
    return _merged(type(reading.file), reading.layers, units), units[-1]


def _parse(layout: type[Layout], files: Files) -> Reading[Layout]:
    layers, units = files.layers, files.units[-1]
    data = _merged(layout, layers, files.units)
    try:
        file = layout.model_validate(data, context=Context(units))
    except ValidationError as error:
        raise refused_sections(error, layout, data, layers) from None
    return Reading(file, tuple(files.notes), tuple(layers))


def _merged(
    layout: type[BaseModel], layers: Sequence[Layer], units: Sequence[Units | None]
) -> dict[str, Any]:
    """All files in one; each keeps its own units, and only the last has its say on them."""
    data: dict[str, Any] = {}
    for layer, own in zip(layers[:-1], units[:-1], strict=True):
        inner = {k: v for k, v in layer.data.items() if k not in ("include", "units")}
        merge(data, bound(inner, layout, own))
    if not data:
        return dict(layers[-1].data)
    merge(data, layers[-1].data)
    return data
