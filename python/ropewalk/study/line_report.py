"""The line of a rig in tables, pictures and plain lines: where the wear goes, what to cut when."""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path
from typing import TYPE_CHECKING, Any

from rich.box import SIMPLE_HEAD
from rich.console import Console
from rich.table import Table

from ropewalk._files import write_whole
from ropewalk._units import Q
from ropewalk.line import (
    Campaign,
    LineHistory,
    ProgramChoice,
    ProgramFront,
    SlipCutProgram,
    compare_programs,
    optimize_program,
    run_line,
)

if TYPE_CHECKING:
    import xarray as xr

    from ropewalk.rig import Rig

CAUTION = (
    "the damage account adds up published or given life models; it knows nothing of crushing, "
    "corrosion or bad spooling. It replaces neither inspection of the rope and its discard "
    "criteria nor the maker's manual, the rules in force where the rig stands, and the judgment "
    "of qualified people. Slip and cut with the load off the line, the block hung off or set "
    "down, and the over-travel devices checked afterwards."
)


def run_campaign(
    rig: Rig, out: Path, *, plan: Path | None = None, program: SlipCutProgram | None = None
) -> None:
    """Print and write the damage map of a campaign.

    Parameters
    ----------
    rig
        The hoist.
    out
        Folder for picture and tables.
    plan
        A well plan of its own; that of the rig if left out.
    program
        When the line is slipped and cut; the present practice of the rig if left out.
    """
    console = _console()
    out.mkdir(parents=True, exist_ok=True)
    campaign = Campaign.from_plan(rig, plan)
    history = run_line(rig, campaign, program or _practice(rig), outside_validity="ignore")
    _print_history(console, history)
    for path in write_history(history, out):
        console.print(f"wrote {path}")
    console.print()
    console.print(f"Caution: {CAUTION}", soft_wrap=True)


def run_programs(
    rig: Rig,
    out: Path,
    *,
    plan: Path | None = None,
    limit: float = 0.8,
    confidence: float = 0.9,
    threads: int = 1,
) -> None:
    """Print and write the front of slip-and-cut programs and the comparison with the present."""
    console = _console()
    out.mkdir(parents=True, exist_ok=True)
    campaign = Campaign.from_plan(rig, plan)
    front = optimize_program(rig, campaign, limit=limit, confidence=confidence, threads=threads)
    _print_front(console, front)
    if front.recommended is not None:
        _print_comparison(console, comparison(rig, campaign, front, threads=threads))
    for path in write_front(front, out):
        console.print(f"wrote {path}")
    console.print()
    console.print(f"Caution: {CAUTION}", soft_wrap=True)


def comparison(
    rig: Rig, campaign: Campaign, front: ProgramFront, *, threads: int = 1
) -> xr.Dataset:
    """Present practice, if any, and the recommended program on the same campaigns."""
    programs: dict[str, SlipCutProgram] = {}
    if front.current is not None:
        programs["present practice"] = front.current.program
    if front.recommended is not None:
        programs["by the map"] = front.recommended.program
    return compare_programs(rig, programs, campaign, limit=front.limit, repeats=5, threads=threads)


def write_history(history: LineHistory, out: Path) -> list[Path]:
    """Write picture and table of the map; each file appears whole or not at all."""
    from ropewalk.plot import line_figure

    figure = line_figure(history)
    table = history.damage.to_dataframe().join(history.cycles.to_dataframe())
    writers: dict[str, Callable[[Path], Any]] = {
        "line-damage.png": lambda path: figure.savefig(path, format="png", dpi=150),
        "line-damage.csv": lambda path: table.to_csv(path),
    }
    return [write_whole(out / name, write) for name, write in writers.items()]


def write_front(front: ProgramFront, out: Path) -> list[Path]:
    """Write picture and table of the front."""
    from matplotlib.figure import Figure

    from ropewalk.plot import program_front

    figure = Figure(figsize=(7.5, 5.0), layout="constrained")
    program_front(figure.subplots(), front)
    table = front.dataset().to_dataframe()
    writers: dict[str, Callable[[Path], Any]] = {
        "slip-and-cut.png": lambda path: figure.savefig(path, format="png", dpi=150),
        "slip-and-cut.csv": lambda path: table.to_csv(path, index=False),
    }
    return [write_whole(out / name, write) for name, write in writers.items()]


def _console() -> Console:
    return Console(highlight=False, markup=False)


def _practice(rig: Rig) -> SlipCutProgram | None:
    return None if rig.program is None else SlipCutProgram.of_practice(rig.program)


