"""Conversion factors: what a unit is worth in the SI unit of a role, or why it is refused.

Every unit is asked of the registry its quantity belongs to, so that a foreign registry is converted
by its own definitions. Angle is told apart although pint calls it dimensionless: the radian stays
in the root units, and its exponent is held against the role like the exponents of length, mass and
time.
"""

from __future__ import annotations

import threading
from typing import Any

from ropewalk._numbers import RefusedError
from ropewalk._signature.records import Role
from ropewalk._signature.roles import (
    ANGLE,
    ANGULAR_VELOCITY,
    ENERGY,
    FORCE,
    FORCE_PER_LENGTH,
    FREQUENCY,
    MASS,
    MASS_PER_LENGTH,
    MOMENT_OF_INERTIA,
    NUMBER,
    POWER,
    ROLES,
    TORQUE,
)
from ropewalk._units import TONS, Quantity

#: Exponents of length, mass, time, angle and temperature; pint allows fractions.
Exponents = tuple[float, float, float, float, float]


#: pint builds these on the US survey foot, 2 parts in a million longer than the foot.
_SURVEY = {"link", "chain", "rod", "furlong", "fathom", "league", "acre", "acre_foot"}
_TONS = {f"{prefix}ton" for prefix in ("", "deca", "hecto", "kilo", "mega", "giga", "milli")}

_PHRASES: dict[Exponents, str] = {
    role.exponents: role.phrase for role in reversed(list(ROLES.values()))
}
_PHRASES[NUMBER.exponents] = "a number without a unit"
#: kg·m² is written for the moment of inertia kg·m²/rad² everywhere; nothing else has its dimension.
_INERTIA = (*MOMENT_OF_INERTIA.dimensions[:3], 0, 0)
_PHRASES[_INERTIA] = MOMENT_OF_INERTIA.phrase

_WEIGHTS = {"pound": "lbf", "kilogram": "kgf", "metric_ton": "tonne_force", "gram": "gf"}
_MASSES = {"force_pound": "lb", "kip": "lb", "force_kilogram": "kg", "force_metric_ton": "tonne"}

#: (role, exponents given) → what to write instead.
_ADVICE: dict[tuple[Role, Exponents], str] = {
    (TORQUE, ENERGY.exponents): 'write a torque as a force times a length, e.g. "ft*lbf" or "N*m"',
    (ANGULAR_VELOCITY, FREQUENCY.exponents): "a rotation is written in rpm or rad/s",
    (FREQUENCY, ANGULAR_VELOCITY.exponents): "a frequency is written in Hz or 1/min",
    (NUMBER, ANGLE.exponents): "an angle is not a ratio",
}

# pint fills its own caches while it converts, without a lock.
_pint_lock = threading.RLock()


def find_factor(quantity: Quantity, role: Role) -> float:
    """Factor that brings the magnitude of `quantity` to ``role.si_unit``.

    Raises
    ------
    RefusedError
        If the unit does not belong to the role.
    """
    with _pint_lock:
        one = quantity.__class__(1, quantity.units)
        _refuse_names(one)
        try:
            root = one.to_root_units()
            zero = float(quantity.__class__(0, quantity.units).to_root_units().magnitude)
        except Exception as reason:  # pint has no common class for what can go wrong here
            raise RefusedError(f"a unit pint cannot convert: {reason}") from reason
        if zero != 0.0:
            raise RefusedError(
                "a reading on a scale with its own zero",
                "no argument takes one, write a plain unit",
            )
        exponents = _exponents(one, root)
        if not _fits(one, exponents, role):
            raise RefusedError(_kind(one, exponents), _advice(one, exponents, role))
        try:
            factor = float(one.to(role.si_unit or "dimensionless").magnitude)
        except Exception as reason:
            raise RefusedError(f"a unit its registry cannot bring to {role.si_unit}") from reason
    return _without_noise(factor)


def unit_text(quantity: Quantity) -> str:
    """Short name of the unit, ``"lbf/ft"``."""
    return f"{quantity.units:~C}"


def _refuse_names(one: Quantity) -> None:
    for name, _ in one.unit_items():
        if name in _TONS:
            raise RefusedError(
                "pint's ton, a mass of 2000 lb, and its name for short_ton too", TONS
            )
        if name in _SURVEY or "survey" in name:
            raise RefusedError("a unit of the US survey foot", "write international ft or mile")


def _exponents(one: Quantity, root: Quantity) -> Exponents:
    """Exponents of the unit, the radian counted as a dimension of its own."""
    dimensions: dict[str, Any] = dict(one.dimensionality)
    length, mass, time, temperature = (
        float(dimensions.pop(f"[{name}]", 0)) for name in ("length", "mass", "time", "temperature")
    )
    roots: dict[str, Any] = dict(root.unit_items())
    angle = float(roots.pop("radian", 0))
    plain = one.__class__
    other = [name for name in roots if not plain(1, name).dimensionality]
    if dimensions or other:  # current …, or a base unit such as bit or count
        raise RefusedError(f"of the dimension {' '.join([*dimensions, *other])}")
    return length, mass, time, angle, temperature


def _fits(one: Quantity, exponents: Exponents, role: Role) -> bool:
    if role is MOMENT_OF_INERTIA:
        return exponents in (MOMENT_OF_INERTIA.exponents, _INERTIA)
    if role is not TORQUE:
        return exponents == role.exponents
    # N·m is written for the torque N·m/rad everywhere; a unit of energy is not.
    if exponents not in (TORQUE.exponents, ENERGY.exponents):
        return False
    plain = one.__class__
    energies = (plain(1, ENERGY.si_unit).dimensionality, plain(1, POWER.si_unit).dimensionality)
    return all(plain(1, name).dimensionality not in energies for name, _ in one.unit_items())


def _kind(one: Quantity, exponents: Exponents) -> str:
    if phrase := _PHRASES.get(exponents):
        return phrase
    without_angle = (*exponents[:3], 0, exponents[4])
    if exponents[3] and without_angle in _PHRASES:
        return f"{_PHRASES[without_angle]} with an angle in it"
    return f"of the dimension {one.dimensionality}"


def _advice(one: Quantity, exponents: Exponents, role: Role) -> str:
    pairs = ((FORCE, MASS), (FORCE_PER_LENGTH, MASS_PER_LENGTH))
    for weight, mass in pairs:
        if role is weight and exponents == mass.exponents:
            return _other_name(one, _WEIGHTS, "mass", "a weight in lbf, kgf or N")
        if role is mass and exponents == weight.exponents:
            return _other_name(one, _MASSES, "force", "a mass in lb or kg")
    if advice := _ADVICE.get((role, exponents)):
        return advice
    if exponents[3] and (*exponents[:3], 0, exponents[4]) == role.exponents:
        return "divide by the radian it carries"
    return ""


def _other_name(one: Quantity, names: dict[str, str], kind: str, otherwise: str) -> str:
    for name, _ in one.unit_items():
        if name in names:
            short = unit_text(one.__class__(1, name))
            return f"{short} is a {kind}; write {names[name]}"
    return f"write {otherwise}"


def _without_noise(factor: float) -> float:
    """Factor without the last-digit noise of pint's chained multiplication.

    Most factors of the trade are short decimals by definition, 0.3048 for the foot, where pint
    arrives at 0.30479999999999996.
    """
    short = float(f"{factor:.14g}")
    return short if abs(short - factor) <= 1e-15 * abs(factor) else factor
