"""
Brakes of a hoist: torque, balance, heat, stops.
"""

from __future__ import annotations
import collections.abc
import numpy
import numpy.typing
import typing

__all__: list[str] = [
    "band_lever_tension",
    "band_mean_pressure",
    "band_pressure",
    "band_tension_ratio",
    "band_torque",
    "band_torque_reversed",
    "braking_power",
    "caliper_torque",
    "cooling_water_flow",
    "eddy_stable_speed",
    "eddy_torque",
    "eddy_unstable_speed",
    "elastic_stop",
    "friction_at",
    "friction_heat_flux",
    "heat_rise",
    "hoisting_deceleration",
    "holding_factor",
    "lowering_balance",
    "lowering_deceleration",
    "lowering_heat",
    "motor_brake_torque",
    "pad_radius_uniform_pressure",
    "pad_radius_uniform_wear",
    "required_factor",
    "required_factors",
    "rigid_stop",
    "spring_pad_force",
    "stop_tension_factor",
    "sudden_stop_factor",
    "surface_rise",
    "surface_rise_of_stop",
    "temperature_over_trip",
]

def band_lever_tension(
    brake_torque: float | numpy.typing.ArrayLike,
    lining_friction: float | numpy.typing.ArrayLike,
    wrap_angle: float | numpy.typing.ArrayLike,
    rim_diameter: float | numpy.typing.ArrayLike,
    bands: float | numpy.typing.ArrayLike,
    *,
    outside_validity: str = "raise",
    return_status: bool = False,
    threads: typing.SupportsInt | typing.SupportsIndex = 1,
) -> typing.Any:
    """
    Tension the lever puts into each band for a torque.

    In SI: brake_torque [N*m/rad], lining_friction [1], wrap_angle [rad], rim_diameter [m], bands [1]; gives [N].
    """

def band_mean_pressure(
    brake_torque: float | numpy.typing.ArrayLike,
    lining_friction: float | numpy.typing.ArrayLike,
    wrap_angle: float | numpy.typing.ArrayLike,
    band_width: float | numpy.typing.ArrayLike,
    rim_diameter: float | numpy.typing.ArrayLike,
    bands: float | numpy.typing.ArrayLike,
    *,
    outside_validity: str = "raise",
    return_status: bool = False,
    threads: typing.SupportsInt | typing.SupportsIndex = 1,
) -> typing.Any:
    """
    Mean pressure on the linings of band brakes.

    In SI: brake_torque [N*m/rad], lining_friction [1], wrap_angle [rad], band_width [m], rim_diameter [m], bands [1]; gives [Pa].
    """

def band_pressure(
    band_tension: float | numpy.typing.ArrayLike,
    band_width: float | numpy.typing.ArrayLike,
    rim_diameter: float | numpy.typing.ArrayLike,
    *,
    outside_validity: str = "raise",
    return_status: bool = False,
    threads: typing.SupportsInt | typing.SupportsIndex = 1,
) -> typing.Any:
    """
    Pressure of a band on its rim.

    In SI: band_tension [N], band_width [m], rim_diameter [m]; gives [Pa].
    """

def band_tension_ratio(
    lining_friction: float | numpy.typing.ArrayLike,
    wrap_angle: float | numpy.typing.ArrayLike,
    *,
    outside_validity: str = "raise",
    return_status: bool = False,
    threads: typing.SupportsInt | typing.SupportsIndex = 1,
) -> typing.Any:
    """
    Tension of the tight over the slack end of a band.

    In SI: lining_friction [1], wrap_angle [rad]; gives [1].
    """

def band_torque(
    lever_tension: float | numpy.typing.ArrayLike,
    lining_friction: float | numpy.typing.ArrayLike,
    wrap_angle: float | numpy.typing.ArrayLike,
    rim_diameter: float | numpy.typing.ArrayLike,
    bands: float | numpy.typing.ArrayLike,
    *,
    outside_validity: str = "raise",
    return_status: bool = False,
    threads: typing.SupportsInt | typing.SupportsIndex = 1,
) -> typing.Any:
    """
    Torque of band brakes that the rim helps.

    In SI: lever_tension [N], lining_friction [1], wrap_angle [rad], rim_diameter [m], bands [1]; gives [N*m/rad].
    """

