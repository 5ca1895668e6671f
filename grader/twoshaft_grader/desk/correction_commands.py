"""Commands that take a correction in: of the unit on the bench, and of a solution."""

from __future__ import annotations

from pathlib import Path
from typing import Annotated

import typer

from twoshaft_grader.desk.app import (
    ByOption,
    CohortOption,
    app,
    cohort_at,
    names,
    say,
    status,
    tell_not_done,
    unit_app,
)
from twoshaft_grader.desk.bar import Bar


@unit_app.command("correct")
def unit_correct(
    file: Annotated[Path, typer.Argument(help="The corrected unit file.")],
    cohort: CohortOption = None,
    show: Annotated[bool, typer.Option("--show", help="Only show what would change.")] = False,
    why: Annotated[str, typer.Option(help="What was wrong, for the trail.")] = "",
    by: ByOption = "",
) -> None:
    """Take a corrected unit into a cohort; what is handed out keeps the unit it was made with."""
    from twoshaft_grader.cohort.content import find_content
    from twoshaft_grader.cohort.corrected_unit import read_correction, take_correction

    place = cohort_at(cohort)
    content = find_content(place.content, base=place.root)
    with Bar("trying what is handed out on both units"):
        found = read_correction(place, file, content)
    say(f"{found.old}; corrected: {found.new}.")
    for one in found.changes:
        say(f"  {one.about}: {one.what}: {one.before} -> {one.after}")
    for out in found.touched:
        counts = f"{len(out.learners)} learners, {len(out.handed_in)} handed in"
        say(f"{out.assignment} keeps version {out.unit_version}: {counts}, "
            f"{len(out.marked)} marked. A fresh attempt: {out.fresh}.")  # fmt: skip
    if not found.changes:
        say("Nothing differs.")
    if show:
        say("Nothing is written.")
        return
    take_correction(place, found, by=by, why=why)
    say("The corrected unit is taken. Lessons, and what is handed out from now on, follow it.")


@app.command("re-mark")
def re_mark(
    assignment: Annotated[str, typer.Argument(help="As order-of-work-1.")],
    cohort: CohortOption = None,
    write: Annotated[
        bool, typer.Option("--write", help="Write the marks; without, they are only shown.")
    ] = False,
    by: Annotated[str, typer.Option(help="Assessor on the register, by id or name.")] = "",
    why: Annotated[str, typer.Option(help="What was wrong in the solution.")] = "",
    content: Annotated[str, typer.Option(help="Folder with the corrected solutions.")] = "",
) -> int:
    """Show whose marks a corrected solution would change; with --write, change them."""
    from twoshaft_grader.cohort.assign import read_assigned
    from twoshaft_grader.cohort.content import find_content
    from twoshaft_grader.cohort.intake import roster_of
    from twoshaft_grader.cohort.remark import remark, would_remark

    place = cohort_at(cohort)
    source = find_content(content) if content else find_content(place.content, base=place.root)
    assigned = read_assigned(place, assignment)
    mine = assigned.among(roster_of(place))
    with Bar(f"marking {assignment} with the corrected solution"):
        found = would_remark(place, assigned, source, mine)
    say("The solution is another." if found.another else "The solution is as it was.")
    for one in found.changed:
        say(f"  {one.learner}: {one.words}")
    for left in found.left:
        say(f"  {left.learner}: {left.why}")
    say(f"As before: {names(found.same) or 'nobody'}.")
    if not write:
        say("Nothing is written.")
        return status(*found.left)
    with Bar(f"re-marking {assignment}"):
        done = remark(place, assigned, source, mine, by=by, why=why)
    said = names(done.moved) or "nobody"
    say(f"Re-marked: {said}. Give {assignment} back to show it to them.")
    tell_not_done("Could not be marked again", done.left)
    return status(*done.left)
