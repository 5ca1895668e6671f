"""Getting a face ready, and what to do when something has gone wrong: the must-pass questions."""

from __future__ import annotations

from twoshaft.readings.sealant_film.lot import Lot, step
from twoshaft.units.sections.faces import SealantKind

HELPS = [
    ["scrape", "Take the old film off with a plastic or wooden scraper"],
    ["cloth", "Wipe both faces with solvent on a clean cloth and let them dry"],
    ["straightedge", "Lay a straightedge along the face and look for light under it"],
    ["blind", "Dry out the blind bolt holes"],
    ["lay-out", "Lay out dowels, bolts and tools for closing"],
    ["air", "Read the safety data sheets, put on gloves and let the air move"],
]
SPOILS = [
    ["disc", "Take the old film off with an abrasive disc in a drill"],
    ["oil", "Rub a little oil on both faces so that the film spreads"],
    ["blow", "Blow the dust off the face with compressed air"],
    ["bare-hand", "Feel along the cleaned face with your bare hand"],
    ["thin", "Thin the sealant with solvent so that it flows better"],
    ["lump", "Put an extra lump of sealant on every deep score"],
    ["skin", "Lay the film first and let it skin while you get the bolts ready"],
]
SCENES = {
    "heat": [
        "You are about to wipe the face with brake cleaner. On the same bench a hot-air gun that "
        "was used for a bearing has just been put down.",
        [
            ["away", "Bring the heat away and let it go cold before any solvent is opened"],
            ["quick", "Wipe quickly, before the solvent can reach the hot-air gun"],
            ["cloth", "Spray on the cloth only; a damp cloth cannot catch fire"],
            ["more", "Use the hot-air gun afterwards to dry the face faster"],
            ["window", "Open a window and go on; fresh air is enough"],
        ],
    ],
    "vapour": [
        "Two cases are to be washed with solvent in a small room. The window is shut, the "
        "extractor is broken, and there is a strong smell already.",
        [
            ["stop", "Stop, air the room, and work where the air moves, as the data sheet asks"],
            ["mask", "Put a paper dust mask on and go on"],
            ["turns", "Go on in turns, ten minutes each"],
            ["door", "Shut the door so that the smell does not reach the others"],
            ["fast", "Use more solvent so that the work is done sooner"],
        ],
    ],
    "eye": [
        "A drop of anaerobic sealant has got into a workmate's eye. It does not hurt much.",
        [
            ["rinse", "Rinse the eye with water at once and go on, and get medical help"],
            ["wait", "Wait and see; it cures only where there is no air"],
            ["rub", "Wipe it out with a clean cloth"],
            ["solvent", "Dab it away with a little solvent on a cloth"],
            ["blink", "Let the tears carry it out and keep the eye shut"],
        ],
    ],
    "skin": [
        "You have sealant on your bare fingers, and the gloves are in the store.",
        [
            ["wash", "Wash with soap and water now, and fetch gloves before you go on"],
            ["thinner", "Clean the fingers with brake cleaner; it takes everything off"],
            ["cure", "Let it cure on the skin and peel it off later"],
            ["finish", "Finish the face first, since the clock is running; then wash"],
            ["cream", "Put hand cream over it and go on"],
        ],
    ],
    "spray": [
        "A workmate sprays brake cleaner into a case. Two steps away somebody wants to start an "
        "angle grinder.",
        [
            ["halt", "Call a stop: no sparks until the solvent and its vapour are gone"],
            ["turn", "Let them grind, with the sparks turned the other way"],
            ["screen", "Put a sheet of cardboard between the two"],
            ["short", "Let them grind if it takes less than a minute"],
            ["goggles", "Make sure that both wear eye protection; then go on"],
        ],
    ],
}  # fmt: skip
MISHAPS = {
    "slid": [
        "The case came down two finger widths beside its dowels and was slid into place.",
        [
            ["renew", "Lift it off, wipe both faces clean, dry, and lay a new film"],
            ["leave", "Leave it: sliding spreads the film evenly"],
            ["outside", "Leave it and run a bead of sealant along the outside edge"],
            ["tighten", "Tighten one round more so that the lumps are pressed flat"],
            ["touch-up", "Lift it off and touch the film up where it is thin now"],
        ],
    ],
    "lifted": [
        "The case was down on the film. Somebody lifted it again to look for a dowel, and it is "
        "there.",
        [
            ["renew", "Wipe both faces clean, dry, and lay a new film"],
            ["back", "Put it back at once: the film is still wet"],
            ["strings", "Put it back once the strings between the faces are wiped away"],
            ["double", "Lay a second film over the first, to be sure"],
            ["turn", "Put it back and turn the bolts home at once, all the way, one by one"],
        ],
    ],
    "dust": [
        "The film is laid. Then somebody sweeps beside the bench, and there is dust on the film.",
        [
            ["renew", "Wipe both faces clean, dry, and lay a new film"],
            ["blow", "Blow the dust off with compressed air"],
            ["cover", "Lay a thin second film over the dust"],
            ["close", "Close it: the paste takes the dust up"],
            ["pick", "Pick out the larger grains and close it"],
        ],
    ],
    "inside": [
        "A lump of sealant as large as a pea has fallen through the opening into the case, before "
        "closing.",
        [
            ["find", "Find it and take it out before anything is closed"],
            ["filter", "Leave it: the filter keeps it back from the bearings"],
            ["oil", "Leave it: hot oil dissolves it"],
            ["drain", "Close in time and get it out with the first oil change"],
            ["magnet", "Leave it: the magnet holds it"],
        ],
    ],
}  # fmt: skip
OIL = [
    ["cured", "Yes: the hours that the sheet asks for have passed"],
    ["skin", "Yes: it has skinned over outside, so the inside is tight"],
    ["pressure", "Yes: there is no pressure in the case, so it does not matter"],
    ["paste", "No: inside the joint it is still paste that oil can lift or wash out"],
    ["never", "No: oil may only go in after the first drive"],
]


def draw_prepare(lot: Lot) -> dict:
    """``options`` to tick, and a ``scene`` (key, words, options)."""
    stream = lot.stream.child("prepare")
    ticks = [*lot.next_ones("helps", HELPS, 4), *lot.next_ones("spoils", SPOILS, 4)]
    key = lot.in_turn("scene", list(SCENES))[0]
    words, options = SCENES[key]
    return {
        "options": stream.shuffled(ticks),
        "scene": {"key": key, "words": words, "options": stream.shuffled(options)},
    }


def draw_after(lot: Lot) -> dict:
    """A ``mishap`` (key, words, options), and a wait for the cure with options ``oil``."""
    stream = lot.stream.child("after")
    key = lot.in_turn("mishap", list(MISHAPS))[0]
    words, options = MISHAPS[key]
    sealant = lot.sealant(lot.in_turn("cure", list(SealantKind))[0])
    cold = stream.choice((1.0, 1.5, 2.0))
    needed = sealant.cure_hours * cold
    ready = stream.choice((False, False, True))
    low, high = (needed + 2, needed + 12) if ready else (0.25 * needed, needed - 2)
    return {
        "mishap": {"key": key, "words": words, "options": stream.shuffled(options)},
        "sealant": sealant.id,
        "cure_hours": sealant.cure_hours,
        "cold_factor": cold,
        "waited_hours": step(stream, round(low), round(high), 1),
        "oil": stream.shuffled(OIL),
    }
