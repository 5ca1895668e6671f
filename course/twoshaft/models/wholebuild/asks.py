"""What a unit asks its builder to decide, step by step, and the answer fields that hold it.

Nothing is listed by hand: a way round is asked where an operation names wrong ways, where the
driver presses where a whole bearing is pressed in cold, a shim where a support has its final
operation, wrench, setting and state of the threads where a group of fasteners is tightened (pattern
and rounds where it holds down a flange), a film where a face is coated, the proof where a check of
the lockout is made, and what to do next where a check of the finished unit is made.
"""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from dataclasses import dataclass, field
from typing import Any

from twoshaft.models import joint
from twoshaft.models.shift import gate_plan, hand_moves, stopped_also
from twoshaft.models.tooling import pressed_bearings
from twoshaft.models.wholebuild.job import Job
from twoshaft.units.kept import kept
from twoshaft.units.sections.faults import FinalCheck
from twoshaft.units.sections.order import WrongWay
from twoshaft.units.sections.shift import MustBlock
from twoshaft.units.unit import Unit

ORDER, LOG = "build-order", "build-log"
"""Under which values hold the steps that stand, and all that was done in turn."""
OUT = "out:"
"""Before a step in the log: it was taken out again."""
GO_ON, OPEN = "go-on", "open"
PATTERNS = {
    "clockwise": "One after the other round the ring",
    "crosswise": "Crosswise, each as far from those done as can be",
    "middle-outwards": "From the middle of the pattern outwards",
}
AS_IT_LIES, CHANGED = "as-it-lies", "changed"
WAYS = {
    AS_IT_LIES: "It goes in as it lies",
    CHANGED: "It goes in the other way",
}
"""What is done with parts of which it is told how they lie."""
LEFT, NEW, OILED, LOCKED = "left", "new", "oiled", "locked"
THREADS = {
    LEFT: "Tighten them as they are",
    NEW: "Take new ones, as delivered",
    OILED: "Wash them, then oil them",
    LOCKED: "Wash them, then put compound on",
}
"""What is done about threads of which it is told how they are found."""
TREATED = {"as-delivered": NEW, "oiled": OILED, "locker": LOCKED}
"""What brings threads into a state of the kind."""
DRIVERS = {
    "inner": "On the inner ring",
    "outer": "On the outer ring",
    "both": "On both rings",
}
"""Where a driver can press on a whole bearing."""
MOST_ROUNDS = 4
PROOF_MOVES = 10


@dataclass(frozen=True)
class FieldSpec:
    """An answer field that holds one part of a decision.

    Attributes
    ----------
    name : str
        Name of the field; also the key of the value in a decision's ``choices``.
    kind : str
        ``choice``, ``number``, ``path``, ``film`` or ``order``.
    prompt : str
    arguments : mapping
        What the sheet's constructor of that kind takes besides name and prompt.
    together : str
        Name of the answer in which a sheet asks it as one of several lines; empty where it is
        asked alone. See ``asked_together``.

    Examples
    --------
    >>> from twoshaft.models.wholebuild import Job
    >>> spec = fields_of(Job.of(unit, {"asked": ["shim-differential"]}))[1]
    >>> spec.name, spec.kind, dict(spec.arguments)
    ('shim-differential', 'number', {'unit': 'mm'})
    """

    name: str
    kind: str
    prompt: str
    arguments: Mapping[str, Any] = field(default_factory=dict)
    together: str = ""


@dataclass(frozen=True, eq=False)
class Ask:
    """One decision of the builder.

    Attributes
    ----------
    id : str
        As ``shim-differential`` or ``way-fit-lockout``.
    kind : str
        ``way``, ``driver``, ``shim``, ``joint``, ``film``, ``proof`` or ``check``.
    step : str
        The step at which it is taken.
    about : str
        Id of the operation, support, group or face, ``EARLIER-LATER`` of the direct shift that
        is proven, or the step that checks.
    name : str
        What it is about, in words.
    fields : tuple of FieldSpec

    Examples
    --------
    >>> from twoshaft.models.wholebuild import Job
    >>> for ask in asks_at(Job.of(unit), "fit-diff-shim"):
    ...     print(f"{ask.kind} {ask.about}: {ask.fields[0].prompt}")
    way fit-diff-shim: Press shim and differential ring into the main case: which way round?
    shim differential: Differential: which thickness of shim in all?
    """

    id: str
    kind: str
    step: str
    about: str
    name: str
    fields: tuple[FieldSpec, ...]


