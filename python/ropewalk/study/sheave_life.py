"""The main job: sheave diameter, lines strung and rope against the life of the line."""

from __future__ import annotations

from collections.abc import Callable, Iterable, Sequence
from dataclasses import dataclass, replace
from typing import TYPE_CHECKING

import numpy as np
import numpy.typing as npt

from ropewalk.rig.models import LifeModel, models_of
from ropewalk.rig.plan import TripStrokes, trip_strokes
from ropewalk.study.section import sheave_windows, worst_section_damage

if TYPE_CHECKING:
    import xarray as xr

    from ropewalk._units import QuantityLike
    from ropewalk.line import SlipCutProgram
    from ropewalk.reeving import Motion, Reeving
    from ropewalk.rig import Rig
    from ropewalk.rope import Rope

Array = npt.NDArray[np.float64]
#: Called with the number of finished and of all designs.
Progress = Callable[[int, int], None]

#: Standard normal quantile of 0.9: the band runs from the 10th to the 90th percentile.
_Z90 = 1.2815515655446004


@dataclass(frozen=True, slots=True)
class Passes:
    """Tension on the tight side of every turning sheave, stroke by stroke, N.

    ``tension[stroke, sheave]``; ``count[stroke]`` tells how many equal strokes the row stands for.
    """

    tension: Array
    count: Array


def sheave_life(
    rig: Rig,
    *,
    sheave_diameters: QuantityLike,
    lines: Sequence[int],
    ropes: Sequence[Rope],
    models: Iterable[LifeModel] | None = None,
    program: SlipCutProgram | None = None,
    threads: int = 1,
    progress: Progress | None = None,
) -> xr.Dataset:
    """Sweep sheave diameter, lines strung and rope, and give the life of the line for each.

    The life of a design is counted in round trips of the heaviest trip of the plan. Every stand
    gives four strokes (loaded and empty, up and down). A stroke bends each section of line once
    over every sheave it passes; the worst section passes sheaves ⌈N·L_min/L_max⌉ … N. Damage adds
    up linearly (Palmgren and Miner). The blocks of a design have sheaves of one diameter.

    What this leaves out: spooling on the drum, reverse bends, wear at crossovers and pick-up
    points, and slip and cut. The damage map counts all of them along the whole plan: ``line_life``
    is the work of the line until its worst place reaches discard, under `program`, for rigs whose
    file has ``[line]`` and ``[drum]``; ``line_life_end`` says what ended it, or why there is none.

    The constants of the rig file belong to its own rope; another construction has its life by the
    ratio of the published construction factors.

    Parameters
    ----------
    rig
        The hoist; its rope and number of lines are replaced by those swept.
    sheave_diameters
        Tread diameters of all sheaves, shape (n,), rising.
    lines
        Numbers of lines strung.
    ropes
        Ropes to compare.
    models
        Life models; by default all that the rig file gives constants for.
    program
        When the line is slipped and cut, for ``line_life``; never, if left out.
    threads
        For ``line_life``; any number gives the same answer.
    progress
        Told how far the sweep is.

    Returns
    -------
    xarray.Dataset
        Dimensions model, rope, lines, sheave_diameter; unit and long name on every variable.
        ``holds`` tells where the model is inside its published range at the heaviest bend, and
        ``share_in_range`` which share of the damage comes from bends inside it.

    Raises
    ------
    UnitError, InadmissibleError
        If an argument has no unit or cannot be.
    """
    from ropewalk._border import to_si
    from ropewalk.study.dataset import to_dataset

    diameters = np.atleast_1d(
        np.asarray(to_si("study.sheave_life", "sheave_diameters", sheave_diameters, "length"))
    )
    chosen = tuple(models) if models is not None else models_of(rig.known_life, rig.rope)
    shape = (len(chosen), len(ropes), len(lines), diameters.size)
    results = {name: np.full(shape, np.nan) for name in ("cycles", "trips", "share_in_range")}
    holds = np.zeros(shape, dtype=bool)
    strokes = trip_strokes(rig.heaviest_trip, rig.block.weight)
    factors = [_construction_factor(rope, rig.rope) for rope in ropes]
    line_results = [_line_results(rig, n, strokes) for n in lines]

    done, total = 0, len(chosen) * len(ropes) * len(lines)
    for m, model in enumerate(chosen):
        for r, rope in enumerate(ropes):
            for n, (passes, heaviest) in enumerate(line_results):
                windows = sheave_windows(lines[n], rig.block.highest, rig.block.lowest)
                life = _life_of_design(
                    model, rope, factors[r], passes, heaviest, windows, diameters
                )
                for name, values in zip(results, life[:3], strict=True):
                    results[name][m, r, n] = values
                holds[m, r, n] = life[3]
                done += 1
                if progress is not None:
                    progress(done, total)
    by_map, end = _line_life(rig, chosen, ropes, factors, lines, diameters, program, threads)
    return to_dataset(
        rig=rig,
        models=chosen,
        ropes=ropes,
        lines=lines,
        diameters=diameters,
        fast_sheave_tension=np.array([heaviest for _, heaviest in line_results]),
        results=results,
        holds=holds,
        line_life=by_map,
        line_life_end=end,
        band=10.0 ** (_Z90 * rig.known_life.scatter_lg),
    )


