"""How long a large unit takes to load and check, beside the shipped one in the same run."""

import time

import pytest

from twoshaft.models.audit import audit_unit
from twoshaft.units.loader import SHIPPED, load_unit
from twoshaft.units.new_unit import Wishes, new_unit

OPERATIONS, FASTENERS = 400, 200


def large():
    """A start with 12 sealed faces, grown to 400 operations and 200 groups of fasteners."""
    text = new_unit(Wishes("Large", gears=8, faces=12))
    steps = OPERATIONS - text.count("minutes to do: ")
    done = "".join(
        f"  - {{id: extra-{n}, name: Extra step {n}, stage: finishing, kind: prepare, "
        "minutes to do: 1, minutes to undo: 0}\n"
        for n in range(steps)
    )
    why = "".join(
        f"  - {{id: why-{n}, kind: buries, later: extra-{n}, reason: It is covered., "
        f"earlier: {f'extra-{n - 3}' if n > 2 else 'fill-oil'}}}\n"
        for n in range(steps)
    )
    groups = text.partition("\n  groups:\n")[2].partition("\n# --- fits")[0]
    one = groups.partition("    - id: output-nut\n")[2].partition("    - id: ")[0]
    more = "".join(
        f"    - id: nut-{n}\n{one}" for n in range(FASTENERS - groups.count("    - id: "))
    )
    for before, put in (
        ("\n# --- what must come before", done),
        ("# --- conditions that hold", why),
        ("\n# --- fits\n", more),
    ):
        assert before in text
        text = text.replace(before, put + before, 1)
    return text


def cost(path):
    start = time.process_time()
    unit = load_unit(path)
    loaded = time.process_time()
    assert not audit_unit(unit)
    return unit, loaded - start, time.process_time() - loaded


@pytest.mark.bench
def test_a_large_unit_beside_the_shipped_one(tmp_path):
    ours, theirs = tmp_path / "large.yaml", tmp_path / "shipped.yaml"
    ours.write_text(large())
    theirs.write_text((SHIPPED / "tarnbeck-b5.yaml").read_text())
    _, *usual = cost(theirs)
    unit, *cost_s = cost(ours)
    assert len(unit.operations) == OPERATIONS
    assert len(unit.fasteners.groups) == FASTENERS and len(unit.faces.faces) == 12
    print(
        f"\nlarge unit: load {cost_s[0]:.1f} s, check {cost_s[1]:.1f} s; shipped: "
        f"{usual[0]:.1f} s, {usual[1]:.1f} s; ratio {sum(cost_s) / sum(usual):.1f}"
    )
