"""
Bending-over-sheave life: models, factors, load collectives.
"""

from __future__ import annotations
import collections.abc
import numpy.typing
import typing

__all__: list[str] = [
    "LifeModel",
    "bending_load",
    "collective_life",
    "construction_factor",
    "core_factor",
    "discard_constants",
    "discard_limiting_force",
    "discard_wire_breaks",
    "en13001_fatigue_resistance",
    "en13001_force_history",
    "en13001_static_factor",
    "en13001_utilization",
    "en81_equivalent_sheaves",
    "en81_groove_equivalent",
    "en81_safety_factor",
    "en81_sheave_weight",
    "equivalent_force_ratio",
    "factors_product",
    "fatigue_safety_factor",
    "fatigue_tension",
    "fleet_angle_factor",
    "force_spectrum_factor",
    "hoist_rope_tension",
    "length_factor",
    "lubrication_factor",
    "miner_sum",
    "optimal_rope_diameter",
    "reverse_bending_cycles",
    "round_groove_factor",
    "shaped_groove_factor",
    "size_factor",
    "static_safety_factor",
    "table",
    "wire_bending_stress",
]

class LifeModel:
    """
    One model of bending-over-sheave life, on plain SI numbers.
    """
    @staticmethod
    def drucker_tachau(
        scatter: typing.SupportsFloat | typing.SupportsIndex | None = None,
    ) -> LifeModel: ...
    @staticmethod
    def en13001(further_influences: typing.SupportsFloat | typing.SupportsIndex) -> LifeModel: ...
    @staticmethod
    def en81(
        reference_life: typing.SupportsFloat | typing.SupportsIndex,
        reference_tension: typing.SupportsFloat | typing.SupportsIndex,
        reference_rope_diameter: typing.SupportsFloat | typing.SupportsIndex,
        reference_sheave_diameter: typing.SupportsFloat | typing.SupportsIndex,
        scatter: typing.SupportsFloat | typing.SupportsIndex | None = None,
    ) -> LifeModel: ...
    @staticmethod
    def feyrer_form(
        b0: typing.SupportsFloat | typing.SupportsIndex,
        b1: typing.SupportsFloat | typing.SupportsIndex,
        b2: typing.SupportsFloat | typing.SupportsIndex,
        b3: typing.SupportsFloat | typing.SupportsIndex,
        b4: typing.SupportsFloat | typing.SupportsIndex,
        b5: typing.SupportsFloat | typing.SupportsIndex,
        basis: str,
        scatter: typing.SupportsFloat | typing.SupportsIndex | None = None,
    ) -> LifeModel: ...
    @staticmethod
    def feyrer_second_edition(
        b0: typing.SupportsFloat | typing.SupportsIndex,
        b1: typing.SupportsFloat | typing.SupportsIndex,
        b2: typing.SupportsFloat | typing.SupportsIndex,
        b3: typing.SupportsFloat | typing.SupportsIndex,
        core_factor: typing.SupportsFloat | typing.SupportsIndex,
        basis: str,
        scatter: typing.SupportsFloat | typing.SupportsIndex | None = None,
    ) -> LifeModel: ...
    @staticmethod
    def handbook_relative_life(
        reference_life: typing.SupportsFloat | typing.SupportsIndex,
        reference_tension: typing.SupportsFloat | typing.SupportsIndex,
        reference_rope_diameter: typing.SupportsFloat | typing.SupportsIndex,
        reference_sheave_diameter: typing.SupportsFloat | typing.SupportsIndex,
        tension_exponent: typing.SupportsFloat | typing.SupportsIndex | None = None,
        scatter: typing.SupportsFloat | typing.SupportsIndex | None = None,
    ) -> LifeModel: ...
    @staticmethod
    def power_law(
        scale: typing.SupportsFloat | typing.SupportsIndex,
        exponent: typing.SupportsFloat | typing.SupportsIndex,
        basis: str,
        scatter: typing.SupportsFloat | typing.SupportsIndex | None = None,
        fitted_over: typing.Annotated[
            collections.abc.Sequence[typing.SupportsFloat | typing.SupportsIndex], "FixedSize(2)"
        ]
        | None = None,
    ) -> LifeModel: ...
    def applicability(
        self,
        rope_tension: float | numpy.typing.ArrayLike | None = None,
        rope_diameter: float | numpy.typing.ArrayLike | None = None,
        sheave_diameter: float | numpy.typing.ArrayLike | None = None,
        wire_strength: float | numpy.typing.ArrayLike | None = None,
        breaking_force: float | numpy.typing.ArrayLike | None = None,
        bend_length: float | numpy.typing.ArrayLike | None = None,
        life_factor: float | numpy.typing.ArrayLike | None = None,
    ) -> dict:
        """
        Arguments missing at a point, and ranges it leaves.
        """
    def cycles(
        self,
        rope_tension: float | numpy.typing.ArrayLike,
        rope_diameter: float | numpy.typing.ArrayLike | None = None,
        sheave_diameter: float | numpy.typing.ArrayLike | None = None,
        wire_strength: float | numpy.typing.ArrayLike | None = None,
        breaking_force: float | numpy.typing.ArrayLike | None = None,
        bend_length: float | numpy.typing.ArrayLike | None = None,
        life_factor: float | numpy.typing.ArrayLike | None = None,
        *,
        outside_validity: str = "raise",
        threads: typing.SupportsInt | typing.SupportsIndex = 1,
    ) -> typing.Any:
        """
        Bending cycles and status; arguments in N, m, m, Pa, N, m and plain.
        """
    def describe(self) -> dict:
        """
        The model in words and numbers.
        """
    def tension_exponent(
        self, bend_ratio: typing.SupportsFloat | typing.SupportsIndex
    ) -> float | None:
        """
        Slope d lg N / d lg S at D/d; None if the model has none.
        """
    @property
    def name(self) -> str: ...

