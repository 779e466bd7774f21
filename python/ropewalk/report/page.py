"""A report as one HTML page that needs nothing else: no scripts, nothing from elsewhere."""

from __future__ import annotations

import base64
import html
from collections.abc import Iterable, Sequence

from ropewalk.check.formats import words
from ropewalk.check.verdict import Verdict
from ropewalk.report.content import INPUT, INVENTED, Content

__all__ = ["page_text"]

#: Allows nothing but what is in the page, whatever may get into it.
_POLICY = "default-src 'none'; img-src data:; style-src 'unsafe-inline'"

_STYLE = """
body { font: 15px/1.45 sans-serif; max-width: 62rem; margin: 2rem auto; padding: 0 1rem;
  color: #1c2733; }
h1, h2 { line-height: 1.2; }
h2 { border-bottom: 1px solid #b9c4ce; padding-bottom: .2rem; margin-top: 2.2rem; }
table { border-collapse: collapse; margin: .6rem 0 1.2rem; font-size: .92em; }
th, td { border-bottom: 1px solid #dde3e8; padding: .25rem .7rem .25rem 0; text-align: left;
  vertical-align: top; overflow-wrap: anywhere; }
td.number { text-align: right; white-space: nowrap; }
caption { text-align: left; font-weight: bold; padding: .3rem 0; }
img { max-width: 100%; }
figure { margin: 1rem 0 2rem; }
figcaption { font-style: italic; }
.banner, .caution { border: 2px solid #b23a48; padding: .6rem 1rem; margin: 1rem 0; }
.banner { background: #f2d9dc; font-weight: bold; }
.fail, .not-computed { color: #8c1d2c; font-weight: bold; }
.warn { color: #7a5b00; font-weight: bold; }
.pass { color: #24613a; }
@media print { body { margin: 0; max-width: none; } figure, tr { break-inside: avoid; } }
"""


def page_text(content: Content) -> str:
    """Return the page; every text of the rig is escaped, pictures are inside.

    Parameters
    ----------
    content
        From `ropewalk.report.content.gather`.

    Examples
    --------
    >>> import ropewalk as rw
    >>> from ropewalk.report.content import gather
    >>> from ropewalk.report.page import page_text
    >>> page = page_text(gather(rw.rig.example("rig7")))
    >>> "<script" in page, "Rig 7" in page
    (False, True)
    """
    title = _escape(f"{content.name}, {content.site}")
    body = [
        f"<h1>{title}</h1>",
        *([f'<p class="banner">{_escape(INVENTED)}</p>'] * content.invented),
        *(f"<p>Note: {_escape(note)}</p>" for note in content.notes),
        "<h2>Verdicts</h2>",
        _verdicts(content.verdicts),
        "<h2>Pictures</h2>",
        *_figures(content),
        "<h2>What the verdicts rest on</h2>",
        *_inputs_of_verdicts(content.verdicts),
        "<h2>Sources</h2>",
        _table(("rule", "asked for by", "standing"), content.sources),
        "<h2>Inputs: every value of the rig file and where it comes from</h2>",
        *(_table(INPUT, rows, caption=name) for name, rows in content.inputs),
        "<h2>Cautions</h2>",
        *(f'<p class="caution">{_escape(text)}</p>' for text in content.cautions),
        "<h2>Versions</h2>",
        _table(("what", "version"), content.versions),
    ]
    return "\n".join(
        [
            "<!DOCTYPE html>",
            '<html lang="en">',
            "<head>",
            '<meta charset="utf-8">',
            f'<meta http-equiv="Content-Security-Policy" content="{_POLICY}">',
            '<meta name="viewport" content="width=device-width, initial-scale=1">',
            f"<title>{title}</title>",
            f"<style>{_STYLE}</style>",
            "</head>",
            "<body>",
            *body,
            "</body>",
            "</html>",
            "",
        ]
    )


def _verdicts(verdicts: Sequence[Verdict]) -> str:
    head = ("status", "rule", "subject", "value", "limit", "margin", "reason")
    rows = [f"<tr>{''.join(f'<th>{name}</th>' for name in head)}</tr>"]
    for one in sorted(verdicts, key=lambda one: words.ORDER.index(one.status)):
        kind = str(one.status).replace(" ", "-")
        numbers = (
            words.value_text(one.rule, one.value),
            words.limit_text(one.rule, one.limit),
            words.margin_text(one),
        )
        rows.append(
            f'<tr><td class="{kind}">{_escape(one.status)}</td>'
            f"<td>{_escape(one.rule.id)}<br>{_escape(one.rule.title)}</td>"
            f"<td>{_escape(one.subject)}</td>"
            + "".join(f'<td class="number">{_escape(number)}</td>' for number in numbers)
            + f"<td>{_escape(one.reason)}</td></tr>"
        )
    return "<table>\n" + "\n".join(rows) + "\n</table>"


def _figures(content: Content) -> Iterable[str]:
    for picture in content.pictures:
        title = _escape(picture.title)
        if picture.problem:
            yield f"<p>{title}: not drawn, {_escape(picture.problem)}</p>"
            continue
        data = base64.b64encode(picture.png).decode("ascii")
        yield (
            f'<figure><img alt="{title}" src="data:image/png;base64,{data}">'
            f"<figcaption>{title}</figcaption></figure>"
        )


def _inputs_of_verdicts(verdicts: Sequence[Verdict]) -> Iterable[str]:
    for one in verdicts:
        if one.inputs:
            name = f"{one.rule.id}, {one.subject}" if one.subject else one.rule.id
            rows = [*one.inputs.items(), ("computed by", one.rule.how)]
            yield _table(("input", "value"), rows, caption=name)


def _table(head: Sequence[str], rows: Iterable[Sequence[str]], caption: str = "") -> str:
    lines = ["<table>"]
    if caption:
        lines.append(f"<caption>{_escape(caption)}</caption>")
    lines.append(f"<tr>{''.join(f'<th>{_escape(name)}</th>' for name in head)}</tr>")
    lines += [f"<tr>{''.join(f'<td>{_escape(cell)}</td>' for cell in row)}</tr>" for row in rows]
    return "\n".join([*lines, "</table>"])


def _escape(text: object) -> str:
    return html.escape(words.plain(text))
