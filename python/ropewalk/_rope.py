"""The class `Rope`: one rope, its properties and where each of them comes from."""

from __future__ import annotations

from dataclasses import dataclass, field, fields
from typing import Any, NamedTuple

from ropewalk import _core
from ropewalk._border import Quantity, QuantityLike, to_quantity, to_si
from ropewalk._names import to_name
from ropewalk.errors import UnknownEntryError

__all__ = ["Provenance", "Rope"]


class Provenance(NamedTuple):
    """Where a value comes from, and how far it can be relied on.

    Attributes
    ----------
    source
        Author or standard, edition, table or page.
    standing
        ``"published"``; ``"from memory"``, not yet compared with a printed copy; ``"derived"``,
        worked out from other values; ``"given"`` by the caller.
    """

    source: str
    standing: str


@dataclass(frozen=True, init=False, repr=False)
class Rope:
    """One wire rope of the catalog, found by construction, grade and diameter.

    The look-up is exact: a size the catalog does not have is refused with the nearest ones, and
    none is taken for it. `Rope.metric` makes a rope from the factors of EN 12385-4, `Rope.custom`
    from the values of a maker's certificate.

    Catalog values are nominal values of new rope. For a rope in service the maker's certificate
    counts, and what inspection finds.

    Parameters
    ----------
    construction : str
        Class or construction with its core: ``"6x19 IWRC"``, ``"6x26WS IWRC"``.
    grade : str
        ``"IPS"``, ``"EIPS"``, ``"EEIPS"``; metric ropes ``"1770 MPa"``.
    diameter : length
        Nominal diameter, ``"1-3/8 in"``.

    Raises
    ------
    UnknownEntryError
        If the catalog has no such rope; the message offers what it has.
    UnitError
        If the diameter is no length with a unit.

    Examples
    --------
    >>> import ropewalk as rw
    >>> rope = rw.Rope("6x19 IWRC", grade="EIPS", diameter="1.375 in")
    >>> print(f"{rope.breaking_force.to('lbf'):.0f}")
    192000 force_pound
    >>> rope.sources["breaking_force"].standing
    'published'
    >>> rw.Rope("6x19 IWRC", grade="EIPS", diameter="1.3 in")
    Traceback (most recent call last):
        ...
    ropewalk.errors.UnknownEntryError: rope.Rope(): the catalog has no diameter 1.3 in (33.02 mm) \
here; nearest sizes 1.25 in (31.75 mm) and 1.375 in (34.925 mm)
    """

    construction: str
    rope_class: str
    core: str
    grade: str
    size: str
    diameter_si: float
    breaking_force_si: float
    mass_per_length_si: float | None
    weight_per_length_si: float | None
    metallic_area_si: float | None
    outer_wire_diameter_si: float | None
    modulus_si: float | None
    modulus_low_load_si: float | None
    wire_strength_si: float | None
    provenance: tuple[tuple[str, Provenance], ...] = field(compare=False)
    route: str = field(compare=False)

    def __init__(self, construction: str, *, grade: str, diameter: QuantityLike) -> None:
        where = "rope.Rope"
        record = _core.rope.find(
            to_name(where, "construction", construction),
            to_name(where, "grade", grade),
            to_si(where, "diameter", diameter, "length"),
        )
        self._fill(record, "catalog")

    @classmethod
    def metric(cls, rope_class: str, *, wire_grade: QuantityLike, diameter: QuantityLike) -> Rope:
        """Make a rope of EN 12385-4 from the factors of its class.

        Parameters
        ----------
        rope_class : str
            Class and core, ``"6x36 IWRC"``; `ropewalk.rope.factors` lists them.
        wire_grade : stress
            Rope grade, ``"1770 MPa"``.
        diameter : length
            Nominal diameter; any, since the factors hold for all.

        Examples
        --------
        >>> import ropewalk as rw
        >>> rope = rw.Rope.metric("6x36 IWRC", wire_grade="1770 MPa", diameter="32 mm")
        >>> print(f"{rope.breaking_force.to('kN'):.1f}")
        645.2 kilonewton
        """
        where = "rope.Rope.metric"
        record = _core.rope.from_factors(
            to_name(where, "rope_class", rope_class),
            to_si(where, "wire_grade", wire_grade, "stress"),
            to_si(where, "diameter", diameter, "length"),
        )
        return cls._of(record, "metric")

    @classmethod
    def custom(
        cls,
        construction: str,
        *,
        grade: str,
        diameter: QuantityLike,
        breaking_force: QuantityLike,
        mass_per_length: QuantityLike,
        metallic_area: QuantityLike | None = None,
        outer_wire_diameter: QuantityLike | None = None,
        modulus: QuantityLike | None = None,
        wire_strength: QuantityLike | None = None,
        source: str = "given by the caller",
    ) -> Rope:
        """Make a rope from the values of a maker's certificate.

        Names are free text. What is left out is not known; asking for it raises an error.

        Parameters
        ----------
        construction, grade : str
            As the certificate names them.
        diameter : length
            Nominal diameter.
        breaking_force : force
            Minimum breaking force.
        mass_per_length : mass per length
            Mass of the lubricated rope per length.
        metallic_area : area, optional
            Metallic cross section; at most the circle of the rope.
        outer_wire_diameter : length, optional
            Diameter of the outer wires.
        modulus : stress, optional
            Modulus of elasticity of the rope on its metallic area.
        wire_strength : stress, optional
            Tensile strength of the wires.
        source : str
            Where the values come from, e.g. the number of the certificate.

        Examples
        --------
        >>> import ropewalk as rw
        >>> rope = rw.Rope.custom(
        ...     "6x31WS IWRC",
        ...     grade="EIPS",
        ...     diameter="1.5 in",
        ...     breaking_force="240 kip",
        ...     mass_per_length="4.3 lb/ft",
        ...     source="certificate 1188 (invented)",
        ... )
        >>> rope.sources["breaking_force"]
        Provenance(source='certificate 1188 (invented)', standing='given')
        """
        where = "rope.Rope.custom"

        def optional(name: str, value: QuantityLike | None, role: str) -> Any:
            return None if value is None else to_si(where, name, value, role)

        record = _core.rope.from_certificate(
            to_name(where, "construction", construction),
            to_name(where, "grade", grade),
            to_si(where, "diameter", diameter, "length"),
            to_si(where, "breaking_force", breaking_force, "force"),
            to_si(where, "mass_per_length", mass_per_length, "mass_per_length"),
            optional("metallic_area", metallic_area, "area"),
            optional("outer_wire_diameter", outer_wire_diameter, "length"),
            optional("modulus", modulus, "stress"),
            optional("wire_strength", wire_strength, "stress"),
        )
        given = (to_name(where, "source", source), "given")
        record["sources"] = dict.fromkeys(record["sources"], given)
        return cls._of(record, "custom")

    @classmethod
    def _of(cls, record: dict[str, Any], route: str) -> Rope:
        rope = object.__new__(cls)
        rope._fill(record, route)
        return rope

    def _fill(self, record: dict[str, Any], route: str) -> None:
        """Take over a record of the core; fields end in _si where the record has a number."""
        sources = record["sources"].items()
        given: dict[str, Any] = {
            "provenance": tuple((name, Provenance(*source)) for name, source in sources),
            "route": route,
        }
        for one in fields(self):
            value = given[one.name] if one.name in given else record[one.name.removesuffix("_si")]
            object.__setattr__(self, one.name, value)

    @property
    def sources(self) -> dict[str, Provenance]:
        """Source and standing of each property that is known."""
        return dict(self.provenance)

    @property
    def diameter(self) -> Quantity:
        """Nominal diameter."""
        return to_quantity(self.diameter_si, "length")

    @property
    def breaking_force(self) -> Quantity:
        """Minimum breaking force of the new rope."""
        return self._known("breaking_force", "force")

    @property
    def mass_per_length(self) -> Quantity:
        """Mass per length of the lubricated rope."""
        return self._known("mass_per_length", "mass_per_length")

    @property
    def weight_per_length(self) -> Quantity:
        """Weight per length in air, with standard gravity."""
        return self._known("weight_per_length", "force_per_length")

    @property
    def metallic_area(self) -> Quantity:
        """Metallic cross section."""
        return self._known("metallic_area", "area")

    @property
    def outer_wire_diameter(self) -> Quantity:
        """Diameter of the outer wires; the value of the class for every construction in it."""
        return self._known("outer_wire_diameter", "length")

    @property
    def modulus(self) -> Quantity:
        """Modulus on the metallic area, at 21 % to 65 % of the breaking force."""
        return self._known("modulus", "stress")

    @property
    def modulus_low_load(self) -> Quantity:
        """Modulus on the metallic area, at loads up to 20 % of the breaking force."""
        return self._known("modulus_low_load", "stress")

    @property
    def wire_strength(self) -> Quantity:
        """Tensile strength of the wires.

        The plow-steel grades are grades of rope. For them this is the strength that with the factor
        K of the class gives the tabulated breaking force, R = F / (K d²), and is marked derived.
        """
        return self._known("wire_strength", "stress")

    def _known(self, name: str, role: str) -> Quantity:
        si = getattr(self, f"{name}_si")
        if si is None:
            where = f"rope.Rope.{name}"
            text = f"{where}: not known for {self}; Rope.custom() takes it from a certificate"
            raise UnknownEntryError(text, where, name)
        return to_quantity(si, role)

    def __repr__(self) -> str:
        names = f"{self.construction!r}, "
        if self.route == "metric":
            return f"Rope.metric({names}wire_grade={self.grade!r}, diameter={self.size!r})"
        names += f"grade={self.grade!r}, diameter={self.size!r}"
        if self.route == "catalog":
            return f"Rope({names})"
        force = f"{self.breaking_force_si / 1000:.6g} kN"
        return f"Rope.custom({names}, breaking_force={force!r}, …)"

    def __str__(self) -> str:
        return f"{self.construction}, {self.grade}, {self.size}"
