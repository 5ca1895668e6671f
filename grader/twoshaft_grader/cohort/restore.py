"""Make a cohort again from its back-up, which may come from anywhere: nothing in it is trusted.

Names, sizes and digests are checked before a file has its place, and all of it is put together
aside and renamed when it is whole. What would be run is not taken from the archive but made anew:
nbgrader's configuration, the opening command, the start page.
"""

from __future__ import annotations

import hashlib
import os
import re
import shutil
import stat
import zipfile
from collections.abc import Iterator
from dataclasses import asdict, dataclass, replace
from pathlib import Path, PurePosixPath

from twoshaft import system
from twoshaft.errors import CohortError
from twoshaft.jupyter.startpage import START
from twoshaft_grader.cohort import files
from twoshaft_grader.cohort.assign import Assigned, read_assigned
from twoshaft_grader.cohort.back_up import COHORT, SHARED
from twoshaft_grader.cohort.content import Content, find_content
from twoshaft_grader.cohort.folder import (
    CONFIG_FILE,
    Cohort,
    check_id,
    open_cohort,
    write_config,
)
from twoshaft_grader.cohort.roster import read_roster
from twoshaft_grader.cohort.shared import CLOSED, OPENER, WORK, make_shared
from twoshaft_grader.cohort.workplace import prepare_workplace
from twoshaft_grader.cohort.zips import opened_zip
from twoshaft_grader.stored.back_up import MANIFEST, KeptFile, Manifest
from twoshaft_grader.stored.cohort import FILE as COHORT_FILE
from twoshaft_grader.stored.cohort import HERE, CohortEntries, read_cohort, write_cohort
from twoshaft_grader.stored.shared import SHARED as SHARED_MARK

LARGEST, MOST_FILES, LARGEST_MANIFEST = 50 * 10**9, 2_000_000, 400_000_000
"""Bytes and files of a whole cohort, and bytes of the list of them: our choice."""
DEEPEST, LONGEST = 30, 1_000
OWN_FOLDERS = "own-folders"
_ROSTER = f"{COHORT}/roster.csv"
_UNIT = re.compile(r"unit\.yaml|[a-z0-9-]+")
_MADE_ANEW = {
    f"{COHORT}/{COHORT_FILE}", _ROSTER, f"{COHORT}/{CONFIG_FILE}",
    f"{SHARED}/{SHARED_MARK.file}", f"{SHARED}/{OPENER}",
    f"{SHARED}/workplace/{START}", f"{COHORT}/workplace/{START}",
}  # fmt: skip
_CHUNK = 2**20


@dataclass(frozen=True)
class Restored:
    """The cohort that was made.

    ``apart`` are learners whose own folders lie in ``own-folders``, since they could be given to no
    account. ``other_source`` are assignments whose solution, which is run in marking, is none of
    this course's. ``other_config``: whether the archive's nbgrader configuration was another.
    ``content``: where the cohort had its solutions from, which is not taken over.
    """

    cohort: Cohort
    count: int
    apart: tuple[str, ...]
    other_source: tuple[str, ...]
    other_config: bool
    content: str


def restore(archive: Path, root: Path, *, shared: Path | None = None) -> Restored:
    """Make a cohort folder and its shared place from a back-up.

    Parameters
    ----------
    root : Path
        The folder to make.
    shared : Path, optional
        The shared place, where each learner works in an account of their own; see ``make_cohort``.

    Raises
    ------
    CohortError
        When a folder is in use, or the file is no back-up, is damaged, or holds what none holds.
    OSError
        When the disk is full or the place is read-only.
    """
    root = root.expanduser().resolve()
    place = shared.expanduser().resolve() if shared else root.with_name(f"{root.name}-shared")
    for folder in (root, place):
        if os.path.lexists(folder):
            raise CohortError(f"{folder} is there already", mend="give the name of a new folder")
    if root in place.parents or place in root.parents:
        raise CohortError(
            f"{place} and the cohort folder lie one within the other", mend="name a place apart"
        )
    asides = [one.with_name(f".{one.name}.part") for one in (root, place)]
    try:
        with opened_zip(archive) as zipped:
            manifest = _checked(zipped, archive, root.parent)
            return _restore(zipped, manifest, root, place, *asides, accounts=shared is not None)
    except zipfile.BadZipFile as error:
        raise _damaged(archive, str(error).lower()) from None
    except FileNotFoundError:
        raise CohortError(f"there is no file {archive}", mend="check its name") from None
    finally:
        for aside in asides:
            files.remove(aside)


