"""Rig files made of several: what is merged how, and what is never opened."""

from __future__ import annotations

import os
from pathlib import Path

import pytest
from hypothesis import given
from hypothesis import strategies as st
from rig_files import PLAN, SMALL, refused, write

import ropewalk as rw
from ropewalk.rig.include import DEEPEST_INCLUDE, LARGEST_FILE, MOST_FILES, merge

TOP = "ropewalk = 2\ninclude = {}\n"


def tree(folder: Path, **texts: str) -> Path:
    """Write rig.toml, which includes what `top` says, and other files; return the first."""
    for name, text in texts.items():
        if name != "top":
            write(folder, text, f"{name}.toml")
    return write(folder, TOP.format(texts["top"]))


def test_a_file_is_the_same_whether_whole_or_in_parts(tmp_path: Path) -> None:
    whole = rw.load_rig(write(tmp_path, SMALL + PLAN, "whole.toml"))
    head, tail = SMALL.split("[crown]")
    parts = tree(
        tmp_path, top='["head.toml", "tail.toml"]', head=head, tail="[crown]" + tail + PLAN
    )
    assert rw.load_rig(parts) == whole


def test_tables_are_merged_and_the_last_one_wins(tmp_path: Path) -> None:
    first = SMALL + PLAN
    second = '[block]\nweight = "50 kip"\nhighest = "9 m"\n'
    own = '[block]\nhighest = "10 m"\n' + PLAN[PLAN.index("[[operation]]") :].replace("3400", "900")
    path = tree(tmp_path, top='["first.toml", "second.toml"]', first=first, second=second)
    path.write_text(path.read_text() + own)
    rig = rw.load_rig(path)
    assert rig.block.weight == pytest.approx(50_000 * 4.4482216152605)
    assert (rig.block.highest, rig.block.lowest) == (10.0, 37.0)
    # A list is one value.
    assert [one.depth for one in rig.operations] == [900.0]

    origins = rw.rig.read(path).origins
    kinds = {key: (origins[key].kind, origins[key].file) for key in origins}
    assert kinds["block.lowest"] == ("include", "first.toml")
    assert kinds["block.weight"] == ("include", "second.toml")
    assert kinds["block.highest"] == ("file", "rig.toml")
    assert kinds["operation[1].depth"] == ("file", "rig.toml")
    assert kinds["operation[1].times"] == ("default", "")
    assert first.splitlines()[origins["block.lowest"].line - 1] == 'lowest = "37 m"'


trees = st.recursive(
    st.integers(0, 3) | st.lists(st.integers(0, 3), max_size=2),
    lambda inner: st.dictionaries(st.sampled_from("abc"), inner, max_size=3),
    max_leaves=8,
)
tables = st.dictionaries(st.sampled_from("abc"), trees, max_size=3)


@given(tables, tables, tables)
def test_merging_is_associative_and_keeps_what_is_above(low: dict, mid: dict, top: dict) -> None:
    def laid(*layers: dict) -> dict:
        out: dict = {}
        for one in layers:
            merge(out, one)
        return out

    assert laid(low, low) == laid(low) == low
    assert laid(laid(low, mid), top) == laid(low, laid(mid, top)) or any(
        # A value between two tables cuts the lower one off, in whichever order.
        _cuts(low, mid, top)
    )
    both = laid(low, top)
    assert set(both) == set(low) | set(top)
    for key, value in top.items():
        if not isinstance(value, dict):
            assert both[key] == value


def _cuts(low: dict, mid: dict, top: dict) -> list[bool]:
    found = []
    for key in low.keys() & mid.keys() & top.keys():
        inner = (low[key], mid[key], top[key])
        if all(isinstance(one, dict) for one in inner):
            found += _cuts(*inner)
        else:
            found.append(isinstance(inner[0], dict) and isinstance(inner[2], dict))
    return found


