"""Writing what a check says: the file that was there before, or the new one, never half of it."""

from __future__ import annotations

from pathlib import Path

from ropewalk._files import write_whole

__all__ = ["write_bytes", "write_text"]


def write_text(path: Path, text: str) -> None:
    """Write text as UTF-8; folders above are made.

    What is no plain file, ``/dev/stdout`` or a named pipe, is written into as it stands, and a
    link stays a link.

    Parameters
    ----------
    path
        Where to.
    text
        The whole of it.

    Raises
    ------
    OSError
        If the folder or the file cannot be written; what was there before then stays.

    Examples
    --------
    >>> import tempfile
    >>> from ropewalk.check.writing import write_text
    >>> with tempfile.TemporaryDirectory() as folder:
    ...     target = Path(folder) / "new" / "check.xml"
    ...     write_text(target, "<testsuites/>")
    ...     target.read_text(encoding="utf-8")
    '<testsuites/>'
    """
    write_bytes(path, text.encode("utf-8", errors="backslashreplace"))


def write_bytes(path: Path, data: bytes) -> None:
    """Write bytes, as `write_text` does text.

    Examples
    --------
    >>> import os
    >>> from ropewalk.check.writing import write_bytes
    >>> write_bytes(Path(os.devnull), b"a device is written into")
    """
    if path.exists() and not path.is_file():
        path.write_bytes(data)
        return
    target = path.resolve()
    target.parent.mkdir(parents=True, exist_ok=True)
    write_whole(target, lambda temporary: temporary.write_bytes(data))
