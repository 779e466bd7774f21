"""The class `HoistLine`, the strung line as a spring. Exported by `ropewalk.dynamics`."""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING, Any, Literal

from ropewalk import _core
from ropewalk._border import Quantity, QuantityLike, to_count, to_one, to_quantity, to_si
from ropewalk._dynamics_stop import HoistStop
from ropewalk._names import to_name
from ropewalk.errors import InadmissibleError, UnknownEntryError

if TYPE_CHECKING:
    from ropewalk.rig import Rig

__all__ = ["HoistLine"]

_WHERE = "dynamics.HoistLine"

Sheaves = Literal["locked", "turning"]


@dataclass(frozen=True, init=False, slots=True)
class HoistLine:
    """The strung line of a hoist as a spring, sheaves free to turn.

    Parameters
    ----------
    lines
        Number of lines.
    rope_modulus
        Modulus of the rope on its metallic area.
    metallic_area
        Metal of the rope's cross section.
    fast_line_length, dead_line_length
        From the crown to the drum and to the anchor.

    Raises
    ------
    InadmissibleError
        For a line that cannot be.

    Examples
    --------
    >>> import ropewalk as rw
    >>> line = rw.dynamics.HoistLine.of_rig(rw.load_rig(rw.rig.example("rig7")))
    >>> print(f"{line.stiffness('30 m').to('MN/m'):.1f}")
    14.8 meganewton / meter
    >>> print(f"{line.natural_frequency('300 kip', '30 m').to('Hz'):.2f}")
    1.66 hertz
    >>> print(f"{line.pickup_factor('0.3 m/s', '300 kip', '30 m'):.2f}")
    1.37
    """

    lines: int
    rope_modulus_si: float
    metallic_area_si: float
    fast_line_length_si: float
    dead_line_length_si: float

    def __init__(
        self,
        lines: int,
        rope_modulus: QuantityLike,
        metallic_area: QuantityLike,
        fast_line_length: QuantityLike,
        dead_line_length: QuantityLike,
    ) -> None:
        values = {
            "rope_modulus_si": to_si(_WHERE, "rope_modulus", rope_modulus, "stress"),
            "metallic_area_si": to_si(_WHERE, "metallic_area", metallic_area, "area"),
            "fast_line_length_si": to_si(_WHERE, "fast_line_length", fast_line_length, "length"),
            "dead_line_length_si": to_si(_WHERE, "dead_line_length", dead_line_length, "length"),
        }
        object.__setattr__(self, "lines", to_count(_WHERE, "lines", lines))
        for name, value in values.items():
            object.__setattr__(self, name, float(value))
        self._stiffness(1.0)  # the core refuses what cannot be

    @classmethod
    def of_rig(cls, rig: Rig) -> HoistLine:
        """Line of a rig: its rope with the modulus of the catalog, and the ends of ``[line]``.

        Raises
        ------
        InadmissibleError
            If the rig has no ``[line]``.
        UnknownEntryError
            If modulus or metallic area of its rope are not known.
        """
        if rig.line is None:
            text = f"{rig.name} has no [line]: the lengths of fast line and dead line are not known"
            raise InadmissibleError(f"{_WHERE}.of_rig(): {text}", f"{_WHERE}.of_rig", "rig")
        return cls(
            rig.reeving.lines,
            rig.rope.modulus,
            rig.rope.metallic_area,
            to_quantity(rig.line.fast_line, "length"),
            # An odd number of lines has its dead end on the block: no line goes to the anchor.
            to_quantity(0.0 if rig.reeving.lines % 2 else rig.line.dead_line, "length"),
        )

    def stiffness(self, line_height: QuantityLike) -> Quantity:
        """Stiffness at the block, `line_stiffness`, at one or many lengths between the blocks."""
        height = to_si(f"{_WHERE}.stiffness", "line_height", line_height, "length")
        return to_quantity(self._stiffness(height), "force_per_length", line_height)

    def static_stretch(self, hook_load: QuantityLike, line_height: QuantityLike) -> Quantity:
        """How far the block sinks under a load at rest."""
        load, stiffness = self._loaded("static_stretch", hook_load, line_height)
        return to_quantity(_core.dynamics.static_stretch(load, stiffness), "length", hook_load)

    def natural_frequency(self, hook_load: QuantityLike, line_height: QuantityLike) -> Quantity:
        """Natural frequency of a rigid load on the line."""
        load, stiffness = self._loaded("natural_frequency", hook_load, line_height)
        frequency = _core.dynamics.natural_frequency(load, stiffness)
        return to_quantity(frequency, "frequency", hook_load)

    def pickup_factor(
        self,
        pickup_speed: QuantityLike,
        hook_load: QuantityLike,
        line_height: QuantityLike,
        *,
        sheaves: Sheaves = "locked",
    ) -> Any:
        """Peak over rest when slack is taken up at a speed of the block.

        Parameters
        ----------
        pickup_speed
            Speed of the block while the slack runs out, one or many.
        hook_load
            Load that is picked up.
        line_height
            Length of one line between the blocks.
        sheaves : {"locked", "turning"}, default "locked"
            Held by their friction, the stiffer line and the higher peak, see `locked_stiffness`;
            or free to turn, `line_stiffness`. The true peak lies between.
        """
        load, stiffness = self._swinging("pickup_factor", hook_load, line_height, sheaves)
        speed = to_si(f"{_WHERE}.pickup_factor", "pickup_speed", pickup_speed, "speed")
        return _core.dynamics.pickup_factor(speed, stiffness, load)

    def stop_hoisting(
        self,
        speed_change: QuantityLike,
        downward_acceleration: QuantityLike,
        hook_load: QuantityLike,
        line_height: QuantityLike,
        *,
        sheaves: Sheaves = "locked",
    ) -> HoistStop:
        """How little the line carries as hoisting is stopped, and whether it goes slack.

        See `trough_factor`. Slack line may leave its sheaves and the laps of the drum, and the load
        falls back into it: a hoist is not to be run so. What a hoist may do is said by its maker,
        the rules in force and licensed practice.

        Parameters
        ----------
        speed_change
            Speed of the block before the stop.
        downward_acceleration
            With which it is stopped, counted at the block.
        hook_load
            Load on the lines at rest. Of one stop shorter than half a swing a heavy load makes
            less slack than the empty block, which swings faster.
        line_height
            Length of one line between the blocks.
        sheaves : {"locked", "turning"}, default "locked"
            As for `pickup_factor`; locked, the line swings faster, and the trough is deeper.

        Examples
        --------
        >>> import ropewalk as rw
        >>> line = rw.dynamics.HoistLine.of_rig(rw.load_rig(rw.rig.example("rig7")))
        >>> line.stop_hoisting("1.2 m/s", "1 m/s**2", "300 kip", "20 m").goes_slack
        False
        >>> line.stop_hoisting("1.2 m/s", "20 m/s**2", "300 kip", "20 m").goes_slack
        True
        """
        where = f"{_WHERE}.stop_hoisting"
        load = to_one(where, "hook_load", hook_load, "force")
        to_one(where, "line_height", line_height, "length")
        _, stiffness = self._swinging("stop_hoisting", hook_load, line_height, sheaves)
        speed = to_one(where, "speed_change", speed_change, "speed")
        down = to_one(where, "downward_acceleration", downward_acceleration, "acceleration")
        frequency = float(_core.dynamics.natural_frequency(load, stiffness))
        trough = float(_core.dynamics.trough_factor(speed, down, frequency))
        slack_speed = float(_core.dynamics.slack_speed(frequency))
        finding = ""
        if trough <= 0.0:
            finding = (
                f"the line goes slack: {speed:.4g} m/s stopped with {down:.4g} m/s**2; it would "
                f"stay tight with half of g, or from {slack_speed:.4g} m/s"
            )
        return HoistStop(load, self.lines, trough, frequency, slack_speed, finding)

    def _swinging(
        self, method: str, hook_load: QuantityLike, line_height: QuantityLike, sheaves: Sheaves
    ) -> tuple[Any, Any]:
        """Hook load and stiffness in SI, sheaves locked or turning."""
        where = f"{_WHERE}.{method}"
        if to_name(where, "sheaves", sheaves) not in ("locked", "turning"):
            text = f"sheaves must be 'locked' or 'turning', got {sheaves!r}"
            raise UnknownEntryError(f"{where}(): {text}", where, "sheaves")
        load, stiffness = self._loaded(method, hook_load, line_height)
        if sheaves == "locked":
            stiffness = _core.dynamics.locked_stiffness(
                self.rope_modulus_si,
                self.metallic_area_si,
                self.lines,
                to_si(where, "line_height", line_height, "length"),
            )
        return load, stiffness

    def _loaded(
        self, method: str, hook_load: QuantityLike, line_height: QuantityLike
    ) -> tuple[Any, Any]:
        """Hook load and stiffness in SI."""
        where = f"{_WHERE}.{method}"
        height = to_si(where, "line_height", line_height, "length")
        return to_si(where, "hook_load", hook_load, "force"), self._stiffness(height)

    def _stiffness(self, height: Any) -> Any:
        return _core.dynamics.line_stiffness(
            self.rope_modulus_si,
            self.metallic_area_si,
            self.lines,
            height,
            self.fast_line_length_si,
            self.dead_line_length_si,
        )
