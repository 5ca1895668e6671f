"""A scene in the invented workshop: which places hold a hazard, and which one."""

from __future__ import annotations

from collections.abc import Mapping

from twoshaft.safety import Hazard, Safety


def scene_of(safety: Safety, hazards: Mapping[str, str]) -> dict[str, int]:
    """Number of the view at every place, in the order of the file.

    Parameters
    ----------
    safety : Safety
    hazards : mapping of str to str
        Hazard id by place id; the other places are as they should be.
    """
    return {place.id: place.view_of(hazards.get(place.id, "")) for place in safety.places}


def hazards_seen(safety: Safety, views: Mapping[str, int]) -> dict[str, Hazard]:
    """The hazard at each place of a scene that holds one, by place id.

    Parameters
    ----------
    safety : Safety
    views : mapping of str to int
        Number of the view at each place.
    """
    found = {place: safety.place_by_id[place].views()[view][1] for place, view in views.items()}
    return {place: hazard for place, hazard in found.items() if hazard is not None}