def bending_load(
    rope_modulus: float | numpy.typing.ArrayLike,
    wire_diameter: float | numpy.typing.ArrayLike,
    metallic_area: float | numpy.typing.ArrayLike,
    sheave_diameter: float | numpy.typing.ArrayLike,
    *,
    outside_validity: str = "raise",
    return_status: bool = False,
    threads: typing.SupportsInt | typing.SupportsIndex = 1,
) -> typing.Any:
    """
    Tension that stresses the wires as bending does (Shigley).

    In SI: rope_modulus [Pa], wire_diameter [m], metallic_area [m2], sheave_diameter [m]; gives [N].
    """

def collective_life(
    shares: float | numpy.typing.ArrayLike, lives: float | numpy.typing.ArrayLike
) -> float:
    """
    Life under a load collective by the damage sum.
    """

def construction_factor(construction: str) -> dict:
    """
    Bending life of a construction over that of 6x25FW.
    """

def core_factor(core: str, strands: typing.SupportsInt | typing.SupportsIndex) -> dict:
    """
    Factor of core and number of strands.
    """

def discard_constants(construction: str) -> dict:
    """
    Constants of the discard wire-break number of a rope construction.
    """

def discard_limiting_force(
    least_wire_breaks: float | numpy.typing.ArrayLike,
    rope_diameter: float | numpy.typing.ArrayLike,
    sheave_diameter: float | numpy.typing.ArrayLike,
    g0: float | numpy.typing.ArrayLike,
    g1: float | numpy.typing.ArrayLike,
    g2: float | numpy.typing.ArrayLike,
    g3: float | numpy.typing.ArrayLike,
    *,
    outside_validity: str = "raise",
    return_status: bool = False,
    threads: typing.SupportsInt | typing.SupportsIndex = 1,
) -> typing.Any:
    """
    Tension that leaves room for wire breaks to warn.

    In SI: least_wire_breaks [1], rope_diameter [m], sheave_diameter [m], g0 [1], g1 [1], g2 [1], g3 [1]; gives [N].
    """

