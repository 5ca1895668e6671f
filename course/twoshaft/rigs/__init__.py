"""Interactive simulators, one for each model."""

from twoshaft.rigs.bench import OrderBench, order_bench
from twoshaft.rigs.build import BuildSimulator, build_simulator
from twoshaft.rigs.rules import RulePicture, rule_picture

__all__ = [
    "BuildSimulator",
    "OrderBench",
    "RulePicture",
    "build_simulator",
    "order_bench",
    "rule_picture",
]
