"""The functions of the subject `brake` on heat: energy, temperature, cooling, fading."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

import numpy as np
import numpy.typing as npt

from ropewalk import _core
from ropewalk._border import to_one, to_quantity, to_si
from ropewalk._brake_temperature import absolute
from ropewalk._face import NumberLike, Policy, Quantity, QuantityLike, face
from ropewalk.errors import InadmissibleError

__all__ = [
    "FrictionTable",
    "TripTemperature",
    "cooling_water_flow",
    "friction_heat_flux",
    "heat_rise",
    "lowering_heat",
    "surface_rise",
    "surface_rise_of_stop",
    "temperature_over_trip",
]


@face("brake.lowering_heat")
def lowering_heat(
    hook_load: QuantityLike,
    lowered_height: QuantityLike,
    heat_share: NumberLike,
    *,
    outside_validity: Policy = "raise",
    return_status: bool = False,
    threads: int = 1,
) -> Quantity:
    """Heat of a load lowered at one speed, or the share of it that one brake takes.

    .. math:: Q = s W h

    Source: conservation of energy.

    Examples
    --------
    >>> import ropewalk as rw
    >>> heat = rw.brake.lowering_heat("200 tonne_force", "27.4 m", 1.0)
    >>> print(f"{heat.to('MJ').magnitude:.2f} MJ")
    53.74 MJ
    """
    ...


@face("brake.heat_rise")
def heat_rise(
    heat: QuantityLike,
    heated_mass: QuantityLike,
    specific_heat: QuantityLike,
    *,
    outside_validity: Policy = "raise",
    return_status: bool = False,
    threads: int = 1,
) -> Quantity:
    r"""Rise of temperature of a body that keeps a heat to itself, spread evenly.

    .. math:: \Delta T = Q / (m c)

    Source: definition of the specific heat; for brakes V. M. Faires, Design of Machine Elements,
    chapter on brakes.

    Examples
    --------
    >>> import ropewalk as rw
    >>> print(f"{rw.brake.heat_rise('53.76 MJ', '3000 kg', '500 J/kg/K').magnitude:.2f} K")
    35.84 K
    """
    ...


@face("brake.friction_heat_flux")
def friction_heat_flux(
    lining_friction: NumberLike,
    lining_pressure: QuantityLike,
    sliding_speed: QuantityLike,
    *,
    outside_validity: Policy = "raise",
    return_status: bool = False,
    threads: int = 1,
) -> Quantity:
    r"""Heat made per rubbed area and time.

    .. math:: q = \mu p v

    Little of it goes into the lining. Source: definition of friction and power.

    Examples
    --------
    >>> import ropewalk as rw
    >>> flux = rw.brake.friction_heat_flux(0.35, "0.5 MPa", "10 m/s")
    >>> print(f"{flux.to('MW/m**2').magnitude:.2f} MW/m2")
    1.75 MW/m2
    """
    ...


@face("brake.surface_rise")
def surface_rise(
    heat_flux: QuantityLike,
    braking_time: QuantityLike,
    conductivity: QuantityLike,
    solid_density: QuantityLike,
    specific_heat: QuantityLike,
    conducting_depth: QuantityLike,
    *,
    outside_validity: Policy = "raise",
    return_status: bool = False,
    threads: int = 1,
) -> Quantity:
    r"""Rise of temperature of a surface under a heat flux that stays the same.

    .. math:: \Delta T = 2 q \sqrt{t / (\pi k \rho c)}

    As long as the heat has hardly reached the far side: valid for a Fourier number
    :math:`k t / (\rho c d^2)` of at most 0.31, d being `conducting_depth`. A body of that depth
    gets hotter by the share :math:`2\sqrt{\pi} \sum \mathrm{ierfc}(n d \sqrt{\rho c / (k t)})`,
    1 % at 0.3196: the limit is derived. And for a rim that comes round so fast that each turn sees
    the mean flux.

    Source: H. S. Carslaw and J. C. Jaeger, Conduction of Heat in Solids, 2.9, and for the body of
    finite depth 3.8 (from memory).

    Examples
    --------
    >>> import ropewalk as rw
    >>> steel = ("50 W/m/K", "7850 kg/m**3", "480 J/kg/K", "38 mm")
    >>> print(f"{rw.brake.surface_rise('5 MW/m**2', '3 s', *steel).magnitude:.1f} K")
    711.9 K
    """
    ...


@face("brake.surface_rise_of_stop")
def surface_rise_of_stop(
    heat_flux: QuantityLike,
    braking_time: QuantityLike,
    conductivity: QuantityLike,
    solid_density: QuantityLike,
    specific_heat: QuantityLike,
    conducting_depth: QuantityLike,
    *,
    outside_validity: Policy = "raise",
    return_status: bool = False,
    threads: int = 1,
) -> Quantity:
    r"""Largest rise of temperature of a surface during a stop with constant deceleration.

    .. math:: \Delta T = \frac{2\sqrt{2}}{3\sqrt{\pi}} q_0 \sqrt{t_s / (k \rho c)}

    `heat_flux` is that of the first moment; the rise is largest halfway through the stop. Valid as
    `surface_rise`, for a Fourier number :math:`k t_s / (\rho c d^2)` of at most 0.57, where a body
    of that depth gets 1 % hotter (derived, 0.5704).

    Source: T. P. Newcomb, Transient temperatures in brake drums and linings, Proc. Instn. Mech.
    Engrs. (1958) (from memory); superposition of `surface_rise`.

    Examples
    --------
    >>> import ropewalk as rw
    >>> steel = ("50 W/m/K", "7850 kg/m**3", "480 J/kg/K", "38 mm")
    >>> print(f"{rw.brake.surface_rise_of_stop('5 MW/m**2', '3 s', *steel).magnitude:.1f} K")
    335.6 K
    """
    ...


@face("brake.cooling_water_flow")
def cooling_water_flow(
    heat_power: QuantityLike,
    water_density: QuantityLike,
    specific_heat: QuantityLike,
    temperature_rise: QuantityLike,
    *,
    outside_validity: Policy = "raise",
    return_status: bool = False,
    threads: int = 1,
) -> Quantity:
    r"""Cooling water that carries a heat away.

    .. math:: \dot V = P / (\rho c \Delta T)

    As long as nothing boils. Source: conservation of energy.

    Examples
    --------
    >>> import ropewalk as rw
    >>> flow = rw.brake.cooling_water_flow("1 MW", "1000 kg/m**3", "4186 J/kg/K", "20 K")
    >>> print(f"{flow.to('liter/min').magnitude:.0f} L/min")
    717 L/min
    """
    ...


@dataclass(frozen=True, slots=True)
class TripTemperature:
    """Rise of temperature above the surroundings over a trip, stand by stand.

    Attributes
    ----------
    lowered_si
        When each stand is down, K.
    rested_si
        When the rest after it is over, K.
    first_rise_si
        At the beginning, K.
    """

    lowered_si: npt.NDArray[np.float64]
    rested_si: npt.NDArray[np.float64]
    first_rise_si: float

    @property
    def lowered(self) -> Quantity:
        """Rise when each stand is down."""
        return to_quantity(self.lowered_si, "temperature")

    @property
    def rested(self) -> Quantity:
        """Rise when the rest after each stand is over."""
        return to_quantity(self.rested_si, "temperature")

    @property
    def highest(self) -> Quantity:
        """Largest rise of the trip, its beginning included."""
        return to_quantity(max(self.first_rise_si, float(self.lowered_si.max())), "temperature")


def temperature_over_trip(
    heat: QuantityLike,
    lowering_time: QuantityLike,
    rest_time: QuantityLike,
    *,
    heated_mass: QuantityLike,
    specific_heat: QuantityLike,
    heat_loss: QuantityLike,
    first_rise: QuantityLike = "0 K",
) -> TripTemperature:
    r"""Rise of temperature of discs or rims over a trip, taken as one body.

    .. math:: m c \, dT/dt = Q/t - h T

    with the heat of a stand spread evenly over its lowering and none at rest, solved exactly. The
    surface under the pads is hotter, see `surface_rise`.

    Source: Newton's law of cooling.

    Parameters
    ----------
    heat
        Heat of each stand that these discs or rims take, see `lowering_heat`.
    lowering_time, rest_time
        Time of lowering each stand, and until the next; one value or one for each stand.
    heated_mass, specific_heat
        Of the discs or rims.
    heat_loss
        Heat they give off per time and kelvin above the surroundings, W/K. Nobody publishes it for
        your brake: measure how fast it cools.
    first_rise
        Rise at the beginning.

    Raises
    ------
    InadmissibleError
        For a value that cannot be.

    Examples
    --------
    >>> import ropewalk as rw
    >>> trip = rw.brake.temperature_over_trip(
    ...     rw.Q([27.0] * 100, "MJ"), "40 s", "120 s",
    ...     heated_mass="3000 kg", specific_heat="500 J/kg/K", heat_loss="800 W/K",
    ... )
    >>> print(f"{trip.highest.magnitude:.0f} K above the surroundings")
    218 K above the surroundings
    """
    where = "brake.temperature_over_trip"
    mass = to_one(where, "heated_mass", heated_mass, "mass")
    heat_capacity = to_one(where, "specific_heat", specific_heat, "specific_heat")
    loss = to_one(where, "heat_loss", heat_loss, "heat_loss")
    first = to_one(where, "first_rise", first_rise, "temperature")
    stands = to_si(where, "heat", heat, "energy")
    if not np.size(stands):
        text = "heat must be that of one stand or more, got none"
        raise InadmissibleError(f"{where}(): {text}", where, "heat")
    lowered, rested = _core.brake.temperature_over_trip(
        mass,
        heat_capacity,
        loss,
        first,
        stands,
        to_si(where, "lowering_time", lowering_time, "time"),
        to_si(where, "rest_time", rest_time, "time"),
    )
    return TripTemperature(lowered, rested, first)


@dataclass(frozen=True, slots=True)
class FrictionTable:
    """Friction of a lining over its temperature, from the maker's table or your own test.

    Linings fade as they get hot; how much is a matter of the lining, so the table is yours.
    Between its points friction runs straight; outside them there is none.

    Parameters
    ----------
    temperatures
        Temperatures of the lining, rising, on any scale: ``rw.Q([50, 200, 350], "degC")``, or a
        list of single ones, ``["50 degC", "200 degC"]``.
    frictions
        Friction at each.

    Attributes
    ----------
    temperatures_si
        Temperatures, K.
    frictions
        Friction at each.

    Raises
    ------
    UnitError
        If the temperatures are none.
    InadmissibleError
        If the table is no curve, or a friction none.

    Examples
    --------
    >>> import ropewalk as rw
    >>> table = rw.brake.FrictionTable(rw.Q([20, 100, 350], "degC"), [0.38, 0.36, 0.28])
    >>> print(f"{table.at('225 degC'):.2f}")
    0.32
    """

    temperatures_si: tuple[float, ...]
    frictions: tuple[float, ...]

    def __init__(
        self, temperatures: QuantityLike | Sequence[QuantityLike], frictions: NumberLike
    ) -> None:
        where = "brake.FrictionTable"
        kelvin = np.atleast_1d(absolute(where, "temperatures", temperatures))
        numbers = np.atleast_1d(to_si(where, "frictions", frictions, "number"))
        rising = kelvin.ndim == 1 and kelvin.size >= 2 and bool(np.all(np.diff(kelvin) > 0.0))
        if not rising or kelvin.shape != numbers.shape:
            text = "temperatures must rise, two at least, with one of frictions for each"
            raise InadmissibleError(f"{where}(): {text}", where, "temperatures")
        if not bool(np.all((numbers > 0.0) & (numbers <= 1.0))):
            text = f"frictions must lie in (0, 1], got {numbers.tolist()}"
            raise InadmissibleError(f"{where}(): {text}", where, "frictions")
        object.__setattr__(self, "temperatures_si", tuple(map(float, kelvin)))
        object.__setattr__(self, "frictions", tuple(map(float, numbers)))

    def at(self, temperature: QuantityLike) -> float:
        """Friction at a temperature of the lining.

        Raises
        ------
        ValidityError
            Outside the table.
        """
        where = "brake.FrictionTable.at"
        kelvin = absolute(where, "temperature", temperature)
        if kelvin.ndim:
            text = f"temperature must be one value, got an array of shape {kelvin.shape}"
            raise InadmissibleError(f"{where}(): {text}", where, "temperature")
        return float(
            _core.brake.friction_at(list(self.temperatures_si), list(self.frictions), float(kelvin))
        )
