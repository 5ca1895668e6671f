"""Two accounts of the system, set up by the commands that README.md gives and nothing else; then
the learner works in a browser from signing in to feedback.

Only the place, the names, the due date and where the course is cloned from are others than there;
and the environment is a copy of this one, since installing it takes minutes.
"""

import csv
import os
import re
import secrets
import shutil
import subprocess
import sys
import tempfile
import textwrap
import time
from pathlib import Path
from types import SimpleNamespace

import psutil
import pytest

pytestmark = pytest.mark.browser

ROOT = Path(__file__).resolve().parents[2]
FRONT = ".jp-NotebookPanel:not(.lm-mod-hidden)"
PATIENCE_S = 240


def blocks(heading):
    """The commands that README.md gives under a heading, a list a block."""
    text = (ROOT / "README.md").read_text()
    section = re.search(rf"(?ms)^## {heading}\n(.*?)(?=^## )", text)[1]
    found = re.findall(r"(?ms)^ *```\n(.*?)^ *```$", section)
    return [textwrap.dedent(block).strip().splitlines() for block in found]


def run(account, lines, folder="~"):
    """Type lines into a shell of an account that signed in; what was printed."""
    text = "\n".join(["set -e", f"cd {folder}", *lines])
    done = subprocess.run(
        ["su", "-", account, "-c", text], capture_output=True, text=True, timeout=5 * PATIENCE_S
    )
    assert done.returncode == 0, (lines, done.stdout, done.stderr)
    return done.stdout


def of_account(name):
    every = psutil.process_iter(["username"])
    return [one for one in every if one.info["username"] == name]


@pytest.fixture(scope="module")
def newcomers():
    """Names and a place of this run, and the README's text with them; all is taken away after it."""
    if os.name != "posix" or os.geteuid() != 0 or not shutil.which("useradd"):
        if os.environ.get("CI") == "true":
            pytest.fail("only root can make accounts: in CI this must run", pytrace=False)
        pytest.skip("only root can make accounts")
    before = os.umask(0o022)  # as of whoever signs in; a command of ours that ran here closes it
    base = Path(tempfile.mkdtemp(prefix="twoshaft-newcomers-"))
    base.chmod(0o755)
    tail = secrets.token_hex(3)
    holm, ada = f"holm{tail}", f"ada{tail}"
    words = {
        r"\bholm\b": holm, r"\bada\b": ada, "/srv/twoshaft": str(base / "twoshaft"),
        "WHERE-YOU-GOT-IT": str(base / "got"), r"--due \S+": "--due 2099-12-04",
    }  # fmt: skip

    def told(line):
        for was, now in words.items():
            line = re.sub(was, now, line)
        return line

    try:
        yield SimpleNamespace(base=base, holm=holm, ada=ada, told=told)
    finally:
        for name in (holm, ada):
            left = of_account(name)
            for process in left:
                process.kill()
            psutil.wait_procs(left, timeout=PATIENCE_S)
            subprocess.run(["userdel", "--remove", name], capture_output=True)
        shutil.rmtree(base)
        os.umask(before)


def source(place, owner):
    """What the course is cloned from: this tree as it stands."""
    listed = ["git", "-C", ROOT, "ls-files", "-z", "--cached", "--others", "--exclude-standard"]
    for name in subprocess.run(listed, capture_output=True, check=True).stdout.split(b"\0"):
        if name and (path := ROOT / os.fsdecode(name)).is_file():
            target = place / os.fsdecode(name)
            target.parent.mkdir(parents=True, exist_ok=True)
            shutil.copyfile(path, target)
    git = ["git", "-C", place, "-c", "user.name=x", "-c", "user.email=x@y.example"]
    for words in (["init", "-q"], ["add", "-A"], ["commit", "-q", "-m", "as it stands"]):
        subprocess.run([*git, *words], check=True)
    subprocess.run(["chown", "-R", f"{owner}:{owner}", place], check=True)


