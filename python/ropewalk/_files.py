"""Files that appear whole or not at all."""

from __future__ import annotations

import os
import tempfile
from collections.abc import Callable
from pathlib import Path
from typing import Any


def write_whole(path: Path, write: Callable[[Path], Any]) -> Path:
    """Write beside the target, on the disk for good, and put it in place at the end."""
    handle, name = tempfile.mkstemp(dir=path.parent, prefix=f".{path.stem}-", suffix=path.suffix)
    os.close(handle)
    temporary = Path(name)
    try:
        write(temporary)
        temporary.chmod(0o644)
        with temporary.open("rb+") as written:
            os.fsync(written.fileno())
        temporary.replace(path)
    finally:
        temporary.unlink(missing_ok=True)
    return path
