"""The apprentice kit: what an apprentice's own machine needs, and no answers."""

from twoshaft_grader.kit.pack import kit_files, write_kit

__all__ = ["kit_files", "write_kit"]
