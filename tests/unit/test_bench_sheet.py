"""Bench sheets: every module, both shipped units, both papers; and that no figure gets on them."""

import io
import re
from functools import lru_cache
from html import unescape
from pathlib import Path

import pypdf
import pytest

from twoshaft.errors import CourseError
from twoshaft.modules import COURSE
from twoshaft.outcomes import Evidence, load_outcomes
from twoshaft.readings.issue import MODULES
from twoshaft.units import load_unit
from twoshaft.units.unit import PHYSICS
from twoshaft_grader.bench_sheets import (
    Paper,
    as_page,
    as_pdf,
    bench_sheet,
    modules_named,
    write_sheets,
)
from twoshaft_grader.bench_sheets.content import BLANK, without_figures
from twoshaft_grader.bench_sheets.modules import RECIPES
from twoshaft_grader.desk.commands import main

UNITS = ("tarnbeck-b5", "tarnbeck-b5-early")
SIZES_PT = {Paper.A4: (595, 842), Paper.LETTER: (612, 792)}

# Of the published lifting equation (NIOSH 94-110), where an index of 1 is the definition.
PUBLISHED = ("index is above 1",)

_shipped = lru_cache(load_unit)


def changed(unit, **sections):
    return unit.with_sections(**sections)


def numbers_of(value):
    """All numbers in a section, however deep."""
    if isinstance(value, bool):
        return set()
    if isinstance(value, int | float):
        return {float(value)}
    if isinstance(value, dict):
        value = value.values()
    elif not isinstance(value, list | tuple):
        return set()
    return {number for one in value for number in numbers_of(one)}


@lru_cache
def physics_of(unit_id):
    unit = _shipped(unit_id)
    held = (unit.clocks, *(getattr(unit, name) for name in PHYSICS if unit.has(name)))
    plain = [
        [one.model_dump() for one in section]
        if isinstance(section, tuple)
        else section.model_dump()
        for section in held
    ]
    return numbers_of(plain)


def figures_in(text, sheet):
    """Numbers that stand in a sheet's text, its frame (names, versions, pages) aside."""
    text = re.sub(r"\s+", " ", text)
    frame = (sheet.versions, f"Bench sheet {sheet.number}", sheet.unit, sheet.cohort, *PUBLISHED)
    for known in filter(None, frame):
        text = text.replace(known, " ")
    text = re.sub(r"page \d+ of \d+", " ", text)
    return {float(found.replace(",", ".")) for found in re.findall(r"\d+(?:[.,]\d+)?", text)}


def read_pdf(data):
    return pypdf.PdfReader(io.BytesIO(data))


def text_of(data):
    return "\n".join(page.extract_text() for page in read_pdf(data).pages)


def page_text(html):
    body = re.sub(r"<style>.*?</style>", " ", html, flags=re.S)
    return unescape(re.sub(r"<[^>]+>", " ", body))


def texts_of(value):
    """All texts in a sheet's plain data, however deep."""
    if isinstance(value, str):
        return [value]
    inner = value.values() if isinstance(value, dict) else value
    return [
        text
        for one in inner
        if isinstance(one, str | dict | list | tuple)
        for text in texts_of(one)
    ]


@pytest.mark.parametrize("unit_id", UNITS)
@pytest.mark.parametrize("module", RECIPES)
def test_no_figure_of_the_unit_is_printed(module, unit_id):
    sheet = bench_sheet(module, _shipped(unit_id), cohort="Evening group")
    data = sheet.as_data()
    for printed in ("blocks", "title", "reservation"):  # the rest is the frame
        assert data[printed] and not figures_in("\n".join(texts_of(data[printed])), sheet)
    for paper in Paper:
        html = page_text(as_page(sheet, paper))
        assert not figures_in(html, sheet) & physics_of(unit_id)
        # Stronger still, while all is well: not one figure of any kind.
        assert not figures_in(html, sheet)
        kinds = {block.kind for block in sheet.blocks}
        whole = bare(html)
        assert {text for text in texts_of(data["blocks"]) if bare(text) not in whole} <= kinds


def bare(text):
    """A text without the breaks that printing puts into it."""
    return re.sub(r"[\s\u200b]+", "", text)


