"""Worn parts of the shift: outlines in millimetres at a wear and place, and judged by their sizes.

x runs along the scale beside the part, y across it. Sizes of new parts and limits are invented for
teaching; on a real part the maker's sheet decides. What wear does to each part: common practice,
no source.
"""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass

Point = tuple[float, float]

WEARS: dict[str, dict[str, str]] = {
    "sleeve": {"points": "The points of its teeth", "side": "One side of the points"},
    "hub": {"notch": "The splines, where the sleeve sits"},
    "key": {"ridge": "The ridge", "end": "One end"},
    "fork": {"pads": "Both pads", "pad": "One pad"},
    "spring": {"length": "The length", "coil": "A coil"},
}
"""What can wear on each part, by id, with its words."""
LIMITS_MM = {"sleeve": 0.5, "hub": 0.2, "key": 1.0, "fork": 5.0, "spring": 43.0}
"""Largest flat and notch; least ridge, pad and length [mm]."""
WEAR_MM = {"sleeve": 1.2, "hub": 0.6, "key": 1.2, "fork": 2.0, "spring": 3.0}
"""Most wear that is shown [mm]."""
WIDE_MM = {"sleeve": 15.0, "hub": 15.0, "key": 15.0, "fork": 30.0, "spring": 60.0}
"""How much of the scale is seen [mm]."""
TOOTH_MM, TEETH, POINT_MM = 3.0, 4, 1.4
RIDGE_MM, PAD_MM, SPRING_MM, COILS = 1.5, 6.0, 44.0, 9
UNEVEN_MM = 0.5
"""Pads that differ by more than this were not pushed squarely [mm]."""


@dataclass(frozen=True)
class Worn:
    """A part as it lies beside the scale.

    Attributes
    ----------
    part : str
        One of WEARS.
    outlines : tuple of tuple of point
        What is drawn [mm]; of a spring the wire, else closed.
    reaches : tuple of (str, float, float)
        What is read on the scale: its words, where it begins and where it ends [mm].
    broken : bool
        Whether a piece is missing.

    Examples
    --------
    >>> worn_of("spring", "length", 2.0, 5.0).reaches
    (('the spring', 5.0, 47.0),)
    """

    part: str
    outlines: tuple[tuple[Point, ...], ...]
    reaches: tuple[tuple[str, float, float], ...]
    broken: bool = False

    def sizes_mm(self) -> tuple[float, ...]:
        """What each reading comes to [mm].

        Examples
        --------
        >>> worn_of("fork", "pads", 0.5, 4.0).sizes_mm()
        (5.5, 5.5)
        """
        return tuple(round(high - low, 3) for _, low, high in self.reaches)


def _sleeve(kind: str, wear: float, at: float) -> Worn:
    teeth, reaches = [], []
    half = TOOTH_MM / 2 - 0.25
    for k in range(TEETH):
        mid = at + TOOTH_MM * (k + 0.5)
        # Worn alike on both sides the flat lies in the middle, else it lies to one side.
        low = mid - wear / 2 if kind == "points" else mid
        high = low + wear
        slope = POINT_MM / half
        top = POINT_MM - slope * max(mid - low, high - mid)
        left = ((mid - half, 0.0), (low, top)) if wear else ((mid - half, 0.0), (mid, POINT_MM))
        right = ((high, top), (mid + half, 0.0)) if wear else ((mid + half, 0.0),)
        teeth.append(((mid - half, -3.0), *left, *right, (mid + half, -3.0)))
        reaches.append((f"the flat of tooth {k + 1}", low, high))
    return Worn("sleeve", tuple(teeth), tuple(reaches))


def _hub(kind: str, wear: float, at: float) -> Worn:
    splines, reaches = [], []
    for k in range(TEETH):
        left = at + TOOTH_MM * k + 0.4
        right = left + TOOTH_MM - 0.8
        splines.append((
            (left, -3.0), (left, 3.0), (right, 3.0), (right, 1.0), (right - wear, 0.9),
            (right - wear, -0.9), (right, -1.0), (right, -3.0),
        ))  # fmt: skip
        reaches.append((f"the notch of spline {k + 1}", right - wear, right))
    return Worn("hub", tuple(splines), tuple(reaches))


def _key(kind: str, wear: float, at: float) -> Worn:
    face, ridge = at + 4.0, RIDGE_MM - (wear if kind == "ridge" else 0.0)
    low = -3.0 + (2.0 * wear if kind == "end" else 0.0)
    outline = (
        (at, low), (at, 3.0), (face, 3.0), (face, 1.0), (face + ridge, 0.6), (face + ridge, -0.6),
        (face, -1.0), (face, low + (0.4 if low > -3 else 0.0)),
    )  # fmt: skip
    return Worn("key", (outline,), (("the ridge", face, face + ridge),), low > -3.0)


def _box(low: float, high: float, tall: float) -> tuple[Point, ...]:
    return ((low, -tall), (low, tall), (high, tall), (high, -tall))