def discard_wire_breaks(
    rope_tension: float | numpy.typing.ArrayLike,
    rope_diameter: float | numpy.typing.ArrayLike,
    sheave_diameter: float | numpy.typing.ArrayLike,
    g0: float | numpy.typing.ArrayLike,
    g1: float | numpy.typing.ArrayLike,
    g2: float | numpy.typing.ArrayLike,
    g3: float | numpy.typing.ArrayLike,
    *,
    outside_validity: str = "raise",
    return_status: bool = False,
    threads: typing.SupportsInt | typing.SupportsIndex = 1,
) -> typing.Any:
    """
    Wire breaks on 30 diameters at discard (Feyrer).

    In SI: rope_tension [N], rope_diameter [m], sheave_diameter [m], g0 [1], g1 [1], g2 [1], g3 [1]; gives [1].
    """

def en13001_fatigue_resistance(
    breaking_force: float | numpy.typing.ArrayLike,
    further_influences: float | numpy.typing.ArrayLike,
    force_history: float | numpy.typing.ArrayLike,
    *,
    outside_validity: str = "raise",
    return_status: bool = False,
    threads: typing.SupportsInt | typing.SupportsIndex = 1,
) -> typing.Any:
    """
    Limit design rope force (EN 13001-3-2).

    In SI: breaking_force [N], further_influences [1], force_history [1]; gives [N].
    """

def en13001_force_history(
    force_spectrum_factor: float | numpy.typing.ArrayLike,
    bending_cycles: float | numpy.typing.ArrayLike,
    *,
    outside_validity: str = "raise",
    return_status: bool = False,
    threads: typing.SupportsInt | typing.SupportsIndex = 1,
) -> typing.Any:
    """
    Force history parameter s_r (EN 13001-3-2).

    In SI: force_spectrum_factor [1], bending_cycles [1]; gives [1].
    """

def en13001_static_factor(
    bend_ratio: float | numpy.typing.ArrayLike,
    *,
    outside_validity: str = "raise",
    return_status: bool = False,
    threads: typing.SupportsInt | typing.SupportsIndex = 1,
) -> typing.Any:
    """
    Rope resistance factor (EN 13001-3-2).

    In SI: bend_ratio [1]; gives [1].
    """

def en13001_utilization(
    rope_tension: float | numpy.typing.ArrayLike,
    breaking_force: float | numpy.typing.ArrayLike,
    further_influences: float | numpy.typing.ArrayLike,
    force_history: float | numpy.typing.ArrayLike,
    *,
    outside_validity: str = "raise",
    return_status: bool = False,
    threads: typing.SupportsInt | typing.SupportsIndex = 1,
) -> typing.Any:
    """
    Utilization of the fatigue proof (EN 13001-3-2).

    In SI: rope_tension [N], breaking_force [N], further_influences [1], force_history [1]; gives [1].
    """

def en81_equivalent_sheaves(
    groove_equivalent: float | numpy.typing.ArrayLike,
    same_sense_sheaves: float | numpy.typing.ArrayLike,
    reverse_sheaves: float | numpy.typing.ArrayLike,
    sheave_weight: float | numpy.typing.ArrayLike,
    *,
    outside_validity: str = "raise",
    return_status: bool = False,
    threads: typing.SupportsInt | typing.SupportsIndex = 1,
) -> typing.Any:
    """
    Number of equivalent sheaves (EN 81-50).

    In SI: groove_equivalent [1], same_sense_sheaves [1], reverse_sheaves [1], sheave_weight [1]; gives [1].
    """

def en81_groove_equivalent(
    groove: str, groove_angle: float | numpy.typing.ArrayLike = 0.0
) -> float:
    """
    Equivalent sheaves of a traction sheave, by its groove and angle [rad].
    """

