"""The workshop picture, what is done and worn and why, safe orders, and how the course works."""

from __future__ import annotations

from collections.abc import Sequence

from twoshaft.models.order import OrderTask, chance_r0, plan_slip
from twoshaft.models.order.mark import LEAST_R0
from twoshaft.readings.course_and_safety.given import Acts, Course, First, Hung, Link, Picture
from twoshaft.readings.course_and_safety.lot import BANK, Lot
from twoshaft.readings.course_and_safety.scene import scene_of
from twoshaft.readings.keyed import Stream
from twoshaft.readings.scenes import LETTERS
from twoshaft.records import Option, Scenes, extended
from twoshaft.safety import Hazard, load_jobs

GRAVE, LESSER = 2, 4
"""Hazards of a scene that can cost a life or an eye, and others."""
CASES, ACTS, EYES, WHYS = 4, 5, 5, 6
"""How many scenes each question shows."""
HUNG = ((), ("sling",), ("place",), *3 * (("sling", "place"),))
"""What is wrong with each of the pictures of a case on a hoist."""
STEPS = 8
"""How many steps of a dangerous job are shown."""
OUT_OF_PLACE = 4
POINTS = (1, 2, 3, 4, 5)
LINKS = 4
RIGHT, SLIP, FOLLOWS = "right", "a mistake of its own", "wrong only because of the field before"
"""What became of a field of the marked chain."""


def _hazards(lot: Lot) -> dict[str, Hazard]:
    """The hazards of the picture by place; as many for everybody."""
    places = {place.id: place.hazards for place in lot.safety.places}
    grave = {p: h for p, hs in places.items() for h in hs if h.grave}
    lesser = {p: [h for h in hs if not h.grave] for p, hs in places.items()}
    stream = lot.stream.child("scene")
    today = {place: grave[place] for place in lot.next_ones("grave", list(grave), GRAVE)}
    pool = [place for place, hazards in lesser.items() if hazards]
    turn = lot.next_ones("lesser", pool, LESSER, more=len(pool) - LESSER)
    free = [place for place in turn if place not in today]
    return today | {place: stream.choice(lesser[place]) for place in free[:LESSER]}


def draw_picture(lot: Lot) -> Picture:
    """The workshop on a morning on which six places hold a hazard."""
    views = scene_of(lot.safety, {place: hazard.id for place, hazard in _hazards(lot).items()})
    places = [lot.safety.place_by_id[place] for place in views]
    options = tuple(Option(place.id, f"{n} {place.name}") for n, place in enumerate(places, 1))
    return Picture(views=views, options=options)


def draw_acts(lot: Lot) -> Acts:
    """Places in the workshop and what may be done at each; cases on a hoist."""
    stream = lot.stream.child("hoist")
    hung = tuple(
        _hung(stream, letter, "sling" in wrong, "place" in wrong)
        for letter, wrong in zip(LETTERS, stream.shuffled(HUNG), strict=False)
    )
    asked = tuple(stream.shuffled(BANK.lists["hung"]))
    return extended(Acts, lot.asked("acts", ACTS), hung=hung, asked=asked)


def _hung(stream: Stream, letter: str, sling: bool, place: bool) -> Hung:
    """A case on a hoist; a sling is too weak or frayed, a hook off the middle or above somebody."""
    mass = 24 + stream.integer(21)
    mark, broken = mass + 6 + 10 * stream.integer(6), 0
    if sling and stream.integer(2):
        mark = mass - 4 - stream.integer(9)
    elif sling:
        broken = 2 + stream.integer(3)
    aside, person = stream.integer(2), False
    if place and stream.integer(2):
        aside = 9 + stream.integer(8)
    elif place:
        person = True
    return Hung(letter, mass, mark, broken, stream.choice((-1, 1)) * aside, person)


def draw_first(lot: Lot) -> First:
    """Most of a dangerous job, with enough of its steps out of place."""
    jobs = load_jobs()
    (stage,) = lot.next_ones("first", jobs.stages, 1)
    stream = lot.stream.child("first")
    task = _part(jobs.operations_of[stage.id], stream)
    start = stream.shuffled(task.steps)
    while plan_slip(task, start).size < OUT_OF_PLACE:
        start = stream.shuffled(task.steps)
    return First(
        job=stage.name,
        operations=task.steps,
        start=tuple(Option(step, task.label(step)) for step in start),
    )


def _part(operations: Sequence[str], stream: Stream) -> OrderTask:
    """Some of a job's steps, as hard to put in order for everybody."""
    while True:
        chosen = set(stream.shuffled(operations)[:STEPS])
        task = OrderTask.from_unit(load_jobs(), [one for one in operations if one in chosen])
        if chance_r0(task) >= LEAST_R0:
            return task


def draw_eyes(lot: Lot) -> Scenes:
    """Jobs with who works, who is near and what each wears."""
    return lot.asked("eyes", EYES)


def draw_why(lot: Lot) -> Scenes:
    """What was stopped, and reasons of which one fits each."""
    return lot.asked("why", WHYS)


def draw_course(lot: Lot) -> Course:
    """Cases of a learner's own work, and a marked chain of fields."""
    return Course(cases=lot.asked("course_cases", CASES), chain=_chain(lot.stream.child("course")))


def _chain(stream: Stream) -> tuple[Link, ...]:
    """Four fields in a chain, with one slip and at least one field that follows from it."""
    slip = stream.integer(LINKS - 1)
    words = [RIGHT if k < slip else SLIP if k == slip else FOLLOWS for k in range(LINKS)]
    return tuple(
        Link(f"field {k}", points, word)
        for k, (points, word) in enumerate(zip(stream.shuffled(POINTS), words, strict=False), 1)
    )
