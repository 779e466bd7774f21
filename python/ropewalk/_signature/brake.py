"""Arguments and signatures of the subject `brake`."""

from __future__ import annotations

from ropewalk._signature.records import Parameter, Signature
from ropewalk._signature.roles import (
    ACCELERATION,
    ANGULAR_VELOCITY,
    AREA,
    CONDUCTIVITY,
    COUNT,
    DENSITY,
    ENERGY,
    FORCE,
    FORCE_PER_LENGTH,
    HEAT_FLUX,
    HEAT_LOSS,
    LENGTH,
    MASS,
    NUMBER,
    POWER,
    SPECIFIC_HEAT,
    SPEED,
    STRESS,
    TEMPERATURE,
    TIME,
    TORQUE,
    VOLUME_FLOW,
)

PARAMETERS: dict[str, Parameter] = {
    # At the drum shaft
    "brake_torque": Parameter(TORQUE, "kN*m", "Torque of the brakes at the drum shaft.", 150.0),
    "load_torque": Parameter(
        TORQUE, "kN*m", "Torque of the load: fast-line tension times rope radius.", 60.0
    ),
    "drum_rotation": Parameter(ANGULAR_VELOCITY, "rpm", "Speed of the drum shaft.", 50.0),
    "drum_radius": Parameter(
        LENGTH, "mm", "Radius of the middle of the rope on the drum, by layer.", 500.0
    ),
    "lining_friction": Parameter(NUMBER, "", "Friction of the lining, hot or wet as it is.", 0.35),
    # Band brake
    "lever_tension": Parameter(FORCE, "kN", "Tension in each band where the lever pulls.", 25.25),
    "band_tension": Parameter(FORCE, "kN", "Tension in a band.", 139.65),
    "rim_diameter": Parameter(LENGTH, "m", "Diameter of the brake rim.", 1.18),
    "band_width": Parameter(LENGTH, "mm", "Width of the lining of a band.", 250.0),
    "bands": Parameter(COUNT, "", "Number of bands on the drum.", 2),
    # Disc brake
    "pad_force": Parameter(FORCE, "kN", "Force of one pad on the disc.", 75.0),
    "pad_radius": Parameter(LENGTH, "m", "Radius at which the friction of a pad acts.", 0.7),
    "pad_outer_radius": Parameter(LENGTH, "m", "Outer radius of the pads.", 0.8),
    "pad_inner_radius": Parameter(LENGTH, "m", "Inner radius of the pads.", 0.6),
    "calipers": Parameter(COUNT, "", "Number of calipers that act, two pads each.", 8),
    "spring_force": Parameter(FORCE, "kN", "Force of the springs as the caliper was set.", 80.0),
    "pad_wear": Parameter(LENGTH, "mm", "Lining lost since the caliper was set.", 2.0),
    "release_pressure": Parameter(STRESS, "MPa", "Pressure of the oil against the springs.", 1.0),
    "release_area": Parameter(AREA, "mm**2", "Area of the piston that releases.", 8000.0),
    # Auxiliary brakes
    "peak_torque": Parameter(TORQUE, "kN*m", "Largest torque of the eddy-current brake.", 100.0),
    "critical_speed": Parameter(
        ANGULAR_VELOCITY, "rpm", "Speed at which the eddy-current brake has its peak.", 50.0
    ),
    "motor_torque_limit": Parameter(TORQUE, "kN*m", "Largest braking torque of the motors.", 60.0),
    "motor_power_limit": Parameter(POWER, "kW", "Power the motors can give back or burn.", 200.0),
    # Heat
    "lowered_height": Parameter(LENGTH, "m", "Height the load is lowered.", 27.4),
    "heat_share": Parameter(NUMBER, "", "Share of the heat that is asked for.", 1.0),
    "heat": Parameter(ENERGY, "MJ", "Heat that goes into the body.", 53.76),
    "heated_mass": Parameter(MASS, "kg", "Mass of the discs or rims that take the heat.", 3000.0),
    "specific_heat": Parameter(SPECIFIC_HEAT, "J/kg/K", "Specific heat of the material.", 500.0),
    "conductivity": Parameter(CONDUCTIVITY, "W/m/K", "Conductivity of disc or rim.", 50.0),
    "conducting_depth": Parameter(
        LENGTH, "mm", "From the heated surface to where no heat flows: half of a disc.", 38.0
    ),
    "solid_density": Parameter(DENSITY, "kg/m**3", "Density of disc or rim.", 7850.0),
    "heat_flux": Parameter(HEAT_FLUX, "MW/m**2", "Heat into the surface per area and time.", 5.0),
    "braking_time": Parameter(TIME, "s", "Time of braking.", 3.0),
    "lining_pressure": Parameter(STRESS, "MPa", "Pressure under the lining.", 0.5),
    "sliding_speed": Parameter(SPEED, "m/s", "Speed of rim or disc under the lining.", 10.0),
    "heat_power": Parameter(POWER, "MW", "Heat per time that the water takes.", 1.0),
    "water_density": Parameter(DENSITY, "kg/m**3", "Density of the cooling water.", 1000.0),
    "temperature_rise": Parameter(TEMPERATURE, "K", "Rise of temperature of the water.", 20.0),
    "heat_loss": Parameter(
        HEAT_LOSS, "W/K", "Heat given off per time and kelvin above the surroundings.", 500.0
    ),
    # Stops
    "travel_speed": Parameter(SPEED, "m/s", "Speed of the block, the way it moves.", 1.5),
    "equivalent_mass": Parameter(
        MASS, "tonne", "Load and all that turns, as one mass at the hook.", 3660.0
    ),
    "line_stiffness": Parameter(
        FORCE_PER_LENGTH, "kN/m", "Stiffness of the strung line at the hook.", 21720.0
    ),
    "deceleration": Parameter(ACCELERATION, "m/s**2", "Deceleration, the brake on.", 1.0),
}