# The longest sheet, and one with every kind of block: all others are made of the same blocks.
@pytest.mark.slow
@pytest.mark.parametrize("paper", Paper)
@pytest.mark.parametrize(
    ("module", "kinds"),
    [("whole-build", {"table", "points"}), ("sealant-film", {"table", "points", "space"})],
)
def test_paper_holds_the_sheet_and_no_figure(module, kinds, paper):
    sheet = bench_sheet(module, _shipped(UNITS[0]), cohort="Evening group")
    assert kinds == {block.kind for block in sheet.blocks}
    reader = read_pdf(as_pdf(sheet, paper))
    pages = [page.extract_text() for page in reader.pages]
    text = "\n".join(pages)
    assert not figures_in(text, sheet)
    whole = bare(text)
    assert [one.heading for one in sheet.blocks if bare(one.heading) not in whole] == []
    for number, (page, own) in enumerate(zip(reader.pages, pages, strict=True), 1):
        assert tuple(round(side) for side in page.mediabox[2:]) == SIZES_PT[paper]
        own = " ".join(own.split())
        assert f"page {number} of {len(pages)}" in own
        assert sheet.versions in own
        assert "Invented unit, for teaching" in own
        assert "the maker's manual" in own.lower().replace("’", "'")


FIGURES = (
    "27 N·m", "27Nm", "0.05 mm", "0,05 mm", "26 to 28 Nm", "26–28", "110 °C", "M8x1.25", "M8",
    "20 minutes", "38 teeth", "0.12", "175 lbf·ft", "-5 µm", "90 %", "1,250", "27", "1½ turns",
    "gear 27 N·m", "bolt 0.5", "90°", "H7", "µ0.12",
)  # fmt: skip


def test_a_figure_in_a_units_words_is_left_blank():
    unit = _shipped(UNITS[0])
    operations, parts = list(unit.operations), list(unit.parts)
    for number, text in enumerate(FIGURES):
        words = {"name": f"Set it to {text} now", "caution": f"Mind {text}.", "orientation": text}
        operations[number] = operations[number].model_copy(update=words)
        words = {"name": f"Part {text}", "single_use": True, "orientation_mark": text}
        parts[number] = parts[number].model_copy(update=words)
    planted = changed(unit, operations=tuple(operations), parts=tuple(parts))
    sheet = bench_sheet("whole-build", planted)
    html = page_text(as_page(sheet))
    assert html.count(BLANK) >= 5 * len(FIGURES)
    assert not figures_in(html, sheet)


def test_the_proof_can_fail():
    unit = _shipped(UNITS[0])
    sheet = bench_sheet("threaded-joints", unit)
    torque = unit.fasteners.groups[0].torque_nm[1]
    assert figures_in(f"Tighten to {torque:g} of it, page 1 of 5", sheet) & physics_of(UNITS[0])


def test_words_are_left_as_they_are():
    for text in ("From bolt 1 to bolt 12", "two gears", "5th gear", "gear 5 in"):
        assert without_figures(text) == text


def test_every_module_of_the_course_has_a_sheet_of_its_own():
    assert tuple(MODULES) == tuple(RECIPES) == tuple(COURSE)
    assert modules_named("all") == tuple(MODULES)
    unit = _shipped(UNITS[0])
    own = {name: {block.heading for block in recipe.make(unit)} for name, recipe in RECIPES.items()}
    for name, headings in own.items():
        assert len(headings) >= 5, name
        assert all(headings - other for one, other in own.items() if one != name), name


def test_numbers_and_titles_are_those_of_the_lessons():
    lessons = Path(__file__).parents[2] / "course" / "lessons"
    for path in lessons.glob("[0-9][0-9]-*.py"):
        number, _, module = path.stem.partition("-")
        title = re.search(r"^# # (.+)$", path.read_text(encoding="utf-8"), flags=re.M)[1]
        assert (COURSE[module].name, COURSE[module].title) == (path.stem, title)
        sheet = bench_sheet(module, _shipped(UNITS[0]))
        assert (sheet.number, sheet.title) == (number, title)


@pytest.mark.parametrize("module", RECIPES)
def test_what_must_be_watched_and_signed_is_on_it(module):
    text = page_text(as_page(bench_sheet(module, _shipped(UNITS[0]))))
    for outcome in load_outcomes(module=module).values():
        if outcome.evidence is not Evidence.OPEN_BOOK:
            assert outcome.statement in text
            assert all(criterion in text for criterion in outcome.criteria.values())
    for word in ("Apprentice", "Instructor", "Assessor", "Bench no.", "Group", "Why:"):
        assert word in text


