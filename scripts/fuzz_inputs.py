"""Hostile rig files, each made from its seed: mutated examples, hostile tables laid over them."""

from __future__ import annotations

import random
import re
from collections.abc import Mapping

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


#: Expressions of own rules: numbers that grow, ways out of the evaluator, wrong types.
EXPRESSIONS = (
    "().__class__",
    "line.__class__",
    "line._",
    "9**9**9",
    "10**400 * line.design_factor",
    "line.design_factor ** 99999999",
    "line.design_factor ** 0.5",
    "2 ** mast.hook_load",
    "'a' * 10**9",
    "'%9999999999d' % 1",
    "[0] * 10**9",
    "(1, 2)",
    "None",
    "True",
    "line",
    "min",
    "min()",
    "max(line)",
    "abs('x')",
    "sqrt(-1)",
    "sqrt('x')",
    "0.0 / 0.0",
    "1e308 * 10 - 1e308 * 10",
    "1 / 0",
    "1 << 10**9",
    "line.design_factor << 3",
    "5 % line.design_factor",
    "5 // 0",
    "not line.design_factor",
    "line.design_factor in line.design_factor",
    "1 if line.design_factor else 2",
    "(lambda: 0)()",
    "[x for x in (1,)]",
    "{1: 2}[1]",
    "f'{line}'",
    "open('/etc/passwd')",
    "__import__('os')",
    "rand()",
    "x = 1",
    "",
    " ",
    "(" * 240 + "1" + ")" * 240,
    "-" * 499 + "1",
    "1" + "+1" * 249,
    "not " * 124 + "1",
    "9" * 500,
    "1.0 # text",
    "'\\ud800'",
    "1;2",
    "…",
)
OPERATORS = ("+", "-", "*", "/", "**", "//", "%", "<", "==", ",", " and ", " or ", "@", "&")
LIMITS = (
    "1.0",
    "0",
    "-1",
    "nan",
    "inf",
    "-0.0",
    "1e299",
    "99",
    "true",
    "[]",
    '""',
    '"3"',
    '"1 m"',
    '"-2 kN"',
    '"1e308 kip"',
    '"1e-320 m"',
    '"20 degC"',
    '"5 in"',
    '"1 kg*m**2"',
    '"90 deg"',
    '"1 1/s**9"',
    '"2 percent"',
    '"1 ton"',
    '"nan m"',
)
#: What the keys of an inspection are given: right and wrong for each.
FINDINGS = (
    "0",
    "1",
    "3",
    "17",
    "1000000",
    "9223372036854775807",
    "-1",
    "0.0",
    "0.1",
    "0.999999",
    "1.0",
    "nan",
    "true",
    "false",
    '"regular"',
    '"lang"',
    '"1e-9 m"',
    '"34 mm"',
    '"1.375 in"',
    '"1.4 in"',
    '"9 m"',
    '["1 in"]',
    '["17.5 mm", "17.4 mm"]',
    '["1e-300 m", "1e300 m"]',
    "[]",
    "2026-04-24",
    "0001-01-01",
    "9999-12-31T23:59:59Z",
    "07:32:00",
)
CHAIN = (
    '"rig7.toml"',
    '"below.toml"',
    '["rig7.toml", "below.toml"]',
    '["below.toml", "rig7.toml"]',
    '["osprey-sound.toml", "workover-hoist.toml"]',
    '["minimal.toml", "minimal.toml"]',
    '["five-faults.toml", "folder/nothing.toml"]',
    '["below.toml", "fuzz.toml"]',
    '["heavy-casing.toml", "other.toml"]',
    '["heavy-casing.toml", "below.toml", "five-faults.toml"]',
    '["rig7.toml", "link.toml"]',
    '"./././rig7.toml"',
    '["' + '", "'.join(["minimal.toml"] * 40) + '"]',
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


def layer(names: list[str], rng: random.Random) -> str:
    """Hostile tables over an example, or over a chain of files."""
    base = rng.choice(CHAIN) if rng.random() < 0.5 else f'"{rng.choice(names)}"'
    text = f"ropewalk = {rng.choice((2, 2, 2, 2, 1))}\ninclude = {base}\n"
    if rng.random() < 0.2:
        text += 'units = "SI"\n'
    tables = rng.sample((_house, _own_rules, _inspection, _demand), rng.randrange(1, 4))
    for table in tables:
        text += table(rng)
    return text


def _house(rng: random.Random) -> str:
    from ropewalk.check import RULES

    lines = ["[limits.house]"]
    for rule in rng.sample(RULES, rng.randrange(1, 6)):
        limit = rng.choice(LIMITS) if rng.random() < 0.3 else rng.choice(("1", "0", "-3.5", "1e9"))
        if rule.unit and rng.random() < 0.9:
            limit = f'"{rng.choice((0, 1, -2, 1e-9, 1e9))} {rule.unit}"'
        if rule.severity != "must" and rng.random() < 0.2:
            limit = "false"
        lines.append(f'"{rule.id}" = {limit}')
    if rng.random() < 0.05:
        lines.append('"x.y" = 1.0')
    return "\n".join([*lines, ""])


def _own_rules(rng: random.Random) -> str:
    lines = []
    for number in range(rng.randrange(1, 5)):
        limit = rng.choice(LIMITS) if rng.random() < 0.2 else rng.choice(("1.0", '"1 kN"', "0"))
        lines += [
            "[[limits.rule]]",
            f'id = "house.r{number}"',
            'title = "hostile"',
            # A string in single quotes would end at theirs.
            f"expression = {_quoted(_expression(rng))}",
            f"{rng.choice(('at_least', 'at_most'))} = {limit}",
            f'severity = "{rng.choice(("must", "should", "note"))}"',
            'source = "nobody"',
        ]
    return "\n".join([*lines, ""])


def _quoted(text: str) -> str:
    return '"' + text.replace("\\", "\\\\").replace('"', '\\"') + '"'


def _expression(rng: random.Random) -> str:
    from ropewalk.check import RULES

    def term() -> str:
        way = rng.random()
        if way < 0.6:
            return rng.choice(RULES).id
        if way < 0.75:
            return rng.choice(("0", "1", "-1", "1e308", "0.5", "9" * 50, "3j", "'m'"))
        if way < 0.85:
            return f"{rng.choice(('sqrt', 'abs', 'min', 'max'))}({rng.choice(RULES).id})"
        return rng.choice(EXPRESSIONS)

    if rng.random() < 0.4:
        return rng.choice(EXPRESSIONS)
    text = term()
    for _ in range(rng.randrange(4)):
        text = f"({text}){rng.choice(OPERATORS)}({term()})"
    return text


def _inspection(rng: random.Random) -> str:
    from ropewalk.rig.inspection_sections import InspectionSection

    lines = ["[inspection]"]
    for name, found in InspectionSection.model_fields.items():
        if rng.random() < 0.4:
            value = rng.choice(FINDINGS)
            if rng.random() < 0.9:  # of the kind the key has
                value = rng.choice(_of_kind(name, str(found.annotation)))
            lines.append(f"{name} = {value}")
    return "\n".join([*lines, ""])


def _of_kind(name: str, annotation: str) -> tuple[str, ...]:
    if name.endswith("radii"):
        return tuple(one for one in FINDINGS if one.startswith('["'))
    if name.endswith("diameter"):
        return ('"34 mm"', '"1.375 in"', '"1.4 in"', '"1e-9 m"', '"9 m"')
    if name.endswith("loss"):
        return ("0", "0.1", "0.999999", "1.0")
    if name == "date":
        return ("2026-04-24", "0001-01-01", "9999-12-31T23:59:59Z")
    if name == "lay":
        return ('"regular"', '"lang"')
    if "bool" in annotation:
        return ("true", "false")
    return ("1", "3", "17", "1000000", "9223372036854775807")


def _demand(rng: random.Random) -> str:
    from ropewalk.rig.sections import RigFile

    names = rng.sample(sorted(RigFile.model_fields), rng.randrange(5))
    return "[limits]\ndemand = [" + ", ".join(f'"{one}"' for one in names) + "]\n"


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
