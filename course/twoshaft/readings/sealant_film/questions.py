"""Getting a face ready, and what to do when something has gone wrong: the must-pass questions."""

from __future__ import annotations

from twoshaft.questions import bank_of
from twoshaft.readings.keyed import Stream
from twoshaft.readings.sealant_film.given import After, Prepare, Scene
from twoshaft.readings.sealant_film.lot import Lot, step
from twoshaft.units.sections.faces import SealantKind

BANK = bank_of("sealant-film")


def scene(lot: Lot, name: str, turn: str, stream: Stream) -> Scene:
    """One version of a question, another at every attempt; ``turn`` names whose turn it is."""
    version = lot.in_turn(turn, list(BANK.questions[name].values()))[0]
    return Scene(version.id, version.story, tuple(stream.shuffled(version.options)))


def draw_prepare(lot: Lot) -> Prepare:
    """What may be done before sealant touches the face, and a situation."""
    stream = lot.stream.child("prepare")
    work, habits = BANK.lists["work"], BANK.lists["habits"]
    ticks = [*lot.next_ones("helps", work, 4), *lot.next_ones("spoils", habits, 4)]
    return Prepare(
        options=tuple(stream.shuffled(ticks)), scene=scene(lot, "danger", "scene", stream)
    )


def draw_after(lot: Lot) -> After:
    """A mishap, and another face that waits for its oil."""
    stream = lot.stream.child("after")
    sealant = lot.sealant(lot.in_turn("cure", list(SealantKind))[0])
    cold = stream.choice((1.0, 1.5, 2.0))
    needed = sealant.cure_hours * cold
    ready = stream.choice((False, False, True))
    low, high = (needed + 2, needed + 12) if ready else (0.25 * needed, needed - 2)
    return After(
        mishap=scene(lot, "mishap", "mishap", stream),
        sealant=sealant.id,
        cure_hours=sealant.cure_hours,
        cold_factor=cold,
        waited_hours=step(stream, round(low), round(high), 1),
        oil=tuple(stream.shuffled(BANK.lists["oil"])),
    )