def _line_life(
    rig: Rig,
    models: Sequence[LifeModel],
    ropes: Sequence[Rope],
    factors: Sequence[float],
    lines: Sequence[int],
    diameters: Array,
    program: SlipCutProgram | None,
    threads: int,
) -> tuple[Array, npt.NDArray[np.object_]]:
    """Return the lives by the map, or why the rig has none."""
    shape = (len(models), len(ropes), len(lines), diameters.size)
    if rig.line is None or rig.drum is None:
        reason = "the rig file has no [line] or no [drum]"
        return np.full(shape, np.nan), np.full(shape, reason, dtype=object)
    from ropewalk.line import Campaign
    from ropewalk.study.line_life import line_life

    return line_life(
        rig,
        Campaign.from_plan(rig),
        models=models,
        ropes=ropes,
        factors=factors,
        lines=lines,
        diameters=diameters,
        program=program,
        threads=threads,
    )


def passes_of(rig: Rig, lines: int, strokes: TripStrokes) -> Passes:
    """Tensions at every turning sheave in the strokes of a round trip, for one number of lines."""
    reeving = replace(rig.reeving, lines=lines)
    up = tight_sides(reeving, "hoisting")
    down = tight_sides(reeving, "lowering")
    stands = strokes.pulling.size
    tension = np.concatenate(
        [
            np.outer(strokes.pulling, up),
            np.outer(strokes.running, down),
            strokes.block * np.stack([up, down]),
        ]
    )
    count = np.concatenate([np.ones(2 * stands), np.full(2, float(stands))])
    return Passes(tension, count)


def _line_results(rig: Rig, lines: int, strokes: TripStrokes) -> tuple[Passes, float]:
    """Tensions at every sheave for one number of lines, and the heaviest at the fast sheave."""
    passes = passes_of(rig, lines, strokes)
    return passes, float(passes.tension[:, -1].max())


def _construction_factor(rope: Rope, known: Rope) -> float:
    """Bending life of a construction over that of the rope the constants of the rig belong to."""
    from ropewalk import fatigue

    if rope.construction == known.construction:
        return 1.0
    factor = fatigue.construction_factor
    return float(factor(rope.construction).value / factor(known.construction).value)


def tight_sides(reeving: Reeving, motion: Motion) -> Array:
    """Return the tension on the tight side of turning sheave 1 … N for a unit hook load.

    Hoisting, the rope is tightest where it leaves the sheave toward the drum; lowering, where it
    comes onto it from the dead end.
    """
    tensions = reeving.tensions("1 N", motion=motion)
    along = np.append(tensions.lines_si, tensions.fast_line_at_crown_si)
    return along[1:] if motion == "hoisting" else along[:-1]


def _life_of_design(
    model: LifeModel,
    rope: Rope,
    life_factor: float,
    passes: Passes,
    heaviest: float,
    windows: list[tuple[int, int]],
    diameters: Array,
) -> tuple[Array, Array, Array, npt.NDArray[np.bool_]]:
    """Return cycles at the heaviest bend, trips, share of damage in range and whether it holds."""
    cycles, outside = model.cycles_si(heaviest, rope, diameters, life_factor)
    # strokes × sheaves × diameters
    lives, outside_all = model.cycles_si(passes.tension[:, :, None], rope, diameters, life_factor)
    damage = passes.count[:, None, None] / lives
    per_sheave = np.moveaxis(damage.sum(axis=0), 0, -1)
    inside = np.moveaxis(np.where(outside_all, 0.0, damage).sum(axis=0), 0, -1)
    worst = worst_section_damage(per_sheave, windows)
    total = per_sheave.sum(axis=-1)
    return cycles, 1.0 / worst, inside.sum(axis=-1) / total, ~outside