def _fork(kind: str, wear: float, at: float) -> Worn:
    front, rear = PAD_MM - wear, PAD_MM - (wear if kind == "pads" else 0.0)
    body = at + PAD_MM
    outlines = (
        _box(body - front, body, 4.0), _box(body, body + 8.0, 5.5),
        _box(body + 8.0, body + 8.0 + rear, 4.0),
    )  # fmt: skip
    reaches = (
        ("the front pad", body - front, body),
        ("the rear pad", body + 8.0, body + 8.0 + rear),
    )
    return Worn("fork", outlines, reaches)


def _spring(kind: str, wear: float, at: float) -> Worn:
    long = SPRING_MM - (wear if kind == "length" else 0.0)
    step = long / (2 * COILS)
    wire = [(at + k * step, 5.0 if k % 2 else -5.0) for k in range(2 * COILS + 1)]
    broken = kind == "coil" and wear > 0
    cut = 7
    wires = (tuple(wire[:cut]), tuple(wire[cut + 1 :])) if broken else (tuple(wire),)
    return Worn("spring", wires, (("the spring", at, at + long),), broken)


_MADE: dict[str, Callable[[str, float, float], Worn]] = {
    "sleeve": _sleeve, "hub": _hub, "key": _key, "fork": _fork, "spring": _spring,
}  # fmt: skip


def worn_of(part: str, kind: str, wear_mm: float, at_mm: float) -> Worn:
    """A part with some wear, at a place beside the scale.

    Parameters
    ----------
    part : str
        One of WEARS.
    kind : str
        What wears, one of ``WEARS[part]``.
    wear_mm : float
        How much is gone [mm], 0 to ``WEAR_MM[part]``; of what is broken, any above 0.
    at_mm : float
        Where on the scale the part begins [mm].

    Returns
    -------
    Worn

    Raises
    ------
    KeyError
        When there is no such part.

    Examples
    --------
    >>> worn_of("key", "ridge", 0.4, 2.0).sizes_mm()
    (1.1,)
    """
    return _MADE[part](kind, wear_mm, at_mm)


def judged(worn: Worn) -> tuple[bool, str]:
    """Whether a part goes in again, and why, by what is read on it.

    Parameters
    ----------
    worn : Worn

    Returns
    -------
    tuple of (bool, str)

    Examples
    --------
    >>> judged(worn_of("spring", "length", 2.0, 5.0))
    (False, 'set: it is shorter than 43 mm, so it holds the ball too weakly')
    """
    sizes, limit = worn.sizes_mm(), LIMITS_MM[worn.part]
    if worn.part == "spring":
        if worn.broken:
            return False, "broken: a piece of it lies somewhere in the unit"
        good = sizes[0] >= limit
        why = f"shorter than {limit:g} mm, so it holds the ball too weakly"
        return good, f"it is not below {limit:g} mm" if good else f"set: it is {why}"
    if worn.part == "fork":
        if _uneven(worn):
            return False, "one pad is worn more than the other: look whether the fork is bent"
        good = min(sizes) >= limit
        return good, f"the thinner pad is {'not ' if good else ''}below {limit:g} mm"
    if worn.part == "key":
        if worn.broken:
            return False, "an end is broken off: the key tilts, and a piece lies in the unit"
        good = sizes[0] >= limit
        why = f"the ridge is {'not ' if good else ''}below {limit:g} mm"
        return good, why if good else f"{why}, so the key presses the ring too weakly"
    good = max(sizes) <= limit
    what = {
        "sleeve": "steer the sleeve into the gear",
        "hub": "let the sleeve slide freely",
    }[worn.part]
    name = {"sleeve": "flat", "hub": "notch"}[worn.part]
    why = f"the widest {name} is {'not ' if good else ''}above {limit:g} mm"
    return good, why if good else f"{why}, so the teeth no longer {what}"


def becomes(worn: Worn) -> str:
    """What becomes of a part, by what is read on it.

    Parameters
    ----------
    worn : Worn

    Returns
    -------
    str
        *use* it again, *renew* it, or *find* the cause of uneven wear, or the piece that is
        missing, as well.

    Examples
    --------
    >>> [becomes(worn_of("fork", kind, 1.5, 4.0)) for kind in ("pads", "pad")]
    ['renew', 'find']
    """
    if judged(worn)[0]:
        return "use"
    return "find" if worn.broken or _uneven(worn) else "renew"


def _uneven(worn: Worn) -> bool:
    sizes = worn.sizes_mm()
    return worn.part == "fork" and max(sizes) - min(sizes) > UNEVEN_MM


def found_on(worn: Worn) -> str:
    """What is read on the scale and seen, without what it means.

    Parameters
    ----------
    worn : Worn

    Returns
    -------
    str

    Examples
    --------
    >>> found_on(worn_of("fork", "pads", 1.0, 3.0))
    'the front pad reaches from 4.0 to 9.0 mm, the rear pad from 17.0 to 22.0 mm'
    """
    there = [one for one in worn.reaches if one[2] > one[1]]
    if not there:
        what = {"sleeve": "the points are sharp, without a flat", "hub": "the splines are even"}
        return what.get(worn.part, "nothing is left to read")
    (name, low, high), *rest = there
    more = "".join(f", {one} from {a:.1f} to {b:.1f} mm" for one, a, b in rest)
    gone = "; a piece is missing" if worn.broken else ""
    return f"{name} reaches from {low:.1f} to {high:.1f} mm{more}{gone}"
