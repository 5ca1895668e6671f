"""The typical wrong answers of Sealant film: what each earns, and the sentence it gets."""

import math
import random
import statistics

import pytest

from twoshaft.models.film import Hand, Pass, Side, Work
from twoshaft.questions import bank_of
from twoshaft.units.quantities import Q
from twoshaft_grader.marking.film_words import ONE_LEAK, find_film

MODULE = "06-sealant-film"


@pytest.fixture(scope="module")
def issued(module):
    """A learner whose film is in time by roller, whose face lies open too long, in the cold."""
    for number in range(200):
        found = module.issue(f"learner-{number}")
        given = found["given"]
        rows, limit = given["clock"]["rows"], given["clock"]["limit_minutes"]
        age = sum(minutes for key, _, minutes in rows if key not in ("before", "tighten"))
        after = given["after"]
        wait = after["cure_hours"] * after["cold_factor"] - after["waited_hours"]
        quick = given["lay"]["pace"]["film"] * 100 < 100 * given["lay"]["minutes"]
        by_roller = Work.of(module.unit, given["lay"]).good_passes()[-1].hand is Hand.FILM
        if age > limit and wait > 0 and after["cold_factor"] > 1 and quick and by_roller:
            return found
    raise AssertionError("no such learner")


@pytest.fixture(scope="module")
def work(unit, issued):
    return Work.of(unit, issued["given"]["lay"])


def told(field):
    return " ".join(field.sentences)


def entries(passes):
    return [done.entry for done in passes]


def lay(marked, issued, passes):
    fields, mark = marked(issued, lay_film=entries(passes))
    return fields["lay-film"], mark


def test_any_good_film_earns_everything_not_only_ours(marked, issued, work):
    (*_, ours) = work.good_passes()
    other = [Pass(ours.hand, ours.size_mm * 1.05, ours.side, p.place) for p in
             work.everywhere(ours.hand, 1.0)][::-1]  # fmt: skip
    field, mark = lay(marked, issued, [*work.wiping, *other])
    assert field.share == 1 and field.passed and mark.points == mark.maximum


def test_a_spot_left_unwiped_leaks_and_fails_the_must_pass(marked, issued, work):
    film = [p for p in work.good_passes() if p.hand is not Hand.WIPE]
    field, mark = lay(marked, issued, film)
    what = issued["given"]["lay"]["spots"][0]["what"]
    assert field.share == ONE_LEAK and not field.passed and not mark.met
    assert f"There is {what} under the film" in told(field)
    assert "coated again" in field.cost


def test_a_fat_bead_everywhere_seals_and_earns_next_to_nothing(marked, issued, work):
    field, _ = lay(marked, issued, [*work.wiping, *work.everywhere(Hand.BEAD, 3.0)])
    assert field.share <= 0.25 and not field.passed
    assert "comes out inside" in told(field) and "mm is safe there" in told(field)


def test_too_thin_a_film_leaks_at_the_widest_gap(marked, issued, work):
    thin = 0.5 * max(work.gap_mm.values())
    field, _ = lay(marked, issued, [*work.wiping, *work.everywhere(Hand.FILM, thin)])
    assert field.share <= ONE_LEAK and "wider than what was laid can fill" in told(field)


def test_one_stretch_forgotten(marked, issued, work):
    film = [p for p in work.good_passes() if p.place != work.face.segments[0].id or p.size_mm == 0]
    field, _ = lay(marked, issued, film)
    assert field.share <= ONE_LEAK and work.face.segments[0].name in told(field)


def test_the_closing_forgotten_in_the_clock_earns_a_part(marked, issued, work):
    minutes = work.length_mm / 100 * issued["given"]["lay"]["pace"]["bead"]
    fields, _ = marked(lay_by_bead=f"{minutes:.1f} min")
    assert fields["lay-by-bead"].share == 0.3 and "follows it counts" in told(fields["lay-by-bead"])


def test_coated_twice_takes_too_long_or_too_much(marked, issued, work):
    twice = [*work.good_passes(), *work.everywhere(Hand.FILM, 0.1)]
    field, _ = lay(marked, issued, twice)
    assert field.share <= 0.25 and not field.passed


def test_a_film_that_is_too_slow_is_told_by_the_clock(unit):
    job = {"face": "case-joint", "minutes": 12, "pace": {"film": 2.0, "close": 4}}
    work = Work.of(unit, job)
    found = find_film(work, work.everywhere(Hand.FILM, 0.1))
    assert found.share <= ONE_LEAK and not found.good
    assert "the limit is 12" in found.sentences[1]


def test_a_flooded_blind_hole_costs_a_quarter(unit):
    work = Work.of(unit, {"face": "case-joint", "blind_mm3": 5, "lumps_mm": {"oil-way": 3}})
    found = find_film(work, work.everywhere(Hand.FILM, 0.1))
    assert found.share == 0.75 and "blind hole of bolt 4" in found.sentences[0]


