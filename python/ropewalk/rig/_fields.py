"""Fields of a rig file: quantities that carry their unit in the file and SI numbers in memory."""

from __future__ import annotations

import re
from collections.abc import Mapping
from dataclasses import dataclass, field
from datetime import date, datetime, time
from typing import Annotated, Any, Literal

from pydantic import BaseModel, BeforeValidator, ConfigDict, Field, ValidationInfo
from pydantic_core import PydanticCustomError

from ropewalk._border import to_si
from ropewalk._signature import ROLES
from ropewalk._units import LONGEST_TEXT, registry
from ropewalk.errors import RopewalkError
from ropewalk.rig.problems import value_text


class Section(BaseModel):
    """One table of a rig file: frozen, and an unknown key is an error."""

    model_config = ConfigDict(extra="forbid", frozen=True, strict=True)


_TEXT = re.compile(r"([+-]?(?:[0-9]+\.?[0-9]*|\.[0-9]+)(?:[eE][+-]?[0-9]+)?) *([^\W\d].{0,40})")
#: (unit as written, role, class of the registry) → factor to SI.
_FACTORS: dict[tuple[str, str, type[Any]], float] = {}
_MOST_FACTORS = 4096
#: A unit takes a while to look up; a file of nothing else must not take longer than people wait.
_MOST_LOOKED_UP = 2000


class NoUnits:
    """A bare number from a file that declares no units, included by one that does."""

    def __init__(self, number: float) -> None:
        self.number = number

    def __repr__(self) -> str:
        return repr(self.number)


class TooManyError(RopewalkError):
    """A file has more to look up than any rig file has."""


@dataclass(slots=True)
class Context:
    """What the reader of one file knows, handed to its fields.

    Attributes
    ----------
    units
        Role → unit in which a bare number is meant; None if the file declares none.
    looked_up
        Quantities so far whose unit had to be looked up, or which were refused.
    """

    units: Mapping[str, str] | None = None
    looked_up: int = 0
    #: Class of quantities, which stands for the registry while one file is read.
    owner: Any = field(default_factory=lambda: registry().Quantity)

    def quantity(self, value: Any, role_name: str) -> float:
        """SI number of a value of the file.

        Raises
        ------
        RopewalkError
            If it is no quantity of that role.
        """
        if isinstance(value, str) and len(value) <= LONGEST_TEXT:
            match = _TEXT.fullmatch(value)
            if match is not None:
                number, unit = match.groups()
                return float(number) * self._factor(value, unit, role_name)
        if type(value) in (int, float) and self.units is not None and role_name in self.units:
            unit = self.units[role_name]
            return float(value) * self._factor(f"1 {unit}", unit, role_name)
        self._count()
        plain = value.number if isinstance(value, NoUnits) else value
        return float(to_si("", "", plain, ROLES[role_name]))

    def _factor(self, value: str, unit: str, role_name: str) -> float:
        key = (unit, role_name, self.owner)
        factor = _FACTORS.get(key)
        if factor is None:
            self._count()
            to_si("", "", value, ROLES[role_name])  # refuses what is wrong in the words of the file
            factor = float(to_si("", "", f"1 {unit}", ROLES[role_name]))
            if len(_FACTORS) >= _MOST_FACTORS:
                _FACTORS.clear()
            _FACTORS[key] = factor
        return factor

    def _count(self) -> None:
        self.looked_up += 1
        if self.looked_up > _MOST_LOOKED_UP:
            raise TooManyError(f"not read, after {_MOST_LOOKED_UP} others with units to look up")


def _reader(role_name: str) -> Any:
    def read(value: Any, info: ValidationInfo) -> Any:
        context = info.context if isinstance(info.context, Context) else Context()
        try:
            return context.quantity(value, role_name)
        except RopewalkError as error:
            # The key is known to the reader of the file, which puts it before this text.
            raise PydanticCustomError(
                "quantity", "{text}", {"text": _without_name(error)}
            ) from None

    return BeforeValidator(read)


@dataclass(frozen=True, slots=True)
class RoleOf:
    """Marks a field as a quantity; what the list of parameters knows its role by."""

    name: str


def _without_name(error: RopewalkError) -> str:
    return str(error).removeprefix("():").strip()


_POSITIVE = Field(gt=0.0, allow_inf_nan=False)
_NOT_NEGATIVE = Field(ge=0.0, allow_inf_nan=False)

