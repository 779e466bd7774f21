"""Rig files meant badly: every one ends in words, within a second, and nothing is evaluated."""

from __future__ import annotations

import os
import time
import tomllib
from collections.abc import Iterator
from contextlib import contextmanager, suppress
from pathlib import Path
from typing import Any

import pytest
from hypothesis import HealthCheck, example, given, settings
from hypothesis import strategies as st
from rig_files import PLAN, SMALL, refused, write

import ropewalk as rw
from ropewalk._units import LONGEST_TEXT
from ropewalk.rig.file import LARGEST_FILE, parse_rig

#: Longest that any file may take; a quiet machine needs far less.
SECOND = 1.0
FEW = settings(max_examples=150, deadline=None, suppress_health_check=[HealthCheck.too_slow])


@contextmanager
def within_a_second() -> Iterator[None]:
    begun = time.process_time()
    yield
    assert time.process_time() - begun < SECOND


@pytest.fixture(scope="module", autouse=True)
def _everything_is_imported() -> None:
    parse_rig(tomllib.loads(SMALL))


def refused_bytes(folder: Path, content: bytes) -> rw.rig.RigFileError:
    path = folder / "rig.toml"
    path.write_bytes(content)
    with within_a_second():
        return refused(path)


# Bytes

PERIODS = b"ropewalk = 2\n[sea.response]\nperiods = [%s]"


@pytest.mark.parametrize(
    ("content", "words"),
    [
        (b"", "ropewalk: missing"),
        (b"\x00", "not valid TOML"),
        (b"ropewalk = 2\x00", "not valid TOML"),
        (b"ropewalk = 2 # \x00", "not valid TOML"),
        (b"\xff\xfer\x00o\x00", "not UTF-8 text at byte 0"),
        (b"a = '\xed\xa0\x80'", "not UTF-8 text at byte 5"),
        (b"ropewalk = 2\rrope = 1", "not valid TOML"),
        (b"ropewalk = 2\nropewalk = 2", "rig.toml:2: not valid TOML"),
        (b"[rig]\n[rig]", "not valid TOML"),
        (b"[rig]\nname = 'a'\n[rig.name]\nb = 1", "not valid TOML"),
        (b"a = 1e", "not valid TOML"),
        (b"a = " + b"9" * 5000, "rig.toml:1: not valid TOML"),
        (b"a = 0x" + b"f" * 450_000, "a whole number beyond 64 bits"),
        (b"\n[a]\nb = 9223372036854775808", "rig.toml:3: a.b: a whole number beyond 64 bits"),
        (b"a = " + b"[" * 400_000, "nested too deeply"),
        (b"a = " + b"[" * 100 + b"]" * 100, "nested too deeply"),
        (b"a = " + b"{a=" * 100 + b"1" + b"}" * 100, "nested too deeply"),
        (b".".join([b"a"] * 200_000) + b" = 1", "rig.toml:1: nested too deeply"),
        (b"\n\n[" + b".".join([b'"a"'] * 100_000) + b"]", "rig.toml:3: nested too deeply"),
        (b"a = {" + b".".join([b"'a'"] * 100_000) + b" = 1}", "nested too deeply"),
        (b"".join(b"[%s]\n" % b".".join([b"a%d" % i] * 500) for i in range(150)), "nested"),
        (b"a" * 450_000, "not valid TOML"),
        (b'a = "' + b"\\n" * 200_000 + b'"', "a: text of more than 4000 characters"),
        (b'ropewalk = "' + b"x" * 450_000 + b'"', "ropewalk: text of more than 4000 characters"),
        (b'ropewalk = "' + b"x" * 4000 + b'"', "layout text of 4000 characters"),
        (b'[rope]\ngrade = "\\u001b[31m"', "rig.toml:2: rope.grade: text with control characters"),
        (b'"' + b"k" * 450_000 + b'" = 1\nropewalk = 2', "unknown key"),
        (b"ropewalk = 2\n" + b"".join(b"k%d = 1\n" % i for i in range(29_000)), "29006 problems"),
        (
            b"ropewalk = 2\nstring = {" + b",".join(b"s%d=1" % i for i in range(29_000)) + b"}",
            "rope",
        ),
        (PERIODS % b",".join([b"'1 parsnip'"] * 29_000), "29011 problems"),
        (PERIODS % b",".join(b"'1 x%d'" % i for i in range(29_000)), "29011 problems"),
        (PERIODS % b",".join(b"%d" % i for i in range(70_000)), "more than 30000 values"),
        (b"ropewalk = 2\n" + b"[[operation]]\na = 1\n" * 14_000, "operation[1].kind: missing"),
        (b"ropewalk = 2\noperation = [" + b"{}," * 120_000 + b"]", "more than 30000 values"),
        (b'ropewalk = 2\n"a\\n\\u001b[31m" = 1', r'"a\n\u001b[31m": unknown key'),
    ],
    ids=lambda value: repr(value[:40]) if isinstance(value, bytes) else "",
)
def test_bytes_that_are_no_rig(tmp_path: Path, content: bytes, words: str) -> None:
    error = refused_bytes(tmp_path, content)
    assert words in str(error)
    assert len(str(error)) < 100_000
    assert all(line.isprintable() for line in str(error).splitlines())


