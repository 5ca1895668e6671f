"""What the tasks of this module give: a record each. Units stand in the names."""

from __future__ import annotations

from twoshaft.readings.scenes import Hand, Near
from twoshaft.records import BenchRecord, Option, Record, Row, Scenes


class Length(Row, frozen=True):
    """A measured length: what it is, what it spans, the tool, and the reading [mm] as written."""

    name: str
    spans: str
    tool: str
    reading: str


class Case(Row, frozen=True):
    """An arrangement of the principle: ``A``, the arrangement and the shim's place."""

    name: str
    arrangement: str
    place: str


class Change(Record, frozen=True):
    """A change of shim.

    Attributes
    ----------
    kind : str
        What the pair has before it: ``preload`` or ``end play``.
    amount_mm : float
        How much of it.
    before_mm, after_mm : float
        The shim.
    """

    kind: str
    amount_mm: float
    before_mm: float
    after_mm: float


class Where(Record, frozen=True):
    """A pair of the unit, drawn: its name, and the section round its shim."""

    name: str
    near: Near


class Signs(Record, frozen=True):
    """Which way a thicker shim works, in four cases; ``change`` is one of shim in case A.

    ``where`` shows a pair of the unit; None where no section shows its shim.
    """

    cases: tuple[Case, ...]
    options: tuple[Option, ...]
    change: Change
    where: Where | None


class Swap(Row, frozen=True):
    """A change of shim: its id, what comes out and goes in, in words, and how much more that is."""

    id: str
    text: str
    thicker_mm: float


class Preload(Row, frozen=True):
    """Preload of a pair at a setting."""

    setting_mm: float
    preload_n: float


class Drag(Row, frozen=True):
    """What else turns, and the torque that it takes at the shaft with the cord."""

    name: str
    torque_nm: float


class Warming(Row, frozen=True):
    """What heat does to a setting by one part; above zero tightens."""

    part: str
    change_um: int


class Stack(BenchRecord, frozen=True):
    """A measured stack, the shims that are there, and what follows from the one taken.

    Attributes
    ----------
    support, name : str
        Id and name of the support.
    rows : tuple of Length
    lengths : dict of str to float
        Readings [mm] by term of the stack.
    low_mm, high_mm : float
        Preload of the target.
    doubt_mm : float
        Doubt of the stack, either way.
    shims : tuple of Option
    totals : dict of str to float
        Thickness [mm] of each of them, by id.
    swaps : tuple of Swap
    directions : tuple of Option
        What each of them may do.
    preloads : tuple of Preload
    torque_nm : float
        Both bearings, for each 1000 N of preload.
    drum_mm : int
        Radius of the drum that the cord is on.
    drags : tuple of Drag
    kinds : tuple of str
        Their kinds, as the unit names them.
    warm : tuple of Warming
    """

    support: str
    name: str
    rows: tuple[Length, ...]
    lengths: dict[str, float]
    low_mm: float
    high_mm: float
    doubt_mm: float
    shims: tuple[Option, ...]
    totals: dict[str, float]
    swaps: tuple[Swap, ...]
    directions: tuple[Option, ...]
    preloads: tuple[Preload, ...]
    torque_nm: float
    drum_mm: int
    drags: tuple[Drag, ...]
    kinds: tuple[str, ...]
    warm: tuple[Warming, ...]


class Shelf(Record, frozen=True):
    """Another support with the few shims that are left.

    Attributes
    ----------
    support, name : str
    rows : tuple of Length
    lengths : dict of str to float
        Readings [mm] by term of the stack.
    kind : str
        What the target asks for: ``preload`` or ``end play``.
    low_mm, high_mm : float
        How much of it.
    doubt_mm : float
        Doubt of the stack, either way.
    shims : tuple of Option
        And two more answers: ``again``, ``none``.
    totals : dict of str to float
        Thickness [mm] of each shim, by id.
    may : Scenes
        Ideas when no shim fits, and what is done with them.
    """

    support: str
    name: str
    rows: tuple[Length, ...]
    lengths: dict[str, float]
    kind: str
    low_mm: float
    high_mm: float
    doubt_mm: float
    shims: tuple[Option, ...]
    totals: dict[str, float]
    may: Scenes


class Trial(Record, frozen=True):
    """A support with a trial shim in it.

    Attributes
    ----------
    support, name : str
    trial_mm : float
        The shim.
    lengths : dict of str to float
        What is really there [mm], by term of the stack; the dial shows what follows.
    low_mm, high_mm : float
        Preload of the target.
    thicker : str
        What a thicker shim does: ``tightens`` or ``loosens``.
    before : Scenes
        How readings were got, and what is done with them.
    into : Hand or None
        A shim and rings to be put into the unit; None where no section shows them.
    """

    support: str
    name: str
    trial_mm: float
    lengths: dict[str, float]
    low_mm: float
    high_mm: float
    thicker: str
    before: Scenes
    into: Hand | None


