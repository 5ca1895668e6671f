# %% [markdown]
# # Sealant film: exercise
#
# <div class="twoshaft-if-missing">If no forms appear below: press <b>Run</b>, then <b>Run All Cells</b>.</div>
#
# Nine tasks about the film between two faces. Take about an hour. Every answer is saved as you give it; you can stop and come back.
#
# Two parts are **must-pass**: getting a face ready and closing it (tasks 1 and 9), and the film that you lay yourself (task 5).
#
# *Invented unit, for teaching. On a real unit the maker's manual, the safety data sheets, local codes and licensed practice decide.*

# %% tags=["setup"]
from twoshaft.jobsheet import open_sheet
from twoshaft.jobsheet.film_entries import read_entries
from twoshaft.models.film import Work
from twoshaft.plots.film_laid import laid_map
from twoshaft.plots.tables import given_table

sheet = open_sheet("sealant-film")
given, unit = sheet.given, sheet.unit

# %% tags=["reference"]
from twoshaft.jobsheet.film_entries import read_entries
from twoshaft.models import film
from twoshaft.readings.sealant_film.amounts import changed, strip
from twoshaft.units.quantities import Q
from twoshaft_grader.marking import Slip, ref

lesson = "06-sealant-film#"

# %% [markdown] tags=["task"]
# ## 1. Get ready
#
# Tick everything that you do before any sealant touches the face. Then decide what to do in the situation below. **You must get the situation right to pass.** *5 points.*

# %% tags=["rig"]
given_table("The situation", ["what you see"], [(given["prepare"]["scene"]["words"],)])

# %% tags=["form"]
sheet.form(
    "prepare",
    sheet.choices("prepare-ticks", "What do you do before any sealant touches the face?",
                  options=given["prepare"]["options"]),
    sheet.choice("prepare-scene", "What do you do in the situation above?",
                 options=given["prepare"]["scene"]["options"]),
)

# %% tags=["reference"]
helps = {"scrape", "cloth", "straightedge", "blind", "lay-out", "air"}
why_not = {
    "disc": "An abrasive disc takes metal off: the face is no longer flat, and the grit goes into bearings.",
    "oil": "Sealant holds on clean, dry metal only; oil leaves a path.",
    "blow": "Compressed air drives dirt into the bearings and into eyes.",
    "bare-hand": "A bare hand leaves grease on the cleaned face.",
    "thin": "Thinned sealant runs out of the gap and shrinks as the solvent leaves.",
    "lump": "A lump is pressed inwards; a deep score is dressed or the part renewed.",
    "skin": "Skin does not stick to the other face: everything else is ready before the film is laid.",
}
shown = {key for key, _ in given["prepare"]["options"]}
ref("prepare-ticks", helps & shown, weight=3, outcome="ready-face", lesson=lesson + "clean-dry-flat",
    slips=[Slip(key, 0, text) for key, text in why_not.items() if key in shown])

# %% tags=["reference"]
right = {"heat": "away", "vapour": "stop", "eye": "rinse", "skin": "wash", "spray": "halt"}
danger = {
    "heat": "Solvent vapour catches fire on a hot surface, and some cleaners turn into poison gas there.",
    "vapour": "A strong smell means that you already breathe it in; only moving air takes it away.",
    "eye": "Every second counts, and it must not be rubbed or met with another chemical.",
    "skin": "It can make you allergic for good; solvent carries it deeper into the skin.",
    "spray": "The vapour spreads along bench and floor further than you think, and one spark is enough.",
}
scene = given["prepare"]["scene"]
ref("prepare-scene", right[scene["key"]], weight=2, outcome="ready-face", must_pass=True,
    lesson=lesson + "before-you-start",
    slips=[Slip(key, 0, danger[scene["key"]]) for key, _ in scene["options"]
           if key != right[scene["key"]]])

# %% tags=["mark"] task="prepare" points=5

# %% [markdown] tags=["task"]
# ## 2. Choose the sealant
#
# Three joints, and two sealants on the shelf. For each joint choose the sealant together with the reason. The minutes count from the first sealant to the closed joint. *6 points.*

# %% tags=["rig"]
given_table("On the shelf", ["sealant", "bridges up to, mm", "may lie open, min"],
            [(s.name, s.largest_gap_mm, s.open_minutes) for s in unit.faces.sealants
             if s.id in given["joints"]["sealants"]])

