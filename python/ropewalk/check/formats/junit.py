"""A check as JUnit XML, which build servers read: a suite a file, a case a verdict."""

from __future__ import annotations

from collections.abc import Sequence
from typing import TYPE_CHECKING
from xml.etree import ElementTree

from ropewalk.check.formats import words
from ropewalk.check.verdict import Severity, Status, Verdict

if TYPE_CHECKING:
    from ropewalk.check.files import FileReport

__all__ = ["junit_text"]


def junit_text(reports: Sequence[FileReport], fail_on: Severity | str = Severity.MUST) -> str:
    """Return a check as JUnit XML.

    A broken rule of severity `fail_on` or above is a failure, one that was not computed an error,
    and so is a file that cannot be used. Below that severity a broken rule is a case that passes
    and says so, and one not computed is skipped, as is what does not apply.

    Parameters
    ----------
    reports
        From `ropewalk.check.check_files`.
    fail_on
        Least severity that makes a check fail.

    Examples
    --------
    >>> import ropewalk as rw
    >>> from ropewalk.check.formats.junit import junit_text
    >>> text = junit_text(rw.check.check_files(["no-such.toml"]))
    >>> 'errors="1"' in text
    True
    """
    root = ElementTree.Element("testsuites", name="ropewalk check")
    for report in reports:
        root.append(_suite(report, fail_on))
    for name in ("tests", "failures", "errors", "skipped"):
        root.set(name, str(sum(int(suite.get(name, "0")) for suite in root)))
    ElementTree.indent(root)
    text = ElementTree.tostring(root, encoding="unicode")
    return f'<?xml version="1.0" encoding="utf-8"?>\n{text}\n'


def _suite(report: FileReport, fail_on: Severity | str) -> ElementTree.Element:
    suite = ElementTree.Element("testsuite", name=words.plain(report.path))
    if report.error:
        case = ElementTree.SubElement(suite, "testcase", classname="file", name="can be used")
        error = ElementTree.SubElement(
            case, "error", message=words.plain(report.error), type="unusable"
        )
        error.text = "\n".join(
            words.plain(f"{one.file}:{one.line}: {one.key}: {one.text}") for one in report.places
        )
    for one in report.verdicts:
        suite.append(_case(one, fail_on))
    suite.set("tests", str(len(suite)))
    for name, tag in (("failures", "failure"), ("errors", "error"), ("skipped", "skipped")):
        suite.set(name, str(len(suite.findall(f"testcase/{tag}"))))
    caution = ElementTree.SubElement(suite, "system-out")
    caution.text = "\n".join(f"Caution: {text}" for text in words.cautions(report.verdicts))
    return suite


def _case(one: Verdict, fail_on: Severity | str) -> ElementTree.Element:
    from ropewalk.check.files import counts

    name = f"{one.rule.id}: {one.subject}" if one.subject else one.rule.id
    case = ElementTree.Element(
        "testcase", classname=words.plain(one.rule.subject), name=words.plain(name)
    )
    text = words.sentence(one)
    if one.status is Status.NOT_APPLICABLE:
        ElementTree.SubElement(case, "skipped", message=words.plain(one.reason))
    elif counts(one, fail_on):
        not_computed = one.status is Status.NOT_COMPUTED
        tag = "error" if not_computed else "failure"
        ElementTree.SubElement(case, tag, message=text, type=str(one.rule.severity)).text = text
    elif one.status is Status.NOT_COMPUTED:
        ElementTree.SubElement(case, "skipped", message=text)
    else:
        broken = "broken, does not count: " if one.broken else ""
        ElementTree.SubElement(case, "system-out").text = f"{broken}{text}"
    return case
