"""A page loads the screens once and its console stays clean; a form sends its data only."""

import pytest

from twoshaft.jupyter.startpage import write_start_here

pytestmark = pytest.mark.browser

MODULE = "01-measuring-and-tools"
FRONT = ".jp-NotebookPanel:not(.lm-mod-hidden)"
LIVE = f"{FRONT} .twoshaft-live"
IDLE = f"{FRONT} .jp-Notebook-ExecutionIndicator[data-status=idle]"
SCREENS = "**/twoshaft-opener/static/screens.js*"
BUNDLE_BYTES = 100_000  # screens.js is larger, whatever one form sends is smaller


class Watched:
    """What a window asks the server for, hears from kernels and says in its console."""

    def __init__(self, page):
        self.page, self.errors, self.bundles, self.frames = page, [], 0, []
        page.on("console", self._said)
        page.on("pageerror", lambda error: self.errors.append(str(error)))
        page.on("request", self._asked)
        page.on("websocket", lambda socket: socket.on("framereceived", self._heard))

    def _said(self, message):
        if message.type == "error":
            self.errors.append(message.text)

    def _asked(self, request):
        self.bundles += "/static/screens.js" in request.url

    def _heard(self, frame):
        self.frames.append(len(frame))

    @property
    def from_kernel(self):
        """How often a kernel has sent the screens."""
        return sum(size > BUNDLE_BYTES for size in self.frames)


def seen(page):
    return page.evaluate("[...twoshaftScreens.keys()].length"), page.locator("#twoshaft-styles")


def test_one_page_one_bundle_and_nothing_wrong_in_the_console(learner, wait_until):
    lab = learner.lab
    write_start_here(lab.root)
    watched = Watched(lab.page())
    page = lab.open_notebook("start-here.ipynb", watched.page, ready=".twoshaft-start")
    for tabs, folder, live in ((2, "lessons", 2), (3, "exercises", 3)):
        path = f"{lab.within}{folder}/{MODULE}.ipynb"
        page.evaluate(
            """(path) => {
                const link = document.createElement("a");
                link.href = "#";
                link.dataset.twoshaftOpen = path;
                document.body.append(link);
                link.click();
                link.remove();
            }""",
            path,
        )
        wait_until(lambda tabs=tabs: page.locator(".jp-NotebookPanel").count() == tabs)
        wait_until(lambda live=live: page.locator(LIVE).count() >= live)
        page.wait_for_selector(IDLE)
    versions, sheets = seen(page)
    assert (versions, sheets.count(), watched.bundles, watched.from_kernel) == (1, 1, 1, 0)
    assert watched.errors == []


def test_where_the_extension_has_no_screens_the_kernel_is_asked_once(learner, wait_until):
    watched = Watched(learner.lab.page())
    watched.page.route(SCREENS, lambda route: route.abort())
    path = f"exercises/{MODULE}.ipynb"
    page = learner.lab.open_notebook(path, watched.page, ready=".twoshaft-live")
    wait_until(lambda: page.locator(LIVE).count() >= 3)
    versions, sheets = seen(page)
    assert (versions, sheets.count(), watched.from_kernel) == (1, 1, 1)
