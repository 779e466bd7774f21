"""Programs side by side on the same campaign."""

from __future__ import annotations

from collections.abc import Mapping
from typing import TYPE_CHECKING, Any

import numpy as np

from ropewalk._border import QuantityLike, to_si
from ropewalk.line._cases import Judgment, run_programs
from ropewalk.line._setup import columns_of, line_model, line_of

if TYPE_CHECKING:
    import xarray as xr

    from ropewalk.fatigue import LifeModel
    from ropewalk.line.campaign import Campaign
    from ropewalk.line.program import SlipCutProgram
    from ropewalk.rig import Rig


def compare_programs(
    rig: Rig,
    programs: Mapping[str, SlipCutProgram],
    campaign: Campaign | None = None,
    *,
    limit: float = 1.0,
    scatter_lg: float | None = None,
    correlation_length: QuantityLike = "10 m",
    repeats: int = 1,
    model: LifeModel | None = None,
    bin_length: QuantityLike = "0.1 m",
    threads: int = 1,
) -> xr.Dataset:
    """Run programs on the same campaign and set what they cost and risk side by side.

    Parameters
    ----------
    rig, campaign, model, bin_length
        As in `run_line`.
    programs
        Programs by the name they have in the table, such as fixed work per length cut
        (`SlipCutProgram.by_goal`) and the one of `optimize_program`.
    limit, scatter_lg, correlation_length
        As in `LineHistory.survival`.
    repeats
        How often the campaign is run.
    threads
        Any number gives the same answer.

    Returns
    -------
    xarray.Dataset
        Along ``program``: rope cut, rope use, waste (life left in what was cut), largest damage,
        survival, slips, cuts, reel left, how the run ended, ``status`` (0: well) and ``reason``.

    Examples
    --------
    >>> import ropewalk as rw
    >>> rig = rw.load_rig(rw.rig.example("rig7"))
    >>> by_work = rw.SlipCutProgram.by_goal("10 ton_mile/ft", "80 ft", slips_per_cut=4)
    >>> table = rw.compare_programs(rig, {"fixed work": by_work})
    >>> table.cuts.item() > 0
    True
    """
    import xarray as xr

    from ropewalk.line.campaign import Campaign

    where = "compare_programs"
    chosen = Campaign.from_plan(rig) if campaign is None else campaign
    judge = Judgment(
        limit=float(limit),
        scatter_lg=rig.known_life.scatter_lg if scatter_lg is None else float(scatter_lg),
        section=float(to_si(where, "correlation_length", correlation_length, "length")),
        bin_length=float(to_si(where, "bin_length", bin_length, "length")),
        repeats=int(repeats),
    )
    line = line_of(rig, columns_of(chosen), line_model(rig) if model is None else model)
    tried = list(programs.values())
    found = run_programs([line] * len(tried), chosen, tried, judge, threads=threads)
    assert rig.line is not None
    # A run that could not be has no work and no rope use; its status and reason say so.
    work = np.where(found["status"] == 0, found["work"], np.nan)
    columns: dict[str, tuple[Any, str, str]] = {
        "work": (found["work"], "J", "work of the line"),
        "rope_cut": (found["rope_cut"], "m", "rope cut off"),
        "rope_use": (found["rope_cut"] / work, "m/J", "rope cut off per work"),
        "waste": (found["waste"], "m", "life left in what was cut, as length of new rope"),
        "worst": (found["worst"], "1", "largest damage of any place, median lives"),
        "survival": (found["survival"], "1", "probability that no place passes the limit"),
        "slips": (found["slips"].astype(np.int64), "1", "slips"),
        "cuts": (found["cuts"].astype(np.int64), "1", "cuts"),
        "reel_left": (rig.line.supply - found["anchor"], "m", "line left on the reel"),
        "end": (np.array(found["end"], dtype=object), "1", "how the run ended"),
        "status": (found["status"], "1", "0: the run could be made"),
        "reason": (np.array(found["reason"], dtype=object), "1", "why it could not"),
    }
    return xr.Dataset(
        {
            name: ("program", values, {"units": unit, "long_name": text})
            for name, (values, unit, text) in columns.items()
        },
        coords={"program": ("program", list(programs), {"long_name": "program"})},
        attrs={"rig": rig.name, "limit": judge.limit, "repeats": judge.repeats},
    )
