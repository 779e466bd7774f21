"""Rules that a rig file adds: an expression over named results, evaluated without ``eval``."""

from __future__ import annotations

import ast
from collections.abc import Mapping
from typing import Any

from ropewalk._border import to_quantity, to_si
from ropewalk._signature import ROLES
from ropewalk.check.rule import Measured, Rule, measures_nothing
from ropewalk.check.verdict import Severity, Status, Verdict
from ropewalk.errors import RopewalkError
from ropewalk.rig.limits_parts import OwnRule

__all__ = ["evaluate", "role_of"]


def evaluate(own: OwnRule, results: Mapping[str, Mapping[str, Any]]) -> Verdict:
    """Evaluate an own rule; whatever goes wrong makes it not computed, with the reason."""
    import math

    from ropewalk._units import Q
    from ropewalk.check.run import verdict_of

    def rule_of(role: str) -> Rule:
        return Rule(
            id=own.id,
            title=own.title,
            compares=f"{own.expression} {own.sense} {own.limit}",
            sense=own.sense,
            role=role,
            severity=Severity(own.severity),
            source=own.source,
            standing="house limit",
            how=own.expression,
            measure=measures_nothing,
        )

    try:
        limit = Q(own.limit) if isinstance(own.limit, str) else float(own.limit)
        role = role_of(limit)
        names = {
            subject: {name: to_quantity(*value) for name, value in group.items()}
            for subject, group in results.items()
        }
        value = _value(own.expression, names)
        if isinstance(value, str):
            raise TypeError("it gives text, no number")
        found = float(to_si("limits.rule", own.id, value, role))
        bound = float(to_si("limits.rule", own.id, limit, role))
    except Exception as error:  # the expression is a stranger's
        kind = "" if isinstance(error, RopewalkError) else f"{type(error).__name__}: "
        reason = f"{own.expression!r}: {kind}{error}"
        return Verdict(rule_of("number"), Status.NOT_COMPUTED, source=own.source, reason=reason)
    if not math.isfinite(found):
        reason = f"{own.expression!r} gives no number"
        return Verdict(rule_of(role), Status.NOT_COMPUTED, source=own.source, reason=reason)
    return verdict_of(rule_of(role), Measured(found, bound, inputs={"expression": own.expression}))


def _value(expression: str, names: Mapping[str, Mapping[str, Any]]) -> Any:
    """Value of an expression over numbers and quantities, and nothing else.

    Every literal is a number in floating point: text that is repeated or padded, and whole numbers
    that grow without end, take all the memory there is.
    """
    from simpleeval import SimpleEval

    def literal(node: ast.Constant) -> float:
        if isinstance(node.value, (int, float)) and not isinstance(node.value, bool):
            return float(node.value)
        raise RopewalkError(f"{node.value!r} is no number", "limits.rule", "expression")

    def result(node: ast.Attribute) -> Any:
        group = names.get(node.value.id, {}) if isinstance(node.value, ast.Name) else {}
        if node.attr not in group:
            text = f"no rule {ast.unparse(node)} has a value here"
            raise RopewalkError(text, "limits.rule", "expression")
        return group[node.attr]

    functions = {"min": min, "max": max, "abs": abs, "sqrt": lambda x: x**0.5}
    evaluator = SimpleEval(functions=functions)
    kinds = (ast.Expr, ast.Name, ast.UnaryOp, ast.BinOp, ast.BoolOp, ast.Compare, ast.IfExp)
    evaluator.nodes = {kind: evaluator.nodes[kind] for kind in (*kinds, ast.Call)}
    evaluator.nodes |= {ast.Constant: literal, ast.Attribute: result}
    return evaluator.eval(expression)


def role_of(limit: Any) -> str:
    """Name of the role that a limit has by its dimension; torque goes before energy."""
    if not hasattr(limit, "unit_items") or limit.dimensionless:
        return "number"
    for name, role in ROLES.items():
        if role.has_unit and limit.is_compatible_with(role.si_unit):
            return name
    raise RopewalkError(f"no kind of quantity known for {limit}", "limits.rule", "limit")
