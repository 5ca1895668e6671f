"""Calculations of inspecting: guard band, cost of errors, circlip, seats and needles, groove."""

from twoshaft.models import inspect
from twoshaft.practice.calculation import Calculation, Given, Step

GUARD = Calculation(
    "guard-band",
    "From readings to the guard band",
    "Four readings were taken. The limit is the smallest size allowed; the guard band is 1.65 "
    "standard uncertainties of the mean.",
    (
        Given("tool", "standard uncertainty of one reading", 0.01, 0.06, 0.002, "mm"),
        Given("limit", "smallest size allowed", 4.0, 6.0, 0.1, "mm"),
    ),
    (
        Step("u", "Standard uncertainty of the mean", "mm", "{tool} ÷ 2",
             lambda s: inspect.mean_uncertainty.plain(s["tool"], 4),
             {"Four readings make it half as large, not a quarter.": lambda s: s["tool"] / 4},
             off=0.0003),
        Step("band", "Guard band", "mm", "1.65 × {u}", lambda s: 1.65 * s["u"],
             {"Two standard uncertainties guard both sides.": lambda s: 2 * s["u"]}, off=0.0004),
        Step("edge", "Proven good from", "mm", "{limit} + {band}", lambda s: s["limit"] + s["band"],
             {"This lies beyond the limit.": lambda s: s["limit"] - s["band"]}, off=0.001),
    ),
)  # fmt: skip

ERRORS = Calculation(
    "cost-of-errors",
    "Use it or renew it?",
    "Using a bad part means stripping the unit again.",
    (
        Given("bad", "chance that the part is bad", 2, 30, 1, "%"),
        Given("again", "stripping again", 8, 20, 1, "h"),
        Given("renew", "renewing the part", 0.5, 3, 0.5, "h"),
    ),
    (
        Step("use", "Using it costs on average", "h", "{bad} ÷ 100 × {again}",
             lambda s: s["bad"] / 100 * s["again"],
             {"A bad part costs a second strip-down.": lambda s: s["bad"] / 100 * s["renew"]}),
        Step("even", "Renewing is cheaper above", "%", "100 × {renew} ÷ {again}",
             lambda s: 100 * inspect.break_even.plain(s["renew"], s["again"])),
    ),
)  # fmt: skip

CIRCLIP = Calculation(
    "circlip",
    "Which circlip?",
    "A thicker circlip takes end float away. The middle of the end float allowed is wanted.",
    (
        Given("found", "end float found", 0.3, 0.6, 0.01, "mm"),
        Given("old", "circlip that was in", 1.8, 2.1, 0.05, "mm"),
        Given("wanted", "middle of the end float allowed", 0.12, 0.22, 0.01, "mm"),
    ),
    (
        Step("clip", "The circlip", "mm", "{old} + {found} − {wanted}",
             lambda s: s["old"] + s["found"] - s["wanted"],
             {"This one gives more float, not less.":
              lambda s: s["old"] - s["found"] + s["wanted"],
              "This one takes all float away.": lambda s: s["old"] + s["found"]}),
    ),
)  # fmt: skip

SEAT = Calculation(
    "seat-and-needles",
    "Play on needles",
    "A needle stands on either side of the shaft.",
    (
        Given("bore", "bore of the gear", 38.02, 38.06, 0.002, "mm"),
        Given("shaft", "shaft", 31.98, 32.0, 0.002, "mm"),
        Given("needle", "a needle", 2.996, 3.0, 0.001, "mm"),
    ),
    (
        Step("play", "Play on the diameter", "mm", "{bore} − {shaft} − 2 × {needle}",
             lambda s: inspect.needle_play.plain(s["bore"], s["shaft"], s["needle"]),
             {"A needle stands on either side: take it off twice.":
              lambda s: s["bore"] - s["shaft"] - s["needle"]}, off=0.0012),
    ),
)  # fmt: skip

GROOVE = Calculation(
    "groove",
    "How deep is the groove?",
    "The shaft was measured beside the groove of the seal and in it.",
    (
        Given("beside", "beside the groove", 37.95, 38.0, 0.01, "mm"),
        Given("within", "in the groove", 37.5, 37.88, 0.01, "mm"),
    ),
    (
        Step("depth", "Depth of the groove", "mm", "({beside} − {within}) ÷ 2",
             lambda s: inspect.groove_depth.plain(s["beside"], s["within"]),
             {"On one side it is half of that.": lambda s: s["beside"] - s["within"]}),
    ),
)  # fmt: skip

CALCULATIONS = (GUARD, ERRORS, CIRCLIP, SEAT, GROOVE)
