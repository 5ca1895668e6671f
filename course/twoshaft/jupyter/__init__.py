"""JupyterLab as the course uses it: its settings, and the cells that are run on opening."""
