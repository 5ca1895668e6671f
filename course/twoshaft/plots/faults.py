"""The fault board: what every misbuild shows in every check, and what explains what was seen."""

from __future__ import annotations

from collections.abc import Mapping
from textwrap import fill

from matplotlib.lines import Line2D

from twoshaft.models.faults import Outcome, explain, indistinguishable, next_check, outcome_table
from twoshaft.plots import style
from twoshaft.plots.figure import Picture, legend, new_axes
from twoshaft.units.unit import Unit

_SMALL = style.SMALL_PX * 0.68
_LETTERS = "ABCDEFGHIJKLMNOPQRSTUVWXYZ"


def fault_board(unit: Unit, observed: Mapping[str, Outcome | str] | None = None) -> Picture:
    """Board of single misbuilds and checks; letters of one column tell its outcomes apart.

    Parameters
    ----------
    unit : Unit
    observed : mapping of str to Outcome or str, optional
        What was seen, by check; misbuilds that explain it are marked.
    """
    observed = observed or {}
    table, faults = outcome_table(unit), unit.faults
    rows, columns = faults.misbuilds, faults.checks
    found = explain(unit, observed)
    title = _finding(unit, observed, found)
    height = 1.7 + 0.205 * len(rows)  # a usual board fits a screen of 1280 by 720
    axes = new_axes(title, "", "", inches=(11.5, height))
    board = {}
    for c, check in enumerate(columns):
        letters: dict[str, str] = {}
        for r, misbuild in enumerate(rows):
            outcome = table.outcome((misbuild.id,), check.id)
            if outcome.passes:
                axes.plot(c, r, ".", color=style.QUIET, ms=4)
                continue
            letter = letters.setdefault(outcome.key, _LETTERS[len(letters) % len(_LETTERS)])
            board[r, c] = letter
            seen = _key(observed.get(check.id)) == outcome.key
            axes.plot(
                c, r, "s", ms=11, mec=style.INK, mew=2.4 if seen else 0.8,
                color=style.OKABE_ITO["orange" if seen else "sky"],
            )  # fmt: skip
            axes.text(c, r, letter, ha="center", va="center", color=style.INK, size=_SMALL,
                      weight="bold")  # fmt: skip
    last = len(columns) - 0.4
    for r, misbuild in enumerate(rows):
        if observed and misbuild.id in found.singles:
            chance = found.chances[found.sets.index((misbuild.id,))]
            axes.plot(last, r, "<", color=style.ACCENT, ms=8, clip_on=False)
            axes.text(last + 0.25, r, f"explains it: {chance:.0%}", va="center", color=style.INK,
                      size=_SMALL, weight="bold")  # fmt: skip
        elif all((r, c) not in board for c in range(len(columns))):
            axes.text(last - 0.1, r, "no check shows it", va="center", color=style.QUIET,
                      size=_SMALL)  # fmt: skip
    axes.set_yticks(range(len(rows)), [fill(one.id.replace("-", " "), 34) for one in rows])
    names = [fill(_column(one, observed), 15) for one in columns]
    axes.set_xticks(range(len(columns)), names, rotation=55, ha="left")
    axes.xaxis.tick_top()
    axes.tick_params(length=0, labelsize=_SMALL * 1.05)
    axes.set_xlim(-0.6, last + 2.2)
    axes.set_ylim(len(rows) - 0.4, -0.6)
    for side in ("left", "bottom"):
        axes.spines[side].set_visible(False)
    for r in range(0, len(rows), 2):
        axes.axhspan(r - 0.5, r + 0.5, color=style.INK, alpha=0.04, lw=0)
    legend(axes, handles=_marks(bool(observed)), loc="upper center", ncols=4,
           bbox_to_anchor=(0.45, 0.0))  # fmt: skip
    return Picture(axes.figure, _words(title, unit, observed, found, board))


def _key(outcome: Outcome | str | None) -> str | None:
    return outcome.key if isinstance(outcome, Outcome) else outcome


def _column(check, observed) -> str:
    name = check.id.replace("-", " ")
    return f"{name} (made)" if check.id in observed else name


def _marks(seen: bool) -> list[Line2D]:
    def mark(shape, words, colour, size=10, edge=style.INK):
        return Line2D([], [], ls="", marker=shape, color=colour, mec=edge, ms=size, label=words)

    marks = [
        mark("s", "shows something: equal letters of a column look alike", style.OKABE_ITO["sky"]),
        mark(".", "passes", style.QUIET, 5, style.QUIET),
    ]
    if seen:
        marks.insert(0, mark("s", "shows what was seen", style.OKABE_ITO["orange"]))
        marks.append(mark("<", "explains all that was seen", style.ACCENT, 8, style.ACCENT))
    return marks


def _finding(unit: Unit, observed, found) -> str:
    if observed:
        single, least = found.singles, [one for one in found.least if len(one) == 2]
        if not found.sets:
            return "No assembly fault and no pair explains what was seen: make the checks again."
        if () in found.sets:
            return "Nothing wrong was seen yet."
        pairs = f"{len(least)} pair{'s' if len(least) != 1 else ''}"
        if not single:
            return f"No assembly fault alone explains what was seen; {pairs} would."
        names = (
            f"{len(single)} assembly faults explain"
            if len(single) > 1
            else "One assembly fault explains"
        )
        more = f", and {pairs} of others would too" if least else ""
        return f"{names} what was seen{more}."
    groups = indistinguishable(unit)
    silent = sum(len(group.misbuilds) for group in groups if group.silent)
    alike = [group for group in groups if not group.silent]
    text = f"{silent} of {len(unit.faults.misbuilds)} assembly faults show in no check"
    if alike:
        text += f"; {sum(len(g.misbuilds) for g in alike)} more cannot be told from another"
    return f"{text}."


def _words(title, unit, observed, found, board) -> str:
    said = [title]
    rows, columns = unit.faults.misbuilds, unit.faults.checks
    if observed:
        explaining = ", ".join(one.replace("-", " ") for one in found.singles)
        said += [f"Explained by: {explaining}."] if explaining else []
        ranked = next_check(unit, observed)
        said += [f"Best next check: {ranked[0].check.replace('-', ' ')}."] if ranked else []
        return " ".join(said)
    for r, misbuild in enumerate(rows):
        shown = [columns[c].id.replace("-", " ") for c in range(len(columns)) if (r, c) in board]
        said.append(f"{misbuild.id.replace('-', ' ')}: {', '.join(shown) or 'no check'}.")
    return " ".join(said)
