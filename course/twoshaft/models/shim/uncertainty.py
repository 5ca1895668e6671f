"""What a measured result is worth, by the Guide to the Expression of Uncertainty (GUM).

Source: JCGM 100:2008 (GUM), clauses 4 and 5 and annex G; first order. The derivatives come from
the `uncertainties` package. A source of uncertainty that several measurements share by name is
fully correlated between them: the error of one micrometer enters all that it measured.
"""

from __future__ import annotations

import math
from collections.abc import Callable, Sequence
from dataclasses import dataclass
from typing import Any

import numpy as np

from twoshaft.errors import OutOfRangeError
from twoshaft.models.border import Above, Range, border
from twoshaft.models.validity import in_range, positive

_GUM = "JCGM 100:2008"


@dataclass(frozen=True)
class Source:
    """One source of uncertainty: its standard uncertainty ``u`` and degrees of freedom.

    Examples
    --------
    >>> normal("certificate", 0.004, 2).u
    0.002
    """

    name: str
    u: float
    dof: float = math.inf

    def __post_init__(self) -> None:
        positive(f"standard uncertainty of {self.name}", self.u, source=_GUM, zero=True)
        if not self.dof > 0:
            in_range(f"degrees of freedom of {self.name}", self.dof, 1e-9, math.inf, "", _GUM)


def rectangular(name: str, half_width: float, dof: float = math.inf) -> Source:
    """Anything within plus or minus ``half_width`` is equally likely (GUM 4.3.7).

    Examples
    --------
    >>> f"{rectangular('thermometer', 0.5).u:.3f}"  # half width over the root of three
    '0.289'
    """
    return Source(name, half_width / math.sqrt(3), dof)


def resolution(name: str, step: float) -> Source:
    """A reading rounded to ``step`` (GUM F.2.2.1).

    Examples
    --------
    >>> f"{resolution('micrometer', 0.01).u:.4f}"  # 0.01 over the root of 12
    '0.0029'
    """
    return Source(name, step / math.sqrt(12))


@border(k=Above("coverage factor", source=_GUM))
def normal(name: str, expanded: float, k: float = 2.0, dof: float = math.inf) -> Source:
    """A certificate's expanded uncertainty with its coverage factor ``k`` (GUM 4.3.3).

    Examples
    --------
    >>> normal("certificate", expanded=0.004).u
    0.002
    """
    return Source(name, expanded / k, dof)


def repeated(name: str, readings: Sequence[float]) -> tuple[float, Source]:
    """Mean of repeat readings and the uncertainty of that mean (GUM 4.2).

    Raises
    ------
    OutOfRangeError
        For fewer than two readings: one reading says nothing about spread.

    Examples
    --------
    >>> mean, source = repeated("depth", [4.21, 4.22, 4.20, 4.21])
    >>> f"{mean:.3f}, u = {source.u:.4f}, {source.dof} degrees of freedom"
    '4.210, u = 0.0041, 3 degrees of freedom'
    """
    values = np.asarray(readings, dtype=float)
    in_range(f"number of readings of {name}", values.size, 2, math.inf, "", _GUM)
    mean = float(in_range(f"readings of {name}", values, -math.inf, math.inf, "", _GUM).mean())
    u = float(values.std(ddof=1)) / math.sqrt(values.size)
    return mean, Source(name, u, values.size - 1)


@dataclass(frozen=True)
class Measured:
    """A measured value with its sources of uncertainty, all in the same unit.

    Examples
    --------
    >>> f"{Measured('depth', 4.21, (Source('scale', 0.003), Source('face', 0.004))).u:.3f}"
    '0.005'
    """

    name: str
    value: float
    sources: tuple[Source, ...] = ()

    @property
    def u(self) -> float:
        """Standard uncertainty."""
        return math.sqrt(sum(source.u**2 for source in self.sources))


