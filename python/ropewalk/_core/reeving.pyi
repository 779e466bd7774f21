"""
Reeving: efficiency, line tensions, rope speeds.
"""

from __future__ import annotations
import collections.abc
import numpy
import numpy.typing
import typing

__all__: list[str] = [
    "Arrangement",
    "crown_load",
    "dead_line_tension",
    "efficiency",
    "fast_line_factor",
    "fast_line_tension",
    "fast_line_tension_at_efficiency",
    "hoisted_hook_load",
    "lowering_crown_load",
    "lowering_dead_line_tension",
    "lowering_efficiency",
    "lowering_fast_line_tension",
    "sheave_friction",
    "sheave_frictions",
    "two_drum_efficiency",
]

class Arrangement:
    """
    A reeving with the friction of every sheave, in plain SI numbers.
    """
    def __init__(
        self,
        lines: typing.SupportsFloat | typing.SupportsIndex,
        sheave_friction: collections.abc.Sequence[typing.SupportsFloat | typing.SupportsIndex],
        lead_sheaves: typing.SupportsFloat | typing.SupportsIndex = 0.0,
        lead_sheave_friction: collections.abc.Sequence[
            typing.SupportsFloat | typing.SupportsIndex
        ] = [],
        dead_line_sheave_turns: bool = False,
        dead_line_sheave_friction: typing.SupportsFloat | typing.SupportsIndex | None = None,
    ) -> None:
        """
        Frictions are lists of one value for all sheaves, or one for each.
        """
    def line_speeds(
        self, block_speed: float | numpy.typing.ArrayLike
    ) -> numpy.typing.NDArray[numpy.float64]:
        """
        Speed [m/s] of the rope over every turning sheave.
        """
    def line_travel(
        self, block_travel: float | numpy.typing.ArrayLike
    ) -> numpy.typing.NDArray[numpy.float64]:
        """
        Rope [m] that passes every turning sheave.
        """
    def sheave_rotations(
        self,
        block_speed: float | numpy.typing.ArrayLike,
        sheave_diameter: float | numpy.typing.ArrayLike,
    ) -> numpy.typing.NDArray[numpy.float64]:
        """
        Rotation [rad/s] of every turning sheave.
        """
    def tensions(
        self,
        motion: str,
        hook_load: float | numpy.typing.ArrayLike,
        block_acceleration: float | numpy.typing.ArrayLike = 0.0,
    ) -> dict:
        """
        Tensions [N] under a hook load [N]; `lines` has one more axis than the load.
        """
    @property
    def crown_sheaves(self) -> int:
        """
        Sheaves of the crown block, dead-line sheave included.
        """
    @property
    def lead_sheave_friction(self) -> list[float]:
        """
        Friction of the lead sheaves, from the crown to the drum.
        """
    @property
    def on_crown(self) -> list[bool]:
        """
        For every turning sheave whether it is on the crown.
        """
    @property
    def sheave_friction(self) -> list[float]:
        """
        Friction of turning sheave 1 to N.
        """
    @property
    def traveling_sheaves(self) -> int:
        """
        Sheaves of the traveling block.
        """

def crown_load(
    hook_load: float | numpy.typing.ArrayLike,
    lines: float | numpy.typing.ArrayLike,
    sheave_friction: float | numpy.typing.ArrayLike,
    *,
    outside_validity: str = "raise",
    return_status: bool = False,
    threads: typing.SupportsInt | typing.SupportsIndex = 1,
) -> typing.Any:
    """
    Load on the crown block while hoisting.

    In SI: hook_load [N], lines [1], sheave_friction [1]; gives [N].
    """

def dead_line_tension(
    hook_load: float | numpy.typing.ArrayLike,
    lines: float | numpy.typing.ArrayLike,
    sheave_friction: float | numpy.typing.ArrayLike,
    *,
    outside_validity: str = "raise",
    return_status: bool = False,
    threads: typing.SupportsInt | typing.SupportsIndex = 1,
) -> typing.Any:
    """
    Tension at the dead end while hoisting.

    In SI: hook_load [N], lines [1], sheave_friction [1]; gives [N].
    """

def efficiency(
    lines: float | numpy.typing.ArrayLike,
    sheave_friction: float | numpy.typing.ArrayLike,
    lead_sheaves: float | numpy.typing.ArrayLike,
    *,
    outside_validity: str = "raise",
    return_status: bool = False,
    threads: typing.SupportsInt | typing.SupportsIndex = 1,
) -> typing.Any:
    """
    Reeving efficiency while hoisting.

    In SI: lines [1], sheave_friction [1], lead_sheaves [1]; gives [1].
    """

def fast_line_factor(
    lines: float | numpy.typing.ArrayLike,
    sheave_friction: float | numpy.typing.ArrayLike,
    lead_sheaves: float | numpy.typing.ArrayLike,
    *,
    outside_validity: str = "raise",
    return_status: bool = False,
    threads: typing.SupportsInt | typing.SupportsIndex = 1,
) -> typing.Any:
    """
    Fast-line tension over hook load while hoisting.

    In SI: lines [1], sheave_friction [1], lead_sheaves [1]; gives [1].
    """

