"""The study of lines strung: each column against the functions it comes from, and its findings."""

from __future__ import annotations

import copy
import math
from dataclasses import replace
from functools import cache
from pathlib import Path
from typing import Any

import numpy as np
import pytest
from matplotlib.figure import Figure

import ropewalk as rw
from ropewalk import plot
from ropewalk.errors import InadmissibleError
from ropewalk.study.line_life import life_of_designs

LINES = (6, 8, 10, 12, 14)
LIMITS = rw.drawworks.Limits("1.2 m/s", "0.4 m/s**2")
RIG7 = rw.rig.example("rig7").read_text(encoding="utf-8")


@cache
def rig() -> Any:
    """Rig 7 of the Kestrel Flat geothermal field; invented, as its field is."""
    return rw.load_rig(rw.rig.example("rig7"))


@cache
def study() -> Any:
    return rw.lines_strung(rig(), lines=LINES, limits=LIMITS, connection_time="2 min")


def test_every_variable_has_unit_and_name() -> None:
    data = study()
    assert data.lines.values.tolist() == list(LINES)
    for variable in data.variables.values():
        assert variable.attrs["long_name"]
        unit = variable.attrs["units"]
        assert unit == "1" or rw.units.Unit(unit).dimensionality
    assert "invented" in data.attrs["title"]
    assert "not a permission to lift" in data.attrs["caution"]


@pytest.mark.parametrize("lines", [8, 10, 12])
def test_columns_are_what_the_subjects_say(lines: int) -> None:
    one = study().sel(lines=lines)
    load = rw.Q(rig().heaviest_trip.heaviest_hook_load(rig().block.weight), "N")
    tensions = replace(rig().reeving, lines=lines).tensions(load, motion="hoisting")
    assert float(one.fast_line_tension) == tensions.fast_line_si
    assert float(one.crown_load) == tensions.crown_load_si
    factor = rw.design_factor.design_factor(rig().rope.breaking_force, tensions.fast_line)
    assert float(one.design_factor) == pytest.approx(factor, rel=1e-12)
    # By hand: power at the hook over load, and torque of the motors on the radius of the layer.
    machine = rig().drawworks.machine
    efficiency = 0.95 * 0.97 * tensions.efficiency
    assert float(one.efficiency) == pytest.approx(efficiency, rel=1e-12)
    speed = 1500 * 745.6998715822702 * efficiency / load.m_as("N")
    assert float(one.hook_speed) == pytest.approx(speed, rel=1e-12)
    lowest = 8 * math.pi * (28 + 1.375) * 0.0254
    rope = lowest + lines * rig().travel
    assert float(one.rope_on_drum) == pytest.approx(rope, rel=1e-12)
    drum = rw.Drum("28 in", "1-3/8 in", 40, 4)
    layer = drum.place(rw.Q(rope, "m")).layer
    assert int(one.layer) == layer
    torque = machine.motors.total_power / machine.motors.base_speed_si * 10 * efficiency
    radius = drum.lap_length(layer).m_as("m") / (2 * math.pi)
    assert float(one.pull) == pytest.approx(torque.m_as("W") * lines / radius, rel=1e-12)
    trip = rw.rig.trip(
        rig(), rig().heaviest_trip, limits=LIMITS, connection_time="2 min", lines=lines
    )
    assert float(one.trip_time) == trip.time.m_as("s")
    assert float(one.driven) == trip.driven.m_as("J")


def test_the_trade_off() -> None:
    data = study().sel(lines=[8, 10, 12])
    for grows in ("pull", "pull_by_line", "design_factor", "line_life", "trip_time", "driven"):
        assert np.all(np.diff(data[grows].values) > 0.0), grows
    for falls in ("hook_speed", "efficiency", "fast_line_tension", "crown_load"):
        assert np.all(np.diff(data[falls].values) < 0.0), falls