# %% tags=["rig"]
given_table("The joints", ["joint", "what it is", "largest gap, mm", "work takes, min"],
            [(n, j["what"], j["gap_mm"], j["minutes"])
             for n, j in enumerate(given["joints"]["joints"], 1)])

# %% tags=["form"]
sheet.form("joints", *[
    sheet.choice(f"joint-{n}", f"Joint {n}: which sealant, and why?",
                 options=given["joints"]["options"])
    for n, _ in enumerate(given["joints"]["joints"], 1)
])

# %% tags=["reference"]
slow, quick = (unit.faces.sealant_by_id(id) for id in given["joints"]["sealants"])
for n, joint in enumerate(given["joints"]["joints"], 1):
    asked = dict(gap=Q(joint["gap_mm"], "mm"), minutes=joint["minutes"], rigid=joint["rigid"])
    against_slow, against_quick = film.bars(slow, **asked), film.bars(quick, **asked)
    both = set(against_slow) & set(against_quick)
    best = ({"anaerobic"} if not against_slow
            else {f"moisture-{bar}" for bar in against_slow} if not against_quick
            else {f"neither-{bar}" for bar in both})
    wrong = [Slip("anaerobic", 0, "Look again at gap, stiffness and time: one of them bars it here."),
             Slip("neither-gap", 0, "One of the two bridges this gap."),
             Slip("neither-time", 0, "One of the two stays open long enough.")]
    ref(f"joint-{n}", best, outcome="choose-sealant", lesson=lesson + "which-sealant",
        slips=[slip for slip in wrong if slip.value not in best])

# %% tags=["mark"] task="joints" points=6

# %% [markdown] tags=["task"]
# ## 3. From bead to film
#
# A bead is laid beside an oil way and pressed to the width of the face. Work out the film that it makes before any of it is pushed out, what is left over on the length given when the gap is full, and the lump inside: take half of what is left over as a half round along the edge, π *r*² / 2 = volume per length.
#
# Then decide. *11 points.*

# %% tags=["rig"]
bead = given["bead"]
given_table(f"The bead{bead.get('source', '')}", ["what", "mm"],
            [("diameter of the bead", bead["diameter_mm"]), ("width that it is pressed to", bead["width_mm"]),
             ("largest gap of the bolted face", bead["gap_mm"]), ("length to reckon with", bead["along_mm"]),
             ("largest lump that the oil way bears (radius)", bead["bound_mm"])])

# %% tags=["form"]
sheet.form(
    "bead",
    sheet.number("bead-film", "How thick a film does the bead make?", "mm"),
    sheet.number("bead-over", "How much is left over on the length given?", "mm³"),
    sheet.number("bead-lump", "What radius has the half round inside?", "mm"),
    sheet.choice("bead-verdict", "Can this bead be used here?", options=[
        ["fits", "Yes: it fills the gap, and the lump is small enough"],
        ["lump", "No: it fills the gap, but the lump is too large"],
        ["thin", "No: it does not fill the gap"],
        ["both", "No: it does not fill the gap, and the lump is too large"]]),
    sheet.choice("bead-nozzle", "Which of these beads would you use instead, or again?",
                 options=[[f"d{round(10 * d):02d}", f"{d:g} mm"] for d in given["bead"]["nozzles_mm"]]),
)

# %% tags=["reference"]
bead = given["bead"]
d, w, gap = (Q(bead[name], "mm") for name in ("diameter_mm", "width_mm", "gap_mm"))
along, bound = Q(bead["along_mm"], "mm"), Q(bead["bound_mm"], "mm")
laid = ref(
    "bead-film", film.bead_to_film(d, w), outcome="size-film", weight=2, tolerance=0.03,
    lesson=lesson + "how-thick-is-enough-three-lines-of-arithmetic",
    slips=[Slip(4 * film.bead_to_film(d, w), 0.3, "You took the diameter for the radius: the bead got four times as large."),
           Slip(d**2 / w, 0.3, "You took the bead as square; it is round, so π/4 belongs to it.")],
)
over = ref(
    "bead-over", film.surplus(laid, gap, w, along), outcome="size-film", weight=2, tolerance=0.03,
    lesson=lesson + "how-thick-is-enough-three-lines-of-arithmetic",
    slips=[Slip(film.surplus(laid, Q(0, "mm"), w, along), 0.3, "This is all of the bead; what fills the gap is not left over.")],
)

