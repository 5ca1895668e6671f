"""``extensions.json`` in a learner's folder: their own later due dates, by assignment."""

from __future__ import annotations

from twoshaft.stored.definition import LearnersFile

OWN_EXTENSIONS: LearnersFile[dict[str, str]] = LearnersFile(
    file="extensions.json", record=dict[str, str], numbered=False, fault="it holds no due dates"
)
