"""Pictures of the order of work: the rules in layers or around one step."""

from twoshaft.plots.rules import reach, rule_figure, rule_finding, rule_sentences
from twoshaft.plots.stages import stage_names

__all__ = [
    "reach",
    "rule_figure",
    "rule_finding",
    "rule_sentences",
    "stage_names",
]
