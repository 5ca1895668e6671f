"""The whole build: the bench drawn by stages, and the build record as a page."""

from __future__ import annotations

from collections.abc import Collection, Mapping, Sequence
from html import escape
from typing import Any

from twoshaft.models.order import OrderTask
from twoshaft.plots import style
from twoshaft.plots.drawing import Drawing, fitted_lines
from twoshaft.plots.stages import stage_names

PER_ROW, CELL, PAD, HEAD = 10, 24, 8, 26
ACROSS = 4
HEADINGS = (
    ("readings", "Readings", "what was read", "value"),
    ("shims", "Shims chosen", "support", "total"),
    ("torques", "Tightened", "group", "threads, wrench, setting, sequence"),
    ("films", "Sealant", "face", "laid"),
    ("ways", "Way round", "step", "what faces which way"),
    ("proofs", "Proof by hand", "of", "moves"),
    ("verdicts", "Checks", "check", "found"),
    ("taken_out", "Taken out again", "step", "with it"),
)


def bench_figure(
    task: OrderTask,
    done: Sequence[str],
    open_to: Collection[str] | None,
    steps: Sequence[str] | None = None,
) -> str:
    """The bench by stages: a filled cell is done, an empty one open.

    Parameters
    ----------
    task : OrderTask
    done : sequence of str
        Steps that stand.
    open_to : collection of str or None
        Steps that can be done next, drawn with a thick outline; None where that is not told.
    steps : sequence of str, optional
        All steps in the order in which they are drawn; that of the unit file if absent.

    Returns
    -------
    str
        SVG with a title and the same in words.
    """
    names, stand = stage_names(task), set(done)
    stages: dict[str, list[str]] = {}
    for step in task.steps if steps is None else steps:
        stages.setdefault(names[step], []).append(step)
    told = " ".join(f"{n}: {len(stand & set(s))} of {len(s)} done." for n, s in stages.items())
    title = f"{len(stand)} of {len(task.steps)} steps stand"
    wide, x, y, tallest = ACROSS * (PER_ROW * CELL + 2 * PAD + 8), 0.0, 2.0, 0.0
    drawing = Drawing(wide, 0, title, told)
    frame = PER_ROW * CELL + 2 * PAD
    for name, mine in stages.items():
        tall = HEAD + -(-len(mine) // PER_ROW) * CELL + PAD
        if x + frame > wide:
            x, y, tallest = 0.0, y + tallest + PAD, 0.0
        count = f"{len(stand & set(mine))}/{len(mine)}"
        drawing.add(
            f'<rect class="tsf-b" x="{x + 1:.0f}" y="{y:.0f}" width="{frame}" height="{tall}"/>'
            f'<text class="tsf-t" x="{x + PAD:.0f}" y="{y + 18:.0f}">'
            f"{escape(fitted_lines(name, 30, 1)[0])} {count}</text>"
        )
        for k, step in enumerate(mine):
            at = x + PAD + k % PER_ROW * CELL, y + HEAD + k // PER_ROW * CELL
            ready = open_to is not None and step in open_to
            drawing.add(_cell(*at, step in stand, ready, task.label(step)))
        tallest, x = max(tallest, tall), x + frame + PAD
    drawing.height = y + tallest + 4
    return drawing.text()


def _cell(x: float, y: float, done: bool, ready: bool, label: str) -> str:
    ink, paper = style.INK_NOW, style.PAPER_NOW
    word = "done" if done else "can be done next" if ready else "open"
    mark = f'<path d="M{x + 5:.0f},{y + 10:.0f} l4,5 l7,-9" style="fill:none;stroke:{paper};'
    mark = f'{mark}stroke-width:2"/>' if done else ""
    return (
        f"<g><title>{escape(label)}: {word}</title>"
        f'<rect x="{x + 1:.0f}" y="{y + 1:.0f}" width="{CELL - 6}" height="{CELL - 6}" '
        f'style="fill:{ink if done else paper};stroke:{ink};stroke-width:{3 if ready else 1}"/>'
        f"{mark}</g>"
    )


def record_html(data: Mapping[str, Any]) -> str:
    """A build record as HTML without script or style sheet; signatures are left blank.

    Parameters
    ----------
    data : mapping
        As ``models.wholebuild.build_record`` makes it.
    """
    head = (
        f"<p><b>Build record: {escape(data['unit'])}</b>, {escape(data['college'])}. "
        f"{data['done']} of {data['steps']} steps stand, {data['minutes']:g} minutes at the "
        f"bench. {escape(data['invented'])}</p>"
    )
    tables = [_table(title, (a, b), data[key]) for key, title, a, b in HEADINGS if data[key]]
    lists = [
        f"<p><b>{title}:</b> {escape(', '.join(data[key]))}.</p>"
        for key, title in (("consumables", "Used up"), ("new_parts", "New parts"))
        if data[key]
    ]
    order = "".join(f"<li>{escape(label)}</li>" for label in data["order"])
    steps = f"<details><summary>Steps in turn</summary><ol>{order}</ol></details>" if order else ""
    blanks = "".join(
        f'<tr><th scope="row">{escape(who)}</th><td class="ts-blank">{escape(name)}</td>'
        '<td class="ts-blank"></td></tr>'
        for who, name in data["signatures"]
    )
    signed = (
        '<table><caption>Signatures</caption><tr><td></td><th scope="col">name</th>'
        f'<th scope="col">date</th></tr>{blanks}</table>'
    )
    body = "".join([head, *tables, *lists, steps, signed])
    return f'<div class="twoshaft"><div class="ts-record">{body}</div></div>'


def _table(title: str, heads: Sequence[str], rows: Sequence[Sequence[str]]) -> str:
    top = "".join(f'<th scope="col">{escape(head)}</th>' for head in heads)
    body = "".join(
        f'<tr><th scope="row">{escape(str(first))}</th>'
        + "".join(f"<td>{escape(str(cell))}</td>" for cell in others)
        + "</tr>"
        for first, *others in rows
    )
    return f"<table><caption>{escape(title)}</caption><tr>{top}</tr>{body}</table>"
