"""Read a number with its unit the way people write it. What is ambiguous is asked back.

Nothing is evaluated: the text is taken apart by fixed patterns, and its length is limited.
"""

from __future__ import annotations

import math
import re
from collections.abc import Mapping
from dataclasses import dataclass
from difflib import get_close_matches
from fractions import Fraction

from twoshaft.errors import AnswerError
from twoshaft.jobsheet.measures import (
    ASKED_BACK,
    BY_SPELLING,
    KINDS,
    MEASURES,
    TAKEN,
    Measure,
    measures_spelled,
    named,
    plain_spelling,
)
from twoshaft.units.quantities import Q

MAX_LENGTH = 80
MAX_POWER = 30
_WITH_UNIT = "number and its unit"

_VULGAR = {
    "¼": "1/4", "½": "1/2", "¾": "3/4", "⅓": "1/3", "⅔": "2/3", "⅛": "1/8", "⅜": "3/8",
    "⅝": "5/8", "⅞": "7/8", "⅕": "1/5", "⅖": "2/5", "⅗": "3/5", "⅘": "4/5", "⅙": "1/6", "⅚": "5/6",
}  # fmt: skip
_RAISED = str.maketrans("⁰¹²³⁴⁵⁶⁷⁸⁹⁻⁺", "0123456789-+")
_SPACE = re.compile(r"[ \t\u00a0\u2007\u2009\u202f]+")

Taken = Mapping[str, Mapping[str, str]]

_DIGITS = r"[0-9]+(?:[ '’][0-9]{3})*(?:[.,][0-9]+)*|[.,][0-9]+"
_FRACTION = r"(?:(?P<whole>[0-9]+) )?(?P<top>[0-9]+) ?/ ?(?P<bottom>[0-9]+)(?![.,]?[0-9])"
_POWER = r"(?:[eE](?P<e>[+-]?[0-9]+)| ?[x×·*] ?10(?:\^|\*\*)(?P<ten>[+-]?[0-9]+))?"
_NUMBER = re.compile(rf"(?P<sign>[+-] ?)?(?:{_FRACTION}|(?P<digits>{_DIGITS}){_POWER})")
_RATIO = re.compile(r"(?P<top>[0-9]+(?:\.[0-9]+)?) ?: ?(?P<bottom>[0-9]+(?:\.[0-9]+)?)")
_SPAN = re.compile(
    r"(?:(?P<h>[0-9]+) ?(?:h|hr|hrs|hours?) ?)?(?P<m>[0-9]+) ?(?:min|mins|minutes?|m)\.?"
    r"(?: ?(?P<s>[0-9]+) ?(?:s|sec|secs|seconds?)\.?)?"
)


@dataclass(frozen=True)
class Written:
    """A number and a unit as they were written.

    Parameters
    ----------
    value : float
        The number.
    unit : str
        The unit's spelling, possibly empty.
    """

    value: float
    unit: str


def read_written(text: str) -> Written:
    """Take a text apart into number and spelling of the unit, without judging the unit.

    Parameters
    ----------
    text : str
        What was typed, at most 80 characters.

    Returns
    -------
    Written

    Raises
    ------
    AnswerError
        If there is no number, more than one, or one that can be read in two ways.

    Examples
    --------
    >>> read_written("18,5kN")
    Written(value=18.5, unit='kN')
    >>> read_written("−1 1/4 turn")
    Written(value=-1.25, unit='turn')
    """
    return _written(_tidy(text), _WITH_UNIT)


def _written(text: str, asked: str) -> Written:
    match = _NUMBER.match(text)
    if not match:
        raise AnswerError(f"read no number in “{text}”", mend=f"type a {asked}")
    rest = text[match.end() :].strip()
    value = _value(match, text)
    if re.search(r"[0-9]", re.sub(r"(?:m|in|1/min|min)(?:\^?[23]|-1)\b|1/min", "", rest)):
        raise AnswerError(
            f"read {_number_text(value)} and then more figures in “{text}”",
            mend=f"type one {asked}",
        )
    return Written(value, rest)


def read_quantity(text: str, expected: str, kind: str = "") -> Q:
    """Read a quantity of the expected kind.

    Parameters
    ----------
    text : str
        What was typed.
    expected : str
        A unit of the course's table (``"mm"``), or a kind of quantity (``"torque"``). An empty
        text expects a plain number.
    kind : str, optional
        Kind of quantity, where the unit's spelling has several (``K``: a temperature or a
        ``temperature difference``).

    Returns
    -------
    pint.Quantity
        In the unit that was typed.

    Raises
    ------
    AnswerError
        With what was read and what is expected. Nothing is guessed.

    Examples
    --------
    >>> round(read_quantity("13 lbf·ft", "N·m").to("N*m").magnitude, 2)
    17.63
    >>> read_quantity("1.25", "mm")
    Traceback (most recent call last):
    ...
    twoshaft.errors.AnswerError: read 1.25 without a unit; type 1.25 mm or 0.0492 in.
    """
    return _read(text, _wanted(expected, kind), TAKEN)


