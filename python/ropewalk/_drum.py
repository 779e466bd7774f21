"""The rope on a drum: the classes of `ropewalk.drum`."""

from __future__ import annotations

import math
from dataclasses import dataclass
from functools import lru_cache
from typing import Any

import numpy as np

from ropewalk import _core
from ropewalk._border import NumberLike, Quantity, QuantityLike, to_count, to_quantity, to_si
from ropewalk.errors import UnknownEntryError

__all__ = ["Crossover", "Drum", "Place"]

_WHERE = "drum.Drum"

#: Rise from layer to layer over rope diameter, by name.
_LAYER_HEIGHTS = {"nested": math.sqrt(3.0) / 2.0, "stacked": 1.0}


@lru_cache(maxsize=256)
def _native(*shape: Any) -> Any:
    """Drum of the core, which nothing changes."""
    return _core.drum.Drum(*shape)


@dataclass(frozen=True, slots=True)
class Place:
    """Where a point of the rope lies on the drum; arrays if many points were asked for.

    Attributes
    ----------
    layer
        From 1; where one layer ends the next has begun.
    lap
        Laps into the layer.
    wraps
        All laps from the drum end.
    """

    layer: Any
    lap: Any
    wraps: Any


@dataclass(frozen=True, slots=True)
class Crossover:
    """A place where the rope crosses the rope below it.

    Attributes
    ----------
    from_drum_end_si
        Distance along the rope from the drum end, m.
    layer
        The layer the rope is in after it.
    layer_change
        True where the rope climbs at the flange into this layer.
    """

    from_drum_end_si: float
    layer: int
    layer_change: bool

    @property
    def from_drum_end(self) -> Quantity:
        """Distance along the rope from the drum end."""
        return to_quantity(self.from_drum_end_si, "length")


