"""Cautions, hazards and safe ways of working, as data."""

from twoshaft.safety.hazards import Caution, Hazard, Place, Safety, load_safety
from twoshaft.safety.jobs import load_jobs

__all__ = ["Caution", "Hazard", "Place", "Safety", "load_jobs", "load_safety"]
