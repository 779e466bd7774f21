"""Arguments and signatures of the subject `compensator`."""

from __future__ import annotations

from ropewalk._signature.records import Parameter, Signature
from ropewalk._signature.roles import (
    ACCELERATION,
    ANGLE,
    ANGULAR_VELOCITY,
    AREA,
    COUNT,
    ENERGY,
    FORCE,
    FORCE_PER_LENGTH,
    LENGTH,
    MASS,
    NUMBER,
    POWER,
    SPECTRAL_DENSITY,
    SPEED,
    TIME,
    VOLUME,
)

PARAMETERS: dict[str, Parameter] = {
    # The gas spring
    "mean_load": Parameter(FORCE, "lbf", "Load carried at mid-stroke.", 400_000.0),
    "piston_area": Parameter(
        AREA, "in**2", "Area of one piston, less its rod on a side under gas.", 150.0
    ),
    "cylinders": Parameter(COUNT, "", "Number of cylinders that carry the load together.", 2),
    "travel_ratio": Parameter(NUMBER, "", "Travel of the load over travel of the rods.", 2.0),
    "effective_area": Parameter(
        AREA, "in**2", "Gas volume taken up per travel of the load, see `effective_area`.", 150.0
    ),
    "gas_volume": Parameter(
        VOLUME, "m**3", "Gas in cylinders, bottles and pipes at mid-stroke.", 6.0
    ),
    "polytropic_exponent": Parameter(
        NUMBER, "", "Exponent n of p V^n = constant: 1 slow, 1.4 fast for an ideal gas.", 1.2
    ),
    "spring_travel": Parameter(
        LENGTH,
        "ft",
        "Travel of the load against the vessel from mid-stroke, positive where gas is compressed.",
        9.0,
    ),
    "half_stroke": Parameter(
        LENGTH, "ft", "Stroke left from the mean position in the shorter direction.", 12.5
    ),
    "load_rise": Parameter(NUMBER, "", "Allowed rise over the load at mid-stroke.", 0.05),
    "seal_friction": Parameter(FORCE, "lbf", "Friction of seals and chains, each way.", 8_000.0),
    "arm_length": Parameter(LENGTH, "ft", "Length of the arm from pivot to pivot.", 20.0),
    "crown_travel": Parameter(
        LENGTH, "ft", "Travel of the end of the arm from one end to the other.", 25.0
    ),
    # What hangs on it
    "gas_stiffness": Parameter(FORCE_PER_LENGTH, "kN/m", "Stiffness of the gas spring.", 40.0),
    "string_stiffness": Parameter(FORCE_PER_LENGTH, "kN/m", "Stiffness of the string.", 235.0),
    "hanging_mass": Parameter(
        MASS, "kg", "Mass of string and hook, and of the fluid that goes along.", 180_000.0
    ),
    "natural_period": Parameter(TIME, "s", "Natural period of the mass on the spring.", 13.3),
    # Motions
    "wave_period": Parameter(TIME, "s", "Period of one wave.", 9.0),
    "heave_period": Parameter(TIME, "s", "Period of heave; zero-crossing in a random sea.", 9.0),
    "heave_amplitude": Parameter(LENGTH, "m", "Amplitude of heave, half of its height.", 1.5),
    "heave_height": Parameter(LENGTH, "m", "Height of heave from crest to trough.", 3.0),
    "heave_deviation": Parameter(LENGTH, "m", "Standard deviation of heave, √m₀.", 0.75),
    "heave_cycles": Parameter(NUMBER, "", "Cycles of heave.", 1_200.0),
    "duration": Parameter(TIME, "hour", "How long it lasts.", 3.0),
    "exceedance": Parameter(
        NUMBER, "", "Probability that the stroke is exceeded at least once.", 0.01
    ),
    "turning_mass": Parameter(
        MASS, "kg", "Drum, gears, motors and sheaves, as a mass at the hook.", 1_000_000.0
    ),
    "highest_share": Parameter(NUMBER, "", "Share of all cycles, the highest ones.", 0.1),
    # Sea and vessel
    "significant_height": Parameter(LENGTH, "m", "Significant wave height.", 4.0),
    "peak_period": Parameter(TIME, "s", "Period at the peak of the wave spectrum.", 11.0),
    "peak_factor": Parameter(
        NUMBER, "", "Height of the peak over that of Pierson–Moskowitz; 1 is that.", 3.3
    ),
    "wave_frequency": Parameter(ANGULAR_VELOCITY, "rad/s", "Angular frequency of waves.", 0.57),
    "hull_length": Parameter(LENGTH, "m", "Length of the hull.", 200.0),
    "hull_beam": Parameter(LENGTH, "m", "Beam of the hull.", 36.0),
    "hull_draft": Parameter(LENGTH, "m", "Draft of the box, its block coefficient being 1.", 10.0),
    "heading": Parameter(ANGLE, "deg", "Waves against the bow: 180 head, 90 beam seas.", 180.0),
}

