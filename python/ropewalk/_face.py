"""The decorator that makes a public function of a row formula.

The decorated function is a stub: its signature, first lines, notes and examples are its own, its
body never runs. Conversion and the Parameters, Returns and Raises sections come from the table in
`ropewalk._signature`, the computation from the compiled core.
"""

from __future__ import annotations

import functools
import importlib
import inspect
import re
from collections.abc import Callable
from typing import Any, Literal, TypeAlias, TypeVar, cast

import numpy as np

from ropewalk import _core, _describe
from ropewalk._border import (
    FACTORS,
    NumberLike,
    Quantity,
    QuantityLike,
    convert_all,
    scaled,
    unit_of_result,
)
from ropewalk._signature import PARAMETERS, SIGNATURES, Signature
from ropewalk._units import registry
from ropewalk.errors import InadmissibleError, RopewalkError, RowStatus, UnitError, ValidityError

__all__ = ["NumberLike", "Policy", "Quantity", "QuantityLike", "face"]

#: What to do outside the range a model is published for.
Policy: TypeAlias = Literal["raise", "warn", "ignore"]

Function = TypeVar("Function", bound=Callable[..., Any])

_OPTIONS = {"outside_validity": "raise", "return_status": False, "threads": 1}


def face(name: str) -> Callable[[Function], Function]:
    """Make the public function of row formula `name`, ``"subject.function"``, from a stub."""
    signature = SIGNATURES[name]
    core = _core_function(name)

    def decorate(stub: Function) -> Function:
        _check_stub(name, stub, signature)
        call = _make_call(name, signature, core, stub)
        call.__doc__ = render_doc(inspect.getdoc(stub) or "", signature)
        return cast(Function, call)

    return decorate


def _core_function(name: str) -> Callable[..., Any]:
    subject, _, function = name.rpartition(".")
    return cast(Callable[..., Any], getattr(getattr(_core, subject), function))


def _check_stub(name: str, stub: Callable[..., Any], signature: Signature) -> None:
    """The stub's signature and the table are written by hand and must say the same."""
    parameters = inspect.signature(stub).parameters.values()
    positional = tuple(p.name for p in parameters if p.kind is p.POSITIONAL_OR_KEYWORD)
    options = {p.name: p.default for p in parameters if p.kind is p.KEYWORD_ONLY}
    if positional != signature.arguments or options != _OPTIONS:
        raise TypeError(
            f"{name}() is written with {positional} and {options}, "
            f"its signature has {signature.arguments} and {_OPTIONS}"
        )


def _make_call(
    name: str, signature: Signature, core: Callable[..., Any], stub: Callable[..., Any]
) -> Callable[..., Any]:
    names = signature.arguments
    count = len(names)
    roles = [PARAMETERS[argument].role for argument in names]
    # None stands for a plain number, which is passed on without looking for a unit.
    tables = [FACTORS[role] if role.has_unit else None for role in roles]
    result = signature.result
    has_unit = result.has_unit
    defaults = {p.name: p.default for p in inspect.signature(stub).parameters.values()}

    @functools.wraps(stub)
    def call(
        *args: Any,
        outside_validity: Policy = "raise",
        return_status: bool = False,
        threads: int = 1,
        **named: Any,
    ) -> Any:
        if named or len(args) != count:
            stub(*args, **named)  # raises Python's own TypeError if the arguments do not go
            args += tuple(named.get(n, defaults.get(n)) for n in names[len(args) :])
        owner: Any = None
        values: list[Any] | None = []
        try:
            # The usual case, kept short: quantities whose unit has been seen before.
            for value, table in zip(args, tables):
                if table is None:
                    if type(value) is not float and type(value) is not int:
                        raise KeyError
                    values.append(value)
                    continue
                factor = table[(type(value), *value.unit_items())]
                magnitude = value.magnitude
                if type(magnitude) is not float:
                    magnitude = scaled(magnitude, factor)
                    values.append(magnitude)
                else:
                    values.append(magnitude * factor)
                if owner is None:
                    owner = type(value)
        except Exception:
            values = None  # the careful way below says what was wrong, if anything was
        if values is None:
            values, owner = convert_all(name, dict(zip(names, args)))
        try:
            if outside_validity == "raise" and not return_status and threads == 1:
                si = core(*values)
            else:
                check_options(name, outside_validity, threads)
                si = core(
                    *values,
                    outside_validity=outside_validity,
                    return_status=bool(return_status),
                    threads=threads,
                )
        except (InadmissibleError, ValidityError) as error:
            raise _in_users_units(error, names, args, values) from None
        if has_unit and owner is None:
            owner = registry().Quantity
        if not return_status:
            return owner(si, unit_of_result(owner, result)) if has_unit else si
        si, status = si
        if isinstance(status, int):
            status = RowStatus(status)
        return (owner(si, unit_of_result(owner, result)) if has_unit else si), status

    return call


