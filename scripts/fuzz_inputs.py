"""Hostile rig files, each made from its seed: mutated examples, and hostile layers."""

from __future__ import annotations

import random
import re
from collections.abc import Mapping

from fuzz_tables import layer

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


def corpus() -> dict[str, str]:
    """Texts of the rig files that come with ropewalk, by file name."""
    import ropewalk as rw

    folder = rw.rig.example("rig7").parent
    return {path.name: path.read_text(encoding="utf-8") for path in sorted(folder.glob("*.toml"))}


def hostile(seeds: Mapping[str, str], rng: random.Random) -> dict[str, bytes]:
    """One hostile input: ``fuzz.toml``, which is read, and ``below.toml``, which it may include."""
    known = list(seeds.values())
    below = mutated(known, rng, numbers_only=True) if rng.random() < 0.7 else b"ropewalk = 2\n"
    if rng.random() < 0.6:
        return {"fuzz.toml": mutated(known, rng), "below.toml": below}
    return {"fuzz.toml": layer(list(seeds), rng).encode("utf-8"), "below.toml": below}


def mutated(seeds: list[str], rng: random.Random, *, numbers_only: bool = False) -> bytes:
    """One example with pieces, lines and numbers changed; numbers alone if asked."""
    kind = 0.5 if numbers_only else rng.random()
    if kind < 0.03:
        return rng.randbytes(rng.randrange(2000))
    text = rng.choice(seeds)
    lines = text.splitlines(keepends=True)
    # The reader stops at wrong places, so many inputs have other numbers only, which are checked.
    numbers_only = numbers_only or kind < 0.4
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
    places = list(re.finditer(r"\d[\d.]*", line.partition("#")[0]))
    if not places:
        return line
    place = rng.choice(places)
    return line[: place.start()] + digits + line[place.end() :]
