"""Module Reading faults marked: typical wrong answers, follow-through, must-pass."""

import pytest

from twoshaft.models import faults

MODULE = "09-reading-faults"


def figure(text):
    """The number in an answer."""
    return float(text.split()[0])


def all_checks(given, answers):
    return f"{sum(row[3] for row in given['search']['checks']):g} min"


def scale(given, answers):
    return f"{given['cord']['readings'][0][1]:g} N"


def gear_alone(given, answers):
    """The ratio without the final drive."""
    _, driving, driven = given["count"]["wheels"][0]
    return f"{driven / driving:.4f}"


def sound(given, answers):
    """The shaft or case next to the one thing that is wrong: a part that lies as it should."""
    opened = given["opened"]["units"][0]
    right = answers["opened-1"][0][-1]
    spots = [letter for letter, _ in opened["scene"]["spots"] if letter != right]
    return [f"wrong={spots[0]}"]


def other(field, *, to):
    """The right answers, with one line of them answered otherwise."""

    def answer(given, answers):
        right = list(answers[field])
        at = next(n for n, one in enumerate(right) if not one.endswith(f"={to}"))
        kept = right[at].partition("=")[0]
        right[at] = f"{kept}={to}"
        return right

    return answer


WRONG = [
    # name, field, answer, share, what the sentence says
    ("all checks in every search", "search-minutes-1", all_checks, 0.25, "stop when one suspect"),
    ("the ratio upside down", "count-ratio", lambda g, a: f"{1 / figure(a['count-ratio']):.5f}", 0.25,
     "other way round"),
    ("without the final drive", "count-ratio", gear_alone, 0.25, "final drive belongs"),
    ("one wheel held", "count-turns", lambda g, a: f"{figure(a['count-turns']) / 2:.4f} turns", 0.25,
     "other held"),
    ("the other shaft left in", "cord-rest", scale, 0.25, "other shaft turns too"),
    ("the drum's diameter", "cord-torque", lambda g, a: f"{2 * figure(a['cord-torque']):.4f} N·m",
     0.25, "not at its diameter"),
    ("a slip of ten", "cord-torque", lambda g, a: f"{10 * figure(a['cord-torque']):.4f} N·m", 0.0,
     "10 times too large"),
    ("one case sent to the wrong check", "driver-first", other("driver-first", to="oil"), 2 / 3,
     "4 of the 5 lines"),
    ("a sound part pointed at", "opened-1", sound, 0.0, "One thing"),
    ("the other way to be wrong", "opened-how", other("opened-how", to="off"), 0.0, "One thing"),
    ("a misbuild that a passed check rules out", "explain-all", other("explain-all", to="can"), 0.0,
     "would read otherwise"),
    ("minutes spent on a check that tells nothing", "search-apart", other("search-apart", to="none"),
     2 / 3, "4 of the 5 lines"),
    ("two where one does it", "two-how", other("two-how", to="two"), 0.0, "3 of the 4 lines"),
    ("a check where none tells", "alike-tell", other("alike-tell", to="today"), 0.0,
     "3 of the 4 lines"),
    ("a sound count made again", "count-says", other("count-says", to="held"), 0.0,
     "3 of the 4 lines"),
    ("a pair taken apart for a reading", "cord-says", other("cord-says", to="heavy"), 0.5,
     "3 of the 4 lines"),
    ("a spoilt check left as it is", "blind-again", other("blind-again", to="none"), 0.0,
     "3 of the 4 lines"),
]  # fmt: skip


@pytest.mark.parametrize(
    ("field", "answer", "share", "says"), [w[1:] for w in WRONG], ids=[w[0] for w in WRONG]
)
def test_a_typical_wrong_answer_earns_its_part_and_is_told_why(marked, field, answer, share, says):
    fields, _ = marked("m1", **{field.replace("-", "_"): answer})
    judged = fields[field]
    assert judged.share == pytest.approx(share)
    assert says in " ".join(judged.sentences), judged.sentences


