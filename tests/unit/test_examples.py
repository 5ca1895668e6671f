"""Every public function and class of the models shows an example, and each example is run."""

import ast
import doctest
import importlib
from pathlib import Path

import pytest

import twoshaft.models

MODELS = Path(twoshaft.models.__file__).parent
WITHOUT = {
    "border.Bordered": "a protocol: `border` makes what follows it, and shows that",
    "order.downsets.TooManyStates": "an error that `count_orders` catches; nobody else meets it",
}


def modules():
    for path in sorted(MODELS.rglob("*.py")):
        parts = path.relative_to(MODELS).with_suffix("").parts
        yield ".".join(part for part in parts if part != "__init__"), path


def public(path):
    tree = ast.parse(path.read_text(encoding="utf-8"))
    for node in tree.body:
        if isinstance(node, ast.FunctionDef | ast.ClassDef) and not node.name.startswith("_"):
            yield node.name


def examples_run(name):
    """Names of the docstrings of a module in which pytest finds an example."""
    module = importlib.import_module(f"twoshaft.models.{name}".rstrip("."))
    found = doctest.DocTestFinder().find(module, name)
    return {one.name for one in found if one.examples}


@pytest.mark.slow
def test_every_public_function_and_class_of_the_models_shows_an_example():
    without = set()
    for module, path in modules():
        names = {f"{module}.{name}".removeprefix(".") for name in public(path)}
        without |= names and names - examples_run(module)
    assert without == WITHOUT.keys()


@pytest.mark.parametrize("text", ["", "Examples\n--------\nNo line of it can be run."])
def test_a_function_without_a_line_that_can_be_run_is_found(text, monkeypatch):
    function = importlib.import_module("twoshaft.models.shift.lever").shaft_torque
    assert "shift.lever.shaft_torque" in examples_run("shift.lever")
    monkeypatch.setattr(function, "__doc__", text)
    assert "shift.lever.shaft_torque" not in examples_run("shift.lever")
