"""A worn part of the shift beside a scale: sleeve, hub, key, fork or spring, in one light.

Outlines come from ``models.inspect``; the picture names no wear.
"""

from __future__ import annotations

from twoshaft.models.inspect.worn import WIDE_MM, Worn, found_on
from twoshaft.plots.damage import Lit, drawn, line, millimetres

WIDE_PX, TALL_PX, SCALE_PX = 480.0, 208.0, 32.0
_MARKS = {15.0: 5, 30.0: 2, 60.0: 1}
"""Marks of the scale in a millimetre, by how much of it is seen."""


def worn_picture(worn: Worn) -> Lit:
    """A part beside its scale.

    Parameters
    ----------
    worn : Worn

    Returns
    -------
    Lit
        Its words say what is read, not what it means.
    """
    words = found_on(worn)
    return Lit(words, lambda: _drawing(worn, words))


def _drawing(worn: Worn, words: str) -> str:
    scale = WIDE_PX / WIDE_MM[worn.part]
    middle = TALL_PX / 2

    def at(x: float, y: float) -> str:
        return f"{x * scale:.1f},{middle - y * scale:.1f}"

    if worn.part == "spring":
        body = "".join(line("M" + "L".join(at(*point) for point in one), "tsd-edge")
                       for one in worn.outlines)  # fmt: skip
    else:
        body = "".join(
            f'<polygon class="tsd-metal" points="{" ".join(at(*point) for point in one)}"/>'
            for one in worn.outlines
        )
    marks = _MARKS[WIDE_MM[worn.part]]
    ticks = "".join(
        f"M{k / marks * scale:.1f} {TALL_PX}v{10 if k % (5 if marks < 5 else marks) == 0 else 5}"
        for k in range(int(WIDE_MM[worn.part] * marks) + 1)
    )
    step = 10 if marks == 1 else 5 if marks == 2 else 2
    numbers = millimetres(WIDE_MM[worn.part], step, scale, TALL_PX + 26)
    ground = f'<rect class="tsd-bright" x="0" y="0" width="{WIDE_PX}" height="{TALL_PX}"/>'
    return drawn(WIDE_PX, TALL_PX + SCALE_PX, words,
                 ground + body + line(ticks, "tsd-ruler") + numbers)  # fmt: skip
