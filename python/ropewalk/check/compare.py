"""What a change of a rig did to every margin."""

from __future__ import annotations

import os
from collections.abc import Iterable
from dataclasses import dataclass

from ropewalk.check.files import FileReport, check_file
from ropewalk.check.rule import Rule
from ropewalk.check.verdict import Status, Verdict

__all__ = ["Change", "Comparison", "compare", "compare_files"]


@dataclass(frozen=True, slots=True)
class Change:
    """One rule on one thing, before and after.

    Attributes
    ----------
    old, new
        The verdicts; None on the side that has none.
    dropped
        True if the rule judged something before and nothing of the rig any more: its table, or
        the rule itself, was taken out of the file.
    """

    old: Verdict | None
    new: Verdict | None
    dropped: bool = False

    @property
    def rule(self) -> Rule:
        """The rule, as it is after the change where it is there."""
        return self._known.rule

    @property
    def subject(self) -> str:
        """What it is about; both names where the change renamed it."""
        old, new = (None if one is None else one.subject for one in (self.old, self.new))
        return f"{old} → {new}" if None not in (old, new) and old != new else self._known.subject

    @property
    def _known(self) -> Verdict:
        known = self.new or self.old
        assert known is not None
        return known

    @property
    def worse(self) -> bool:
        """True for what is broken, no longer computed or no longer checked, and was not before."""
        if self.dropped:
            return True
        if self.new is None or not self.new.broken:
            return False
        if self.old is None or not self.old.broken:
            return True
        # What could not be computed was never shown to be broken.
        return self.old.status is Status.NOT_COMPUTED and self.new.status is not self.old.status

    @property
    def better(self) -> bool:
        """True for what was broken and is inside now."""
        return (
            self.old is not None
            and self.old.broken
            and self.new is not None
            and self.new.status is Status.PASS
        )

    @property
    def changed(self) -> bool:
        """True if status, value or limit are not what they were."""
        if self.old is None or self.new is None:
            return True
        before, after = (
            (one.status, one.value, one.limit, one.subject) for one in (self.old, self.new)
        )
        return before != after

    @property
    def what(self) -> str:
        """The change in a word: ``"broken now"``, ``"inside now"``, ``"only before"`` and so on."""
        if self.dropped:
            return "no longer checked"
        if self.new is None:
            return "only before"
        if self.worse:
            return "broken now"
        if self.old is None:
            return "only now"
        if self.better:
            return "inside now"
        if not self.changed:
            return "same"
        before, after = self.old.margin, self.new.margin
        if before is None or after is None or before == after:
            return "changed"
        return "more margin" if after > before else "less margin"


@dataclass(frozen=True, slots=True)
class Comparison:
    """Two rig files, rule by rule.

    Attributes
    ----------
    old, new
        What was found about each.
    changes
        Every rule on every thing, in the order of the new file, then what only the old one has;
        empty if a file cannot be used.
    """

    old: FileReport
    new: FileReport
    changes: tuple[Change, ...]

    @property
    def outcome(self) -> int:
        """Exit code: 2 if a file cannot be used, 1 if something is worse, else 0.

        Worse is what is broken, not computed or no longer checked, and was not before.
        """
        if self.old.error or self.new.error:
            return 2
        return int(any(change.worse for change in self.changes))


def compare_files(old: str | os.PathLike[str], new: str | os.PathLike[str]) -> Comparison:
    """Check two rig files and set them side by side.

    Parameters
    ----------
    old, new
        Rig files before and after a change.

    Examples
    --------
    >>> import ropewalk as rw
    >>> file = rw.rig.example("rig7")
    >>> comparison = rw.check.compare_files(file, file)
    >>> comparison.outcome, {change.what for change in comparison.changes}
    (0, {'same'})
    """
    before, after = check_file(old), check_file(new)
    return Comparison(before, after, compare(before.verdicts, after.verdicts))


def compare(old: Iterable[Verdict], new: Iterable[Verdict]) -> tuple[Change, ...]:
    """Match verdicts by rule and subject.

    Where a rule has a single verdict left over on each side, the change renamed its subject (a
    depth, an operation), and they are matched too.

    Parameters
    ----------
    old, new
        Verdicts of `ropewalk.check.check_rig`.

    Examples
    --------
    >>> import ropewalk as rw
    >>> verdicts = rw.check.check_rig(rw.load_rig(rw.rig.example("rig7")))
    >>> rw.check.compare(verdicts[1:], verdicts)[0].what
    'only now'
    """
    waiting: dict[tuple[str, str], list[Verdict]] = {}
    for one in old:
        waiting.setdefault((one.rule.id, one.subject), []).append(one)
    pairs: list[tuple[Verdict | None, Verdict]] = []
    for one in new:
        same = waiting.get((one.rule.id, one.subject))
        pairs.append((same.pop(0) if same else None, one))
    left: dict[str, list[Verdict]] = {}
    for verdicts in waiting.values():
        for one in verdicts:
            left.setdefault(one.rule.id, []).append(one)
    alone: dict[str, int] = {}
    for before, after in pairs:
        if before is None:
            alone[after.rule.id] = alone.get(after.rule.id, 0) + 1
    judged = {after.rule.id for _, after in pairs if after.status is not Status.NOT_APPLICABLE}

    def dropped(one: Verdict | None) -> bool:
        known = one is not None and one.status is not Status.NOT_APPLICABLE
        return known and one.rule.id not in judged  # type: ignore[union-attr]

    changes = []
    for before, after in pairs:
        name = after.rule.id
        if before is None and alone[name] == 1 and len(left.get(name, ())) == 1:
            before = left.pop(name)[0]
        changes.append(Change(before, after, dropped(before)))
    changes += [Change(one, None, dropped(one)) for verdicts in left.values() for one in verdicts]
    return tuple(changes)
