"""What a faults section gets wrong: names that lead nowhere, and checks that a sound unit fails."""

from __future__ import annotations

from collections.abc import Callable

from twoshaft.models.faults.built import as_built
from twoshaft.models.faults.checks import run_check
from twoshaft.units.findings import Finding
from twoshaft.units.sections.order import RuleKind
from twoshaft.units.unit import Unit

Say = Callable[[str, str], None]


def audit_faults(unit: Unit) -> tuple[Finding, ...]:
    """Check that every misbuild and check leads somewhere, and that a sound unit passes.

    Parameters
    ----------
    unit : Unit

    Returns
    -------
    tuple of Finding
        Names that the unit lacks; then, where all are known, steps left out that would stop the
        build, checks that the unit as it should be does not pass, and checks that none of its
        misbuilds fails.

    Examples
    --------
    >>> audit_faults(unit)
    ()
    """
    if unit.faults_if_any is None:
        return ()
    found: list[Finding] = []

    def sayer(section: str, entry) -> Say:
        def say(what: str, mend: str) -> None:
            where = unit.where("faults", section, entry.id)
            found.append(Finding(where, f"{entry.id}: {what}", mend))

        return say

    known = _known(unit)
    for section, entries in (("misbuilds", unit.faults.misbuilds), ("checks", unit.faults.checks)):
        for entry in entries:
            _names(entry, known, sayer(section, entry))
    if not found:
        for misbuild in unit.faults.misbuilds:
            _gets_that_far(unit, misbuild, sayer("misbuilds", misbuild))
        for check in unit.faults.checks:
            _runs(unit, check, sayer("checks", check))
    return tuple(found)


def _known(unit: Unit) -> dict[str, set[str]]:
    """Ids of the unit by what they name."""
    shift, train = unit.shift_if_any, unit.gear_train_if_any
    bearings = unit.bearings_if_any
    faces = () if unit.faces_if_any is None else unit.faces.faces
    bolts = unit.fasteners_if_any
    groups = bolts.groups if bolts else ()
    return {
        "tool": _ids(unit.tools),
        "operation": set(unit.operation_by_id),
        "shift mechanism": {"here"} if shift else set(),
        "gear train": {"here"} if train else set(),
        "speed drive": {"here"} if train and train.speed_drive else set(),
        "shift assembly fault": _ids(shift.misbuilds) if shift else set(),
        "support": _ids(bearings.supports) if bearings else set(),
        "fastener group": _ids(groups),
        "state of thread": _ids(bolts.states) if bolts else set(),
        "face": _ids(faces),
        "segment": {f"{face.id} {segment.id}" for face in faces for segment in face.segments},
        "piece": {f"{g.id} {n + 1}" for g in groups for n in range(g.count)},
        "mesh": _ids(train.meshes) if train else set(),
        "synchroniser": _ids(train.synchronisers) if train else set(),
        "gear": {f"{s.id} {g}" for s in train.synchronisers for g in s.gears} if train else set(),
    }


def _ids(entries) -> set[str]:
    return {entry.id for entry in entries}


def _names(entry, known: dict[str, set[str]], say: Say) -> None:
    for thing in getattr(entry, "changes", (entry,)):
        for what, name in _named(thing):
            if name not in known[what]:
                there = f"the unit has no {what}" if name == "here" else f"{name} is no {what}"
                if what == "gear" and name != "here":
                    there = f"no synchroniser engages a gear as {name}: synchroniser, then gear"
                say(there, "correct the name, or leave the entry out")


def _named(thing) -> list[tuple[str, str]]:
    """What a check or a change names, with the name."""
    found = [("operation", one) for one in getattr(thing, "operations", ())]
    for key, what in (
        ("tool", "tool"),
        ("operation", "operation"),
        ("support", "support"),
        ("and_support", "support"),
        ("misbuild", "shift assembly fault"),
        ("group", "fastener group"),
        ("state", "state of thread"),
        ("face", "face"),
        ("mesh", "mesh"),
        ("synchroniser", "synchroniser"),
    ):
        name = getattr(thing, key, None)
        found += [(what, name)] if name is not None else []
    found += [("fastener group", one) for one in getattr(thing, "groups", ())]
    found += [("face", one) for one in getattr(thing, "faces", ())]
    found += [("piece", f"{thing.group} {n}") for n in getattr(thing, "numbers", ())]
    segments = list(getattr(thing, "without_segments", ()))
    if getattr(thing, "smear", None) is not None:
        segments += thing.smear.segments
    found += [("segment", f"{thing.face} {one}") for one in segments]
    if getattr(thing, "away_from", None) is not None:
        found.append(("gear", f"{thing.synchroniser} {thing.away_from}"))
    needs = {
        "gears-go-in": "shift mechanism",
        "gears-held": "shift mechanism",
        "two-at-once": "shift mechanism",
        "lockout": "shift mechanism",
        "turns": "gear train",
        "hub": "shift mechanism",
        "speed-drive": "speed drive",
    }
    kind = getattr(thing, "kind", None)
    found += [(needs[kind], "here")] if kind in needs else []
    if kind == "cord" and thing.and_support and thing.speed_ratio is None:
        found.append(("gear train", "here"))
    return found


def _gets_that_far(unit: Unit, misbuild, say: Say) -> None:
    """A step left out must not stop the build before the checks."""
    left = {change.operation for change in misbuild.changes if change.kind == "left-out"}
    checks = {operation for check in unit.faults.checks for operation in check.operations}
    for rule in unit.rules:
        ways = set(rule.any_of or ((rule.earlier,) if rule.earlier else ()))
        stops = rule.kind is RuleKind.CANNOT and rule.later not in checks | left
        if stops and ways and ways <= left:
            say(f"without it {rule.later} cannot be done", "leave out a step that nothing needs")


def _runs(unit: Unit, check, say: Say) -> None:
    sound = run_check(check, as_built(unit, ()))
    if not sound.passes:
        say(f"a sound unit does not pass: {sound.sentence.rstrip('.').lower()}", "correct a figure")
    elif all(run_check(check, as_built(unit, [one])).passes for one in unit.faults.misbuilds):
        say(
            "none of the assembly faults fails it",
            "add an assembly fault that does, or leave the check out",
        )
