"""Fields of a rig file: quantities that carry their unit in the file and SI numbers in memory."""

from __future__ import annotations

from datetime import date, datetime, time
from typing import Annotated, Any

from pydantic import BaseModel, BeforeValidator, ConfigDict, Field
from pydantic_core import PydanticCustomError

from ropewalk._border import to_si
from ropewalk._signature import ROLES
from ropewalk.errors import RopewalkError


class Section(BaseModel):
    """One table of a rig file: frozen, and an unknown key is an error."""

    model_config = ConfigDict(extra="forbid", frozen=True, strict=True)


def _reader(role_name: str) -> Any:
    role = ROLES[role_name]

    def read(value: Any) -> Any:
        if isinstance(value, float) and role.has_unit is False:
            return value
        try:
            return float(to_si("", "", value, role))
        except RopewalkError as error:
            # The key is known to the reader of the file, which puts it before this text.
            raise PydanticCustomError(
                "quantity", "{text}", {"text": _without_name(error)}
            ) from None

    return BeforeValidator(read)


def _without_name(error: RopewalkError) -> str:
    return str(error).removeprefix("():").strip()


_POSITIVE = Field(gt=0.0, allow_inf_nan=False)
_NOT_NEGATIVE = Field(ge=0.0, allow_inf_nan=False)

#: Quantities, in memory as SI numbers.
Length = Annotated[float, _reader("length"), _POSITIVE]
LengthOrZero = Annotated[float, _reader("length"), _NOT_NEGATIVE]
Area = Annotated[float, _reader("area"), _POSITIVE]
Force = Annotated[float, _reader("force"), _POSITIVE]
ForceOrZero = Annotated[float, _reader("force"), _NOT_NEGATIVE]
Volume = Annotated[float, _reader("volume"), _POSITIVE]
MassOrZero = Annotated[float, _reader("mass"), _NOT_NEGATIVE]
Time = Annotated[float, _reader("time"), _POSITIVE]
Angle = Annotated[float, _reader("angle"), _NOT_NEGATIVE]
Power = Annotated[float, _reader("power"), _POSITIVE]
Energy = Annotated[float, _reader("energy"), _POSITIVE]
Speed = Annotated[float, _reader("speed"), _POSITIVE]
Acceleration = Annotated[float, _reader("acceleration"), _POSITIVE]
AccelerationOrZero = Annotated[float, _reader("acceleration"), _NOT_NEGATIVE]
Torque = Annotated[float, _reader("torque"), _POSITIVE]
TimeOrZero = Annotated[float, _reader("time"), _NOT_NEGATIVE]
Mass = Annotated[float, _reader("mass"), _POSITIVE]
Height = Annotated[float, _reader("length"), Field(allow_inf_nan=False)]
AngularVelocity = Annotated[float, _reader("angular_velocity"), _POSITIVE]
MomentOfInertia = Annotated[float, _reader("moment_of_inertia"), _NOT_NEGATIVE]
Density = Annotated[float, _reader("density"), _NOT_NEGATIVE]
ForcePerLength = Annotated[float, _reader("force_per_length"), _POSITIVE]
SpecificHeat = Annotated[float, _reader("specific_heat"), _POSITIVE]
HeatLoss = Annotated[float, _reader("heat_loss"), _NOT_NEGATIVE]
Conductivity = Annotated[float, _reader("conductivity"), _POSITIVE]
Damping = Annotated[float, _reader("damping"), _NOT_NEGATIVE]
MassPerLength = Annotated[float, _reader("mass_per_length"), _NOT_NEGATIVE]


def _read_friction(value: Any) -> Any:
    if value in ("roller", "plain"):
        return value
    if isinstance(value, (int, float)) and not isinstance(value, bool) and 1.0 <= value <= 2.0:
        return float(value)
    raise PydanticCustomError(
        "quantity",
        "{text}",
        {"text": f'must be "roller", "plain" or a tension ratio from 1 to 2, got {value!r}'},
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
        {"text": f"must be a date, 2026-03-01 or 2026-03-01T06:00, got {value!r}"},
    )


#: A date, with or without the time of day and the offset from UTC.
Date = Annotated[datetime, BeforeValidator(_read_date)]

#: Bearing of the sheaves, or the tension ratio of one turning sheave.
Friction = Annotated[str | float, BeforeValidator(_read_friction)]

#: A share from 0 to 1, written bare: 0.12 is 12 percent.
Share = Annotated[float, Field(ge=0.0, le=1.0, strict=False)]
#: Any positive plain number.
Positive = Annotated[float, Field(gt=0.0, allow_inf_nan=False, strict=False)]
#: A whole number from 1 up.
Count = Annotated[int, Field(ge=1)]
