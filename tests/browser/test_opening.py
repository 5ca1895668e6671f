"""Opening a course notebook is enough: no button is pressed in any of these tests."""

import json
import re
from http.server import BaseHTTPRequestHandler, ThreadingHTTPServer
from threading import Thread

import nbformat
import pytest
from nbformat.v4 import new_code_cell, new_markdown_cell, new_notebook

from twoshaft.jobsheet.people import Listed, word_check, write_people
from twoshaft.jupyter.released import cell_digest
from twoshaft.jupyter.startpage import write_start_here
from twoshaft.stored.person import Person

pytestmark = pytest.mark.browser

SETUP = """\
import pathlib
from twoshaft.jobsheet import open_sheet
sheet = open_sheet("order-of-work")
with open("runs.txt", "a") as log:
    print("setup", file=log)"""
FORM = """\
sheet.form(
    "first",
    sheet.number("gap", "How wide is the gap?", "mm"),
    sheet.choice("why", "Why is it there?", options=[["oil", "For the oil"], ["heat", "For heat"]]),
)"""
MARK = "# Points are worked out here.\nprint('points')"
PLAIN = "print('this cell is the learner\\'s own')"


def notebook(path, setup=SETUP, form=FORM, opens=True):
    """A small course notebook."""
    hidden = {"jupyter": {"source_hidden": True}}
    made = new_notebook(
        cells=[
            new_markdown_cell("# A small exercise\n\nMeasure the gap and say why it is there."),
            new_markdown_cell(
                "If no forms appear: press Run, then Run All Cells.",
                metadata={"tags": ["if-missing"]},
            ),
            new_code_cell(setup, metadata={"tags": ["setup"], **hidden}),
            new_code_cell(form, metadata={"tags": ["form"], **hidden}),
            new_code_cell(MARK, metadata={"tags": ["mark"], **hidden}),
            new_code_cell(PLAIN),
        ],
        metadata={
            "kernelspec": {"name": "python3", "display_name": "Python 3", "language": "python"}
        },
    )
    if opens:
        made.metadata["twoshaft"] = {"open": True}
    path.parent.mkdir(parents=True, exist_ok=True)
    nbformat.write(made, path)
    return path


def assignment(root):
    """A learner's folder with a small exercise in it."""
    folder = root / "a01" / "order-of-work-1"
    folder.mkdir(parents=True)
    (root / "a01" / "learner.json").write_text(
        json.dumps({"id": "a01", "family_name": "Example", "given_name": "Ana"})
    )
    (folder / "assignment.json").write_text(
        json.dumps(
            {
                "format": 1,
                "assignment": "order-of-work-1",
                "module": "order-of-work",
                "attempt": 1,
                "cohort": "example",
                "salt": "salt",
                "unit": "tarnbeck-b5",
            }
        )
    )
    notebook(folder / "small.ipynb")
    return folder


def released(*sources):
    return [cell_digest(source) for source in sources or (SETUP, FORM)]


@pytest.fixture(scope="module")
def shared(shared_lab):
    shared_lab.release(released())
    return shared_lab


@pytest.fixture
def lab(shared, request):
    """The module's JupyterLab, and a folder of this test's own under its root: ``lab.here``."""
    shared.here = shared.root / re.sub(r"\W+", "-", request.node.name)
    shared.here.mkdir()
    yield shared
    shared.clear()


def opened(lab, path, page=None, **how):
    """A notebook of this test's folder, open."""
    return lab.open_notebook(f"{lab.here.name}/{path}", page, **how)


def runs(folder):
    log = folder / "runs.txt"
    return len(log.read_text().split()) if log.exists() else 0


def missing_line(page):
    return page.locator(".jp-RenderedMarkdown", has_text="press Run, then Run All Cells")


def cells(page):
    return page.locator(".jp-NotebookPanel:not(.lm-mod-hidden) .jp-Notebook .jp-Cell").count()


def stored(folder, name):
    sheet = json.loads((folder / "jobsheet.json").read_text())
    return sheet["fields"].get(name, {}).get("value")


