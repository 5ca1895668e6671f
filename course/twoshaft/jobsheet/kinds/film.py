"""Sealant laid on a face as an answer."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from typing import Any

from twoshaft.errors import AnswerError
from twoshaft.jobsheet.film_entries import entry_words, face_picture, read_entries
from twoshaft.jobsheet.kinds.field import Asker, Field, kind
from twoshaft.models.film import Pass, Work


@kind("film")
@dataclass(frozen=True)
class Film(Field):
    """Sealant laid on a face; the passes are stored as short texts.

    Parameters
    ----------
    work : Work
        The face, what spoils it and the sealant.
    """

    work: Work

    @classmethod
    def asked(cls, on: Asker, name: str, prompt: str, job: Mapping[str, Any]) -> Field:
        """A field for a face of the unit; ``job`` as for ``Work.of``."""
        return cls(name, prompt, Work.of(on.unit, job))

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

    def told(self) -> dict[str, Any]:
        """The face to be drawn."""
        return {"face": face_picture(self.work)}
