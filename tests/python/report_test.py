"""A rig on paper: complete, self-contained, and safe against its own texts."""

from __future__ import annotations

import base64
import hashlib
import re
import tomllib
from collections.abc import Iterator
from dataclasses import replace
from html.parser import HTMLParser
from pathlib import Path
from typing import Any

import pytest
from check_rigs import FEW_LINES, RIG7, WRONG, write_rig
from rig_files import SMALL, write

import ropewalk as rw
from ropewalk.report.content import INVENTED, Content, gather, inputs_of
from ropewalk.report.markdown import report_markdown
from ropewalk.report.page import page_text
from ropewalk.report.pictures import pictures

#: Elements without an end tag: HTML Living Standard, 13.1.2 "Void elements".
VOID = {"meta", "br", "img", "link", "hr", "input"}
PNG = b"\x89PNG\r\n\x1a\n"


class Page(HTMLParser):
    """Reads a page back: elements, attributes, text; refuses tags that do not match."""

    def __init__(self, text: str) -> None:
        super().__init__()
        self.open: list[str] = []
        self.tags: list[str] = []
        self.attributes: list[tuple[str, str]] = []
        self.texts: list[str] = []
        self.feed(text)
        self.close()
        assert self.open == []

    def handle_starttag(self, tag: str, attrs: list[tuple[str, str | None]]) -> None:
        self.tags.append(tag)
        self.attributes += [(name, value or "") for name, value in attrs]
        if tag not in VOID:
            self.open.append(tag)

    def handle_endtag(self, tag: str) -> None:
        assert self.open.pop() == tag

    def handle_data(self, data: str) -> None:
        self.texts.append(data.strip())


@pytest.fixture(scope="module")
def folder(tmp_path_factory: pytest.TempPathFactory) -> Path:
    base = tmp_path_factory.mktemp("report")
    out = base / "new" / "folder"
    written = rw.report.write_report(write_rig(base / "rig.toml", FEW_LINES), out)
    assert set(written) == set(out.iterdir())
    return out


@pytest.fixture(scope="module")
def page(folder: Path) -> Page:
    return Page((folder / "report.html").read_text(encoding="utf-8"))


@pytest.fixture(scope="module")
def markdown(folder: Path) -> str:
    return (folder / "report.md").read_text(encoding="utf-8")


@pytest.fixture(scope="module")
def content() -> Content:
    return gather(rw.rig.example("rig7"))


def leaves(value: Any) -> Iterator[str]:
    """Every value of a TOML file as text; lists of plain values stay one."""
    if isinstance(value, dict):
        for one in value.values():
            yield from leaves(one)
    elif isinstance(value, list) and value and isinstance(value[0], dict):
        for one in value:
            yield from leaves(one)
    elif isinstance(value, bool):
        yield str(value).lower()
    elif not isinstance(value, list):
        yield str(value)


def test_the_page_needs_nothing_else(page: Page) -> None:
    assert not {"script", "link", "iframe", "object", "embed", "form"} & set(page.tags)
    for name, value in page.attributes:
        assert not name.startswith("on")
        if name in ("src", "href", "srcset", "action"):
            assert value.startswith("data:image/png;base64,")
    assert "url(" not in "".join(page.texts)
    assert "@import" not in "".join(page.texts)
    policy = next(value for name, value in page.attributes if value.startswith("default-src"))
    assert "script" not in policy


def test_pictures_are_inside_the_page_and_beside_the_text(
    folder: Path, page: Page, markdown: str
) -> None:
    inside = [
        base64.b64decode(value.partition(",")[2], validate=True)
        for name, value in page.attributes
        if name == "src"
    ]
    beside = [(folder / name).read_bytes() for name in re.findall(r"\]\((.*?\.png)\)", markdown)]
    assert inside == beside
    assert len(beside) == len(list(folder.glob("*.png")))
    assert all(one.startswith(PNG) for one in inside)


@pytest.mark.parametrize("example", ["rig7", "osprey-sound"])
def test_pictures_are_those_the_rig_has_data_for(example: str, content: Content) -> None:
    rig = rw.load_rig(rw.rig.example(example))
    drawn = content.pictures if example == "rig7" else pictures(rig)
    found = {one.name: one for one in drawn}
    assert {"string-up", "load-path", "line-damage"} <= set(found)
    assert ("leg-loads" in found) == (rig.mast is not None)
    assert ("load-and-speed" in found) == (rig.drawworks is not None)
    assert ("stopping-1" in found) == (rig.overtravel is not None)
    for one in found.values():
        assert bool(one.png) != bool(one.problem)


