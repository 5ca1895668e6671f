"""Who gets a server of a JupyterHub: for the hub's configuration file."""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path
from typing import Any

from twoshaft.errors import CohortError, CourseError
from twoshaft.jupyter.open_course import WORKPLACE
from twoshaft.stored.people import PEOPLE


def only_learners(shared: str) -> Callable[[Any], None]:
    """What a hub asks before it starts a server: whether the name is on the roster, as it is now.

    Parameters
    ----------
    shared : str
        A cohort's shared place, whose learners work in accounts of their own.

    Returns
    -------
    callable
        For ``c.Spawner.pre_spawn_hook``. It raises what the hub shows as one sentence.
    """

    def look(spawner: Any) -> None:
        name = spawner.user.name
        try:
            listed = PEOPLE.read(Path(shared) / WORKPLACE / PEOPLE.file) or ()
            if not any(one.id.casefold() == name.casefold() for one in listed):
                raise CohortError(
                    f"the name “{name}” is not on the roster of this course",
                    mend="ask your instructor",
                )
        except CourseError as error:
            from tornado.web import HTTPError

            refused: Any = HTTPError(403, error.sentence)
            refused.jupyterhub_message = error.sentence
            raise refused from None

    return look
