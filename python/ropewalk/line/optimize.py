"""The program that uses least rope: every program of a grid is run, none is guessed."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, replace
from typing import TYPE_CHECKING, Any

import numpy as np

from ropewalk._border import QuantityLike, to_quantity, to_si
from ropewalk.errors import InadmissibleError
from ropewalk.line._cases import Judgment, run_programs
from ropewalk.line._setup import columns_of, line_model, line_of
from ropewalk.line.program import SlipCutProgram
from ropewalk.line.spacing import crossover_shift, lap_length

if TYPE_CHECKING:
    import xarray as xr

    from ropewalk.fatigue import LifeModel
    from ropewalk.line.campaign import Campaign
    from ropewalk.rig import Rig

_WHERE = "optimize_program"
#: Least shift of the crossovers by a cut, in distances between two of them: a quarter lap where
#: there is one crossover a lap. Common practice, no source.
_LEAST_SHIFT = 0.1
#: Odd quarter laps move the crossovers whether there is one or two of them in a lap.
_LAPS = tuple(np.arange(8.25, 16.0, 0.5))
_SLIPS = (1, 2, 3, 4)


@dataclass(frozen=True, slots=True)
class ProgramChoice:
    """One program that was tried, in SI.

    Attributes
    ----------
    program
        The program.
    laps
        Laps of the first drum layer in one cut.
    slips_per_cut
        Slips that make one cut.
    goal_si
        Work per length cut, J/m.
    rope_use_si
        Rope cut per work of the line, m/J: the inverse of the goal.
    survival
        Probability that no place passes the limit.
    worst
        Largest damage of any place over the run, by median lives.
    end
        How the run ended: ``"reel used up"``, or before that ``"campaign done"`` or ``"limit
        reached"``.
    feasible
        True if it keeps every bound.
    binds
        Bounds it breaks, in words; empty if feasible.
    efficient
        True if no feasible choice uses less rope at no more risk.
    """

    program: SlipCutProgram
    laps: float
    slips_per_cut: int
    goal_si: float
    rope_use_si: float
    survival: float
    worst: float
    end: str
    feasible: bool
    binds: tuple[str, ...]
    efficient: bool = False

    @property
    def risk(self) -> float:
        """Probability that some place passes the limit."""
        return 1.0 - self.survival

    @property
    def text(self) -> str:
        """One line for tables."""
        slips = "1 slip" if self.slips_per_cut == 1 else f"{self.slips_per_cut} slips"
        return f"{self.program.title} ({self.laps:.4g} laps in {slips})"


@dataclass(frozen=True, eq=False, repr=False)
class ProgramFront:
    """What `optimize_program` found.

    Attributes
    ----------
    choices
        Every program that was tried.
    current
        The present practice of the rig under the same judgment; None if the file has none.
    recommended
        The feasible choice that uses least rope; of equals the one with least risk, then the fewest
        slips. None if no choice is feasible.
    confidence, limit
        Probability asked for, and the share of its life that a place may use.
    why
        What stands in the way of using less rope.
    """

    choices: tuple[ProgramChoice, ...]
    current: ProgramChoice | None
    recommended: ProgramChoice | None
    confidence: float
    limit: float
    why: tuple[str, ...]

    @property
    def front(self) -> tuple[ProgramChoice, ...]:
        """Efficient choices, least rope first."""
        return tuple(sorted((c for c in self.choices if c.efficient), key=lambda c: c.rope_use_si))

    def dataset(self) -> xr.Dataset:
        """All choices as a labelled table along ``choice``."""
        import xarray as xr

        columns = {
            "rope_use": ("m/J", "rope cut per work of the line", "rope_use_si"),
            "goal": ("J/m", "work of the line per length cut", "goal_si"),
            "survival": ("1", "probability that no place passes the limit", "survival"),
            "worst": ("1", "largest damage of any place, median lives", "worst"),
            "laps": ("1", "drum laps in one cut", "laps"),
            "slips_per_cut": ("1", "slips in one cut", "slips_per_cut"),
            "feasible": ("1", "keeps every bound", "feasible"),
            "efficient": ("1", "no other uses less rope at no more risk", "efficient"),
        }
        return xr.Dataset(
            {
                name: (
                    "choice",
                    np.array([getattr(c, field) for c in self.choices]),
                    {"units": unit, "long_name": text},
                )
                for name, (unit, text, field) in columns.items()
            },
            attrs={"limit": self.limit, "confidence": self.confidence, "search": "enumeration"},
        )

    def __repr__(self) -> str:
        found = "none feasible" if self.recommended is None else self.recommended.text
        return f"<ProgramFront: {len(self.choices)} choices; {found}>"


def optimize_program(
    rig: Rig,
    campaign: Campaign | None = None,
    *,
    limit: float = 0.8,
    confidence: float = 0.9,
    scatter_lg: float | None = None,
    correlation_length: QuantityLike = "10 m",
    laps: Sequence[float] = _LAPS,
    slips_per_cut: Sequence[int] = _SLIPS,
    goals: QuantityLike | None = None,
    longest_interval: QuantityLike | None = None,
    repeats: int = 100,
    model: LifeModel | None = None,
    bin_length: QuantityLike = "0.5 m",
    threads: int = 1,
) -> ProgramFront:
    """Find the slip-and-cut program that uses least rope per work at a risk the user accepts.

    Every combination of `laps`, `slips_per_cut` and `goals` is run through the campaign: exact
    enumeration, so nothing is missed on the grid, and nothing is said about what lies between. A
    choice is feasible if with probability `confidence` no place of the rope, cut off or not, passes
    `limit` of its life; the interval between slips is at most `longest_interval`; the drum has
    room; and a cut moves the crossovers.

    A program by the map replaces neither inspection nor the discard criteria in force: rope is cut
    when broken wires or wear say so, whatever the account says.

    Parameters
    ----------
    rig, campaign, model, bin_length
        As in `run_line`. Longer bins than there make the search faster and even out peaks shorter
        than a bin.
    limit
        Share of its life that a place may use, 1 being discard.
    confidence
        Probability with which no place may pass the limit.
    scatter_lg
        Standard deviation of lg life; that of the rig file by default.
    correlation_length : length
        As in `LineHistory.survival`.
    laps
        Laps of the first drum layer in one cut: whole, half or quarter laps.
    slips_per_cut
        In how many slips a cut is made: as many as the crew will do.
    goals : energy per length, optional
        Work of the line per length cut; by default 14 goals from half of the present practice of
        the rig, or of 10 ton-miles per foot, up to 16 times of it, and then four between the
        largest that is feasible and the next.
    longest_interval : energy, optional
        Most work between two slips.
    repeats
        Most campaigns that are run one after the other. A run ends before that when the reel is
        used up or a place reaches discard by its median life; only a run that sees old rope leave
        the line tells what a program comes to.
    threads
        Any number gives the same answer.

    Returns
    -------
    ProgramFront

    Raises
    ------
    UnitError, InadmissibleError
        For an argument without its unit, or one that cannot be.

    Examples
    --------
    >>> import ropewalk as rw
    >>> rig = rw.load_rig(rw.rig.example("rig7"))
    >>> found = rw.optimize_program(
    ...     rig, laps=[11.5], slips_per_cut=[4], goals=rw.Q([10.0, 40.0], "ton_mile/ft"), repeats=1
    ... )
    >>> len(found.choices), found.current is not None
    (2, True)
    """
    from ropewalk.line.campaign import Campaign

    chosen = Campaign.from_plan(rig) if campaign is None else campaign
    if not 0.0 < confidence < 1.0:
        text = f"confidence = {confidence:g} must be more than 0 and less than 1"
        raise InadmissibleError(f"{_WHERE}(): {text}", _WHERE, "confidence")
    judge = Judgment(
        limit=float(limit),
        scatter_lg=rig.known_life.scatter_lg if scatter_lg is None else float(scatter_lg),
        section=float(to_si(_WHERE, "correlation_length", correlation_length, "length")),
        bin_length=float(to_si(_WHERE, "bin_length", bin_length, "length")),
        repeats=int(repeats),
        damage_limit=1.0,
    )
    most = np.inf
    if longest_interval is not None:
        most = float(to_si(_WHERE, "longest_interval", longest_interval, "energy"))
    turns = _check_laps(laps)
    line = line_of(rig, columns_of(chosen), line_model(rig) if model is None else model)

    def judged(programs: list[SlipCutProgram]) -> list[ProgramChoice]:
        results = run_programs([line] * len(programs), chosen, programs, judge, threads=threads)
        return [
            _choice(rig, program, {k: v[i] for k, v in results.items()}, judge, confidence, most)
            for i, program in enumerate(programs)
        ]

    choices = judged(_grid(rig, turns, slips_per_cut, _goals(rig, goals)))
    if goals is None:
        choices += judged(_grid(rig, turns, slips_per_cut, _finer_goals(choices)))
    current = None
    if rig.program is not None:
        (current,) = judged([SlipCutProgram.of_practice(rig.program)])
    marked = _mark_efficient(choices)
    best = _best(marked)
    return ProgramFront(tuple(marked), current, best, confidence, judge.limit, _why(marked, best))


def _choice(
    rig: Rig,
    program: SlipCutProgram,
    result: dict[str, Any],
    judge: Judgment,
    confidence: float,
    most: float,
) -> ProgramChoice:
    goal = _goal_of(program, result)
    binds = _bounds(rig, program, result, judge, confidence, most)
    return ProgramChoice(
        program=program,
        laps=program.cut_si / lap_length(rig),
        slips_per_cut=program.slips_per_cut,
        goal_si=goal,
        rope_use_si=1.0 / goal,
        survival=float(result["survival"]),
        worst=float(result["worst"]),
        end=str(result["end"]),
        feasible=not binds,
        binds=binds,
    )


def _goal_of(program: SlipCutProgram, result: dict[str, Any]) -> float:
    """Work per length cut, without the rounding of the laps between."""
    if program.trigger == "work":
        return float(f"{program.interval_si / program.slip_si:.10g}")
    return float(result["work"]) / max(float(result["rope_cut"]), 1e-9)


def _check_laps(laps: Sequence[float]) -> list[float]:
    for one in laps:
        if not one > 0.0 or abs(4.0 * one - round(4.0 * one)) > 1e-9:
            text = f"laps = {one:g} must be a positive number of whole, half or quarter laps"
            raise InadmissibleError(f"{_WHERE}(): {text}", _WHERE, "laps")
    return [float(one) for one in laps]


def _goals(rig: Rig, goals: QuantityLike | None) -> list[float]:
    if goals is not None:
        # Work per length has the dimension of a force.
        return [float(g) for g in np.atleast_1d(to_si(_WHERE, "goals", goals, "force"))]
    known = rig.program
    if known is not None and known.every is not None:
        base = known.every / known.slip
    else:
        base = float(to_si(_WHERE, "goals", "10 ton_mile/ft", "force"))
    return [float(g) for g in base * np.geomspace(0.5, 16.0, 14)]


def _finer_goals(choices: list[ProgramChoice]) -> list[float]:
    """Goals between the largest that is feasible and the next, which is not."""
    best = _best(choices)
    larger = [] if best is None else [c.goal_si for c in choices if c.goal_si > best.goal_si * 1.01]
    if best is None or not larger:
        return []
    return [float(g) for g in np.geomspace(best.goal_si, min(larger), 6)[1:-1]]


def _grid(
    rig: Rig, laps: Sequence[float], slips: Sequence[int], goals: Sequence[float]
) -> list[SlipCutProgram]:
    lap = lap_length(rig)
    return [
        SlipCutProgram(
            to_quantity(turns * lap / int(count), "length"),
            to_quantity(turns * lap, "length"),
            to_quantity(goal * turns * lap / int(count), "energy"),
        )
        for turns in laps
        for count in slips
        for goal in goals
    ]


def _bounds(
    rig: Rig,
    program: SlipCutProgram,
    result: dict[str, Any],
    judge: Judgment,
    confidence: float,
    most: float,
) -> tuple[str, ...]:
    """Bounds that a program breaks, in words."""
    if result["status"]:
        return (str(result["reason"]),)
    broken = []
    survival = float(result["survival"])
    if survival < confidence:
        broken.append(
            f"a place passes {judge.limit:g} of its life with probability {1.0 - survival:.2g}, "
            f"more than {1.0 - confidence:.2g}"
        )
    if program.trigger == "work" and program.interval_si > most * (1.0 + 1e-9):
        broken.append("the interval between slips is longer than the longest allowed")
    if crossover_shift(rig, program.cut_si) < _LEAST_SHIFT:
        broken.append("the cut leaves the crossovers of the drum where they were")
    return tuple(broken)


def _mark_efficient(choices: list[ProgramChoice]) -> list[ProgramChoice]:
    order = sorted(
        (i for i, c in enumerate(choices) if c.feasible),
        key=lambda i: (choices[i].rope_use_si, choices[i].risk, choices[i].slips_per_cut),
    )
    least = np.inf
    for i in order:
        if choices[i].risk < least:
            least = choices[i].risk
            choices[i] = replace(choices[i], efficient=True)
    return choices


def _best(choices: list[ProgramChoice]) -> ProgramChoice | None:
    feasible = [c for c in choices if c.feasible]
    if not feasible:
        return None
    return min(feasible, key=lambda c: (c.rope_use_si, c.risk, c.slips_per_cut))


def _why(choices: list[ProgramChoice], best: ProgramChoice | None) -> tuple[str, ...]:
    """What the choices with less rope than the best one break."""
    if best is None:
        return tuple(dict.fromkeys(text for c in choices for text in c.binds))
    thriftier = [c for c in choices if c.goal_si > best.goal_si * (1.0 + 1e-6)]
    if not thriftier:
        return ("no program of the grid uses less rope: try larger goals",)
    next_goal = min(c.goal_si for c in thriftier)
    nearest = [c for c in thriftier if c.goal_si < next_goal * (1.0 + 1e-6)]
    safest = max(nearest, key=lambda c: c.survival)
    return safest.binds