@kept()
def asks_of(job: Job) -> tuple[Ask, ...]:
    """Every decision that the job's steps ask for, in the order of the unit file.

    Those that ``job.asked`` leaves out are not in it.

    Parameters
    ----------
    job : Job

    Returns
    -------
    tuple of Ask

    Examples
    --------
    >>> from twoshaft.models.wholebuild import Job
    >>> {ask.kind for ask in asks_of(Job.of(unit, {"asked": ["shim-differential"]}))}
    {'shim'}
    >>> len(asks_of(Job.of(unit)))
    50
    """
    every = every_ask(job)
    return every if job.asked is None else tuple(ask for ask in every if ask.id in job.asked)


@kept()
def every_ask(job: Job) -> tuple[Ask, ...]:
    """As ``asks_of``, with those that the job does not leave to the builder.

    Examples
    --------
    >>> from twoshaft.models.wholebuild import Job
    >>> job = Job.of(unit, {"asked": ["shim-differential"]})
    >>> len(asks_of(job)), len(every_ask(job))
    (1, 50)
    """
    place = {step: k for k, step in enumerate(job.task.steps)}
    rank = ("way", "driver", "shim", "film", "joint", "proof", "check")
    each = (_ways, _drivers, _shims, _films, _joints, _proofs, _checks)
    found = [ask for asks in each for ask in asks(job)]
    return tuple(sorted(found, key=lambda ask: (place[ask.step], rank.index(ask.kind))))


def asks_at(job: Job, step: str) -> tuple[Ask, ...]:
    """The decisions that one step asks for.

    Examples
    --------
    >>> from twoshaft.models.wholebuild import Job
    >>> [ask.id for ask in asks_at(Job.of(unit), "fit-diff-shim")]
    ['way-fit-diff-shim', 'shim-differential']
    """
    return tuple(ask for ask in asks_of(job) if ask.step == step)


def fields_of(job: Job) -> tuple[FieldSpec, ...]:
    """Every answer field of the bench, in which a job sheet holds the decisions.

    The first, ``build-order`` (kind *order*), holds the steps as they stand in the build; they are
    shown stage by stage, shuffled. The others hold the decisions, each as its ask says. A solution
    makes them with ``sheet.ask_all(fields_of(job))``, or those of one task with the fields of an
    ask.

    Parameters
    ----------
    job : Job

    Examples
    --------
    >>> from twoshaft.models.wholebuild import Job
    >>> [spec.name for spec in fields_of(Job.of(unit, {"asked": ["joint-case-bolts"]}))][:4]
    ['build-order', 'state-case-bolts', 'tool-case-bolts', 'torque-case-bolts']
    """
    task = job.task
    names = {stage.id: stage.name for stage in task.unit.stages}
    place = {stage: k for k, stage in enumerate(names)}
    # A stable sort: the steps of a stage stay shuffled.
    start = sorted(job.shuffled("start", list(task.steps)), key=lambda s: place[task.stage(s)])
    first = FieldSpec(
        ORDER, "order", "The steps in the order in which you did them",
        {"steps": task.labelled(start), "stages": {s: names[task.stage(s)] for s in start}},
    )  # fmt: skip
    return (first, *(spec for ask in asks_of(job) for spec in ask.fields))


@kept()
def asked_together(job: Job) -> dict[str, FieldSpec]:
    """Answers of kind ``each`` that hold decisions of several steps, by name.

    A line's key is the name of the decision's own field. Besides the groups that are tightened,
    the threads of all others of which it is told how they are found are asked.

    Examples
    --------
    >>> from twoshaft.models.wholebuild import Job
    >>> job = Job.of(unit, {"threads": {"idler-bolt": "They are wet with oil"}})
    >>> asked_together(job)["threads"].arguments["lines"]
    [['state-idler-bolt', 'Bolt of the reverse idler shaft: They are wet with oil']]
    """
    found: dict[str, FieldSpec] = {}
    lines: dict[str, dict[str, str]] = {}
    for spec in (spec for ask in asks_of(job) for spec in ask.fields if spec.together):
        lines.setdefault(spec.together, {})[spec.name] = spec.prompt
        found[spec.together] = spec
    for group in job.threads:
        spec = _threads(job, group)
        lines.setdefault(spec.together, {})[spec.name] = spec.prompt
        found.setdefault(spec.together, spec)
    prompts = {
        "ways": "Does each of these go in as it lies?",
        "threads": "What is done about the threads before they are tightened?",
        "verdicts": "What do you make of each check?",
    }
    return {
        name: FieldSpec(
            name, "each", prompts[name],
            {"lines": [list(pair) for pair in lines[name].items()],
             "options": spec.arguments["options"]},
        )
        for name, spec in found.items()
    }  # fmt: skip


