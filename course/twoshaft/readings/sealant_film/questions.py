"""Scenes of the bench, and a face that waits for its oil: what must be right to pass."""

from __future__ import annotations

from twoshaft.questions import bank_of
from twoshaft.readings.keyed import Stream
from twoshaft.readings.sealant_film.given import After, Curing, Prepare
from twoshaft.readings.sealant_film.lot import Lot, step

BANK = bank_of("sealant-film")
SCENES = 4
COLD = (1.0, 1.5, 2.0)
SOON_HOURS = 6.0
"""What still counts as soon, when a face waits for its oil."""
WAITING = ("now", "soon", "later")


def draw_prepare(lot: Lot) -> Prepare:
    """Faces before the film; hands and eyes beside solvent and sealant."""
    stream = lot.stream.child("prepare")
    return Prepare(
        face=lot.scenes_asked("face", BANK, SCENES, lambda: _figures(stream)),
        danger=lot.scenes_asked("danger", BANK, SCENES, lambda: _figures(stream)),
    )


def _figures(stream: Stream) -> dict[str, object]:
    """What scenes are filled with: blades, scores [mm], lengths, times, counts, degrees."""
    allowed, bridges = step(stream, 0.04, 0.1, 0.01), step(stream, 0.2, 0.3, 0.05)
    return {
        "allowed": f"{allowed:.2f}",
        "under": f"{allowed - step(stream, 0.01, 0.03, 0.01):.2f}",
        "over": f"{allowed + step(stream, 0.02, 0.09, 0.01):.2f}",
        "bridges": f"{bridges:.2f}",
        "shallow": f"{bridges * stream.uniform(0.3, 0.8):.2f}",
        "score": f"{bridges * stream.uniform(1.3, 2.5):.2f}",
        "minutes": 4 + stream.integer(20),
        "hours": 2 + stream.integer(20),
        "mm": 6 + stream.integer(30),
        "cm": 15 + 5 * stream.integer(18),
        "m": 2 + stream.integer(9),
        "few": 2 + stream.integer(4),
        "holes": 3 + stream.integer(6),
        "bolts": 9 + stream.integer(9),
        "deep": 2 + stream.integer(9),
        "deg": 90 + 5 * stream.integer(11),
        "allowed_minutes": 26 + stream.integer(20),
    }


def draw_after(lot: Lot) -> After:
    """What happened to some faces; a face that waits for its oil, and others."""
    stream = lot.stream.child("after")
    sealant = lot.sealant(lot.in_turn("cure", lot.kinds)[0])
    cold = stream.choice(COLD)
    own = lot.in_turn("waiting", _possible(sealant.cure_hours * cold))[0]
    kinds = [*(kind for kind in WAITING if kind != own), stream.choice(WAITING)]
    return After(
        mishap=lot.scenes_asked("mishap", BANK, SCENES, lambda: _figures(stream)),
        sealant=sealant.id,
        cure_hours=sealant.cure_hours,
        cold_factor=cold,
        waited_hours=_waited(own, sealant.cure_hours * cold, stream),
        others=tuple(_curing(kind, stream) for kind in stream.shuffled(kinds)),
        oil=BANK.lists["oil"],
    )


def _possible(needed: float) -> list[str]:
    """How a face can stand that cures in so many hours, clear of every border."""
    return [kind for kind, least in zip(WAITING, (0.0, 2.0, 9.0), strict=True) if needed >= least]


def _waited(kind: str, needed: float, stream: Stream) -> float:
    """Hours after which a face that needs so many stands as it should, clear of every border."""
    low, high = {
        "now": (needed + 2, needed + 12),
        "soon": (max(0.0, needed - 5), needed - 1),
        "later": (max(1.0, 0.25 * needed), needed - 8),
    }[kind]
    return step(stream, round(low), round(max(low, high)), 1)


def _curing(kind: str, stream: Stream) -> Curing:
    cure, cold = stream.choice((12, 16, 18, 20, 24)), stream.choice(COLD)
    return Curing(cure, cold, _waited(kind, cure * cold, stream))
