"""Drill strings and casing: mass, weight in mud, drag, hook load.

A weight is a force (``"23500 lbf"``); the ``lb/ft`` of a pipe is a mass per length; the weight of a
pipe in mud is a force per length (``"16.5 lbf/ft"``).

A computed hook load is not a permitted one: the ratings of the hoist, the maker's manual, the local
rules and the driller's weight indicator come first.
"""

from __future__ import annotations

from typing import Any

from ropewalk import _core
from ropewalk._drill_string import DrillString, Section
from ropewalk._face import NumberLike, Policy, Quantity, QuantityLike, face
from ropewalk._names import to_name
from ropewalk.errors import UnknownEntryError

__all__ = [
    "DrillString",
    "Section",
    "buoyancy_factor",
    "buoyed_weight_per_length",
    "drag_normal_force",
    "drag_tension_change",
    "jointed_mass_per_length",
    "slant_pull",
    "tool_joint_mass",
    "tube_mass_per_length",
    "tubulars",
]


def tubulars(kind: str | None = None) -> list[dict[str, Any]]:
    """Published masses of drill pipe, heavy-weight drill pipe, drill collars and casing.

    Parameters
    ----------
    kind
        ``"drill pipe"``, ``"heavy-weight drill pipe"``, ``"drill collar"``, ``"casing"``; all of
        them if left out.

    Returns
    -------
    list of dict
        One record per pipe by column name, the unit in the name, with the source of the value and
        how it stands. `Section.from_table` takes its ``designation``.

    Examples
    --------
    >>> import ropewalk as rw
    >>> [r["mass_per_length [lb/ft]"] for r in rw.drillstring.tubulars("heavy-weight drill pipe")]
    [25.3, 29.7, 41.0, 49.3, 57.0, 70.8]
    """
    records: list[dict[str, Any]] = _core.drillstring.tubulars()
    if kind is None:
        return records
    where = "drillstring.tubulars"
    kinds = list(dict.fromkeys(record["kind"] for record in records))
    if to_name(where, "kind", kind) not in kinds:
        text = f"kind = {kind!r} is not in the table of tubulars; it has {', '.join(kinds)}"
        raise UnknownEntryError(f"{where}(): {text}", where, "kind")
    return [record for record in records if record["kind"] == kind]


@face("drillstring.buoyancy_factor")
def buoyancy_factor(
    mud_density: QuantityLike,
    steel_density: QuantityLike,
    *,
    outside_validity: Policy = "raise",
    return_status: bool = False,
    threads: int = 1,
) -> float:
    r"""Buoyancy factor of a string that is wet inside and outside.

    .. math:: BF = 1 - \rho_m / \rho_s

    Archimedes; holds while the string is full of the mud around it. Steel of 65.5 lb/gal or
    7850 kg/m³ is usual. Source: Lapeyrouse, Formulas and Calculations for Drilling, Production and
    Workover, 2nd ed. (2002).

    Examples
    --------
    >>> import ropewalk as rw
    >>> round(rw.drillstring.buoyancy_factor("9.6 ppg", "65.5 ppg"), 4)
    0.8534
    """


@face("drillstring.tube_mass_per_length")
def tube_mass_per_length(
    outer_diameter: QuantityLike,
    inner_diameter: QuantityLike,
    density: QuantityLike,
    *,
    outside_validity: Policy = "raise",
    return_status: bool = False,
    threads: int = 1,
) -> Quantity:
    r"""Mass per length of a plain tube.

    .. math:: w = \rho \pi (D^2 - d^2) / 4

    With steel of 489.5 lb/ft³ it is the drill-collar rule of the trade,
    :math:`w = 2.67 (D^2 - d^2)` lb/ft with inches.

    Examples
    --------
    >>> import ropewalk as rw
    >>> w = rw.drillstring.tube_mass_per_length("8 in", "2.8125 in", "489.5 lb/ft**3")
    >>> f"{w.to('lb/ft').magnitude:.0f} lb/ft"
    '150 lb/ft'
    """


@face("drillstring.buoyed_weight_per_length")
def buoyed_weight_per_length(
    mass_per_length: QuantityLike,
    buoyancy_factor: NumberLike,
    *,
    outside_validity: Policy = "raise",
    return_status: bool = False,
    threads: int = 1,
) -> Quantity:
    r"""Weight per length of a pipe in mud, the :math:`W_m` that work of the line is computed with.

    .. math:: W_m = w\,g\,BF

    Standard gravity: a pound of pipe weighs a pound-force. Source: Lapeyrouse (2002), p. 44.

    Examples
    --------
    >>> import ropewalk as rw
    >>> weight = rw.drillstring.buoyed_weight_per_length("13.3 lb/ft", 0.8534)
    >>> f"{weight.to('lbf/ft').magnitude:.2f} lbf/ft"
    '11.35 lbf/ft'
    """


