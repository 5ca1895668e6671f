"""The kinds of answer a job sheet can hold, one file each: read, store, say, describe.

What is right of an answer, and what it earns, stands with the marking: one judge for each kind.
"""

from twoshaft.jobsheet.kinds.choice import Choice
from twoshaft.jobsheet.kinds.choices import Choices
from twoshaft.jobsheet.kinds.each import Each
from twoshaft.jobsheet.kinds.field import (
    KINDS,
    Asker,
    Field,
    UnitAsker,
    fields_by_name,
    kind,
    kind_named,
    well_named,
)
from twoshaft.jobsheet.kinds.film import Film
from twoshaft.jobsheet.kinds.number import Number
from twoshaft.jobsheet.kinds.order import Order
from twoshaft.jobsheet.kinds.path import HandPath
from twoshaft.jobsheet.kinds.picture import PictureChoice
from twoshaft.jobsheet.kinds.point import Point
from twoshaft.jobsheet.kinds.put import Put

__all__ = [
    "KINDS",
    "Asker",
    "Choice",
    "Choices",
    "Each",
    "Field",
    "Film",
    "HandPath",
    "Number",
    "Order",
    "PictureChoice",
    "Point",
    "Put",
    "UnitAsker",
    "fields_by_name",
    "kind",
    "kind_named",
    "well_named",
]