def band_torque_reversed(
    lever_tension: float | numpy.typing.ArrayLike,
    lining_friction: float | numpy.typing.ArrayLike,
    wrap_angle: float | numpy.typing.ArrayLike,
    rim_diameter: float | numpy.typing.ArrayLike,
    bands: float | numpy.typing.ArrayLike,
    *,
    outside_validity: str = "raise",
    return_status: bool = False,
    threads: typing.SupportsInt | typing.SupportsIndex = 1,
) -> typing.Any:
    """
    Torque of band brakes the rim turns against.

    In SI: lever_tension [N], lining_friction [1], wrap_angle [rad], rim_diameter [m], bands [1]; gives [N*m/rad].
    """

def braking_power(
    brake_torque: float | numpy.typing.ArrayLike,
    drum_rotation: float | numpy.typing.ArrayLike,
    *,
    outside_validity: str = "raise",
    return_status: bool = False,
    threads: typing.SupportsInt | typing.SupportsIndex = 1,
) -> typing.Any:
    """
    Heat of a brake.

    In SI: brake_torque [N*m/rad], drum_rotation [rad/s]; gives [W].
    """

def caliper_torque(
    pad_force: float | numpy.typing.ArrayLike,
    lining_friction: float | numpy.typing.ArrayLike,
    pad_radius: float | numpy.typing.ArrayLike,
    calipers: float | numpy.typing.ArrayLike,
    *,
    outside_validity: str = "raise",
    return_status: bool = False,
    threads: typing.SupportsInt | typing.SupportsIndex = 1,
) -> typing.Any:
    """
    Torque of calipers.

    In SI: pad_force [N], lining_friction [1], pad_radius [m], calipers [1]; gives [N*m/rad].
    """

def cooling_water_flow(
    heat_power: float | numpy.typing.ArrayLike,
    water_density: float | numpy.typing.ArrayLike,
    specific_heat: float | numpy.typing.ArrayLike,
    temperature_rise: float | numpy.typing.ArrayLike,
    *,
    outside_validity: str = "raise",
    return_status: bool = False,
    threads: typing.SupportsInt | typing.SupportsIndex = 1,
) -> typing.Any:
    """
    Cooling water that carries a heat away.

    In SI: heat_power [W], water_density [kg/m3], specific_heat [J/kg/K], temperature_rise [K]; gives [m3/s].
    """

def eddy_stable_speed(
    peak_torque: float | numpy.typing.ArrayLike,
    critical_speed: float | numpy.typing.ArrayLike,
    load_torque: float | numpy.typing.ArrayLike,
    *,
    outside_validity: str = "raise",
    return_status: bool = False,
    threads: typing.SupportsInt | typing.SupportsIndex = 1,
) -> typing.Any:
    """
    Speed at which a load settles on an eddy-current brake.

    In SI: peak_torque [N*m/rad], critical_speed [rad/s], load_torque [N*m/rad]; gives [rad/s].
    """

def eddy_torque(
    peak_torque: float | numpy.typing.ArrayLike,
    critical_speed: float | numpy.typing.ArrayLike,
    drum_rotation: float | numpy.typing.ArrayLike,
    *,
    outside_validity: str = "raise",
    return_status: bool = False,
    threads: typing.SupportsInt | typing.SupportsIndex = 1,
) -> typing.Any:
    """
    Torque of an eddy-current brake.

    In SI: peak_torque [N*m/rad], critical_speed [rad/s], drum_rotation [rad/s]; gives [N*m/rad].
    """