def test_each_file_has_its_own_units(tmp_path: Path) -> None:
    block = '[block]\nhighest = {}\nlowest = "37 m"\n'
    rest = SMALL.replace('highest = "8 m"\n', "").replace('"46000 lbf"', "46")
    rest = rest.replace("[rig]", 'units = { force = "kip" }\n[rig]', 1)
    path = tree(
        tmp_path,
        top='["rest.toml", "block.toml"]',
        rest=rest,
        block=f'units = "SI"\n{block.format(8)}',
    )
    path.write_text(path.read_text() + 'units = { length = "ft", force = "N" }\n')
    rig = rw.load_rig(path)
    assert rig.block.highest == 8.0
    assert rig.block.weight == pytest.approx(46_000 * 4.4482216152605)
    # A file without units has none, whatever the file that includes it declares.
    write(tmp_path, block.format(8), "block.toml")
    error = refused(path)
    assert str(error).splitlines()[1].startswith("block.toml:2: block.highest: must be a length")


def test_each_file_has_its_own_layout(tmp_path: Path) -> None:
    old = 'ropewalk = 1\n[limits]\noverpull = "100 kN"\n'
    path = tree(tmp_path, top='["rest.toml", "old.toml"]', rest=SMALL + PLAN, old=old)
    reading = rw.rig.read(path)
    assert reading.file.stuck is not None
    assert reading.file.stuck.overpull == 100e3
    assert "old.toml: layout 1 is read as layout 2" in reading.notes
    assert str(reading.origins["stuck.overpull"]) == "old.toml:3, included"


def test_problems_are_told_where_they_stand(tmp_path: Path) -> None:
    wrong = SMALL.replace('"46000 lbf"', "46000")
    error = refused(tree(tmp_path, top='"sub/rest.toml"', **{"sub/rest": wrong}))
    line = wrong.splitlines().index("weight = 46000") + 1
    assert error.places == (rw.rig.Place("sub/rest.toml", line, "block.weight"),)


def test_files_are_found_from_the_file_that_names_them(tmp_path: Path) -> None:
    path = tree(
        tmp_path,
        top='"sub/one.toml"',
        **{"sub/one": 'include = "deep/two.toml"\n', "sub/deep/two": SMALL},
    )
    assert rw.load_rig(path).name == "Rig 7"


@pytest.mark.parametrize(
    ("include", "words"),
    [
        ('"/etc/passwd"', "an absolute path"),
        ('"C:/rig.toml"', "an absolute path"),
        ('"C:rig.toml"', "an absolute path"),
        ("'\\\\host\\share\\rig.toml'", "an absolute path"),
        ('"../rig.toml"', "leads out of its folder by .."),
        ('"sub/../../rig.toml"', "leads out of its folder by .."),
        ("'..\\rig.toml'", "leads out of its folder by .."),
        ('""', "not a file name"),
        ('"  "', "not a file name"),
        ("'a\\b.toml'", "not a file name"),
        ('"a\\u0000.toml"', "control characters"),
        ('"a\\nb.toml"', "not a file name"),
        ('"none.toml"', "cannot be read: No such file"),
        ('"rig.toml/none.toml"', "cannot be read: Not a directory"),
        ('"."', "not a plain file"),
        ("3", "must be a file name or a list"),
        ("[3]", "must be a file name or a list"),
        ('{ a = "b" }', "must be a file name or a list"),
        (f'"{"a" * 3000}"', "cannot be read: File name too long"),
    ],
)
def test_names_that_are_never_opened(tmp_path: Path, include: str, words: str) -> None:
    error = refused(tree(tmp_path, top=include))
    assert words in str(error)
    assert "rig.toml" in str(error)


def test_links_may_not_lead_out_of_the_tree(tmp_path: Path) -> None:
    outside = write(tmp_path, SMALL, "outside.toml")
    inside = tmp_path / "tree"
    path = tree(inside, top='"link.toml"', real=SMALL)
    (inside / "link.toml").symlink_to(outside)
    assert "a link that leads out" in str(refused(path))
    (inside / "link.toml").unlink()
    (inside / "link.toml").symlink_to("real.toml")
    assert rw.load_rig(path).name == "Rig 7"
    # A folder that is a link, and a link in a circle.
    (inside / "folder").symlink_to(tmp_path)
    path = tree(inside, top='"folder/outside.toml"')
    assert "a link that leads out" in str(refused(path))
    (inside / "circle.toml").symlink_to("circle.toml")
    assert "cannot be read" in str(refused(tree(inside, top='"circle.toml"')))