def has_one_meaning(text: str, unit: str) -> bool:
    """Whether a figure can be taken only one way by whoever is told the unit asked for.

    Parameters
    ----------
    text : str
        What was typed.
    unit : str
        The unit asked for.

    Returns
    -------
    bool
        False also where a field takes it all the same, since there only one way makes sense.

    Examples
    --------
    >>> has_one_meaning("13 ft lb", "N·m"), has_one_meaning("13 NM", "N·m")
    (True, False)
    """
    try:
        _read(text, named(unit), {})
    except AnswerError:
        return False
    return True


def write_quantity(value: float, unit: str, kind: str = "") -> str:
    """Write a number and unit so that :func:`read_quantity` reads the very same number.

    >>> write_quantity(0.049, "in"), write_quantity(-12.0, "N*m"), write_quantity(3.5, "")
    ('0.049 in', '-12 N·m', '3.5')
    """
    return f"{_exact_text(value)} {named(unit, kind).name}".strip()


def say_quantity(quantity: Q) -> str:
    """A quantity in words of the course, to show how an answer was read.

    >>> say_quantity(read_quantity("13 ft lb", "N·m")), say_quantity(read_quantity("½ rev", "turn"))
    ('13 lbf·ft', '0.5 turn')
    """
    for measure in MEASURES:
        if quantity.units == Q(1, measure.pint).units:
            return f"{_number_text(quantity.magnitude)} {measure.name}".strip()
    return f"{quantity:~P}"


def _read(text: str, wanted: Measure, taken: Taken) -> Q:
    asked = "number" if wanted.kind == "plain number" else _WITH_UNIT
    text = _tidy(text, asked)
    if wanted.kind == "time" and (span := _SPAN.fullmatch(text)) and (span["h"] or span["s"]):
        hours, minutes, seconds = (int(span[part] or 0) for part in "hms")
        if seconds > 59 or (span["h"] and minutes > 59):
            raise AnswerError(f"read “{text}”, with 60 or more of the smaller unit")
        return Q(hours * 60 + minutes + seconds / 60, "minute")
    if wanted.kind == "plain number" and (ratio := _RATIO.fullmatch(text)):
        top, bottom = (_finite(float(ratio[part]), text) for part in ("top", "bottom"))
        if bottom == 0 or not math.isfinite(top / bottom):
            raise AnswerError(f"read “{text}”, which divides by nothing")
        return Q(top / bottom, "dimensionless")
    written = _written(text, asked)
    return Q(written.value, _measure(written, wanted, taken).pint)


def _tidy(text: str, asked: str = _WITH_UNIT) -> str:
    if not isinstance(text, str):
        raise AnswerError(f"read {type(text).__name__}, not text", mend=f"type a {asked}")
    if len(text) > MAX_LENGTH:
        raise AnswerError(
            f"read {len(text)} characters, more than {MAX_LENGTH}",
            mend=f"type one {asked}",
        )
    for sign in "−–‒":
        text = text.replace(sign, "-")
    for mark, plain in _VULGAR.items():
        text = re.sub(rf"(?<=[0-9]){mark}", f" {plain}", text).replace(mark, plain)
    text = re.sub(r"(?<=10)[⁻⁺]?[⁰¹²³⁴⁵⁶⁷⁸⁹]+", lambda m: "^" + m.group().translate(_RAISED), text)
    text = _SPACE.sub(" ", text).strip()
    if not text:
        raise AnswerError("read nothing", mend=f"type a {asked}")
    if not text.isprintable():
        raise AnswerError("read characters that cannot be shown", mend=f"type a {asked}")
    return text


def _value(match: re.Match[str], text: str) -> float:
    sign = -1.0 if (match["sign"] or "").startswith("-") else 1.0
    if match["bottom"]:
        return sign * _fraction(match, text)
    power = match["e"] or match["ten"] or "0"
    if len(power) > 4 or abs(int(power)) > MAX_POWER:
        raise AnswerError(f"read “{text}”, a number beyond any workshop")
    value = float(f"{_decimal(match['digits'], text)}e{int(power)}")
    return _finite(sign * value, text)


def _fraction(match: re.Match[str], text: str) -> float:
    whole, top, bottom = int(match["whole"] or 0), int(match["top"]), int(match["bottom"])
    if bottom == 0:
        raise AnswerError(f"read “{text}”, which divides by nothing")
    if match["whole"] and top >= bottom:
        raise AnswerError(
            f"read {whole} and {top}/{bottom}, a fraction of one or more",
            mend="type one fraction, as 1 1/4, or a decimal, as 1.25",
        )
    if max(whole, top, bottom) > 10**12:
        raise AnswerError(f"read “{text}”, a number beyond any workshop")
    return float(whole + Fraction(top, bottom))