#: Quantities, in memory as SI numbers.
Length = Annotated[float, _reader("length"), RoleOf("length"), _POSITIVE]
LengthOrZero = Annotated[float, _reader("length"), RoleOf("length"), _NOT_NEGATIVE]
Area = Annotated[float, _reader("area"), RoleOf("area"), _POSITIVE]
Force = Annotated[float, _reader("force"), RoleOf("force"), _POSITIVE]
ForceEitherWay = Annotated[float, _reader("force"), RoleOf("force"), Field(allow_inf_nan=False)]
ForceOrZero = Annotated[float, _reader("force"), RoleOf("force"), _NOT_NEGATIVE]
Volume = Annotated[float, _reader("volume"), RoleOf("volume"), _POSITIVE]
MassOrZero = Annotated[float, _reader("mass"), RoleOf("mass"), _NOT_NEGATIVE]
Time = Annotated[float, _reader("time"), RoleOf("time"), _POSITIVE]
Angle = Annotated[float, _reader("angle"), RoleOf("angle"), _NOT_NEGATIVE]
Power = Annotated[float, _reader("power"), RoleOf("power"), _POSITIVE]
Energy = Annotated[float, _reader("energy"), RoleOf("energy"), _POSITIVE]
Speed = Annotated[float, _reader("speed"), RoleOf("speed"), _POSITIVE]
Acceleration = Annotated[float, _reader("acceleration"), RoleOf("acceleration"), _POSITIVE]
AccelerationOrZero = Annotated[
    float, _reader("acceleration"), RoleOf("acceleration"), _NOT_NEGATIVE
]
Torque = Annotated[float, _reader("torque"), RoleOf("torque"), _POSITIVE]
TimeOrZero = Annotated[float, _reader("time"), RoleOf("time"), _NOT_NEGATIVE]
Mass = Annotated[float, _reader("mass"), RoleOf("mass"), _POSITIVE]
Height = Annotated[float, _reader("length"), RoleOf("length"), Field(allow_inf_nan=False)]
AngularVelocity = Annotated[
    float, _reader("angular_velocity"), RoleOf("angular_velocity"), _POSITIVE
]
MomentOfInertia = Annotated[
    float, _reader("moment_of_inertia"), RoleOf("moment_of_inertia"), _NOT_NEGATIVE
]
Density = Annotated[float, _reader("density"), RoleOf("density"), _NOT_NEGATIVE]
ForcePerLength = Annotated[
    float, _reader("force_per_length"), RoleOf("force_per_length"), _POSITIVE
]
SpecificHeat = Annotated[float, _reader("specific_heat"), RoleOf("specific_heat"), _POSITIVE]
HeatLoss = Annotated[float, _reader("heat_loss"), RoleOf("heat_loss"), _NOT_NEGATIVE]
Conductivity = Annotated[float, _reader("conductivity"), RoleOf("conductivity"), _POSITIVE]
Damping = Annotated[float, _reader("damping"), RoleOf("damping"), _NOT_NEGATIVE]
MassPerLength = Annotated[
    float, _reader("mass_per_length"), RoleOf("mass_per_length"), _NOT_NEGATIVE
]


def _read_friction(value: Any) -> Any:
    if value in ("roller", "plain"):
        return value
    if isinstance(value, (int, float)) and not isinstance(value, bool) and 1.0 <= value <= 2.0:
        return float(value)
    raise PydanticCustomError(
        "quantity",
        "{text}",
        {"text": f'must be "roller", "plain" or a tension ratio, 1 to 2, got {value_text(value)}'},
    )


def _read_date(value: Any) -> Any:
    # A datetime is a date too; a date without a time is the beginning of its day.
    if isinstance(value, date) and not isinstance(value, datetime):
        return datetime.combine(value, time())
    if isinstance(value, datetime):
        return value
    raise PydanticCustomError(
        "quantity",
        "{text}",
        {"text": f"must be a date, 2026-03-01 or 2026-03-01T06:00, got {value_text(value)}"},
    )


#: A date, with or without the time of day and the offset from UTC.
Date = Annotated[datetime, BeforeValidator(_read_date)]

#: Bearing of the sheaves, or the tension ratio of one turning sheave.
Friction = Annotated[str | float, BeforeValidator(_read_friction)]


def _read_number(value: Any) -> Any:
    if type(value) in (int, float):
        return float(value)
    text = f"must be a plain number, got {value_text(value)}"
    raise PydanticCustomError("quantity", "{text}", {"text": text})


#: A share from 0 to 1, written bare: 0.12 is 12 percent.
Share = Annotated[float, BeforeValidator(_read_number), Field(ge=0.0, le=1.0)]
#: Any positive plain number.
Positive = Annotated[float, BeforeValidator(_read_number), _POSITIVE]
#: A whole number from 1 up.
Count = Annotated[int, Field(ge=1)]


class FileSection(Section):
    """What every file has at its top: layout, other files, units."""

    ropewalk: Literal[2] = Field(
        description="Version of the file's layout; files of version 1 are read too."
    )
    include: str | list[str] | None = Field(
        default=None,
        description="Files below the folder of this one that are laid under it; of several the "
        "last one wins, and this one over all.",
    )
    units: str | dict[str, str] | None = Field(
        default=None,
        description='Units of bare numbers in this file: "SI", or a table by kind of quantity, '
        'length = "ft"; without it every quantity has its unit.',
    )