def _print_history(console: Console, history: LineHistory) -> None:
    work = history.work.to("ton_mile").magnitude
    program = "no slips" if history.program is None else history.program.title
    console.print(
        f"{history.rig.name}: {work:.0f} ton-miles over {len(history.campaign.operations)} "
        f"operations; {program}; life by {history.model.name}"
    )
    if history.rig.invented:
        console.print("Everything about this rig is invented for demonstration.")
    table = Table(title="Worst places of the line", title_justify="left", box=SIMPLE_HEAD)
    for name in ("place", "position [m]", "damage", "share of it", ""):
        table.add_column(name, justify="left" if name in ("place", "") else "right")
    for place in history.worst_places():
        table.add_row(
            place.text,
            f"{place.position_si:.1f}",
            f"{place.damage:.3f}",
            f"{100.0 * place.share:.0f} %",
            "cut off" if place.cut_off else "",
        )
    console.print(table)
    _print_shares(console, history)
    slips = sum(1 for event in history.events if event.kind == "slip")
    console.print(
        f"{slips} slips, {len(history.sections)} cuts, {history.rope_cut.to('m').magnitude:.0f} m "
        f"cut, {history.reel_left.to('m').magnitude:.0f} m left on the reel"
        + (f", enough for {history.cuts_left} cuts" if history.cuts_left is not None else "")
        + f"; fewest wraps on the drum {history.least_wraps:.1f}"
    )
    console.print(
        f"largest damage {history.worst:.3f} of the median life; "
        f"{100.0 * history.share_outside_validity:.0f} % of the damage comes from bends outside "
        "the range of the life model",
        soft_wrap=True,
    )
    if history.end != "campaign done":
        console.print(f"the run ended early: {history.end}")
    for text in history.warnings:
        console.print(f"warning (common practice, no source): {text}", soft_wrap=True)


def _print_shares(console: Console, history: LineHistory) -> None:
    table = Table(title="Share of the damage", title_justify="left", box=SIMPLE_HEAD)
    for name in ("by cause", "share", "by operation", "share "):
        table.add_column(name, justify="left" if name.startswith("by") else "right")
    causes, operations = (
        share[share > 0.0].to_series().sort_values(ascending=False).items()
        for share in (history.share_by_cause, history.share_by_operation)
    )
    left, right = list(causes)[:8], list(operations)[:8]
    for i in range(max(len(left), len(right))):
        cells: list[str] = []
        for column in (left, right):
            cells += (
                [str(column[i][0]), f"{100.0 * column[i][1]:.1f} %"]
                if i < len(column)
                else ["", ""]
            )
        table.add_row(*cells)
    console.print(table)


def _print_front(console: Console, front: ProgramFront) -> None:
    table = Table(
        title=f"Slip-and-cut programs: {len(front.choices)} tried, those no other one beats; at "
        f"most {front.limit:g} of its life used anywhere with probability {front.confidence:g}",
        title_justify="left",
        box=SIMPLE_HEAD,
    )
    table.add_column("program")
    for name in ("ton-mile/ft", "risk", "worst place"):
        table.add_column(name, justify="right")
    for choice in front.front:
        table.add_row(*_choice_cells(choice))
    if front.current is not None:
        table.add_section()
        table.add_row("present: " + front.current.program.title, *_choice_cells(front.current)[1:])
    console.print(table)
    if front.recommended is None:
        console.print("no program keeps every bound:")
    else:
        console.print(f"recommended: {front.recommended.text}")
        console.print("less rope would break a bound:")
    for text in front.why:
        console.print(f"  {text}", soft_wrap=True)


def _choice_cells(choice: ProgramChoice) -> list[str]:
    goal = Q(choice.goal_si, "N").to("ton_mile/ft").magnitude
    return [choice.text, f"{goal:.1f}", f"{choice.risk:.2g}", f"{choice.worst:.2f}"]


def _print_comparison(console: Console, data: xr.Dataset) -> None:
    table = Table(
        title=f"Side by side over {data.attrs['repeats']} campaigns",
        title_justify="left",
        box=SIMPLE_HEAD,
    )
    table.add_column("program")
    for name in ("rope cut [m]", "waste [m]", "cuts", "worst place", "reel left [m]"):
        table.add_column(name, justify="right")
    for name in data.program.to_numpy():
        one = data.sel(program=name)
        table.add_row(
            str(name),
            f"{float(one.rope_cut):.0f}",
            f"{float(one.waste):.0f}",
            f"{int(one.cuts)}",
            f"{float(one.worst):.2f}",
            f"{float(one.reel_left):.0f}",
        )
    console.print(table)
