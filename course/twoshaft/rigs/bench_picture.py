"""The picture of the simulated bench: the unit as it stands, the step in hand over its place.

A part whose way round is asked is drawn as the room it takes up: where it is marked, that is all
there is of it in the page; in practice it is drawn as it is held or was put in.
"""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from dataclasses import dataclass
from functools import cached_property
from typing import Any

from twoshaft.models.shape import (
    BuildShown,
    build_shown,
    listed_misbuilds,
    solids_of,
    step_parts,
)
from twoshaft.models.tooling import ToolStands, drives, tools_standing, wrench_standing
from twoshaft.models.wholebuild import RINGS, Ask, Do, Job, asks_at, asks_of, ways_of
from twoshaft.plots.bench_tools import (
    SIDE_PX,
    standing_words,
    tool_in_place,
    tool_outline,
    tool_standing,
)
from twoshaft.plots.unit_bench import as_placed, box_round, boxes_of, in_hand
from twoshaft.plots.unit_section import Placed, part_look, unit_picture
from twoshaft.rigs.unit_section import build_state, picture_of
from twoshaft.units.sections.order import OperationKind
from twoshaft.units.sections.tool_forms import ToolForm

_MOVES = (OperationKind.FIT, OperationKind.TRIAL, OperationKind.REMOVE)
_ROUND_PX = 8.0  # a tip reaches so far into what it stands on
_READS = (OperationKind.MEASURE, OperationKind.CHECK)
_NEAR_PX = 40.0  # a driver that is put down nearer than this to a ring bears on it


@dataclass(frozen=True)
class _WayDrawn:
    """A way round that the section shows: its field, its parts, and what each answer turns over."""

    step: str
    field: str
    view: str
    parts: tuple[str, ...]
    turned: Mapping[str, tuple[str, ...]]


