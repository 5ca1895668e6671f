"""A cohort of an earlier version is brought up to date by one command, whatever cut it short."""

import io
import os
import shutil
from contextlib import redirect_stderr, redirect_stdout

import pytest

from twoshaft_grader.cohort import backbone, renew, shared
from twoshaft_grader.cohort.folder import make_cohort, open_cohort
from twoshaft_grader.cohort.intake import take_in
from twoshaft_grader.cohort.roster import Learner
from twoshaft_grader.desk.commands import main
from twoshaft_grader.stored.cohort import FILE


def run(*arguments):
    out, err = io.StringIO(), io.StringIO()
    with redirect_stdout(out), redirect_stderr(err):
        code = main([str(argument) for argument in arguments])
    return code, out.getvalue(), err.getvalue()


@pytest.fixture
def old(tmp_path):
    """A cohort as the first version made it: all in one folder, open to others."""
    made = make_cohort(tmp_path / "group", id="group", timezone="UTC")
    take_in(made, [Learner("a1", "Quill", "Una")])
    for name in ("workplace", "exchange"):
        shutil.move(made.shared / name, made.root / name)
    shutil.rmtree(made.shared)
    text = (made.root / FILE).read_text().replace("format: 2", "format: 1")
    lines = [line for line in text.splitlines() if not line.startswith("shared:")]
    (made.root / FILE).write_text("\n".join(lines) + "\n")
    (made.root / "nbgrader_config.py").write_text("c = get_config()\n# ours\n")
    made.root.chmod(0o755)
    return open_cohort(made.root)


def whole(root):
    cohort = open_cohort(root)
    assert cohort.shared == root.with_name("group-shared")
    assert not (root / "workplace").exists() and not (root / "exchange").exists()
    assert (cohort.workplace / "a1" / "learner.json").exists()
    assert (cohort.inbound.parent / "outbound").is_dir()
    if os.name == "posix":
        assert root.stat().st_mode & 0o077 == cohort.shared.stat().st_mode & 0o077 == 0
    config = backbone.configuration(cohort)
    assert config.Exchange.root == str(cohort.exchange) and "AsReleased" in config
    assert (root / renew.BEFORE).read_text().endswith("# ours\n")


@pytest.mark.slow
def test_it_is_told_and_renewed_once(old):
    assert old.shared == old.root
    assert "is of an earlier version" in run("roster", "list", "--cohort", old.root)[2]
    code, said, _ = run("cohort", "renew", "--cohort", old.root)
    assert code == 0 and "group-shared now" in said and "is written anew" in said
    whole(old.root)
    code, said, err = run("cohort", "renew", "--cohort", old.root)
    assert (code, said, err) == (0, "There was nothing to renew.\n", "")


@pytest.mark.slow
@pytest.mark.parametrize("cut", range(4))
def test_what_was_cut_short_is_finished_by_the_same_command(old, monkeypatch, cut):
    with monkeypatch.context() as patch:
        count = iter(range(100))

        def stop(real):
            def call(*words, **more):
                if next(count) == cut:
                    raise KeyboardInterrupt
                return real(*words, **more)

            return call

        patch.setattr(shared.os, "rename", stop(os.rename))
        patch.setattr(renew, "write_cohort", stop(renew.write_cohort))
        patch.setattr(renew, "write_config", stop(renew.write_config))
        run("cohort", "renew", "--cohort", old.root)
    assert run("cohort", "renew", "--cohort", old.root)[0] == 0
    whole(old.root)


def test_a_place_in_use_is_one_sentence(old):
    (old.root.with_name("group-shared") / "exchange").mkdir(parents=True)
    code, _, err = run("cohort", "renew", "--cohort", old.root)
    assert code == 2 and "is there already" in err.splitlines()[-1]
    assert open_cohort(old.root).shared == old.root
