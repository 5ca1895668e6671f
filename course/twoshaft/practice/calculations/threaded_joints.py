"""Calculations of threaded joints: a card, a found setting, aluminium, a blind hole, a nut."""

import math

from twoshaft.models import joint
from twoshaft.practice.calculation import Calculation, Given, Step

CARD = Calculation(
    "old-card",
    "From an old card to the setting",
    "The card is in lbf·ft (one is 1.356 N·m), and an adapter stands straight on the wrench.",
    (
        Given("card", "torque on the card", 10, 40, 1, "lbf·ft"),
        Given("wrench", "wrench, from drive to grip", 280, 420, 10, "mm"),
        Given("adapter", "adapter", 40, 90, 5, "mm"),
    ),
    (
        Step("torque", "Torque at the bolt", "N·m", "{card} × 1.356", lambda s: s["card"] * 1.3558,
             {"You divided by 1.356 in place of multiplying.": lambda s: s["card"] / 1.3558,
              "You took the figure as N·m; it is in lbf·ft.": lambda s: s["card"]}),
        Step("setting", "Set the wrench to", "N·m", "{torque} × {wrench} ÷ ({wrench} + {adapter})",
             lambda s: joint.setting_with_adapter.plain(s["torque"], s["wrench"] / 1e3,
                                                        s["adapter"] / 1e3, 0.0),
             {"You set more; the longer lever needs less.":
              lambda s: s["torque"] * (s["wrench"] + s["adapter"]) / s["wrench"],
              "The adapter was left out.": lambda s: s["torque"]}),
    ),
)  # fmt: skip

FOUND = Calculation(
    "found-setting",
    "A setting that was found",
    "Somebody set the wrench without thinking of the adapter. What did the bolt get? Clamp is "
    "about torque ÷ (K × diameter), with K the nut factor of the thread.",
    (
        Given("setting", "setting found", 15, 60, 1, "N·m"),
        Given("wrench", "wrench, from drive to grip", 280, 420, 10, "mm"),
        Given("adapter", "adapter, straight on", 40, 90, 5, "mm"),
        Given("factor", "K of the thread", 0.14, 0.20, 0.01),
        Given("across", "diameter of the thread", 8, 10, 2, "mm"),
        Given("yields", "clamp at which the bolt yields", 28, 48, 1, "kN"),
    ),
    (
        Step("torque", "Torque at the bolt", "N·m",
             "{setting} × ({wrench} + {adapter}) ÷ {wrench}",
             lambda s: joint.torque_at_bolt.plain(s["setting"], s["wrench"] / 1e3,
                                                  s["adapter"] / 1e3, 0.0),
             {"The adapter makes it more, not less.":
              lambda s: s["setting"] * s["wrench"] / (s["wrench"] + s["adapter"])}),
        Step("more", "Too much, in per cent of the setting", "", "({torque} ÷ {setting} − 1) × 100",
             lambda s: (s["torque"] / s["setting"] - 1) * 100,
             {"That is the whole torque in per cent; the part above 100 was asked.":
              lambda s: s["torque"] / s["setting"] * 100}, off=0.3),
        Step("clamp", "Clamp that this leaves", "kN", "{torque} ÷ ({factor} × {across})",
             lambda s: joint.clamp_short.plain(s["torque"], s["factor"], s["across"] / 1e3),
             {"You multiplied by K.":
              lambda s: s["torque"] * s["factor"] / s["across"]}),
        Step("use", "Share of the clamp at which it yields", "%", "{clamp} ÷ {yields} × 100",
             lambda s: s["clamp"] / s["yields"] * 100,
             {"You divided the clamp at which it yields by the clamp.":
              lambda s: s["yields"] / s["clamp"] * 100}, off=0.6),
    ),
)  # fmt: skip

WRONG_STATE = Calculation(
    "wrong-state",
    "The wrong state of the thread",
    "Clamp is about torque ÷ (K × diameter). A slippery thread has a smaller nut factor K.",
    (
        Given("torque", "torque of the card", 15, 40, 1, "N·m"),
        Given("across", "diameter of the thread", 8, 10, 2, "mm"),
        Given("meant", "K as the card means it", 0.15, 0.19, 0.01),
        Given("found", "K as found", 0.09, 0.12, 0.01),
    ),
    (
        Step("wanted", "Clamp that is meant", "kN", "{torque} ÷ ({meant} × {across})",
             lambda s: joint.clamp_short.plain(s["torque"], s["meant"], s["across"] / 1e3),
             {"You multiplied by K.":
              lambda s: s["torque"] * s["meant"] / s["across"]}),
        Step("got", "Clamp with the same torque as found", "kN", "{torque} ÷ ({found} × {across})",
             lambda s: joint.clamp_short.plain(s["torque"], s["found"], s["across"] / 1e3),
             {"You multiplied by K.":
              lambda s: s["torque"] * s["found"] / s["across"]}),
        Step("times", "How many times what is meant", "", "{got} ÷ {wanted}",
             lambda s: s["got"] / s["wanted"],
             {"You divided the other way round.": lambda s: s["wanted"] / s["got"]}),
    ),
)  # fmt: skip

