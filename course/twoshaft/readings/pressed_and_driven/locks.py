"""What holds parts in place: the stake of a nut, and circlips."""

from __future__ import annotations

from dataclasses import dataclass

from twoshaft.models.fit import stake_hold
from twoshaft.readings.lots import TRIES
from twoshaft.readings.pressed_and_driven.lot import Lot, steps_between
from twoshaft.units.quantities import Q


@dataclass(frozen=True)
class Staked:
    """A nut to be staked; figures as in the unit file."""

    name: str
    radius_mm: float
    slot_mm: float
    tab_mm: float
    yield_mpa: float
    drag_nm: float
    margin: float


# For a unit without staked nuts; an invented practice bench.
PRACTICE = (
    Staked("Nut of the practice shaft", 11, 4, 3, 300, 6, 2),
    Staked("Nut of the practice hub", 14, 5, 3, 300, 10, 2),
)
VERDICTS = ("leave", "deeper", "renew")
TO_DO = [
    ["leave", "Leave it: it holds with room to spare and the tab is whole"],
    ["deeper", "Punch the same tab deeper and measure again"],
    ["renew", "Fit a new nut and stake that"],
    ["second", "Undo the nut a little, so that the tab meets the slot's edge, and stake again"],
    ["compound", "Leave it and run locking compound into the thread from outside"],
    ["torque", "Pull the nut to a higher torque, so that the stake matters less"],
    ["punch-flat", "Punch the collar flat again and stake it a second time at the same place"],
]
RIGHT = [
    ["away", "Its sharp edge faces away from the part that pushes on it"],
    ["no-more", "It is opened no further than it takes to slip it on"],
    ["all-round", "It lies in its groove all round, and you turn it to see"],
    ["over", "One that was stretched too far goes into the bin"],
    ["eyes", "Eye protection is on while it is fitted or released"],
    ["fitting", "The pliers' tips fit its holes, and a hand shields it"],
]
WRONG = [
    ["towards", "Its sharp edge faces the part that pushes on it"],
    ["wide", "It is opened wide, so that it scrapes nothing on its way"],
    ["gap-force", "Its gap stands where the part pushes hardest"],
    ["bent", "One that was stretched is squeezed back until it grips"],
    ["screwdriver", "Two screwdrivers do, if you are quick"],
    ["half", "If half of it is in the groove, the rest follows in use"],
    ["glue", "A drop of compound holds one that does not quite reach its groove"],
]
TICKS = 8
PUSHED = ("left", "right")
EDGES = [
    ["left", "To the left"],
    ["right", "To the right"],
    ["inwards", "Inwards, to the shaft's axis"],
    ["both", "Both edges must be sharp"],
    ["rounded", "Nowhere: its edges must be filed round"],
    ["no-matter", "To either side: the groove is the same"],
]


def nuts_of(lot: Lot) -> list[Staked]:
    """The unit's staked nuts; those of the practice bench where it has none."""
    own = [
        Staked(
            nut.name,
            nut.radius_mm,
            nut.slot_mm,
            nut.tab_mm,
            nut.yield_mpa,
            nut.drag_nm,
            nut.margin,
        )
        for nut in lot.fits.staked_nuts
    ]
    return own or list(PRACTICE)


def draw(lot: Lot) -> dict:
    """A nut that was staked, and circlips.

    ``name``, ``shear_nm`` whatever the depth, ``crush_nm_mm``
    (for each millimetre of depth), ``depth_mm``, ``drag_nm``, ``margin``, ``cracked``, ``todo``;
    ``ticks`` about circlips; ``pushed`` (which way a part pushes) and ``edges``.
    """
    stream = lot.stream.child("locks")
    verdict = lot.in_turn("stake-verdict", VERDICTS)[0]
    for nut in lot.in_turn("stake", nuts_of(lot)):
        for _ in range(TRIES):
            given = _staked(nut, stream, verdict)
            if given is not None:
                break
        else:
            continue
        right = 3 + stream.integer(2)
        ticks = [*stream.shuffled(RIGHT)[:right], *stream.shuffled(WRONG)[: TICKS - right]]
        return given | {
            "todo": stream.shuffled(TO_DO),
            "ticks": stream.shuffled(ticks),
            "pushed": lot.in_turn("pushed", PUSHED)[0],
            "edges": stream.shuffled(EDGES),
        }
    raise lot.too_small("locks")


def _staked(nut: Staked, stream, verdict: str) -> dict | None:
    depth = steps_between(stream, 0.2, 0.9 * nut.slot_mm, 0.1)
    drag = round(nut.drag_nm * stream.uniform(0.75, 1.25), 1)
    sizes = [Q(mm, "mm") for mm in (nut.radius_mm, nut.slot_mm, nut.tab_mm)]
    per_mm = stake_hold(*sizes, Q(1.0, "mm"), Q(nut.yield_mpa, "MPa"))
    stake = stake_hold(*sizes, Q(depth, "mm"), Q(nut.yield_mpa, "MPa"))
    times = stake.holds_nm / drag / nut.margin
    if abs(times - 1) < 0.12 or abs(stake.crush_nm / stake.shear_nm - 1) < 0.05:
        return None
    if (times < 1) != (verdict == "deeper"):
        return None
    return {
        "name": nut.name,
        "shear_nm": round(per_mm.shear_nm, 1),
        "crush_nm_mm": round(per_mm.crush_nm, 1),
        "depth_mm": depth,
        "drag_nm": drag,
        "margin": nut.margin,
        "cracked": verdict == "renew",
    }
