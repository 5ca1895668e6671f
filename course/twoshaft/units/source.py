"""Reading YAML without losing the line on which each thing stands."""

from __future__ import annotations

import re
from collections.abc import Iterator, Sequence
from contextlib import suppress
from dataclasses import dataclass, replace
from functools import lru_cache
from pathlib import Path
from typing import Any

import yaml as pyyaml
from ruamel.yaml import YAML
from ruamel.yaml.error import MarkedYAMLError, YAMLError
from ruamel.yaml.nodes import MappingNode, SequenceNode
from ruamel.yaml.nodes import Node as YamlNode
from ruamel.yaml.resolver import implicit_resolvers

from twoshaft.errors import UnitFileError

MOST_NODES = 100_000  # aliases inside aliases can grow without bound
TYPICAL = "typical, change me"
"""Ends the line of a figure that nobody has measured or looked up yet, as a comment."""
_TYPICAL = re.compile(rf"#\s*{TYPICAL}\W*$", re.IGNORECASE)
_TAG = "tag:yaml.org,2002:"


@dataclass(frozen=True, slots=True)
class Node:
    """A value of a YAML file and where it stands.

    ``value`` is a scalar, a ``dict`` of nodes or a ``list`` of nodes. ``typical`` says that its
    line ends in the words `TYPICAL`: a figure assumed for the start, not of this unit.
    """

    value: Any
    file: str
    line: int
    typical: bool = False

    @property
    def where(self) -> str:
        """File and line, as ``my-unit.yaml, line 12``."""
        return f"{self.file}, line {self.line}"

    def plain(self) -> Any:
        """The value as plain Python data."""
        if isinstance(self.value, dict):
            return {key: node.plain() for key, node in self.value.items()}
        if isinstance(self.value, list):
            return [node.plain() for node in self.value]
        return self.value

    def path(self, place: Sequence[str | int]) -> Iterator[Node]:
        """Yield this node and those below it along `place`, as far as they exist."""
        node = self
        yield node
        for step in place:
            inside = node.value
            if isinstance(inside, list) and isinstance(step, int):
                inside = dict(enumerate(inside))
            if not isinstance(inside, dict) or step not in inside:
                return
            node = inside[step]
            yield node

    def identifier(self) -> str | None:
        """The value under ``id``, where there is one."""
        if isinstance(self.value, dict) and "id" in self.value:
            value = self.value["id"].value
            return value if isinstance(value, str) else None
        return None


def read_nodes(path: Path, name: str | None = None) -> Node:
    """Read one YAML file.

    Parameters
    ----------
    path : Path
        The file.
    name : str, optional
        What to call it in sentences; the file's own name by default.

    Raises
    ------
    UnitFileError
        If the file is missing, is not UTF-8 text or is not well-formed YAML.
    """
    name = name or path.name
    try:
        text = path.read_text(encoding="utf-8")
    except FileNotFoundError:
        raise UnitFileError(
            "there is no such file", where=name, mend="check the name and the folder"
        ) from None
    except UnicodeDecodeError:
        raise UnitFileError(
            "the file is not UTF-8 text", where=name, mend="save it as UTF-8"
        ) from None
    except OSError as trouble:
        raise UnitFileError(
            f"the file cannot be read ({trouble.strerror})", where=name, mend="check its rights"
        ) from None
    return parse_nodes(text, name)


@lru_cache(maxsize=8)  # parsing takes most of the time of loading, and nodes never change
def parse_nodes(text: str, name: str) -> Node:
    """Parse YAML text; `name` is what sentences call it.

    Raises
    ------
    UnitFileError
        If the text is not well-formed YAML, is empty, or is not a list of sections.
    """
    try:
        root = _composed(text)
        if root is None:
            raise UnitFileError(
                "the file is empty", where=name, mend="start from a copy of a shipped unit file"
            )
        node = _Reader(name, text).node(root)
    except MarkedYAMLError as trouble:
        mark = trouble.problem_mark or trouble.context_mark
        line = f", line {mark.line + 1}" if mark else ""
        problem = " ".join(str(trouble.problem or trouble.context or "not YAML").split())
        mend = (
            "indent with spaces, never with tabs"
            if "\\t" in problem
            else "check the indentation, colons and quotes on this line and the one above"
        )
        raise UnitFileError(
            f"the YAML cannot be read here ({problem})", where=f"{name}{line}", mend=mend
        ) from None
    except YAMLError as trouble:
        number = text.count("\n", 0, getattr(trouble, "position", 0) or 0) + 1
        raise UnitFileError(
            "the file holds a character that YAML does not allow",
            where=f"{name}, line {number}",
            mend="delete it or type it again",
        ) from None
    except RecursionError:
        raise UnitFileError(
            "brackets or lists are nested too deep", where=name, mend="nest less deeply"
        ) from None
    if not isinstance(node.value, dict):
        raise UnitFileError(
            "the file is not made of sections",
            where=node.where,
            mend="begin with 'identity:' at the left margin",
        )
    return node


