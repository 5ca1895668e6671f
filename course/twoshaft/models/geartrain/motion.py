"""What can turn, and how fast, from the tooth counts alone.

Every mesh, every engaged gear and the differential is one linear equation between the turns of
the bodies; the null space of these equations is what can still move. Arithmetic is exact
(fractions), so that locked means locked. Source: kinematics of gear trains as in any textbook of
machine theory (Willis's equation for the differential, from memory).
"""

from __future__ import annotations

from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass
from fractions import Fraction

from twoshaft.errors import OutOfRangeError
from twoshaft.units.kept import kept
from twoshaft.units.sections.geartrain import GearTrain, Mesh


@dataclass(frozen=True)
class Freedom:
    """What can still move.

    Attributes
    ----------
    degrees : int
        Degrees of freedom: independent ways to turn.
    locked : frozenset of str
        Bodies that cannot turn at all.
    free : frozenset of str
        Bodies that can.

    Examples
    --------
    >>> found = freedom(unit.gear_train, ("third",))
    >>> found.degrees, len(found.locked)  # the gears, and the wheels against each other
    (2, 0)
    """

    degrees: int
    locked: frozenset[str]
    free: frozenset[str]


def freedom(train: GearTrain, engaged: Iterable[str] = (), held: Iterable[str] = ()) -> Freedom:
    """Tell what can still move with some gears engaged and some shafts held.

    Parameters
    ----------
    train : GearTrain
    engaged : iterable of str
        Gear ids; several at once are allowed, as when shafts are locked for their nuts.
    held : iterable of str
        Shafts held still.

    Returns
    -------
    Freedom
        Over the shafts; loose gears are left out.

    Raises
    ------
    OutOfRangeError
        A gear or shaft that the unit does not have.

    Examples
    --------
    Two unequal gears at once lock the shafts; only the outputs still counter-rotate.

    >>> train = unit.gear_train
    >>> sorted(freedom(train, ("first", "second")).free)
    ['left-output', 'right-output']
    """
    bodies, space = _null_space(train, engaged, held)
    moving = {
        body for i, body in enumerate(bodies) if body in train.shafts and any(v[i] for v in space)
    }
    return Freedom(len(space), frozenset(train.shafts) - moving, frozenset(moving))


def turns(
    train: GearTrain, engaged: Iterable[str], held: Iterable[str] = (), by: str | None = None
) -> dict[str, Fraction | None]:
    """Turns of every shaft for one turn of the one that is turned.

    Parameters
    ----------
    train, engaged, held
        As for :func:`freedom`.
    by : str, optional
        The shaft that is turned; the input when left out.

    Returns
    -------
    dict of str to Fraction or None
        None where this one does not decide it, as an output while the other one is free.

    Raises
    ------
    OutOfRangeError
        As for :func:`freedom`; also when the shaft cannot turn.

    Examples
    --------
    >>> found = turns(unit.gear_train, ["fourth"], held=["right-output"])
    >>> found["differential-case"], found["left-output"]
    (Fraction(315, 1241), Fraction(630, 1241))
    """
    engaged, by = list(engaged), by or train.input
    _known("shaft", [by], train.shafts)
    bodies, space = _null_space(train, engaged, held)
    source = bodies.index(by)
    driving = next((v for v in space if v[source]), None)
    if driving is None:
        raise OutOfRangeError(
            "gears engaged", ", ".join(engaged) or "none",
            f"a choice that lets the {'input' if by == train.input else by} turn",
            "equations of the meshes",
        )  # fmt: skip
    base = [x / driving[source] for x in driving]
    loose = [[a - v[source] * b for a, b in zip(v, base, strict=True)] for v in space]
    return {
        shaft: None if any(v[i] for v in loose) else base[i]
        for i, shaft in enumerate(bodies)
        if shaft in train.shafts
    }


def turned_by_hand(
    train: GearTrain,
    engaged: Iterable[str],
    held: Iterable[str] = (),
    by: str | None = None,
    left_share: Fraction = Fraction(1, 2),
) -> dict[str, Fraction]:
    """What turns when one shaft is turned by hand: what nothing drives stands still.

    Parameters
    ----------
    train, engaged, held, by
        As for :func:`turns`.
    left_share : Fraction
        Part of the two outputs' turns that the left one takes when both are free and the
        differential's case is driven; which one turns further is a matter of drag.

    Returns
    -------
    dict of str to Fraction
        Turns of every shaft for one turn of ``by``.

    Raises
    ------
    OutOfRangeError
        As for :func:`turns`.

    Examples
    --------
    >>> train = unit.gear_train
    >>> turned = turned_by_hand(train, ("first",), held=("right-output",))
    >>> turned["left-output"] / turned["differential-case"]  # with the other one held: twice
    Fraction(2, 1)
    """
    engaged, still = list(engaged), list(held)
    bevel, last = train.differential, train.turned_last
    found = turns(train, engaged, still, by)
    outputs = train.outputs if bevel else ()
    for shaft in (last, *(s for s in train.shafts if s not in outputs), *outputs):
        driven = found[last]
        if found[shaft] is None and not (shaft in outputs and driven):
            still.append(shaft)
            found = turns(train, engaged, still, by)
    known = {shaft: turn for shaft, turn in found.items() if turn is not None}
    if bevel and bevel.left not in known:
        left = 2 * known[bevel.case] * left_share
        known |= {bevel.left: left, bevel.right: 2 * known[bevel.case] - left}
    return {shaft: known[shaft] for shaft in found}