@pytest.mark.parametrize(
    ("field", "change", "share", "words"),
    [
        ("bead-film", lambda v: 4 * v, 0.3, "diameter for the radius"),
        ("bead-film", lambda v: v * 4 / 3.14159265, 0.3, "it is round"),
        ("bead-film", lambda v: 10 * v, 0, "10 times too large"),
        ("bead-lump", lambda v: v * 2**0.5, 0.5, "half of it comes out on the oil side"),
        ("bead-lump", lambda v: v / 2**0.5, 0.5, "half round"),
        ("bead-over", lambda v: v / 1000, 0, "1000 times too small"),
    ],
)
def test_typical_wrong_figures(marked, unit, clean, field, change, share, words):
    wrong = change(clean.references[field].value)
    answer = {field.replace("-", "_"): f"{wrong.magnitude:.6g} {clean.fields[field].unit}"}
    fields, _ = marked(**answer)
    assert fields[field].share == pytest.approx(share)
    assert words in told(fields[field])


def test_the_gap_forgotten_in_what_is_left_over(marked, issued):
    bead = issued["given"]["bead"]
    whole = 3.14159265 / 4 * bead["diameter_mm"] ** 2 * bead["along_mm"]
    fields, _ = marked(bead_over=f"{whole:.5g} mm³")
    assert fields["bead-over"].share == pytest.approx(0.3)
    assert "what fills the gap is not left over" in told(fields["bead-over"])


def test_a_slip_in_the_film_is_charged_once(marked, issued, clean):
    bead = issued["given"]["bead"]
    right = clean.references["bead-film"].value.m_as("mm")
    laid = right + 10.0 ** math.floor(math.log10(right))  # a one carried too often
    over = (laid - bead["gap_mm"]) * bead["width_mm"] * bead["along_mm"]
    lump = (2 * (over / 2) / bead["along_mm"] / 3.14159265) ** 0.5
    does = dict(clean.references["bead-verdict"].value)
    does["own"] = "fat" if lump > bead["bound_mm"] else "fits"
    fields, _ = marked(bead_film=f"{laid:.5g} mm", bead_over=f"{over:.5g} mm³",
        bead_lump=f"{lump:.5g} mm", bead_verdict=stored(does),
    )  # fmt: skip
    assert fields["bead-film"].share == 0
    assert [fields[name].share for name in ("bead-over", "bead-lump", "bead-verdict")] == [1, 1, 1]


@pytest.mark.parametrize(
    ("key", "sign", "share", "words"),
    [
        ("before", 1, 0.5, "starts with the first sealant"),
        ("tighten", 1, 0.5, "tightening comes after"),
        ("between", -1, 0, "Breaks count too"),
    ],
)
def test_the_clock_counted_wrongly(marked, issued, clean, key, sign, share, words):
    rows = issued["given"]["clock"]["rows"]
    took = sum(minutes for k, _, minutes in rows if k == key)
    wrong = clean.references["clock-age"].value.m_as("min") + sign * took
    fields, _ = marked(clock_age=f"{wrong:g} min")
    assert fields["clock-age"].share == share and words in told(fields["clock-age"])


EACH = {
    "prepare-face": "ready-face",
    "prepare-danger": "ready-face",
    "joints-which": "choose-sealant",
    "bead-verdict": "size-film",
    "clock-do": "sealant-clock",
    "holes-blind": "seal-holes",
    "fault-stretches": "judge-film",
    "edge-do": "size-film",
    "after-mishap": "close-and-cure",
    "after-oil": "close-and-cure",
}
"""Fields of which every line decides, and their outcomes."""


def stored(right):
    return [
        f"{line}={option if isinstance(option, str) else min(option)}"
        for line, option in right.items()
    ]


def one_line_wrong(clean, name, line, option):
    right = dict(clean.references[name].value)
    return stored(right | {line: option})


@pytest.mark.parametrize("name", EACH)
def test_one_line_wrong_fails_the_outcome_and_says_why(marked, clean, name):
    right, asked = clean.references[name].value, clean.fields[name]
    for line, _ in asked.lines:
        for option, _ in asked.options:
            good = right[line] if isinstance(right[line], set) else {right[line]}
            if option in good:
                continue
            fields, mark = marked(
                **{name.replace("-", "_"): one_line_wrong(clean, name, line, option)}
            )
            (met,) = [one.met for one in mark.outcomes if one.id == EACH[name]]
            assert fields[name].share < 1 and not fields[name].passed and not met
            assert len(told(fields[name])) > 60


