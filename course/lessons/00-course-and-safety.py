# %% [markdown]
# # How the course works, and bench safety
#
# <div class="twoshaft-if-missing">If no pictures appear below: press <b>Run</b>, then <b>Run All Cells</b>.</div>
#
# **After this lesson you can**
#
# - sign in, answer in the units you are used to, and hand in
# - say how a mark comes about
# - look round a workshop and say what to stop
# - say why each of the usual cautions is there
# - work out whether a load may be lifted by hand
#
# **Time:** 30 to 40 minutes. **What passing proves:** that you know the usual cautions and can judge a workshop and a lift. Your instructor decides when you work at a bench. Some items are must-pass: no marks elsewhere make up for them.
#
# *Invented unit and invented workshop, for teaching. On a real job the maker's manual, local codes and licensed practice decide.*

# %% tags=["setup"]
from twoshaft.models import lifting
from twoshaft.plots.tables import given_table
from twoshaft.practice import open_lesson
from twoshaft.rigs import college_sources, hazard_picture, lifting_rig, order_bench, reading_table
from twoshaft.safety import load_jobs, load_safety

lesson = open_lesson("course-and-safety")
sheet = lesson.sheet
safety, jobs, sources = load_safety(), load_jobs(), college_sources()

# %% [markdown]
# ## Your work is yours
#
# A workshop laptop has one account and many users. So you **sign in** on the page *start-here*, with your name and the sign-in word from your slip. Every form says at its top whose work it is. If the name is not yours, go back and sign in.
#
# Before you leave, sign out. The laptop does not know who types.

# %% [markdown]
# ## Saved as you go
#
# There is no save button. An answer is saved when you have given it, and the form says when. You can close the lid and come back tomorrow.
#
# If you open the same exercise in **two windows**, both fill in the same sheet, field by field. If both changed the same field, the later answer counts, and the form says so.

# %% [markdown]
# ## Figures the way you write them

# %% tags=["predict"]
lesson.predict("taken-as-typed")

# %% [markdown] tags=["then"]
# Now type them, and a few of your own. Under each field you see how it was read.

# %% tags=["then"]
lesson.form(
    "try-figures",
    sheet.number("try-clamp", "A clamp load; try 18,5 kN", "kN"),
    sheet.number("try-torque", "A torque; try 13 ft lb, then 13 mN", "N·m"),
    sheet.number("try-angle", "An angle; try 1 1/4 turn", "°"),
    sheet.number("try-length", "A length; try 0.049 in, then 1,234 mm", "mm"),
)

# %% [markdown] tags=["then"]
# Point or comma, fraction or decimal, millimetres or inches: all are read. If a figure could be meant in **two ways**, the form asks which one you mean. Some people read `1,234 mm` as a little more than one millimetre, others as more than a metre.
#
# The form asks for a missing unit, too. On the bench, a missing unit can make a torque twelve times too small: lbf·in set for lbf·ft.

# %% tags=["then"]
reading_table("How a figure is read", [
    ("18,5 kN", "kN"), ("13 ft lb", "N·m"), ("1 1/4 turn", "°"), ("1/16 in", "mm"),
    ("1,234 mm", "mm"), ("13 mN", "N·m"), ("25 mil", "mm"), ("20 ft/lb", "N·m"), ("1.25", "mm"),
])

# %% [markdown]
# ## Choose, tick, put in order
#
# The other answers need no typing. Use the mouse, a finger, or the keyboard. **Tab** goes from field to field, and **Space** ticks. In a list, the arrow keys go from step to step, and **Shift and an arrow** move the step.

# %% tags=["form"]
sheet.form(
    "try-choosing",
    sheet.choice("try-choice", "Choose one: what does the form tell you before it is marked?",
                 options=[["read", "Whether it can be read"], ["right", "Whether it is right"]]),
    sheet.choices("try-ticks", "Tick any number: which of these did you try?",
                  options=[["mouse", "Mouse"], ["keys", "Keyboard"], ["touch", "Finger"]]),
    sheet.order("try-order", "Put these in the order in which you meet them",
                steps=[["mark", "Feedback"], ["hand", "Hand in"], ["in", "Sign in"], ["do", "Answer"]]),
)

# %% [markdown]
# The form never says what is right. It says what is **missing** or **cannot be read**. Only marking shows what is right.

