"""What is worked out of a unit and asked for again: one home for it, gone when the unit goes.

A function whose first argument is a unit, a section of one, or what was compiled of one is marked
with :func:`kept`::

    @kept()
    def clamps(unit: Unit, group: str) -> Clamps: ...

It then works once for each owner and further arguments. What it gives is shared: nobody changes it.
"""

from __future__ import annotations

from collections.abc import Callable
from functools import lru_cache, partial, wraps
from typing import Any, Concatenate, ParamSpec, TypeVar

Owner = TypeVar("Owner")
Rest = ParamSpec("Rest")
Result = TypeVar("Result")

_STORE = "_kept"


class _Store(dict[Callable[..., Any], Callable[..., Any]]):
    """What one owner keeps, by function. It belongs to that object alone: no copy takes it along,
    neither in this process nor into another."""

    def __copy__(self) -> _Store:
        return _Store()

    def __deepcopy__(self, memo: dict[int, Any]) -> _Store:
        return _Store()

    def __reduce__(self) -> tuple[type[_Store], tuple[()]]:
        return _Store, ()


def kept(
    most: int | None = None,
) -> Callable[
    [Callable[Concatenate[Owner, Rest], Result]], Callable[Concatenate[Owner, Rest], Result]
]:
    """Keep what a function gives, with the object that is its first argument.

    The object never changes and has a ``__dict__``; two objects with the same content keep apart.
    Further arguments are hashable.

    Parameters
    ----------
    most : int, optional
        How many results to keep for each owner, the last used ones; needed where the further
        arguments come from learners. All by default.
    """

    def keep(
        work: Callable[Concatenate[Owner, Rest], Result],
    ) -> Callable[Concatenate[Owner, Rest], Result]:
        @wraps(work)
        def once(owner: Owner, *args: Rest.args, **named: Rest.kwargs) -> Result:
            store = vars(owner).get(_STORE)
            if store is None:
                store = vars(owner)[_STORE] = _Store()
            known = store.get(work)
            if known is None:
                known = store[work] = lru_cache(maxsize=most)(partial(work, owner))
            return known(*args, **named)  # type: ignore[arg-type]

        return once

    return keep