def test_a_mark_before_the_text_and_other_ends_of_lines_do_no_harm(tmp_path: Path) -> None:
    plain = rw.load_rig(write(tmp_path, SMALL))
    path = tmp_path / "windows.toml"
    path.write_bytes(b"\xef\xbb\xbf" + SMALL.replace("\n", "\r\n").encode())
    assert rw.load_rig(path) == plain
    path.write_bytes(b"\xef\xbb\xbf" + SMALL.replace("lines = 10", "lines = 0").encode())
    line = SMALL.splitlines().index("lines = 10") + 1
    assert refused(path).places[0] == rw.rig.Place("windows.toml", line, "reeving.lines")


def test_a_large_file_is_refused_before_it_is_read(tmp_path: Path) -> None:
    path = tmp_path / "huge.toml"
    with path.open("wb") as file:
        file.truncate(100_000_000)
    with within_a_second():
        assert f"larger than {LARGEST_FILE} bytes" in str(refused(path))


def test_what_is_no_file(tmp_path: Path) -> None:
    for path in (tmp_path, tmp_path / "none", tmp_path / "a\x00b", tmp_path / ("n" * 5000)):
        assert "cannot be read" in str(refused(path))
    if hasattr(os, "mkfifo"):
        os.mkfifo(tmp_path / "pipe")
        with within_a_second():
            assert "not a plain file" in str(refused(tmp_path / "pipe"))


# Values

TOWERS = [
    "1 m**99999999",
    "1 m**9**9",
    "2**9**9**9 m",
    "1 m**9**9**9**9",
    "1 (m**9)**9",
    "1 ((m**9)**9)**9",
    "1 m²²²²²²²",
    "1 m⁻⁹⁹⁹⁹⁹",
    "1 m cubed cubed cubed cubed",
    "1 km**9 cubed squared",
    "1 cubic m²",
    "1 m**(9**9)",
    "1 m**1e9",
    "1 m**-99999",
    "1 (m)²",
    "1 9**9**9*m",
    "1 m/9**9**9",
    "1 m + 1 m",
    "1 m if 1 else m",
    "1 __import__('os').getcwd()",
    "1 m.__class__",
    "1 [m for m in m]",
    "1 in" + "*in/in" * 20,
    "1 " + "(" * 60 + "m" + ")" * 60,
    "1 " + "(" * 20 + "m" + ")" * 20 + "**9",
    "1 " + "*" * 50,
    "1" + " " * 100_000 + "in",
    "1" * 1000 + " in",
    "1e999 in",
    "-1e999 in",
    "1e-999 in",
    "1e99999999999999999999 in",
    "nan in",
    "inf in",
    "1/0 in",
    "1 yottameter**9",
    "0x10 in",
    "1_ _0 in",
    "١ inch²",
    "1 in\x00",
    "",
    " ",
    "in",
]


@pytest.mark.parametrize("text", TOWERS, ids=lambda text: repr(text[:30]))
def test_text_of_quantities_is_never_evaluated(text: str) -> None:
    data = tomllib.loads(SMALL)
    data["rope"]["diameter"] = text
    with within_a_second(), pytest.raises(rw.rig.RigFileError, match=r"rope.diameter: "):
        parse_rig(data)


@pytest.mark.parametrize("text", TOWERS, ids=lambda text: repr(text[:30]))
def test_nor_is_it_by_the_reader_of_quantities(text: str) -> None:
    with within_a_second():
        try:
            quantity = rw.Q(text)
        except rw.errors.UnitError:
            return
    assert abs(sum(dict(quantity.unit_items()).values())) <= 9


