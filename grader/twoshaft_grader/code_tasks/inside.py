"""What runs within the sandbox: one cell after the other, and of each whether it went well.

It is copied in and run by itself, so it imports nothing of ours. A line on the way in is a cell
with a word of its own; a line on the way out has that word again, and the number in which the cell
ends. A learner's code runs in this very process: whoever looks through it can find the way out.
"""

import ast
import builtins
import json
import os
import sys
import types
import warnings


def main() -> None:
    """Run cells as they come, within the limits that come first."""
    limits = json.loads(sys.argv[1])
    into, out = os.dup(0), os.dup(int(sys.argv[2]))
    nothing = os.open(os.devnull, os.O_RDWR)
    for number in (0, 1, 2, int(sys.argv[2])):
        os.dup2(nothing, number)
    import resource

    for name, most in limits.items():
        resource.setrlimit(getattr(resource, name), (most, most))
    warnings.simplefilter("ignore")
    module = types.ModuleType("__main__")
    sys.modules["__main__"], sys.argv = module, [""]
    _serve(os.fdopen(into, "rb"), out, module.__dict__)


def _serve(cells, out, names):
    loads, dumps, write = json.loads, json.dumps, os.write
    there = vars(builtins)
    known = dict(there)
    for line in cells:
        cell = loads(line)
        there.clear()  # what a cell has put in their place is gone in the next
        there.update(known)
        told = {"word": cell["word"], **_run(cell["text"], names)}
        write(out, dumps(told).encode() + b"\n")


def _run(text, names):
    """How a cell ended: with an error's name, or well and with which number, if with any."""
    try:
        tree = ast.parse(text)
        last = tree.body.pop() if tree.body and isinstance(tree.body[-1], ast.Expr) else None
        exec(compile(tree, "cell", "exec"), names)
        if last is None:
            return {"error": "", "number": None}
        value = eval(compile(ast.Expression(last.value), "cell", "eval"), names)
        if isinstance(value, bool):
            return {"error": "" if value else "False", "number": None}
        return {"error": "", "number": float(value) if isinstance(value, int | float) else None}
    except BaseException as error:
        return {"error": type(error).__name__[:40], "number": None}


if __name__ == "__main__":
    main()