@pytest.mark.skipif(not hasattr(os, "mkfifo"), reason="no pipes with names here")
def test_a_pipe_is_refused_and_not_waited_for(tmp_path: Path) -> None:
    os.mkfifo(tmp_path / "pipe.toml")
    assert "not a plain file" in str(refused(tree(tmp_path, top='"pipe.toml"')))
    assert "not a plain file" in str(refused(tmp_path / "pipe.toml"))
    assert "not a plain file" in str(refused(Path("/dev/zero")))


def test_circles_are_named_with_their_chain(tmp_path: Path) -> None:
    path = tree(tmp_path, top='"a.toml"', a='include = "b.toml"', b='include = ["a.toml"]')
    error = refused(path)
    assert "b.toml:1: include[1]: 'a.toml': includes itself" in str(error)
    assert "(rig.toml > a.toml > b.toml > a.toml)" in str(error)
    assert "includes itself" in str(refused(tree(tmp_path, top='"rig.toml"')))


def test_depth_and_number_of_files_have_limits(tmp_path: Path) -> None:
    def chain(deep: int) -> Path:
        for i in range(1, deep):
            write(tmp_path, f'include = "{i + 1}.toml"', f"{i}.toml")
        write(tmp_path, SMALL, f"{deep}.toml")
        return tree(tmp_path, top='"1.toml"')

    assert rw.load_rig(chain(DEEPEST_INCLUDE)).name == "Rig 7"
    error = refused(chain(DEEPEST_INCLUDE + 1))
    assert f"more than {DEEPEST_INCLUDE} files deep" in str(error)
    assert "rig.toml > 1.toml > 2.toml" in str(error)

    names = ", ".join(['"one.toml"'] * (MOST_FILES - 1))
    write(tmp_path, SMALL, "one.toml")
    assert rw.load_rig(tree(tmp_path, top=f"[{names}]")).name == "Rig 7"
    error = refused(tree(tmp_path, top=f'[{names}, "one.toml"]'))
    assert f"more than {MOST_FILES} files" in str(error)
    # Two files in each of two, and so on, are many.
    for i in range(1, 8):
        write(tmp_path, f'include = ["{i + 1}.toml", "{i + 1}.toml"]', f"{i}.toml")
    write(tmp_path, SMALL, "8.toml")
    assert f"more than {MOST_FILES} files" in str(refused(tree(tmp_path, top='"1.toml"')))


def test_files_together_have_a_limit(tmp_path: Path) -> None:
    half = SMALL + "#" * (LARGEST_FILE // 2)
    path = tree(tmp_path, top='["a.toml", "b.toml"]', a=half, b=half)
    error = refused(path)
    assert f"larger than {LARGEST_FILE} bytes together with the files before it" in str(error)
    assert "rig.toml > b.toml" in str(error)


def test_broken_files_are_named(tmp_path: Path) -> None:
    error = refused(tree(tmp_path, top='"a.toml"', a="[rig\n"))
    assert str(error).startswith("a.toml:1: not valid TOML")
    error = refused(tree(tmp_path, top='"a.toml"', a="ropewalk = 9\n"))
    assert "a.toml:1: ropewalk: layout 9 is not known" in str(error)
    error = refused(tree(tmp_path, top='"a.toml"', a='units = "US"\n'))
    assert "a.toml:1: units: must be" in str(error)


def test_data_without_a_folder_include_nothing() -> None:
    from ropewalk.rig.file import parse_rig

    with pytest.raises(rw.rig.RigFileError, match="include: only in a file"):
        parse_rig({"ropewalk": 2, "include": "a.toml"})


def test_a_plan_of_its_own_may_be_in_parts_and_units_too(tmp_path: Path) -> None:
    rig = rw.load_rig(write(tmp_path, SMALL))
    whole = write(tmp_path, f"ropewalk = 2\n{PLAN}", "whole.toml")
    cut = PLAN.index("[[operation]]")
    write(tmp_path, PLAN[:cut], "strings.toml")
    part = PLAN[cut:].replace('"3400 m"', "3400").replace('"28.5 m"', "28.5")
    head = 'ropewalk = 2\nunits = "SI"\ninclude = "strings.toml"\n'
    parts = write(tmp_path, head + part, "parts.toml")
    loads = [rw.Campaign.from_plan(rig, one).hook_load_si.tolist() for one in (whole, parts)]
    assert loads[0] == loads[1]
