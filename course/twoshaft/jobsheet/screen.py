"""A screen in a notebook: what draws it, its faults, and its plain copy for paper.

Forms and rigs are screens. A screen's browser side sends messages; what goes wrong while one is
answered is told on the screen itself, because a notebook shows nothing of it.
"""

from __future__ import annotations

from importlib.resources import files
from typing import Any, ClassVar

import anywidget
import traitlets
from IPython.display import HTML, DisplayHandle, display

from twoshaft.errors import CourseError

CHUNKS = ("solids",)
"""Files of the browser side that only some screens need, and ask for."""

# What JupyterLab is served of the browser side; its source is course/browser.
BROWSER = files("twoshaft") / "labextension" / "static"


def fault_sentence(error: Exception) -> str:
    """What to tell a person about an error: its own sentence, or that it is not their fault."""
    if isinstance(error, CourseError):
        return error.sentence
    return f"This screen met a fault of its own, not yours ({type(error).__name__}: {error})."


class Screen(anywidget.AnyWidget):
    """Base of forms and rigs.

    A subclass gives ``screen`` (the name that ``course/browser/src/screens.js`` draws it by),
    :meth:`hear` and :meth:`plain_copy`. The plain copy is brought up to date when the browser says
    that hands are off, not at every move.

    The page loads the screens and their styles once; a form or rig sends its data only, and a few
    lines that find them. Where nothing has loaded them (no extension of ours, or another version),
    these lines ask for them here.
    """

    screen: ClassVar[str]
    _esm = (BROWSER / "loader.js").read_text("utf-8")
    _screen = traitlets.Unicode().tag(sync=True)

    def __init__(self, **traits: Any) -> None:
        self._copy: DisplayHandle | None = None
        self._troubled = False
        super().__init__(_screen=self.screen, **traits)
        self.on_msg(self._heard)

    def hear(self, message: dict[str, Any]) -> None:
        """Answer one message of the browser."""
        raise NotImplementedError

    def plain_copy(self) -> str:
        """What the screen shows, as HTML without script or style sheet."""
        raise NotImplementedError

    def _heard(self, _widget: Any, message: Any, _buffers: Any) -> None:
        message = message if isinstance(message, dict) else {}
        try:
            if message.get("type") == "rest":
                self.renew_copy()
            elif message.get("type") == "screens":
                self.send({"type": "screens"}, [(BROWSER / "screens.js").read_bytes()])
            elif message.get("type") == "chunk" and message.get("name") in CHUNKS:
                name = message["name"]
                made = (BROWSER / f"{name}.js").read_bytes()
                self.send({"type": "chunk", "name": name}, [made])
            else:
                self.hear(message)
        except Exception as error:
            self.tell_trouble(fault_sentence(error))
        else:
            if self._troubled:
                self.tell_trouble("")

    def tell_trouble(self, reason: str) -> None:
        """Show a sentence on the screen; an empty one takes it away."""
        self._troubled = bool(reason)
        self.send({"type": "trouble", "reason": reason})

    def renew_copy(self) -> None:
        """Bring the plain copy up to date."""
        if self._copy is not None:
            self._copy.update(HTML(self._marked_copy()))

    def _marked_copy(self) -> str:
        return f'<div class="twoshaft-copy">{self.plain_copy()}</div>'

    def _ipython_display_(self) -> None:
        """Show the screen, and the plain copy that the page hides while the screen lives."""
        data, metadata = self._bundle()
        display(data, metadata=metadata, raw=True)
        self._copy = display(HTML(self._marked_copy()), display_id=True)

    def put_into(self, shown: DisplayHandle, copy: DisplayHandle) -> None:
        """Show the same in the place of what two handles show now."""
        data, metadata = self._bundle()
        shown.update(data, metadata=metadata, raw=True)
        copy.update(HTML(self._marked_copy()))
        self._copy = copy

    def _bundle(self) -> tuple[dict[str, Any], dict[str, Any]]:
        bundle = self._repr_mimebundle_()
        return bundle if isinstance(bundle, tuple) else (bundle or {}, {})