def en81_safety_factor(
    bend_ratio: float | numpy.typing.ArrayLike,
    equivalent_sheaves: float | numpy.typing.ArrayLike,
    *,
    outside_validity: str = "raise",
    return_status: bool = False,
    threads: typing.SupportsInt | typing.SupportsIndex = 1,
) -> typing.Any:
    """
    Least safety factor of suspension ropes (EN 81-50).

    In SI: bend_ratio [1], equivalent_sheaves [1]; gives [1].
    """

def en81_sheave_weight(
    traction_sheave_diameter: float | numpy.typing.ArrayLike,
    deflection_sheave_diameter: float | numpy.typing.ArrayLike,
    *,
    outside_validity: str = "raise",
    return_status: bool = False,
    threads: typing.SupportsInt | typing.SupportsIndex = 1,
) -> typing.Any:
    """
    Weight K_p of deflection sheaves (EN 81-50).

    In SI: traction_sheave_diameter [m], deflection_sheave_diameter [m]; gives [1].
    """

def equivalent_force_ratio(
    shares: float | numpy.typing.ArrayLike,
    force_ratios: float | numpy.typing.ArrayLike,
    exponent: float | numpy.typing.ArrayLike,
) -> float:
    """
    Equivalent force of a load collective, relative to the reference force.
    """

def factors_product(
    factors: collections.abc.Sequence[tuple[str, typing.SupportsFloat | typing.SupportsIndex]],
) -> float:
    """
    Product of endurance factors, each name once and each value above 0.
    """

def fatigue_safety_factor(
    fatigue_tension: float | numpy.typing.ArrayLike,
    bending_load: float | numpy.typing.ArrayLike,
    rope_tension: float | numpy.typing.ArrayLike,
    *,
    outside_validity: str = "raise",
    return_status: bool = False,
    threads: typing.SupportsInt | typing.SupportsIndex = 1,
) -> typing.Any:
    """
    Fatigue safety factor of a hoist rope (Shigley).

    In SI: fatigue_tension [N], bending_load [N], rope_tension [N]; gives [1].
    """

def fatigue_tension(
    pressure_ratio: float | numpy.typing.ArrayLike,
    wire_strength: float | numpy.typing.ArrayLike,
    rope_diameter: float | numpy.typing.ArrayLike,
    sheave_diameter: float | numpy.typing.ArrayLike,
    *,
    outside_validity: str = "raise",
    return_status: bool = False,
    threads: typing.SupportsInt | typing.SupportsIndex = 1,
) -> typing.Any:
    """
    Tension borne at a bearing-pressure ratio (Shigley).

    In SI: pressure_ratio [1], wire_strength [Pa], rope_diameter [m], sheave_diameter [m]; gives [N].
    """

def fleet_angle_factor(
    bend_ratio: float | numpy.typing.ArrayLike,
    fleet_angle: float | numpy.typing.ArrayLike,
    *,
    outside_validity: str = "raise",
    return_status: bool = False,
    threads: typing.SupportsInt | typing.SupportsIndex = 1,
) -> typing.Any:
    """
    Side deflection factor f_N2 on bending life.

    In SI: bend_ratio [1], fleet_angle [rad]; gives [1].
    """

def force_spectrum_factor(
    shares: float | numpy.typing.ArrayLike, force_ratios: float | numpy.typing.ArrayLike
) -> float:
    """
    Rope force spectrum factor k_r (EN 13001-3-2).
    """

def hoist_rope_tension(
    load: float | numpy.typing.ArrayLike,
    ropes: float | numpy.typing.ArrayLike,
    rope_weight: float | numpy.typing.ArrayLike,
    rope_length: float | numpy.typing.ArrayLike,
    acceleration: float | numpy.typing.ArrayLike,
    *,
    outside_validity: str = "raise",
    return_status: bool = False,
    threads: typing.SupportsInt | typing.SupportsIndex = 1,
) -> typing.Any:
    """
    Tension of one rope of a hoist (Shigley).

    In SI: load [N], ropes [1], rope_weight [N/m], rope_length [m], acceleration [m/s2]; gives [N].
    """

