"""Slip-and-cut programs: published practice, triggers, the search, comparison, streaming."""

from __future__ import annotations

from dataclasses import replace
from itertools import pairwise
from pathlib import Path
from typing import Any

import numpy as np
import pytest
from click.testing import CliRunner

import ropewalk as rw
from ropewalk.cli import main
from ropewalk.errors import InadmissibleError, UnitError, ValidityError, ValidityWarning
from ropewalk.line.spacing import crossover_shift, lap_length


@pytest.fixture(scope="module")
def rig() -> rw.Rig:
    return rw.load_rig(rw.rig.example("rig7"))


@pytest.fixture(scope="module")
def campaign(rig: rw.Rig) -> rw.Campaign:
    return rw.Campaign.from_plan(rig)


def test_a_cut_of_more_slips_than_anybody_counts_is_refused() -> None:
    with pytest.raises(InadmissibleError, match=r"cut = 3.048e\+14 m is 5e\+13 slips of 6.096 m"):
        rw.SlipCutProgram("20 ft", "1e15 ft", "200 ton_mile")
    assert rw.SlipCutProgram("1 ft", "10000 ft", "200 ton_mile").slips_per_cut == 10_000


# Published practice


def test_eighty_feet_per_eight_hundred_ton_miles_in_four_slips() -> None:
    """Lyons (ed.), Standard Handbook of Petroleum & Natural Gas Engineering, vol. 1 (1996), p. 614:
    80 ft cut every 800 ton-miles: 20 ft slipped every 200, cut on the fourth slip."""
    program = rw.SlipCutProgram.by_goal("10 ton_mile/ft", "80 ft", slips_per_cut=4)
    assert program.slips_per_cut == 4
    assert program.slip.to("ft").magnitude == pytest.approx(20.0, rel=1e-12)
    assert program.every.to("ton_mile").magnitude == pytest.approx(200.0, rel=1e-12)
    assert program == rw.SlipCutProgram(program.slip, program.cut, program.every)


def test_practice_on_a_campaign_cuts_what_it_says(rig: rw.Rig, campaign: rw.Campaign) -> None:
    program = rw.SlipCutProgram(slip="20 ft", cut="80 ft", every="200 ton_mile")
    history = rw.run_line(rig, campaign, program, outside_validity="ignore")
    slips = [e for e in history.events if e.kind == "slip"]
    cuts = [e for e in history.events if e.kind == "cut"]
    assert len(cuts) == len(slips) // 4
    work = np.diff([0.0, *(e.work_si for e in slips)])
    assert (work >= program.interval_si * (1 - 1e-9)).all()
    # A slip is made at the first stop: within a stand on trips, only circulating takes longer.
    assert np.median(work) < 1.05 * program.interval_si
    assert history.rope_cut.to("ft").magnitude == pytest.approx(80.0 * len(cuts), rel=1e-12)
    assert history.anchor_si - slips[0].anchor_si == pytest.approx(
        program.slip_si * (len(slips) - 1), rel=1e-9
    )
    for before, after in pairwise(cuts):
        assert before.date is not None
        assert after.date is not None
        assert before.date < after.date


def test_laps_of_a_cut() -> None:
    """11 1/2 laps on a 28 in drum are 84.3 ft: API RP 9B example, from memory; pi D laps."""
    assert 11.5 * np.pi * 28.0 / 12.0 == pytest.approx(84.3, abs=0.05)


def test_a_lap_is_longer_by_the_rope(rig: rw.Rig) -> None:
    assert rig.drum is not None
    assert lap_length(rig) == pytest.approx(np.pi * (28 * 0.0254 + 1.375 * 0.0254), rel=1e-12)


# Triggers


@pytest.mark.parametrize(
    ("given", "count"), [({"trips": 2}, 4), ({"trips": 1}, 8), ({"trips": 100}, 0)]
)
def test_by_trips(rig: rw.Rig, campaign: rw.Campaign, given: Any, count: int) -> None:
    """Rig 7 makes 3 + 5 whole round trips and half of one, the trip out at the end."""
    program = rw.SlipCutProgram(slip="8 m", cut="16 m", **given)
    history = rw.run_line(rig, campaign, program, outside_validity="ignore")
    found = sum(e.kind == "slip" for e in history.events)
    assert campaign.trips[-1] == pytest.approx(8.5)
    assert found in (count, count + 1)


