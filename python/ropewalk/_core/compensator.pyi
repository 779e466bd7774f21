"""
Heave compensation: gas spring, sea, stroke.
"""

from __future__ import annotations
import numpy.typing
import typing

__all__: list[str] = [
    "HeaveOperator",
    "active_line_speed",
    "active_power",
    "active_power_with_inertia",
    "active_work",
    "allowed_heave_deviation",
    "bit_weight_change",
    "box_hull_heave",
    "cycle_exceedance",
    "effective_area",
    "expected_maximum",
    "gas_load",
    "gas_stiffness",
    "hanging_ratio",
    "hanging_stroke",
    "heave_acceleration",
    "heave_cycles",
    "heave_moments",
    "heave_speed",
    "jonswap",
    "jonswap_normalizer",
    "mean_of_highest",
    "mean_period_ratio",
    "most_probable_maximum",
    "natural_period",
    "needed_gas_volume",
    "operating_limit",
    "peak_factor",
    "pierson_moskowitz",
    "steepest_height",
    "stroke_exceedance",
    "swing_arm_roll",
    "table",
    "zero_crossing_ratio",
]

class HeaveOperator:
    """
    Heave over wave amplitude by wave period, SI.
    """
    @staticmethod
    def box_hull(
        hull_length: float | numpy.typing.ArrayLike,
        hull_beam: float | numpy.typing.ArrayLike,
        hull_draft: float | numpy.typing.ArrayLike,
        heading: float | numpy.typing.ArrayLike,
    ) -> HeaveOperator:
        """
        Closed form of a box-shaped hull.
        """
    @staticmethod
    def constant(ratio: float | numpy.typing.ArrayLike) -> HeaveOperator:
        """
        The same for all waves.
        """
    @staticmethod
    def table(
        periods: float | numpy.typing.ArrayLike, ratios: float | numpy.typing.ArrayLike
    ) -> HeaveOperator:
        """
        Straight between points by wave period [s].
        """
    def at(self, wave_period: float | numpy.typing.ArrayLike) -> typing.Any:
        """
        Ratio at a wave period [s].
        """

def active_line_speed(
    lines: float | numpy.typing.ArrayLike,
    heave_height: float | numpy.typing.ArrayLike,
    heave_period: float | numpy.typing.ArrayLike,
    *,
    outside_validity: str = "raise",
    return_status: bool = False,
    threads: typing.SupportsInt | typing.SupportsIndex = 1,
) -> typing.Any:
    """
    Largest line speed at an active drum.

    In SI: lines [1], heave_height [m], heave_period [s]; gives [m/s].
    """

def active_power(
    hook_load: float | numpy.typing.ArrayLike,
    heave_height: float | numpy.typing.ArrayLike,
    heave_period: float | numpy.typing.ArrayLike,
    reeving_efficiency: float | numpy.typing.ArrayLike,
    *,
    outside_validity: str = "raise",
    return_status: bool = False,
    threads: typing.SupportsInt | typing.SupportsIndex = 1,
) -> typing.Any:
    """
    Largest power at an active drum.

    In SI: hook_load [N], heave_height [m], heave_period [s], reeving_efficiency [1]; gives [W].
    """

def active_power_with_inertia(
    hook_load: float | numpy.typing.ArrayLike,
    heave_height: float | numpy.typing.ArrayLike,
    heave_period: float | numpy.typing.ArrayLike,
    reeving_efficiency: float | numpy.typing.ArrayLike,
    turning_mass: float | numpy.typing.ArrayLike,
    *,
    outside_validity: str = "raise",
    return_status: bool = False,
    threads: typing.SupportsInt | typing.SupportsIndex = 1,
) -> typing.Any:
    """
    Largest power at an active drum, with what turns.

    In SI: hook_load [N], heave_height [m], heave_period [s], reeving_efficiency [1], turning_mass [kg]; gives [W].
    """

def active_work(
    hook_load: float | numpy.typing.ArrayLike,
    heave_height: float | numpy.typing.ArrayLike,
    heave_cycles: float | numpy.typing.ArrayLike,
    *,
    outside_validity: str = "raise",
    return_status: bool = False,
    threads: typing.SupportsInt | typing.SupportsIndex = 1,
) -> typing.Any:
    """
    Work of the line at an active drum.

    In SI: hook_load [N], heave_height [m], heave_cycles [1]; gives [J].
    """

