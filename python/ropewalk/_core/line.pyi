"""
The damage map of a line, slipping and cutting.
"""

from __future__ import annotations
import collections.abc
import numpy
import numpy.typing
import ropewalk._core.drillstring
import ropewalk._core.fatigue
import ropewalk._core.reeving
import typing

__all__: list[str] = [
    "CampaignColumns",
    "History",
    "Hoisting",
    "Line",
    "Tackle",
    "casing",
    "circulating",
    "jarring",
    "kelly_coring",
    "kelly_drilling",
    "reaming",
    "round_trip",
    "run_cases",
    "sampled_survival",
    "short_trip",
    "singles",
    "survival",
    "top_drive_coring",
    "top_drive_drilling",
    "trip",
]

class Tackle:
    """
    A strung hoist as the rope sees it, in plain SI numbers.
    """
    def __init__(
        self,
        *,
        arrangement: ropewalk._core.reeving.Arrangement,
        sheave_diameters: collections.abc.Sequence[typing.SupportsFloat | typing.SupportsIndex],
        dead_line_sheave_diameter: typing.SupportsFloat | typing.SupportsIndex,
        lead_sheave_diameters: collections.abc.Sequence[
            typing.SupportsFloat | typing.SupportsIndex
        ],
        rope_diameter: typing.SupportsFloat | typing.SupportsIndex,
        dead_line: typing.SupportsFloat | typing.SupportsIndex,
        fast_line: typing.SupportsFloat | typing.SupportsIndex,
        shortest: typing.SupportsFloat | typing.SupportsIndex,
        longest: typing.SupportsFloat | typing.SupportsIndex,
        drum: dict,
        wraps_at_lowest: typing.SupportsFloat | typing.SupportsIndex,
        supply: typing.SupportsFloat | typing.SupportsIndex,
        wear: dict,
        reverse_sheaves: collections.abc.Sequence[bool],
        reverse_lead_sheaves: collections.abc.Sequence[bool],
        reverse_drum: bool,
    ) -> None: ...
    @property
    def contacts(self) -> list:
        """
        Every place where the rope is bent as it runs, from the dead line to the drum.
        """
    @property
    def dead_line_sheave(self) -> dict:
        """
        The sheave that does not turn.
        """
    @property
    def first_anchor(self) -> float:
        """
        Position of the anchor on a new line, m.
        """
    @property
    def reach(self) -> float:
        """
        Rope from the anchor to the drum with the block at its lowest, m.
        """
    @property
    def travel(self) -> float:
        """
        Travel of the block, m.
        """

class CampaignColumns:
    """
    The strokes of a campaign: float64 arrays in SI, flags as uint8.
    """
    def __init__(
        self,
        *,
        hook_load: typing.Annotated[numpy.typing.ArrayLike, numpy.float64],
        count: typing.Annotated[numpy.typing.ArrayLike, numpy.float64],
        height_from: typing.Annotated[numpy.typing.ArrayLike, numpy.float64],
        height_to: typing.Annotated[numpy.typing.ArrayLike, numpy.float64],
        pick_up: typing.Annotated[numpy.typing.ArrayLike, numpy.uint8],
        may_stop: typing.Annotated[numpy.typing.ArrayLike, numpy.uint8],
        blocks: collections.abc.Sequence[
            typing.Annotated[
                collections.abc.Sequence[typing.SupportsInt | typing.SupportsIndex], "FixedSize(3)"
            ]
        ],
        events: collections.abc.Sequence[
            tuple[
                typing.SupportsInt | typing.SupportsIndex,
                bool,
                typing.SupportsFloat | typing.SupportsIndex,
            ]
        ],
    ) -> None:
        """
        Blocks are (first row, row after the last, times); events (block, cut?, length).
        """

class History:
    """
    A finished run on one line.
    """
    def by_cause(self) -> numpy.typing.NDArray[numpy.float64]:
        """
        Damage by cause, rows × bins.
        """
    def by_epoch(self) -> numpy.typing.NDArray[numpy.float64]:
        """
        Damage before every slip or cut and at the end, epochs × bins.
        """
    def cycles(self) -> numpy.typing.NDArray[numpy.float64]:
        """
        Bending cycles over every bin.
        """
    def of_blocks(
        self, mask: typing.Annotated[numpy.typing.ArrayLike, numpy.uint8]
    ) -> numpy.typing.NDArray[numpy.float64]:
        """
        Damage by the marked blocks alone.
        """
    @property
    def anchor(self) -> float: ...
    @property
    def damage(self) -> numpy.typing.NDArray[numpy.float64]:
        """
        Mean damage over every bin.
        """
    @property
    def drum_end(self) -> float: ...
    @property
    def end(self) -> str:
        """
        How the run ended.
        """
    @property
    def epoch_positions(self) -> list[typing.Annotated[list[float], "FixedSize(2)"]]:
        """
        Anchor and drum end of every epoch, m.
        """
    @property
    def events(self) -> list:
        """
        Slips and cuts in their order.
        """
    @property
    def least_wraps_rope(self) -> float: ...
    @property
    def steps(self) -> list:
        """
        The line after every block.
        """
    @property
    def work(self) -> float: ...
    @property
    def worst(self) -> float: ...

