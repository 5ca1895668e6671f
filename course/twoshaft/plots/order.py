"""Pictures of the order of work: the rules in layers or around one step."""

from twoshaft.plots.rules import rule_figure, rule_finding, rule_sentences
from twoshaft.plots.stages import stage_names

__all__ = [
    "rule_figure",
    "rule_finding",
    "rule_sentences",
    "stage_names",
]