def allowed_heave_deviation(
    half_stroke: float | numpy.typing.ArrayLike,
    exceedance: float | numpy.typing.ArrayLike,
    heave_cycles: float | numpy.typing.ArrayLike,
    *,
    outside_validity: str = "raise",
    return_status: bool = False,
    threads: typing.SupportsInt | typing.SupportsIndex = 1,
) -> typing.Any:
    """
    Standard deviation of heave a stroke allows.

    In SI: half_stroke [m], exceedance [1], heave_cycles [1]; gives [m].
    """

def bit_weight_change(
    mean_load: float | numpy.typing.ArrayLike,
    effective_area: float | numpy.typing.ArrayLike,
    gas_volume: float | numpy.typing.ArrayLike,
    polytropic_exponent: float | numpy.typing.ArrayLike,
    seal_friction: float | numpy.typing.ArrayLike,
    string_stiffness: float | numpy.typing.ArrayLike,
    heave: float | numpy.typing.ArrayLike,
) -> float:
    """
    Change of the pull [N] on a string whose bit is on bottom, after a heave [m].
    """

def box_hull_heave(
    hull_length: float | numpy.typing.ArrayLike,
    hull_beam: float | numpy.typing.ArrayLike,
    hull_draft: float | numpy.typing.ArrayLike,
    heading: float | numpy.typing.ArrayLike,
    wave_period: float | numpy.typing.ArrayLike,
    *,
    outside_validity: str = "raise",
    return_status: bool = False,
    threads: typing.SupportsInt | typing.SupportsIndex = 1,
) -> typing.Any:
    """
    Heave over wave amplitude of a box-shaped hull.

    In SI: hull_length [m], hull_beam [m], hull_draft [m], heading [rad], wave_period [s]; gives [1].
    """

def cycle_exceedance(
    heave_deviation: float | numpy.typing.ArrayLike,
    half_stroke: float | numpy.typing.ArrayLike,
    *,
    outside_validity: str = "raise",
    return_status: bool = False,
    threads: typing.SupportsInt | typing.SupportsIndex = 1,
) -> typing.Any:
    """
    Probability that one cycle exceeds a half stroke.

    In SI: heave_deviation [m], half_stroke [m]; gives [1].
    """

def effective_area(
    piston_area: float | numpy.typing.ArrayLike,
    cylinders: float | numpy.typing.ArrayLike,
    travel_ratio: float | numpy.typing.ArrayLike,
    *,
    outside_validity: str = "raise",
    return_status: bool = False,
    threads: typing.SupportsInt | typing.SupportsIndex = 1,
) -> typing.Any:
    """
    Gas volume taken up per travel of the load.

    In SI: piston_area [m2], cylinders [1], travel_ratio [1]; gives [m2].
    """

def expected_maximum(
    heave_deviation: float | numpy.typing.ArrayLike,
    heave_cycles: float | numpy.typing.ArrayLike,
    *,
    outside_validity: str = "raise",
    return_status: bool = False,
    threads: typing.SupportsInt | typing.SupportsIndex = 1,
) -> typing.Any:
    """
    Mean largest amplitude.

    In SI: heave_deviation [m], heave_cycles [1]; gives [m].
    """

def gas_load(
    mean_load: float | numpy.typing.ArrayLike,
    effective_area: float | numpy.typing.ArrayLike,
    gas_volume: float | numpy.typing.ArrayLike,
    polytropic_exponent: float | numpy.typing.ArrayLike,
    spring_travel: float | numpy.typing.ArrayLike,
    *,
    outside_validity: str = "raise",
    return_status: bool = False,
    threads: typing.SupportsInt | typing.SupportsIndex = 1,
) -> typing.Any:
    """
    Load on a gas spring away from mid-stroke.

    In SI: mean_load [N], effective_area [m2], gas_volume [m3], polytropic_exponent [1], spring_travel [m]; gives [N].
    """

def gas_stiffness(
    mean_load: float | numpy.typing.ArrayLike,
    effective_area: float | numpy.typing.ArrayLike,
    gas_volume: float | numpy.typing.ArrayLike,
    polytropic_exponent: float | numpy.typing.ArrayLike,
    *,
    outside_validity: str = "raise",
    return_status: bool = False,
    threads: typing.SupportsInt | typing.SupportsIndex = 1,
) -> typing.Any:
    """
    Stiffness of a gas spring at mid-stroke.

    In SI: mean_load [N], effective_area [m2], gas_volume [m3], polytropic_exponent [1]; gives [N/m].
    """

def hanging_ratio(
    wave_period: float | numpy.typing.ArrayLike,
    natural_period: float | numpy.typing.ArrayLike,
    damping_ratio: float | numpy.typing.ArrayLike,
    *,
    outside_validity: str = "raise",
    return_status: bool = False,
    threads: typing.SupportsInt | typing.SupportsIndex = 1,
) -> typing.Any:
    """
    Motion of a hanging mass over heave of the vessel.

    In SI: wave_period [s], natural_period [s], damping_ratio [1]; gives [1].
    """

