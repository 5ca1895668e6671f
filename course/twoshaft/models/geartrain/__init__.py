"""The gear train: ratios, turns to count, what can move when gears are engaged.

Public functions take the unit's ``GearTrain`` section; ratios are exact fractions with a sign
(minus: the shafts turn opposite ways), turns are counted, speeds and torques are quantities.
"""

from twoshaft.models.geartrain.centres import CentreFit, centre_fit
from twoshaft.models.geartrain.motion import Freedom, freedom, ratio, turns
from twoshaft.models.geartrain.road import road_speed, speed_drive_turns
from twoshaft.models.geartrain.synchroniser import (
    blocks,
    cone_torque,
    gap_after_wear,
    index_torque,
    self_locking,
    synchronising_time,
)
from twoshaft.models.geartrain.turning import Count, count_turns, tells_apart

__all__ = [
    "CentreFit",
    "Count",
    "Freedom",
    "blocks",
    "centre_fit",
    "cone_torque",
    "count_turns",
    "freedom",
    "gap_after_wear",
    "index_torque",
    "ratio",
    "road_speed",
    "self_locking",
    "speed_drive_turns",
    "synchronising_time",
    "tells_apart",
    "turns",
]
