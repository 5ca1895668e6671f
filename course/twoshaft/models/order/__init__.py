"""The order of work: what binds a build's steps, and what an order is worth.

Two judgements that are never mixed: the *plan slip* (how far an order is from a correct one,
which sets the mark) and the *bench cost* (what it would have cost to find out, which feedback
tells).
"""

from twoshaft.models.order.mark import chance_r0, mark, share, starting_order
from twoshaft.models.order.model import model_order
from twoshaft.models.order.ready import Consequence, consequences, ready_steps, why_not
from twoshaft.models.order.slip import PlanSlip, plan_slip
from twoshaft.models.order.task import Block, Bond, Choice, OrderTask, Reason, TaskClock

__all__ = [
    "Block",
    "Bond",
    "Choice",
    "Consequence",
    "OrderTask",
    "PlanSlip",
    "Reason",
    "TaskClock",
    "chance_r0",
    "consequences",
    "mark",
    "model_order",
    "plan_slip",
    "ready_steps",
    "share",
    "starting_order",
    "why_not",
]
