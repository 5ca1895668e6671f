"""The answers: fields, reading what people write, saving, forms."""

from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from twoshaft.jobsheet.kinds import Choice, Choices, Field, Film, HandPath, Number, Order
    from twoshaft.jobsheet.numbers import has_one_meaning, read_quantity, write_quantity
    from twoshaft.jobsheet.sheet import Sheet, open_sheet
    from twoshaft.stored.job_sheet import Answer, SheetData, read_sheet

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
    """Behind a sheet stand readings and models, behind a kind quantities: loaded when asked for."""
    if name in ("Sheet", "open_sheet"):
        from twoshaft.jobsheet import sheet

        return getattr(sheet, name)
    if name in __all__:
        from twoshaft.jobsheet import kinds, numbers
        from twoshaft.stored import job_sheet

        home = next(one for one in (kinds, numbers, job_sheet) if hasattr(one, name))
        return getattr(home, name)
    raise AttributeError(f"module {__name__!r} has no attribute {name!r}")
