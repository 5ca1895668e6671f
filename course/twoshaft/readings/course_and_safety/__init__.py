"""Readings of the module "How the course works, and bench safety"."""

from __future__ import annotations

from twoshaft.readings.course_and_safety import figures, lifting, safety
from twoshaft.readings.course_and_safety.given import Given
from twoshaft.readings.course_and_safety.lot import Lot

__all__ = ["MODULE", "TASKS", "Given", "Lot"]

MODULE = "course-and-safety"

TASKS = {
    "course": safety.draw_course,
    "forms": figures.draw_forms,
    "figures": figures.draw_figures,
    "picture": safety.draw_picture,
    "acts": safety.draw_acts,
    "first": safety.draw_first,
    "eyes": safety.draw_eyes,
    "why": safety.draw_why,
    "lift": lifting.draw_lift,
}
