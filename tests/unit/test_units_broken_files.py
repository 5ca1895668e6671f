"""Every way of breaking a unit file gets a sentence with file, line and mend."""

import re

import pytest

from twoshaft.errors import UnitFileError
from twoshaft.units import load_unit

GOOD = """\
identity:
  id: little
  name: Little unit
  version: "1.0"
  invented: true
  college: Tarnbeck College
  scenario: A few steps for a test.
  gears: 5
parts:
  - {id: ring, name: Bearing ring}
  - {id: seal, name: Oil seal, single use: true}
tools:
  - {id: press, name: Bench press}
stages:
  - {id: bench, name: At the bench}
operations:
  - {id: wash, name: Wash the housing, stage: bench, kind: prepare, minutes to do: 5, minutes to undo: 0}
  - {id: fit-ring, name: Press in the ring, stage: bench, parts: ring, tools: press, minutes to do: 2, minutes to undo: 3}
  - {id: fit-seal, name: Drive in the seal, stage: bench, parts: seal, minutes to do: 3, minutes to undo: 3}
  - {id: try-it, name: Turn it by hand, stage: bench, kind: check, minutes to do: 1, minutes to undo: 0}
rules:
  - {id: wash-first, kind: buries, earlier: wash, later: fit-ring, reason: The ring covers the dirt.}
  - {id: ring-first, kind: cannot, earlier: fit-ring, later: fit-seal, reason: The seal sits on the ring.}
  - {id: ring-to-try, kind: blinds, earlier: fit-ring, later: try-it, reason: Nothing turns without it.}
"""
LINES = GOOD.splitlines()


def line_of(text, part):
    """Number of the first line that holds `part`."""
    return next(i for i, line in enumerate(text.splitlines(), 1) if part in line)


@pytest.fixture
def broken(tmp_path):
    """Return a function that loads changed text and gives back the error."""

    def load(text):
        path = tmp_path / "little.yaml"
        path.write_text(text, encoding="utf-8")
        with pytest.raises(UnitFileError) as caught:
            load_unit(path)
        message = str(caught.value)
        for sentence in message.splitlines():
            # one sentence: place first, the mend after the last semicolon, a full stop
            assert "little.yaml" in sentence.split(":")[0]
            assert "; " in sentence
            assert sentence.endswith((".", "?"))
        return message.replace(str(tmp_path) + "/", "")

    return load


def test_the_good_file_loads(tmp_path):
    path = tmp_path / "little.yaml"
    path.write_text(GOOD, encoding="utf-8")
    unit = load_unit(path)
    assert [operation.id for operation in unit.operations] == [
        "wash",
        "fit-ring",
        "fit-seal",
        "try-it",
    ]
    assert unit.operations[1].parts == ("ring",)
    assert unit.where("operations", "fit-seal").endswith(f"line {line_of(GOOD, 'id: fit-seal')}")


