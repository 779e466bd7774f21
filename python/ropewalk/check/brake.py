"""Rules for the brakes: what they hold, what they lower, how they stop, what heat they take."""

from __future__ import annotations

import math
from collections.abc import Iterator
from typing import TYPE_CHECKING

from ropewalk import si
from ropewalk._border import to_quantity
from ropewalk.check._hoisting import (
    braked,
    drum_diameter,
    fullest,
    hanging,
    heaviest,
    load_torque,
    lowered,
)
from ropewalk.check.facts import LoadCase, text
from ropewalk.check.rule import CannotTell, Measured, NotApplicable, Rule
from ropewalk.check.verdict import Severity
from ropewalk.rig.plan import STUCK

if TYPE_CHECKING:
    import numpy as np
    from numpy.typing import NDArray

    from ropewalk.brake import RequiredFactor
    from ropewalk.check.facts import Facts
    from ropewalk.reeving import Motion
    from ropewalk.rig import Operation

__all__ = ["RULES"]


def _torque_asked(required: RequiredFactor) -> Motion:
    """Which torque of the load a factor refers to: that of hoisting, or that at rest."""
    words = f"{getattr(required, 'base', '')} {required.condition}"
    if "motor torque" in words:
        raise CannotTell(
            f"{required.key} refers to the rated torque of the motor, not of the load, and the "
            "file does not say what it is at the drum"
        )
    return "hoisting" if "hoisting" in words or "to hoist" in words else "static"


def _holding(facts: Facts) -> Iterator[Measured]:
    hoist, brake = braked(facts), facts.need("brake")
    required = brake.required
    motion = _torque_asked(required)
    case = max(heaviest(facts), key=lambda one: one.hook_load)
    torque = load_torque(facts, hoist, case.hook_load, facts.rig.travel, motion)
    # The bare factor: what it refers to is settled here.
    whole, *halves = brake.disc.check(to_quantity(torque, "torque"), required.value)
    if "each of two" in required.condition and brake.band is not None:
        # A band is rigged so that the falling load helps it.
        force = to_quantity(brake.lever_force, "force")
        halves += brake.band.check(force, to_quantity(torque, "torque"), required.value)[:1]
    for found in halves if "each of two" in required.condition else [whole]:
        yield Measured(
            value=found.factor,
            limit=required.value,
            subject=found.state,
            source=f"{required.standard}, {required.source} ({required.edition}, "
            f"{required.standing})",
            inputs={
                case.name: text(case.hook_load, "force"),
                "torque of the brake": text(found.torque_si, "torque"),
                f"torque of the load, {motion}, block at its highest": text(torque, "torque"),
                "asked for": required.condition,
            },
        )


def _emergency(facts: Facts, case: LoadCase) -> Measured:
    """Springs alone against a load at rest, block at its highest."""
    hoist, brake = braked(facts), facts.need("brake")
    torque = load_torque(facts, hoist, case.hook_load, facts.rig.travel, "static")
    reason = ""
    if brake.fade is not None:
        least = float(min(brake.fade.frictions))
        hot = brake.disc.torque(service=False, lining_friction=least).m_as("N*m")
        factor = float(si.brake.holding_factor(hot, torque))
        if factor < 1.0:
            reason = f"pads as hot as brake.fade goes, friction {least:g}, hold {factor:.2f} of it"
    return Measured(
        value=float(si.brake.holding_factor(hoist.brake_torque_si, torque)),
        limit=1.0,
        subject=case.name,
        reason=reason,
        inputs={
            "hook load": text(case.hook_load, "force"),
            "torque of the emergency calipers": text(hoist.brake_torque_si, "torque"),
            "torque of the load at rest, block at its highest": text(torque, "torque"),
        },
    )


def _emergency_hanging(facts: Facts) -> Iterator[Measured]:
    facts.need("brake")
    yield _emergency(facts, hanging(facts))


def _emergency_stuck(facts: Facts) -> Iterator[Measured]:
    facts.need("brake")
    case = heaviest(facts)[-1]
    if case.service != STUCK:
        raise NotApplicable("the plan has no pull on a stuck string")
    yield _emergency(facts, case)


