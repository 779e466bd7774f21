"""Rig files: the mast, read and refused; its rating at the lines strung."""

from __future__ import annotations

from pathlib import Path

import pytest
from rig_line_test import RIG7, load

import ropewalk as rw
from ropewalk.errors import InadmissibleError
from ropewalk.testing import assert_close

LBF = 4.4482216152605


def test_the_mast_of_rig7() -> None:
    rig = rw.load_rig(rw.rig.example("rig7"))
    assert rig.mast is not None
    assert rig.mast.hook_load_rating == pytest.approx(650_000 * LBF)
    assert rig.mast.rated_lines == rig.reeving.lines
    assert rig.mast.mast == rw.Mast("25 ft", "A", "CD", "21 ft")


def test_fewer_lines_lower_the_rating_of_the_mast_and_more_do_not_raise_it(tmp_path: Path) -> None:
    # Leg A, with the dead line, bears W (1/4 + 1/n).
    for lines, rating in ((8, 650.0 * (14 / 10) / (12 / 8)), (12, 650.0)):
        rig = load(tmp_path, RIG7.replace("lines = 10\nsheave", f"lines = {lines}\nsheave"))
        margins = rw.suspension.rig_margins(rig)
        assert_close(margins.rating[0], rw.Q(rating, "kip"))


def test_a_mast_has_no_rating_at_an_odd_number_of_lines(tmp_path: Path) -> None:
    rig = load(tmp_path, RIG7.replace("lines = 10\nsheave", "lines = 9\nsheave"))
    with pytest.raises(InadmissibleError, match="lines must be even"):
        rw.suspension.rig_margins(rig)


@pytest.mark.parametrize(
    ("old", "new", "words"),
    [
        ('base_width = "25 ft"', "base_width = 25", ["mast.base_width", "a length"]),
        ('dead_line = "A"', 'dead_line = "E"', ["mast.dead_line", "must be one of A"]),
        ('dead_line = "A"', 'dead_line = ["20 ft", "0 ft"]', ["mast.dead_line", "outside"]),
        ('dead_line = "A"', "dead_line = 3", ["mast.dead_line", "two distances"]),
        ("rated_lines = 10", "rated_lines = 0", ["mast.rated_lines"]),
        ("rated_lines = 10", "rated_lines = 9", ["mast.rated_lines", "even", "dead line"]),
        ('crown_block_weight = "9500 lbf"\n', "", ["mast.crown_block_weight: missing"]),
    ],
)
def test_what_cannot_be_is_refused_by_key(
    tmp_path: Path, old: str, new: str, words: list[str]
) -> None:
    assert old in RIG7
    with pytest.raises(rw.rig.RigFileError) as caught:
        load(tmp_path, RIG7.replace(old, new, 1))
    for word in words:
        assert word in str(caught.value)


def test_places_may_be_distances(tmp_path: Path) -> None:
    text = RIG7.replace('fast_line = "CD"', 'fast_line = ["1 ft", "10.5 ft"]')
    rig = load(tmp_path, text)
    assert rig.mast is not None
    assert rig.mast.mast.fast_line_si == pytest.approx((0.3048, 3.2004))


def test_wind_and_racked_pipe_on_the_legs_of_a_rig(tmp_path: Path) -> None:
    legs = 'on_legs = ["-30 kip", "5 kip", "0 kip", "40 kip"]\n'
    rig = load(tmp_path, RIG7.replace("[mast]\n", "[mast]\n" + legs))
    assert rig.mast is not None
    assert rig.mast.on_legs == pytest.approx([-30e3 * LBF, 5e3 * LBF, 0.0, 40e3 * LBF])
    plain = load(tmp_path, RIG7)
    assert plain.mast is not None
    assert plain.mast.on_legs is None


@pytest.mark.parametrize(
    "legs", ['["1 kip", "1 kip", "1 kip"]', '["1 kip", "1 kip", "1 kip", "1 m"]', '"1 kip"']
)
def test_forces_on_the_legs_that_cannot_be(tmp_path: Path, legs: str) -> None:
    with pytest.raises(rw.rig.RigFileError, match="on_legs"):
        load(tmp_path, RIG7.replace("[mast]\n", f"[mast]\non_legs = {legs}\n"))
