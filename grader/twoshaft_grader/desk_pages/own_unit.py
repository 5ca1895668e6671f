"""The page *Your unit*: begin a unit file, look it over, try it, change it by a spreadsheet."""

from __future__ import annotations

import re
from collections.abc import Iterable, Sequence
from pathlib import Path
from typing import Any

from twoshaft.errors import CohortError, UnitFileError
from twoshaft.models.audit import sound_unit
from twoshaft.modules import COURSE
from twoshaft.plots.unit_section import unit_figure
from twoshaft.units import load_unit, shipped_units
from twoshaft.units.new_unit import Wishes, least_rails
from twoshaft_grader.cohort import files
from twoshaft_grader.cohort.content import find_content
from twoshaft_grader.desk_pages.page import Desk, Page, Work
from twoshaft_grader.desk_pages.parts import Act, Cell, Field, Form, Link, Part, Row, Table, Values
from twoshaft_grader.records.unit_files import (
    StandardPart,
    Tried,
    begin_unit,
    standard_parts,
    take_sheets,
    tried_apart,
)
from twoshaft_grader.records.unit_spreadsheet import write_sheets

UNITS = "units"
"""Folder of a cohort in which unit files are worked on."""
_MOST_PARTS = 200
_YAML = re.compile(r"[\w-][\w .-]*\.ya?ml")


def units_here(root: Path) -> tuple[tuple[str, str], ...]:
    """Units to choose from: the shipped ones, and the files that are worked on."""
    own = tuple((f"{UNITS}/{name}", f"{name} (own file)") for name in _own(root))
    return (*own, *((one, one) for one in shipped_units()))


def unit_named(root: Path, chosen: str) -> str:
    """What the loader takes for a choice of :func:`units_here`.

    Raises
    ------
    CohortError
        When it is no choice any more.
    """
    if chosen not in dict(units_here(root)):
        raise CohortError(f'there is no unit "{chosen[:60]}"', mend="choose one of the list")
    return str(root / chosen) if chosen.startswith(f"{UNITS}/") else chosen


def _own(root: Path) -> list[str]:
    folder = root / UNITS
    names = sorted(one.name for one in folder.iterdir()) if folder.is_dir() else []
    return [one for one in names if _YAML.fullmatch(one)]


