"""From the tables of a well plan to its operations: which keys a kind needs, and what agrees."""

from __future__ import annotations

from typing import TYPE_CHECKING

from ropewalk.rig.file import RigFileError
from ropewalk.rig.plan import Operation

if TYPE_CHECKING:
    from collections.abc import Mapping, Sequence

    from ropewalk.drillstring import DrillString
    from ropewalk.rig.plan_sections import MudSection, OperationSection, TubularSection

_ALWAYS = ("kind", "start", "end", "times")
_HUNG = ("string", "depth")
_MOVES = ("drag_up", "drag_down", "base_height", "block_speed", "block_acceleration")
_DRILL = ("drive", "weight_on_bit", "kelly_weight")
_HOLE = (*_HUNG, "from_depth", "stand_length")

#: Keys each kind of operation needs, and those it can have besides.
KEYS: dict[str, tuple[tuple[str, ...], tuple[str, ...]]] = {
    "drilling": (_HOLE, (*_MOVES, *_DRILL, "passes", "reams")),
    "coring": (_HOLE, (*_MOVES, *_DRILL)),
    "short trip": (_HOLE, _MOVES),
    "round trip": ((*_HUNG, "stand_length"), _MOVES),
    "trip out": ((*_HUNG, "stand_length"), (*_MOVES, "from_depth")),
    "trip in": ((*_HUNG, "stand_length"), (*_MOVES, "from_depth")),
    "casing": ((*_HUNG, "stand_length"), _MOVES),
    "singles": ((*_HUNG, "stand_length"), (*_MOVES, "from_depth")),
    "reaming": (_HOLE, (*_MOVES, "reams", "weight_on_bit")),
    "circulating": ((*_HUNG, "strokes", "travel"), _MOVES),
    "jarring": ((*_HUNG, "strokes", "travel", "overpull"), _MOVES),
    "waiting": ((), ()),
    "slip": (("length",), ()),
    "cut": (("length",), ()),
}


def make_strings(
    mud: MudSection, string: Mapping[str, Sequence[TubularSection]]
) -> dict[str, DrillString]:
    """Return the strings of a plan by name."""
    from ropewalk._units import Q
    from ropewalk.drillstring import DrillString, Section

    return {
        name: DrillString(
            [
                Section(part.name, Q(part.length, "m"), Q(part.mass_per_length, "kg/m"))
                for part in parts
            ],
            mud_density=Q(mud.density, "kg/m**3"),
            steel_density=Q(mud.steel_density, "kg/m**3"),
        )
        for name, parts in string.items()
    }


def make_operations(
    sections: Sequence[OperationSection], strings: Mapping[str, DrillString]
) -> tuple[Operation, ...]:
    """Return the operations of a plan, checked one by one and their dates together.

    Raises
    ------
    RigFileError
        With the place of the key that is missing, does not belong, or does not agree.
    """
    operations = tuple(
        _operation(one, strings, f"operation[{i}]") for i, one in enumerate(sections, 1)
    )
    check_dates(operations)
    return operations


def check_dates(operations: Sequence[Operation]) -> None:
    """Refuse operations that end before they start, or start before the one before has ended."""
    last_end, last_place = None, ""
    for i, one in enumerate(operations, 1):
        place = f"operation[{i}]"
        if (one.start is None) != (one.end is None):
            raise RigFileError(f"{place}: start and end are given together or not at all")
        if one.start is None or one.end is None:
            continue
        try:
            if one.end < one.start:
                raise RigFileError(f"{place}.end = {one.end} is before its start, {one.start}")
            if last_end is not None and one.start < last_end:
                raise RigFileError(
                    f"{place}.start = {one.start} overlaps {last_place}, which ends {last_end}"
                )
        except TypeError:
            raise RigFileError(
                f"{place}.start: dates of one plan have all an offset from UTC, or none"
            ) from None
        last_end, last_place = one.end, place


def _operation(
    section: OperationSection, strings: Mapping[str, DrillString], place: str
) -> Operation:
    _check_keys(section, place)
    from_depth = section.from_depth or 0.0
    depth = section.depth or 0.0
    string = None
    if section.string is not None:
        string = _string(section.string, depth, strings, place)
        if from_depth >= depth:
            raise RigFileError(f"{place}.from_depth must be less than depth")
    drive = section.drive or "top drive"
    reams = section.reams or 0
    if drive == "kelly" and section.reams is None:
        # The published factor says it: 3 with a reaming pass, 2 without.
        reams = int((section.passes or 0.0) >= 3.0)
    _check_drive(section, place)
    if (section.block_speed is None) != (section.block_acceleration is None):
        raise RigFileError(
            f"{place}: block_speed and block_acceleration are given together or not at all"
        )
    passes = section.passes or 0.0
    if section.kind == "drilling" and section.passes is None:
        if drive == "top drive":
            raise RigFileError(
                f"{place}.passes: missing; 3 with a kelly and a reaming pass, 2 without reaming"
            )
        passes = 3.0 if reams else 2.0
    return Operation(
        kind=section.kind,
        string_name=section.string or "",
        string=string,
        depth=depth,
        from_depth=from_depth,
        stand_length=section.stand_length or 0.0,
        times=section.times,
        drag_up=section.drag_up,
        drag_down=section.drag_down,
        passes=passes,
        start=section.start,
        end=section.end,
        drive=drive,
        reams=reams,
        strokes=section.strokes or 0,
        travel=section.travel or 0.0,
        overpull=section.overpull or 0.0,
        weight_on_bit=section.weight_on_bit or 0.0,
        kelly_weight=section.kelly_weight or 0.0,
        base_height=section.base_height,
        block_speed=section.block_speed or 0.0,
        block_acceleration=section.block_acceleration or 0.0,
        length=section.length or 0.0,
    )


def _check_keys(section: OperationSection, place: str) -> None:
    needed, allowed = KEYS[section.kind]
    for key in needed:
        if getattr(section, key) is None:
            raise RigFileError(f"{place}.{key}: missing; {section.kind} needs {', '.join(needed)}")
    known = (*_ALWAYS, *needed, *allowed)
    for key in sorted(section.model_fields_set):
        if key not in known:
            raise RigFileError(
                f"{place}.{key}: not for {section.kind}; it takes {', '.join(known)}"
            )


def _check_drive(section: OperationSection, place: str) -> None:
    if section.drive == "kelly":
        if section.kelly_weight is None:
            raise RigFileError(f"{place}.kelly_weight: missing; the kelly hangs on the hook too")
        if section.reams is not None and section.reams > 1:
            raise RigFileError(
                f"{place}.reams = {section.reams}: with a kelly each joint is reamed once, or not"
            )
    elif section.kelly_weight is not None:
        raise RigFileError(f'{place}.kelly_weight: only with drive = "kelly"')


def _string(name: str, depth: float, strings: Mapping[str, DrillString], place: str) -> DrillString:
    if name not in strings:
        known = ", ".join(sorted(strings))
        raise RigFileError(f"{place}.string: no string {name!r}; there are: {known}")
    string = strings[name]
    if depth > string.length_si * (1.0 + 1e-9):
        raise RigFileError(
            f"{place}.depth = {depth:.6g} m is more than the length of string "
            f"{name!r}, {string.length_si:.6g} m"
        )
    return string
