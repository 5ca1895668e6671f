"""Forms and rigs worked with in a real browser: by keys, by mouse, by finger."""

import json
import re

import nbformat
import pytest
from nbformat.v4 import new_code_cell, new_notebook

from twoshaft.jupyter.released import cell_digest

pytestmark = pytest.mark.browser

SETUP = """\
from twoshaft.jobsheet import open_sheet
sheet = open_sheet("order-of-work")
steps = [["a", "Drive in the seal"], ["b", "Lower the shafts"], ["c", "Close the case"],
         ["d", "Tighten the bolts"], ["e", "Fill the oil"]]"""
FORM = """\
sheet.form(
    "small",
    sheet.number("gap", "How wide is the gap?", "mm"),
    sheet.choice("why", "Why is it there?", options=[["oil", "For the oil"], ["heat", "For heat"]]),
    sheet.choices("new", "What must be new?", options=[["seal", "Seal"], ["rail", "Rail"]]),
    sheet.order("plan", "Put these steps in order", steps=[steps[i] for i in (3, 0, 4, 2, 1)]),
)"""
EACH = """\
sheet.form(
    "threads",
    sheet.each(
        "wet", "How does each thread go in?",
        lines=[["drain", "Drain plug, with a new copper washer"], ["bracket", "Bracket bolt"],
               ["stud", "Stud into the case; its hole is open to the inside of the gearbox"]],
        options=[["dry", "clean and dry"], ["oil", "oiled"], ["lock", "with locking compound"]],
    ),
)"""
PICTURES = """\
from twoshaft.models.shape import lie_of
from twoshaft.plots.unit_scene import ScenePicture
from twoshaft.readings.keyed import Stream
from twoshaft.readings.scenes import scene_of
draw, unit, seal = Stream("s", "a", "m", 1), sheet.unit, lie_of(sheet.unit, "shafts", "input-seal")
there = [part.id for part in unit.parts if part.id not in ("input-seal", "end-cover")]
spots = ["input-seal", "output-front-ring", "diff-front-ring", "ring-gear", "output-shaft"]
seen = {k: ScenePicture(unit, scene_of(unit, draw.child(k), "shafts", there, spots)) for k in "PQRS"}
sheet.form(
    "seen",
    sheet.point("spot", "Point at both", picture=seen["P"], lines=[["a", "First"], ["b", "Second"]]),
    sheet.picture("which", "Which one?", pictures=seen, lines=[["one", "Built so far"]]),
    sheet.put("put", "Put it in", picture=seen["P"], at=seen["P"].places(),
                lines=[["seal", "Ring in hand"]], pieces={"seal": seen["P"].pieces("input-seal", seal)}),
)"""
RIGS = {
    "bench": """\
from twoshaft.rigs import order_bench
stage = [o.id for o in sheet.unit.operations if o.stage == sheet.unit.operations[0].stage]
order_bench(sheet.unit, stage)""",
    "build": """\
from twoshaft.rigs import build_simulator
build_simulator(sheet.unit)""",
    "stages": """\
from twoshaft.rigs import order_bench
order_bench(sheet.unit)""",
    "rules": """\
from twoshaft.rigs import rule_picture
rule_picture(sheet.unit)""",
}
FRONT = ".jp-NotebookPanel:not(.lm-mod-hidden)"
FOCUSABLE = "input, select, button, summary, [tabindex='0']"


def notebook(path, *, form=FORM, rigs=()):
    """A course notebook with the form of one task, and rigs."""
    cells = [("setup", SETUP), ("form", form), *(("rig", RIGS[name]) for name in rigs)]
    made = new_notebook(
        cells=[
            *(
                new_code_cell(source, metadata={"tags": [tag], "jupyter": {"source_hidden": True}})
                for tag, source in cells
            ),
            new_code_cell("x = 1"),
        ],
        metadata={
            "kernelspec": {"name": "python3", "display_name": "Python 3", "language": "python"},
            "twoshaft": {"open": True},
        },
    )
    nbformat.write(made, path)


