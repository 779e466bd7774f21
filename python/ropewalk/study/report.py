"""The main job from a rig file to tables, a picture and three plain lines."""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path
from typing import TYPE_CHECKING, Any

import numpy as np
from rich.box import SIMPLE_HEAD
from rich.console import Console
from rich.progress import BarColumn, Progress, TextColumn, TimeRemainingColumn
from rich.table import Table

from ropewalk import design_factor, si
from ropewalk._files import write_whole
from ropewalk._units import Q
from ropewalk.rig import Rig, load_rig, practice
from ropewalk.rig.plan import STUCK
from ropewalk.study.dataset import CAUTION, to_table
from ropewalk.study.words import plain_lines
from ropewalk.suspension import rig_margins

if TYPE_CHECKING:
    import xarray as xr

    from ropewalk.rope import Rope

#: The sweep of the main job.
LINES = (8, 10, 12)
DIAMETERS_IN = np.arange(30.0, 73.0, 2.0)
OTHER_CONSTRUCTION = "6x36WS IWRC"


def run(rig_file: Path, out: Path) -> None:
    """Do the main job on `rig_file`; pictures and tables go to the folder `out`.

    Raises
    ------
    RopewalkError
        If the rig file cannot be used.
    OSError
        If the folder cannot be written.
    """
    console = Console(highlight=False, markup=False)
    rig = load_rig(rig_file)
    out.mkdir(parents=True, exist_ok=True)
    _print_head(console, rig)
    console.print(_tension_table(rig))
    console.print(_operation_table(rig))
    _print_ratings(console, rig)
    data = _sweep(console, rig)
    for path in write_results(data, out):
        console.print(f"wrote {path}")
    console.print()
    for line in plain_lines(rig, data):
        console.print(line, soft_wrap=True)
    console.print()
    console.print(f"Caution: {CAUTION}", soft_wrap=True)


def _print_head(console: Console, rig: Rig) -> None:
    console.print(f"{rig.name}, {rig.site}: {rig.rope!s}, {rig.reeving.lines} lines")
    if rig.invented:
        console.print("Everything about this rig is invented for demonstration.")
    console.print()


def _tension_table(rig: Rig) -> Table:
    """Line tensions and efficiency at the heaviest pull of the plan, by motion."""
    trip = rig.heaviest_trip
    load = trip.heaviest_hook_load(rig.block.weight)
    table = Table(
        title=f"Tensions [kip] at a hook load of {_kip(load)} kip: "
        f"{trip.kind}, {trip.depth:.0f} m, with drag",
        title_justify="left",
        box=SIMPLE_HEAD,
    )
    table.add_column("motion")
    for name in ("fast line", "line N", "line 1", "dead line", "crown", "efficiency"):
        table.add_column(name, justify="right", no_wrap=True)
    for motion in ("static", "hoisting", "lowering"):
        t = rig.reeving.tensions(Q(load, "N"), motion=motion)
        table.add_row(
            motion,
            *(
                _kip(x)
                for x in (
                    t.fast_line_si,
                    t.lines_si[-1],
                    t.lines_si[0],
                    t.dead_line_si,
                    t.crown_load_si,
                )
            ),
            f"{t.efficiency:.3f}",
        )
    return table


def _operation_table(rig: Rig) -> Table:
    """Peak hook load, design factor and margin, and work of every operation of the plan."""
    table = Table(
        title="Operations: loads [kip], design factor of the line, work of the line [ton-mile]",
        title_justify="left",
        box=SIMPLE_HEAD,
    )
    table.add_column("operation", no_wrap=True)
    for name in ("hook\nload", "fast\nline", "design\nfactor", "at\nleast", "margin", "work"):
        table.add_column(name, justify="right", no_wrap=True)
    total = 0.0
    for one in rig.operations:
        if one.string is None:
            continue
        load = one.heaviest_hook_load(rig.block.weight)
        work = one.work(rig.block.weight)
        total += work
        table.add_row(one.title, *_factor_cells(rig, load, one.service), _ton_miles(work))
    if rig.limits.overpull is not None:
        table.add_row("pull on stuck string", *_factor_cells(rig, rig.stuck_hook_load, STUCK), "")
    table.add_section()
    table.add_row("all planned work", "", "", "", "", "", _ton_miles(total))
    minimum = design_factor.minimum("rotary drilling", rig.design_factor_standard)
    table.caption = (
        "Design factors are on the fast line while hoisting with drag. Minimums are on the "
        f"{minimum.basis}: {minimum.source}. Work: API RP 9B closed forms; "
        "where there is none, load times travel, without drag."
    )
    table.caption_justify = "left"
    return table