def eddy_unstable_speed(
    peak_torque: float | numpy.typing.ArrayLike,
    critical_speed: float | numpy.typing.ArrayLike,
    load_torque: float | numpy.typing.ArrayLike,
    *,
    outside_validity: str = "raise",
    return_status: bool = False,
    threads: typing.SupportsInt | typing.SupportsIndex = 1,
) -> typing.Any:
    """
    Speed above which a load runs away.

    In SI: peak_torque [N*m/rad], critical_speed [rad/s], load_torque [N*m/rad]; gives [rad/s].
    """

def elastic_stop(
    direction: str,
    travel_speed: float | numpy.typing.ArrayLike,
    hook_load: float | numpy.typing.ArrayLike,
    drum_load: float | numpy.typing.ArrayLike,
    delay_force: float | numpy.typing.ArrayLike,
    brake_force: float | numpy.typing.ArrayLike,
    delay: float | numpy.typing.ArrayLike,
    build_up: float | numpy.typing.ArrayLike,
    rotating_mass: float | numpy.typing.ArrayLike,
    line_stiffness: float | numpy.typing.ArrayLike,
    damping_ratio: float | numpy.typing.ArrayLike,
    time_limit: float | numpy.typing.ArrayLike,
) -> dict:
    """
    A stop on an elastic line, with its course, in SI at the hook.
    """

def friction_at(
    temperatures: collections.abc.Sequence[typing.SupportsFloat | typing.SupportsIndex],
    frictions: collections.abc.Sequence[typing.SupportsFloat | typing.SupportsIndex],
    temperature: typing.SupportsFloat | typing.SupportsIndex,
) -> float:
    """
    Friction by a table over temperature [K].
    """

def friction_heat_flux(
    lining_friction: float | numpy.typing.ArrayLike,
    lining_pressure: float | numpy.typing.ArrayLike,
    sliding_speed: float | numpy.typing.ArrayLike,
    *,
    outside_validity: str = "raise",
    return_status: bool = False,
    threads: typing.SupportsInt | typing.SupportsIndex = 1,
) -> typing.Any:
    """
    Heat per rubbed area.

    In SI: lining_friction [1], lining_pressure [Pa], sliding_speed [m/s]; gives [W/m2].
    """

def heat_rise(
    heat: float | numpy.typing.ArrayLike,
    heated_mass: float | numpy.typing.ArrayLike,
    specific_heat: float | numpy.typing.ArrayLike,
    *,
    outside_validity: str = "raise",
    return_status: bool = False,
    threads: typing.SupportsInt | typing.SupportsIndex = 1,
) -> typing.Any:
    """
    Rise of temperature of a body.

    In SI: heat [J], heated_mass [kg], specific_heat [J/kg/K]; gives [K].
    """

def hoisting_deceleration(
    brake_torque: float | numpy.typing.ArrayLike,
    load_torque: float | numpy.typing.ArrayLike,
    lines: float | numpy.typing.ArrayLike,
    drum_radius: float | numpy.typing.ArrayLike,
    equivalent_mass: float | numpy.typing.ArrayLike,
    *,
    outside_validity: str = "raise",
    return_status: bool = False,
    threads: typing.SupportsInt | typing.SupportsIndex = 1,
) -> typing.Any:
    """
    Deceleration of a block that is hoisted.

    In SI: brake_torque [N*m/rad], load_torque [N*m/rad], lines [1], drum_radius [m], equivalent_mass [kg]; gives [m/s2].
    """

def holding_factor(
    brake_torque: float | numpy.typing.ArrayLike,
    load_torque: float | numpy.typing.ArrayLike,
    *,
    outside_validity: str = "raise",
    return_status: bool = False,
    threads: typing.SupportsInt | typing.SupportsIndex = 1,
) -> typing.Any:
    """
    Static torque of a brake over that of its load.

    In SI: brake_torque [N*m/rad], load_torque [N*m/rad]; gives [1].
    """

