"""A case on a hoist: its mass, the mark on the sling, the hook above it, and what is beneath."""

from __future__ import annotations

from twoshaft.models.lifting import HungLike
from twoshaft.plots.bench_view import BenchView, circle, path, rect, words

_MIDDLE, _EYES, _PX_PER_CM = 150.0, 46.0, 2.4
_HOOK, _FLOOR, _CASE = 46.0, 226.0, 62.0


class HungPicture(BenchView):
    """A picture that is drawn when it is asked for.

    Parameters
    ----------
    hung : HungLike
    """

    wide_px, tall_px = 300.0, 284.0

    def __init__(self, hung: HungLike) -> None:
        self._hung = hung

    @property
    def felt(self) -> str:
        """What marks, plumb line and fingers along the sling find; no word of right or wrong."""
        one = self._hung
        strands = (
            f"{one.broken} of its strands stand out broken" if one.broken else "every strand whole"
        )
        side = "left" if one.aside_cm < 0 else "right"
        middle = f"{abs(one.aside_cm):g} cm to the {side} of the hook"
        if not one.aside_cm:
            middle = "in line with the hook"
        below = (
            "a person crouches beneath it" if one.person else "a trolley stands close beneath it"
        )
        return (
            f"a case of {one.mass_kg:g} kg on a sling marked {one.mark_kg:g} kg, {strands}; its "
            f"centre of mass lies {middle}; {below}"
        )

    def drawn(self) -> list[str]:
        """The hoist, the case at its height, and what is beneath."""
        one = self._hung
        top = 104.0 if one.person else 134.0
        told = f"case {one.mass_kg:g} kg", f"sling marked {one.mark_kg:g} kg"
        return [
            rect("cut", 40, 8, 260, 18),
            path("line", (_MIDDLE, 18), (_MIDDLE, _HOOK)),
            path("thin", (16, _FLOOR), (284, _FLOOR)),
            *self._case(top),
            *self._sling(top),
            *(_person() if one.person else _trolley()),
            *(
                words(_MIDDLE, self.tall_px - y, line)
                for y, line in zip((34, 8), told, strict=True)
            ),
        ]

    def _case(self, top: float) -> list[str]:
        """The case with its eyes, and the sign of its centre of mass."""
        left, right = _MIDDLE - 66, _MIDDLE + 66
        x, y = _MIDDLE + self._hung.aside_cm * _PX_PER_CM, top + _CASE / 2
        quarters = "".join(
            f'<path class="tsv-ink" d="M{x:.1f} {y:.1f}h{8 * way}'
            f'A8 8 0 0 1 {x:.1f} {y + 8 * way:.1f}Z"/>'
            for way in (1, -1)
        )
        outline = path("part", (left + 10, top), (right - 10, top), (right, top + _CASE),
                       (left, top + _CASE), closed=True)  # fmt: skip
        eyes = [circle("part", _MIDDLE + way * _EYES, top - 4, 6) for way in (-1, 1)]
        return [*eyes, outline, circle("part", x, y, 8), quarters]

    def _sling(self, top: float) -> list[str]:
        hook = (_MIDDLE, _HOOK + 8)
        legs = [path("line", hook, (_MIDDLE + way * _EYES, top - 6)) for way in (-1, 1)]
        x, y = _MIDDLE + _EYES / 2, (hook[1] + top - 6) / 2
        frayed = [path("line", (x, y), (x + 17, y - 12 + 7 * k)) for k in range(self._hung.broken)]
        plumb = path("centre", (_MIDDLE, _HOOK), (_MIDDLE, top + _CASE + 8))
        return [*legs, *frayed, circle("line", _MIDDLE, _HOOK + 2, 7), plumb]


def _trolley() -> list[str]:
    deck = rect("steel", _MIDDLE - 60, 204, _MIDDLE + 60, 214)
    return [deck, *(circle("part", _MIDDLE + way * 44, 220, 6) for way in (-1, 1))]


def _person() -> list[str]:
    body = '<path class="tsv-part" d="M132 196q-16 8 -18 30h46q4 -20 -8 -32z"/>'
    return [body, circle("part", 148, 184, 11), path("line", (136, 202), (158, 208), (160, 190))]
