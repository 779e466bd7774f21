"""Write the type stubs of the compiled module, or check that they are up to date.

Without arguments the stubs in ``python/ropewalk`` are written anew from the installed package; with
``--check`` they are compared and the difference is printed.
"""

import argparse
import difflib
import subprocess
import sys
import tempfile
from pathlib import Path

PACKAGE = Path(__file__).parent.parent / "python" / "ropewalk"


def generate(folder: Path) -> dict[str, str]:
    """Stubs of ropewalk._core as pybind11-stubgen writes them: path below the package and text."""
    command = [
        sys.executable,
        "-m",
        "pybind11_stubgen",
        "--exit-code",
        "--numpy-array-use-type-var",
        "--output-dir",
        str(folder),
        "ropewalk._core",
    ]
    subprocess.run(command, check=True)
    subprocess.run(
        [sys.executable, "-m", "ruff", "format", "--quiet", "--isolated", "--line-length=100", "."],
        cwd=folder,
        check=True,
    )
    root = folder / "ropewalk"
    return {
        path.relative_to(root).as_posix(): path.read_text(encoding="utf-8")
        for path in sorted(root.rglob("*.pyi"))
    }


def stored() -> dict[str, str]:
    """Stubs in the source tree."""
    return {
        path.relative_to(PACKAGE).as_posix(): path.read_text(encoding="utf-8")
        for path in sorted(PACKAGE.rglob("*.pyi"))
    }


def write(stubs: dict[str, str]) -> None:
    """Replace the stubs in the source tree."""
    for name in stored():
        (PACKAGE / name).unlink()
    for name, text in stubs.items():
        path = PACKAGE / name
        path.parent.mkdir(parents=True, exist_ok=True)
        path.write_text(text, encoding="utf-8")


def difference(old: dict[str, str], new: dict[str, str]) -> list[str]:
    """Unified difference between two sets of stubs."""
    lines: list[str] = []
    for name in sorted(old.keys() | new.keys()):
        lines += difflib.unified_diff(
            old.get(name, "").splitlines(),
            new.get(name, "").splitlines(),
            f"stored/{name}",
            f"generated/{name}",
            lineterm="",
        )
    return lines


def main() -> int:
    """Write or check; exit status 1 if a check finds a difference."""
    parser = argparse.ArgumentParser(description=__doc__.splitlines()[0] if __doc__ else None)
    parser.add_argument("--check", action="store_true", help="compare instead of writing")
    arguments = parser.parse_args()
    with tempfile.TemporaryDirectory() as folder:
        stubs = generate(Path(folder))
    if not arguments.check:
        write(stubs)
        return 0
    lines = difference(stored(), stubs)
    if lines:
        print("\n".join(lines))
        print("the stubs do not fit the bindings: run python scripts/make_stubs.py")
    return 1 if lines else 0


if __name__ == "__main__":
    sys.exit(main())
