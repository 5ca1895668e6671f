"""What fields share whose answers are keys of a list."""

from __future__ import annotations

from abc import abstractmethod
from collections.abc import Iterable
from dataclasses import dataclass
from typing import Any

from twoshaft.errors import AnswerError
from twoshaft.jobsheet.kinds.field import Field, Pairs


def tidy_pairs(pairs: Iterable[Iterable[str]], name: str) -> Pairs:
    """Pairs of key and label as tuples. ValueError if there are none, or a key comes twice."""
    tidy = tuple((str(key), str(label)) for key, label in pairs)
    keys = [key for key, _ in tidy]
    if not keys or len(set(keys)) != len(keys):
        raise ValueError(f"field {name!r} needs at least one choice and no key twice")
    return tidy


@dataclass(frozen=True)
class Listed(Field):
    """A field whose answers are keys of a given list."""

    @abstractmethod
    def listed(self) -> Pairs:
        """The list, as pairs of key and label."""

    def labels(self) -> dict[str, str]:
        """Label of each key."""
        return dict(self.listed())

    def label(self, key: Any) -> str:
        """A key's label; whatever else was stored, as text."""
        return self.labels().get(key, key) if isinstance(key, str) else str(key)

    def known(self, keys: Any) -> tuple[str, ...]:
        """Stored keys. AnswerError if they are no list, too many, or not in the list."""
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
class Optioned(Listed):
    """A field with options to tick."""

    options: Pairs = ()

    def __post_init__(self) -> None:
        super().__post_init__()
        object.__setattr__(self, "options", tidy_pairs(self.options, self.name))

    def listed(self) -> Pairs:
        """The options."""
        return self.options

    def told(self) -> dict[str, Any]:
        """The options."""
        return {"options": [list(pair) for pair in self.options]}
