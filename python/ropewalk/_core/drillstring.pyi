"""
Drill strings: mass, weight in mud, drag.
"""

from __future__ import annotations
import collections.abc
import numpy.typing
import typing

__all__: list[str] = [
    "DrillString",
    "buoyancy_factor",
    "buoyed_weight_per_length",
    "check_section",
    "drag_normal_force",
    "drag_tension_change",
    "jointed_mass_per_length",
    "slant_pull",
    "tool_joint_mass",
    "tube_mass_per_length",
    "tubular_mass_per_length",
    "tubulars",
]

class DrillString:
    """
    Sections from the bit upwards, SI; the last is the drill pipe.
    """
    def __init__(
        self,
        lengths: collections.abc.Sequence[float | numpy.typing.ArrayLike],
        masses_per_length: collections.abc.Sequence[float | numpy.typing.ArrayLike],
        mud_density: float | numpy.typing.ArrayLike,
        steel_density: float | numpy.typing.ArrayLike,
    ) -> None: ...
    def hook_load(
        self,
        operation: str,
        depth: float | numpy.typing.ArrayLike,
        *,
        drag_up: float | numpy.typing.ArrayLike,
        drag_down: float | numpy.typing.ArrayLike,
        block_weight: float | numpy.typing.ArrayLike,
    ) -> typing.Any:
        """
        Everything hung on the lines [N].
        """
    def weight_in_mud(self, depth: float | numpy.typing.ArrayLike) -> typing.Any:
        """
        Weight [N] in mud of the lowest `depth` [m] of the string.
        """
    @property
    def bha_excess_weight(self) -> float: ...
    @property
    def bha_length(self) -> float: ...
    @property
    def buoyancy_factor(self) -> float: ...
    @property
    def length(self) -> float: ...
    @property
    def mass(self) -> float: ...
    @property
    def pipe_weight(self) -> float: ...
    @property
    def weight_in_air(self) -> float: ...

def buoyancy_factor(
    mud_density: float | numpy.typing.ArrayLike,
    steel_density: float | numpy.typing.ArrayLike,
    *,
    outside_validity: str = "raise",
    return_status: bool = False,
    threads: typing.SupportsInt | typing.SupportsIndex = 1,
) -> typing.Any:
    """
    Buoyancy factor of a string in mud.

    In SI: mud_density [kg/m3], steel_density [kg/m3]; gives [1].
    """

def buoyed_weight_per_length(
    mass_per_length: float | numpy.typing.ArrayLike,
    buoyancy_factor: float | numpy.typing.ArrayLike,
    *,
    outside_validity: str = "raise",
    return_status: bool = False,
    threads: typing.SupportsInt | typing.SupportsIndex = 1,
) -> typing.Any:
    """
    Weight per length of a pipe in mud.

    In SI: mass_per_length [kg/m], buoyancy_factor [1]; gives [N/m].
    """

def check_section(
    length: float | numpy.typing.ArrayLike, mass_per_length: float | numpy.typing.ArrayLike
) -> None:
    """
    Raises unless there can be such a section.
    """

def drag_normal_force(
    tension: float | numpy.typing.ArrayLike,
    pipe_weight: float | numpy.typing.ArrayLike,
    length: float | numpy.typing.ArrayLike,
    inclination: float | numpy.typing.ArrayLike,
    inclination_change: float | numpy.typing.ArrayLike,
    azimuth_change: float | numpy.typing.ArrayLike,
    *,
    outside_validity: str = "raise",
    return_status: bool = False,
    threads: typing.SupportsInt | typing.SupportsIndex = 1,
) -> typing.Any:
    """
    Force between an element of string and the wall, Johancsik.

    In SI: tension [N], pipe_weight [N/m], length [m], inclination [rad], inclination_change [rad], azimuth_change [rad]; gives [N].
    """

