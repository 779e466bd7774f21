"""
Stiffness of the line, frequencies, peak loads.
"""

from __future__ import annotations
import numpy.typing
import typing

__all__: list[str] = [
    "drop_factor",
    "line_stiffness",
    "locked_stiffness",
    "natural_frequency",
    "pickup_factor",
    "ramp_factor",
    "series_stiffness",
    "slack_speed",
    "static_stretch",
    "step_factor",
    "stop_factor",
    "string_frequency",
    "string_stiffness",
    "trough_factor",
    "wave_force",
    "wave_return_time",
]

def drop_factor(
    drop_height: float | numpy.typing.ArrayLike,
    static_stretch: float | numpy.typing.ArrayLike,
    *,
    outside_validity: str = "raise",
    return_status: bool = False,
    threads: typing.SupportsInt | typing.SupportsIndex = 1,
) -> typing.Any:
    """
    Peak over rest, load dropped into the line.

    In SI: drop_height [m], static_stretch [m]; gives [1].
    """

def line_stiffness(
    rope_modulus: float | numpy.typing.ArrayLike,
    metallic_area: float | numpy.typing.ArrayLike,
    lines: float | numpy.typing.ArrayLike,
    line_height: float | numpy.typing.ArrayLike,
    fast_line_length: float | numpy.typing.ArrayLike,
    dead_line_length: float | numpy.typing.ArrayLike,
    *,
    outside_validity: str = "raise",
    return_status: bool = False,
    threads: typing.SupportsInt | typing.SupportsIndex = 1,
) -> typing.Any:
    """
    Stiffness of the strung line, sheaves free.

    In SI: rope_modulus [Pa], metallic_area [m2], lines [1], line_height [m], fast_line_length [m], dead_line_length [m]; gives [N/m].
    """

def locked_stiffness(
    rope_modulus: float | numpy.typing.ArrayLike,
    metallic_area: float | numpy.typing.ArrayLike,
    lines: float | numpy.typing.ArrayLike,
    line_height: float | numpy.typing.ArrayLike,
    *,
    outside_validity: str = "raise",
    return_status: bool = False,
    threads: typing.SupportsInt | typing.SupportsIndex = 1,
) -> typing.Any:
    """
    Stiffness of the lines, sheaves locked.

    In SI: rope_modulus [Pa], metallic_area [m2], lines [1], line_height [m]; gives [N/m].
    """

def natural_frequency(
    hook_load: float | numpy.typing.ArrayLike,
    stiffness: float | numpy.typing.ArrayLike,
    *,
    outside_validity: str = "raise",
    return_status: bool = False,
    threads: typing.SupportsInt | typing.SupportsIndex = 1,
) -> typing.Any:
    """
    Natural frequency of a load on the line.

    In SI: hook_load [N], stiffness [N/m]; gives [Hz].
    """

def pickup_factor(
    pickup_speed: float | numpy.typing.ArrayLike,
    stiffness: float | numpy.typing.ArrayLike,
    hook_load: float | numpy.typing.ArrayLike,
    *,
    outside_validity: str = "raise",
    return_status: bool = False,
    threads: typing.SupportsInt | typing.SupportsIndex = 1,
) -> typing.Any:
    """
    Peak over rest, slack taken up at a speed.

    In SI: pickup_speed [m/s], stiffness [N/m], hook_load [N]; gives [1].
    """

def ramp_factor(
    upward_acceleration: float | numpy.typing.ArrayLike,
    ramp_time: float | numpy.typing.ArrayLike,
    natural_frequency: float | numpy.typing.ArrayLike,
    *,
    outside_validity: str = "raise",
    return_status: bool = False,
    threads: typing.SupportsInt | typing.SupportsIndex = 1,
) -> typing.Any:
    """
    Peak over rest, acceleration that rises evenly.

    In SI: upward_acceleration [m/s2], ramp_time [s], natural_frequency [Hz]; gives [1].
    """

def series_stiffness(
    stiffness: float | numpy.typing.ArrayLike,
    other_stiffness: float | numpy.typing.ArrayLike,
    *,
    outside_validity: str = "raise",
    return_status: bool = False,
    threads: typing.SupportsInt | typing.SupportsIndex = 1,
) -> typing.Any:
    """
    Stiffness of two springs one after the other.

    In SI: stiffness [N/m], other_stiffness [N/m]; gives [N/m].
    """

