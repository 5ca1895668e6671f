"""A learner's record on paper (PDF): outcomes, evidence, attempts, observations, signatures."""

from __future__ import annotations

import json
from collections.abc import Iterable, Sequence
from datetime import tzinfo
from pathlib import Path

from twoshaft import __version__
from twoshaft.errors import CourseError
from twoshaft.plots.style import INK, QUIET
from twoshaft.plots.whole_build import HEADINGS
from twoshaft_grader.bench_sheets.paper import Paper
from twoshaft_grader.cohort.appeals import appeals_of
from twoshaft_grader.cohort.assign import read_assigned
from twoshaft_grader.cohort.clock import as_read, now
from twoshaft_grader.cohort.decisions import changes_of
from twoshaft_grader.cohort.folder import Cohort
from twoshaft_grader.cohort.roster import Learner
from twoshaft_grader.records.build_record import MODULE, build_record_of
from twoshaft_grader.records.matrix import NOTHING, Matrix
from twoshaft_grader.records.rows import INVENTED, NOT_HANDED_IN, Row
from twoshaft_grader.stored.trail import Head

_TEMPLATE = Path(__file__).parent / "templates" / "record.typ"
_TO_SIGN_MM = 8


def record_pdf(
    cohort: Cohort,
    matrix: Matrix,
    rows: Iterable[Row],
    person: Learner,
    head: Head,
    paper: Paper = Paper.A4,
) -> bytes:
    """A learner's record as PDF, tagged (PDF/UA-1); texts reach it as data, never as markup.

    Parameters
    ----------
    rows : iterable of Row
        As exported; only the learner's are taken.
    head : Head
        Of the trail, so that a cut-off end shows later.
    """
    import typst

    from twoshaft_grader.bench_sheets.pdf import fonts

    mine = [row for row in rows if row.learner == person.id]
    data = {
        "paper": paper.typst,
        "ink": INK,
        "quiet": QUIET,
        "name": person.name,
        "cohort": cohort.name,
        "invented": INVENTED if cohort.invented else "",
        "facts": [
            ("Name", person.name), ("Id", person.id), ("Group", person.group),
            ("Cohort", cohort.name), ("College", cohort.college),
            ("Unit on the bench", mine[0].unit if mine else ""),
            ("Adjustments", (mine[0].adjustments if mine else "") or "none"),
            ("Made on", f"{now().astimezone(cohort.zone):%Y-%m-%d}"),
        ],
        "parts": [
            _outcomes(matrix, person),
            _attempts(mine, cohort.zone),
            _observed(matrix, person),
            _changed(cohort, person),
            *_build(cohort, mine, person),
            _signatures(),
        ],
        "made": f"Twoshaft {__version__}. At the bench the maker's manual, local codes and "
        "licensed practice decide.",
        "head": f"Trail {head}",
    }  # fmt: skip
    return typst.compile(
        _TEMPLATE.read_bytes(),
        font_paths=fonts(),
        format="pdf",
        pdf_standards=["ua-1"],
        sys_inputs={"record": json.dumps(data)},
        timestamp=0,
    )


def _part(
    heading: str,
    columns: Sequence[tuple[str, float]],
    rows: Iterable[Sequence[str]],
    say: str = "",
    row_mm: float = 0,
) -> dict[str, object]:
    return {
        "heading": heading,
        "columns": [name for name, _ in columns],
        "shares": [share for _, share in columns],
        "rows": [list(row) for row in rows],
        "say": say,
        "row_mm": row_mm,
    }


def _outcomes(matrix: Matrix, person: Learner) -> dict[str, object]:
    columns = (
        ("Outcome", 1.5), ("What it is", 2.6), ("State", 0.9), ("Asks for", 1.0), ("Evidence", 2.6),
    )  # fmt: skip
    rows = []
    for one in matrix.outcomes:
        cell = matrix.cells[person.id, one.id]
        if cell.state == NOTHING:
            continue
        said = [
            f"{row.module}-{row.attempt}, {row.evidence}"
            for row in cell.attempts
            if row.enough == "yes"
        ]
        said += [
            f"{'prior learning' if seen.prior else 'seen'} {seen.day} by {seen.by}"
            for seen in cell.seen
            if seen.met and not seen.taken_back
        ]
        evidence = "; ".join(said) or "none yet"
        missing = f". Missing: {cell.missing}" if cell.missing else ""
        rows.append(
            (matrix.heading(one.id), one.statement, cell.words, one.evidence, evidence + missing)
        )
    say = (
        "Met: enough in marked work, with the kind of evidence that the outcome asks for. Enough: "
        "enough in marked work alone. Outcomes of which there is nothing yet are left out."
    )
    return _part("Outcomes", columns, rows, say)


