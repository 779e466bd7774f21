"""Hostile rig files: mutate the shipped ones, read and check them, and report what breaks.

Every input must end within five seconds in verdicts or in an error of ropewalk; nothing outside its
own folder may be opened. Prints what breaks with its seed, so that it can be made again, and exits
with 1 if anything did.
"""

from __future__ import annotations

import argparse
import contextlib
import os
import random
import signal
import sys
import tempfile
import time
import traceback
import warnings
from collections.abc import Iterator
from concurrent.futures import ProcessPoolExecutor
from dataclasses import dataclass
from pathlib import Path
from typing import Any

LONGEST = 5.0
LARGEST_INPUT = 60_000

#: Pieces that have broken readers of files before.
PIECES = (
    "\0",
    "\ufeff",
    "\r",
    "\x1b[2J",
    "\u202e",
    "é",
    "𝟙",
    '"',
    "'",
    '"""',
    "\\",
    "\\u0000",
    "#",
    "[",
    "]",
    "[[",
    "]]",
    "{",
    "}",
    "=",
    ".",
    ",",
    "-",
    "inf",
    "nan",
    "-nan",
    "true",
    "0x7f",
    "1_0",
    "1e999",
    "-1e308",
    "1e-320",
    "9" * 400,
    "0" * 400,
    '"1e999 in"',
    '"-5 in"',
    '"0 in"',
    '"in"',
    '"1 m**99999999"',
    '"2**9**9**9 m"',
    '"1 m/m"',
    '"1 ton"',
    '"1 kg"',
    '"1 J"',
    '"1 N*m"',
    '"1 Hz"',
    '"20 degC"',
    '"1,5 m"',
    '"1-3/8 in"',
    '"1/0 in"',
    "\"__import__('os')\"",
    '"nan m"',
    '"inf m"',
    '"1' + "0" * 300 + ' m"',
    '"m" ',
    "1979-05-27T07:32:00Z",
    "07:32:00",
    "[" * 300,
    "{a=" * 200,
    "a." * 500,
    "\n[rig]\n",
    "\n[[operation]]\n",
    "\nropewalk = 1\n",
    "\nropewalk = 2\n",
    "\nropewalk = 99\n",
    "\nropewalk = true\n",
    '\ninclude = "fuzz.toml"\n',
    '\ninclude = "."\n',
    '\ninclude = "other.toml"\n',
    '\ninclude = "../outside.toml"\n',
    '\ninclude = "/etc/passwd"\n',
    '\ninclude = ["link.toml", "fifo"]\n',
    '\ninclude = "folder/../other.toml"\n',
    "\ninclude = 3\n",
    '\n[units]\nlength = "ft"\n',
    '\nunits = "SI"\n',
    '\n[units]\nlength = "s"\n',
    '\n[limits.house]\n"line.design_factor" = 99\n',
    '\n[[limits.rule]]\nid = "x.y"\n',
    '\nexpression = "().__class__"\n',
    '\nexpression = "9**9**9"\n',
)


@dataclass(frozen=True)
class Ending:
    """How one input ended."""

    seed: int
    #: True if it was a rig file after all, and was checked.
    checked: bool
    #: What broke; empty if nothing did.
    broke: str


def corpus() -> list[str]:
    """Texts of the rig files that come with ropewalk."""
    import ropewalk as rw

    folder = rw.rig.example("rig7").parent
    return [path.read_text(encoding="utf-8") for path in sorted(folder.glob("*.toml"))]


def mutated(seeds: list[str], rng: random.Random) -> bytes:
    """One hostile input."""
    kind = rng.random()
    if kind < 0.03:
        return rng.randbytes(rng.randrange(2000))
    text = rng.choice(seeds)
    lines = text.splitlines(keepends=True)
    # The reader stops at wrong places, so many inputs have other numbers only, which are checked.
    numbers_only = kind < 0.4
    for _ in range(rng.choice((1, 1, 1, 2, 2, 3, 5, 20))):
        row = rng.randrange(len(lines)) if lines else 0
        line = lines[row] if lines else ""
        way = 5 if numbers_only else rng.randrange(10)
        if way == 0:
            lines[row : row + 1] = []
        elif way == 1:
            lines[row : row + 1] = [line, line]
        elif way == 2:
            at = rng.randrange(len(line) + 1)
            lines[row : row + 1] = [line[:at] + rng.choice(PIECES) + line[at:]]
        elif way == 3 and "=" in line:
            lines[row] = line.partition("=")[0] + "= " + rng.choice(PIECES) + "\n"
        elif way == 4 and "=" in line:
            other = rng.choice(lines)
            lines[row] = line.partition("=")[0] + "=" + (other.partition("=")[2] or " 0\n")
        elif way == 5 and "=" in line:
            digits = str(rng.choice((-1, 0, 1, 3, 0.001, 1e3, 1e6, 1e15)))
            lines[row] = _other_number(line, digits, rng)
        elif way == 6:
            lines[row:row] = lines[rng.randrange(len(lines) or 1) :][: rng.randrange(8)]
        elif way == 7:
            lines = lines[: max(1, row)]
        elif way == 8:
            lines[row:row] = [rng.choice(PIECES)]
        elif line:
            at = rng.randrange(len(line))
            lines[row] = line[:at] + chr(rng.randrange(1, 0x250)) + line[at + 1 :]
    data = "".join(lines).encode("utf-8", "surrogatepass")
    if kind > 0.97 and data:
        spoiled = bytearray(data)
        for _ in range(rng.randrange(1, 20)):
            spoiled[rng.randrange(len(spoiled))] = rng.randrange(256)
        data = bytes(spoiled)
    return data[:LARGEST_INPUT]