def _damaged(archive: Path, why: str) -> CohortError:
    return CohortError(f"this is no whole back-up ({why})", where=str(archive), mend=MANIFEST.mend)


def _checked(zipped: zipfile.ZipFile, archive: Path, where: Path) -> Manifest:
    """The list of what the archive holds, after seeing that it holds just that."""

    def refuse(why: str) -> CohortError:
        return _damaged(archive, why)

    entries = zipped.infolist()
    names = {entry.filename for entry in entries}
    if len(entries) > MOST_FILES or len(names) != len(entries):
        raise refuse("too many files, or one twice")
    if MANIFEST.file not in names:
        raise refuse(f"it has no {MANIFEST.file}")
    if zipped.getinfo(MANIFEST.file).file_size > LARGEST_MANIFEST:
        raise refuse(f"its {MANIFEST.file} is too large")
    text = b"".join(_chunks(zipped, MANIFEST.file, LARGEST_MANIFEST))
    try:
        manifest = MANIFEST.of(files.parse_json(text, MANIFEST.file), MANIFEST.file)
    except CohortError as error:
        raise refuse(error.what) from None
    if names != {MANIFEST.file, *manifest.files}:
        odd = min(names ^ {MANIFEST.file, *manifest.files})
        raise refuse(f"{ascii(odd)[:80]} is not in both its list and the file")
    for name in (*manifest.files, *manifest.folders):
        if not _plain(name):
            raise refuse(f"it holds the name {ascii(name)[:80]}")
    folders = {str(up) for name in manifest.files for up in PurePosixPath(name).parents}
    if both := folders & manifest.files.keys():
        raise refuse(f"{min(both)[:80]} is a file and a folder")
    for entry in entries:
        kind = stat.S_IFMT(entry.external_attr >> 16)
        told = manifest.files.get(entry.filename)
        if kind not in (0, stat.S_IFREG) or entry.is_dir():
            raise refuse(f"{entry.filename[:80]} is no ordinary file")
        if told and told.size != entry.file_size:
            raise refuse(f"{entry.filename[:80]} has another size than it had")
    size = sum(entry.file_size for entry in entries)
    if size > LARGEST:
        raise refuse(f"it would hold {size / 1e9:.0f} GB")
    if size > (free := shutil.disk_usage(where).free):
        raise CohortError(
            f"it needs {size / 1e6:.0f} MB, and the disk has {free / 1e6:.0f} MB",
            where=str(where), mend="make room first",
        )  # fmt: skip
    return manifest


def _plain(name: str) -> bool:
    """Whether a name leads below ``cohort/`` or ``shared/`` on every system."""
    parts = name.split("/")
    return (
        len(name) <= LONGEST
        and 2 <= len(parts) <= DEEPEST
        and parts[0] in (COHORT, SHARED)
        and all(part not in ("", ".", "..") and not part.endswith(".part") for part in parts)
        and name.isprintable()
        and "\\" not in name
        and not (system.WINDOWS and set(':*?"<>|') & set(name))
    )


def _chunks(zipped: zipfile.ZipFile, name: str, most: int) -> Iterator[bytes]:
    """What an entry holds; never more than it says."""
    left = most
    with zipped.open(name) as stream:
        while chunk := stream.read(min(_CHUNK, left + 1)):
            left -= len(chunk)
            if left < 0:
                raise zipfile.BadZipFile(f"{name[:80]} holds more than it says")
            yield chunk