# %% tags=["reference"]
lump = ref(
    "bead-lump", film.half_round(over / 2, along), outcome="size-film", weight=2, tolerance=0.03,
    lesson=lesson + "how-thick-is-enough-three-lines-of-arithmetic",
    slips=[Slip(film.half_round(over, along), 0.5, "Only about half of it comes out on the oil side."),
           Slip(film.half_round(over / 4, along), 0.5, "This is a full round; along an edge it lies as a half round.")],
)
full, large = laid >= gap, lump > bound
ref("bead-verdict", ("lump" if large else "fits") if full else ("both" if large else "thin"),
    outcome="size-film", weight=1.5, lesson=lesson + "a-film-not-a-bead")
films = {size: film.bead_to_film(Q(size, "mm"), w) for size in bead["nozzles_mm"]}
lumps = {size: film.half_round(film.surplus(t, gap, w, along) / 2, along) for size, t in films.items()}
small = {f"d{round(10 * size):02d}" for size in films if films[size] < gap}
fat = {f"d{round(10 * size):02d}" for size in films if lumps[size] > bound}

# %% tags=["reference"]
every = {f"d{round(10 * size):02d}" for size in given["bead"]["nozzles_mm"]}
ref("bead-nozzle", every - small - fat, outcome="size-film", weight=1.5, lesson=lesson + "a-film-not-a-bead",
    slips=[Slip(small, 0, "This bead does not fill the largest gap: the oil finds it."),
           Slip(fat, 0, "This bead puts a lump inside that is larger than the oil way bears.")])

# %% tags=["mark"] task="bead" points=11

# %% [markdown] tags=["task"]
# ## 4. Against the clock
#
# This is how the work went, in this order. The clock runs from the first touch of sealant until all bolts are run down by hand; then the face counts as closed. Work out how old the first of the film is by then, how many minutes lie between that and the limit, and what has to be done. *6 points.*

# %% tags=["rig"]
given_table(f"How it went; the film may lie open for {given['clock']['limit_minutes']:g} minutes"
            f"{given['clock'].get('source', '')}",
            ["step", "took, min"], [(words, minutes) for _, words, minutes in given["clock"]["rows"]])

# %% tags=["form"]
sheet.form(
    "clock",
    sheet.number("clock-age", "How old is the first of the film when the face is closed?", "min"),
    sheet.number("clock-left", "How many minutes lie between that and the limit?", "min"),
    sheet.choice("clock-do", "What has to be done about the film?", options=given["clock"]["options"]),
)

# %% tags=["reference"]
rows, limit = given["clock"]["rows"], Q(given["clock"]["limit_minutes"], "min")
took = {key: sum(minutes for k, _, minutes in rows if k == key) for key, _, _ in rows}
counted = Q(sum(minutes for key, _, minutes in rows if key not in ("before", "tighten")), "min")
first = next(minutes for key, _, minutes in rows if key == "lay")
age = ref(
    "clock-age", counted, outcome="sealant-clock", weight=2, tolerance={"absolute": Q(0.1, "min")},
    lesson=lesson + "the-clock",
    slips=[Slip(counted + Q(took["before"], "min"), 0.5, "The clock starts with the first sealant, not with getting ready."),
           Slip(counted + Q(took["tighten"], "min"), 0.5, "The face is closed when all bolts are run down; tightening comes after."),
           Slip(counted - Q(took["between"], "min"), 0, "Breaks count too: the film ages while nobody works on it."),
           Slip(counted - Q(first, "min"), 0.5, "The first of the film ages while the rest is laid.")],
)

# %% tags=["reference"]
left = abs(limit - age)
ref("clock-left", left, outcome="sealant-clock", tolerance={"absolute": Q(0.1, "min")},
    lesson=lesson + "the-clock")
do = "close" if age <= limit else "renew"
patch = ("A patch leaves the skin where it is: skin neither sticks nor flows." if do == "renew"
         else "Lifting it tears the film and lets air in: lifted means open.")
told = {"recoat": patch, "wet": patch,
        "harder": "No clamp makes a skin flow, and too much torque harms the thread.",
        "close": "The first of the film is older than the sheet allows.",
        "renew": "The film is within its time: a new one costs time and sealant for nothing."}
ref("clock-do", do, outcome="sealant-clock", weight=2, lesson=lesson + "the-clock",
    slips=[Slip(key, 0, text) for key, text in told.items() if key != do])

# %% tags=["mark"] task="clock" points=6

