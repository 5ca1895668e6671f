"""The answers: fields, reading what people write, saving, forms."""

from twoshaft.jobsheet.fields import Choice, Choices, Field, Film, Number, Order
from twoshaft.jobsheet.hand_path import HandPath
from twoshaft.jobsheet.numbers import is_read, read_quantity, write_quantity
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
    "is_read",
    "open_sheet",
    "read_quantity",
    "read_sheet",
    "write_quantity",
]