class OwnUnit(Page):
    """Unit files in the making, each step of it a form."""

    id, title = "own-unit", "Your unit"

    def __init__(self, desk: Desk) -> None:
        super().__init__(desk)
        self._about = ""
        self._mend: tuple[str, ...] = ()
        self._typical: tuple[str, ...] = ()
        self._tried: tuple[Tried, ...] = ()
        self._parts: tuple[StandardPart, ...] = ()

    def show(self) -> Sequence[Part]:
        """The files, what was found of one, and the forms."""
        root = self.desk.root
        own, choices = _own(root), units_here(root)
        parts: list[Part] = []
        for name in own:
            parts.append(Link(f"Open {name} in the editor", f"{UNITS}/{name}", "edit"))
            for ending, word in ((".svg", "Look at the section of"), (".xlsx", "Spreadsheet of")):
                if (root / UNITS / name).with_suffix(ending).exists():
                    path = Path(UNITS, name).with_suffix(ending).as_posix()
                    parts.append(Link(f"{word} {name}", path))
        parts += [
            Form(
                "Look a unit over",
                (
                    Field("unit", "Unit", "choice", self._chosen(choices), choices),
                    Field("module", "Modules to try", "choice", "", _modules()),
                ),
                (
                    Act("check", "See what to correct", first=True),
                    Act("try", "See which modules it carries"),
                    Act("draw", "Draw how its parts lie"),
                    Act("sheet", "Write parts, operations and reasons as a spreadsheet"),
                ),
                hint="Trying all takes one to five minutes. What is drawn or written out lies "
                "beside the file, for files of your own.",
            ),
            Form(
                "Bring a unit file",
                (Field("file", "File", "file", hint="one of the same name is kept beside it"),),
                (Act("bring", "Put it here and look it over"),),
            ),
            *self._found(),
            Form(
                "Begin a unit file",
                (
                    Field("name", "What the unit is called"),
                    Field("college", "Where it stands", value=self.desk.cohort.college),
                    Field("gears", "Forward gears", value="5", hint="3 to 8"),
                    Field("rails", "Shift rails, reverse counted in", hint="empty: the fewest"),
                    Field("bearings", "Bearings of the output shaft", "choice", "taper",
                          (("taper", "taper, with preload"), ("ball", "ball, with end play"))),
                    Field("faces", "Faces sealed by a film", value="2",
                          hint="case joint counted in, 0 to 12; 0: gaskets"),
                    Field("differential", "There is a differential in it", "tick", "yes"),
                ),
                (Act("begin", "Begin the file"),),
                hint="Each figure that it assumes is marked “typical, change me”.",
            ),
        ]  # fmt: skip
        if own:
            into = tuple((one, one) for one in own)
            parts.append(
                Form(
                    "Take a corrected spreadsheet in",
                    (
                        Field("sheets", "Spreadsheet", "file", hint=".xlsx, as written out here"),
                        Field("into", "Into", "choice", options=into),
                    ),
                    (Act("take", "Take it in"),),
                    hint="As the file was before, it is kept beside it.",
                )
            )
        parts.append(
            Form(
                "Find a standard part",
                (Field("words", "Part of its name", hint="as 302, or bearings, bolts, pins"),),
                (Act("find", "Find it"),),
            )
        )
        if self._parts:
            rows = tuple(
                Row(f"{one.kind} {one.name}", (one.kind, one.name, one.sizes))
                for one in self._parts
            )
            parts.append(Table("parts", "Standard parts", ("kind", "name", "sizes"), rows))
        return parts

    def _found(self) -> list[Part]:
        """What was found of the unit that was looked over last."""
        parts: list[Part] = []
        if self._mend:
            parts.append(_lines("mend", f"To correct in {self._about}", self._mend))
        if self._typical:
            title = f"Still typical in {self._about}, not of your unit"
            parts.append(_lines("typical", title, self._typical))
        if self._tried:
            parts.append(_tried(self._about, self._tried))
        return parts

    def do(self, act: str, values: Values, work: Work) -> str:
        """Do what a button says."""
        folder = self.desk.root / UNITS
        if act == "find":
            found = standard_parts(values.text("words").split())
            self._parts = tuple(found[:_MOST_PARTS])
            some = f"; the first {_MOST_PARTS} are shown" if len(found) > _MOST_PARTS else ""
            return f"{len(found)} found{some}." if found else "No standard part is called so."
        if act == "begin":
            wishes, name = self._wishes(values), values.need("name", "the name")
            file = folder / f"{re.sub(r'[^a-z0-9]+', '-', name.lower()).strip('-') or 'unit'}.yaml"
            folder.mkdir(exist_ok=True)
            begin_unit(file, wishes)
            return f"{file.name} is begun; open it in the editor above, and look it over here."
        if act == "bring":
            brought = values.file("file")
            if not _YAML.fullmatch(brought.name):
                what = f"{brought.name} is no unit file"
                raise CohortError(what, mend="choose one that ends in .yaml")
            folder.mkdir(exist_ok=True)
            _keep(folder / brought.name)
            files.write_whole(folder / brought.name, brought.read_bytes())
            return self._look_over(folder / brought.name, brought.name, work)
        if act == "take":
            into = folder / values.need("into", "the unit file")
            if into.name not in _own(self.desk.root):
                raise CohortError("this unit file is not there any more", mend="choose another")
            work.begin("taking the spreadsheet in")
            self._about, self._mend = into.name, ()
            try:
                _, told = take_sheets(values.file("sheets"), into)
            except UnitFileError as error:
                self._mend = self._sentences(error.findings or (error,))
                return "Nothing was taken: what to correct stands in the table."
            return f"Taken into {into.name}: {told}."
        chosen = values.need("unit", "the unit")
        source, about = unit_named(self.desk.root, chosen), chosen.removeprefix(f"{UNITS}/")
        if act == "check":
            return self._look_over(source, about, work)
        if act == "try":
            return self._try(source, about, values.text("module"), work)
        own = Path(source) if chosen != about else folder / f"{chosen}.yaml"
        folder.mkdir(exist_ok=True)
        unit = load_unit(source)
        if act == "draw":
            work.begin("drawing")
            figure = unit_figure(unit, f"{unit.identity.name} in section")
            files.write_whole(own.with_suffix(".svg"), figure)
            return f"Drawn: {UNITS}/{own.with_suffix('.svg').name}."
        work.begin("writing the spreadsheet")
        _keep(own.with_suffix(".xlsx"))
        write_sheets(own.with_suffix(".xlsx"), unit)
        return f"Written: {UNITS}/{own.with_suffix('.xlsx').name}."

    def _sentences(self, found: Iterable[Any]) -> tuple[str, ...]:
        here = f"{self.desk.root / UNITS}/"
        return tuple(one.sentence.replace(here, "") for one in found)

    def _chosen(self, choices: tuple[tuple[str, str], ...]) -> str:
        mine = f"{UNITS}/{self._about}"
        return mine if mine in dict(choices) else choices[0][0]

    def _look_over(self, source: str | Path, about: str, work: Work) -> str:
        work.begin("checking the unit")
        self._about, self._mend, self._typical, self._tried = about, (), (), ()
        try:
            unit = sound_unit(source)
        except UnitFileError as error:
            self._mend = self._sentences(error.findings or (error,))
            count = len(self._mend)
            return f"{about}: {count} {'thing' if count == 1 else 'things'} to correct, see below."
        self._typical = self._sentences(unit.typical())
        operations, rules = len(unit.operations), len(unit.rules)
        told = f"{unit.identity.name}: {operations} operations, {rules} rules, nothing to correct."
        return f"{told} Typical still: {len(self._typical)} entries." if self._typical else told

    def _try(self, source: str, about: str, module: str, work: Work) -> str:
        if module not in dict(_modules()):
            raise CohortError("there is no such module", mend="choose one of the list")
        self._look_over(source, about, work)
        if self._mend:
            return f"{about} is tried when nothing in it is to be corrected."
        cohort, tried = self.desk.cohort, []
        content = find_content(cohort.content, base=cohort.root)
        only = (module,) if module else ()
        work.begin("trying the modules", len(only or content.modules))
        for one in tried_apart(source, content.root, only):
            tried.append(one)
            work.step()
        self._tried = tuple(tried)
        good = sum(one.given for one in tried)
        return f"{about}: {good} of {len(tried)} modules can be given."

    def _wishes(self, values: Values) -> Wishes:
        def count(name: str, what: str, usual: int) -> int:
            text = values.text(name) or str(usual)
            if not text.isdecimal() or len(text) > 3:
                raise CohortError(f'"{text[:20]}" is no number of {what}', mend="write it as 5")
            return int(text)

        gears = count("gears", "gears", 5)
        return Wishes(
            name=values.need("name", "the name"),
            college=values.text("college") or "Your college",
            gears=gears,
            rails=count("rails", "rails", least_rails(min(max(gears, 1), 8))),
            bearings="ball" if values.text("bearings") == "ball" else "taper",
            faces=count("faces", "faces", 2),
            differential=values.tick("differential"),
        )


def _modules() -> tuple[tuple[str, str], ...]:
    """What can be tried: all modules, or one of them."""
    return ("", "all of them"), *((id, COURSE[id].title) for id in COURSE)


def _keep(file: Path) -> None:
    """Keep a file that is to be written anew, as it was before."""
    if file.exists():
        files.write_whole(file.with_name(f"{file.name}.before"), file.read_bytes())


def _lines(id: str, title: str, sentences: tuple[str, ...]) -> Table:
    rows = tuple(Row(str(number), (one,)) for number, one in enumerate(sentences))
    return Table(id, title, ("what",), rows)


def _tried(about: str, tried: tuple[Tried, ...]) -> Table:
    rows = tuple(
        Row(
            one.module,
            (
                one.module,
                Cell("can be given", "✓") if one.given else Cell("cannot be given", "▲"),
                one.tasks, " ".join(one.why),
            ),
        )
        for one in tried
    )  # fmt: skip
    return Table(
        "tried", f"Modules on {about}", ("module", "", "tasks", "without, or why not"), rows
    )
