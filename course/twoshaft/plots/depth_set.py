"""A depth gauge as somebody set it over a bore, in section, and with the eye beside it."""

from __future__ import annotations

import math

from twoshaft.models.set_ups import SetDepthLike
from twoshaft.plots.bench_view import BenchView, circle, path, rect, turned, way, words

_MM = 5.0
_LEFT, _RIGHT, _FACE, _FLOOR, _LOW = 66.0, 176.0, 92.0, 180.0, 206.0
_OUT, _FOOT, _FOOT_HIGH, _ROD = (18.0, 224.0), (36.0, 206.0), 16.0, 5.0
_BEAM, _VERNIER, _MARK, _SIGHT = 286.0, (62.0, 104.0), 83.0, 84.0


class DepthSetPicture(BenchView):
    """A picture that is drawn when it is asked for.

    Parameters
    ----------
    gauge : SetDepthLike
    """

    wide_px, tall_px = 400.0, 236.0

    def __init__(self, gauge: SetDepthLike) -> None:
        self._gauge = gauge

    @property
    def felt(self) -> str:
        """What a blade under the foot, a rule and a square find; no word of right or wrong."""
        one = self._gauge
        blades = " and ".join(
            f"{f'a blade of {mm:g} mm' if mm else 'no blade'} under the {end} end of the foot"
            for end, mm in (("left", one.left_mm), ("right", one.right_mm))
        )
        rod = f"{one.short_mm:g} mm above the bottom" if one.short_mm else "on what is under it"
        side = "above" if one.eye_deg >= 0 else "below"
        eye = f"from {abs(one.eye_deg):g}° {side}" if one.eye_deg else "along"
        return (
            f"{blades}; the rod ends {rod}, {one.aside_mm:g} mm from the wall, where the rounding "
            f"reaches {one.round_mm:g} mm in; the eye looks {eye} the line square to the scale"
        )

    def drawn(self) -> list[str]:
        """The bore in section on the left, the gauge's edge and the eye on the right."""
        return [*self._bore(), *self._tool(), *self._side()]

    def _bore(self) -> list[str]:
        curve = self._gauge.round_mm * _MM
        outline = (
            f"M{_OUT[0]} {_FACE}H{_LEFT}V{_FLOOR - curve}"
            f"A{curve} {curve} 0 0 0 {_LEFT + curve} {_FLOOR}H{_RIGHT - curve}"
            f"A{curve} {curve} 0 0 0 {_RIGHT} {_FLOOR - curve}V{_FACE}H{_OUT[1]}V{_LOW}H{_OUT[0]}Z"
        )
        return [
            f'<path class="tsv-cut" d="{outline}"/>',
            words(sum(_OUT) / 2, self.tall_px - 8, "in section"),
        ]

    def _tool(self) -> list[str]:
        """Foot, beam and rod; with one end up they lean, and something lies under that end."""
        one = self._gauge
        up = min(one.left_mm, one.right_mm) * _MM
        rise = (one.right_mm - one.left_mm) * _MM
        lean = math.degrees(math.asin(rise / (_FOOT[1] - _FOOT[0])))
        pivot = (_FOOT[0] if lean >= 0 else _FOOT[1], _FACE)
        x, low = _LEFT + one.aside_mm * _MM, self._rod_end()
        tall = [(mark, 5 if mark % 3 else 9) for mark in range(8)]
        parts = (
            rect("steel", x - _ROD, 16, x + _ROD, low),
            rect("part", _FOOT[0], _FACE - up - _FOOT_HIGH, _FOOT[1], _FACE - up),
            *(
                path("thin", (x - _ROD, 22 + 6 * k), (x - _ROD + wide, 22 + 6 * k))
                for k, wide in tall
            ),
        )
        moved = (
            f'<g transform="rotate({-lean:.2f} {pivot[0]:.1f} {pivot[1]:.1f})">{"".join(parts)}</g>'
        )
        return [moved, *self._under(rise)]

    def _rod_end(self) -> float:
        """Where the rod ends: on the bottom, above it, or on the rounding."""
        one = self._gauge
        inside = max(0.0, one.round_mm - (one.aside_mm - _ROD / _MM))
        climb = one.round_mm - math.sqrt(max(0.0, one.round_mm**2 - inside**2))
        return _FLOOR - (one.short_mm + climb) * _MM

    def _under(self, rise: float) -> list[str]:
        if not rise:
            return []
        x = _FOOT[1] - 14 if rise > 0 else _FOOT[0] + 14
        high = abs(rise) * 0.9
        return [
            f'<ellipse class="tsv-ink" cx="{x}" cy="{_FACE - high / 2:.1f}" rx="7" '
            f'ry="{high / 2:.1f}"/>'
        ]

    def _side(self) -> list[str]:
        along = way(self._gauge.eye_deg)
        at = (_BEAM + 14 + _SIGHT * along[0], _MARK + _SIGHT * along[1])
        eye = (
            '<path class="tsv-part" d="M-14 0Q0 -12 14 0Q0 12 -14 0Z"/>',
            circle("ink", -3, 0, 5),
        )
        return [
            rect("cut", _BEAM - 34, _FACE + 44, _BEAM + 90, _FACE + 60),
            rect("part", _BEAM - 14, _FACE + 28, _BEAM + 22, _FACE + 44),
            rect("steel", _BEAM - 4, 16, _BEAM + 4, _FACE + 28),
            rect("part", _BEAM + 4, _VERNIER[0], _BEAM + 11, _VERNIER[1]),
            path("centre", (_BEAM - 14, _MARK), (_BEAM + 106, _MARK)),
            path("sight", (_BEAM + 14, _MARK), at),
            turned(at, -self._gauge.eye_deg, *eye),
            words(_BEAM + 30, self.tall_px - 8, "from the side"),
        ]