# (what is replaced, by what, a word on the line that is to be named, what, mend)
SLIPS = {
    "unknown key": ("earlier: wash,", "earier: wash,", "wash-first", "'earier' is not a known key", "did you mean 'earlier'"),
    "id with capitals": ("id: press,", "id: Press,", "Press,", "'Press', which is not an id", "lower-case words"),
    "not a number": ("minutes to do: 5", "minutes to do: five", "five", "'five', which is not a number", "write a number"),
    "a list for a number": ("minutes to do: 5", "minutes to do: [5, 6]", "[5, 6]", "'minutes to do' is a list, which is not a number", "write a number"),
    "negative minutes": ("minutes to do: 5", "minutes to do: -5", "-5", "'minutes to do' is -5", "a number above 0"),
    "endless minutes": ("minutes to do: 5", "minutes to do: .inf", ".inf", "not a number", "write a number"),
    "unknown kind": ("kind: buries", "kind: hides", "hides", "'kind' is 'hides'", "'buries'"),
    "number for text": ('version: "1.0"', "version: 1.0", "version", "1.0, which is not text", "put it in quotes"),
    "missing key": (", reason: The ring covers the dirt.", "", "wash-first", "'reason' is missing", "add a line 'reason: ...'"),
    "unknown stage": ("stage: bench, parts: seal", "stage: bensch, parts: seal", "bensch", "'stage' of 'fit-seal' names 'bensch'", "did you mean 'bench'"),
    "unknown part": ("parts: seal", "parts: [seal, seel]", "seel", "names 'seel', which is not in parts", "did you mean 'seal'"),
    "unknown tool": ("tools: press", "tools: hammer", "hammer", "names 'hammer', which is not in tools", "add it to tools"),
    "unknown operation": ("later: fit-seal", "later: fit-sael", "fit-sael", "names 'fit-sael', which is not in operations", "did you mean 'fit-seal'"),
    "before itself": ("earlier: fit-ring, later: fit-seal", "earlier: fit-seal, later: fit-seal", "ring-first", "would have to come before itself", "name another"),
    "one alternative": ("earlier: fit-ring, later: fit-seal", "any of: fit-ring, later: fit-seal", "ring-first", "needs at least two operations", "write 'earlier'"),
    "no side": ("earlier: fit-ring, later: fit-seal, ", "later: fit-seal, ", "ring-first", "none or several", "give exactly one"),
    "harm without loss": ("kind: buries", "kind: harms", "wash-first", "does not say what is damaged", "under 'loses'"),
    "loss without harm": ("later: fit-seal,", "later: fit-seal, loses: seal,", "ring-first", "only harms has 'loses'", "change the kind"),
    "blind to nothing": ("kind: cannot", "kind: blinds", "ring-first", "none of its operations is a check", "choose another kind"),
    "idle tool": ("tools: press, ", "", "id: press", "no operation uses 'press'", "remove it"),
    "part never fitted": ("parts: seal, ", "", "id: seal", "'seal' is never fitted", "in place: true"),
    "loose operation": ("later: try-it", "later: fit-seal", "id: try-it", "nothing needs 'try-it' and it needs nothing", "add the rule"),
    "doubled id": ("id: ring-to-try", "id: ring-first", "later: try-it", "'ring-first' stands 2 times in rules", "an id of its own"),
    "doubled key": ("  gears: 5", "  gears: 5\n  gears: 6", "gears: 6", "'gears' stands twice", "keep one"),
    "single use twice": ("kind: check,", "kind: trial, parts: seal,", "try-it", "'seal' can be used only once", "drop one"),
    "fitted twice": ("parts: seal", "parts: [seal, ring]", "fit-seal", "'ring' goes in in 'fit-ring' and again in 'fit-seal'", "kind remove"),
    "merge key": ("  gears: 5", "  <<: {gears: 5}", "<<", "merge keys", "write the values out"),
    "tab": ("  gears: 5", "\tgears: 5", "gears: 5", "the YAML cannot be read here", "tabs"),
    "open bracket": ("tools:\n", "tools: [\n", None, "the YAML cannot be read here", "check the indentation"),
    "text for a list": ("tools:\n  - {id: press, name: Bench press}", "tools: hammer", "hammer", "'tools' is not a list", "dash"),
    "empty stage": ("  - {id: bench, name: At the bench}", "  - {id: bench, name: At the bench}\n  - {id: attic, name: In the attic}", "attic", "no operation belongs to the stage 'attic'", "remove it"),
}  # fmt: skip


@pytest.mark.parametrize("slip", SLIPS)
def test_slip_is_named_with_its_line_and_mend(broken, slip):
    old, new, on_line, what, mend = SLIPS[slip]
    assert old in GOOD
    text = GOOD.replace(old, new, 1)
    message = broken(text)
    sentence = next(line for line in message.splitlines() if what in line)
    assert mend in sentence
    if on_line is not None:
        assert f"line {line_of(text, on_line)}:" in sentence


def test_every_finding_is_told_at_once(broken):
    text = GOOD.replace("parts: seal", "parts: seel").replace("tools: press", "tools: pres")
    message = broken(text)
    assert len(message.splitlines()) == 2
    assert "did you mean 'seal'" in message
    assert "did you mean 'press'" in message


def add(text, *lines):
    """`text` with sections or rules put at its end."""
    return text + "\n".join(lines) + "\n"


def test_loop_is_told_with_its_reasons_and_the_shortest_first(broken):
    text = add(
        GOOD,
        "  - {id: back, kind: buries, earlier: fit-seal, later: fit-ring, reason: The ring hides it.}",
        "  - {id: longer, kind: buries, earlier: fit-seal, later: wash, reason: The wash hides it.}",
    )
    message = broken(text)
    assert "2 steps wait for one another" in message
    assert "(ring-first: The seal sits on the ring)" in message
    assert "(back: The ring hides it)" in message
    assert "longer" not in message
    assert "remove or turn round" in message


def test_two_way_cannot_asks_whether_they_are_fitted_together(broken):
    text = add(
        GOOD,
        "  - {id: back, kind: cannot, earlier: fit-seal, later: fit-ring, reason: It holds the ring.}",
    )
    message = broken(text)
    assert f"line {line_of(text, 'id: back')}:" in message
    assert "are they fitted together?" in message
    assert "'together'" in message


def test_loop_through_a_hold(broken):
    text = add(
        GOOD,
        "holds:",
        "  - {id: held, name: It is held, given by: fit-seal, needed by: fit-ring, ended by: try-it, reason: It slips.}",
    )
    message = broken(text)
    assert "(held: It slips)" in message
    assert "(ring-first: The seal sits on the ring)" in message