@pytest.fixture(scope="module")
def lab(shared_lab):
    shared_lab.release(
        cell_digest(source) for source in (SETUP, FORM, EACH, PICTURES, *RIGS.values())
    )
    return shared_lab


@pytest.fixture
def folder(lab, request):
    """A folder of this test's own, with a notebook in it; windows are closed after the test."""
    place = lab.root / re.sub(r"\W+", "-", request.node.name).strip("-")
    place.mkdir()
    notebook(place / "small.ipynb")
    yield place
    lab.close_windows()


@pytest.fixture
def open_form(lab, folder):
    """Open the notebook, in a window given or the shared one; returns its form."""

    def open_it(page=None):
        page = lab.open_notebook(f"{folder.name}/small.ipynb", page, ready=".twoshaft-form")
        return page.locator(f"{FRONT} .twoshaft-form")

    return open_it


@pytest.fixture
def form(open_form):
    return open_form()


@pytest.fixture
def rigs(lab, folder, wait_until):
    """A notebook with a form and every rig; returns the window."""
    notebook(folder / "all.ipynb", rigs=RIGS)
    page = lab.open_notebook(f"{folder.name}/all.ipynb", ready=".twoshaft-form")
    wait_until(lambda: page.locator(f"{FRONT} .twoshaft-rig").count() == len(RIGS))
    return page


def stored(folder, name):
    files = list(folder.glob("*jobsheet.json"))
    fields = json.loads(files[0].read_text())["fields"] if files else {}
    return fields.get(name, {}).get("value")


def shown_order(form):
    return [label.split("\n")[-1] for label in form.locator("[role=option]").all_inner_texts()]


def spoken(form):
    return form.locator("[aria-live=assertive]").inner_text()


def status(form, number):
    return form.locator(".ts-status").nth(number)


def tab_to(page, inside):
    """Press Tab until the focus is inside a part of the page."""
    for _ in range(60):
        if page.evaluate("css => !!document.activeElement?.closest(css)", inside):
            return
        page.keyboard.press("Tab")
    pytest.fail(f"the Tab key never reaches {inside}")


def test_an_order_is_put_right_by_keys_alone(folder, wait_until, form):
    page = form.page
    form.get_by_label("How wide is the gap?").focus()
    tab_to(page, "[role=listbox]")
    # Start: Tighten, Seal, Fill, Close, Lower.
    page.keyboard.press("End")
    page.keyboard.press("Shift+ArrowUp")  # Tighten, Seal, Fill, Lower, Close
    assert spoken(form) == "Lower the shafts, position 4 of 5"
    page.keyboard.press("Shift+ArrowUp")  # Tighten, Seal, Lower, Fill, Close
    assert spoken(form) == "Lower the shafts, position 3 of 5"
    page.keyboard.press("Home")
    page.keyboard.press("Space")
    assert spoken(form) == "Tighten the bolts picked up, position 1 of 5"
    for _ in range(4):
        page.keyboard.press("ArrowDown")
    page.keyboard.press("Space")
    assert spoken(form) == "Tighten the bolts put down, position 5 of 5"
    page.keyboard.press("ArrowUp")
    page.keyboard.press("Shift+ArrowUp")  # Seal, Lower, Close, Fill, Tighten
    page.keyboard.press("End")
    page.keyboard.press("Shift+ArrowUp")
    wait_until(lambda: stored(folder, "plan") == ["a", "b", "c", "d", "e"])
    assert shown_order(form)[0] == "Drive in the seal"
    assert page.evaluate("document.activeElement.innerText").endswith("Tighten the bolts")


def test_escape_puts_a_step_back_and_undo_takes_a_move_back(folder, form):
    page = form.page
    before = shown_order(form)
    form.locator("[role=option]").first.focus()
    page.keyboard.press("Space")
    page.keyboard.press("ArrowDown")
    page.keyboard.press("Escape")
    assert shown_order(form) == before and stored(folder, "plan") is None
    page.keyboard.press("Shift+ArrowDown")
    assert shown_order(form) != before
    form.get_by_role("button", name="Undo").click()
    assert shown_order(form) == before
    form.get_by_role("button", name="Redo").click()
    assert shown_order(form) != before


