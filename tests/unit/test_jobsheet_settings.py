"""Settings of the JupyterLab server, the start page's notebook and the list of released cells."""

import json
from pathlib import Path

import nbformat
import pytest
from nbformat.v4 import new_code_cell, new_markdown_cell, new_notebook

from twoshaft.jupyter.released import cell_digest, digests_in
from twoshaft.jupyter.settings import write_settings
from twoshaft.jupyter.startpage import START_CELL, write_start_here

EXTENSION = Path(__file__).resolve().parents[2] / "course" / "twoshaft" / "labextension"


def page_config(env):
    path = Path(env["JUPYTER_CONFIG_DIR"]) / "labconfig" / "page_config.json"
    return json.loads(path.read_text())


def test_apprentices_get_forms_and_no_staff_panels(tmp_path):
    env = write_settings(tmp_path, "apprentice", released=["ab"])
    page = page_config(env)
    assert page["twoshaftRole"] == "apprentice"
    assert page["twoshaftReleased"] == sorted(["ab", cell_digest(START_CELL)])
    assert page["disabledExtensions"]["@jupyter/nbgrader"] is True
    server = Path(env["JUPYTER_CONFIG_DIR"]) / "jupyter_server_config.d" / "twoshaft.json"
    servers = json.loads(server.read_text())["ServerApp"]["jpserver_extensions"]
    assert servers["nbgrader.server_extensions.formgrader"] is False
    settings = json.loads(
        (Path(env["JUPYTER_CONFIG_DIR"]) / "jupyter_server_config.json").read_text()
    )
    policy = settings["ServerApp"]["tornado_settings"]["headers"]["Content-Security-Policy"]
    assert "default-src 'self'" in policy and "http" not in policy
    assert all(Path(env[name]).is_dir() for name in env if name != "JUPYTER_PREFER_ENV_PATH")
    found = Path(env["JUPYTER_DATA_DIR"]) / "labextensions" / "twoshaft-opener" / "package.json"
    assert found.read_bytes() == (EXTENSION / "package.json").read_bytes()


def test_staff_get_everything_and_nothing_but_the_desk_runs_for_them(tmp_path):
    write_settings(tmp_path, "apprentice")
    page = page_config(write_settings(tmp_path, "staff"))
    assert page["twoshaftRole"] == "staff"
    assert page["twoshaftReleased"] == [] and page["twoshaftDesk"] == ""
    page = page_config(write_settings(tmp_path, "staff", released=["ab"], desk="desk.ipynb"))
    assert page["twoshaftReleased"] == ["ab"] and page["twoshaftDesk"] == "desk.ipynb"
    assert not any(page["disabledExtensions"].values())


def test_a_new_start_forgets_what_the_last_learner_had_open(tmp_path):
    env = write_settings(tmp_path, "apprentice")
    left = Path(env["JUPYTERLAB_WORKSPACES_DIR"]) / "default.jupyterlab-workspace"
    left.write_text("{}")
    write_settings(tmp_path, "apprentice")
    assert not left.exists()


def test_a_role_is_one_of_two(tmp_path):
    with pytest.raises(ValueError, match="apprentice or staff"):
        write_settings(tmp_path, "boss")


def test_the_extensions_files_belong_together():
    package = json.loads((EXTENSION / "package.json").read_text())
    entry = EXTENSION / package["jupyterlab"]["_build"]["load"]
    assert package["version"] in entry.name
    assert f'"{package["name"]}"' in entry.read_text()


def test_released_cells_are_the_tagged_ones(tmp_path):
    cells = [
        new_markdown_cell("text", metadata={"tags": ["setup"]}),
        new_code_cell("a = 1\nb = 2\n", metadata={"tags": ["setup"]}),
        new_code_cell("form()", metadata={"tags": ["form", "other"]}),
        new_code_cell("rig()", metadata={"tags": ["rig"]}),
        new_code_cell("own()"),
        new_code_cell("mark()", metadata={"tags": ["mark"]}),
    ]
    path = tmp_path / "one.ipynb"
    nbformat.write(new_notebook(cells=cells), path)
    expected = {cell_digest(source) for source in ("a = 1\nb = 2", "form()", "rig()")}
    assert digests_in(path) == expected


def test_a_digest_is_plain_sha256():
    # FIPS 180-4 example: the digest of "abc" (NIST, Secure Hash Standard examples).
    assert (
        cell_digest("abc\n") == "ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad"
    )


def test_the_start_page_opens_itself(tmp_path):
    path = write_start_here(tmp_path)
    notebook = nbformat.read(path, 4)
    nbformat.validate(notebook)
    assert notebook.metadata["twoshaft"] == {"open": True}
    assert digests_in(path) == {cell_digest(START_CELL)}
    before = path.read_bytes()
    assert write_start_here(tmp_path).read_bytes() == before
    assert [item.name for item in tmp_path.iterdir()] == ["start-here.ipynb"]
