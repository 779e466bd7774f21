"""Life models: identities and limits, agreement with other libraries, laws over the domain."""

from __future__ import annotations

import copy
import pickle
from typing import Any

import numpy as np
import pytest
import scipy.stats
from fatigue_examples import BEND, MODELS, REFERENCE, cycles
from hypothesis import given
from hypothesis import strategies as st

import ropewalk as rw
from ropewalk import fatigue
from ropewalk.errors import InadmissibleError, UnitError

every_model = pytest.mark.parametrize("name", MODELS)


# Objects


@every_model
def test_models_are_frozen_compare_copy_and_pickle(name: str) -> None:
    model = MODELS[name]
    twin = pickle.loads(pickle.dumps(model))
    assert twin == model
    assert hash(twin) == hash(model)
    assert copy.deepcopy(model) == model
    assert cycles(twin) == cycles(model)
    with pytest.raises(AttributeError):
        model.scatter = 0.3


@every_model
def test_a_model_describes_itself(name: str) -> None:
    model = MODELS[name]
    about = model.describe()
    assert about.name == model.name == f"fatigue.{name}"
    assert about.source == model.source
    assert about.equation
    assert about.scatter is None
    assert set(about.needs) <= BEND.keys()
    entry = next(entry for entry in fatigue.catalog() if entry.name == name)
    assert (entry.equation, entry.source) == (about.equation, about.source)
    assert about.basis in entry.basis


def test_the_catalog_lists_every_model_class() -> None:
    assert [entry.name for entry in fatigue.catalog()] == list(MODELS)


@every_model
def test_each_argument_it_needs_is_missed(name: str) -> None:
    for argument in MODELS[name].describe().needs:
        left = {key: value for key, value in BEND.items() if key != argument}
        if argument == "rope_tension":
            continue
        with pytest.raises(InadmissibleError, match=f"{argument} is not given"):
            MODELS[name].cycles(**left, outside_validity="ignore")


# The same answer in every shape


@every_model
def test_arrays_scalars_and_threads_agree_to_the_last_bit(name: str) -> None:
    tension = np.linspace(20.0, 300.0, 97)
    diameter = np.array([0.4, 0.7, 1.3])[:, None]
    life = MODELS[name].cycles(
        **{**BEND, "rope_tension": rw.Q(tension, "kN"), "sheave_diameter": rw.Q(diameter, "m")},
        outside_validity="ignore",
        threads=2,
    )
    assert life.cycles.shape == life.status.shape == (3, 97)
    for i, j in [(0, 0), (1, 50), (2, 96)]:
        one = MODELS[name].cycles(
            **{
                **BEND,
                "rope_tension": rw.Q(float(tension[j]), "kN"),
                "sheave_diameter": rw.Q(float(diameter[i, 0]), "m"),
            },
            outside_validity="ignore",
        )
        assert one.cycles == life.cycles[i, j]
        assert one.status == life.status[i, j]
        assert bool(one.holds) == bool(life.holds[i, j])


@every_model
def test_si_numbers_give_the_same_lives(name: str) -> None:
    tension = np.linspace(2e4, 3e5, 50)
    lives, status = MODELS[name].cycles_si(
        tension, 0.028, 0.7, 1.77e9, 5e5, 3.0, outside_validity="ignore"
    )
    life = MODELS[name].cycles(
        **{**BEND, "rope_tension": rw.Q(tension, "N")}, outside_validity="ignore"
    )
    # The diameters went through millimeters.
    np.testing.assert_allclose(lives, life.cycles, rtol=1e-13)
    assert status.tolist() == life.status.tolist()
    with pytest.raises(UnitError, match="rope_tension"):
        MODELS[name].cycles_si(rw.Q(tension, "N"), 0.028, 0.7, 1.77e9, 5e5, 3.0)


def test_a_rope_stands_for_its_properties() -> None:
    rope = rw.Rope.metric("6x36 IWRC", wire_grade="1770 MPa", diameter="28 mm")
    bare = {"rope_tension": "100 kN", "sheave_diameter": "700 mm"}
    proof = MODELS["En13001"]
    given_rope = proof.cycles(**bare, rope=rope)
    by_hand = proof.cycles(**bare, rope_diameter="28 mm", breaking_force=rope.breaking_force)
    assert given_rope.cycles == by_hand.cycles
    power = MODELS["PowerLaw"]
    assert power.cycles(**bare, rope=rope).cycles == cycles(power)
    stronger = power.cycles(**bare, rope=rope, wire_strength="1960 MPa")
    assert stronger.cycles > cycles(power)
    with pytest.raises(InadmissibleError, match="rope or rope_diameter, not both"):
        proof.cycles(**bare, rope=rope, rope_diameter="28 mm")
    with pytest.raises(UnitError, match=r"must be a ropewalk\.Rope"):
        proof.cycles(**bare, rope="6x36")


def test_factors_multiply_the_life() -> None:
    factors = fatigue.EnduranceFactors(fatigue.lubrication_factor("none"), wear=0.5)
    model = MODELS["PowerLaw"]
    assert cycles(model, factors=factors) == pytest.approx(0.1 * cycles(model), rel=1e-15)
    both = cycles(model, factors=factors, life_factor=np.array([1.0, 2.0]))
    assert both == pytest.approx(np.array([0.1, 0.2]) * cycles(model), rel=1e-15)
    with pytest.raises(UnitError, match="must be EnduranceFactors"):
        cycles(model, factors=0.5)


# Other libraries