def _restore(
    zipped: zipfile.ZipFile,
    manifest: Manifest,
    root: Path,
    place: Path,
    aside: Path,
    shared_aside: Path,
    *,
    accounts: bool,
) -> Restored:
    for one in (aside, shared_aside):
        files.remove(one)
    aside.mkdir(parents=True, mode=CLOSED)
    system.make_closed(aside, CLOSED)
    entries = _entries(zipped, manifest, aside)
    one_folder = entries.shared == HERE  # a cohort of the first format
    if one_folder and accounts:
        raise CohortError(
            "this back-up is of a cohort in one folder", mend="restore it without --shared first"
        )
    owner = _owner(root) if accounts and system.is_root() else None
    if not one_folder:
        make_shared(
            shared_aside, cohort=entries.id, salt=entries.salt, own_accounts=accounts, owner=owner
        )
        open_to = stat.S_IMODE(shared_aside.stat().st_mode)
        system.make_closed(shared_aside, CLOSED)  # until all has its owner
        entries = replace(entries, shared=str(place))
    # A back-up holds the gradebook as a file; the one on a server is the first cohort's.
    write_cohort(aside / COHORT_FILE, replace(entries, content="", gradebook=""))
    if _ROSTER in manifest.files:
        _put(zipped, _ROSTER, manifest.files[_ROSTER], aside / "roster.csv")
    people = read_roster(aside / "roster.csv") if _ROSTER in manifest.files else []
    put = _Places(aside, shared_aside, manifest, {one.id for one in people}, accounts)
    for name, kept in manifest.files.items():
        if name not in _MADE_ANEW:
            _put(zipped, name, kept, put.of(name))
    put.folders()
    write_config(aside, entries.id, entries.timezone)
    own_place = aside if one_folder else shared_aside
    cohort = Cohort(
        root=aside, **asdict(entries) | {"shared": own_place, "content": "", "gradebook": ""}
    )
    prepare_workplace(cohort, people)
    config, other_config = f"{COHORT}/{CONFIG_FILE}", False
    if config in manifest.files:
        written = hashlib.sha256((aside / CONFIG_FILE).read_bytes()).hexdigest()
        other_config = manifest.files[config].sha256 != written
    other_source = _other_source(cohort)
    if owner is not None:
        _give_to(owner, aside, set())
        _give_to(owner, shared_aside, put.given)
    if not one_folder:
        system.make_closed(shared_aside, open_to)
        system.rename(shared_aside, place)
    system.rename(aside, root)
    return Restored(
        cohort=open_cohort(root),
        count=len(manifest.files),
        apart=tuple(sorted(put.apart)),
        other_source=other_source,
        other_config=other_config,
        content=entries.content,
    )


def _entries(zipped: zipfile.ZipFile, manifest: Manifest, aside: Path) -> CohortEntries:
    """The cohort's entries; a unit or source from elsewhere on this machine is none of theirs."""
    name = f"{COHORT}/{COHORT_FILE}"
    if name not in manifest.files:
        raise zipfile.BadZipFile(f"it has no {COHORT_FILE}")
    _put(zipped, name, manifest.files[name], aside / COHORT_FILE)
    entries = read_cohort(aside / COHORT_FILE)
    check_id(entries.id)
    if not _UNIT.fullmatch(entries.unit):
        raise zipfile.BadZipFile("its unit lies outside it")
    files.remove(aside / COHORT_FILE)
    return entries


