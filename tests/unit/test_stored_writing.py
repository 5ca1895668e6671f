"""Every file is written in one way: whole or not at all, and on the disk before it counts."""

import ast
import os
import stat
from pathlib import Path

import pytest

from twoshaft.stored import writing
from twoshaft.stored.writing import append_text, write_file, write_inside

ROOT = Path(__file__).resolve().parents[2]

# What else writes, moves or copies, and why it may.
MAY = {
    "course/twoshaft/stored/writing.py": "the one way",
    "course/twoshaft/stored/hostile.py: open": "reads, without following a link",
    "grader/twoshaft_grader/cohort/copy_in.py: open": "reads, in the folder that is open",
    "grader/twoshaft_grader/cohort/workplace.py: symlink_to": "the way to a learner's own folder",
    "grader/twoshaft_grader/cohort/far_child.py: fdopen": "answers into a pipe",
    "grader/twoshaft_grader/cohort/first_come.py: rename": "lets a whole folder have its name",
    "grader/twoshaft_grader/cohort/shared.py: rename": "lets whole folders have their places",
    "grader/twoshaft_grader/cohort/files.py: rename": "lets a whole folder have the place of another",
    "grader/twoshaft_grader/cohort/anonymous.py: rename": "lets whole folders have their places",
    "grader/twoshaft_grader/cohort/unassign.py: rename": "takes a folder back, at once for all",
    "grader/twoshaft_grader/cohort/restore.py: rename": "lets whole folders have their places",
    "grader/twoshaft_grader/cohort/back_up.py: replace": "gives that file its name",
    "course/twoshaft/jobsheet/handin.py: replace": "lets a copy with the staff's group take the place of its original",
    "grader/twoshaft_grader/cohort/back_up.py: open": "streams into a file aside that gets its name when whole",
    "grader/twoshaft_grader/cohort/back_up.py: ZipFile": "packs into that file",
    "grader/twoshaft_grader/cohort/restore.py: open": "fills a folder aside that gets its name when whole",
    "grader/twoshaft_grader/cohort/zips.py: ZipFile": "reads a zip of hand-ins or a back-up",
    "grader/twoshaft_grader/records/oneroster.py: ZipFile": "packs into memory",
    "grader/twoshaft_grader/records/spreadsheet_tables.py: ZipFile": "reads how large a workbook is",
    "grader/twoshaft_grader/code_tasks/inside.py: fdopen": "reads cells and answers, in pipes",
    "grader/twoshaft_grader/code_tasks/inside.py: open": "the null device",
    "grader/twoshaft_grader/code_tasks/sandbox.py: copyfile": "a temporary folder of the sandbox",
    "grader/twoshaft_grader/code_tasks/sandbox.py: open": "reads the filter there",
    "grader/twoshaft_grader/code_tasks/sandbox.py: write_bytes": "the filter, in that folder",
    "course/twoshaft/jobsheet/store.py: rename": "sets a damaged job sheet aside, under the lock",
    "course/twoshaft/jupyter/settings.py: copytree": "links the extension anew at every start",
    "course/start/environment.py: write_text": "runs before anything is installed",
    "grader/twoshaft_grader/notebooks/release.py: write_text": "a temporary folder for nbgrader",
    "grader/twoshaft_grader/desk_pages/chosen_files.py: open": "pieces of a chosen file, in a temporary folder",
    "grader/twoshaft_grader/cohort/lesson_run.py: open": "reads and writes nowhere (the null device)",
    "grader/twoshaft_grader/desk/jupyter.py: open": "the log of a desk's server, as it speaks",
    "grader/twoshaft_grader/desk/demo.py: rename": "names folders, and a notebook as a learner may",
    "grader/twoshaft_grader/kit/pack.py: ZipFile": "packs into memory",
    "course/twoshaft/kernels.py: open": "reads and writes nowhere (the null device)",
    "course/twoshaft/plots/figure.py: savefig": "draws into memory",
    "course/twoshaft/units/definitions.py: rename": "lets a whole folder of the environment be there",
}
_WRITES = {
    "write_text", "write_bytes", "replace", "rename", "renames", "mkstemp", "NamedTemporaryFile",
    "copy", "copy2", "copyfile", "copytree", "move", "fdopen", "ZipFile", "symlink_to", "link_to",
    "hardlink_to", "savefig",
}  # fmt: skip


def writes(tree: ast.AST):
    """Names of the calls in a file by which something is written, moved or copied."""
    for call in (node for node in ast.walk(tree) if isinstance(node, ast.Call)):
        func = call.func
        name = func.attr if isinstance(func, ast.Attribute) else getattr(func, "id", "")
        owner = ast.unparse(func.value) if isinstance(func, ast.Attribute) else ""
        if name == "open":
            given = [*call.args, *(one.value for one in call.keywords)]
            modes = [str(one.value) for one in given if isinstance(one, ast.Constant)]
            if owner == "os" or any(set(mode) & set("wax+") for mode in modes):
                yield name
        elif name in {"replace", "rename"} and owner not in {"os", "system"}:
            # Path.replace takes one place; str.replace two texts, dataclasses' and datetime's names.
            if owner and len(call.args) == 1 and not call.keywords:
                yield name
        elif name in {"copy", "copy2", "move"}:
            if owner == "shutil":
                yield name
        elif (name == "write" and owner in {"nbformat", "v4"}) or name in _WRITES:
            yield name


