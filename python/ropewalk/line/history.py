"""What a line has been through: the result of `run_line`."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import datetime, timedelta
from functools import cached_property
from typing import TYPE_CHECKING, Literal

import numpy as np
import numpy.typing as npt

from ropewalk import _core
from ropewalk._border import Quantity, QuantityLike, to_quantity, to_si
from ropewalk.line import _labels, places, spacing

if TYPE_CHECKING:
    import xarray as xr

    from ropewalk.fatigue import LifeModel
    from ropewalk.line.campaign import Campaign
    from ropewalk.line.program import SlipCutProgram
    from ropewalk.rig import Rig

Array = npt.NDArray[np.float64]


@dataclass(frozen=True, slots=True)
class SlipOrCut:
    """A slip or a cut that was made, in SI.

    Attributes
    ----------
    kind
        ``"slip"`` or ``"cut"``.
    operation
        Index of the operation it was made in or after.
    row
        Last row of the campaign before it.
    date
        When, if the campaign has dates.
    work_si
        Work of the line until then, J.
    length_si
        Line slipped or cut, m.
    anchor_si, drum_end_si
        Rope positions of anchor and drum end after it, m.
    worst_before
        Largest damage on the line before it.
    """

    kind: Literal["slip", "cut"]
    operation: int
    row: int
    date: datetime | None
    work_si: float
    length_si: float
    anchor_si: float
    drum_end_si: float
    worst_before: float


@dataclass(frozen=True, slots=True)
class CutSection:
    """Rope that was cut off: positions in m, largest and mean damage, when."""

    start_si: float
    end_si: float
    worst: float
    mean: float
    date: datetime | None

    @property
    def waste_si(self) -> float:
        """Life left in it, as length of new rope, m."""
        return (1.0 - self.mean) * (self.end_si - self.start_si)


@dataclass(frozen=True, eq=False, repr=False)
class LineHistory:
    """Account of a line: damage by place, cause and operation, slips, cuts, what is left.

    Made by `run_line`; arrays are labelled with the position along the rope, counted from the first
    drum end.
    """

    rig: Rig
    campaign: Campaign
    program: SlipCutProgram | None
    model: LifeModel
    bin_length_si: float
    share_outside_validity: float
    native: _core.line.History
    line: _core.line.Line

    # What every place has suffered

    @property
    def damage_si(self) -> Array:
        """Damage of every bin, 1 being the median life."""
        damage: Array = self.native.damage
        return damage

    @property
    def damage(self) -> xr.DataArray:
        """Damage along the rope, mean over each bin; 1 is the median life of the model."""
        return _labels.along_rope(self, self.damage_si, "damage", "damage of the rope")

    @cached_property
    def cycles(self) -> xr.DataArray:
        """Bending cycles along the rope, drum included; half a cycle on, half off."""
        return _labels.along_rope(self, self.native.cycles(), "cycles", "bending cycles")

    @cached_property
    def damage_by_cause(self) -> xr.DataArray:
        """Damage by cause and position: every sheave, drum layers, crossovers, fixed points."""
        values = self.native.by_cause()
        return _labels.along_rope(
            self, values, "damage", "damage of the rope", cause=list(self.line.causes)
        )

    @cached_property
    def damage_by_operation(self) -> xr.DataArray:
        """Damage by operation of the campaign and position."""
        blocks = len(self.campaign.operations)
        values = np.stack(
            [self.native.of_blocks(np.eye(1, blocks, k, dtype=np.uint8)[0]) for k in range(blocks)]
        )
        titles = [operation.title for operation in self.campaign.operations]
        return _labels.along_rope(
            self, values, "damage", "damage of the rope", operation=_labels.distinct(titles)
        )

    @cached_property
    def damage_by_epoch(self) -> xr.DataArray:
        """Damage along the rope before every slip or cut, and after every operation."""
        values = self.native.by_epoch()
        return _labels.along_rope(
            self, values, "damage", "damage of the rope", epoch=list(range(len(values)))
        )

    @property
    def share_by_cause(self) -> xr.DataArray:
        """Share of each cause in the damage summed along the rope."""
        return _labels.share(self.damage_by_cause, "cause")

    @property
    def share_by_sheave(self) -> xr.DataArray:
        """Share of each sheave and drum layer in the damage by bending."""
        bending = [c for c in self.line.causes if "sheave " in c or "drum" in c]
        return _labels.share(self.damage_by_cause.sel(cause=bending), "cause")

    @property
    def share_by_operation(self) -> xr.DataArray:
        """Share of each operation in the damage summed along the rope."""
        return _labels.share(self.damage_by_operation, "operation")

    def worst_places(self, count: int = 5, apart: QuantityLike = "5 m") -> list[places.WorstPlace]:
        """Worst places of the rope, each with its chief cause and where the block was.

        Parameters
        ----------
        count
            How many.
        apart : length
            Least distance between two of them.
        """
        distance = float(to_si("LineHistory.worst_places", "apart", apart, "length"))
        return places.worst_places(self, count, distance)

    @property
    def windows(self) -> list[places.Window]:
        """Rope that lay in reach of every sheave and of the drum at the end of the run."""
        return places.windows(self)

    # What was done

    @cached_property
    def events(self) -> tuple[SlipOrCut, ...]:
        """Slips and cuts in their order."""
        return tuple(
            SlipOrCut(
                kind="cut" if one["cut"] else "slip",
                operation=one["block"],
                row=one["row"],
                date=self._date(one["row"]),
                work_si=one["work"],
                length_si=one["length"],
                anchor_si=one["anchor"],
                drum_end_si=one["drum_end"],
                worst_before=one["worst_before"],
            )
            for one in self.native.events
        )

    @cached_property
    def sections(self) -> tuple[CutSection, ...]:
        """Rope that was cut off, oldest first."""
        return tuple(
            CutSection(
                start_si=one["drum_end"] - one["length"],
                end_si=one["drum_end"],
                worst=one["section_worst"],
                mean=one["section_mean"],
                date=self._date(one["row"]),
            )
            for one in self.native.events
            if one["cut"]
        )

    @cached_property
    def over_time(self) -> xr.Dataset:
        """State of the line after every operation: work, rope used, largest damage on the line."""
        return _labels.over_time(self)

    @property
    def warnings(self) -> list[str]:
        """Where slips or cuts put one worn point of the rope on another; common practice."""
        return [] if self.program is None else spacing.warnings_of(self)

    def _date(self, row: int) -> datetime | None:
        seconds = self.campaign.time_si[row]
        if self.campaign.start is None or not np.isfinite(seconds):
            return None
        return self.campaign.start + timedelta(seconds=float(seconds))

    # What is left

    @property
    def end(self) -> str:
        """How the run ended: ``"campaign done"`` or ``"reel used up"``."""
        return str(self.native.end)

    @property
    def anchor_si(self) -> float:
        """Rope position of the anchor at the end, m."""
        return float(self.native.anchor)

    @property
    def drum_end_si(self) -> float:
        """Rope position of the drum end, m: so much has been cut."""
        return float(self.native.drum_end)

    @property
    def worst(self) -> float:
        """Largest damage of any place, on the line or cut off."""
        return float(self.native.worst)

    @property
    def work(self) -> Quantity:
        """Work of the line done."""
        return to_quantity(float(self.native.work), "energy")

    @property
    def rope_cut(self) -> Quantity:
        """Rope cut off."""
        return to_quantity(self.drum_end_si, "length")

    @property
    def rope_use(self) -> Quantity:
        """Rope cut off per work of the line, m/J."""
        use: Quantity = self.rope_cut / self.work
        return use

    @property
    def waste(self) -> Quantity:
        """Life left in what was cut off, as length of new rope."""
        return to_quantity(sum((one.waste_si for one in self.sections), 0.0), "length")

    @property
    def reel_left(self) -> Quantity:
        """Line left on the reel."""
        assert self.rig.line is not None
        return to_quantity(self.rig.line.supply - self.anchor_si, "length")

    @property
    def cuts_left(self) -> int | None:
        """Cuts the reel still allows; None without a program."""
        if self.program is None:
            return None
        left = float(self.reel_left.to("m").magnitude)
        slips_made = sum(1 for e in self.events if e.kind == "slip")
        since_cut = slips_made % self.program.slips_per_cut
        return int((left / self.program.slip_si + since_cut + 1e-9) // self.program.slips_per_cut)

    @property
    def last_cut(self) -> datetime | None:
        """Date of the last cut."""
        dates = [e.date for e in self.events if e.kind == "cut"]
        return dates[-1] if dates else None

    @property
    def least_wraps(self) -> float:
        """Fewest wraps on the drum with the block at its lowest, at any time."""
        return float(self.native.least_wraps_rope) / spacing.lap_length(self.rig)

    def survival(
        self,
        scatter_lg: float | None = None,
        correlation_length: QuantityLike = "10 m",
        *,
        limit: float = 1.0,
        samples: int | None = None,
        seed: int = 0,
        threads: int = 1,
    ) -> float:
        r"""Probability that no place on the line has passed its discard life.

        .. math:: P = \prod_k \Phi(-\ln (D_k / D_{lim}) / s)

        with lognormal lives of median 1, :math:`D_k` the largest damage in section k of the rope.
        Places of one section live or die together, sections are independent. Rope that was cut off
        counts with the damage it had.

        Parameters
        ----------
        scatter_lg
            Standard deviation of the decimal logarithm of life; the one of the rig file by default.
        correlation_length : length
            Length of a section; none is published, it is the user's.
        limit
            Share of its own life that a place may use, 1 being discard.
        samples, seed
            If given, so many lines are sampled instead of the closed form.
        threads
            For samples; any number gives the same answer.
        """
        where = "LineHistory.survival"
        lg = self.rig.known_life.scatter_lg if scatter_lg is None else float(scatter_lg)
        section = float(to_si(where, "correlation_length", correlation_length, "length"))
        rule = (self.damage_si, self.bin_length_si, lg * np.log(10.0), section)
        if samples is None:
            return float(_core.line.survival(*rule, limit))
        return float(
            _core.line.sampled_survival(*rule, int(samples), int(seed), limit, int(threads))
        )

    def __repr__(self) -> str:
        return (
            f"<LineHistory of {self.rig.name}: {self.work.to('ton_mile').magnitude:.0f} ton_mile, "
            f"{len(self.sections)} cuts, worst place {self.worst:.3f}, {self.end}>"
        )
