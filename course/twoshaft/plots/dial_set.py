"""A dial indicator as somebody set it on a shaft: on the shaft's end, and what turns the shaft."""

from __future__ import annotations

from typing import Protocol

from twoshaft.models.set_ups import SetDialLike
from twoshaft.plots.bench_view import BenchView, circle, hour, path, rect, way, words

_MIDDLE, _RADIUS, _REACH, _DIAL = (92.0, 140.0), 30.0, 62.0, 19.0
_GROUND, _FOOT, _FOOT_HIGH = 196.0, (156.0, 200.0), 18.0
_PX_PER_MM, _TOP = 0.5, 44.0
_SHAFT, _AXIS, _THICK = (244.0, 318.0), 140.0, 14.0


class DialSeen(SetDialLike, Protocol):
    """A set-up and where on the shaft its plunger touches: 0 is to the right, 90 on top."""

    @property
    def at_deg(self) -> float:
        """Where the plunger touches."""


class DialSetPicture(BenchView):
    """A picture that is drawn when it is asked for.

    Parameters
    ----------
    dial : DialSeen
    """

    wide_px, tall_px = 400.0, 300.0

    def __init__(self, dial: DialSeen) -> None:
        self._dial = dial

    @property
    def felt(self) -> str:
        """What hand, rule and square find; no word of right or wrong."""
        one = self._dial
        foot = "its whole foot" if one.rests >= 1 else f"{one.rests:.0%} of its foot"
        return (
            f"the plunger touches the shaft at {hour(one.at_deg)} o'clock; its line and the one to "
            f"the middle of the shaft are {abs(one.off_deg):g}° apart; pressed in "
            f"{one.pressed_mm:.2f} mm, the surface moves {one.moves_mm:.2f} mm; the stand has "
            f"{foot} on steel of {one.thick_mm:g} mm; the shaft is turned by a {one.by}"
        )

    def drawn(self) -> list[str]:
        """The end of the shaft with dial and stand, the shaft along its axis, and the figures."""
        one = self._dial
        told = f"pressed in {one.pressed_mm:.2f} mm", f"surface moves {one.moves_mm:.2f} mm"
        return [*self._stand(), *self._plunger(), *self._along(),
                *(words(self.wide_px / 2, self.tall_px - low, line)
                  for low, line in zip((36, 8), told, strict=True))]  # fmt: skip

    def _points(self) -> tuple[tuple[float, float], tuple[float, float], tuple[float, float]]:
        """Where the plunger touches, the middle of the dial, and a place beyond the shaft."""
        one, (x, y) = self._dial, _MIDDLE
        out, line = way(one.at_deg), way(one.at_deg + one.off_deg)
        touch = (x + _RADIUS * out[0], y + _RADIUS * out[1])
        far, near = ((touch[0] + by * line[0], touch[1] + by * line[1])
                     for by in (_REACH, -1.7 * _RADIUS))  # fmt: skip
        return touch, far, near

    def _stand(self) -> list[str]:
        """The bed, the block under the shaft, and the stand with its arm to the dial."""
        one, (x, y) = self._dial, _MIDDLE
        low = _GROUND + max(3.0, one.thick_mm * _PX_PER_MM)
        bed = _FOOT[0] + one.rests * (_FOOT[1] - _FOOT[0]) if one.rests < 1 else _FOOT[1] + 16
        post, (_, far, _) = sum(_FOOT) / 2, self._points()
        return [
            rect("cut", 30, _GROUND, bed, low),
            words((30 + bed) / 2, _GROUND + 38, f"{one.thick_mm:g} mm thick"),
            path("part", (x - 34, _GROUND), (x - 34, y + 8), (x, y + 42), (x + 34, y + 8),
                 (x + 34, _GROUND), closed=True),
            rect("steel", _FOOT[0], _GROUND - _FOOT_HIGH, _FOOT[1], _GROUND),
            rect("part", post - 4, _TOP - 12, post + 4, _GROUND - _FOOT_HIGH),
            path("line", (post, far[1]), far),
        ]  # fmt: skip

    def _plunger(self) -> list[str]:
        touch, far, near = self._points()
        return [
            circle("steel", *_MIDDLE, _RADIUS),
            path("thin", (_MIDDLE[0] - 6, _MIDDLE[1]), (_MIDDLE[0] + 6, _MIDDLE[1])),
            path("thin", (_MIDDLE[0], _MIDDLE[1] - 6), (_MIDDLE[0], _MIDDLE[1] + 6)),
            path("line", touch, far),
            circle("part", *far, _DIAL),
            circle("ink", *touch, 3),
            path("centre", far, near),
        ]

    def _along(self) -> list[str]:
        """The shaft from the side on its two blocks, with what turns it at its right end."""
        left, right = _SHAFT
        blocks = [
            rect("part", x - 7, _AXIS + _THICK, x + 7, _GROUND) for x in (left + 14, right - 14)
        ]
        return [
            rect("cut", left - 10, _GROUND, right + 14, _GROUND + 12),
            *blocks,
            rect("steel", left, _AXIS - _THICK, right, _AXIS + _THICK),
            path("centre", (left - 8, _AXIS), (right + 10, _AXIS)),
            *_DRIVES[self._dial.by](right, _AXIS),
            words(306, _GROUND + 38, self._dial.by),
        ]


def _crank(x: float, y: float) -> list[str]:
    arm = path("line", (x, y), (x + 20, y), (x + 20, y + 36))
    return [arm, rect("part", x + 20, y + 30, x + 46, y + 42)]


def _hand_wheel(x: float, y: float) -> list[str]:
    return [rect("steel", x, y - 5, x + 14, y + 5), rect("part", x + 14, y - 44, x + 24, y + 44),
            rect("part", x + 24, y - 40, x + 46, y - 30)]  # fmt: skip


def _drill(x: float, y: float) -> list[str]:
    chuck = path("steel", (x, y - 8), (x + 16, y - 14), (x + 16, y + 14), (x, y + 8), closed=True)
    grip = path("part", (x + 30, y + 16), (x + 38, y + 60), (x + 56, y + 60), (x + 50, y + 16),
                closed=True)  # fmt: skip
    return [chuck, grip, rect("part", x + 16, y - 18, x + 60, y + 18)]


def _motor(x: float, y: float) -> list[str]:
    ribs = [path("thin", (x + 22, y + rib), (x + 66, y + rib)) for rib in (-16, -6, 6, 16)]
    return [
        rect("steel", x, y - 6, x + 18, y + 6),
        rect("part", x + 18, y - 28, x + 70, y + 28),
        *ribs,
    ]


_DRIVES = {"crank": _crank, "hand wheel": _hand_wheel, "drill": _drill, "motor": _motor}
