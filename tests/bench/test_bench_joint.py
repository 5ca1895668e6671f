"""How fast the joint and fit models answer, against a dense solve in the same run.

A slider needs an answer within 30 ms; only the ratio to the peer is printed, no time is asserted.
"""

import subprocess
import sys
import time

import numpy as np
import pytest

from twoshaft.models import fit, joint
from twoshaft.units import load_unit
from twoshaft.units.quantities import Q

pytestmark = pytest.mark.bench


def best(call, repeats=7):
    """Shortest of some runs [s]."""
    times = []
    for _ in range(repeats):
        start = time.perf_counter()
        call()
        times.append(time.perf_counter() - start)
    return min(times)


@pytest.fixture(scope="module")
def peer():
    """Time of one dense solve of the face's size: 200 unknowns."""
    rng = np.random.default_rng(1)
    matrix, loads = rng.normal(size=(200, 200)), rng.normal(size=(200, 15))
    return best(lambda: np.linalg.solve(matrix, loads), 20)


def report(name, seconds, peer):
    print(f"\n{name}: {seconds * 1e3:.2f} ms, {seconds / peer:.1f} times a dense solve of 200")


def test_face_from_nothing(peer):
    """A new face and three crosswise rounds of 14 bolts: what a slider of the flange costs."""
    bolts = joint.Fastening.of(load_unit("tarnbeck-b5"), "case-bolts")
    rounds = [joint.Round.of(joint.crosswise(14), bolts.bounds().typical)] * 3
    report("face, 14 bolts, 3 rounds, new", best(lambda: joint.tighten(bolts.face(), rounds)), peer)
    face = bolts.face()
    report("face, the same again", best(lambda: joint.tighten(face, rounds)), peer)


@pytest.mark.parametrize(
    "name, call",
    [
        (
            "torque to clamp, 200 frictions",
            lambda t, s: joint.torque_long(Q(25, "N*m"), t, s, np.linspace(0.1, 0.2, 200), 0.12),
        ),
        (
            "Monte Carlo, 10 000 bolts",
            lambda t, s: joint.clamp_sample(Q(25, "N*m"), t, s, joint.STATES["dry"], 0.04, seed=1),
        ),
        (
            "stripping",
            lambda t, s: joint.strip_loads(
                t, joint.strength("8.8", Q(8, "mm")), Q(210, "MPa"), Q(14, "mm")
            ),
        ),
        (
            "blind hole",
            lambda t, s: joint.hydraulic_lock(
                joint.BlindHole(25e-3, 19e-3, 18e-3), t, s, Q(0.5, "cm**3"), Q(25, "N*m"), 0.12
            ),
        ),
        (
            "press force",
            lambda t, s: fit.press_force(
                Q(30, "um"), fit.Pair.of(Q(50, "mm"), Q(80, "mm")), Q(20, "mm"), 0.12
            ),
        ),
        (
            "warming",
            lambda t, s: fit.warm_to_assemble(
                Q(40, "um"), Q(60, "mm"), Q(11e-6, "1/K"), Q(120, "degC")
            ),
        ),
    ],
)
def test_single_calls(name, call, peer):
    thread = joint.Thread.named("M8")
    seat = joint.Seat.hexagon(thread)
    report(name, best(lambda: call(thread, seat)), peer)


def test_import_of_the_models():
    """Importing the models' package against importing numpy alone."""

    def run(line):
        code = f"import time; t = time.perf_counter(); {line}; print(time.perf_counter() - t)"
        return min(
            float(
                subprocess.run(
                    [sys.executable, "-c", code], capture_output=True, text=True, check=True
                ).stdout
            )
            for _ in range(3)
        )

    peer = run("import numpy")
    for line in ("import twoshaft.models", "import twoshaft.models.joint, twoshaft.models.fit"):
        seconds = run(line)
        print(f"\n{line}: {seconds * 1e3:.0f} ms, {seconds / peer:.1f} times importing numpy")
    loaded = subprocess.run(
        [
            sys.executable,
            "-c",
            "import sys, twoshaft.models.joint, twoshaft.models.fit; print('scipy.linalg' in sys.modules, 'matplotlib' in sys.modules)",
        ],
        capture_output=True,
        text=True,
        check=True,
    )
    assert loaded.stdout.split() == ["False", "False"]
