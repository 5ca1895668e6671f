"""Commands of the assessor: register, observations, changes, the trail."""

from __future__ import annotations

from pathlib import Path
from typing import Annotated

import typer

from twoshaft.errors import CohortError
from twoshaft_grader.desk.app import (
    ByOption,
    CohortOption,
    app,
    appeal_app,
    assessor_app,
    cohort_at,
    console,
    say,
)
from twoshaft_grader.desk.bar import Bar
from twoshaft_grader.desk.call import command
from twoshaft_grader.desk.errors import SOME_LEFT

LearnerArgument = Annotated[str, typer.Argument(help="Learner's id.")]
AssessorOption = Annotated[str, typer.Option("--by", help="Who: an id or name on the register.")]
WhyOption = Annotated[str, typer.Option("--why", help="The reason.")]


@assessor_app.command("add")
def assessor_add(
    id: Annotated[str, typer.Argument(help="Short id, as rh.")],
    name: Annotated[str, typer.Argument(help="The assessor's name.")],
    role: Annotated[str, typer.Option(help="As internal assessor, moderator.")] = "",
    cohort: CohortOption = None,
    by: ByOption = "",
) -> None:
    """Put somebody on the register: from then on only those on it observe, change and decide."""
    from twoshaft_grader.cohort.assessors import enter_assessor

    one = enter_assessor(cohort_at(cohort), id, name, role=role, by=by)
    say(f"{one.name} ({one.id}) is on the register of assessors.")


@assessor_app.command("remove")
def assessor_remove(
    id: Annotated[str, typer.Argument(help="Id on the register.")],
    cohort: CohortOption = None,
    why: WhyOption = "",
    by: ByOption = "",
) -> None:
    """Take somebody off the register; what they signed stays."""
    from twoshaft_grader.cohort.assessors import withdraw_assessor

    one = withdraw_assessor(cohort_at(cohort), id, by=by, why=why)
    say(f"{one.name} ({one.id}) is no longer on the register; what they signed stays.")


@assessor_app.command("list")
def assessor_list(cohort: CohortOption = None) -> None:
    """List the register."""
    from twoshaft_grader.cohort.assessors import assessors_of

    people = assessors_of(cohort_at(cohort))
    if not people:
        say(f'Nobody is on the register yet. Begin with "{command()} assessor add ID NAME".')
    for one in people:
        role = f", {one.role}" if one.role else ""
        off = f", until {one.until[:10]}" if one.until else ""
        say(f"{one.id}: {one.name}{role}, since {one.since[:10]}{off}")


@app.command("observe")
def observe_one(
    learner: LearnerArgument,
    outcome: Annotated[str, typer.Argument(help="As plan-order; a module's id lists its own.")],
    by: AssessorOption,
    met: Annotated[
        bool | None, typer.Option("--met/--not-yet", help="Whether it is enough.")
    ] = None,
    note: Annotated[str, typer.Option(help="What was seen, or what is missing.")] = "",
    kind: Annotated[str, typer.Option(help="at-the-bench or supervised.")] = "at-the-bench",
    criterion: Annotated[
        list[str] | None,
        typer.Option(help="As needs-first=seen, or not-yet, not-tried; once for each criterion."),
    ] = None,
    seen_on: Annotated[str, typer.Option(help="The day, as 2026-11-27; today if left out.")] = "",
    bench: Annotated[str, typer.Option(help="Which bench.")] = "",
    unit: Annotated[str, typer.Option(help="What stood on it: maker, type, number.")] = "",
    prior_learning: Annotated[
        bool, typer.Option("--prior-learning", help="Evidence from before; --note names it.")
    ] = False,
    confirmed: Annotated[
        bool, typer.Option("--confirmed", help="The learner has read it and confirms it.")
    ] = False,
    cohort: CohortOption = None,
) -> None:
    """Record what was seen of one outcome, at the bench or under supervision."""
    from twoshaft_grader.cohort.intake import roster_of
    from twoshaft_grader.cohort.observations import observe
    from twoshaft_grader.cohort.standing import write_standing

    place = cohort_at(cohort)
    seen = observe(
        place, roster_of(place), learner, outcome, by=by, met=met, kind=kind, note=note,
        criteria=_criteria(criterion or []), seen_on=seen_on, bench=bench, unit=unit,
        prior=prior_learning, confirmed=confirmed,
    )  # fmt: skip
    write_standing(place, learner)
    word = "met" if seen.met else "not yet"
    say(f"{outcome} of {learner}: {word}, {seen.kind}, seen by {seen.by}.")


