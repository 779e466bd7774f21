"""The rig a study starts from: its file, read once."""

from __future__ import annotations

import hashlib
import json
import os
from dataclasses import dataclass
from functools import cached_property
from typing import TYPE_CHECKING, Any

from ropewalk.errors import InadmissibleError
from ropewalk.rig.assembly import Rig, rig_of
from ropewalk.rig.declared import Units
from ropewalk.rig.file import Reading, data_of, read

if TYPE_CHECKING:
    from ropewalk.rig.sections import RigFile

__all__ = ["Base", "RigLike"]

#: What a study takes for its rig: a rig file, what `read` gave for it, or its rig as it was loaded.
RigLike = Rig | Reading["RigFile"] | str | os.PathLike[str]


@dataclass(frozen=True, eq=False)
class Base:
    """The rig file of a study.

    Attributes
    ----------
    name
        File name, for messages.
    file
        Its sections.
    data
        Data of the file and all it includes, as they are written.
    units
        Units of bare numbers in the data.
    """

    name: str
    file: RigFile
    data: dict[str, Any]
    units: Units | None

    @classmethod
    def of(cls, source: RigLike, where: str = "study.Base") -> Base:
        """Return the base of a study.

        Parameters
        ----------
        source
            A rig file, what `read` gave for it, or its rig.
        where
            Function that asks, for messages.

        Raises
        ------
        RigFileError
            If the file cannot be used.
        InadmissibleError
            If the rig comes from no file, or was changed after it was read.

        Examples
        --------
        >>> import ropewalk as rw
        >>> from ropewalk.study.base import Base
        >>> Base.of(rw.rig.example("rig7")).file.rig.name
        'Rig 7'
        """
        reading: Reading[RigFile]
        if isinstance(source, Rig):
            if source.reading is None:
                text = (
                    f"rig {source.name!r} comes from no rig file; studies change values of a file"
                )
                raise InadmissibleError(f"{where}(): {text}", where, "rig")
            if rig_of(source.reading) != source:
                text = (
                    f"rig {source.name!r} was changed after it was read; studies change values of "
                    "its file, which does not have that change"
                )
                raise InadmissibleError(f"{where}(): {text}", where, "rig")
            reading = source.reading
        else:
            reading = source if isinstance(source, Reading) else read(os.fspath(source))
        rig_of(reading)  # refuses what does not go together before a study is made of it
        data, units = data_of(reading)
        return cls(reading.layers[-1].name, reading.file, data, units)

    @cached_property
    def fingerprint(self) -> str:
        """Hash of every value of the file, in SI: another way of writing it is the same rig."""
        values = self.file.model_dump(mode="json", exclude={"ropewalk", "include", "units"})
        text = json.dumps(values, sort_keys=True, separators=(",", ":"))
        return hashlib.sha256(text.encode()).hexdigest()
