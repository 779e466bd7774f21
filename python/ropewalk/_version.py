"""The version, as the compiled core was built with it."""

from __future__ import annotations

from ropewalk._core import __version__

__all__ = ["__version__"]
