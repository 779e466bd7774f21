"""What is printed beside verdicts that someone could take for a permission, by subject."""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from typing import TYPE_CHECKING

from ropewalk._brake_stop import CAUTION

if TYPE_CHECKING:
    from ropewalk.check.verdict import Verdict

__all__ = ["CAUTIONS", "cautions_of"]

#: Caution of each subject whose verdicts need one; the subject is the first part of a rule's id.
CAUTIONS: Mapping[str, str] = {
    "mast": "Held against the nameplate as given, without wind and setback, which lower a rating. "
    "Local codes, the maker's manual and load tables, inspection and licensed practice come first.",
    "suspension": "Held against nameplates as given; wear, damage and shock are not in them. Local "
    "codes, the makers' manuals, inspection and licensed practice come first.",
    "drawworks": "Computed for the machine as given. What may be lifted is said by nameplates, "
    "local codes, the maker's manual and licensed practice, which come first.",
    "brake": CAUTION,
    "overtravel": "Computed for devices and brakes as given. Nobody stands under the block on the "
    "strength of it: local codes, the makers' manuals, function tests on the rig and licensed "
    "practice come first.",
    "deadline": "Computed for an anchor as given. Local codes, the maker's manual, inspection of "
    "anchor and clamps, and licensed practice come first.",
    "compensator": "Computed for a compensator and a sea as given; it holds its load overhead on "
    "gas under high pressure. Local codes, the maker's manual and licensed practice come first.",
}


def cautions_of(verdicts: Iterable[Verdict]) -> dict[str, str]:
    """Return the caution of every subject that verdicts touch, in the order they come.

    Examples
    --------
    >>> import ropewalk as rw
    >>> from ropewalk.check.cautions import cautions_of
    >>> verdicts = rw.check.check_rig(rw.load_rig(rw.rig.example("osprey-sound")))
    >>> "compensator" in cautions_of(verdicts), "line" in cautions_of(verdicts)
    (True, False)
    """
    subjects = dict.fromkeys(one.rule.subject for one in verdicts)
    return {name: CAUTIONS[name] for name in subjects if name in CAUTIONS}
