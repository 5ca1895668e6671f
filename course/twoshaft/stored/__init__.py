"""Every file that the learners' side reads or writes, one definition a file; and the one way of
writing any file of the course (``writing``)."""
