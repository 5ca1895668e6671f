"""JupyterLab, as the course starts it: ``python -m twoshaft.jupyter.server``.

The same program as ``jupyter lab``. The course's package comes first, and with it what it has to
say about things that JupyterLab would load in vain. What the server writes is for its owner alone:
the keys with which it is opened are among it. Kernels keep the account's own setting (umask).
Where a JupyterHub started it, it is that hub's server of this account.
"""

import os
import sys

import twoshaft  # noqa: F401
from twoshaft.jupyter.warm_kernels import UMASK

if __name__ == "__main__":
    os.environ[UMASK] = str(os.umask(0o077))
    if "JUPYTERHUB_SERVICE_URL" in os.environ:
        from jupyterhub.singleuser.extension import main
    else:
        from jupyterlab.labapp import main

    sys.exit(main())
