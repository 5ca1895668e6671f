"""Ways between start page, lesson, exercise and feedback; the row of tasks; the width of the page."""

import pytest

pytestmark = pytest.mark.browser

FRONT = ".jp-NotebookPanel:not(.lm-mod-hidden)"
MODULE = "05-shims-and-preload"
LEFT = f'{FRONT} .jp-Cell[data-twoshaft-side="left"]'
BESIDE = """([heading, label]) => {
  const cells = [...document.querySelectorAll('.jp-NotebookPanel:not(.lm-mod-hidden) .jp-Cell')];
  const at = cells.findIndex((cell) => cell.querySelector('h2')?.textContent.includes(heading));
  const given = cells[at].getBoundingClientRect();
  const asked = [...cells.slice(at)].find((cell) => cell.querySelector('.twoshaft-form'));
  const { left, top } = asked.getBoundingClientRect();
  return { beside: left >= given.right - 1, above: given.bottom <= top + 1, top: given.top };
}"""
OUT = """() => [...document.querySelectorAll('.jp-WindowedPanel-outer, .twoshaft-bar')]
  .filter((one) => one.checkVisibility() && one.scrollWidth > one.clientWidth + 1).length"""
STATES = "links => links.map((link) => link.getAttribute('aria-label').split(': ')[1])"

STILL = """async (css) => {
  const places = new Set();
  const form = [...document.querySelectorAll(css)].at(-1);
  for (let frame = 0; frame < 40; frame += 1) {
    await new Promise(requestAnimationFrame);
    if (frame >= 10) places.add(form.getBoundingClientRect().top);
  }
  return places.size;
}"""


@pytest.fixture(scope="module")
def order(handed_out):
    """A learner at the first assignment, signed in."""
    out = handed_out("order-of-work")
    out.get()
    return out


def test_the_row_of_tasks_says_what_is_done_and_leads_there(learner, wait_until, screenshot):
    page = learner.exercise(live=10)
    tasks = page.locator(f"{FRONT} .ts-tasks a")
    wait_until(lambda: set(tasks.evaluate_all(STATES)) == {"not begun"})
    assert tasks.count() == 10
    page.get_by_label("Setting with your shim, preload plus, end play minus").fill("0.05 mm")
    page.keyboard.press("Tab")
    wait_until(lambda: tasks.evaluate_all(STATES)[2] == "1 of 5 answered")
    tasks.nth(2).click()
    wait_until(lambda: tasks.nth(2).get_attribute("aria-current") == "step")
    assert page.evaluate("document.activeElement.textContent").startswith("3. ")
    page.get_by_role("link", name="Next: task 1").click()
    wait_until(lambda: tasks.nth(0).get_attribute("aria-current") == "step")
    screenshot(page, "tasks-in-a-row")


def test_a_page_lies_still_wherever_it_is_scrolled_to(learner, wait_until):
    page = learner.exercise(live=10)
    tasks = page.locator(f"{FRONT} .ts-tasks a")
    for task in (3, 6, 9):
        tasks.nth(task).click()
        wait_until(lambda task=task: tasks.nth(task).get_attribute("aria-current") == "step")
        assert page.evaluate(STILL, f"{FRONT} .twoshaft-form") == 1


def test_what_is_given_stays_beside_what_is_asked(learner, wait_until, screenshot):
    page = learner.exercise(live=10)
    where = ["3. What follows", ""]
    page.locator(f"{FRONT} .ts-tasks a").nth(2).click()
    wait_until(lambda: page.evaluate(BESIDE, where)["beside"])
    page.locator(f"{FRONT} .ts-tasks a").nth(3).click()
    for width in (820, 390, 320):
        page.set_viewport_size({"width": width, "height": 720})
        wait_until(lambda: page.evaluate(BESIDE, where)["above"])
        assert page.evaluate(OUT) == 0
        screenshot(page, f"given-and-asked-{width}")
    assert not page.locator(f"{FRONT} .jp-NotebookPanel-toolbar").is_visible()


def test_what_is_given_and_what_is_asked_stay_in_sight_and_cover_nothing(learner, wait_until):
    page = learner.exercise(live=10)
    cells = page.locator(LEFT)
    first = cells.filter(has=page.locator("h2", has_text="10. ")).or_(cells.first).first
    top = first.evaluate("(cell) => cell.getBoundingClientRect().top")
    first.evaluate("(cell) => cell.scrollIntoView({ block: 'start' })")
    assert first.evaluate("(cell) => cell.getBoundingClientRect().top") <= top
    overlaps = """() => ["left", "right"].some((side) => {
      const seen = [...document.querySelectorAll(`.jp-Cell[data-twoshaft-side="${side}"]`)]
        .filter((one) => one.checkVisibility())
        .map((one) => {
          // What a box of its own cuts off is not there.
          const cut = /^inset\\(\\S+ \\S+ (\\S+)px/.exec(one.style.clipPath)?.[1] ?? 0;
          const { top, bottom: end } = one.getBoundingClientRect();
          const bottom = Math.min(end, end - cut);
          return { top, bottom, height: bottom - top };
        })
        .filter(({ height }) => height > 1);
      return seen.some((one, n) => n && one.top < seen[n - 1].bottom - 2);
    })"""
    outer = page.locator(f"{FRONT} .jp-WindowedPanel-outer")
    for _ in range(30):
        outer.evaluate("(one) => one.scrollBy(0, 250)")
        wait_until(lambda: not page.evaluate(overlaps))


