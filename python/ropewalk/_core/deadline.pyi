"""
The weight indicator at the dead line, the anchor.
"""

from __future__ import annotations
import collections.abc
import numpy
import numpy.typing
import ropewalk._core.reeving
import typing

__all__: list[str] = [
    "Indicator",
    "anchor_capacity",
    "cell_force",
    "clamps_needed",
    "deflection_force",
    "fit_friction",
    "friction_from_readings",
    "friction_uncertainty",
    "hoisting_ratio",
    "hook_load_from_readings",
    "hook_load_hoisting",
    "hook_load_lowering",
    "lowering_ratio",
    "pin_force",
    "tension_from_cell",
    "tension_from_deflection",
    "tension_from_pin",
    "tension_from_pressure",
]

class Indicator:
    """
    A weight indicator on a reeving.
    """
    def __init__(
        self,
        arrangement: ropewalk._core.reeving.Arrangement,
        lines_set: typing.SupportsInt | typing.SupportsIndex,
    ) -> None: ...
    def error_of(self, believed: Indicator, motion: str) -> float:
        """
        Error of the hook load another indicator makes of the reading, over the hook load.
        """
    def ratio(self, motion: str) -> float:
        """
        Reading over true hook load.
        """

def anchor_capacity(
    clamps: float | numpy.typing.ArrayLike,
    clamp_holding: float | numpy.typing.ArrayLike,
    anchor_friction: float | numpy.typing.ArrayLike,
    anchor_wraps: float | numpy.typing.ArrayLike,
    *,
    outside_validity: str = "raise",
    return_status: bool = False,
    threads: typing.SupportsInt | typing.SupportsIndex = 1,
) -> typing.Any:
    """
    Pull at which the line slips through the anchor.

    In SI: clamps [1], clamp_holding [N], anchor_friction [1], anchor_wraps [1]; gives [N].
    """

def cell_force(
    rope_tension: float | numpy.typing.ArrayLike,
    anchor_radius: float | numpy.typing.ArrayLike,
    cell_arm: float | numpy.typing.ArrayLike,
    *,
    outside_validity: str = "raise",
    return_status: bool = False,
    threads: typing.SupportsInt | typing.SupportsIndex = 1,
) -> typing.Any:
    """
    Force on the load cell of an anchor.

    In SI: rope_tension [N], anchor_radius [m], cell_arm [m]; gives [N].
    """

def clamps_needed(
    rope_tension: float | numpy.typing.ArrayLike,
    clamp_holding: float | numpy.typing.ArrayLike,
    anchor_friction: float | numpy.typing.ArrayLike,
    anchor_wraps: float | numpy.typing.ArrayLike,
    *,
    outside_validity: str = "raise",
    return_status: bool = False,
    threads: typing.SupportsInt | typing.SupportsIndex = 1,
) -> typing.Any:
    """
    Clamps that hold a pull on the dead line.

    In SI: rope_tension [N], clamp_holding [N], anchor_friction [1], anchor_wraps [1]; gives [1].
    """

def deflection_force(
    rope_tension: float | numpy.typing.ArrayLike,
    deflection: float | numpy.typing.ArrayLike,
    half_span: float | numpy.typing.ArrayLike,
    *,
    outside_validity: str = "raise",
    return_status: bool = False,
    threads: typing.SupportsInt | typing.SupportsIndex = 1,
) -> typing.Any:
    """
    Force that deflects a line between two supports.

    In SI: rope_tension [N], deflection [m], half_span [m]; gives [N].
    """

def fit_friction(
    readings: typing.Annotated[numpy.typing.ArrayLike, numpy.float64],
    down: collections.abc.Sequence[bool],
    loads: collections.abc.Sequence[typing.SupportsInt | typing.SupportsIndex],
    lines: typing.SupportsInt | typing.SupportsIndex,
    dead_line_sheave_turns: bool,
    confidence: typing.SupportsFloat | typing.SupportsIndex,
) -> dict:
    """
    Sheave friction and true loads [N] by least squares on a log of slow moves.
    """

def friction_from_readings(
    reading_hoisting: float | numpy.typing.ArrayLike,
    reading_lowering: float | numpy.typing.ArrayLike,
    lines: float | numpy.typing.ArrayLike,
    turning_dead_line_sheaves: float | numpy.typing.ArrayLike,
    *,
    outside_validity: str = "raise",
    return_status: bool = False,
    threads: typing.SupportsInt | typing.SupportsIndex = 1,
) -> typing.Any:
    """
    Sheave friction from two readings.

    In SI: reading_hoisting [N], reading_lowering [N], lines [1], turning_dead_line_sheaves [1]; gives [1].
    """

def friction_uncertainty(
    sheave_friction: float | numpy.typing.ArrayLike,
    lines: float | numpy.typing.ArrayLike,
    turning_dead_line_sheaves: float | numpy.typing.ArrayLike,
    reading_uncertainty: float | numpy.typing.ArrayLike,
    *,
    outside_validity: str = "raise",
    return_status: bool = False,
    threads: typing.SupportsInt | typing.SupportsIndex = 1,
) -> typing.Any:
    """
    Uncertainty of the friction from two readings.

    In SI: sheave_friction [1], lines [1], turning_dead_line_sheaves [1], reading_uncertainty [1]; gives [1].
    """

