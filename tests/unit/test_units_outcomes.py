"""A broken outcomes file is told with file, line and mend."""

import pytest

from twoshaft.errors import UnitFileError
from twoshaft.outcomes import load_outcomes

GOOD = """\
outcomes:
  - id: plan
    modules: order-of-work
    statement: Plan the work
    criteria: {built: It can be built.}
    evidence: open-book
"""


@pytest.mark.parametrize(
    ("text", "line", "what", "mend"),
    [
        (GOOD.replace("open-book", "hearsay"), 6, "'evidence' is 'hearsay'", "'open-book'"),
        (
            GOOD.replace("{built: It can be built.}", "{}"),
            5,
            "'criteria' has too few",
            "at least 1",
        ),
        (GOOD + GOOD[10:], 7, "'plan' stands twice (first on line 2)", "an id of its own"),
        (GOOD + "    must_pass: perhaps\n", 7, "is 'perhaps'", "true or false"),
        ("outcomes: []\n", 1, "has too few entries", "at least 1"),
    ],
)
def test_broken_outcomes(tmp_path, text, line, what, mend):
    path = tmp_path / "outcomes.yaml"
    path.write_text(text)
    with pytest.raises(UnitFileError) as caught:
        load_outcomes(path)
    message = str(caught.value)
    assert f"outcomes.yaml, line {line}:" in message
    assert what in message
    assert mend in message
