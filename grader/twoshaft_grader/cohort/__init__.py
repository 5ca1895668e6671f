"""A group of learners and their work, in one folder."""
