"""How bolts on one joint take load from each other, with the joint linear.

Bolt i is a spring k between a nut that stays where the wrench left it and a joint that gives by
the compliance matrix C. So for every tightened bolt i: F_i/k_i + (C F)_i = n_i + base_i. A bolt
not yet tightened is absent. Tightening j sets F_j to its target unless it already has more: a
wrench that clicks at once turns nothing, and it never loosens.
"""

from __future__ import annotations

from collections.abc import Sequence

import numpy as np

from twoshaft.errors import OutOfRangeError

_TOUCH_M = 1e-15  # less than this is rounding, not a gap
CLICK = 1 - 1e-9  # a wrench clicks here; the rest is rounding


def solve_forces(
    compliance: np.ndarray,
    bolt_compliance: np.ndarray,
    nut_m: np.ndarray,
    base_m: np.ndarray,
    tight: np.ndarray,
    pulled: int = -1,
    target_n: float = 0.0,
) -> np.ndarray:
    """Give the bolt forces [N] for nuts at rest, one of them perhaps being pulled to a target.

    Parameters
    ----------
    compliance : (n, n) array
        Sinking of the joint at bolt i per newton on bolt j [m/N].
    bolt_compliance : (n,) array
        Of the bolts [m/N].
    nut_m : (n,) array
        How far each nut is down [m].
    base_m : (n,) array
        Sinking at each bolt without any bolt force [m].
    tight : (n,) bool array
        Bolts with a nut on.
    pulled : int
        Index of the bolt at ``target_n``, or -1.

    Returns
    -------
    (n,) array
        Forces; bolts that a sinking joint left slack have 0.

    Examples
    --------
    >>> stiff = np.diag([1e-9, 1e-9])  # neighbours that do not feel each other
    >>> down = np.array([1e-4, 1e-4])
    >>> tight = np.array([True, False])
    >>> solve_forces(stiff, np.full(2, 4e-9), down, np.zeros(2), tight).round()
    array([20000.,     0.])
    """
    count = len(nut_m)
    reach = nut_m - base_m
    others = tight.copy()
    force = np.zeros(count)
    if pulled >= 0:
        others[pulled] = False
        force[pulled] = target_n
        reach = reach - compliance[:, pulled] * target_n
    pulling = others.copy()
    # A bolt cannot push. Murty's least-index rule finds the bolts that pull in finitely many
    # flips, since the matrix is positive definite.
    while True:
        index = np.flatnonzero(pulling)
        force[others] = 0.0
        if index.size:
            matrix = compliance[np.ix_(index, index)] + np.diag(bolt_compliance[index])
            force[index] = np.linalg.solve(matrix, reach[index])
        wrong = pulling & (force < 0)
        slack = others & ~pulling
        if slack.any():
            wrong |= slack & (reach - compliance[:, index] @ force[index] > _TOUCH_M)
        if not wrong.any():
            return force
        first = np.flatnonzero(wrong)[0]
        pulling[first] = not pulling[first]


def check_order(order: Sequence[int], count: int) -> None:
    """Refuse an order that names a bolt twice or one that is not there.

    Examples
    --------
    >>> check_order([0, 2, 1], count=4)
    """
    if len(set(order)) != len(order) or not set(order) <= set(range(count)) or not len(order):
        allowed = f"each of the bolts 0 to {count - 1} at most once"
        raise OutOfRangeError("order of tightening", str(list(order)), allowed, "the pattern")
