"""The trade's terms in plain words, as data."""

from twoshaft.glossary.terms import Group, Term, load_glossary, slug

__all__ = ["Group", "Term", "load_glossary", "slug"]