def test_hold_without_an_end(broken):
    text = add(
        GOOD,
        "holds:",
        "  - {id: held, name: It is held, given by: wash, needed by: fit-ring, ended by: [], reason: It slips.}",
    )
    message = broken(text)
    assert "in holds 'held', 'ended by' has too few entries" in message
    assert f"line {line_of(text, 'id: held')}:" in message


def test_hold_that_gives_itself(broken):
    text = add(
        GOOD,
        "holds:",
        "  - {id: held, name: It is held, given by: wash, needed by: wash, ended by: wash, reason: It slips.}",
    )
    message = broken(text)
    assert "'wash' needs the hold 'held' that it gives itself" in message
    assert "'wash' both gives and ends the hold 'held'" in message


def test_group_that_gives_and_ends_a_hold(broken):
    text = add(
        GOOD,
        "together:",
        "  - {id: pair, name: Fit both, operations: [wash, try-it], reason: They mesh.}",
        "holds:",
        "  - {id: held, name: It is held, given by: [wash, fit-ring], needed by: fit-seal, ended by: try-it, reason: It slips.}",
    )
    message = broken(text)
    assert "the group 'pair' gives the hold 'held' with 'wash' and ends it with 'try-it'" in message


def test_alternatives_that_all_come_too_late(broken):
    text = add(
        GOOD,
        "  - {id: some, kind: cannot, any of: [fit-seal, try-it], later: fit-ring, reason: One must hold it.}",
    )
    message = broken(text)
    assert f"line {line_of(text, 'id: some')}:" in message
    assert "'some' (One must hold it) leaves no way" in message
    assert "'fit-ring' then 'fit-seal' is certain" in message


def test_last_alternative_left_makes_a_loop_with_its_reason(broken):
    # fit-seal comes after fit-ring for certain, so 'some' can only mean: try-it before wash
    text = add(
        GOOD,
        "  - {id: some, kind: cannot, any of: [fit-seal, try-it], later: wash, reason: One of them.}",
    )
    message = broken(text)
    assert "'some' (One of them) leaves no way" in message


def test_choices_that_contradict_one_another(broken):
    text = GOOD.replace(
        "stages:",
        "  - {id: saw, name: Saw}\n  - {id: file, name: File}\nstages:",
    ).replace(
        "rules:\n",
        "  - {id: a, name: Do the first, stage: bench, tools: [saw, file], minutes to do: 1, minutes to undo: 1}\n"
        "  - {id: b, name: Do the second, stage: bench, minutes to do: 1, minutes to undo: 1}\n"
        "rules:\n"
        "  - {id: one, kind: cannot, any of: [a, b], later: wash, reason: One of them.}\n"
        "  - {id: two, kind: cannot, any of: [wash, b], later: a, reason: One of them.}\n"
        "  - {id: three, kind: cannot, any of: [wash, a], later: b, reason: One of them.}\n",
    )
    message = broken(text)
    assert "no order satisfies all of 'one', 'three', 'two' at once" in message


def test_more_choices_than_can_be_searched(broken):
    steps = [
        f"  - {{id: x-{k}, name: Do step {k}, stage: bench, minutes to do: 1, minutes to undo: 1}}"
        for k in range(14)
    ]
    rules = [
        f"  - {{id: c-{k}, kind: cannot, any of: [wash, fit-ring], later: x-{k}, reason: One of them.}}"
        for k in range(14)
    ]
    text = GOOD.replace("rules:\n", "\n".join([*steps, "rules:", *rules, ""]))
    message = broken(text)
    assert "leaves 14 choices open" in message
    assert "more than the 12" in message


def test_clock_that_always_runs_out(broken):
    text = add(
        GOOD,
        "clocks:",
        "  - {id: skins, name: It skins over, starts: wash, ends: fit-seal, minutes: 4, reason: It dries.}",
    )
    message = broken(text)
    assert f"line {line_of(text, 'id: skins')}:" in message
    assert "allows 4 minutes" in message
    assert "less than 5" in message  # the ring, 2 min, and the seal, 3 min
    assert "'fit-ring'" in message
    assert "allow more time" in message


def test_clock_whose_end_is_not_tied_to_its_start(broken):
    text = add(
        GOOD,
        "clocks:",
        "  - {id: skins, name: It skins over, starts: fit-seal, ends: try-it, minutes: 4, reason: It dries.}",
    )
    message = broken(text)
    assert f"line {line_of(text, 'id: skins')}:" in message
    assert "no rule says that 'try-it' comes after it" in message


