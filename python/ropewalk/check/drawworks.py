"""Rules for the drawworks: pull, speed, power, and whether its power is usual."""

from __future__ import annotations

from collections.abc import Iterator
from typing import TYPE_CHECKING

from ropewalk import si
from ropewalk._border import to_quantity
from ropewalk.check._hoisting import fullest, heaviest
from ropewalk.check.facts import si_of, text
from ropewalk.check.rule import Absent, Measured, NotApplicable, Rule
from ropewalk.check.verdict import Severity

if TYPE_CHECKING:
    from ropewalk.check.facts import Facts
    from ropewalk.drawworks import Drive, Hoist
    from ropewalk.rig import DrawworksParts, Operation, Usual

__all__ = ["RULES"]


def _parts(facts: Facts) -> DrawworksParts:
    """Motors, gears and drum shaft; every file has [drawworks] with the power at least."""
    parts = facts.rig.drawworks
    if parts is None:
        raise Absent("drawworks.motors")
    return parts


def _hoist(facts: Facts) -> Hoist:
    from ropewalk.rig import hoist

    _parts(facts)
    for section in ("drum", "line"):
        facts.need(section)
    return facts.once("hoist", lambda: hoist(facts.rig))


def _drives(facts: Facts) -> tuple[int, tuple[Drive, ...]]:
    """Layer with the block at its highest, just before a cut, and every gear there.

    There the motors pull least.
    """

    def compute() -> tuple[int, tuple[Drive, ...]]:
        hoist = _hoist(facts)
        layer = hoist.layer_at(to_quantity(fullest(facts, facts.rig.travel), "length"))
        return layer, tuple(hoist.drive(gear, layer) for gear in range(1, hoist.gears + 1))

    return facts.once("drives", compute)


def _best_speed(facts: Facts, load: float) -> float:
    """Highest speed at which any gear hoists a load on that layer, m/s."""
    hoist, (layer, _) = _hoist(facts), _drives(facts)
    hook_load = to_quantity(load, "force")
    return max(
        float(hoist.speed(hook_load, gear=gear, layer=layer).magnitude)
        for gear in range(1, hoist.gears + 1)
    )


def _pull(facts: Facts) -> Iterator[Measured]:
    layer, drives = _drives(facts)
    pulls = [one.motor_pull_si for one in drives]
    for case in heaviest(facts):
        speed = _best_speed(facts, case.hook_load)
        yield Measured(
            value=max(pulls),
            limit=case.hook_load,
            subject=case.name,
            inputs={
                "gear": str(pulls.index(max(pulls)) + 1),
                "layer, block at its highest": str(layer),
                "speed, steadily": text(speed, "speed") if speed > 0.0 else "none",
            },
        )


def _line_pull(facts: Facts) -> Iterator[Measured]:
    rated = _parts(facts).line_pull
    if rated is None:
        raise NotApplicable("the file has no drawworks.line_pull, from the nameplate")
    for case in heaviest(facts):
        yield Measured(
            value=facts.fast_line(case.hook_load),
            limit=rated,
            subject=case.name,
            inputs={"hook load": text(case.hook_load, "force")},
        )


def _hardest(facts: Facts) -> tuple[Operation, float]:
    """Operation that asks for most power at the hook, with its heaviest load, N."""
    weight = facts.rig.block.weight
    moved = [
        (one, one.heaviest_hook_load(weight))
        for one in facts.rig.operations
        if one.string is not None and one.block_speed > 0.0
    ]
    if not moved:
        raise NotApplicable("no operation of the plan has a block_speed")
    return max(moved, key=lambda pair: float(si.drawworks.hook_power(pair[1], pair[0].block_speed)))


def _speed(facts: Facts) -> Iterator[Measured]:
    layer, _ = _drives(facts)
    operation, load = _hardest(facts)
    yield Measured(
        value=_best_speed(facts, load),
        limit=operation.block_speed,
        subject=operation.title,
        inputs={"hook load": text(load, "force"), "layer, block at its highest": str(layer)},
    )


