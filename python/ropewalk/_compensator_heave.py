"""Sea and heave: the classes `SeaState` and `Heave` of `ropewalk.compensator`."""

from __future__ import annotations

import math
import warnings
from dataclasses import dataclass

import numpy as np
import numpy.typing as npt

from ropewalk import _core
from ropewalk._border import (
    NumberLike,
    Quantity,
    QuantityLike,
    arguments,
    to_count,
    to_one,
    to_quantity,
)
from ropewalk._compensator_response import HeaveOperator
from ropewalk._face import Policy, check_options
from ropewalk.errors import InadmissibleError, ValidityError, ValidityWarning

__all__ = ["Heave", "SeaState", "heave"]

#: Share of the variance of heave that may come from waves the response was not given for.
_LARGEST_SHARE_OUTSIDE = 0.01
_LARGEST_PEAK_FACTOR = 7.0


@dataclass(frozen=True, init=False, slots=True)
class SeaState:
    r"""A sea by significant height and peak period: JONSWAP, or Pierson–Moskowitz for γ = 1.

    Parameters
    ----------
    significant_height
        Significant wave height.
    peak_period
        Period at the peak of the spectrum.
    peak_factor
        γ; by the steepness of the sea, see `peak_factor`, if left out.

    Attributes
    ----------
    significant_height_si, peak_period_si
        In m and s.
    peak_factor
        γ.

    Examples
    --------
    >>> import ropewalk as rw
    >>> sea = rw.SeaState("4 m", "9 s")
    >>> print(f"{sea.peak_factor:.2f}, {sea.zero_crossing_period.magnitude:.2f} s")
    1.78, 6.65 s
    """

    significant_height_si: float
    peak_period_si: float
    peak_factor: float

    def __init__(
        self,
        significant_height: QuantityLike,
        peak_period: QuantityLike,
        peak_factor: NumberLike | None = None,
    ) -> None:
        where = "compensator.SeaState"
        height = to_one(where, "significant_height", significant_height, "length")
        period = to_one(where, "peak_period", peak_period, "time")
        by_steepness = _core.compensator.peak_factor(height, period)
        factor = (
            by_steepness
            if peak_factor is None
            else to_one(where, "peak_factor", peak_factor, "number")
        )
        _core.compensator.jonswap_normalizer(factor, outside_validity="ignore")
        object.__setattr__(self, "significant_height_si", height)
        object.__setattr__(self, "peak_period_si", period)
        object.__setattr__(self, "peak_factor", float(factor))

    @property
    def significant_height(self) -> Quantity:
        """Significant wave height."""
        return to_quantity(self.significant_height_si, "length")

    @property
    def peak_period(self) -> Quantity:
        """Period at the peak of the spectrum."""
        return to_quantity(self.peak_period_si, "time")

    @property
    def zero_crossing_period(self) -> Quantity:
        """Zero-crossing period of the sea by the fit of DNV-RP-C205, 1 ≤ γ ≤ 7."""
        ratio = _core.compensator.zero_crossing_ratio(self.peak_factor)
        return to_quantity(ratio * self.peak_period_si, "time")

    @property
    def jonswap_fits(self) -> bool:
        """Whether the spectrum is a good model of this sea by DNV-RP-C205.

        JONSWAP for 3.6 < T_p/√H_s < 5 (s, m); from 5 on with γ = 1, where it is Pierson–Moskowitz,
        that of a fully developed sea.
        """
        return jonswap_holds(self.significant_height_si, self.peak_period_si, self.peak_factor)

    def spectrum(
        self, wave_frequency: QuantityLike, *, outside_validity: Policy = "raise"
    ) -> Quantity:
        """Spectral density over angular frequency at one frequency or many, as `jonswap`."""
        check_options("compensator.SeaState.spectrum", outside_validity, 1)
        (omega,) = arguments("compensator.SeaState.spectrum", wave_frequency=wave_frequency)
        density = _core.compensator.jonswap(
            self.significant_height_si,
            self.peak_period_si,
            self.peak_factor,
            omega,
            outside_validity=outside_validity,
        )
        return to_quantity(density, "spectral_density", like=wave_frequency)


