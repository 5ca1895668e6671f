"""What a hand would feel of a part, in words: its form and which way it lies, no name of it."""

from __future__ import annotations

from collections.abc import Mapping, Sequence

from twoshaft.models.shape.scene import around
from twoshaft.models.shape.section import Drawn
from twoshaft.units.sections.bearings import BallBearing, TaperBearing
from twoshaft.units.sections.shapes import BearingSolid, RingSolid, Rod
from twoshaft.units.unit import Unit

_RINGS = {
    "seal": "a rubber ring with a lip",
    "circlip": "a thin open ring that springs",
    "shim": "a thin flat ring",
    "gasket": "a thin soft sheet",
    "o-ring": "a soft round ring",
    "washer": "a flat ring",
}
_RODS = {
    "pin": "a plain pin",
    "bolt": "a bolt",
    "plug": "a short plug with a head",
    "rod": "a plain rod",
    "ball": "a ball",
}


def form_felt(unit: Unit, own: Sequence[Drawn]) -> str:
    """The form of a part, by its largest solid.

    Parameters
    ----------
    unit : Unit
    own : sequence of Drawn
        Its solids in one view.

    Examples
    --------
    >>> from twoshaft.models.shape.scene import view_of
    >>> own = [one for one in view_of(unit, "shafts").drawn if one.solid.part == "input-seal"]
    >>> form_felt(unit, own)
    'a rubber ring with a lip'
    """
    main = max(own, key=lambda one: _size(one))
    form = _form(unit, main)
    kinds = {one.solid.kind for one in own} - {main.solid.kind}
    if main.solid.kind != "gear" and "gear" in kinds:
        form += " that carries gears"
    return form


def way_felt(unit: Unit, own: Sequence[Drawn], heavy: str, home: str, left: str) -> str:
    """Which way round a part lies; empty where both ways are alike.

    Parameters
    ----------
    unit : Unit
    own : sequence of Drawn
    heavy, home : str
        The end at which there is more of it, as it lies and in the unit: front or rear.
    left : str
        The end of the unit that lies on the left: front or rear.

    Examples
    --------
    >>> from twoshaft.models.shape.scene import view_of
    >>> own = [one for one in view_of(unit, "shafts").drawn if one.solid.part == "input-seal"]
    >>> way_felt(unit, own, "front", "front", "front")
    'its lip to the right'
    """
    if not heavy:
        return ""
    turned = heavy != home
    main = max(own, key=lambda one: _size(one)).solid
    what, towards = "its heavier end", heavy
    if isinstance(main, RingSolid) and main.form == "seal" and main.lip:
        what, towards = "its lip", _other(main.lip) if turned else main.lip
    elif isinstance(main, BearingSolid) and (
        (taper := _is_taper(unit, main)) or main.ring != "both"
    ):
        what = "the wide end of its track" if taper else "the open side of its track"
        if main.ring != "outer":
            what = "its large end" if taper else "the thick edge of its ring"
        towards = _other(main.large_end) if turned else main.large_end
    return f"{what} to the {'left' if towards == left else 'right'}"


def place_felt(
    own: Sequence[Drawn], rows: Mapping[str, int], z_mm: tuple[float, float], mirrored: bool
) -> str:
    """Where a part lies in the picture.

    Parameters
    ----------
    own : sequence of Drawn
    rows : mapping of str to int
        Place of each axis in the picture, from the top, counted from one.
    z_mm : tuple of float
        Front and rear end of what the picture shows.
    mirrored : bool
        Whether the rear lies on the left.

    Examples
    --------
    >>> from twoshaft.models.shape.scene import view_of
    >>> own = [one for one in view_of(unit, "shafts").drawn if one.solid.part == "input-seal"]
    >>> place_felt(own, {"input": 2}, (-100, 200), False)
    'on line 2 from the top, near the left end'
    """
    z0, _, z1, _ = around(own)
    row = min(rows[one.solid.axis] for one in own)
    return along_felt(row, (z0 + z1) / 2, z_mm, mirrored)


def along_felt(row: int, at_mm: float, z_mm: tuple[float, float], mirrored: bool) -> str:
    """Where a place lies in the picture.

    Parameters
    ----------
    row : int
        Place of its axis in the picture, from the top, counted from one.
    at_mm : float
        Where along that axis.
    z_mm : tuple of float
        Front and rear end of what the picture shows.
    mirrored : bool
        Whether the rear lies on the left.

    Examples
    --------
    >>> along_felt(1, 100, (0, 200), False)
    'on line 1 from the top, in the middle'
    """
    at = (at_mm - z_mm[0]) / (z_mm[1] - z_mm[0])
    at = 1 - at if mirrored else at
    where = (
        "near the left end" if at < 0.25 else "left of the middle" if at < 0.45
        else "in the middle" if at < 0.55 else "right of the middle" if at < 0.75
        else "near the right end"
    )  # fmt: skip
    return f"on line {row} from the top, {where}"


def _form(unit: Unit, one: Drawn) -> str:
    solid = one.solid
    z0, y0, z1, y1 = one.bounds
    if isinstance(solid, RingSolid):
        return _RINGS[solid.form]
    if isinstance(solid, Rod):
        return _RODS[solid.form]
    if isinstance(solid, BearingSolid):
        if solid.ring != "both" and _has_balls(unit, solid):
            open_ring = "a ring with a round track that is open on one side"
            return open_ring if solid.ring == "outer" else "a ring with balls round it"
        if solid.type is None:
            return f"a bearing with {solid.elements}"
        if _is_taper(unit, solid):
            return "a ring with a sloping track" if solid.ring == "outer" else "a taper bearing"
        kind = unit.bearings.type_by_id(solid.type).kind
        return f"a bearing with {'balls' if kind == 'ball' else kind + 's'}"
    if solid.kind == "turned":
        if solid.uncut and not solid.inside_mm:
            return "a stepped shaft"
        return "a turned sleeve" if z1 - z0 > (y1 - y0) / 2 else "a turned disc"
    if solid.kind == "box":
        return f"what is called “{one.name}”"
    return {"gear": "a gear", "slab": "a flat piece", "shell": "a casting",
            "spring": "a coil spring"}[solid.kind]  # fmt: skip


def _is_taper(unit: Unit, solid: BearingSolid) -> bool:
    return solid.type is not None and isinstance(unit.bearings.type_by_id(solid.type), TaperBearing)


def _has_balls(unit: Unit, solid: BearingSolid) -> bool:
    if solid.type is None:
        return solid.elements == "balls"
    return isinstance(unit.bearings.type_by_id(solid.type), BallBearing)


def _size(one: Drawn) -> float:
    z0, y0, z1, y1 = one.bounds
    return (z1 - z0) * (y1 - y0)


def _other(end: str) -> str:
    return "rear" if end == "front" else "front"