def fast_line_tension(
    hook_load: float | numpy.typing.ArrayLike,
    lines: float | numpy.typing.ArrayLike,
    sheave_friction: float | numpy.typing.ArrayLike,
    lead_sheaves: float | numpy.typing.ArrayLike,
    *,
    outside_validity: str = "raise",
    return_status: bool = False,
    threads: typing.SupportsInt | typing.SupportsIndex = 1,
) -> typing.Any:
    """
    Fast-line tension at the drum while hoisting.

    In SI: hook_load [N], lines [1], sheave_friction [1], lead_sheaves [1]; gives [N].
    """

def fast_line_tension_at_efficiency(
    hook_load: float | numpy.typing.ArrayLike,
    lines: float | numpy.typing.ArrayLike,
    reeving_efficiency: float | numpy.typing.ArrayLike,
    *,
    outside_validity: str = "raise",
    return_status: bool = False,
    threads: typing.SupportsInt | typing.SupportsIndex = 1,
) -> typing.Any:
    """
    Fast-line tension for a known efficiency.

    In SI: hook_load [N], lines [1], reeving_efficiency [1]; gives [N].
    """

def hoisted_hook_load(
    fast_line_tension: float | numpy.typing.ArrayLike,
    lines: float | numpy.typing.ArrayLike,
    sheave_friction: float | numpy.typing.ArrayLike,
    lead_sheaves: float | numpy.typing.ArrayLike,
    *,
    outside_validity: str = "raise",
    return_status: bool = False,
    threads: typing.SupportsInt | typing.SupportsIndex = 1,
) -> typing.Any:
    """
    Hook load that a fast-line tension hoists.

    In SI: fast_line_tension [N], lines [1], sheave_friction [1], lead_sheaves [1]; gives [N].
    """

def lowering_crown_load(
    hook_load: float | numpy.typing.ArrayLike,
    lines: float | numpy.typing.ArrayLike,
    sheave_friction: float | numpy.typing.ArrayLike,
    *,
    outside_validity: str = "raise",
    return_status: bool = False,
    threads: typing.SupportsInt | typing.SupportsIndex = 1,
) -> typing.Any:
    """
    Load on the crown block while lowering.

    In SI: hook_load [N], lines [1], sheave_friction [1]; gives [N].
    """

def lowering_dead_line_tension(
    hook_load: float | numpy.typing.ArrayLike,
    lines: float | numpy.typing.ArrayLike,
    sheave_friction: float | numpy.typing.ArrayLike,
    *,
    outside_validity: str = "raise",
    return_status: bool = False,
    threads: typing.SupportsInt | typing.SupportsIndex = 1,
) -> typing.Any:
    """
    Tension at the dead end while lowering.

    In SI: hook_load [N], lines [1], sheave_friction [1]; gives [N].
    """

def lowering_efficiency(
    lines: float | numpy.typing.ArrayLike,
    sheave_friction: float | numpy.typing.ArrayLike,
    lead_sheaves: float | numpy.typing.ArrayLike,
    *,
    outside_validity: str = "raise",
    return_status: bool = False,
    threads: typing.SupportsInt | typing.SupportsIndex = 1,
) -> typing.Any:
    """
    Reeving efficiency while lowering.

    In SI: lines [1], sheave_friction [1], lead_sheaves [1]; gives [1].
    """

def lowering_fast_line_tension(
    hook_load: float | numpy.typing.ArrayLike,
    lines: float | numpy.typing.ArrayLike,
    sheave_friction: float | numpy.typing.ArrayLike,
    lead_sheaves: float | numpy.typing.ArrayLike,
    *,
    outside_validity: str = "raise",
    return_status: bool = False,
    threads: typing.SupportsInt | typing.SupportsIndex = 1,
) -> typing.Any:
    """
    Fast-line tension at the drum while lowering.

    In SI: hook_load [N], lines [1], sheave_friction [1], lead_sheaves [1]; gives [N].
    """

def sheave_friction(bearing: str) -> float:
    """
    Tabulated friction of a turning sheave by its bearing.
    """

def sheave_frictions() -> list[dict]:
    """
    The tabulated sheave frictions with source and standing.
    """

def two_drum_efficiency(
    lines: float | numpy.typing.ArrayLike,
    sheave_friction: float | numpy.typing.ArrayLike,
    lead_sheaves: float | numpy.typing.ArrayLike,
    *,
    outside_validity: str = "raise",
    return_status: bool = False,
    threads: typing.SupportsInt | typing.SupportsIndex = 1,
) -> typing.Any:
    """
    Reeving efficiency with both rope ends on drums.

    In SI: lines [1], sheave_friction [1], lead_sheaves [1]; gives [1].
    """
