"""The rules of an order as a picture and as sentences.

A kind of rule is told by a word or letter and by the line, never by colour alone.
"""

from __future__ import annotations

from dataclasses import dataclass
from html import escape
from itertools import pairwise

from twoshaft.models.order.task import OrderTask, Reason
from twoshaft.plots.drawing import LINES, SHORT, Drawing, box, fitted_lines, word
from twoshaft.plots.rule_layout import rule_layout
from twoshaft.units.sections.order import RuleKind

NAMED_UP_TO = 14
"""Up to this many steps the picture of the rules carries the steps' names."""


def rule_figure(task: OrderTask, focus: str | None = None, *, heading: bool = True) -> str:
    """The rules as a picture: all of them in layers, or those around one step.

    Parameters
    ----------
    task : OrderTask
        The task.
    focus : str, optional
        A step id: draw what must come directly before and after it, with names.
    heading : bool
        Whether the finding is written above the picture; it is its title in any case.

    Returns
    -------
    str
        SVG with a title that states the finding, and a text alternative.
    """
    return _overview(task, heading) if focus is None else _around(task, focus, heading)


def rule_finding(task: OrderTask) -> str:
    """What the picture of the rules shows, as a sentence."""
    layout = rule_layout(task)
    free = sum(1 for i in range(len(task.steps)) if not task.before[i] and not task.after[i])
    first = sum(1 for mask in task.before if not mask)
    text = (
        f"{len(task.steps)} steps, {len(layout.edges)} rules drawn: the longest chain has "
        f"{len(layout.layers)} steps, and {first} can be done first."
    )
    return text + (f" {free} are bound by no rule here." if free else "")


def _overview(task: OrderTask, heading: bool) -> str:
    layout = rule_layout(task)
    named = len(task.steps) <= NAMED_UP_TO
    box_w, box_h, step_x, step_y = (168, 58, 224, 70) if named else (30, 22, 54, 30)
    left, top = 16, 48 if heading else 16
    title = rule_finding(task)
    finding = " ".join(f"{i + 1} {task.label(step)}." for i, step in enumerate(task.steps))
    wide = max(left * 2 + (len(layout.layers) - 1) * step_x + box_w, 720)
    drawing = Drawing(wide, top + layout.rows * step_y + 48, title, finding)
    if heading:
        drawing.add(f'<text class="tsf-h" x="{left}" y="24">{escape(title)}</text>')

    def at(depth: float, row: float) -> tuple[float, float]:
        return left + depth * step_x, top + row * step_y

    for i, j, reason in layout.edges:
        points = [at(*point) for point in layout.routes[i, j]]
        drawing.add(_edge(points, box_w, box_h, reason.kind, f"{i}-{j}", label="middle"))
    for depth, rank in enumerate(layout.layers):
        for i in rank:
            x, y = at(depth, layout.height[i])
            lines = (
                fitted_lines(f"{i + 1} {task.label(task.steps[i])}", 23, 3)
                if named
                else [str(i + 1)]
            )
            drawing.add(
                f'<g class="tsf-step" data-step="{i}"><title>{escape(task.label(task.steps[i]))}'
                f"</title>{box(x, y, box_w, box_h, lines)}</g>"
            )
    drawing.add(_legend(left, drawing.height - 20))
    return drawing.text()


def _legend(x: float, y: float) -> str:
    parts = []
    for kind, line in LINES.items():
        words = f"{line.letter}  {line.words}" if line.letter else line.words
        parts.append(
            f'<path class="tsf-e tsf-{kind.value}" d="M{x:.0f},{y:.0f} h36"/>'
            f'<text class="tsf-t" x="{x + 44:.0f}" y="{y + 4.5:.0f}">{words}</text>'
        )
        x += 64 + 7.2 * len(words)
    return "".join(parts)


@dataclass(frozen=True)
class _Tie:
    """A neighbour of a step: its name, and the rule between."""

    step: str
    label: str
    reason: Reason


def _ties(task: OrderTask, step: str) -> tuple[list[_Tie], list[_Tie]]:
    i = task.number[step]
    before = [_Tie(task.steps[b.earlier], task.label(task.steps[b.earlier]), b.reason)
              for b in task.bonds if b.later == i]  # fmt: skip
    after = [_Tie(task.steps[b.later], task.label(task.steps[b.later]), b.reason)
             for b in task.bonds if b.earlier == i]  # fmt: skip
    for choice in task.choices:
        reason = choice.reason
        if choice.step == i and not choice.givers and reason.earlier:
            names = " or ".join(task.label(k) for k in reason.earlier)
            before.append(_Tie(reason.earlier[0], f"one of: {names}", reason))
        elif step in reason.earlier and not choice.givers:
            after.append(
                _Tie(reason.later, f"{task.label(reason.later)} (this or another)", reason)
            )
    return before, after


