"""From a hoist and the arguments of its methods to what the core takes."""

from __future__ import annotations

from typing import TYPE_CHECKING, Any

from ropewalk import _core
from ropewalk._border import to_count, to_one
from ropewalk._drawworks_stroke import Limits
from ropewalk.errors import InadmissibleError

if TYPE_CHECKING:
    from ropewalk._border import QuantityLike
    from ropewalk._drawworks_hoist import Hoist

__all__ = ["core_hoist", "gear_and_layer", "stroke_arguments"]


def core_hoist(hoist: Hoist) -> Any:
    """Make the computing half of a hoist."""
    drawworks = hoist.drawworks
    motors = drawworks.motors
    return _core.drawworks.Hoist(
        motors=(
            motors.count,
            motors.power_si,
            motors.base_speed_si,
            motors.top_speed_si,
            motors.inertia_si,
            motors.overload,
            motors.overload_time_si,
        ),
        gears=[(g.ratio, g.efficiency, g.inertia_si) for g in drawworks.gears],
        drum_efficiency=drawworks.drum_efficiency,
        drum_inertia=drawworks.drum_inertia_si,
        drum=hoist.drum._drum(),
        reeving=hoist.reeving._arrangement,
        wraps_at_lowest=hoist.wraps_at_lowest,
        line_limit=hoist.line_limit_si,
        sheave_mass=hoist.sheave_mass_si,
    )


def stroke_arguments(
    where: str,
    travel: QuantityLike,
    limits: Limits,
    motion: str,
    base_height: QuantityLike,
    gear: int | None,
) -> dict[str, Any]:
    """Check the arguments of a stroke and return them as the core takes them."""
    if motion not in ("hoisting", "lowering"):
        text = f"motion must be 'hoisting' or 'lowering', got {motion!r}"
        raise InadmissibleError(f"{where}(): {text}", where, "motion")
    if not isinstance(limits, Limits):
        text = f"limits must be a Limits object, got {limits!r}"
        raise InadmissibleError(f"{where}(): {text}", where, "limits")
    up = motion == "hoisting"
    return {
        "up": up,
        "base_height": to_one(where, "base_height", base_height, "length"),
        "travel": to_one(where, "travel", travel, "length"),
        "speed": limits.speed_si if up else limits.lowering_speed_si,
        "acceleration": limits.acceleration_si,
        "deceleration": limits.deceleration_si,
        "overload": limits.overload,
        "gear": 0 if gear is None else _number(where, "gear", gear),
    }


def gear_and_layer(where: str, gear: Any, layer: Any) -> tuple[int, int]:
    """Gear and layer as ints of the core, which says whether there are such."""
    return _number(where, "gear", gear), _number(where, "layer", layer)


def _number(where: str, name: str, value: Any) -> int:
    number = to_count(where, name, value)
    # The core takes gear 0 for the best one, which is not to be had by number.
    return max(-1, min(number, 2**31 - 1)) or -1