@pytest.mark.parametrize(
    ("line", "seen"),
    [
        ("open(path, 'w')", ["open"]),
        ("path.open(mode='ab+')", ["open"]),
        ("open(path)", []),
        ("os.open(path, 0)", ["open"]),
        ("os.replace(a, b)", ["replace"]),
        ("system.rename(a, b)", ["rename"]),
        ("path.replace(other)", ["replace"]),
        ("text.replace('a', 'b')", []),
        ("moment.replace(tzinfo=UTC)", []),
        ("replace(mark, notes=())", []),
        ("path.write_text('x')", ["write_text"]),
        ("shutil.copyfile(a, b)", ["copyfile"]),
        ("nbformat.write(nb, path)", ["write"]),
    ],
)
def test_the_search_finds_what_writes(line, seen):
    assert list(writes(ast.parse(line))) == seen


@pytest.mark.slow
def test_nothing_else_writes_a_file():
    found = set()
    for path in (*ROOT.glob("course/**/*.py"), *ROOT.glob("grader/**/*.py")):
        name = path.relative_to(ROOT).as_posix()
        if name.startswith("course/lessons/") or name in MAY:
            continue
        found |= {f"{name}: {call}" for call in writes(ast.parse(path.read_text("utf-8")))}
    assert sorted(found) == sorted(one for one in MAY if ": " in one)


def test_a_file_is_on_the_disk_before_it_has_its_name_and_the_folder_after(tmp_path, monkeypatch):
    steps = []

    def sync(handle):
        kind = os.fstat(handle).st_mode
        steps.append("sync folder" if stat.S_ISDIR(kind) else "sync file")

    def move(old, new):
        steps.append("rename")
        assert Path(old).read_bytes() == b"new" and Path(old).parent == tmp_path
        os.rename(old, new)

    path = tmp_path / "a.json"
    path.write_text("old")
    monkeypatch.setattr(writing.os, "fsync", sync)
    monkeypatch.setattr(writing.os, "replace", move)
    write_file(path, "new")
    assert steps == ["sync file", "rename", "sync folder"] or os.name == "nt"
    assert path.read_text() == "new" and list(tmp_path.iterdir()) == [path]
    steps.clear()
    write_file(path, b"new", sync=False)
    assert steps == ["rename"]


@pytest.mark.parametrize("broken", ["fsync", "replace", "chmod"])
def test_a_failed_write_leaves_the_old_file_and_nothing_else(tmp_path, monkeypatch, broken):
    path = tmp_path / "a.json"
    write_file(path, "old")
    monkeypatch.setattr(writing.os, broken, lambda *_: (_ for _ in ()).throw(OSError("full")))
    with pytest.raises(OSError, match="full"):
        write_file(path, "new", mode=0o600)
    assert path.read_text() == "old" and list(tmp_path.iterdir()) == [path]


@pytest.mark.skipif(os.name == "nt", reason="no permissions of this kind")
def test_the_mode_is_the_one_given_or_the_accounts_own(tmp_path):
    path, before = tmp_path / "a", os.umask(0o027)
    try:
        for mode, seen in ((0o600, 0o600), (0o644, 0o644), (None, 0o640)):
            write_file(path, "x", mode=mode)
            assert stat.S_IMODE(path.stat().st_mode) == seen
    finally:
        os.umask(before)


def test_a_folder_that_is_not_there_is_not_made(tmp_path):
    with pytest.raises(FileNotFoundError):
        write_file(tmp_path / "gone" / "a", "x")


def test_lines_are_appended_in_one_go_and_a_torn_one_is_closed(tmp_path):
    log = tmp_path / "log"
    append_text(log, ["1"])
    append_text(log, [])
    with open(log, "ab") as stream:
        stream.write(b"2, cut sho")
    append_text(log, ["3", "4"])
    assert log.read_text().splitlines() == ["1", "2, cut sho", "3", "4"]


def test_writing_below_a_folder_follows_no_link_and_makes_what_is_missing(tmp_path):
    root, other = tmp_path / "root", tmp_path / "other"
    root.mkdir(), other.mkdir()
    write_inside(root, "a1/feedback/page.html", "one")
    assert (root / "a1" / "feedback" / "page.html").read_text() == "one"
    (root / "b2").symlink_to(other)
    (root / "a1" / "out").symlink_to(other)
    (root / "a1" / "file").write_text("x")
    (root / "a1" / "page.html").symlink_to(other / "page.html")
    for place in ("b2/page.html", "a1/out/page.html", "a1/file/page.html"):
        with pytest.raises(OSError, match="where a folder belongs") as error:
            write_inside(root, place, "two")
        assert error.value.filename == str(root / place)
    write_inside(root, "a1/page.html", "two")  # takes the place of the link
    assert not (root / "a1" / "page.html").is_symlink() and not any(other.iterdir())
    assert not list(root.rglob("*.part"))


def test_what_cannot_be_written_is_named_by_its_own_name(tmp_path):
    (tmp_path / "a.json").mkdir()
    for write in (write_file, lambda path, text: append_text(path, [text])):
        with pytest.raises(OSError) as error:
            write(tmp_path / "a.json", "x")
        assert error.value.filename == str(tmp_path / "a.json")
    write_file(tmp_path / ("n" * 249), "x")
    assert [path.name for path in tmp_path.iterdir() if path.is_file()] == ["n" * 249]