def _lowering(facts: Facts) -> Iterator[Measured]:
    brake, hoist = facts.need("brake"), braked(facts)
    if brake.auxiliary is None:
        raise NotApplicable("the file has no auxiliary brake")
    case = lowered(facts)
    torque = load_torque(facts, hoist, case.hook_load, facts.rig.travel, "lowering")
    balance = brake.auxiliary.balance(to_quantity(torque, "torque"))
    yield Measured(
        value=balance.largest_load_si,
        limit=torque,
        subject=case.name,
        reason=f"lowered on the auxiliary brake alone the load {balance.finding}",
        inputs={"hook load": text(case.hook_load, "force")},
    )


def _lowering_speed(facts: Facts) -> Iterator[Measured]:
    brake, hoist = facts.need("brake"), braked(facts)
    allowed = facts.need("overtravel").lowering_speed
    if brake.auxiliary is None:
        raise NotApplicable("the file has no auxiliary brake")
    case, height = lowered(facts), facts.rig.travel
    torque = load_torque(facts, hoist, case.hook_load, height, "lowering")
    balance = brake.auxiliary.balance(to_quantity(torque, "torque"))
    if balance.stable_si is None:
        # Held at rest: no speed. Runaway: any.
        speed = float("inf") if balance.runs_away else 0.0
    else:
        speed = balance.stable_si
    lines = facts.rig.reeving.lines
    yield Measured(
        value=speed,
        limit=float(
            si.drawworks.drum_speed(allowed, lines, drum_diameter(hoist, fullest(facts, height)))
        ),
        subject=case.name,
        reason=f"lowered on the auxiliary brake alone the load {balance.finding}",
        inputs={
            "hook load": text(case.hook_load, "force"),
            "largest speed of the block": text(allowed, "speed"),
        },
    )


def _stop(facts: Facts) -> Iterator[Measured]:
    from ropewalk.brake import Stop

    brake, hoist = facts.need("brake"), braked(facts)
    limits, case = facts.need("overtravel"), lowered(facts)
    # At its lowest the line leaves the layer for which the file has the rotating mass, the first.
    stop = Stop(
        "lowering",
        to_quantity(limits.lowering_speed, "speed"),
        to_quantity(case.hook_load, "force"),
        reeving=facts.rig.reeving,
        drum_radius=to_quantity(drum_diameter(hoist, 0.0) / 2.0, "length"),
        brake_torque=to_quantity(hoist.brake_torque_si, "torque"),
        rotating_mass=to_quantity(brake.rotating_mass, "mass"),
        delay=to_quantity(brake.delay, "time"),
        build_up=to_quantity(brake.build_up, "time"),
        delay_torque=to_quantity(0.0, "torque"),
    ).rigid()
    yield Measured(
        value=stop.distance_si,
        limit=-limits.floor - limits.margin,
        subject=case.name,
        reason=stop.finding,
        inputs={
            "hook load": text(case.hook_load, "force"),
            "from a speed of": text(limits.lowering_speed, "speed"),
            "lowest position to floor": text(-limits.floor, "length"),
            "margin": text(limits.margin, "length"),
        },
    )


def _heat(facts: Facts) -> Iterator[Measured]:
    from ropewalk.rig.plan import trip_strokes

    facts.need("brake")
    weight = facts.rig.block.weight

    def lowering(one: Operation) -> tuple[float, NDArray[np.float64]]:
        """Heat, and the load of each stand from the deepest up to where the operation begins."""
        stands = math.ceil((one.depth - one.from_depth) / one.stand_length - 1e-9)
        loads = trip_strokes(one, weight).running[:stands]
        return float(si.brake.lowering_heat(loads, one.stand_length, 1.0).sum()), loads

    trips = [(*lowering(one), one) for one in facts.rig.operations if one.kind in _LOWERED]
    if not trips:
        raise NotApplicable("the plan runs no string in: no round trip, trip in or casing")
    heat, loads, trip = max(trips, key=lambda found: found[0])
    if not loads.size:
        raise NotApplicable(f"{trip.title}: no stand to run, the string is far shorter")
    yield Measured(
        value=heat,
        limit=None,
        subject=trip.title,
        inputs={
            "stands": str(len(loads)),
            "heaviest stand alone": text(
                float(si.brake.lowering_heat(loads.max(), trip.stand_length, 1.0)), "energy"
            ),
        },
    )


