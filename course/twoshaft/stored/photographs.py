"""``photographs/photographs.json``, in the cohort folder and in the workplace: a college's own
pictures of parts and operations; each picture lies beside it.
"""

from __future__ import annotations

from dataclasses import dataclass
from typing import Annotated, Literal

from pydantic import Field

from twoshaft.stored.definition import LearnersFile

FOLDER = "photographs"
LARGEST = 2_000_000
"""Bytes of a reduced picture: our choice."""

Share = Annotated[float, Field(ge=0, le=1)]


@dataclass(frozen=True, kw_only=True)
class Photograph:
    """One picture.

    Parameters
    ----------
    of : {'part', 'operation'}
    id : str
        Of the part or operation in the unit file.
    file : str
        Its name in the folder.
    alt : str
        What can be seen, in words.
    width, height : int
        [px]
    box : tuple of float or None
        Left, top, width and height of what matters, as shares of the picture.
    """

    of: Literal["part", "operation"]
    id: str
    file: Annotated[str, Field(pattern=r"^[0-9a-f]{16}\.jpg$")]
    alt: str
    width: Annotated[int, Field(gt=0, le=10_000)]
    height: Annotated[int, Field(gt=0, le=10_000)]
    box: tuple[Share, Share, Share, Share] | None = None


@dataclass(frozen=True, kw_only=True)
class Album:
    """All pictures of a college's unit, in the order in which they were added."""

    photographs: tuple[Photograph, ...] = ()


ALBUM: LearnersFile[Album] = LearnersFile(
    file="photographs.json", record=Album, fault="it holds no list of photographs"
)
