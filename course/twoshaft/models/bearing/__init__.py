"""Opposed bearings: springs, preload, heat, drag, life and seating."""

from twoshaft.models.bearing.drag import (
    Pull,
    Turned,
    bearing_torque,
    cord_pull,
    turned,
)
from twoshaft.models.bearing.geometry import Balls, Rollers, elements
from twoshaft.models.bearing.heat import (
    Change,
    Seats,
    Warm,
    setting_change,
    support_change,
)
from twoshaft.models.bearing.life import (
    LifeCurve,
    life_against_setting,
    load_zone,
)
from twoshaft.models.bearing.pair import Pair
from twoshaft.models.bearing.seating import OFF_RIB, unseated
from twoshaft.models.bearing.trial import Trial, dial_readings, try_shim

__all__ = [
    "OFF_RIB",
    "Balls",
    "Change",
    "LifeCurve",
    "Pair",
    "Pull",
    "Rollers",
    "Seats",
    "Trial",
    "Turned",
    "Warm",
    "bearing_torque",
    "cord_pull",
    "dial_readings",
    "elements",
    "life_against_setting",
    "load_zone",
    "setting_change",
    "support_change",
    "try_shim",
    "turned",
    "unseated",
]
