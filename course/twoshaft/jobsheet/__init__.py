"""The answers: fields, reading what people write, saving, forms."""

from typing import TYPE_CHECKING

from twoshaft.jobsheet.kinds import Choice, Choices, Field, Film, HandPath, Number, Order
from twoshaft.jobsheet.numbers import has_one_meaning, read_quantity, write_quantity
from twoshaft.stored.job_sheet import Answer, SheetData, read_sheet

if TYPE_CHECKING:
    from twoshaft.jobsheet.sheet import Sheet, open_sheet

__all__ = [
    "Answer",
    "Choice",
    "Choices",
    "Field",
    "Film",
    "HandPath",
    "Number",
    "Order",
    "Sheet",
    "SheetData",
    "has_one_meaning",
    "open_sheet",
    "read_quantity",
    "read_sheet",
    "write_quantity",
]


def __getattr__(name: str) -> object:
    """A sheet has every module's readings and models behind it: loaded when it is asked for."""
    if name in ("Sheet", "open_sheet"):
        from twoshaft.jobsheet import sheet

        return getattr(sheet, name)
    raise AttributeError(f"module {__name__!r} has no attribute {name!r}")
