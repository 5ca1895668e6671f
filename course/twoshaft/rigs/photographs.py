"""A college's own photographs beside what is drawn: told when a part or a step is looked at."""

from __future__ import annotations

from typing import Any

from twoshaft.jobsheet.photographs import Photographs
from twoshaft.jobsheet.screen import Screen
from twoshaft.plots.photograph import photograph_figure


def pictured(photographs: Photographs) -> dict[str, list[str]]:
    """What there are photographs of, for the browser: ids of parts and of operations."""
    found: dict[str, list[str]] = {"part": [], "operation": []}
    for one in photographs.album.photographs:
        if one.id not in found[one.of]:
            found[one.of].append(one.id)
    return found


def tell_photographs(screen: Screen, photographs: Photographs, message: dict[str, Any]) -> bool:
    """Answer a message that asks for photographs; whether it was one."""
    if message.get("type") != "photographs":
        return False
    of, id = str(message.get("of", "")), str(message.get("id", ""))
    shown = [
        {"svg": photograph_figure(data, one.width, one.height, one.alt, one.box), "alt": one.alt}
        for one, data in photographs.of(of, id)
    ]
    screen.send({"type": "photographs", "of": of, "id": id, "shown": shown})
    return True
