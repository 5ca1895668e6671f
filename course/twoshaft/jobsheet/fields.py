"""The kinds of answer a job sheet can hold: what each asks for, and how it is read."""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from dataclasses import dataclass
from typing import Any, ClassVar

from twoshaft.errors import AnswerError
from twoshaft.jobsheet.film_entries import entry_words, read_entries
from twoshaft.jobsheet.measures import named
from twoshaft.jobsheet.numbers import read_quantity, write_quantity
from twoshaft.models.film import Pass, Work
from twoshaft.stored.names import well_named
from twoshaft.units.quantities import Q

Pairs = tuple[tuple[str, str], ...]


def _pairs(pairs: Iterable[Iterable[str]], name: str) -> Pairs:
    tidy = tuple((str(key), str(label)) for key, label in pairs)
    keys = [key for key, _ in tidy]
    if not keys or len(set(keys)) != len(keys):
        raise ValueError(f"field {name!r} needs at least one choice and no key twice")
    return tidy


@dataclass(frozen=True)
class Field:
    """One named answer.

    Parameters
    ----------
    name : str
        Small letters, figures and hyphens; unique on the sheet.
    prompt : str
        The question, as the learner reads it.
    """

    kind: ClassVar[str] = ""
    name: str
    prompt: str

    def __post_init__(self) -> None:
        if not well_named(self.name):
            raise ValueError(f"{self.name!r} is no field name: small letters, figures, hyphens")

    def is_blank(self, stored: Any) -> bool:
        """Whether nothing has been answered."""
        return stored is None or (isinstance(stored, str) and not stored.strip()) or stored == []

    def read(self, stored: Any) -> Any:
        """The stored answer as a value for marking. AnswerError if it cannot be read."""
        raise NotImplementedError

    def store(self, value: Any) -> Any:
        """A value given from code as it is stored. AnswerError if it cannot be an answer."""
        return value

    def shortfall(self, stored: Any) -> str:
        """What keeps the answer from being complete, as a sentence; empty if nothing."""
        if self.is_blank(stored):
            return "not answered yet"
        try:
            self.read(stored)
        except AnswerError as error:
            return error.sentence
        return ""

    def words(self, stored: Any) -> str:
        """The stored answer as a person would say it."""
        return "" if self.is_blank(stored) else str(stored)


@dataclass(frozen=True)
class Number(Field):
    """A number with its unit; the typed text is what is stored.

    Parameters
    ----------
    unit : str
        The unit asked for; any unit of the same kind may be typed. Empty: a plain number.
    of : str
        Kind of quantity where the unit's spelling has several.
    """

    kind: ClassVar[str] = "number"
    unit: str = ""
    of: str = ""

    def __post_init__(self) -> None:
        super().__post_init__()
        named(self.unit, self.of)

    def read(self, stored: Any) -> Q:
        """The quantity, in the unit that was typed."""
        if self.is_blank(stored):
            raise AnswerError("not answered yet")
        if isinstance(stored, int | float) and not isinstance(stored, bool):
            stored = f"{stored!r}"
        return read_quantity(stored, self.unit, self.of)

    def store(self, value: Any) -> str:
        """Text as it is; a quantity as text in the unit asked for."""
        if isinstance(value, Q):
            wanted = named(self.unit, self.of)
            if not value.check(Q(1, wanted.pint).dimensionality):
                raise AnswerError(
                    f"read {value:~P}, which is not {wanted.kind}", mend=f"give it in {wanted.name}"
                )
            return write_quantity(float(value.to(wanted.pint).magnitude), self.unit, self.of)
        if isinstance(value, int | float) and not isinstance(value, bool):
            value = f"{value!r}"
        read_quantity(value, self.unit, self.of)
        return value


@dataclass(frozen=True)
class _Listed(Field):
    """A field whose answers are keys of a given list."""

    def _listed(self) -> Pairs:
        raise NotImplementedError

    def labels(self) -> dict[str, str]:
        """Label of each key."""
        return dict(self._listed())

    def _label(self, key: Any) -> str:
        """A key's label; whatever else was stored, as text."""
        return self.labels().get(key, key) if isinstance(key, str) else str(key)

    def _known(self, keys: Any) -> tuple[str, ...]:
        if not isinstance(keys, list | tuple) or not all(isinstance(key, str) for key in keys):
            raise AnswerError(
                "read something that is not a list of keys", mend="give a list of keys"
            )
        known = self.labels()
        if len(keys) > 2 * len(known) + 8:
            raise AnswerError(f"read {len(keys)} entries for a list of {len(known)}")
        foreign = next((key for key in keys if key not in known), None)
        if foreign is not None:
            raise AnswerError(
                f"read “{foreign[:40]}”, which is not in the list", mend="use the keys of the list"
            )
        return tuple(keys)


