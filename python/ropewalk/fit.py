"""Life regression with censored rows: lives of a table of tests or of lines in service.

A table has a row for each rope, specimen or line: its life, whether it had failed then or had run
out, and what it went through. Maximum likelihood takes a run-out for what it is, a life longer than
so much; leaving it out, or taking it as a failure, makes life look shorter.

A curve fitted to lives speaks of ropes like those in the table, under what they went through, to
the discard that was used there. When a rope is inspected and discarded is said by the makers'
manuals, the local rules and licensed practice, which come before anything computed here.
"""

from __future__ import annotations

from ropewalk._fit_bootstrap import Refits
from ropewalk._fit_life import fit_life
from ropewalk._fit_result import LifeFit
from ropewalk._fit_table import life_table
from ropewalk._fit_terms import Level, Log, Ratio

__all__ = ["Level", "LifeFit", "Log", "Ratio", "Refits", "fit_life", "life_table"]
