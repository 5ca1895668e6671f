"""Blocks about the workshop itself: a walk round it, and its measuring tools."""

from __future__ import annotations

from twoshaft.safety import load_safety
from twoshaft.units import Unit
from twoshaft_grader.bench_sheets.content import Block, Column, Table, without_figures
from twoshaft_grader.bench_sheets.forms import blank, checks, readings
from twoshaft_grader.bench_sheets.settings import supports_of


def walk_round() -> tuple[Block, ...]:
    """Places where somebody can get hurt, looked at in the real workshop."""
    columns = (
        Column("Place, and what is well there", 3.4),
        Column("Well", 0.6, tick=True),
        Column("Not well", 0.7, tick=True),
        Column("Not here", 0.7, tick=True),
        Column("What you saw, did and told whom", 3.0),
    )
    rows = [(f"{place.name}\n{place.because}",) for place in load_safety().places]
    return (
        Table.begun(
            "Walk round the workshop",
            columns,
            rows,
            "Look, touch nothing that is running or hot. What can cost a life or an eye is "
            "stopped and told at once, before you write.",
        ),
        Table(
            "Where it is in this workshop",
            (Column("What", 2.4), Column("Where", 3.0), Column("Who may use it, and how", 3.0)),
            tuple(
                (what, "", "")
                for what in (
                    "Way out, and where you meet",
                    "First-aid box and first-aider",
                    "Eye wash",
                    "Fire extinguisher and blanket",
                    "Switch that stops everything",
                    "Whom to call, and the address to give",
                    "Safety data sheets",
                    "Gloves, glasses, ear protection",
                    "Bin for oily cloths, drum for waste oil and solvent",
                    "The maker's manual for the unit on the bench",
                )
            ),
        ),
    )


def eyes() -> Table:
    """Jobs, and whether each asks for eye protection: in the apprentice's own words."""
    columns = (Column("Job", 3.0), Column("Yes or no", 0.9), Column("Why", 4.0))
    return Table(
        "Eye protection: before each job, say yes or no and why",
        columns,
        tuple((job.name, "", "") for job in load_safety().jobs),
    )


def lift() -> tuple[Block, ...]:
    """A load of this workshop, judged before it is moved."""
    return (
        blank(
            "A lift judged before it is made",
            [
                ("Load", 2.0),
                ("Weight, and from where", 1.8),
                ("Reach from the body", 1.3),
                ("Height from, to", 1.4),
                ("By hand, by two, or with an aid, and why", 2.6),
                ("Agreed by", 1.0),
            ],
            4,
        ),
        checks(
            "Sling and hoist",
            [
                "Rated for the load, rating legible",
                "Looked over strand by strand, hook latch closes",
                "Hangs level at a hand's breadth",
                "Nobody below, way clear",
            ],
        ),
    )


def tool_register(unit: Unit) -> Table:
    """Measuring tools of this workshop, looked over before use."""
    measured = {term.tool for support in supports_of(unit) for term in support.stack}
    reading = [one for one in unit.operations if one.kind in ("measure", "check")]
    named = {tool for operation in reading for tool in operation.tools}
    named |= {wrench.tool for wrench in unit.fasteners.wrenches} if unit.fasteners_if_any else set()
    names = {tool.name for tool in unit.tools if tool.id in named}
    names |= {f"{name[:1].upper()}{name[1:]}" for name in measured}
    columns = (
        Column("Tool", 2.2),
        Column("Number", 1.1),
        Column("Range", 1.3),
        Column("Smallest step", 1.2),
        Column("Zero found", 1.1),
        Column("Checked until", 1.2),
        Column("Fit for use", 0.7, tick=True),
        Column("Initials", 0.8),
    )
    rows = [(without_figures(name),) for name in sorted(names)]
    say = (
        "Read range and smallest step off the tool itself. A tool that was dropped goes to the "
        "instructor, not back into its box."
    )
    return Table.begun("Tools looked over", columns, rows, say, more=2)


def practice_readings(unit: Unit) -> tuple[Block, ...]:
    """Lengths of the real unit, read by two people."""
    terms = list(
        dict.fromkeys(
            (f"{term.name} ({support.name[:1].lower()}{support.name[1:]})", term.tool)
            for support in supports_of(unit)
            for term in support.stack
        )
    )
    rows = terms or [("", "")] * 4
    return (
        readings(
            "Read by you",
            rows,
            "Zero first, then three readings; lift the tool off and set it on again each time.",
        ),
        readings("Read by a second person, who has not seen the first table", rows),
        Table.begun(
            "What the readings are worth",
            (
                Column("What is measured", 2.4),
                Column("Mean of both", 1.3),
                Column("Spread", 1.2),
                Column("A reading left out, and its cause", 2.4),
                Column("Doubt", 1.2),
                Column("Good enough for the manual's limits", 1.0, tick=True),
            ),
            ((what,) for what, _ in rows),
        ),
    )


def dial_and_cord() -> tuple[Block, ...]:
    """A shaft under the dial indicator, and a pull on a cord."""
    return (
        checks(
            "Dial indicator set up",
            [
                "Stand tight, arm short, foot on a clean face",
                "Plunger square to the face and pressed in",
                "Zero set, moved away and found again",
                "Turned by hand only, power locked off",
            ],
        ),
        readings(
            "Total readings",
            [
                ("A shaft between centres or in its bearings: total reading", "Dial indicator"),
                ("The same, further along", "Dial indicator"),
                ("Pull on the cord while it turns", "Spring scale and cord"),
            ],
        ),
    )
