"""Rig 7, changed where a rule looks, and the verdict of one rule on it."""

from __future__ import annotations

from functools import cache
from typing import Any

import ropewalk as rw
from ropewalk.check import Facts, LoadCase
from ropewalk.check.run import judge

INCH, FOOT, LBF = 0.0254, 0.3048, 4.4482216152605


@cache
def rig7() -> Any:
    """Rig 7 of the Kestrel Flat geothermal field; invented, as its field is."""
    return rw.load_rig(rw.rig.example("rig7"))


def load(hook_load: float, service: str = "rotary drilling") -> LoadCase:
    return LoadCase("the load", service, hook_load)


def load_of_fast_line(rig: Any, tension: float) -> LoadCase:
    """Load under which the fast line has a tension: 1/(N η) of it, by API RP 9B."""
    lines, friction = rig.reeving.lines, 1.04
    assert rig.reeving.sheave_frictions[0] == friction
    efficiency = (friction**lines - 1) / (friction**lines * lines * (friction - 1))
    return load(tension * lines * efficiency)


def verdicts(rig: Any, rule_id: str, *loads: LoadCase) -> list[Any]:
    """Verdicts of one rule, under the loads given instead of those of the plan."""
    facts = Facts(rig)
    if loads:
        facts.__dict__["loads"] = loads
    return judge(rw.check.rule(rule_id), facts)


def verdict(rig: Any, rule_id: str, *loads: LoadCase) -> Any:
    (one,) = verdicts(rig, rule_id, *loads)
    return one


def status(rig: Any, rule_id: str, *loads: LoadCase) -> str:
    return str(verdict(rig, rule_id, *loads).status)
