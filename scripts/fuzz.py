"""Hostile rig files: mutate the shipped ones, read and check them, and report what breaks.

Every input must end within five seconds in verdicts or in an error of ropewalk; nothing outside its
own folder may be opened. Prints what breaks with its seed, so that it can be made again, and exits
with 1 if anything did.
"""

from __future__ import annotations

import argparse
import contextlib
import functools
import os
import random
import resource
import signal
import sys
import tempfile
import time
import traceback
import warnings
from collections.abc import Iterator, Mapping
from concurrent.futures import ProcessPoolExecutor
from dataclasses import dataclass
from pathlib import Path
from typing import Any

from fuzz_inputs import corpus, hostile

LONGEST = 5.0
#: Growth of the process that one input may cause, bytes.
MOST_MEMORY = 500_000_000


@dataclass(frozen=True)
class Ending:
    """How one input ended."""

    seed: int
    #: True if it was a rig file after all, and was checked.
    checked: bool
    #: What broke; empty if nothing did.
    broke: str


class TooLongError(BaseException):
    """An input took longer than it may; nothing that guards against errors may take it for one."""


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


def make_playground(folder: Path, seeds: Mapping[str, str]) -> None:
    """Files beside the hostile one: examples to include, and some that it must not reach."""
    (folder / "tree" / "folder").mkdir(parents=True)
    (folder / "outside.toml").write_text('[rig]\nname = "out of reach"\n')
    tree = folder / "tree"
    for name, text in seeds.items():
        (tree / name).write_text(text, encoding="utf-8")
    (tree / "other.toml").write_text('include = "fuzz.toml"\n[rig]\nsite = "beside"\n')
    (tree / "link.toml").symlink_to(folder / "outside.toml")
    os.mkfifo(tree / "fifo")


def largest_memory() -> int:
    """Most memory this process has had so far, bytes."""
    kilobytes = resource.getrusage(resource.RUSAGE_SELF).ru_maxrss
    return kilobytes * (1 if sys.platform == "darwin" else 1024)


def _check(path: Path) -> None:
    import ropewalk as rw

    for verdict in rw.check.check_rig(rw.load_rig(path)):
        verdict.as_record()


def attempt(path: Path, folder: Path, watch: Watch) -> tuple[bool, str]:
    """Read and check one file: whether it was checked, and what broke."""
    import ropewalk as rw

    checked = False
    watch.opened.clear()
    before = largest_memory()
    try:
        with time_limit(), warnings.catch_warnings():
            warnings.simplefilter("ignore", UserWarning)
            watch.on = True
            try:
                _check(path)
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
    if (grown := largest_memory() - before) > MOST_MEMORY:
        return checked, f"took {grown / 1e9:.1f} GB of memory"
    return checked, ""


@functools.cache
def warm_up() -> None:
    """Check every example: what libraries open at first use is not the doing of a hostile file."""
    import ropewalk as rw

    for name in corpus():
        _check(rw.rig.example(Path(name).stem))


def run(first: int, count: int) -> list[Ending]:
    """Try the inputs of `count` seeds."""
    seeds = corpus()
    watch = Watch()
    endings = []
    warm_up()
    with tempfile.TemporaryDirectory() as temporary:
        playground = Path(temporary).resolve()
        make_playground(playground, seeds)
        tree = playground / "tree"
        for seed in range(first, first + count):
            for name, content in hostile(seeds, random.Random(seed)).items():
                (tree / name).write_bytes(content)
            endings.append(Ending(seed, *attempt(tree / "fuzz.toml", tree, watch)))
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
        for name, content in hostile(corpus(), random.Random(given.show)).items():
            sys.stdout.buffer.write(b"# " + name.encode() + b"\n" + content + b"\n")
        return 0
    batch = 500
    starts = range(given.first, given.first + given.inputs, batch)
    begun = time.perf_counter()
    done = checked = broken = 0
    with ProcessPoolExecutor(given.jobs) as workers:
        sizes = [min(batch, given.first + given.inputs - start) for start in starts]
        for endings in workers.map(run, starts, sizes):
            done += len(endings)
            for one in endings:
                checked += one.checked
                if one.broke:
                    broken += 1
                    print(f"seed {one.seed}: {one.broke}", flush=True)
            if done % 10_000 == 0:
                print(f"{done} inputs, {checked} of them rigs", flush=True)
    took = time.perf_counter() - begun
    print(
        f"{given.inputs} inputs in {took:.0f} s, {checked} of them rigs: {broken} broke something"
    )
    return 1 if broken else 0


if __name__ == "__main__":
    sys.exit(main())
