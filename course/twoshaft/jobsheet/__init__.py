"""The answers: fields, reading what people write, saving, forms."""

from twoshaft.jobsheet.contents import Answer, SheetData, read_sheet
from twoshaft.jobsheet.fields import Choice, Choices, Field, Number, Order
from twoshaft.jobsheet.numbers import read_quantity, write_quantity
from twoshaft.jobsheet.sheet import Sheet, open_sheet

__all__ = [
    "Answer",
    "Choice",
    "Choices",
    "Field",
    "Number",
    "Order",
    "Sheet",
    "SheetData",
    "open_sheet",
    "read_quantity",
    "read_sheet",
    "write_quantity",
]
