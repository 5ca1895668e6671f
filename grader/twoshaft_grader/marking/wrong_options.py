"""Why each wrong option is wrong: sentences by the option's id, none missing and none too many."""

from __future__ import annotations

from collections.abc import Iterable, Mapping, Set
from typing import Any, TypeVar

from twoshaft.errors import CourseError
from twoshaft.records import Question
from twoshaft_grader.marking.kinds.keys import key_set
from twoshaft_grader.marking.reference import Slip

R = TypeVar("R", str, set[str])
Why = Mapping[str | tuple[str, ...], str]


def reasons(
    asked: Iterable[Iterable[str]],
    right: str | Iterable[str],
    why: Why,
    shown: Iterable[Iterable[str]] | None = None,
) -> list[Slip]:
    """A slip without marks for each wrong option.

    Parameters
    ----------
    asked : pairs of id and text
        Every option that the question can offer.
    right : str or iterable of str
        Id of the right option, or ids of all that are right.
    why : mapping of str or tuple of str to str
        The sentence of an option, by its id; one sentence for several by a tuple of ids. Where
        the figures decide which is right, that one may have a sentence too.
    shown : pairs of id and text, optional
        Those that this learner sees; all of them if left out.

    Raises
    ------
    CourseError
        An id that is no option or has two sentences, or a wrong option without one.
    """
    ids = {id for id, _ in asked}
    right = key_set(right)
    sentences = _by_id(why, ids)
    _known(right, ids, "said to be right")
    if bare := sorted(ids - right - set(sentences)):
        raise CourseError(f"nothing says why these options are wrong: {', '.join(bare)}")
    seen = ids if shown is None else {id for id, _ in shown}
    return [Slip(id, 0, text) for id, text in sentences.items() if id in seen - right]


def missed(
    options: Iterable[tuple[str, str]], right: str | Iterable[str], why: str | Mapping[str, str]
) -> list[Slip]:
    """A sentence for each option that belongs, told when it was not ticked.

    Parameters
    ----------
    options : pairs of id and text
        Those that this learner sees.
    right : str or iterable of str
        Ids of those that belong.
    why : str or mapping of str to str
        Why it belongs: one sentence for all, with the option's text for ``{name}``, or one by id.

    Examples
    --------
    >>> [slip.sentence for slip in missed([("a", "Seal"), ("b", "Nut")], "a", "“{name}” leaks.")]
    ['“Seal” leaks.']
    """
    belong = key_set(right)
    return [
        Slip(id, 0, why.format(name=name) if isinstance(why, str) else why[id])
        for id, name in options
        if id in belong
    ]


def settled(
    versions: Mapping[str, Question], asked: Any, right: Mapping[str, R], why: Why
) -> tuple[R, list[Slip]]:
    """The right option of the version that is asked, and the slips of its others.

    Parameters
    ----------
    versions : mapping of str to Question
        All versions of the question, out of its bank.
    asked : Question
        The one that the learner gets; of another record its ``id`` counts.
    right : mapping of str to str or set of str
        Id of the right option, or ids of all that are right, by id of the version.
    why : mapping of str or tuple of str to str
        As for :func:`reasons`, over the options of all versions; one id in two versions is wrong
        for the same reason.

    Raises
    ------
    CourseError
        As :func:`reasons`, for any of the versions, whichever is asked; or a version without a
        right option.
    """
    _known(set(right), set(versions), "given a right option")
    if open_ := sorted(set(versions) - set(right)):
        raise CourseError(f"nothing says what is right in these versions: {', '.join(open_)}")
    sentences = _by_id(why, {o.id for one in versions.values() for o in one.options})
    slips = {}
    for id, one in versions.items():
        mine: dict[str | tuple[str, ...], str] = {
            option.id: sentences[option.id] for option in one.options if option.id in sentences
        }
        slips[id] = reasons(one.options, right[id], mine)
    return right[asked.id], slips[asked.id]


def line_reasons(
    lines: Iterable[Iterable[str]],
    options: Iterable[Iterable[str]],
    right: Mapping[str, str | Iterable[str]],
    why: Mapping[str, str | Mapping[str, str]],
    anywhere: Mapping[str, str] | None = None,
    shown: Iterable[Iterable[str]] | None = None,
) -> list[Slip]:
    """A slip without marks for each wrong answer of each line, for a field that asks each.

    Parameters
    ----------
    lines : pairs of id and text
        Every line that the question can show.
    options : pairs of id and text
        The answers that each line offers.
    right : mapping of str to str, or to several
        Id of the right answer of each line, or of all that are right.
    why : mapping of str to str, or to a mapping of str to str
        By the line's id: one sentence for whatever is wrong there, or one for each answer. Those
        of answers that are right this time are left out.
    anywhere : mapping of str to str, optional
        By the answer's id: its sentence in all lines that have none of their own.
    shown : pairs of id and text, optional
        The lines that this learner sees; all of them if left out.

    Raises
    ------
    CourseError
        An id that is no line or no answer, a line without a right answer, or a wrong answer
        without a sentence.
    """
    ids, offered = {id for id, _ in lines}, {id for id, _ in options}
    anywhere = anywhere or {}
    _known(set(right), ids, "given a right answer")
    _known(set(why), ids, "given a reason")
    _known(set(anywhere), offered, "given a reason")
    if open_ := sorted(ids - set(right)):
        raise CourseError(f"nothing says what is right in these lines: {', '.join(open_)}")
    seen = ids if shown is None else {id for id, _ in shown}
    slips = []
    for line in sorted(ids):
        good = key_set(right[line])
        _known(good, offered, f"said to be right in {line!r}")
        own = why.get(line, {})
        texts = dict.fromkeys(offered, own) if isinstance(own, str) else {**anywhere, **own}
        _known(set(texts), offered, f"given a reason in {line!r}")
        if bare := sorted(offered - good - set(texts)):
            raise CourseError(f"nothing says why these are wrong in {line!r}: {', '.join(bare)}")
        if line in seen:
            slips += [Slip((line, id), 0, texts[id]) for id in sorted(offered - good)]
    return slips


def _by_id(why: Why, ids: set[str]) -> dict[str, str]:
    sentences: dict[str, str] = {}
    for key, text in why.items():
        for id in (key,) if isinstance(key, str) else key:
            if id in sentences:
                raise CourseError(f"the option {id!r} has two reasons")
            sentences[id] = text
    _known(set(sentences), ids, "given a reason")
    return sentences


def _known(named: Set[str], ids: set[str], what: str) -> None:
    if stray := sorted(named - ids):
        raise CourseError(
            f"these are {what} and are none of the options: {', '.join(stray)}",
            mend=f"known: {', '.join(sorted(ids))}",
        )
