"""
Rope on a drum: layers, lengths, fleet angle, holding.
"""

from __future__ import annotations
import numpy.typing
import typing

__all__: list[str] = [
    "Drum",
    "barrel_hoop_stress",
    "barrel_pressure",
    "clamp_force",
    "crossover_shift",
    "cut_length",
    "dead_wraps_minimum",
    "dead_wraps_minimums",
    "fleet_angle",
    "fleet_angle_limit",
    "fleet_angle_limits",
    "fleet_distance",
    "holding_ratio",
    "holding_wraps",
    "laps_in_traverse",
    "layer_factor",
    "mixed_layer_height",
    "pitched_layer_height",
    "reel_capacity",
    "reel_capacity_handbook",
    "rope_on_drum",
    "table",
]

class Drum:
    """
    Rope in layers on a drum, SI; lengths counted from the drum end.
    """
    def __init__(
        self,
        barrel_diameter: float | numpy.typing.ArrayLike,
        rope_diameter: float | numpy.typing.ArrayLike,
        laps_per_layer: float | numpy.typing.ArrayLike,
        layers: typing.SupportsInt | typing.SupportsIndex,
        layer_height: float | numpy.typing.ArrayLike,
        crossovers_per_lap: typing.SupportsInt | typing.SupportsIndex,
    ) -> None: ...
    def bend_diameter(self, layer: typing.SupportsInt | typing.SupportsIndex) -> float:
        """
        Diameter [m] of the surface the rope of a layer lies on.
        """
    def crossovers(
        self, start: float | numpy.typing.ArrayLike, end: float | numpy.typing.ArrayLike
    ) -> list[tuple[float, int, bool]]:
        """
        Distance [m], layer, and whether the layer changes, of every crossover.
        """
    def fleet_angle(
        self,
        from_drum_end: float | numpy.typing.ArrayLike,
        *,
        traverse: float | numpy.typing.ArrayLike,
        sheave_position: float | numpy.typing.ArrayLike,
        distance: float | numpy.typing.ArrayLike,
    ) -> typing.Any:
        """
        Fleet angle [rad] of the line that leaves the drum at a point of the rope [m].
        """
    def height_when_full(
        self,
        *,
        lines: float | numpy.typing.ArrayLike,
        wraps_at_lowest: float | numpy.typing.ArrayLike,
    ) -> typing.Any:
        """
        Height [m] of the block at which the drum is full.
        """
    def lap_length(self, layer: typing.SupportsInt | typing.SupportsIndex) -> float:
        """
        Rope [m] in one lap of a layer.
        """
    def layer_length(self, layer: typing.SupportsInt | typing.SupportsIndex) -> float:
        """
        Rope [m] in a full layer.
        """
    def length_before(self, layer: typing.SupportsInt | typing.SupportsIndex) -> float:
        """
        Rope [m] in all layers below a layer.
        """
    def length_of(self, wraps: float | numpy.typing.ArrayLike) -> typing.Any:
        """
        Rope [m] in so many laps.
        """
    def place(self, from_drum_end: float | numpy.typing.ArrayLike) -> tuple:
        """
        Layer, laps into it, and laps in all, of a point of the rope [m].
        """
    def place_at_height(
        self,
        block_height: float | numpy.typing.ArrayLike,
        *,
        lines: float | numpy.typing.ArrayLike,
        wraps_at_lowest: float | numpy.typing.ArrayLike,
    ) -> tuple:
        """
        Layer, laps into it, and laps in all, with the block at a height [m].
        """
    @property
    def capacity(self) -> float: ...
    @property
    def wraps(self) -> float: ...

