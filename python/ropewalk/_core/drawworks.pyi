"""
Drawworks: power, speed and load, inertia, time and energy.
"""

from __future__ import annotations
import collections.abc
import numpy.typing
import ropewalk._core.drum
import ropewalk._core.reeving
import typing

__all__: list[str] = [
    "Hoist",
    "check_limits",
    "drum_speed",
    "drum_torque",
    "hoisting_power",
    "hoisting_speed",
    "hook_equivalent_mass",
    "hook_power",
    "motor_torque",
    "power_for_depth",
    "reflected_inertia",
    "rig_sizes",
    "sheave_equivalent_mass",
    "size_for_depth",
    "stand_peak_speed",
    "stand_time",
    "table",
]

class Hoist:
    """
    A drawworks with its drum and the line strung up, SI.
    """
    def __init__(
        self,
        *,
        motors: tuple[
            typing.SupportsInt | typing.SupportsIndex,
            typing.SupportsFloat | typing.SupportsIndex,
            typing.SupportsFloat | typing.SupportsIndex,
            typing.SupportsFloat | typing.SupportsIndex,
            typing.SupportsFloat | typing.SupportsIndex,
            typing.SupportsFloat | typing.SupportsIndex,
            typing.SupportsFloat | typing.SupportsIndex | None,
        ],
        gears: collections.abc.Sequence[
            tuple[
                typing.SupportsFloat | typing.SupportsIndex,
                typing.SupportsFloat | typing.SupportsIndex,
                typing.SupportsFloat | typing.SupportsIndex,
            ]
        ],
        drum_efficiency: typing.SupportsFloat | typing.SupportsIndex,
        drum_inertia: typing.SupportsFloat | typing.SupportsIndex,
        drum: ropewalk._core.drum.Drum,
        reeving: ropewalk._core.reeving.Arrangement,
        wraps_at_lowest: typing.SupportsFloat | typing.SupportsIndex,
        line_limit: typing.SupportsFloat | typing.SupportsIndex | None,
        sheave_mass: typing.SupportsFloat | typing.SupportsIndex,
    ) -> None: ...
    def acceleration(
        self,
        hook_load: float | numpy.typing.ArrayLike,
        speed: float | numpy.typing.ArrayLike,
        gear: typing.SupportsInt | typing.SupportsIndex,
        layer: typing.SupportsInt | typing.SupportsIndex,
        overload: bool,
    ) -> typing.Any:
        """
        Acceleration [m/s2] available with a load [N] at a speed [m/s].
        """
    def drive(
        self,
        gear: typing.SupportsInt | typing.SupportsIndex,
        layer: typing.SupportsInt | typing.SupportsIndex,
        overload: bool,
    ) -> dict:
        """
        What a gear gives at the hook on a layer, SI.
        """
    def layer_at(self, block_height: float | numpy.typing.ArrayLike) -> int:
        """
        Layer with the block at a height [m].
        """
    def layer_radius(self, layer: typing.SupportsInt | typing.SupportsIndex) -> float:
        """
        Radius [m] at which the fast line pulls in a layer.
        """
    def motor_torque(
        self,
        hook_load: typing.SupportsFloat | typing.SupportsIndex,
        acceleration: typing.SupportsFloat | typing.SupportsIndex,
        gear: typing.SupportsInt | typing.SupportsIndex,
        layer: typing.SupportsInt | typing.SupportsIndex,
    ) -> float:
        """
        Torque [N*m/rad] of each motor for a load [N] and an acceleration [m/s2].
        """
    def steady_pull(
        self,
        speed: float | numpy.typing.ArrayLike,
        gear: typing.SupportsInt | typing.SupportsIndex,
        layer: typing.SupportsInt | typing.SupportsIndex,
        overload: bool,
    ) -> typing.Any:
        """
        Hook load [N] hoisted steadily at a speed [m/s].
        """
    def steady_speed(
        self,
        hook_load: float | numpy.typing.ArrayLike,
        gear: typing.SupportsInt | typing.SupportsIndex,
        layer: typing.SupportsInt | typing.SupportsIndex,
        overload: bool,
    ) -> typing.Any:
        """
        Speed [m/s] at which a load [N] is hoisted steadily, 0 if it cannot be.
        """
    def stroke_curve(
        self,
        *,
        up: bool,
        hook_load: typing.SupportsFloat | typing.SupportsIndex,
        base_height: typing.SupportsFloat | typing.SupportsIndex,
        travel: typing.SupportsFloat | typing.SupportsIndex,
        speed: typing.SupportsFloat | typing.SupportsIndex,
        acceleration: typing.SupportsFloat | typing.SupportsIndex,
        deceleration: typing.SupportsFloat | typing.SupportsIndex,
        overload: bool,
        gear: typing.SupportsInt | typing.SupportsIndex,
        points_per_piece: typing.SupportsInt | typing.SupportsIndex,
    ) -> dict:
        """
        Points of one stroke, as columns in SI.
        """
    def strokes(
        self,
        *,
        up: bool,
        hook_loads: collections.abc.Sequence[typing.SupportsFloat | typing.SupportsIndex],
        base_height: typing.SupportsFloat | typing.SupportsIndex,
        travel: typing.SupportsFloat | typing.SupportsIndex,
        speed: typing.SupportsFloat | typing.SupportsIndex,
        acceleration: typing.SupportsFloat | typing.SupportsIndex,
        deceleration: typing.SupportsFloat | typing.SupportsIndex,
        overload: bool,
        gear: typing.SupportsInt | typing.SupportsIndex,
    ) -> dict:
        """
        Strokes of the block with each of the loads [N], as columns in SI; gear 0: the best.
        """
    @property
    def gears(self) -> int: ...
    @property
    def layers(self) -> int: ...