def _factor_cells(rig: Rig, hook_load: float, service: str) -> list[str]:
    fast = rig.reeving.tensions(Q(hook_load, "N"), motion="hoisting").fast_line_si
    factor = float(si.design_factor.design_factor(rig.rope.breaking_force_si, fast))
    limit = design_factor.minimum(service, rig.design_factor_standard).value
    return [
        _kip(hook_load),
        _kip(fast),
        f"{factor:.2f}",
        f"{limit:g}",
        f"{100.0 * (factor / limit - 1.0):+.0f} %",
    ]


def _print_ratings(console: Console, rig: Rig) -> None:
    """Largest planned loads on the blocks against their ratings, and what is unusual."""
    largest = rig.reeving.tensions(Q(rig.largest_hook_load, "N"), motion="hoisting")
    hook, crown = float(largest.lines_si.sum()), float(largest.crown_load_si)
    for name, load, rating in (
        ("traveling block", hook, rig.block.sheaves.rated_load),
        ("crown block", crown, rig.crown.rated_load),
    ):
        margin = 100.0 * (rating / load - 1.0)
        console.print(
            f"{name}: {_kip(load)} kip of rated {_kip(rating)} kip, margin {margin:+.0f} %"
        )
    margins = rig_margins(rig)
    console.print(
        f"weakest from crown to pipe: {margins.weakest}, at its limit under a hook load of "
        f"{_kip(margins.largest_hook_load.m_as('N'))} kip (line as for rotary drilling)"
    )
    unusual = [one for one in practice(rig) if not one.holds]
    for one in unusual:
        console.print(
            f"unusual: {one.title} {one.value:.4g~P}; usual {one.low:g} to {one.high:g} {one.unit} "
            f"({one.source})"
        )
    if not unusual:
        console.print("sizes and ratings: all of a usual size (common practice, no source)")


def _sweep(console: Console, rig: Rig) -> xr.Dataset:
    from ropewalk.study.sheave_life import sheave_life

    columns = (TextColumn("sweep"), BarColumn(), TextColumn("{task.percentage:>3.0f} %"))
    with Progress(*columns, TimeRemainingColumn(), console=console, transient=True) as bar:
        task = bar.add_task("sweep", total=None)
        return sheave_life(
            rig,
            sheave_diameters=Q(DIAMETERS_IN, "in"),
            lines=LINES,
            ropes=(rig.rope, _other_rope(rig.rope)),
            progress=lambda done, total: bar.update(task, completed=done, total=total),
        )


def _other_rope(rope: Rope) -> Rope:
    """The rope of the same grade and size in the construction it is compared with."""
    from ropewalk.rope import Rope

    return Rope(OTHER_CONSTRUCTION, grade=rope.grade, diameter=rope.diameter)


def write_results(data: xr.Dataset, out: Path) -> list[Path]:
    """Write picture, CSV and NetCDF; each file appears whole or not at all.

    Parameters
    ----------
    data
        Result of `ropewalk.study.sheave_life`.
    out
        Folder that exists.

    Returns
    -------
    list of pathlib.Path
        The files written.
    """
    from ropewalk.plot import sheave_life_figure

    figure = sheave_life_figure(data)
    table = to_table(data)
    writers: dict[str, Callable[[Path], Any]] = {
        "sheave-life.png": lambda path: figure.savefig(path, format="png", dpi=150),
        "sheave-life.csv": lambda path: table.to_csv(path, index=False),
        "sheave-life.nc": lambda path: data.to_netcdf(path, engine="h5netcdf"),
    }
    return [write_whole(out / name, write) for name, write in writers.items()]


def print_models() -> None:
    """Print the life models with basis and source."""
    from ropewalk import fatigue

    table = Table(title="Life models for bending over sheaves", title_justify="left")
    for name in ("model", "counts to", "scale of life", "source"):
        table.add_column(name, overflow="fold")
    for row in fatigue.catalog():
        table.add_row(row.name, row.basis, row.scale, row.source)
    Console(highlight=False, markup=False).print(table)


def _kip(newton: Any) -> str:
    return f"{Q(float(newton), 'N').m_as('kip'):.1f}"


def _ton_miles(joule: float) -> str:
    return f"{Q(joule, 'J').m_as('ton_mile'):,.0f}"
