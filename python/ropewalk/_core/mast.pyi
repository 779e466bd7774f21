"""
Load on a mast or derrick, its legs and its rating.
"""

from __future__ import annotations
import numpy
import numpy.typing
import typing

__all__: list[str] = [
    "LegShares",
    "derrick_load",
    "efficiency_factor",
    "equivalent_load",
    "extra_leg_load",
    "rating_at_lines",
    "static_derrick_load",
    "std_4a_capacity",
]

class LegShares:
    """
    How dead and fast line share out over the four legs, SI.
    """
    def __init__(
        self,
        base_width: float | numpy.typing.ArrayLike,
        base_depth: float | numpy.typing.ArrayLike,
        dead_line_across: float | numpy.typing.ArrayLike,
        dead_line_along: float | numpy.typing.ArrayLike,
        fast_line_across: float | numpy.typing.ArrayLike,
        fast_line_along: float | numpy.typing.ArrayLike,
    ) -> None: ...
    def loads(
        self,
        lines_pull: float | numpy.typing.ArrayLike,
        crown_block_weight: float | numpy.typing.ArrayLike,
        dead_line: float | numpy.typing.ArrayLike,
        fast_line: float | numpy.typing.ArrayLike,
    ) -> numpy.typing.NDArray[numpy.float64]:
        """
        Load [N] of legs A, B, C, D on the last axis.
        """
    @property
    def dead_line(self) -> typing.Annotated[list[float], "FixedSize(4)"]: ...
    @property
    def fast_line(self) -> typing.Annotated[list[float], "FixedSize(4)"]: ...
    @property
    def largest_share(self) -> float: ...

def derrick_load(
    hook_load: float | numpy.typing.ArrayLike,
    lines: float | numpy.typing.ArrayLike,
    reeving_efficiency: float | numpy.typing.ArrayLike,
    *,
    outside_validity: str = "raise",
    return_status: bool = False,
    threads: typing.SupportsInt | typing.SupportsIndex = 1,
) -> typing.Any:
    """
    Load on the derrick while hoisting.

    In SI: hook_load [N], lines [1], reeving_efficiency [1]; gives [N].
    """

def efficiency_factor(
    lines: float | numpy.typing.ArrayLike,
    reeving_efficiency: float | numpy.typing.ArrayLike,
    *,
    outside_validity: str = "raise",
    return_status: bool = False,
    threads: typing.SupportsInt | typing.SupportsIndex = 1,
) -> typing.Any:
    """
    Derrick load over maximum equivalent derrick load.

    In SI: lines [1], reeving_efficiency [1]; gives [1].
    """

def equivalent_load(
    hook_load: float | numpy.typing.ArrayLike,
    lines: float | numpy.typing.ArrayLike,
    reeving_efficiency: float | numpy.typing.ArrayLike,
    *,
    outside_validity: str = "raise",
    return_status: bool = False,
    threads: typing.SupportsInt | typing.SupportsIndex = 1,
) -> typing.Any:
    """
    Four times the load of the leg that bears most.

    In SI: hook_load [N], lines [1], reeving_efficiency [1]; gives [N].
    """

def extra_leg_load(
    hook_load: float | numpy.typing.ArrayLike,
    lines: float | numpy.typing.ArrayLike,
    legs_sharing: float | numpy.typing.ArrayLike,
    *,
    outside_validity: str = "raise",
    return_status: bool = False,
    threads: typing.SupportsInt | typing.SupportsIndex = 1,
) -> typing.Any:
    """
    Extra load of one leg by the dead line.

    In SI: hook_load [N], lines [1], legs_sharing [1]; gives [N].
    """

def rating_at_lines(
    hook_load_rating: float | numpy.typing.ArrayLike,
    rated_lines: float | numpy.typing.ArrayLike,
    lines: float | numpy.typing.ArrayLike,
    leg_share: float | numpy.typing.ArrayLike,
    *,
    outside_validity: str = "raise",
    return_status: bool = False,
    threads: typing.SupportsInt | typing.SupportsIndex = 1,
) -> typing.Any:
    """
    Static hook load rating at another number of lines.

    In SI: hook_load_rating [N], rated_lines [1], lines [1], leg_share [1]; gives [N].
    """

def static_derrick_load(
    hook_load: float | numpy.typing.ArrayLike,
    lines: float | numpy.typing.ArrayLike,
    *,
    outside_validity: str = "raise",
    return_status: bool = False,
    threads: typing.SupportsInt | typing.SupportsIndex = 1,
) -> typing.Any:
    """
    Load on the derrick at rest.

    In SI: hook_load [N], lines [1]; gives [N].
    """

def std_4a_capacity(
    hook_load: float | numpy.typing.ArrayLike,
    crown_block_weight: float | numpy.typing.ArrayLike,
    tools_weight: float | numpy.typing.ArrayLike,
    extra_leg_load: float | numpy.typing.ArrayLike,
    *,
    outside_validity: str = "raise",
    return_status: bool = False,
    threads: typing.SupportsInt | typing.SupportsIndex = 1,
) -> typing.Any:
    """
    Capacity by the old API Standard 4A.

    In SI: hook_load [N], crown_block_weight [N], tools_weight [N], extra_leg_load [N]; gives [N].
    """
