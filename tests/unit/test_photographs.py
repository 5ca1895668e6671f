"""A college's own photographs: taken in small and bare, shown where they belong, refused in one
sentence.
"""

import base64
import io
import struct

import pytest
from PIL import Image

from twoshaft import DEFAULT_UNIT
from twoshaft.errors import CohortError
from twoshaft.jobsheet.photographs import Photographs, photographs_in
from twoshaft.plots.photograph import photograph_figure
from twoshaft.rigs import build_simulator, college_photographs, unit_section
from twoshaft.stored.photographs import ALBUM, FOLDER
from twoshaft.stored.workplace import WORKPLACE, Workplace
from twoshaft.units import load_unit
from twoshaft_grader.bench_sheets import as_page, as_pdf, bench_sheet
from twoshaft_grader.bench_sheets.observation import observation_form
from twoshaft_grader.cohort import photograph_file
from twoshaft_grader.cohort.folder import make_cohort
from twoshaft_grader.cohort.photograph_file import reduced
from twoshaft_grader.cohort.photographs import (
    add_photograph,
    bring_photographs,
    drop_photograph,
    frame_named,
    own_photographs,
    photograph_files,
    without_home,
)
from twoshaft_grader.cohort.trail import read_trail
from twoshaft_grader.desk_pages.screen import DeskScreen

ALT = "A bearing cup of a drawn unit, its wide side to the left"


@pytest.fixture(scope="module")
def unit():
    return load_unit(DEFAULT_UNIT)


@pytest.fixture
def cohort(tmp_path):
    made = make_cohort(tmp_path / "group", salt="s", timezone="UTC")
    made.workplace.mkdir(parents=True, exist_ok=True)
    WORKPLACE.write(made.workplace / WORKPLACE.file, Workplace(cohort="Group"))
    return made


