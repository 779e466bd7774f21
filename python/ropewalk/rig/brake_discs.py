"""The discs of a rig's brake as bodies that are heated: the class `BrakeDiscs`."""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING

from ropewalk.errors import InadmissibleError

if TYPE_CHECKING:
    from ropewalk._units import Quantity, QuantityLike
    from ropewalk.brake import TripTemperature
    from ropewalk.rig.brake_sections import HeatSection


@dataclass(frozen=True, slots=True)
class BrakeDiscs:
    """The discs as bodies that are heated and cool; numbers in SI.

    Attributes
    ----------
    mass, thickness, rubbed_area
        Of all discs together, kg; of one between its rubbed faces, m; of all faces, m².
    specific_heat, conductivity, density
        Of their material.
    heat_loss
        Heat they give off per time and kelvin above the surroundings, W/K.
    """

    mass: float
    thickness: float
    rubbed_area: float
    specific_heat: float
    conductivity: float
    density: float
    heat_loss: float

    def over_trip(
        self,
        heat: QuantityLike,
        lowering_time: QuantityLike,
        rest_time: QuantityLike,
        *,
        first_rise: QuantityLike = "0 K",
    ) -> TripTemperature:
        """Rise of temperature of the discs over a trip; see `ropewalk.brake.temperature_over_trip`.

        Parameters
        ----------
        heat, lowering_time, rest_time, first_rise
            As there.
        """
        from ropewalk._units import Q
        from ropewalk.brake import temperature_over_trip

        return temperature_over_trip(
            heat,
            lowering_time,
            rest_time,
            heated_mass=Q(self.mass, "kg"),
            specific_heat=Q(self.specific_heat, "J/kg/K"),
            heat_loss=Q(self.heat_loss, "W/K"),
            first_rise=first_rise,
        )

    def of_stop(self, heat: QuantityLike, braking_time: QuantityLike) -> Quantity:
        """Largest rise of the rubbed faces in an even stop; `ropewalk.brake.surface_rise_of_stop`.

        The heat goes evenly into all faces, each of which heats its half of the disc.

        Parameters
        ----------
        heat
            Heat of the stop that the discs take.
        braking_time
            Time of braking.
        """
        from ropewalk._border import to_one
        from ropewalk._units import Q
        from ropewalk.brake import surface_rise_of_stop

        where = "rig.BrakeDiscs.of_stop"
        energy = to_one(where, "heat", heat, "energy")
        time = to_one(where, "braking_time", braking_time, "time")
        if not 0.0 < time <= 1e5:
            text = f"braking_time = {time:g} s is outside (0, 1e+05] s (ropewalk's guard)"
            raise InadmissibleError(f"{where}(): {text}", where, "braking_time")
        # The flux falls evenly to nothing: it begins at twice its mean.
        flux = 2.0 * energy / (self.rubbed_area * time)
        return surface_rise_of_stop(
            Q(flux, "W/m**2"),
            Q(time, "s"),
            Q(self.conductivity, "W/m/K"),
            Q(self.density, "kg/m**3"),
            Q(self.specific_heat, "J/kg/K"),
            Q(0.5 * self.thickness, "m"),
        )


def make_discs(section: HeatSection | None) -> BrakeDiscs | None:
    """Return the discs of ``[brake.heat]``."""
    if section is None:
        return None
    return BrakeDiscs(
        mass=section.disc_mass,
        thickness=section.disc_thickness,
        rubbed_area=section.rubbed_area,
        specific_heat=section.specific_heat,
        conductivity=section.conductivity,
        density=section.density,
        heat_loss=section.heat_loss,
    )
