"""What a role, a parameter and a signature are: the records the one table is made of."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, field


@dataclass(frozen=True, slots=True)
class Role:
    """What kind of quantity an argument is, told apart more finely than by dimension.

    Torque and energy have the same SI dimensions, and so do angular velocity and frequency; as
    roles they differ, and the border keeps them apart.

    Attributes
    ----------
    name
        Word used in messages, ``"force"``.
    si_unit
        Coherent SI unit in pint's spelling, ``"N"``; empty for plain numbers.
    dimensions
        Exponents of length, mass, time and plane angle.
    unit
        Customary unit for examples in messages.
    phrase
        The role with its article, ``"a force"``.
    temperature
        Exponent of temperature.
    """

    name: str
    si_unit: str
    dimensions: tuple[int, int, int, int]
    unit: str
    phrase: str
    temperature: int = 0

    def __hash__(self) -> int:
        # Asked for at every border; the name tells roles apart well enough.
        return hash(self.name)

    @property
    def exponents(self) -> tuple[int, int, int, int, int]:
        """Exponents of length, mass, time, plane angle and temperature, as in the C++ core."""
        return (*self.dimensions, self.temperature)

    @property
    def has_unit(self) -> bool:
        """False for the roles that are plain numbers."""
        return bool(self.si_unit)


@dataclass(frozen=True, slots=True)
class Parameter:
    """One argument, under the one name it has in every function.

    Attributes
    ----------
    role
        Its kind of quantity.
    unit
        Unit people in the trade quote it in; empty for plain numbers.
    text
        One line that says what it is.
    example
        A usual value in `unit`. The examples of one function go together: they are a valid call.
    """

    role: Role
    unit: str
    text: str
    example: float

    @property
    def example_text(self) -> str:
        """The example with its unit, ``"30000 lbf"``."""
        return f"{self.example:.12g} {self.unit}".rstrip()


@dataclass(frozen=True, slots=True)
class Signature:
    """One row function: its arguments in call order, and its result.

    Attributes
    ----------
    arguments
        Names in call order, each a key of the parameter table.
    result
        Role of the result.
    text
        One line that says what the result is.
    examples
        Values, in the parameter's unit, where the parameter's own example does not suit here.
    """

    arguments: tuple[str, ...]
    result: Role
    text: str
    examples: Mapping[str, float] = field(default_factory=dict)
