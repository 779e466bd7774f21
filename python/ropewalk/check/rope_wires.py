"""Rules for broken wires that an inspection found on the line."""

from __future__ import annotations

import math
from collections.abc import Callable, Iterator
from typing import TYPE_CHECKING

from ropewalk.check.facts import text
from ropewalk.check.rope_findings import (
    CRANES,
    DRILLING,
    ISO,
    MINES,
    SERVICING,
    as_found,
    finding,
    rope_rule,
    rows_of,
    source_of,
)
from ropewalk.check.rule import CannotTell, Measured, NotApplicable
from ropewalk.check.verdict import Severity

if TYPE_CHECKING:
    from ropewalk.check.facts import Facts

__all__ = ["RULES"]


def _kept(limit: float, at_limit: str) -> int:
    """Most wires that may be broken, of a limit that is itself kept or out."""
    return math.floor(limit + 1e-9) if at_limit == "kept" else math.ceil(limit - 1e-9) - 1


def _wires(facts: Facts) -> tuple[int, int]:
    """Strands, and wires in each without fillers, of the line."""
    from ropewalk import rope

    name = facts.rig.rope.construction
    rows = facts.once("constructions", rope.constructions)
    make_up = next((row for row in rows if row["construction"] == name), None)
    if make_up is None or make_up["wires_per_strand"] is None:
        raise CannotTell(
            f"rope.construction {name!r} does not say how many wires a strand has: give the "
            'construction, "6x19S IWRC", not the class'
        )
    wires = int(make_up["wires_per_strand"])
    if "FW" in name:
        # One filler for each gap between inner and outer wires; there are two outer to a gap.
        wires -= int(make_up["outer_wires_per_strand"]) // 2
    return int(make_up["strands"]), wires


def _broken_in_lay(facts: Facts) -> Iterator[Measured]:
    seen = finding(facts, "broken_in_lay")
    rope_class = facts.rig.rope.rope_class
    rows = [r for r in rows_of(facts, "broken_in_lay") if r["rope_class"] == rope_class]
    if not rows:
        raise NotApplicable(f"no count for class {rope_class}: see rope.broken_of_all")
    for row in rows:
        yield Measured(
            value=float(seen),
            limit=float(_kept(row["limit"], row["at_limit"])),
            source=source_of(row),
            inputs={"class": rope_class, "out at": f"{row['limit']:g} in one lay"},
        )


def _broken_in_strand(facts: Facts) -> Iterator[Measured]:
    seen = finding(facts, "broken_in_strand")
    for row in rows_of(facts, "broken_in_strand"):
        yield Measured(
            value=float(seen),
            limit=float(_kept(row["limit"], row["at_limit"])),
            source=source_of(row),
            inputs={"out at": f"{row['limit']:g} in one strand of one lay"},
        )


def _broken_of_all(facts: Facts) -> Iterator[Measured]:
    seen = finding(facts, "broken_in_lay")
    strands, wires = _wires(facts)
    # Rules that the file names come before those of other hoists.
    standard = facts.rig.limits.design_factor_standard
    rows = rows_of(facts, "broken_of_all")
    own = [row for row in rows if row["standard"] == standard]
    for row in own or [row for row in rows if row["standard"] is None]:
        yield Measured(
            value=float(seen),
            limit=float(_kept(row["limit"] * strands * wires, row["at_limit"])),
            source=source_of(row),
            inputs={
                "share": f"{row['limit']:.0%}",
                "wires of the outer strands": f"{strands} x {wires}",
            },
        )


def _broken_of_strand(facts: Facts) -> Iterator[Measured]:
    seen = finding(facts, "broken_in_strand")
    _, wires = _wires(facts)
    for row in rows_of(facts, "broken_of_strand"):
        yield Measured(
            value=float(seen),
            limit=float(_kept(row["limit"] * wires, row["at_limit"])),
            source=source_of(row),
            inputs={"share": f"{row['limit']:.0%}", "wires of a strand": f"{wires}"},
        )


def _category(facts: Facts) -> int:
    """Row of ISO 4309: as the maker says, else from the wires of the outer strands."""
    from ropewalk import _core

    given = facts.need("inspection").rope_category
    if given is not None:
        return int(given)
    name = facts.rig.rope.construction
    if "WS" in name:
        raise CannotTell(
            f"reprints of ISO 4309 differ on the category of {name}: give inspection.rope_category"
        )
    strands, wires = _wires(facts)
    for row in _core.table("iso_4309_wire_breaks"):
        if row["wires_from"] <= strands * wires <= row["wires_to"]:
            seale = wires <= 19 and name.split()[0].endswith("S")
            return max(1, int(row["category"]) - (2 if seale else 0))
    raise CannotTell(f"no category for {strands * wires} wires: give inspection.rope_category")


