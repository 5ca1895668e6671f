"""``safety-sources.yaml``, in the cohort folder and in the workplace: a college's own sources."""

OWN_SOURCES = "safety-sources.yaml"
