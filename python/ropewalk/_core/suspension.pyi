"""
Blocks, hook, links, elevators: ratings, margins.
"""

from __future__ import annotations
import collections.abc
import numpy.typing
import typing

__all__: list[str] = [
    "Bounce",
    "allowable_shear",
    "allowable_stress",
    "bearing_rating",
    "bounce_frequency",
    "damping_ratio",
    "design_safety_factor",
    "elevator_bore",
    "elevator_types",
    "elevators_for",
    "link_load",
    "margins",
    "overshoot",
    "proof_load",
    "rating_class",
    "table",
    "verification_load",
    "weakest",
    "worn_bore_capacity",
    "worn_capacity_by_area",
    "worn_capacity_by_bending",
]

class Bounce:
    """
    Motion of a sprung weight about its rest, up positive, SI.
    """
    def __init__(
        self,
        sprung_weight: float | numpy.typing.ArrayLike,
        spring_rate: float | numpy.typing.ArrayLike,
        damping_up: float | numpy.typing.ArrayLike,
        damping_down: float | numpy.typing.ArrayLike,
        friction: float | numpy.typing.ArrayLike,
        start: float | numpy.typing.ArrayLike,
        start_speed: float | numpy.typing.ArrayLike,
    ) -> None: ...
    def at(self, time: float | numpy.typing.ArrayLike) -> tuple:
        """
        Height [m] and speed [m/s] at a time [s].
        """
    def settled(self, within: float | numpy.typing.ArrayLike) -> float:
        """
        Time [s] from which on it stays so near [m] to rest.
        """
    @property
    def goes_slack(self) -> bool: ...
    @property
    def highest(self) -> float: ...
    @property
    def lowest(self) -> float: ...
    @property
    def rest(self) -> float | None: ...
    @property
    def turns(self) -> list[tuple[float, float]]: ...

def allowable_shear(
    yield_strength: float | numpy.typing.ArrayLike,
    load_rating: float | numpy.typing.ArrayLike,
    *,
    outside_validity: str = "raise",
    return_status: bool = False,
    threads: typing.SupportsInt | typing.SupportsIndex = 1,
) -> typing.Any:
    """
    Shear stress that the rating may cause.

    In SI: yield_strength [Pa], load_rating [N]; gives [Pa].
    """

def allowable_stress(
    yield_strength: float | numpy.typing.ArrayLike,
    load_rating: float | numpy.typing.ArrayLike,
    *,
    outside_validity: str = "raise",
    return_status: bool = False,
    threads: typing.SupportsInt | typing.SupportsIndex = 1,
) -> typing.Any:
    """
    Stress in tension that the rating may cause.

    In SI: yield_strength [Pa], load_rating [N]; gives [Pa].
    """

def bearing_rating(
    block_sheaves: float | numpy.typing.ArrayLike,
    sheave_bearing_rating: float | numpy.typing.ArrayLike,
    *,
    outside_validity: str = "raise",
    return_status: bool = False,
    threads: typing.SupportsInt | typing.SupportsIndex = 1,
) -> typing.Any:
    """
    Rating of a block by its sheave bearings.

    In SI: block_sheaves [1], sheave_bearing_rating [N]; gives [N].
    """

def bounce_frequency(
    spring_rate: float | numpy.typing.ArrayLike,
    sprung_weight: float | numpy.typing.ArrayLike,
    *,
    outside_validity: str = "raise",
    return_status: bool = False,
    threads: typing.SupportsInt | typing.SupportsIndex = 1,
) -> typing.Any:
    """
    Frequency of the undamped bounce.

    In SI: spring_rate [N/m], sprung_weight [N]; gives [Hz].
    """

def damping_ratio(
    damping: float | numpy.typing.ArrayLike,
    spring_rate: float | numpy.typing.ArrayLike,
    sprung_weight: float | numpy.typing.ArrayLike,
    *,
    outside_validity: str = "raise",
    return_status: bool = False,
    threads: typing.SupportsInt | typing.SupportsIndex = 1,
) -> typing.Any:
    """
    Damping over critical damping.

    In SI: damping [N*s/m], spring_rate [N/m], sprung_weight [N]; gives [1].
    """

def design_safety_factor(
    load_rating: float | numpy.typing.ArrayLike,
    *,
    outside_validity: str = "raise",
    return_status: bool = False,
    threads: typing.SupportsInt | typing.SupportsIndex = 1,
) -> typing.Any:
    """
    Design safety factor by load rating.

    In SI: load_rating [N]; gives [1].
    """