def check_options(where: str, outside_validity: Any, threads: Any) -> None:
    """Refuse options of a type the core would not name."""
    if not isinstance(outside_validity, str):
        text = f"outside_validity must be 'raise', 'warn' or 'ignore', got {outside_validity!r}"
        raise UnitError(f"{where}(): {text}", where, "outside_validity")
    if isinstance(threads, bool) or not isinstance(threads, (int, np.integer)):
        raise UnitError(
            f"{where}(): threads must be a whole number, got {threads!r}", where, "threads"
        )


_ROW = re.compile(r"\(\): row (\d+) of \d+: ")


def _in_users_units(
    error: RopewalkError, names: tuple[str, ...], args: tuple[Any, ...], values: list[Any]
) -> RopewalkError:
    """The core's error, which speaks SI, with what the user gave in the user's own unit."""
    # A plain number reads the same in the core's message; a broken joint rule concerns them all.
    given = {
        n: a
        for n, a in zip(names, args)
        if error.field in (n, "") and (isinstance(a, str) or hasattr(a, "unit_items"))
    }
    if match := _ROW.search(error.message):
        shape = np.broadcast_shapes(*(np.shape(value) for value in values))
        texts = {n: _describe.row_text(a, int(match[1]), shape) for n, a in given.items()}
    elif not any(np.ndim(value) for value in values):
        texts = {n: _describe.given_text(a) for n, a in given.items()}
    else:
        return error
    if not texts:
        return error
    shown = ", ".join(text if error.field else f"{n} = {text}" for n, text in texts.items())
    return type(error)(f"{error.message}; you gave {shown}", error.where, error.field)


def render_doc(doc: str, signature: Signature) -> str:
    """Docstring of a stub with its Parameters, Returns and Raises sections put in place."""
    sections = _sections(signature)
    header = re.search(r"^(?=[A-Z][A-Za-z ]+\n-{3,}$)", doc, re.MULTILINE)
    place = header.start() if header else len(doc)
    before, after = doc[:place].rstrip(), doc[place:].strip()
    return "\n\n".join(part for part in (before, sections, after) if part) + "\n"


def _sections(signature: Signature) -> str:
    lines = ["Parameters", "----------"]
    for argument in signature.arguments:
        parameter = PARAMETERS[argument]
        example = signature.examples.get(argument, parameter.example)
        value = f"{example:.12g} {parameter.unit}".rstrip()
        usual = f'``"{value}"``' if parameter.unit else f"``{value}``"
        lines += [f"{argument} : {parameter.role.name}", f"    {parameter.text} E.g. {usual}."]
    lines += [
        'outside_validity : {"raise", "warn", "ignore"}, default "raise"',
        "    What to do outside the range the model is published for.",
        "return_status : bool, default False",
        "    Return the value together with its `RowStatus`, one per row for arrays.",
        "threads : int, default 1",
        "    Threads for arrays; any number gives the same answer.",
        "",
        "Returns",
        "-------",
    ]
    unit = f", in {signature.result.si_unit}" if signature.result.has_unit else ""
    lines += [f"{signature.result.name}{unit}", f"    {signature.text}"]
    lines += ["", "Raises", "------"]
    for error in (UnitError, InadmissibleError, ValidityError):
        lines += [error.__name__, f"    {(error.__doc__ or '').strip()}"]
    return "\n".join(lines)


def public_function(name: str) -> Callable[..., Any]:
    """The public function of a signature, ``"sheave.bearing_pressure"``."""
    subject, _, function = name.rpartition(".")
    module = importlib.import_module(f"ropewalk.{subject}")
    return cast(Callable[..., Any], getattr(module, function))