def check_limits(
    *,
    speed: typing.SupportsFloat | typing.SupportsIndex,
    acceleration: typing.SupportsFloat | typing.SupportsIndex,
    deceleration: typing.SupportsFloat | typing.SupportsIndex,
    lowering_speed: typing.SupportsFloat | typing.SupportsIndex,
) -> None:
    """
    Raise for limits [m/s, m/s2] that cannot be.
    """

def drum_speed(
    block_speed: float | numpy.typing.ArrayLike,
    lines: float | numpy.typing.ArrayLike,
    lap_diameter: float | numpy.typing.ArrayLike,
    *,
    outside_validity: str = "raise",
    return_status: bool = False,
    threads: typing.SupportsInt | typing.SupportsIndex = 1,
) -> typing.Any:
    """
    Rotation of the drum.

    In SI: block_speed [m/s], lines [1], lap_diameter [m]; gives [rad/s].
    """

def drum_torque(
    fast_line_tension: float | numpy.typing.ArrayLike,
    lap_diameter: float | numpy.typing.ArrayLike,
    *,
    outside_validity: str = "raise",
    return_status: bool = False,
    threads: typing.SupportsInt | typing.SupportsIndex = 1,
) -> typing.Any:
    """
    Torque of the fast line on the drum.

    In SI: fast_line_tension [N], lap_diameter [m]; gives [N*m/rad].
    """

def hoisting_power(
    hook_load: float | numpy.typing.ArrayLike,
    block_speed: float | numpy.typing.ArrayLike,
    total_efficiency: float | numpy.typing.ArrayLike,
    *,
    outside_validity: str = "raise",
    return_status: bool = False,
    threads: typing.SupportsInt | typing.SupportsIndex = 1,
) -> typing.Any:
    """
    Power to hoist a load steadily.

    In SI: hook_load [N], block_speed [m/s], total_efficiency [1]; gives [W].
    """

def hoisting_speed(
    hook_load: float | numpy.typing.ArrayLike,
    input_power: float | numpy.typing.ArrayLike,
    total_efficiency: float | numpy.typing.ArrayLike,
    *,
    outside_validity: str = "raise",
    return_status: bool = False,
    threads: typing.SupportsInt | typing.SupportsIndex = 1,
) -> typing.Any:
    """
    Speed at which a power hoists a load.

    In SI: hook_load [N], input_power [W], total_efficiency [1]; gives [m/s].
    """

