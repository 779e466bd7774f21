"""What a report of a rig says, before it is laid out."""

from __future__ import annotations

import hashlib
import os
import platform
import tomllib
from collections.abc import Iterator, Mapping
from dataclasses import dataclass
from pathlib import Path
from typing import TYPE_CHECKING, Any

from ropewalk.check.verdict import Verdict
from ropewalk.report.pictures import Picture, pictures

if TYPE_CHECKING:
    from ropewalk.rig import Rig

__all__ = ["INVENTED", "Content", "gather"]

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
        Every key of the rig file with its value as written, table by table.
    verdicts
        Of every rule.
    pictures
        What the rig has data for.
    sources
        Who asks for what: rule, source, standing.
    cautions
        The general one last.
    versions
        Program and what it rests on; and the rig file, by its SHA-256.
    """

    name: str
    site: str
    invented: bool
    notes: tuple[str, ...]
    inputs: tuple[tuple[str, tuple[tuple[str, str], ...]], ...]
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
    ('Rig 7', ('lines', '10'))
    """
    from ropewalk.check.files import notes_of
    from ropewalk.check.formats.words import cautions
    from ropewalk.check.run import check_rig
    from ropewalk.rig import load_rig

    rig: Rig = load_rig(os.fspath(path))
    data = Path(path).read_bytes()
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
        notes=notes_of(rig, os.fspath(path)),
        inputs=inputs_of(tomllib.loads(data.decode("utf-8"))),
        verdicts=verdicts,
        pictures=drawn,
        sources=tuple(sources),
        cautions=tuple(said),
        versions=(
            *_versions(),
            (f"rig file {Path(path).name}, SHA-256", hashlib.sha256(data).hexdigest()),
        ),
    )


def inputs_of(
    data: Mapping[str, Any],
) -> tuple[tuple[str, tuple[tuple[str, str], ...]], ...]:
    """Every key of a rig file, table by table, in the order of the file.

    >>> inputs_of({"ropewalk": 1, "line": {"wear": {"pick_up": 1.0}}, "part": [{"name": "hook"}]})
    (('', (('ropewalk', '1'),)), ('line', (('wear.pick_up', '1.0'),)), ('part[1]', (('name', 'hook'),)))
    """  # noqa: E501 - one line, as it is returned
    tables: dict[str, list[tuple[str, str]]] = {}
    for key, value in data.items():
        if isinstance(value, Mapping):
            tables[key] = list(_flat("", value))
        elif _is_tables(value):
            for number, one in enumerate(value, 1):
                tables[f"{key}[{number}]"] = list(_flat("", one))
        else:
            tables.setdefault("", []).append((key, _text(value)))
    return tuple((name, tuple(rows)) for name, rows in tables.items())


def _flat(before: str, table: Mapping[str, Any]) -> Iterator[tuple[str, str]]:
    for key, value in table.items():
        name = f"{before}.{key}" if before else key
        if isinstance(value, Mapping):
            yield from _flat(name, value)
        elif _is_tables(value):
            for number, one in enumerate(value, 1):
                yield from _flat(f"{name}[{number}]", one)
        else:
            yield name, _text(value)


def _is_tables(value: Any) -> bool:
    return isinstance(value, list) and bool(value) and all(isinstance(x, Mapping) for x in value)


def _text(value: Any) -> str:
    """A value as the file has it; text without its quotes."""
    if isinstance(value, bool):
        return str(value).lower()
    if isinstance(value, list):
        return f"[{', '.join(_text(one) for one in value)}]"
    return str(value)


def _versions() -> list[tuple[str, str]]:
    from importlib.metadata import version

    from ropewalk._version import __version__

    return [
        ("ropewalk", __version__),
        ("Python", platform.python_version()),
        *((name, version(name)) for name in ("numpy", "pint")),
    ]
