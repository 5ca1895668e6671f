"""Hazard picture: an invented workshop to look round in, before and after judging it."""

from __future__ import annotations

from collections.abc import Mapping
from html import escape
from typing import Any

import traitlets

from twoshaft.errors import CourseError
from twoshaft.jobsheet.screen import Screen
from twoshaft.plots.drawing import html_list
from twoshaft.readings.course_and_safety.scene import hazards_seen, scene_of
from twoshaft.readings.keyed import Stream
from twoshaft.rigs.hazard_drawing import workshop_drawing
from twoshaft.safety import OwnSources, Safety, load_safety

VERDICTS = ("stop", "well")


class HazardPicture(Screen):
    """The workshop as a picture whose places can be chosen.

    Parameters
    ----------
    safety : Safety
        Places, hazards and cautions.
    views : mapping of str to int, optional
        Number of the view at each place. Left out, scenes are drawn, one after another.
    looking_only : bool
        True where the work is marked: what is seen is said, nothing is judged or explained.
    own_sources : OwnSources, optional
        Where the college says that cautions can be read up.
    """

    screen = "hazards"

    plan = traitlets.Dict().tag(sync=True)
    view = traitlets.Dict().tag(sync=True)

    def __init__(
        self,
        safety: Safety,
        views: Mapping[str, int] | None = None,
        looking_only: bool = False,
        own_sources: OwnSources | None = None,
    ) -> None:
        self.safety, self.looking_only = safety, looking_only
        self.own_sources = own_sources or OwnSources()
        self.scene = 0
        self.drawn = views is None
        self.views = self._scene() if views is None else dict(views)
        self.judged: dict[str, str] = {}
        self.chosen = next(iter(self.views))
        super().__init__(plan=self._plan(), view=self._view(None))

    def _scene(self) -> dict[str, int]:
        stream = Stream("lesson", "everybody", "course-and-safety", self.scene)
        places = stream.shuffled(self.safety.places)[: len(self.safety.places) // 2]
        return scene_of(self.safety, {p.id: stream.choice(p.hazards).id for p in places})

    def _plan(self) -> dict[str, Any]:
        return {
            "drawing": workshop_drawing(self.safety, self.views),
            "places": [[place, self.safety.place_by_id[place].name] for place in self.views],
            "lookingOnly": self.looking_only,
            "more": self.drawn and not self.looking_only,
        }

    def hear(self, message: dict[str, Any]) -> None:
        """Choose a place, judge it, or draw the next scene."""
        what = message.get("type")
        if what in ("choose", "judge"):
            place = message.get("place")
            if place not in self.views:
                raise CourseError("there is no such place in the picture", mend="choose another")
            self.chosen = place
            if what == "judge" and not self.looking_only and message.get("verdict") in VERDICTS:
                self.judged[place] = message["verdict"]
        elif what == "next" and self.drawn and not self.looking_only:
            self.scene += 1
            self.views, self.judged = self._scene(), {}
            self.plan = self._plan()
        self.view = self._view(message.get("turn"))

    def seen(self, place: str) -> str:
        """What can be seen at a place, without judging it."""
        return self.safety.place_by_id[place].views()[self.views[place]][0]

    def told(self, place: str) -> dict[str, str]:
        """What is so at a place: verdict, and what, why, act and source by name."""
        here = self.safety.place_by_id[place]
        hazard = here.views()[self.views[place]][1]
        if hazard is None:
            return {"verdict": "Fine as it is.", "Why": here.because}
        caution = self.safety.caution_by_id[hazard.caution]
        return {
            "verdict": "Stop here.",
            "What can happen": hazard.what,
            "Why": hazard.why,
            "Do this": hazard.act,
            "The caution": caution.text,
            **self.own_sources.told(caution, hazard),
        }

    @property
    def finding(self) -> str:
        """How far the picture has been judged, and how well, as a sentence."""
        count = len(self.views)
        if self.looking_only:
            return f"A workshop with {count} places. Look at each of them."
        if not self.judged:
            return f"{count} places. At some of them somebody can get hurt: which?"
        dangers = hazards_seen(self.safety, self.views)
        right = sum((place in dangers) == (said == "stop") for place, said in self.judged.items())
        text = f"{len(self.judged)} of {count} places judged, {right} of them correctly."
        missed = [p for p in dangers if self.judged.get(p) == "well"]
        if missed:
            text += f" Let through: {self.safety.place_by_id[missed[0]].name}" + (
                f" and {len(missed) - 1} more." if len(missed) > 1 else "."
            )
        return text

    def _view(self, turn: Any) -> dict[str, Any]:
        judged = self.chosen in self.judged
        return {
            "turn": turn,
            "finding": self.finding,
            "chosen": self.chosen,
            "seen": self.seen(self.chosen),
            "judged": dict(self.judged),
            "told": self.told(self.chosen) if judged else {},
        }

    def plain_copy(self) -> str:
        """The picture and what can be seen in it, as HTML."""
        seen = [
            f"{n} {self.safety.place_by_id[place].name}: {self.seen(place)}"
            for n, place in enumerate(self.views, 1)
        ]
        return f"<p><b>{escape(self.finding)}</b></p>{self.plan['drawing']}{html_list(seen)}"


def hazard_picture(
    views: Mapping[str, int] | None = None,
    *,
    looking_only: bool = False,
    own_sources: OwnSources | None = None,
) -> HazardPicture:
    """The invented workshop, to find hazards in.

    Parameters
    ----------
    views : mapping of str to int, optional
        Number of the view at each place, as issued to a learner; scenes for practice by default.
    looking_only : bool
        True in marked work.
    own_sources : OwnSources, optional
        Where the college says that cautions can be read up.

    Returns
    -------
    HazardPicture
        Something a notebook displays.
    """
    return HazardPicture(load_safety(), views, looking_only, own_sources)
