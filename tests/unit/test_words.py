"""Said plainly: words that are not used, and openings that are read at once.

What a learner or an instructor reads is walked: lessons, tasks and their feedback, questions,
practice, glossary, outcomes, safety, shipped units, and the sentences of screens, models, marking,
desk and bench sheets. Ids are not: there a name may be older than its word.
"""

import ast
import re
import tomllib
from pathlib import Path

import pytest
from ruamel.yaml import YAML

ROOT = Path(__file__).resolve().parents[2]
LIBRARY = ROOT / "course" / "twoshaft"
NOTEBOOKS = [
    *sorted((ROOT / "course" / "lessons").glob("*.py")),
    *sorted((ROOT / "solutions").glob("*.py")),
]
DATA = [
    *sorted((LIBRARY / "questions").glob("*.toml")),
    *sorted((LIBRARY / "practice" / "texts").glob("*.toml")),
    LIBRARY / "glossary" / "terms.yaml",
    *sorted((LIBRARY / "outcomes").glob("*.yaml")),
    *sorted((LIBRARY / "safety").glob("*.yaml")),
    *sorted((LIBRARY / "units" / "files").glob("*.yaml")),
    *sorted((LIBRARY / "readings").rglob("*.yaml")),
    *sorted((LIBRARY / "models").rglob("*.yaml")),
    LIBRARY / "readings" / "wanted.toml",
]
SCREENS = [
    *sorted((LIBRARY / "rigs").glob("*.py")),
    *sorted((LIBRARY / "plots").glob("*.py")),
    *sorted((LIBRARY / "readings").rglob("*.py")),
    *sorted((LIBRARY / "models").rglob("*.py")),
    *sorted((LIBRARY / "practice").rglob("*.py")),
    *sorted((LIBRARY / "jobsheet").rglob("*.py")),
    *sorted((ROOT / "grader" / "twoshaft_grader" / "bench_sheets").glob("*.py")),
    *sorted((ROOT / "grader" / "twoshaft_grader" / "marking").rglob("*.py")),
    *sorted((ROOT / "grader" / "twoshaft_grader" / "desk_pages").rglob("*.py")),
]
BROWSER = sorted((ROOT / "course" / "browser" / "src").rglob("*.js"))
NOT_USED = {
    r"doubts?": "uncertainty, of a measurement; question, of a reading",
    r"oil ways?": "oil gallery",
    r"pointed teeth": "dog teeth, or the chamfer of the teeth",
    r"dial gauges?": "dial indicator",
    r"speed handle": "speed brace",
    r"drawing tool": "puller, installer or driver",
    r"planet gears?": "differential pinions",
    r"asked back": "the form asks which one you mean",
    r"mend(s|ed|ing)?": "repair, correct",
    r"rightly": "correctly, the right way",
    r"gives nothing for nothing": "less force means more travel",
    r"not politeness": "you must do it as well",
    r"tells the grip": "shows the starting torque",
    r"turns its sign": "changes its sign",
    r"misbuil\w+": "assembly fault",
    r"whoever": "the person who, anybody who; you",
    r"(an?|one|early|plan|typical) slips?": "a mistake, a wrong step",
    r"gear wheels?": "gear; a wheel is the road wheel",
    r"(joint|gallery|face) bears": "is allowed; parts bear loads",
    r"(driver|sleeve) bears": "presses on",
}
"""What is not written, as a pattern of whole words, and what is written for it."""
OPENING_WORDS = 30
NAME_OF_SOMETHING = re.compile(r"[\w\-.#/:%]*")


def strings(tree):
    """Texts in code that somebody may read: no docstring, no name, no key."""
    silent = set()
    for node in ast.walk(tree):
        if isinstance(node, ast.Module | ast.ClassDef | ast.FunctionDef):
            silent |= {id(one.value) for one in node.body if isinstance(one, ast.Expr)}
        elif isinstance(node, ast.Expr) and isinstance(node.value, ast.Constant):
            silent.add(id(node.value))  # what stands below a name and explains it
    for node in ast.walk(tree):
        if (
            isinstance(node, ast.Constant)
            and isinstance(node.value, str)
            and id(node) not in silent
        ):
            yield node.value


def heads(tree):
    """Heads of the columns of a table, which may be one word as a name is."""
    for node in ast.walk(tree):
        if isinstance(node, ast.Call) and getattr(node.func, "id", "").endswith("table"):
            for part in ast.walk(node.args[1] if len(node.args) > 1 else ast.List()):
                if isinstance(part, ast.Constant) and isinstance(part.value, str):
                    yield f"head of a column: {part.value}"


def cells(path):
    """Tag line and text of each cell of a notebook's source."""
    for cell in re.split(r"(?m)^# %%", path.read_text(encoding="utf-8"))[1:]:
        head, _, body = cell.partition("\n")
        markdown = "[markdown]" in head
        yield markdown, re.sub(r"(?m)^# ?", "", body).strip() if markdown else body


