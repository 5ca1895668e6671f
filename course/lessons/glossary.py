# %% [markdown]
# # Glossary
#
# <div class="twoshaft-if-missing">If no pictures appear below: press <b>Run</b>, then <b>Run All Cells</b>.</div>
#
# The terms of the trade as this course uses them, each in one sentence.
#
# A maker's manual may use other words for the same thing: then the manual's words count at the bench.
#
# [The unit](#The-unit-and-its-gear-train) · [Shift](#Shift-and-synchroniser) · [Threads](#Threaded-joints) · [Pressed parts](#Pressed-and-driven-parts) · [Bearings](#Bearings-and-settings) · [Sealant](#Sealant) · [Measuring](#Measuring-and-tools) · [Planning](#Planning,-checking-and-marks)

# %% tags=["setup"]
from twoshaft.glossary import load_glossary
from twoshaft.jobsheet import open_sheet
from twoshaft.models import film, fit, geartrain, joint, shift, shim
from twoshaft.plots import gate, gear_section, glossary, joint as joint_plot
from twoshaft.plots.bearing_section import bearing_section
from twoshaft.plots.driven_section import Sketch, driven_section
from twoshaft.plots.film_laid import laid_map
from twoshaft.plots.seal_section import seal_section

unit = open_sheet("course-and-safety").unit
groups = load_glossary()
terms = {group.id: glossary.term_list(group) for group in groups}

# %% [markdown]
# ## All terms
#
# Press a term to go to its place.

# %% tags=["rig"]
glossary.term_index(groups)

# %% [markdown]
# ## The unit and its gear train

# %% tags=["rig"]
train = unit.gear_train
second = [gear.id for gear in train.gears if not gear.reverse][1:2]
words = "Power comes in at the input shaft; the filled gears carry it to the ring gear."
Sketch(gear_section.train_figure(train, second, [], geartrain.freedom(train, second), words), words)

# %% tags=["rig"]
terms["unit"]

# %% [markdown]
# ## Shift and synchroniser

# %% tags=["rig"]
machine = shift.mechanism(unit.shift)
neutral = machine.starts()[0]
Sketch(gate.mechanism_figure(machine, neutral), gate.figure_title(machine, neutral))

# %% tags=["rig"]
terms["shifting"]

# %% [markdown]
# ## Threaded joints

# %% tags=["rig"]
joint_plot.clamp_by_state(joint.Fastening.of(unit, unit.fasteners.groups[0].id))

# %% tags=["rig"]
terms["threads"]

# %% [markdown]
# ## Pressed and driven parts

# %% tags=["rig"]
driven_section(frozenset({fit.Ring.OUTER}), frozenset({fit.Ring.OUTER}), shaft=False)

# %% tags=["rig"]
seal_section("oil")

# %% tags=["rig"]
terms["fits"]

# %% [markdown]
# ## Bearings and settings

# %% tags=["rig"]
support = unit.bearings.supports[0]
bearing_section(support, unit.bearings, shim_mm=shim.choose_for(support, unit.bearings).total.m_as("mm"))

# %% tags=["rig"]
terms["settings"]

# %% [markdown]
# ## Sealant

# %% tags=["rig"]
work = film.Work.of(unit, {"face": unit.faces.faces[-1].id})
around = work.everywhere(film.Hand.FILM, work.face.film_mm)
laid_map(work, around, f"{work.face.name}: a film on every stretch of the face, round every bolt hole")

# %% tags=["rig"]
terms["sealing"]

# %% [markdown]
# ## Measuring and tools

# %% tags=["rig"]
terms["measuring"]

# %% [markdown]
# ## Planning, checking and marks

# %% tags=["rig"]
terms["planning"]

# %% [markdown]
# <details>
# <summary>Where the rules and figures come from</summary>
#
# The meanings are those that the words commonly have in the trade, as remembered, not looked up again. Drawings and figures show this course's invented unit.
#
# </details>