class _Places:
    """Where what is in a back-up goes."""

    def __init__(
        self, aside: Path, shared: Path, manifest: Manifest, own: set[str], accounts: bool
    ) -> None:
        self._aside, self._shared, self._manifest = aside, shared, manifest
        self._accounts = accounts
        # Only root can give a folder to another account; one of the same number may be another's.
        self._give = accounts and manifest.own_accounts and system.is_root()
        self._own = own
        self.apart: set[str] = set()
        self.given: set[Path] = set()

    def of(self, name: str) -> Path:
        """The path for a file or folder of the back-up."""
        top, *parts = name.split("/")
        if top == COHORT:
            return self._aside.joinpath(*parts)
        mine = len(parts) > 1 and parts[0] in (WORK, "workplace") and parts[1] in self._own
        if not mine:
            return self._shared.joinpath(*parts)
        if not self._accounts:
            return self._shared.joinpath("workplace", *parts[1:])
        if self._give and self._known(f"{SHARED}/{WORK}/{parts[1]}"):
            return self._shared.joinpath(WORK, *parts[1:])
        self.apart.add(parts[1])
        return self._aside.joinpath(OWN_FOLDERS, *parts[1:])

    def folders(self) -> None:
        """Make the folders that have no file in them, and give each its rights and its time."""
        for name, kept in sorted(self._manifest.folders.items(), reverse=True):
            top, *parts = name.split("/")
            if parts == [WORK]:
                continue
            path = self.of(name)
            path.mkdir(parents=True, exist_ok=True)
            if top == SHARED and self._aside not in path.parents:
                if len(parts) > (3 if parts[0] == "exchange" else 1):  # else as just made
                    system.make_closed(path, kept.mode & 0o755 | 0o700)
                own = parts[0] == WORK
                handed_in = parts[0] == "exchange" and parts[2:3] == ["inbound"] and parts[3:]
                if self._give and (own or handed_in) and self._known(name):
                    self._hand_over(path, kept.account, own)
            os.utime(path, (kept.written, kept.written))

    def _known(self, name: str) -> bool:
        """Whether the account of a folder is the one here, by its number and its name."""
        kept = self._manifest.folders.get(name)
        if kept is None:
            return False
        called = self._manifest.accounts.get(str(kept.account))
        return bool(called) and system.account_name(kept.account) == called

    def _hand_over(self, path: Path, account: int, own: bool) -> None:
        group = (self._shared / WORK).stat().st_gid
        for one in (path, *(file for file in path.iterdir() if file.is_file())):
            os.chown(one, account, group)
            self.given.add(one)
        if own:
            path.chmod(0o2770)


def _owner(root: Path) -> int:
    """Whose a cohort is that whoever looks after the machine makes: the folder's around it."""
    try:
        return root.parent.stat().st_uid
    except FileNotFoundError:
        raise CohortError(
            f"there is no folder {root.parent}",
            mend="make it first, in the account of the instructor",
        ) from None


def _give_to(owner: int, folder: Path, but: set[Path]) -> None:
    """Give all that is in a closed folder, and at last the folder, to an account; groups of its
    folders for learners stay.
    """
    import pwd

    own = pwd.getpwuid(owner).pw_gid
    for path in (*(one for one in folder.rglob("*") if one not in but), folder):
        group = -1 if path.name == WORK and path.parent == folder else own
        os.chown(path, owner, group, follow_symlinks=False)


def _put(zipped: zipfile.ZipFile, name: str, kept: KeptFile, path: Path) -> None:
    path.parent.mkdir(parents=True, exist_ok=True)
    digest = hashlib.sha256()
    flags = os.O_WRONLY | os.O_CREAT | os.O_EXCL | getattr(os, "O_BINARY", 0)
    with open(os.open(path, flags, 0o600), "wb") as stream:
        for chunk in _chunks(zipped, name, kept.size):
            digest.update(chunk)
            stream.write(chunk)
    if digest.hexdigest() != kept.sha256:
        raise zipfile.BadZipFile(f"{name[:80]} is not what it was")
    if name.startswith(f"{SHARED}/"):
        system.make_closed(path, kept.mode & 0o644 | 0o600)
    os.utime(path, (kept.written, kept.written))


def _is_ours(notebook: Path, content: Content, assigned: Assigned) -> bool:
    """Whether a solution is this course's own, shrunk to the unit if it was."""
    from twoshaft_grader.notebooks.shrink import same_but_left_out

    own = content.solution(assigned.module).read_text(encoding="utf-8")
    return same_but_left_out(notebook.read_text(encoding="utf-8"), own, assigned.left_out)


def _other_source(cohort: Cohort) -> tuple[str, ...]:
    """Assignments whose solution, which is run in marking, is not one of this course's."""
    try:
        content = find_content(cohort.content, base=cohort.root)
    except CohortError:
        content = None
    other = []
    for folder in sorted((cohort.root / "source").glob("*")):
        try:
            assigned = read_assigned(cohort, folder.name)
            same = content and _is_ours(folder / assigned.notebook, content, assigned)
        except CohortError:
            same = False
        if not same:
            other.append(folder.name)
    return tuple(other)
