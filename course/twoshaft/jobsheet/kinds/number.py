"""A number with its unit as an answer."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Any

from twoshaft.errors import AnswerError
from twoshaft.jobsheet.kinds.field import Field, kind
from twoshaft.jobsheet.measures import MEASURES, named
from twoshaft.jobsheet.numbers import read_quantity, say_quantity, write_quantity
from twoshaft.units.quantities import Q

EXAMPLE, WHOLE = "12.5", "12"


@kind("number")
@dataclass(frozen=True)
class Number(Field):
    """A number with its unit; the typed text is what is stored.

    Parameters
    ----------
    unit : str
        The unit asked for; any unit of the same kind may be typed. Empty: a plain number.
    of : str
        Kind of quantity where the unit's spelling has several.
    whole : bool
        Whether things are counted: only the hint is another, since any number can be typed.
    """

    unit: str = ""
    of: str = ""
    whole: bool = False

    def __post_init__(self) -> None:
        super().__post_init__()
        named(self.unit, self.of)

    def read(self, stored: Any) -> Q:
        """The quantity, in the unit that was typed."""
        if self.is_blank(stored):
            raise AnswerError("not answered yet")
        if isinstance(stored, int | float) and not isinstance(stored, bool):
            stored = f"{stored!r}"
        return read_quantity(stored, self.unit, self.of)

    def store(self, value: Any) -> str:
        """Text as it is; a quantity as text in the unit asked for."""
        if isinstance(value, Q):
            wanted = named(self.unit, self.of)
            if not value.check(Q(1, wanted.pint).dimensionality):
                raise AnswerError(
                    f"read {value:~P}, which is not {wanted.kind}", mend=f"give it in {wanted.name}"
                )
            return write_quantity(float(value.to(wanted.pint).magnitude), self.unit, self.of)
        if isinstance(value, int | float) and not isinstance(value, bool):
            value = f"{value!r}"
        read_quantity(value, self.unit, self.of)
        return value

    def told(self) -> dict[str, Any]:
        """Units to choose from, and what is to be typed, with an example."""
        measured = named(self.unit, self.of).kind
        units = [measure.name for measure in MEASURES if measure.kind == measured and measure.name]
        example = f"{WHOLE if self.whole else EXAMPLE} {self.unit}".strip()
        what = "Number and unit" if units else "A whole number" if self.whole else "A number"
        return {"units": units, "hint": f"{what}, as {example}"}

    def agrees(self, value: Q, other: Q, near: float) -> bool:
        """Whether two quantities are the same but for a share of the other one."""
        wanted = named(self.unit, self.of).pint
        one, two = (float(each.to(wanted).magnitude) for each in (value, other))
        return abs(one - two) <= near * abs(two) + 1e-9

    def read_as(self, value: Any) -> str:
        """The quantity as people write it: number, space, unit."""
        return say_quantity(value) if hasattr(value, "magnitude") else f"{value:g}"