def picture(path, size=(2000, 1000), mode="RGB", **how):
    """A picture of two colours, left red and right blue."""
    made = Image.new(mode, size, "red" if mode != "RGBA" else (255, 0, 0, 255))
    if mode == "RGB":
        made.paste("blue", (size[0] // 2, 0, *size))
    made.save(path, **how)
    return path


def with_place(path):
    """A photograph as a telephone writes it: lying on its side, with a place and a date."""
    made = Image.new("RGB", (800, 400), "red")
    made.paste("blue", (400, 0, 800, 400))
    exif = Image.Exif()
    exif[0x0112] = 6  # to be turned a quarter to the right (Exif 2.32, table 6)
    exif[0x0132] = "2026:05:14 08:00:00"
    exif.get_ifd(0x8825)[1] = "N"
    made.save(path, exif=exif, comment=b"taken by Ana Example")
    return path


def test_a_picture_is_made_small_and_keeps_its_shape(tmp_path):
    small = reduced(picture(tmp_path / "a.png"))
    assert (small.width, small.height) == (1280, 640)
    again = Image.open(io.BytesIO(small.data))
    assert again.format == "JPEG" and again.size == (1280, 640)
    red, blue = again.getpixel((100, 300)), again.getpixel((1180, 300))
    assert red[0] > 200 > red[2] and blue[2] > 200 > blue[0]


def test_a_small_picture_is_not_blown_up(tmp_path):
    small = reduced(picture(tmp_path / "a.jpg", (64, 32)))
    assert (small.width, small.height) == (64, 32)


def test_place_date_and_words_of_the_camera_go_and_it_stands_upright(tmp_path):
    path = with_place(tmp_path / "a.jpg")
    assert b"Ana Example" in path.read_bytes() and b"2026:05:14" in path.read_bytes()
    small = reduced(path)
    for trace in (b"Exif", b"Ana Example", b"2026"):
        assert trace not in small.data
    again = Image.open(io.BytesIO(small.data))
    assert not again.getexif() and again.size == (400, 800)
    # What was on the left is above after a quarter turn to the right.
    assert again.getpixel((200, 100))[0] > 200 and again.getpixel((200, 700))[2] > 200


def test_what_is_clear_becomes_white(tmp_path):
    made = Image.new("RGBA", (40, 20), (0, 0, 0, 0))
    made.save(tmp_path / "a.png")
    assert Image.open(io.BytesIO(reduced(tmp_path / "a.png").data)).getpixel((5, 5)) == (
        255, 255, 255,
    )  # fmt: skip


def bomb(path, wide, high):
    """A PNG whose head says that it is huge, and nothing behind it."""
    head = struct.pack(">IIBBBBB", wide, high, 8, 2, 0, 0, 0)
    import zlib

    chunk = b"IHDR" + head
    path.write_bytes(
        b"\x89PNG\r\n\x1a\n" + struct.pack(">I", 13) + chunk + struct.pack(">I", zlib.crc32(chunk))
        + struct.pack(">I", 0) + b"IDAT" + struct.pack(">I", zlib.crc32(b"IDAT"))
    )  # fmt: skip
    return path


BAD = {
    "80 megapixels": (lambda path: bomb(path, 10_000, 8_000), "80 megapixels"),
    "a bomb": (lambda path: bomb(path, 60_000, 60_000), "far too large"),
    "cut short": (
        lambda path: path.write_bytes(picture(path.with_suffix(".jpg")).read_bytes()[:4000]),
        "damaged",
    ),
    "a text": (lambda path: path.write_text("<svg onload='x'/>"), "no JPEG, PNG or WebP"),
    "empty": (lambda path: path.write_bytes(b""), "no JPEG, PNG or WebP"),
    "not there": (lambda path: None, "no such picture"),
    "a folder": (lambda path: path.mkdir(), "no such picture"),
}


@pytest.mark.parametrize(("make", "what"), BAD.values(), ids=BAD)
def test_a_picture_that_cannot_be_taken_is_refused_in_one_sentence(
    make, what, cohort, unit, tmp_path
):
    path = tmp_path / "brought.png"
    make(path)
    with pytest.raises(CohortError) as refused:
        add_photograph(cohort, unit, unit.parts[0].id, path, ALT)
    assert what in refused.value.sentence and str(path) in refused.value.sentence
    assert "\n" not in refused.value.sentence
    assert not (cohort.root / FOLDER).exists()


def test_a_picture_of_too_many_bytes_is_not_read(tmp_path, monkeypatch):
    monkeypatch.setattr(photograph_file, "LARGEST", 10)
    with pytest.raises(CohortError, match="MB"):
        reduced(picture(tmp_path / "a.jpg"))


@pytest.mark.parametrize(
    ("id", "alt", "box", "what"),
    [
        ("no-such-part", ALT, None, "no part or operation"),
        (None, "  ", None, "not said in words"),
        (None, "a\x07b", None, "not said in words"),
        (None, "x" * 301, None, "301 letters"),
        (None, ALT, (0.5, 0.5, 0.6, 0.1), "frame"),
        (None, ALT, (0.5, 0.5, 0.0, 0.1), "frame"),
        (None, ALT, (float("nan"), 0.5, 0.1, 0.1), "frame"),
    ],
)
def test_what_does_not_fit_is_refused(id, alt, box, what, cohort, unit, tmp_path):
    with pytest.raises(CohortError, match=what):
        add_photograph(cohort, unit, id or unit.parts[0].id, picture(tmp_path / "a.jpg"), alt, box)
    assert not (cohort.root / FOLDER).exists()


def test_a_frame_is_four_figures_in_per_cent():
    assert frame_named("20 30; 25,5 % 40") == (0.2, 0.3, 0.255, 0.4)
    assert frame_named("  ") is None
    for text in ("20 30", "a b c d", "1 2 3 4 5"):
        with pytest.raises(CohortError, match="20 30 25 40"):
            frame_named(text)


def test_it_is_shown_in_the_lesson_beside_the_part_and_the_step(cohort, unit, tmp_path):
    part, step = unit.parts[3], unit.operations[2]
    path = picture(tmp_path / "a.jpg")
    add_photograph(cohort, unit, part.id, path, ALT, (0.25, 0.5, 0.1, 0.2))
    add_photograph(cohort, unit, step.id, path, "The same & <b>again</b>")
    own = college_photographs(cohort.workplace)
    assert len(own.album.photographs) == 2
    rig = unit_section(unit, own)
    assert rig.pictured == {"part": [part.id], "operation": [step.id]}
    told = []
    rig.send = lambda message, buffers=None: told.append(message)
    rig.hear({"type": "photographs", "of": "part", "id": part.id})
    (shown,) = told[0]["shown"]
    assert (
        shown["alt"] == ALT and 'x="320.0" y="320.0" width="128.0" height="128.0"' in shown["svg"]
    )
    build = build_simulator(unit, photographs=own)
    build.send = lambda message, buffers=None: told.append(message)
    build.hear({"type": "photographs", "of": "operation", "id": step.id})
    svg = told[1]["shown"][0]["svg"]
    assert "&lt;b&gt;again&lt;/b&gt;" in svg and "<rect" not in svg
    place = build.sequence.index(build.task.step_of[step.id])
    build.hear({"type": "go", "position": place})
    assert step.id in build.view["in_hand"]


@pytest.mark.slow
def test_sheets_and_the_observation_form_show_what_they_name(cohort, unit, tmp_path):
    step = unit.operation_by_id[unit.operations[2].id]
    add_photograph(cohort, unit, step.id, picture(tmp_path / "a.jpg"), "Torque is 27 N·m here")
    own = own_photographs(cohort)
    sheet = bench_sheet("order-of-work", unit, photographs=own)
    (block,) = [one for one in sheet.blocks if one.kind == "pictures"]
    assert block.pictures[0].alt == "Torque is ____ N·m here"
    page = as_page(sheet)
    assert page.count("<figure>") == 1 and "data:image/jpeg;base64," in page
    with_it, without = as_pdf(sheet), as_pdf(bench_sheet("order-of-work", unit))
    assert len(with_it) > len(without) + 2000 and b"/Image" in with_it
    blocks = observation_form("order-of-work", unit, photographs=own).blocks
    assert [one.kind for one in blocks].count("pictures") == 1
    # A sheet on something else names neither, and shows nothing.
    other = bench_sheet("close-out", unit, photographs=own)
    assert all(one.kind != "pictures" for one in other.blocks)


def test_one_that_is_taken_away_is_gone_everywhere(cohort, unit, tmp_path):
    path = picture(tmp_path / "a.jpg")
    one = add_photograph(cohort, unit, unit.parts[0].id, path, ALT)
    add_photograph(cohort, unit, unit.parts[1].id, path, ALT)
    assert set(photograph_files(cohort)) == {f"{FOLDER}/{ALBUM.file}", f"{FOLDER}/{one.file}"}
    drop_photograph(cohort, 1)
    assert (cohort.root / FOLDER / one.file).is_file()  # the other is the same picture
    drop_photograph(cohort, 1)
    assert not (cohort.root / FOLDER / one.file).exists()
    assert not (cohort.workplace / FOLDER).exists()
    assert college_photographs(cohort.workplace) == Photographs()
    with pytest.raises(CohortError, match="no photograph 1"):
        drop_photograph(cohort, 1)


def test_a_part_that_the_unit_lost_is_named(cohort, unit, tmp_path):
    one = add_photograph(cohort, unit, unit.parts[0].id, picture(tmp_path / "a.jpg"), ALT)
    other = load_unit("tarnbeck-c4")
    assert without_home(own_photographs(cohort), unit) == []
    assert one.id not in other.part_by_id
    assert without_home(own_photographs(cohort), other) == [one]


def test_a_damaged_list_stops_no_lesson_and_is_told_to_staff(cohort, unit, tmp_path):
    add_photograph(cohort, unit, unit.parts[0].id, picture(tmp_path / "a.jpg"), ALT)
    shown = (cohort.workplace / FOLDER / ALBUM.file).read_bytes()
    for text in ("{", '{"format": 1, "photographs": [{"of": "part", "id": "x", "file": "../a"}]}'):
        (cohort.root / FOLDER / ALBUM.file).write_text(text)
        with pytest.raises(CohortError, match=r"photographs\.json"):
            bring_photographs(cohort)
        assert (cohort.workplace / FOLDER / ALBUM.file).read_bytes() == shown
        (cohort.workplace / FOLDER / ALBUM.file).write_text(text)
        assert college_photographs(cohort.workplace) == Photographs()
        (cohort.workplace / FOLDER / ALBUM.file).write_bytes(shown)


def test_one_whose_file_is_gone_is_left_out(cohort, unit, tmp_path):
    one = add_photograph(cohort, unit, unit.parts[0].id, picture(tmp_path / "a.jpg"), ALT)
    (cohort.root / FOLDER / one.file).unlink()
    assert list(photographs_in(cohort.root / FOLDER).of("part", one.id)) == []
    bring_photographs(cohort)
    assert not (cohort.workplace / FOLDER).exists()


def test_words_in_the_picture_cannot_break_out(cohort, unit, tmp_path):
    alt = '"><script>alert(1)</script>'
    one = add_photograph(cohort, unit, unit.parts[0].id, picture(tmp_path / "a.jpg"), alt)
    assert "<script" not in photograph_figure(b"x", 10, 10, one.alt)


def frame_of(cohort):
    """The page *Photographs* as the browser gets it."""
    screen = DeskScreen(cohort.root)
    screen.wait()
    screen.hear({"type": "page", "name": "photographs"})
    screen.wait()
    return screen


def test_at_the_desk_one_is_added_looked_at_and_taken_away(cohort, unit, tmp_path):
    screen = frame_of(cohort)
    data = base64.b64encode(picture(tmp_path / "cup.jpg").read_bytes()).decode()
    piece = {"type": "file", "field": "picture", "name": "cup.jpg", "data": data}
    screen.hear(piece | {"first": True, "last": True})
    typed = {"of": unit.parts[0].id, "words": ALT, "frame": "20 30 25 40"}
    screen.hear({"type": "do", "act": "add", "typed": typed})
    screen.wait()
    assert screen.said.startswith("Added"), screen.trouble
    (row,) = next(one for one in screen.parts if one["kind"] == "table")["rows"]
    assert [*row["cells"][1:3]] == [unit.parts[0].name, ALT]
    link = next(one for one in screen.parts if one["kind"] == "link")
    assert (cohort.root / link["path"]).is_file()
    screen.hear({"type": "do", "act": "drop", "of": "1"})
    screen.wait()
    assert screen.said == f"Taken away: {ALT}", screen.trouble
    assert own_photographs(cohort).album.photographs == ()
    assert [line.act.did for line in read_trail(cohort.root)][-2:] == [
        "add a photograph", "take a photograph away",
    ]  # fmt: skip
