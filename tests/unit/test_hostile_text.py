"""No text costs more than its size: reading twice as much takes about twice as long, never four
times."""

import time

import pytest

from twoshaft.errors import SheetError
from twoshaft.stored.job_sheet import parse_sheet, read_sheet

TEXTS = {
    "a quote that never ends": lambda n: '"' + '\\"' * (n // 2),
    "backslashes": lambda n: '"' + "\\" * n,
    "quotes": lambda n: '"' * n,
    "brackets": lambda n: "[" * n,
    "tables in tables": lambda n: '{"a":' * (n // 5),
    "the last name twice": lambda n: (
        "{" + ",".join(f'"{i:06}":1' for i in range(n // 11)) + f',"{n // 11 - 1:06}":1}}'
    ),
    "figures": lambda n: '{"format":' + "9" * n + "}",
    "a long fraction": lambda n: '{"format":1.' + "9" * n + "}",
    "a long power": lambda n: "[1e" + "9" * n + "]",
    "lines": lambda n: "\n" * n + "x",
    "a name of hyphens": lambda n: '{"format":1,"fields":{"' + "a-" * (n // 2) + '":{}}}',
    "a long list": lambda n: '{"format":1,"fields":{"a":{"value":[' + '"a",' * (n // 4) + '"a"]}}}',
    "a long history": lambda n: (
        '{"format":1,"fields":{"a":{"history":[' + "{}," * (n // 3) + "{}]}}}"
    ),
    "many fields": lambda n: (
        '{"format":1,"fields":{' + ",".join(f'"f{i}":{{}}' for i in range(n // 10)) + "}}"
    ),
}


def _cost(text):
    """CPU seconds of refusing a text; the best of three."""
    best = float("inf")
    for _ in range(3):
        start = time.process_time()
        with pytest.raises(SheetError) as refused:
            parse_sheet(text)
        best = min(best, time.process_time() - start)
    assert refused.value.sentence.count("\n") == 0 and len(refused.value.sentence) < 200
    return best


@pytest.mark.slow
@pytest.mark.parametrize("name", TEXTS)
def test_ten_times_the_text_takes_about_ten_times_as_long(name):
    small, large = TEXTS[name](30_000), TEXTS[name](300_000)
    # A quadratic reader takes 100 times as long; a thousandth of a second is the clock's own.
    assert _cost(large) < 30 * (_cost(small) + 0.001)


def test_a_pipe_or_a_link_is_refused_without_being_opened(tmp_path):
    import os

    os.mkfifo(tmp_path / "pipe")
    (tmp_path / "link").symlink_to("/dev/zero")
    (tmp_path / "folder").mkdir()
    for name in ("pipe", "link", "folder"):
        with pytest.raises(SheetError, match="not an ordinary file"):
            read_sheet(tmp_path / name)
