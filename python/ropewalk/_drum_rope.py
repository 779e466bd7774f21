"""The functions of the subject `drum` on lengths, laps and fleet angle."""

from __future__ import annotations

from ropewalk import _core
from ropewalk._border import arguments, to_quantity
from ropewalk._face import NumberLike, Policy, Quantity, QuantityLike, face

__all__ = [
    "crossover_shift",
    "cut_length",
    "fleet_angle",
    "fleet_distance",
    "laps_in_traverse",
    "mixed_layer_height",
    "pitched_layer_height",
    "reel_capacity",
    "reel_capacity_handbook",
    "rope_on_drum",
]


@face("drum.pitched_layer_height")
def pitched_layer_height(
    pitch: QuantityLike,
    rope_diameter: QuantityLike,
    *,
    outside_validity: Policy = "raise",
    return_status: bool = False,
    threads: int = 1,
) -> float:
    r"""Rise from layer to layer over rope diameter where the laps below do not touch.

    .. math:: c = \sqrt{1 - (p / 2 d)^2}

    The rope centers make an isosceles triangle of base p and sides d; p = d gives √3/2. Source:
    geometry.

    Examples
    --------
    >>> import ropewalk as rw
    >>> print(f"{rw.drum.pitched_layer_height('1.03 in', '1 in'):.4f}")
    0.8572
    """
    ...


@face("drum.mixed_layer_height")
def mixed_layer_height(
    nested_share: NumberLike,
    *,
    outside_validity: Policy = "raise",
    return_status: bool = False,
    threads: int = 1,
) -> float:
    r"""Mean rise from layer to layer over rope diameter, part of a lap nested, the rest crossing.

    .. math:: c = s \sqrt{3}/2 + (1 - s)

    Parallel grooves with two crossovers a lap: s about 0.8 (common practice, no source). Source:
    geometry.

    Examples
    --------
    >>> import ropewalk as rw
    >>> print(f"{rw.drum.mixed_layer_height(0.8):.3f}")
    0.893
    """
    ...


@face("drum.laps_in_traverse")
def laps_in_traverse(
    traverse: QuantityLike,
    pitch: QuantityLike,
    *,
    outside_validity: Policy = "raise",
    return_status: bool = False,
    threads: int = 1,
) -> float:
    r"""Whole laps side by side between the flanges.

    .. math:: n = \lfloor W / p \rfloor

    On a helical groove every other layer has one lap less. Source: geometry.

    Examples
    --------
    >>> import ropewalk as rw
    >>> rw.drum.laps_in_traverse("56 in", "1-7/16 in")
    38.0
    """
    ...


@face("drum.cut_length")
def cut_length(
    laps: NumberLike,
    barrel_diameter: QuantityLike,
    *,
    outside_validity: Policy = "raise",
    return_status: bool = False,
    threads: int = 1,
) -> Quantity:
    r"""Length of line cut off at the drum, counted in laps, as API RP 9B tabulates it.

    .. math:: L = n \pi D

    The lap is counted on the barrel; what really comes off a drum is told by `Drum.length_of`. A
    half or a quarter lap over a whole number moves the crossovers, see `crossover_shift`.

    Source (from memory): API RP 9B, cutoff lengths in terms of drum laps.

    Examples
    --------
    >>> import ropewalk as rw
    >>> print(f"{rw.drum.cut_length(11.5, '28 in').to('ft'):.1f}")
    84.3 foot
    """
    ...


@face("drum.crossover_shift")
def crossover_shift(
    laps: NumberLike,
    crossovers_per_lap: NumberLike,
    *,
    outside_validity: Policy = "raise",
    return_status: bool = False,
    threads: int = 1,
) -> float:
    r"""How far a cut moves the crossovers from where they were on the rope, in laps.

    .. math:: s = |q n - \mathrm{round}(q n)| / q

    Crossovers lie 1/q lap apart: at most a half lap for one a lap, a quarter for two. Source:
    geometry.

    Examples
    --------
    A cut of 11-1/2 laps is as good as it can be on a smooth drum, and useless on parallel grooves:

    >>> import ropewalk as rw
    >>> rw.drum.crossover_shift(11.5, 1), rw.drum.crossover_shift(11.5, 2)
    (0.5, 0.0)
    """
    ...


