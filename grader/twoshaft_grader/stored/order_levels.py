"""``kept/order-levels.json``: what a random order earns nothing at, worked out once.

Made again where it is missing; nothing else depends on it.
"""

from __future__ import annotations

from twoshaft_grader.stored.definition import StaffFile

ORDER_LEVELS: StaffFile[dict[str, float]] = StaffFile(
    record=dict[str, float],
    numbered=False,
    fault="this holds no levels of orders",
    mend="remove it; it is made again",
)
