"""The whole build: the build record as a page."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from html import escape
from typing import Any

HEADINGS = (
    ("readings", "Readings", "what was read", "value"),
    ("shims", "Shims chosen", "support", "total"),
    ("torques", "Tightened", "group", "threads, wrench, setting, sequence"),
    ("films", "Sealant", "face", "laid"),
    ("ways", "Way round", "step", "what faces which way"),
    ("drivers", "Driver", "step", "where it pressed"),
    ("proofs", "Proof by hand", "of", "moves"),
    ("verdicts", "Checks", "check", "found"),
    ("taken_out", "Taken out again", "step", "with it"),
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
    if times := data["misplaced"]:
        said = f"{times} time{'s' * (times > 1)}"
        lists.append(f"<p><b>Put at a wrong place:</b> {said}.</p>")
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
