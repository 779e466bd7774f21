"""Write the JSON Schema and the table of the rig file, or check that they are up to date.

Both are made from the sections that read rig files, so they are never edited by hand.
"""

import json
import sys
from pathlib import Path

from ropewalk import rig
from ropewalk.rig.schema import table

DATA = Path(__file__).parent.parent / "python" / "ropewalk" / "data"


def made() -> dict[Path, str]:
    """Text of each file."""
    schema = json.dumps(rig.schema(), indent=1, ensure_ascii=False, allow_nan=False)
    return {DATA / "rig-file.schema.json": f"{schema}\n", DATA / "rig-file.md": table()}


def main(arguments: list[str]) -> int:
    """Write the files; with ``--check`` only say which are out of date, exit status 1."""
    stale = [
        path
        for path, text in made().items()
        if not path.is_file() or path.read_text(encoding="utf-8") != text
    ]
    for path in stale:
        if "--check" in arguments:
            print(f"{path.name} is out of date: run scripts/make_rig_schema.py", file=sys.stderr)
        else:
            path.write_text(made()[path], encoding="utf-8")
    return 1 if stale and "--check" in arguments else 0


if __name__ == "__main__":
    sys.exit(main(sys.argv[1:]))