_BAND = ("lining_friction", "wrap_angle", "rim_diameter", "bands")
_SURFACE = (
    "heat_flux",
    "braking_time",
    "conductivity",
    "solid_density",
    "specific_heat",
    "conducting_depth",
)
_EDDY = ("peak_torque", "critical_speed")
_STOP = ("brake_torque", "load_torque", "lines", "drum_radius", "equivalent_mass")

SIGNATURES: dict[str, Signature] = {
    "brake.band_tension_ratio": Signature(
        ("lining_friction", "wrap_angle"), NUMBER, "Tension of the tight over the slack end."
    ),
    "brake.band_torque": Signature(
        ("lever_tension", *_BAND), TORQUE, "Torque of all bands, the rim helping."
    ),
    "brake.band_torque_reversed": Signature(
        ("lever_tension", *_BAND), TORQUE, "Torque of all bands, the rim turning the other way."
    ),
    "brake.band_lever_tension": Signature(
        ("brake_torque", *_BAND), FORCE, "Tension the lever puts into each band."
    ),
    "brake.band_pressure": Signature(
        ("band_tension", "band_width", "rim_diameter"), STRESS, "Pressure on the rim there."
    ),
    "brake.band_mean_pressure": Signature(
        ("brake_torque", "lining_friction", "wrap_angle", "band_width", "rim_diameter", "bands"),
        STRESS,
        "Mean pressure on the linings.",
    ),
    "brake.pad_radius_uniform_wear": Signature(
        ("pad_outer_radius", "pad_inner_radius"), LENGTH, "Radius at which a worn-in pad acts."
    ),
    "brake.pad_radius_uniform_pressure": Signature(
        ("pad_outer_radius", "pad_inner_radius"), LENGTH, "Radius at which a new pad acts."
    ),
    "brake.caliper_torque": Signature(
        ("pad_force", "lining_friction", "pad_radius", "calipers"), TORQUE, "Torque of them all."
    ),
    "brake.spring_pad_force": Signature(
        ("spring_force", "spring_rate", "pad_wear", "release_pressure", "release_area"),
        FORCE,
        "Force of one pad on the disc; 0 if it is held off.",
        {"spring_rate": 14_000.0},
    ),
    "brake.eddy_torque": Signature((*_EDDY, "drum_rotation"), TORQUE, "Torque of the brake."),
    "brake.eddy_stable_speed": Signature(
        (*_EDDY, "load_torque"), ANGULAR_VELOCITY, "Speed at which the load settles."
    ),
    "brake.eddy_unstable_speed": Signature(
        (*_EDDY, "load_torque"), ANGULAR_VELOCITY, "Speed above which the load runs away."
    ),
    "brake.motor_brake_torque": Signature(
        ("motor_torque_limit", "motor_power_limit", "drum_rotation"),
        TORQUE,
        "Largest braking torque of the motors at the drum shaft.",
    ),
    "brake.braking_power": Signature(
        ("brake_torque", "drum_rotation"), POWER, "Heat made, or power handed back."
    ),
    "brake.holding_factor": Signature(
        ("brake_torque", "load_torque"), NUMBER, "Torque of the brake over that of the load."
    ),
    "brake.lowering_heat": Signature(
        ("hook_load", "lowered_height", "heat_share"), ENERGY, "Heat that is asked for."
    ),
    "brake.heat_rise": Signature(
        ("heat", "heated_mass", "specific_heat"), TEMPERATURE, "Rise of temperature."
    ),
    "brake.friction_heat_flux": Signature(
        ("lining_friction", "lining_pressure", "sliding_speed"),
        HEAT_FLUX,
        "Heat made per rubbed area and time.",
    ),
    "brake.surface_rise": Signature(_SURFACE, TEMPERATURE, "Rise of the surface."),
    "brake.surface_rise_of_stop": Signature(_SURFACE, TEMPERATURE, "Largest rise of the surface."),
    "brake.cooling_water_flow": Signature(
        ("heat_power", "water_density", "specific_heat", "temperature_rise"),
        VOLUME_FLOW,
        "Water through the brake.",
        {"specific_heat": 4186.0},
    ),
    "brake.lowering_deceleration": Signature(
        _STOP, ACCELERATION, "Deceleration of the block; negative if the load gains speed."
    ),
    "brake.hoisting_deceleration": Signature(_STOP, ACCELERATION, "Deceleration of the block."),
    "brake.sudden_stop_factor": Signature(
        ("travel_speed", "line_stiffness", "hook_load"), NUMBER, "Largest over static tension."
    ),
    "brake.stop_tension_factor": Signature(
        ("travel_speed", "deceleration", "line_stiffness", "hook_load"),
        NUMBER,
        "Largest over static tension.",
    ),
}
