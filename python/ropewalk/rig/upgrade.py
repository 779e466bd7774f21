"""Older layouts of the rig file, read as the one of today.

Layout 2: the pull allowed on a stuck string is no limit but a load; ``limits.overpull`` is
``[stuck] overpull``.
"""

from __future__ import annotations

from typing import Any

from ropewalk.rig.origins import Layer
from ropewalk.rig.problems import KeyPath, refusal, value_text

#: Layouts that are read; the last is that of today.
LAYOUTS = (1, 2)
LATEST = LAYOUTS[-1]
_KNOWN = f"layouts {' and '.join(str(one) for one in LAYOUTS)} are read"


def upgrade(
    data: dict[str, Any], name: str, *, layout: int | None = None, text: str = ""
) -> tuple[dict[str, Any], list[str], dict[KeyPath, KeyPath]]:
    """Bring the data of one file to the layout of today.

    Parameters
    ----------
    data
        The file as read; it is not changed.
    name
        Stands for the file in messages.
    layout
        Layout of a file that does not say its own: that of the file that includes it. Without it
        the file must say it.
    text
        Text of the file, for the lines of what is refused.

    Returns
    -------
    tuple
        Data of today, one line for each thing that was called otherwise, and what was: place of
        today → place in the file.

    Raises
    ------
    RigFileError
        If the layout is missing or unknown.
    """
    written = Layer(name, text, data)
    given = data.get("ropewalk", layout)
    if given is None:
        problem = f"missing; the layout of the file, {_KNOWN}"
        raise refusal(name, [(written.place(("ropewalk",)), problem)])
    if type(given) is not int or given not in LAYOUTS:
        problem = f"layout {value_text(given)} is not known; {_KNOWN}"
        raise refusal(name, [(written.place(("ropewalk",)), problem)])
    today = {**data, "ropewalk": LATEST}
    if given == LATEST:
        return today, [], {}
    notes = [f"{name}: layout 1 is read as layout 2"]
    renamed: dict[KeyPath, KeyPath] = {}
    if "stuck" in data:
        problem = f"unknown key in layout 1; write ropewalk = {LATEST} to use it"
        raise refusal(name, [(written.place(("stuck",)), problem)])
    limits = data.get("limits")
    if isinstance(limits, dict) and "overpull" in limits:
        rest = {key: value for key, value in limits.items() if key != "overpull"}
        today["limits"] = rest
        today["stuck"] = {"overpull": limits["overpull"]}
        renamed["stuck", "overpull"] = ("limits", "overpull")
        notes.append(f"{name}: limits.overpull is called stuck.overpull in layout 2")
    return today, notes, renamed