@dataclass(frozen=True, slots=True)
class Heave:
    """A random heave by the moments of its spectrum; narrow-banded and Gaussian.

    Attributes
    ----------
    m0_si, m1_si, m2_si
        Moments of the spectrum over angular frequency: m², m² rad/s, m² rad²/s².
    outside
        Share of the variance from wave periods the response was not given for.
    """

    m0_si: float
    m1_si: float
    m2_si: float
    outside: float

    @property
    def deviation_si(self) -> float:
        """Standard deviation, m."""
        return math.sqrt(self.m0_si)

    @property
    def deviation(self) -> Quantity:
        """Standard deviation, √m₀."""
        return to_quantity(self.deviation_si, "length")

    @property
    def significant_height(self) -> Quantity:
        """Significant height from crest to trough, 4 √m₀."""
        return to_quantity(4.0 * self.deviation_si, "length")

    @property
    def zero_crossing_period(self) -> Quantity:
        """Zero-crossing period, 2 π √(m₀/m₂)."""
        return to_quantity(2.0 * math.pi * math.sqrt(self.m0_si / self.m2_si), "time")

    @property
    def mean_period(self) -> Quantity:
        """Mean period, 2 π m₀/m₁."""
        return to_quantity(2.0 * math.pi * self.m0_si / self.m1_si, "time")

    def cycles(self, duration: QuantityLike) -> float:
        """Cycles in a duration, see `heave_cycles`."""
        (time,) = arguments("compensator.Heave.cycles", duration=duration)
        return float(_core.compensator.heave_cycles(time, self.zero_crossing_period.magnitude))

    def exceedance(self, half_stroke: QuantityLike, duration: QuantityLike) -> float:
        """Probability that a half stroke is exceeded in a duration, see `stroke_exceedance`."""
        (half,) = arguments("compensator.Heave.exceedance", half_stroke=half_stroke)
        cycles = self.cycles(duration)
        return float(_core.compensator.stroke_exceedance(self.deviation_si, half, cycles))

    def amplitude_exceeded(self, duration: QuantityLike, exceedance: NumberLike) -> Quantity:
        """Amplitude that is exceeded in a duration with a probability, 0.01 for one in a hundred.

        The half stroke that `exceedance` gives this probability for.

        Examples
        --------
        >>> import ropewalk as rw
        >>> rig = rw.load_rig(rw.rig.example("osprey-sound"))
        >>> heave = rig.sea.heave()
        >>> amplitude = heave.amplitude_exceeded("3 hour", 0.01)
        >>> print(f"{amplitude.m_as('m'):.2f} m, {heave.exceedance(amplitude, '3 hour'):.3f}")
        1.34 m, 0.010
        """
        (share,) = arguments("compensator.Heave.amplitude_exceeded", exceedance=exceedance)
        cycles = self.cycles(duration)
        # The deviation allowed is proportional to the half stroke.
        allowed = _core.compensator.allowed_heave_deviation(1.0, share, cycles)
        return to_quantity(self.deviation_si / allowed, "length")

    def most_probable_maximum(self, duration: QuantityLike) -> Quantity:
        """Amplitude that the largest of 10 cycles or more most probably has in a duration."""
        largest = _core.compensator.most_probable_maximum(self.deviation_si, self.cycles(duration))
        return to_quantity(largest, "length")

    def classes(self, count: int) -> npt.NDArray[np.float64]:
        r"""Mean heights from crest to trough, m, of classes that have equally many cycles.

        Class by class the mean of a Rayleigh distribution between its quantiles, rising: all
        together they have its mean, :math:`\sqrt{2 \pi m_0}`.
        """
        where = "compensator.Heave.classes"
        count = to_count(where, "count", count)
        if count < 1:
            text = f"count must be 1 or more (definition), got {count}"
            raise InadmissibleError(f"{where}(): {text}", where, "count")
        shares = np.arange(count, 0, -1) / count  # share of all cycles above each lower edge
        above = 2.0 * _core.compensator.mean_of_highest(self.deviation_si, shares) * shares
        heights: npt.NDArray[np.float64] = -np.diff(np.append(above, 0.0)) * count
        return heights


