"""The roles: every kind of quantity that crosses the border."""

from __future__ import annotations

from ropewalk._signature.records import Role

NUMBER = Role("number", "", (0, 0, 0, 0), "", "a number")
COUNT = Role("count", "", (0, 0, 0, 0), "", "a whole number")
LENGTH = Role("length", "m", (1, 0, 0, 0), "in", "a length")
AREA = Role("area", "m**2", (2, 0, 0, 0), "in**2", "an area")
VOLUME = Role("volume", "m**3", (3, 0, 0, 0), "ft**3", "a volume")
MASS = Role("mass", "kg", (0, 1, 0, 0), "lb", "a mass")
TIME = Role("time", "s", (0, 0, 1, 0), "min", "a time")
SPEED = Role("speed", "m/s", (1, 0, -1, 0), "ft/min", "a speed")
ACCELERATION = Role("acceleration", "m/s**2", (1, 0, -2, 0), "ft/s**2", "an acceleration")
FORCE = Role("force", "N", (1, 1, -2, 0), "lbf", "a force")
STRESS = Role("stress", "Pa", (-1, 1, -2, 0), "psi", "a stress")
ENERGY = Role("energy", "J", (2, 1, -2, 0), "ton_mile", "an energy")
POWER = Role("power", "W", (2, 1, -3, 0), "hp", "a power")
DENSITY = Role("density", "kg/m**3", (-3, 1, 0, 0), "ppg", "a density")
ANGLE = Role("angle", "rad", (0, 0, 0, 1), "deg", "an angle")
ANGULAR_VELOCITY = Role("angular velocity", "rad/s", (0, 0, -1, 1), "rpm", "an angular velocity")
FREQUENCY = Role("frequency", "Hz", (0, 0, -1, 0), "1/min", "a frequency")
TORQUE = Role("torque", "N*m", (2, 1, -2, -1), "ft*lbf", "a torque")
MOMENT_OF_INERTIA = Role(
    "moment of inertia", "kg*m**2", (2, 1, 0, -2), "lb*ft**2", "a moment of inertia"
)
FORCE_PER_LENGTH = Role("force per length", "N/m", (0, 1, -2, 0), "lbf/ft", "a force per length")
MASS_PER_LENGTH = Role("mass per length", "kg/m", (-1, 1, 0, 0), "lb/ft", "a mass per length")
SPECTRAL_DENSITY = Role(
    "spectral density", "m**2*s/rad", (2, 0, 1, -1), "m**2*s/rad", "a spectral density"
)
DAMPING = Role("damping", "N*s/m", (0, 1, -1, 0), "lbf*s/in", "a damping")

# Heat. A temperature is a difference: readings in °C and °F have a zero of their own.
TEMPERATURE = Role("temperature", "K", (0, 0, 0, 0), "delta_degC", "a temperature difference", 1)
VOLUME_FLOW = Role("volume flow", "m**3/s", (3, 0, -1, 0), "gallon/min", "a volume flow")
HEAT_FLUX = Role("heat flux", "W/m**2", (0, 1, -3, 0), "W/m**2", "a heat flux")
SPECIFIC_HEAT = Role("specific heat", "J/kg/K", (2, 0, -2, 0), "J/kg/K", "a specific heat", -1)
CONDUCTIVITY = Role("conductivity", "W/m/K", (1, 1, -3, 0), "W/m/K", "a conductivity", -1)
HEAT_LOSS = Role("heat loss", "W/K", (2, 1, -3, 0), "W/K", "a heat loss", -1)

#: Every role by its identifier, ``"angular_velocity"``.
ROLES = {
    role.name.replace(" ", "_"): role for role in list(globals().values()) if isinstance(role, Role)
}