def test_letters_go_to_the_step_that_starts_with_them(form):
    page = form.page
    form.locator("[role=option]").first.focus()
    page.keyboard.type("clo")
    assert page.evaluate("document.activeElement.innerText").endswith("Close the case")


def test_a_block_of_steps_moves_as_one(form):
    page = form.page
    form.locator("[role=option]").first.focus()
    page.keyboard.press("Enter")
    page.keyboard.press("ArrowDown")
    page.keyboard.press("Enter")
    page.keyboard.press("Shift+ArrowDown")
    assert spoken(form) == "Block of 2 steps, positions 2 to 3 of 5"
    assert shown_order(form)[:3] == [
        "Fill the oil",
        "Tighten the bolts in block",
        "Drive in the seal in block",
    ]


def test_buttons_and_long_moves(form):
    form.locator("[role=option]").first.click()
    form.get_by_role("button", name="Move the chosen step down").click()
    assert shown_order(form)[1] == "Tighten the bolts"
    form.locator("summary").click()
    place = form.get_by_label("Move the chosen step to position")
    place.fill("5")
    place.press("Enter")
    assert shown_order(form)[4] == "Tighten the bolts"
    form.get_by_label("Move the chosen step before").select_option("a")
    form.get_by_role("button", name="Move before this step").click()
    assert shown_order(form)[:2] == ["Tighten the bolts", "Drive in the seal"]


def drag(page, source, target, *, below):
    source.locator("..").evaluate("list => list.scrollIntoView({block: 'center'})")
    start, end = source.bounding_box(), target.bounding_box()
    page.mouse.move(start["x"] + 90, start["y"] + start["height"] / 2)
    page.mouse.down()
    page.mouse.move(start["x"] + 90, start["y"] + start["height"] / 2 + 12, steps=3)
    page.mouse.move(end["x"] + 90, end["y"] + end["height"] * (0.9 if below else 0.1), steps=5)
    page.mouse.up()


def test_an_order_is_put_right_by_dragging(folder, wait_until, form):
    steps = form.locator("[role=option]")
    for wanted, label in enumerate(("Drive in", "Lower", "Close", "Tighten", "Fill")):
        mine = next(i for i, text in enumerate(shown_order(form)) if text.startswith(label))
        if mine != wanted:
            drag(form.page, steps.nth(mine), steps.nth(wanted), below=False)
    wait_until(lambda: stored(folder, "plan") == ["a", "b", "c", "d", "e"])


def test_an_order_is_put_right_by_a_finger(lab, wait_until, folder, open_form):
    context = lab.chromium.new_context(viewport={"width": 1024, "height": 700}, has_touch=True)
    lab.contexts.append(context)
    form = open_form(context.new_page())
    page = form.page
    grips = form.locator(".ts-grip")
    grips.nth(4).scroll_into_view_if_needed()
    start, end = grips.nth(4).bounding_box(), grips.nth(0).bounding_box()
    touch = context.new_cdp_session(page)

    def finger(kind, y):
        points = [] if kind == "touchEnd" else [{"x": start["x"] + 12, "y": y}]
        touch.send("Input.dispatchTouchEvent", {"type": kind, "touchPoints": points})

    finger("touchStart", start["y"] + 8)
    for k in range(1, 9):
        finger("touchMove", start["y"] + 8 + (end["y"] - start["y"] - 4) * k / 8)
    finger("touchEnd", 0)
    wait_until(lambda: shown_order(form)[0] == "Lower the shafts")
    wait_until(lambda: (stored(folder, "plan") or [""])[0] == "b")