def rule_sentences(task: OrderTask, focus: str) -> list[str]:
    """The rules around a step, each as a sentence.

    Parameters
    ----------
    task : OrderTask
        The task.
    focus : str
        A step id.

    Returns
    -------
    list of str
        What comes before it, then what comes after it, then what it must not meet.
    """
    before, after = _ties(task, focus)
    told = [f"Before it: {_tie_words(tie)}" for tie in before]
    told += [f"After it: {_tie_words(tie)}" for tie in after]
    i = task.number[focus]
    told += [
        f"Its place among other steps: {_sentence(choice.reason.text)}"
        for choice in task.choices
        if choice.step == i and choice.givers
    ]
    return told or ["No rule binds this step directly here."]


def _tie_words(tie: _Tie) -> str:
    return f"{tie.label} ({SHORT[tie.reason.kind]}). {_sentence(tie.reason.text)}"


def _sentence(text: str) -> str:
    return text if text.endswith((".", "?")) else f"{text}."


def _around(task: OrderTask, focus: str, heading: bool) -> str:
    before, after = _ties(task, focus)
    wide, gap, box_h, row = 224, 116, 54, 62
    rows = max(len(before), len(after), 1)
    top, left = 60 if heading else 32, 16
    title = f"{task.label(focus)}: {len(before)} before it, {len(after)} after it"
    drawing = Drawing(
        2 * left + 3 * wide + 2 * gap,
        top + rows * row + 16,
        title,
        " ".join(rule_sentences(task, focus)),
    )
    if heading:
        drawing.add(f'<text class="tsf-h" x="{left}" y="22">{escape(title)}</text>')
    middle = top + rows * row / 2 - row / 2
    x = [left, left + wide + gap, left + 2 * (wide + gap)]
    for at, words in zip(x, ("directly before", "this step", "directly after"), strict=True):
        drawing.add(word(at + wide / 2, top - 16, words))
    for side, ties in ((0, before), (2, after)):
        start = top + (rows - len(ties)) * row / 2
        for k, tie in enumerate(ties):
            y = start + k * row
            ends = [(x[0], y), (x[1], middle)] if side == 0 else [(x[1], middle), (x[2], y)]
            near = "first" if side == 0 else "last"
            kind = tie.reason.kind
            drawing.add(_edge(ends, wide, box_h, kind, f"{side}-{k}", label=near))
            drawing.add(
                f'<g class="tsf-step" data-step="{escape(tie.step)}">'
                f"{box(x[side], y, wide, box_h, fitted_lines(tie.label, 32, 3))}</g>"
            )
        if not ties:
            drawing.add(word(x[side] + wide / 2, middle + box_h / 2, "nothing"))
    drawing.add(box(x[1], middle, wide, box_h, fitted_lines(task.label(focus), 32, 3), "tsf-f"))
    return drawing.text()


def _edge(points, box_w: float, box_h: float, kind: RuleKind, name: str, *, label: str) -> str:
    """A line through points (upper left corners of boxes), its head, and its word or letter."""
    line = [(x + box_w / 2, y + box_h / 2) for x, y in points]
    line[0] = (points[0][0] + box_w, points[0][1] + box_h / 2)
    line[-1] = (points[-1][0] - 5, points[-1][1] + box_h / 2)
    path = f"M{line[0][0]:.1f},{line[0][1]:.1f}"
    for (x0, y0), (x1, y1) in pairwise(line):
        bend = (x0 + x1) / 2
        path += f" C{bend:.1f},{y0:.1f} {bend:.1f},{y1:.1f} {x1:.1f},{y1:.1f}"
    (x0, y0), (x, y) = line[-2:]
    spot = {"middle": ((x0 + x) / 2, (y0 + y) / 2), "first": (x0 + 34, y0), "last": (x - 34, y)}
    text = LINES[kind].letter if label == "middle" else SHORT[kind]
    mark = word(*spot[label], text) if text else ""
    return (
        f'<g class="tsf-rule" data-rule="{name}"><path class="tsf-e tsf-{kind.value}" d="{path}"/>'
        f'<path class="tsf-{kind.value}-head" d="M{x + 5:.1f},{y:.1f} l-7,-4 v8 z"/>{mark}</g>'
    )