# %% [markdown]
# ## Handing in
#
# On *start-here* press **Hand in**. You get a **receipt**: a short code for exactly what you handed in, and when. Write it down; it settles every question. Until the due date you can hand in again, and the last one counts. After feedback your instructor decides whether you get another attempt. It comes with fresh readings.
#
# A **supervised attempt** is one that an assessor opens for you in a room. Save nothing on its sheet before the assessor has opened it. Nobody watched an answer from before that, so its outcome does not count as supervised.

# %% [markdown]
# ## How a mark comes about
#
# - **Many answers are right.** Every order that works, every unit that means the same.
# - **A mistake costs marks once.** If a later figure follows from your earlier one, it counts as right.
# - **Must-pass** items concern safety. One mistake there, and the outcome is not met, whatever the mark.
# - **Guessing brings next to nothing.** What luck would earn is taken off.

# %% tags=["rig"]
given_table("A sheet as it was marked", ["field", "points", "what became of it"],
            [("depth", 2, "mistake: two readings mixed up"), ("gap", 3, "follows from the depth"),
             ("shim", 3, "follows from the gap")])

# %% tags=["predict"]
lesson.predict("points-left")

# %% [markdown] tags=["then"]
# At the bench it is the same: one wrong reading, one thing to put right. But a must-pass item is judged on the **true** figure, because a wrong shim does the same harm, however you got its figure.

# %% [markdown]
# ## Look round first
#
# Bench safety begins with looking. Below is an invented workshop with twelve places. At some of them somebody can get hurt.

# %% tags=["predict"]
lesson.predict("clear-first")

# %% [markdown] tags=["then"]
# Go from place to place, read what can be seen, and judge it: *Stop here* or *Fine as it is*. You are told at once, and why.

# %% tags=["then"]
hazard_picture(own_sources=sources)

# %% [markdown] tags=["then"]
# How many did you let through? One rule decides what you do: first bring clear anybody who can get hurt **at this moment**. If something needs no repair, put it right yourself. If it is broken, or if nobody knows what it is, take it **out of use** and report it. *Another day* draws the workshop anew. Go on until you find every danger.

# %% [markdown]
# ## The usual cautions, and why

# %% tags=["predict"]
lesson.predict("cleaner-dry")

# %% tags=["then"]
by_hand = ("eyes", "striking", "pressing", "pinching", "threads")
given_table("Eyes, hands and parts under force", ["caution", "why"],
            [(c.text, c.why) for c in safety.cautions if c.theme in by_hand])

# %% tags=["then"]
given_table("Chemicals, heat and air", ["caution", "why"],
            [(c.text, c.why) for c in safety.cautions if c.theme in ("chemicals", "heat", "air")])

# %% [markdown] tags=["then"]
# Wear the **kind** of eye protection that fits: side shields where parts fly, closed goggles where something splashes or is blown. Reading glasses and sunglasses do not protect. People who stand near need the same protection as you.
#
# Brush or rinse an oil gallery clear. Only where that does not help, blow it: air turned down to 2 bar, a guarded nozzle, closed goggles, and nobody at the other end.
#
# Turning gears slowly does *not* make it safe. The teeth hold the finger before you feel it.

# %% [markdown]
# ## Lifting, and where figures come from
#
# The last cautions are about loads, and about the figures that you work with.

# %% tags=["rig"]
given_table("Lifting, and where figures come from", ["caution", "why"],
            [(c.text, c.why) for c in safety.cautions if c.theme in ("lifting", "figures")])

# %% [markdown]
# ## Whose rules these are
#
# Every caution has a source, where you can read more. The regulations among the sources are **of one country**, the United States. Other countries have other rules. **Your college's own rules decide**, and the law of the country where you work. Ask your instructor which rules those are.

# %% tags=["rig"]
given_table("Where each caution can be read up", ["caution", "source"],
            [(c.text, ". ".join(f"{who}: {said}" for who, said in sources.told(c).items())) for c in safety.cautions])

# %% [markdown]
# ## What comes first

# %% tags=["predict"]
lesson.predict("hoist-clear")

# %% [markdown] tags=["then"]
# Put the steps in order; the bench says what is wrong, and why.

# %% tags=["then"]
order_bench(jobs, jobs.operations_of["hoist"])

