"""A circlip in its groove: which way its sharp edge faces, and whether it lies in.

Stamped circlips have one rounded edge and one sharp one. The sharp one bears on the wall of the
groove, away from what pushes (common practice, no source).
"""

from __future__ import annotations

from dataclasses import dataclass
from typing import Protocol

LIES_IN_MM = 0.1
"""How far off the floor of its groove a circlip may lie (common practice, no source)."""


class SeatedClipLike(Protocol):
    """What tells of a circlip in its groove, as ``SeatedClip`` does.

    Examples
    --------
    >>> SeatedClipLike.__name__
    'SeatedClipLike'
    """

    @property
    def bore(self) -> bool:
        """Whether its groove is in a bore; else on a shaft."""

    @property
    def push_left(self) -> bool:
        """Whether the part pushes to the left; else to the right."""

    @property
    def sharp_left(self) -> bool:
        """Whether its sharp edge faces left; else right."""

    @property
    def off_mm(self) -> float:
        """How far it stands off the floor of its groove."""


@dataclass(frozen=True)
class SeatedClip:
    """A circlip as somebody left it.

    Examples
    --------
    >>> clip_faults(SeatedClip(bore=False, push_left=True, sharp_left=True, off_mm=0))
    ()
    """

    bore: bool
    push_left: bool
    sharp_left: bool
    off_mm: float


def clip_faults(clip: SeatedClipLike) -> tuple[str, ...]:
    """Give what is wrong with a circlip in its groove: ``edge``, ``seat``, both or nothing.

    Examples
    --------
    >>> clip_faults(SeatedClip(bore=True, push_left=True, sharp_left=False, off_mm=0.8))
    ('edge', 'seat')
    """
    return ("edge",) * (clip.sharp_left != clip.push_left) + ("seat",) * (clip.off_mm > LIES_IN_MM)