def test_clock_that_is_just_reached_is_accepted(tmp_path):
    path = tmp_path / "little.yaml"
    path.write_text(
        add(
            GOOD,
            "clocks:",
            "  - {id: skins, name: It skins over, starts: wash, ends: fit-seal, minutes: 5, reason: It dries.}",
        )
    )
    assert load_unit(path).clocks[0].minutes == 5


def test_operation_in_two_groups(broken):
    text = add(
        GOOD,
        "together:",
        "  - {id: pair, name: Fit both, operations: [fit-seal, try-it], reason: They mesh.}",
        "  - {id: other, name: Fit others, operations: [try-it, wash], reason: They mesh.}",
    )
    assert "'try-it' belongs to 'pair' and to 'other'" in broken(text)


def test_rule_within_a_group(broken):
    text = add(
        GOOD,
        "together:",
        "  - {id: pair, name: Fit both, operations: [fit-ring, fit-seal], reason: They mesh.}",
    )
    message = broken(text)
    assert "'ring-first' orders two operations of the group 'pair'" in message


def test_group_split_by_a_step(broken):
    text = add(
        GOOD,
        "together:",
        "  - {id: pair, name: Fit both, operations: [wash, fit-seal], reason: They mesh.}",
    )
    message = broken(text)
    assert "the group 'pair' goes in as one, but 'fit-ring' must come between" in message
    assert "take an operation out of the group" in message


def test_group_named_like_an_operation(broken):
    text = add(
        GOOD,
        "together:",
        "  - {id: wash, name: Fit both, operations: [fit-seal, try-it], reason: They mesh.}",
    )
    assert "the group 'wash' has the id of an operation" in broken(text)


@pytest.mark.parametrize(
    ("content", "what"),
    [
        (b"", "the file is empty"),
        (b"# nothing here\n", "the file is empty"),
        (b"- a\n- b\n", "not made of sections"),
        (b"\xff\xfe\x00identity", "not UTF-8"),
        (b"identity: \x01\n", "a character that YAML does not allow"),
        (b"a: &a [*a]\n", "repeats itself without end"),
        (b"? [a, b]\n: c\n", "a key must be a word"),
        pytest.param(b"[" * 1500, "nested too deep", marks=pytest.mark.slow),
        (b"a: !!python/object:os.system x\n", "'a' is not a known key"),
    ],
)
def test_damaged_files(tmp_path, content, what):
    path = tmp_path / "little.yaml"
    path.write_bytes(content)
    with pytest.raises(UnitFileError) as caught:
        load_unit(path)
    assert what in str(caught.value)


@pytest.mark.filterwarnings("error")
def test_an_anchor_that_stands_twice_is_no_matter(tmp_path):
    path = tmp_path / "little.yaml"
    path.write_text(
        GOOD.replace("{id: ring,", "&a {id: ring,").replace("{id: seal,", "&a {id: seal,")
    )
    assert len(load_unit(path).parts) == 2


@pytest.mark.slow
def test_alias_bomb_is_refused(tmp_path):
    levels = ["a0: &a0 [x, x]"]
    levels += [f"a{k}: &a{k} [{', '.join([f'*a{k - 1}'] * 9)}]" for k in range(1, 9)]
    path = tmp_path / "bomb.yaml"
    path.write_text("\n".join(levels))
    with pytest.raises(UnitFileError, match="repeats itself without end"):
        load_unit(path)


def test_missing_file_and_unknown_id(tmp_path):
    with pytest.raises(UnitFileError, match="there is no such file"):
        load_unit(tmp_path / "nowhere.yaml")
    with pytest.raises(UnitFileError, match=r"no shipped unit 'tarnbek-b5'.*tarnbeck-b5"):
        load_unit("tarnbek-b5")


def test_findings_are_kept_one_by_one(tmp_path):
    path = tmp_path / "little.yaml"
    path.write_text(GOOD.replace("parts: seal", "parts: seel"))
    with pytest.raises(UnitFileError) as caught:
        load_unit(path)
    (finding,) = caught.value.findings
    assert re.search(r"line \d+$", finding.where)
    assert finding.sentence == str(caught.value)


@pytest.mark.parametrize(
    ("kind", "said"),
    [("kind: needel, ", "'kind' is 'needel'; choose 'taper', 'ball'"), ("", "'kind' is missing")],
)
def test_a_bearing_of_no_known_kind(tmp_path, kind, said):
    file = tmp_path / "unit.yaml"
    file.write_text(
        f"{GOOD}bearings:\n  types:\n    - {{id: needles, name: Needles, {kind}bore mm: 20}}\n"
    )
    with pytest.raises(UnitFileError) as told:
        load_unit(file)
    assert said in str(told.value) and "expected tags" not in str(told.value)