def test_what_does_not_hold_says_why() -> None:
    data = study()
    assert data.holds.values.tolist() == [False, False, True, True, False]
    six, eight, fourteen = (str(data.reason.sel(lines=n).values) for n in (6, 8, 14))
    assert "design factor 2.99 is less than 3" in six
    assert "casing, 2200 m" not in eight
    assert "string stuck after 5 x round trip, 3400 m: hook load" in eight
    assert "on a drum that holds" in fourteen
    assert math.isnan(float(data.trip_time.sel(lines=14)))
    assert math.isnan(float(data.line_life.sel(lines=14)))
    assert "drum holds" in str(data.line_life_end.sel(lines=14).values)


def test_a_load_beyond_the_motors_is_a_finding() -> None:
    weak = replace(rig(), block=replace(rig().block, weight=2e6))
    data = rw.lines_strung(weak, lines=[8], limits=LIMITS, connection_time="1 min")
    assert not bool(data.holds[0])
    assert "pull of gear" in str(data.reason.values[0])
    assert float(data.hook_speed[0]) == 0.0
    assert int(data.gear[0]) == 0
    assert math.isnan(float(data.efficiency[0]))


def test_the_life_is_that_of_the_map() -> None:
    # The damage map itself, for one campaign: work over the damage of the worst place.
    campaign = rw.Campaign.from_plan(rig())
    history = rw.run_line(rig(), campaign, bin_length="0.5 m", outside_validity="ignore")
    worst = history.worst_places(1)[0]
    life = campaign.work.m_as("J") / worst.damage
    assert float(study().line_life.sel(lines=10)) == pytest.approx(life, rel=1e-9)


@pytest.mark.parametrize("part", ["crown", "block"])
def test_a_part_beyond_its_rating_does_not_hold(part: str) -> None:
    # The trip is not the heaviest load: 337 kip, and 100 kip of overpull allowed on a stuck string.
    load = rig().stuck_hook_load
    if part == "crown":
        # By hand: block, fast line and, the dead sheave standing still, the last of the falls.
        fast = load / sum(1.04**-k for k in range(1, 11))
        carried, name = load + fast * (1.0 + 1.04**-10), "crown block"
    else:
        carried, name = load, "traveling block"

    def rated(share: float) -> Any:
        if part == "crown":
            weak = replace(rig(), crown=replace(rig().crown, rated_load=share * carried))
        else:
            sheaves = replace(rig().block.sheaves, rated_load=share * carried)
            weak = replace(rig(), block=replace(rig().block, sheaves=sheaves))
        return rw.lines_strung(weak, lines=[10], limits=LIMITS, connection_time="2 min")

    assert bool(rated(1.001).holds[0])
    data = rated(0.999)
    assert not bool(data.holds[0])
    assert f"{name} carries {carried:.6g} N" in str(data.reason.values[0])
    assert math.isfinite(float(data.trip_time[0]))


def test_services_are_the_heaviest_loads_of_the_plan() -> None:
    data = study()
    weight = rig().block.weight
    casing = next(one for one in rig().operations if one.kind == "casing")
    by_hand = {
        "rotary drilling": rig().heaviest_trip.heaviest_hook_load(weight),
        "setting casing": casing.heaviest_hook_load(weight),
        "pulling on stuck pipe": rig().stuck_hook_load,
    }
    assert data.service.values.tolist() == list(by_hand)
    assert data.service_hook_load.values.tolist() == list(by_hand.values())
    assert data.service_hook_load.max() == rig().largest_hook_load
    # Minimum design factors as API RP 9B has them: 3 for rotary drilling, 2 for casing and stuck.
    assert data.service_minimum.values.tolist() == [3.0, 2.0, 2.0]
    for lines in (8, 10, 12):
        one = data.sel(lines=lines)
        # Roller bearings, K = 1.04: the fast line carries W over the sum of K^-k.
        share = sum(1.04**-k for k in range(1, lines + 1))
        for service, load in by_hand.items():
            here = one.sel(service=service)
            assert float(here.service_fast_line_tension) == pytest.approx(load / share, rel=1e-12)
            factor = rig().rope.breaking_force_si * share / load
            assert float(here.service_design_factor) == pytest.approx(factor, rel=1e-12)
            assert float(here.service_pull_margin) == pytest.approx(float(one.pull) - load)
            # The elevator is rated 250 short tons, and carries all but what hangs above it.
            above = 45100 * 4.4482216152605
            used = (load - above) / (250 * 2000 * 4.4482216152605)
            rating = float(one.mast_rating)
            assert float(here.service_utilization) == pytest.approx(max(used, load / rating))


