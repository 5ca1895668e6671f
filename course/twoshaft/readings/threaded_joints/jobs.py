"""Reports of finished jobs, in which some steps were slips.

Which steps they are stands with the solution, not here. Every report has as many.
"""

from __future__ import annotations

from twoshaft.readings.threaded_joints.lot import Lot

JOBS = (
    (
        "case",
        "Closing the case",
        (
            ("dowels", "Put both dowels in, then lowered the case straight down onto them."),
            (
                "lengths",
                "Put the long bolts into the nearest free holes, since all have one thread.",
            ),
            ("fingers", "Started all bolts by hand before the wrench came out."),
            ("middle", "Pulled them from the middle outwards, crosswise, in three rounds."),
            ("holes-oiled", "Put a squirt of oil into each hole, against corrosion."),
            ("last-round", "Went over all of them once more at full torque within the open time."),
            ("next-day", "Retightened all bolts the next day, when the sealant had cured."),
            ("wrench-back", "Turned the torque wrench back to the bottom of its scale at the end."),
        ),
    ),
    (
        "cover",
        "Fitting the end cover",
        (
            ("faces", "Wiped both faces and all threads clean and dry."),
            ("corner", "Pulled one corner to full torque first, so that the cover could not move."),
            ("by-hand", "Started each bolt two turns by hand."),
            ("speed-handle", "Ran the bolts down with a speed handle until the heads touched."),
            ("impact-finish", "Finished two tight corners with the impact driver on low."),
            ("rounds", "Then pulled in rounds: a third, two thirds, full, and full again."),
            (
                "extension",
                "Used a straight extension between wrench and socket at the same setting.",
            ),
            (
                "adapter-same",
                "Used the open-ended adapter straight on for one bolt, at the same setting.",
            ),
        ),
    ),
    (
        "nuts",
        "Tightening the shaft nuts",
        (
            ("two-gears", "Engaged two gears of different ratio to hold both shafts."),
            ("hand-way", "Looked at the thread of each nut before choosing the way to pull."),
            ("dry-nut", "Washed the oil off the nuts, since dry threads hold better."),
            ("new-nuts", "Fitted new nuts and laid the old ones aside for scrap."),
            ("pipe", "Slid a pipe over the torque wrench to have more reach."),
            ("goggles", "Put on eye protection before punching the collar into the slot."),
            ("pull-steady", "Pulled steadily until the click, and stopped there."),
            ("beyond", "Gave each nut a little more after the click, to be safe."),
        ),
    ),
    (
        "plugs",
        "Fitting plugs, bolts with compound, and the ring gear",
        (
            ("washers", "Fitted new sealing washers under both plugs."),
            (
                "lbf-in",
                "Set the wrench's lbf·in scale to the figure that the card gives in lbf·ft.",
            ),
            ("old-compound", "Cleaned the old locking compound off bolts and holes."),
            ("fresh", "Put fresh compound on the threads named in the card, and only there."),
            ("both-oil-locker", "Oiled the same threads as well, so that they ran in easily."),
            (
                "range",
                "Took the smaller wrench for the plugs, since the large one is not exact so low.",
            ),
            ("wrong-low", "Used the large wrench at a twelfth of its scale for the cover bolts."),
            ("cross", "Pulled the ring-gear bolts crosswise in two rounds."),
        ),
    ),
)


def draw_job(lot: Lot) -> dict:
    """One report: ``id``, ``title``, ``steps`` as key and sentence in the order of the work."""
    identifier, title, steps = lot.in_turn("job", JOBS)[0]
    return {"id": identifier, "title": title, "steps": [list(step) for step in steps]}
