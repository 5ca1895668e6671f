"""The units an answer may be written in: a whitelist by spelling, each with its kind.

Kinds are told apart by name, not by dimension, so a torque is never taken for an energy.
"""

from __future__ import annotations

import re
from dataclasses import dataclass


@dataclass(frozen=True)
class Measure:
    """One unit of measure.

    Parameters
    ----------
    name : str
        How the course writes it, as ``N·m``.
    kind : str
        Kind of quantity, as ``torque``.
    pint : str
        The expression for the course's unit registry.
    spellings : str or tuple of str
        Further accepted spellings, in one string where none holds a space. Spaces, dots and
        hyphens between units are all one.
    other : str
        Name of a unit of the same kind that the other half of the trade would use.
    """

    name: str
    kind: str
    pint: str
    spellings: str | tuple[str, ...] = ()
    other: str = ""


def _torque(force: str, forces: str, arm: str, arms: str) -> tuple[str, ...]:
    """Every way round of writing a force and a lever arm."""
    return tuple(
        f"{a} {b}"
        for f in (force, *forces.split())
        for r in (arm, *arms.split())
        for a, b in ((f, r), (r, f))
    )


_POUND, _KILO = "lb lbs lbf. lb. lbs. pound pounds", "kg kp"
_METRE = "metre metres meter meters"
_FOOT, _INCH = "ft. foot feet", "in. inch inches"

MEASURES: tuple[Measure, ...] = (
    Measure("mm", "length", "millimeter", "millimetre millimetres millimeter millimeters", "in"),
    Measure("cm", "length", "centimeter", "centimetre centimetres centimeter centimeters", "in"),
    Measure("m", "length", "meter", _METRE, "ft"),
    Measure("µm", "length", "micrometer", "um micron microns micrometre micrometres", "thou"),
    Measure("in", "length", "inch", 'in. inch inches " ″ ”', "mm"),
    Measure("thou", "length", "thou", (), "µm"),
    Measure("ft", "length", "foot", _FOOT, "m"),
    Measure("°", "angle", "degree", "deg deg. degs degree degrees º", "turn"),
    Measure("rad", "angle", "radian", "radian radians", "°"),
    Measure("turn", "angle", "turn", "turns rev revs revolution revolutions", "°"),
    Measure("N", "force", "newton", "newton newtons", "lbf"),
    Measure("kN", "force", "kilonewton", "KN kilonewton kilonewtons", "lbf"),
    Measure("daN", "force", "decanewton", (), "lbf"),
    Measure("lbf", "force", "force_pound", _POUND, "N"),
    Measure("kgf", "force", "force_kilogram", "kp", "N"),
    Measure("N·m", "torque", "newton * meter", _torque("N", "newton", "m", _METRE), "lbf·ft"),
    Measure("N·cm", "torque", "newton * centimeter", _torque("N", "", "cm", ""), "lbf·in"),
    Measure("N·mm", "torque", "newton * millimeter", _torque("N", "", "mm", ""), "lbf·in"),
    Measure("kN·m", "torque", "kilonewton * meter", _torque("kN", "", "m", ""), "lbf·ft"),
    Measure("daN·m", "torque", "decanewton * meter", _torque("daN", "", "m", ""), "lbf·ft"),
    Measure("lbf·ft", "torque", "force_pound * foot", _torque("lbf", _POUND, "ft", _FOOT), "N·m"),
    Measure("lbf·in", "torque", "force_pound * inch", _torque("lbf", _POUND, "in", _INCH), "N·m"),
    Measure("kgf·m", "torque", "force_kilogram * m", _torque("kgf", _KILO, "m", ""), "N·m"),
    Measure("kgf·cm", "torque", "force_kilogram * cm", _torque("kgf", _KILO, "cm", ""), "N·m"),
    Measure("J", "energy", "joule", "joule joules", "J"),
    Measure("kJ", "energy", "kilojoule", (), "J"),
    Measure("min", "time", "minute", "min. mins minute minutes", "h"),
    Measure("s", "time", "second", "sec sec. secs second seconds", "min"),
    Measure("h", "time", "hour", "hr hrs hour hours", "min"),
    Measure("°C", "temperature", "degree_Celsius", "degC C ℃ celsius ºC", "°F"),
    Measure("°F", "temperature", "degree_Fahrenheit", "degF F ℉ fahrenheit ºF", "°C"),
    Measure("K", "temperature", "kelvin", "kelvin", "°C"),
    Measure("K", "temperature difference", "delta_degree_Celsius", "kelvin degC C °C ℃ ºC", "°F"),
    Measure("°F", "temperature difference", "delta_degree_Fahrenheit", "degF F ºF", "K"),
    Measure("bar", "pressure", "bar", "bars", "psi"),
    Measure("mbar", "pressure", "millibar", "mbars hPa millibar", "psi"),
    Measure("MPa", "pressure", "megapascal", "N/mm² N/mm2 N/mm^2", "psi"),
    Measure("kPa", "pressure", "kilopascal", (), "psi"),
    Measure("Pa", "pressure", "pascal", "pascal pascals N/m² N/m2 N/m^2", "psi"),
    Measure("GPa", "pressure", "gigapascal", (), "psi"),
    Measure("psi", "pressure", "force_pound / inch ** 2", "PSI lbf/in² lbf/in2 lbf/in^2", "bar"),
    Measure("kg", "mass", "kilogram", "kilogram kilograms kilo kilos", "lb"),
    Measure("g", "mass", "gram", "gram grams gramme grammes", "kg"),
    Measure("lb", "mass", "pound", "lbs pound pounds", "kg"),
    Measure("L", "volume", "liter", "l litre litres liter liters", "mL"),
    Measure("mL", "volume", "milliliter", "ml cc cm³ cm3 cm^3 millilitre millilitres", "L"),
    Measure("mm³", "volume", "millimeter ** 3", "mm3 mm^3", "mL"),
    Measure("mm²", "area", "millimeter ** 2", "mm2 mm^2", "cm²"),
    Measure("cm²", "area", "centimeter ** 2", "cm2 cm^2", "mm²"),
    Measure("mL/min", "flow", "milliliter / minute", "ml/min cc/min cm³/min cm3/min", "L/h"),
    Measure("L/h", "flow", "liter / hour", "l/h", "mL/min"),
    Measure("mm²/s", "viscosity", "millimeter ** 2 / second", "mm2/s mm^2/s cSt", ""),
    Measure("N/mm", "stiffness", "newton / millimeter", (), "kN/mm"),
    Measure("kN/mm", "stiffness", "kilonewton / millimeter", (), "N/mm"),
    Measure("r/min", "speed", "revolution / minute", "rpm RPM rev/min min⁻¹ 1/min", ""),
    Measure("km/h", "road speed", "kilometer / hour", "kph kmh km/hr km/hour", "mph"),
    Measure("mph", "road speed", "mile / hour", "mi/h", "km/h"),
    Measure("%", "share", "percent", "percent pct", ""),
    Measure("", "plain number", "dimensionless", (), ""),
)  # fmt: skip

