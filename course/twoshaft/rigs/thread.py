"""Thread and friction chooser: what one torque does to one thread."""

from __future__ import annotations

from dataclasses import dataclass, replace
from html import escape
from typing import Any

import traitlets

from twoshaft.errors import OutOfRangeError
from twoshaft.jobsheet.screen import Screen
from twoshaft.models import joint
from twoshaft.rigs.thread_drawing import Mark, band_drawing, section_drawing
from twoshaft.units.quantities import Q
from twoshaft.units.sections.fasteners import FastenerGroup, TappedMetal
from twoshaft.units.unit import Unit

SIZES = ("M6", "M8", "M10", "M10x1.25", "M12")
CLASSES = ("5.6", "8.8", "10.9", "12.9")
BY_FEEL = 0.35
"""Share by which a hand without a torque wrench is off; common practice, no source."""
YIELD_GUARD = 0.9
"""Share of yield that tightening should not pass (VDI 2230, from memory)."""


@dataclass(frozen=True)
class Chosen:
    """What is set on the rig."""

    group: str
    thread: str
    strength: str
    state: str
    torque_nm: float
    tool: str
    engagement_mm: float


class ThreadChooser(Screen):
    """A bolt in a tapped hole: clamp band, share of yield, margin against stripping.

    Parameters
    ----------
    unit : Unit
        A unit with fasteners.
    group : str
        Id of the group shown at first.
    """

    screen = "thread"

    plan = traitlets.Dict().tag(sync=True)
    view = traitlets.Dict().tag(sync=True)

    def __init__(self, unit: Unit, group: str) -> None:
        self.unit = unit
        section = unit.fasteners
        self.groups = {one.id: one for one in section.groups if one.tapped is not None}
        self.tapped = {one.id: one.tapped for one in section.groups if one.tapped is not None}
        self.wrenches = {
            one.id: joint.Fastening.of(unit, g.id).wrench
            for one in section.wrenches
            for g in section.groups
            if g.wrench == one.id
        }
        self.fastenings = {one: joint.Fastening.of(unit, one) for one in self.groups}
        self.chosen = self._as_in_unit(group)
        sizes = dict.fromkeys([*SIZES, *(g.thread for g in self.groups.values())])
        super().__init__(
            plan={
                "groups": [[g.id, g.name] for g in self.groups.values()],
                "threads": list(sizes),
                "classes": sorted(
                    {*CLASSES, *(g.strength for g in self.groups.values())}, key=float
                ),
                "states": [[s.id, s.name] for s in section.states],
                "tools": [
                    *([k, f"{w.name}, within {w.tolerance:.0%}"] for k, w in self.wrenches.items()),
                    ["feel", f"By feel, no torque wrench, within {BY_FEEL:.0%}"],
                ],
            },
            view={},
        )
        self.view = self._view(None)

    def _as_in_unit(self, identifier: str) -> Chosen:
        group = self.groups[identifier]
        return Chosen(
            identifier,
            group.thread,
            group.strength,
            group.state,
            group.torque_nm[1],
            group.wrench,
            self.tapped[identifier].engagement_mm,
        )

    def hear(self, message: dict[str, Any]) -> None:
        """Take over what was chosen; a choice that the model refuses changes nothing."""
        if message.get("type") != "choose":
            return
        before = self.chosen
        known = {k: v for k, v in message.get("chosen", {}).items() if hasattr(before, k)}
        try:
            if known.get("group", before.group) != before.group:
                self.chosen = self._as_in_unit(known["group"])
            else:
                self.chosen = replace(before, **known)
            self.view = self._view(message.get("turn"))
        except (OutOfRangeError, KeyError):
            self.chosen = before
            self.view = self._view(message.get("turn"))
            raise

    @property
    def _own_thread(self) -> bool:
        return self.chosen.thread == self.groups[self.chosen.group].thread

    def _parts(self) -> tuple[joint.Fastening, joint.Thread, joint.Seat, joint.Strength]:
        fastening = self.fastenings[self.chosen.group]
        thread = joint.Thread.named(self.chosen.thread)
        seat = fastening.seat if self._own_thread else joint.Seat.hexagon(thread)
        return fastening, thread, seat, joint.strength(self.chosen.strength, Q(thread.d_m, "m"))

    def _tolerance(self) -> float:
        wrench = self.wrenches.get(self.chosen.tool)
        return BY_FEEL if wrench is None else wrench.tolerance

    def judge(self) -> dict[str, Any]:
        """Work out what the choice leads to: loads in kN, shares of one, and the sentence."""
        fastening, thread, seat, steel = self._parts()
        chosen, group = self.chosen, fastening.group
        friction, torque = fastening.states[chosen.state], Q(chosen.torque_nm, "N*m")
        share = self._tolerance()
        bounds = joint.clamp_bounds(torque, thread, seat, friction, share)
        use = joint.worst_utilisation(torque, thread, seat, steel, friction, share)
        shares = joint.torque_shares(thread, seat, friction.thread[1], friction.head[1])
        strip = self._strip(group, fastening.tapped_metal, thread, steel)
        return {
            "low": bounds.low_n / 1e3,
            "typical": bounds.typical_n / 1e3,
            "high": bounds.high_n / 1e3,
            "use": use,
            "useful": shares.pitch,
            "thread friction": shares.thread,
            "head friction": shares.head,
            "holds": strip.holds_n / 1e3,
            "first": strip.first,
            "margin": strip.holds_n / bounds.high_n,
            "need": group.clamp_kn if self._own_thread else None,
        }

    def _strip(
        self,
        group: FastenerGroup,
        metal: TappedMetal,
        thread: joint.Thread,
        steel: joint.Strength,
    ) -> joint.Strip:
        boss = self.tapped[group.id].boss_mm if self._own_thread else None
        return joint.strip_loads(
            thread,
            steel,
            Q(metal.tensile_mpa, "MPa"),
            Q(self.chosen.engagement_mm, "mm"),
            None if boss is None else Q(boss, "mm"),
            joint.limits_6g6h(thread),
        )

    def _sentence(self, found: dict[str, Any]) -> str:
        said = f"{self.chosen.torque_nm:g} N·m leaves {found['low']:.1f} to {found['high']:.1f} kN."
        troubles = []
        if found["need"] is not None and found["low"] < found["need"]:
            troubles.append(f"it can be loose: {found['need']:g} kN are needed")
        if found["use"] > 1:
            troubles.append("the bolt can yield while it is tightened")
        elif found["use"] > YIELD_GUARD:
            troubles.append("the bolt can come close to yield")
        if found["margin"] < 1:
            words = {
                "bolt breaks": "the bolt can break",
                "bolt thread strips": "the bolt's thread can strip",
                "hole thread strips": "the thread in the hole can strip",
            }
            troubles.append(words[found["first"]])
        elif found["first"] == "hole thread strips":
            troubles.append("pulled too far, the thread in the hole goes first, not the bolt")
        text = "; ".join(troubles)
        return f"{said} {text[0].upper()}{text[1:]}." if text else f"{said} All is in order."

    @property
    def finding(self) -> str:
        """What the choice leads to, as a sentence."""
        return self._sentence(self.judge())

    def _view(self, turn: Any) -> dict[str, Any]:
        found = self.judge()
        fastening, thread, seat, _ = self._parts()
        chosen, finding = self.chosen, self._sentence(found)
        weakest = {
            "bolt breaks": "bolt breaks",
            "bolt thread strips": "bolt's thread strips",
            "hole thread strips": "hole's thread strips",
        }[found["first"]]
        marks = [Mark(found["holds"], weakest)]
        if found["need"] is not None:
            marks.append(Mark(found["need"], "needed", "6 3"))
        metal = fastening.tapped_metal.name
        return {
            "turn": turn,
            "chosen": vars(chosen),
            "finding": finding,
            "topTorque": _top(self.groups[chosen.group].torque_nm[1], thread),
            "topEngagement": round(2.5 * thread.d_m * 1e3),
            "lowEngagement": round(0.4 * thread.d_m * 1e3 + 0.5),
            "torqueText": f"{chosen.torque_nm:g} N·m",
            "engagementText": f"{chosen.engagement_mm:g} mm, "
            f"{chosen.engagement_mm / thread.d_m / 1e3:.1f} diameters",
            "facts": [
                ["Share of yield", f"at most {found['use']:.0%} while tightening"],
                [
                    "Against stripping",
                    f"{found['holds']:.1f} kN, {found['margin']:.1f} times the most clamp; "
                    f"first the {weakest}",
                ],
                [
                    "Where the torque goes",
                    f"{found['useful']:.0%} stretches the bolt, {found['thread friction']:.0%} "
                    f"rubs in the thread, {found['head friction']:.0%} under the head",
                ],
            ],
            "band": band_drawing(found["low"], found["typical"], found["high"], marks, finding),
            "section": section_drawing(
                thread.d_m * 1e3,
                thread.minor_m * 1e3,
                seat.outer_m * 1e3,
                chosen.engagement_mm,
                metal.split(" of ")[0],
                f"{thread.name} in {metal.lower()}, {chosen.engagement_mm:g} mm of thread meet",
            ),
        }

    def plain_copy(self) -> str:
        """The choice and what it leads to as HTML."""
        rows = "".join(
            f"<li><b>{escape(word)}:</b> {escape(text)}</li>" for word, text in self.view["facts"]
        )
        return (
            f"<p><b>{escape(self.view['finding'])}</b></p>{self.view['band']}"
            f"{self.view['section']}<ul>{rows}</ul>"
        )


def _top(torque_nm: float, thread: joint.Thread) -> int:
    """End of the torque slider [N·m]: twice the torque of the job, more for thicker threads."""
    by_size = {6: 20, 8: 50, 10: 100, 12: 150}
    return max(round(2 * torque_nm), by_size.get(round(thread.d_m * 1e3), 0))


def thread_chooser(unit: Unit, group: str | None = None) -> ThreadChooser:
    """A bolt in a tapped hole, to try sizes, classes, states, tools and torques on.

    Parameters
    ----------
    unit : Unit
        The unit on the bench.
    group : str, optional
        Id of the fastener group shown at first; the first one in a tapped hole by default.

    Returns
    -------
    ThreadChooser
        Something a notebook displays.
    """
    first = next(one.id for one in unit.fasteners.groups if one.tapped is not None)
    return ThreadChooser(unit, group or first)