class Line:
    """
    A line ready to run, in plain SI numbers.
    """
    def __init__(
        self,
        *,
        tackle: Tackle,
        model: ropewalk._core.fatigue.LifeModel,
        campaign: CampaignColumns,
        rope_diameter: typing.SupportsFloat | typing.SupportsIndex,
        wire_strength: typing.SupportsFloat | typing.SupportsIndex,
        breaking_force: typing.SupportsFloat | typing.SupportsIndex,
        bend_length: typing.SupportsFloat | typing.SupportsIndex,
        life_factor: typing.SupportsFloat | typing.SupportsIndex = 1.0,
    ) -> None: ...
    def run(
        self,
        *,
        trigger: str,
        clock: typing.Annotated[numpy.typing.ArrayLike, numpy.float64],
        interval: typing.SupportsFloat | typing.SupportsIndex,
        slip: typing.SupportsFloat | typing.SupportsIndex,
        slips_per_cut: typing.SupportsInt | typing.SupportsIndex,
        cut: typing.SupportsFloat | typing.SupportsIndex,
        bin_length: typing.SupportsFloat | typing.SupportsIndex,
        steps: bool = False,
        repeats: typing.SupportsInt | typing.SupportsIndex = 1,
        damage_limit: typing.SupportsFloat | typing.SupportsIndex | None = None,
    ) -> History:
        """
        Runs the campaign under a program.
        """
    @property
    def causes(self) -> list[str]:
        """
        Names of the rows of a map by cause.
        """
    @property
    def share_outside_validity(self) -> float:
        """
        Share of the damage from bends outside the range of the model.
        """

class Hoisting:
    """
    A string on the hook and the hoist above it, SI.
    """
    def __init__(
        self,
        string: ropewalk._core.drillstring.DrillString,
        *,
        block_weight: float | numpy.typing.ArrayLike,
        travel: float | numpy.typing.ArrayLike,
        drag_up: float | numpy.typing.ArrayLike = 0.0,
        drag_down: float | numpy.typing.ArrayLike = 0.0,
        base_height: float | numpy.typing.ArrayLike = 0.0,
        block_speed: float | numpy.typing.ArrayLike = 0.0,
        block_acceleration: float | numpy.typing.ArrayLike = 0.0,
    ) -> None: ...

def casing(
    hoisting: Hoisting,
    depth: float | numpy.typing.ArrayLike,
    joint_length: float | numpy.typing.ArrayLike,
) -> tuple:
    """
    Strokes of running casing by joints.
    """

def circulating(
    hoisting: Hoisting,
    depth: float | numpy.typing.ArrayLike,
    height: float | numpy.typing.ArrayLike,
    strokes: typing.SupportsInt | typing.SupportsIndex,
) -> tuple:
    """
    Strokes of circulating with the string moved up and down.
    """

def jarring(
    hoisting: Hoisting,
    depth: float | numpy.typing.ArrayLike,
    overpull: float | numpy.typing.ArrayLike,
    height: float | numpy.typing.ArrayLike,
    overpulls: typing.SupportsInt | typing.SupportsIndex,
) -> tuple:
    """
    Strokes of jarring, as a count of overpulls.
    """

def kelly_coring(
    hoisting: Hoisting,
    depth_from: float | numpy.typing.ArrayLike,
    depth_to: float | numpy.typing.ArrayLike,
    joint_length: float | numpy.typing.ArrayLike,
    *,
    kelly_weight: float | numpy.typing.ArrayLike,
    weight_on_bit: float | numpy.typing.ArrayLike = 0.0,
    ream: bool = True,
) -> tuple:
    """
    Strokes of coring with a kelly; nothing is reamed.
    """

def kelly_drilling(
    hoisting: Hoisting,
    depth_from: float | numpy.typing.ArrayLike,
    depth_to: float | numpy.typing.ArrayLike,
    joint_length: float | numpy.typing.ArrayLike,
    *,
    kelly_weight: float | numpy.typing.ArrayLike,
    weight_on_bit: float | numpy.typing.ArrayLike = 0.0,
    ream: bool = True,
) -> tuple:
    """
    Strokes of drilling with a kelly.
    """

def reaming(
    hoisting: Hoisting,
    depth_from: float | numpy.typing.ArrayLike,
    depth_to: float | numpy.typing.ArrayLike,
    stand_length: float | numpy.typing.ArrayLike,
    *,
    weight_on_bit: float | numpy.typing.ArrayLike = 0.0,
    reams: typing.SupportsInt | typing.SupportsIndex = 0,
) -> tuple:
    """
    Strokes of reaming hole that is there, with a top drive.
    """