def slack_speed(
    natural_frequency: float | numpy.typing.ArrayLike,
    *,
    outside_validity: str = "raise",
    return_status: bool = False,
    threads: typing.SupportsInt | typing.SupportsIndex = 1,
) -> typing.Any:
    """
    Speed that may be stopped at once without slack.

    In SI: natural_frequency [Hz]; gives [m/s].
    """

def static_stretch(
    hook_load: float | numpy.typing.ArrayLike,
    stiffness: float | numpy.typing.ArrayLike,
    *,
    outside_validity: str = "raise",
    return_status: bool = False,
    threads: typing.SupportsInt | typing.SupportsIndex = 1,
) -> typing.Any:
    """
    Stretch under the load at rest.

    In SI: hook_load [N], stiffness [N/m]; gives [m].
    """

def step_factor(
    upward_acceleration: float | numpy.typing.ArrayLike,
    *,
    outside_validity: str = "raise",
    return_status: bool = False,
    threads: typing.SupportsInt | typing.SupportsIndex = 1,
) -> typing.Any:
    """
    Peak over rest, acceleration put on at once.

    In SI: upward_acceleration [m/s2]; gives [1].
    """

def stop_factor(
    speed_change: float | numpy.typing.ArrayLike,
    upward_acceleration: float | numpy.typing.ArrayLike,
    natural_frequency: float | numpy.typing.ArrayLike,
    *,
    outside_validity: str = "raise",
    return_status: bool = False,
    threads: typing.SupportsInt | typing.SupportsIndex = 1,
) -> typing.Any:
    """
    Peak over rest, speed changed evenly.

    In SI: speed_change [m/s], upward_acceleration [m/s2], natural_frequency [Hz]; gives [1].
    """

def string_frequency(
    stiffness: float | numpy.typing.ArrayLike,
    block_weight: float | numpy.typing.ArrayLike,
    string_area: float | numpy.typing.ArrayLike,
    string_length: float | numpy.typing.ArrayLike,
    string_modulus: float | numpy.typing.ArrayLike,
    string_density: float | numpy.typing.ArrayLike,
    mode: float | numpy.typing.ArrayLike,
    *,
    outside_validity: str = "raise",
    return_status: bool = False,
    threads: typing.SupportsInt | typing.SupportsIndex = 1,
) -> typing.Any:
    """
    Natural frequency of block and string on the line.

    In SI: stiffness [N/m], block_weight [N], string_area [m2], string_length [m], string_modulus [Pa], string_density [kg/m3], mode [1]; gives [Hz].
    """

def string_stiffness(
    string_modulus: float | numpy.typing.ArrayLike,
    string_area: float | numpy.typing.ArrayLike,
    string_length: float | numpy.typing.ArrayLike,
    *,
    outside_validity: str = "raise",
    return_status: bool = False,
    threads: typing.SupportsInt | typing.SupportsIndex = 1,
) -> typing.Any:
    """
    Stiffness of a rope or string pulled at its end.

    In SI: string_modulus [Pa], string_area [m2], string_length [m]; gives [N/m].
    """

def trough_factor(
    speed_change: float | numpy.typing.ArrayLike,
    downward_acceleration: float | numpy.typing.ArrayLike,
    natural_frequency: float | numpy.typing.ArrayLike,
    *,
    outside_validity: str = "raise",
    return_status: bool = False,
    threads: typing.SupportsInt | typing.SupportsIndex = 1,
) -> typing.Any:
    """
    Least over rest, hoisting stopped evenly.

    In SI: speed_change [m/s], downward_acceleration [m/s2], natural_frequency [Hz]; gives [1].
    """

def wave_force(
    speed_change: float | numpy.typing.ArrayLike,
    string_area: float | numpy.typing.ArrayLike,
    string_modulus: float | numpy.typing.ArrayLike,
    string_density: float | numpy.typing.ArrayLike,
    *,
    outside_validity: str = "raise",
    return_status: bool = False,
    threads: typing.SupportsInt | typing.SupportsIndex = 1,
) -> typing.Any:
    """
    Force of a sudden change of speed in a string.

    In SI: speed_change [m/s], string_area [m2], string_modulus [Pa], string_density [kg/m3]; gives [N].
    """

def wave_return_time(
    string_length: float | numpy.typing.ArrayLike,
    string_modulus: float | numpy.typing.ArrayLike,
    string_density: float | numpy.typing.ArrayLike,
    *,
    outside_validity: str = "raise",
    return_status: bool = False,
    threads: typing.SupportsInt | typing.SupportsIndex = 1,
) -> typing.Any:
    """
    Time until a wave is back from the end of a string.

    In SI: string_length [m], string_modulus [Pa], string_density [kg/m3]; gives [s].
    """