@face("drillstring.tool_joint_mass")
def tool_joint_mass(
    tool_joint_length: QuantityLike,
    tool_joint_outer_diameter: QuantityLike,
    tool_joint_inner_diameter: QuantityLike,
    elevator_diameter: QuantityLike,
    *,
    outside_validity: Policy = "raise",
    return_status: bool = False,
    threads: int = 1,
) -> Quantity:
    r"""Mass of a tool joint, box and pin, API RP 7G.

    .. math:: W_{TJ} = 0.222 L (D^2 - d^2) + 0.167 (D^3 - D_{TE}^3) - 0.501 d^2 (D - D_{TE})

    in pounds and inches, as printed; the numbers are steel of 0.2836 lb/in³ with tapers of 18° and
    35°. Source (from memory): API RP 7G, 16th ed. (1998), appendix A.

    Examples
    --------
    >>> import ropewalk as rw
    >>> mass = rw.drillstring.tool_joint_mass("17 in", "6.375 in", "3.75 in", "5.125 in")
    >>> f"{mass.to('lb').magnitude:.0f} lb"
    '112 lb'
    """


@face("drillstring.jointed_mass_per_length")
def jointed_mass_per_length(
    plain_mass_per_length: QuantityLike,
    upset_mass: QuantityLike,
    tool_joint_length: QuantityLike,
    tool_joint_outer_diameter: QuantityLike,
    tool_joint_inner_diameter: QuantityLike,
    elevator_diameter: QuantityLike,
    *,
    outside_validity: Policy = "raise",
    return_status: bool = False,
    threads: int = 1,
) -> Quantity:
    r"""Approximate mass per length of drill pipe with tool joints, API RP 7G.

    .. math:: w_j = \frac{29.4\,w + e + W_{TJ}}{29.4 + [L + 2.253 (D - D_{TE})]/12}

    in pounds, feet and inches, as printed; 29.4 ft is a range 2 pipe without its joint. Source
    (from memory): API RP 7G, 16th ed. (1998), appendix A.

    Examples
    --------
    5 in 19.50 lb/ft grade E75 with NC50:

    >>> import ropewalk as rw
    >>> joint = ("17 in", "6.375 in", "3.75 in", "5.125 in")
    >>> w = rw.drillstring.jointed_mass_per_length("17.93 lb/ft", "8.6 lb", *joint)
    >>> f"{w.to('lb/ft').magnitude:.2f} lb/ft"
    '20.87 lb/ft'
    """


@face("drillstring.slant_pull")
def slant_pull(
    pipe_weight: QuantityLike,
    length: QuantityLike,
    inclination: QuantityLike,
    friction_coefficient: NumberLike,
    direction: NumberLike,
    *,
    outside_validity: Policy = "raise",
    return_status: bool = False,
    threads: int = 1,
) -> Quantity:
    r"""Axial load from a straight inclined section, soft string.

    .. math:: \Delta F = w L (\cos\alpha + s\,\mu \sin\alpha)

    with :math:`s` = +1 pulled up, −1 lowered, 0 rotated off bottom. A negative result has to be
    pushed. Source: Johancsik, Friesen and Dawson, J. Pet. Technol. (June 1984), SPE 11380.

    Examples
    --------
    >>> import ropewalk as rw
    >>> up = rw.drillstring.slant_pull("18 lbf/ft", "5000 ft", "60 deg", 0.3, 1)
    >>> f"{up.to('lbf').magnitude:.0f} lbf"
    '68383 lbf'
    """


@face("drillstring.drag_normal_force")
def drag_normal_force(
    tension: QuantityLike,
    pipe_weight: QuantityLike,
    length: QuantityLike,
    inclination: QuantityLike,
    inclination_change: QuantityLike,
    azimuth_change: QuantityLike,
    *,
    outside_validity: Policy = "raise",
    return_status: bool = False,
    threads: int = 1,
) -> Quantity:
    r"""Force between a short element of string and the wall, Johancsik et al. (1984).

    .. math::
        N = \sqrt{(F\,\Delta\varphi \sin\theta)^2 + (F\,\Delta\theta + w\,\Delta s \sin\theta)^2}

    The string has no stiffness; the changes of angle are small, counted from the lower to the upper
    end (negative inclination change where the hole builds angle). Source: SPE 11380, eq. 1.

    Examples
    --------
    A straight element lies on the wall with its weight times the sine of the inclination:

    >>> import ropewalk as rw
    >>> element = ("50000 lbf", "18 lbf/ft", "100 ft", "30 deg", "0 deg", "0 deg")
    >>> f"{rw.drillstring.drag_normal_force(*element).to('lbf').magnitude:.0f} lbf"
    '900 lbf'
    """


@face("drillstring.drag_tension_change")
def drag_tension_change(
    tension: QuantityLike,
    pipe_weight: QuantityLike,
    length: QuantityLike,
    inclination: QuantityLike,
    inclination_change: QuantityLike,
    azimuth_change: QuantityLike,
    friction_coefficient: NumberLike,
    direction: NumberLike,
    *,
    outside_validity: Policy = "raise",
    return_status: bool = False,
    threads: int = 1,
) -> Quantity:
    r"""Change of tension over a short element of string, Johancsik et al. (1984).

    .. math:: \Delta F = w\,\Delta s \cos\theta + s\,\mu N

    with :math:`N` as `drag_normal_force` and :math:`s` = +1 pulled up, −1 lowered, 0 rotated off
    bottom. Walk the string from the bit up and add. Source: SPE 11380, eq. 2.

    Examples
    --------
    >>> import ropewalk as rw
    >>> element = ("50000 lbf", "18 lbf/ft", "100 ft", "30 deg", "0 deg", "0 deg")
    >>> change = rw.drillstring.drag_tension_change(*element, 0.3, 1)
    >>> f"{change.to('lbf').magnitude:.0f} lbf"
    '1829 lbf'
    """
