"""How a JupyterHub starts a learner's server: with a limit of memory that holds."""

from __future__ import annotations

from collections.abc import Callable

from jupyterhub.spawner import LocalProcessSpawner

from twoshaft import system


class LearnersSpawner(LocalProcessSpawner):
    """Starts a server in the learner's own account.

    No program of it gets more memory than ``mem_limit`` [bytes], which the hub's own way of
    starting servers on this machine only tells.
    """

    def make_preexec_fn(self, name: str) -> Callable[[], None]:
        """What becomes the learner's account, before the server is loaded."""
        become, most = super().make_preexec_fn(name), self.mem_limit

        def limited() -> None:
            become()
            if most:
                system.limit_memory(int(most))

        return limited