@dataclass(frozen=True)
class Choice(_Listed):
    """One of several options; its key is stored."""

    kind: ClassVar[str] = "choice"
    options: Pairs = ()

    def __post_init__(self) -> None:
        super().__post_init__()
        object.__setattr__(self, "options", _pairs(self.options, self.name))

    def _listed(self) -> Pairs:
        return self.options

    def read(self, stored: Any) -> str:
        """The chosen key."""
        if self.is_blank(stored):
            raise AnswerError("not answered yet")
        return self._known([stored])[0]

    def store(self, value: Any) -> str:
        """The key, checked."""
        return self.read(value)

    def words(self, stored: Any) -> str:
        """The chosen label."""
        return "" if self.is_blank(stored) else self._label(stored)


@dataclass(frozen=True)
class Choices(_Listed):
    """Any number of options; their keys are stored in the order of the options."""

    kind: ClassVar[str] = "choices"
    options: Pairs = ()

    def __post_init__(self) -> None:
        super().__post_init__()
        object.__setattr__(self, "options", _pairs(self.options, self.name))

    def _listed(self) -> Pairs:
        return self.options

    def read(self, stored: Any) -> tuple[str, ...]:
        """The chosen keys in the order of the options, none twice."""
        if self.is_blank(stored):
            raise AnswerError("not answered yet")
        chosen = set(self._known(stored))
        return tuple(key for key, _ in self.options if key in chosen)

    def store(self, value: Any) -> list[str]:
        """The keys, checked; an empty list unticks everything."""
        if not isinstance(value, list | tuple | set | frozenset):
            raise AnswerError(
                "read something that is not a list of keys", mend="give a list of keys"
            )
        return list(self.read(sorted(value, key=str))) if value else []

    def words(self, stored: Any) -> str:
        """The chosen labels."""
        if self.is_blank(stored) or not isinstance(stored, list | tuple):
            return ""
        return "; ".join(self._label(key) for key in stored)


@dataclass(frozen=True)
class Order(_Listed):
    """Steps to be put in order; the keys are stored in that order.

    Parameters
    ----------
    steps : pairs of key and label
        In the order shown at the start.
    stages : mapping, optional
        Words for the stage that each key belongs to, to group a long list.
    """

    kind: ClassVar[str] = "order"
    steps: Pairs = ()
    stages: Mapping[str, str] | None = None

    def __post_init__(self) -> None:
        super().__post_init__()
        object.__setattr__(self, "steps", _pairs(self.steps, self.name))

    def _listed(self) -> Pairs:
        return self.steps

    def read(self, stored: Any) -> tuple[str, ...]:
        """The keys in the order given. Steps left out or doubled are for marking to weigh."""
        if self.is_blank(stored):
            raise AnswerError("not answered yet")
        return self._known(stored)

    def store(self, value: Any) -> list[str]:
        """The keys as a list, checked."""
        if isinstance(value, str):
            raise AnswerError("read one text, not a list of steps", mend="give a list of keys")
        return list(self.read(list(value)))

    def shortfall(self, stored: Any) -> str:
        """As for every field, and steps left out or doubled."""
        text = super().shortfall(stored)
        if text:
            return text
        labels, given = self.labels(), list(stored)
        lost = [labels[key] for key in labels if key not in given]
        doubled = [labels[key] for key in labels if given.count(key) > 1]
        if lost:
            return f"{len(lost)} of {len(labels)} steps left out, the first is “{lost[0]}”"
        return f"“{doubled[0]}” stands in the list more than once" if doubled else ""

    def words(self, stored: Any) -> str:
        """The labels, numbered."""
        if self.is_blank(stored) or not isinstance(stored, list | tuple):
            return ""
        return "; ".join(f"{n}. {self._label(key)}" for n, key in enumerate(stored, 1))


@dataclass(frozen=True)
class Film(Field):
    """Sealant laid on a face; the passes are stored as short texts.

    Parameters
    ----------
    work : Work
        The face, what spoils it and the sealant.
    """

    kind: ClassVar[str] = "film"
    work: Work | None = None

    def read(self, stored: Any) -> tuple[Pass, ...]:
        """The passes in the order they were done."""
        if self.is_blank(stored):
            raise AnswerError("not answered yet")
        return read_entries(stored, self.work.face)

    def store(self, value: Any) -> list[str]:
        """Passes, or entries as they are stored, checked; an empty list clears the face."""
        if not isinstance(value, list | tuple):
            raise AnswerError("read something that is not a list of passes")
        entries = [v.entry if isinstance(v, Pass) else v for v in value]
        read_entries(entries, self.work.face)
        return entries

    def words(self, stored: Any) -> str:
        """The passes, numbered."""
        if self.is_blank(stored):
            return ""
        try:
            passes = self.read(stored)
        except AnswerError as error:
            return error.sentence
        said = (entry_words(done, self.work.face) for done in passes)
        return "; ".join(f"{n}. {words}" for n, words in enumerate(said, 1))


def fields_by_name(fields: Iterable[Field]) -> dict[str, Field]:
    """Fields by name. ValueError if a name is used twice."""
    by_name: dict[str, Field] = {}
    for field in fields:
        if field.name in by_name:
            raise ValueError(f"two fields are named {field.name!r}")
        by_name[field.name] = field
    return by_name
