"""Notebooks run in the kernels that learners have, with the course loaded: ``pytest -p`` this."""

from twoshaft.jupyter.warm_kernels import use_warm_kernels


def pytest_configure():
    use_warm_kernels()
