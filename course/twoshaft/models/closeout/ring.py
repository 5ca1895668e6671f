"""What an oil does to a synchroniser ring: how far it slides until both sides turn alike.

Cone torque and time are those of :mod:`twoshaft.models.geartrain.synchroniser`. Wear grows with
load times distance slid (Archard 1953, from memory), so the distance tells how soon a ring is worn.
"""

from __future__ import annotations

from twoshaft.models.border import Above, border
from twoshaft.models.geartrain.synchroniser import synchronising_time

NEVER = float("inf")


@border("m", inertia=Above("inertia", "kg*m**2"), speed_change=Above("change of speed", "rad/s"),
        torque=Above("cone torque", "N*m"), drag=Above("drag of the oil", "N*m", zero=True),
        mean_diameter=Above("mean cone diameter", "m"))  # fmt: skip
def slide(
    inertia_kgm2: float, speed_change_rad_s: float, torque_nm: float, drag_nm: float,
    mean_diameter_m: float,
) -> float:  # fmt: skip
    """Distance that a ring slides on its cone in a shift down, against the drag of the oil.

    Parameters
    ----------
    inertia : pint.Quantity
        What is brought to speed, as it acts at the cone [kg*m**2].
    speed_change : pint.Quantity
        Difference of speed at the start [rad/s].
    torque, drag : pint.Quantity
        Of the cone, and of the oil against it [N*m].
    mean_diameter : pint.Quantity
        Of the cone [m].

    Returns
    -------
    pint.Quantity
        [m]; without end where the drag is as strong as the cone.

    Examples
    --------
    Half the friction, twice the distance.

    >>> mass, speed, none, cone = Q(0.012, "kg*m**2"), Q(150, "rad/s"), Q(0, "N*m"), Q(0.07, "m")
    >>> [f"{slide(mass, speed, Q(t, 'N*m'), none, cone):.2f}" for t in (18, 9)]
    ['0.26 meter', '0.53 meter']
    """
    if torque_nm <= drag_nm:
        return NEVER
    seconds = synchronising_time.plain(inertia_kgm2, speed_change_rad_s, torque_nm - drag_nm)
    return speed_change_rad_s * seconds / 2 * mean_diameter_m / 2
