"""A report as Markdown, with its pictures beside it."""

from __future__ import annotations

from ropewalk.check.formats import words
from ropewalk.check.formats.markdown import escape, table_of, verdict_table
from ropewalk.report.content import INPUT, INVENTED, Content

__all__ = ["report_markdown"]


def report_markdown(content: Content) -> str:
    """Return the report; pictures are named ``NAME.png``.

    Parameters
    ----------
    content
        From `ropewalk.report.content.gather`.

    Examples
    --------
    >>> import ropewalk as rw
    >>> from ropewalk.report.content import gather
    >>> from ropewalk.report.markdown import report_markdown
    >>> report_markdown(gather(rw.rig.example("rig7"))).splitlines()[0]
    '# Rig 7, Kestrel Flat geothermal field'
    """
    verdicts = sorted(content.verdicts, key=lambda one: words.ORDER.index(one.status))
    parts = [f"# {escape(f'{content.name}, {content.site}')}"]
    if content.invented:
        parts.append(f"**{INVENTED}**")
    parts += [f"Note: {escape(note)}" for note in content.notes]
    parts += ["## Verdicts", verdict_table(verdicts)]
    if reasons := [one for one in verdicts if one.reason]:
        parts.append("\n".join(f"- {escape(words.sentence(one))}" for one in reasons))
    parts.append("## Pictures")
    for picture in content.pictures:
        title = escape(picture.title)
        if picture.problem:
            parts.append(f"{title}: not drawn, {escape(picture.problem)}")
        else:
            parts.append(f"![{title}]({picture.name}.png)")
    parts.append("## What the verdicts rest on")
    for one in content.verdicts:
        if one.inputs:
            name = f"{one.rule.id}, {one.subject}" if one.subject else one.rule.id
            rows = [*one.inputs.items(), ("computed by", one.rule.how)]
            parts += [f"### {escape(name)}", table_of(("input", "value"), rows)]
    parts += ["## Sources", table_of(("rule", "asked for by", "standing"), content.sources)]
    parts.append("## Inputs: every value of the rig file and where it comes from")
    for name, keys in content.inputs:
        if name:
            parts.append(f"### {escape(name)}")
        parts.append(table_of(INPUT, keys))
    parts.append("## Cautions")
    parts += [f"> {escape(text)}" for text in content.cautions]
    parts += ["## Versions", table_of(("what", "version"), content.versions)]
    return "\n\n".join(parts) + "\n"