def test_the_proof_by_hand_follows_from_the_gate():
    unit = _shipped(UNITS[0])
    rows = {
        row[0]: row[1]
        for block in bench_sheet("shift-and-lockout", unit).blocks
        if block.heading == "Proof by hand"
        for row in block.rows
    }
    assert (
        rows["From fifth straight into reverse, in the gate plane all the way"]
        == "must not be possible"
    )
    assert (
        rows["From fifth to neutral, out of the gate plane, back, then reverse"]
        == "must be possible"
    )
    assert rows["With first or second in: fifth or reverse as well"] == "must not be possible"
    assert sum(move.endswith("and back") for move in rows) == 6


def test_the_build_record_has_every_step_its_holds_and_its_clocks():
    unit = _shipped(UNITS[0])
    sheet = bench_sheet("whole-build", unit)
    record = [block for block in sheet.blocks if block.heading.startswith("Build record")]
    steps = {row[1].split("\n")[0] for block in record for row in block.rows} - {""}
    grouped = {id for group in unit.together for id in group.operations}
    assert steps == {one.name for one in unit.operations if one.id not in grouped} | {
        group.name for group in unit.together
    }
    notes = "\n".join(row[1] for block in record for row in block.rows).lower()
    for one in (*unit.holds, *unit.clocks):
        assert one.name.lower() in notes
    for block in record:  # by the letters: the record gives no order away
        names = [row[1] for row in block.rows if row[1]]
        assert names == sorted(names)


@pytest.mark.slow
def test_umlauts_long_words_and_markup_print_as_text():
    unit = _shipped(UNITS[0])
    name = "Größe, à côté; #set text(1pt) <b>*_$ " + "Getriebeölablassschraube" * 6
    sheet = bench_sheet("order-of-work", unit, cohort=name, college="École d'été")
    text = text_of(as_pdf(sheet)).replace("\u200b", "").replace("\n", "")
    assert "Größe, à côté; #set text(1pt) <b>*_$" in text
    assert "École d'été" in text
    assert "<b>*_$" not in as_page(sheet)


@pytest.mark.parametrize("paper", Paper)
def test_rows_are_high_enough_to_write_in(paper):
    last = read_pdf(as_pdf(bench_sheet("sealant-film", _shipped(UNITS[0])), paper)).pages[-1]
    heights = {}
    last.extract_text(
        visitor_text=lambda text, to_page, *_: heights.setdefault(text.strip(), to_page[5])
    )
    eight_mm = 8 * 72 / 25.4
    assert heights["Apprentice"] - heights["Instructor"] >= eight_mm
    assert heights["Instructor"] - heights["Assessor"] >= eight_mm


@pytest.mark.slow
def test_the_pdf_is_tagged_titled_and_the_same_again():
    sheet = bench_sheet("sealant-film", _shipped(UNITS[0]))
    data = as_pdf(sheet)
    assert data == as_pdf(sheet)
    root = read_pdf(data).trailer["/Root"]
    assert root["/MarkInfo"]["/Marked"]
    assert root["/Lang"] == "en"
    assert (
        read_pdf(data).metadata.title
        == "Bench sheet: Sealant film, Tarnbeck B5 five-speed transaxle"
    )
    kinds = set()

    def walk(node):
        node = node.get_object()
        if isinstance(node, list):
            for one in node:
                walk(one)
        elif isinstance(node, dict):
            kinds.add(node.get("/S"))
            if "/K" in node:
                walk(node["/K"])

    walk(root["/StructTreeRoot"])
    assert {"/H1", "/H2", "/Table", "/TH", "/TD"} <= kinds


@pytest.mark.slow
def test_a_unit_without_physics_and_a_module_without_a_recipe_still_print():
    unit = _shipped(UNITS[0]).with_sections(**dict.fromkeys(PHYSICS), clocks=(), holds=())
    for module in (*RECIPES, "something-new"):
        assert read_pdf(as_pdf(bench_sheet(module, unit))).pages
    real = unit.model_copy(
        update={"identity": unit.identity.model_copy(update={"invented": False})}
    )
    assert "Invented unit" not in as_page(bench_sheet("order-of-work", real))