_GAS = ("mean_load", "effective_area", "gas_volume", "polytropic_exponent")
_SEA = ("significant_height", "peak_period")
_HEAVE = ("heave_height", "heave_period")

SIGNATURES: dict[str, Signature] = {
    "compensator.effective_area": Signature(
        ("piston_area", "cylinders", "travel_ratio"), AREA, "Gas volume taken up per travel."
    ),
    "compensator.gas_load": Signature((*_GAS, "spring_travel"), FORCE, "Load without friction."),
    "compensator.gas_stiffness": Signature(_GAS, FORCE_PER_LENGTH, "Stiffness at mid-stroke."),
    "compensator.needed_gas_volume": Signature(
        ("effective_area", "half_stroke", "polytropic_exponent", "load_rise"),
        VOLUME,
        "Gas volume at mid-stroke.",
    ),
    "compensator.swing_arm_roll": Signature(
        ("sheave_diameter", "arm_length", "crown_travel"), LENGTH, "Rope rolled on the sheave."
    ),
    "compensator.natural_period": Signature(
        ("hanging_mass", "gas_stiffness"), TIME, "Natural period of the hanging string."
    ),
    "compensator.hanging_ratio": Signature(
        ("wave_period", "natural_period", "damping_ratio"),
        NUMBER,
        "Motion of the load over heave of the vessel.",
    ),
    "compensator.hanging_stroke": Signature(
        ("heave_amplitude", "gas_stiffness", "hanging_mass", "wave_period", "seal_friction"),
        LENGTH,
        "Amplitude of the stroke; 0 where the seals hold.",
    ),
    "compensator.pierson_moskowitz": Signature(
        (*_SEA, "wave_frequency"), SPECTRAL_DENSITY, "Density over angular frequency, one-sided."
    ),
    "compensator.jonswap_normalizer": Signature(
        ("peak_factor",), NUMBER, "What the raised spectrum is multiplied by."
    ),
    "compensator.jonswap": Signature(
        (*_SEA, "peak_factor", "wave_frequency"),
        SPECTRAL_DENSITY,
        "Density over angular frequency, one-sided.",
    ),
    "compensator.peak_factor": Signature(_SEA, NUMBER, "Peak factor, from 1 to 5."),
    "compensator.zero_crossing_ratio": Signature(
        ("peak_factor",), NUMBER, "Zero-crossing over peak period."
    ),
    "compensator.mean_period_ratio": Signature(("peak_factor",), NUMBER, "Mean over peak period."),
    "compensator.steepest_height": Signature(
        ("peak_period",), LENGTH, "Significant height of the steepest sea."
    ),
    "compensator.box_hull_heave": Signature(
        ("hull_length", "hull_beam", "hull_draft", "heading", "wave_period"),
        NUMBER,
        "Heave amplitude over wave amplitude.",
    ),
    "compensator.heave_cycles": Signature(
        ("duration", "heave_period"), NUMBER, "Cycles in the duration."
    ),
    "compensator.cycle_exceedance": Signature(
        ("heave_deviation", "half_stroke"), NUMBER, "Probability for one cycle."
    ),
    "compensator.stroke_exceedance": Signature(
        ("heave_deviation", "half_stroke", "heave_cycles"),
        NUMBER,
        "Probability of at least one exceedance.",
    ),
    "compensator.allowed_heave_deviation": Signature(
        ("half_stroke", "exceedance", "heave_cycles"), LENGTH, "Standard deviation of heave."
    ),
    "compensator.most_probable_maximum": Signature(
        ("heave_deviation", "heave_cycles"), LENGTH, "Amplitude."
    ),
    "compensator.expected_maximum": Signature(
        ("heave_deviation", "heave_cycles"), LENGTH, "Amplitude."
    ),
    "compensator.mean_of_highest": Signature(
        ("heave_deviation", "highest_share"), LENGTH, "Mean amplitude of that share."
    ),
    "compensator.heave_speed": Signature(_HEAVE, SPEED, "Largest speed of the block."),
    "compensator.heave_acceleration": Signature(
        _HEAVE, ACCELERATION, "Largest acceleration of the block."
    ),
    "compensator.active_line_speed": Signature(
        ("lines", *_HEAVE), SPEED, "Largest speed of the line at the drum."
    ),
    "compensator.active_power": Signature(
        ("hook_load", *_HEAVE, "reeving_efficiency"), POWER, "Largest power at the drum."
    ),
    "compensator.active_power_with_inertia": Signature(
        ("hook_load", *_HEAVE, "reeving_efficiency", "turning_mass"),
        POWER,
        "Largest power at the drum.",
    ),
    "compensator.active_work": Signature(
        ("hook_load", "heave_height", "heave_cycles"), ENERGY, "Work of the line, both ways."
    ),
}
