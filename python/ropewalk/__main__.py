"""``python -m ropewalk`` is the command ``ropewalk``."""

from ropewalk.cli import main

main(prog_name="ropewalk")
