"""The bolted face against exact small cases and beam theory."""

import numpy as np
import pytest

from twoshaft.models import joint
from twoshaft.models.joint.face import Face
from twoshaft.units.quantities import Q


def test_beam_on_elastic_foundation():
    """Source: Hetényi, Beams on Elastic Foundation, 1946 (from memory): w = P b/(2 k) exp(-b
    x)(cos b x + sin b x), b = (k/(4 E I))^(1/4).

    A slender square ring, long against 1/b, so that neither shear nor the way round matters.
    """
    pitch, width, thick, joint_stiffness = 0.04, 0.02, 0.003, 4e7
    along = np.arange(6) * pitch
    side, zero = np.full(6, 6 * pitch), np.zeros(6)
    corners = [(along, zero), (side, along), (side - along, side), (zero, side - along)]
    points = np.concatenate([np.stack(xy, axis=1) for xy in corners])
    face = Face(points, width, thick, 1e8, joint_stiffness)
    compliance = face.solution(np.ones(len(face.along_m), bool), 0.0)[0][face.bolt_nodes]
    k = joint_stiffness * width
    b = (k / (4 * 70e9 * width * thick**3 / 12)) ** 0.25
    assert b * 24 * pitch > 12
    for away in range(4):
        x = away * pitch
        exact = b / (2 * k) * np.exp(-b * x) * (np.cos(b * x) + np.sin(b * x))
        assert compliance[2, 2 + away] == pytest.approx(exact, rel=0.02), away


def test_bolt_stiffness_vdi_2230():
    """Source: VDI 2230 (from memory): the plain rod E A/L is the limit of a long grip."""
    thread = joint.Thread.named("M8")
    got = joint.bolt_stiffness(thread, Q(150, "mm")).m_as("N/m")
    rod = 205e9 * np.pi / 4 * thread.d3_m**2 / 0.150
    assert 0.93 * rod < got < rod
