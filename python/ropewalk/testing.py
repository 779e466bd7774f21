"""For tests of code that uses ropewalk: comparing quantities, and hypothesis strategies for them.

The strategies need `hypothesis`, the comparison does not.
"""

from __future__ import annotations

from typing import TYPE_CHECKING, Any

import numpy as np

from ropewalk._border import to_quantity, to_si
from ropewalk._describe import given_text
from ropewalk._signature import PARAMETERS, ROLES, SIGNATURES, Role
from ropewalk._units import Q, Quantity

if TYPE_CHECKING:
    from hypothesis.strategies import SearchStrategy

__all__ = ["arguments", "assert_close", "quantities", "units_of"]

#: Units each role is tried in, all exact or computed to the last digit by pint.
_UNITS = {
    "length": ("m", "mm", "in", "ft"),
    "area": ("m**2", "mm**2", "in**2"),
    "volume": ("m**3", "liter", "ft**3"),
    "mass": ("kg", "lb", "tonne"),
    "time": ("s", "min", "hour"),
    "speed": ("m/s", "ft/min", "ft/s"),
    "acceleration": ("m/s**2", "ft/s**2"),
    "force": ("N", "kN", "lbf", "kip", "kgf", "tonne_force", "short_ton_force"),
    "stress": ("Pa", "MPa", "psi", "ksi"),
    "energy": ("J", "MJ", "ft*lbf", "ton_mile"),
    "power": ("W", "kW", "hp"),
    "density": ("kg/m**3", "g/cm**3", "ppg", "lb/ft**3"),
    "angle": ("rad", "deg", "turn"),
    "angular_velocity": ("rad/s", "rpm", "deg/s"),
    "frequency": ("Hz", "1/min"),
    "torque": ("N*m", "kN*m", "ft*lbf"),
    "moment_of_inertia": ("kg*m**2", "tonne*m**2", "lb*ft**2"),
    "force_per_length": ("N/m", "kN/m", "lbf/ft"),
    "mass_per_length": ("kg/m", "lb/ft"),
    "temperature": ("K", "delta_degC", "delta_degF"),
    "volume_flow": ("m**3/s", "liter/min", "gallon/min"),
    "heat_flux": ("W/m**2", "MW/m**2"),
    "specific_heat": ("J/kg/K", "kJ/kg/K", "ft*lbf/lb/delta_degF"),
    "conductivity": ("W/m/K", "kW/m/K"),
    "heat_loss": ("W/K", "kW/K"),
    "spectral_density": ("m**2*s/rad", "ft**2*s/rad"),
    "damping": ("N*s/m", "kN*s/m", "lbf*s/in"),
}


def units_of(role: Role | str) -> tuple[str, ...]:
    """Units a role is usually written in; empty for plain numbers."""
    name = role if isinstance(role, str) else role.name.replace(" ", "_")
    return _UNITS.get(name, ())


def assert_close(
    actual: Any, expected: Any, *, relative: float = 1e-9, absolute: Any = None
) -> None:
    """Assert that two quantities, texts or plain numbers agree, whatever their units.

    Parameters
    ----------
    actual
        Quantity, text with a unit, plain number or array.
    expected
        The same kind of quantity, in any unit of any registry.
    relative
        Allowed difference as a share of `expected`.
    absolute
        Allowed difference as a quantity of the same kind; not used if left out.

    Raises
    ------
    AssertionError
        If they differ by more, or are different kinds of quantity.

    Examples
    --------
    >>> assert_close("1 kip", "1000 lbf")
    >>> assert_close("30 kip", "133 kN", absolute="1 kN")
    """
    expected_quantity = _quantity(expected)
    unit = getattr(expected_quantity, "units", None)
    allowed = 0.0 if absolute is None else _in_unit(absolute, unit)
    got, want = _in_unit(actual, unit), _in_unit(expected, unit)
    if np.shape(got) != np.shape(want):
        raise AssertionError(f"shape {np.shape(got)} is not {np.shape(want)}")
    if not np.allclose(got, want, rtol=relative, atol=allowed, equal_nan=True):
        shown = given_text(expected) if not np.ndim(want) else repr(want)
        raise AssertionError(f"{got!r} {unit or ''} is not close to {shown}".replace("  ", " "))


def _quantity(value: Any) -> Any:
    return Q(value) if isinstance(value, str) else value


def _in_unit(value: Any, unit: Any) -> Any:
    value = _quantity(value)
    has_unit = hasattr(value, "unit_items")
    if has_unit != (unit is not None):
        raise AssertionError(f"{given_text(value)} is compared with a value in {unit or 'numbers'}")
    if not has_unit:
        return np.asarray(value, dtype=np.float64)
    if value.dimensionality != unit.dimensionality:
        raise AssertionError(f"{given_text(value)} is no quantity like one in {unit}")
    return np.asarray(value.to(str(unit)).magnitude, dtype=np.float64)


def quantities(
    role: Role | str, low: Any, high: Any, *, units: tuple[str, ...] | None = None
) -> SearchStrategy[Any]:
    """Strategy for quantities of a role from `low` to `high`, in changing units.

    Parameters
    ----------
    role
        Role or its name, ``"force"``.
    low, high
        Bounds: quantities or texts with a unit; plain numbers for the roles without one.
    units
        Units to draw from; `units_of` the role if left out.

    Examples
    --------
    >>> tensions = quantities("force", "0 lbf", "100 kip")
    """
    from hypothesis import strategies

    role = ROLES[role] if isinstance(role, str) else role
    bottom, top = to_si("quantities", "low", low, role), to_si("quantities", "high", high, role)
    if role is ROLES["count"]:
        return strategies.integers(int(bottom), int(top))
    numbers = strategies.floats(bottom, top, allow_nan=False, allow_infinity=False)
    if not role.has_unit:
        return numbers

    def in_unit(number: float, unit: str) -> Quantity:
        quantity: Quantity = to_quantity(number, role).to(unit)
        # A round trip may step over the bound by the last digit.
        inside = bottom <= to_si("quantities", "value", quantity, role) <= top
        return quantity if inside else to_quantity(number, role)

    return strategies.builds(in_unit, numbers, strategies.sampled_from(units or units_of(role)))


def arguments(function: str, *, spread: float = 1.1) -> SearchStrategy[dict[str, Any]]:
    """Strategy for valid calls of a row function near its examples.

    Parameters
    ----------
    function
        ``"sheave.bearing_pressure"``.
    spread
        Each argument is drawn from example / `spread` to example × `spread`; counts stay.

    Examples
    --------
    >>> calls = arguments("sheave.bearing_pressure")
    """
    from hypothesis import strategies

    signature = SIGNATURES[function]
    drawn: dict[str, SearchStrategy[Any]] = {}
    for name in signature.arguments:
        parameter = PARAMETERS[name]
        example = signature.examples.get(name, parameter.example)
        if parameter.role is ROLES["count"] or not parameter.role.has_unit:
            drawn[name] = strategies.just(example)
            continue
        low, high = sorted((example / spread, example * spread))
        drawn[name] = quantities(parameter.role, Q(low, parameter.unit), Q(high, parameter.unit))
    return strategies.fixed_dictionaries(drawn)