class BenchPicture:
    """The bench of a job in section.

    Parameters
    ----------
    job : Job
    marked : bool
        No way round is shown that is asked, and no tool that is.
    """

    def __init__(self, job: Job, *, marked: bool) -> None:
        self._job, self._marked = job, marked

    @cached_property
    def _ways(self) -> dict[str, _WayDrawn]:
        """By step, the ways round that are asked and can be drawn."""
        return {one.step: one for one in self._drawn_ways()}

    def _drawn_ways(self) -> Iterator[_WayDrawn]:
        unit = self._job.unit
        built = {one.id: one for one in listed_misbuilds(unit)}
        for ask in asks_of(self._job):
            if ask.kind != "way":
                continue
            looks = {key: None if way is None else built.get(f"{ask.about}/{way.id}")
                     for key, way in ways_of(self._job, ask.about).items()}  # fmt: skip
            seen = [one for one in looks.values() if one is not None and one.how == "turned"]
            if not seen:
                continue
            keys = dict.fromkeys(key for one in seen for key in one.parts)
            owners = (solids_of(unit, seen[0].view, key)[0].solid.part or "" for key in keys)
            turned = {key: one.parts if one in seen else () for key, one in looks.items()}
            parts = tuple(dict.fromkeys(owners))
            yield _WayDrawn(ask.step, ask.fields[0].name, seen[0].view, parts, turned)

    def whole(self) -> dict[str, Any]:
        """The unit for the browser, with the places of its parts in it [px]."""
        unit = self._job.unit
        no_way = frozenset(part for one in self._ways.values() for part in one.parts)
        boxes = {part: list(views.values()) for part, views in boxes_of(unit).items()}
        return {**picture_of(unit, no_way), "boxes": boxes}

    def tray(self) -> dict[str, dict[str, Any]]:
        """By step, its parts and what of the picture shows them [px]; none where nothing does."""
        unit, found = self._job.unit, {}
        for step, members in self._job.members.items():
            parts = step_parts(unit, members)
            if (box := box_round(unit, parts)) is not None:
                moves, (form, name) = self._moves(step), self._tool(step)
                asks = self._driver(step) is not None
                drawn = tool_outline(form) if form and (asks or not moves) else None
                found[step] = {"parts": parts, "box": box, "moves": moves, "tool": [name, drawn]}
        return found

    def parts(self, step: str) -> tuple[str, ...]:
        """The parts of a step that the picture shows."""
        return step_parts(self._job.unit, self._job.members[step])

    def held(self, step: str) -> dict[str, Any]:
        """How the parts of a step look in the hand, by answer; empty where no way is shown."""
        way = self._ways.get(step)
        if way is None or self._marked:
            return {}
        looks = {key: in_hand(self._job.unit, way.view, way.parts, turned)
                 for key, turned in way.turned.items()}  # fmt: skip
        return {"field": way.field, "looks": looks}

    def state(
        self, doings: Mapping[str, Do], step: str | None, values: Mapping[str, Any]
    ) -> dict[str, Any]:
        """What the bench changes in the picture.

        Parameters
        ----------
        doings : mapping
            The steps that stand, in their order.
        step : str or None
            The step in hand.
        values : mapping
            What is decided so far, by field.
        """
        shown = self._shown(doings, step)
        unit, tools = self._job.unit, self._tools_in_place(step, doings, values)
        tops: dict[str, float] = {}
        for tool in tools:
            top = min(y for outline in tool.outlines for _, y in outline)
            tops[tool.view] = min(top, tops.get(tool.view, top))
        push = step is not None and bool(tools) and drives(unit, self._job.members[step])
        found = build_state(unit, shown, tops, arrows=not push)
        if placed := self._tool_at_part(step, doings, values, tools):
            found["tool"], drawn = placed
            found["marks"] += drawn
        elif step is not None and tools:
            reads = self._set_on(step, values)
            name = self._tool_name(step)
            views = {one.view.id: one for one in unit_picture(unit).placed}
            first = tools[0].touches[0]
            found["tool"] = views[tools[0].view].px(first.z_mm, first.height_mm)
            drawn = "".join(
                tool_in_place(tool, views[tool.view], name, push=push, reads=reads)
                for tool in tools
            )
            found["marks"] = drawn + found["marks"]
            told = (
                standing_words(tool, name, unit.part_by_id, way=not self._marked) for tool in tools
            )
            found["words"] += f" {' '.join(dict.fromkeys(told))}"
        if self._marked:
            return found
        put = []
        for one in self._ways.values():
            at_hand = one.step == step and one.step not in doings
            choices = values if at_hand else doings[one.step].choices if one.step in doings else {}
            turned = one.turned.get(choices.get(one.field, ""))
            looks = {part: part_look(shown, part) for part in one.parts}
            if turned is None or "absent" in looks.values():
                continue
            look = next(iter(looks.values()))
            found["looks"] |= dict.fromkeys(one.parts, "put")
            put.append(as_placed(self._job.unit, one.view, one.parts, turned, look))
        found["marks"] = "".join(put) + found["marks"]
        return found

    def _shown(self, doings: Mapping[str, Do], step: str | None) -> BuildShown:
        members = self._job.members
        done = [*self._before, *(one for each in doings for one in members[each])]
        lit = step is not None and not (step in doings and self._moves(step))
        return build_shown(
            self._job.unit, done, members[step] if step and lit else None,
            tools=step is None or self._tools_are_told(step),
        )  # fmt: skip

    @cached_property
    def _before(self) -> list[str]:
        """What the job leaves out and its unit lists before the job's last step: done already."""
        mine = {one for members in self._job.members.values() for one in members}
        listed = [one.id for one in self._job.unit.operations]
        last = max((k for k, id in enumerate(listed) if id in mine), default=0)
        return [id for id in listed[:last] if id not in mine]

    def _tool(self, step: str) -> tuple[ToolForm | None, str | None]:
        """Form and name of the tool of a step that can be drawn; none of one that is asked for."""
        if self._joint(step) is not None:
            return ToolForm.WRENCH, "Torque wrench"  # which one, and how it is set, is asked
        if not self._tools_are_told(step):
            return None, None
        by_id = {tool.id: tool for tool in self._job.unit.tools}
        operations = (self._job.unit.operation_by_id[one] for one in self._job.members[step])
        tools = [by_id[tool] for operation in operations for tool in operation.tools]
        drawn = [tool for tool in tools if tool_outline(tool.looks)]
        # a press is behind the driver or sleeve that bears on the part
        drawn.sort(key=lambda tool: tool.looks is ToolForm.PRESS)
        return next(((tool.looks, tool.name) for tool in drawn), (None, None))

    def _tool_name(self, step: str) -> str:
        """What the tool that stands there is called: by its form alone where tools are not told."""
        _, name = self._tool(step)
        return name or "The tool"

    def _driver(self, step: str) -> Ask | None:
        """The decision where a driver presses, if the step asks for one."""
        return next((ask for ask in asks_at(self._job, step) if ask.kind == "driver"), None)

    def bears_at(self, step: str, at: tuple[float, float], doings: Mapping[str, Do]) -> str | None:
        """The answer that a driver put down at a place of the picture gives; None beside all rings.

        Parameters
        ----------
        step : str
            One that asks where the driver presses.
        at : (float, float)
            The place [px].
        doings : mapping
            The steps that stand.
        """
        views = {one.view.id: one for one in unit_picture(self._job.unit).placed}
        far = {}
        for answer, rings in RINGS.items():
            if len(rings) == 1:
                tools = self._stand(step, doings, rings)
                far[answer] = min((_away(one, views[one.view], at) for one in tools), default=1e9)
        nearest = min(far, key=lambda answer: far[answer])
        return nearest if far[nearest] < _NEAR_PX else None

    def _stand(
        self, step: str, doings: Mapping[str, Do], rings: frozenset | None = None
    ) -> tuple[ToolStands, ...]:
        way = self._ways.get(step)
        plain = way.parts if self._marked and way is not None else ()
        return tools_standing(self._job.unit, *self._so_far(step, doings), rings=rings, plain=plain)

    def _so_far(self, step: str, doings: Mapping[str, Do]) -> tuple[tuple[str, ...], list[str]]:
        """Operations of a step, and those that are done."""
        members = self._job.members
        return members[step], [*self._before, *(one for each in doings for one in members[each])]

    def _joint(self, step: str) -> Ask | None:
        """What is tightened at a step, if its builder decides how."""
        return next((ask for ask in asks_at(self._job, step) if ask.kind == "joint"), None)

    def _set_on(self, step: str, values: Mapping[str, Any]) -> str:
        """What is set on the wrench, in words."""
        joint = self._joint(step)
        setting = values.get(f"torque-{joint.about}") if joint else None
        return "" if setting is None else f"{setting.m_as('N*m'):g} N·m"

    def _tools_in_place(
        self, step: str | None, doings: Mapping[str, Do], values: Mapping[str, Any]
    ) -> tuple[ToolStands, ...]:
        """What presses, drives or strikes while a step is in hand; a gauge once it was read."""
        if step is None:
            return ()
        stands = step in doings
        if (joint := self._joint(step)) is not None:
            chosen = values.get(f"tool-{joint.about}") is not None
            wrench = (
                wrench_standing(self._job.unit, *self._so_far(step, doings)) if chosen else None
            )
            return () if wrench is None else (wrench,)
        if drives(self._job.unit, self._job.members[step]) == stands:
            return ()
        ask = self._driver(step)
        rings = None if ask is None else RINGS.get(values.get(ask.id, ""))
        if ask is not None and rings is None:
            return ()  # it is still in the hand
        return self._stand(step, doings, rings)

    def _tool_at_part(
        self,
        step: str | None,
        doings: Mapping[str, Do],
        values: Mapping[str, Any],
        tools: tuple[ToolStands, ...],
    ) -> tuple[tuple[float, float], str] | None:
        """The wrench once it is chosen, and a gauge for which the section shows no place."""
        form, name = (None, None) if step is None else self._tool(step)
        if step is None or form is None:
            return None
        joint = self._joint(step)
        box = box_round(self._job.unit, self.parts(step)[:1])
        chosen = joint is not None and values.get(f"tool-{joint.about}") is not None
        read = joint is None and step in doings and self._reads(step)
        if tools or box is None or not (chosen or read):
            return None
        at = box[0] + box[2] / 2, max(box[1] + _ROUND_PX, SIDE_PX)
        return (at[0], at[1] - SIDE_PX / 2), tool_standing(
            form, name or "", at, self._set_on(step, values)
        )

    def gauge_stands(self, step: str, doings: Mapping[str, Do]) -> bool:
        """Whether a step that was done has left a gauge where it was read."""
        tools = self._tools_in_place(step, doings, {}) if self._reads(step) else ()
        return bool(tools) or self._tool_at_part(step, doings, {}, tools) is not None

    def _reads(self, step: str) -> bool:
        """Whether a step measures or checks, and does nothing else."""
        operations = self._job.unit.operation_by_id
        return all(operations[one].kind in _READS for one in self._job.members[step])

    def _moves(self, step: str) -> bool:
        """Whether a step puts parts in or takes them out."""
        kinds = (self._job.unit.operation_by_id[one].kind for one in self._job.members[step])
        return any(kind in _MOVES for kind in kinds)

    def _tools_are_told(self, step: str) -> bool:
        return self._joint(step) is None and (self._reads(step) or not self._marked)


def _away(stands: ToolStands, placed: Placed, at: tuple[float, float]) -> float:
    """How far a place of the picture is from where a tool touches [px]."""
    spots = (placed.px(touch.z_mm, touch.height_mm) for touch in stands.touches)
    return min(((x - at[0]) ** 2 + (y - at[1]) ** 2) ** 0.5 for x, y in spots)
