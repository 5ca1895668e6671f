"""Sealant rig: coat a face by roller or bead, let minutes pass, close it and see what happens."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import replace
from html import escape
from typing import Any

import numpy as np
import traitlets

from twoshaft.errors import AnswerError
from twoshaft.jobsheet.film_entries import entry_words, face_picture, hole_name, read_entries
from twoshaft.jobsheet.screen import Screen
from twoshaft.models.film import (
    Closed,
    Film,
    Hand,
    Kind,
    Pass,
    State,
    Work,
    half_round_radius,
    slide,
    stroke,
)
from twoshaft.plots import style
from twoshaft.rigs.words import counted
from twoshaft.units.quantities import Q
from twoshaft.units.unit import Unit

LEVELS_MM = (0.0, 0.05, 0.1, 0.2, 0.5)
"""Where the shades of a film begin."""
OILY, DIRTY = 16, 32
LEAST_DOT_MM, SIZE_MM = 0.2, 0.2
FLAT_UM = (20, 160)
MOST_MINUTES = 600
SLIDES = {
    "straight": ("placed straight down", (0, 0)),
    "left-3": ("slid by 3 mm to the left", (-3, 0)),
    "left-6": ("slid by 6 mm to the left", (-6, 0)),
    "right-6": ("slid by 6 mm to the right", (6, 0)),
    "up-6": ("slid by 6 mm upwards", (0, 6)),
    "down-6": ("slid by 6 mm downwards", (0, -6)),
}
"""How the other face comes on: in words, and its way over the film along x and y [mm]."""
REASONS = {
    State.EMPTY: "the gap is not filled",
    State.OILY: "sealant does not hold on oil",
    State.DIRTY: "sealant does not hold on dirt",
    State.SKINNED: "the film was too old when the face came on",
    State.AIR: "air was shut in and keeps the sealant away",
    State.TOO_WIDE: "the gap is wider than this sealant bridges",
}
_WORDS = {
    State.SEALED: ("seals", "film", ""),
    State.EMPTY: ("not filled", "", "dots"),
    State.OILY: ("oily", "orange", "rising"),
    State.DIRTY: ("dirty", "purple", "cross"),
    State.SKINNED: ("skinned or too old", "yellow", "flat"),
    State.AIR: ("air shut in", "", "rings"),
    State.TOO_WIDE: ("gap too wide", "", "plus"),
}
_COLOURS = {"": "", "film": style.OKABE_ITO["sky"]} | style.OKABE_ITO


def looks() -> dict[str, list[list[Any]]]:
    """Words, colour and hatch of every code that the grid holds, film and closed face."""
    edges = [*LEVELS_MM[1:], None]
    film: list[list[Any]] = [[1, "bare", "", ""]]
    for level, (low, high) in enumerate(zip(LEVELS_MM, edges, strict=True), 2):
        words = f"over {low:g} mm" if high is None else f"up to {high:g} mm"
        film.append([level, words, style.OKABE_ITO["sky"], f"lines-{level - 1}"])
    closed = [
        [int(state), words, _COLOURS[colour], hatch]
        for state, (words, colour, hatch) in _WORDS.items()
    ]
    return {"film": film, "closed": closed}


class SealantRig(Screen):
    """A face to coat and to close.

    Parameters
    ----------
    unit : Unit
    job : mapping
        As for ``Work.of``.
    start : sequence of str
        Passes that are there at first, as entries.
    minute : float
        What the clock shows at first [min].
    closed : bool
        Whether the face is shown closed at first.
    """

    screen = "sealant"

    face = traitlets.Dict().tag(sync=True)
    looks = traitlets.Dict().tag(sync=True)
    view = traitlets.Dict().tag(sync=True)
    grid = traitlets.Bytes().tag(sync=True, from_json=lambda value, _: bytes(value))

    def __init__(
        self,
        unit: Unit,
        job: Mapping[str, Any],
        start: Sequence[str] = (),
        minute: float = 0.0,
        closed: bool = False,
    ) -> None:
        self._unit, self._job = unit, dict(job)
        self.work = Work.of(unit, self._job)
        self._start = [(entry, 0.0) for entry in start]
        self._passes = list(self._start)
        self._minute, self._closed = float(minute), closed
        self._slide = "straight"
        self._film: Film | None = None
        read_entries([entry for entry, _ in self._passes], self.work.face)
        view, grid = self._seen()
        super().__init__(face=face_picture(self.work), looks=looks(), view=view, grid=grid)

    def hear(self, message: dict[str, Any]) -> None:
        """Do what the hand at the screen does, and show what came of it."""
        kind = message.get("type")
        if kind == "lay":
            self._lay(message.get("entries"))
        elif kind == "remove" and isinstance(at := message.get("at"), int):
            del self._passes[at : at + 1]
        elif kind == "clear":
            self._passes, self._closed, self._minute = list(self._start), False, 0.0
        elif kind == "time":
            self._minute = min(self._minute + max(0.0, _number(message.get("by"))), MOST_MINUTES)
        elif kind == "flat":
            self._flatten(_number(message.get("um")))
        elif kind == "shut":
            self._closed = bool(message.get("closed"))
        elif kind == "slide" and str(message.get("by")) in SLIDES:
            self._slide = str(message["by"])
        else:
            return
        if kind in ("remove", "clear"):
            self._film = None
        view, grid = self._seen()
        with self.hold_sync():
            self.grid = grid
            self.view = {**view, "turn": message.get("turn")}

    def _lay(self, entries: Any) -> None:
        if self._closed:
            raise AnswerError("the face is closed", mend="lift it off first")
        known = [entry for entry, _ in self._passes]
        entries = entries if isinstance(entries, list) else [entries]
        passes = read_entries([*known, *entries], self.work.face)[len(known) :]
        strokes = [stroke(self.work.face, done, self._minute) for done in passes]
        self._film = self.film.lay(*strokes)
        self._passes += [(entry, self._minute) for entry in entries]

    def _flatten(self, um: float) -> None:
        form = {**self._job.get("form", {}), "flatness_um": float(np.clip(um, *FLAT_UM))}
        self._job = {**self._job, "form": form}
        work = Work.of(self._unit, self._job)
        # The film lies as it did; only the gap that it has to fill is another one.
        self._film = replace(self.film, land=work.land)
        self.work = work

    @property
    def passes(self) -> tuple[Pass, ...]:
        """The passes laid so far."""
        return read_entries([entry for entry, _ in self._passes], self.work.face)

    @property
    def film(self) -> Film:
        """The film as it lies."""
        if self._film is None:
            self._film = self.work.lay(self.passes, [minute for _, minute in self._passes])
        return self._film

    @property
    def finding(self) -> str:
        """What the rig shows, as a sentence."""
        return self.view["finding"]

    def _seen(self) -> tuple[dict[str, Any], bytes]:
        """What the browser shows: words and places, and the grid as bytes."""
        work, film = self.work, self.film
        closed = work.close_film(self._set_down(film), self._minute) if self._closed else None
        land = work.land
        codes = closed.seal.state if closed else _film_codes(film)
        finding, facts = _told_closed(closed) if closed else self._told_open()
        if closed:
            facts.append(["The other face was", self._slid_words(closed)])
        view = {
            "entries": [entry for entry, _ in self._passes],
            "notes": [f"minute {minute:g}" for _, minute in self._passes],
            "minute": self._minute,
            "closed": self._closed,
            "slide": self._slide,
            "slides": [[key, words] for key, (words, _) in SLIDES.items()],
            "finding": finding,
            "facts": facts,
            "flat": work.face.form.flatness_um,
            "shape": list(codes.shape),
            "corner": [float(land.x_m[0] * 1e3), float(land.y_m[0] * 1e3)],
            "pitch": land.pitch_m * 1e3,
            "clean": not bool((land.is_face & (film.oily | film.dirty)).any()),
            "leaks": [_thin(leak.points_mm) for leak in closed.seal.leaks] if closed else [],
            "lumps": _lumps(closed) if closed else [],
        }
        return view, codes.astype(np.uint8).tobytes()

    def _set_down(self, film: Film) -> Film:
        way = SLIDES[self._slide][1]
        return slide(film, Q(np.array(way, dtype=float), "mm")) if any(way) else film

    def _slid_words(self, closed: Closed) -> str:
        words, beside = SLIDES[self._slide][0], closed.seal.film.beside_m
        if beside is None:
            return words
        dragged = float(beside.sum()) * closed.work.land.cell_m2 * 1e9
        return f"{words}: that alone dragged {dragged:.0f} mm³ over the edges, on one side of each"

    def _told_open(self) -> tuple[str, list[list[str]]]:
        work, film = self.work, self.film
        wet = [minute for entry, minute in self._passes if not entry.startswith(Hand.WIPE)]
        left = work.limit_minutes - (self._minute - min(wet)) if wet else work.limit_minutes
        spoilt = film.land.is_face & (film.oily | film.dirty)
        facts = [
            ["Sealant", f"{work.sealant.name}; open for {work.limit_minutes:g} minutes at most"],
            ["Gap when bolted", f"up to {max(work.gap_mm.values()):.2f} mm"],
            ["Laid", f"{film.laid_m3 * 1e9:.0f} mm³, {film.lost_m3 * 1e9:.0f} mm³ of it missed"],
        ]
        head = f"{film.covered:.0%} of the face is coated"
        tail = "the face is clean and dry"
        if spoilt.any():
            kinds = [word for word, where in (("oil", film.oily), ("dirt", film.dirty))
                     if (film.land.is_face & where).any()]  # fmt: skip
            tail = f"there is {' and '.join(kinds)} on it"
        if not wet:
            clock = "the clock starts with the first sealant"
        elif left >= 0:
            clock = f"{left:g} minutes are left to close it"
        else:
            clock = f"the oldest film is {-left:g} minutes too old"
        return f"{head}, {tail}, and {clock}.", facts

    def plain_copy(self) -> str:
        """The passes and the finding as HTML."""
        rows = "".join(
            f"<li>{escape(entry_words(done, self.work.face))}, minute {minute:g}</li>"
            for done, (_, minute) in zip(self.passes, self._passes, strict=True)
        )
        facts = "".join(
            f"<li><b>{escape(word)}</b>: {escape(text)}</li>" for word, text in self.view["facts"]
        )
        return f"<p><b>{escape(self.finding)}</b></p><ul>{facts}</ul><ol>{rows}</ol>"


def _film_codes(film: Film) -> np.ndarray:
    """Shade of each cell, with a bit each for oil and dirt; 0 off the face."""
    level = np.searchsorted(LEVELS_MM, film.thickness_m * 1e3 - 1e-9, side="left") + 1
    codes = level + OILY * film.oily + DIRTY * film.dirty
    return np.where(film.land.is_face, codes, 0)


def _told_closed(closed: Closed) -> tuple[str, list[list[str]]]:
    """The finding and the facts of a closed face."""
    work, seal = closed.work, closed.seal
    names = {segment.id: segment.name for segment in work.face.segments}
    finding = _sentence(closed)
    facts = [
        [f"Leak, {names[place].lower()}", REASONS[reason]] for place, reason in closed.leaks[:4]
    ]
    for near in seal.guides:
        state = "too much" if near.endangered else "safe"
        facts.append(
            [
                near.guide.name.capitalize(),
                f"largest lump {near.lump_mm:.1f} mm, allowed {near.guide.largest_lump_mm:g} mm: "
                f"{state}; the nearest lies {near.distance_mm:.0f} mm away",
            ]
        )
    for hole, volume in closed.flooded:
        words = f"{volume:.0f} mm³ of sealant in a blind hole: the bolt can lock on it"
        facts.append([hole_name(hole).capitalize(), words])
    if seal.pockets:
        area = sum(pocket.area_mm2 for pocket in seal.pockets)
        found = counted(len(seal.pockets), "place")
        facts.append(["Air shut in", f"{found}, {area:.0f} mm² in all"])
    seconds = seal.closing_time(work.sealant).m_as("s")
    if seconds:
        words = "less than a second" if seconds < 1 else f"about {seconds:.0f} s"
        facts.append(["To press it out", f"{words} under the full clamp, as one strip"])
    facts.append(["Came out outside", f"{seal.overflow(Kind.OUTSIDE).m_as('mm**3'):.0f} mm³"])
    return finding, facts


def _sentence(closed: Closed) -> str:
    """Where the oil gets out and what is in danger inside, or that all is well."""
    names = {s.id: s.name[0].lower() + s.name[1:] for s in closed.work.face.segments}
    inwards = closed.seal.overflow(Kind.OIL).m_as("mm**3")
    if closed.leaks:
        place, reason = closed.leaks[0]
        others = counted(len(closed.leaks) - 1, "more place")
        more = f" and in {others}" if len(closed.leaks) > 1 else ""
        head = f"The oil gets out {names[place]}{more}: {REASONS[reason]}"
    else:
        head = "The face seals: no way is left for the oil"
    guides = " and the ".join(near.guide.name for near, _ in closed.endangered)
    tail = f", too much of it near the {guides}" if guides else ""
    air = " Air is shut in." if closed.seal.pockets else ""
    return f"{head}. Inside {inwards:.0f} mm³ came out{tail}.{air}"


def _lumps(closed: Closed) -> list[list[Any]]:
    """Lumps beside the face: a radius [mm] and the points of about that size, for each size."""
    land, over = closed.work.land, closed.seal.over_m
    rows, columns = np.nonzero(over)
    radius_mm = half_round_radius(over[rows, columns] * land.pitch_m) * 1e3
    radius = np.round(radius_mm / SIZE_MM) * SIZE_MM
    x, y = land.x_m[columns] * 1e3, land.y_m[rows] * 1e3
    return [
        [round(float(size), 2), np.column_stack([x, y])[radius == size].round(1).tolist()]
        for size in np.unique(radius[radius >= LEAST_DOT_MM])
    ]


def _thin(points: np.ndarray) -> list[list[float]]:
    step = max(1, len(points) // 40)
    kept = [*points[:-1:step].tolist(), points[-1].tolist()]
    return [[round(float(x), 1), round(float(y), 1)] for x, y in kept]


def _number(value: Any) -> float:
    known = isinstance(value, int | float) and not isinstance(value, bool) and np.isfinite(value)
    return float(value) if known else 0.0


def sealant_rig(
    unit: Unit,
    face: str,
    *,
    start: Sequence[str] = (),
    minute: float = 0.0,
    closed: bool = False,
    **job: Any,
) -> SealantRig:
    """A face of the unit to coat and to close.

    Parameters
    ----------
    unit : Unit
    face : str
        Id of the face.
    start : sequence of str
        Passes that are there at first, as ``film 0.12 middle from-1-to-2``.
    minute : float
        What the clock shows at first [min].
    closed : bool
        Whether the face is shown closed at first.
    **job
        What differs from the unit file, as for ``Work.of``.

    Returns
    -------
    SealantRig
        Something a notebook displays.

    Raises
    ------
    AnswerError
        When a pass of ``start`` cannot be read.
    """
    return SealantRig(unit, {"face": face, **job}, start, minute, closed)