def lowering_balance(
    eddy_peak_torque: float | numpy.typing.ArrayLike,
    critical_speed: float | numpy.typing.ArrayLike,
    motor_torque_limit: float | numpy.typing.ArrayLike,
    motor_power_limit: float | numpy.typing.ArrayLike,
    friction_torque: float | numpy.typing.ArrayLike,
    load_torque: float | numpy.typing.ArrayLike,
) -> dict:
    """
    State, speeds [rad/s] with their stability, first stable and unstable speed of a load lowered on its brakes, and the largest load torque [N*m] they take.
    """

def lowering_deceleration(
    brake_torque: float | numpy.typing.ArrayLike,
    load_torque: float | numpy.typing.ArrayLike,
    lines: float | numpy.typing.ArrayLike,
    drum_radius: float | numpy.typing.ArrayLike,
    equivalent_mass: float | numpy.typing.ArrayLike,
    *,
    outside_validity: str = "raise",
    return_status: bool = False,
    threads: typing.SupportsInt | typing.SupportsIndex = 1,
) -> typing.Any:
    """
    Deceleration of a block that is lowered.

    In SI: brake_torque [N*m/rad], load_torque [N*m/rad], lines [1], drum_radius [m], equivalent_mass [kg]; gives [m/s2].
    """

def lowering_heat(
    hook_load: float | numpy.typing.ArrayLike,
    lowered_height: float | numpy.typing.ArrayLike,
    heat_share: float | numpy.typing.ArrayLike,
    *,
    outside_validity: str = "raise",
    return_status: bool = False,
    threads: typing.SupportsInt | typing.SupportsIndex = 1,
) -> typing.Any:
    """
    Heat of a load that is lowered.

    In SI: hook_load [N], lowered_height [m], heat_share [1]; gives [J].
    """

def motor_brake_torque(
    motor_torque_limit: float | numpy.typing.ArrayLike,
    motor_power_limit: float | numpy.typing.ArrayLike,
    drum_rotation: float | numpy.typing.ArrayLike,
    *,
    outside_validity: str = "raise",
    return_status: bool = False,
    threads: typing.SupportsInt | typing.SupportsIndex = 1,
) -> typing.Any:
    """
    Largest braking torque of a motor.

    In SI: motor_torque_limit [N*m/rad], motor_power_limit [W], drum_rotation [rad/s]; gives [N*m/rad].
    """

def pad_radius_uniform_pressure(
    pad_outer_radius: float | numpy.typing.ArrayLike,
    pad_inner_radius: float | numpy.typing.ArrayLike,
    *,
    outside_validity: str = "raise",
    return_status: bool = False,
    threads: typing.SupportsInt | typing.SupportsIndex = 1,
) -> typing.Any:
    """
    Radius at which a new pad acts.

    In SI: pad_outer_radius [m], pad_inner_radius [m]; gives [m].
    """

def pad_radius_uniform_wear(
    pad_outer_radius: float | numpy.typing.ArrayLike,
    pad_inner_radius: float | numpy.typing.ArrayLike,
    *,
    outside_validity: str = "raise",
    return_status: bool = False,
    threads: typing.SupportsInt | typing.SupportsIndex = 1,
) -> typing.Any:
    """
    Radius at which a worn-in pad acts.

    In SI: pad_outer_radius [m], pad_inner_radius [m]; gives [m].
    """

def required_factor(key: str) -> dict:
    """
    The holding factor of a key, with its source.
    """

def required_factors() -> list[dict]:
    """
    Every holding factor that is asked for, as required_factor() gives it.
    """

def rigid_stop(
    direction: str,
    travel_speed: float | numpy.typing.ArrayLike,
    hook_load: float | numpy.typing.ArrayLike,
    drum_load: float | numpy.typing.ArrayLike,
    delay_force: float | numpy.typing.ArrayLike,
    brake_force: float | numpy.typing.ArrayLike,
    delay: float | numpy.typing.ArrayLike,
    build_up: float | numpy.typing.ArrayLike,
    rotating_mass: float | numpy.typing.ArrayLike,
) -> dict:
    """
    A stop on a line that does not stretch, in SI at the hook.
    """

