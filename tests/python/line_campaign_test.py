"""Campaigns: strokes against the closed forms, laws of every row, dates, and what is refused."""

from __future__ import annotations

from datetime import datetime
from pathlib import Path
from typing import Any

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

import ropewalk as rw
from ropewalk.errors import InadmissibleError
from ropewalk.rig.strokes import hook_strokes

RIG7 = rw.rig.example("rig7")
TON_MILE = 2000.0 * 4.4482216152605 * 5280.0 * 0.3048


@pytest.fixture(scope="module")
def rig() -> rw.Rig:
    return rw.load_rig(RIG7)


@pytest.fixture(scope="module")
def campaign(rig: rw.Rig) -> rw.Campaign:
    return rw.Campaign.from_plan(rig)


def plan(*operations: str) -> str:
    """A plan of one pipe of 31 kg/m and 4,000 m in mud of 1,200 kg/m³."""
    head = (
        'ropewalk = 1\n[mud]\ndensity = "1200 kg/m**3"\nsteel_density = "7850 kg/m**3"\n'
        '[[string.pipe]]\nname = "pipe"\nlength = "4000 m"\nmass_per_length = "31 kg/m"\n'
    )
    return head + "".join(f"[[operation]]\n{one}\n" for one in operations)


def operation(kind: str, **keys: object) -> str:
    """One operation on the pipe; text is a quantity, dates and numbers stand bare."""
    lines = [f'kind = "{kind}"']
    if kind not in ("waiting", "slip", "cut"):
        lines.append('string = "pipe"')
    for key, value in keys.items():
        text = f'"{value}"' if isinstance(value, str) and not value.startswith("2026") else value
        lines.append(f"{key} = {text}")
    return "\n".join(lines)


@pytest.fixture
def run(rig: rw.Rig, tmp_path: Path) -> Any:
    def campaign_of(*operations: str) -> rw.Campaign:
        path = tmp_path / "plan.toml"
        path.write_text(plan(*operations), encoding="utf-8")
        return rw.Campaign.from_plan(rig, plan=path)

    return campaign_of


WEIGHT = 31.0 * 9.80665 * (1.0 - 1200.0 / 7850.0)
TRIP = {"depth": "2850 m", "stand_length": "28.5 m"}


def closed(rig: rw.Rig, kind: str, *depths: float, stand: float = 28.5) -> float:
    """The closed form for the pipe of `plan`, ton-miles."""
    forms = rw.si.work
    strings = (WEIGHT, rig.block.weight) if kind == "casing" else (WEIGHT, 0.0, rig.block.weight)
    return float(getattr(forms, kind)(*depths, stand, *strings)) / TON_MILE


# Against the closed forms: API RP 9B, after Lapeyrouse (2002) and Lyons (1996)


def test_round_trip_is_the_closed_form(run: Any, rig: rw.Rig) -> None:
    expected = closed(rig, "round_trip", 2850.0)
    both = run(operation("trip out", **TRIP), operation("trip in", **TRIP))
    for found in (run(operation("round trip", **TRIP)), both):
        assert found.work.m_as("ton_mile") == pytest.approx(expected, rel=1e-12)


