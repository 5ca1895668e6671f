"""The whole build: every decision of one build on one unit, and what the models make of it.

A :class:`Job` is a unit on a bench. ``asks_of(job)`` lists what its builder decides, ``fields_of``
the answer fields that hold it. A build is a list of :class:`Do` and :class:`TakeOut`;
``decisions_from`` and ``values_of`` turn it from and into answers. ``consequences(job, decisions)``
works out what it brings about, ``look(job, decisions)`` what the bench shows while it goes on, and
``build_record`` what is written down. Nothing here has a formula of its own.

>>> job = Job.of(unit, {"asked": ["shim-differential", "way-fit-lockout"]})
>>> [ask.id for ask in asks_of(job)]
['shim-differential', 'way-fit-lockout']
>>> consequences(job, right_decisions(job)).faults
()
"""

from twoshaft.models.wholebuild.asks import (
    GO_ON,
    LOG,
    OPEN,
    ORDER,
    OUT,
    Ask,
    FieldSpec,
    apart,
    asked_together,
    asks_at,
    asks_of,
    fields_of,
    sheet_fields,
    way_words,
    ways_of,
)
from twoshaft.models.wholebuild.bench import Bench, Line, card, look, readings
from twoshaft.models.wholebuild.checking import CheckResult, ProofResult, WayResult
from twoshaft.models.wholebuild.consequences import Record, consequences
from twoshaft.models.wholebuild.decisions import (
    Decision,
    Do,
    TakeOut,
    built,
    decisions_from,
    values_of,
)
from twoshaft.models.wholebuild.drivers import RINGS, DriverResult
from twoshaft.models.wholebuild.faults import Fault
from twoshaft.models.wholebuild.films import FilmResult
from twoshaft.models.wholebuild.job import Job
from twoshaft.models.wholebuild.joints import JointResult
from twoshaft.models.wholebuild.record import build_record
from twoshaft.models.wholebuild.right import right_threads
from twoshaft.models.wholebuild.right_build import right_decisions, right_values
from twoshaft.models.wholebuild.settings import ShimResult

__all__ = [
    "GO_ON",
    "LOG",
    "OPEN",
    "ORDER",
    "OUT",
    "RINGS",
    "Ask",
    "Bench",
    "CheckResult",
    "Decision",
    "Do",
    "DriverResult",
    "Fault",
    "FieldSpec",
    "FilmResult",
    "Job",
    "JointResult",
    "Line",
    "ProofResult",
    "Record",
    "ShimResult",
    "TakeOut",
    "WayResult",
    "apart",
    "asked_together",
    "asks_at",
    "asks_of",
    "build_record",
    "built",
    "card",
    "consequences",
    "decisions_from",
    "fields_of",
    "look",
    "readings",
    "right_decisions",
    "right_threads",
    "right_values",
    "sheet_fields",
    "values_of",
    "way_words",
    "ways_of",
]
