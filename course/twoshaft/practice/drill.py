"""A calculation on the screen: worked, with steps left out, alone, and then as often as wanted."""

from __future__ import annotations

from random import Random, SystemRandom
from typing import Any

from twoshaft.jobsheet.kinds import Field, Number
from twoshaft.jobsheet.measures import named
from twoshaft.practice.calculation import Calculation, Drawn, Step
from twoshaft.practice.keep import Keep
from twoshaft.practice.screen import OTHER, RIGHT, Question, Told

WORKED, HALF, OWN = "worked", "steps left out", "on your own"
_NEXT = {WORKED: HALF, HALF: OWN, OWN: OWN}
_BUTTON = {
    WORKED: "Next: with steps left out",
    HALF: "Next: on your own",
    OWN: "Again, with fresh readings",
}


class Drill:
    """A calculation to practise.

    Parameters
    ----------
    keep : Keep
        Whose practice it is.
    module : str
        The module that it belongs to.
    calculation : Calculation
    random : Random, optional
        Where readings come from; the system's own if not given. Never from what was issued.
    """

    def __init__(
        self, keep: Keep, module: str, calculation: Calculation, random: Random | None = None
    ) -> None:
        self._keep, self._key = keep, f"{module}/calculation/{calculation.name}"
        self._calculation, self._random = calculation, random or SystemRandom()
        self.screen = Question(keep, self._judge, give="Tell me")
        self.screen.on_fresh = self._go_on
        self.stage = WORKED
        self._show()

    @property
    def drawn(self) -> Drawn:
        """The calculation as it stands on the screen."""
        return self._drawn

    @property
    def asked(self) -> tuple[Step, ...]:
        """The steps that are asked for."""
        steps = self._calculation.steps
        if self.stage == WORKED:
            return ()
        return steps[len(steps) // 2 :] if self.stage == HALF else steps

    def _go_on(self) -> None:
        self.stage = _NEXT[self.stage]
        self._show()

    def _show(self) -> None:
        self._drawn = self._calculation.draw(self._random)
        right = self._drawn.right()
        shown = [step for step in self._calculation.steps if step not in self.asked]
        known = {step.name: right[step.name] for step in shown}
        lines = [(step.ask, self._drawn.line(step, known)) for step in shown]
        self.screen.fresh = _BUTTON[self.stage]
        self.screen.ask(
            [self._field(step, known) for step in self.asked],
            title=f"{self._calculation.title}: {self.stage}",
            lead=self._calculation.story,
            facts=[*self._drawn.facts(), *lines],
        )

    def _field(self, step: Step, known: dict[str, float]) -> Field:
        prompt = step.ask
        if self.stage == HALF:
            prompt = f"{step.ask}: {self._drawn.line(step, known)}"
        return Number(step.name, prompt, step.unit, step.of)

    def _judge(self, values: dict[str, Any]) -> dict[str, Told]:
        right = self._drawn.right()
        known = {step.name: right[step.name] for step in self._calculation.steps}
        answers = known | {
            step.name: _figure(self._field(step, known), step, values[step.name])
            for step in self.asked
        }
        told = {}
        for step in self.asked:
            how, looks_like = self._drawn.verdict(step, answers)
            said, true = values[step.name], step.said(right[step.name])
            line = f"{self._drawn.line(step, right)}."
            if how == "right":
                told[step.name] = Told(RIGHT, f"You said: {said}. That is right.")
            elif how == "follows":
                text = f"You said: {said}. It follows from your figure before. It is: {true}."
                told[step.name] = Told(OTHER, text, line)
            else:
                text = f"You said: {said}. It is: {true}."
                told[step.name] = Told(OTHER, text, f"{looks_like} {line}".strip())
        self._keep.note(self._key, self.stage, all(one.how == RIGHT for one in told.values()))
        return told


def _figure(field: Field, step: Step, stored: Any) -> float:
    """A readable answer as a figure in the step's unit."""
    pint = named(step.unit, step.of).pint
    return float(field.read(stored).to(pint).magnitude)