# %% [markdown] tags=["then"]
# From the moment that the case hangs, it can fall.

# %% [markdown]
# ## May I lift this?
#
# A case half of 16 kg does not feel heavy. But your back also feels the **reach**: how far the load is from your body.
#
# The lifting equation begins with 23 kg, for the easiest lift there is. Everything that makes the lift harder takes a share away:
#
# **limit = 23 kg × reach × height × travel × twist × frequency × grip**, and **index = load ÷ limit**.

# %% tags=["predict"]
lesson.predict("limit-left", right=f"{lifting.Lift.measured({'mass_kg': 16, 'reach_cm': 50, 'height_cm': 25, 'travel_cm': 60, 'twist_deg': 30}).limit().m_as('kg'):.1f} kg")

# %% tags=["then"]
lifting_rig(mass_kg=16, reach_cm=50, height_cm=25, travel_cm=60, twist_deg=30)

# %% [markdown]
# ## Make the lift easier
#
# In the picture above, bring the index to 1 without changing the load.

# %% tags=["predict"]
lesson.predict("most-help")

# %% [markdown] tags=["then"]
# Which change helps most depends on the lift. If the load is close to you but far to the side, less twist helps most. A lift table helps twice: it raises the load and shortens the travel.
#
# - Index **up to 1**: most healthy people can do this lift every day.
# - **Above 1**: use the hoist or the lift table, or change the lift.
# - **Above 3**: do not lift.
#
# If your own back can take less, your back decides. A lift table or sling carries the load that is **marked** on it, so find out what the load weighs before you choose one.

# %% tags=["then"]
grips = {"good": "handles", "fair": "fingers bent right round an edge", "poor": "smooth, oiled or sharp"}
given_table("How the six parts are worked out", ["part", "works out as", "best at"], [
    ("reach, H cm", "25 ÷ H", "25 cm or less"),
    ("height of the hands, V cm", "1 − 0.003 × the distance of V from 75", "75 cm"),
    ("travel up or down, D cm", "0.82 + 4.5 ÷ D", "25 cm or less"),
    ("twist of the body, A degrees", "1 − 0.0032 × A", "0"),
    ("frequency", "1 for one lift in five minutes or fewer, for up to an hour", "seldom"),
    *[(f"grip, {word}", f"{lifting.GRIP[grip][0]:g} below 75 cm, {lifting.GRIP[grip][1]:g} above", grip)
      for grip, word in grips.items()],
])

# %% [markdown]
# ## Work it out
#
# Each calculation comes three times: worked, with steps left out, and on your own. Then go on with fresh readings as often as you like. You are told at once what is right, and which mistake a wrong figure looks like. Nothing here is marked.

# %% tags=["rig"]
lesson.calculation("another-scale")

# %% tags=["rig"]
lesson.calculation("inches")

# %% tags=["rig"]
lesson.calculation("turns-to-degrees")

# %% tags=["rig"]
lesson.calculation("lift")

# %% [markdown]
# ## When it has happened anyway
#
# Stop the machine, then help. Shout for the first-aider. Rinse eyes and skin with plenty of water, and take the **safety data sheet** along to the doctor. Air or oil driven under the skin looks harmless and is an emergency: to hospital at once. Then report it in writing, so that it does not happen again.
#
# Now open the exercise from **start-here**.

# %% [markdown]
# <details>
# <summary>Where the rules and figures come from</summary>
#
# - Lifting equation: NIOSH publication 94-110. Load constant, index and frequency table as quoted in publications; the four formulas and the grip table as remembered, not looked up again.
# - Eye protection: 29 CFR 1910.133(a); which kind for what: appendix B of its subpart I, as remembered, not looked up again. Guards at the point of operation: 29 CFR 1910.212. Labels and data sheets: 29 CFR 1910.1200. That a data sheet has sixteen sections: GHS, as remembered, not looked up again.
# - Hard hammers on hard parts: hammer makers' safety rules. Compressed air: 29 CFR 1910.242(b), as remembered, not looked up again. Air at 2 bar with a guarded nozzle: common practice, no source.
# - All other cautions: common practice, no source. First aid: as remembered, not looked up again; your college's own rules win.
# - 29 CFR and NIOSH are of one country, the United States. Your college's own rules decide.
# - Workshop, unit, jobs and figures are invented for teaching.
#
# </details>