def sheet_fields(job: Job, *kinds: str) -> tuple[FieldSpec, ...]:
    """Answers of decisions of some kinds as a sheet asks for them, those of several lines first.

    Examples
    --------
    >>> from twoshaft.models.wholebuild import Job
    >>> job = Job.of(unit, {"asked": ["shim-differential"]})
    >>> [spec.name for spec in sheet_fields(job, "way", "shim")]
    ['shim-differential']
    """
    held = {"way": "ways", "joint": "threads", "check": "verdicts"}
    together = asked_together(job)
    found = [together[held[kind]] for kind in kinds if held.get(kind) in together]
    found += [
        spec
        for kind in kinds
        for ask in asks_of(job)
        if ask.kind == kind
        for spec in ask.fields
        if not spec.together
    ]
    return tuple(found)


def apart(job: Job, values: Mapping[str, Any]) -> dict[str, Any]:
    """Values by field name, each line of the answers that hold several as a value of its own.

    Examples
    --------
    >>> from twoshaft.models.wholebuild import Job
    >>> apart(Job.of(unit), {"shim-differential": 1})
    {'shim-differential': 1}
    """
    names = asked_together(job)
    found = {name: value for name, value in values.items() if name not in names}
    for name in names:
        found |= values.get(name) or {}
    return found


def state_after(job: Job, group: str, done: str) -> str:
    """State of a group's threads after what was done about them.

    Examples
    --------
    >>> from twoshaft.models.wholebuild import Job
    >>> job = Job.of(unit, {"found": {"idler-bolt": "dry"}, "threads": {"idler-bolt": "Dry"}})
    >>> state_after(job, "idler-bolt", "left"), state_after(job, "idler-bolt", "new")
    ('dry', 'as-delivered')
    """
    if group not in job.threads:
        return done
    treated = {key: state for state, key in (TREATED | treatments(job.unit)).items()}
    return job.found_state(group) if done == LEFT else treated[done]


def treatments(unit: Unit) -> dict[str, str]:
    """What brings threads into each state that something brings them into, by the state's id.

    Examples
    --------
    >>> treatments(unit)["oiled"]
    'oiled'
    """
    return {
        state.id: TREATED[state.known_as]
        for state in unit.fasteners.states
        if state.known_as in TREATED
    }


def ways_of(job: Job, operation: str) -> dict[str, WrongWay | None]:
    """Ways round by the key of their option; None is the right one.

    Examples
    --------
    >>> from twoshaft.models.wholebuild import Job
    >>> for key, way in ways_of(Job.of(unit), "fit-input-seal").items():
    ...     print(key, "right" if way is None else way.name)
    way-1 The lip faces the clutch; grease the lip and the hollow behind it
    way-2 right
    """
    entry = job.unit.operation_by_id[operation]
    if (lies := job.lies.get(operation)) is not None:
        wrong = next(way for way in entry.wrong_ways if way.id == lies.way)
        as_it_lies, changed = (wrong, None) if lies.so else (None, wrong)
        return {AS_IT_LIES: as_it_lies, CHANGED: changed}
    by_id: dict[str, WrongWay | None] = {way.id: way for way in entry.wrong_ways} | {"": None}
    order = job.shuffled(f"way-{operation}", list(by_id))
    return {f"way-{k}": by_id[id] for k, id in enumerate(order, 1)}


def way_words(job: Job, operation: str, way: WrongWay | None) -> str:
    """What faces which way.

    Examples
    --------
    >>> from twoshaft.models.wholebuild import Job
    >>> way_words(Job.of(unit), "fit-input-seal", None)
    'The lip faces the gears; grease the lip and the hollow behind it'
    """
    words = job.unit.operation_by_id[operation].orientation if way is None else way.name
    return (words or "").rstrip(".")


