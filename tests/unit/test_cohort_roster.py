"""Rosters as people export them, and one sentence for each thing wrong with them."""

import pytest

from twoshaft_grader.cohort.roster import Learner, RosterError, read_roster, roster_text

GOOD = "id,family name,given name,group\nt01,Okafor,Ada,A\nt02,Müller,Jörg,B\n"
PEOPLE = [Learner("t01", "Okafor", "Ada", "A"), Learner("t02", "Müller", "Jörg", "B")]


@pytest.fixture
def roster(tmp_path):
    def read(content, **kw):
        path = tmp_path / "list.csv"
        path.write_bytes(content if isinstance(content, bytes) else content.encode())
        return read_roster(path, **kw)

    return read


@pytest.fixture
def problems(roster):
    def find(content, **kw):
        with pytest.raises(RosterError) as caught:
            roster(content, **kw)
        for problem in caught.value.problems:
            assert "list.csv" in problem.where
            assert problem.mend and problem.sentence.endswith(".")
            assert "\n" not in problem.sentence
        return caught.value.problems

    return find


@pytest.mark.parametrize(
    "content",
    [
        GOOD,
        GOOD.replace(",", ";"),
        GOOD.replace(",", "\t"),
        GOOD.replace("\n", "\r\n"),
        "\n\n" + GOOD.replace("\n", "\n,,,\n"),
        "\ufeff" + GOOD,
        GOOD.replace("family name", "Family_Name").replace("id,", "ID,"),
        GOOD.replace("Ada,A", "  Ada , A "),
        'group,"given name",id,"family name"\nA,Ada,t01,Okafor\nB,Jörg,t02,Müller\n',
        # the same letters written with combining marks, as some systems save them
        GOOD.replace("ü", "u\u0308").replace("ö", "o\u0308"),
    ],
)
def test_reads_what_tables_are_saved_as(roster, content):
    assert roster(content) == PEOPLE


def test_group_may_be_absent(roster):
    assert roster("id,family name,given name\nx,Y,Z\n") == [Learner("x", "Y", "Z", "")]


def test_quoted_comma(roster):
    assert roster('id,family name,given name\nx,"Ito, Jr",Ken\n')[0].family_name == "Ito, Jr"


def test_written_roster_reads_back(roster):
    odd = [Learner("a-1", 'O"Neil, the', "=Ann", "")]
    assert roster(roster_text(odd)) == odd


def test_named_encoding(roster):
    assert roster(GOOD.encode("cp1252"), encoding="cp1252") == PEOPLE


def test_other_encoding_is_refused_with_what_it_would_say(problems):
    [problem] = problems(GOOD.encode("cp1252"))
    assert "line 3" in problem.where and "Müller" in problem.what
    assert "its letters are cp1252" in problem.mend


@pytest.mark.parametrize(
    ("content", "word"),
    [
        (GOOD.encode("utf-16"), "UTF-16"),
        (b"PK\x03\x04rest", "workbook"),
        (b"id,family name\0", "no text"),
        (b"", "empty"),
        (b" \n,,\n", "empty"),
        (GOOD.splitlines()[0].encode(), "nobody"),
        (b"id,given name\nx,Ada\n", "family name"),
        (b"id,family name,given name,id\nx,Y,Z,x\n", "two columns"),
        (b'id,family name,given name\nx,"Y,Z\n', "never closed"),
    ],
)
def test_whole_file_problems(problems, content, word):
    [problem] = problems(content)
    assert word in problem.what


def test_missing_file(tmp_path):
    with pytest.raises(RosterError, match="not there"):
        read_roster(tmp_path / "list.csv")


@pytest.mark.parametrize(
    "bad",
    ["a b", "a+b", "a/b", "../x", ".x", "x.", "*", "müller", "x" * 41, "lessons", "CON", "nul.txt"],
)
def test_ids_that_cannot_name_a_folder(problems, bad):
    [problem] = problems(f"id,family name,given name\n{bad},Y,Z\n")
    assert "line 2, column id" in problem.where


def test_every_problem_is_told_with_its_place(problems):
    found = problems(
        "id,family name,given name,group\n"
        "t01,Okafor,Ada,A\n"
        ",Lim,Bo,A\n"
        "T01,Reyes,Cy,A\n"
        "t04,,Di,A\n"
        "t05,Ek,Ed,A,extra\n"
    )
    assert [p.where.partition("list.csv, ")[2] for p in found] == [
        "line 3, column id",
        "line 4, column id",
        "line 5, column family name",
        "line 6",
    ]
    assert "line 2 already" in found[1].what