def test_forms_are_there_on_opening_and_an_answer_is_kept(
    lab, wait_until, wait_for_text, screenshot
):
    folder = assignment(lab.here)
    page = opened(lab, "a01/order-of-work-1/small.ipynb")
    wait_for_text(page, "How wide is the gap?")
    wait_for_text(page, "Ana Example")
    assert runs(folder) == 1
    wait_until(lambda: missing_line(page).count() == 1 and not missing_line(page).is_visible())
    assert not page.get_by_text("this cell is the learner's own", exact=True).count()
    assert page.locator(".jp-CodeCell", has_text="Points are worked out").count() == 1
    assert not page.get_by_text("Points are worked out").first.is_visible()
    screenshot(page, "opened-exercise")
    box = page.get_by_label("How wide is the gap?").first
    box.fill("1,25 mm")
    box.press("Tab")
    wait_until(lambda: (folder / "jobsheet.json").exists())
    wait_until(lambda: stored(folder, "gap") == "1,25 mm")
    # Opened again in another window, with the kernel still there: the answer stands in the form.
    again = opened(lab, "a01/order-of-work-1/small.ipynb", lab.page())
    wait_for_text(again, "How wide is the gap?")
    there = again.get_by_label("How wide is the gap?").first
    wait_until(lambda: there.input_value() == "1,25 mm")
    # The first window is still at work.
    box.fill("1.5 mm")
    box.press("Tab")
    wait_until(lambda: stored(folder, "gap") == "1.5 mm")


def test_after_a_restart_of_the_kernel_the_forms_come_back(lab, wait_until, wait_for_text):
    folder = assignment(lab.here)
    page = opened(lab, "a01/order-of-work-1/small.ipynb")
    wait_for_text(page, "How wide is the gap?")
    assert runs(folder) == 1
    before = page.locator(".twoshaft-form").first.element_handle()
    page.locator(".lm-MenuBar-itemLabel", has_text="Kernel").click()
    page.locator(".lm-Menu-itemLabel", has_text=re.compile(r"^Restart Kernel…$")).click()
    page.locator(".jp-Dialog .jp-mod-accept").click()
    wait_until(lambda: runs(folder) == 2)
    wait_until(lambda: not before.evaluate("form => form.isConnected"))
    wait_for_text(page, "How wide is the gap?")
    box = page.get_by_label("How wide is the gap?").first
    box.fill("2 mm")
    box.press("Tab")
    wait_until(lambda: (folder / "jobsheet.json").exists() and stored(folder, "gap") == "2 mm")


def test_a_cell_with_altered_text_is_not_run(lab):
    altered = SETUP + "\npathlib.Path('altered.txt').touch()"
    notebook(lab.here / "altered.ipynb", setup=altered, form="1 + 1")
    page = opened(lab, "altered.ipynb", ready=None)
    page.wait_for_timeout(4000)
    assert not (lab.here / "altered.txt").exists()
    assert runs(lab.here) == 0


def test_nothing_runs_where_staff_work(start_lab):
    lab = start_lab(role="staff", released=released())
    folder = assignment(lab.root)
    page = lab.open_notebook("a01/order-of-work-1/small.ipynb", ready=None)
    page.wait_for_timeout(4000)
    assert runs(folder) == 0
    assert missing_line(page).is_visible()


def test_an_ordinary_notebook_is_left_alone(lab):
    notebook(lab.here / "ordinary.ipynb", opens=False)
    page = opened(lab, "ordinary.ipynb", ready=None)
    page.wait_for_timeout(4000)
    assert runs(lab.here) == 0
    assert page.locator(".twoshaft-notebook").count() == 0


def test_two_windows_keep_each_others_answers(lab, wait_until, wait_for_text):
    folder = assignment(lab.here)
    # The same sheet in two kernels: a copy of the notebook beside it.
    notebook(folder / "copy.ipynb")
    one = opened(lab, "a01/order-of-work-1/small.ipynb")
    two = opened(lab, "a01/order-of-work-1/copy.ipynb", lab.page())
    wait_for_text(one, "How wide is the gap?")
    wait_for_text(two, "How wide is the gap?")
    box = one.get_by_label("How wide is the gap?").first
    box.fill("1.5 mm")
    box.press("Tab")
    wait_until(lambda: (folder / "jobsheet.json").exists() and stored(folder, "gap") == "1.5 mm")
    two.get_by_label("For heat").first.check()
    wait_until(lambda: stored(folder, "why") == "heat")
    assert stored(folder, "gap") == "1.5 mm"