def _ways(job: Job) -> Iterator[Ask]:
    for step, members in job.members.items():
        for operation in members:
            entry = job.unit.operation_by_id[operation]
            if not entry.wrong_ways:
                continue
            options = [
                [key, way_words(job, operation, way)]
                for key, way in ways_of(job, operation).items()
            ]
            prompt, together = f"{entry.name}: which way round?", ""
            if operation in job.lies:
                prompt, together = f"{entry.name}: {job.lies[operation].seen}", "ways"
                options = [list(pair) for pair in WAYS.items()]
            name = f"way-{operation}"
            spec = FieldSpec(name, "choice", prompt, {"options": options}, together)
            yield Ask(spec.name, "way", step, operation, entry.name, (spec,))


def _drivers(job: Job) -> Iterator[Ask]:
    for step, members in job.members.items():
        for operation in members:
            if not pressed_bearings(job.unit, [operation]):
                continue
            name = job.unit.operation_by_id[operation].name
            spec = FieldSpec(
                f"driver-{operation}", "choice", f"{name}: where does the driver press?",
                {"options": [list(pair) for pair in DRIVERS.items()]},
            )  # fmt: skip
            yield Ask(spec.name, "driver", step, operation, name, (spec,))


def _shims(job: Job) -> Iterator[Ask]:
    bearings = job.unit.bearings_if_any
    for support in () if bearings is None else bearings.supports:
        step = job.step_of(support.final_operation)
        if step is None:
            continue
        prompt = f"{support.name}: which thickness of shim in all?"
        spec = FieldSpec(f"shim-{support.id}", "number", prompt, {"unit": "mm"})
        yield Ask(spec.name, "shim", step, support.id, support.name, (spec,))


def _joints(job: Job) -> Iterator[Ask]:
    section = job.unit.fasteners_if_any
    if section is None:
        return
    for group in section.groups:
        step = job.step_of_any(group.operations)
        if step is None:
            continue
        wrenches = [w for w in section.wrenches if job.wrenches is None or w.id in job.wrenches]
        tools = [[w.id, f"{w.name}, {w.low_nm:g} to {w.high_nm:g} N·m"] for w in wrenches]
        adapter = next((a for a in section.adapters if a.id == group.adapter), None)
        over = "" if adapter is None else f" over the {adapter.name.lower()}"
        name = group.name
        specs = [
            _threads(job, group.id),
            FieldSpec(f"tool-{group.id}", "choice", f"{name}: with which wrench{over}?",
                      {"options": tools}),
            FieldSpec(f"torque-{group.id}", "number", f"{name}: what do you set on the wrench?",
                      {"unit": "N·m"}),
        ]  # fmt: skip
        if group.flange is not None:
            rounds = [[str(n), f"{n} round{'' if n == 1 else 's'}"]
                      for n in range(1, MOST_ROUNDS + 1)]  # fmt: skip
            specs += [
                FieldSpec(f"pattern-{group.id}", "choice", f"{name}: in which sequence?",
                          {"options": [list(pair) for pair in PATTERNS.items()]}),
                FieldSpec(f"rounds-{group.id}", "choice",
                          f"{name}: how many rounds at the full setting?", {"options": rounds}),
            ]  # fmt: skip
        yield Ask(f"joint-{group.id}", "joint", step, group.id, name, tuple(specs))


def _threads(job: Job, group: str) -> FieldSpec:
    entry, section = job.unit.fasteners.group(group), job.unit.fasteners
    if group in job.threads:
        return FieldSpec(
            f"state-{group}", "choice", f"{entry.name}: {job.threads[group]}",
            {"options": [list(pair) for pair in THREADS.items()]}, "threads",
        )  # fmt: skip
    states = [[state.id, state.name] for state in section.states]
    return FieldSpec(
        f"state-{group}", "choice", f"{entry.name}: what is on the threads?", {"options": states}
    )


def pattern_order(job: Job, group: str, pattern: str) -> tuple[int, ...]:
    """The sequence that a pattern names, for a group with a flange.

    Examples
    --------
    >>> from twoshaft.models.wholebuild import Job
    >>> pattern_order(Job.of(unit), "case-bolts", "clockwise")[:6]
    (0, 1, 2, 3, 4, 5)
    """
    return pattern_of(job.unit, group, pattern)