def hook_equivalent_mass(
    inertia: float | numpy.typing.ArrayLike,
    lines: float | numpy.typing.ArrayLike,
    lap_diameter: float | numpy.typing.ArrayLike,
    *,
    outside_validity: str = "raise",
    return_status: bool = False,
    threads: typing.SupportsInt | typing.SupportsIndex = 1,
) -> typing.Any:
    """
    Turning parts as a mass at the hook.

    In SI: inertia [kg*m2/rad2], lines [1], lap_diameter [m]; gives [kg].
    """

def hook_power(
    hook_load: float | numpy.typing.ArrayLike,
    block_speed: float | numpy.typing.ArrayLike,
    *,
    outside_validity: str = "raise",
    return_status: bool = False,
    threads: typing.SupportsInt | typing.SupportsIndex = 1,
) -> typing.Any:
    """
    Power at the hook.

    In SI: hook_load [N], block_speed [m/s]; gives [W].
    """

def motor_torque(
    motor_power: float | numpy.typing.ArrayLike,
    base_speed: float | numpy.typing.ArrayLike,
    motor_speed: float | numpy.typing.ArrayLike,
    *,
    outside_validity: str = "raise",
    return_status: bool = False,
    threads: typing.SupportsInt | typing.SupportsIndex = 1,
) -> typing.Any:
    """
    Torque of a motor at a speed.

    In SI: motor_power [W], base_speed [rad/s], motor_speed [rad/s]; gives [N*m/rad].
    """

def power_for_depth(
    depth: float | numpy.typing.ArrayLike,
    *,
    outside_validity: str = "raise",
    return_status: bool = False,
    threads: typing.SupportsInt | typing.SupportsIndex = 1,
) -> typing.Any:
    """
    Power usual for a depth of well.

    In SI: depth [m]; gives [W].
    """

def reflected_inertia(
    inertia: float | numpy.typing.ArrayLike,
    gear_ratio: float | numpy.typing.ArrayLike,
    *,
    outside_validity: str = "raise",
    return_status: bool = False,
    threads: typing.SupportsInt | typing.SupportsIndex = 1,
) -> typing.Any:
    """
    Moment of inertia seen through a gear.

    In SI: inertia [kg*m2/rad2], gear_ratio [1]; gives [kg*m2/rad2].
    """

def rig_sizes() -> list[dict]:
    """
    Every size there is, as size_for_depth() gives it.
    """

def sheave_equivalent_mass(
    inertia: float | numpy.typing.ArrayLike,
    lines: float | numpy.typing.ArrayLike,
    sheave_diameter: float | numpy.typing.ArrayLike,
    *,
    outside_validity: str = "raise",
    return_status: bool = False,
    threads: typing.SupportsInt | typing.SupportsIndex = 1,
) -> typing.Any:
    """
    Turning sheaves as a mass at the hook.

    In SI: inertia [kg*m2/rad2], lines [1], sheave_diameter [m]; gives [kg].
    """

def size_for_depth(depth: float | numpy.typing.ArrayLike, standard: str) -> dict:
    """
    The smallest size of a standard whose depth [m] reaches a well, with source.
    """

def stand_peak_speed(
    travel: float | numpy.typing.ArrayLike,
    speed_limit: float | numpy.typing.ArrayLike,
    start_acceleration: float | numpy.typing.ArrayLike,
    stop_deceleration: float | numpy.typing.ArrayLike,
    *,
    outside_validity: str = "raise",
    return_status: bool = False,
    threads: typing.SupportsInt | typing.SupportsIndex = 1,
) -> typing.Any:
    """
    Highest speed of a stroke.

    In SI: travel [m], speed_limit [m/s], start_acceleration [m/s2], stop_deceleration [m/s2]; gives [m/s].
    """

def stand_time(
    travel: float | numpy.typing.ArrayLike,
    speed_limit: float | numpy.typing.ArrayLike,
    start_acceleration: float | numpy.typing.ArrayLike,
    stop_deceleration: float | numpy.typing.ArrayLike,
    *,
    outside_validity: str = "raise",
    return_status: bool = False,
    threads: typing.SupportsInt | typing.SupportsIndex = 1,
) -> typing.Any:
    """
    Time of a stroke from rest to rest.

    In SI: travel [m], speed_limit [m/s], start_acceleration [m/s2], stop_deceleration [m/s2]; gives [s].
    """

def table(name: str) -> list[dict]:
    """
    Rows of one of this subject's tables with source and standing of each value.
    """
