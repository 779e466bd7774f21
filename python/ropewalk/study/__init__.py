"""Studies over many designs."""

from __future__ import annotations

from ropewalk.study.lines_strung import lines_strung
from ropewalk.study.section import sheave_windows
from ropewalk.study.sheave_life import sheave_life

__all__ = ["lines_strung", "sheave_life", "sheave_windows"]
