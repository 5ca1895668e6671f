"""Job cards: a torque in another unit with an adapter, and a setting that was found on a wrench."""

from __future__ import annotations

from twoshaft.errors import OutOfRangeError
from twoshaft.models.joint import (
    Fastening,
    TorqueWrench,
    assembly_preload,
    clamp_short,
    setting_with_adapter,
    torque_at_bolt,
)
from twoshaft.readings.keyed import Stream
from twoshaft.readings.threaded_joints.given import Card, Found, Wrench
from twoshaft.readings.threaded_joints.lot import Lot, about
from twoshaft.records import extended
from twoshaft.units.quantities import Q

UNITS = {
    "lbf·ft": ("force_pound * foot", 0.5),
    "lbf·in": ("force_pound * inch", 5),
    "kgf·cm": ("force_kilogram * cm", 5),
}
"""Unit on the card: for the registry, and the step that such a card is rounded to."""
ANGLES = (0, 0, 45, 60)
REACHES = (45, 50, 55, 60, 65, 70)
APART = 1.06
"""A wrench is clearly suited or clearly not: its limits lie at least this factor away."""
VERDICTS = ("leave", "again-low", "again-high", "renew")
YIELD_GUARD = 0.9


def draw_card(lot: Lot) -> Card:
    """A torque on an old card, with wrenches to choose from and an adapter in the way."""
    stream = lot.stream.child("card")
    for fastening in lot.in_turn("card", lot.fastenings):
        for _ in range(40):
            given = _card(lot, fastening, stream)
            if given is not None:
                return given
    raise lot.too_small("card")


def _card(lot: Lot, fastening: Fastening, stream: Stream) -> Card | None:
    unit = stream.choice(list(UNITS))
    pint, step = UNITS[unit]
    window = fastening.group.torque_nm
    figure = round(Q(stream.uniform(window[0], window[2]), "N*m").m_as(pint) / step) * step
    torque = Q(figure, pint).to("N*m")
    if not 0.97 * window[0] <= torque.m <= 1.03 * window[2] or figure < 4 * step:
        return None
    reach, angle = stream.choice(REACHES), stream.choice(ANGLES)
    suited = [w.id for w in lot.unit.fasteners.wrenches if _suits(w, torque, reach, angle)]
    unclear = [w.id for w in lot.unit.fasteners.wrenches if _unclear(w, torque, reach, angle)]
    if len(suited) != 1 or unclear:
        return None
    return extended(
        Card,
        about(fastening),
        unit=unit,
        figure=float(figure),
        reach_mm=float(reach),
        angle_deg=float(angle),
        wrenches=tuple(
            Wrench(w.id, w.name, w.low_nm, w.high_nm, w.step_nm, w.length_mm)
            for w in lot.unit.fasteners.wrenches
        ),
    )


def _setting(entry, torque: Q, reach: float, angle: float) -> Q | None:
    """What to set on a wrench, or None where the adapter is too long for it."""
    try:
        length = Q(entry.length_mm, "mm")
        return setting_with_adapter(torque, length, Q(reach, "mm"), Q(angle, "degree"))
    except OutOfRangeError:
        return None


def _suits(entry, torque: Q, reach: float, angle: float) -> bool:
    setting, tool = _setting(entry, torque, reach, angle), TorqueWrench.of(entry)
    return setting is not None and tool.suits(setting) and tool.suits(torque)


def _unclear(entry, torque: Q, reach: float, angle: float) -> bool:
    """Whether a limit of the wrench's scale is near the torque or its setting."""
    setting = _setting(entry, torque, reach, angle) or torque
    limits = (TorqueWrench.of(entry).usable_from_nm, entry.high_nm)
    values = (torque.m_as("N*m"), setting.m_as("N*m"))
    return any(1 / APART < value / limit < APART for value in values for limit in limits)


def draw_found(lot: Lot) -> Found:
    """A bolt that somebody tightened with a setting and an adapter; what is to be done?

    Every verdict is as likely, and none hangs on the last figure.
    """
    stream = lot.stream.child("found")
    verdict = lot.in_turn("found-verdict", VERDICTS)[0]
    for fastening in lot.in_turn("found", lot.fastenings):
        for _ in range(40):
            given = _found(fastening, verdict, stream)
            if given is not None:
                return given
    raise lot.too_small("found")


def _found(fastening: Fastening, verdict: str, stream: Stream) -> Found | None:
    wrench, window = fastening.wrench, fastening.group.torque_nm
    ratios = {
        "leave": (0.99, 1.01),
        "again-low": (0.62, 0.85),
        "again-high": (1.12, 1.3),
        "renew": (1.4, 2.1),
    }
    aimed = window[1] * stream.uniform(*ratios[verdict])
    length, reach = Q(wrench.length_m, "m"), Q(stream.choice(REACHES), "mm")
    angle = Q(stream.choice((0, 30, 45, 60)), "degree")
    if reach > length / 3:
        return None
    setting = setting_with_adapter(Q(aimed, "N*m"), length, reach, angle)
    setting = round(setting.m_as("N*m") / wrench.step_nm) * wrench.step_nm
    if not wrench.suits(Q(setting, "N*m")):
        return None
    bolt = about(fastening)
    steel, mu = fastening.steel, fastening.friction.thread[1]
    yields = round(assembly_preload(fastening.thread, steel, mu, 1.0).m_as("kN"), 1)
    torque = torque_at_bolt(Q(setting, "N*m"), length, reach, angle)
    clamp = clamp_short(torque, bolt.k, Q(bolt.diameter_mm, "mm"))
    if _verdict(torque.m_as("N*m"), clamp.m_as("kN") / yields, window) != verdict:
        return None
    return extended(
        Found,
        bolt,
        setting_nm=round(setting, 3),
        length_mm=wrench.length_m * 1e3,
        reach_mm=reach.m,
        angle_deg=float(angle.m),
        yields_kn=yields,
        window_nm=(window[0], window[2]),
    )


def _verdict(torque_nm: float, use: float, window: tuple[float, ...]) -> str | None:
    """What is to be done, None where a small error of reading could change it."""
    if abs(use - YIELD_GUARD) < 0.06:
        return None
    if use >= YIELD_GUARD:
        return "renew"
    if torque_nm < 0.94 * window[0]:
        return "again-low"
    if torque_nm > 1.06 * window[2]:
        return "again-high"
    slack = 0.004 * window[1]
    return "leave" if window[0] + slack <= torque_nm <= window[2] - slack else None
