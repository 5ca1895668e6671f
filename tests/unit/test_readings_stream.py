"""The stream of readings: the same for ever, different for everyone."""

import hashlib
import hmac
import json
from pathlib import Path

import pytest

from twoshaft.readings import Stream

GOLDEN = json.loads((Path(__file__).parent / "golden_readings.json").read_text("utf-8"))


def drawn(stream):
    return {
        "integers": [stream.integer(n) for n in (2, 6, 10, 1000, 10**30)],
        "uniforms": [stream.uniform(0, 1), stream.uniform(-2, 3)],
        "normals": [stream.normal(0, 1), stream.normal(24.98, 0.004)],
        "shuffled": stream.shuffled(list("abcdefgh")),
        "choice": stream.choice(["one", "two", "three"]),
        "child": [stream.child("gap").integer(10**6), stream.child("play").integer(10**6)],
        "after": stream.integer(10**6),
    }


@pytest.mark.parametrize("case", GOLDEN, ids=lambda case: case["learner"])
def test_golden(case):
    # Written once; a change here changes what learners were given, and must not happen.
    stream = Stream(case["salt"], case["learner"], case["module"], case["attempt"])
    assert drawn(stream) == case["drawn"]


def test_the_first_bytes_are_those_of_hmac_sha256():
    # RFC 2104 and FIPS 180-4 by the standard library.
    message = b'["a01", "order-of-work", 1, 0]'
    digest = hmac.new(b"salt", message, hashlib.sha256).digest()
    assert Stream("salt", "a01", "order-of-work", 1).integer(256) == digest[0]


def test_every_part_of_the_key_matters():
    keys = [
        ("s", "a", "m", 1),
        ("t", "a", "m", 1),
        ("s", "b", "m", 1),
        ("s", "a", "n", 1),
        ("s", "a", "m", 2),
        ("s", 'a", "m', "", 1),
        ("s", "am", "", 1),
    ]
    assert len({Stream(*key).integer(2**64) for key in keys}) == len(keys)


def test_a_child_does_not_depend_on_what_was_drawn_before():
    one, other = Stream("s", "a", "m", 1), Stream("s", "a", "m", 1)
    one.integer(10)
    assert one.child("x").integer(10**9) == other.child("x").integer(10**9)
    assert one.child("x").integer(10**9) != other.child("y").integer(10**9)


@pytest.mark.slow
def test_distributions():
    # Chi-square and Kolmogorov-Smirnov (scipy); fixed key, p below 0.001 would fail.
    from scipy.stats import chisquare, kstest  # a second to load, in every worker that collects

    stream = Stream("s", "a", "m", 1)
    sixes = [0] * 6
    for _ in range(3000):
        sixes[stream.integer(6)] += 1
    assert chisquare(sixes).pvalue > 0.001
    assert kstest([stream.uniform(0, 1) for _ in range(2000)], "uniform").pvalue > 0.001
    assert kstest([stream.normal(0, 1) for _ in range(2000)], "norm").pvalue > 0.001
    orders = {}
    for _ in range(1200):
        order = "".join(stream.shuffled("abc"))
        orders[order] = orders.get(order, 0) + 1
    assert len(orders) == 6
    assert chisquare(list(orders.values())).pvalue > 0.001


def test_nothing_to_draw_from_is_refused():
    with pytest.raises(ValueError, match="at least 1"):
        Stream("s", "a", "m", 1).integer(0)