def drag_tension_change(
    tension: float | numpy.typing.ArrayLike,
    pipe_weight: float | numpy.typing.ArrayLike,
    length: float | numpy.typing.ArrayLike,
    inclination: float | numpy.typing.ArrayLike,
    inclination_change: float | numpy.typing.ArrayLike,
    azimuth_change: float | numpy.typing.ArrayLike,
    friction_coefficient: float | numpy.typing.ArrayLike,
    direction: float | numpy.typing.ArrayLike,
    *,
    outside_validity: str = "raise",
    return_status: bool = False,
    threads: typing.SupportsInt | typing.SupportsIndex = 1,
) -> typing.Any:
    """
    Change of tension over an element of string, Johancsik.

    In SI: tension [N], pipe_weight [N/m], length [m], inclination [rad], inclination_change [rad], azimuth_change [rad], friction_coefficient [1], direction [1]; gives [N].
    """

def jointed_mass_per_length(
    plain_mass_per_length: float | numpy.typing.ArrayLike,
    upset_mass: float | numpy.typing.ArrayLike,
    tool_joint_length: float | numpy.typing.ArrayLike,
    tool_joint_outer_diameter: float | numpy.typing.ArrayLike,
    tool_joint_inner_diameter: float | numpy.typing.ArrayLike,
    elevator_diameter: float | numpy.typing.ArrayLike,
    *,
    outside_validity: str = "raise",
    return_status: bool = False,
    threads: typing.SupportsInt | typing.SupportsIndex = 1,
) -> typing.Any:
    """
    Mass per length of drill pipe with tool joints, API RP 7G.

    In SI: plain_mass_per_length [kg/m], upset_mass [kg], tool_joint_length [m], tool_joint_outer_diameter [m], tool_joint_inner_diameter [m], elevator_diameter [m]; gives [kg/m].
    """

def slant_pull(
    pipe_weight: float | numpy.typing.ArrayLike,
    length: float | numpy.typing.ArrayLike,
    inclination: float | numpy.typing.ArrayLike,
    friction_coefficient: float | numpy.typing.ArrayLike,
    direction: float | numpy.typing.ArrayLike,
    *,
    outside_validity: str = "raise",
    return_status: bool = False,
    threads: typing.SupportsInt | typing.SupportsIndex = 1,
) -> typing.Any:
    """
    Axial load from a straight inclined section, soft string.

    In SI: pipe_weight [N/m], length [m], inclination [rad], friction_coefficient [1], direction [1]; gives [N].
    """

def tool_joint_mass(
    tool_joint_length: float | numpy.typing.ArrayLike,
    tool_joint_outer_diameter: float | numpy.typing.ArrayLike,
    tool_joint_inner_diameter: float | numpy.typing.ArrayLike,
    elevator_diameter: float | numpy.typing.ArrayLike,
    *,
    outside_validity: str = "raise",
    return_status: bool = False,
    threads: typing.SupportsInt | typing.SupportsIndex = 1,
) -> typing.Any:
    """
    Mass of a tool joint, API RP 7G.

    In SI: tool_joint_length [m], tool_joint_outer_diameter [m], tool_joint_inner_diameter [m], elevator_diameter [m]; gives [kg].
    """

def tube_mass_per_length(
    outer_diameter: float | numpy.typing.ArrayLike,
    inner_diameter: float | numpy.typing.ArrayLike,
    density: float | numpy.typing.ArrayLike,
    *,
    outside_validity: str = "raise",
    return_status: bool = False,
    threads: typing.SupportsInt | typing.SupportsIndex = 1,
) -> typing.Any:
    """
    Mass per length of a plain tube.

    In SI: outer_diameter [m], inner_diameter [m], density [kg/m3]; gives [kg/m].
    """

def tubular_mass_per_length(designation: str) -> float:
    """
    Mass per length [kg/m] of a pipe by its designation.
    """

def tubulars() -> list[dict]:
    """
    Rows of the table of tubulars with source and standing of each.
    """