ALUMINIUM = Calculation(
    "bolt-in-aluminium",
    "A bolt in aluminium",
    "The load that strips the hole grows with the length of thread that meets.",
    (
        Given("length", "thread that meets", 9, 20, 0.5, "mm"),
        Given("pitch", "pitch", 1.0, 1.5, 0.25, "mm"),
        Given("permm", "strips at, for each mm of length", 1.8, 2.6, 0.1, "kN"),
        Given("clamp", "clamp of the bolt", 9, 16, 0.5, "kN"),
    ),
    (
        Step("turns", "Turns that hold", "", "{length} ÷ {pitch}",
             lambda s: s["length"] / s["pitch"],
             {"You multiplied by the pitch in place of dividing.":
              lambda s: s["length"] * s["pitch"]}),
        Step("load", "The hole strips at", "kN", "{length} × {permm}",
             lambda s: s["length"] * s["permm"],
             {"You took the turns; the load is given for each millimetre.":
              lambda s: s["turns"] * s["permm"]}),
        Step("times", "How many times the clamp", "", "{load} ÷ {clamp}",
             lambda s: s["load"] / s["clamp"],
             {"You divided the clamp by the load.": lambda s: s["clamp"] / s["load"]}),
    ),
)  # fmt: skip

BLIND = Calculation(
    "blind-hole",
    "Oil in a blind hole",
    "The room under the tip of the bolt is round. Oil that does not fit into it is squeezed.",
    (
        Given("across", "width of the hole", 6, 10, 0.5, "mm"),
        Given("room", "length of the room under the tip", 4, 9, 0.5, "mm"),
        Given("oil", "oil in the hole", 0.75, 1.2, 0.05, "cm³"),
        Given("pitch", "pitch", 1.0, 1.5, 0.25, "mm"),
    ),
    (
        Step("volume", "The room", "cm³", "π ÷ 4 × ({across})² × {room} ÷ 1000",
             lambda s: math.pi / 4 * s["across"] ** 2 * s["room"] / 1e3,
             {"You took the width for the radius.":
              lambda s: math.pi * s["across"] ** 2 * s["room"] / 1e3,
              "You left out the square.": lambda s: math.pi / 4 * s["across"] * s["room"] / 1e3}),
        Step("over", "Oil that does not fit", "cm³", "{oil} − {volume}",
             lambda s: s["oil"] - s["volume"], off=0.006),
        Step("turns", "Turns before the head is down", "",
             "{over} × 1000 ÷ (π ÷ 4 × ({across})²) ÷ {pitch}",
             lambda s: s["over"] * 1e3 / (math.pi / 4 * s["across"] ** 2) / s["pitch"],
             {"That is the length in millimetres; the pitch makes it turns.":
              lambda s: s["over"] * 1e3 / (math.pi / 4 * s["across"] ** 2)}, off=0.1),
    ),
)  # fmt: skip

FACE = Calculation(
    "spread-of-a-face",
    "Read a cover",
    "Spread = largest clamp less smallest, divided by what each bolt should have.",
    (
        Given("most", "tightest bolt", 10, 14, 0.1, "kN"),
        Given("least", "loosest bolt", 5, 9, 0.1, "kN"),
        Given("target", "clamp of each bolt, as it should be", 10, 12, 0.5, "kN"),
    ),
    (
        Step("apart", "They differ by", "kN", "{most} − {least}",
             lambda s: s["most"] - s["least"], off=0.05),
        Step("spread", "The spread, in per cent", "", "{apart} ÷ {target} × 100",
             lambda s: s["apart"] / s["target"] * 100,
             {"You divided by the loosest bolt.": lambda s: s["apart"] / s["least"] * 100,
              "You divided by the tightest bolt.": lambda s: s["apart"] / s["most"] * 100},
             off=0.6),
    ),
)  # fmt: skip

NUT = Calculation(
    "shaft-nut",
    "The pull on a shaft nut",
    "The pull is at right angles to the wrench, at the middle of its grip.",
    (
        Given("torque", "torque of the nut", 120, 260, 10, "N·m"),
        Given("wrench", "wrench, from nut to grip", 500, 900, 50, "mm"),
        Given("tab", "the staked tab holds", 12, 30, 1, "N·m"),
    ),
    (
        Step("pull", "The pull at the grip", "N", "{torque} ÷ {wrench} × 1000",
             lambda s: s["torque"] / s["wrench"] * 1e3,
             {"You multiplied by the length in place of dividing.":
              lambda s: s["torque"] * s["wrench"] / 1e3}),
        Step("share", "What the tab holds, in per cent of the torque", "",
             "{tab} ÷ {torque} × 100", lambda s: s["tab"] / s["torque"] * 100,
             {"You divided the torque by the hold.": lambda s: s["torque"] / s["tab"] * 100}),
    ),
)  # fmt: skip

CALCULATIONS = (CARD, FOUND, WRONG_STATE, ALUMINIUM, BLIND, FACE, NUT)
