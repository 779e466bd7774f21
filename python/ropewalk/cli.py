"""The command ``ropewalk``."""

from __future__ import annotations

import sys
from pathlib import Path

import click

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
    """Do the main job on the invented Rig 7: sheave diameter against line life."""
    from ropewalk.rig import example

    _study(example("rig7"), out)


@main.command()
@click.argument("rig_file", type=_FILE)
@click.option("--out", type=_FOLDER, required=True, help="Folder for the picture and the tables.")
def life(rig_file: Path, out: Path) -> None:
    """Sweep sheave diameter, lines and rope of RIG_FILE against the life of the line."""
    _study(rig_file, out)


def _study(rig_file: Path, out: Path) -> None:
    from ropewalk.errors import RopewalkError
    from ropewalk.study.report import run

    try:
        run(rig_file, out)
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
