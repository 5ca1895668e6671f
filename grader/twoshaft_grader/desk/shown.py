"""Text on a terminal: what others wrote must not steer it."""

from __future__ import annotations


def shown(text: str) -> str:
    """The text with every sign that cannot be printed spelled out, ESC as ``\\x1b``; lines stay."""
    if text.isprintable():
        return text
    return "".join(
        one if one.isprintable() or one in "\n\u00a0\u202f" else ascii(one)[1:-1] for one in text
    )
