"""The order of work: what binds a build's steps, and what an order is worth.

Two judgements that are never mixed: the *plan slip* (how far an order is from a correct one,
which sets the mark) and the *bench cost* (what it would have cost to find out, which feedback
tells).
"""

from twoshaft.models.order.count import (
    Count,
    count_orders,
    quick_order,
)
from twoshaft.models.order.hands import Hands, needs_directly, with_many_hands
from twoshaft.models.order.mark import (
    chance_levels,
    chance_r0,
    mark,
    mean_mark,
    share,
    starting_order,
    take_chance_levels,
    zero_mark_slip,
)
from twoshaft.models.order.model import model_order, sensible_order
from twoshaft.models.order.moves import mended, moved
from twoshaft.models.order.ready import Consequence, consequences, ready_steps
from twoshaft.models.order.replay import Event, Replay, replay
from twoshaft.models.order.rework import Rework, new_parts, rework
from twoshaft.models.order.slip import PlanSlip, plan_slip, quick_slip
from twoshaft.models.order.spot import broken_safety, buried_steps, reasons_between
from twoshaft.models.order.task import Block, Bond, Choice, OrderTask, Reason, TaskClock, TaskWait
from twoshaft.models.order.times import Times, Waited, times
from twoshaft.models.order.window import Window, window

__all__ = [
    "Block",
    "Bond",
    "Choice",
    "Consequence",
    "Count",
    "Event",
    "Hands",
    "OrderTask",
    "PlanSlip",
    "Reason",
    "Replay",
    "Rework",
    "TaskClock",
    "TaskWait",
    "Times",
    "Waited",
    "Window",
    "broken_safety",
    "buried_steps",
    "chance_levels",
    "chance_r0",
    "consequences",
    "count_orders",
    "mark",
    "mean_mark",
    "mended",
    "model_order",
    "moved",
    "needs_directly",
    "new_parts",
    "plan_slip",
    "quick_order",
    "quick_slip",
    "ready_steps",
    "reasons_between",
    "replay",
    "rework",
    "sensible_order",
    "share",
    "starting_order",
    "take_chance_levels",
    "times",
    "window",
    "with_many_hands",
    "zero_mark_slip",
]
