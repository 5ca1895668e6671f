"""Photographs of what is named on a sheet."""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from dataclasses import asdict
from typing import Any

from twoshaft.jobsheet.photographs import Photographs
from twoshaft.plots.photograph import photograph_figure
from twoshaft.units import Unit
from twoshaft_grader.bench_sheets.content import Block, Picture, Pictures, without_figures


def pictures_of(
    blocks: Iterable[Block], unit: Unit, photographs: Photographs
) -> tuple[Pictures, ...]:
    """The college's photographs of parts and steps that some blocks name; none where there are
    none.
    """
    texts = [text.lower() for block in blocks for text in _texts(asdict(block))]
    shown: list[Picture] = []
    for kind, entries in (("operation", unit.operations), ("part", unit.parts)):
        for entry in entries:
            name = without_figures(entry.name).lower()
            if not any(name in text for text in texts):
                continue
            shown += (
                Picture(
                    photograph_figure(data, one.width, one.height, one.alt, one.box),
                    entry.name,
                    one.alt,
                )
                for one, data in photographs.of(kind, entry.id)
            )
    return (Pictures("As it looks at your college", tuple(shown)),) if shown else ()


def _texts(data: Any) -> Iterator[str]:
    if isinstance(data, str):
        yield data
    elif isinstance(data, dict):
        for one in data.values():
            yield from _texts(one)
    elif isinstance(data, (list, tuple)):
        for one in data:
            yield from _texts(one)
