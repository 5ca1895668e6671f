"""Typical wrong answers of "Measuring and tools": what each earns, and that it is charged once."""

import pytest

from twoshaft.models import joint
from twoshaft.readings.measuring_and_tools.wrench import tools_of
from twoshaft.units.quantities import Q

MODULE = "01-measuring-and-tools"


def fields(module, changes):
    """Mark a learner's full answers with some changed, by functions of the readings given."""
    wrong = changes(module.issue()["given"])
    return module.marked(**{name.replace("-", "_"): answer for name, answer in wrong.items()})[0]


def lost(marked):
    return {name for name, field in marked.items() if field.share < 1}


def test_a_missed_half_turn_is_named_and_charged_once(module):
    def change(given):
        tool = given["micrometer"]
        shown = tool["part_mm"] + tool["zero_mm"] - 0.5
        return {
            "mic-reading": f"{shown:.2f} mm",
            "mic-size": f"{shown - tool['zero_mm']:.2f} mm",
        }

    marked = fields(module, change)
    assert lost(marked) == {"mic-reading"}
    assert marked["mic-reading"].share == 0.25
    assert "alf a turn" in " ".join(marked["mic-reading"].sentences)


def test_a_zero_added_instead_of_taken_off(module):
    marked = fields(
        module,
        lambda g: {
            "mic-size": f"{g['micrometer']['part_mm'] + 2 * g['micrometer']['zero_mm']:.2f} mm"
        },
    )
    assert lost(marked) == {"mic-size"} and marked["mic-size"].share == 0.25
    assert "take it off" in " ".join(marked["mic-size"].sentences)


def test_a_vernier_read_from_the_side(module):
    def change(given):
        gauge = given["depth"]
        shift = 0.15 if gauge["eye"] == "left" else -0.15
        shown = gauge["depth_mm"] + gauge["zero_mm"] + shift
        return {
            "depth-reading": f"{shown:.2f} mm",
            "depth-true": f"{gauge['depth_mm'] + shift:.2f} mm",
        }

    marked = fields(module, change)
    assert lost(marked) == {"depth-reading"}
    assert "square on" in " ".join(marked["depth-reading"].sentences)


def test_a_stray_reading_averaged_in(module):
    def change(given):
        read = given["repeats"]["readings_mm"]
        return {"rep-mean": f"{sum(read) / len(read):.4f} mm"}

    marked = fields(module, change)
    assert lost(marked) == {"rep-mean"} and marked["rep-mean"].share == 0.25


def test_a_stranger_kept_with_the_others(module):
    right = module.clean().references["rep-do"].value
    line = next(line for line, do in right.items() if do != "keep")
    wrong = [f"{key}={do}" for key, do in (right | {line: "keep"}).items()]
    marked = module.marked(rep_do=wrong)[0]
    assert lost(marked) == {"rep-do"} and marked["rep-do"].share == 0
    assert "kept" in " ".join(marked["rep-do"].sentences)


def test_half_the_total_and_the_total_for_half(module):
    marked = fields(module, lambda g: {"dial-total": f"{g['dial']['off_mm']:.3f} mm"})
    assert marked["dial-total"].share == 0.25 and "largest" in marked["dial-total"].sentences[0]
    marked = fields(module, lambda g: {"dial-off": f"{2 * g['dial']['off_mm']:.3f} mm"})
    assert marked["dial-off"].share == 0.25


def test_diameter_for_radius_and_a_slip_of_ten(module):
    def torque(given, factor):
        pull = given["pull"]
        steady = sum(pull["steady_n"]) / 4 - pull["zero_n"]
        return {"pull-torque": f"{factor * steady * pull['radius_mm'] / 1000:.3f} N·m"}

    twice = fields(module, lambda g: torque(g, 2))["pull-torque"]
    assert twice.share == 0.25 and "diameter" in twice.sentences[0]
    tens = fields(module, lambda g: torque(g, 1000))["pull-torque"]
    assert tens.share == 0 and "1000 times too large" in tens.sentences[0]


def test_an_adapter_left_out_or_turned_round(module):
    clean = module.clean()
    torque = clean.references["wrench-torque"].value
    marked = fields(module, lambda g: {"wrench-setting": f"{torque.m_as('N*m'):.2f} N·m"})
    assert marked["wrench-setting"].share == 0
    assert "adapter" in marked["wrench-setting"].sentences[0]
    (own,) = clean.references["wrench-tool"].value["own"]
    tool = tools_of(module.unit)[own]
    card = module.issue()["given"]["wrench"]
    wrong = joint.torque_at_bolt(
        torque,
        Q(tool.length_m, "m"),
        Q(card["reach_mm"], "mm"),
        Q(card["angle_deg"], "degree"),
    )
    marked = fields(module, lambda g: {"wrench-setting": f"{wrong.m_as('N*m'):.2f} N·m"})
    assert marked["wrench-setting"].share == 0.25


def test_the_figure_of_the_card_in_the_wrong_unit(module):
    marked = fields(module, lambda g: {"wrench-torque": f"{g['wrench']['figure']:g} N·m"})
    assert marked["wrench-torque"].share == 0
    assert "the figure fits, but in lbf" in marked["wrench-torque"].sentences[0]


def test_doubts_simply_added(module):
    def change(given):
        said = given["claims"]
        parts = (said["step_mm"] / 12**0.5, said["certificate_mm"] / 2,
                 said["sd_mm"] / said["count"] ** 0.5)  # fmt: skip
        return {"claims-doubt": f"{2 * sum(parts):.4f} mm"}

    marked = fields(module, change)["claims-doubt"]
    assert marked.share == 0.25 and "root" in marked.sentences[0]


@pytest.mark.parametrize("field", ["dial-ready", "claims-says", "care-dangers", "care-kept"])
def test_any_line_wrong_of_what_decides_fails_whatever_the_marks(module, field):
    issued = module.record("ann")
    right, answers = module.right(issued)[field], dict(module.clean().fields[field].options)
    name = field.replace("-", "_")
    assert module.marked()[1].met
    assert len(right) == len(module.clean().fields[field].lines) >= 3
    for at, entry in enumerate(right):
        line, _, answer = entry.partition("=")
        for other in set(answers) - {answer}:
            wrong = [*right[:at], f"{line}={other}", *right[at + 1 :]]
            told, marked = module.marked(**{name: wrong})
            assert marked.points > 0.9 * marked.maximum and not marked.met
            assert len(told[field].sentences) == 2
        _, marked = module.marked(**{name: [*right[:at], *right[at + 1 :]]})
        assert not marked.met
    _, marked = module.marked(**{name: None})
    assert not marked.met
