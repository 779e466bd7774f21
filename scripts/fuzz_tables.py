"""Hostile tables over examples of rig files: limits and rules of the house, inspections, chains."""

from __future__ import annotations

import random

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
