import pytest

from twoshaft.plots.tables import given_table


def test_a_table_escapes_and_lines_up_numbers():
    page = given_table(
        "Minutes", ["step", "min"], [("<b>seal</b>", 2.0), ("ring", 3.5)]
    )._repr_html_()
    assert "&lt;b&gt;seal" in page and "<b>seal" not in page
    assert '<td class="number">2</td>' in page and '<th scope="row">ring</th>' in page


def test_one_long_row_is_shown_as_pairs():
    page = given_table("The job", list("abcde"), [("bolt", 2.0, "", 4.0, 5.0)])._repr_html_()
    assert "<thead>" not in page and page.count("<tr>") == 5
    assert '<tr><th scope="row">a</th><td>bolt</td></tr>' in page
    assert "<thead>" in given_table("The job", list("abcd"), [(1.0, 2.0, 3.0, 4.0)])._repr_html_()


def test_a_ragged_row_is_refused():
    with pytest.raises(ValueError, match="needs 2 cells"):
        given_table("Minutes", ["step", "min"], [("ring",)])