def barrel_hoop_stress(
    rope_tension: float | numpy.typing.ArrayLike,
    pitch: float | numpy.typing.ArrayLike,
    wall_thickness: float | numpy.typing.ArrayLike,
    layer_factor: float | numpy.typing.ArrayLike,
    *,
    outside_validity: str = "raise",
    return_status: bool = False,
    threads: typing.SupportsInt | typing.SupportsIndex = 1,
) -> typing.Any:
    """
    Hoop stress in the barrel.

    In SI: rope_tension [N], pitch [m], wall_thickness [m], layer_factor [1]; gives [Pa].
    """

def barrel_pressure(
    rope_tension: float | numpy.typing.ArrayLike,
    barrel_diameter: float | numpy.typing.ArrayLike,
    pitch: float | numpy.typing.ArrayLike,
    layer_factor: float | numpy.typing.ArrayLike,
    *,
    outside_validity: str = "raise",
    return_status: bool = False,
    threads: typing.SupportsInt | typing.SupportsIndex = 1,
) -> typing.Any:
    """
    Pressure of the rope on the barrel.

    In SI: rope_tension [N], barrel_diameter [m], pitch [m], layer_factor [1]; gives [Pa].
    """

def clamp_force(
    rope_tension: float | numpy.typing.ArrayLike,
    drum_friction: float | numpy.typing.ArrayLike,
    dead_wraps: float | numpy.typing.ArrayLike,
    *,
    outside_validity: str = "raise",
    return_status: bool = False,
    threads: typing.SupportsInt | typing.SupportsIndex = 1,
) -> typing.Any:
    """
    Tension left at the fastening.

    In SI: rope_tension [N], drum_friction [1], dead_wraps [1]; gives [N].
    """

def crossover_shift(
    laps: float | numpy.typing.ArrayLike,
    crossovers_per_lap: float | numpy.typing.ArrayLike,
    *,
    outside_validity: str = "raise",
    return_status: bool = False,
    threads: typing.SupportsInt | typing.SupportsIndex = 1,
) -> typing.Any:
    """
    Laps a cut moves the crossovers.

    In SI: laps [1], crossovers_per_lap [1]; gives [1].
    """

def cut_length(
    laps: float | numpy.typing.ArrayLike,
    barrel_diameter: float | numpy.typing.ArrayLike,
    *,
    outside_validity: str = "raise",
    return_status: bool = False,
    threads: typing.SupportsInt | typing.SupportsIndex = 1,
) -> typing.Any:
    """
    Length of so many laps of the barrel.

    In SI: laps [1], barrel_diameter [m]; gives [m].
    """

def dead_wraps_minimum(standard: str) -> dict:
    """
    The minimum of dead wraps of a standard, with its source.
    """

def dead_wraps_minimums() -> list[dict]:
    """
    Every minimum of dead wraps, as dead_wraps_minimum() gives it.
    """

def fleet_angle(
    lead_offset: float | numpy.typing.ArrayLike,
    lead_distance: float | numpy.typing.ArrayLike,
    *,
    outside_validity: str = "raise",
    return_status: bool = False,
    threads: typing.SupportsInt | typing.SupportsIndex = 1,
) -> typing.Any:
    """
    Fleet angle of a lap.

    In SI: lead_offset [m], lead_distance [m]; gives [rad].
    """

def fleet_angle_limit(groove: str, standard: str) -> dict:
    """
    The limits [rad] of the fleet angle of a standard for a kind of drum, with source.
    """

def fleet_angle_limits() -> list[dict]:
    """
    Every pair of limits of the fleet angle, as fleet_angle_limit() gives it.
    """

def fleet_distance(
    lead_offset: float | numpy.typing.ArrayLike,
    fleet_angle: float | numpy.typing.ArrayLike,
    *,
    outside_validity: str = "raise",
    return_status: bool = False,
    threads: typing.SupportsInt | typing.SupportsIndex = 1,
) -> typing.Any:
    """
    Distance of the lead sheave for a fleet angle.

    In SI: lead_offset [m], fleet_angle [rad]; gives [m].
    """