@pytest.mark.parametrize("module", RECIPES)
def test_what_a_row_is_about_heads_it(module):
    sheet = bench_sheet(module, _shipped(UNITS[0]))
    page = as_page(sheet)
    rows = re.findall(r"<tr>(.*?)</tr>", page.split("<tbody>", 1)[1], flags=re.S)
    begun = [row for row in rows if "<th" in row]
    for row in begun:
        cells = re.findall(r"<(th|td)([^>]*)>(.*?)</", row, flags=re.S)
        written = [(tag, more) for tag, more, text in cells if text.strip("☐ \n")]
        heads = [more for tag, more in written if tag == "th"]
        if "col" not in heads[0]:
            assert written[0] == ("th", ' scope="row"') and len(heads) == 1
    tables = [block for block in sheet.blocks if block.kind == "table"]
    expected = sum(any(row) for table in tables for row in table.rows)
    assert page.count('<th scope="row">') == expected > 0


def test_files_are_written_whole_and_bad_names_are_refused_in_a_sentence(tmp_path):
    unit = _shipped(UNITS[0])
    ((pdf, page),) = write_sheets(("sealant-film",), unit, tmp_path / "out", paper=Paper.LETTER)
    assert pdf.name == "06-sealant-film-tarnbeck-b5-letter.pdf"
    assert pdf.read_bytes().startswith(b"%PDF") and page.read_text().rstrip().endswith("</html>")
    assert {one.name for one in pdf.parent.iterdir()} == {pdf.name, page.name}
    with pytest.raises(CourseError, match="not a folder"):
        list(write_sheets(("sealant-film",), unit, pdf))
    with pytest.raises(CourseError, match="there is no module 'sealant'"):
        modules_named("sealant")


@pytest.mark.slow
def test_the_command_prints_for_a_cohort_and_for_a_unit(tmp_path, capsys):
    cohort = tmp_path / "evening"
    assert main(["cohort", "make", str(cohort), "--name", "Größe", "--college", "École"]) == 0
    assert main(["bench-sheet", "order-of-work", "--cohort", str(cohort), "--paper", "letter"]) == 0
    (page,) = (cohort / "bench-sheets").glob("*.html")
    assert "Größe" in page.read_text(encoding="utf-8") and "École" in page.read_text(
        encoding="utf-8"
    )

    out = tmp_path / "out"
    assert main(["bench-sheet", "all", "--unit", "tarnbeck-b5-early", "--out", str(out)]) == 0
    assert len(list(out.glob("*.pdf"))) == len(list(out.glob("*.html"))) == len(MODULES)

    capsys.readouterr()
    for wrong, said in (
        (["order-of-work", "--unit", "tarnbeck-b5", "--paper", "a5"], "there is no paper 'a5'"),
        (["order", "--unit", "tarnbeck-b5"], "there is no module 'order'"),
        (["order-of-work", "--unit", "tarnbeck-b5", "--cohort", str(cohort)], "both a unit and a cohort"),
        (["order-of-work", "--unit", str(tmp_path / "no.yaml")], "there is no such file"),
        (["order-of-work", "--cohort", str(tmp_path)], "no cohort"),
    ):  # fmt: skip
        assert main(["bench-sheet", *wrong]) == 2
        lines = capsys.readouterr().err.strip().splitlines()
        assert len(lines) == 1 and said in lines[0]


@pytest.mark.parametrize(
    ("module", "places"),
    [
        ("threaded-joints", ["Drive to mid grip", "Thread that meets", "Tip in it, head down",
                             "Liquid drawn out", "Thread, as marked", "Depth of the tab", "Most"]),
        ("pressed-and-driven", ["Hole, measured", "Length of the seat", "Interference, least to",
                                "Room, read", "Oven, read", "Depth of the tab"]),
        ("sealant-film", ["Out of flat", "Largest gap", "Width of the face", "Open time",
                          "All bolts run down by hand", "Largest lump"]),
        ("gear-train-and-checks", ["Driving, counted", "Left wheel", "speed pinion",
                                   "pushed inwards", "New", "Least", "reversing lamp"]),
    ],
)  # fmt: skip
def test_what_a_job_sheet_takes_from_the_bench_has_its_place(module, places):
    page = unescape(as_page(bench_sheet(module, _shipped("tarnbeck-b5"))))
    assert [place for place in places if place not in page] == []
