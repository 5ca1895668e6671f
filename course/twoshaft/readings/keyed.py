"""A stream of numbers that belongs to one learner, module and attempt, the same for ever.

The numbers come from HMAC-SHA256 over a counter, so they do not depend on the version of Python
or of any library. They are not a secret: nothing depends on the salt staying unknown.
"""

from __future__ import annotations

import hmac
import json
from collections.abc import Sequence
from statistics import NormalDist
from typing import TypeVar

T = TypeVar("T")


class Stream:
    """A stream of readings.

    Parameters
    ----------
    salt : str
        The cohort's salt.
    learner : str
        Learner id.
    module : str
        Module id.
    attempt : int
        Number of the attempt.

    Examples
    --------
    >>> stream = Stream("salt", "a01", "order-of-work", 1)
    >>> stream.integer(6) == Stream("salt", "a01", "order-of-work", 1).integer(6)
    True
    """

    def __init__(self, salt: str, learner: str, module: str, attempt: int) -> None:
        self._key = salt.encode()
        self._on([learner, module, attempt])

    def child(self, name: str) -> Stream:
        """A stream of its own under a name; drawing from it leaves this one where it is."""
        child = Stream.__new__(Stream)
        child._key = self._key
        child._on([*self._path, name])
        return child

    def _on(self, path: list[str | int]) -> None:
        """Begin at the start of a path."""
        self._path = path
        self._begins = json.dumps(path)[:-1]
        self._counter = 0
        self._left = b""

    def _bytes(self, count: int) -> bytes:
        while len(self._left) < count:
            # JSON keeps the members of the path apart whatever they contain.
            message = f"{self._begins}, {self._counter}]".encode()
            self._left += hmac.digest(self._key, message, "sha256")
            self._counter += 1
        taken, self._left = self._left[:count], self._left[count:]
        return taken

    def integer(self, n: int) -> int:
        """A whole number from 0 to n - 1, each alike likely; n may be of any size."""
        if n < 1:
            raise ValueError(f"n is {n}; give a whole number of at least 1")
        if n == 1:
            return 0  # takes nothing of the stream
        width = (n - 1).bit_length()
        size = (width + 7) // 8
        while True:
            value = int.from_bytes(self._bytes(size), "big") >> (8 * size - width)
            if value < n:
                return value

    def uniform(self, low: float, high: float) -> float:
        """A number from low up to, but not including, high."""
        return low + (high - low) * (int.from_bytes(self._bytes(7), "big") >> 3) / 2**53

    def normal(self, mean: float, sd: float) -> float:
        """A normally distributed number, to twelve digits (mathematics libraries differ beyond)."""
        share = ((int.from_bytes(self._bytes(7), "big") >> 3) + 0.5) / 2**53
        return mean + sd * float(f"{NormalDist().inv_cdf(share):.12g}")

    def choice(self, items: Sequence[T]) -> T:
        """One of the items."""
        return items[self.integer(len(items))]

    def shuffled(self, items: Sequence[T]) -> list[T]:
        """The items in random order (Fisher and Yates)."""
        result = list(items)
        for i in range(len(result) - 1, 0, -1):
            j = self.integer(i + 1)
            result[i], result[j] = result[j], result[i]
        return result
