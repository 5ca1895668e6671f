"""Questions about the work itself, in several versions of which each attempt gets another.

Which option is right stands with the solution, not here.
"""

from __future__ import annotations

from twoshaft.readings.threaded_joints.lot import Lot

HAND_START = (
    (
        "stiff",
        "You start a case bolt in its aluminium hole with your fingers. After one turn it goes "
        "stiff. What do you do?",
        (
            ("back-out", "Take it out, look at both threads, clean them, and start again by hand"),
            ("impact-low", "Run it down with the impact driver on its lowest setting"),
            ("ratchet", "Go on with a ratchet, slowly, until the head is down"),
            ("oil-it", "Put a drop of oil on the thread and go on with the wrench"),
            ("torque-it", "Set the torque wrench low, so that it clicks before harm is done"),
        ),
    ),
    (
        "many",
        "Fourteen long bolts are to go into an aluminium case, and it is late. How?",
        (
            (
                "fingers-first",
                "Start each by hand, run them down with a speed handle, then the torque wrench",
            ),
            ("impact-run", "Start each with the impact driver on low, then the torque wrench"),
            ("impact-all", "Run and tighten all with the impact driver, then check one in four"),
            ("one-by-one", "Start and tighten each fully before the next one goes in"),
            ("air-ratchet", "Set each in its hole and let the air ratchet find the thread"),
        ),
    ),
    (
        "no-hole",
        "All but one of the bolts are in by hand. The last does not meet its hole. What now?",
        (
            (
                "shift",
                "Leave all loose, move the part on its dowels until the bolt starts by hand",
            ),
            ("pull-over", "Tighten the others, so that the part is drawn to its place"),
            ("impact-catch", "Let the impact driver catch the thread; it straightens itself"),
            ("drill-out", "Drill the clearance hole larger, so that the bolt can stand askew"),
            ("leave-out", "Leave it out; the others carry enough"),
        ),
    ),
    (
        "chips",
        "A bolt comes out of the case with bright aluminium in its threads. What do you do?",
        (
            (
                "inspect",
                "Stop, clean and gauge the hole's thread, and have it repaired if it is torn",
            ),
            ("new-bolt", "Fit a new bolt of a higher strength class at the same torque"),
            ("locker-fill", "Fill the thread with locking compound and tighten as stated"),
            ("impact-home", "Put it back with the impact driver, so that it holds once more"),
            ("half-torque", "Put it back with half the torque"),
        ),
    ),
)
BLIND = (
    (
        "oil",
        "What do you do before the bolt goes in?",
        (
            ("swab", "Suck and wipe the hole dry to the bottom with a swab, then look into it"),
            ("blow", "Blow it out with the air line"),
            ("slow", "Put the bolt in slowly, so that the oil can find its way out"),
            ("shorter", "Fit a shorter bolt, so that its tip stays clear of the oil"),
            ("more", "Tighten to the top of the window, to make up for what the oil takes"),
        ),
    ),
    (
        "sealant",
        "Sealant was to go under the head. Somebody also pressed some into the hole. What now?",
        (
            (
                "clear-hole",
                "Clean the hole dry to the bottom, then put sealant under the head alone",
            ),
            ("squeeze", "Drive the bolt home before it cures; the surplus comes out at the top"),
            ("cure-first", "Let it cure in the hole, then fit the bolt"),
            ("air", "Blow it out with the air line"),
            ("torque-down", "Fit the bolt with a third less torque"),
        ),
    ),
    (
        "washed",
        "The case was washed this morning, and solvent stands in the hole. What do you do?",
        (
            ("dry-out", "Draw it off and wipe the hole dry to the bottom; then fit the bolt"),
            ("evaporate", "Fit the bolt; solvent evaporates, so it cannot lock"),
            ("flame", "Dry the hole with a flame"),
            ("air-jet", "Blow it out with the air line"),
            ("washer", "Put a second washer under the head, so that the tip stays clear"),
        ),
    ),
)
LOCK = (
    (
        "how",
        "How are the shafts held while the nut is tightened?",
        (
            ("two-gears", "Engage two gears of different ratio at the same time"),
            ("bar", "Put a bar between the teeth of two gears"),
            ("impact", "Not at all: the impact driver is quicker than the shaft"),
            ("one-gear", "Engage one gear and hold the input shaft with a gloved hand"),
            ("vice", "Grip the splines of the shaft in the vice"),
        ),
    ),
    (
        "turns",
        "One gear is engaged. As you pull, both shafts turn together. What do you do?",
        (
            ("second-gear", "Engage a second gear of another ratio as well, then pull"),
            ("screwdriver", "Put a screwdriver between the teeth while somebody else pulls"),
            ("jerk", "Pull with a sharp jerk, so that the shaft has no time to turn"),
            ("grip-teeth", "Have somebody hold the gears with a rag"),
            ("impact-nut", "Use the impact driver for the last half turn"),
        ),
    ),
    (
        "before",
        "What must be true before anybody pulls on the wrench?",
        (
            (
                "locked-clear",
                "Two gears of different ratio are engaged, hands are out, the case is held down",
            ),
            ("neutral", "All gears are in neutral, so that no tooth is loaded"),
            ("wedge", "A wedge of hardwood sits between the largest gears"),
            ("staked", "The collar is staked, so that the nut cannot turn back"),
            ("helper", "A helper holds the gear train still with both hands"),
        ),
    ),
)
AGAIN = (
    (
        "staked-once",
        "The nut was staked, and has been undone to change a bearing. What now?",
        (
            ("new-nut", "Fit a new nut and stake that"),
            ("same-slot", "Use it again and stake it in the old dent"),
            ("turn-on", "Use it again, a little further round, and stake fresh metal"),
            ("compound", "Use it again with locking compound in place of the stake"),
            ("file", "File the collar smooth and use it again"),
        ),
    ),
    (
        "compound-once",
        "A bolt with dried locking compound on it comes out and is to go back in. What do you do?",
        (
            (
                "clean-fresh",
                "Clean both threads of the old compound and put fresh compound on",
            ),
            ("as-is", "Put it back as it is: cured compound holds for good"),
            ("on-top", "Put fresh compound over the old"),
            ("more-torque", "Put it back as it is with a tenth more torque"),
            ("oil-over", "Oil it, so that the old compound does not grip"),
        ),
    ),
    (
        "washer-once",
        "A plug with a soft sealing washer has been out, and the washer looks good. What now?",
        (
            ("new-washer", "Fit a new washer: this one has taken the shape of its old seat"),
            ("turn-over", "Turn the washer over and use its other side"),
            ("tighter", "Use it again and go a quarter turn beyond the torque"),
            ("paste", "Use it again with sealant on both sides"),
            ("two", "Put it under a new one, two washers seal better"),
        ),
    ),
)
ROUNDS = (
    (
        "cure",
        "Friction differs from bolt to bolt. What do more rounds do about that?",
        (
            ("nothing", "Nothing: rounds even out only what bolts take from their neighbours"),
            ("average", "They average it, since each bolt is pulled several times"),
            ("loosen", "They let the wrench back off the bolts that got too much"),
            ("polish", "They polish the threads until all have the same friction"),
            ("pattern-cures", "Nothing round the ring, but crosswise they remove it"),
        ),
    ),
    (
        "why-loose",
        "Why did some bolts hold less at the end of the first round than when they were pulled?",
        (
            (
                "neighbours",
                "Later bolts pressed the parts closer together under them, so they slackened",
            ),
            ("backed-off", "The wrench turned them back when it clicked"),
            ("stretched", "They were stretched beyond yield"),
            ("friction-changed", "Their friction fell once they stood still"),
            ("unscrewed", "Pulling one bolt unscrews the next"),
        ),
    ),
    (
        "over",
        "In a later round the wrench clicks at once on one bolt. What does that tell you?",
        (
            ("at-least", "It holds at least what the wrench is set to; it may hold more"),
            ("exact", "It holds exactly what the wrench is set to"),
            ("seized", "It has seized and must be renewed"),
            ("too-much", "It held too much and was just let back"),
            ("unknown", "The wrench has not been set for that bolt"),
        ),
    ),
    (
        "third",
        "Why is the first round done at about a third of the torque?",
        (
            ("parallel", "So that no side is clamped while the far side still gapes"),
            ("save", "So that the wrench lasts longer"),
            ("friction-third", "Because friction is lower at a third of the torque"),
            ("halves", "Because three rounds at a third add up to the full torque"),
            ("find-bad", "So that bolts with bad friction show themselves"),
        ),
    ),
)
BANKS = {
    "hand_start": HAND_START,
    "blind_do": BLIND,
    "lock": LOCK,
    "again": AGAIN,
    "rounds": ROUNDS,
}
"""By name: the versions of a question, each with its id, its story and its options."""


def ask(lot: Lot, name: str) -> dict:
    """One version of a question: ``id``, ``story``, ``options`` in an order of their own."""
    identifier, story, options = lot.in_turn(name, BANKS[name])[0]
    stream = lot.stream.child(name)
    return {
        "id": identifier,
        "story": story,
        "options": stream.shuffled([list(option) for option in options]),
    }


def draw_asked(lot: Lot) -> dict:
    """One version of every question, by the bank's name."""
    return {name: ask(lot, name) for name in BANKS}
