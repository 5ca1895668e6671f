"""Outcomes for which the unit has nothing: named where the matrix and the contents name outcomes."""

import pytest

from twoshaft.jobsheet.people import Listed, word_check, write_people
from twoshaft.jobsheet.signin import SignIn
from twoshaft.jobsheet.startpage import StartPage
from twoshaft.stored.person import Person
from twoshaft_grader.cohort.assign import assign, read_assigned
from twoshaft_grader.cohort.content import find_content
from twoshaft_grader.cohort.folder import make_cohort
from twoshaft_grader.cohort.intake import take_in
from twoshaft_grader.cohort.roster import Learner
from twoshaft_grader.desk_pages.matrix import MatrixPage
from twoshaft_grader.desk_pages.page import Desk
from twoshaft_grader.desk_pages.parts import Say
from twoshaft_grader.records.matrix import matrix_csv, matrix_of, matrix_page

MODULE = "sealant-film"
LOST = "choose-sealant"


@pytest.fixture(scope="module")
def cohort(tmp_path_factory):
    """Two learners with a unit that has one kind of sealant."""
    made = make_cohort(
        tmp_path_factory.mktemp("not-asked") / "group",
        salt="s",
        timezone="UTC",
        unit="tarnbeck-c4",
    )
    people = [Learner("a1", "Okafor", "Ada", ""), Learner("b2", "Lim", "Bo", "")]
    take_in(made, people)
    listed = [Person(one.id, one.family_name, one.given_name) for one in people]
    write_people(made.workplace, [Listed(p, word_check(f"word {p.id}")) for p in listed])
    assign(made, find_content(""), MODULE, attempt=1, due=None, learners=people)
    return made


def test_the_assignment_says_what_it_is_no_evidence_for(cohort):
    assert read_assigned(cohort, f"{MODULE}-1").no_evidence == (LOST,)


def test_the_matrix_names_it_and_nobody_seems_to_lack_it(cohort):
    matrix, left = matrix_of(cohort, modules=[MODULE])
    assert not left and [one.id for one in matrix.not_asked] == [LOST]
    states = {id: cell.words for (_, id), cell in matrix.cells.items()}
    assert states.pop(LOST) == "– not asked"
    assert set(states.values()) == {"· nothing yet"}
    assert matrix_csv(matrix).count("not asked") == 2
    page = matrix_page(matrix, cohort, cohort.root / "matrix.html")
    assert "Not asked, since the unit on the bench has nothing that shows it: " + LOST in page
    desk = MatrixPage(Desk(cohort.root, "R. Holm"))
    said = [one.text for one in desk.show() if isinstance(one, Say)]
    assert any(
        text.startswith("Not asked, since the unit on the bench has nothing") for text in said
    )


def test_the_contents_name_it(cohort):
    sign_in = SignIn(cohort.workplace)
    sign_in.sign_in("a1", "word a1")
    line = next(one for one in StartPage(sign_in).modules if one["module"] == MODULE)
    states = [(state, told) for state, _, _, told in line["outcomes"]]
    assert ("not asked", "the unit on the bench has nothing that shows it") in states
    assert line["count"].endswith(", 1 not asked")
