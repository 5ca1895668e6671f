"""pint's definitions are parsed once for an environment, and parsed anew whatever is wrong there."""

import os
import sys

import pytest
from pint import UnitRegistry

from twoshaft.units import definitions


@pytest.fixture
def environment(tmp_path, monkeypatch):
    monkeypatch.setattr(sys, "prefix", str(tmp_path))
    return tmp_path


def kept(environment):
    return [path for path in environment.glob("share/twoshaft/units/*/*") if path.is_file()]


def same(one):
    other = UnitRegistry()
    sizes = ("3 N*m", "12 lbf*ft", "2.5 kgf*cm", "7 kelvin", "1/4 turn", "3 mil", "0.4 cm**3")
    return all(
        one.get_name(name) == other.get_name(name) for name in set(one) | set(other)
    ) and all(
        one.Quantity(size).to_base_units().m == other.Quantity(size).to_base_units().m
        for size in sizes
    )


def test_what_is_kept_gives_the_same_units(environment):
    assert same(definitions.registry()) and kept(environment)
    before = {path: path.stat().st_mtime_ns for path in kept(environment)}
    assert same(definitions.registry())
    assert {path: path.stat().st_mtime_ns for path in kept(environment)} == before
    assert not list(environment.glob("share/twoshaft/units/.new-*"))


def test_a_cut_file_is_as_if_there_were_none(environment):
    definitions.registry()
    for path in kept(environment):
        path.write_bytes(path.read_bytes()[:40])
    assert definitions.registry().Quantity("2 kN").to("N").m == 2000


@pytest.mark.skipif(not hasattr(os, "geteuid") or os.geteuid() == 0, reason="root may write")
def test_an_environment_of_somebody_else_is_left_alone(environment):
    environment.chmod(0o555)
    assert definitions.registry().Quantity("2 kN").to("N").m == 2000
    assert not kept(environment)


def test_where_no_folder_can_be_made_it_goes_without(environment):
    (environment / "share").write_text("a file in the way")
    assert definitions.registry().Quantity("2 kN").to("N").m == 2000


def test_a_python_without_an_environment_is_left_as_it_is(environment, monkeypatch):
    monkeypatch.setattr(sys, "base_prefix", sys.prefix)
    assert definitions.registry().Quantity("2 kN").to("N").m == 2000
    assert not kept(environment)
