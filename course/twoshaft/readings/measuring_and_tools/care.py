"""What could hurt somebody, and what spoils a tool."""

from __future__ import annotations

from twoshaft.readings.measuring_and_tools.lot import Lot

DANGERS = {
    "turning": [
        "A shaft turns under power and its diameter is wanted at once.",
        [
            ["stop", "Stop it, lock it off so that nobody can start it, then measure"],
            ["slow", "Slow it down and measure while it turns slowly"],
            ["gloves", "Measure with gloves on, in case the tool is pulled in"],
            ["caliper", "Use a caliper instead; it has no thimble that can catch"],
            ["brake", "Hold it still by hand for a moment while the motor runs"],
        ],
    ],
    "run-out": [
        "The run-out of a flange is to be read, and turning it by hand is slow.",
        [
            ["hand", "Turn it by hand, fingers clear of the gears, power locked off"],
            ["power", "Let the motor turn it slowly and read the dial from near"],
            ["drill", "Turn it with a drill machine on the end nut"],
            ["air", "Blow it round with the air gun"],
            ["friend", "Let somebody press the starter on your word"],
        ],
    ],
    "stuck": [
        "A bolt will not come loose. The longest lever within reach is the torque wrench.",
        [
            ["bar", "Leave the torque wrench; take a breaker bar that fits, stand firm, and pull"],
            ["wrench", "Use the torque wrench at its highest setting, loosening only"],
            ["tube", "Put a tube over the torque wrench and pull gently"],
            ["knock", "Strike the torque wrench once with a soft hammer to start the bolt"],
            ["jerk", "Set it low and jerk, so that it clicks and does no harm"],
        ],
    ],
    "pull": [
        "A large nut needs more pull than you have in your arms.",
        [
            ["firm", "Stand firm with clear space behind, pull evenly towards you, or get a "
             "longer wrench of the right range"],
            ["push", "Push with your weight, with the face over the wrench"],
            ["foot", "Stand on the end of the wrench"],
            ["bounce", "Bounce on it until it clicks"],
            ["pipe", "Slide a pipe over it; the click comes at the same torque anyway"],
        ],
    ],
}  # fmt: skip
SPOILS = {
    "store": [
        "The work is done and the setting wrench goes back into its case.",
        [
            ["back-off", "Turn it back to the lowest mark of its scale, not below"],
            ["leave", "Leave the setting; the next job may be the same"],
            ["below", "Turn it back until the grip is loose, far below its scale"],
            ["top", "Turn it to the highest mark, so that the spring stays fresh"],
            ["oil", "Fill the grip with oil and leave it set"],
        ],
    ],
    "dropped": [
        "The torque wrench fell off the bench. It looks as before and still clicks.",
        [
            ["check", "Mark it, take it out of use, and have it checked before anybody uses it"],
            ["click", "Go on; a wrench that clicks is right"],
            ["feel", "Compare it by feel with another one and go on"],
            ["more", "Go on, and set ten per cent more to be safe"],
            ["small", "Use it for small bolts only"],
        ],
    ],
    "again": [
        "The wrench has clicked. You are not sure whether you heard it.",
        [
            ["loosen", "Slacken the bolt and tighten it once more, up to one click"],
            ["once-more", "Pull on until it clicks again; a click cannot hurt"],
            ["feel", "Pull a little further by feel"],
            ["mark", "Mark it as done; it will be right"],
            ["back", "Turn the bolt back a little to be sure that it is not too tight"],
        ],
    ],
}  # fmt: skip


def draw(lot: Lot) -> dict:
    """``dangers``: two of id, text and options; ``spoils``: one of them."""
    stream = lot.stream.child("care")

    def shown(pool: dict, ids: list[str]) -> list:
        return [[one, pool[one][0], stream.shuffled(pool[one][1])] for one in ids]

    return {
        "dangers": shown(DANGERS, lot.in_turn("dangers", sorted(DANGERS))[:2]),
        "spoils": shown(SPOILS, lot.in_turn("spoils", sorted(SPOILS))[:1]),
    }
