"""Pictures of the order of work: the rules in layers or around one step, the build by stages."""

from twoshaft.plots.rules import reach, rule_figure, rule_finding, rule_sentences
from twoshaft.plots.stages import cell_states, stage_figure, stage_names

__all__ = [
    "cell_states",
    "reach",
    "rule_figure",
    "rule_finding",
    "rule_sentences",
    "stage_figure",
    "stage_names",
]
