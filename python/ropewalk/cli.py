"""The command ``ropewalk``."""

from __future__ import annotations

import os
import sys
from collections.abc import Iterator
from contextlib import contextmanager
from pathlib import Path

import click

from ropewalk._cli_check import COMMANDS
from ropewalk._version import __version__

_FOLDER = click.Path(file_okay=False, path_type=Path)
_FILE = click.Path(dir_okay=False, path_type=Path)


@click.group(context_settings={"help_option_names": ["-h", "--help"]})
@click.version_option(__version__, prog_name="ropewalk")
def main() -> None:
    """Compute the hoist of a drilling rig: tensions, design factors, work and life of the line."""


@main.command()
@click.option(
    "--out",
    type=_FOLDER,
    default=Path("ropewalk-demo"),
    show_default=True,
    help="Folder for the picture and the tables.",
)
def demo(out: Path) -> None:
    """Do the main jobs on the invented Rig 7.

    Sheave diameter against line life; where the wear goes; when to slip and cut.
    """
    from ropewalk.rig import example

    rig_file = example("rig7")
    _study(rig_file, out)
    click.echo()
    _campaign(rig_file, out, None, None)
    click.echo()
    _programs(rig_file, out, None, 0.8, 0.9)


@main.command()
@click.argument("rig_file", type=_FILE)
@click.option("--out", type=_FOLDER, required=True, help="Folder for the picture and the tables.")
def life(rig_file: Path, out: Path) -> None:
    """Sweep sheave diameter, lines and rope of RIG_FILE against the life of the line."""
    _study(rig_file, out)


@main.command()
@click.argument("rig_file", type=_FILE)
@click.option("--plan", type=_FILE, help="A well plan of its own; else that of RIG_FILE.")
@click.option("--slip", help='Line slipped each time, "20 ft"; else the practice of RIG_FILE.')
@click.option("--cut", help='Line cut each time, "80 ft".')
@click.option("--every", help='Work of the line between slips, "200 ton_mile".')
@click.option("--out", type=_FOLDER, required=True, help="Folder for the picture and the table.")
def campaign(
    rig_file: Path,
    plan: Path | None,
    slip: str | None,
    cut: str | None,
    every: str | None,
    out: Path,
) -> None:
    """Run the well plan of RIG_FILE on its line: where the wear goes, place by place."""
    given = (slip, cut, every)
    if any(given) and not all(given):
        raise click.UsageError("--slip, --cut and --every go together")
    _campaign(rig_file, out, plan, None if slip is None else (slip, cut or "", every or ""))


@main.command()
@click.argument("rig_file", type=_FILE)
@click.option("--plan", type=_FILE, help="A well plan of its own; else that of RIG_FILE.")
@click.option(
    "--limit",
    type=click.FloatRange(0.0, 10.0, min_open=True),
    default=0.8,
    show_default=True,
    help="Share of its life that a place of the line may use.",
)
@click.option(
    "--confidence",
    type=click.FloatRange(0.0, 1.0, min_open=True, max_open=True),
    default=0.9,
    show_default=True,
    help="Probability with which no place may pass it.",
)
@click.option("--out", type=_FOLDER, required=True, help="Folder for the picture and the table.")
def programs(rig_file: Path, plan: Path | None, limit: float, confidence: float, out: Path) -> None:
    """Compare slip-and-cut programs for RIG_FILE and find the one that uses least rope."""
    _programs(rig_file, out, plan, limit, confidence)


def _study(rig_file: Path, out: Path) -> None:
    from ropewalk.study.report import run

    with _told_plainly(out):
        run(rig_file, out)


def _campaign(
    rig_file: Path, out: Path, plan: Path | None, program: tuple[str, str, str] | None
) -> None:
    from ropewalk.line import SlipCutProgram
    from ropewalk.rig import load_rig
    from ropewalk.study.line_report import run_campaign

    with _told_plainly(out):
        chosen = None if program is None else SlipCutProgram(*program)
        run_campaign(load_rig(rig_file), out, plan=plan, program=chosen)


def _programs(
    rig_file: Path, out: Path, plan: Path | None, limit: float, confidence: float
) -> None:
    from ropewalk.rig import load_rig
    from ropewalk.study.line_report import run_programs

    with _told_plainly(out):
        threads = os.cpu_count() or 1
        run_programs(
            load_rig(rig_file),
            out,
            plan=plan,
            limit=limit,
            confidence=confidence,
            threads=threads,
        )


@contextmanager
def _told_plainly(out: Path) -> Iterator[None]:
    """Say what is wrong with a file in one line, without a traceback; exit code 2."""
    from ropewalk.errors import RopewalkError

    try:
        yield
    except RopewalkError as error:
        click.echo(str(error), err=True)
        sys.exit(2)
    except OSError as error:
        click.echo(f"{error.filename or out}: {error.strerror}", err=True)
        sys.exit(2)


@main.command()
def models() -> None:
    """List the life models with their basis and source."""
    from ropewalk.study.report import print_models

    print_models()


for _command in COMMANDS:
    main.add_command(_command)
