"""Module Reading faults marked: typical wrong answers, follow-through, must-pass."""

import pytest

from twoshaft.models import faults

MODULE = "09-reading-faults"


def figure(text):
    """The number in an answer."""
    return float(text.split()[0])


def all_three(given, answers):
    return f"{sum(row[3] for row in given['plan']['checks']):g} min"


def often(given, answers):
    task = given["next"]
    one = next(row[3] for row in task["suspects"] if row[0] == task["asked"])
    return f"{one / 10:g} %"


def scale(given, answers):
    return f"{given['cord']['shown_n']:g} N"


WRONG = [
    # name, field, answer, share, what the sentence says
    ("one of several explanations only", "explain-all", lambda g, a: a["explain-all"][:1], None,
     "not the only one"),
    ("suspects counted, not weighed", "next-chance", "20 %", 0.25, "weigh them"),
    ("how often in any unit", "next-chance", often, 0.25, "in for certain"),
    ("the chance to pass", "next-fails", lambda g, a: f"{100 - figure(a['next-fails']):.2f} %", 0.5,
     "to pass"),
    ("all checks in every search", "plan-first", all_three, 0.25, "stop when one suspect"),
    ("shares added, not multiplied", "two-often",
     lambda g, a: f"{1000 * sum(row[2] for row in g['two']['often']):g}", 0.0, "multiply the shares"),
    ("the ratio upside down", "count-ratio", lambda g, a: f"{1 / figure(a['count-ratio']):.5f}", 0.25,
     "other way round"),
    ("without the final drive", "count-ratio",
     lambda g, a: f"{g['count']['wheels'][0][2] / g['count']['wheels'][0][1]:.4f}", 0.25,
     "final drive belongs"),
    ("one wheel held", "count-turns", lambda g, a: f"{figure(a['count-turns']) / 2:.4f} turns", 0.25,
     "other held"),
    ("the other shaft left in", "cord-rest", scale, 0.25, "other shaft turns too"),
    ("the drum's diameter", "cord-torque", lambda g, a: f"{2 * figure(a['cord-torque']):.4f} N·m",
     0.25, "not at its diameter"),
    ("a slip of ten", "cord-torque", lambda g, a: f"{10 * figure(a['cord-torque']):.4f} N·m", 0.0,
     "10 times too large"),
    ("two because two checks failed", "two-why", "two-failed", 0.0, "can fail two checks"),
]  # fmt: skip


@pytest.mark.parametrize(
    ("field", "answer", "share", "says"), [w[1:] for w in WRONG], ids=[w[0] for w in WRONG]
)
def test_a_typical_wrong_answer_earns_its_part_and_is_told_why(marked, field, answer, share, says):
    fields, _ = marked("m1", **{field.replace("-", "_"): answer})
    judged = fields[field]
    assert 0.3 < judged.share < 0.6 if share is None else judged.share == pytest.approx(share)
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


def test_the_check_that_tells_most_but_takes_long_is_told_apart(marked, module):
    """The sentence says why a longer check is not the next one; the key is not given away."""
    told = set()
    for learner in ("m1", "m2", "m3", "m4"):
        if len(told) == 3:
            break
        task = module.issue(learner)["given"]["next"]
        five = [(row[0],) for row in task["suspects"]]
        ranked = faults.next_check(module.unit, {}, among=five)
        names = {row[0]: row[1] for row in task["checks"]}
        for check in names:
            if check == ranked[0].check:
                continue
            fields, _ = marked(learner, next_best=check)
            sentence = " ".join(fields["next-best"].sentences)
            assert fields["next-best"].share == 0 and names[ranked[0].check] not in sentence
            told.add(sentence)
    assert len(told) == 3


def test_an_early_slip_is_charged_once(marked):
    """A ratio without the final drive goes on into the turns; so does a pull into its torque."""

    def short(given, answers):
        return f"{given['count']['wheels'][0][2] / given['count']['wheels'][0][1]:.4f}"

    def turns(given, answers):
        return f"{float(short(given, answers)) * given['count']['turns']:.3f} turns"

    def torque(given, answers):
        return f"{given['cord']['shown_n'] * given['cord']['drum_mm'] / 1e3:.3f} N·m"

    fields, _ = marked(
        "m1", count_ratio=short, count_turns=turns, cord_rest=scale, cord_torque=torque,
        cord_says="heavy",
    )  # fmt: skip
    assert fields["count-ratio"].share == fields["cord-rest"].share == 0.25
    assert fields["count-turns"].share == 1 and fields["count-turns"].carried
    assert fields["cord-torque"].share == 1 and fields["cord-torque"].carried
    assert fields["cord-says"].share == 1


def test_minutes_are_read_as_people_write_them(marked):
    fields, _ = marked(
        "m2",
        plan_first=lambda g, a: f"{figure(a['plan-first']) / 60:.5f} h",
        plan_second=lambda g, a: f"{figure(a['plan-second']) * 60:.1f} s",
    )
    assert fields["plan-first"].share == fields["plan-second"].share == 1


@pytest.mark.parametrize("bad", ["", "nobody+knows", ["a"], {"a": 1}, 7])
def test_a_damaged_answer_earns_nothing_and_stops_nothing(marked, bad):
    fields, result = marked("m1", alike_pair=bad, own_which=bad)
    assert fields["alike-pair"].share == fields["own-which"].share == 0
    assert result.points > 0.7 * result.maximum


def test_a_wrong_pair_is_stripped_where_it_would_be_seen(marked, unit):
    """The second answer is judged on the learner's own pair."""

    def pair(given, answers):
        for key, _ in given["alike"]["pairs"]:
            parts = {faults.part_of(unit, one) for one in key.split("+")}
            right = {faults.part_of(unit, one) for one in answers["alike-pair"].split("+")}
            if parts & {"shift", "setting", "joint", "train"} and not parts & right:
                return key
        pytest.skip("this learner's pairs all lie in one part")

    def strip(given, answers):
        chosen = pair(given, answers).split("+")
        return min({faults.part_of(unit, one) for one in chosen} - {"order"})

    for learner in ("m1", "m2"):
        fields, _ = marked(learner, alike_pair=pair, alike_strip=strip)
        assert fields["alike-pair"].share == 0 and fields["alike-strip"].share == 1
