"""The functions of the subject `suspension` on a weight on the hook spring."""

from __future__ import annotations

from ropewalk._face import NumberLike, Policy, Quantity, QuantityLike, face

__all__ = [
    "bounce_frequency",
    "damping_ratio",
    "overshoot",
]


@face("suspension.damping_ratio")
def damping_ratio(
    damping: QuantityLike,
    spring_rate: QuantityLike,
    sprung_weight: QuantityLike,
    *,
    outside_validity: Policy = "raise",
    return_status: bool = False,
    threads: int = 1,
) -> float:
    r"""Damping ratio of a damper on a sprung weight; 1 is critical.

    .. math:: \zeta = \frac{c}{2 \sqrt{k W / g}}

    Source: any text on vibration, e.g. S. S. Rao, Mechanical Vibrations, ch. 2.

    Examples
    --------
    >>> import ropewalk as rw
    >>> ratio = rw.suspension.damping_ratio("50 lbf*s/in", "1500 lbf/in", "6000 lbf")
    >>> print(f"{ratio:.3f}")
    0.164
    """
    ...


@face("suspension.bounce_frequency")
def bounce_frequency(
    spring_rate: QuantityLike,
    sprung_weight: QuantityLike,
    *,
    outside_validity: Policy = "raise",
    return_status: bool = False,
    threads: int = 1,
) -> Quantity:
    r"""Frequency of the undamped bounce of a sprung weight.

    .. math:: f = \frac{1}{2\pi} \sqrt{\frac{k g}{W}}

    Source as for `damping_ratio`.

    Examples
    --------
    >>> import ropewalk as rw
    >>> print(f"{rw.suspension.bounce_frequency('1500 lbf/in', '6000 lbf').to('Hz'):.2f}")
    1.56 hertz
    """
    ...


@face("suspension.overshoot")
def overshoot(
    damping_ratio: NumberLike,
    *,
    outside_validity: Policy = "raise",
    return_status: bool = False,
    threads: int = 1,
) -> float:
    r"""How far a mass let go off its rest swings beyond it, over how far it was off.

    .. math:: e^{-\pi \zeta / \sqrt{1 - \zeta^2}}, \quad 0 \text{ for } \zeta \ge 1

    Source as for `damping_ratio`.

    Examples
    --------
    >>> import ropewalk as rw
    >>> print(f"{rw.suspension.overshoot(0.3):.3f}")
    0.372
    """
    ...
