"""What an accessibility engine (axe-core) finds on a page, but for what is JupyterLab's own."""

from __future__ import annotations

import time

from course.browser.make import MODULES

AXE = MODULES / "axe-core" / "axe.min.js"
# What JupyterLab 4.6 itself does, by rule and by whose element it is: a notebook's cells are named
# though they have no role, and are no articles of their feed; its own skip links are in no landmark.
JUPYTERLABS_OWN = {
    ("aria-prohibited-attr", "jp-Cell"),
    ("aria-required-children", "jp-WindowedPanel-viewport"),
    ("region", "jp-skiplink-wrapper"),
}
FOUND = """async () => {
  const { violations } = await axe.run(document, { resultTypes: ["violations"] });
  return violations.flatMap(({ id, nodes }) => nodes.map(({ target, html }) => ({
    id, html: html.slice(0, 300), target: target.join(" "),
    whose: [...document.querySelector(target.join(" ")).classList],
  })));
}"""


def found_on(page, seconds: float = 20) -> list[dict]:
    """What the engine finds that is not JupyterLab's own, once the page has come to rest."""
    page.evaluate(AXE.read_text())
    end = time.monotonic() + seconds
    while found := [
        one
        for one in page.evaluate(FOUND)
        if not any((one["id"], kind) in JUPYTERLABS_OWN for kind in one["whose"])
    ]:
        if time.monotonic() > end:
            break
    return found
