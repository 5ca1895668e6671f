"""What is kept of what a learner hands in; everything else that lies beside it is left behind."""

from twoshaft.stored.job_sheet import FILE

TIMESTAMP = "timestamp.txt"
"""When it was handed in, as nbgrader writes it."""
KEPT = (FILE, TIMESTAMP)
"""Files that marking carries over from the submitted to the autograded folder."""
