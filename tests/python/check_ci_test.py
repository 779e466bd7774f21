"""The job that the README documents for a pipeline, run in a repository of its own."""

from __future__ import annotations

import os
import re
import shutil
import subprocess
import sys
import sysconfig
from collections.abc import Callable
from pathlib import Path
from xml.etree import ElementTree

import pytest
from check_rigs import FEW_LINES, write_rig

README = Path(__file__).parents[2] / "README.md"

pytestmark = [
    pytest.mark.skipif(shutil.which("git") is None, reason="needs git"),
    pytest.mark.skipif(os.name == "nt", reason="the README's commands are for a shell"),
]

Shell = Callable[[str], "subprocess.CompletedProcess[str]"]


def documented() -> list[str]:
    """The commands of the README, one a line."""
    section = README.read_text(encoding="utf-8").partition("\n## In a CI pipeline\n")[2]
    block = re.search(r"```sh\n(.*?)```", section.partition("\n## ")[0], re.DOTALL)
    assert block is not None
    return block[1].splitlines()


@pytest.fixture
def shell(tmp_path: Path) -> Shell:
    """Runs a line in a throw-away repository, apart from any settings of git here."""
    scripts = [str(Path(sys.executable).parent), sysconfig.get_path("scripts")]
    environment = {
        **os.environ,
        "PATH": os.pathsep.join([*scripts, os.environ["PATH"]]),
        "HOME": str(tmp_path),
        "GIT_CONFIG_NOSYSTEM": "1",
        "GIT_CONFIG_GLOBAL": os.devnull,
    }
    for name in ("GIT_DIR", "GIT_WORK_TREE", "GIT_INDEX_FILE"):
        environment.pop(name, None)
    repository = tmp_path / "repository"
    repository.mkdir()

    def run(line: str) -> subprocess.CompletedProcess[str]:
        return subprocess.run(
            line,
            shell=True,
            cwd=repository,
            env=environment,
            capture_output=True,
            text=True,
            check=False,
        )

    return run


def commit(shell: Shell, repository: Path, *changes: tuple[str, str]) -> None:
    write_rig(repository / "rigs" / "rig7.toml", *changes)
    user = "-c user.name=nobody -c user.email=nobody@example.org"
    done = shell(f"git init -q . && git add rigs && git {user} commit -q -m 'rig'")
    assert done.returncode == 0, done.stderr


def by_name(shell: Shell, lines: list[str]) -> dict[str, subprocess.CompletedProcess[str]]:
    """Run lines; the first two words name each."""
    return {" ".join(line.split()[:2]): shell(line) for line in lines}


def test_the_documented_job(shell: Shell, tmp_path: Path) -> None:
    repository = tmp_path / "repository"
    # Two commits that differ in a comment: the job compares with the commit before.
    commit(shell, repository, ("INVENTED for demonstration", "INVENTED"))
    commit(shell, repository)
    done = by_name(shell, documented())
    assert set(done) == {"ropewalk check", "git show", "ropewalk compare", "ropewalk report"}
    before = done["ropewalk check"].stdout
    assert "Traceback" not in "".join(one.stderr for one in done.values())
    assert not re.search("^::error .*line.design_factor", before, re.MULTILINE)
    assert done["ropewalk compare"].returncode == 0
    assert "Nothing changed." in done["ropewalk compare"].stdout
    assert done["ropewalk report"].returncode == 0
    assert (repository / "report" / "report.html").is_file()

    commit(shell, repository, FEW_LINES)
    # The report, which takes longest, has been seen.
    done = by_name(shell, [line for line in documented() if " report " not in line])
    check = done["ropewalk check"]
    assert check.returncode == 1
    errors = [
        line
        for line in check.stdout.splitlines()
        if line.startswith("::error ") and "line.design_factor" in line
    ]
    assert len(errors) == 3
    for line in errors:
        assert line.startswith("::error file=rigs/rig7.toml,line=")
    suites = ElementTree.parse(repository / "check.xml").getroot()
    assert int(suites.get("failures", "0")) >= 3
    compared = done["ropewalk compare"]
    assert compared.returncode == 1
    assert compared.stdout.count("broken now") >= 3