@pytest.mark.parametrize("name", EACH)
def test_blank_and_one_answer_everywhere_pass_no_deciding_question(marked, clean, name):
    field = name.replace("-", "_")
    for answers in [[], *(
        [f"{line}={option}" for line, _ in clean.fields[name].lines]
        for option, _ in clean.fields[name].options
    )]:  # fmt: skip
        fields, _ = marked(**{field: answers})
        assert not fields[name].passed and fields[name].share < 0.5


def test_oil_before_the_cure_fails_the_must_pass(marked, issued, clean):
    early = one_line_wrong(clean, "after-oil", "own", "now")
    fields, mark = marked(after_oil=early)
    assert not fields["after-oil"].passed and not mark.met
    assert "washes out the paste" in told(fields["after-oil"])
    after = issued["given"]["after"]
    warm = max(0, after["cure_hours"] - after["waited_hours"])
    fields, _ = marked(after_wait=f"{warm:g} h")
    assert fields["after-wait"].share == pytest.approx(0.3)
    assert "cold" in told(fields["after-wait"])


def test_an_old_film_left_as_it_is(marked, clean):
    assert clean.references["clock-do"].value["own"] == "renew"
    fields, _ = marked(clock_do=one_line_wrong(clean, "clock-do", "own", "go"))
    assert "skin does not stick" in told(fields["clock-do"])


def test_a_hole_that_oil_only_fills_taken_for_a_leak(marked, clean):
    right = clean.references["holes-leak"].value
    wrong = {line: min(letters) for line, letters in right.items()}
    fields, _ = marked(holes_leak=stored(wrong | {"leaks": min(right["stands"])}))
    assert fields["holes-leak"].share == 0.5
    assert "the oil finds no way out" in told(fields["holes-leak"])


def test_leak_and_lump_taken_for_each_other(marked, clean):
    right = clean.references["fault-stretches"].value
    (lump,) = [line for line, says in right.items() if says == "fat"]
    (leak,) = [line for line, says in right.items() if says not in ("fat", "fine")]
    says = dict(right) | {leak: "fat", lump: right[leak]}
    fields, _ = marked(fault_stretches=stored(says))
    assert fields["fault-stretches"].share == 0 and not fields["fault-stretches"].passed
    said = told(fields["fault-stretches"]) + " ".join(fields["fault-stretches"].details)
    assert "no oil gallery lies near" in said


def test_bare_skin_on_the_sealant_is_right_nowhere(module):
    """Wherever a hand without a glove lays or touches, gloves come before anything else."""
    for number in range(12):
        clean = module.clean(f"learner-{number}")
        asked, right = clean.fields["prepare-danger"], clean.references["prepare-danger"].value
        for line, text in asked.lines:
            if "bare finger" in text or "gloves lie in the store" in text or "glove tore" in text:
                assert right[line] == "gloves"
    every = [option.text for _, option in bank_of("sealant-film").every_option()]
    assert not any("by finger" in text for text in every)


def test_no_sentence_gives_the_key_away(clean):
    for name, reference in clean.references.items():
        if isinstance(reference.value, Q):
            figure = f"{reference.value.magnitude:.3g}"
            told = " ".join(slip.sentence for slip in reference.slips)
            assert len(figure) < 3 or figure not in told, name


@pytest.mark.parametrize(
    "stored",
    ["film", [None], [["film 0.1 middle from-1-to-2"]], ["film 0.1 middle nowhere"], {"a": 1}, 5,
     ["film 99 middle from-1-to-2"], ["x" * 1999], ["film 0.1 middle from-1-to-2"] * 500],
)  # fmt: skip
def test_a_damaged_film_is_no_answer_and_stops_nothing(marked, stored):
    fields, mark = marked(lay_film=stored)
    assert fields["lay-film"].share == 0 and not mark.met
    assert mark.points < mark.maximum and told(fields["lay-film"])


@pytest.mark.slow
def test_films_laid_at_random_earn_under_five_per_cent(module, unit):
    source = random.Random(6)
    shares = []
    for number in range(12):
        work = Work.of(unit, module.issue(f"learner-{number}")["given"]["lay"])
        for _ in range(8):
            hand = source.choice([Hand.FILM, Hand.BEAD])
            most = {Hand.FILM: 0.8, Hand.BEAD: 4.0}[hand]
            one = source.uniform(0.5 if hand is Hand.BEAD else 0.02, most)
            mixed = source.random() < 0.5
            side = source.choice([Side.MIDDLE, Side.INSIDE, Side.OUTSIDE])
            passes = [Pass(Hand.WIPE, 0.0, Side.MIDDLE, source.choice(work.face.segments).id)]
            for segment in work.face.segments:
                size = max(0.5, source.uniform(0, most)) if mixed else one
                passes.append(Pass(hand, size, side, segment.id))
            shares.append(find_film(work, passes).share)
    assert statistics.mean(shares) < 0.05