def _other_number(line: str, digits: str, rng: random.Random) -> str:
    """Put other digits where a number stands in the line."""
    import re

    places = list(re.finditer(r"\d[\d.]*", line.partition("#")[0]))
    if not places:
        return line
    place = rng.choice(places)
    return line[: place.start()] + digits + line[place.end() :]


class TooLongError(Exception):
    """An input took longer than it may."""


@contextlib.contextmanager
def time_limit() -> Iterator[None]:
    """Raise in the main thread if the body takes too long."""

    def stop(*_: Any) -> None:
        raise TooLongError

    before = signal.signal(signal.SIGALRM, stop)
    signal.setitimer(signal.ITIMER_REAL, LONGEST)
    try:
        yield
    finally:
        signal.setitimer(signal.ITIMER_REAL, 0.0)
        signal.signal(signal.SIGALRM, before)


class Watch:
    """What the interpreter opens while a hostile file is read."""

    def __init__(self) -> None:
        self.on = False
        self.opened: list[str] = []
        # An audit hook stays for the life of the process; this one listens only while `on`.
        sys.addaudithook(self._heard)

    def _heard(self, event: str, arguments: tuple[Any, ...]) -> None:
        if self.on and event == "open" and isinstance(arguments[0], (str, bytes, os.PathLike)):
            self.opened.append(os.fsdecode(arguments[0]))

    def strangers(self, folder: Path) -> list[str]:
        """Files opened outside the folder, the interpreter's and ropewalk's own left out."""
        own = (str(folder), sys.prefix, sys.base_prefix, str(Path(__file__).resolve().parents[1]))
        known = (*own, *(entry for entry in sys.path if entry), "/proc/", "/sys/", "/dev/null")
        return [one for one in self.opened if not os.path.realpath(one).startswith(known)]


def make_playground(folder: Path) -> None:
    """Files beside the hostile one, and some that it must not reach."""
    (folder / "tree" / "folder").mkdir(parents=True)
    (folder / "outside.toml").write_text('[rig]\nname = "out of reach"\n')
    tree = folder / "tree"
    (tree / "other.toml").write_text('include = "fuzz.toml"\n[rig]\nsite = "beside"\n')
    (tree / "link.toml").symlink_to(folder / "outside.toml")
    os.mkfifo(tree / "fifo")


def attempt(path: Path, folder: Path, watch: Watch) -> tuple[bool, str]:
    """Read and check one file: whether it was checked, and what broke."""
    import ropewalk as rw

    checked = False
    watch.opened.clear()
    try:
        with time_limit(), warnings.catch_warnings():
            warnings.simplefilter("ignore", UserWarning)
            watch.on = True
            try:
                for verdict in rw.check.check_rig(rw.load_rig(path)):
                    verdict.as_record()
                checked = True
            except rw.RopewalkError as error:
                if not str(error).strip():
                    return False, "an error without text"
            finally:
                watch.on = False
    except TooLongError:
        return False, f"took longer than {LONGEST:g} s"
    except BaseException:
        return False, traceback.format_exc(limit=-4)
    if strangers := watch.strangers(folder):
        return checked, f"opened {strangers}"
    return checked, ""


def run(first: int, count: int) -> list[Ending]:
    """Try the inputs of `count` seeds."""
    seeds = corpus()
    watch = Watch()
    endings = []
    with tempfile.TemporaryDirectory() as temporary:
        playground = Path(temporary).resolve()
        make_playground(playground)
        path = playground / "tree" / "fuzz.toml"
        for seed in range(first, first + count):
            path.write_bytes(mutated(seeds, random.Random(seed)))
            endings.append(Ending(seed, *attempt(path, playground / "tree", watch)))
    return endings


def main() -> int:
    """Run the command."""
    parser = argparse.ArgumentParser(description=__doc__)
    parser.add_argument("--inputs", type=int, default=100_000)
    parser.add_argument("--first", type=int, default=0, help="first seed")
    parser.add_argument("--jobs", type=int, default=os.cpu_count() or 1)
    parser.add_argument("--show", type=int, help="print the input of this seed and stop")
    given = parser.parse_args()
    if given.show is not None:
        sys.stdout.buffer.write(mutated(corpus(), random.Random(given.show)))
        return 0
    batch = 500
    starts = range(given.first, given.first + given.inputs, batch)
    begun = time.perf_counter()
    checked = broken = 0
    with ProcessPoolExecutor(given.jobs) as workers:
        sizes = [min(batch, given.first + given.inputs - start) for start in starts]
        for endings in workers.map(run, starts, sizes):
            for one in endings:
                checked += one.checked
                if one.broke:
                    broken += 1
                    print(f"seed {one.seed}: {one.broke}", flush=True)
    took = time.perf_counter() - begun
    print(
        f"{given.inputs} inputs in {took:.0f} s, {checked} of them rigs: {broken} broke something"
    )
    return 1 if broken else 0


if __name__ == "__main__":
    sys.exit(main())
