# %% tags=["setup"]
from twoshaft.jobsheet import open_sheet

sheet = open_sheet("tiny")
given, unit = sheet.given, sheet.unit

# %% [markdown]
# # A made-up module for tests

# %% tags=["reference"]
import math

from twoshaft.models import order
from twoshaft.units.quantities import Q
from twoshaft_grader.marking import Slip, missed, ref

# %% [markdown] tags=["task"]
# ## Gap and shim
# Work out the gap, then the shim that leaves 0.10 mm of it.

# %% tags=["form"]
sheet.form(
    "gap",
    sheet.number("gap-depth", "How deep is the gap?", "mm"),
    sheet.number("gap-shim", "How thick must the shim be?", "mm"),
    sheet.number("gap-shims", "How many shims of 0.05 mm make that up?", ""),
)

# %% tags=["reference"]
gap = ref(
    "gap-depth",
    Q(given["gap"]["case"] - given["gap"]["bearing"], "mm"),
    outcome="measure",
    tolerance={"absolute": Q(0.005, "mm")},
    slips=[Slip(Q(given["gap"]["case"], "mm"), 0.25, "You took the case alone.")],
)

# %% tags=["reference"]
over = math.sqrt((gap - Q(0.1, "mm")).to("mm").magnitude)  # refuses a gap under 0.1 mm
shim = ref(
    "gap-shim",
    Q(over**2, "mm"),
    outcome="measure",
    weight=2,
    tolerance={"absolute": Q(0.005, "mm")},
    must_pass=True,
)
ref("gap-shims", round(shim.to("mm").magnitude / 0.05), outcome="measure")

# %% tags=["mark"] task="gap" points=8

# %% [markdown] tags=["task"]
# ## Put it in order

# %% tags=["form"]
sheet.form(
    "build",
    sheet.order("build-order", "Put the steps in a workable order.", steps=given["build"]["start"]),
    sheet.choice("build-why", "Why does the ring go in first?", options=given["build"]["why"]),
)

# %% tags=["reference"]
steps = order.OrderTask.from_unit(unit)
ref("build-order", steps, outcome="plan", weight=3, must_pass=True)
ref(
    "build-why",
    "reach",
    outcome="plan",
    slips=[
        Slip("weight", 0.5, "Weight has a part in it, reach decides."),
        Slip("oil", 0, "Oil gets to it wherever it sits."),
        Slip("look", 0, "Nobody sees it once the case is closed."),
        Slip("rule", 0, "In another unit it goes in last."),
    ],
)

# %% tags=["mark"] task="build" points=10

# %% [markdown] tags=["task"]
# ## Which parts are new

# %% tags=["form"]
sheet.form(
    "new",
    sheet.choices("new-parts", "Which parts must be new?", options=given["new"]["parts"]),
)

# %% tags=["reference"]
ref(
    "new-parts",
    {"seal", "ring", "washer"},
    outcome="plan",
    slips=[
        Slip("gear", 0, "A gear is looked over and used again."),
        Slip("shaft", 0, "A shaft is measured and used again."),
        Slip("case", 0, "A case half is cleaned and used again."),
        *missed(given["new"]["parts"], ["seal", "ring", "washer"], "{name} is used once."),
    ],
)

# %% tags=["mark"] task="new" points=4
