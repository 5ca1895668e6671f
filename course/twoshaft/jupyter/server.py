"""JupyterLab, as the course starts it: ``python -m twoshaft.jupyter.server``.

The same program as ``jupyter lab``. The course's package comes first, and with it what it has to
say about things that JupyterLab would load in vain.
"""

import sys

import twoshaft  # noqa: F401

if __name__ == "__main__":
    from jupyterlab.labapp import main

    sys.exit(main())
