"""The kernel's side of a form, driven by the messages a browser sends."""

import json

import pytest

from twoshaft.errors import SheetError
from twoshaft.jobsheet import open_sheet
from twoshaft.jobsheet.form import FormWidget, describe, plain_copy, sheet_states, show_form

STEPS = [["seal", "Drive in the seal"], ["case", "Close the case"], ["oil", "Fill the oil"]]


@pytest.fixture
def sheet(tmp_path):
    return open_sheet("order-of-work", tmp_path)


@pytest.fixture
def fields(sheet):
    made = (
        sheet.number("gap", "How wide is the gap?", "mm"),
        sheet.choice("why", "Why?", [["oil", "For the oil"], ["heat", "For heat"]]),
        sheet.choices("new", "What must be new?", [["seal", "Seal"], ["rail", "Rail"]]),
        sheet.order("plan", "Put in order", STEPS),
    )
    sheet.register("task", made)
    return made


@pytest.fixture
def form(sheet, fields):
    widget = FormWidget(sheet, "task", fields)
    widget.sent = []
    widget.send = lambda content, buffers=None: widget.sent.append(content)
    return widget


def say(widget, **message):
    """What the browser would send; returns what the kernel sent back."""
    widget.sent.clear()
    widget._handle_custom_msg(message, [])
    return list(widget.sent)


def on_disk(tmp_path, name):
    (file,) = tmp_path.glob("*jobsheet.json")
    return json.loads(file.read_text())["fields"].get(name, {}).get("value")


@pytest.mark.parametrize(
    ("name", "value"),
    [("gap", "1,25 mm"), ("why", "heat"), ("new", ["rail"]), ("plan", ["oil", "seal", "case"])],
)
def test_an_answer_is_kept_and_the_form_is_told(form, tmp_path, name, value):
    (told,) = say(form, type="save", name=name, value=value, turn=3)
    assert (told["type"], told["name"], told["turn"]) == ("saved", name, 3)
    assert told["state"]["value"] == value == on_disk(tmp_path, name)
    assert told["state"]["saved"].endswith("Z") and not told["state"]["error"]
    assert form.states[name] == told["state"]


def test_a_number_is_read_back(form):
    (told,) = say(form, type="save", name="gap", value="1,25 mm")
    assert told["state"]["read"] == "1.25 mm"


def test_a_number_without_a_unit_is_kept_and_asked_back(form, tmp_path):
    (told,) = say(form, type="save", name="gap", value="1.25")
    assert "without a unit" in told["state"]["error"] and "mm" in told["state"]["error"]
    assert not told["state"]["read"]
    assert on_disk(tmp_path, "gap") == "1.25"


def test_an_answer_that_cannot_be_kept_is_refused_with_the_reason(form, sheet, monkeypatch):
    def full(*_, **__):
        raise SheetError("the disk is full", mend="make room")

    monkeypatch.setattr(sheet, "save", full)
    (told,) = say(form, type="save", name="gap", value="2 mm", turn=7)
    assert told == {
        "type": "refused",
        "name": "gap",
        "turn": 7,
        "reason": "the disk is full; make room.",
    }
    assert form.states["gap"] == {}


def test_a_value_of_no_known_type_is_refused(form):
    (told,) = say(form, type="save", name="gap", value={"a": 1})
    assert told["type"] == "refused" and "type" in told["reason"]


def test_foreign_names_and_messages_change_nothing(form):
    assert say(form, type="save", name="nothing", value="1") == []
    assert say(form, type="unheard-of") == []
    assert say(form) == []


def test_an_answer_taken_back_counts_as_none(form):
    say(form, type="save", name="gap", value="2 mm")
    (told,) = say(form, type="save", name="gap", value="")
    assert told["state"]["blank"] and "not answered yet" in form.plain_copy()


def test_another_window_shows_what_this_one_saved(form, tmp_path, fields):
    other = FormWidget(open_sheet("order-of-work", tmp_path), "task", fields)
    say(form, type="save", name="gap", value="2 mm")
    assert other.states["gap"] == {}
    other._handle_custom_msg({"type": "look"}, [])
    assert other.states["gap"]["value"] == "2 mm"


def test_replacing_an_answer_of_another_window_is_told(form, tmp_path, fields):
    other = FormWidget(open_sheet("order-of-work", tmp_path), "task", fields)
    say(form, type="save", name="gap", value="2 mm")
    other.sent = []
    other.send = lambda content, buffers=None: other.sent.append(content)
    (told,) = say(other, type="save", name="gap", value="3 mm")
    assert "another window" in told["state"]["note"]


def test_a_form_opened_again_shows_the_answers(form, tmp_path, fields):
    say(form, type="save", name="plan", value=["oil", "seal", "case"])
    again = FormWidget(open_sheet("order-of-work", tmp_path), "task", fields)
    assert again.states["plan"]["value"] == ["oil", "seal", "case"]


def test_an_answer_from_code_is_shown(form, sheet):
    sheet.answer("gap", "4 mm")
    assert form.states["gap"]["value"] == "4 mm"


def test_a_fault_of_the_form_is_told_on_the_form(form, sheet, monkeypatch):
    def broken():
        raise RuntimeError("odd")

    monkeypatch.setattr(sheet, "refresh", broken)
    (told,) = say(form, type="look")
    assert told["type"] == "trouble" and "odd" in told["reason"]
    monkeypatch.undo()
    assert say(form, type="look") == [{"type": "trouble", "reason": ""}]


def test_a_described_field_holds_no_answer(fields):
    told = {field.name: describe(field) for field in fields}
    assert told["gap"] == {
        "kind": "number",
        "name": "gap",
        "prompt": "How wide is the gap?",
        "units": ["mm", "cm", "m", "µm", "in", "thou", "ft"],
        "hint": "Number and unit, as 12.5 mm",
    }
    assert told["plan"]["steps"] == STEPS
    assert all("value" not in one for one in told.values())


def test_units_to_choose_are_of_one_kind_and_a_plain_number_has_none(sheet):
    torque = describe(sheet.number("nut", "How tight?", "N·m"))["units"]
    assert {"N·m", "lbf·ft", "kgf·m"} <= set(torque) and "J" not in torque
    assert describe(sheet.number("share", "Which ratio?"))["units"] == []
    told = describe(sheet.number("steps", "How many steps?", whole=True))
    assert told["hint"] == "A whole number, as 12"


def test_the_plain_copy_says_every_answer_and_runs_nothing(sheet, fields):
    sheet.save("plan", ["oil", "seal", "case"])
    sheet.save("gap", "<script>1</script>")
    copy = plain_copy(sheet.header(), "task", fields, sheet_states(sheet, fields))
    assert "<script" not in copy and "&lt;script&gt;" in copy
    assert copy.index("Fill the oil") < copy.index("Drive in the seal") < copy.index("Close")
    assert copy.count("not answered yet") == 2


def test_a_read_only_sheet_is_shown_as_plain_text(sheet, fields, monkeypatch):
    shown = []
    monkeypatch.setattr("twoshaft.jobsheet.form.display", shown.append)
    monkeypatch.setattr(type(sheet), "read_only", True)
    show_form(sheet, "task", fields)
    (one,) = shown
    assert not isinstance(one, FormWidget) and "How wide is the gap?" in one.data