def test_a_number_is_read_back_or_asked_back(folder, wait_until, form):
    box = form.get_by_label("How wide is the gap?")
    box.fill("1.25")
    form.get_by_text("not saved yet: press Enter").wait_for()
    box.press("Enter")
    form.get_by_text("read 1.25 without a unit").wait_for()
    wait_until(lambda: box.get_attribute("aria-invalid") == "true")
    box.fill("1,25 mm")
    box.press("Tab")
    form.get_by_text("read as 1.25 mm").wait_for()
    wait_until(lambda: box.get_attribute("aria-invalid") == "false")
    wait_until(lambda: stored(folder, "gap") == "1,25 mm")
    wait_until(lambda: status(form, 0).inner_text().startswith("● saved"))


def test_a_unit_can_be_chosen_and_loses_nothing_typed(folder, wait_until, form):
    box, unit = form.get_by_label("How wide is the gap?"), form.get_by_label("Choose the unit")
    asked = "(list) => document.getElementById(list.getAttribute('aria-describedby')).textContent"
    assert unit.evaluate(asked) == "How wide is the gap?"
    for typed, chosen, read in [
        ("1,5", "mm", "1,5 mm"),
        ("1,5 mm", "in", "1,5 in"),
        ("1 1/4", "in", "1 1/4 in"),
        ("2e1 mm", "µm", "2e1 µm"),
        ("2 x 10^1", "mm", "2 x 10^1 mm"),
    ]:
        box.fill(typed)
        unit.select_option(chosen)
        assert box.input_value() == read
        wait_until(lambda read=read: stored(folder, "gap") == read)


def test_choices_are_kept_by_keys(folder, wait_until, form):
    page = form.page
    form.get_by_role("radio", name="For the oil").focus()
    page.keyboard.press("Space")
    page.keyboard.press("ArrowDown")
    wait_until(lambda: stored(folder, "why") == "heat")
    page.keyboard.press("Tab")
    page.keyboard.press("Space")
    page.keyboard.press("Tab")
    page.keyboard.press("Space")
    wait_until(lambda: stored(folder, "new") == ["seal", "rail"])
    page.keyboard.press("Space")
    wait_until(lambda: stored(folder, "new") == ["seal"])


def test_keys_typed_in_any_control_leave_the_notebook_as_it_was(lab, folder, rigs):
    def cells():
        lab.save(rigs)
        found = nbformat.read(folder / "all.ipynb", 4).cells
        return [(cell.id, cell.cell_type, cell.source) for cell in found]

    before, tried = cells(), set()
    for summary in rigs.locator(f"{FRONT} .twoshaft summary").all():
        summary.click()
    for screen in rigs.locator(f"{FRONT} .twoshaft-live").all():
        for control in screen.locator(FOCUSABLE).all():
            if not control.is_visible() or control.is_disabled():
                continue
            control.focus()
            for key in ["a", "b", "x", "d", "d"]:
                rigs.keyboard.press(key)
            tried.add(control.evaluate("n => n.type || n.getAttribute('role') || n.localName"))
    kinds = {
        "text",
        "radio",
        "checkbox",
        "button",
        "select-one",
        "summary",
        "option",
        "treeitem",
        "region",
    }
    assert kinds <= tried
    assert cells() == before


def test_answers_stand_in_the_form_when_it_is_opened_again(
    lab, folder, wait_until, form, open_form
):
    form.get_by_label("How wide is the gap?").fill("0,4 mm")
    form.get_by_role("radio", name="For heat").check()
    form.get_by_role("checkbox", name="Rail").check()
    form.locator("[role=option]").first.focus()
    form.page.keyboard.press("Shift+ArrowDown")
    wait_until(lambda: stored(folder, "plan") == ["a", "d", "e", "c", "b"])
    wait_until(lambda: stored(folder, "gap") == "0,4 mm")
    form = open_form(lab.page())
    form.get_by_text("4 of 4 answered, all saved").wait_for()
    assert form.get_by_label("How wide is the gap?").input_value() == "0,4 mm"
    assert form.get_by_role("radio", name="For heat").is_checked()
    assert form.get_by_role("checkbox", name="Rail").is_checked()
    assert shown_order(form)[:2] == ["Drive in the seal", "Tighten the bolts"]


