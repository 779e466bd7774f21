"""Holding factors: what a brake has, and what rules ask for."""

from __future__ import annotations

from dataclasses import dataclass

from ropewalk import _core
from ropewalk._face import Policy, QuantityLike, face
from ropewalk._names import to_name

__all__ = ["RequiredFactor", "holding_factor", "required_factor", "required_factors"]


@face("brake.holding_factor")
def holding_factor(
    brake_torque: QuantityLike,
    load_torque: QuantityLike,
    *,
    outside_validity: Policy = "raise",
    return_status: bool = False,
    threads: int = 1,
) -> float:
    r"""Static torque of a brake over the torque of its load; below 1 it does not hold.

    .. math:: k = T_b / T_L

    Take the load at rest, without help of the sheaves. `required_factors` has what rules ask for.

    Source: definition.

    Examples
    --------
    >>> import ropewalk as rw
    >>> rw.brake.holding_factor("135 kN*m", "67.5 kN*m")
    2.0
    """
    ...


@dataclass(frozen=True, slots=True)
class RequiredFactor:
    """A holding factor that is asked for, and who asks.

    Attributes
    ----------
    key
        Its name here.
    standard, edition
        Regulation or publication.
    value
        Least static torque of the brake over `base`.
    base
        Torque it is divided by: ``"load torque"``, of the load at rest; ``"hoisting torque"``, of
        hoisting it, friction of the sheaves included; ``"motor torque"``, the rated one of the
        motors at the drum.
    condition
        Which brake, against what load.
    source
        Clause or table.
    standing
        ``"published"`` or ``"from memory"``.
    """

    key: str
    standard: str
    edition: str
    value: float
    base: str
    condition: str
    source: str
    standing: str


def required_factor(key: str) -> RequiredFactor:
    """Holding factor of a rule.

    None of them was written for drawworks. The rules where the rig stands and the maker's manual
    come first.

    Parameters
    ----------
    key : str
        `required_factors` lists them.

    Raises
    ------
    UnknownEntryError
        If there is no such key; the message offers what there is.

    Examples
    --------
    >>> import ropewalk as rw
    >>> rw.brake.required_factor("OSHA 1910.179 control braking").value
    1.25
    """
    name = to_name("brake.required_factor", "key", key)
    return RequiredFactor(**_core.brake.required_factor(name))


def required_factors() -> list[RequiredFactor]:
    """Every holding factor there is.

    Examples
    --------
    >>> import ropewalk as rw
    >>> max(factor.value for factor in rw.brake.required_factors())
    1.5
    """
    return [RequiredFactor(**record) for record in _core.brake.required_factors()]