def hoisting_ratio(
    lines: float | numpy.typing.ArrayLike,
    sheave_friction: float | numpy.typing.ArrayLike,
    turning_dead_line_sheaves: float | numpy.typing.ArrayLike,
    *,
    outside_validity: str = "raise",
    return_status: bool = False,
    threads: typing.SupportsInt | typing.SupportsIndex = 1,
) -> typing.Any:
    """
    Indicated over true hook load, hoisting.

    In SI: lines [1], sheave_friction [1], turning_dead_line_sheaves [1]; gives [1].
    """

def hook_load_from_readings(
    reading_hoisting: float | numpy.typing.ArrayLike,
    reading_lowering: float | numpy.typing.ArrayLike,
    lines: float | numpy.typing.ArrayLike,
    turning_dead_line_sheaves: float | numpy.typing.ArrayLike,
    *,
    outside_validity: str = "raise",
    return_status: bool = False,
    threads: typing.SupportsInt | typing.SupportsIndex = 1,
) -> typing.Any:
    """
    True hook load from two readings.

    In SI: reading_hoisting [N], reading_lowering [N], lines [1], turning_dead_line_sheaves [1]; gives [N].
    """

def hook_load_hoisting(
    indicated_load: float | numpy.typing.ArrayLike,
    lines: float | numpy.typing.ArrayLike,
    sheave_friction: float | numpy.typing.ArrayLike,
    turning_dead_line_sheaves: float | numpy.typing.ArrayLike,
    *,
    outside_validity: str = "raise",
    return_status: bool = False,
    threads: typing.SupportsInt | typing.SupportsIndex = 1,
) -> typing.Any:
    """
    True hook load behind a reading, hoisting.

    In SI: indicated_load [N], lines [1], sheave_friction [1], turning_dead_line_sheaves [1]; gives [N].
    """

def hook_load_lowering(
    indicated_load: float | numpy.typing.ArrayLike,
    lines: float | numpy.typing.ArrayLike,
    sheave_friction: float | numpy.typing.ArrayLike,
    turning_dead_line_sheaves: float | numpy.typing.ArrayLike,
    *,
    outside_validity: str = "raise",
    return_status: bool = False,
    threads: typing.SupportsInt | typing.SupportsIndex = 1,
) -> typing.Any:
    """
    True hook load behind a reading, lowering.

    In SI: indicated_load [N], lines [1], sheave_friction [1], turning_dead_line_sheaves [1]; gives [N].
    """

def lowering_ratio(
    lines: float | numpy.typing.ArrayLike,
    sheave_friction: float | numpy.typing.ArrayLike,
    turning_dead_line_sheaves: float | numpy.typing.ArrayLike,
    *,
    outside_validity: str = "raise",
    return_status: bool = False,
    threads: typing.SupportsInt | typing.SupportsIndex = 1,
) -> typing.Any:
    """
    Indicated over true hook load, lowering.

    In SI: lines [1], sheave_friction [1], turning_dead_line_sheaves [1]; gives [1].
    """

def pin_force(
    rope_tension: float | numpy.typing.ArrayLike,
    wrap_angle: float | numpy.typing.ArrayLike,
    *,
    outside_validity: str = "raise",
    return_status: bool = False,
    threads: typing.SupportsInt | typing.SupportsIndex = 1,
) -> typing.Any:
    """
    Force on the pin of a sheave.

    In SI: rope_tension [N], wrap_angle [rad]; gives [N].
    """

def tension_from_cell(
    sensor_force: float | numpy.typing.ArrayLike,
    anchor_radius: float | numpy.typing.ArrayLike,
    cell_arm: float | numpy.typing.ArrayLike,
    *,
    outside_validity: str = "raise",
    return_status: bool = False,
    threads: typing.SupportsInt | typing.SupportsIndex = 1,
) -> typing.Any:
    """
    Tension from the force on the cell of an anchor.

    In SI: sensor_force [N], anchor_radius [m], cell_arm [m]; gives [N].
    """

def tension_from_deflection(
    sensor_force: float | numpy.typing.ArrayLike,
    deflection: float | numpy.typing.ArrayLike,
    half_span: float | numpy.typing.ArrayLike,
    *,
    outside_validity: str = "raise",
    return_status: bool = False,
    threads: typing.SupportsInt | typing.SupportsIndex = 1,
) -> typing.Any:
    """
    Tension from the force that deflects a line.

    In SI: sensor_force [N], deflection [m], half_span [m]; gives [N].
    """

def tension_from_pin(
    sensor_force: float | numpy.typing.ArrayLike,
    wrap_angle: float | numpy.typing.ArrayLike,
    *,
    outside_validity: str = "raise",
    return_status: bool = False,
    threads: typing.SupportsInt | typing.SupportsIndex = 1,
) -> typing.Any:
    """
    Tension from the force on the pin of a sheave.

    In SI: sensor_force [N], wrap_angle [rad]; gives [N].
    """

def tension_from_pressure(
    cell_pressure: float | numpy.typing.ArrayLike,
    cell_area: float | numpy.typing.ArrayLike,
    anchor_radius: float | numpy.typing.ArrayLike,
    cell_arm: float | numpy.typing.ArrayLike,
    *,
    outside_validity: str = "raise",
    return_status: bool = False,
    threads: typing.SupportsInt | typing.SupportsIndex = 1,
) -> typing.Any:
    """
    Tension from the pressure in a hydraulic cell.

    In SI: cell_pressure [Pa], cell_area [m2], anchor_radius [m], cell_arm [m]; gives [N].
    """