def test_by_date(rig: rw.Rig, campaign: rw.Campaign) -> None:
    program = rw.SlipCutProgram(slip="8 m", cut="8 m", time="7 day")
    history = rw.run_line(rig, campaign, program, outside_validity="ignore")
    dates = [e.date for e in history.events if e.kind == "slip"]
    assert dates
    seconds = [(b - a).total_seconds() for a, b in pairwise(dates) if a and b]
    assert all(s >= 7 * 86400 - 1 for s in seconds)


def test_by_date_needs_dates(rig: rw.Rig) -> None:
    bare = rw.Campaign.from_strokes(
        rw.Q([9e5], "N"), rw.Q([0.0], "m"), rw.Q([20.0], "m"), may_stop=[True]
    )
    with pytest.raises(InadmissibleError, match="row 0 of the campaign has no date"):
        rw.run_line(rig, bare, rw.SlipCutProgram("8 m", "8 m", time="1 day"))


def test_by_damage_slips_before_a_place_takes_on_more(rig: rw.Rig, campaign: rw.Campaign) -> None:
    step = 0.004
    program = rw.SlipCutProgram(slip="8 m", cut="8 m", damage=step)
    history = rw.run_line(rig, campaign, program, outside_validity="ignore")
    slips = [e for e in history.events if e.kind == "slip"]
    assert len(slips) > 3
    # What the worst place had before the first slip is what the program allows, and little more.
    assert step * (1 - 1e-9) <= slips[0].worst_before < 1.3 * step


def test_the_map_does_not_depend_on_how_often_it_is_looked_at(
    rig: rw.Rig, campaign: rw.Campaign
) -> None:
    once = rw.run_line(rig, campaign, outside_validity="ignore")
    thrice = rw.run_line(rig, campaign, repeats=3, outside_validity="ignore")
    np.testing.assert_allclose(thrice.damage, 3.0 * once.damage, rtol=1e-12)
    assert thrice.work.to("J").magnitude == pytest.approx(3.0 * campaign.work.to("J").magnitude)


# Bad input


@pytest.mark.parametrize(
    ("arguments", "error", "text"),
    [
        ({"slip": "8 m", "cut": "8 m"}, InadmissibleError, "exactly one of every"),
        ({"slip": "8 m", "cut": "12 m", "trips": 1}, InadmissibleError, "1.500 slips"),
        ({"slip": "0 m", "cut": "12 m", "trips": 1}, InadmissibleError, "slip = 0"),
        ({"slip": 8.0, "cut": "8 m", "trips": 1}, UnitError, "slip"),
        ({"slip": "8 m", "cut": "8 m", "every": "200 ton"}, UnitError, "every"),
        ({"slip": "8 m", "cut": "8 m", "every": "1 J", "trips": 2}, InadmissibleError, "one of"),
    ],
)
def test_programs_that_cannot_be(arguments: Any, error: Any, text: str) -> None:
    with pytest.raises(error, match=text):
        rw.SlipCutProgram(**arguments)


def test_an_odd_number_of_lines_is_refused_with_the_reason(
    rig: rw.Rig, campaign: rw.Campaign
) -> None:
    odd = replace(rig, reeving=replace(rig.reeving, lines=9))
    with pytest.raises(InadmissibleError, match="odd: the dead end then travels with the block"):
        rw.run_line(odd, campaign)


def test_a_rig_without_string_up_is_refused(rig: rw.Rig, campaign: rw.Campaign) -> None:
    with pytest.raises(InadmissibleError, match=r"no \[line\]"):
        rw.run_line(replace(rig, line=None), campaign)


def test_damage_outside_the_range_of_the_model_is_told(rig: rw.Rig, campaign: rw.Campaign) -> None:
    with pytest.warns(ValidityWarning, match=r"% of the damage comes from bends outside"):
        rw.run_line(rig, campaign)
    with pytest.raises(ValidityError, match="PowerLaw"):
        rw.run_line(rig, campaign, outside_validity="raise")


# Worn points


def test_a_whole_number_of_laps_leaves_the_crossovers(rig: rw.Rig, campaign: rw.Campaign) -> None:
    lap = lap_length(rig)
    assert crossover_shift(rig, 11.5 * lap) == pytest.approx(0.0, abs=1e-9)  # two in a lap
    assert crossover_shift(rig, 11.25 * lap) == pytest.approx(0.5, abs=1e-9)
    cut = rw.Q(11.5 * lap, "m")
    texts = rw.line.program_warnings(rig, campaign, rw.SlipCutProgram(cut / 4, cut, trips=1))
    assert any("crossovers" in text for text in texts)


