"""What choices and several choices share: keys that are right."""

from __future__ import annotations

from collections.abc import Iterable
from typing import Any

from twoshaft_grader.marking.kinds.judge import Judge, Reference, Slip, judge


def key_set(value: str | Iterable[str]) -> frozenset[str]:
    """One key, or several, as a set.

    Examples
    --------
    >>> key_set("oil") == key_set(["oil"]) == frozenset({"oil"})
    True
    """
    return frozenset({value} if isinstance(value, str) else value)


def right_keys(reference: Reference) -> frozenset[str]:
    """The keys that a choice accepts, or that several choices ask for."""
    return key_set(reference.value)


class KeysJudge(Judge):
    """Judges answers whose reference is one key or a set of keys."""

    wanted = "keys of its options"

    def accepts(self, asked: Any, value: Any) -> bool:
        """Whether there are keys, all of them options."""
        keys = key_set(value)
        return bool(keys) and keys <= set(asked.labels())

    def told(self, asked: Any, reference: Reference, id: str) -> bool:
        """Whether a sentence says why an option is wrong."""
        judged = judge(asked, reference, id)
        return judged.slip == "listed" and bool(judged.sentences[0])

    def unexplained(self, asked: Any, reference: Reference) -> Iterable[str]:
        """Wrong options without a sentence, and sentences without an option."""
        offered, name = set(asked.labels()), asked.name
        wrong = sorted(offered - right_keys(reference))
        if bare := [id for id in wrong if not self.told(asked, reference, id)]:
            yield f"nothing says why these options of {name} are wrong: {', '.join(bare)}."
        named = {slip.value for slip in reference.slips if isinstance(slip.value, str)}
        if stray := sorted(named - offered):
            yield f"slips of {name} name what it does not offer: {', '.join(stray)}."

    def is_slip(self, reference: Reference, slip: Slip, value: Any) -> bool:
        """A key, or one of several."""
        return value == slip.value if isinstance(slip.value, str) else value in slip.value

    def carried(self, value: Any, own: Any) -> Any:
        """The learner's own key or keys, as the reference has them: one, or a set."""
        if isinstance(value, set | frozenset | list):
            return type(value)([own] if isinstance(own, str) else own)
        return own
