"""A check as JSON, laid out as ``check-report.schema.json`` says."""

from __future__ import annotations

import json
from collections.abc import Sequence
from importlib.resources import files
from typing import TYPE_CHECKING, Any

from ropewalk.check.formats import words
from ropewalk.check.verdict import Severity

if TYPE_CHECKING:
    from ropewalk.check.files import FileReport

__all__ = ["LAYOUT", "as_data", "json_text", "schema"]

#: Version of the layout; another one means that a reader must be changed.
LAYOUT = 1


def schema() -> dict[str, Any]:
    """Return the JSON Schema (draft 2020-12) of `json_text`.

    Examples
    --------
    >>> from ropewalk.check.formats.json import schema
    >>> schema()["properties"]["layout"]["const"]
    1
    """
    text = (files("ropewalk") / "data" / "check-report.schema.json").read_text(encoding="utf-8")
    found: dict[str, Any] = json.loads(text)
    return found


def as_data(
    reports: Sequence[FileReport], fail_on: Severity | str = Severity.MUST
) -> dict[str, Any]:
    """Return what `json_text` writes, as plain values.

    Examples
    --------
    >>> import ropewalk as rw
    >>> from ropewalk.check.formats.json import as_data
    >>> as_data(rw.check.check_files(["no-such.toml"]))["outcome"]
    2
    """
    from ropewalk._version import __version__
    from ropewalk.check.files import outcome

    return {
        "ropewalk": __version__,
        "layout": LAYOUT,
        "fail_on": str(Severity(fail_on)),
        "outcome": outcome(reports, fail_on),
        "summary": {key.replace(" ", "_"): count for key, count in words.summary(reports).items()},
        "files": [_file(report) for report in reports],
        "cautions": words.cautions(one for report in reports for one in report.verdicts),
    }


def json_text(reports: Sequence[FileReport], fail_on: Severity | str = Severity.MUST) -> str:
    """Return a check as JSON text; no number in it is NaN or infinite.

    An infinite value or margin is the text ``"inf"`` or ``"-inf"``.

    Parameters
    ----------
    reports
        From `ropewalk.check.check_files`.
    fail_on
        Least severity that makes a check fail.

    Examples
    --------
    >>> import json
    >>> import ropewalk as rw
    >>> from ropewalk.check.formats.json import json_text
    >>> data = json.loads(json_text(rw.check.check_files([rw.rig.example("rig7")])))
    >>> data["files"][0]["verdicts"][0]["rule"]
    'line.design_factor'
    """
    return json.dumps(as_data(reports, fail_on), indent=2, allow_nan=False) + "\n"


def _file(report: FileReport) -> dict[str, Any]:
    return {
        "path": report.path,
        "name": report.name,
        "invented": report.invented,
        "error": report.error or None,
        "places": [
            {**place._asdict(), "line": place.line if place.line > 0 else None}
            for place in report.places
        ],
        "notes": list(report.notes),
        "verdicts": [one.as_record() for one in report.verdicts],
    }