def test_two_windows_show_each_other_what_was_saved(lab, folder, wait_until, form, open_form):
    there = open_form(form.page.context.new_page())
    there.get_by_label("How wide is the gap?").fill("2 mm")
    there.get_by_label("How wide is the gap?").press("Enter")
    # The older window shows it though nobody touches it.
    wait_until(lambda: form.get_by_label("How wide is the gap?").input_value() == "2 mm")
    there.page.close()
    # A window of another browser finds out as soon as it is worked in.
    there = open_form(lab.page())
    form.get_by_role("radio", name="For heat").check()
    wait_until(lambda: stored(folder, "why") == "heat")
    there.get_by_label("How wide is the gap?").focus()
    wait_until(there.get_by_role("radio", name="For heat").is_checked)


def test_a_window_of_another_profile_shows_what_was_saved_when_it_is_come_back_to(
    lab, folder, wait_until, open_form, tmp_path
):
    one, other = (lab.profile(tmp_path / name) for name in ("one", "other"))
    tab, aside = one.pages[0], one.new_page()
    form, there = open_form(tab), open_form(other.pages[0])
    for page in (tab, aside):  # a driven page believes that it always has the focus
        driver = one.new_cdp_session(page)
        driver.send("Emulation.setFocusEmulationEnabled", {"enabled": False})
    for gap in ("2 mm", "3 mm"):  # come back to a second time, soon after the first
        aside.bring_to_front()
        wait_until(lambda: not tab.evaluate("document.hasFocus()"))
        there.get_by_label("How wide is the gap?").fill(gap)
        there.get_by_label("How wide is the gap?").press("Enter")
        wait_until(lambda gap=gap: stored(folder, "gap") == gap)
        tab.bring_to_front()
        # Nothing in it is touched.
        wait_until(lambda gap=gap: form.get_by_label("How wide is the gap?").input_value() == gap)


def test_an_answer_that_cannot_be_read_is_one_message_and_counted_apart(form, wait_until):
    box = form.get_by_label("How wide is the gap?")
    box.fill("1.25")
    box.press("Enter")
    form.get_by_text("0 of 4 answered, 1 cannot be read").wait_for()
    wait_until(lambda: "Look again: read 1.25 without a unit" in status(form, 0).inner_text())
    said = status(form, 0).inner_text()
    assert "Kept as typed" in said
    assert "saved" not in said and not form.locator(".ts-read").first.inner_text()


def by_menu(page, menu, *items):
    page.locator(".lm-MenuBar-itemLabel", has_text=menu).click()
    for item in items:
        page.locator(f".lm-Menu-itemLabel:text-is('{item}')").click()


def test_whatever_takes_the_forms_away_they_come_back_with_every_answer(form, wait_until, folder):
    page = form.page
    box = form.get_by_label("How wide is the gap?")
    box.fill("1.25 mm")
    box.press("Enter")
    wait_until(lambda: stored(folder, "gap") == "1.25 mm")
    for menu, item in (
        ("Edit", "Clear Outputs of All Cells"),
        ("Edit", "Clear Cell Output"),
        ("View", "Collapse All Outputs"),
        ("Kernel", "Shut Down Kernel"),
    ):
        shown = form.locator(".ts-number-box").element_handle()
        by_menu(page, menu, item)
        if menu == "Kernel":
            wait_until(lambda shown=shown: not shown.evaluate("node => node.isConnected"))
        box.wait_for(state="visible")
        wait_until(lambda: box.input_value() == "1.25 mm")
    form.get_by_role("radio", name="For heat").check()
    wait_until(lambda: stored(folder, "why") == "heat")


def test_the_plain_copy_follows_and_is_hidden_while_the_form_lives(form, wait_until):
    form.get_by_label("How wide is the gap?").fill("3 mm")
    form.get_by_label("How wide is the gap?").press("Enter")
    form.get_by_text("read as 3").wait_for()
    copy = form.page.locator(f"{FRONT} .twoshaft-copy")
    wait_until(lambda: "3 mm" in copy.text_content())
    assert not copy.is_visible()


