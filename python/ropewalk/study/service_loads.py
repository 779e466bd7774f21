"""The heaviest load of every service on a number of lines: pull, line, mast and ratings."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, replace
from typing import TYPE_CHECKING

import numpy as np

from ropewalk._border import to_quantity
from ropewalk.rig.plan import SERVICES, STUCK

if TYPE_CHECKING:
    from ropewalk.drawworks import Hoist
    from ropewalk.rig import Operation, Rig

#: Unit and long name of what is found for every service.
SERVICE_VARIABLES = {
    "service_fast_line_tension": ("N", "fast-line tension at the heaviest load of the service"),
    "service_design_factor": ("1", "breaking force over that tension"),
    "service_crown_load": ("N", "load on the crown block at the heaviest load of the service"),
    "service_pull_margin": ("N", "pull on the highest layer less the heaviest load of the service"),
    "service_utilization": ("1", "load over rating of the part used most, mast included"),
    "service_weakest": ("1", "that part"),
}


@dataclass(frozen=True, slots=True)
class ServiceLoad:
    """The heaviest hook load of a service, N, what it comes from, and the design factor asked."""

    service: str
    title: str
    hook_load: float
    minimum: float
    standard: str


@dataclass(frozen=True, slots=True)
class ServiceRow:
    """What one number of lines makes of one load, SI; the fields are `SERVICE_VARIABLES`."""

    service_fast_line_tension: float
    service_design_factor: float
    service_crown_load: float
    service_pull_margin: float
    service_utilization: float
    service_weakest: str
    reasons: tuple[str, ...]


def service_loads(rig: Rig, job: Operation) -> tuple[ServiceLoad, ...]:
    """Return the heaviest load of each service: of the plan, of the job, and of a stuck string.

    Services differ in the design factor they ask for, so the lightest of these loads may be the one
    that a line cannot carry. The stuck string is `Rig.stuck_hook_load`; in a plan without round
    trips it is that of the job.
    """
    from ropewalk import design_factor

    weight = rig.block.weight
    loads = [
        (one.heaviest_hook_load(weight), one.title, one.service)
        for one in (*rig.operations, job)
        if one.service
    ]
    trips = any(one.kind == "round trip" for one in rig.operations)
    stuck = rig.heaviest_trip if trips else job
    if rig.limits.overpull is not None:
        pull = stuck.heaviest_hook_load(weight) + rig.limits.overpull
        loads.append((pull, f"string stuck after {stuck.title}", STUCK))
    found = []
    for service in SERVICES:
        # Not max of tuples: of equal loads the first of the plan gives its name.
        of_service = [(load, title) for load, title, one in loads if one == service]
        if not of_service:
            continue
        heaviest, title = max(of_service, key=lambda pair: pair[0])
        asked = design_factor.minimum(service, rig.design_factor_standard)
        found.append(ServiceLoad(service, title, heaviest, asked.value, asked.standard))
    return tuple(found)


def service_row(rig: Rig, hoist: Hoist, load: ServiceLoad, pull: float) -> ServiceRow:
    """Return what a string-up makes of a load.

    Parameters
    ----------
    rig, hoist
        The rig, and its hoist with the lines in question.
    load
        One of `service_loads`.
    pull
        What the hoist pulls, N; NaN if that is not known.
    """
    from ropewalk.suspension import rig_margins

    carried = to_quantity(load.hook_load, "force")
    tensions = hoist.reeving.tensions(carried, motion="hoisting")
    factor = rig.rope.breaking_force_si / float(tensions.fast_line_si)
    reasons = []
    if load.hook_load >= pull:
        reasons.append(f"hook load {load.hook_load:.6g} N is not below the pull {pull:.6g} N")
    if factor < load.minimum:
        reasons.append(
            f"design factor {factor:.2f} is less than {load.minimum:g} ({load.standard})"
        )
    margins = rig_margins(replace(rig, reeving=hoist.reeving), carried, service=load.service)
    # The line is judged by its design factor.
    rated = [i for i, name in enumerate(margins.names) if name != "drilling line"]
    reasons += [
        f"{margins.names[i]} carries {margins.load_si[i]:.6g} N, rated {margins.rating_si[i]:.6g} N"
        for i in rated
        if margins.margin_si[i] < 0.0
    ]
    most = max(rated, key=lambda i: float(margins.utilization[i]))
    return ServiceRow(
        service_fast_line_tension=float(tensions.fast_line_si),
        service_design_factor=factor,
        service_crown_load=float(tensions.crown_load_si),
        service_pull_margin=pull - load.hook_load,
        service_utilization=float(margins.utilization[most]),
        service_weakest=margins.names[most],
        reasons=tuple(f"{load.title}: {text}" for text in reasons),
    )


def service_columns(
    rows: Sequence[Sequence[ServiceRow]],
) -> dict[str, tuple[tuple[str, str], np.ndarray[tuple[int, int], np.dtype[np.generic]]]]:
    """Return a column (lines, service) for every variable."""
    return {
        name: (
            ("lines", "service"),
            np.array(
                [[getattr(one, name) for one in row] for row in rows],
                dtype=object if name == "service_weakest" else float,
            ),
        )
        for name in SERVICE_VARIABLES
    }
