"""What a check says, as text: tables, JSON, JUnit XML, workflow annotations, Markdown."""

from __future__ import annotations

from collections.abc import Sequence
from typing import TYPE_CHECKING, Literal

from ropewalk.check.verdict import Severity

if TYPE_CHECKING:
    from ropewalk.check.files import FileReport

__all__ = ["Format", "text_of"]

Format = Literal["table", "json", "junit", "annotations", "markdown"]


def text_of(
    reports: Sequence[FileReport],
    form: Format = "table",
    fail_on: Severity | str = Severity.MUST,
    *,
    show_all: bool = False,
) -> str:
    """Return a check as text, plain and without color.

    Parameters
    ----------
    reports
        From `ropewalk.check.check_files`.
    form
        Which format.
    fail_on
        Least severity that makes a check fail.
    show_all
        Show what is inside its limit too; JSON and JUnit always have everything.

    Examples
    --------
    >>> import ropewalk as rw
    >>> from ropewalk.check.formats import text_of
    >>> reports = rw.check.check_files([rw.rig.example("rig7")])
    >>> text_of(reports, "junit").startswith("<?xml")
    True
    """
    from ropewalk.check.formats.annotations import annotations_text
    from ropewalk.check.formats.json import json_text
    from ropewalk.check.formats.junit import junit_text
    from ropewalk.check.formats.markdown import markdown_text
    from ropewalk.check.formats.table import table_text

    if form == "table":
        return table_text(reports, fail_on, show_all=show_all)
    if form == "markdown":
        return markdown_text(reports, fail_on, show_all=show_all)
    return {"json": json_text, "junit": junit_text, "annotations": annotations_text}[form](
        reports, fail_on
    )