@face("drum.rope_on_drum")
def rope_on_drum(
    rope_at_lowest: QuantityLike,
    lines: NumberLike,
    block_height: QuantityLike,
    *,
    outside_validity: Policy = "raise",
    return_status: bool = False,
    threads: int = 1,
) -> Quantity:
    r"""Rope on the drum with the block above its lowest position.

    .. math:: L = L_0 + N h

    Every line between the blocks gets shorter by h. Source: geometry.

    Examples
    --------
    >>> import ropewalk as rw
    >>> print(f"{rw.drum.rope_on_drum('80 ft', 10, '100 ft').to('ft'):.0f}")
    1080 foot
    """
    ...


@face("drum.reel_capacity")
def reel_capacity(
    flange_depth: QuantityLike,
    barrel_diameter: QuantityLike,
    traverse: QuantityLike,
    rope_diameter: QuantityLike,
    *,
    outside_validity: Policy = "raise",
    return_status: bool = False,
    threads: int = 1,
) -> Quantity:
    r"""Rope held by a reel or drum in stacked layers of touching laps.

    .. math:: L = \pi (A + B) A C / d^2

    with A the depth of rope, B the barrel, C the traverse and d the actual diameter of the rope,
    oversize included. Layers that nest hold more, loose winding less.

    Source: Oceanographic winch and wire handbook, ch. 12, length of cable on a reel (there
    0.2618 for π/12, inches and feet).

    Examples
    --------
    >>> import ropewalk as rw
    >>> print(f"{rw.drum.reel_capacity('4 in', '32 in', '56 in', '1-3/8 in').to('ft'):.1f}")
    1116.6 foot
    """
    ...


def reel_capacity_handbook(
    flange_depth: QuantityLike,
    barrel_diameter: QuantityLike,
    traverse: QuantityLike,
    rope_diameter: QuantityLike,
) -> Quantity:
    """Rope held by a reel as the handbooks of wire rope have it.

    .. math:: L = (A + B) A C K

    with A, B, C as for `reel_capacity` and K the factor of the rope size (``table`` lists it), in
    which the rope is 4 % to 6.5 % over its nominal diameter.

    Source: a rope supplier's page of reel capacities, undated, up to 1-1/4 in; above, Wire Rope
    Users Manual (from memory).

    Parameters
    ----------
    flange_depth : length
        Depth of rope from the barrel to the outside of the last layer; handbooks leave 2 in of the
        flange free on shipping reels.
    barrel_diameter : length
        Diameter the first layer lies on.
    traverse : length
        Inside width from flange to flange.
    rope_diameter : length
        Nominal diameter of the rope, one of the printed sizes.

    Returns
    -------
    length, in m
        Length of rope the reel holds.

    Raises
    ------
    UnknownEntryError
        If the table has no such size; the message offers the nearest.

    Examples
    --------
    >>> import ropewalk as rw
    >>> length = rw.drum.reel_capacity_handbook("10 in", "18 in", "20 in", "1/2 in")
    >>> print(f"{length.to('ft'):.0f}")
    5180 foot
    """
    where = "drum.reel_capacity_handbook"
    values = arguments(
        where,
        flange_depth=flange_depth,
        barrel_diameter=barrel_diameter,
        traverse=traverse,
        rope_diameter=rope_diameter,
    )
    length = _core.drum.reel_capacity_handbook(*values)
    return to_quantity(length, "length", like=flange_depth)


@face("drum.fleet_angle")
def fleet_angle(
    lead_offset: QuantityLike,
    lead_distance: QuantityLike,
    *,
    outside_validity: Policy = "raise",
    return_status: bool = False,
    threads: int = 1,
) -> Quantity:
    r"""Fleet angle of a line between lead sheave and drum.

    .. math:: \varphi = \arctan(a / b)

    It is largest at a flange: a half of the traverse, if the sheave stands before the middle of the
    drum. `fleet_angle_limit` tells between which angles a rope winds well.

    Source: geometry; Wire Rope Technical Board, Wire Rope Users Manual, definition of the fleet
    angle.

    Examples
    --------
    >>> import ropewalk as rw
    >>> print(f"{rw.drum.fleet_angle('28 in', '100 ft').to('deg').magnitude:.4f}")
    1.3367
    """
    ...


@face("drum.fleet_distance")
def fleet_distance(
    lead_offset: QuantityLike,
    fleet_angle: QuantityLike,
    *,
    outside_validity: Policy = "raise",
    return_status: bool = False,
    threads: int = 1,
) -> Quantity:
    r"""Distance from drum to lead sheave at which a lap is seen under a fleet angle.

    .. math:: b = a / \tan\varphi

    Source: `fleet_angle`, turned round.

    Examples
    --------
    >>> import ropewalk as rw
    >>> print(f"{rw.drum.fleet_distance('0.711 m', '1.5 deg'):.1f}")
    27.2 meter
    """
    ...
