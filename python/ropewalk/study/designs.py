"""From a row of a study to its rig: the data of the file, changed, validated, put together."""

from __future__ import annotations

import copy
from collections.abc import Sequence
from dataclasses import dataclass, field
from functools import cache
from typing import Annotated, Any

import numpy as np
import numpy.typing as npt
from pydantic import TypeAdapter, ValidationError

from ropewalk.errors import RopewalkError
from ropewalk.rig._fields import Context
from ropewalk.rig._refusals import refused_sections
from ropewalk.rig._remembered import Remembered
from ropewalk.rig.assembly import Rig, assemble
from ropewalk.rig.file import RigFileError
from ropewalk.rig.origins import Layer
from ropewalk.rig.sections import RigFile
from ropewalk.study.base import Base
from ropewalk.study.inputs import Input

__all__ = ["Designs", "NotPossible"]


class NotPossible(Exception):
    """There can be no rig with the values of a row; the text says why."""


@dataclass
class _Table:
    """A table at the top of the file in which something is varied, and its last section."""

    data: Any
    #: Place of the input in the row, the table or list its value stands in, its key there.
    targets: list[tuple[int, Any, Any]] = field(default_factory=list)
    numbers: tuple[float, ...] = ()
    section: Any = None


class Designs:
    """The rigs of a study, one row after the other.

    Only the tables in which a value has changed are validated again, and only the parts of the rig
    that are made from them are made again.

    Parameters
    ----------
    base
        The rig file.
    inputs
        What the columns of a row are.
    """

    def __init__(self, base: Base, inputs: Sequence[Input]) -> None:
        self.base = base
        self.inputs = tuple(inputs)
        self._made = Remembered()
        self._tables: dict[str, _Table] = {}
        for column, one in enumerate(self.inputs):
            for path in one.places:
                top = str(path[0])
                if top not in self._tables:
                    self._tables[top] = _Table(copy.deepcopy(base.data.get(top, {})))
                table = self._tables[top]
                inner = table.data
                for part in path[1:-1]:
                    inner = inner.setdefault(part, {}) if isinstance(inner, dict) else inner[part]
                table.targets.append((column, inner, path[-1]))

    def rig(self, row: npt.NDArray[np.float64]) -> Rig:
        """Return the rig of one row.

        Raises
        ------
        NotPossible
            If a value is refused, or parts do not go together.
        """
        changed = {top: self._section(top, table, row) for top, table in self._tables.items()}
        file = self.base.file.model_copy(update=changed)
        try:
            return assemble(file, self._made)
        except RopewalkError as error:
            raise NotPossible(" ".join(str(error).split())) from None

    def _section(self, top: str, table: _Table, row: npt.NDArray[np.float64]) -> Any:
        numbers = tuple(float(row[column]) for column, _, _ in table.targets)
        if numbers == table.numbers:
            return table.section
        for (column, inner, key), number in zip(table.targets, numbers, strict=True):
            inner[key] = self.inputs[column].written(number)
        table.numbers = ()
        try:
            table.section = _adapter(top).validate_python(
                table.data, context=Context(self.base.units)
            )
        except ValidationError as error:
            raise NotPossible(self._refusal(error)) from None
        table.numbers = numbers
        return table.section

    def _refusal(self, first: ValidationError) -> str:
        """What is wrong with the tables as they are, in the words of the reader of the file."""
        data = {**self.base.data, **{top: one.data for top, one in self._tables.items()}}
        try:
            RigFile.model_validate(data, context=Context(self.base.units))
        except ValidationError as error:
            layers = [Layer(self.base.name, "", data)]
            refused: RigFileError = refused_sections(error, RigFile, data, layers)
            return "; ".join(one.removeprefix(f"{self.base.name}: ") for one in refused.problems)
        return str(first)


@cache
def _adapter(top: str) -> TypeAdapter[Any]:
    one = RigFile.model_fields[top]
    kind: Any = one.annotation
    return TypeAdapter(Annotated[kind, *one.metadata] if one.metadata else kind)
