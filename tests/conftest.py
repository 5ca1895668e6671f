"""Fixtures that several folders share."""

import pytest
from hypothesis import settings

from twoshaft.units.unit import Unit

# A busy machine is no fault of the code: properties are judged by what they find, not by the clock.
settings.register_profile("twoshaft", deadline=None)
settings.load_profile("twoshaft")


@pytest.fixture(scope="session")
def make_unit():
    """Return a builder of small units: steps s00, s01, …, and rules from pairs of numbers.

    A pair may carry a kind as its third member; other sections are given as plain data.
    """

    def build(count, pairs=(), *, stages=1, kinds=("cannot",), minutes=(1.0,), **sections):
        rules = [
            {
                "id": f"r-{pair[0]:02d}-{pair[1]:02d}-{k}",
                "kind": pair[2] if len(pair) > 2 else kinds[k % len(kinds)],
                "earlier": f"s{pair[0]:02d}",
                "later": f"s{pair[1]:02d}",
                "reason": f"step {pair[0]} is needed first",
            }
            for k, pair in enumerate(pairs)
        ]
        return Unit.model_validate(
            {
                "identity": {
                    "id": "little",
                    "name": "Little unit",
                    "version": "1",
                    "invented": True,
                    "college": "Tarnbeck College",
                    "scenario": "A few steps for a test.",
                    "gears": 5,
                },
                "parts": [{"id": f"p{i:02d}", "name": f"Part {i}"} for i in range(count)],
                "stages": [{"id": f"g{k}", "name": f"Stage {k}"} for k in range(stages)],
                "operations": [
                    {
                        "id": f"s{i:02d}",
                        "name": f"Step {i}",
                        "stage": f"g{i * stages // max(count, 1)}",
                        "parts": [f"p{i:02d}"],
                        "minutes_do": minutes[i % len(minutes)],
                        "minutes_undo": minutes[i % len(minutes)] / 2,
                    }
                    for i in range(count)
                ],
                **{key: value for key, value in sections.items() if key != "rules"},
                "rules": rules + list(sections.get("rules", ())),
            }
        )

    return build