@dataclass(frozen=True, init=False, repr=False, slots=True)
class Drum:
    r"""A drum and the rope on it, counted from the drum end, where the rope is fastened.

    Layer k lies on a cylinder of diameter :math:`D_k = D + 2 (k - 1) c d`, one lap of it takes
    :math:`\pi (D_k + d)` of rope. The pitch of a lap is neglected, the rope is not flattened, and
    every layer has the same number of laps: on a helical groove, where every other layer has one
    lap less, count half a lap less in each. Source: geometry.

    Parameters
    ----------
    barrel_diameter
        Diameter the first layer lies on, at the root of the grooves.
    rope_diameter
        Nominal diameter of the rope.
    laps_per_layer
        A whole or half number; `laps_in_traverse` counts them.
    layers
        Layers that the flanges hold.
    layer_height
        Rise from layer to layer over rope diameter: ``"nested"``, each lap in the valley of two
        that touch, √3/2; ``"stacked"``, each on top of one, 1; or a number, as
        `pitched_layer_height` and `mixed_layer_height` give it.
    crossovers_per_lap
        Places a lap where the rope steps over the rope below: 1 on a smooth drum or a helical
        groove, 2 on parallel grooves, 0 to count none.

    Raises
    ------
    InadmissibleError
        If there can be no such drum.

    Examples
    --------
    >>> import ropewalk as rw
    >>> drum = rw.Drum(
    ...     barrel_diameter="32 in", rope_diameter="1-3/8 in", laps_per_layer=39, layers=4
    ... )
    >>> print(f"{drum.capacity.to('ft'):.0f}")
    1509 foot
    >>> drum.place("500 ft").layer
    2
    >>> print(f"{drum.bend_ratio(2):.1f}")
    25.0
    """

    barrel_diameter_si: float
    rope_diameter_si: float
    laps_per_layer: float
    layers: int
    layer_height: float
    crossovers_per_lap: int

    def __init__(
        self,
        barrel_diameter: QuantityLike,
        rope_diameter: QuantityLike,
        laps_per_layer: NumberLike,
        layers: int,
        layer_height: str | NumberLike = "nested",
        crossovers_per_lap: int = 1,
    ) -> None:
        values = {
            "barrel_diameter_si": to_si(_WHERE, "barrel_diameter", barrel_diameter, "length"),
            "rope_diameter_si": to_si(_WHERE, "rope_diameter", rope_diameter, "length"),
            "laps_per_layer": to_si(_WHERE, "laps_per_layer", laps_per_layer, "number"),
            "layers": _small_count("layers", layers),
            "layer_height": layer_height_number(layer_height),
            "crossovers_per_lap": _small_count("crossovers_per_lap", crossovers_per_lap),
        }
        _core.drum.Drum(*values.values())  # says what is wrong, if anything is
        for name, value in values.items():
            object.__setattr__(self, name, value if isinstance(value, int) else float(value))

    def __repr__(self) -> str:
        return (
            f"Drum('{self.barrel_diameter_si!r} m', '{self.rope_diameter_si!r} m', "
            f"{self.laps_per_layer!r}, {self.layers!r}, {self.layer_height!r}, "
            f"{self.crossovers_per_lap!r})"
        )

    def _drum(self) -> Any:
        """The computing half; beside the drum, which stays plain data."""
        return _native(
            self.barrel_diameter_si,
            self.rope_diameter_si,
            self.laps_per_layer,
            self.layers,
            self.layer_height,
            self.crossovers_per_lap,
        )

    @property
    def barrel_diameter(self) -> Quantity:
        """Diameter the first layer lies on."""
        return to_quantity(self.barrel_diameter_si, "length")

    @property
    def rope_diameter(self) -> Quantity:
        """Nominal diameter of the rope."""
        return to_quantity(self.rope_diameter_si, "length")

    @property
    def wraps(self) -> float:
        """Laps that the whole drum holds."""
        return float(self._drum().wraps)

    @property
    def capacity_si(self) -> float:
        """Rope that the drum holds, m."""
        return float(self._drum().capacity)

    @property
    def capacity(self) -> Quantity:
        """Rope that the drum holds."""
        return to_quantity(self.capacity_si, "length")

    def bend_diameter(self, layer: int) -> Quantity:
        """Diameter of the surface the rope of a layer lies on, the D of D/d."""
        return to_quantity(self._drum().bend_diameter(_small_count("layer", layer)), "length")

    def bend_ratio(self, layer: int = 1) -> float:
        """Diameter the rope of a layer is bent on over rope diameter, D/d."""
        diameter = self._drum().bend_diameter(_small_count("layer", layer))
        return float(diameter / self.rope_diameter_si)

    def lap_length(self, layer: int) -> Quantity:
        """Rope in one lap of a layer."""
        return to_quantity(self._drum().lap_length(_small_count("layer", layer)), "length")

    def layer_length(self, layer: int) -> Quantity:
        """Rope in one full layer."""
        return to_quantity(self._drum().layer_length(_small_count("layer", layer)), "length")

    def length_before(self, layer: int) -> Quantity:
        """Rope in all layers below a layer."""
        return to_quantity(self._drum().length_before(_small_count("layer", layer)), "length")

    def length_of(self, wraps: NumberLike) -> Quantity:
        """Rope in so many laps from the drum end, one number or many."""
        return to_quantity(
            self._drum().length_of(to_si(f"{_WHERE}.length_of", "wraps", wraps, "number")), "length"
        )

    def place(self, from_drum_end: QuantityLike) -> Place:
        """Place of the point of the rope at a distance from the drum end, one or many.

        Raises
        ------
        InadmissibleError
            If the drum does not hold so much rope.
        """
        where = f"{_WHERE}.place"
        return _place(self._drum().place(to_si(where, "from_drum_end", from_drum_end, "length")))

    def place_at_height(
        self, block_height: QuantityLike, *, lines: NumberLike, wraps_at_lowest: NumberLike
    ) -> Place:
        """Place where the line leaves the drum, with the block at one height or many.

        Parameters
        ----------
        block_height
            Height of the block above its lowest position.
        lines
            Number of lines strung; each gets shorter by `block_height`.
        wraps_at_lowest
            Laps on the drum with the block at its lowest position.

        Raises
        ------
        InadmissibleError
            If the drum does not hold so much rope.

        Examples
        --------
        >>> import ropewalk as rw
        >>> drum = rw.Drum("32 in", "1-3/8 in", laps_per_layer=39, layers=4)
        >>> place = drum.place_at_height("100 ft", lines=10, wraps_at_lowest=9)
        >>> print(f"layer {place.layer}, lap {place.lap:.1f}")
        layer 3, lap 37.3
        """
        where = f"{_WHERE}.place_at_height"
        found = self._drum().place_at_height(
            to_si(where, "block_height", block_height, "length"),
            lines=to_si(where, "lines", lines, "count"),
            wraps_at_lowest=to_si(where, "wraps_at_lowest", wraps_at_lowest, "number"),
        )
        return _place(found)

    def height_when_full(self, *, lines: NumberLike, wraps_at_lowest: NumberLike) -> Quantity:
        """Height of the block above its lowest position at which the drum is full.

        Parameters
        ----------
        lines
            Number of lines strung.
        wraps_at_lowest
            Laps on the drum with the block at its lowest position.
        """
        where = f"{_WHERE}.height_when_full"
        height = self._drum().height_when_full(
            lines=to_si(where, "lines", lines, "count"),
            wraps_at_lowest=to_si(where, "wraps_at_lowest", wraps_at_lowest, "number"),
        )
        return to_quantity(height, "length")

    def fleet_angle(
        self,
        from_drum_end: QuantityLike,
        *,
        traverse: QuantityLike,
        distance: QuantityLike,
        sheave_position: QuantityLike | None = None,
    ) -> Quantity:
        """Fleet angle of the line that leaves the drum at one point of the rope or many.

        The first layer fills the drum from flange to flange, the next the other way, and so on.
        That the center of the rope keeps half a rope off the flanges is neglected.

        Parameters
        ----------
        from_drum_end
            Distance along the rope from the drum end.
        traverse
            Inside width of the drum from flange to flange.
        distance
            From the lead sheave to the drum, square to its axis.
        sheave_position
            Plane of the lead sheave, from the flange of the drum end; the middle if left out.

        Returns
        -------
        angle, in rad
            Positive away from the flange of the drum end; limits hold for its absolute value.

        Examples
        --------
        >>> import ropewalk as rw
        >>> drum = rw.Drum("32 in", "1-3/8 in", laps_per_layer=39, layers=4)
        >>> angle = drum.fleet_angle("0 ft", traverse="56 in", distance="100 ft")
        >>> print(f"{angle.to('deg').magnitude:.4f}")
        -1.3367
        """
        where = f"{_WHERE}.fleet_angle"
        width = to_si(where, "traverse", traverse, "length")
        angle = self._drum().fleet_angle(
            to_si(where, "from_drum_end", from_drum_end, "length"),
            traverse=width,
            sheave_position=(
                width / 2.0
                if sheave_position is None
                else to_si(where, "sheave_position", sheave_position, "length")
            ),
            distance=to_si(where, "distance", distance, "length"),
        )
        return to_quantity(angle, "angle")

    def crossovers(
        self, start: QuantityLike | None = None, end: QuantityLike | None = None
    ) -> list[Crossover]:
        """Every crossover from `start` up to but without `end`, in order.

        From the second layer on the rope must step over the rope below, at the same angles of the
        drum in every layer; they are counted where the drum has turned a whole number of
        ``1 / crossovers_per_lap`` turns since the drum end. That angle is a convention: what
        matters is how far the crossovers move on the rope when it is slipped and cut. The first
        layer lies on the barrel and crosses nothing.

        Parameters
        ----------
        start, end
            Distances along the rope from the drum end; the whole drum if left out.

        Examples
        --------
        >>> import ropewalk as rw
        >>> drum = rw.Drum("32 in", "1-3/8 in", laps_per_layer=39, layers=2)
        >>> crossovers = drum.crossovers()
        >>> len(crossovers), crossovers[0].layer_change, crossovers[1].layer_change
        (39, True, False)
        """
        where = f"{_WHERE}.crossovers"
        drum = self._drum()
        found = drum.crossovers(
            0.0 if start is None else to_si(where, "start", start, "length"),
            drum.capacity if end is None else to_si(where, "end", end, "length"),
        )
        return [Crossover(*one) for one in found]


def _place(found: tuple[Any, Any, Any]) -> Place:
    layer, lap, wraps = found
    return Place(layer.astype(int) if np.ndim(layer) else int(layer), lap, wraps)


def _small_count(name: str, value: Any) -> int:
    """Whole number the core's int can hold; what is sensible it says itself."""
    return max(-(2**31), min(to_count(_WHERE, name, value), 2**31 - 1))


def layer_height_number(value: str | NumberLike) -> Any:
    """Rise from layer to layer over rope diameter: of a known lay, or the number given."""
    if isinstance(value, str) and value in _LAYER_HEIGHTS:
        return _LAYER_HEIGHTS[value]
    try:
        return to_si(_WHERE, "layer_height", value, "number")
    except TypeError:
        if not isinstance(value, str):
            raise
    text = f"layer_height must be 'nested', 'stacked' or a number, got {value!r}"
    raise UnknownEntryError(f"{_WHERE}(): {text}", _WHERE, "layer_height")
