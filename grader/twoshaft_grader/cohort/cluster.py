"""Marking on a Dask cluster: the machines of a scheduler work marks out, this command writes them.

Nothing is stored by a worker. What one that was lost had not answered is worked out by another,
and what comes twice is taken once, since each sheet is asked for under a name of its own.
"""

from __future__ import annotations

import contextlib
import logging
import queue
import secrets
import time
from collections.abc import Iterator
from importlib.util import find_spec
from typing import TYPE_CHECKING, Any

from twoshaft.errors import CohortError
from twoshaft.models.order import chance_levels
from twoshaft_grader.cohort.far_marking import difference, mark_parcel, this_machine
from twoshaft_grader.cohort.far_parcel import assignment_parcel, plain_result, sheet_parcel
from twoshaft_grader.cohort.one_sheet import Result, Work, mark_one

if TYPE_CHECKING:
    from distributed import Client, Future

CONNECT_S = 10.0
LOOK_S = 2.0  # so often it is looked whether anybody is still there
NOBODY_S = 30.0  # a worker that ended is started again by its nanny within that
_GO_ON = "what is marked is kept, and the same command goes on with the rest"


class Cluster:
    """A connection to a scheduler, and to workers that are as this machine is.

    Raises
    ------
    CohortError
        When the package is not installed, nobody is at the address, no worker has signed on to the
        scheduler, or a worker has another version of anything that could change a mark.
    """

    def __init__(self, address: str) -> None:
        if find_spec("distributed") is None:
            raise CohortError(
                "marking on a cluster needs the package distributed, which is not installed",
                mend="install it in the environment of the course, as README.md says",
            )
        import dask.config
        from distributed import Client

        self._address = address
        # Also how long it looks for a scheduler that is gone, before it says so.
        dask.config.set({"distributed.comm.timeouts.connect": f"{CONNECT_S}s"})
        logging.getLogger("distributed").setLevel(logging.CRITICAL)  # our sentences say it
        try:
            self._client: Client = Client(address, timeout=CONNECT_S, set_as_default=False)
        except (OSError, ValueError, TypeError) as error:
            raise CohortError(
                f"no scheduler answers at {address} ({' '.join(str(error).split())[:120]})",
                mend='start one with "dask scheduler", and give the address that it prints, as '
                "tcp://10.0.0.5:8786",
            ) from None
        try:
            self._check()
        except BaseException:
            self.close()
            raise

    def __enter__(self) -> Cluster:
        return self

    def __exit__(self, *_: object) -> None:
        self.close()

    def close(self) -> None:
        """Let go of the scheduler."""
        with contextlib.suppress(Exception):
            self._client.close(timeout=LOOK_S)

    def marked(self, waiting: list[Work]) -> Iterator[Result]:
        """Mark submissions of one assignment, in the order in which they are done.

        Raises
        ------
        CohortError
            When the scheduler or the last worker is gone, or a worker is of another version.
        """
        here: list[Work] = []
        parcels: dict[str, str] = {}
        for work in waiting:
            parcel = sheet_parcel(work)
            if parcel is None:
                here.append(work)
            else:
                parcels[work.learner] = parcel
        if parcels:
            yield from self._far(assignment_parcel(waiting[0], chance_levels()), parcels)
        for work in here:
            yield mark_one(work)

    def _far(self, common: str, parcels: dict[str, str]) -> Iterator[Result]:
        done: queue.SimpleQueue[Future] = queue.SimpleQueue()
        run = secrets.token_hex(6)
        # A task, not data that lie on a worker: if that is lost, another makes it again.
        shared = self._client.submit(str, common, key=f"twoshaft-{run}-assignment", pure=False)
        futures = {}
        for learner, parcel in parcels.items():
            key = f"twoshaft-{run}-{learner}"
            future = self._client.submit(mark_parcel, shared, parcel, key=key, pure=False)
            future.add_done_callback(done.put)
            futures[key] = future
        heard = time.monotonic()
        while futures:
            try:
                future = done.get(timeout=LOOK_S)
            except queue.Empty:
                if self._workers():
                    heard = time.monotonic()
                elif time.monotonic() - heard > NOBODY_S:
                    raise CohortError(
                        f"no worker is left at the scheduler {self._address}",
                        mend=f"start one again with dask worker {self._address}; {_GO_ON}",
                    ) from None
                continue
            heard = time.monotonic()
            if futures.pop(str(future.key), None) is not None:
                yield self._result(future)

    def _result(self, future: Future) -> Result:
        if future.cancelled() or self._client.status != "running":
            raise self._gone()
        if (error := future.exception(timeout=CONNECT_S)) is not None:
            said = " ".join(f"{type(error).__name__}: {error}".split())
            raise CohortError(
                f"the workers of {self._address} cannot mark ({said[:200]})",
                mend=f"see what they print; {_GO_ON}",
            )
        about, result = plain_result(future.result(timeout=CONNECT_S))
        if differs := difference(about):
            raise _other_version("a worker", differs)
        return result

    def _workers(self) -> dict[str, Any]:
        """The workers that have signed on."""
        from distributed.comm import CommClosedError

        if self._client.status != "running":
            raise self._gone()
        try:
            return dict(self._client.run_on_scheduler(_signed_on))
        except (OSError, CommClosedError, TimeoutError):
            raise self._gone() from None

    def _gone(self) -> CohortError:
        return CohortError(
            f"the scheduler at {self._address} is gone", mend=f"start it again; {_GO_ON}"
        )

    def _check(self) -> None:
        if not self._workers():
            raise CohortError(
                f"no worker has signed on to the scheduler {self._address}",
                mend=f"start one on each machine with dask worker {self._address}",
            )
        told = self._client.run(this_machine, on_error="return")
        for worker, theirs in told.items():
            if isinstance(theirs, ModuleNotFoundError):
                raise CohortError(
                    f"the worker {worker} does not have the course ({theirs})",
                    mend="start it from the environment of the same course as here",
                )
            if isinstance(theirs, BaseException):
                raise CohortError(f"the worker {worker} cannot be asked ({theirs})")
            if differs := difference(theirs):
                raise _other_version(f"the worker {worker}", differs)


def _other_version(worker: str, differs: str) -> CohortError:
    return CohortError(
        f"{worker} is not of the same version as this machine: {differs}",
        mend="bring it up to date and start it again, since marks must not depend on where they "
        f"are made; {_GO_ON}",
    )


def _signed_on(dask_scheduler: Any = None) -> dict[str, int]:
    return {address: 1 for address in dask_scheduler.workers}