def test_the_mast_is_rated_for_the_lines_strung() -> None:
    # By hand, dead line at one leg: W/4 + W/n on it at rest, 650 kip at 10 lines.
    kip = 4448.2216152605
    ratings = study().mast_rating.values / kip
    expected = [650.0 * min(1.0, (1 + 4 / 10) / (1 + 4 / n)) for n in LINES]
    assert ratings == pytest.approx(expected, rel=1e-12)
    weak = replace(rig(), mast=replace(rig().mast, hook_load_rating=440.0 * kip))
    data = rw.lines_strung(weak, lines=[8, 10], limits=LIMITS, connection_time="2 min")
    assert data.holds.values.tolist() == [False, True]
    assert "mast carries 1.94389e+06 N, rated" in str(data.reason.values[0])
    bare = replace(rig(), mast=None)
    data = rw.lines_strung(bare, lines=[10], limits=LIMITS, connection_time="2 min")
    assert math.isnan(float(data.mast_rating[0]))


def test_a_heavy_casing_job_alone_can_be_too_much() -> None:
    def with_drag(drag: float) -> Any:
        jobs = [replace(o, drag_up=drag) if o.kind == "casing" else o for o in rig().operations]
        heavy = replace(rig(), operations=tuple(jobs))
        return rw.lines_strung(heavy, lines=[10], limits=LIMITS, connection_time="2 min")

    casing = next(one for one in rig().operations if one.kind == "casing")
    weight = float(casing.string_weight(casing.depth)[0])
    pull = float(study().pull.sel(lines=10))
    limit = (pull - rig().block.weight) / weight - 1.0  # the drag that takes all of the pull
    assert bool(with_drag(limit - 1e-6).holds[0])
    data = with_drag(limit + 1e-6)
    assert not bool(data.holds[0])
    assert str(data.reason.values[0]).startswith("casing, 2200 m: hook load")
    assert math.isfinite(float(data.trip_time[0]))


def test_the_overload_of_the_motors_pulls_a_stuck_string() -> None:
    limits = rw.drawworks.Limits("1.2 m/s", "0.4 m/s**2", overload=True)
    data = rw.lines_strung(rig(), lines=[8], limits=limits, connection_time="2 min")
    assert float(data.pull[0]) == pytest.approx(1.3 * float(study().pull.sel(lines=8)))
    assert bool(data.holds[0])


def test_an_overload_that_lasts_too_long_is_a_reason(tmp_path: Path) -> None:
    short = load(tmp_path, RIG7.replace('overload_time = "60 s"', 'overload_time = "2 s"'))
    limits = rw.drawworks.Limits("1.2 m/s", "0.4 m/s**2", overload=True)
    data = rw.lines_strung(short, lines=[10], limits=limits, connection_time="2 min")
    assert not bool(data.holds[0])
    assert "overload_time allows 2 s" in str(data.reason.values[0])


def test_only_what_is_wrong_with_a_design_is_its_reason() -> None:
    campaign = rw.Campaign.from_plan(rig())
    model = rw.fatigue.DruckerTachau()
    short = replace(rig(), line=replace(rig().line, supply=100.0))
    odd = replace(rig(), reeving=replace(rig().reeving, lines=9))

    def life(*designs: Any) -> Any:
        return life_of_designs(designs, campaign, program=None, threads=1)

    lives, ends = life((rig(), model, 1.0), (short, model, 1.0), (odd, model, 1.0))
    assert [math.isfinite(one) for one in lives] == [True, False, False]
    assert "supply = 100" in ends[1]
    assert "lines = 9 is odd" in ends[2]
    soft = copy.copy(rig().rope)
    object.__setattr__(soft, "wire_strength_si", None)
    _, why = life((replace(rig(), rope=soft), model, 1.0))
    assert "wire_strength is not given" in why[0]
    with pytest.raises(InadmissibleError, match="life_factor"):
        life((rig(), model, -1.0))
    with pytest.raises(InadmissibleError, match="no .drum."):
        life((replace(rig(), drum=None), model, 1.0))