# Spellings that people use for two different things, or wrongly: asked back, with what to type.
ASKED_BACK = {
    "mN": "which may be newton metres or a thousandth of a newton; type N·m or N",
    "NM": "which may be newton metres or nautical miles; type N·m",
    "nm": "which may be newton metres or nanometres; type N·m for a torque or mm for a length",
    "nM": "which is no unit; type N·m",
    "MN": "which may be a million newtons or newton metres; type kN or N·m",
    "mil": "which is a thousandth of an inch to some and a millimetre to others; type thou or mm",
    "mils": "which is thousandths of an inch to some and millimetres to others; type thou or mm",
    "µ": "which is a prefix only; type µm",
    "u": "which is a prefix only; type µm",
    "M": "which may be metres, minutes or a prefix; type m or min",
    "MM": "which is no unit; type mm",
    "Mm": "which is a thousand kilometres; type mm",
    "mpa": "which may be thousandths or millions of a pascal; type MPa",
    "mPa": "which is a thousandth of a pascal; type MPa if that is meant",
    "kn": "which is a knot; type kN",
    "'": "which may be feet, minutes of time or minutes of arc; type ft, min or °",
    "′": "which may be feet, minutes of time or minutes of arc; type ft, min or °",
    "ft/lb": "which divides feet by pounds; type lbf·ft",
    "ft/lbs": "which divides feet by pounds; type lbf·ft",
    "N/m": "which divides newtons by metres; type N·m for a torque or N/mm for a stiffness",
    "kgm": "which may be kilogram metres or a mass; type kgf·m",
}  # fmt: skip

# What a field of one kind takes all the same: nobody means a nautical mile there.
TAKEN = {
    "torque": {"nm": "N·m", "NM": "N·m", "nM": "N·m"},
}


def plain_spelling(text: str) -> str:
    """A unit's spelling with one way of writing µ and of joining units.

    >>> plain_spelling("lbf . ft"), plain_spelling("N-m"), plain_spelling("μm")
    ('lbf ft', 'N m', 'µm')
    """
    text = text.replace("μ", "µ").strip()
    text = re.sub(r"°\s+(?=[CF])|deg\s+(?=[CF])", lambda m: m.group().strip(), text)
    text = re.sub(r"\s*/\s*", "/", text)
    text = re.sub(r"[\s·⋅∙•*×-]+|\s*\.\s*(?=\S)", " ", text)
    return re.sub(r"\s+", " ", text).strip().removesuffix(".")


def _table() -> dict[str, tuple[Measure, ...]]:
    table: dict[str, list[Measure]] = {}
    for measure in MEASURES:
        more = measure.spellings
        words = more.split() if isinstance(more, str) else more
        spellings = {plain_spelling(word) for word in (measure.name, *words)}
        spellings |= {word.replace(" ", "") for word in spellings if measure.kind == "torque"}
        for spelling in spellings - ASKED_BACK.keys():
            table.setdefault(spelling, []).append(measure)
    return {spelling: tuple(measures) for spelling, measures in table.items()}


BY_SPELLING = _table()
KINDS = tuple(dict.fromkeys(measure.kind for measure in MEASURES))


def measures_spelled(text: str) -> tuple[Measure, ...]:
    """The units that a spelling may stand for, at most one of each kind; empty if unknown."""
    return BY_SPELLING.get(plain_spelling(text), ())


def named(name: str, kind: str = "") -> Measure:
    """The unit a field asks for.

    Parameters
    ----------
    name : str
        A spelling of the unit; empty for a plain number.
    kind : str, optional
        Kind of quantity, needed where one spelling has several.

    Raises
    ------
    ValueError
        If the course does not know the unit. This is a mistake in the course, not in an answer.
    """
    for measure in measures_spelled(name):
        if kind in ("", measure.kind):
            return measure
    raise ValueError(f"no unit {name!r} of kind {kind or 'any'} in the course's table of units")
