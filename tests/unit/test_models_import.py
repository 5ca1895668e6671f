"""Importing the models is quick and pulls in nothing heavy."""

import pkgutil
import subprocess
import sys

import pytest

import twoshaft.models

# pint looks for a bare scipy and for uncertainties, which are light; these are not.
SCIPY = ("constants", "integrate", "linalg", "ndimage", "optimize", "sparse", "spatial", "special")
HEAVY = ("matplotlib", "networkx", "shapely", "pandas", "IPython", "ipywidgets")
MODELS = sorted(one.name for one in pkgutil.iter_modules(twoshaft.models.__path__))


def run(code):
    done = subprocess.run([sys.executable, "-c", code], capture_output=True, text=True, check=True)
    return done.stdout.strip()


@pytest.mark.slow
def test_no_model_imports_anything_heavy():
    """One process imports them all: none has pulled in what is not there at the end."""
    heavy = (*HEAVY, *(f"scipy.{name}" for name in SCIPY))
    loaded = run(
        "import importlib, sys\n"
        f"for model in {MODELS}:\n"
        "    importlib.import_module(f'twoshaft.models.{model}')\n"
        f"    print(*[f'{{model}}: {{name}}' for name in {heavy} if name in sys.modules])\n"
    )
    assert loaded == ""


def test_the_package_alone_imports_nothing_but_itself():
    loaded = run(
        f"import sys, twoshaft.models\n"
        f"print(*[name for name in ('scipy', 'numpy', 'pint', *{HEAVY}) if name in sys.modules])"
    )
    assert loaded == ""


def test_the_models_are_all_there():
    wanted = {"bearing", "faults", "film", "fit", "geartrain", "joint", "order", "shift", "shim"}
    assert wanted <= set(MODELS)
