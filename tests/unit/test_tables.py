import pytest

from twoshaft.plots.tables import given_table


def test_a_table_escapes_and_lines_up_numbers():
    page = given_table(
        "Minutes", ["step", "min"], [("<b>seal</b>", 2.0), ("ring", 3.5)]
    )._repr_html_()
    assert "&lt;b&gt;seal" in page and "<b>seal" not in page
    assert '<td class="number">2</td>' in page and "<td>ring</td>" in page


def test_a_ragged_row_is_refused():
    with pytest.raises(ValueError, match="needs 2 cells"):
        given_table("Minutes", ["step", "min"], [("ring",)])
