"""Row functions of `ropewalk.dynamics` on stiffness and frequency."""

from __future__ import annotations

from ropewalk._face import NumberLike, Policy, Quantity, QuantityLike, face

__all__ = [
    "line_stiffness",
    "locked_stiffness",
    "natural_frequency",
    "series_stiffness",
    "static_stretch",
    "string_frequency",
    "string_stiffness",
]


@face("dynamics.line_stiffness")
def line_stiffness(
    rope_modulus: QuantityLike,
    metallic_area: QuantityLike,
    lines: NumberLike,
    line_height: QuantityLike,
    fast_line_length: QuantityLike,
    dead_line_length: QuantityLike,
    *,
    outside_validity: Policy = "raise",
    return_status: bool = False,
    threads: int = 1,
) -> Quantity:
    r"""Stiffness of the strung line at the block, sheaves free to turn.

    .. math:: k = \frac{N^2 E A}{N h + L_f + L_d}

    All of the rope has one tension and gives way: the lines between the blocks, the fast line, the
    dead line (0 if the dead end is on the block). Drum, crown and anchor do not. A lower bound:
    where friction holds the sheaves the line is stiffer, up to `locked_stiffness`. Source: derived.

    Examples
    --------
    >>> import ropewalk as rw
    >>> k = rw.dynamics.line_stiffness("100 GPa", "678.7 mm**2", 12, "30 m", "45 m", "45 m")
    >>> print(f"{k.to('MN/m'):.2f}")
    21.72 meganewton / meter
    """
    ...


@face("dynamics.locked_stiffness")
def locked_stiffness(
    rope_modulus: QuantityLike,
    metallic_area: QuantityLike,
    lines: NumberLike,
    line_height: QuantityLike,
    *,
    outside_validity: Policy = "raise",
    return_status: bool = False,
    threads: int = 1,
) -> Quantity:
    r"""Stiffness of the lines between the blocks alone, sheaves locked.

    .. math:: k = N E A / h

    For swings too small to overcome the friction of the sheaves: the upper bound. Source: springs
    side by side.

    Examples
    --------
    >>> import ropewalk as rw
    >>> k = rw.dynamics.locked_stiffness("100 GPa", "678.7 mm**2", 12, "30 m")
    >>> print(f"{k.to('MN/m'):.2f}")
    27.15 meganewton / meter
    """
    ...


@face("dynamics.string_stiffness")
def string_stiffness(
    string_modulus: QuantityLike,
    string_area: QuantityLike,
    string_length: QuantityLike,
    *,
    outside_validity: Policy = "raise",
    return_status: bool = False,
    threads: int = 1,
) -> Quantity:
    r"""Stiffness of a rope or string pulled at its end.

    .. math:: k = E A / L

    Source: Hooke's law.

    Examples
    --------
    >>> import ropewalk as rw
    >>> k = rw.dynamics.string_stiffness("206.8 GPa", "5.275 in**2", "3000 m")
    >>> print(f"{k.to('kN/m'):.1f}")
    234.6 kilonewton / meter
    """
    ...


@face("dynamics.series_stiffness")
def series_stiffness(
    stiffness: QuantityLike,
    other_stiffness: QuantityLike,
    *,
    outside_validity: Policy = "raise",
    return_status: bool = False,
    threads: int = 1,
) -> Quantity:
    r"""Stiffness of two springs one after the other: line and mast, line and string.

    .. math:: 1/k = 1/k_1 + 1/k_2

    Examples
    --------
    >>> import ropewalk as rw
    >>> print(f"{rw.dynamics.series_stiffness('20 MN/m', '60 MN/m').to('MN/m'):.1f}")
    15.0 meganewton / meter
    """
    ...


@face("dynamics.static_stretch")
def static_stretch(
    hook_load: QuantityLike,
    stiffness: QuantityLike,
    *,
    outside_validity: Policy = "raise",
    return_status: bool = False,
    threads: int = 1,
) -> Quantity:
    r"""Stretch of the line under the load at rest.

    .. math:: \delta = W / k

    Examples
    --------
    >>> import ropewalk as rw
    >>> print(f"{rw.dynamics.static_stretch('2 MN', '20 MN/m').to('mm'):.0f}")
    100 millimeter
    """
    ...


@face("dynamics.natural_frequency")
def natural_frequency(
    hook_load: QuantityLike,
    stiffness: QuantityLike,
    *,
    outside_validity: Policy = "raise",
    return_status: bool = False,
    threads: int = 1,
) -> Quantity:
    r"""Natural frequency of a load that hangs on the line.

    .. math:: f = \frac{1}{2\pi} \sqrt{\frac{k g}{W}} = \frac{1}{2\pi} \sqrt{\frac{g}{\delta}}

    The load is one rigid mass W/g, the line a spring without mass. A long string is no rigid mass,
    see `string_frequency`.

    Source: e.g. Harris' Shock and Vibration Handbook, 5th ed. (2002), ch. 2.

    Examples
    --------
    >>> import ropewalk as rw
    >>> print(f"{rw.dynamics.natural_frequency('250 tonne_force', '21.72 MN/m').to('Hz'):.3f}")
    1.483 hertz
    """
    ...


@face("dynamics.string_frequency")
def string_frequency(
    stiffness: QuantityLike,
    block_weight: QuantityLike,
    string_area: QuantityLike,
    string_length: QuantityLike,
    string_modulus: QuantityLike,
    string_density: QuantityLike,
    mode: NumberLike,
    *,
    outside_validity: Policy = "raise",
    return_status: bool = False,
    threads: int = 1,
) -> Quantity:
    r"""Natural frequency of block and free-hanging string on the line, by mode.

    .. math:: k - M \omega^2 = \frac{E A}{c}\,\omega \tan\frac{\omega L}{c}, \quad c = \sqrt{E/\rho}

    One pipe of constant section hangs freely, without drag; M is the mass of the block. A short
    string is one mass with the block, `natural_frequency`.

    Source: rod with a mass and a spring at one end, e.g. S. Timoshenko, Vibration Problems in
    Engineering, longitudinal vibration of bars; put together here.

    Examples
    --------
    >>> import ropewalk as rw
    >>> f = rw.dynamics.string_frequency(
    ...     "20 MN/m", "46000 lbf", "5.275 in**2", "10000 ft", "30e6 psi", "7850 kg/m**3", 1
    ... )
    >>> print(f"{f.to('Hz'):.3f}")
    0.416 hertz
    """
    ...