#: Operations that run a whole string in.
_LOWERED = ("round trip", "trip in", "casing")
_STATICS = "statics: below 1 the load falls"

RULES = (
    Rule(
        id="brake.holding",
        title="Holding factor of the brake",
        compares="torque of the brake over that of the largest hook load, block at its highest, "
        "drum as full as just before a cut, "
        "with the factor that the file asks for; each half alone where two brakes are asked for",
        sense="at least",
        role="number",
        severity=Severity.MUST,
        source="the rule named in brake.required_factor; none was written for drawworks",
        standing="published",
        how="brake.DiscBrake.check; drawworks.drum_torque of the fast line, while hoisting where "
        "the rule says hoisting torque, at rest where it does not",
        measure=_holding,
    ),
    Rule(
        id="brake.emergency",
        title="Emergency calipers alone hold what hangs",
        compares="torque of the calipers that springs press on over that of the heaviest load that "
        "hangs free, at rest, block at its highest; as when hydraulic pressure is lost",
        sense="at least",
        role="number",
        severity=Severity.MUST,
        source=_STATICS,
        standing="derived",
        how="brake.holding_factor(DiscBrake.torque(service=False), drawworks.drum_torque)",
        measure=_emergency_hanging,
    ),
    Rule(
        id="brake.emergency_stuck",
        title="Emergency calipers alone hold the pull on a stuck string",
        compares="as brake.emergency, with the largest pull on a stuck string; beyond it the drum "
        "pays out until the pull is less",
        sense="at least",
        role="number",
        severity=Severity.SHOULD,
        source="statics: below 1 the drum pays out",
        standing="derived",
        how="brake.holding_factor(DiscBrake.torque(service=False), drawworks.drum_torque)",
        measure=_emergency_stuck,
    ),
    Rule(
        id="brake.lowering",
        title="Auxiliary brake against runaway",
        compares="largest torque of the auxiliary brake at any speed with that of the heaviest "
        "load, lowered, block at its highest; drag in the hole is not counted on",
        sense="at least",
        role="torque",
        severity=Severity.SHOULD,
        source="statics: a heavier load runs away from the auxiliary brake alone",
        standing="derived",
        how="brake.LoweringBrakes.balance",
        measure=_lowering,
    ),
    Rule(
        id="brake.lowering_speed",
        title="Speed at which the auxiliary brake holds the load",
        compares="drum speed at which the heaviest load settles with that of the largest lowering "
        "speed of the block",
        sense="at most",
        role="angular_velocity",
        severity=Severity.SHOULD,
        source="overtravel.lowering_speed of the file",
        standing="derived",
        how="brake.LoweringBrakes.balance; drawworks.drum_speed",
        measure=_lowering_speed,
    ),
    Rule(
        id="brake.stop",
        title="Stopping distance on the emergency calipers",
        compares="way of the block, heaviest load without drag, from the largest lowering speed, "
        "power lost, with the way from its lowest working position to the floor less the margin",
        sense="at most",
        role="length",
        severity=Severity.SHOULD,
        source="overtravel.floor and overtravel.margin of the file",
        standing="derived",
        how="brake.Stop.rigid, nothing holding the load until the brake grips",
        measure=_stop,
    ),
    Rule(
        id="brake.trip_heat",
        title="Heat of the brakes over the hottest trip in",
        compares="heat of all stands or joints lowered, drill string or casing, all brakes "
        "together, with the limit of the house",
        sense="at most",
        role="energy",
        severity=Severity.NOTE,
        source="limit of the house; the maker says what discs and cooling take",
        standing="house limit",
        how="brake.lowering_heat over the strokes of the trip",
        measure=_heat,
    ),
)
