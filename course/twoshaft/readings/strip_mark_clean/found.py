"""What magnet, pan and old film show."""

from __future__ import annotations

from twoshaft.readings.strip_mark_clean.given import Found
from twoshaft.readings.strip_mark_clean.lot import Lot


def draw(lot: Lot) -> Found:
    """Some finds and some stretches of old film, with what each may mean."""
    return Found(debris=lot.asked("debris"), film=lot.asked("film"))
