"""By keys alone, from signing in to the receipt: no trap, and no control that is cut off or covered."""

import csv

import pytest
from tests.browser.conftest import FRONT, OPENING

pytestmark = pytest.mark.browser

STEPS = 600  # more than any page has stops

# Where the keyboard is: a mark of the element, what it is, and what of it cannot be seen.
HERE = """async () => {
  for (let n = 0; n < 3; n += 1) await new Promise(requestAnimationFrame);
  const node = document.activeElement;
  if (!node || node === document.body) return null;
  const all = (window.keyboardWas ??= new Map());
  if (!all.has(node)) all.set(node, all.size);
  const panel = node.closest(".jp-NotebookPanel");
  const told = (node.getAttribute("aria-label") ?? node.textContent ?? "").trim().slice(0, 60);
  const name = `${node.tagName.toLowerCase()}.${node.getAttribute("class") ?? ""} ${told}`;
  const frame = node.closest(".jp-WindowedPanel-outer");
  const box = node.getBoundingClientRect();
  const room = frame?.getBoundingClientRect()
    ?? { top: 0, left: 0, bottom: innerHeight, right: innerWidth };
  let cut = "";
  if (panel) {
    const high = Math.min(box.height, room.bottom - room.top);
    const seen = Math.min(box.bottom, room.bottom) - Math.max(box.top, room.top);
    if (seen < high - 1) cut = `${Math.round(seen)} of ${Math.round(high)} pixels high`;
    else if (box.left < room.left - 1 || box.right > room.right + 1) cut = "sideways";
    else if (high === box.height) {
      const over = document.elementFromPoint((box.left + box.right) / 2, (box.top + box.bottom) / 2);
      // A letter and its line in a drawing have other lines of it in their middle.
      const drawn = node.ownerSVGElement;
      if (!over || !(node.contains(over) || over.contains(node) || over.closest("label")
          || (drawn && drawn.contains(over))))
        cut = `covered by ${over?.getAttribute("class")}`;
    }
    // In a box of its own the ring round it stands clear of the box's lower edge.
    const row = node.closest('[data-twoshaft-side="left"]')?.style.gridRow;
    const more = [...panel.querySelectorAll(".twoshaft-more")]
      .find((one) => one !== node && one.closest(".jp-Cell").style.gridRow === row);
    const edge = (node.matches(".jp-Cell") ? null : more)?.getBoundingClientRect().top ?? Infinity;
    if (!cut && box.bottom + 5 > edge && box.height < edge - room.top) cut = "its ring";
  }
  return { at: all.get(node), name, inside: Boolean(panel), cut };
}"""


def walk(page, key="Tab"):
    """Press a key until the keyboard leaves the page in front or comes round; returns the stops."""
    stops = []
    for _ in range(STEPS):
        page.keyboard.press(key)
        here = page.evaluate(HERE)
        if here is None or not here["inside"] or here["at"] in {one["at"] for one in stops}:
            break
        stops.append(here)
    return stops


def is_here(node):
    """Whether the keyboard is at a control."""
    return node.evaluate("(one) => one === document.activeElement")


def test_from_signing_in_to_the_receipt(handed_out, wait_until, screenshot):
    own = handed_out("shims-and-preload")
    with open(own.cohort / "sign-in-slips.csv", newline="") as file:
        row = next(csv.DictReader(file))
    word = next(value for key, value in row.items() if "word" in key)
    page = own.start_page()
    page.locator(f"{FRONT} select").first.focus()
    page.keyboard.press("ArrowDown")
    page.keyboard.press("Tab")
    page.keyboard.type(word)
    page.keyboard.press("Enter")
    page.get_by_text("Working as Ada Lindqvist (mo01)").first.wait_for()
    get = page.locator(FRONT).get_by_role("button", name="Get").first
    get.wait_for()
    for _ in range(60):
        if is_here(get):
            break
        page.keyboard.press("Tab")
    page.keyboard.press("Enter")
    # The focus has gone on to what can be done next.
    page.get_by_text("is here. Open it").first.wait_for()
    wait_until(lambda: page.evaluate("document.activeElement.textContent") == "Open")
    page = own.open(page, ready=".twoshaft-form")
    wait_until(lambda: not page.locator(OPENING).count())

    skip = page.get_by_role("link", name="To the start page, lesson and tasks")
    skip.focus()
    page.keyboard.press("Enter")
    stops = walk(page)
    assert not [one for one in stops if one["cut"]]
    # Every form is come by, and its last control lets the keyboard go on.
    reached = page.evaluate("""() => [...document.querySelectorAll('.twoshaft-form')]
      .map((form) => [...window.keyboardWas.keys()].some((node) => form.contains(node)))""")
    assert reached and all(reached)
    back = walk(page, "Shift+Tab")
    assert len(back) >= len(stops) and not [one for one in back if one["cut"]]

    box = page.get_by_label("Setting with your shim, preload plus, end play minus")
    box.focus()
    page.keyboard.type("0.05 mm")
    page.keyboard.press("Tab")
    wait_until(lambda: own.stored("follow-setting") is not None)
    skip.focus()
    page.keyboard.press("Enter")
    page = own.start_page(page)
    hand_in = page.locator(FRONT).get_by_role("button", name="Hand in").first
    hand_in.wait_for()
    hand_in.focus()
    page.keyboard.press("Enter")
    sure = page.get_by_role("button", name="It is my own work")
    sure.wait_for()
    for _ in range(20):
        if is_here(sure):
            break
        page.keyboard.press("Tab")
    page.keyboard.press("Enter")
    wait_until(lambda: "receipt" in page.evaluate("document.activeElement.textContent").lower())
    here = page.evaluate(HERE)
    assert not here["cut"]
    screenshot(page, "keyboard-receipt")
