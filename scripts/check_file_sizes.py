"""Refuse source files longer than 400 lines: a file that long holds more than one subject."""

import subprocess
import sys
from pathlib import Path

LONGEST = 400
SUFFIXES = {".py", ".pyi", ".hpp", ".cpp", ".cmake", ".toml", ".sh", ""}
GENERATED = "python/ropewalk/_core"  # stubs, written by scripts/make_stubs.py
PROSE = {"LICENSE"}


def source_files(root: Path) -> list[Path]:
    """Files of the clone, committed or not, that people write and read as source."""
    listing = subprocess.run(
        ["git", "ls-files", "-z", "--cached", "--others", "--exclude-standard"],
        cwd=root,
        capture_output=True,
        text=True,
        check=True,
    ).stdout
    paths = (Path(name) for name in listing.split("\0") if name)
    return [
        path
        for path in paths
        if (path.suffix in SUFFIXES or path.name == "CMakeLists.txt")
        and path.name not in PROSE
        and not path.as_posix().startswith(GENERATED)
        and (root / path).is_file()
    ]


def main() -> int:
    """Print every file that is too long; exit status 1 if there is one."""
    root = Path(__file__).parent.parent
    too_long = 0
    for path in source_files(root):
        lines = len((root / path).read_text(encoding="utf-8").splitlines())
        if lines > LONGEST:
            print(f"{path}: {lines} lines, more than {LONGEST}: split it by subject")
            too_long += 1
    return 1 if too_long else 0


if __name__ == "__main__":
    sys.exit(main())