def length_factor(
    bend_length_ratio: float | numpy.typing.ArrayLike,
    *,
    outside_validity: str = "raise",
    return_status: bool = False,
    threads: typing.SupportsInt | typing.SupportsIndex = 1,
) -> typing.Any:
    """
    Bending length factor f_L on bending life (Feyrer).

    In SI: bend_length_ratio [1]; gives [1].
    """

def lubrication_factor(lubrication: str) -> dict:
    """
    Endurance factor of lubrication.
    """

def miner_sum(
    counts: float | numpy.typing.ArrayLike, lives: float | numpy.typing.ArrayLike
) -> float:
    """
    Damage sum of Palmgren and Miner.
    """

def optimal_rope_diameter(
    rope_tension: float | numpy.typing.ArrayLike,
    sheave_diameter: float | numpy.typing.ArrayLike,
    wire_strength: float | numpy.typing.ArrayLike,
    b1: float | numpy.typing.ArrayLike,
    b2: float | numpy.typing.ArrayLike,
    b3: float | numpy.typing.ArrayLike,
    b4: float | numpy.typing.ArrayLike,
    *,
    outside_validity: str = "raise",
    return_status: bool = False,
    threads: typing.SupportsInt | typing.SupportsIndex = 1,
) -> typing.Any:
    """
    Rope diameter of the longest bending life.

    In SI: rope_tension [N], sheave_diameter [m], wire_strength [Pa], b1 [1], b2 [1], b3 [1], b4 [1]; gives [m].
    """

def reverse_bending_cycles(
    simple_bending_cycles: float | numpy.typing.ArrayLike,
    bend_ratio: float | numpy.typing.ArrayLike,
    *,
    outside_validity: str = "raise",
    return_status: bool = False,
    threads: typing.SupportsInt | typing.SupportsIndex = 1,
) -> typing.Any:
    """
    Life in reverse bending from that in simple bending.

    In SI: simple_bending_cycles [1], bend_ratio [1]; gives [1].
    """

def round_groove_factor(groove_radius_ratio: float | numpy.typing.ArrayLike) -> dict:
    """
    Endurance factor of a round groove, by r/d.
    """

def shaped_groove_factor(groove: str, groove_angle: float | numpy.typing.ArrayLike) -> dict:
    """
    Endurance factor of an undercut or V groove, by its angle [rad].
    """

def size_factor(
    rope_diameter: float | numpy.typing.ArrayLike,
    *,
    outside_validity: str = "raise",
    return_status: bool = False,
    threads: typing.SupportsInt | typing.SupportsIndex = 1,
) -> typing.Any:
    """
    Rope diameter factor f_d on bending life (Feyrer).

    In SI: rope_diameter [m]; gives [1].
    """

def static_safety_factor(
    breaking_force: float | numpy.typing.ArrayLike,
    bending_load: float | numpy.typing.ArrayLike,
    rope_tension: float | numpy.typing.ArrayLike,
    *,
    outside_validity: str = "raise",
    return_status: bool = False,
    threads: typing.SupportsInt | typing.SupportsIndex = 1,
) -> typing.Any:
    """
    Static safety factor of a hoist rope (Shigley).

    In SI: breaking_force [N], bending_load [N], rope_tension [N]; gives [1].
    """

def table(name: str) -> list[dict]:
    """
    Rows of a data table of this subject.
    """

def wire_bending_stress(
    rope_modulus: float | numpy.typing.ArrayLike,
    wire_diameter: float | numpy.typing.ArrayLike,
    sheave_diameter: float | numpy.typing.ArrayLike,
    *,
    outside_validity: str = "raise",
    return_status: bool = False,
    threads: typing.SupportsInt | typing.SupportsIndex = 1,
) -> typing.Any:
    """
    Bending stress of the wires on a sheave.

    In SI: rope_modulus [Pa], wire_diameter [m], sheave_diameter [m]; gives [Pa].
    """
