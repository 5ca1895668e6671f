"""At the screen nobody has a command line: no sentence that can be met there names an option of a
command, or a whole command to type.

What can be met is what the desk's pages call, what that calls, and so on through both packages: a
name is followed to where it was imported from, a method to every class that has one of that name.
"""

import ast
import re
from pathlib import Path

import pytest
from tests.unit.test_architecture import modules, tree

from twoshaft_grader.desk_pages.pages import PAGES as DESK_PAGES

ROOT = Path(__file__).parents[2]
PAGES = "twoshaft_grader.desk_pages"
OPTION = re.compile(r"(?<![\w(-])--[a-z](?![\w-]*:)|\btwoshaft [a-z-]+ [A-Za-z{]")
WORDS = re.compile(r"[A-Za-z]{2,} \S+ \S")  # else a name, or words of a program
# What is written for somebody who has a command line.
FOR_OTHERS = {
    ("twoshaft_grader.records.evidence", "_README"),  # the sealed folder says how it is verified
    (
        "twoshaft_grader.cohort.folder",
        "find_cohort",
    ),  # the desk has a folder; nbgrader's exports ask
    ("twoshaft_grader.desk.errors", "_REPORT"),  # the desk gives words of its own for it
    ("twoshaft_grader.desk.errors", "sentence_of"),  # of a command line that is not right
}


class Code:
    """Functions, classes and constants of both packages, and where a name leads."""

    def __init__(self):
        self.found, self.methods, self.imported = {}, {}, {}
        for module, path in modules().items():
            code = tree(path)
            self.imported[module] = {
                one.asname or one.name: (node.module, one.name)
                for node in ast.walk(code)
                if isinstance(node, ast.ImportFrom) and node.module
                for one in node.names
            }
            for node in code.body:
                if isinstance(node, ast.FunctionDef | ast.ClassDef):
                    self.found[module, node.name] = node
                elif isinstance(node, ast.Assign):
                    named = [one.id for one in node.targets if isinstance(one, ast.Name)]
                    self.found |= {(module, name): node for name in named}
                for name in [getattr(one, "name", "") for one in getattr(node, "body", ())]:
                    if isinstance(node, ast.ClassDef) and name:
                        self.methods.setdefault(name, set()).add((module, node.name))

    def leads_to(self, module, node):
        """Where the names in a piece of code lead."""
        for one in ast.walk(node):
            if isinstance(one, ast.Name):
                yield from self.named(module, one.id)
            elif isinstance(one, ast.Attribute):
                package = self.imported[module].get(getattr(one.value, "id", ""))
                if package and (".".join(package), one.attr) in self.found:
                    yield ".".join(package), one.attr
                else:
                    yield from self.methods.get(one.attr, ())

    def named(self, module, name):
        """Where a bare name leads: here, or to where it was imported from."""
        for _ in range(3):  # a package may hand on what a file of it has
            if (module, name) in self.found:
                yield module, name
                return
            if name not in self.imported.get(module, ()):
                return
            module, name = self.imported[module][name]

    def met(self):
        """What can be reached from the desk's pages."""
        waiting = {key for key in self.found if key[0].startswith(PAGES)}
        seen = set()
        while waiting:
            key = waiting.pop()
            if key in seen:
                continue
            seen.add(key)
            waiting |= {to for to in self.leads_to(key[0], self.found[key]) if to not in seen}
        return seen


def sentences(node):
    """Texts in code without its docstrings; what is filled in stands as braces."""
    whole = set()
    for one in ast.walk(node):
        if isinstance(one, ast.Expr) and isinstance(one.value, ast.Constant):
            whole.add(id(one.value))
        elif isinstance(one, ast.JoinedStr):
            whole |= {id(part) for part in one.values}
            parts = (part.value if isinstance(part, ast.Constant) else "{}" for part in one.values)
            yield "".join(map(str, parts))
    for one in ast.walk(node):
        if isinstance(one, ast.Constant) and isinstance(one.value, str) and id(one) not in whole:
            yield one.value


def names_an_option(text):
    """Whether a sentence sends somebody to a command line."""
    return bool(OPTION.search(text) and WORDS.search(text))


@pytest.fixture(scope="module")
def code():
    return Code()


@pytest.mark.slow
def test_no_sentence_that_the_desk_can_say_names_an_option(code):
    reached = code.met()
    known = {name for _, name in reached}
    assert known >= {
        "open_cohort", "collect", "strange_folder", "find_content", "take_in", "write_evidence",
        "sentence_of", "mark_assignment", "moment_of", "find_shared",
    }  # fmt: skip
    assert "make_cohort" in known and not known & {"main", "restore", "serve"}
    said = {
        (module, name, text)
        for module, name in reached
        for text in sentences(code.found[module, name])
    }
    assert len(said) > 3000
    wrong = {one for one in said if names_an_option(one[2])}
    assert {one[:2] for one in wrong} == FOR_OTHERS, wrong


@pytest.mark.parametrize(
    ("text", "names"),
    [
        ("there is no unit; name one with --unit", True),
        ("make one with twoshaft cohort make FOLDER", True),
        ("its own reading - not the maker's - counts", False),
        ("--size", False),
    ],
)
def test_what_names_an_option(text, names):
    assert names_an_option(text) == names
    raised = ast.parse(f"raise E('a', mend=f{text!r})")
    assert text in set(sentences(raised))


def test_the_readme_says_of_every_page_what_there_is():
    rows = re.findall(r"^\| \*(.+?)\* \| (.+) \|$", (ROOT / "README.md").read_text(), re.MULTILINE)
    assert [page for page, there in rows if there] == [page.title for page in DESK_PAGES]
