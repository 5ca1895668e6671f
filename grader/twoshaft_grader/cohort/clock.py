"""The time, and how it is written in files."""

from __future__ import annotations

import re
from datetime import UTC, datetime, tzinfo

_STAMP = re.compile(r"\d{4}-\d\d-\d\dT\d\d:\d\d:\d\dZ")


def now() -> datetime:
    """The time, in UTC."""
    return datetime.now(UTC)


def stamp(moment: datetime) -> str:
    """A moment as ISO 8601 in UTC, to the second."""
    return moment.astimezone(UTC).strftime("%Y-%m-%dT%H:%M:%SZ")


def wall_clock(at: str, zone: tzinfo) -> str:
    """A moment of a file (ISO 8601), as a clock on the wall in that zone shows it."""
    return f"{datetime.fromisoformat(at).astimezone(zone):%Y-%m-%d %H:%M}"


def as_read(text: str, zone: tzinfo) -> str:
    """A text in which each moment that `stamp` wrote stands as :func:`wall_clock` shows it."""
    return _STAMP.sub(lambda found: wall_clock(found[0], zone), text)
