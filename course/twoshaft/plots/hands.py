"""When each step runs if as many hands work as the build can use."""

from __future__ import annotations

from textwrap import fill

from twoshaft.models.order import Hands, OrderTask
from twoshaft.plots import style
from twoshaft.plots.figure import Picture, legend, new_axes

_LABEL = 46


def hands_chart(task: OrderTask, plan: Hands) -> Picture:
    """A bar for each step from its earliest start, with the time it can wait hatched behind it.

    Parameters
    ----------
    task : OrderTask
    plan : Hands
        The plan of that task.

    Returns
    -------
    Picture
        Steps that must not wait are filled dark, the others light; the first stands on top.
    """
    title = f"With many hands {plan.minutes:g} instead of {plan.alone:g} minutes"
    axes = new_axes(
        title, "time from the start [min]", "", inches=(8.0, 1.6 + 0.3 * len(task.steps))
    )
    rows = sorted(task.steps, key=lambda step: (plan.start[step], -plan.spare[step]), reverse=True)
    seen = set()
    for y, step in enumerate(rows):
        waits = plan.spare[step] > 0
        takes = task.minutes(step)
        name = "can wait" if waits else "must not wait"
        axes.barh(
            y, takes, left=plan.start[step], height=0.6, edgecolor=style.INK,
            color=style.PAPER if waits else style.INK, label=None if name in seen else name,
        )  # fmt: skip
        seen.add(name)
        if waits:
            axes.barh(
                y, plan.spare[step], left=plan.start[step] + takes, height=0.6, hatch="////",
                facecolor="none", edgecolor=style.INK, linewidth=0.5,
                label=None if "spare" in seen else "time to spare",
            )  # fmt: skip
            seen.add("spare")
    axes.set_yticks(range(len(rows)), [fill(task.label(s), _LABEL) for s in rows])
    legend(
        axes,
        loc="upper center",
        bbox_to_anchor=(0.4, -0.55 / (1.6 + 0.3 * len(rows)) - 0.08),
        ncols=3,
    )
    names = ", ".join(f"“{task.label(step)}”" for step in plan.no_spare)
    count = f"{len(plan.no_spare)} of {len(task.steps)} steps must not wait"
    return Picture(axes.figure, f"{title}; {count}: {names}.")
