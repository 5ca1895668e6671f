"""What the marking knows of each kind of answer: one judge each, under the name of its kind."""

from twoshaft_grader.marking.kinds import choice, choices, film, number, order, path
from twoshaft_grader.marking.kinds.judge import (
    JUDGES,
    Judge,
    Judgement,
    Reference,
    Slip,
    Spread,
    judge,
    judge_of,
    judges,
)

__all__ = [
    "JUDGES",
    "Judge",
    "Judgement",
    "Reference",
    "Slip",
    "Spread",
    "choice",
    "choices",
    "film",
    "judge",
    "judge_of",
    "judges",
    "number",
    "order",
    "path",
]
