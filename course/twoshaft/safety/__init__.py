"""Cautions, hazards and safe ways of working, as data."""

from twoshaft.safety.hazards import Caution, Hazard, Place, Safety, load_safety
from twoshaft.safety.jobs import load_jobs
from twoshaft.safety.own_sources import OwnSources, load_own_sources
from twoshaft.stored.safety_sources import OWN_SOURCES

__all__ = [
    "OWN_SOURCES",
    "Caution",
    "Hazard",
    "OwnSources",
    "Place",
    "Safety",
    "load_jobs",
    "load_own_sources",
    "load_safety",
]
