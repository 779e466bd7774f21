"""Which files a check is about: files, folders and patterns, each file once."""

from __future__ import annotations

import glob
import os
import re
import tomllib
from collections.abc import Iterable, Iterator
from pathlib import Path

__all__ = ["Paths", "find_rig_files", "is_rig_file"]

Paths = str | os.PathLike[str] | Iterable[str | os.PathLike[str]]

#: Tables of a well plan in a file of its own, which has the key of the layout too.
_PLAN = {"ropewalk", "mud", "string", "operation"}
_LAYOUT = re.compile(r"""^\s*(?:ropewalk|"ropewalk"|'ropewalk')\s*=""", re.MULTILINE)
#: Up to this many bytes a file is read as TOML to find the key; a rig file is a page of text.
_LARGEST = 500_000


def find_rig_files(paths: Paths) -> list[tuple[Path, str]]:
    """Files that some paths mean, each once, in the order in which they were given.

    Parameters
    ----------
    paths
        A file is taken whatever is in it. A folder stands for the rig files below it, sorted by
        path, hidden folders left out; a pattern (``rigs/**/*.toml``) for the rig files it finds,
        sorted. What exists under the very name of a pattern is no pattern.

    Returns
    -------
    list of (Path, str)
        File and nothing; or the path that was given and why nothing was found there.

    Examples
    --------
    >>> import ropewalk as rw
    >>> from ropewalk.check.discover import find_rig_files
    >>> folder = rw.rig.example("rig7").parent
    >>> "rig7.toml" in [path.name for path, _ in find_rig_files([folder])]
    True
    >>> find_rig_files(["no-such-folder/*.toml"])[0][1]
    'no rig file matches this pattern'
    """
    found: dict[str, tuple[Path, str]] = {}
    # Text is iterable too: one path is never meant as its letters.
    for given in [paths] if isinstance(paths, (str, os.PathLike)) else paths:
        for path, problem in _meant_by(os.fspath(given)):
            found.setdefault(os.path.realpath(path), (path, problem))
    return list(found.values())


def _meant_by(given: str) -> Iterator[tuple[Path, str]]:
    path = Path(given)
    if path.is_dir():
        kept = [one for one in _below(path) if is_rig_file(one)]
        problem = "no rig file in this folder"
    elif glob.has_magic(given) and not path.exists():
        # A pattern may be absolute, which Path.glob refuses.
        matches = (Path(one) for one in sorted(glob.glob(given, recursive=True)))  # noqa: PTH207
        kept = [one for one in matches if one.is_file() and is_rig_file(one)]
        problem = "no rig file matches this pattern"
    else:
        yield path, ""
        return
    yield from ((one, "") for one in kept)
    if not kept:
        yield path, problem


def _below(folder: Path) -> list[Path]:
    """Files below a folder that may be rig files, sorted; links to folders are not followed."""
    found: list[Path] = []
    for top, folders, names in os.walk(folder):
        folders[:] = [name for name in folders if not name.startswith(".")]
        found.extend(
            Path(top, name) for name in names if name.endswith(".toml") and not name.startswith(".")
        )
    return sorted(found)


def is_rig_file(path: Path) -> bool:
    """True for a file that says it is a rig file, by its key ``ropewalk``.

    Well plans in files of their own are none. A file that cannot be read counts as one, so that it
    is reported; text that is no TOML, or too much of it, counts as one if it has the key somewhere.
    """
    try:
        text = path.read_bytes().decode("utf-8", errors="replace")
    except OSError:
        return True
    if len(text) > _LARGEST:
        return _LAYOUT.search(text) is not None
    try:
        keys = set(tomllib.loads(text))
    except (tomllib.TOMLDecodeError, RecursionError):
        return _LAYOUT.search(text) is not None
    return "ropewalk" in keys and not (keys <= _PLAN and "operation" in keys)