def spring_pad_force(
    spring_force: float | numpy.typing.ArrayLike,
    spring_rate: float | numpy.typing.ArrayLike,
    pad_wear: float | numpy.typing.ArrayLike,
    release_pressure: float | numpy.typing.ArrayLike,
    release_area: float | numpy.typing.ArrayLike,
    *,
    outside_validity: str = "raise",
    return_status: bool = False,
    threads: typing.SupportsInt | typing.SupportsIndex = 1,
) -> typing.Any:
    """
    Force of a pad pressed on by springs.

    In SI: spring_force [N], spring_rate [N/m], pad_wear [m], release_pressure [Pa], release_area [m2]; gives [N].
    """

def stop_tension_factor(
    travel_speed: float | numpy.typing.ArrayLike,
    deceleration: float | numpy.typing.ArrayLike,
    line_stiffness: float | numpy.typing.ArrayLike,
    hook_load: float | numpy.typing.ArrayLike,
    *,
    outside_validity: str = "raise",
    return_status: bool = False,
    threads: typing.SupportsInt | typing.SupportsIndex = 1,
) -> typing.Any:
    """
    Largest over static tension when the drum is braked evenly.

    In SI: travel_speed [m/s], deceleration [m/s2], line_stiffness [N/m], hook_load [N]; gives [1].
    """

def sudden_stop_factor(
    travel_speed: float | numpy.typing.ArrayLike,
    line_stiffness: float | numpy.typing.ArrayLike,
    hook_load: float | numpy.typing.ArrayLike,
    *,
    outside_validity: str = "raise",
    return_status: bool = False,
    threads: typing.SupportsInt | typing.SupportsIndex = 1,
) -> typing.Any:
    """
    Largest over static tension when the drum stops dead.

    In SI: travel_speed [m/s], line_stiffness [N/m], hook_load [N]; gives [1].
    """

def surface_rise(
    heat_flux: float | numpy.typing.ArrayLike,
    braking_time: float | numpy.typing.ArrayLike,
    conductivity: float | numpy.typing.ArrayLike,
    solid_density: float | numpy.typing.ArrayLike,
    specific_heat: float | numpy.typing.ArrayLike,
    conducting_depth: float | numpy.typing.ArrayLike,
    *,
    outside_validity: str = "raise",
    return_status: bool = False,
    threads: typing.SupportsInt | typing.SupportsIndex = 1,
) -> typing.Any:
    """
    Rise of a surface under a constant heat flux.

    In SI: heat_flux [W/m2], braking_time [s], conductivity [W/m/K], solid_density [kg/m3], specific_heat [J/kg/K], conducting_depth [m]; gives [K].
    """

def surface_rise_of_stop(
    heat_flux: float | numpy.typing.ArrayLike,
    braking_time: float | numpy.typing.ArrayLike,
    conductivity: float | numpy.typing.ArrayLike,
    solid_density: float | numpy.typing.ArrayLike,
    specific_heat: float | numpy.typing.ArrayLike,
    conducting_depth: float | numpy.typing.ArrayLike,
    *,
    outside_validity: str = "raise",
    return_status: bool = False,
    threads: typing.SupportsInt | typing.SupportsIndex = 1,
) -> typing.Any:
    """
    Largest rise of a surface during a stop.

    In SI: heat_flux [W/m2], braking_time [s], conductivity [W/m/K], solid_density [kg/m3], specific_heat [J/kg/K], conducting_depth [m]; gives [K].
    """

def temperature_over_trip(
    heated_mass: float | numpy.typing.ArrayLike,
    specific_heat: float | numpy.typing.ArrayLike,
    heat_loss: float | numpy.typing.ArrayLike,
    first_rise: float | numpy.typing.ArrayLike,
    heat: float | numpy.typing.ArrayLike,
    lowering_time: float | numpy.typing.ArrayLike,
    rest_time: float | numpy.typing.ArrayLike,
) -> tuple[numpy.typing.NDArray[numpy.float64], numpy.typing.NDArray[numpy.float64]]:
    """
    Rise of temperature [K] when each stand is down, and when its rest is over.
    """
