"""What two states of a unit differ in, in words: by operation, by rule, by figure."""

from __future__ import annotations

from collections.abc import Callable, Iterator
from dataclasses import dataclass
from typing import Any

from twoshaft.units import Unit

ABSENT = "not there"
_LONGEST = 160
_UNITS = {
    "mm": "mm", "um": "µm", "deg": "°", "kn": "kN", "nm": "N·m", "min": "min", "c": "°C",
    "mpa": "MPa", "s": "s", "n": "N", "pct": "%",
}  # fmt: skip
_ABOUT = {"operations": "operation", "rules": "rule", "together": "goes in as one"}


@dataclass(frozen=True)
class UnitChange:
    """One thing that differs.

    Attributes
    ----------
    about : str
        operation, rule, or the section that it stands in.
    what : str
        Which, by its name, and what of it.
    before, after : str
        In words; ``ABSENT`` where it was not, or is no more.
    """

    about: str
    what: str
    before: str
    after: str


def unit_changes(old: Unit, new: Unit) -> tuple[UnitChange, ...]:
    """All that differs between two states of a unit, in the order of the file.

    An entry that is new or gone is one line; of another, each member that differs is.
    """
    names = _names(old) | _names(new)

    def said(value: Any) -> str:
        return _said(value, names)

    found: list[UnitChange] = []
    before, after = old.model_dump(mode="json"), new.model_dump(mode="json")
    for section in before:
        name = section.removesuffix("_if_any").replace("_", " ")
        about = _ABOUT.get(section, name)
        for path, was, now in _differences(before[section], after[section], (), said):
            found.append(UnitChange(about, ", ".join(path) or "the whole section", was, now))
    return tuple(found)


def _differences(
    was: Any, now: Any, path: tuple[str, ...], said: Callable[[Any], str]
) -> Iterator[tuple[tuple[str, ...], str, str]]:
    if was == now:
        return
    key = path[-1] if path else ""
    if isinstance(was, dict) and isinstance(now, dict):
        for name in dict.fromkeys((*was, *now)):
            if name != "id":
                yield from _differences(
                    was.get(name), now.get(name), (*path, name.replace("_", " ")), said
                )
    elif _has_ids(was) and _has_ids(now):
        olds, news = ({one["id"]: one for one in some} for some in (was, now))
        for id in dict.fromkeys((*olds, *news)):
            entry = (*path, said(id))
            if id not in news or id not in olds:
                was_said, now_said = (
                    said(some[id]) if id in some else ABSENT for some in (olds, news)
                )
                yield entry, was_said, now_said
            else:
                yield from _differences(olds[id], news[id], entry, said)
        if [id for id in olds if id in news] != [id for id in news if id in olds]:
            yield (*path, "the order in the file"), "as it was", "another"
    else:
        was_said, now_said = (_with_unit(said(some), some, key) for some in (was, now))
        yield path, was_said, now_said


def _has_ids(some: Any) -> bool:
    return isinstance(some, list) and all(isinstance(one, dict) and "id" in one for one in some)


def _with_unit(text: str, value: Any, key: str) -> str:
    unit = _UNITS.get(key.rpartition(" ")[2], "min" if key.startswith("minutes") else "")
    figure = isinstance(value, int | float) and not isinstance(value, bool)
    return f"{text} {unit}" if figure and unit else text


def _names(unit: Unit) -> dict[str, str]:
    """What ids are called."""
    found: dict[str, str] = {}

    def look(value: Any) -> None:
        if isinstance(value, dict):
            if isinstance(value.get("id"), str):
                found.setdefault(value["id"], value.get("name") or value["id"].replace("-", " "))
            for one in value.values():
                look(one)
        elif isinstance(value, list):
            for one in value:
                look(one)

    look(unit.model_dump(mode="json"))
    return found


def _said(value: Any, names: dict[str, str]) -> str:
    """A value in words, as long as a cell of a table can be."""
    if value is None or value == [] or value == "":
        return "none"
    if isinstance(value, bool):
        text = "yes" if value else "no"
    elif isinstance(value, str):
        text = f"“{names[value]}”" if value in names else value
    elif isinstance(value, int | float):
        text = f"{value:g}"
    elif isinstance(value, list):
        text = ", ".join(_said(one, names) for one in value)
    elif value.get("kind") and value.get("reason") and value.get("later"):  # a rule
        first = value.get("earlier") or value.get("any_of") or value.get("not_during")
        text = f"{_said(first, names)} before {_said(value['later'], names)}: {value['reason']}"
    elif value.get("name"):
        text = str(value["name"])
    else:
        text = "; ".join(
            f"{key.replace('_', ' ')} {_said(one, names)}"
            for key, one in value.items()
            if one not in (None, [], "") and key != "id"
        )
    return text if len(text) <= _LONGEST else f"{text[: _LONGEST - 2]} …"
