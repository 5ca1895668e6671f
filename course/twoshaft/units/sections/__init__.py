"""The sections of a unit file, one pydantic module each."""
