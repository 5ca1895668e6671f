"""Calculations of the order of work: a late step, a clock, several hands."""

from twoshaft.practice.calculation import Calculation, Given, Step

REPAIR = Calculation(
    "late-step",
    "What a forgotten step costs",
    "Two steps are in the way. They come off, the forgotten step is done, and they go on again.",
    (
        Given("off1", "first step in the way: off", 3, 9, 1, "min"),
        Given("on1", "first step in the way: on", 6, 15, 1, "min"),
        Given("off2", "second step in the way: off", 2, 8, 1, "min"),
        Given("on2", "second step in the way: on", 5, 14, 1, "min"),
        Given("do", "the forgotten step", 2, 8, 1, "min"),
    ),
    (
        Step("off", "Minutes to take off", "min", "{off1} + {off2}",
             lambda s: s["off1"] + s["off2"], off=0.1),
        Step("all", "Minutes in all, with the forgotten step", "min",
             "{off} + {do} + {on1} + {on2}",
             lambda s: s["off"] + s["do"] + s["on1"] + s["on2"],
             {"What came off has to go on again.": lambda s: s["off"] + s["do"],
              "The forgotten step itself is missing.": lambda s: s["off"] + s["on1"] + s["on2"],
              "Taking off is missing.": lambda s: s["do"] + s["on1"] + s["on2"]}, off=0.1),
    ),
)  # fmt: skip

CLOCK = Calculation(
    "clock",
    "Keep within the time",
    "Three steps must be done while the clock runs, and the last of them ends it.",
    (
        Given("allowed", "the clock allows", 20, 40, 1, "min"),
        Given("one", "first step", 2, 6, 1, "min"),
        Given("two", "second step", 3, 7, 1, "min"),
        Given("last", "the step that ends the clock", 2, 5, 1, "min"),
    ),
    (
        Step("used", "What must be inside takes", "min", "{one} + {two} + {last}",
             lambda s: s["one"] + s["two"] + s["last"],
             {"The step that ends the clock must be finished in time too.":
              lambda s: s["one"] + s["two"]}, off=0.1),
        Step("left", "Left", "min", "{allowed} − {used}",
             lambda s: s["allowed"] - s["used"], off=0.1),
    ),
)  # fmt: skip

HANDS = Calculation(
    "several-hands",
    "Several pairs of hands",
    "Two chains of steps do not wait for each other. Both must be done before the last step.",
    (
        Given("a1", "first chain, first step", 4, 9, 1, "min"),
        Given("a2", "first chain, second step", 5, 12, 1, "min"),
        Given("b1", "second chain, its only step", 3, 8, 1, "min"),
        Given("last", "last step", 2, 6, 1, "min"),
    ),
    (
        Step("alone", "One pair of hands needs", "min", "{a1} + {a2} + {b1} + {last}",
             lambda s: s["a1"] + s["a2"] + s["b1"] + s["last"], off=0.1),
        Step("many", "With enough hands it takes", "min",
             "the longest chain: {a1} + {a2} + {last}",
             lambda s: max(s["a1"] + s["a2"], s["b1"]) + s["last"],
             {"The last step waits for both chains; its minutes count too.":
              lambda s: max(s["a1"] + s["a2"], s["b1"]),
              "You halved the minutes; the longest chain sets the time.":
              lambda s: s["alone"] / 2}, off=0.1),
    ),
)  # fmt: skip

CALCULATIONS = (REPAIR, CLOCK, HANDS)