def test_feyrer_form_against_numpy() -> None:
    rng = np.random.default_rng(11)
    d = rng.uniform(8.0, 44.0, 200)
    ratio = rng.uniform(10.0, 63.0, 200)
    specific = rng.uniform(40.0, 500.0, 200)
    strength = rng.uniform(1370.0, 2160.0, 200)
    length = d * rng.uniform(10.0, 1000.0, 200)
    model = fatigue.FeyrerForm(b0=1.3, b1=0.4, b2=6.2, b3=-0.32, b4=-1.6, b5=1.2, basis="breakage")
    life = model.cycles(
        rope_tension=rw.Q(specific * d**2, "N"),
        rope_diameter=rw.Q(d, "mm"),
        sheave_diameter=rw.Q(ratio * d, "mm"),
        wire_strength=rw.Q(strength, "MPa"),
        bend_length=rw.Q(length, "mm"),
    )
    lg = np.log10
    x, y = lg(specific) - 0.4 * lg(strength / 1770.0), lg(ratio)
    expected = 1.3 + (0.4 - 1.6 * y) * x + 6.2 * y - 0.32 * lg(d) + 1.0 / (1.2 + lg(length / d))
    np.testing.assert_allclose(lg(life.cycles), expected, rtol=0.0, atol=1e-12)
    assert not life.status.any()


def test_handbook_table_against_numpy_interpolation() -> None:
    table = fatigue.table("relative_bending_life")
    knots = np.log([row["bend_ratio"] for row in table])
    values = np.log([row["relative_life"] for row in table])
    ratio = np.linspace(12.0, 30.0, 301)
    model = fatigue.HandbookRelativeLife(**REFERENCE)
    life = model.cycles(
        rope_tension="100 kN",
        rope_diameter="28 mm",
        sheave_diameter=rw.Q(28.0 * ratio, "mm"),
    )
    expected = np.exp(np.interp(np.log(ratio), knots, values)) / 6.6 * 100_000
    np.testing.assert_allclose(life.cycles, expected, rtol=1e-12)


@pytest.mark.parametrize("probability", [0.01, 0.1, 0.5, 0.9, 0.999])
def test_quantiles_against_scipy(probability: float) -> None:
    life = fatigue.PowerLaw(0.25, 2.3, basis="discard", scatter=0.17).cycles(**BEND)
    lognormal = scipy.stats.lognorm(s=0.17 * np.log(10.0), scale=life.cycles)
    assert life.quantile(probability) == pytest.approx(lognormal.ppf(probability), rel=1e-12)
    low, high = life.band(0.8)
    assert (low, high) == pytest.approx(lognormal.interval(0.8), rel=1e-12)
    assert life.quantile(0.5) == life.cycles


# Laws


@every_model
@given(
    tension=st.floats(1.0, 130.0),
    more=st.floats(1.001, 3.0),
    sheave=st.floats(0.3, 2.0),
    wider=st.floats(1.001, 3.0),
)
def test_life_falls_with_tension_and_rises_with_the_sheave(
    name: str, tension: float, more: float, sheave: float, wider: float
) -> None:
    # Up to S/d2 = 500 N/mm2, where the tests end; the proof knows D/d through its factors only.
    model = MODELS[name]

    def life(force: float, size: float) -> Any:
        return cycles(model, rope_tension=rw.Q(force, "kN"), sheave_diameter=rw.Q(size, "m"))

    base = life(tension, sheave)
    assert life(tension * more, sheave) < base
    if name == "En13001":
        assert life(tension, sheave * wider) == base
    else:
        assert life(tension, sheave * wider) > base


@every_model
@given(tension=st.floats(10.0, 400.0), step=st.floats(1.01, 2.0))
def test_the_tension_exponent_is_the_slope(name: str, tension: float, step: float) -> None:
    model = MODELS[name]
    slope = model.tension_exponent(25.0)
    assert slope is not None
    heavier = cycles(model, rope_tension=rw.Q(tension * step, "kN"))
    lighter = cycles(model, rope_tension=rw.Q(tension, "kN"))
    assert np.log(heavier / lighter) / np.log(step) == pytest.approx(slope, abs=1e-9)


@given(
    shares=st.lists(st.floats(0.01, 1.0), min_size=3, max_size=3),
    tensions=st.lists(st.floats(30.0, 150.0), min_size=3, max_size=3),
)
def test_the_equivalent_force_lives_as_long_as_the_collective(
    shares: list[float], tensions: list[float]
) -> None:
    model = MODELS["En81"]
    lives = cycles(model, rope_tension=rw.Q(tensions, "kN"))
    exponent = model.tension_exponent(25.0)
    assert exponent is not None
    ratio = fatigue.equivalent_force_ratio(shares, np.array(tensions) / 100.0, exponent)
    assert cycles(model, rope_tension=rw.Q(100.0 * ratio, "kN")) == pytest.approx(
        fatigue.collective_life(shares, lives), rel=1e-10
    )


@given(tension=st.floats(1.0, 20.0), sheave=st.floats(300.0, 1500.0), change=st.floats(0.5, 0.99))
def test_no_other_diameter_lives_longer(tension: float, sheave: float, change: float) -> None:
    model = fatigue.En81(**REFERENCE)
    bend = {"rope_tension": rw.Q(tension, "kN"), "sheave_diameter": rw.Q(sheave, "mm")}
    best = model.optimal_rope_diameter(**bend)
    longest = cycles(model, **bend, rope_diameter=best)
    assert cycles(model, **bend, rope_diameter=change * best) < longest
    assert cycles(model, **bend, rope_diameter=best / change) < longest