def hanging_stroke(
    heave_amplitude: float | numpy.typing.ArrayLike,
    gas_stiffness: float | numpy.typing.ArrayLike,
    hanging_mass: float | numpy.typing.ArrayLike,
    wave_period: float | numpy.typing.ArrayLike,
    seal_friction: float | numpy.typing.ArrayLike,
    *,
    outside_validity: str = "raise",
    return_status: bool = False,
    threads: typing.SupportsInt | typing.SupportsIndex = 1,
) -> typing.Any:
    """
    Stroke amplitude under a hanging mass, with seal friction.

    In SI: heave_amplitude [m], gas_stiffness [N/m], hanging_mass [kg], wave_period [s], seal_friction [N]; gives [m].
    """

def heave_acceleration(
    heave_height: float | numpy.typing.ArrayLike,
    heave_period: float | numpy.typing.ArrayLike,
    *,
    outside_validity: str = "raise",
    return_status: bool = False,
    threads: typing.SupportsInt | typing.SupportsIndex = 1,
) -> typing.Any:
    """
    Largest acceleration of a sine of heave.

    In SI: heave_height [m], heave_period [s]; gives [m/s2].
    """

def heave_cycles(
    duration: float | numpy.typing.ArrayLike,
    heave_period: float | numpy.typing.ArrayLike,
    *,
    outside_validity: str = "raise",
    return_status: bool = False,
    threads: typing.SupportsInt | typing.SupportsIndex = 1,
) -> typing.Any:
    """
    Cycles of heave in a duration.

    In SI: duration [s], heave_period [s]; gives [1].
    """

def heave_moments(
    significant_height: float | numpy.typing.ArrayLike,
    peak_period: float | numpy.typing.ArrayLike,
    peak_factor: float | numpy.typing.ArrayLike,
    response: HeaveOperator,
) -> tuple:
    """
    m0 [m2], m1 [m2/s], m2 [m2/s2] of heave, and the share of m0 outside the operator.
    """

def heave_speed(
    heave_height: float | numpy.typing.ArrayLike,
    heave_period: float | numpy.typing.ArrayLike,
    *,
    outside_validity: str = "raise",
    return_status: bool = False,
    threads: typing.SupportsInt | typing.SupportsIndex = 1,
) -> typing.Any:
    """
    Largest speed of a sine of heave.

    In SI: heave_height [m], heave_period [s]; gives [m/s].
    """

def jonswap(
    significant_height: float | numpy.typing.ArrayLike,
    peak_period: float | numpy.typing.ArrayLike,
    peak_factor: float | numpy.typing.ArrayLike,
    wave_frequency: float | numpy.typing.ArrayLike,
    *,
    outside_validity: str = "raise",
    return_status: bool = False,
    threads: typing.SupportsInt | typing.SupportsIndex = 1,
) -> typing.Any:
    """
    Spectrum of a growing sea.

    In SI: significant_height [m], peak_period [s], peak_factor [1], wave_frequency [rad/s]; gives [m2*s/rad].
    """

def jonswap_normalizer(
    peak_factor: float | numpy.typing.ArrayLike,
    *,
    outside_validity: str = "raise",
    return_status: bool = False,
    threads: typing.SupportsInt | typing.SupportsIndex = 1,
) -> typing.Any:
    """
    Normalizing factor of a JONSWAP sea.

    In SI: peak_factor [1]; gives [1].
    """

def mean_of_highest(
    heave_deviation: float | numpy.typing.ArrayLike,
    highest_share: float | numpy.typing.ArrayLike,
    *,
    outside_validity: str = "raise",
    return_status: bool = False,
    threads: typing.SupportsInt | typing.SupportsIndex = 1,
) -> typing.Any:
    """
    Mean amplitude of the highest share.

    In SI: heave_deviation [m], highest_share [1]; gives [m].
    """

def mean_period_ratio(
    peak_factor: float | numpy.typing.ArrayLike,
    *,
    outside_validity: str = "raise",
    return_status: bool = False,
    threads: typing.SupportsInt | typing.SupportsIndex = 1,
) -> typing.Any:
    """
    Mean over peak period.

    In SI: peak_factor [1]; gives [1].
    """

def most_probable_maximum(
    heave_deviation: float | numpy.typing.ArrayLike,
    heave_cycles: float | numpy.typing.ArrayLike,
    *,
    outside_validity: str = "raise",
    return_status: bool = False,
    threads: typing.SupportsInt | typing.SupportsIndex = 1,
) -> typing.Any:
    """
    Most probable largest amplitude.

    In SI: heave_deviation [m], heave_cycles [1]; gives [m].
    """

