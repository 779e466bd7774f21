"""Print requirements named in pyproject.toml, one a line.

Groups: ``build`` (what builds the package, with CMake and Ninja), ``run`` (what the package needs
when used), and every optional group of the project (``test``, ``dev``, ``bench`` …).
"""

import sys
import tomllib
from pathlib import Path


def requirements(groups: list[str]) -> list[str]:
    """Requirements of the groups, in order and without repetition."""
    path = Path(__file__).parent.parent / "pyproject.toml"
    pyproject = tomllib.loads(path.read_text(encoding="utf-8"))
    known: dict[str, list[str]] = {
        **pyproject["project"]["optional-dependencies"],
        "build": pyproject["build-system"]["requires"] + ["cmake>=3.25", "ninja>=1.11"],
        "run": pyproject["project"]["dependencies"],
    }
    unknown = sorted(set(groups) - set(known))
    if unknown:
        sys.exit(f"requirements.py: no group {', '.join(unknown)}; there are {', '.join(known)}")
    return list(dict.fromkeys(line for group in groups for line in known[group]))


if __name__ == "__main__":
    print("\n".join(requirements(sys.argv[1:])))