class Source(Row, frozen=True):
    """A doubt of a measurement: its id, its name, and how large it is (standard doubt)."""

    id: str
    name: str
    doubt_um: float


class Doubt(Record, frozen=True):
    """Doubts of one measurement, and shims; ``inside_mm`` says how far each lies inside the nearer
    edge of the target."""

    sources: tuple[Source, ...]
    shims: tuple[Option, ...]
    inside_mm: dict[str, float]


class Part(Row, frozen=True):
    """What turns besides the bearings: torque at its own shaft, its speed against the drum."""

    name: str
    torque_nm: float
    speed_ratio: int | float


class Other(Row, frozen=True):
    """Another unit: its id, and the preload that was worked out."""

    id: str
    preload_n: float


class Cord(BenchRecord, frozen=True):
    """A support with a cord on it.

    Attributes
    ----------
    support, name : str
    setting_mm : float
        What is really there; the scale shows what follows.
    drum_mm : int or float
        Radius of the drum.
    kinds : tuple of str
        What turns besides the bearings, as the unit names it.
    parts : tuple of Part
    torque_nm : float
        Both bearings, for each 1000 N of preload.
    low_n, high_n : float
        Limits of the preload.
    thicker : str
        What a thicker shim does: ``tightens`` or ``loosens``.
    others : tuple of Other
        Preload of other units of the kind.
    verdicts : tuple of Option
    """

    support: str
    name: str
    setting_mm: float
    drum_mm: int | float
    kinds: tuple[str, ...]
    parts: tuple[Part, ...]
    torque_nm: float
    low_n: float
    high_n: float
    thicker: str
    others: tuple[Other, ...]
    verdicts: tuple[Option, ...]


class Span(Row, frozen=True):
    """A length that grows: its part, growth of a metre by a degree, and how much warmer it is."""

    part: str
    length_mm: float
    growth_um: float
    rise_k: float


class Heated(Row, frozen=True):
    """Another pair: its id, in words, and what heat does to it; above zero tightens."""

    id: str
    text: str
    change_um: float


class Warm(Record, frozen=True):
    """A support that warms up.

    Attributes
    ----------
    support, name : str
    rises : dict of str to float
        Rise of temperature [K] by part, as ``Warm`` of the models takes them.
    spans : tuple of Span
    across : tuple of Warming
        What happens across the shaft.
    cold_mm : float
        Setting when cold; preload above zero.
    pairs : tuple of Heated
        Other pairs that warm up.
    ways : tuple of Option
    temperatures : tuple of Option
        Readings and targets at several temperatures.
    when : tuple of Option
        What may be done with each.
    """

    support: str
    name: str
    rises: dict[str, float]
    spans: tuple[Span, ...]
    across: tuple[Warming, ...]
    cold_mm: float
    pairs: tuple[Heated, ...]
    ways: tuple[Option, ...]
    temperatures: tuple[Option, ...]
    when: tuple[Option, ...]


class LifeAt(Row, frozen=True):
    """Life of a pair at a running setting."""

    setting_mm: float
    life_h: float


class Life(Record, frozen=True):
    """Life of a support over its setting, and signs seen on stripped units.

    Attributes
    ----------
    support, name : str
    loads_n : tuple of float
        Left, right, axial.
    rpm : int or float
    table : tuple of LifeAt
    from_mm, to_mm : float
        Settings to be compared.
    seen : Scenes
        What was seen on units that came back, and what that points to.
    """

    support: str
    name: str
    loads_n: tuple[float, float, float]
    rpm: int | float
    table: tuple[LifeAt, ...]
    from_mm: float
    to_mm: float
    seen: Scenes


class Bench(Record, frozen=True):
    """Benches at which a shim was changed, dangers, and what may be done about either."""

    changed: tuple[Option, ...]
    steps: tuple[Option, ...]
    cautions: tuple[Option, ...]
    safety: tuple[Option, ...]


class Given(Record, frozen=True, kw_only=True):
    """All that a learner is given in this module."""

    signs: Signs | None = None
    stack: Stack | None = None
    shelf: Shelf | None = None
    trial: Trial | None = None
    doubt: Doubt | None = None
    cord: Cord | None = None
    warm: Warm | None = None
    life: Life | None = None
    bench: Bench | None = None