def gear_turns(mesh: Mesh, shaft_turns: Mapping[str, Fraction]) -> tuple[Fraction, Fraction]:
    """Turns of the two gears of a mesh; a loose one follows its mate, not its shaft.

    Parameters
    ----------
    mesh : Mesh
    shaft_turns : mapping of str to Fraction
        Turns of every shaft.

    Examples
    --------
    >>> from fractions import Fraction
    >>> mesh = next(one for one in unit.gear_train.meshes if one.id == "mesh-final")
    >>> shafts = dict.fromkeys(unit.gear_train.shafts, Fraction(1))
    >>> gear_turns(mesh, shafts)  # both fixed to their shafts
    (Fraction(1, 1), Fraction(1, 1))
    """
    one, other = shaft_turns[mesh.driving.shaft], shaft_turns[mesh.driven.shaft]
    per = Fraction(mesh.driving.teeth, mesh.driven.teeth)
    if mesh.loose == mesh.driving.shaft:
        one = -other / per
    elif mesh.loose == mesh.driven.shaft:
        other = -one * per
    return one, other


def one_sleeve(train: GearTrain, gears: Iterable[str]) -> bool:
    """Whether two of these gears share a sleeve, which can be in only one of them.

    Parameters
    ----------
    train : GearTrain
    gears : iterable of str
        Gear ids.

    Examples
    --------
    >>> train = unit.gear_train
    >>> one_sleeve(train, ("first", "second")), one_sleeve(train, ("first", "third"))
    (True, False)
    """
    chosen = set(gears)
    _known("gear", sorted(chosen), [gear.id for gear in train.gears])
    return any(len(chosen & set(one.gears)) > 1 for one in train.synchronisers)


def ratio(train: GearTrain, gear: str, *, to: str | None = None) -> Fraction:
    """Signed ratio of a gear: turns of the input for one turn of the shaft ``to``.

    Parameters
    ----------
    train : GearTrain
    gear : str
        Gear id.
    to : str, optional
        A shaft; left out, the differential's case, so that the final drive is included, or the
        output shaft where there is none.

    Returns
    -------
    Fraction
        Minus: they turn opposite ways.

    Raises
    ------
    OutOfRangeError
        A gear or shaft that the unit does not have, or a shaft that the gear does not turn.

    Examples
    --------
    Teeth 47/13 in first gear and 73/18 in the final drive.

    >>> train = unit.gear_train
    >>> ratio(train, "first") == Fraction(47, 13) * Fraction(73, 18)
    True
    """
    shaft = train.turned_last if to is None else to
    _known("shaft", [shaft], train.shafts)
    turned = turns(train, (gear,))[shaft]
    if not turned:
        raise OutOfRangeError(
            "shaft", shaft, f"the shafts that {gear} turns", "equations of the meshes"
        )
    return 1 / turned


def _known(what: str, names: Sequence[str], allowed: Iterable[str]) -> None:
    allowed = list(allowed)
    for name in names:
        if name not in allowed:
            raise OutOfRangeError(what, name, ", ".join(allowed), "the unit file")


def _null_space(
    train: GearTrain, engaged: Iterable[str], held: Iterable[str]
) -> tuple[list[str], list[list[Fraction]]]:
    """Bodies, and a basis of the turns that all equations allow; not to be changed."""
    return _solved(train, tuple(engaged), tuple(held))


@kept(most=1024)
def _solved(
    train: GearTrain, engaged: tuple[str, ...], held: tuple[str, ...]
) -> tuple[list[str], list[list[Fraction]]]:
    gears = {gear.id: gear for gear in train.gears}
    _known("gear", engaged, gears)
    _known("shaft", held, train.shafts)
    on_now = {mesh for gear in engaged for mesh in gears[gear].engages}
    bodies = [*train.shafts, *(f"{m.id} loose gear" for m in train.meshes if m.loose)]
    place = {body: i for i, body in enumerate(bodies)}
    rows: list[list[Fraction]] = []

    def add(**terms: int) -> None:
        row = [Fraction(0)] * len(bodies)
        for body, factor in terms.items():
            row[place[body]] += factor
        rows.append(row)

    for mesh in train.meshes:
        own = f"{mesh.id} loose gear"
        driving = own if mesh.loose == mesh.driving.shaft else mesh.driving.shaft
        driven = own if mesh.loose == mesh.driven.shaft else mesh.driven.shaft
        add(**{driving: mesh.driving.teeth, driven: mesh.driven.teeth})
        if mesh.loose is not None and mesh.id in on_now:
            add(**{own: 1, mesh.loose: -1})
    if bevel := train.differential:
        add(**{bevel.left: 1, bevel.right: 1, bevel.case: -2})
    for shaft in held:
        add(**{shaft: 1})
    return bodies, _kernel(rows, len(bodies))


def _kernel(rows: list[list[Fraction]], width: int) -> list[list[Fraction]]:
    """Basis of the kernel by exact Gauss-Jordan elimination."""
    rows = [row[:] for row in rows]
    pivots: list[int] = []
    for column in range(width):
        top = len(pivots)
        found = next((r for r in range(top, len(rows)) if rows[r][column]), None)
        if found is None:
            continue
        rows[top], rows[found] = rows[found], rows[top]
        lead = rows[top][column]
        # Most entries are nought, since a mesh joins two bodies: passing over them is quicker.
        rows[top] = [x / lead if x else x for x in rows[top]]
        for r in range(len(rows)):
            factor = rows[r][column]
            if r != top and factor:
                rows[r] = [
                    a - factor * b if b else a for a, b in zip(rows[r], rows[top], strict=True)
                ]
        pivots.append(column)
    basis = []
    for column in (c for c in range(width) if c not in pivots):
        vector = [Fraction(0)] * width
        vector[column] = Fraction(1)
        for r, pivot in enumerate(pivots):
            vector[pivot] = -rows[r][column]
        basis.append(vector)
    return basis
