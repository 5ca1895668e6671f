"""Commands of the rules: what is enough for each outcome."""

from __future__ import annotations

from typing import Annotated

import typer

from twoshaft_grader.desk.app import CohortOption, app, cohort_at, say, say_findings

rules_app = typer.Typer(
    no_args_is_help=True, help="What is enough for each outcome.", rich_markup_mode=None
)
app.add_typer(rules_app, name="rules")
AboutArgument = Annotated[str, typer.Argument(help="An outcome, as safe-order, or everywhere.")]
AssessorOption = Annotated[
    str, typer.Option("--by", help="Assessor on the register, by id or name.")
]


@rules_app.command("list")
def rules_list(cohort: CohortOption = None) -> None:
    """List what is enough for each outcome, and who says so."""
    from twoshaft.outcomes import load_outcomes
    from twoshaft_grader.cohort.own_rules import rule_in_words, rules_of

    rules = rules_of(cohort_at(cohort))
    say(f"Of the attempts at a module the {'latest' if rules.latest else 'best'} counts.")
    for id in load_outcomes():
        number = f" ({rules.number(id)})" if rules.number(id) else ""
        say(f"{id}{number}: {rule_in_words(rules.of(id))}; {rules.of(id).source}")


@rules_app.command("set")
def rules_set(
    about: AboutArgument,
    points: Annotated[float, typer.Option(help="Part of its points, in per cent.")],
    source: Annotated[str, typer.Option(help="Who says so.")],
    by: AssessorOption,
    each_criterion: Annotated[
        float, typer.Option(help="Part of each criterion's points, in per cent.")
    ] = 0.0,
    bench_alone: Annotated[
        bool, typer.Option("--bench-alone", help="What is seen at the bench is enough by itself.")
    ] = False,
    cohort: CohortOption = None,
) -> None:
    """Set the college's own rule for an outcome, or for everything without a rule of its own."""
    from twoshaft_grader.cohort.own_rules import Rule, set_rule

    set_rule(cohort_at(cohort), about, Rule(points, each_criterion, bench_alone, source), by=by)
    say(f"The rule for {about} is set. What is marked keeps its rule until it is marked again.")


@rules_app.command("drop")
def rules_drop(
    about: AboutArgument,
    why: Annotated[str, typer.Option(help="The reason.")],
    by: AssessorOption,
    cohort: CohortOption = None,
) -> None:
    """Take the college's own rule away."""
    from twoshaft_grader.cohort.own_rules import drop_rule

    drop_rule(cohort_at(cohort), about, by=by, why=why)
    say(f"The college has no rule of its own for {about} any more.")


@rules_app.command("attempts")
def rules_attempts(
    which: Annotated[str, typer.Argument(help="best or latest.")],
    why: Annotated[str, typer.Option(help="Who says so.")],
    by: AssessorOption,
    cohort: CohortOption = None,
) -> None:
    """Say which of several attempts at a module counts."""
    from twoshaft_grader.cohort.own_rules import set_attempts

    set_attempts(cohort_at(cohort), which, by=by, why=why)
    say(f"Of the attempts at a module the {which} counts now.")


@rules_app.command("evidence")
def rules_evidence(
    outcome: AboutArgument,
    kind: Annotated[
        str, typer.Argument(help="open-book, supervised or at-the-bench; empty: as the course.")
    ],
    why: Annotated[str, typer.Option(help="Who says so.")],
    by: AssessorOption,
    cohort: CohortOption = None,
) -> None:
    """Say which kind of evidence an outcome asks for."""
    from twoshaft_grader.cohort.own_rules import set_evidence

    set_evidence(cohort_at(cohort), outcome, kind, by=by, why=why)
    say(f"{outcome} asks for evidence {kind or 'as the course has it'} now.")


@rules_app.command("number")
def rules_number(
    outcome: Annotated[str, typer.Argument(help="As safe-order.")],
    number: Annotated[str, typer.Argument(help="The college's own; “” takes it away.")],
    by: AssessorOption,
    cohort: CohortOption = None,
) -> None:
    """Give an outcome the college's own number."""
    from twoshaft_grader.cohort.own_rules import set_number

    set_number(cohort_at(cohort), outcome, number, by=by)
    say(f"{outcome} is now {number or 'without a number'}.")


@rules_app.command("safety")
def rules_safety(cohort: CohortOption = None) -> int:
    """Check the college's own safety sources, show them in the lessons, and list all there are."""
    from twoshaft.errors import UnitFileError
    from twoshaft.safety import load_safety
    from twoshaft_grader.cohort.safety_sources import bring_sources

    place, safety = cohort_at(cohort), load_safety()
    try:
        own = bring_sources(place)
    except UnitFileError as error:
        say_findings(error)
        return 2
    for caution in safety.cautions:
        said = "; ".join(f"{who}: {source}" for who, source in own.told(caution).items())
        say(f"{caution.id}: {caution.text} {said}")
        for hazard in safety.hazard_by_id.values():
            if hazard.caution == caution.id:
                also = f" At your college: {own.of[hazard.id]}" if hazard.id in own.of else ""
                say(f"  {hazard.id}: {hazard.what}{also}")
    if own.of:
        say(f"{len(own.of)} of these are the college's own; the lessons show them.")
    else:
        say(f"None is the college's own: write {place.safety_sources}, as README.md shows.")
    return 0
