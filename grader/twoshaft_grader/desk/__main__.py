"""``python -m twoshaft_grader.desk`` is the ``twoshaft`` command."""

import sys

from twoshaft_grader.desk.commands import main

if __name__ == "__main__":
    sys.exit(main())
