"""Notebooks run in the kernels that learners have, with the course loaded: ``pytest -p`` this."""

import os

import zmq
from jupyter_client.manager import KernelManager

from twoshaft.jupyter.warm_kernels import use_warm_kernels
from twoshaft.practice.lesson import OPEN_ALL


def pytest_configure():
    use_warm_kernels()
    os.environ[OPEN_ALL] = "1"  # what opens after a prediction is run as well
    # A kernel warns that everybody on this machine could listen to its port. nbval makes its
    # managers without any settings, so what they encrypt is told to all of this process.
    if zmq.has("curve"):
        KernelManager.transport_encryption.default_value = "required"
