"""A rig on paper: inputs, verdicts, pictures, sources and cautions, as HTML and Markdown.

>>> import tempfile
>>> import ropewalk as rw
>>> with tempfile.TemporaryDirectory() as folder:
...     written = rw.report.write_report(rw.rig.example("rig7"), folder)
>>> [path.name for path in written if path.suffix != ".png"]
['report.md', 'report.html']
"""

from __future__ import annotations

import os
from pathlib import Path

from ropewalk.check.writing import write_bytes, write_text

__all__ = ["write_report"]


def write_report(
    rig_file: str | os.PathLike[str], folder: str | os.PathLike[str]
) -> tuple[Path, ...]:
    """Write the report of a rig: ``report.html``, which needs nothing else, and ``report.md``.

    The report replaces neither inspection nor local codes, the maker's manual or licensed
    practice. The same rig file gives the same report.

    Parameters
    ----------
    rig_file
        A rig file.
    folder
        Where to; made if it is not there. Each file appears whole or not at all.

    Returns
    -------
    tuple of pathlib.Path
        The files written: pictures, then both reports.

    Raises
    ------
    RigFileError
        If the rig file cannot be used; then nothing is written.
    OSError
        If the folder cannot be written.
    """
    from ropewalk.report.content import gather
    from ropewalk.report.markdown import report_markdown
    from ropewalk.report.page import page_text

    content = gather(rig_file)
    out = Path(folder)
    written = []
    for picture in content.pictures:
        if picture.png:
            write_bytes(out / f"{picture.name}.png", picture.png)
            written.append(out / f"{picture.name}.png")
    for name, text in (
        ("report.md", report_markdown(content)),
        ("report.html", page_text(content)),
    ):
        write_text(out / name, text)
        written.append(out / name)
    return tuple(written)