if pyyaml.__with_libyaml__:

    class _Quick(pyyaml.cyaml.CParser, pyyaml.resolver.BaseResolver):  # type: ignore[name-defined]
        """The parser in C, ten times as quick; it takes words as YAML 1.2 does ("no" is a word)."""

        def __init__(self, text: str) -> None:
            pyyaml.cyaml.CParser.__init__(self, text)  # type: ignore[attr-defined]
            pyyaml.resolver.BaseResolver.__init__(self)

    for _versions, _tag, _pattern, _first in implicit_resolvers:
        if (1, 2) in _versions:
            _Quick.add_implicit_resolver(str(_tag), _pattern, _first)


def _composed(text: str) -> Any:
    """The tree of a YAML text, None if it is empty; complaints come from one parser only."""
    if pyyaml.__with_libyaml__:
        with suppress(pyyaml.YAMLError, ValueError):
            return _Quick(text).get_single_node()
    reader = YAML(typ="safe", pure=True)
    reader.composer.warn_double_anchors = False  # YAML allows it, and the last one counts
    return reader.compose(text)


class _Reader:
    """Turns a composed YAML tree into nodes."""

    def __init__(self, name: str, text: str = "") -> None:
        self.name = name
        lines = enumerate(text.splitlines(), 1) if TYPICAL in text.lower() else ()
        self.typical = {number for number, line in lines if _TYPICAL.search(line)}
        self.count = 0
        self.open: set[int] = set()

    def node(self, yaml: YamlNode) -> Node:
        line = yaml.start_mark.line + 1
        self.count += 1
        if id(yaml) in self.open or self.count > MOST_NODES:
            raise UnitFileError(
                "it holds too many values, or an alias (*name) repeats itself without end",
                where=f"{self.name}, line {line}",
                mend="write the values out instead",
            )
        self.open.add(id(yaml))
        try:
            return Node(self._value(yaml), self.name, line, line in self.typical)
        finally:
            self.open.discard(id(yaml))

    def _value(self, yaml: YamlNode) -> Any:
        if isinstance(yaml, (MappingNode, pyyaml.MappingNode)):
            return self._mapping(yaml)
        if isinstance(yaml, (SequenceNode, pyyaml.SequenceNode)):
            return [self.node(item) for item in yaml.value]
        return _scalar(str(yaml.tag), yaml.value)

    def _mapping(self, yaml: MappingNode) -> dict[str, Node]:
        result: dict[str, Node] = {}
        for key_node, value_node in yaml.value:
            line = key_node.start_mark.line + 1
            where = f"{self.name}, line {line}"
            key = key_node.value
            if not isinstance(key, str):
                raise UnitFileError("a key must be a word", where=where, mend="remove the brackets")
            if key == "<<":
                raise UnitFileError(
                    "merge keys (<<) are not read", where=where, mend="write the values out instead"
                )
            if key in result:
                raise UnitFileError(
                    f"'{key}' stands twice in the same entry (first on line {result[key].line})",
                    where=where,
                    mend="keep one of the two",
                )
            # the key's line is where a reader looks, also when the value begins below it
            result[key] = replace(self.node(value_node), line=line)
        return result


def _scalar(tag: str, text: str) -> Any:
    kind = tag.removeprefix(_TAG)
    try:
        match kind:
            case "null":
                return None
            case "bool":
                return text.lower() == "true"
            case "int":
                return int(text.replace("_", ""), 0 if text.lstrip("+-")[:2] in _BASES else 10)
            case "float":
                return float(text.replace("_", "").replace(".inf", "inf").replace(".nan", "nan"))
    except ValueError:
        return text
    return text


_BASES = ("0x", "0o", "0b")
