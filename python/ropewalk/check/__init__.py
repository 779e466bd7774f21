"""Is a rig inside every limit, by what margin, says who.

>>> import ropewalk as rw
>>> verdicts = rw.check.check_rig(rw.load_rig(rw.rig.example("rig7")))
>>> verdicts[0].rule.id, str(verdicts[0].status)
('line.design_factor', 'pass')
"""

from __future__ import annotations

from ropewalk.check.compare import Change, Comparison, compare, compare_files
from ropewalk.check.facts import Facts, LoadCase
from ropewalk.check.files import FileReport, Place, check_file, check_files, outcome
from ropewalk.check.rule import Absent, CannotTell, Measured, NotApplicable, Rule
from ropewalk.check.rules import RULES, rule
from ropewalk.check.run import check_rig
from ropewalk.check.verdict import Severity, Status, Verdict

__all__ = [
    "RULES",
    "Absent",
    "CannotTell",
    "Change",
    "Comparison",
    "Facts",
    "FileReport",
    "LoadCase",
    "Measured",
    "NotApplicable",
    "Place",
    "Rule",
    "Severity",
    "Status",
    "Verdict",
    "check_file",
    "check_files",
    "check_rig",
    "compare",
    "compare_files",
    "outcome",
    "rule",
]
