"""What the marking knows of each kind of answer: one judge each, under the name of its kind."""

from twoshaft_grader.marking.kinds import choice, choices, each, film, number, order, path
from twoshaft_grader.marking.kinds.judge import (
    JUDGES,
    Judge,
    Judgement,
    Pick,
    Reference,
    Seen,
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
    "Pick",
    "Reference",
    "Seen",
    "Slip",
    "Spread",
    "choice",
    "choices",
    "each",
    "film",
    "judge",
    "judge_of",
    "judges",
    "number",
    "order",
    "path",
]
