"""The answer kind film: what is stored, read back, refused and said."""

import pytest

from twoshaft.errors import AnswerError
from twoshaft.jobsheet import Film
from twoshaft.jobsheet.film_entries import MAX_ENTRIES, MAX_POINTS, face_picture, read_entry
from twoshaft.models.film import Hand, Pass, Side, Work
from twoshaft.stored.job_sheet import check_value
from twoshaft.units import load_unit


@pytest.fixture(scope="module")
def work():
    spot = {"what": "oil", "points": [[76, 125], [76, 109]], "width_mm": 7}
    return Work.of(load_unit("tarnbeck-b5"), {"face": "end-cover", "spots": [spot]})


@pytest.fixture(scope="module")
def field(work):
    return Film("lay", "Lay the film", work)


ENTRIES = {
    "film 0.12 middle from-1-to-2": Pass(Hand.FILM, 0.12, Side.MIDDLE, "from-1-to-2"),
    "bead 1.5 round bolt-4": Pass(Hand.BEAD, 1.5, Side.ROUND, "bolt-4"),
    "wipe inside from-3-to-4": Pass(Hand.WIPE, 0.0, Side.INSIDE, "from-3-to-4"),
    "bead 2 at 3,29.8 4.5,-6": Pass(Hand.BEAD, 2.0, Side.FREE, points=((3.0, 29.8), (4.5, -6.0))),
}


@pytest.mark.parametrize("entry", ENTRIES)
def test_an_entry_is_read_and_written_the_same(entry, work):
    assert read_entry(entry, work.face) == ENTRIES[entry]
    assert ENTRIES[entry].entry == entry


@pytest.mark.parametrize(
    "entry",
    [
        "",
        None,
        7,
        ["film"],
        "film",
        "film 0.12",
        "film -1 middle from-1-to-2",
        "film nan middle from-1-to-2",
        "film 1e3 middle from-1-to-2",
        "film 9 middle from-1-to-2",
        "bead 0.1 middle from-1-to-2",
        "bead 99 middle from-1-to-2",
        "film 0.12 middle bolt-1",
        "film 0.12 round from-1-to-2",
        "film 0.12 middle nowhere",
        "film 0.12 middle from-1-to-2 ",
        "film 0.12 middle from-1-to-2\n",
        "film \u0661 middle from-1-to-2",
        "wipe 3 middle from-1-to-2",
        "oil middle from-1-to-2",
        "bead 2 at",
        "bead 2 at 3",
        "bead 2 at 3,4,5",
        "bead 2 at 9999,9999",
        "bead 2 at " + " ".join(["3,4"] * (MAX_POINTS + 1)),
        "bead 2 at " + " ".join(["3,4"] * 5000),
    ],
)
def test_what_is_no_pass_is_refused_in_one_sentence(entry, work):
    with pytest.raises(AnswerError) as refused:
        read_entry(entry, work.face)
    assert refused.value.sentence.endswith(".")


def test_too_many_passes_are_refused(field):
    with pytest.raises(AnswerError, match="passes"):
        field.read(["film 0.12 middle from-1-to-2"] * (MAX_ENTRIES + 1))
    with pytest.raises(AnswerError):
        field.read("film 0.12 middle from-1-to-2")


def test_blank_stored_and_said(field):
    assert field.is_blank(None) and field.is_blank([])
    assert field.shortfall([]) == "not answered yet"
    stored = field.store(
        [Pass(Hand.FILM, 0.1, Side.MIDDLE, "from-1-to-2"), "wipe inside from-2-to-3"]
    )
    assert check_value(stored, "lay") == ["film 0.1 middle from-1-to-2", "wipe inside from-2-to-3"]
    assert field.words(stored).startswith("1. film by roller 0.1 mm, From bolt 1 to bolt 2")
    assert field.shortfall(["film x"]).startswith("read an entry")
    assert field.words(["film x"]).startswith("read an entry")


def test_a_dab_and_a_line_on_the_spot_can_be_closed(work, field):
    odd = ["bead 1 at 3,60", "film 0.1 at 3,60 3,60", "wipe at 3,60", "bead 8 at 3,60 3,60 3,60"]
    assert work.close(field.read(odd)).leaks


def test_the_picture_holds_no_answer(work):
    picture = face_picture(work)
    assert len(picture["stretches"]) == len(work.face.segments)
    assert picture["spots"][0]["word"] == "oil on the face"
    for word in ("leak", "gap", "good", "tight"):
        assert word not in str(picture)