@pytest.mark.parametrize("given", [{"connection_time": "-1 s"}, {"connection_time": 90.0}])
def test_arguments_are_looked_at_though_the_drum_holds_no_row(given: dict[str, Any]) -> None:
    with pytest.raises((InadmissibleError, rw.errors.UnitError), match="connection_time"):
        rw.lines_strung(rig(), lines=[14], limits=LIMITS, **given)


@pytest.mark.parametrize(
    ("field", "wrong"),
    [
        ("connection_time", {"connection_time": "-1 s"}),
        ("connection_time", {"connection_time": rw.Q(math.nan, "s")}),
    ],
)
def test_arguments_that_cannot_be_are_refused(field: str, wrong: dict[str, Any]) -> None:
    given = {"limits": LIMITS, "connection_time": "2 min", **wrong}
    with pytest.raises(InadmissibleError, match=field):
        rw.lines_strung(rig(), lines=[8, 10], **given)


def test_the_efficiency_is_that_of_the_gear() -> None:
    parts = rig().drawworks
    low, high = parts.machine.gears
    gears = [low, rw.drawworks.Gear(high.ratio, 0.8)]
    machine = rw.drawworks.Drawworks(
        parts.machine.motors, gears, parts.machine.drum_efficiency, "1500 kg*m**2"
    )
    light = replace(rig(), drawworks=replace(parts, machine=machine))
    waiting = next(one for one in rig().operations if one.stand_length > 0.0)
    shallow = replace(rig().heaviest_trip, depth=20 * waiting.stand_length)
    data = rw.lines_strung(
        light, lines=[10], limits=LIMITS, connection_time="2 min", operation=shallow
    )
    expected = gears[int(data.gear[0]) - 1].efficiency * 0.97
    assert int(data.gear[0]) == 2
    reeving = rig().reeving.efficiency("hoisting")
    assert float(data.efficiency[0]) == pytest.approx(expected * reeving, rel=1e-12)


@pytest.mark.parametrize("lines", [[9], [0], [8.5], [-2]])
def test_lines_that_are_not_even_are_refused(lines: list[Any]) -> None:
    with pytest.raises(InadmissibleError, match="lines"):
        rw.lines_strung(rig(), lines=lines, limits=LIMITS, connection_time="1 min")


# The rig file


def load(tmp_path: Path, text: str) -> Any:
    path = tmp_path / "rig.toml"
    path.write_text(text, encoding="utf-8")
    return rw.load_rig(path)


def only_power() -> str:
    """Rig 7 as files were before drawworks had more than power."""
    before, _, after = RIG7.partition("drum_efficiency = 0.97\n")
    return before + after[after.index("\n[drum]") :]


def test_drawworks_of_rig7() -> None:
    parts = rig().drawworks
    motors = parts.machine.motors
    assert motors.count * motors.power_si == pytest.approx(1500 * 745.6998715822702)
    assert motors.base_speed_si == pytest.approx(800 * 2 * math.pi / 60)
    assert [gear.ratio for gear in parts.machine.gears] == [10.0, 5.0]
    assert (motors.overload, motors.overload_time_si) == (1.3, 60.0)
    assert parts.line_pull is None
    sheaves = rw.drawworks.sheave_equivalent_mass("80 kg*m**2", 10, "55.375 in")
    assert rw.rig.hoist(rig()).sheave_mass_si == pytest.approx(sheaves.m_as("kg"))


def test_a_file_that_gives_only_power_stays_valid(tmp_path: Path) -> None:
    old = load(tmp_path, only_power())
    assert old.drawworks is None
    assert old.drawworks_power == rig().drawworks_power
    with pytest.raises(rw.rig.RigFileError, match=r"Rig 7 has no \[drawworks.motors\]"):
        rw.rig.hoist(old)
    with pytest.raises(rw.rig.RigFileError, match=r"\[drawworks.motors\]"):
        rw.lines_strung(old, lines=[8], limits=LIMITS, connection_time="1 min")


