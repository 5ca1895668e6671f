"""The workshop picture, safe acts, their order and reasons, and how the course works."""

from __future__ import annotations

from twoshaft.models.order import OrderTask, plan_slip
from twoshaft.readings.course_and_safety.lot import Lot
from twoshaft.readings.course_and_safety.scene import scene_of
from twoshaft.readings.keyed import Stream
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


def draw_picture(lot: Lot) -> dict:
    """``views`` shown at each place and the places as ``options``."""
    views = scene_of(lot.safety, {place: hazard.id for place, hazard in _hazards(lot)[0].items()})
    options = [
        [place, f"{n} {lot.safety.place_by_id[place].name}"] for n, place in enumerate(views, 1)
    ]
    return {"views": views, "options": options}


def draw_acts(lot: Lot) -> dict:
    """Three ``places`` on another day: number, name, what is ``seen``, ``acts`` and ``whys``."""
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
        acts = [[hazard.id, hazard.act]]
        acts += [[f"{hazard.id}-{n}", wrong.act] for n, wrong in enumerate(hazard.wrong, 1)]
        acts += [[other.id, other.act] for other in others[:3]]
        whys = [[hazard.id, hazard.why], *([other.id, other.why] for other in others[3:8])]
        places.append(
            {
                "place": [place, f"{number[place]} {lot.safety.place_by_id[place].name}"],
                "seen": hazard.seen,
                "acts": stream.shuffled(acts),
                "whys": stream.shuffled(whys),
            }
        )
    return {"places": places}


def draw_first(lot: Lot) -> dict:
    """A job's name, its ``operations`` and their ``start`` order."""
    jobs = load_jobs()
    (stage,) = lot.next_ones("first", jobs.stages, 1)
    operations = list(jobs.operations_of[stage.id])
    task = OrderTask.from_unit(jobs, operations)
    stream = lot.stream.child("first")
    start = stream.shuffled(task.steps)
    while plan_slip(task, start).size < OUT_OF_PLACE:
        start = stream.shuffled(task.steps)
    return {
        "job": stage.name,
        "operations": operations,
        "start": [[step, task.label(step)] for step in start],
    }


def draw_eyes(lot: Lot) -> dict:
    """Eight jobs as ``options``."""
    picked = [
        job
        for eyes in (True, False)
        for job in lot.next_ones(
            f"eyes-{eyes}", [j for j in lot.safety.jobs if j.eyes is eyes], JOBS_OF_EACH
        )
    ]
    return {"options": [[job.id, job.name] for job in lot.stream.child("eyes").shuffled(picked)]}


def draw_why(lot: Lot) -> dict:
    """Three ``cautions`` with six reasons as ``options``, of which one fits."""
    stream = lot.stream.child("why")
    cautions = []
    for caution in lot.next_ones("why", lot.safety.cautions, WHYS):
        others: dict[str, list[str]] = {}
        for other in stream.shuffled(lot.safety.cautions):
            if other.theme != caution.theme:
                others.setdefault(other.theme, [other.id, other.why])
        options = [[caution.id, caution.why], *list(others.values())[: WHY_OPTIONS - 1]]
        cautions.append(
            {"caution": [caution.id, caution.text], "options": stream.shuffled(options)}
        )
    return {"cautions": cautions}


def draw_course(lot: Lot) -> dict:
    """Sentences about the course as ``options``, and a marked ``chain`` of fields.

    Each field of the chain has its name, its points and what became of it.
    """
    stream = lot.stream.child("course")
    facts = lot.next_ones("facts", lot.safety.facts, FACTS)
    options = [
        [fact.id, fact.right if k < FACTS_RIGHT else fact.wrong]
        for k, fact in enumerate(stream.shuffled(facts))
    ]
    return {"options": stream.shuffled(options), "chain": _chain(stream)}


def _chain(stream: Stream) -> list[list]:
    """Four fields in a chain, with one slip and at least one field that follows from it."""
    slip = stream.integer(len(POINTS) - 1)
    words = [RIGHT if k < slip else SLIP if k == slip else FOLLOWS for k in range(len(POINTS))]
    return [
        [f"field {k}", p, w]
        for k, (p, w) in enumerate(zip(stream.shuffled(POINTS), words, strict=True), 1)
    ]
