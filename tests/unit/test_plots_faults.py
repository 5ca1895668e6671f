import pytest

from twoshaft.models.faults import PASSES, outcome_table
from twoshaft.plots.faults import fault_board


def letters_of(picture, unit):
    """Letters on the board by misbuild and check."""
    axes = picture.figure.axes[0]
    found = {}
    for text in axes.texts:
        x, y = text.get_position()
        if len(text.get_text()) == 1:
            found[unit.faults.misbuilds[round(y)].id, unit.faults.checks[round(x)].id] = (
                text.get_text()
            )
    return found


@pytest.mark.slow
def test_every_outcome_stands_on_the_board_and_equal_letters_are_equal_outcomes(unit):
    table, letters = outcome_table(unit), letters_of(fault_board(unit), unit)
    for check in unit.faults.checks:
        by_letter = {}
        for misbuild in unit.faults.misbuilds:
            outcome = table.outcome((misbuild.id,), check.id)
            letter = letters.get((misbuild.id, check.id))
            assert (letter is None) == outcome.passes
            if letter is not None:
                assert by_letter.setdefault(letter, outcome.key) == outcome.key
        assert len(set(by_letter.values())) == len(by_letter)


@pytest.mark.slow
def test_the_board_says_what_explains_what_was_seen(unit):
    picture = fault_board(unit, {"prove-lockout": "lockout-fails-fifth-reverse"})
    words = [text.get_text() for text in picture.figure.axes[0].texts]
    assert sum("explains it" in word for word in words) == 3
    assert "3 assembly faults explain" in picture.alt
    assert "Best next check" in picture.alt
    assert "plate turned over" in picture.alt
    assert picture.png()[:4] == b"\x89PNG"


@pytest.mark.slow
@pytest.mark.parametrize(
    ("seen", "words"),
    [
        ({}, "show in no check"),
        ({"try-gears": PASSES}, "Nothing wrong was seen yet"),
        (
            {"click-bolts": "turns-case-bolts-12", "feel-ring-gap": "ring-gap-small"},
            "No assembly fault alone explains what was seen; 1 pair would",
        ),
        (
            {
                "prove-lockout": "lockout-fails-fifth-reverse",
                "feel-ring-gap": "ring-gap-small",
                "count-speed-drive": "fewer-turns-speed-pinion",
            },
            "No assembly fault and no pair",
        ),
    ],
)
def test_the_title_is_the_finding(unit, seen, words):
    assert words in fault_board(unit, seen).alt
