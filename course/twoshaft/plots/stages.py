"""The stages of the build."""

from __future__ import annotations

from twoshaft.models.order.task import OrderTask


def stage_names(task: OrderTask) -> dict[str, str]:
    """Name of the stage of each step, stage by stage."""
    stage_of = {operation.id: operation.stage for operation in task.unit.operations}
    members = zip(task.steps, task.members, strict=True)
    mine = [(step, stage_of[inside[0]]) for step, inside in members]
    return {step: stage.name for stage in task.unit.stages for step, own in mine if own == stage.id}
