"""Sign-in slips on paper (PDF): one to cut out for each learner."""

from __future__ import annotations

import json
from pathlib import Path

from twoshaft.errors import CohortError
from twoshaft.plots.style import INK, QUIET
from twoshaft_grader.bench_sheets.paper import Paper
from twoshaft_grader.cohort import files
from twoshaft_grader.cohort.folder import Cohort
from twoshaft_grader.cohort.intake import roster_of
from twoshaft_grader.cohort.roster import Learner
from twoshaft_grader.cohort.trail import act
from twoshaft_grader.cohort.workplace import SLIPS_PAGE, sign_in_words
from twoshaft_grader.records.rows import INVENTED

_TEMPLATE = Path(__file__).parent / "templates" / "slips.typ"


def print_slips(cohort: Cohort, *, group: str = "", paper: Paper = Paper.A4, by: str = "") -> Path:
    """Write the slips of a group, or of everybody, to print; returns the PDF.

    Raises
    ------
    CohortError
        When nobody has a word.
    """
    words = sign_in_words(cohort)
    people = [one for one in roster_of(cohort) if one.id in words]
    people = [one for one in people if not group or one.group == group]
    if not people:
        where = f"in group {group}" if group else "on the roster"
        raise CohortError(f"nobody {where} has a sign-in word", mend="take learners in first")
    target = cohort.root / SLIPS_PAGE
    with act(cohort.root, "print sign-in slips", group, by=by) as told:
        files.write_whole(target, slips_pdf(cohort, people, words, paper), mode=0o600)
        told.after = f"{len(people)} slips"
    return target


def slips_pdf(cohort: Cohort, people: list[Learner], words: dict[str, str], paper: Paper) -> bytes:
    """The slips as tagged PDF (PDF/UA-1); texts reach it as data, never as markup."""
    import typst

    from twoshaft_grader.bench_sheets.pdf import fonts

    data = {
        "paper": paper.typst,
        "ink": INK,
        "quiet": QUIET,
        "cohort": cohort.name,
        "invented": INVENTED if cohort.invented else "",
        "slips": [
            {"name": one.name, "id": one.id, "group": one.group, "word": words[one.id]}
            for one in people
        ],
    }
    return typst.compile(
        _TEMPLATE.read_bytes(),
        font_paths=fonts(),
        format="pdf",
        pdf_standards=["ua-1"],
        sys_inputs={"data": json.dumps(data)},
        timestamp=0,
    )
