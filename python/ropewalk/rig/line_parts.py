"""Drum, string-up and present program of a rig, as the damage map of the line takes them."""

from __future__ import annotations

from dataclasses import dataclass
from functools import lru_cache
from typing import TYPE_CHECKING, Any

from ropewalk.rig.file import RigFileError

if TYPE_CHECKING:
    from ropewalk.drum import Drum
    from ropewalk.rig import Rig
    from ropewalk.rig.line_sections import (
        DrumSection,
        LineSection,
        ProgramSection,
        SpoolingSection,
    )


@dataclass(frozen=True, slots=True)
class Spooling:
    """The drum as the first sheave sees it, in SI.

    Attributes
    ----------
    groove
        ``"smooth"``, ``"grooved"`` or ``"parallel"``.
    traverse
        Inside width of the drum from flange to flange, m.
    distance
        From the first sheave to the drum, square to its axis, m.
    sheave_position
        Plane of that sheave from the flange of the drum end, m.
    """

    groove: str
    traverse: float
    distance: float
    sheave_position: float


@dataclass(frozen=True, slots=True)
class DrumFastening:
    """What holds the end of the line: friction on the barrel, pull the clamp holds in N."""

    friction: float
    clamp_holding: float


@dataclass(frozen=True, slots=True)
class DrumShape:
    """The drum of the drawworks, in SI.

    Attributes
    ----------
    barrel_diameter
        Diameter under the first layer, m.
    laps_per_layer
        Laps that fill one layer.
    layers
        Layers the drum holds.
    layer_height
        Rise from layer to layer, in rope diameters.
    crossovers_per_lap
        Crossovers in one lap.
    spooling
        How the line runs onto it; None if the file does not say.
    fastening
        What holds its end; None if the file does not say.
    """

    barrel_diameter: float
    laps_per_layer: float
    layers: int
    layer_height: float
    crossovers_per_lap: int
    spooling: Spooling | None = None
    fastening: DrumFastening | None = None

    def with_rope(self, rope_diameter: float) -> Drum:
        """Return the drum with a rope of a diameter in m.

        Raises
        ------
        InadmissibleError
            If there can be no such drum.
        """
        return _drum(
            self.barrel_diameter,
            rope_diameter,
            self.laps_per_layer,
            self.layers,
            self.layer_height,
            self.crossovers_per_lap,
        )


@lru_cache(maxsize=64)
def _drum(barrel_diameter: float, rope_diameter: float, *rest: Any) -> Drum:
    """Drum of these numbers; rules of one rig ask for the same one again and again."""
    from ropewalk._units import Q
    from ropewalk.drum import Drum

    return Drum(Q(barrel_diameter, "m"), Q(rope_diameter, "m"), *rest)


@dataclass(frozen=True, slots=True)
class Wear:
    """What else wears the line, as bending cycles one event counts as; nothing is published.

    Attributes
    ----------
    crossover, layer_change
        A crossover or change of layer on the drum, each time it is spooled on or off; counts in
        half cycles, as spooling itself does.
    pick_up
        A pick-up of the load.
    dead_line_sheave, anchor
        The fixed points, each time the load is picked up.
    crossover_length
        Rope one crossover or change of layer wears, m.
    reverse_bend
        How many simple bends one reverse bend counts as.
    """

    crossover: float = 0.0
    layer_change: float = 0.0
    pick_up: float = 0.0
    dead_line_sheave: float = 0.0
    anchor: float = 0.0
    crossover_length: float | None = None
    reverse_bend: float | None = None


@dataclass(frozen=True, slots=True)
class StringUp:
    """The line as it is strung up, in SI.

    Attributes
    ----------
    supply
        Length of the new line from the first drum end to the end of the reel, m.
    dead_line
        From the anchor to the dead-line sheave, m.
    fast_line
        From the last crown or lead sheave to the drum, m.
    wraps_at_lowest
        Laps on the drum with the block at its lowest.
    reverse_bends
        Where the line bends against the bend before: ``"drum"``, ``"lead sheave 1"``,
        ``"crown sheave 1"``, ``"traveling sheave 1"``.
    wear
        Weights of wear other than bending.
    """

    supply: float
    dead_line: float
    fast_line: float
    wraps_at_lowest: float
    reverse_bends: tuple[str, ...]
    wear: Wear


