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

#: Every role by its identifier, ``"angular_velocity"``.
ROLES = {
    role.name.replace(" ", "_"): role for role in list(globals().values()) if isinstance(role, Role)
}
