"""What brakes hold: discs, bands, fading, factors asked for, refusals."""

from __future__ import annotations

import math
import pickle
from typing import Any

import pytest

import ropewalk as rw
from ropewalk.errors import InadmissibleError, UnitError, UnknownEntryError, ValidityError
from ropewalk.testing import assert_close

# Disc and band brakes


def disc(**changed: Any) -> rw.brake.DiscBrake:
    given_values: dict[str, Any] = {
        "discs": 2,
        "service_per_disc": 3,
        "emergency_per_disc": 1,
        "service_force": "75 kN",
        "emergency_force": "90 kN",
        "pad_radius": "0.7 m",
        "lining_friction": 0.35,
    }
    return rw.brake.DiscBrake(**{**given_values, **changed})


def test_calipers_add_up() -> None:
    brake = disc()
    whole = brake.torque()
    assert_close(whole, brake.torque(emergency=False) + brake.torque(service=False))
    # By hand: 2 · 0.35 · 75 kN · 0.7 m · 6 and 2 · 0.35 · 90 kN · 0.7 m · 2.
    assert_close(brake.torque(emergency=False), "220.5 kN*m")
    assert_close(brake.torque(service=False), "88.2 kN*m")
    assert_close(brake.torque(service_share=0.5, emergency=False), "110.25 kN*m")
    assert_close(brake.torque(lining_friction=0.175), whole / 2)


def test_lost_pressure_leaves_the_springs() -> None:
    rule = rw.brake.required_factor("Marine Order 32 winch")
    findings = disc().check("67.5 kN*m", rule)
    assert [one.enough for one in findings] == [True, True, False]
    assert findings[-1].holds
    assert "hydraulic pressure lost" in findings[-1].state
    weak = disc(emergency_force="60 kN").check("67.5 kN*m", 1.5)[-1]
    assert not weak.holds
    assert "DOES NOT HOLD" in str(weak)
    assert "local codes" in str(weak)


def test_a_factor_is_compared_with_the_torque_it_refers_to() -> None:
    rule = rw.brake.required_factor("MIL-HDBK-1038 with eddy brake")
    assert (rule.base, rule.value) == ("motor torque", 1.5)
    unknown = disc().check("67.5 kN*m", rule)
    assert [one.enough for one in unknown] == [None, None, None]
    assert "could not be computed: motor torque not given" in str(unknown[0])
    # 220.5 kN m of service calipers against 1.5 times 150 kN m: too little, 3.3 times the load.
    known = disc().check("67.5 kN*m", rule, motor_torque="150 kN*m")[1]
    assert known.base_factor == pytest.approx(1.47)
    assert (known.holds, known.enough) == (True, False)
    # What does not hold the load is not enough, whatever the rule refers to.
    assert disc(emergency_force="60 kN").check("67.5 kN*m", rule)[-1].enough is False
    hoisting = rw.brake.required_factor("AISE single brake")
    found = disc().check("50 kN*m", hoisting, hoisting_torque="60 kN*m")[-1]
    assert (found.factor, found.base_factor) == pytest.approx((1.764, 1.47))
    assert found.enough is False
    with pytest.raises(InadmissibleError, match="motor_torque = 0"):
        disc().check("67.5 kN*m", rule, motor_torque="0 kN*m")


def test_a_band_is_held_against_its_load_both_ways() -> None:
    band = rw.brake.BandBrake(
        bands=2, wrap_angle="280 deg", rim_diameter="1.18 m", lining_friction=0.35, lever_ratio=40
    )
    helped, against = band.check("631 N", "60 kN*m", 1.5)
    assert (helped.enough, against.holds) == (True, False)
    # e^(0.35 · 4.8869) = 5.531, by hand.
    assert helped.torque_si / against.torque_si == pytest.approx(5.531, rel=1e-3)
    with pytest.raises(InadmissibleError, match="must be one value"):
        band.check(rw.Q([600.0, 700.0], "N"), "60 kN*m", 1.5)


def test_an_array_where_one_value_belongs_is_refused_by_name() -> None:
    table = rw.brake.FrictionTable(rw.Q([20.0, 100.0], "degC"), [0.38, 0.36])
    with pytest.raises(InadmissibleError, match="temperature must be one value"):
        table.at(rw.Q([30.0, 40.0], "degC"))
    with pytest.raises(InadmissibleError, match="lining_friction.* must be one value"):
        disc().check("60 kN*m", 1.5, lining_friction=[0.3, 0.35])
    brake: dict[str, Any] = {"specific_heat": "500 J/kg/K", "heat_loss": "1500 W/K"}
    with pytest.raises(InadmissibleError, match="heated_mass must be one value"):
        rw.brake.temperature_over_trip(
            "1 MJ", "40 s", "9 s", heated_mass=rw.Q([1.0, 2.0], "kg"), **brake
        )
    brakes = rw.brake.LoweringBrakes(friction_torque="75 kN*m")
    with pytest.raises(InadmissibleError, match=r"brake\.LoweringBrakes\.balance\(\): load_torque"):
        brakes.balance(rw.Q([1.0, 2.0], "kN*m"))


def test_a_table_of_friction_fades() -> None:
    table = rw.brake.FrictionTable(rw.Q([20.0, 100.0, 350.0], "degC"), [0.38, 0.36, 0.28])
    assert table.at("20 degC") == pytest.approx(0.38)
    assert table.at("225 degC") == pytest.approx(0.32)
    assert table.at(rw.Q(437.0, "degF")) == pytest.approx(0.32)  # 225 °C
    with pytest.raises(ValidityError, match="friction table"):
        table.at("351 degC")
    assert pickle.loads(pickle.dumps(table)) == table
    with pytest.raises(InadmissibleError, match="rise"):
        rw.brake.FrictionTable(rw.Q([100.0, 20.0], "degC"), [0.3, 0.4])
    with pytest.raises(InadmissibleError, match="frictions"):
        rw.brake.FrictionTable(rw.Q([20.0, 100.0], "degC"), [0.3, 1.4])
    with pytest.raises(UnitError, match="temperature"):
        table.at("3 m")


def test_a_reading_in_celsius_is_no_difference() -> None:
    with pytest.raises(UnitError, match="zero"):
        rw.brake.cooling_water_flow("1 MW", "1000 kg/m**3", "4186 J/kg/K", rw.Q(20, "degC"))


def test_required_factors_have_sources() -> None:
    for factor in rw.brake.required_factors():
        assert factor.source
        assert factor.base in {"load torque", "hoisting torque", "motor torque"}
        assert factor.standing in {"published", "from memory"}
    with pytest.raises(UnknownEntryError, match="OSHA"):
        rw.brake.required_factor("a rule of ours")


@pytest.mark.parametrize("required", [0.0, -1.5, math.nan, math.inf])
def test_a_factor_that_asks_for_nothing_is_refused(required: float) -> None:
    with pytest.raises(InadmissibleError, match="required = .* must be positive"):
        disc().check("67.5 kN*m", required)
    with pytest.raises(InadmissibleError, match="load_torque must be one value"):
        disc().check(rw.Q([60.0, 70.0], "kN*m"), 1.5)