def leaves(data):
    if isinstance(data, dict):
        for one in data.values():
            yield from leaves(one)
    elif isinstance(data, list):
        for one in data:
            yield from leaves(one)
    elif isinstance(data, str):
        yield data


def texts_of(path):
    """Every text of a file that somebody reads."""
    if path.suffix == ".toml":
        yield from leaves(tomllib.loads(path.read_text(encoding="utf-8")))
    elif path.suffix == ".yaml":
        yield from leaves(YAML(typ="safe").load(path))
    elif path.suffix == ".js":
        code = re.sub(r"(?s)/\*.*?\*/", "", path.read_text(encoding="utf-8"))
        for one in re.finditer(r'"((?:[^"\\\n]|\\.)*)"|`((?:[^`\\]|\\.)*)`', code):
            yield one[1] or one[2] or ""
    elif path in NOTEBOOKS:
        for markdown, text in cells(path):
            yield from [text] if markdown else [*strings(tree := ast.parse(text)), *heads(tree)]
    else:
        yield from strings(ast.parse(path.read_text(encoding="utf-8")))


def found_in(text):
    """Words of the list in a text; names, ids and keys are none."""
    if NAME_OF_SOMETHING.fullmatch(text):
        return []
    return [
        word
        for word in NOT_USED
        if re.search(rf"(?<![\w.\-{{]){word}(?![\w\-])", text, flags=re.IGNORECASE)
    ]


@pytest.mark.parametrize(
    "path",
    [*NOTEBOOKS, *DATA, *SCREENS, *BROWSER],
    ids=lambda path: f"{path.parent.name}/{path.name}",
)
def test_words_that_are_not_used_are_not_used(path):
    wrong = [
        f"{word!r} (write: {NOT_USED[word]}) in “{' '.join(text.split())[:120]}”"
        for text in texts_of(path)
        for word in found_in(text)
    ]
    assert not wrong, "\n".join(wrong)


def test_the_search_finds_what_it_looks_for():
    for text in (
        "A Doubt of 2 mm",
        "Two oil ways.",
        "it is asked back",
        "Mended, then closed",
        "Two misbuilds left",
        "a slip costs marks",
    ):
        assert found_in(text), text
    for text in (
        "doubt",
        "what-rounds-mend",
        "weigh-doubt",
        "recommended torque",
        "no doubtful use",
        "misbuild",
        "the socket slips",
        "Sign-in slips",
    ):
        assert not found_in(text), text
    here = list(texts_of(Path(__file__)))
    assert any("uncertainty, of a measurement" in text for text in here)
    assert __doc__ not in here


def opening(text):
    """The first paragraph below a heading."""
    for part in re.split(r"\n\s*\n", text):
        if part.strip() and not part.strip().startswith(("#", "<")):
            return part.strip()
    return ""


def test_openings_are_short():
    seen, long = 0, []
    for path in NOTEBOOKS:
        for markdown, text in cells(path):
            if not markdown or not re.match(r"# |## \d", text):
                continue
            words = re.findall(r"[^\s*_`]*\w\S*", opening(text))
            seen += 1
            if len(words) > OPENING_WORDS:
                long.append(f"{path.name}, “{text.splitlines()[0]}”: {len(words)} words")
    assert seen > 130 and not long, "\n".join(long)


ASIDES = re.compile(
    r"as remembered|from memory|not looked up|no source|our own model|in our own words"
    r"|\b\w+\.(?:py|yaml|toml|json|ipynb)\b|\btwoshaft[._]\w|n [-−] 1|√ ?\(?12"
    r"|square root",
    flags=re.IGNORECASE,
)
"""Where something comes from, files, and school mathematics: in the fold at a lesson's end."""
FOLD = re.compile(r"<details>.*?</details>", flags=re.DOTALL)
ADVICE = "do not go on from memory"
FORMULAS = 2  # in one paragraph


def lesson_text(path):
    """What is read of a lesson without opening a fold."""
    return [FOLD.sub("", text) for markdown, text in cells(path) if markdown]


@pytest.mark.parametrize("path", [p for p in NOTEBOOKS if p.parent.name == "lessons"], ids=str)
def test_a_lesson_tells_sources_and_files_in_its_fold_alone(path):
    texts = [text.replace(ADVICE, "") for text in lesson_text(path)]
    assert not [found.group() for text in texts for found in ASIDES.finditer(text)]
    paragraphs = [part for text in texts for part in re.split(r"\n\s*\n|\n- ", text)]
    assert not [part for part in paragraphs if len(re.findall(r" = (?!\d)", part)) > FORMULAS]
    whole = path.read_text(encoding="utf-8").rstrip()
    assert "<details>" not in whole or whole.endswith("</details>")
