"""Studies over many designs."""

from __future__ import annotations

from ropewalk.study.lines_strung import lines_strung
from ropewalk.study.named import NAMED
from ropewalk.study.outputs import Output
from ropewalk.study.section import sheave_windows
from ropewalk.study.sheave_life import sheave_life
from ropewalk.study.status import Status
from ropewalk.study.sweep import sweep

__all__ = [
    "NAMED",
    "Output",
    "Status",
    "lines_strung",
    "sheave_life",
    "sheave_windows",
    "sweep",
]