def _decimal(digits: str, text: str) -> str:
    """The number's digits with a point for the decimal sign and nothing else."""
    grouped = re.split(r"[ '’]", digits)
    if len(grouped) > 1 and not 1 <= len(grouped[0]) <= 3:
        raise AnswerError(
            f"read two numbers in “{text}”", mend="type one number, as 1234.5, and its unit"
        )
    digits = "".join(grouped)
    marks = re.findall(r"[.,]", digits)
    if not marks:
        return digits
    head, *parts = re.split(r"[.,]", digits)
    if len(marks) == 1:
        mark, part = marks[0], parts[0]
        # A single comma before three figures is a decimal to some and a thousand to others.
        ambiguous = mark == "," and len(part) == 3 and re.fullmatch(r"[1-9][0-9]{0,2}", head)
        if ambiguous and len(grouped) == 1:
            raise AnswerError(
                f"read {digits}, which may be {head}.{part} or {head}{part}",
                mend=f"type {head}.{part} or {head}{part}",
            )
        return f"{head or 0}.{part}"
    groups, last = [head, *parts[:-1]], parts[-1]
    if len(set(marks)) == 1:
        groups, last = [*groups, last], ""
    elif len(set(marks[:-1])) != 1 or marks[-1] == marks[0]:
        groups = []
    well_grouped = (
        bool(groups)
        and len(grouped) == 1
        and re.fullmatch(r"[1-9][0-9]{0,2}", groups[0])
        and all(len(group) == 3 for group in groups[1:])
    )
    if not well_grouped:
        raise AnswerError(
            f"read {digits}, with points or commas that do not separate thousands",
            mend="type one number with one decimal point, as 1234.5",
        )
    return "".join(groups) + (f".{last}" if last else "")


def _finite(value: float, text: str) -> float:
    if not math.isfinite(value):
        raise AnswerError(f"read “{text}”, a number beyond any workshop")
    return value


def _wanted(expected: str, kind: str) -> Measure:
    if expected in KINDS:
        return next(measure for measure in MEASURES if measure.kind == expected)
    return named(expected, kind)


def _measure(written: Written, wanted: Measure, taken: Taken) -> Measure:
    number, spelling = _number_text(written.value), plain_spelling(written.unit)
    fitting = [measure for measure in measures_spelled(spelling) if measure.kind == wanted.kind]
    if fitting:
        return fitting[0]
    compact = spelling.replace(" ", "")
    if name := taken.get(wanted.kind, {}).get(compact):
        return named(name, wanted.kind)
    if not written.unit:
        raise AnswerError(
            f"read {number} without a unit", mend=f"type {_examples(written.value, wanted)}"
        )
    why = ASKED_BACK.get(spelling) or ASKED_BACK.get(compact)
    if why:
        what, _, mend = why.partition("; ")
        raise AnswerError(f"read {number} {written.unit}, {what}", mend=mend)
    known = measures_spelled(spelling)
    if known:
        kinds = " or ".join(f"{_article(measure.kind)}" for measure in known)
        if wanted.kind == "plain number":
            raise AnswerError(
                f"read {number} {written.unit}, {kinds}, where a plain number is expected",
                mend=f"type {number} if that is the number meant",
            )
        raise AnswerError(
            f"read {number} {written.unit}, {kinds}, where {_article(wanted.kind)} is expected",
            mend=f"give it in {_units_of(wanted)}",
        )
    # A slip of case or one letter is named, never mended silently.
    near = get_close_matches(
        compact.lower(),
        [s for s, ms in BY_SPELLING.items() if s and any(m.kind == wanted.kind for m in ms)],
        n=1,
        cutoff=0.6,
    )
    unit = named(near[0], wanted.kind).name if near else ""
    raise AnswerError(
        f"read {number} and then “{written.unit}”, which is no unit known here",
        mend=f"type {number} {unit} if that is meant"
        if unit
        else f"type {_examples(written.value, wanted)}",
    )


def _article(kind: str) -> str:
    return f"{'an' if kind[0] in 'aeiou' else 'a'} {kind}"


def _units_of(wanted: Measure) -> str:
    return " or ".join(name for name in (wanted.name, wanted.other) if name)


def _examples(value: float, wanted: Measure) -> str:
    first = f"{_number_text(value)} {wanted.name}".strip()
    if not wanted.other or wanted.other == wanted.name:
        return first
    other = named(wanted.other, wanted.kind)
    converted = Q(value, wanted.pint).to(other.pint).magnitude
    return f"{first} or {_number_text(float(f'{converted:.3g}'))} {other.name}"


def _number_text(value: float) -> str:
    return f"{value:.10g}"


def _exact_text(value: float) -> str:
    text = repr(float(value))
    return text.removesuffix(".0")