@pytest.mark.parametrize(
    ("field", "options", "lines"), [("stop-cases", "do", "cases"), ("stop-road", "road", "found")]
)
def test_any_line_about_an_unsafe_unit_fails_whatever_the_points(
    marked, module, field, options, lines
):
    issued = module.record("m1")
    stop, right = issued["given"]["stop"], module.right(issued)[field]
    name = field.replace("-", "_")
    assert marked("m1")[1].met
    assert len(right) == len(stop[lines]) == 4
    for at, entry in enumerate(right):
        line, _, answer = entry.partition("=")
        for other in {key for key, _ in stop[options]} - {answer}:
            fields, result = marked(
                "m1", **{name: [*right[:at], f"{line}={other}", *right[at + 1 :]]}
            )
            assert not fields[field].passed and not result.met
            assert result.points > 0.9 * result.maximum
            assert len(fields[field].sentences) == 2
        assert not marked("m1", **{name: [*right[:at], *right[at + 1 :]]})[1].met
    assert not marked("m1", **{name: None})[1].met


def test_an_early_slip_is_charged_once(marked):
    """A ratio without the final drive goes on into the turns; so does a pull into its torque."""

    def turns(given, answers):
        return f"{float(gear_alone(given, answers)) * given['count']['turns']:.3f} turns"

    def torque(given, answers):
        cord = given["cord"]
        return f"{cord['readings'][0][1] * cord['drum_mm'] / 1e3:.3f} N·m"

    fields, _ = marked(
        "m1", count_ratio=gear_alone, count_turns=turns, cord_rest=scale, cord_torque=torque
    )
    assert fields["count-ratio"].share == fields["cord-rest"].share == 0.25
    assert fields["count-turns"].share == 1 and fields["count-turns"].carried
    assert fields["cord-torque"].share == 1 and fields["cord-torque"].carried
    assert fields["count-says"].share == fields["cord-says"].share == 1


def test_minutes_are_read_as_people_write_them(marked):
    fields, _ = marked(
        "m2",
        search_minutes_1=lambda g, a: f"{figure(a['search-minutes-1']) / 60:.5f} h",
        search_minutes_2=lambda g, a: f"{figure(a['search-minutes-2']) * 60:.1f} s",
    )
    assert fields["search-minutes-1"].share == fields["search-minutes-2"].share == 1


@pytest.mark.parametrize("bad", ["", "nobody+knows", ["a"], {"a": 1}, 7])
def test_a_damaged_answer_earns_nothing_and_stops_nothing(marked, bad):
    fields, result = marked("m1", alike_tell=bad, own_says=bad)
    assert fields["alike-tell"].share == fields["own-says"].share == 0
    assert result.points > 0.7 * result.maximum


@pytest.mark.parametrize("learner", ["m1", "m2", "m3"])
def test_a_wrong_diagnosis_of_the_own_unit_is_told_why(marked, module, learner):
    """Every other diagnosis earns nothing, and its sentence gives no letter away."""
    issued = module.issue(learner)
    right = module.right(issued)["own-says"]
    for id, _ in issued["given"]["own"]["says"]:
        if id == right:
            continue
        fields, _ = marked(learner, own_says=id)
        told = " ".join(fields["own-says"].sentences)
        assert fields["own-says"].share == 0
        assert "alone" in told or "Two are not" in told or "Not every" in told or "others" in told


def test_the_quickest_of_several_checks_is_asked_for(marked, module):
    """A check that tells two apart in more minutes is told so; equal minutes are both right."""
    told = set()
    for learner in ("m1", "m2", "m3", "m4"):
        task = module.issue(learner)["given"]["search"]
        table = faults.outcome_table(module.unit)
        for at, (pair, _) in enumerate(task["pairs"]):
            one, two = pair.split("+")
            minutes = {
                row[0]: row[3]
                for row in task["checks"]
                if table.outcome((one,), row[0]) != table.outcome((two,), row[0])
            }
            for check, took in minutes.items():
                answers = list(module.right(module.issue(learner))["search-apart"])
                answers[at] = f"{pair}={check}"
                fields, _ = marked(learner, search_apart=answers)
                full = took == min(minutes.values())
                assert (fields["search-apart"].share == 1) == full
                if not full:
                    told.add(" ".join(fields["search-apart"].sentences))
    assert any("in fewer minutes" in text for text in told)
