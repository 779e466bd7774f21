"""Wire rope: strength, mass, metallic area and modulus by construction, grade and size.

`Rope` is one rope with the source of each of its properties; `catalog`, `factors`, `grades` and
`constructions` list what is known. Catalog values are nominal values of new rope: for a rope in
service the maker's certificate counts, and what inspection finds.
"""

from __future__ import annotations

from typing import Any

from ropewalk import _core
from ropewalk._border import to_si
from ropewalk._face import NumberLike, Policy, Quantity, QuantityLike, face
from ropewalk._names import to_name
from ropewalk._rope import Provenance, Rope

__all__ = [
    "Provenance",
    "Rope",
    "area_from_factor",
    "breaking_force_from_factor",
    "catalog",
    "constructions",
    "factors",
    "grades",
    "mass_from_factor",
]

_UNITS_OF_RECORDS = {
    "diameter": "m",
    "breaking_force": "N",
    "mass_per_length": "kg/m",
    "weight_per_length": "N/m",
    "metallic_area": "m2",
    "outer_wire_diameter": "m",
    "modulus": "Pa",
    "modulus_low_load": "Pa",
    "wire_strength": "Pa",
}


@face("rope.breaking_force_from_factor")
def breaking_force_from_factor(
    rope_diameter: QuantityLike,
    wire_strength: QuantityLike,
    strength_factor: NumberLike,
    *,
    outside_validity: Policy = "raise",
    return_status: bool = False,
    threads: int = 1,
) -> Quantity:
    """Minimum breaking force of a rope from the factor of its class and the grade of its wires.

    .. math:: F = K d^2 R

    with K the minimum breaking force factor (`strength_factor`), d the nominal diameter and R the
    rope grade (`wire_strength`). K holds fill factor and spinning loss; `factors` lists it.

    Source: EN 12385-4; ISO 2408. By definition of K there is no range.

    Examples
    --------
    >>> import ropewalk as rw
    >>> force = rw.rope.breaking_force_from_factor("32 mm", "1770 MPa", 0.356)
    >>> print(f"{force.to('kN'):.2f}")
    645.24 kilonewton
    """
    ...


@face("rope.mass_from_factor")
def mass_from_factor(
    rope_diameter: QuantityLike,
    mass_factor: QuantityLike,
    *,
    outside_validity: Policy = "raise",
    return_status: bool = False,
    threads: int = 1,
) -> Quantity:
    """Mass per length of a rope from the factor of its class.

    .. math:: M = W d^2

    with W the mass factor, printed in kg per 100 m and square millimeter (``kg/hm/mm**2`` here),
    and d the nominal diameter.

    Source: EN 12385-4; ISO 2408. By definition of W there is no range.

    Examples
    --------
    >>> import ropewalk as rw
    >>> mass = rw.rope.mass_from_factor("32 mm", "0.409 kg/hm/mm**2")
    >>> print(f"{mass.to('kg/hm'):.1f}")
    418.8 kilogram / hectometer
    """
    ...


@face("rope.area_from_factor")
def area_from_factor(
    rope_diameter: QuantityLike,
    area_factor: NumberLike,
    *,
    outside_validity: Policy = "raise",
    return_status: bool = False,
    threads: int = 1,
) -> Quantity:
    """Metallic cross section of a rope from the factor of its class.

    .. math:: A = C d^2

    with C the metallic area factor, which is the fill factor times π/4, and d the nominal diameter.

    Source: EN 12385-4; ISO 2408. By definition of C there is no range.

    Examples
    --------
    >>> import ropewalk as rw
    >>> area = rw.rope.area_from_factor("32 mm", 0.460)
    >>> print(f"{area.to('mm**2'):.2f}")
    471.04 millimeter ** 2
    """
    ...


def catalog(
    construction: str | None = None,
    grade: str | None = None,
    diameter: QuantityLike | None = None,
) -> list[dict[str, Any]]:
    """List the ropes of the catalog as plain records, ready for a data frame.

    Parameters
    ----------
    construction, grade, diameter
        Leave out all others. Names and sizes are taken as `Rope` takes them.

    Returns
    -------
    list of dict
        One record per rope: names, size as the table prints it, each property in SI with the unit
        in the key, and its source and standing. A property that is not known is None.

    Raises
    ------
    UnknownEntryError
        If the catalog has nothing of that name or size; the message offers what it has.

    Examples
    --------
    >>> import ropewalk as rw
    >>> ropes = rw.rope.catalog(construction="6x19 IWRC", diameter="1-3/8 in")
    >>> [(rope["grade"], round(rope["breaking_force [N]"])) for rope in ropes]
    [('IPS', 742853), ('EIPS', 854059), ('EEIPS', 943023)]
    """
    where = "rope.catalog"
    records = _core.rope.catalog(
        None if construction is None else to_name(where, "construction", construction),
        None if grade is None else to_name(where, "grade", grade),
        None if diameter is None else to_si(where, "diameter", diameter, "length"),
    )
    return [_flat(record) for record in records]


def _flat(record: dict[str, Any]) -> dict[str, Any]:
    """A record of the core with units in its keys and one column per source."""
    sources = record["sources"]
    flat: dict[str, Any] = {}
    for name, value in record.items():
        unit = _UNITS_OF_RECORDS.get(name)
        if unit is not None:
            flat[f"{name} [{unit}]"] = value
        elif name != "sources":
            flat[name] = value
    for name in _UNITS_OF_RECORDS:
        if name != "diameter":
            flat[f"{name}_source"], flat[f"{name}_standing"] = sources.get(name, (None, None))
    return flat


def factors() -> list[dict[str, Any]]:
    """List the factors K, W and C of each class of rope and core, with their sources.

    Examples
    --------
    >>> import ropewalk as rw
    >>> [row["strength_factor"] for row in rw.rope.factors() if row["rope_class"] == "6x36"]
    [0.33, 0.356]
    """
    rows: list[dict[str, Any]] = _core.rope.factors()
    return rows


def grades() -> list[dict[str, Any]]:
    """List the grades of rope and what is published on the strength of their wire.

    EIPS and EEIPS are grades of rope: their tables give breaking forces, and no strength of wire is
    published for them. `Rope.wire_strength` works one back from the breaking force.

    Examples
    --------
    >>> import ropewalk as rw
    >>> [row["grade"] for row in rw.rope.grades() if row["wire_strength_low [ksi]"] is None]
    ['EIPS', 'EEIPS']
    """
    rows: list[dict[str, Any]] = _core.rope.grades()
    return rows


def constructions() -> list[dict[str, Any]]:
    """List the constructions: make-up, metallic area, outer wire and modulus, with their sources.

    Examples
    --------
    >>> import ropewalk as rw
    >>> [row["construction"] for row in rw.rope.constructions() if row["rope_class"] == "6x36"]
    ['6x36 FC', '6x36 IWRC', '6x36WS FC', '6x36WS IWRC']
    """
    rows: list[dict[str, Any]] = _core.rope.constructions()
    return rows