def _power(facts: Facts) -> Iterator[Measured]:
    _, drives = _drives(facts)
    operation, load = _hardest(facts)
    efficiency = max(one.efficiency for one in drives)
    asked = si.drawworks.hoisting_power(load, operation.block_speed, efficiency)
    yield Measured(
        value=float(asked),
        limit=facts.rig.drawworks_power,
        subject=operation.title,
        inputs={
            "hook load": text(load, "force"),
            "block speed": text(operation.block_speed, "speed"),
            "efficiency, motors to hook": f"{efficiency:.3f}",
        },
    )


def _usual(facts: Facts) -> Usual:
    from ropewalk.rig import practice

    found = facts.once("practice", lambda: practice(facts.rig))
    return next(one for one in found if one.key == "drawworks.power")


def _at_least_usual(facts: Facts) -> Iterator[Measured]:
    usual = _usual(facts)
    yield Measured(value=usual.value_si, limit=si_of(usual.low, usual.unit))


def _at_most_usual(facts: Facts) -> Iterator[Measured]:
    usual = _usual(facts)
    yield Measured(value=usual.value_si, limit=si_of(usual.high, usual.unit))


_PRACTICE = "common practice, no source; outside lies nothing forbidden, but nothing usual either"

RULES = (
    Rule(
        id="drawworks.pull",
        title="Load the motors can hoist",
        compares="hook load that the motors hoist without overload in the gear that pulls most, on "
        "the layer reached with the block at its highest, just before a cut, with the largest load "
        "that hangs and the largest pull on a stuck string",
        sense="at least",
        role="force",
        severity=Severity.MUST,
        source="statics: the drawworks must lift what the plan has",
        standing="derived",
        how="rig.hoist(rig).drive(gear, layer).motor_pull_si; speed by Hoist.speed",
        measure=_pull,
    ),
    Rule(
        id="drawworks.line_pull",
        title="Fast line against the rated line pull",
        compares="tension of the fast line while hoisting with the rated pull of the drawworks",
        sense="at most",
        role="force",
        severity=Severity.MUST,
        source="nameplate of the drawworks, rated line pull",
        standing="derived",
        how="reeving.fast_line_tension",
        measure=_line_pull,
    ),
    Rule(
        id="drawworks.speed",
        title="Speed reached against speed planned",
        compares="highest steady speed on the layer reached with the block at its highest, any "
        "gear, with the block_speed of the operation that asks for most power",
        sense="at least",
        role="speed",
        severity=Severity.NOTE,
        source="block_speed of the plan: a heavier load than the motors take goes slower",
        standing="derived",
        how="rig.hoist(rig).speed(heaviest load of the operation, gear, layer)",
        measure=_speed,
    ),
    Rule(
        id="drawworks.power",
        title="Power asked against rated power",
        compares="power of the motors for the operation that asks for most, at its block_speed, "
        "with their rated power",
        sense="at most",
        role="power",
        severity=Severity.NOTE,
        source="rated input power, from the nameplate of the drawworks",
        standing="derived",
        how="drawworks.hoisting_power with the efficiency of Hoist.drive",
        measure=_power,
    ),
    Rule(
        id="drawworks.usual_power_least",
        title="Power of the drawworks, as much as usual",
        compares="rated power with the least that is usual on drilling rigs",
        sense="at least",
        role="power",
        severity=Severity.NOTE,
        source=_PRACTICE,
        standing="common practice",
        how="rig.practice",
        measure=_at_least_usual,
    ),
    Rule(
        id="drawworks.usual_power_most",
        title="Power of the drawworks, no more than usual",
        compares="rated power with the most that is usual on drilling rigs",
        sense="at most",
        role="power",
        severity=Severity.NOTE,
        source=_PRACTICE,
        standing="common practice",
        how="rig.practice",
        measure=_at_most_usual,
    ),
)
