"""The decorator that makes a public function of a row formula.

The decorated function is a stub: its signature, first lines, notes and examples are its own, its
body never runs. Conversion and the Parameters, Returns and Raises sections come from the table in
`ropewalk._signature`, the computation from the compiled core.
"""

from __future__ import annotations

import functools
import inspect
import re
from collections.abc import Callable
from typing import Any, Literal, ParamSpec, Protocol, TypeAlias, cast, overload

import numpy as np

from ropewalk import _core, _describe
from ropewalk._border import (
    FACTORS,
    NumberLike,
    Quantity,
    QuantityLike,
    convert_all,
    make_quantity,
)
from ropewalk._numbers import scaled
from ropewalk._signature import PARAMETERS, SIGNATURES, Signature
from ropewalk.errors import InadmissibleError, RopewalkError, RowStatus, UnitError, ValidityError

__all__ = ["NumberLike", "Policy", "Quantity", "QuantityLike", "face"]

#: What to do outside the range a model is published for.
Policy: TypeAlias = Literal["raise", "warn", "ignore"]

P = ParamSpec("P")


class _Decorator(Protocol):
    """For type checkers: plain results are written ``float`` and may be arrays, hence Any."""

    @overload
    def __call__(self, stub: Callable[P, float], /) -> Callable[P, Any]: ...
    @overload
    def __call__(self, stub: Callable[P, Quantity], /) -> Callable[P, Quantity]: ...
    def __call__(self, stub: Callable[P, Any], /) -> Callable[P, Any]: ...


_OPTIONS = {"outside_validity": "raise", "return_status": False, "threads": 1}


def face(name: str) -> _Decorator:
    """Make the public function of row formula `name`, ``"subject.function"``, from a stub."""
    signature = SIGNATURES[name]
    core = _core_function(name)

    def decorate(stub: Callable[..., Any], /) -> Callable[..., Any]:
        _check_stub(name, stub, signature)
        call = _make_call(name, signature, core, stub)
        call.__doc__ = render_doc(inspect.getdoc(stub) or "", signature)
        return call

    return cast(_Decorator, decorate)


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
        values, owner = _quick(args, tables) or convert_all(
            name, dict(zip(names, args, strict=True))
        )
        options: dict[str, Any] = {}
        if outside_validity != "raise" or return_status or threads != 1:
            check_options(name, outside_validity, threads)
            options = {
                "outside_validity": outside_validity,
                "return_status": bool(return_status),
                "threads": threads,
            }
        try:
            si = core(*values, **options)
        except (InadmissibleError, ValidityError) as error:
            raise _in_users_units(error, names, args, values) from None
        if not return_status:
            return make_quantity(si, result, owner) if has_unit else si
        si, status = si
        if isinstance(status, int):
            status = RowStatus(status)
        return (make_quantity(si, result, owner) if has_unit else si), status

    return call


def _quick(
    args: tuple[Any, ...], tables: list[dict[tuple[Any, ...], float] | None]
) -> tuple[list[Any], type[Any] | None] | None:
    """What `convert_all` does, for quantities whose units have been seen before.

    None if some argument is anything else; the careful way then converts it or says what is wrong.
    """
    values: list[Any] = []
    owner: type[Any] | None = None
    try:
        for value, table in zip(args, tables, strict=True):
            kind = type(value)
            if table is None:
                if kind is not float and kind is not int:
                    return None
                values.append(value)
                continue
            factor = table[(kind, *value.unit_items())]
            magnitude = value.magnitude
            is_float = type(magnitude) is float
            values.append(magnitude * factor if is_float else scaled(magnitude, factor))
            if owner is None:
                owner = kind
    except Exception:
        return None
    return values, owner


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
        for n, a in zip(names, args, strict=True)
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
