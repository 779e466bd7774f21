"""The functions of the subject `drum` on holding, pressure and stress, and its printed limits."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Any

from ropewalk import _core
from ropewalk._border import to_count, to_quantity
from ropewalk._face import NumberLike, Policy, Quantity, QuantityLike, face
from ropewalk._names import to_name

__all__ = [
    "DeadWrapsMinimum",
    "FleetAngleLimit",
    "barrel_hoop_stress",
    "barrel_pressure",
    "clamp_force",
    "dead_wraps_minimum",
    "dead_wraps_minimums",
    "fleet_angle_limit",
    "fleet_angle_limits",
    "holding_ratio",
    "holding_wraps",
    "layer_factor",
    "table",
]


@face("drum.holding_ratio")
def holding_ratio(
    drum_friction: NumberLike,
    dead_wraps: NumberLike,
    *,
    outside_validity: Policy = "raise",
    return_status: bool = False,
    threads: int = 1,
) -> float:
    r"""Tension held by dead wraps over the tension left at the fastening, Euler and Eytelwein.

    .. math:: T / T_c = e^{2 \pi \mu n}

    The rope is about to slip and bends without stiffness. Source: L. Euler (1769), J. A. Eytelwein
    (1808), belt friction.

    Examples
    --------
    >>> import ropewalk as rw
    >>> print(f"{rw.drum.holding_ratio(0.1, 3):.2f}")
    6.59
    """
    ...


@face("drum.clamp_force")
def clamp_force(
    rope_tension: QuantityLike,
    drum_friction: NumberLike,
    dead_wraps: NumberLike,
    *,
    outside_validity: Policy = "raise",
    return_status: bool = False,
    threads: int = 1,
) -> Quantity:
    r"""Tension left at the end of the rope, which its fastening must hold.

    .. math:: T_c = T e^{-2 \pi \mu n}

    Source as for `holding_ratio`.

    Examples
    --------
    >>> import ropewalk as rw
    >>> print(f"{rw.drum.clamp_force('50 kip', 0.1, 3).to('lbf').magnitude:.0f} lbf")
    7592 lbf
    """
    ...


@face("drum.holding_wraps")
def holding_wraps(
    rope_tension: QuantityLike,
    clamp_force: QuantityLike,
    drum_friction: NumberLike,
    *,
    outside_validity: Policy = "raise",
    return_status: bool = False,
    threads: int = 1,
) -> float:
    r"""Dead wraps that bring the tension down to what the fastening holds.

    .. math:: n = \ln(T / T_c) / (2 \pi \mu)

    Rules ask for their own minimum besides, see `dead_wraps_minimum`. Source as for
    `holding_ratio`.

    Examples
    --------
    >>> import ropewalk as rw
    >>> print(f"{rw.drum.holding_wraps('50 kip', '5 kip', 0.1):.2f}")
    3.66
    """
    ...


@face("drum.barrel_pressure")
def barrel_pressure(
    rope_tension: QuantityLike,
    barrel_diameter: QuantityLike,
    pitch: QuantityLike,
    layer_factor: NumberLike,
    *,
    outside_validity: Policy = "raise",
    return_status: bool = False,
    threads: int = 1,
) -> Quantity:
    r"""Pressure of the rope on the barrel, spread over the pitch.

    .. math:: p = 2 C T / (D\,t_p)

    Exact equilibrium of one layer, C = 1; `layer_factor` has C for more. On its own projected area
    the rope presses with `ropewalk.sheave.bearing_pressure`. Source: statics.

    Examples
    --------
    >>> import ropewalk as rw
    >>> pressure = rw.drum.barrel_pressure("220 kN", "812.8 mm", "36.5 mm", 1)
    >>> print(f"{pressure.to('MPa').magnitude:.2f} MPa")
    14.83 MPa
    """
    ...


@face("drum.barrel_hoop_stress")
def barrel_hoop_stress(
    rope_tension: QuantityLike,
    pitch: QuantityLike,
    wall_thickness: QuantityLike,
    layer_factor: NumberLike,
    *,
    outside_validity: Policy = "raise",
    return_status: bool = False,
    threads: int = 1,
) -> Quantity:
    r"""Compressive hoop stress in the wall of the barrel, class rules for lifting appliances.

    .. math:: \sigma_h = C T / (t_p\,t)

    That of a thin shell under `barrel_pressure`; bending at flanges and stiffeners comes on top.

    Source (from memory): DNV Standard for Certification 2.22, Lifting Appliances, drums.

    Examples
    --------
    >>> import ropewalk as rw
    >>> stress = rw.drum.barrel_hoop_stress("220 kN", "36.5 mm", "50 mm", 1.75)
    >>> print(f"{stress.to('MPa').magnitude:.1f} MPa")
    211.0 MPa
    """
    ...


def layer_factor(layers: int) -> float:
    """How much more than one layer some layers press on the barrel: 1 for one, 1.75 for two.

    Lower layers lose tension as the upper ones press on them. More than two layers are considered
    case by case; the factor then lies between 1, all lower layers slack, and the number of layers,
    none having lost any tension.

    Source (from memory): DNV Standard for Certification 2.22, Lifting Appliances, drums; that more
    than two layers are a case of their own: M. Popa, Forces experienced by winch drums and reels,
    18th North Sea Offshore Crane and Lifting Conference (2013).

    Parameters
    ----------
    layers : int
        Layers wound under the same tension.

    Raises
    ------
    UnknownEntryError
        For more than two layers.

    Examples
    --------
    >>> import ropewalk as rw
    >>> rw.drum.layer_factor(2)
    1.75
    """
    count = to_count("drum.layer_factor", "layers", layers)
    return float(_core.drum.layer_factor(max(-1, min(count, 10_000))))


@dataclass(frozen=True, slots=True)
class FleetAngleLimit:
    """Fleet angles between which a rope winds well, and who says so.

    Attributes
    ----------
    standard
        Publication.
    groove
        Kind of drum: ``"smooth"``, ``"grooved"``, ``"parallel"``.
    minimum_si, maximum_si
        Angles, rad. The largest angle, at the flange, should lie between them: with less the rope
        piles up there; 0 where no least angle is given.
    source
        Page or table.
    standing
        ``"published"``, or ``"from memory"`` if not yet compared with a printed copy.
    """

    standard: str
    groove: str
    minimum_si: float
    maximum_si: float
    source: str
    standing: str

    @property
    def minimum(self) -> Quantity:
        """Least angle at the flange."""
        return to_quantity(self.minimum_si, "angle")

    @property
    def maximum(self) -> Quantity:
        """Largest angle."""
        return to_quantity(self.maximum_si, "angle")


def _limit(record: dict[str, Any]) -> FleetAngleLimit:
    angles = {"minimum_si": record.pop("minimum"), "maximum_si": record.pop("maximum")}
    return FleetAngleLimit(**record, **angles)


def fleet_angle_limit(groove: str, standard: str = "Wire Rope Users Manual") -> FleetAngleLimit:
    """Fleet angles between which a rope winds well on a kind of drum.

    Parameters
    ----------
    groove : str
        ``"smooth"``, ``"grooved"``; ``"parallel"`` has limits of its own in another publication.
    standard : str
        Publication; `fleet_angle_limits` lists them. They differ.

    Raises
    ------
    UnknownEntryError
        If there is no such entry; the message offers what there is.

    Examples
    --------
    >>> import ropewalk as rw
    >>> limit = rw.drum.fleet_angle_limit("grooved")
    >>> f"{limit.minimum.to('deg').magnitude:.1f} to {limit.maximum.to('deg').magnitude:.1f} deg"
    '0.5 to 2.0 deg'
    """
    where = "drum.fleet_angle_limit"
    record = _core.drum.fleet_angle_limit(
        to_name(where, "groove", groove), to_name(where, "standard", standard)
    )
    return _limit(record)


def fleet_angle_limits() -> list[FleetAngleLimit]:
    """Every pair of limits of the fleet angle there is, by publication.

    Examples
    --------
    >>> import ropewalk as rw
    >>> max(limit.maximum.to("deg").magnitude for limit in rw.drum.fleet_angle_limits())
    2.5
    """
    return [_limit(record) for record in _core.drum.fleet_angle_limits()]


@dataclass(frozen=True, slots=True)
class DeadWrapsMinimum:
    """Wraps that must be left on the drum, and who asks for them.

    Attributes
    ----------
    standard
        Regulation, publication or practice.
    edition
        Edition that has this value.
    value
        Least number of wraps.
    condition
        Where the block is when they are counted.
    source
        Clause or table.
    standing
        ``"published"``, ``"from memory"`` or ``"common practice"``.
    """

    standard: str
    edition: str
    value: float
    condition: str
    source: str
    standing: str


def dead_wraps_minimum(standard: str) -> DeadWrapsMinimum:
    """Wraps that a standard asks to be left on the drum.

    Local rules, the rope maker and the maker of the hoist may ask for more; they come first.

    Parameters
    ----------
    standard : str
        `dead_wraps_minimums` lists them.

    Raises
    ------
    UnknownEntryError
        If there is no such standard; the message offers what there is.

    Examples
    --------
    >>> import ropewalk as rw
    >>> rw.drum.dead_wraps_minimum("Wyoming servicing").value
    3.0
    """
    where = "drum.dead_wraps_minimum"
    return DeadWrapsMinimum(**_core.drum.dead_wraps_minimum(to_name(where, "standard", standard)))


def dead_wraps_minimums() -> list[DeadWrapsMinimum]:
    """Every minimum of dead wraps there is.

    Examples
    --------
    >>> import ropewalk as rw
    >>> [minimum.value for minimum in rw.drum.dead_wraps_minimums()]
    [3.0, 5.0, 6.0]
    """
    return [DeadWrapsMinimum(**record) for record in _core.drum.dead_wraps_minimums()]


def table(name: str) -> list[dict[str, Any]]:
    """List one table of this subject as plain records, with source and standing of each value.

    Parameters
    ----------
    name : str
        ``"dead_wraps"``, ``"drum_layer_factors"``, ``"fleet_angles"`` or ``"reel_factors"``.

    Examples
    --------
    >>> import ropewalk as rw
    >>> rw.drum.table("reel_factors")[4]["factor [ft/in^3]"]
    0.925
    """
    rows: list[dict[str, Any]] = _core.drum.table(to_name("drum.table", "name", name))
    return rows