def test_what_is_given_is_moved_by_itself_where_a_window_holds_neither(
    learner, wait_until, screenshot
):
    page = learner.exercise(live=10)
    page.locator(f"{FRONT} .ts-tasks a").nth(7).click()
    box = page.get_by_label("The case grows by")
    heading = page.locator(f"{FRONT} h2", has_text="8. ")
    outer = page.locator(f"{FRONT} .jp-WindowedPanel-outer")
    more = page.locator(f"{FRONT} .twoshaft-more").filter(visible=True)

    def in_sight(node):
        seen, room = node.bounding_box(), outer.bounding_box()
        return room["y"] - 1 <= seen["y"] and (
            seen["y"] + seen["height"] <= room["y"] + room["height"] + 1
        )

    row = f"{FRONT} .jp-Cell[data-twoshaft-side='left']:has(.twoshaft-more)"
    end = page.locator(row, has_text="sits between the inner rings").locator("p, figcaption").last
    wait_until(lambda: in_sight(box) and in_sight(heading))
    assert not in_sight(end)
    # The keyboard comes to the button after what is given, and before what is asked.
    box.focus()
    for _ in range(3):
        page.keyboard.press("Shift+Tab")
        if page.evaluate("document.activeElement.classList.contains('twoshaft-more')"):
            break
    page.keyboard.press("Enter")
    wait_until(lambda: in_sight(end) and in_sight(box))
    over = """(button) => {
      const { left, top } = button.getBoundingClientRect();
      return document.elementFromPoint(left + 8, top + 8) === button;
    }"""
    assert more.evaluate_all(f"(all) => all.filter({over}).map((one) => one.textContent)") == [
        "▲ Back to the beginning"
    ]
    screenshot(page, "given-moved-by-itself")
    page.keyboard.press("Enter")
    wait_until(lambda: in_sight(heading) and in_sight(box))
    # At the last question too: by the wheel.
    last = page.locator(f"{FRONT} .ts-field", has_text="Other units: what do you do").last
    last.evaluate("(field) => field.scrollIntoView({ block: 'end' })")
    given = outer.bounding_box()
    page.mouse.move(given["x"] + 200, given["y"] + 200)
    top = last.bounding_box()["y"]
    page.mouse.wheel(0, 400)
    wait_until(lambda: in_sight(end))
    page.mouse.wheel(0, -150)
    page.mouse.wheel(0, -150)
    wait_until(lambda: in_sight(heading))
    assert abs(last.bounding_box()["y"] - top) < 2 and more.count()


def test_ways_lead_from_page_to_page_by_the_keyboard(order, wait_until):
    page = order.open()
    ways = page.get_by_role("navigation", name="Course")
    page.locator(f"{FRONT} .twoshaft-bar a").first.wait_for()
    # One step back from the first cell, and by the first link of the page.
    page.locator(f"{FRONT} .jp-Cell").first.focus()
    page.keyboard.press("Shift+Tab")
    wait_until(lambda: page.evaluate("Boolean(document.activeElement.closest('.twoshaft-bar'))"))
    page.get_by_role("link", name="To the start page, lesson and tasks").focus()
    page.keyboard.press("Enter")
    assert page.evaluate("document.activeElement.textContent") == "Start page"
    page.keyboard.press("Tab")
    page.keyboard.press("Enter")
    ways.filter(visible=True).locator("b", has_text="Lesson 02").wait_for()
    page.locator(f"{FRONT} h1", has_text="Order of work").first.wait_for()
    back = page.locator(f"{FRONT} .twoshaft-ways").get_by_role("link", name="Exercise 02")
    back.click()
    page.locator(f"{FRONT} h1", has_text="exercise").wait_for()


def test_feedback_leads_into_the_lesson(order, wait_until, screenshot):
    page = order.open()
    page.get_by_label("How many minutes are left over?").fill("10 min")
    page.keyboard.press("Tab")
    wait_until(lambda: order.stored("clock-left") == "10 min")
    page = order.hand_in()
    # What was said and the receipt are both in sight, whole.
    room = page.locator(f"{FRONT} .jp-WindowedPanel-outer").bounding_box()
    for told in (".ts-said", "[data-key^='receipt']"):
        node = page.locator(f"{FRONT} {told}")
        wait_until(lambda node=node: node.bounding_box()["y"] >= room["y"] - 1)
        seen = node.bounding_box()
        assert seen["y"] + seen["height"] <= room["y"] + room["height"] + 1
    order.given_back()
    (feedback,) = order.mine.glob("feedback/**/*.html")
    lab, at = order.lab, feedback.relative_to(order.lab.root).as_posix()
    page = lab.page()
    page.goto(f"{lab.url}/files/{lab.within}{at}?token={lab.token}")
    page.get_by_role("link", name="Start page").first.wait_for()
    read = page.locator("main a[data-open*='#']").first
    title = read.inner_text().split("“")[-1].rstrip("”").lower()  # behind the lesson's
    screenshot(page, "feedback-with-ways")
    read.click()
    page.locator(f"{FRONT} .twoshaft").first.wait_for()

    def heading():
        text = page.evaluate("document.activeElement.textContent")
        return text.lower().replace("’", "").startswith(title[:12])

    wait_until(heading)


def test_signing_in_fits_a_narrow_window(order, wait_until):
    page = order.start_page(order.lab.page(width=320, height=640))
    form, known = page.locator(f"{FRONT} .ts-sign-in"), page.get_by_role("button", name="Sign out")
    form.or_(known).first.wait_for()
    if known.count():
        known.click()
    form.wait_for()
    out = """() => {
      const form = document.querySelector(".ts-sign-in");
      const end = form.closest(".jp-OutputArea-output").getBoundingClientRect().right;
      return [...form.querySelectorAll("*")]
        .filter((one) => one.getBoundingClientRect().right > end + 1)
        .map((one) => one.outerHTML.slice(0, 60));
    }"""
    wait_until(lambda: page.evaluate(out) == [])