def test_single_keys_change_no_cell(lab, wait_for_text):
    assignment(lab.here)
    page = opened(lab, "a01/order-of-work-1/small.ipynb")
    wait_for_text(page, "How wide is the gap?")
    before = cells(page)
    # Once in each control of the form, and once on a cell itself.
    panel = page.locator(".jp-NotebookPanel:not(.lm-mod-hidden)")
    controls = panel.locator(".twoshaft :is(input, select, button, [tabindex='0'])")
    assert controls.count() >= 3
    for number in range(controls.count()):
        controls.nth(number).focus()
        for key in ("a", "b", "x", "d", "d", "m", "y", "v"):
            page.keyboard.press(key)
    panel.locator(".jp-MarkdownCell").first.click()
    page.keyboard.press("Escape")
    for key in ("a", "b", "x", "d", "d", "m", "y", "v", "Shift+M"):
        page.keyboard.press(key)
    assert cells(page) == before


def test_apprentices_see_no_staff_panels(lab):
    page = lab.page()
    page.goto(f"{lab.url}/lab?token={lab.token}&reset")
    page.wait_for_selector(".lm-MenuBar-itemLabel")
    page.wait_for_timeout(1000)
    assert page.locator(".lm-MenuBar-itemLabel", has_text="Nbgrader").count() == 0
    answer = page.request.get(f"{lab.url}/formgrader?token={lab.token}")
    assert answer.status == 404


@pytest.fixture
def elsewhere():
    """Another server than JupyterLab's, and what was asked of it."""
    asked = []

    class Elsewhere(BaseHTTPRequestHandler):
        def do_GET(self):
            asked.append(self.path)
            self.send_response(204)
            self.end_headers()

        def log_message(self, *args):
            pass

    with ThreadingHTTPServer(("127.0.0.1", 0), Elsewhere) as server:
        Thread(target=server.serve_forever, daemon=True).start()
        yield f"http://127.0.0.1:{server.server_port}", asked
        server.shutdown()


def test_pages_load_nothing_from_elsewhere(lab, elsewhere):
    address, asked = elsewhere
    page = lab.page()
    page.goto(f"{lab.url}/lab?token={lab.token}&reset")
    page.wait_for_selector(".lm-MenuBar-itemLabel")
    refused = page.evaluate(
        """address => Promise.all([
            ...["img", "script"].map(name => new Promise(done => {
                const made = document.createElement(name);
                made.onerror = () => done(name);
                made.onload = () => done("loaded");
                made.src = `${address}/${name}`;
                document.body.append(made);
            })),
            fetch(`${address}/fetch`, {mode: "no-cors"}).then(() => "loaded", () => "fetch"),
        ])""",
        address,
    )
    assert refused == ["img", "script", "fetch"]
    assert page.request.get(f"{address}/seen").ok  # it does answer whoever asks
    assert asked == ["/seen"]


@pytest.fixture
def workplace(tmp_path):
    """A workplace as the cohort command makes it, with one assignment released."""
    root, exchange = tmp_path / "workplace", tmp_path / "exchange"
    outbound = exchange / "demo" / "outbound" / "order-of-work-1"
    outbound.mkdir(parents=True)
    for name, mode in (("inbound", 0o733), ("feedback", 0o711)):
        (exchange / "demo" / name).mkdir()
        (exchange / "demo" / name).chmod(mode)
    exchange.chmod(0o777)
    notebook(outbound / "small.ipynb")
    (outbound / "assignment.json").write_text(
        json.dumps(
            {
                "format": 1,
                "assignment": "order-of-work-1",
                "module": "order-of-work",
                "attempt": 1,
                "cohort": "demo",
                "salt": "salt",
                "unit": "tarnbeck-b5",
                "due": "2031-05-02T16:00:00+00:00",
            }
        )
    )
    people = [
        Listed(Person("a01", "Example", "Ana"), word_check("copper-heron")),
        Listed(Person("a02", "Sample", "Ben"), word_check("tin-otter")),
    ]
    for listed in people:
        person = listed.person
        (root / person.id).mkdir(parents=True)
        (root / person.id / "learner.json").write_text(
            json.dumps(
                {
                    "id": person.id,
                    "family_name": person.family_name,
                    "given_name": person.given_name,
                }
            )
        )
    write_people(root, people)
    (root / "workplace.json").write_text(
        json.dumps({"cohort": "demo", "course_id": "demo", "exchange": "../exchange"})
    )
    (root / "lessons").mkdir()
    nbformat.write(
        new_notebook(cells=[new_markdown_cell("# Order of work")]),
        root / "lessons" / "02-order-of-work.ipynb",
    )
    write_start_here(root)
    return root