def test_slips_that_make_one_line_and_arc_are_told(rig: rw.Rig, campaign: rw.Campaign) -> None:
    """Next worn point: one line at its lowest, 37 m, and half a turn of 54 in and the rope."""
    spacing = 37.0 + np.pi / 2.0 * (54 + 1.375) * 0.0254
    slip = rw.Q(spacing / 4.0, "m")
    texts = rw.line.program_warnings(rig, campaign, rw.SlipCutProgram(slip, slip, trips=1))
    assert any(text.startswith("4 slips") for text in texts)
    off = rw.Q(spacing / 4.5, "m")
    assert not any(
        "slips of" in text
        for text in rw.line.program_warnings(rig, campaign, rw.SlipCutProgram(off, off, trips=1))
    )


# Search and comparison


def test_the_search_agrees_with_single_runs(rig: rw.Rig, campaign: rw.Campaign) -> None:
    found = rw.optimize_program(
        rig,
        campaign,
        laps=[9.25, 12.75],
        slips_per_cut=[2],
        goals=rw.Q([8.0, 20.0, 60.0], "ton_mile/ft"),
        repeats=2,
        bin_length="0.5 m",
    )
    assert len(found.choices) == 6
    for choice in found.choices:
        run = rw.run_line(
            rig, campaign, choice.program, repeats=2, bin_length="0.5 m", outside_validity="ignore"
        )
        assert choice.worst == pytest.approx(run.worst, rel=1e-12)
        assert choice.survival == pytest.approx(run.survival(limit=0.8), rel=1e-12)
        assert choice.rope_use_si == pytest.approx(1.0 / choice.goal_si)


def test_default_goals_close_in_on_the_first_that_breaks_a_bound(
    rig: rw.Rig, campaign: rw.Campaign
) -> None:
    found = rw.optimize_program(rig, campaign, laps=[11.25], slips_per_cut=[4], threads=2)
    assert len(found.choices) == 14 + 4
    assert found.recommended is not None
    best = found.recommended.goal_si
    broken = min(c.goal_si for c in found.choices if c.goal_si > best * 1.001)
    # Fourteen goals over five doublings, and five steps between two of them.
    assert broken / best == pytest.approx(32 ** (1 / 13 / 5))


def test_the_front_is_what_no_other_choice_beats(rig: rw.Rig, campaign: rw.Campaign) -> None:
    found = rw.optimize_program(
        rig, campaign, laps=[9.25, 12.75, 14.75], slips_per_cut=[1, 4], threads=2
    )
    best = found.recommended
    assert best is not None
    assert best.feasible
    assert best.survival >= found.confidence
    for one in found.front:
        assert not any(
            other.feasible and other.rope_use_si <= one.rope_use_si and other.risk < one.risk
            for other in found.choices
        )
    assert all(best.rope_use_si <= c.rope_use_si for c in found.choices if c.feasible)
    assert found.current is not None
    assert found.why
    one_thread = rw.optimize_program(
        rig, campaign, laps=[9.25, 12.75, 14.75], slips_per_cut=[1, 4], threads=1
    )
    assert one_thread.choices == found.choices


def test_a_limit_nothing_keeps_leaves_no_recommendation(rig: rw.Rig, campaign: rw.Campaign) -> None:
    found = rw.optimize_program(
        rig, campaign, laps=[9.25], slips_per_cut=[1], limit=1e-4, repeats=1
    )
    assert found.recommended is None
    assert found.why


@pytest.mark.parametrize(
    ("given", "text"),
    [({"laps": [9.3]}, "quarter laps"), ({"confidence": 1.0}, "confidence")],
)
def test_searches_that_cannot_be(rig: rw.Rig, given: Any, text: str) -> None:
    with pytest.raises(InadmissibleError, match=text):
        rw.optimize_program(rig, **given)


