"""Settings of a JupyterLab server for apprentices or for staff."""

from __future__ import annotations

import json
import shutil
from collections.abc import Iterable
from pathlib import Path
from typing import Any, Literal

from twoshaft import system
from twoshaft.jupyter.out_of_memory import NAME as OUT_OF_MEMORY
from twoshaft.jupyter.released import cell_digest
from twoshaft.jupyter.startpage import START_CELL
from twoshaft.stored.writing import write_file

Role = Literal["apprentice", "staff"]
EXTENSION = "twoshaft-opener"

# What an apprentice does not need: staff panels, and whatever adds or removes cells.
_HIDDEN = (
    "@jupyter/nbgrader",
    "@jupyterlab/cell-toolbar-extension",
    "@jupyterlab/debugger-extension",
    "@jupyterlab/extensionmanager-extension",
    "@jupyter-notebook/lab-extension",
    "jupyterlab-jupytext",
    # Never used here, and the forms would wait for what these ask of the server on opening.
    "@jupyterlab/apputils-extension:announcements",
    "@jupyterlab/fileeditor-extension:language-server",
    "@jupyterlab/lsp-extension",
    "@jupyterlab/notebook-extension:export",
    "@jupyterlab/notebook-extension:language-server",
    "@jupyterlab/notebook-extension:update-raw-mimetype",
    "@jupyterlab/terminal-extension",
)
_STAFF_SERVERS = (
    *(
        f"nbgrader.server_extensions.{name}"
        for name in ("formgrader", "course_list", "assignment_list", "validate_assignment")
    ),
    # Their pages are hidden from apprentices above; loading them only costs time.
    "jupyter_lsp",
    "jupyter_server_terminals",
    "jupytext",
    "notebook",
)
_LEARNERS = {
    "contents_manager_class": "twoshaft.jupyter.contents.LearnersContents",
    "terminals_enabled": False,
}
_WARM_KERNELS = "twoshaft.jupyter.warm_kernels"
# No page loads anything from outside, whoever made it: not nbgrader's own, which asks a public
# server for formulas, nor a notebook with a picture or script from elsewhere.
_HEADERS = {
    "Content-Security-Policy": "; ".join(
        (
            "frame-ancestors 'self'",
            "default-src 'self' data: blob: 'unsafe-inline' 'unsafe-eval'",
            "connect-src 'self' data: blob: ws: wss:",
        )
    )
}

_COMMAND = ".jp-Notebook.jp-mod-commandMode:not(.jp-mod-readWrite) :focus"
_MARKDOWN = ".jp-Notebook.jp-mod-commandMode:not(.jp-mod-readWrite) .jp-MarkdownCell:focus"
# Keys that change the notebook while a form's control has the focus.
_DANGEROUS = (
    ("notebook:insert-cell-above", ["A"], _COMMAND),
    ("notebook:insert-cell-below", ["B"], _COMMAND),
    ("notebook:insert-heading-above", ["Shift A"], _COMMAND),
    ("notebook:insert-heading-below", ["Shift B"], _COMMAND),
    ("notebook:cut-cell", ["X"], _COMMAND),
    ("notebook:copy-cell", ["C"], _COMMAND),
    ("notebook:paste-cell-below", ["V"], _COMMAND),
    ("notebook:delete-cell", ["D", "D"], _COMMAND),
    ("notebook:undo-cell-action", ["Z"], _COMMAND),
    ("notebook:redo-cell-action", ["Shift Z"], _COMMAND),
    ("notebook:change-cell-to-code", ["Y"], _COMMAND),
    ("notebook:change-cell-to-markdown", ["M"], _COMMAND),
    ("notebook:change-cell-to-raw", ["R"], _COMMAND),
    *((f"notebook:change-cell-to-heading-{n}", [str(n)], _MARKDOWN) for n in range(1, 7)),
    ("notebook:merge-cells", ["Shift M"], _COMMAND),
    ("notebook:merge-cell-above", ["Ctrl Backspace"], _COMMAND),
    ("notebook:merge-cell-below", ["Ctrl Shift M"], _COMMAND),
    ("notebook:move-cell-up", ["Ctrl Shift ArrowUp"], _COMMAND),
    ("notebook:move-cell-down", ["Ctrl Shift ArrowDown"], _COMMAND),
    ("notebook:move-cursor-down", ["ArrowDown"], _COMMAND),
    ("notebook:move-cursor-down", ["J"], _COMMAND),
    ("notebook:move-cursor-up", ["ArrowUp"], _COMMAND),
    ("notebook:move-cursor-up", ["K"], _COMMAND),
    ("notebook:move-cursor-heading-above-or-collapse", ["ArrowLeft"], _COMMAND),
    ("notebook:move-cursor-heading-below-or-expand", ["ArrowRight"], _COMMAND),
    ("notebook:toggle-render-side-by-side-current", ["Shift R"], _COMMAND),
    ("viewmenu:line-numbering", ["Shift L"], _COMMAND),
    ("kernelmenu:restart", ["0", "0"], "[data-jp-kernel-user]:focus"),
    ("kernelmenu:interrupt", ["I", "I"], "[data-jp-kernel-user]:focus"),
    # What makes new notebooks is not one key away.
    ("launcher:create", ["Accel Shift L"], "body"),
)


