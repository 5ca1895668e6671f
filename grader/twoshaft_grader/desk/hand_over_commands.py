"""Commands that hand over: matrix, workbook, OneRoster, records on paper, sealed evidence; and how
a module goes.
"""

from __future__ import annotations

from pathlib import Path
from typing import Annotated

import typer

from twoshaft_grader.desk.app import (
    AssignmentArgument,
    ByOption,
    CohortOption,
    app,
    assignments_named,
    cohort_at,
    console,
    say,
    status,
    tell_not_done,
)
from twoshaft_grader.desk.bar import Bar

hand_over_app = typer.Typer(
    no_args_is_help=True, help="What goes to the office and the assessor.", rich_markup_mode=None
)
app.add_typer(hand_over_app, name="hand-over")
ToOption = Annotated[Path | None, typer.Option("--to", help="Where to; exports/ if not given.")]


@app.command("matrix")
def show_matrix(
    module: Annotated[str, typer.Option(help="Only outcomes of this module.")] = "",
    csv: Annotated[Path | None, typer.Option(help="File to write it to as CSV.")] = None,
    page: Annotated[Path | None, typer.Option(help="File to write it to as HTML.")] = None,
    cohort: CohortOption = None,
    by: ByOption = "",
) -> int:
    """Show where everybody stands with every outcome; as a page, with the evidence behind it."""
    from twoshaft_grader.desk.tables import matrix_table
    from twoshaft_grader.records.hand_over import write_matrix
    from twoshaft_grader.records.matrix import matrix_of

    place = cohort_at(cohort)
    if csv or page:
        written, left = write_matrix(place, csv=csv, page=page, by=by)
        for path in written:
            say(f"Wrote {path}.")
    else:
        matrix, left = matrix_of(place, modules=[module] if module else [])
        for person in matrix.learners:
            console().print(matrix_table(matrix, person))
    tell_not_done("Could not be told", left)
    return status(*left)


@app.command("how-it-goes")
def tell_how_it_goes(
    assignment: AssignmentArgument = None,
    page: Annotated[
        Path | None, typer.Option(help="Folder to write a page for class to, without names.")
    ] = None,
    cohort: CohortOption = None,
) -> int:
    """Tell who is stuck, what is hard and often wrong, and how far marks can be relied on."""
    from twoshaft_grader.cohort import files
    from twoshaft_grader.cohort.not_done import NotDone
    from twoshaft_grader.desk.figures import reliability_words
    from twoshaft_grader.desk.tables import tasks_table
    from twoshaft_grader.records.how_it_goes import class_page, how_it_goes

    place = cohort_at(cohort)
    left: list[NotDone] = []
    for assigned in assignments_named(place, assignment):
        found = how_it_goes(place, assigned)
        counts = "; ".join(f"{count} {stage}" for stage, count in found.stages.items())
        say(f"{found.name}: {counts}.")
        for learner, why in found.stuck:
            say(f"  {learner}: {why}")
        if found.tasks:
            console().print(tasks_table(f"Tasks, of {found.marked} marked sheets", found))
            say(reliability_words(found))
        for step, count in found.misplaced:
            say(f"  Out of place {count} times: “{step}”")
        for one in found.wrong:
            say(f"  Wrong {one.wrong} of {one.answered} times: {one.prompt}")
            if one.slip:
                say(f"    most often ({one.slips}): {one.slip}")
        if page:
            path = page / f"{found.name}.html"
            files.write_whole(path, class_page(found, place))
            say(f"  Page for class: {path}")
        tell_not_done("Could not be told", found.left)
        left += found.left
    return status(*left)


@hand_over_app.command("workbook")
def hand_over_workbook(to: ToOption = None, cohort: CohortOption = None, by: ByOption = "") -> int:
    """Write an XLSX: a sheet a module, the matrix, observations and changes."""
    from twoshaft_grader.records.hand_over import write_workbook

    with Bar("writing the workbook"):
        path, left = write_workbook(cohort_at(cohort), to, by=by)
    say(f"Wrote {path}.")
    tell_not_done("Not in it", left)
    return status(*left)


@hand_over_app.command("oneroster")
def hand_over_oneroster(
    to: ToOption = None,
    group: Annotated[str, typer.Option("--class", help="The class's id in your system.")] = "",
    school: Annotated[str, typer.Option(help="The school's id in your system.")] = "",
    session: Annotated[str, typer.Option(help="The term's id in your system.")] = "",
    cohort: CohortOption = None,
    by: ByOption = "",
) -> int:
    """Write a OneRoster 1.2 gradebook (CSV files in a ZIP) for a records system."""
    from twoshaft_grader.records.hand_over import write_oneroster
    from twoshaft_grader.records.oneroster import Place

    place = cohort_at(cohort)
    ids = Place(group or place.id, school or place.id, session or place.id)
    with Bar("writing the gradebook"):
        path, left = write_oneroster(place, to, place=ids, by=by)
    say(f"Wrote {path}.")
    tell_not_done("Not in it", left)
    return status(*left)


@hand_over_app.command("records")
def hand_over_records(
    to: ToOption = None,
    learner: Annotated[list[str] | None, typer.Option(help="Only this learner's id.")] = None,
    paper: Annotated[str, typer.Option(help="a4 or letter.")] = "a4",
    cohort: CohortOption = None,
    by: ByOption = "",
) -> int:
    """Write a record on paper for each learner: outcomes, evidence, attempts, signatures."""
    from twoshaft_grader.bench_sheets import paper_named
    from twoshaft_grader.records.hand_over import write_records

    size = paper_named(paper)
    with Bar("writing the records"):
        written, left = write_records(
            cohort_at(cohort), to, learners=learner or [], paper=size, by=by
        )
    say(f"Wrote {len(written)} records to {written[0].parent if written else 'nowhere'}.")
    tell_not_done("No record", left)
    return status(*left)


@hand_over_app.command("evidence")
def hand_over_evidence(
    to: Annotated[Path, typer.Argument(help="The folder to make.")],
    learner: Annotated[list[str] | None, typer.Option(help="Only this learner's id.")] = None,
    assignment: Annotated[list[str] | None, typer.Option(help="Only this one.")] = None,
    cohort: CohortOption = None,
    by: ByOption = "",
) -> int:
    """Seal a folder of evidence that anybody can mark again: for assessors, solutions are in it."""
    from twoshaft_grader.records.evidence import write_evidence

    with Bar("sealing the evidence"):
        seal, count, left = write_evidence(
            cohort_at(cohort), to, learners=learner or [], assignments=assignment or [], by=by
        )
    say(
        f"{count} sheets are in {to.resolve()}. Names and solutions are in it: for assessors alone."
    )
    say(f"Seal: {seal}")
    tell_not_done("Not in it", left)
    return status(*left)
