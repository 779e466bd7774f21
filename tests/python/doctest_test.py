"""Every example in the documentation of the package is run, one test for each docstring.

Done here rather than with pytest's own collection of doctests, which would import the source tree
beside the installed package; these are the examples of the package under test, however installed.
"""

from __future__ import annotations

import ast
import doctest
import importlib
import pkgutil
from pathlib import Path
from types import ModuleType

import pytest

import ropewalk

FLAGS = doctest.ELLIPSIS | doctest.NORMALIZE_WHITESPACE | doctest.REPORT_NDIFF


def modules() -> list[ModuleType]:
    names = [info.name for info in pkgutil.walk_packages(ropewalk.__path__, "ropewalk.")]
    # __main__ is left out: to import it is to run the command.
    kept = (name for name in names if not name.endswith(".__main__"))
    return [ropewalk, *map(importlib.import_module, kept)]


def python_modules() -> list[ModuleType]:
    return [module for module in modules() if str(module.__file__).endswith(".py")]


def examples() -> list[doctest.DocTest]:
    finder = doctest.DocTestFinder(exclude_empty=True)
    return [test for module in python_modules() for test in finder.find(module) if test.examples]


def docstrings_with_examples(path: Path) -> int:
    tree = ast.parse(path.read_text(encoding="utf-8"))
    kinds = (ast.Module, ast.ClassDef, ast.FunctionDef, ast.AsyncFunctionDef)
    nodes = [node for node in ast.walk(tree) if isinstance(node, kinds)]
    return sum(">>> " in (ast.get_docstring(node) or "") for node in nodes)


@pytest.mark.parametrize("example", examples(), ids=lambda example: example.name)
def test_example(example: doctest.DocTest) -> None:
    report: list[str] = []
    runner = doctest.DocTestRunner(optionflags=FLAGS)
    runner.run(example, out=report.append)
    assert runner.summarize(verbose=False).failed == 0, "".join(report)


@pytest.mark.parametrize("module", python_modules(), ids=lambda module: module.__name__)
def test_no_example_is_missed(module: ModuleType) -> None:
    found = [test for test in doctest.DocTestFinder().find(module) if test.examples]
    assert len(found) >= docstrings_with_examples(Path(str(module.__file__)))