def _criteria(told: list[str]) -> dict[str, str]:
    found: dict[str, str] = {}
    for one in told:
        id, equals, what = one.partition("=")
        if not equals:
            raise CohortError(f'"{one}" says nothing of a criterion', mend="write it as ID=seen")
        if found.setdefault(id.strip(), what.strip()) != what.strip():
            raise CohortError(f"two things are said of {id}", mend="leave one out")
    return found


@app.command("take-back")
def take_back_one(
    learner: LearnerArgument,
    number: Annotated[int, typer.Argument(help="Its number, as observations lists it.")],
    by: AssessorOption,
    why: WhyOption,
    cohort: CohortOption = None,
) -> None:
    """Take an observation back, with the reason; it stays in the list."""
    from twoshaft_grader.cohort.intake import roster_of
    from twoshaft_grader.cohort.observations import take_back
    from twoshaft_grader.cohort.standing import write_standing

    place = cohort_at(cohort)
    gone = take_back(place, roster_of(place), learner, number, by=by, why=why)
    write_standing(place, learner)
    say(f"{gone.outcome} of {learner}, seen by {gone.by} on {gone.day}, is taken back.")


@app.command("observations")
def show_observations(
    learner: Annotated[str, typer.Option(help="Only this learner's id.")] = "",
    outcome: Annotated[str, typer.Option(help="Only this outcome, as safe-order.")] = "",
    cohort: CohortOption = None,
) -> None:
    """List what was observed: of whom, of which outcome, when, as what, and who saw it."""
    from twoshaft_grader.cohort.intake import roster_of
    from twoshaft_grader.cohort.observations import list_observations
    from twoshaft_grader.desk.tables import observations_table

    place = cohort_at(cohort)
    listed = list_observations(place, roster_of(place), learner=learner, outcome=outcome)
    if not listed:
        which = " like this" if learner or outcome else ""
        say(f'Nothing is observed{which} yet. Record it with "{command()} observe".')
        return
    console().print(observations_table("Observed, oldest first", listed, place.zone))


@app.command("change-mark")
def change_one_mark(
    learner: LearnerArgument,
    assignment: Annotated[str, typer.Argument(help="As order-of-work-1.")],
    task: Annotated[str, typer.Argument(help="As main-case.")],
    points: Annotated[float, typer.Argument(help="The new points of the task.")],
    by: AssessorOption,
    why: WhyOption,
    cohort: CohortOption = None,
) -> None:
    """Change the mark of one task, with author and reason."""
    from twoshaft_grader.cohort.assign import read_assigned
    from twoshaft_grader.records.hand_changes import change_mark

    place = cohort_at(cohort)
    before, most = change_mark(
        place, read_assigned(place, assignment), learner, task, points, by=by, why=why
    )
    say(f"{task} of {learner} in {assignment}: {before:g} is now {points:g} of {most:g}.")


@app.command("decide")
def decide_one(
    learner: LearnerArgument,
    assignment: Annotated[str, typer.Argument(help="As order-of-work-1.")],
    about: Annotated[str, typer.Argument(help="A must-pass item, or an outcome, as safe-order.")],
    enough: Annotated[bool, typer.Option("--enough/--not-yet", help="What was decided.")],
    by: AssessorOption,
    why: WhyOption,
    cohort: CohortOption = None,
) -> None:
    """Decide of a must-pass item or a whole outcome in the place of the marking, with a reason."""
    from twoshaft_grader.cohort.assign import read_assigned
    from twoshaft_grader.cohort.decisions import decide

    place = cohort_at(cohort)
    made = decide(
        place, read_assigned(place, assignment), learner, about, holds=enough, by=by, why=why
    )
    word = "enough" if enough else "not yet"
    say(f"{about} of {learner} in {assignment} is {word}, decided by {made.by}.")
    say(f'The learner sees it after "{command()} give-back {assignment}".')


@appeal_app.command("enter")
def appeal_enter(
    learner: LearnerArgument,
    assignment: Annotated[str, typer.Argument(help="As order-of-work-1.")],
    why: Annotated[str, typer.Option("--why", help="The learner's reason.")],
    about: Annotated[str, typer.Option(help="A task, a must-pass item or an outcome.")] = "",
    by: ByOption = "",
    cohort: CohortOption = None,
) -> None:
    """Write down that a learner asks for a mark to be looked at again."""
    from twoshaft_grader.cohort.appeals import enter_appeal
    from twoshaft_grader.cohort.assign import read_assigned

    place = cohort_at(cohort)
    one = enter_appeal(
        place, read_assigned(place, assignment), learner, about=about, why=why, by=by
    )
    say(f"Appeal {one.number} of {learner} against {assignment} is open.")