def round_trip(
    hoisting: Hoisting,
    depth: float | numpy.typing.ArrayLike,
    stand_length: float | numpy.typing.ArrayLike,
) -> tuple:
    """
    Strokes of a trip out and in again.
    """

def run_cases(
    *,
    lines: collections.abc.Sequence[Line],
    line_of_case: collections.abc.Sequence[typing.SupportsInt | typing.SupportsIndex],
    triggers: collections.abc.Sequence[str],
    clocks: collections.abc.Sequence[typing.Annotated[numpy.typing.ArrayLike, numpy.float64]],
    intervals: collections.abc.Sequence[typing.SupportsFloat | typing.SupportsIndex],
    slips: collections.abc.Sequence[typing.SupportsFloat | typing.SupportsIndex],
    slips_per_cut: collections.abc.Sequence[typing.SupportsInt | typing.SupportsIndex],
    cuts: collections.abc.Sequence[typing.SupportsFloat | typing.SupportsIndex],
    bin_length: typing.SupportsFloat | typing.SupportsIndex,
    ln_deviation: typing.SupportsFloat | typing.SupportsIndex,
    section: typing.SupportsFloat | typing.SupportsIndex,
    limit: typing.SupportsFloat | typing.SupportsIndex = 1.0,
    repeats: typing.SupportsInt | typing.SupportsIndex = 1,
    damage_limit: typing.SupportsFloat | typing.SupportsIndex | None = None,
    threads: typing.SupportsInt | typing.SupportsIndex = 1,
) -> dict:
    """
    Runs many cases; one entry per case in every column.
    """

def sampled_survival(
    damage: typing.Annotated[numpy.typing.ArrayLike, numpy.float64],
    bin_length: typing.SupportsFloat | typing.SupportsIndex,
    ln_deviation: typing.SupportsFloat | typing.SupportsIndex,
    section: typing.SupportsFloat | typing.SupportsIndex,
    samples: typing.SupportsInt | typing.SupportsIndex,
    seed: typing.SupportsInt | typing.SupportsIndex,
    limit: typing.SupportsFloat | typing.SupportsIndex = 1.0,
    threads: typing.SupportsInt | typing.SupportsIndex = 1,
) -> float:
    """
    The same as a share of sampled lines.
    """

def short_trip(
    hoisting: Hoisting,
    depth_from: float | numpy.typing.ArrayLike,
    depth_to: float | numpy.typing.ArrayLike,
    stand_length: float | numpy.typing.ArrayLike,
) -> tuple:
    """
    Strokes of a trip out from depth_to up to depth_from and in again.
    """

def singles(
    hoisting: Hoisting,
    depth_from: float | numpy.typing.ArrayLike,
    depth_to: float | numpy.typing.ArrayLike,
    joint_length: float | numpy.typing.ArrayLike,
) -> tuple:
    """
    Strokes of picking up singles and running them.
    """

def survival(
    damage: typing.Annotated[numpy.typing.ArrayLike, numpy.float64],
    bin_length: typing.SupportsFloat | typing.SupportsIndex,
    ln_deviation: typing.SupportsFloat | typing.SupportsIndex,
    section: typing.SupportsFloat | typing.SupportsIndex,
    limit: typing.SupportsFloat | typing.SupportsIndex = 1.0,
) -> float:
    """
    Probability that no place has passed its discard life.
    """

def top_drive_coring(
    hoisting: Hoisting,
    depth_from: float | numpy.typing.ArrayLike,
    depth_to: float | numpy.typing.ArrayLike,
    stand_length: float | numpy.typing.ArrayLike,
    *,
    weight_on_bit: float | numpy.typing.ArrayLike = 0.0,
    reams: typing.SupportsInt | typing.SupportsIndex = 0,
) -> tuple:
    """
    Strokes of coring with a top drive; nothing is reamed.
    """

def top_drive_drilling(
    hoisting: Hoisting,
    depth_from: float | numpy.typing.ArrayLike,
    depth_to: float | numpy.typing.ArrayLike,
    stand_length: float | numpy.typing.ArrayLike,
    *,
    weight_on_bit: float | numpy.typing.ArrayLike = 0.0,
    reams: typing.SupportsInt | typing.SupportsIndex = 0,
) -> tuple:
    """
    Strokes of drilling with a top drive.
    """

def trip(
    hoisting: Hoisting,
    depth_from: float | numpy.typing.ArrayLike,
    depth_to: float | numpy.typing.ArrayLike,
    stand_length: float | numpy.typing.ArrayLike,
) -> tuple:
    """
    Strokes of a trip by stands, out or in.
    """
