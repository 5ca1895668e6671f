"""Interactive simulators, one for each model."""

from twoshaft.rigs.build_simulator import BuildSimulator, build_simulator
from twoshaft.rigs.order_bench import OrderBench, order_bench
from twoshaft.rigs.rule_picture import RulePicture, rule_picture

__all__ = [
    "BuildSimulator",
    "OrderBench",
    "RulePicture",
    "build_simulator",
    "order_bench",
    "rule_picture",
]
