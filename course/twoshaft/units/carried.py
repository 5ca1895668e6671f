"""What a unit may be without: parts that a task, or a paragraph of a lesson, cannot do without."""

from __future__ import annotations

from collections.abc import Callable, Iterable
from dataclasses import dataclass

from twoshaft.units.unit import Unit


@dataclass(frozen=True)
class Needed:
    """Something that not every unit has.

    Attributes
    ----------
    words : str
        What it is, as it follows "this unit has no".
    entry : str
        The entry of the unit file that brings it.
    there : callable
        Whether a unit has it.
    """

    words: str
    entry: str
    there: Callable[[Unit], object]

    @property
    def sentence(self) -> str:
        """What a learner is told."""
        return f"the unit on the bench has no {self.words}"


def _fits(unit: Unit, entries: str) -> object:
    return unit.fits_if_any and getattr(unit.fits, entries)


def _shift(unit: Unit, entries: str) -> object:
    return unit.shift_if_any and getattr(unit.shift, entries)


def _inspected(unit: Unit, entry: str) -> object:
    return unit.has("inspect") and getattr(unit.inspect, entry)


def _closed_out(unit: Unit, entry: str) -> object:
    return unit.has("close_out") and getattr(unit.close_out, entry)


def _preloaded(unit: Unit) -> bool:
    """Whether a pair of taper rollers is set with preload."""
    if not unit.bearings_if_any:
        return False
    kinds = {bearing.id: bearing.kind for bearing in unit.bearings.types}
    return any(
        support.target.kind == "preload"
        and kinds.get(support.left) == kinds.get(support.right) == "taper"
        for support in unit.bearings.supports
    )


def _differential(unit: Unit) -> object:
    return unit.gear_train_if_any and unit.gear_train.differential


NEEDED: dict[str, Needed] = {
    "press": Needed(
        "part that is pressed on",
        "an entry of 'presses' in its section fits",
        lambda unit: _fits(unit, "presses"),
    ),
    "warmed-press": Needed(
        "part that is warmed to be fitted",
        "a press with 'warm: hub' in its section fits",
        lambda unit: unit.fits_if_any and any(one.warm == "hub" for one in unit.fits.presses),
    ),
    "seal": Needed(
        "shaft seal",
        "an entry of 'seals' in its section fits",
        lambda unit: _fits(unit, "seals"),
    ),
    "spring-pin": Needed(
        "spring pin",
        "an entry of 'spring pins' in its section fits",
        lambda unit: _fits(unit, "spring_pins"),
    ),
    "staked-nut": Needed(
        "staked nut",
        "an entry of 'staked nuts' in its section fits",
        lambda unit: _fits(unit, "staked_nuts"),
    ),
    "preload": Needed(
        "pair of taper roller bearings with preload",
        "a support with a target of the kind preload in its section bearings",
        _preloaded,
    ),
    "second-sealant": Needed(
        "sealant that cures without air",
        "a sealant of the kind anaerobic in its section faces",
        lambda unit: unit.faces_if_any and {s.kind for s in unit.faces.sealants} > {"moisture"},
    ),
    "lockout": Needed(
        "lockout in its shift",
        "an entry of 'must block' in its section shift",
        lambda unit: _shift(unit, "must_block"),
    ),
    "interlock": Needed(
        "interlock pin between its rails",
        "an entry of 'interlocks' in its section shift",
        lambda unit: _shift(unit, "interlocks"),
    ),
    "detent": Needed(
        "detent on its rails",
        "an entry of 'detents' in its section shift",
        lambda unit: _shift(unit, "detents"),
    ),
    "differential": Needed(
        "differential", "'differential' in its section gear train", _differential
    ),
    "side-gear-play": Needed(
        "side-gear play that is set",
        "'side gear play' of the differential in its section gear train",
        lambda unit: _differential(unit) and unit.gear_train.needed_differential().side_gear_play,
    ),
    "reverse": Needed(
        "reverse gear",
        "a gear with 'reverse: true' in its section gear train",
        lambda unit: unit.gear_train_if_any and any(g.reverse for g in unit.gear_train.gears),
    ),
    "synchroniser": Needed(
        "synchroniser",
        "an entry of 'synchronisers' in its section gear train",
        lambda unit: unit.gear_train_if_any and unit.gear_train.synchronisers,
    ),
    "cord-of-two": Needed(
        "check by a cord that turns two shafts",
        "a check of the kind cord with 'and support' in its section faults",
        lambda unit: (
            unit.faults_if_any
            and any(check.kind == "cord" and check.and_support for check in unit.faults.checks)
        ),
    ),
    "speed-drive": Needed(
        "speed drive",
        "'speed drive' in its section gear train",
        lambda unit: unit.gear_train_if_any and unit.gear_train.speed_drive,
    ),
    "dog-teeth": Needed(
        "limit for its dog teeth",
        "'dogs' in its section inspect",
        lambda unit: _inspected(unit, "dogs"),
    ),
    "selective-circlip": Needed(
        "circlip that sets an end float",
        "an entry of 'circlips' in its section inspect",
        lambda unit: _inspected(unit, "circlips"),
    ),
    "ring-seat": Needed(
        "limit for the seat of a bearing ring",
        "an entry of 'seats' in its section inspect",
        lambda unit: _inspected(unit, "seats"),
    ),
    "seal-track": Needed(
        "limit for the shaft at a seal",
        "'seal' in its section inspect",
        lambda unit: _inspected(unit, "seal"),
    ),
    "leak-test": Needed(
        "leak test with air",
        "'leak test' in its section close out",
        lambda unit: _closed_out(unit, "leak_test"),
    ),
    "ring-work": Needed(
        "figures for the work of a synchroniser ring",
        "'ring' in its section close out",
        lambda unit: _closed_out(unit, "ring"),
    ),
    "shapes": Needed(
        "shapes of its parts",
        "its section shapes",
        lambda unit: unit.has("shapes"),
    ),
}
"""By name."""


def first_lack(unit: Unit, needs: Iterable[str]) -> Needed | None:
    """The first of some things that a unit does not have, None where it has them all."""
    return next((one for one in (NEEDED[id] for id in needs) if not one.there(unit)), None)