def test_the_rigs_answer_at_once(rigs, wait_until):
    bench, build, _, rules = rigs.locator(f"{FRONT} .twoshaft-rig").all()
    bench.locator(".ts-finding", has_text="in trouble").wait_for()
    bench.locator(".ts-note").first.wait_for()
    finding = bench.locator(".ts-finding").inner_text()
    bench.locator("[role=option]").first.focus()
    for _ in range(3):
        rigs.keyboard.press("Shift+ArrowDown")
    wait_until(lambda: bench.locator(".ts-finding").inner_text() != finding)
    build.get_by_role("button", name="Next step").focus()
    for _ in range(3):
        rigs.keyboard.press("ArrowRight")
    build.locator(".ts-finding", has_text="3 of ").wait_for()
    build.locator(".ts-ready button").first.click()
    build.locator(".ts-finding", has_text="4 of ").wait_for()
    words = rules.locator(".ts-finding").inner_text()
    rules.locator(".tsf-step[role=button]").last.focus()
    rigs.keyboard.press("Enter")
    wait_until(lambda: rules.locator(".ts-finding").inner_text() != words)


def test_a_stage_is_closed_and_moved_as_one(rigs, wait_until):
    bench = rigs.locator(f"{FRONT} .twoshaft-rig").nth(2)
    bench.get_by_role("button", name="Gather stages").click()
    rows = bench.locator("[role=treeitem]")
    wait_until(lambda: bench.locator("[role=treeitem][aria-expanded]").count() > 3)
    first, whole = rows.first.inner_text(), rows.count()
    rows.first.focus()
    rigs.keyboard.press("ArrowLeft")
    assert rows.first.get_attribute("aria-expanded") == "false"
    assert rows.count() < whole
    rigs.keyboard.press("Shift+ArrowDown")
    spoken_now = spoken(bench)
    assert spoken_now.startswith("Stage ") and "positions" in spoken_now
    assert first.split("\n")[2] not in rows.first.inner_text()
    rigs.keyboard.press("ArrowRight")
    assert rows.count() == whole
    bench.get_by_role("button", name="Undo").click()
    assert rows.first.inner_text() == first


def test_a_dragged_step_travels_with_the_pointer_and_the_list_scrolls(rigs, wait_until):
    bench = rigs.locator(f"{FRONT} .twoshaft-rig").nth(2)
    steps = bench.locator(".ts-steps")
    steps.evaluate("list => list.scrollIntoView({block: 'center'})")
    row = bench.locator("[role=treeitem]").nth(1)
    start, frame = row.bounding_box(), steps.bounding_box()
    moved = row.inner_text().split("\n")[2]
    x, y = start["x"] + 120, start["y"] + 10
    rigs.mouse.move(x, y)
    rigs.mouse.down()
    rigs.mouse.move(x, y + 30, steps=4)
    ghost = rigs.locator(".ts-ghost").bounding_box()
    assert abs(ghost["x"] - x - 12) < 2 and abs(ghost["y"] - y - 38) < 2
    rigs.mouse.move(x, frame["y"] + frame["height"] - 6, steps=6)
    wait_until(lambda: steps.evaluate("list => list.scrollTop") > 600)
    rigs.mouse.move(x, frame["y"] + frame["height"] / 2, steps=3)
    rigs.mouse.up()
    label, place = bench.locator(".ts-chosen").inner_text()[8:].split(", position ")
    assert moved.startswith(label)
    assert int(place.split()[0]) > 5
    assert rigs.locator(".ts-ghost").count() == 0


@pytest.mark.parametrize("dark", [False, True])
def test_a_form_fits_a_window_of_320_pixels(lab, open_form, wait_until, dark):
    form = open_form(lab.page(dark=dark))
    form.page.set_viewport_size({"width": 320, "height": 640})
    wait_until(lambda: form.bounding_box()["x"] + form.bounding_box()["width"] <= 320)
    over = form.evaluate(
        """form => [...form.querySelectorAll('*')].filter(
             n => n.offsetParent && !n.closest('.ts-hidden') &&
               n.getBoundingClientRect().right > form.getBoundingClientRect().right + 1
           ).map(n => n.className)"""
    )
    assert over == []