def test_a_picture_that_cannot_be_drawn_says_why(tmp_path: Path) -> None:
    """A mast rated for a dead line refuses an odd number of lines."""
    rig = rw.load_rig(write_rig(tmp_path / "rig.toml", ("\nlines = 10\n", "\nlines = 9\n")))
    found = {one.name: one for one in pictures(rig)}
    assert "odd" in found["load-path"].problem or "even" in found["load-path"].problem
    assert found["string-up"].png


def test_every_input_is_there(page: Page, markdown: str) -> None:
    data = tomllib.loads(RIG7.replace(*FEW_LINES))
    plain = markdown.replace("\\", "")
    values = set(leaves(data))
    assert len(values) > 100
    for value in values:
        assert " ".join(value.split()) in page.texts, value
        assert " ".join(value.split()) in plain, value


def test_inputs_count_every_value_once() -> None:
    data = tomllib.loads(RIG7)
    rows = [row for _, table in inputs_of(rw.rig.read(rw.rig.example("rig7"))) for row in table]
    given = [row for row in rows if not row[3].startswith("default, ")]
    plain = sum(1 for _ in leaves(data))
    lists = RIG7.count("= [0") + RIG7.count('= ["')
    assert len(given) == plain + lists
    assert all(row[3].startswith("rig7.toml:") for row in given)
    assert len(rows) > len(given)


def test_inputs_of_included_files_and_defaults_have_their_origin(tmp_path: Path) -> None:
    """Sums are those that hashlib gives for the bytes on disk, a byte order mark included."""
    common = 'ropewalk = 1\n[limits]\noverpull = "100 kN"\n'
    (tmp_path / "common.toml").write_bytes(b"\xef\xbb\xbf" + common.encode())
    top = write(tmp_path, SMALL.replace("[rig]", 'include = "common.toml"\n[rig]', 1))
    found = gather(top)
    stuck = ("overpull", "100 kN", "= 100000 N", "common.toml:3, included")
    lead = ("lead_sheaves", "0", "", "default, definition: none unless given")
    assert dict(found.inputs)["stuck"] == (stuck,)
    assert lead in dict(found.inputs)["reeving"]
    shown = Page(page_text(found)).texts
    said = report_markdown(found).replace("\\", "")
    for cell in (*stuck, *lead):
        assert not cell or cell in shown
        assert cell in said
    note = "common.toml: layout 1 is read as layout 2"
    assert note in found.notes
    assert f"Note: {note}" in shown
    assert f"Note: {note}" in said
    for path in (top, tmp_path / "common.toml"):
        digest = hashlib.sha256(path.read_bytes()).hexdigest()
        assert (f"rig file {path.name}, SHA-256", digest) in found.versions
        assert digest in said


def test_the_report_has_verdicts_sources_cautions_and_versions(page: Page, markdown: str) -> None:
    plain = markdown.replace("\\", "")
    text = "\n".join(page.texts)
    for expected in (
        INVENTED,
        "line.design_factor",
        "Wyoming",
        "neither inspection nor local codes",
        "inspection of the rope and its discard criteria",
        rw.__version__,
        "numpy",
        "-31 %",
    ):
        assert expected in text
        assert expected in plain
    assert text.index("Verdicts") < text.index("Cautions") < text.index("Versions")


def test_a_rig_that_is_not_invented_has_no_banner(content: Content) -> None:
    real = replace(content, invented=False)
    assert INVENTED not in page_text(real)
    assert INVENTED not in report_markdown(real)


def test_texts_of_the_rig_are_shown_and_do_nothing(content: Content) -> None:
    nasty = "<script>alert(1)</script> | ![x](https://example.org/x.png) 'q' \" & `c`\n# d"
    found = replace(content, name=nasty, notes=(nasty,), inputs=((nasty, ((nasty,) * 4,)),))
    shown = Page(page_text(found))
    assert "script" not in shown.tags
    assert sum("<script>alert(1)</script>" in text for text in shown.texts) == 8
    text = report_markdown(found)
    assert "![x](" not in text
    assert not re.search(r"(?<!\\)<script", text)
    assert "# d" not in text.splitlines()


def test_the_same_file_gives_the_same_report(content: Content) -> None:
    again = gather(rw.rig.example("rig7"))
    assert page_text(again) == page_text(content)


def test_a_bad_file_writes_nothing(tmp_path: Path) -> None:
    bad = write_rig(tmp_path / "bad.toml", WRONG)
    with pytest.raises(rw.rig.RigFileError, match="lines"):
        rw.report.write_report(bad, tmp_path / "out")
    assert not (tmp_path / "out").exists()