def write_settings(
    folder: str | Path, role: Role, *, released: Iterable[str] = (), desk: str = ""
) -> dict[str, str]:
    """Write the settings of a JupyterLab server.

    Parameters
    ----------
    folder : path
        A folder of this server's own; made if it is not there.
    role : {"apprentice", "staff"}
        For apprentices, course notebooks show their forms on opening, staff panels are hidden
        and single keys change no cell.
    released : iterable of str, optional
        Digests of cells (:func:`twoshaft.jupyter.released.cell_digest`) that may be run on
        opening beside those that ship with the course: a cohort's own notebooks. For staff, those
        of the desk.
    desk : str, optional
        For staff, the one notebook that shows its screen on opening, as a path under the root.

    Returns
    -------
    dict
        Environment variables for ``jupyter lab``.
    """
    if role not in ("apprentice", "staff"):
        raise ValueError(f"role is apprentice or staff, not {role!r}")
    folder, learners = Path(folder).absolute(), role == "apprentice"
    config = folder / "config"
    cells = sorted({*([cell_digest(START_CELL)] if learners else []), *released})
    hidden = {name: learners for name in _HIDDEN}
    _write(
        config / "labconfig" / "page_config.json",
        {
            "twoshaftRole": role,
            "twoshaftReleased": cells,
            "twoshaftDesk": "" if learners else desk,
            "disabledExtensions": hidden,
            "buildCheck": role == "staff",
        },
    )
    _write(config / "labconfig" / "default_setting_overrides.json", _overrides(role))
    servers = {name: role == "staff" for name in _STAFF_SERVERS} | {_WARM_KERNELS: True}
    _write(
        config / "jupyter_server_config.d" / "twoshaft.json",
        {"ServerApp": {"jpserver_extensions": servers}},
    )
    own = {"tornado_settings": {"headers": _HEADERS}} | (_LEARNERS if learners else {})
    _write(config / "jupyter_server_config.json", {"ServerApp": own})
    data = folder / "data"
    _copy_extension(data / "labextensions" / EXTENSION)
    places = {
        "JUPYTER_CONFIG_DIR": config,
        "JUPYTER_DATA_DIR": data,
        "JUPYTER_RUNTIME_DIR": folder / "runtime",
        "JUPYTERLAB_SETTINGS_DIR": folder / "settings",
        "JUPYTERLAB_WORKSPACES_DIR": folder / "workspaces",
        "IPYTHONDIR": folder / "ipython",
    }
    kernels = {"IPKernelApp": {"extensions": [OUT_OF_MEMORY]}}
    _write(places["IPYTHONDIR"] / "profile_default" / "ipython_kernel_config.json", kernels)
    if learners:
        # The next learner on this machine does not find the last one's notebooks open.
        shutil.rmtree(places["JUPYTERLAB_WORKSPACES_DIR"], ignore_errors=True)
    for place in (folder, *places.values()):
        place.mkdir(parents=True, exist_ok=True)
        system.make_closed(
            place, 0o700
        )  # who reads the server's keys can do all that its owner can
    # Inside a virtual environment its own configuration would otherwise win over this one.
    return {"JUPYTER_PREFER_ENV_PATH": "0"} | {name: str(place) for name, place in places.items()}


def _overrides(role: Role) -> dict[str, Any]:
    overrides: dict[str, Any] = {
        "@jupyterlab/apputils-extension:notification": {
            "fetchNews": "false",
            "checkForUpdates": False,
        },
        # Dark for whoever has set the machine to dark.
        "@jupyterlab/apputils-extension:themes": {"adaptive-theme": True},
    }
    if role == "staff":
        # The desk's cell stays attached, longer than the window as it is.
        tracker = {"windowingMode": "none", "scrollPastEnd": False}
        return overrides | {"@jupyterlab/notebook-extension:tracker": tracker}
    return overrides | {
        "@jupyterlab/shortcuts-extension:shortcuts": {
            "shortcuts": [
                {"command": command, "keys": keys, "selector": selector, "disabled": True}
                for command, keys, selector in _DANGEROUS
            ]
        },
        # All cells stay attached: a form that leaves the screen keeps its state.
        "@jupyterlab/notebook-extension:tracker": {
            "windowingMode": "none",
            "scrollPastEnd": False,
            "kernelShutdown": False,
        },
        "@jupyterlab/notebook-extension:panel": {
            "toolbar": [
                {"name": name, "disabled": True}
                for name in ("insert", "cut", "copy", "paste", "cellType")
            ]
        },
        "@jupyterlab/docmanager-extension:plugin": {"autosave": True, "autosaveInterval": 60},
        "@jupyterlab/statusbar-extension:plugin": {"visible": False},
        "@jupyterlab/completer-extension:manager": {"autoCompletion": False},
    }


def _copy_extension(target: Path) -> None:
    """Put the library's own extension first: the one that was installed beside it may be older."""
    source = Path(__file__).resolve().parents[1] / "labextension"
    target.parent.mkdir(parents=True, exist_ok=True)
    shutil.rmtree(target, ignore_errors=True)
    shutil.copytree(source, target)
    for path in (target, *target.rglob("*")):
        system.make_closed(path, 0o700 if path.is_dir() else 0o600)


def _write(path: Path, data: Any) -> None:
    path.parent.mkdir(parents=True, exist_ok=True)
    write_file(path, json.dumps(data, indent=1) + "\n", sync=False)