def test_from_signing_in_to_a_receipt(start_lab, wait_until, workplace, wait_for_text, screenshot):
    lab = start_lab(workplace, released=released())
    page = lab.open_notebook("start-here.ipynb")
    wait_for_text(page, "Who is working?")
    screenshot(page, "start-signed-out")
    page.get_by_label("Your name").select_option("a01")
    word = page.get_by_label("Sign-in word from your slip")
    word.fill("tin-otter")
    word.press("Enter")
    wait_for_text(page, "not the word on the slip of Ana Example")
    screenshot(page, "start-wrong-word")
    page.get_by_label("Sign-in word from your slip").fill("copper heron")
    page.get_by_role("button", name="Sign in").click()
    wait_for_text(page, "Working as Ana Example (a01)")
    screenshot(page, "start-to-get")
    page.get_by_role("button", name="Get: Order of work, attempt 1").click()
    wait_for_text(page, "is here. Open it")
    screenshot(page, "start-open")
    page.get_by_role("link", name="Open: Order of work, attempt 1").click()
    wait_for_text(page, "How wide is the gap?")
    wait_for_text(page, "working as Ana Example (a01)")
    box = page.get_by_label("How wide is the gap?").first
    box.fill("1.25 mm")
    box.press("Tab")
    folder = workplace / "a01" / "order-of-work-1"
    wait_until(lambda: (folder / "jobsheet.json").exists())
    page.locator(".lm-TabBar-tabLabel", has_text="start-here.ipynb").click()
    wait_for_text(page, "1 answer saved")
    page.get_by_role("button", name="Hand in: Order of work, attempt 1").click()
    wait_for_text(page, "not handed in yet. 1 answer is missing")
    screenshot(page, "start-asks-once")
    assert not (workplace / "a01" / "receipts.json").exists()
    page.get_by_role("button", name="It is my own work: hand in as it is").click()
    wait_for_text(page, "You can go on and hand in again")
    screenshot(page, "start-handed-in")
    receipts = json.loads((workplace / "a01" / "receipts.json").read_text())["receipts"]
    wait_for_text(page, receipts[-1]["code"])
    (handed_in,) = (workplace.parent / "exchange" / "demo" / "inbound").iterdir()
    assert stored(handed_in, "gap") == "1.25 mm"
    # Signing out leaves nothing of the learner on the screen.
    page.get_by_role("button", name="Not you? Sign out").click()
    wait_for_text(page, "Who is working?")
    wait_until(lambda: page.locator(".lm-DockPanel-tabBar .lm-TabBar-tab").count() == 1)


