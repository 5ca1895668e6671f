"""Calculations of taking apart: the next shim, backlash at the teeth, the oil, sinking chips."""

from twoshaft.models import strip
from twoshaft.practice.calculation import Calculation, Given, Step

NEXT_SHIM = Calculation(
    "next-shim",
    "From the float to the next shim",
    "A thicker shim takes end float away. The dial was read with the shaft pushed in and pulled "
    "out, before the unit was opened.",
    (
        Given("pushed", "dial, shaft pushed in", 0.3, 0.6, 0.01, "mm"),
        Given("pulled", "dial, shaft pulled out", 0.75, 1.0, 0.01, "mm"),
        Given("old", "shim that was in", 1.0, 1.6, 0.05, "mm"),
        Given("wanted", "end float that is wanted", 0.04, 0.1, 0.01, "mm"),
    ),
    (
        Step("float", "End float", "mm", "{pulled} − {pushed}",
             lambda s: s["pulled"] - s["pushed"],
             {"You added the two readings.": lambda s: s["pulled"] + s["pushed"]}),
        Step("shim", "The next shim", "mm", "{old} + {float} − {wanted}",
             lambda s: strip.shim_from_float.plain(s["old"], s["float"], s["wanted"]),
             {"This shim gives more float, not less.":
              lambda s: s["old"] - s["float"] + s["wanted"],
              "This shim takes all float away.": lambda s: s["old"] + s["float"]}),
    ),
)  # fmt: skip

TEETH = Calculation(
    "backlash-at-teeth",
    "From the dial to the teeth",
    "The dial stands square to an arm. Arm and gear turn by the same angle.",
    (
        Given("travel", "travel at the dial", 0.2, 0.5, 0.01, "mm"),
        Given("pitch", "pitch radius of the gear", 30, 50, 2, "mm"),
        Given("arm", "radius of the arm", 80, 130, 5, "mm"),
    ),
    (
        Step("backlash", "Backlash at the teeth", "mm", "{travel} × {pitch} ÷ {arm}",
             lambda s: strip.backlash_at.plain(s["travel"], s["arm"], s["pitch"]),
             {"The two radii are swapped.":
              lambda s: s["travel"] * s["arm"] / s["pitch"],
              "This is the travel at the dial.": lambda s: s["travel"]}),
    ),
)  # fmt: skip

OIL = Calculation(
    "drained-oil",
    "How much was missing?",
    "Oil grows by 0.0007 of itself for each kelvin. The filling is stated for 20 °C.",
    (
        Given("jug", "in the jug", 1.5, 1.9, 0.01, "l"),
        Given("warm", "kelvins above 20 °C", 10, 30, 1, "K"),
        Given("full", "right filling", 2.1, 2.6, 0.1, "l"),
        Given("stays", "clings inside", 0.08, 0.16, 0.01, "l"),
    ),
    (
        Step("cold", "The oil when it is cold", "l", "{jug} ÷ (1 + 0.0007 × {warm})",
             lambda s: s["jug"] / (1 + 0.0007 * s["warm"]),
             {"Cold oil is less, not more.": lambda s: s["jug"] * (1 + 0.0007 * s["warm"])},
             off=0.006),
        Step("missing", "Missing", "l", "{full} − {stays} − {cold}",
             lambda s: s["full"] - s["stays"] - s["cold"],
             {"The oil that clings inside was in the unit too.":
              lambda s: s["full"] - s["cold"]}, off=0.006),
    ),
)  # fmt: skip

CHIPS = Calculation(
    "sinking-chips",
    "How long until they lie on the floor?",
    "Chips of 100 µm sink to the floor in a known time. A chip of half the size takes four times "
    "as long.",
    (
        Given("known", "chips of 100 µm sink in", 3, 9, 0.5, "min"),
        Given("size", "size that is asked for", 20, 50, 5, "µm"),
    ),
    (
        Step("times", "How many times smaller", "", "100 ÷ {size}", lambda s: 100 / s["size"]),
        Step("time", "Their time", "min", "{known} × ({times})²",
             lambda s: s["known"] * s["times"] ** 2,
             {"Square the ratio of the sizes.": lambda s: s["known"] * s["times"],
              "Small chips take longer.": lambda s: s["known"] / s["times"] ** 2}),
    ),
)  # fmt: skip

CALCULATIONS = (NEXT_SHIM, TEETH, OIL, CHIPS)