@appeal_app.command("rule")
def appeal_rule(
    number: Annotated[int, typer.Argument(help="Of the appeal, as appeal list says.")],
    upheld: Annotated[bool, typer.Option("--upheld/--not-upheld", help="What is ruled.")],
    by: AssessorOption,
    why: WhyOption,
    cohort: CohortOption = None,
) -> None:
    """Rule on an appeal; another mark that follows is changed with change-mark or decide."""
    from twoshaft_grader.cohort.appeals import rule_on

    one = rule_on(cohort_at(cohort), number, upheld=upheld, by=by, why=why)
    say(f"Appeal {number} of {one.learner} is {one.ruling}, ruled by {one.ruled_by}.")
    if upheld:
        say(f'Change what follows from it: "{command()} change-mark" or "{command()} decide".')


@appeal_app.command("list")
def appeal_list(cohort: CohortOption = None) -> None:
    """List the appeals and what was ruled."""
    from twoshaft_grader.cohort.appeals import appeals_of
    from twoshaft_grader.desk.tables import appeals_table

    place = cohort_at(cohort)
    appeals = appeals_of(place)
    if not appeals:
        say("There is no appeal.")
        return
    console().print(appeals_table("Appeals", appeals, place.zone))


@app.command("trail")
def show_trail(
    about: Annotated[str, typer.Option(help="Only lines with this in them, as tb01.")] = "",
    cohort: CohortOption = None,
) -> None:
    """List what was done at the desk: who, when, what, from what to what, and why."""
    from twoshaft_grader.cohort.trail import read_trail
    from twoshaft_grader.desk.tables import trail_table

    place = cohort_at(cohort)
    acts = [line.act for line in read_trail(place.root)]
    told = [
        one
        for one in acts
        if about.casefold() in " ".join((one.did, one.what, one.by, one.after, one.why)).casefold()
    ]
    if not told:
        say("No act like this is on the trail." if acts else "Nothing is on the trail yet.")
        return
    console().print(trail_table("Done at the desk, oldest first", told, place.zone))


@app.command("verify")
def verify(
    evidence: Annotated[
        Path | None, typer.Argument(help="A sealed evidence folder; without it, the trail.")
    ] = None,
    seal: Annotated[str, typer.Option(help="Of the folder, as it was told when sealed.")] = "",
    head: Annotated[
        list[str] | None,
        typer.Option(help="A head from an export or a paper, as 12:5f3a…; may be given again."),
    ] = None,
    cohort: CohortOption = None,
) -> int:
    """See whether the trail, or an evidence folder, is as it was; the latter is marked again."""
    if evidence:
        return _verify_evidence(evidence, seal)
    from twoshaft_grader.cohort.trail import check_trail, read_head

    place = cohort_at(cohort)
    found = check_trail(place.root, *(read_head(one) for one in head or ()))
    for sentence in found.told:
        say(f"To know: {sentence}")
    for sentence in found.faults:
        say(f"Not as written: {sentence}")
    if found.faults:
        return SOME_LEFT
    say(f"{len(found.acts)} acts, as they were written. Head: {found.head}")
    return 0


def _verify_evidence(folder: Path, seal: str) -> int:
    from twoshaft_grader.records.evidence import verify_evidence

    with Bar("marking the evidence again"):
        found = verify_evidence(folder, seal=seal)
    for sentence in found.told:
        say(f"To know: {sentence}")
    for sentence in found.faults:
        say(f"Not as it was: {sentence}")
    if found.faults:
        return SOME_LEFT
    say(f"{found.files} files are as they were sealed; {found.sheets} sheets earn the same mark.")
    say(f"Seal: {found.seal}")
    return 0


@app.command("observation-form")
def print_observation_form(
    name: Annotated[str, typer.Argument(help="An outcome, as safe-order, or a module.")],
    cohort: CohortOption = None,
    paper: Annotated[str, typer.Option(help="a4 or letter.")] = "a4",
    out: Annotated[
        Path | None, typer.Option(help="Folder to write to; bench-sheets if not given.")
    ] = None,
) -> None:
    """Print the observation form of an outcome, or of a module: PDF, and HTML beside it."""
    from twoshaft.units import load_unit
    from twoshaft_grader.bench_sheets import paper_named
    from twoshaft_grader.bench_sheets.observation import write_form
    from twoshaft_grader.cohort.photographs import own_photographs

    place = cohort_at(cohort)
    pdf = write_form(
        name,
        load_unit(place.unit_source),
        out or place.root / "bench-sheets",
        paper=paper_named(paper),
        cohort=place.name,
        college=place.college,
        photographs=own_photographs(place),
    )
    say(f"Wrote {pdf}, and the same as HTML.")