# %% [markdown] tags=["task"]
# ## 5. Lay the film
#
# Lay the sealant on this face. Choose tool, size, place and side, and press the button; or draw on the picture. Wiping a stretch takes off what lies on it.
#
# The work goes at the pace of the table, one pass after the other, and the clock starts with the first sealant. Your film is closed by the computer when it is marked. Done means: it **seals**, it is closed **in time**, **no lump** larger than the table allows comes near an oil way, and **no blind hole** (drawn filled) takes too much. **You must get this right to pass.**
#
# Work out first what the clock says: how old the first sealant is when the face is closed, if all stretches are done once by finger, and if they are done once with a bead. *14 points.*

# %% tags=["rig"]
lay = given["lay"]
given_table(f"This face, today{lay.get('source', '')}", ["what", "value"], [
    ("largest gap of the bolted face", f"{lay['gap_mm']:g} mm"),
    ("width of a film by finger", f"{unit.faces.face_by_id(lay['face']).film_width_mm:g} mm"),
    ("largest lump near an oil way (radius)", f"{min(lay['lumps_mm'].values()):g} mm"),
    ("a blind hole takes at most", f"{lay['blind_mm3']:g} mm³"),
    ("the film may lie open for", f"{lay['minutes']:g} min"),
    ("a film by finger takes", f"{lay['pace']['film']:g} min for 100 mm"),
    ("a bead takes", f"{lay['pace']['bead']:g} min for 100 mm"),
    ("wiping takes", f"{lay['pace']['wipe']:g} min for 100 mm"),
    ("from the last pass to the closed face", f"{lay['pace']['close']:g} min"),
    ("all stretches together are", f"{Work.of(unit, lay).length_mm:.0f} mm long")])

# %% tags=["form"]
sheet.form(
    "lay",
    sheet.number("lay-by-finger", "All stretches once by finger: how old is the first sealant then?", "min"),
    sheet.number("lay-by-bead", "All stretches once with a bead: how old is the first sealant then?", "min"),
    sheet.film("lay-film", "Lay the film", given["lay"]),
)

# %% tags=["reference"]
work = film.Work.of(unit, given["lay"])
closing = Q(work.pace.close, "min")
by_finger, by_bead = (Q(work.minutes_taken(work.everywhere(hand, 1.0)), "min")
                      for hand in (film.Hand.FILM, film.Hand.BEAD))
for name, minutes, swapped in (("lay-by-finger", by_finger, by_bead), ("lay-by-bead", by_bead, by_finger)):
    ref(name, minutes, outcome="sealant-clock", weight=3, tolerance={"absolute": Q(0.1, "min")},
        lesson=lesson + "the-clock",
        slips=[Slip(minutes - closing, 0.3, "The face is not closed with the last pass: what follows it counts too."),
               Slip(swapped, 0, "This is the pace of the other tool.")])
ref("lay-film", work, outcome="lay-film", weight=8, must_pass=True, lesson=lesson + "a-film-not-a-bead")

# %% tags=["mark"] task="lay" points=14

# %% [markdown] tags=["task"]
# ## 6. Round the bolts
#
# A thin bead was laid once round the face. The table says on which side it passes some of the bolt holes, and where each hole leads. Tick the holes through which oil gets out. Then answer the question about a blind hole. *5 points.*

# %% tags=["rig"]
sides = {"inside": "on the oil side", "outside": "on the outer side", "middle": "straight across", "round": "all round"}
given_table("The bead at the bolts", ["hole", "the hole is", "the bead passes"],
            [(name, leads, sides[side]) for _, name, leads, side in given["holes"]["rows"]])

# %% tags=["form"]
sheet.form(
    "holes",
    sheet.choices("holes-leak", "Through which of these holes does oil get out?",
                  options=given["holes"]["options"]),
    sheet.choice("holes-blind", given["holes"]["scene"]["words"],
                 options=given["holes"]["scene"]["options"]),
)

# %% tags=["reference"]
holes = given["holes"]
face = film.Work.of(unit, {"face": holes["face"], "open_holes": holes["open_holes"]}).face
passed = {id: film.Side(side) for id, side in holes["sides"].items()}
through = film.leaking_holes(film.Land.of(face), passed, Q(holes["pressed_mm"], "mm"))
say = {"outside": "Oil may stand in a hole; it gets out only where the hole leads out.",
       "inside": "On the oil side of a hole the bead keeps the oil away from it.",
       "round": "All round a hole it is sealed on both sides."}
ref("holes-leak", set(through), outcome="seal-holes", weight=3, lesson=lesson + "round-every-bolt-hole",
    slips=[Slip(id, 0, say[side]) for id, _, _, side in holes["rows"]
           if id not in through and side in say])
