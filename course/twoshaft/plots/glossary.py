"""The glossary as it is read: an index of all terms, and the terms of a group."""

from __future__ import annotations

import html
from collections.abc import Iterable
from dataclasses import dataclass

from twoshaft.glossary import Group, slug
from twoshaft.plots.style import css_variables

_CSS = """
.twoshaft dl.terms { font: var(--ts-text) var(--ts-font); color: var(--ts-ink);
  max-width: 70ch; margin: var(--ts-grid) 0; }
.twoshaft dl.terms dt { font-weight: 600; margin-top: var(--ts-grid); }
.twoshaft dl.terms dt, .twoshaft dl.terms dd { float: none; width: auto; }
.twoshaft dl.terms dd { margin: 0 0 0 16px; }
.twoshaft dl.terms .where { font-size: var(--ts-small); }
.twoshaft p.index { font: var(--ts-text) var(--ts-font); color: var(--ts-ink); max-width: 70ch;
  margin: 4px 0; }
.twoshaft p.index a { color: var(--ts-accent); white-space: nowrap; }
"""


@dataclass(frozen=True)
class Page:
    """Part of the glossary, with the same as plain text."""

    body: str
    text: str

    def _repr_html_(self) -> str:
        return f'<style>{css_variables()}{_CSS}</style><div class="twoshaft">{self.body}</div>'

    def __repr__(self) -> str:
        return self.text


def term_index(groups: Iterable[Group]) -> Page:
    """All terms and the other words for them by the alphabet, each a link to its place."""
    found = sorted(
        (word, slug(term.term))
        for group in groups
        for term in group.terms
        for word in (term.term, *term.also)
    )
    lines: dict[str, list[tuple[str, str]]] = {}
    for word, at in found:
        lines.setdefault(word[0].upper(), []).append((word, at))
    body = "".join(
        f'<p class="index"><b>{letter}</b> '
        + ", ".join(f'<a href="#term-{at}">{html.escape(word)}</a>' for word, at in words)
        + "</p>"
        for letter, words in lines.items()
    )
    text = "\n".join(f"{k}: {', '.join(word for word, _ in words)}" for k, words in lines.items())
    return Page(body, text)


def term_list(group: Group) -> Page:
    """The terms of a group with their meaning, and the module in which each is met first."""
    body, text = [], []
    for term in sorted(group.terms, key=lambda term: term.term):
        also = f" (also: {', '.join(term.also)})" if term.also else ""
        where = f"first in {term.module.replace('-', ' ').capitalize()}"
        body.append(
            f'<dt id="term-{slug(term.term)}">{html.escape(term.term + also)}</dt>'
            f'<dd>{html.escape(term.says)} <span class="where">({where})</span></dd>'
        )
        text.append(f"{term.term}{also}: {term.says} ({where})")
    return Page(f'<dl class="terms">{"".join(body)}</dl>', "\n".join(text))
