"""How rigs say what an order brings about: one shape and one word for each state."""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterable

from twoshaft.models.order import Consequence, Event, OrderTask, Reason, Replay
from twoshaft.models.order.snapshot import Waiting

SHAPES = {"blocked": "■", "buried": "▼", "harmed": "◆", "blinded": "◇", "buries": "▽"}
WORDS = {
    "blocked": "Cannot be done here.",
    "buried": "Out of reach here.",
    "harmed": "Does harm.",
    "blinded": "Makes a check worthless.",
    "buries": "Buries a later step.",
}
HURTS = "Can hurt somebody."
COUNTED = {
    "blocked": "cannot be done where {it} stand{s}",
    "buried": "{is_} out of reach",
    "harmed": "do{es} harm",
    "blinded": "make{s} a check worthless",
}
_ONE = {"it": "it", "s": "s", "es": "es", "is_": "is"}
_MORE = {"it": "they", "s": "", "es": "", "is_": "are"}
STATE_OF = {"cannot": "blocked", "buries": "buries", "harms": "harmed", "blinds": "blinded"}


def sentence(text: str) -> str:
    """A text that ends like a sentence."""
    return text if text.endswith((".", "?")) else f"{text}."


def named(task: OrderTask, steps: Iterable[str], *, most: int = 3, last: str = "and") -> str:
    """Names of steps in a sentence, cut short after a few."""
    names = [f"“{task.label(step)}”" for step in steps]
    if len(names) > most:
        names = [*names[:most], f"{len(names) - most} more"]
    return names[0] if len(names) == 1 else f"{', '.join(names[:-1])} {last} {names[-1]}"


def why(task: OrderTask, reason: Reason, state: str) -> str:
    """A rule behind a state, as one or two sentences."""
    if state == "buried":
        return f"“{task.label(reason.later)}” is in the way. {sentence(reason.text)}"
    if not reason.earlier:
        return sentence(reason.text)
    first = named(task, reason.earlier, last="or")
    return f"Needs {first} first. {sentence(reason.text)}"


def remarks(task: OrderTask, found: Consequence) -> list[dict[str, str]]:
    """What to write beside a step, worst first; nothing where all is well."""
    notes = []
    for reason in found.reasons:
        over = reason.later != found.step
        state = "buried" if over else STATE_OF[reason.kind.value]
        notes.append(
            {
                "kind": state,
                "shape": SHAPES[state],
                "word": HURTS if state == "harmed" and reason.safety else WORDS[state],
                "text": why(task, reason, state),
            }
        )
    return notes


def verdict(found: Iterable[Consequence]) -> str:
    """An order in a sentence: how many steps are in trouble, and how."""
    found = list(found)
    counts = Counter(one.state for one in found if one.state != "ok")
    total = sum(counts.values())
    if not total:
        return f"This order works: all {len(found)} steps can be done where they stand."
    told = []
    for state, words in COUNTED.items():
        if number := counts[state]:
            told.append(f"{number} {words.format(**(_ONE if number == 1 else _MORE))}")
    stand = "step is" if total == 1 else "steps are"
    return f"{total} of {len(found)} {stand} in trouble: {'; '.join(told)}."


def minutes(value: float) -> str:
    """Minutes as people say them.

    >>> minutes(1.0), minutes(12.5), minutes(90.0)
    ('1 minute', '12.5 minutes', '90 minutes')
    """
    return f"{value:g} minute{'' if value == 1 else 's'}"


def hours(value: float) -> str:
    """A long time in hours and minutes.

    >>> hours(1440.0), hours(1346.0), hours(95.0)
    ('24 h', '22 h 26 min', '1 h 35 min')
    """
    whole, rest = divmod(round(value), 60)
    said = f"{whole} h {rest} min" if rest else f"{whole} h"
    return said if whole else f"{rest} min"


def wait_line(task: OrderTask, wait: Waiting) -> str:
    """A wait that runs, or that the bench stood still for, in a sentence."""
    step = f"“{task.label(wait.until)}”"
    if wait.stood is None:
        return f"{wait.name}: {hours(wait.run)} of {hours(wait.least)} have run before {step}."
    if wait.stood:
        return f"{wait.name}: {hours(wait.stood)} of waiting before {step}."
    return f"{wait.name}: {hours(wait.least)} had run before {step}."


def counted(number: int, one: str, more: str = "") -> str:
    """A number of things as people say it.

    >>> counted(1, "step"), counted(3, "step"), counted(2, "pass", "passes")
    ('1 step', '3 steps', '2 passes')
    """
    return f"{number} {one if number == 1 else more or f'{one}s'}"


def part_names(task: OrderTask, lost: Iterable[str]) -> str:
    """Names of parts and consumables in a list."""
    names = {part.id: part.name for part in task.unit.parts}
    names |= {one.id: one.name for one in task.unit.consumables}
    return ", ".join(names[one] for one in lost)


def cost(task: OrderTask, built: Replay) -> str:
    """What an order costs at the bench, in a sentence or two."""
    planned = f"{minutes(built.minutes_planned)} planned"
    if stood := sum(one.minutes for one in built.waited):
        planned += f" and {hours(stood)} of waiting"
    if not built.events:
        return f"At the bench it takes the {planned}."
    told = [f"At the bench it costs {minutes(built.minutes_extra)} on top of the {planned}"]
    if built.parts_lost:
        told.append(f"and these parts: {part_names(task, built.parts_lost)}")
    late = [clock_words(task, event) for event in built.events if event.clock]
    return " ".join([sentence(" ".join(told)), *late])


def clock_words(task: OrderTask, event: Event) -> str:
    """A clock that ran out, in a sentence."""
    clock = next(clock for clock in task.clocks if clock.id == event.clock)
    return f"Too late: {clock.name} ({minutes(clock.minutes)} allowed). {sentence(clock.text)}"
