"""The bench of a whole build as a picture: the unit as it stands, and what is held in the hand."""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from dataclasses import replace

from twoshaft.models.shape import (
    Drawn,
    Role,
    around,
    keys_of,
    lie_of,
    lying,
    section_of,
    solids_of,
)
from twoshaft.plots.unit_scene import draw_piece
from twoshaft.plots.unit_section import PX_PER_MM, hatching, unit_picture
from twoshaft.units.kept import kept
from twoshaft.units.unit import Unit

Box = tuple[float, float, float, float]
_ROUND_PX = 6.0


@kept()
def boxes_of(unit: Unit) -> dict[str, dict[str, Box]]:
    """Where each part is in the picture of the unit, by the views that show it [px].

    Parameters
    ----------
    unit : Unit

    Returns
    -------
    dict of str to dict of str to (left, top, width, height)
    """
    found: dict[str, dict[str, Box]] = {}
    for placed in unit_picture(unit).placed:
        by_part: dict[str, list[Drawn]] = {}
        for one in placed.view.drawn:
            if one.solid.part:
                by_part.setdefault(one.solid.part, []).append(one)
        for part, some in by_part.items():
            z0, y0, z1, y1 = around(some)
            (left, top), (right, low) = placed.px(z0, y0), placed.px(z1, y1)
            found.setdefault(part, {})[placed.view.id] = (
                round(left), round(top), round(right - left), round(low - top)
            )  # fmt: skip
    return found


def box_round(unit: Unit, parts: Iterable[str]) -> Box | None:
    """What some parts take up in the view that shows most of them [px]; None where none does."""
    boxes = boxes_of(unit)
    by_view: dict[str, list[Box]] = {}
    for part in parts:
        for view, box in boxes.get(part, {}).items():
            by_view.setdefault(view, []).append(box)
    if not by_view:
        return None
    some = max(by_view.values(), key=len)
    left, top = (min(box[k] for box in some) - _ROUND_PX for k in (0, 1))
    right = max(box[0] + box[2] for box in some) + _ROUND_PX
    low = max(box[1] + box[3] for box in some) + _ROUND_PX
    return left, top, right - left, low - top


@kept(most=256)
def in_hand(
    unit: Unit, view: str, parts: tuple[str, ...], turned: tuple[str, ...]
) -> tuple[str, Box]:
    """Parts as they are held, some of them turned over, with the box that they take up [px].

    Parameters
    ----------
    unit : Unit
    view : str
        The view in which they are drawn.
    parts : tuple of str
    turned : tuple of str
        Parts, or solids of a part, that are turned end for end.

    Returns
    -------
    svg : str
    box : (left, top, width, height)
    """
    drawn = [one for some in _as_held(unit, view, parts, turned).values() for one in some]
    z0, y0, z1, y1 = around(drawn)
    middle = (z0 + z1) / 2, (y0 + y1) / 2

    def px(z: float, y: float) -> tuple[float, float]:
        return (z - middle[0]) * PX_PER_MM, (y - middle[1]) * PX_PER_MM

    wide = (z1 - z0) * PX_PER_MM + 2 * _ROUND_PX
    tall = (y1 - y0) * PX_PER_MM + 2 * _ROUND_PX
    svg = "".join(_solid(unit, one, px) for one in drawn)
    return svg, (round(-wide / 2), round(-tall / 2), round(wide), round(tall))


@kept(most=256)
def as_placed(
    unit: Unit, view: str, parts: tuple[str, ...], turned: tuple[str, ...], look: str = ""
) -> str:
    """Parts in their places in the picture of the unit, some of them turned over, as SVG.

    Parameters
    ----------
    unit : Unit
    view : str
    parts : tuple of str
    turned : tuple of str
        Parts, or solids of a part, that are turned end for end.
    look : str, optional
        As ``plots.unit_section.part_look`` says it.
    """
    placed = next(one for one in unit_picture(unit).placed if one.view.id == view)
    more = f" tsu-{look}" if look else ""
    made = []
    for key, some in _as_held(unit, view, parts, turned).items():
        part = solids_of(unit, view, key)[0].solid.part or ""
        solids = "".join(f"<g>{_solid(unit, one, placed.px)}</g>" for one in some)
        made.append(f'<g class="tsu-part{more}" data-part="{part}">{solids}</g>')
    return "".join(made)


def _as_held(
    unit: Unit, view: str, parts: Iterable[str], turned: Iterable[str]
) -> Mapping[str, tuple[Drawn, ...]]:
    wanted, over = set(parts), set(turned)
    lies = []
    for key in keys_of(unit, view):
        if solids_of(unit, view, key)[0].solid.part not in wanted:
            continue
        lie = lie_of(unit, view, key)
        if key in over:
            lie = replace(lie, heavy={"front": "rear", "rear": "front"}.get(lie.heavy, ""))
        lies.append(lie)
    return lying(unit, view, lies)


def _solid(unit: Unit, one: Drawn, px) -> str:
    hatch = hatching(section_of(unit)).get(one.solid.id)
    return "".join(draw_piece(p, hatch, px) for p in one.pieces if p.role is not Role.BEHIND)
