"""How little the line carries as hoisting is stopped. Exported by `ropewalk.dynamics`."""

from __future__ import annotations

from dataclasses import dataclass

from ropewalk._border import Quantity, to_quantity

__all__ = ["HoistStop"]


@dataclass(frozen=True, slots=True)
class HoistStop:
    """The line as hoisting is stopped; made by `HoistLine.stop_hoisting`. SI.

    Attributes
    ----------
    hook_load_si
        Load at rest, N.
    lines
        Number of lines that share it.
    trough_factor
        Least load of the lines over that at rest; 0 where they go slack.
    natural_frequency_si
        Of the load on the line, Hz.
    slack_speed_si
        Speed that may be stopped at once without slack, m/s.
    finding
        With numbers, that the line goes slack; ``""`` if it does not.
    """

    hook_load_si: float
    lines: int
    trough_factor: float
    natural_frequency_si: float
    slack_speed_si: float
    finding: str

    @property
    def goes_slack(self) -> bool:
        """Whether the line goes slack; what follows then is not told here."""
        return self.trough_factor <= 0.0

    @property
    def trough(self) -> Quantity:
        """Least load of all lines together."""
        return to_quantity(self.trough_factor * self.hook_load_si, "force")

    @property
    def line_tension(self) -> Quantity:
        """Least tension of a line, sheaves without friction: the trough shared by the lines."""
        return to_quantity(self.trough_factor * self.hook_load_si / self.lines, "force")

    @property
    def slack_speed(self) -> Quantity:
        """Speed that may be stopped at once without slack."""
        return to_quantity(self.slack_speed_si, "speed")