def test_three_times_is_three_times_as_much(run: Any, rig: rw.Rig) -> None:
    once, thrice = (run(operation("round trip", times=n, **TRIP)) for n in (1, 3))
    assert len(thrice) == 3 * len(once)
    assert thrice.work_si.sum() == pytest.approx(3.0 * once.work_si.sum(), rel=1e-13)
    assert thrice.trips[-1] == 3.0
    assert thrice.trips[len(once) - 1] == 1.0
    assert thrice.trips[len(once) // 2 - 1] == 0.5


def test_short_trip_and_casing_are_their_closed_forms(run: Any, rig: rw.Rig) -> None:
    short = run(operation("short trip", from_depth="1425 m", **TRIP))
    assert short.work.m_as("ton_mile") == pytest.approx(
        closed(rig, "short_trip", 1425.0, 2850.0), rel=1e-12
    )
    casing = run(operation("casing", depth="2400 m", stand_length="12 m"))
    assert casing.work.m_as("ton_mile") == pytest.approx(
        closed(rig, "casing", 2400.0, stand=12.0), rel=1e-12
    )


def test_kelly_drilling_and_coring_stay_below_three_and_two_round_trips(
    run: Any, rig: rw.Rig
) -> None:
    """The connection is less than the round trip the factors of API RP 9B count for it."""
    keys = {"from_depth": "1900 m", "depth": "2185 m", "stand_length": "9.5 m"}
    kelly = {**keys, "drive": "kelly", "kelly_weight": "20 kN"}
    new_hole = closed(rig, "short_trip", 1900.0, 2185.0, stand=9.5)
    for found, low, high in (
        (run(operation("drilling", reams=1, **kelly)), 2.0, 3.0),
        (run(operation("drilling", reams=0, **kelly)), 1.0, 2.0),
        (run(operation("coring", **kelly)), 1.0, 2.0),
    ):
        assert low < found.work.m_as("ton_mile") / new_hole < high


def test_a_kelly_reams_where_the_published_factor_says_so(run: Any) -> None:
    keys = {"from_depth": "1900 m", "depth": "2185 m", "stand_length": "9.5 m"}
    kelly = {**keys, "drive": "kelly", "kelly_weight": "20 kN"}
    assert run(operation("drilling", passes=3.0, **kelly)) == run(
        operation("drilling", reams=1, **kelly)
    )
    assert len(run(operation("drilling", passes=2.0, **kelly))) < len(
        run(operation("drilling", passes=3.0, **kelly))
    )


def test_published_round_trip(tmp_path: Path) -> None:
    """Rabia, from memory: 10,000 ft, 93-ft stands, 351.6 ton-miles; 10 lb/gal, steel 65.5 lb/gal.

    The form counts the collars as hung to the last stand and the last 49 ft as half of a stand; by
    hand that is 2·Σ s (500 − x)·130.5·BF for x < 500 ft and W_m r (L − r).
    """
    text = RIG7.read_text(encoding="utf-8").replace('"46000 lbf"', '"23500 lbf"')
    text = text.replace('"22000 lbf"', '"0 lbf"')  # without the top drive
    rig = tmp_path / "rig.toml"
    rig.write_text(text, encoding="utf-8")
    file = tmp_path / "plan.toml"
    file.write_text(
        'ropewalk = 1\n[mud]\ndensity = "10 ppg"\nsteel_density = "65.5 ppg"\n'
        '[[string.s]]\nname = "collars"\nlength = "500 ft"\nmass_per_length = "150 lb/ft"\n'
        '[[string.s]]\nname = "pipe"\nlength = "9500 ft"\nmass_per_length = "19.5 lb/ft"\n'
        '[[operation]]\nkind = "round trip"\nstring = "s"\ndepth = "10000 ft"\n'
        'stand_length = "93 ft"\n',
        encoding="utf-8",
    )
    buoyancy = 1.0 - 10.0 / 65.5
    part = 10_000.0 - 107 * 93.0
    lack = 19.5 * buoyancy * part * (93.0 - part)
    x, s = part, part
    while x < 500.0:
        lack += 2.0 * s * (500.0 - x) * 130.5 * buoyancy
        x, s = x + 93.0, 93.0
    found = rw.Campaign.from_plan(rig, file).work.m_as("ton_mile")
    assert found + lack / 10_560_000.0 == pytest.approx(351.6, abs=0.05)


def test_operation_work_is_that_of_the_strokes_without_drag(rig: rw.Rig) -> None:
    """Where there is no closed form; and half a round trip one way, but for the last stand."""
    for one in rig.operations:
        strokes = hook_strokes(one, rig.block.weight, rig.travel, drag=False).work() * one.times
        if one.kind in ("circulating", "jarring", "reaming", "singles"):
            assert one.work(rig.block.weight) == pytest.approx(strokes, rel=1e-12)
        elif one.kind in ("trip in", "trip out", "round trip", "short trip", "casing"):
            assert one.work(rig.block.weight) == pytest.approx(strokes, rel=0.02)


def test_work_by_operation_adds_up(campaign: rw.Campaign) -> None:
    assert campaign.work_by_operation.sum().m_as("J") == pytest.approx(
        campaign.work.m_as("J"), rel=1e-12
    )
    assert len(campaign.work_by_operation) == len(campaign.operations)


# Laws of every campaign

KINDS = {
    "round trip": {},
    "trip out": {"from_depth": "500 m"},
    "trip in": {},
    "short trip": {"from_depth": "500 m"},
    "casing": {},
    "singles": {"from_depth": "500 m"},
    "drilling": {"from_depth": "500 m", "passes": 2.0, "reams": 1, "weight_on_bit": "50 kN"},
    "coring": {"from_depth": "500 m", "drive": "kelly", "kelly_weight": "30 kN"},
    "reaming": {"from_depth": "500 m"},
    "circulating": {"strokes": 9, "travel": "12 m"},
    "jarring": {"strokes": 9, "travel": "2 m", "overpull": "300 kN"},
}


@given(
    kind=st.sampled_from(sorted(KINDS)),
    depth=st.floats(600.0, 1500.0),
    stand=st.floats(8.0, 28.5),
    base=st.floats(0.0, 0.5),
    up=st.floats(0.0, 1.0),
    down=st.floats(0.0, 1.0),
    speed=st.floats(0.1, 3.0),
    acceleration=st.floats(0.05, 5.0),
    times=st.integers(1, 3),
)
def test_laws_of_every_row(
    rig: rw.Rig,
    tmp_path_factory: pytest.TempPathFactory,
    kind: str,
    depth: float,
    stand: float,
    base: float,
    up: float,
    down: float,
    speed: float,
    acceleration: float,
    times: int,
) -> None:
    """Inside the travel, each stroke where the last ended, work not negative, stops when free."""
    keys: dict[str, object] = {
        "depth": f"{depth!r} m",
        "drag_up": up,
        # Half at most while drilling, where the weight on bit is taken off too.
        "drag_down": down,
        "base_height": f"{base!r} m",
        "block_speed": f"{speed!r} m/s",
        "block_acceleration": f"{acceleration!r} m/s**2",
        "times": times,
        **KINDS[kind],
    }
    if kind not in ("circulating", "jarring"):
        keys["stand_length"] = f"{stand!r} m"
    path = tmp_path_factory.getbasetemp() / "law.toml"
    path.write_text(plan(operation(kind, **keys)), encoding="utf-8")
    made = rw.Campaign.from_plan(rig, path)
    heights = np.concatenate([made.height_from_si, made.height_to_si])
    assert heights.min() >= 0.0
    assert heights.max() <= rig.travel
    assert made.height_from_si[0] == base
    np.testing.assert_array_equal(made.height_from_si[1:], made.height_to_si[:-1])
    assert (made.work_si >= 0.0).all()
    assert (made.count >= 1.0).all()
    assert made.may_stop[-1]
    assert (made.height_to_si[made.may_stop] == base).all()
    assert (np.diff(made.trips) >= 0.0).all()
    # However fast, the work is that of strokes at an even speed.
    slow = plan(operation(kind, **{k: v for k, v in keys.items() if not k.startswith("block_")}))
    path.write_text(slow, encoding="utf-8")
    even = rw.Campaign.from_plan(rig, path)
    assert made.work_si.sum() == pytest.approx(even.work_si.sum(), rel=1e-11)
    assert made.pick_up.sum() == even.pick_up.sum()
    assert made.may_stop.sum() == even.may_stop.sum()


def test_rig7_has_every_kind_that_moves_or_waits(campaign: rw.Campaign) -> None:
    kinds = {one.kind for one in campaign.operations}
    assert kinds == {*KINDS, "waiting"}


def test_rows_of_operations_follow_each_other(campaign: rw.Campaign) -> None:
    row = 0
    for i, one in enumerate(campaign.operations):
        assert one.first_row == row
        row = one.last_row + 1
        assert (campaign.operation[one.first_row : row] == i).all()
    assert row == len(campaign)


# Dates and events


def test_dates_are_shared_by_strokes(run: Any) -> None:
    made = run(
        operation("trip out", start="2026-01-01T00:00:00", end="2026-01-01T10:00:00", **TRIP),
        operation("waiting", start="2026-01-02", end="2026-01-03"),
        operation("trip in", **TRIP),
        operation(
            "circulating",
            depth="2850 m",
            strokes=10,
            travel="12 m",
            start="2026-01-03T00:00:00",
            end="2026-01-03T01:00:00",
        ),
    )
    assert made.start == datetime(2026, 1, 1)
    hours = made.time_si / 3600.0
    np.testing.assert_allclose(hours[:200], np.arange(1, 201) * 10.0 / 200.0, rtol=1e-12)
    assert np.isnan(hours[200:400]).all()
    # 20 strokes in an hour, in rows of 1, 1, 9 and 9.
    np.testing.assert_allclose(hours[400:], 48.0 + np.array([1, 2, 11, 20]) / 20.0, rtol=1e-12)
    waiting = made.operations[1]
    assert (waiting.first_row, waiting.last_row) == (200, 199)


def test_slips_and_cuts_come_after_the_row_before(run: Any) -> None:
    made = run(
        operation("slip", length="6 m"),
        operation("trip out", **TRIP),
        operation("slip", length="6 m", times=2),
        operation("cut", length="24 m"),
        operation("trip in", **TRIP),
    )
    assert [(e.row, e.kind, e.length_si) for e in made.events] == [
        (-1, "slip", 6.0),
        (199, "slip", 6.0),
        (199, "slip", 6.0),
        (199, "cut", 24.0),
    ]
    assert made.may_stop[199]


# What is refused in a plan

DATES = {"start": "2026-01-01T00:00:00", "end": "2026-01-02T00:00:00"}


@pytest.mark.parametrize(
    ("operations", "words"),
    [
        ([operation("waiting")], ["an empty campaign"]),
        ([operation("slip", length="5 m")], ["an empty campaign"]),
        ([operation("dancing", **TRIP)], ["operation[1].kind", "dancing", "round trip"]),
        ([operation("jarring", depth="100 m", strokes=2)], ["operation[1].travel: missing"]),
        ([operation("slip")], ["operation[1].length: missing"]),
        ([operation("waiting", length="1 m")], ["operation[1].length: not for waiting"]),
        ([operation("round trip", overpull="1 kN", **TRIP)], ["overpull: not for round trip"]),
        (
            [operation("waiting", **DATES), operation("round trip", **TRIP, **DATES)],
            ["operation[2].start", "overlaps operation[1]"],
        ),
        (
            [operation("round trip", start="2026-01-02", end="2026-01-01", **TRIP)],
            ["operation[1].end", "before its start"],
        ),
        ([operation("round trip", start="2026-01-02", **TRIP)], ["start and end are given"]),
        ([operation("round trip", start=5, end=6, **TRIP)], ["operation[1].start", "a date"]),
        (
            [
                operation("waiting", start="2026-01-01T00:00:00Z", end="2026-01-01T01:00:00Z"),
                operation("waiting", start="2026-01-02", end="2026-01-03"),
            ],
            ["operation[2].start", "offset from UTC"],
        ),
        (
            [operation("trip out", base_height="1 m", **TRIP)],
            ["operation[1] (trip out, 2850 m)", "row 0: height_to = 29.5 m", "[0, 29 m]"],
        ),
        (
            [operation("reaming", from_depth="50 m", weight_on_bit="9 MN", **TRIP)],
            ["operation[1] (reaming", "row 1: hook_load = -", "cannot push"],
        ),
        (
            [operation("round trip", block_speed="1 m/s", **TRIP)],
            ["block_speed and block_acceleration are given together"],
        ),
        (
            [operation("coring", from_depth="50 m", drive="kelly", **TRIP)],
            ["operation[1].kelly_weight: missing"],
        ),
        (
            [operation("coring", from_depth="50 m", kelly_weight="1 kN", **TRIP)],
            ['only with drive = "kelly"'],
        ),
        ([operation("round trip", times=10_000_000, **TRIP)], ["more than 20,000,000 rows"]),
    ],
)
def test_wrong_plans(run: Any, operations: list[str], words: list[str]) -> None:
    with pytest.raises((InadmissibleError, rw.rig.RigFileError)) as caught:
        run(*operations)
    for word in words:
        assert word in str(caught.value)


def test_a_plan_of_its_own_names_unknown_keys(run: Any) -> None:
    with pytest.raises(rw.rig.RigFileError, match="did you mean 'stand_length'"):
        run(operation("round trip", depth="10 m", stand_lenght="10 m"))


def test_what_is_no_rig_is_refused() -> None:
    with pytest.raises(InadmissibleError, match="rig must be a rig or the path"):
        rw.Campaign.from_plan(5)  # type: ignore[arg-type]
