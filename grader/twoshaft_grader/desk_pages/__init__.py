"""The desk on the screen: what staff see in JupyterLab. Its pages call what the commands call."""