@kept()
def pattern_of(unit: Unit, group: str, pattern: str) -> tuple[int, ...]:
    """The sequence that a pattern names, for a group of a unit with a flange.

    Examples
    --------
    >>> pattern_of(unit, "case-bolts", "crosswise")[:6]
    (0, 7, 3, 10, 5, 12)
    """
    bolts = joint.Fastening.of(unit, group)
    if pattern == "middle-outwards":
        return joint.middle_outwards(bolts.positions_m)
    make = {"clockwise": joint.clockwise, "crosswise": joint.crosswise}[pattern]
    return make(bolts.group.count)


def _films(job: Job) -> Iterator[Ask]:
    section = job.unit.faces_if_any
    for face in () if section is None else section.faces:
        step = job.step_of(face.lay_operation)
        if step is None:
            continue
        spec = FieldSpec(
            f"film-{face.id}", "film", f"{face.name}: lay the sealant",
            {"job": {**job.faces.get(face.id, {}), "face": face.id}},
        )  # fmt: skip
        yield Ask(spec.name, "film", step, face.id, face.name, (spec,))


def lockout_check(job: Job) -> FinalCheck | None:
    """The check of the finished unit that proves the lockout.

    Examples
    --------
    >>> from twoshaft.models.wholebuild import Job
    >>> lockout_check(Job.of(unit)).name
    'Push from fifth straight towards reverse'
    """
    checks = () if job.unit.faults_if_any is None else job.unit.faults.checks
    return next((c for c in checks if c.kind == "lockout" and job.step_of_any(c.operations)), None)


def lockout_step(job: Job) -> str | None:
    """The step that proves the lockout, if the job has one.

    Examples
    --------
    >>> from twoshaft.models.wholebuild import Job
    >>> short = Job.of(unit, {"operations": ["wash-housing", "fit-magnet"]})
    >>> lockout_step(Job.of(unit)), lockout_step(short)
    ('check-lockout', None)
    """
    check = lockout_check(job)
    return None if check is None else job.step_of_any(check.operations)


def blocks_of(job: Job) -> dict[str, MustBlock]:
    """Direct shifts that must be proven to be stopped, as ``EARLIER-LATER``.

    Examples
    --------
    >>> from twoshaft.models.wholebuild import Job
    >>> list(blocks_of(Job.of(unit)))
    ['fifth-reverse']
    """
    shift = job.unit.shift_if_any
    if shift is None or lockout_step(job) is None:
        return {}
    return {f"{block.earlier}-{block.later}": block for block in shift.must_block}


def _proofs(job: Job) -> Iterator[Ask]:
    step = lockout_step(job)
    if step is None:
        return
    for id, block in blocks_of(job).items():
        name = f"Lockout from {block.earlier} to {block.later}"
        also = stopped_also(job.unit.shift, block.earlier, block.later)
        moves = [[move.code, move.label] for move in hand_moves(job.unit.shift)]
        spec = FieldSpec(
            f"proof-{id}", "path", f"{name}{also}: which moves prove it by hand?",
            {"moves": moves, "plan": gate_plan(job.unit.shift), "most": PROOF_MOVES},
        )  # fmt: skip
        yield Ask(spec.name, "proof", step, id, name, (spec,))


def checks_at(job: Job, step: str) -> tuple[FinalCheck, ...]:
    """Checks of the finished unit that a step makes; none where the step does not check.

    Examples
    --------
    >>> from twoshaft.models.wholebuild import Job
    >>> job = Job.of(unit)
    >>> [check.id for check in checks_at(job, "check-gears")], checks_at(job, "fit-diff-shim")
    (['try-gears', 'feel-detents', 'count-turns'], ())
    """
    if job.unit.faults_if_any is None or not job.task.is_check[job.task.number[step]]:
        return ()
    mine = set(job.members[step])
    return tuple(c for c in job.unit.faults.checks if mine & set(c.operations))


def _checks(job: Job) -> Iterator[Ask]:
    for step in job.task.steps:
        if not checks_at(job, step):
            continue
        label = job.task.label(step)
        options = [
            [GO_ON, "It is as it should be: go on"],
            [OPEN, "It is not as it should be: find the fault before going on"],
        ]
        spec = FieldSpec(
            f"verdict-{step}", "choice", f"{label}: what do you make of it?",
            {"options": options}, "verdicts" if job.lies else "",
        )  # fmt: skip
        yield Ask(f"check-{step}", "check", step, step, label, (spec,))
