"""The time, and how it is written in files."""

from __future__ import annotations

from datetime import UTC, datetime


def now() -> datetime:
    """The time, in UTC."""
    return datetime.now(UTC)


def stamp(moment: datetime) -> str:
    """A moment as ISO 8601 in UTC, to the second."""
    return moment.astimezone(UTC).strftime("%Y-%m-%dT%H:%M:%SZ")
