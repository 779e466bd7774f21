"""The tables of a rig file on limits, rules of the house, and the pull on a stuck string."""

from __future__ import annotations

from typing import Annotated, Any, Literal

from pydantic import BeforeValidator, Field
from pydantic_core import PydanticCustomError

from ropewalk.rig._fields import Force, ForceOrZero, Section
from ropewalk.rig.problems import value_text


def _read_limit(value: Any) -> Any:
    """A number or text with a unit; what kind of quantity it is, the rule says."""
    if isinstance(value, str):
        return value
    if isinstance(value, (int, float)) and not isinstance(value, bool) and abs(value) < 1e300:
        return float(value)
    text = f'must be a number, or text with a unit, "3 m", got {value_text(value)}'
    raise PydanticCustomError("quantity", "{text}", {"text": text})


def _read_house(value: Any) -> Any:
    return value if value is False else _read_limit(value)


#: A limit in the unit of its rule.
Limit = Annotated[str | float, BeforeValidator(_read_limit)]
#: The same, or false for a rule that is switched off.
HouseLimit = Annotated[str | float | Literal[False], BeforeValidator(_read_house)]


class OwnRuleSection(Section):
    """``[[limits.rule]]``: a rule of the house, an expression over results of the other rules."""

    id: str = Field(
        pattern=r"^[a-z][a-z0-9_]*\.[a-z][a-z0-9_]*$", description='Its name, "house.factor".'
    )
    title: str = Field(min_length=1, max_length=200, description="One line for tables.")
    expression: str = Field(
        min_length=1,
        max_length=500,
        description='Over results of rules, "line.design_factor / 2"; min, max, abs and sqrt too.',
    )
    at_least: Limit | None = Field(default=None, description="The least it may be.")
    at_most: Limit | None = Field(default=None, description="The most it may be.")
    severity: Literal["must", "should", "note"] = Field(description="How bad if broken.")
    source: str = Field(min_length=1, description="Who asks for it.")


class LimitsSection(Section):
    """``[limits]``: the limits asked for."""

    design_factor_standard: str | None = Field(
        default=None, description="Key of the table of minimum design factors to hold."
    )
    hook_load: Force | None = Field(
        default=None, description="Largest hook load asked for, besides that of the plan."
    )
    demand: list[str] = Field(
        default_factory=list,
        description="Tables without which a check counts as not computed, not as none of its "
        'business: "brake", "drawworks.motors".',
    )
    house: dict[str, HouseLimit] = Field(
        default_factory=dict,
        description="Limits of the house by rule, stricter than the published one; false switches "
        "off a rule that only should hold.",
    )
    rule: list[OwnRuleSection] = Field(default_factory=list, description="Rules of the house.")


class StuckSection(Section):
    """``[stuck]``: the pull on a stuck string."""

    overpull: ForceOrZero = Field(
        description="Pull beyond the string weight allowed on a stuck string."
    )
