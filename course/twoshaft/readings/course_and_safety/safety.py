"""The workshop picture, safe acts, their order and reasons, and how the course works."""

from __future__ import annotations

from twoshaft.models.order import OrderTask, plan_slip
from twoshaft.readings.course_and_safety.given import (
    Acts,
    Caution,
    Course,
    Danger,
    Eyes,
    First,
    Link,
    Picture,
    Why,
)
from twoshaft.readings.course_and_safety.lot import Lot
from twoshaft.readings.course_and_safety.scene import scene_of
from twoshaft.readings.keyed import Stream
from twoshaft.records import Option
from twoshaft.safety import Hazard, load_jobs

GRAVE, LESSER = 2, 4
"""Hazards of a scene whose safe act must be known, and others."""
FACTS, FACTS_RIGHT = 8, 4
JOBS_OF_EACH = 4
WHYS, WHY_OPTIONS = 3, 6
OUT_OF_PLACE = 4
POINTS = (1, 2, 2, 3)
RIGHT, SLIP, FOLLOWS = "right", "a slip of its own", "wrong only because of the field before"
"""What became of a field of the marked chain."""


def _hazards(lot: Lot) -> tuple[dict[str, Hazard], dict[str, Hazard]]:
    """The hazards of the picture by place, and those of another day; as many for everybody.

    The two days share no hazard, so that one task does not answer the other.
    """
    places = {place.id: place.hazards for place in lot.safety.places}
    grave = {p: h for p, hs in places.items() for h in hs if h.must_pass}
    lesser = {p: [h for h in hs if not h.must_pass] for p, hs in places.items()}
    stream = lot.stream.child("scene")
    turn = lot.next_ones("grave", list(grave), GRAVE, more=GRAVE)
    today, other_day = ({p: grave[p] for p in part} for part in (turn[:GRAVE], turn[GRAVE:]))
    pool = [place for place, hazards in lesser.items() if hazards]
    turn = lot.next_ones("lesser", pool, LESSER, more=len(pool) - LESSER)
    free = [place for place in turn if place not in today]
    today |= {place: stream.choice(lesser[place]) for place in free[:LESSER]}
    place = next(place for place in free[LESSER:] if place not in other_day)
    return today, {**other_day, place: stream.choice(lesser[place])}


def draw_picture(lot: Lot) -> Picture:
    """The workshop on a morning on which six places hold a hazard."""
    views = scene_of(lot.safety, {place: hazard.id for place, hazard in _hazards(lot)[0].items()})
    places = [lot.safety.place_by_id[place] for place in views]
    options = tuple(Option(place.id, f"{n} {place.name}") for n, place in enumerate(places, 1))
    return Picture(views=views, options=options)


def draw_acts(lot: Lot) -> Acts:
    """Three places on another day."""
    stream = lot.stream.child("acts")
    _, mine = _hazards(lot)
    number = {place.id: n for n, place in enumerate(lot.safety.places, 1)}
    places = []
    for place in sorted(mine, key=number.__getitem__):
        hazard = mine[place]
        theme = lot.safety.caution_by_id[hazard.caution].theme
        others = [
            other
            for other in stream.shuffled(list(lot.safety.hazard_by_id.values()))
            if lot.safety.caution_by_id[other.caution].theme != theme
        ]
        acts = [Option(hazard.id, hazard.act)]
        acts += [Option(f"{hazard.id}-{n}", wrong.act) for n, wrong in enumerate(hazard.wrong, 1)]
        acts += [Option(other.id, other.act) for other in others[:3]]
        whys = [Option(one.id, one.why) for one in (hazard, *others[3:8])]
        places.append(
            Danger(
                place=Option(place, f"{number[place]} {lot.safety.place_by_id[place].name}"),
                seen=hazard.seen,
                acts=tuple(stream.shuffled(acts)),
                whys=tuple(stream.shuffled(whys)),
            )
        )
    return Acts(places=tuple(places))


def draw_first(lot: Lot) -> First:
    """A dangerous job with enough of its steps out of place."""
    jobs = load_jobs()
    (stage,) = lot.next_ones("first", jobs.stages, 1)
    operations = list(jobs.operations_of[stage.id])
    task = OrderTask.from_unit(jobs, operations)
    stream = lot.stream.child("first")
    start = stream.shuffled(task.steps)
    while plan_slip(task, start).size < OUT_OF_PLACE:
        start = stream.shuffled(task.steps)
    return First(
        job=stage.name,
        operations=tuple(operations),
        start=tuple(Option(step, task.label(step)) for step in start),
    )


def draw_eyes(lot: Lot) -> Eyes:
    """Eight jobs, four of which ask for eye protection."""
    picked = [
        job
        for eyes in (True, False)
        for job in lot.next_ones(
            f"eyes-{eyes}", [j for j in lot.safety.jobs if j.eyes is eyes], JOBS_OF_EACH
        )
    ]
    jobs = lot.stream.child("eyes").shuffled(picked)
    return Eyes(options=tuple(Option(job.id, job.name) for job in jobs))


def draw_why(lot: Lot) -> Why:
    """Three cautions with six reasons each, of which one fits."""
    stream = lot.stream.child("why")
    cautions = []
    for caution in lot.next_ones("why", lot.safety.cautions, WHYS):
        others: dict[str, Option] = {}
        for other in stream.shuffled(lot.safety.cautions):
            if other.theme != caution.theme:
                others.setdefault(other.theme, Option(other.id, other.why))
        options = [Option(caution.id, caution.why), *list(others.values())[: WHY_OPTIONS - 1]]
        cautions.append(
            Caution(
                caution=Option(caution.id, caution.text), options=tuple(stream.shuffled(options))
            )
        )
    return Why(cautions=tuple(cautions))


def draw_course(lot: Lot) -> Course:
    """Sentences about the course, half of them true, and a marked chain of fields."""
    stream = lot.stream.child("course")
    facts = lot.next_ones("facts", lot.safety.facts, FACTS)
    options = [
        Option(fact.id, fact.right if k < FACTS_RIGHT else fact.wrong)
        for k, fact in enumerate(stream.shuffled(facts))
    ]
    return Course(options=tuple(stream.shuffled(options)), chain=_chain(stream))


def _chain(stream: Stream) -> tuple[Link, ...]:
    """Four fields in a chain, with one slip and at least one field that follows from it."""
    slip = stream.integer(len(POINTS) - 1)
    words = [RIGHT if k < slip else SLIP if k == slip else FOLLOWS for k in range(len(POINTS))]
    return tuple(
        Link(f"field {k}", points, word)
        for k, (points, word) in enumerate(zip(stream.shuffled(POINTS), words, strict=True), 1)
    )