blind = {"oil-in": "locks", "bead-over": "piston", "ring": "air"}[holes["scene"]["key"]]
ref("holes-blind", blind, outcome="seal-holes", weight=2, lesson=lesson + "round-every-bolt-hole",
    slips=[Slip(key, 0, "What is shut in has no way out; ask where it could go.")
           for key, _ in holes["scene"]["options"] if key != blind])

# %% tags=["mark"] task="holes" points=5

# %% [markdown] tags=["task"]
# ## 7. Judge somebody's film
#
# Somebody laid this film, stretch by stretch, and the face was then closed. Two things are wrong: on one stretch the oil gets out, and on one stretch more comes out inside than the oil way nearby bears. Find both. *6 points.*

# %% tags=["rig"]
fault = given["fault"]
given_table(f"Closed at minute {fault['closed_minute']:g}; the film may lie open for {fault['minutes']:g} minutes",
            ["stretch", "laid", "at minute", "largest gap there, mm", "face under it"],
            [row[1:] for row in fault["rows"]])

# %% tags=["rig"]
work = Work.of(unit, given["fault"])
laid_map(work, read_entries(given["fault"]["entries"], work.face), "The film as it was laid")

# %% tags=["form"]
sheet.form(
    "fault",
    sheet.choice("fault-leak", "On which stretch does the oil get out?", options=given["fault"]["options"]),
    sheet.choice("fault-why", "Why does it get out there?", options=given["fault"]["reasons"]),
    sheet.choice("fault-lump", "Which stretch puts too much near an oil way?",
                 options=given["fault"]["options"]),
)

# %% tags=["reference"]
fault = given["fault"]
work = film.Work.of(unit, fault)
closed = work.close_film(work.lay(read_entries(fault["entries"], work.face), fault["minutes_laid"]),
                         fault["closed_minute"])
((leaking, state),) = closed.leaks
lumpy = {place for _, place in closed.endangered}
fine = {id for id, _ in fault["options"]} - lumpy - {leaking}
where = lesson + "a-film-not-a-bead"

# %% tags=["reference"]
seals = "This stretch seals; what is wrong with it goes inside."
whole = "Here the film is thicker than the gap, on clean metal, and in time."
ref("fault-leak", {leaking}, outcome="judge-film", weight=2, lesson=where,
    slips=[Slip(lumpy, 0, seals), Slip(fine, 0, whole)])
reason = {film.State.EMPTY: "thin", film.State.OILY: "oil", film.State.DIRTY: "dirt",
          film.State.SKINNED: "old"}[state]
others = {"air", "wide", "thin", "oil", "dirt", "old"} - {reason}
ref("fault-why", {reason}, outcome="judge-film", weight=2, lesson=lesson + "clean-dry-flat",
    slips=[Slip(others, 0, "Nothing in the table or the picture shows that on this stretch.")])

# %% tags=["reference"]
open_one = "This stretch is the one that leaks; look for the one with too much."
little = "What comes out of this stretch is small, or far from any oil way."
ref("fault-lump", {place for _, place in closed.endangered}, outcome="judge-film", weight=2,
    lesson=where, slips=[Slip({leaking}, 0, open_one), Slip(fine, 0, little)])

# %% tags=["mark"] task="fault" points=6

# %% [markdown] tags=["task"]
# ## 8. How long does it flow?
#
# All bolts are run down by hand, and the paste flows. Work out how long it takes to get from the film at the start to the gap at the end, as a long strip:
#
# *t* = *µ L B*³ / (2 *F*) × (1/*h₂*² − 1/*h₁*²)
#
# Put everything into metres, newtons and pascal-seconds first. Then say which change shortens it most. *7 points.*

# %% tags=["rig"]
closing = given["closing"]
given_table("The strip", ["what", "value"], [
    ("viscosity µ", f"{closing['viscosity_pa_s']:g} Pa·s"), ("length L", f"{closing['length_mm']:g} mm"),
    ("width B", f"{closing['width_mm']:g} mm"), ("clamp F of all bolts, by hand", f"{closing['clamp_kn']:g} kN"),
    ("film at the start h₁", f"{closing['start_mm']:g} mm"), ("gap at the end h₂", f"{closing['end_mm']:g} mm")])

# %% tags=["form"]
sheet.form(
    "closing",
    sheet.number("closing-time", "How long does it take?", "s"),
    sheet.choice("closing-change", "Which change shortens it most?",
                 options=[[change["key"], change["words"]] for change in given["closing"]["changes"]]),
)