def test_the_server_is_stopped_and_started_and_nothing_is_lost(
    start_lab, wait_until, workplace, wait_for_text, screenshot
):
    lab = start_lab(workplace, released=released())
    page = lab.open_notebook("start-here.ipynb")
    wait_for_text(page, "Who is working?")
    page.get_by_label("Your name").select_option("a01")
    page.get_by_label("Sign-in word from your slip").fill("copper heron")
    page.get_by_role("button", name="Sign in").click()
    wait_for_text(page, "Working as Ana Example (a01)")
    page.get_by_role("button", name="Get: Order of work, attempt 1").click()
    wait_for_text(page, "is here. Open it")
    page.get_by_role("link", name="Open: Order of work, attempt 1").click()
    wait_for_text(page, "working as Ana Example (a01)")
    box = page.get_by_label("How wide is the gap?")
    # The line goes down under a form that stands, not before it is drawn.
    box.wait_for()
    page.get_by_label("For heat").wait_for()
    lab.end()
    bar = page.locator(".ts-line-bar")
    bar.get_by_text("The connection to the course is lost").wait_for()
    page.get_by_label("For heat").check()
    box.fill("1.25 mm")  # still being typed: neither Enter nor another place
    wait_for_text(page, "kept in this browser until it can be saved")
    waiting = "Object.keys(localStorage).filter(key => key.startsWith('twoshaft-unsent:'))"
    (kept,) = page.evaluate(waiting)
    assert kept.startswith("twoshaft-unsent:a01/order-of-work-1/")
    assert bar.count() == 1 and page.locator(".ts-alert:not(:empty), .jp-Dialog").count() == 0
    screenshot(page, "line-down")
    lab.start_again()
    folder = workplace / "a01" / "order-of-work-1"
    wait_until(lambda: (folder / "jobsheet.json").exists() and stored(folder, "gap") == "1.25 mm")
    wait_until(lambda: stored(folder, "why") == "heat")
    wait_for_text(page, "2 of 2 answered, all saved")
    wait_until(lambda: page.evaluate(waiting) == [])
    # The hands stay where they were.
    wait_until(lambda: box.evaluate("box => box === document.activeElement"))
    page.locator(".lm-TabBar-tabLabel", has_text="start-here.ipynb").click()
    wait_for_text(page, "Working as Ana Example (a01)")
    # What is pressed on the start page meanwhile waits too; whoever signs out is out.
    for press, then in [
        ("Look again", "The list is up to date"),
        ("Not you? Sign out", "Who is working?"),
    ]:
        page.get_by_role("button", name=press).wait_for()
        lab.end()
        bar.get_by_text("The connection to the course is lost").wait_for()
        page.get_by_role("button", name=press).click()
        wait_for_text(page, "This is done as soon as the connection is back")
        lab.start_again()
        wait_for_text(page, then)


def test_the_start_page_works_by_keyboard_alone(
    start_lab, wait_until, workplace, wait_for_text, screenshot
):
    lab = start_lab(workplace, released=released())
    page = lab.page(width=640, height=720)
    lab.open_notebook("start-here.ipynb", page)
    wait_for_text(page, "Who is working?")
    before = cells(page)
    page.get_by_label("Your name").focus()
    page.keyboard.type("Sample")
    page.keyboard.press("Tab")
    page.keyboard.type("tin-otter")
    page.keyboard.press("Tab")
    page.keyboard.press("Enter")
    wait_for_text(page, "Working as Ben Sample (a02)")
    page.get_by_role("button", name="Get: Order of work, attempt 1").focus()
    for key in ("a", "b", "x", "d", "d"):
        page.keyboard.press(key)
    page.keyboard.press("Enter")
    wait_for_text(page, "is here. Open it")
    # The focus has gone on to what can be done next with the same assignment.
    wait_until(lambda: page.evaluate("document.activeElement.textContent") == "Open")
    screenshot(page, "start-narrow")
    page.keyboard.press("Enter")
    wait_for_text(page, "How wide is the gap?")
    page.locator(".lm-TabBar-tabLabel", has_text="start-here.ipynb").click()
    wait_for_text(page, "Working as Ben Sample (a02)")
    assert cells(page) == before


def test_showing_forms_leaves_nothing_to_save(lab, wait_until, wait_for_text):
    folder = assignment(lab.here)
    before = (folder / "small.ipynb").read_bytes()
    page = opened(lab, "a01/order-of-work-1/small.ipynb")
    wait_for_text(page, "How wide is the gap?")
    box = page.get_by_label("How wide is the gap?").first
    box.fill("2 mm")
    box.press("Tab")
    wait_until(lambda: (folder / "jobsheet.json").exists() and stored(folder, "gap") == "2 mm")
    page.wait_for_timeout(500)
    assert page.locator(".lm-TabBar-tab.jp-mod-dirty").count() == 0
    assert (folder / "small.ipynb").read_bytes() == before
    # What the learner writes into a cell of their own is still theirs to save.
    page.locator(".jp-CodeCell .cm-content").last.click()
    page.keyboard.type("# mine")
    page.wait_for_selector(".lm-TabBar-tab.jp-mod-dirty")


def test_a_fault_in_the_set_up_is_one_sentence(lab, wait_for_text, screenshot):
    folder = assignment(lab.here)
    (folder / "assignment.json").write_text("{")
    page = opened(lab, "a01/order-of-work-1/small.ipynb", ready=None)
    wait_for_text(page, "assignment.json, line 1: not readable as JSON")
    page.wait_for_timeout(1500)
    assert page.get_by_text("Traceback").count() == 0
    assert page.get_by_text("NameError").count() == 0
    screenshot(page, "opened-with-a-fault")
