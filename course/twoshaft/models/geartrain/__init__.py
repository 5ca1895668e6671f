"""The gear train: ratios, turns to count, what can move when gears are engaged.

Public functions take the unit's ``GearTrain`` section; ratios are exact fractions with a sign
(minus: the shafts turn opposite ways), turns are counted, speeds and torques are quantities.
"""

from twoshaft.models.geartrain.centres import CentreFit, centre_fit, pitch_radii
from twoshaft.models.geartrain.differential import (
    other_output,
    play_with_washer,
    right_washers,
)
from twoshaft.models.geartrain.motion import (
    Freedom,
    freedom,
    gear_turns,
    one_sleeve,
    ratio,
    turned_by_hand,
    turns,
)
from twoshaft.models.geartrain.road import road_speed, speed_drive_turns
from twoshaft.models.geartrain.synchroniser import (
    cone_torque,
    gap_after_wear,
    gap_says,
    synchronising_time,
    wear_from_gap,
)
from twoshaft.models.geartrain.turning import (
    Count,
    count_turns,
    fewest_turns,
    mistaken,
    nearest_gear,
    tells_apart,
    ways_of_counting,
    with_wheel,
)

__all__ = [
    "CentreFit",
    "Count",
    "Freedom",
    "centre_fit",
    "cone_torque",
    "count_turns",
    "fewest_turns",
    "freedom",
    "gap_after_wear",
    "gap_says",
    "gear_turns",
    "mistaken",
    "nearest_gear",
    "one_sleeve",
    "other_output",
    "pitch_radii",
    "play_with_washer",
    "ratio",
    "right_washers",
    "road_speed",
    "speed_drive_turns",
    "synchronising_time",
    "tells_apart",
    "turned_by_hand",
    "turns",
    "ways_of_counting",
    "wear_from_gap",
    "with_wheel",
]
