"""What the hand test shows, sorted into the few kinds that a mechanic tells apart."""

from __future__ import annotations

from types import MappingProxyType

from twoshaft.models.shift.proof import HandProof

NOTHING = "nothing"
KINDS = MappingProxyType(
    {
        "gear-missing": "A gear cannot be engaged at all",
        "not-held": "A gear goes in, but nothing holds it when the lever is let go",
        "two-at-once": "Two gears can be engaged at once",
        "direct-passes": "The lever goes straight where the lockout should stop it",
        "direct-sometimes": "The lockout stops the direct shift from some positions only",
        NOTHING: "Every test by hand passes",
    }
)


def symptoms(proof: HandProof) -> frozenset[str]:
    """Kinds of symptom that a hand test shows; only "nothing" where it passes.

    Parameters
    ----------
    proof : HandProof

    Examples
    --------
    >>> from twoshaft.models.shift import mechanism, prove_by_hand
    >>> sorted(symptoms(prove_by_hand(mechanism(unit.shift))))
    ['nothing']
    """
    verdicts = {lock.verdict for lock in proof.locks}
    shown = {
        "gear-missing": bool(proof.cannot),
        "not-held": bool(proof.not_held),
        "two-at-once": bool(proof.at_once),
        "direct-passes": "fails" in verdicts,
        "direct-sometimes": "unreliable" in verdicts,
    }
    return frozenset(kind for kind, seen in shown.items() if seen) or frozenset({NOTHING})