@dataclass(frozen=True)
class Budget:
    """A result with what each source adds to its uncertainty.

    ``shares`` maps a source's name to |sensitivity| times standard uncertainty, the largest first.
    ``unit`` is how the unit is written, for the sentence.

    Examples
    --------
    >>> budget = Budget(1.21, shares={"case": 0.006, "shaft": 0.008}, dofs={}, unit="mm")
    >>> f"{budget.u:.3f}"
    '0.010'
    """

    value: float
    shares: dict[str, float]
    dofs: dict[str, float]
    unit: str = ""

    @property
    def u(self) -> float:
        """Combined standard uncertainty."""
        return math.sqrt(sum(share**2 for share in self.shares.values()))

    @property
    def dof(self) -> float:
        """Effective degrees of freedom by Welch and Satterthwaite (GUM G.4)."""
        lower = sum(share**4 / self.dofs[name] for name, share in self.shares.items())
        return self.u**4 / lower if lower else math.inf

    @border(level=Range("coverage probability", "", 0.5, 0.9999, _GUM))
    def coverage_factor(self, level: float = 0.95) -> float:
        """Factor ``k`` for a coverage probability, from Student's t (GUM G.3, G.6.4).

        Degrees of freedom are cut to the whole number below, as the GUM does.
        """
        from scipy.special import ndtri, stdtrit

        tail = (1 + level) / 2
        if math.isinf(self.dof):
            return float(ndtri(tail))
        return float(stdtrit(max(1, math.floor(self.dof + 1e-9)), tail))

    def expanded(self, level: float = 0.95) -> float:
        """Expanded uncertainty at a coverage probability."""
        return self.coverage_factor(level) * self.u

    @property
    def sentence(self) -> str:
        """The result in one sentence."""
        largest = next(iter(self.shares), "nothing")
        unit = f" {self.unit}" if self.unit else ""
        return (
            f"{self.value:.4g}{unit} with an expanded uncertainty of {self.expanded():.2g}{unit} "
            f"(95 %, k = {self.coverage_factor():.2f}); most of it comes from {largest}"
        )


def propagate(function: Callable[..., Any], inputs: Sequence[Measured], unit: str = "") -> Budget:
    """Carry the uncertainty of the inputs through a function.

    Parameters
    ----------
    function : callable
        Takes one number per input, in order, and gives one number. It may use `math`-like
        functions of `uncertainties.umath`.
    inputs : sequence of Measured
        Sources of the same name in several inputs are one and the same error.
    unit : str, optional
        How the result's unit is written, as ``"mm"``.

    Returns
    -------
    Budget

    Raises
    ------
    OutOfRangeError
        If one name stands for two different uncertainties, or a value is not a number.

    Examples
    --------
    The errors of two readings add by their squares: 0.003 and 0.004 make 0.005.

    >>> case = Measured("case", 52.64, (Source("depth gauge", 0.003),))
    >>> shaft = Measured("shaft", 51.43, (Source("micrometer", 0.004),))
    >>> gap = propagate(lambda a, b: a - b, [case, shaft], "mm")
    >>> f"{gap.value:.2f}", f"{gap.u:.3f}"
    ('1.21', '0.005')
    """
    from uncertainties import ufloat

    errors: dict[str, Any] = {}
    dofs: dict[str, float] = {}
    for entry in inputs:
        in_range(entry.name, entry.value, -math.inf, math.inf, "", _GUM)
        for source in entry.sources:
            known = errors.setdefault(source.name, ufloat(0.0, source.u))
            if known.std_dev != source.u:
                said = f"{known.std_dev:g} and {source.u:g}"
                raise OutOfRangeError(f"uncertainty of {source.name}", said, "one value", _GUM)
            dofs[source.name] = source.dof
    names = {error: name for name, error in errors.items()}
    values = [
        entry.value + sum((errors[source.name] for source in entry.sources), 0.0)
        for entry in inputs
    ]
    result = function(*values)
    if not hasattr(result, "derivatives"):
        return Budget(float(result), {}, {}, unit)
    parts = {
        names[error]: abs(slope) * error.std_dev for error, slope in result.derivatives.items()
    }
    shares = dict(sorted(parts.items(), key=lambda part: -part[1]))
    used = {name: dofs[name] for name in shares}
    return Budget(float(result.nominal_value), shares, used, unit)