def environment(course, owner):
    """A copy of this environment, at home in a clone of the course as if it had been made there."""
    here, there = Path(sys.prefix), course / ".venv"
    if subprocess.run(["cp", "-al", here, there], capture_output=True).returncode:
        shutil.rmtree(there, ignore_errors=True)
        subprocess.run(["cp", "-a", here, there], check=True)
    ours = [*(there / "bin").iterdir(), there / "pyvenv.cfg"]
    ours += [path for path in there.glob("lib/*/site-packages/*twoshaft*/*")]
    ours += [path for path in there.glob("lib/*/site-packages/*twoshaft*.pth")]
    for path in ours:
        data = b"" if path.is_symlink() or not path.is_file() else path.read_bytes()
        if os.fsencode(ROOT) in data:
            mode = path.stat().st_mode
            path.unlink()  # the other name of the same file stays as it is
            path.write_bytes(data.replace(os.fsencode(ROOT), os.fsencode(course)))
            path.chmod(mode)
    stamp = "python3 -c \"import environment; print(environment._stamp(''), end='')\""
    (there / "twoshaft-stamp").write_text(run(owner, [stamp], course / "course/start"))


def opened(account, line, base):
    """Start the command that opens the course; the address that it prints."""
    said = base / "said"
    with open(said, "w") as out:
        process = subprocess.Popen(
            ["su", "-", account, "-c", line], stdout=out, stderr=out, stdin=subprocess.DEVNULL
        )
    end = time.monotonic() + PATIENCE_S
    while not (found := re.search(r"http://127\.0\.0\.1:\S+token=\w+", said.read_text())):
        assert process.poll() is None and time.monotonic() < end, said.read_text()
        time.sleep(0.2)
    return found[0]


def test_two_accounts_by_the_readme_from_nothing_to_feedback(newcomers, chromium, screenshot):
    told, holm, ada = newcomers.told, newcomers.holm, newcomers.ada
    for_root, clone, hand_out, open_it = blocks("Accounts of their own")
    for line in for_root:
        assert line.startswith("sudo ")
        if not line.startswith("sudo passwd "):  # nobody is there to type it
            subprocess.run(told(line).removeprefix("sudo ").split(), check=True)
    source(newcomers.base / "got", holm)
    course = newcomers.base / "twoshaft/course"
    at = next(n for n, line in enumerate(clone) if line.startswith("python3 course/start"))
    run(holm, [told(line) for line in clone[:at]])
    environment(course, holm)
    said = run(holm, [told(line) for line in clone[at:]], course)
    assert "Closed to other accounts, since answers are in it: solutions, tests, .git" in said
    assert told(open_it[0]) in said  # the command that learners are told
    run(holm, [told(line) for line in hand_out], course)
    group = Path(f"~{holm}/evening-group").expanduser()
    with open(group / "sign-in-slips.csv", newline="") as file:
        (slip,) = csv.DictReader(file)

    page = chromium.new_context(viewport={"width": 1280, "height": 720}).new_page()
    page.set_default_timeout(1000 * PATIENCE_S)
    page.goto(opened(ada, f"{told(open_it[0])} --no-browser", newcomers.base))
    page.locator(f"{FRONT} select").first.select_option(label="Lindqvist, Ada (tb01)")
    page.locator(f"{FRONT} .twoshaft input").first.fill(slip["sign-in word"])
    page.get_by_role("button", name="Sign in").click()
    page.get_by_text("Working as Ada Lindqvist (tb01)").first.wait_for()
    page.get_by_role("button", name="Get").click()
    page.get_by_role("link", name="Open").first.click()
    form = page.locator(f"{FRONT} .twoshaft-form").first
    form.locator("[role=option]").first.focus()
    page.keyboard.press("Shift+ArrowDown")
    form.get_by_text("1 of 1 answered").wait_for()
    page.get_by_role("link", name="Start page", exact=True).first.click()
    page.get_by_role("button", name="Hand in").click()
    page.get_by_role("button", name="Hand in as it is").click()
    page.get_by_text("receipt").first.wait_for()
    sheet = (
        newcomers.base / "twoshaft/evening-group" / "work" / "tb01/order-of-work-1/jobsheet.json"
    )
    assert sheet.owner() == ada and sheet.stat().st_mode & 0o007 == 0

    desk = next(block for block in blocks("Start") if any(" export " in line for line in block))
    said = run(holm, [line.replace("~/twoshaft-demo", "~/evening-group") for line in desk], course)
    assert "1 new" in said and "1 marked" in said and "returned to 1 of 1" in said
    page.get_by_role("button", name="Look again").click()
    page.get_by_role("link", name="Feedback").first.wait_for()
    screenshot(page, "newcomer-accounts-feedback")
    page.context.close()
    with open(group / "exports/outcomes.csv", newline="") as file:
        assert {row["state"] for row in csv.DictReader(file)} == {"marked"}
    (feedback,) = sheet.parent.glob("feedback/**/*.html")
    assert "Order of work" in feedback.read_text()