def test_the_line_pull_of_the_file_limits_the_hoist(tmp_path: Path) -> None:
    text = RIG7.replace("drum_efficiency = 0.97", 'drum_efficiency = 0.97\nline_pull = "40 kip"')
    limited = rw.rig.hoist(load(tmp_path, text))
    pull = limited.pull("0 m/s", gear=1, layer=1)
    assert limited.reeving.tensions(pull, "hoisting").fast_line.m_as("kip") == pytest.approx(40.0)


@pytest.mark.parametrize(
    ("old", "new", "message"),
    [
        ("drum_efficiency = 0.97\n", "", "drawworks.drum_efficiency: missing"),
        ("count = 2", "count = 0", "drawworks.motors.count"),
        ('base_speed = "800 rpm"', "base_speed = 800", "drawworks.motors.base_speed"),
        ('top_speed = "1600 rpm"', 'top_speed = "600 rpm"', "top_speed .* less than base_speed"),
        ("overload = 1.3", "overload = 0.5", "drawworks.motors.overload"),
        ('overload_time = "60 s"', "overload_time = 60", "drawworks.motors.overload_time"),
        ('overload_time = "60 s"', 'overload_time = "0 s"', "drawworks.motors.overload_time"),
        ("efficiency = 0.95", "efficiency = 1.95", r"drawworks.gear\[1\].efficiency"),
        ('inertia = "15 kg*m**2"', 'inertia = "15 kg"', "drawworks.motors.inertia"),
        ("ratio = 10.0", "rato = 10.0", "did you mean 'ratio'"),
    ],
)
def test_wrong_keys_are_named(tmp_path: Path, old: str, new: str, message: str) -> None:
    assert old in RIG7
    with pytest.raises(rw.rig.RigFileError, match=message):
        load(tmp_path, RIG7.replace(old, new, 1))


def test_a_trip_needs_stands() -> None:
    waiting = next(one for one in rig().operations if one.kind == "waiting")
    with pytest.raises(rw.rig.RigFileError, match="no stands"):
        rw.rig.trip(rig(), waiting, limits=LIMITS, connection_time="1 min")


# Pictures


def test_the_envelope_is_drawn_for_every_gear_and_layer() -> None:
    hoist = rw.rig.hoist(rig())
    ax = Figure().subplots()
    assert plot.load_against_speed(ax, hoist, layers=[1, 2, 4], load_unit="kN") is ax
    assert len(ax.get_lines()) == 6
    assert "[kN]" in ax.get_ylabel()
    speeds, loads = (np.asarray(values) for values in ax.get_lines()[0].get_data())
    drive = hoist.drive(1, 1)
    assert loads[0] == pytest.approx(drive.pull.m_as("kN"))
    assert loads[-2] * speeds[-2] == pytest.approx(drive.power.m_as("kN*ft/min"))
    assert loads[-1] == 0.0


def test_the_cycle_shows_speed_and_power() -> None:
    hoist = rw.rig.hoist(rig())
    curve = hoist.curve("1500 kN", "28.5 m", LIMITS)
    ax = Figure().subplots()
    assert plot.stroke_cycle(ax, curve, power_unit="kW") is ax
    twin = next(other for other in ax.figure.axes if other is not ax)
    assert "[kW]" in twin.get_ylabel()
    assert twin.get_lines()[0].get_ydata().max() == pytest.approx(
        rig().drawworks_power / 1e3, rel=1e-9
    )
    changes = len(set(curve.layer)) - 1
    assert len(ax.get_lines()) == 1 + changes


def test_the_trade_off_names_its_points() -> None:
    ax = Figure().subplots()
    assert plot.lines_trade_off(ax, study()) is ax
    names = [text.get_text() for text in ax.texts]
    assert names == ["6 lines", "8 lines", "10 lines", "12 lines"]
    figure = plot.lines_strung_figure(study())
    assert len(figure.axes) == 4
    assert all(one.get_ylabel().endswith("]") for one in figure.axes)
