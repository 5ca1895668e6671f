"""What trials of the machine itself share."""

import os
import subprocess

import pytest


@pytest.fixture
def small_disk(tmp_path):
    """A disk of its own, of 8 MB."""
    place = tmp_path / "disk"
    place.mkdir()
    mount = ["mount", "-t", "tmpfs", "-o", "size=8m,mode=700", "tmpfs", str(place)]
    if os.geteuid() != 0 or subprocess.run(mount, capture_output=True).returncode:
        pytest.skip("only root can make a small disk, and not everywhere")
    yield place
    subprocess.run(["umount", str(place)], check=True)
