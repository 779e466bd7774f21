"""What a report of a rig says, before it is laid out."""

from __future__ import annotations

import hashlib
import os
import platform
from dataclasses import dataclass
from typing import TYPE_CHECKING, TypeAlias

from ropewalk.check.verdict import Verdict
from ropewalk.report.pictures import Picture, pictures
from ropewalk.rig.file import Reading, read
from ropewalk.rig.listing import by_table, si_text
from ropewalk.rig.resolved import resolved

if TYPE_CHECKING:
    from ropewalk.rig.sections import RigFile

__all__ = ["INPUT", "INVENTED", "Content", "Input", "gather"]

#: Heads of the columns of an `Input`.
INPUT = ("key", "as written", "in SI", "from")
#: One value of a rig file.
Input: TypeAlias = tuple[str, str, str, str]

INVENTED = "Everything about this rig is invented for demonstration. It describes no real rig."


@dataclass(frozen=True, slots=True)
class Content:
    """Everything in a report.

    Attributes
    ----------
    name, site
        Of the rig.
    invented
        True if the rig file says so.
    notes
        What the reader of the file remarked.
    inputs
        Every value of the rig file and what it includes, table by table: key, as written, in SI,
        where it comes from.
    verdicts
        Of every rule.
    pictures
        What the rig has data for.
    sources
        Who asks for what: rule, source, standing.
    cautions
        The general one last.
    versions
        Program and what it rests on; and the rig file and all it includes, by their SHA-256.
    """

    name: str
    site: str
    invented: bool
    notes: tuple[str, ...]
    inputs: tuple[tuple[str, tuple[Input, ...]], ...]
    verdicts: tuple[Verdict, ...]
    pictures: tuple[Picture, ...]
    sources: tuple[tuple[str, str, str], ...]
    cautions: tuple[str, ...]
    versions: tuple[tuple[str, str], ...]


def gather(path: str | os.PathLike[str]) -> Content:
    """Load, check and draw a rig.

    Parameters
    ----------
    path
        A rig file.

    Raises
    ------
    RigFileError
        If the file cannot be used.

    Examples
    --------
    >>> import ropewalk as rw
    >>> from ropewalk.report.content import gather
    >>> content = gather(rw.rig.example("rig7"))
    >>> content.name, dict(content.inputs)["reeving"][0]
    ('Rig 7', ('lines', '10', '', 'rig7.toml:19'))
    """
    from ropewalk.check.formats.words import cautions
    from ropewalk.check.run import check_rig
    from ropewalk.rig import rig_of

    reading = read(os.fspath(path))
    rig = rig_of(reading)
    verdicts = check_rig(rig)
    drawn = pictures(rig)
    said = list(cautions(verdicts))
    if any(picture.name == "line-damage" for picture in drawn):
        from ropewalk.study.line_report import CAUTION

        said.insert(0, f"{CAUTION[0].upper()}{CAUTION[1:]}")
    sources = dict.fromkeys((one.rule.id, one.source, one.rule.standing) for one in verdicts)
    return Content(
        name=rig.name,
        site=rig.site,
        invented=rig.invented,
        notes=reading.notes,
        inputs=inputs_of(reading),
        verdicts=verdicts,
        pictures=drawn,
        sources=tuple(sources),
        cautions=tuple(said),
        versions=(*_versions(), *_sums(reading)),
    )


def inputs_of(reading: Reading[RigFile]) -> tuple[tuple[str, tuple[Input, ...]], ...]:
    """Every value of a rig file and of what it includes, table by table.

    >>> import ropewalk as rw
    >>> inputs = dict(inputs_of(rw.rig.read(rw.rig.example("heavy-casing"))))
    >>> inputs["rope"][2]
    ('diameter', '1.375 in', '= 0.034925 m', 'rig7.toml:16, included')
    """
    tables = by_table(resolved(reading))
    return tuple(
        (table, tuple((key, one.text, si_text(one), str(one.origin)) for key, one in rows))
        for table, rows in tables.items()
    )


def _versions() -> list[tuple[str, str]]:
    from importlib.metadata import version

    from ropewalk._version import __version__

    return [
        ("ropewalk", __version__),
        ("Python", platform.python_version()),
        *((name, version(name)) for name in ("numpy", "pint")),
    ]


def _sums(reading: Reading[RigFile]) -> list[tuple[str, str]]:
    """Sums of the files as they were read: the first one, then what it includes, each once."""
    files = {layer.name: layer.content for layer in reversed(reading.layers)}
    return [
        (f"rig file {name}, SHA-256", hashlib.sha256(content).hexdigest())
        for name, content in files.items()
    ]
