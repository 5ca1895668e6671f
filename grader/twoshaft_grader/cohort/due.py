"""Due dates: written as people do, kept with their time zone."""

from __future__ import annotations

from datetime import UTC, datetime, time, tzinfo

from twoshaft.errors import CohortError


def read_due(text: str, zone: tzinfo) -> datetime:
    """Read ``2026-12-04`` (to the end of that day) or ``2026-12-04 16:00``.

    Raises
    ------
    CohortError
        When it is neither.
    """
    try:
        moment = datetime.fromisoformat(text.strip())
    except ValueError:
        raise CohortError(
            f'"{text[:30]}" is not a date', mend="write 2026-12-04 or 2026-12-04T16:00"
        ) from None
    if len(text.strip()) == 10:
        moment = datetime.combine(moment.date(), time(23, 59))
    return moment if moment.tzinfo else moment.replace(tzinfo=zone)


def gradebook_time(moment: datetime) -> datetime:
    """The same moment as nbgrader's database keeps it: UTC, without a zone."""
    return moment.astimezone(UTC).replace(tzinfo=None)