def elevator_bore(drill_pipe: str) -> dict:
    """
    Neck of the tool joint and bore [m] of the elevator for it.
    """

def elevator_types() -> list[dict]:
    """
    Every type of elevator, in general words.
    """

def elevators_for(tubular: str) -> list[dict]:
    """
    The types of elevator for a tubular, the usual one first.
    """

def link_load(
    link_set_load: float | numpy.typing.ArrayLike,
    link_angle: float | numpy.typing.ArrayLike,
    *,
    outside_validity: str = "raise",
    return_status: bool = False,
    threads: typing.SupportsInt | typing.SupportsIndex = 1,
) -> typing.Any:
    """
    Load along one of two links at an angle.

    In SI: link_set_load [N], link_angle [rad]; gives [N].
    """

def margins(
    parts: collections.abc.Sequence[
        tuple[
            str,
            typing.SupportsFloat | typing.SupportsIndex,
            typing.SupportsFloat | typing.SupportsIndex,
            typing.SupportsFloat | typing.SupportsIndex,
        ]
    ],
    hook_load: float | numpy.typing.ArrayLike,
) -> dict:
    """
    Load [N], margin [N], utilization, and hook load [N] at the rating, of every part (name, rating [N], multiple of the hook load, weight above [N]).
    """

def overshoot(
    damping_ratio: float | numpy.typing.ArrayLike,
    *,
    outside_validity: str = "raise",
    return_status: bool = False,
    threads: typing.SupportsInt | typing.SupportsIndex = 1,
) -> typing.Any:
    """
    Swing beyond rest over distance from rest.

    In SI: damping_ratio [1]; gives [1].
    """

def proof_load(
    load_rating: float | numpy.typing.ArrayLike,
    *,
    outside_validity: str = "raise",
    return_status: bool = False,
    threads: typing.SupportsInt | typing.SupportsIndex = 1,
) -> typing.Any:
    """
    Load of the proof test.

    In SI: load_rating [N]; gives [N].
    """

def rating_class(load_rating: float | numpy.typing.ArrayLike) -> str:
    """
    Class of ratings [N] by which contact surfaces are made.
    """

def table(name: str) -> list[dict]:
    """
    Rows of one of this subject's tables with source and standing of each value.
    """

def verification_load(
    load_rating: float | numpy.typing.ArrayLike,
    *,
    outside_validity: str = "raise",
    return_status: bool = False,
    threads: typing.SupportsInt | typing.SupportsIndex = 1,
) -> typing.Any:
    """
    Load of the design verification test.

    In SI: load_rating [N]; gives [N].
    """

def weakest(
    parts: collections.abc.Sequence[
        tuple[
            str,
            typing.SupportsFloat | typing.SupportsIndex,
            typing.SupportsFloat | typing.SupportsIndex,
            typing.SupportsFloat | typing.SupportsIndex,
        ]
    ],
) -> int:
    """
    Index of the part that comes to its rating first.
    """

def worn_bore_capacity(
    load_rating: float | numpy.typing.ArrayLike,
    shoulder_diameter: float | numpy.typing.ArrayLike,
    new_bore: float | numpy.typing.ArrayLike,
    worn_bore: float | numpy.typing.ArrayLike,
    *,
    outside_validity: str = "raise",
    return_status: bool = False,
    threads: typing.SupportsInt | typing.SupportsIndex = 1,
) -> typing.Any:
    """
    Capacity of an elevator with a worn bore.

    In SI: load_rating [N], shoulder_diameter [m], new_bore [m], worn_bore [m]; gives [N].
    """

def worn_capacity_by_area(
    load_rating: float | numpy.typing.ArrayLike,
    thickness_ratio: float | numpy.typing.ArrayLike,
    *,
    outside_validity: str = "raise",
    return_status: bool = False,
    threads: typing.SupportsInt | typing.SupportsIndex = 1,
) -> typing.Any:
    """
    The most a worn link can still carry.

    In SI: load_rating [N], thickness_ratio [1]; gives [N].
    """

def worn_capacity_by_bending(
    load_rating: float | numpy.typing.ArrayLike,
    thickness_ratio: float | numpy.typing.ArrayLike,
    *,
    outside_validity: str = "raise",
    return_status: bool = False,
    threads: typing.SupportsInt | typing.SupportsIndex = 1,
) -> typing.Any:
    """
    The same where bending governs.

    In SI: load_rating [N], thickness_ratio [1]; gives [N].
    """
