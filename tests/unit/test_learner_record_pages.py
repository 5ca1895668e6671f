"""The learner's record on paper: what is signed is not torn apart by the end of a page."""

import io
import json

import pypdf
import pytest
import typst

from twoshaft_grader.bench_sheets.pdf import fonts
from twoshaft_grader.records import learner_record


def pages(lines):
    """The texts of the pages of a record with so many lines before its signatures."""
    part = learner_record._part
    data = {
        "paper": "a4", "ink": "#000000", "quiet": "#444444", "name": "Bo Lim", "cohort": "Small",
        "invented": "", "facts": [("Name", "Bo Lim")], "made": "Made", "head": "Trail",
        "parts": [
            part("Observed", (("what", 1.0),), [(f"line {n}",) for n in range(lines)]),
            learner_record._signatures(),
        ],
    }  # fmt: skip
    pdf = typst.compile(
        learner_record._TEMPLATE.read_bytes(), font_paths=fonts(), format="pdf",
        sys_inputs={"record": json.dumps(data)}, timestamp=0,
    )  # fmt: skip
    return [page.extract_text() for page in pypdf.PdfReader(io.BytesIO(pdf)).pages]


@pytest.mark.slow
def test_all_who_sign_do_so_on_one_page_with_their_heading():
    counts = set()
    for lines in range(24, 44, 3):
        found = pages(lines)
        counts.add(len(found))
        (signed,) = [page for page in found if "Signatures" in page]
        assert all(who in signed for who in ("Learner", "Instructor", "Assessor", "Moderator"))
    assert counts == {1, 2}, "the end of the page was not met"
