"""The edge of a closed face from outside, and cut across beside a scale."""

from __future__ import annotations

from twoshaft.models.film import SHOWN_MM, SeenEdgeLike
from twoshaft.plots.bench_view import BenchView, path, rect, words

_LEFT, _PX_PER_MM, _SEAM, _HIGH = 16.0, 1.75, 112.0, 40.0
_BOLTS_MM, _HEAD, _TALL = (18.0, 60.0, 102.0), 11.0, 14.0
_AT, _FACE, _ENLARGED, _SCALE = 262.0, 326.0, 36.0, 34.0
_TICKS = 20


class EdgePicture(BenchView):
    """A picture that is drawn when it is asked for.

    Parameters
    ----------
    edge : SeenEdgeLike
    """

    wide_px, tall_px = 440.0, 210.0

    def __init__(self, edge: SeenEdgeLike) -> None:
        self._edge = edge

    @property
    def felt(self) -> str:
        """Where a finger finds sealant and how much, by the scale; no word of right or wrong."""
        one = self._edge
        where = " and ".join(f"{start:g} to {end:g} mm" for start, end in one.out_mm)
        bolts = ", ".join(f"{mm:g}" for mm in _BOLTS_MM)
        return (
            f"sealant came out from {where} of {SHOWN_MM:g} mm of edge, with bolts at {bolts} mm; "
            f"by the scale its half round has a radius of {one.high_mm:.2f} mm; the oil gallery "
            f"inside is safe up to {one.bound_mm:.2f} mm"
        )

    def drawn(self) -> list[str]:
        """The edge on the left, the cut on the right."""
        return [*self._outside(), *self._across()]

    def _outside(self) -> list[str]:
        right = _LEFT + SHOWN_MM * _PX_PER_MM
        half = max(3.0, self._edge.high_mm * 7)
        parts = [
            rect("part", _LEFT, _SEAM - _HIGH, right, _SEAM),
            rect("part", _LEFT, _SEAM, right, _SEAM + _HIGH),
        ]
        for mm in _BOLTS_MM:
            x = _LEFT + mm * _PX_PER_MM
            parts.append(rect("steel", x - _HEAD, _SEAM - _HIGH - _TALL, x + _HEAD, _SEAM - _HIGH))
            parts.append(path("centre", (x, _SEAM - _HIGH - _TALL - 8), (x, _SEAM + _HIGH)))
        for start, end in self._edge.out_mm:
            x0, x1 = (_LEFT + mm * _PX_PER_MM for mm in (start, end))
            parts.append(
                f'<rect class="tsv-bead" x="{x0:.1f}" y="{_SEAM - half:.1f}" '
                f'width="{x1 - x0:.1f}" height="{2 * half:.1f}" rx="{half:.1f}"/>'
            )
        return [*parts, words((_LEFT + right) / 2, self.tall_px - 8, "from outside")]

    def _across(self) -> list[str]:
        """Both flanges cut, the half round outside, and a scale from the face on, in mm."""
        one = self._edge
        radius = one.high_mm * _ENLARGED
        marks = [
            path("thin", (_FACE + k * _ENLARGED / 10, _SCALE),
                 (_FACE + k * _ENLARGED / 10, _SCALE + (12 if k % 5 == 0 else 7)))
            for k in range(_TICKS + 1)
        ]  # fmt: skip
        figures = [words(_FACE + mm * _ENLARGED, _SCALE - 6, f"{mm}") for mm in (0, 1, 2)]
        return [
            rect("cut", _AT, _SEAM - _HIGH, _FACE, _SEAM),
            rect("cut", _AT, _SEAM, _FACE, _SEAM + _HIGH),
            path("line", (_AT, _SEAM), (_FACE, _SEAM)),
            f'<path class="tsv-bead" d="M{_FACE} {_SEAM - radius:.1f}'
            f'A{radius:.1f} {radius:.1f} 0 0 1 {_FACE} {_SEAM + radius:.1f}Z"/>',
            path("thin", (_FACE, _SCALE), (_FACE + 2 * _ENLARGED, _SCALE)),
            *marks,
            *figures,
            path("sight", (_FACE + radius, _SEAM), (_FACE + radius, _SCALE)),
            words((_AT + self.wide_px) / 2, self.tall_px - 8, f"safe: {one.bound_mm:.2f} mm"),
        ]
