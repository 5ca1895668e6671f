"""Shims and preload on a unit whose set has few sizes."""

import pytest

from twoshaft.models.shim import target_interference
from twoshaft.readings.keyed import Stream
from twoshaft.readings.shims_and_preload.lot import read_lengths, window_of
from twoshaft.readings.shims_and_preload.stack import OPTIONS, shims_near


@pytest.mark.parametrize("count", [3, OPTIONS - 1, OPTIONS, OPTIONS + 3])
def test_a_set_of_few_sizes_is_offered_whole(unit, count):
    """Selective circlips often come in six thicknesses."""
    support = unit.bearings.supports[0]
    lengths = read_lengths(support, Stream("few", "ann", "shims-and-preload", 1))
    window = window_of(support, lengths, *target_interference(support))
    few = unit.bearings.model_copy(
        update={
            "shim_sets": tuple(
                one.model_copy(
                    update={
                        "at_most": 1,
                        "thicknesses_mm": tuple(
                            round((window[0] + window[1]) / 2 + 0.05 * (k - count // 2), 2)
                            for k in range(count)
                        ),
                    }
                )
                for one in unit.bearings.shim_sets
            )
        }
    )
    offered = [mm for _, mm in shims_near(few, support, lengths, window)]
    assert len(offered) == min(count, OPTIONS)
    assert offered == sorted(set(offered))
