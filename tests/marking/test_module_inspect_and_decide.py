"""Inspect and decide: typical wrong answers and what they earn and say."""

import pytest

from twoshaft.models import inspect
from twoshaft.models.order import model_order

MODULE = "12-inspect-and-decide"
MUST_PASS = (
    "dogs-do", "guard-do", "clip-do", "seats-do", "seal-do", "parts-do", "parts-worn", "safe-do",
)  # fmt: skip


def told(field):
    return " ".join(field.sentences)


@pytest.mark.parametrize("name", MUST_PASS)
def test_one_wrong_line_fails_what_must_be_passed_and_says_why(marked, clean, name):
    asked, right = clean.fields[name], clean.references[name].value
    for line, good in right.items():
        for option in dict(asked.options):
            if option == good:
                continue
            wrong = asked.store({**right, line: option})
            field = marked(**{name.replace("-", "_"): wrong})[0][name]
            assert not field.passed and field.share < 1 and len(told(field)) > 40


@pytest.mark.parametrize("name", ["races-which", "flanks-which"])
def test_pictures_changed_over_are_told_by_their_signs(marked, clean, name):
    asked, right = clean.fields[name], clean.references[name].value
    one, two = list(right)[:2]
    wrong = asked.store({**right, one: right[two], two: right[one]})
    field = marked(**{name.replace("-", "_"): wrong})[0][name]
    assert field.share < 0.5 and "2 of the 4 lines" in told(field) and "Look for" in told(field)


def test_where_a_pit_ends_is_not_its_length(marked, issued):
    (pitted,) = (
        one["marks"]
        for one in issued["given"]["flanks"]["pictures"]
        if one["marks"][0][0] == "crater"
    )
    _, x, _, long, _ = max(pitted, key=lambda mark: mark[3])
    field = marked(flanks_pit=f"{x + long / 2:.1f} mm")[0]["flanks-pit"]
    assert field.share == 0 and "begins" in told(field)
    assert marked(flanks_pit=f"{long + 0.2:.1f} mm")[0]["flanks-pit"].share == 1


def test_an_early_slip_is_charged_once(marked, issued):
    """A guard band and its edge follow from the learner's own uncertainty."""
    given = issued["given"]["guard"]
    tool = given["tool_mm"]
    edge = given["limit_mm"] + (1 if given["least"] else -1) * 1.645 * tool
    fields = marked(
        guard_u=f"{tool} mm", guard_band=f"{1.645 * tool:.4f} mm", guard_edge=f"{edge:.4f} mm"
    )[0]
    assert 0 < fields["guard-u"].share < 0.3 and "mean of four" in told(fields["guard-u"])
    assert fields["guard-band"].share == fields["guard-edge"].share == 1


def test_an_edge_beyond_the_limit_is_named(marked, issued):
    given = issued["given"]["guard"]
    band = inspect.guard_band.plain(given["tool_mm"] / 2)
    wrong = given["limit_mm"] - (1 if given["least"] else -1) * band
    field = marked(guard_edge=f"{wrong:.4f} mm")[0]["guard-edge"]
    assert 0 < field.share < 0.3 and "proven bad" in told(field)


def test_the_chance_that_a_part_is_good_is_not_that_it_is_bad(marked, clean):
    bad = clean.references["cost-bad"].value.m_as("percent")
    field = marked(cost_bad=f"{100 - bad:.1f} %")[0]["cost-bad"]
    assert 0 < field.share < 0.3 and "good" in told(field)


def test_a_circlip_the_wrong_way_earns_little_and_is_named(marked, issued):
    given = issued["given"]["clip"]
    middle = sum(given["allowed_mm"]) / 2
    wrong = given["fitted_mm"] - given["float_mm"] + middle
    field = marked(clip_ideal=f"{wrong:.3f} mm")[0]["clip-ideal"]
    assert 0 < field.share < 0.3 and "thicker" in told(field)


def test_one_needle_too_few_and_a_groove_not_halved_are_named(marked, issued):
    given = issued["given"]
    seats, seal = given["seats"], given["seal"]
    play = seats["gear_bore_mm"] - seats["shaft_mm"] - seats["needle_mm"]
    lost = seal["beside_mm"] - seal["groove_mm"]
    fields = marked(seats_needles=f"{play:.3f} mm", seal_depth=f"{lost:.2f} mm")[0]
    assert 0 < fields["seats-needles"].share < 0.3 and "twice" in told(fields["seats-needles"])
    assert 0 < fields["seal-depth"].share < 0.3 and "half" in told(fields["seal-depth"])


def test_any_repair_that_works_earns_all_and_a_late_cover_is_named(marked, clean):
    task = clean.references["thread-order"].value
    order = list(model_order(task))
    assert marked(thread_order=order)[0]["thread-order"].share == 1
    late = next(step for step in order if task.after[task.number[step]])
    order.remove(late)
    field = marked(thread_order=[*order, late])[0]["thread-order"]
    assert field.share < 1 and task.label(late) in told(field)