def natural_period(
    hanging_mass: float | numpy.typing.ArrayLike,
    gas_stiffness: float | numpy.typing.ArrayLike,
    *,
    outside_validity: str = "raise",
    return_status: bool = False,
    threads: typing.SupportsInt | typing.SupportsIndex = 1,
) -> typing.Any:
    """
    Natural period of a mass on the gas spring.

    In SI: hanging_mass [kg], gas_stiffness [N/m]; gives [s].
    """

def needed_gas_volume(
    effective_area: float | numpy.typing.ArrayLike,
    half_stroke: float | numpy.typing.ArrayLike,
    polytropic_exponent: float | numpy.typing.ArrayLike,
    load_rise: float | numpy.typing.ArrayLike,
    *,
    outside_validity: str = "raise",
    return_status: bool = False,
    threads: typing.SupportsInt | typing.SupportsIndex = 1,
) -> typing.Any:
    """
    Gas volume for an allowed rise of the load.

    In SI: effective_area [m2], half_stroke [m], polytropic_exponent [1], load_rise [1]; gives [m3].
    """

def operating_limit(
    response: HeaveOperator,
    peak_period: float | numpy.typing.ArrayLike,
    peak_factor: float | numpy.typing.ArrayLike | None,
    *,
    half_stroke: float | numpy.typing.ArrayLike,
    duration: float | numpy.typing.ArrayLike,
    exceedance: float | numpy.typing.ArrayLike,
) -> tuple:
    """
    Largest significant height [m], its peak factor, and what stopped the search.
    """

def peak_factor(
    significant_height: float | numpy.typing.ArrayLike,
    peak_period: float | numpy.typing.ArrayLike,
    *,
    outside_validity: str = "raise",
    return_status: bool = False,
    threads: typing.SupportsInt | typing.SupportsIndex = 1,
) -> typing.Any:
    """
    Peak factor of a sea by its steepness.

    In SI: significant_height [m], peak_period [s]; gives [1].
    """

def pierson_moskowitz(
    significant_height: float | numpy.typing.ArrayLike,
    peak_period: float | numpy.typing.ArrayLike,
    wave_frequency: float | numpy.typing.ArrayLike,
    *,
    outside_validity: str = "raise",
    return_status: bool = False,
    threads: typing.SupportsInt | typing.SupportsIndex = 1,
) -> typing.Any:
    """
    Spectrum of a fully developed sea.

    In SI: significant_height [m], peak_period [s], wave_frequency [rad/s]; gives [m2*s/rad].
    """

def steepest_height(
    peak_period: float | numpy.typing.ArrayLike,
    *,
    outside_validity: str = "raise",
    return_status: bool = False,
    threads: typing.SupportsInt | typing.SupportsIndex = 1,
) -> typing.Any:
    """
    Significant height of the steepest sea.

    In SI: peak_period [s]; gives [m].
    """

def stroke_exceedance(
    heave_deviation: float | numpy.typing.ArrayLike,
    half_stroke: float | numpy.typing.ArrayLike,
    heave_cycles: float | numpy.typing.ArrayLike,
    *,
    outside_validity: str = "raise",
    return_status: bool = False,
    threads: typing.SupportsInt | typing.SupportsIndex = 1,
) -> typing.Any:
    """
    Probability that some cycles exceed a half stroke.

    In SI: heave_deviation [m], half_stroke [m], heave_cycles [1]; gives [1].
    """

def swing_arm_roll(
    sheave_diameter: float | numpy.typing.ArrayLike,
    arm_length: float | numpy.typing.ArrayLike,
    crown_travel: float | numpy.typing.ArrayLike,
    *,
    outside_validity: str = "raise",
    return_status: bool = False,
    threads: typing.SupportsInt | typing.SupportsIndex = 1,
) -> typing.Any:
    """
    Rope rolled on a sheave on a swinging arm.

    In SI: sheave_diameter [m], arm_length [m], crown_travel [m]; gives [m].
    """

def table(name: str) -> list[dict]:
    """
    Rows of one of this subject's tables with source and standing of each value.
    """

def zero_crossing_ratio(
    peak_factor: float | numpy.typing.ArrayLike,
    *,
    outside_validity: str = "raise",
    return_status: bool = False,
    threads: typing.SupportsInt | typing.SupportsIndex = 1,
) -> typing.Any:
    """
    Zero-crossing over peak period.

    In SI: peak_factor [1]; gives [1].
    """
