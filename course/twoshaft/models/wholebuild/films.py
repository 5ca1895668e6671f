"""The film on a face: laid by passes, closed on the build's own clock, by the film model."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass

from twoshaft.models import film
from twoshaft.models.film import Closed, Pass, State
from twoshaft.models.wholebuild.asks import Ask
from twoshaft.models.wholebuild.faults import Fault
from twoshaft.models.wholebuild.job import Job
from twoshaft.units.kept import kept
from twoshaft.units.quantities import Q

REASONS = {
    State.EMPTY: "the gap is not filled",
    State.OILY: "sealant does not hold on oil",
    State.DIRTY: "sealant does not hold on dirt",
    State.SKINNED: "the film was too old when the face came on",
    State.AIR: "air was shut in and keeps the sealant away",
    State.TOO_WIDE: "the gap is wider than this sealant bridges",
}


@dataclass(frozen=True, eq=False)
class FilmResult:
    """A face that was coated and closed.

    Attributes
    ----------
    ask : Ask
    passes : tuple of film.Pass
    minute : float
        Minutes from the first sealant to the closed face, by the build's clock [min].
    closed : film.Closed
        What a mechanic finds.

    Examples
    --------
    >>> from twoshaft.models.wholebuild import Job, consequences, right_decisions
    >>> job = Job.of(unit, {"asked": ["film-case-joint"]})
    >>> film = consequences(job, right_decisions(job)).films[0]
    >>> film.ask.about, round(film.minute, 1), film.faults
    ('case-joint', 9.1, ())
    """

    ask: Ask
    passes: tuple[Pass, ...]
    minute: float
    closed: Closed

    @property
    def faults(self) -> tuple[Fault, ...]:
        """Ways out for the oil, lumps near oil guides, blind holes flooded."""
        face = self.closed.work.face
        names = {segment.id: segment.name.lower() for segment in face.segments}
        step, id = self.ask.step, self.ask.id
        found = [
            Fault(
                "leak", step, id,
                f"{face.name}: oil gets out {names[place]}: {REASONS[reason]}.",
            )
            for place, reason in self.closed.leaks
        ]  # fmt: skip
        found += [
            Fault(
                "lump", step, id,
                f"{face.name}: a lump of {near.lump_mm:.1f} mm lies near the {near.guide.name}, "
                f"where {near.guide.largest_lump_mm:g} mm is allowed; it came from {names[place]}.",
            )
            for near, place in self.closed.endangered
        ]  # fmt: skip
        found += [
            Fault(
                "flooded", step, id,
                f"{face.name}: {volume:.0f} mm³ of sealant stand in the blind hole of "
                f"{hole.replace('-', ' ')}.",
            )
            for hole, volume in self.closed.flooded
        ]  # fmt: skip
        return tuple(found)


def judge_film(
    job: Job,
    ask: Ask,
    passes: Sequence[Pass],
    waited: float,
    clamps_n: Mapping[str, float] | None = None,
) -> FilmResult:
    """Close a face on its film.

    Parameters
    ----------
    job : Job
    ask : Ask
        Of kind ``film``.
    passes : sequence of Pass
    waited : float
        Minutes from the last pass to the closed face [min].
    clamps_n : mapping of str to float, optional
        Clamp by hole [N]; the unit's where absent.

    Examples
    --------
    >>> from twoshaft.models.wholebuild import Job, asks_of, right_values
    >>> job = Job.of(unit, {"asked": ["film-case-joint"]})
    >>> ask = asks_of(job)[0]
    >>> passes = right_values(job, ask)[ask.id]
    >>> judge_film(job, ask, passes[1:], waited=5).closed.good  # one pass left out
    False
    """
    clamps = None if clamps_n is None else tuple(sorted(clamps_n.items()))
    return _judged(job, ask, tuple(passes), float(waited), clamps)


@kept(most=64)
def _judged(job: Job, ask: Ask, passes, waited: float, clamps) -> FilmResult:
    work = job.work(ask.about)
    minute = work.minutes_wet(passes) + waited
    force = None if clamps is None else {hole: Q(newton, "N") for hole, newton in clamps}
    seal = film.close(work.lay(passes), work.sealant, minute, force)
    return FilmResult(ask, passes, minute, Closed(work, seal, minute))