# %% tags=["reference"]
closing = given["closing"]
right_time = film.squeeze_time_strip(**strip(closing))
ratio = (closing["end_mm"] / closing["start_mm"]) ** 2
ref("closing-time", right_time, outcome="closing-time", weight=4, tolerance=0.03,
    lesson=lesson + "how-long-the-paste-takes-to-flow",
    slips=[Slip(2 * right_time, 0.5, "The 2 below the line is missing."),
           Slip(right_time / (1 - ratio), 0.7, "You left out the film at the start; it makes a small difference, but it is in the formula."),
           Slip(right_time * (1 + ratio) / (1 - ratio), 0.5, "The two terms are subtracted, not added.")])
times = {change["key"]: film.squeeze_time_strip(**strip(changed(closing, change)))
         for change in closing["changes"]}
ref("closing-change", min(times, key=times.get), outcome="closing-time", weight=2,
    lesson=lesson + "how-long-the-paste-takes-to-flow",
    slips=[Slip(key, 0, "Put the factor into the formula and mind the powers: another change does more.")
           for key in times if key != min(times, key=times.get)])

# %% tags=["mark"] task="closing" points=7

# %% [markdown] tags=["task"]
# ## 9. Closed, and then?
#
# First decide what to do about what happened. Then work out how many hours the face still has to wait for its oil, and say whether oil may go in now. **You must get both decisions right to pass.** *5 points.*

# %% tags=["rig"]
after = given["after"]
given_table("What happened", ["what you see"], [(after["mishap"]["words"],)])

# %% tags=["rig"]
after = given["after"]
given_table(f"Another case, well closed{after.get('source', '')}", ["what", "value"], [
    ("the sheet asks for, at 20 °C", f"{after['cure_hours']:g} h"),
    ("in this workshop it takes", "as long as on the sheet" if after["cold_factor"] == 1
     else f"{after['cold_factor']:g} times as long, since it is cold"),
    ("closed since", f"{after['waited_hours']:g} h")])

# %% tags=["form"]
sheet.form(
    "after",
    sheet.choice("after-mishap", "What do you do about what happened?",
                 options=given["after"]["mishap"]["options"]),
    sheet.number("after-wait", "How many hours are still to wait for the oil? 0 if none.", "h"),
    sheet.choice("after-oil", "May oil go into the other case now?", options=given["after"]["oil"]),
)

# %% tags=["reference"]
after = given["after"]
mend = "find" if after["mishap"]["key"] == "inside" else "renew"
loss = {"slid": "Sliding drags part of the film over the edges and leaves lumps inside; nothing from outside mends that.",
        "lifted": "Once lifted, the film is torn and takes in air; what was squeezed out is missing.",
        "dust": "Dust in the film is a path, and most of it cannot be seen.",
        "inside": "It is soft, sticks in an oil way and is held by neither filter nor magnet, and no oil dissolves it."}
ref("after-mishap", mend, weight=2, outcome="close-and-cure", must_pass=True,
    lesson=lesson + "down-once-straight",
    slips=[Slip(key, 0, loss[after["mishap"]["key"]]) for key, _ in after["mishap"]["options"]
           if key != mend])

# %% tags=["reference"]
sheet_says = unit.faces.sealant_by_id(after["sealant"]).model_copy(
    update={"cure_hours": after["cure_hours"] * after["cold_factor"]})
waited = Q(after["waited_hours"], "h")
more = Q(max(0.0, sheet_says.cure_hours - after["waited_hours"]), "h")
warm = Q(max(0.0, after["cure_hours"] - after["waited_hours"]), "h")
ref("after-wait", more, outcome="close-and-cure", tolerance={"absolute": Q(0.2, "h")},
    lesson=lesson + "oil-only-when-it-has-cured",
    slips=[Slip(warm, 0.3, "In the cold it takes longer than the sheet says for 20 °C.")] if warm != more else [])
may = "cured" if film.ready_for_oil(sheet_says, waited) else "paste"
ref("after-oil", may, weight=2, outcome="close-and-cure", must_pass=True,
    lesson=lesson + "oil-only-when-it-has-cured",
    slips=[Slip(key, 0, "What counts is the hours of the sheet at this temperature, and nothing else.")
           for key, _ in after["oil"] if key != may])

# %% tags=["mark"] task="after" points=5

# %% [markdown]
# ## Done?
#
# Go back to **start-here** and press **Hand in**. You get a receipt. You can hand in again until the due date; the last one counts.
