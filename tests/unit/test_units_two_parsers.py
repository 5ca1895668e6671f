"""YAML is read by a quick parser; it reads the same as the one that complaints come from."""

from pathlib import Path

import pytest
import yaml
from hypothesis import given
from hypothesis import strategies as st
from ruamel.yaml import YAML

import twoshaft
from twoshaft.errors import UnitFileError
from twoshaft.units import source

FILES = sorted(Path(twoshaft.__file__).parent.rglob("*.yaml"))


def slow(text):
    return source._Reader("f").node(YAML(typ="safe", pure=True).compose(text))


def quick(text):
    return source._Reader("f").node(source._Quick(text).get_single_node())


@pytest.mark.slow
@pytest.mark.parametrize("path", FILES, ids=lambda path: path.name)
def test_every_shipped_file_is_read_the_same_with_the_same_lines(path):
    text = path.read_text("utf-8")
    assert len(text) > 1000
    assert quick(text) == slow(text)


# Words that one version of YAML takes for something else than the other.
WORDS = ["no", "yes", "on", "off", "true", "False", "null", "~", "", "1_000", "0o17", "017", "0x1f",
         "1:30", "1e3", "1.5", ".5", "-.inf", ".nan", "2026-11-28", "=", "<", "12 mm", "+4", "1."]  # fmt: skip
VALUES = st.one_of(st.sampled_from(WORDS), st.from_regex(r"[a-z0-9µ°é.:+_-]{1,8}", fullmatch=True))


@pytest.mark.slow
@given(st.lists(st.tuples(st.from_regex(r"[a-z]{1,6}", fullmatch=True), VALUES), min_size=1,
                unique_by=lambda pair: pair[0]), st.booleans())  # fmt: skip
def test_every_word_is_taken_for_the_same(pairs, in_braces):
    lines = [f"{key}: {value}" for key, value in pairs]
    text = "{" + ",\n ".join(lines) + "}" if in_braces else "\n".join(lines) + "\n"
    try:
        wanted = slow(text)
    except Exception:  # what is no YAML gets its sentence from the slow one
        with pytest.raises((yaml.YAMLError, UnitFileError)):
            quick(text)
        return
    found = source._Reader("f").node(source._composed(text))
    assert repr(found) == repr(wanted)  # as text: what is not a number equals nothing


@pytest.mark.slow
def test_nesting_without_end_gets_its_sentence():
    for text in (
        "[" * 20_000,
        "a: " + "[" * 20_000,
        "".join(" " * n + "- \n" for n in range(3000)),
    ):
        with pytest.raises(UnitFileError):
            source.parse_nodes(text, "deep.yaml")


def test_the_quick_parser_is_there():
    assert yaml.__with_libyaml__