def _attempts(mine: list[Row], zone: tzinfo) -> dict[str, object]:
    columns = (
        ("Module, attempt", 1.8), ("Points", 1.1), ("Enough in", 0.9), ("As", 1.2),
        ("Handed in", 1.8), ("Receipt", 1.65), ("Marked", 1.55),
    )  # fmt: skip
    rows = []
    names = dict.fromkeys((row.module, row.attempt) for row in mine if row.attempt)
    for module, attempt in names:
        of = [row for row in mine if (row.module, row.attempt) == (module, attempt)]
        first = of[0]
        if first.state == NOT_HANDED_IN:
            points, enough, handed = "", "", first.state
        else:
            points = f"{sum(r.mark for r in of):.4g} of {sum(r.maximum for r in of):.4g}"
            enough = f"{sum(r.enough == 'yes' for r in of)} of {len(of)}"
            late = f", {first.late_minutes} min late" if first.late_minutes else ""
            handed = f"{as_read(first.handed_in, zone)}{late}"
        if first.own_work_stated:
            handed += "; stated to be their own work"
        marked = f"{as_read(first.marked_at, zone)[:10]} {first.marked_by}".strip()
        rows.append(
            (f"{module}-{attempt}", points, enough, _kind(of), handed,
             first.receipt, marked)
        )  # fmt: skip
    return _part("Attempts", columns, rows)


def _kind(of: list[Row]) -> str:
    """As what evidence the outcomes of an attempt count."""
    watched = [row for row in of if row.supervised_by]
    before = sum(int(row.saved_before or 0) for row in of)
    told = f"{before} answer{'s' if before > 1 else ''} saved before the supervised attempt"
    if not watched:
        return f"{of[0].evidence}; {told}" if before else of[0].evidence
    by = f"{watched[0].evidence} ({watched[0].supervised_by})"
    if len(watched) == len(of):
        return by
    return f"{len(watched)} of {len(of)} outcomes {by}; {told}"


def _observed(matrix: Matrix, person: Learner) -> dict[str, object]:
    columns = (
        ("Outcome", 1.4), ("Was", 0.8), ("As", 1.1), ("Seen on", 1.15), ("By", 1.1),
        ("Bench", 0.9), ("Note", 2.0), ("Learner", 1.2),
    )  # fmt: skip
    rows = []
    for one in matrix.outcomes:
        for seen in matrix.cells[person.id, one.id].seen:
            gone = seen.taken_back
            was = "met" if seen.met else "not yet"
            note = f"Taken back by {gone.by}: {gone.why}" if gone else seen.note
            confirmed = f"confirmed {seen.confirmed}" if seen.confirmed else ""
            kind = "prior learning" if seen.prior else str(seen.kind)
            bench = ", ".join(part for part in (seen.bench, seen.unit) if part)
            rows.append((one.id, was, kind, seen.day, seen.by, bench, note, confirmed))
    return _part("Observed", columns, rows)


def _changed(cohort: Cohort, person: Learner) -> dict[str, object]:
    columns = (("When", 1.0), ("Of", 2.0), ("From", 0.8), ("To", 0.8), ("By", 1.2), ("Why", 3.0))
    rows = [
        (line.at[:10], f"{line.assignment} {line.task} ({line.kind})", f"{line.before:g}",
         f"{line.after:g}", line.by, line.why)
        for line in changes_of(cohort)
        if line.learner == person.id
    ]  # fmt: skip
    rows += [
        (one.at[:10], f"appeal {one.number}: {one.assignment} {one.about}".strip(), "",
         one.ruling or "open", one.ruled_by, one.reason or one.why)
        for one in appeals_of(cohort)
        if one.learner == person.id
    ]  # fmt: skip
    return _part("Changed by hand, and appeals", columns, rows)


def _build(cohort: Cohort, mine: list[Row], person: Learner) -> list[dict[str, object]]:
    """The build record of the latest whole build that is marked: a part for each of its tables."""
    attempts = [
        row.attempt for row in mine if row.module == MODULE and row.attempt and row.marked_at
    ]
    if not attempts:
        return []
    name = f"{MODULE}-{max(attempts)}"
    heading = f"Build record, {name}"
    try:
        found = build_record_of(cohort, read_assigned(cohort, name), person.id)
    except CourseError as error:
        return [_part(heading, (), (), f"It cannot be read: {error.sentence}")]
    say = (
        f"{found['unit']}, {found['college']}. {found['done']} of {found['steps']} steps stand, "
        f"{found['minutes']:g} minutes at the bench, as the learner wrote it down. "
        f"{found['invented']}"
    )
    lists = (("consumables", "Used up"), ("new_parts", "New parts"), ("order", "Steps in turn"))
    told = [(title, "; ".join(found[key])) for key, title in lists if found[key]]
    parts = [_part(heading, (("Of the build", 1.0), ("what", 4.6)), told, say.strip())]
    for key, title, what, value in HEADINGS:
        if found[key]:
            parts.append(_part(title, ((what, 2.0), (value, 3.6)), found[key]))
    columns = (("Build", 1.4), ("Name", 2.0), ("Signature", 2.6), ("Date", 1.0))
    signed = [(who, "", "", "") for who, _ in found["signatures"]]
    return [*parts, _part("Build signed", columns, signed, row_mm=_TO_SIGN_MM)]


def _signatures() -> dict[str, object]:
    columns = (("", 1.4), ("Name", 2.0), ("Signature", 2.6), ("Date", 1.0))
    rows = [(who, "", "", "") for who in ("Learner", "Instructor", "Assessor", "Moderator")]
    return _part("Signatures", columns, rows, row_mm=_TO_SIGN_MM)