def test_each_line_is_answered_by_keys_and_kept(lab, folder, wait_until, screenshot):
    notebook(folder / "each.ipynb", form=EACH)
    page = lab.open_notebook(f"{folder.name}/each.ipynb", ready=".twoshaft-form")
    form = page.locator(f"{FRONT} .twoshaft-form")
    group = form.get_by_role("group", name="How does each thread go in?")
    group.get_by_label("Drain plug, with a new copper washer").focus()
    page.keyboard.type("clean")
    wait_until(lambda: stored(folder, "wet") == ["drain=dry"])
    form.get_by_text("2 of 3 lines not answered yet").wait_for()
    form.get_by_text("0 of 1 answered").wait_for()
    page.keyboard.press("Tab")
    page.keyboard.type("oil")
    page.keyboard.press("Tab")
    page.keyboard.type("with")
    wait_until(lambda: stored(folder, "wet") == ["drain=dry", "bracket=oil", "stud=lock"])
    screenshot(page, "each-line")
    group.get_by_label("Bracket bolt").select_option("")
    wait_until(lambda: stored(folder, "wet") == ["drain=dry", "stud=lock"])
    again = lab.open_notebook(
        f"{folder.name}/each.ipynb", lab.page(dark=True), ready=".twoshaft-form"
    )
    box = again.get_by_label("Stud into the case; its hole is open to the inside of the gearbox")
    assert box.input_value() == "lock"
    screenshot(again, "each-line-dark")


def test_places_in_a_picture_are_pointed_at_put_in_and_chosen(lab, folder, wait_until, screenshot):
    notebook(folder / "seen.ipynb", form=PICTURES)
    page = lab.open_notebook(f"{folder.name}/seen.ipynb", ready=".twoshaft-form")
    form = page.locator(f"{FRONT} .twoshaft-form")
    point = form.get_by_role("group", name="Point at both")
    point.locator("[data-mark=C]").click()
    wait_until(lambda: stored(folder, "spot") == ["a=C"])
    # by keyboard: the picture is one stop, arrows walk, Enter points for the next line
    point.locator("[data-mark][tabindex='0']").focus()
    page.keyboard.press("ArrowRight")
    there = page.evaluate("document.activeElement.dataset.mark")
    page.keyboard.press("Enter")
    wait_until(lambda: stored(folder, "spot") == ["a=C", f"b={there}"])
    assert point.locator(f"[data-mark={there}]").get_attribute("aria-pressed") == "true"
    screenshot(page, "pointed-at")
    point.get_by_label("First", exact=True).select_option("A")  # and from the list
    wait_until(lambda: stored(folder, "spot")[0] == "a=A")

    choice = form.get_by_role("group", name="Which one?")
    choice.get_by_label("Built so far").select_option("R")
    wait_until(lambda: stored(folder, "which") == ["one=R"])
    choice.locator(".ts-picture-card").nth(1).click()
    wait_until(lambda: stored(folder, "which") == ["one=Q"])
    choice.scroll_into_view_if_needed()
    screenshot(page, "picture-chosen")

    put = form.get_by_role("group", name="Put it in")
    put.get_by_role("button", name="Turn it: Ring in hand").click()
    put.locator("[data-mark=B]").click()
    wait_until(lambda: stored(folder, "put") == ["seal=B-2"])
    put.get_by_role("button", name="Turn it: Ring in hand").click()
    wait_until(lambda: stored(folder, "put") == ["seal=B-1"])
    put.scroll_into_view_if_needed()
    screenshot(page, "put-in")
    again = lab.open_notebook(
        f"{folder.name}/seen.ipynb", lab.page(dark=True), ready=".twoshaft-form"
    )
    put = again.locator(f"{FRONT} .twoshaft-form").get_by_role("group", name="Put it in")
    assert put.locator(".tss-placed path").count() > 0
    put.scroll_into_view_if_needed()
    screenshot(again, "put-in-dark")
