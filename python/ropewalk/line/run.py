"""Run a campaign on a line: where the wear goes."""

from __future__ import annotations

import warnings
from collections.abc import Iterable
from typing import TYPE_CHECKING

import numpy as np

from ropewalk import _core
from ropewalk._border import QuantityLike, to_si
from ropewalk._face import Policy, check_options
from ropewalk.errors import InadmissibleError, ValidityError, ValidityWarning
from ropewalk.line import _labels
from ropewalk.line._setup import columns_of, line_model, line_of
from ropewalk.line.history import LineHistory
from ropewalk.line.program import NO_PROGRAM, SlipCutProgram

if TYPE_CHECKING:
    import xarray as xr

    from ropewalk.fatigue import LifeModel
    from ropewalk.line.campaign import Campaign
    from ropewalk.rig import Rig


def run_line(
    rig: Rig,
    campaign: Campaign | None = None,
    program: SlipCutProgram | None = None,
    *,
    model: LifeModel | None = None,
    bin_length: QuantityLike = "0.1 m",
    repeats: int = 1,
    outside_validity: Policy = "warn",
    threads: int = 1,
) -> LineHistory:
    """Run a campaign on the line of a rig and keep account of every place of the rope.

    The rope is named by its length from the first drum end. Each stroke of the block sweeps m times
    its travel over turning sheave m and N times over the drum; rope that passes a tangent point is
    bent or straightened, half a bending cycle, and loses ½/N of its life, N by the life model under
    the tension of the tight side. Damage adds up linearly (Palmgren 1924, Miner 1945). The map
    belongs to the rope: slipping and cutting move it through the hoist. Extra wear at crossovers,
    at pick-up points, on the dead-line sheave and at the anchor counts as the rig file says.

    All lines are taken as vertical, the rope as inextensible; the lives of the models are medians.
    The map replaces neither inspection of the rope nor the maker's manual, the rules in force where
    the rig stands, and the judgment of qualified people.

    Parameters
    ----------
    rig
        The hoist; its file has ``[line]`` and ``[drum]``. An odd number of lines is refused: its
        dead end travels with the block, and there is no anchor to slip line through.
    campaign
        What the hoist did; the plan of the rig if left out.
    program
        When the line is slipped and cut; if left out, only where the campaign says so.
    model
        Life model; by default the rig's own fit (``[life.power_law]``), else its reference life.
    bin_length : length
        Length of rope that one value of the map stands for; strokes that end inside a bin are
        counted by the share they cover.
    repeats
        How often the campaign is run, one after the other.
    outside_validity : {"warn", "raise", "ignore"}, default "warn"
        What to do if part of the damage comes from bends outside the published range of the model.
    threads
        Has no influence on the answer; one run uses one thread.

    Returns
    -------
    LineHistory

    Raises
    ------
    InadmissibleError
        For a stroke outside the travel of the block, a load that would break the fast line, a drum
        or reel that does not hold what the program asks; the message names row, value and range.
    ValidityError, ValidityWarning
        As `outside_validity` says.

    Examples
    --------
    >>> import ropewalk as rw
    >>> rig = rw.load_rig(rw.rig.example("rig7"))
    >>> program = rw.SlipCutProgram(slip="10 m", cut="30 m", every="250 ton_mile")
    >>> history = rw.run_line(rig, program=program, outside_validity="ignore")
    >>> history.damage.dims, bool(history.damage.min() >= 0.0)
    (('position',), True)
    """
    from ropewalk.line.campaign import Campaign

    where = "run_line"
    check_options(where, outside_validity, threads)
    bins = float(to_si(where, "bin_length", bin_length, "length"))
    chosen_campaign = Campaign.from_plan(rig) if campaign is None else campaign
    chosen_model = line_model(rig) if model is None else model
    line = line_of(rig, columns_of(chosen_campaign), chosen_model)
    outside = _outside(line, chosen_model, outside_validity)
    arguments = NO_PROGRAM if program is None else program._core(chosen_campaign)
    native: _core.line.History = line.run(
        **arguments, bin_length=bins, steps=True, repeats=int(repeats)
    )
    return LineHistory(
        rig=rig,
        campaign=chosen_campaign,
        program=program,
        model=chosen_model,
        bin_length_si=bins,
        share_outside_validity=outside,
        native=native,
        line=line,
    )


def stream_line(
    rig: Rig,
    chunks: Iterable[tuple[QuantityLike, QuantityLike, QuantityLike]],
    *,
    model: LifeModel | None = None,
    bin_length: QuantityLike = "0.1 m",
) -> xr.DataArray:
    """Damage along the rope from more strokes than fit in memory, without slips.

    Parameters
    ----------
    rig, model, bin_length
        As in `run_line`.
    chunks
        Any iterator of (hook load, height before, height after), each an array of forces or
        lengths; one chunk is in memory at a time.

    Returns
    -------
    xarray.DataArray
        Damage along the rope, as `LineHistory.damage`.

    Raises
    ------
    UnitError, InadmissibleError
        As in `Campaign.from_strokes` and `run_line`; or if there is no chunk.

    Examples
    --------
    >>> import ropewalk as rw
    >>> rig = rw.load_rig(rw.rig.example("rig7"))
    >>> strokes = (rw.Q([900.0, 210.0], "kN"), rw.Q([0.0, 28.0], "m"), rw.Q([28.0, 0.0], "m"))
    >>> damage = rw.line.stream_line(rig, (strokes for _ in range(3)))
    >>> damage.dims
    ('position',)
    """
    from ropewalk.line.campaign import Campaign

    bins = float(to_si("stream_line", "bin_length", bin_length, "length"))
    chosen_model = line_model(rig) if model is None else model
    history: LineHistory | None = None
    total = np.zeros(0)
    for chunk in chunks:
        campaign = Campaign.from_strokes(*chunk)
        line = line_of(rig, columns_of(campaign), chosen_model)
        native = line.run(**NO_PROGRAM, bin_length=bins)
        total = native.damage if history is None else total + native.damage
        history = LineHistory(rig, campaign, None, chosen_model, bins, 0.0, native, line)
    if history is None:
        text = "chunks is empty: no strokes to lay on the rope"
        raise InadmissibleError(f"stream_line(): {text}", "stream_line", "chunks")
    return _labels.along_rope(history, total, "damage", "damage of the rope")


def _outside(line: _core.line.Line, model: LifeModel, policy: Policy) -> float:
    """Share of the damage outside the range of the model; raises or warns as told."""
    share = float(line.share_outside_validity)
    if share > 0.0 and policy != "ignore":
        text = (
            f"run_line(): {share:.1%} of the damage comes from bends outside the range for which "
            f"{model.name} is published ({model.source}); its equation is used there all the same"
        )
        if policy == "raise":
            raise ValidityError(text, "run_line", "model")
        warnings.warn(text, ValidityWarning, stacklevel=3)
    return share