def holding_ratio(
    drum_friction: float | numpy.typing.ArrayLike,
    dead_wraps: float | numpy.typing.ArrayLike,
    *,
    outside_validity: str = "raise",
    return_status: bool = False,
    threads: typing.SupportsInt | typing.SupportsIndex = 1,
) -> typing.Any:
    """
    Tension held by dead wraps over that of the fastening.

    In SI: drum_friction [1], dead_wraps [1]; gives [1].
    """

def holding_wraps(
    rope_tension: float | numpy.typing.ArrayLike,
    clamp_force: float | numpy.typing.ArrayLike,
    drum_friction: float | numpy.typing.ArrayLike,
    *,
    outside_validity: str = "raise",
    return_status: bool = False,
    threads: typing.SupportsInt | typing.SupportsIndex = 1,
) -> typing.Any:
    """
    Dead wraps that a fastening needs.

    In SI: rope_tension [N], clamp_force [N], drum_friction [1]; gives [1].
    """

def laps_in_traverse(
    traverse: float | numpy.typing.ArrayLike,
    pitch: float | numpy.typing.ArrayLike,
    *,
    outside_validity: str = "raise",
    return_status: bool = False,
    threads: typing.SupportsInt | typing.SupportsIndex = 1,
) -> typing.Any:
    """
    Whole laps between the flanges.

    In SI: traverse [m], pitch [m]; gives [1].
    """

def layer_factor(layers: typing.SupportsInt | typing.SupportsIndex) -> float:
    """
    How much more than one layer some layers press on the barrel.
    """

def mixed_layer_height(
    nested_share: float | numpy.typing.ArrayLike,
    *,
    outside_validity: str = "raise",
    return_status: bool = False,
    threads: typing.SupportsInt | typing.SupportsIndex = 1,
) -> typing.Any:
    """
    Layer height over rope diameter, partly nested.

    In SI: nested_share [1]; gives [1].
    """

def pitched_layer_height(
    pitch: float | numpy.typing.ArrayLike,
    rope_diameter: float | numpy.typing.ArrayLike,
    *,
    outside_validity: str = "raise",
    return_status: bool = False,
    threads: typing.SupportsInt | typing.SupportsIndex = 1,
) -> typing.Any:
    """
    Layer height over rope diameter, laps apart.

    In SI: pitch [m], rope_diameter [m]; gives [1].
    """

def reel_capacity(
    flange_depth: float | numpy.typing.ArrayLike,
    barrel_diameter: float | numpy.typing.ArrayLike,
    traverse: float | numpy.typing.ArrayLike,
    rope_diameter: float | numpy.typing.ArrayLike,
    *,
    outside_validity: str = "raise",
    return_status: bool = False,
    threads: typing.SupportsInt | typing.SupportsIndex = 1,
) -> typing.Any:
    """
    Rope held in stacked layers.

    In SI: flange_depth [m], barrel_diameter [m], traverse [m], rope_diameter [m]; gives [m].
    """

def reel_capacity_handbook(
    flange_depth: float | numpy.typing.ArrayLike,
    barrel_diameter: float | numpy.typing.ArrayLike,
    traverse: float | numpy.typing.ArrayLike,
    rope_diameter: float | numpy.typing.ArrayLike,
) -> float:
    """
    Rope [m] a reel holds by the handbook factor of its size.
    """

def rope_on_drum(
    rope_at_lowest: float | numpy.typing.ArrayLike,
    lines: float | numpy.typing.ArrayLike,
    block_height: float | numpy.typing.ArrayLike,
    *,
    outside_validity: str = "raise",
    return_status: bool = False,
    threads: typing.SupportsInt | typing.SupportsIndex = 1,
) -> typing.Any:
    """
    Rope on the drum with the block at a height.

    In SI: rope_at_lowest [m], lines [1], block_height [m]; gives [m].
    """

def table(name: str) -> list[dict]:
    """
    Rows of one of this subject's tables with source and standing of each value.
    """
