"""What a check shows: signs in plain words, each with a key that can be stored and compared."""

from __future__ import annotations

from dataclasses import dataclass

PASSES = "as it should be"


@dataclass(frozen=True, order=True)
class Sign:
    """One thing that is not as it should be.

    Attributes
    ----------
    key : str
        Lower-case words joined by hyphens.
    words : str
        The same as part of a sentence.

    Examples
    --------
    >>> Outcome.of(Sign("not-held-third", "nothing holds third once it is in")).sentence
    'Nothing holds third once it is in.'
    """

    key: str
    words: str


@dataclass(frozen=True)
class Outcome:
    """What one check shows.

    Attributes
    ----------
    signs : tuple of Sign
        Sorted by key; none where everything is as it should be.

    Examples
    --------
    >>> Outcome.of().key, Outcome.of().passes
    ('as it should be', True)
    >>> Outcome.of(Sign("b", "second"), Sign("a", "first")).key
    'a + b'
    """

    signs: tuple[Sign, ...] = ()

    @classmethod
    def of(cls, *signs: Sign) -> Outcome:
        """Gather signs, each once."""
        return cls(tuple(sorted(set(signs))))

    @property
    def passes(self) -> bool:
        """True where nothing is wrong."""
        return not self.signs

    @property
    def key(self) -> str:
        """The signs' keys joined by `` + ``; ``as it should be`` where there is none."""
        return " + ".join(sign.key for sign in self.signs) or PASSES

    @property
    def sentence(self) -> str:
        """The finding in one sentence."""
        words = "; ".join(sign.words for sign in self.signs) or PASSES
        return f"{words[:1].upper()}{words[1:]}."