@dataclass(frozen=True, slots=True)
class Practice:
    """How the line is slipped and cut today, in SI; one of the intervals is given.

    Attributes
    ----------
    slip, cut
        Line slipped, and cut, each time, m.
    every
        Work of the line between slips, J.
    every_trips
        Round trips between slips.
    """

    slip: float
    cut: float
    every: float | None
    every_trips: float | None


def make_drum(section: DrumSection | None) -> DrumShape | None:
    """Return the drum of ``[drum]``."""
    if section is None:
        return None
    from ropewalk._drum import layer_height_number

    shape = section.model_dump()
    shape["layer_height"] = layer_height_number(section.layer_height)
    shape["spooling"] = _spooling(section.spooling)
    fastening = section.fastening
    shape["fastening"] = DrumFastening(**fastening.model_dump()) if fastening else None
    return DrumShape(**shape)


def _spooling(section: SpoolingSection | None) -> Spooling | None:
    if section is None:
        return None
    position = (
        section.traverse / 2.0 if section.sheave_position is None else section.sheave_position
    )
    if position > section.traverse:
        raise RigFileError(
            f"drum.spooling.sheave_position = {position:g} m lies beyond the drum, which is "
            f"{section.traverse:g} m wide"
        )
    return Spooling(section.groove, section.traverse, section.distance, position)


def make_string_up(section: LineSection | None, lines: int, lead_sheaves: int) -> StringUp | None:
    """Return the string-up of ``[line]``; refuse what does not go together."""
    if section is None:
        return None
    wear = Wear(**section.wear.model_dump())
    if (wear.crossover or wear.layer_change) and wear.crossover_length is None:
        raise RigFileError(
            "line.wear.crossover_length: missing; a crossover or layer_change that counts needs "
            "the length of rope it wears"
        )
    if section.reverse_bends and wear.reverse_bend is None:
        raise RigFileError(
            "line.wear.reverse_bend: missing; line.reverse_bends needs how many simple bends one "
            "reverse bend counts as (2 in DIN 15020, from memory)"
        )
    if wear.reverse_bend is not None and wear.reverse_bend < 1.0:
        raise RigFileError(
            f"line.wear.reverse_bend = {wear.reverse_bend:g}: a reverse bend counts as one "
            "simple bend at least"
        )
    sheaves = {"lead": lead_sheaves, "crown": lines // 2, "traveling": lines // 2}
    known = ["drum", *(f"{k} sheave {i + 1}" for k, count in sheaves.items() for i in range(count))]
    for name in section.reverse_bends:
        if name not in known:
            raise RigFileError(
                f"line.reverse_bends: no {name!r} on this rig; there are: {', '.join(known)}"
            )
    if len(set(section.reverse_bends)) != len(section.reverse_bends):
        raise RigFileError("line.reverse_bends: each place may stand there once")
    return StringUp(
        supply=section.supply,
        dead_line=section.dead_line,
        fast_line=section.fast_line,
        wraps_at_lowest=section.wraps_at_lowest,
        reverse_bends=tuple(section.reverse_bends),
        wear=wear,
    )


def make_practice(section: ProgramSection | None) -> Practice | None:
    """Return the practice of ``[program]``; it counts work or trips."""
    if section is None:
        return None
    if (section.every is None) == (section.every_trips is None):
        raise RigFileError(
            "program: one of every (work of the line) and every_trips (round trips) must be given"
        )
    return Practice(**section.model_dump())


def drum_of(rig: Rig) -> Drum:
    """Return the drum of a rig with its rope."""
    assert rig.drum is not None
    return rig.drum.with_rope(rig.rope.diameter_si)
