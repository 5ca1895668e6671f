"""A marked notebook is written piece by piece; the text is nbformat's own, to the letter."""

from nbformat import NotebookNode, v4

from twoshaft_grader.marking.gradebook import NotebookText


def test_the_text_is_what_nbformat_writes():
    awkward = 'An "outputs": [] in a text\n   "outputs": []\n\tü \u2028 \\ end'
    about = {"nbgrader": {"grade": True, "outputs": []}}
    nb = v4.new_notebook(
        cells=[
            v4.new_markdown_cell(awkward),
            v4.new_code_cell(awkward, metadata=about),
            v4.new_code_cell("", outputs=[v4.new_output("stream", text="of before")]),
            v4.new_code_cell("1 + 1"),
        ],
        metadata={"twoshaft": {"module": "made-up"}},
    )
    text = NotebookText(nb)
    for shown, points in ((awkward, "12.5"), ("", "0.0"), ("one line", "3")):
        for cell in nb.cells[1:]:
            cell.outputs = []
        nb.cells[1].outputs = [
            v4.new_output("display_data", {"text/html": shown}),
            v4.new_output("execute_result", {"text/plain": points}),
        ]
        assert text.now() == v4.writes(nb).rstrip("\n") + "\n"


def test_a_notebook_without_code_is_written_too():
    nb = NotebookNode(v4.new_notebook(cells=[v4.new_markdown_cell("Only words.")]))
    assert NotebookText(nb).now() == v4.writes(nb).rstrip("\n") + "\n"