def _iso(on: str) -> Callable[[Facts], Iterator[Measured]]:
    def measure(facts: Facts) -> Iterator[Measured]:
        from ropewalk import _core

        seen = finding(facts, f"broken_in_{on}")
        lay = facts.need("inspection").lay
        if lay is None:
            raise CannotTell("the counts of ISO 4309 depend on the lay: give inspection.lay")
        category = _category(facts)
        for row in _core.table("iso_4309_wire_breaks"):
            if row["category"] == category:
                count = row[f"{lay}_{on}"]
                yield Measured(
                    value=float(seen),
                    limit=count - 1.0,
                    source=source_of(row),
                    inputs={"rope category": f"{category}", "lay": lay, "out at": f"{count:g}"},
                )
                return
        raise CannotTell(f"the table has no rope category {category}: 1 to 12")

    return measure


def _wire_breaks(facts: Facts) -> Iterator[Measured]:
    from ropewalk import fatigue
    from ropewalk._border import to_quantity

    seen = finding(facts, "broken_in_30d")
    rig = facts.rig
    core = "FC" if rig.rope.core == "FC" else "WRC"
    layout = {"6x19": "8x19", "6x36": "8x36 WS"}.get(rig.rope.rope_class)
    if layout is None:
        raise NotApplicable(f"the constants are not known for class {rig.rope.rope_class}")
    case = facts.largest
    tension = facts.fast_line(case.hook_load)
    diameter = min(rig.crown.diameter, rig.block.sheaves.diameter)
    constants = fatigue.discard_constants(f"{core}-{layout}")
    breaks = constants.wire_breaks(
        to_quantity(tension, "force"),
        rig.rope.diameter,
        to_quantity(diameter, "length"),
        six_strands=True,
    )
    yield Measured(
        value=float(seen),
        limit=float(breaks),
        subject=case.name,
        source=f"{constants.source} ({constants.standing})",
        inputs={
            "fast line, hoisting": text(tension, "force"),
            "sheave": text(diameter, "length"),
            "constants": f"{constants.construction}, 0.75 of it for six strands",
        },
    )


RULES = (
    rope_rule(
        "broken_in_lay",
        "Broken wires in one lay",
        "broken wires in one rope lay with one less than the number at which a hoisting line of "
        "this class is out",
        DRILLING,
        _broken_in_lay,
    ),
    rope_rule(
        "broken_in_strand",
        "Broken wires in one strand",
        "broken wires in one strand of one lay with one less than the number at which a running "
        "rope is out",
        CRANES,
        _broken_in_strand,
    ),
    rope_rule(
        "broken_of_all",
        "Broken wires of all wires",
        "broken wires in one lay with the part of the wires of the outer strands that may be",
        f"{MINES}; on servicing rigs {SERVICING}",
        _broken_of_all,
        how="[inspection], and rope.constructions without filler wires",
    ),
    rope_rule(
        "broken_of_strand",
        "Broken wires of a strand",
        "broken wires in one strand of one lay with the part of its wires that may be",
        MINES,
        _broken_of_strand,
        how="[inspection], and rope.constructions without filler wires",
    ),
    rope_rule(
        "broken_in_6d",
        "Visible broken wires on 6 diameters",
        "visible broken wires with one less than the number for the rope category, single layer",
        ISO,
        _iso("6d"),
        severity=Severity.SHOULD,
    ),
    rope_rule(
        "broken_in_30d",
        "Visible broken wires on 30 diameters",
        "visible broken wires with one less than the number for the rope category, single layer",
        ISO,
        _iso("30d"),
        severity=Severity.SHOULD,
    ),
    rope_rule(
        "broken_in_tests",
        "Visible broken wires against bending tests",
        "visible broken wires on 30 diameters with those at which ropes in bending tests were due, "
        "under the largest fast-line tension",
        "Feyrer, Wire Ropes, 2nd ed. (2015), eq. 3.83 and Table 3.18",
        _wire_breaks,
        severity=Severity.NOTE,
        how="fatigue.discard_wire_breaks",
    ),
    rope_rule(
        "valley_breaks",
        "Wires broken between strands",
        "wires broken in the valleys of one lay with the number that may be, regular lay",
        MINES,
        as_found("valley_breaks"),
    ),
)
