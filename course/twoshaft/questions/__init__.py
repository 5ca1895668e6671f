"""What is asked in words: one text file a module, ``threaded-joints.toml`` and so on.

A part ``[name]`` of texts is a list of options. Parts ``[name.version]`` are the versions of one
question, of which every attempt gets another: ``story`` is what is asked, ``options.id`` what is
offered. Ids are never shown, but job sheets know an option by its id and a learner can open theirs:
an id says what a line is about, never what is right of it. Solutions know options by their ids too,
so a text may be corrected at any time and an id stays. New ones go at the end of their part: the
place of a version or option decides who gets it. Which option is right, and why the others are not,
stands with the solution alone.
"""

from twoshaft.questions.bank import Bank, bank_of

__all__ = ["Bank", "bank_of"]
