"""Every file that the cohort folder keeps for staff, one definition a file.

What learners read as well is defined in ``twoshaft.stored``.
"""
