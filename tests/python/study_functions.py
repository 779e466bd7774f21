"""Functions of a rig that the tests of studies send to other processes."""

from __future__ import annotations

import os
import signal
from pathlib import Path

from ropewalk.rig import Rig

#: Name of a folder in which a process that is killed leaves its mark.
MARKS = "ROPEWALK_TEST_MARKS"


def travel(rig: Rig) -> float:
    return rig.travel


def killed_at_first(rig: Rig) -> float:
    """Kill the process that asks first for twelve lines."""
    if rig.reeving.lines == 12:
        mark = Path(os.environ[MARKS]) / "killed"
        if not mark.exists():
            mark.touch()
            os.kill(os.getpid(), signal.SIGKILL)
    return float(rig.reeving.lines)
