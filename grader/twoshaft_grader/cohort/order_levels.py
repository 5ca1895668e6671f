"""What chance earns on long orders takes seconds to work out, so the cohort keeps it."""

from __future__ import annotations

import contextlib
from collections.abc import Iterator

from twoshaft.errors import CohortError
from twoshaft_grader.cohort.folder import Cohort
from twoshaft_grader.stored.order_levels import ORDER_LEVELS


@contextlib.contextmanager
def order_levels(cohort: Cohort) -> Iterator[None]:
    """Within, what an earlier command worked out is at hand; what is new is kept at the end.

    A file that is missing or damaged is made again.
    """
    from twoshaft.models.order import chance_levels, take_chance_levels

    path, before = cohort.order_levels, {}
    with contextlib.suppress(CohortError, OSError):
        before = ORDER_LEVELS.read_if_any(path) or {}
    take_chance_levels(before)
    yield
    if len(now := chance_levels()) > len(before):
        ORDER_LEVELS.write(path, now, sync=False)
