"""Shapes of a unit's parts: where they lie, how a section through them looks, what is built.

No drawing in here: ``plots/unit_section.py`` draws what this gives.
"""

from __future__ import annotations

from twoshaft.models.shape.axes import axis_heights, axis_places, centre_distance, working_radii
from twoshaft.models.shape.blocking import in_the_way, overlaps
from twoshaft.models.shape.draft import draft
from twoshaft.models.shape.exploded import Exploded, Mover, exploded, stages_to_explode
from twoshaft.models.shape.felt import along_felt, form_felt, place_felt, way_felt
from twoshaft.models.shape.forms import gear_radii
from twoshaft.models.shape.frames import frames
from twoshaft.models.shape.halves import joint, open_side
from twoshaft.models.shape.misbuilt import (
    Built,
    built_how,
    keys_of,
    listed_misbuilds,
    misbuilt,
    open_places,
    outer_rings,
    places_seen,
    shim_and_ring,
    shows_its_way,
    solids_seen,
    thin_rings,
    turned_over,
    what_is_wrong,
    where_put,
)
from twoshaft.models.shape.pieces import Piece, Role
from twoshaft.models.shape.scene import (
    Lie,
    around,
    lie_of,
    lying,
    solids_of,
    view_of,
    views_of_parts,
    without_way,
)
from twoshaft.models.shape.schematic import schematic, shapes_of
from twoshaft.models.shape.section import Drawn, Section, ViewSection, section_of
from twoshaft.models.shape.solids import bodies_of, space_of
from twoshaft.models.shape.state import (
    BuildShown,
    StepShown,
    build_shown,
    fitted_after,
    on_the_bench,
    parts_fitted,
    step_parts,
    step_shown,
)
from twoshaft.models.shape.ways_out import by_way
from twoshaft.models.shape.witness import Witness, unnamed_blocks, witness, witnessed

__all__ = [
    "BuildShown",
    "Built",
    "Drawn",
    "Exploded",
    "Lie",
    "Mover",
    "Piece",
    "Role",
    "Section",
    "StepShown",
    "ViewSection",
    "Witness",
    "along_felt",
    "around",
    "axis_heights",
    "axis_places",
    "bodies_of",
    "build_shown",
    "built_how",
    "by_way",
    "centre_distance",
    "draft",
    "exploded",
    "fitted_after",
    "form_felt",
    "frames",
    "gear_radii",
    "in_the_way",
    "joint",
    "keys_of",
    "lie_of",
    "listed_misbuilds",
    "lying",
    "misbuilt",
    "on_the_bench",
    "open_places",
    "open_side",
    "outer_rings",
    "overlaps",
    "parts_fitted",
    "place_felt",
    "places_seen",
    "schematic",
    "section_of",
    "shapes_of",
    "shim_and_ring",
    "shows_its_way",
    "solids_of",
    "solids_seen",
    "space_of",
    "stages_to_explode",
    "step_parts",
    "step_shown",
    "thin_rings",
    "turned_over",
    "unnamed_blocks",
    "view_of",
    "views_of_parts",
    "way_felt",
    "what_is_wrong",
    "where_put",
    "without_way",
    "witness",
    "witnessed",
    "working_radii",
]