@pytest.mark.parametrize(
    ("text", "meters"),
    [
        ("1 in", 0.0254),
        ("1in", 0.0254),
        (" +1.e0 in ", 0.0254),
        ("1-3/8 in", 1.375 * 0.0254),
        ("0.5 m**2/m", 0.5),
        ("0.5 m²·m⁻¹", 0.5),
        ("5 (m*m)/m", 5.0),
        ("0.5 square_meter/m", None),
        ("0.5 square meter / m", 0.5),
        ("5e1 m^2 * m**(-1)", 50.0),
    ],
)
def test_what_people_write_is_still_read(text: str, meters: float | None) -> None:
    data = tomllib.loads(SMALL)
    data["block"]["lowest"] = "1000 m"
    data["block"]["highest"] = text
    if meters is None:
        with pytest.raises(rw.rig.RigFileError, match="not known"):
            parse_rig(data)
    else:
        assert parse_rig(data).block.highest == pytest.approx(meters, rel=1e-14)


def test_the_longest_text_is_a_limit() -> None:
    data = tomllib.loads(SMALL)
    data["rope"]["diameter"] = "1." + "0" * (LONGEST_TEXT - 5) + " in"
    assert parse_rig(data).rope.diameter == 0.0254
    data["rope"]["diameter"] = "1." + "0" * (LONGEST_TEXT - 4) + " in"
    with pytest.raises(rw.rig.RigFileError, match=f"longer than {LONGEST_TEXT} characters"):
        parse_rig(data)


LEAVES = [
    ("rope", "diameter"),
    ("rope", "grade"),
    ("reeving", "lines"),
    ("reeving", "sheave_friction"),
    ("block", "weight"),
    ("crown", "groove_material"),
    ("rig", "invented"),
    ("operation", 0, "kind"),
    ("operation", 0, "start"),
    ("operation", 0, "times"),
    ("operation", 0, "drag_up"),
    ("string", "drilling"),
    ("string", "drilling", 0, "length"),
    ("units",),
    ("mud",),
    ("ropewalk",),
]
scalars = (
    st.none()
    | st.booleans()
    | st.integers()
    | st.floats()
    | st.text(max_size=80)
    | st.datetimes()
    | st.sampled_from([2**63, -(2**63) - 1, 10**400, *TOWERS])
)
values = st.recursive(
    scalars,
    lambda inner: (
        st.lists(inner, max_size=3) | st.dictionaries(st.text(max_size=8), inner, max_size=3)
    ),
    max_leaves=6,
)


@FEW
@given(st.sampled_from(LEAVES), values)
@example(("rope", "diameter"), 10**5000)
@example(("operation", 0, "times"), 10**5000)
@example(("units",), {"length": "m**9**9"})
def test_any_value_in_any_place_is_read_or_refused_in_words(
    leaf: tuple[int | str, ...], value: Any
) -> None:
    data: Any = tomllib.loads(SMALL + PLAN)
    table = data
    for part in leaf[:-1]:
        table = table[part]
    table[leaf[-1]] = value
    error = None
    with within_a_second():
        try:
            parse_rig(data)
        except rw.rig.RigFileError as refusal:
            error = refusal
    if error is not None:
        assert str(error).startswith("rig: ")
        assert len(error.places) == len(error.problems)


TEXT = SMALL + PLAN


@FEW
@given(st.integers(0, len(TEXT)), st.integers(0, 40), st.text(max_size=12), st.booleans())
def test_any_damage_to_a_file_is_refused_in_words(
    tmp_path_factory: pytest.TempPathFactory, at: int, cut: int, put: str, twice: bool
) -> None:
    text = TEXT[:at] + put + TEXT[at + cut :]
    path = tmp_path_factory.getbasetemp() / "damaged.toml"
    path.write_bytes((text * (1 + twice)).encode("utf-8", "surrogatepass"))
    with within_a_second(), suppress(rw.rig.RigFileError):
        rw.load_rig(path)


@FEW
@given(st.text(max_size=LONGEST_TEXT))
@example("m cubed cubed cubed")
@example("m**9**9**9")
def test_any_text_as_a_unit_ends_soon(text: str) -> None:
    with within_a_second(), suppress(rw.errors.UnitError):
        rw.Q(1.0, text)


units = st.text("mkinsft*/^()²³⁻¹ 0123456789.-+_cubedsqar", max_size=40)


@FEW
@given(units)
def test_text_that_looks_like_a_unit_ends_soon(text: str) -> None:
    with within_a_second():
        try:
            one = rw.Q(1.0, text)
        except rw.errors.UnitError:
            return
    assert all(abs(exponent) <= 9 * len(text) for exponent in dict(one.unit_items()).values())


# Speed


def test_reading_costs_little_more_than_reading_toml() -> None:
    path = rw.rig.example("rig7")
    text = path.read_text("utf-8")

    def least(run: Any) -> float:
        times = []
        for _ in range(15):
            begun = time.process_time()
            run()
            times.append(time.process_time() - begun)
        return min(times)

    assert least(lambda: rw.rig.read(path)) < 10.0 * least(lambda: tomllib.loads(text))
