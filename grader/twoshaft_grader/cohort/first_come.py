"""Whose account made a learner's folder: only who typed the learner's word counts.

With accounts of their own, any account of the machine can make a folder under a learner's id before
the learner comes. Signing in leaves a proof in it, made of the word and the number of the account;
without it, nothing of the learner is written there, and staff are told. No word is asked for where
the account is called as the learner, as on a JupyterHub: its name is given by who looks after the
machine.
"""

from __future__ import annotations

import os

from twoshaft import system
from twoshaft.errors import CohortError
from twoshaft.jobsheet.own_folder import PROOF, proof_of
from twoshaft.stored.hostile import read_bytes
from twoshaft_grader.cohort.clock import now, stamp
from twoshaft_grader.cohort.folder import Cohort
from twoshaft_grader.cohort.trail import act
from twoshaft_grader.cohort.workplace import sign_in_words


def is_theirs(cohort: Cohort, learner: str) -> bool:
    """Whether a learner's folder is there, and is the learner's as far as can be told.

    It cannot be told once the slips with the words were taken away.
    """
    own = cohort.work / learner
    if not own.is_dir():
        return False
    if not cohort.own_accounts:
        return True
    account = os.lstat(own).st_uid
    word = sign_in_words(cohort).get(learner)
    if word is None or account == os.stat(cohort.work).st_uid:
        return True
    # As on a hub, where nobody types a word and names are in small letters.
    if system.account_name(account).casefold() == learner.casefold():
        return True
    try:
        return read_bytes(own / PROOF, 200).decode("ascii") == proof_of(word, learner, account)
    except (OSError, ValueError):
        return False


def strange_folder(cohort: Cohort, learner: str) -> str:
    """What is said of a folder that somebody made without the learner's word; else empty."""
    own = cohort.work / learner
    if not own.is_dir() or is_theirs(cohort, learner):
        return ""
    return (
        f"account {os.lstat(own).st_uid} of this system made the folder, without the sign-in word: "
        "set it aside on page Group or with roster free, or let them sign in again."
    )


def set_aside(cohort: Cohort, learner: str, *, by: str = "") -> str:
    """Give a learner's name free again where somebody else took it; what its folder is called now.

    Raises
    ------
    CohortError
        When there is no such folder, or it is the learner's.
    """
    if not strange_folder(cohort, learner):
        raise CohortError(
            f"no folder that a stranger made stands under {learner}", mend="check the id"
        )
    name = f".{learner}-set-aside-{stamp(now()).replace(':', '')}"
    with act(cohort.root, "set a stranger's folder aside", learner, by=by):
        system.rename(cohort.work / learner, cohort.work / name)
    return name