def heave(sea: SeaState, response: HeaveOperator, *, outside_validity: Policy = "raise") -> Heave:
    r"""Heave of a vessel in a sea.

    .. math:: m_n = \int_0^\infty \omega^n R(\omega)^2 S(\omega)\,d\omega

    by Gauss' quadrature over wave period, without cutting off the tail. Phases, other motions and
    swell from elsewhere are left out.

    Parameters
    ----------
    sea : SeaState
        The sea.
    response : HeaveOperator
        The vessel.
    outside_validity : {"raise", "warn", "ignore"}, default "raise"
        What to do if more than 1 percent of the variance comes from wave periods the response was
        not given for (our choice), the peak factor is above 7, the sea is one the spectrum is no
        good model of (`SeaState.jonswap_fits`) or steeper than seas get (DNV-RP-C205, see
        `steepest_height`).

    Raises
    ------
    InadmissibleError
        If the vessel does not heave at all.
    ValidityError
        See `outside_validity`.

    Examples
    --------
    >>> import ropewalk as rw
    >>> drillship = rw.compensator.HeaveOperator.box_hull("200 m", "36 m", "10 m")
    >>> motion = rw.compensator.heave(rw.SeaState("5 m", "12 s"), drillship)
    >>> print(f"{motion.significant_height.to('m').magnitude:.2f} m")
    1.17 m
    """
    where = "compensator.heave"
    check_options(where, outside_validity, 1)
    motion = motion_in(sea, response)
    if not motion.m0_si > 0.0:
        text = "response leaves no heave at all in this sea"
        raise InadmissibleError(f"{where}(): {text}", where, "response")
    report(where, doubts(sea, motion), outside_validity)
    return motion


def motion_in(sea: SeaState, response: HeaveOperator) -> Heave:
    """Heave as it comes, none at all included."""
    return Heave(
        *_core.compensator.heave_moments(
            sea.significant_height_si, sea.peak_period_si, sea.peak_factor, response._core_operator
        )
    )


def jonswap_holds(significant_height: float, peak_period: float, peak_factor: float) -> bool:
    """Whether the spectrum is a good model of a sea in m and s, see `SeaState.jonswap_fits`."""
    ratio = peak_period / math.sqrt(significant_height)
    return 3.6 < ratio < 5.0 or (ratio >= 5.0 and peak_factor == 1.0)


def doubts(sea: SeaState, motion: Heave, *, steep: bool = False) -> list[tuple[str, str]]:
    """Argument and text for everything outside the range of its source.

    With `steep` seas may be steeper than JONSWAP is a good model of.
    """
    found = []
    if motion.outside > _LARGEST_SHARE_OUTSIDE:
        text = (
            f"{motion.outside:.1%} of the variance of heave come from wave periods outside the "
            f"table of response, more than {_LARGEST_SHARE_OUTSIDE:.0%} (ropewalk's choice)"
        )
        found.append(("response", text))
    if sea.peak_factor > _LARGEST_PEAK_FACTOR:
        text = (
            f"peak_factor = {sea.peak_factor:g} is outside [1, 7] (DNV-RP-C205, range of the peak "
            "factor in measured seas)"
        )
        found.append(("peak_factor", text))
    ratio = sea.peak_period_si / math.sqrt(sea.significant_height_si)
    if not (sea.jonswap_fits or (steep and ratio <= 3.6)):
        text = (
            f"significant_height = {sea.significant_height_si:g} m with peak_period = "
            f"{sea.peak_period_si:g} s and peak_factor = {sea.peak_factor:g}: T_p/sqrt(H_s) = "
            f"{ratio:.3g} is outside (3.6, 5), where JONSWAP is a good model, or 5 and more with "
            "peak_factor = 1 (DNV-RP-C205, 3.5.5)"
        )
        found.append(("significant_height", text))
    steepest = _core.compensator.steepest_height(sea.peak_period_si)
    if sea.significant_height_si > steepest * (1.0 + 1e-9):  # a limit found lies on it
        text = (
            f"significant_height = {sea.significant_height_si:g} m is above {steepest:.3g} m, the "
            f"steepest sea found at peak_period = {sea.peak_period_si:g} s (DNV-RP-C205, see "
            "steepest_height)"
        )
        found.append(("significant_height", text))
    return found


def report(where: str, found: list[tuple[str, str]], outside_validity: Policy) -> None:
    """Raise, warn or stay silent about `doubts`, for the caller of a public function."""
    if not found or outside_validity == "ignore":
        return
    text = f"{where}(): {'; '.join(text for _, text in found)}"
    if outside_validity == "raise":
        raise ValidityError(text, where, found[0][0])
    warnings.warn(text, ValidityWarning, stacklevel=3)
