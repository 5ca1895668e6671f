"""The build by stages: each step a cell that fills when it is done."""

from __future__ import annotations

from collections.abc import Mapping
from html import escape

from twoshaft.models.order.snapshot import Snapshot
from twoshaft.models.order.task import OrderTask
from twoshaft.plots import style
from twoshaft.plots.drawing import Drawing, fitted_lines

CELL_STATES: Mapping[str, str] = {
    "done": "done",
    "hidden": "done, out of reach now",
    "ready": "can be done next",
    "waiting": "has to wait",
    "lost": "can no longer be reached",
}


def stage_figure(task: OrderTask, bench: Snapshot) -> str:
    """The unit by stages, each step a cell that fills when it is done.

    Parameters
    ----------
    task : OrderTask
        The task.
    bench : Snapshot
        The bench after some steps.

    Returns
    -------
    str
        SVG. A cell carries the step's number; done is filled, out of reach is crossed out, ready
        has a thick outline, the rest is thin.
    """
    states = cell_states(task, bench)
    title = f"{len(bench.done)} of {len(task.steps)} steps are done, {len(bench.ready)} can be next"
    groups = _by_stage(task)
    told = " ".join(
        f"{name}: {sum(states[s] in ('done', 'hidden') for s in steps)} of {len(steps)} done."
        for name, steps in groups
    )
    per_row, cell, pad = 8, 32, 8
    frame_w = per_row * cell + 2 * pad
    x, y, tallest, wide = 0.0, 8.0, 0.0, 3 * (frame_w + 16)
    drawing = Drawing(wide - 14, 0, title, told)
    for name, steps in groups:
        lines = -(-len(steps) // per_row)
        tall = 32 + lines * cell + pad
        if x + frame_w > wide:
            x, y, tallest = 0.0, y + tallest + 16, 0.0
        done = sum(states[s] in ("done", "hidden") for s in steps)
        drawing.add(
            f'<rect class="tsf-b" x="{x + 0.5:.1f}" y="{y:.1f}" width="{frame_w}" height="{tall}"/>'
            f'<text class="tsf-t" x="{x + pad:.0f}" y="{y + 20:.0f}">'
            f"{escape(fitted_lines(name, 27, 1)[0])} {done}/{len(steps)}</text>"
        )
        for k, step in enumerate(steps):
            at = x + pad + k % per_row * cell, y + 30 + k // per_row * cell
            drawing.add(_cell(*at, task.number[step] + 1, states[step], task.label(step)))
        tallest = max(tallest, tall)
        x += frame_w + 16
    drawing.height = y + tallest + 40
    drawing.add(_cell_legend(drawing.height - 28))
    return drawing.text()


def cell_states(task: OrderTask, bench: Snapshot) -> dict[str, str]:
    """State of each step, one of the keys of ``CELL_STATES``."""
    states = dict.fromkeys(task.steps, "waiting")
    states |= dict.fromkeys(bench.ready, "ready")
    states |= {step: "lost" for step, _ in bench.lost_reach}
    states |= dict.fromkeys(bench.done, "done")
    states |= {step: "hidden" for step, _ in bench.hidden}
    return states


def _by_stage(task: OrderTask) -> list[tuple[str, list[str]]]:
    stage_of = {operation.id: operation.stage for operation in task.unit.operations}
    groups: dict[str, list[str]] = {stage.id: [] for stage in task.unit.stages}
    for step, members in zip(task.steps, task.members, strict=True):
        groups[stage_of[members[0]]].append(step)
    return [(stage.name, groups[stage.id]) for stage in task.unit.stages if groups[stage.id]]


def stage_names(task: OrderTask) -> dict[str, str]:
    """Name of the stage of each step."""
    return {step: name for name, steps in _by_stage(task) for step in steps}


def _cell(x: float, y: float, number: int | str, state: str, label: str = "") -> str:
    ink, paper = style.INK_NOW, style.PAPER_NOW
    filled = state in ("done", "hidden")
    fill = ink if filled else paper
    text = paper if filled else ink
    stroke = 3 if state == "ready" else 1
    dashes = ' stroke-dasharray="3 3"' if state == "waiting" else ""
    cross = ""
    if state in ("hidden", "lost"):
        cross = (
            f'<path d="M{x + 2:.0f},{y + 26:.0f} l24,-24" style="stroke:{text};stroke-width:1.5"/>'
        )
    return (
        f"<g><title>{escape(label)}: {CELL_STATES[state]}</title>"
        f'<rect x="{x + 2:.0f}" y="{y + 2:.0f}" width="24" height="24"{dashes} '
        f'style="fill:{fill};stroke:{ink};stroke-width:{stroke}"/>'
        f'<text class="tsf-t" text-anchor="middle" x="{x + 14:.0f}" y="{y + 18.5:.0f}" '
        f'style="fill:{text}">{number}</text>{cross}</g>'
    )


def _cell_legend(y: float) -> str:
    parts, x = [], 0.0
    for state, words in CELL_STATES.items():
        parts.append(_cell(x, y, "", state, words))
        parts.append(f'<text class="tsf-t" x="{x + 34:.0f}" y="{y + 18.5:.0f}">{words}</text>')
        x += 52 + 7.0 * len(words)
    return "".join(parts)