def test_programs_side_by_side(rig: rw.Rig, campaign: rw.Campaign) -> None:
    often = rw.SlipCutProgram.by_goal("10 ton_mile/ft", "80 ft", slips_per_cut=4)
    seldom = rw.SlipCutProgram.by_goal("30 ton_mile/ft", "80 ft", slips_per_cut=4)
    long = rw.SlipCutProgram("2000 m", "2000 m", trips=1)
    data = rw.compare_programs(
        rig, {"often": often, "seldom": seldom, "too long": long}, campaign, repeats=3
    )
    assert data.rope_cut.sel(program="often") > data.rope_cut.sel(program="seldom")
    assert data.worst.sel(program="often") < data.worst.sel(program="seldom")
    assert 0 < float(data.waste.sel(program="often")) < float(data.rope_cut.sel(program="often"))
    # A bad row is marked and says why; the others stand.
    assert data.status.to_numpy().tolist() == [0, 0, 1]
    assert "longer than all the line on the reel" in str(data.reason.sel(program="too long").item())
    for variable in data.data_vars.values():
        assert "units" in variable.attrs


def test_streamed_strokes_are_those_of_one_campaign(rig: rw.Rig) -> None:
    rng = np.random.default_rng(3)
    load = rw.Q(rng.uniform(2e5, 1.2e6, 30_000), "N")
    start, stop = (rw.Q(rng.uniform(0.0, rig.travel, 30_000), "m") for _ in range(2))
    whole = rw.run_line(rig, rw.Campaign.from_strokes(load, start, stop), outside_validity="ignore")
    parts = (
        (load[i : i + 700], start[i : i + 700], stop[i : i + 700]) for i in range(0, 30_000, 700)
    )
    streamed = rw.line.stream_line(rig, parts)
    # One by one strokes go piece by piece, all together in buckets: two ways to one map. Where
    # strokes of a bucket only graze a bin, the share of it they cover has the digits of a height.
    np.testing.assert_allclose(streamed, whole.damage, rtol=1e-10, atol=1e-15)
    with pytest.raises(InadmissibleError, match="chunks is empty"):
        rw.line.stream_line(rig, iter(()))


def test_line_life_of_the_sweep_is_that_of_the_map(rig: rw.Rig, campaign: rw.Campaign) -> None:
    data = rw.sheave_life(rig, sheave_diameters=rw.Q([54.0], "in"), lines=(10,), ropes=(rig.rope,))
    history = rw.run_line(rig, campaign, bin_length="0.5 m", outside_validity="ignore")
    life = data.line_life.sel(model="power law").item()
    assert life == pytest.approx(history.work.to("J").magnitude / history.worst, rel=1e-9)
    assert data.line_life.attrs["units"] == "J"
    assert set(np.unique(data.line_life_end.to_numpy().astype(str))) == {"worst place at discard"}
    practice = rw.SlipCutProgram.of_practice(rig.program)  # type: ignore[arg-type]
    slipped = rw.sheave_life(
        rig,
        sheave_diameters=rw.Q([54.0], "in"),
        lines=(10, 9),
        ropes=(rig.rope,),
        program=practice,
    )
    here = slipped.sel(model="power law")
    assert here.line_life_end.sel(lines=10).item() == "reel used up"
    assert "odd" in here.line_life_end.sel(lines=9).item()
    assert np.isnan(here.line_life.sel(lines=9).item())


# Commands


def program_options(slip: str) -> list[str]:
    return ["--slip", slip, "--cut", "80 ft", "--every", "300 ton_mile"]


def test_the_command_runs_a_campaign(tmp_path: Path) -> None:
    rig_file = str(rw.rig.example("rig7"))
    result = CliRunner().invoke(
        main,
        ["campaign", rig_file, *program_options("20 ft"), "--out", str(tmp_path)],
    )
    assert result.exit_code == 0, result.output
    assert "Worst places of the line" in result.output
    assert "Caution" in result.output
    assert sorted(p.name for p in tmp_path.iterdir()) == ["line-damage.csv", "line-damage.png"]


def test_half_a_program_is_a_usage_error(tmp_path: Path) -> None:
    rig_file = str(rw.rig.example("rig7"))
    result = CliRunner().invoke(
        main, ["campaign", rig_file, "--slip", "20 ft", "--out", str(tmp_path)]
    )
    assert result.exit_code == 2
    assert "go together" in result.output


def test_a_program_without_units_ends_with_2(tmp_path: Path) -> None:
    rig_file = str(rw.rig.example("rig7"))
    result = CliRunner().invoke(
        main,
        ["campaign", rig_file, *program_options("20"), "--out", str(tmp_path)],
    )
    assert result.exit_code == 2
    assert "slip" in result.output
    assert "Traceback" not in result.output
