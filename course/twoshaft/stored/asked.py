"""``.asked.json``: what an exercise asks of its learner, and which answers cannot be read
or are not whole.

Written by the exercise's own kernel, which alone knows; read by the start page. It is not handed
in (nbgrader leaves out names with a point in front), and marking never reads it.
"""

from __future__ import annotations

from dataclasses import dataclass, field

from twoshaft.stored.definition import LearnersFile


@dataclass(frozen=True, kw_only=True)
class Asked:
    """What is asked, as far as the notebook has shown its forms.

    Parameters
    ----------
    tasks : dict
        By task: the question of each field, by the field's name.
    unread : dict
        By field: why its answer cannot be read, as a sentence.
    short : tuple of str
        Fields that are answered in part.
    """

    tasks: dict[str, dict[str, str]] = field(default_factory=dict)
    unread: dict[str, str] = field(default_factory=dict)
    short: tuple[str, ...] = ()


ASKED: LearnersFile[Asked] = LearnersFile(
    file=".asked.json",
    record=Asked,
    format=2,
    older={1: None},  # nothing was known to be answered in part
    indent=1,
    fault="it holds no questions",
)
