"""Every field of the unit file is described, with its unit, values and an example."""

import re

import pytest

from twoshaft.units import unit_json_schema
from twoshaft.units.fields_page import fields_page

PAGE = fields_page()
ROWS = [
    [cell.strip() for cell in line[1:-1].split("|")]
    for line in PAGE.splitlines()
    if line.startswith("| `")
]


def test_every_property_of_the_schema_is_described():
    for name, entry in unit_json_schema()["$defs"].items():
        for key, field in entry.get("properties", {}).items():
            assert field.get("description"), f"{name}: {key}"


def test_every_model_of_the_schema_has_its_table():
    told = set(re.findall(r"^## `(\w+)`$", PAGE, flags=re.M))
    schema = unit_json_schema()["$defs"]
    models = set(schema) - {"WholeUnit", "Variant"}
    assert models & told == {name for name in models if "properties" in schema[name]}


def test_a_key_that_ends_in_a_unit_says_it():
    units = {"mm": "mm", "um": "µm", "nm": "N·m", "kn": "kN", "deg": "degrees", "mpa": "MPa"}
    told = 0
    for key, _, values, *_ in ROWS:
        unit = units.get(key.strip("`").split()[-1])
        if unit and " " in key and " per " not in key:
            assert values.startswith(unit), key
            told += 1
    assert told > 60


@pytest.mark.parametrize(
    ("key", "values", "must"),
    [
        ("minutes to do", "minutes above 0 to 240", "must"),
        ("case stiffness n per um", "N/µm from 10 to 5000", "else 60"),
        ("bed n per mm3", "N/mm³ above 0 to 1e+06", "else 300"),
        ("outside mm", "mm above 0 to 1000", "must, or `standard`"),
        ("expansion um per m k", "µm/(m·K) from 0.1 to 100", "must"),
        ("single use", "true or false", ""),
        ("shim place", "`behind-outer-ring`, `behind-inner-ring`, `under-cover`, "
         "`between-outer-rings`, `between-inner-rings`", "must"),
    ],
)  # fmt: skip
def test_rows_say_unit_range_and_whether_a_field_must_be_there(key, values, must):
    row = next(row for row in ROWS if row[0] == f"`{key}`")
    assert (row[2], row[3]) == (values, must)


def test_nearly_every_field_that_is_no_entry_has_an_example_of_the_shipped_unit():
    plain = [row for row in ROWS if not re.match(r"`[A-Z]", row[2])]
    without = [row[0] for row in plain if not row[4]]
    assert len(without) < 0.1 * len(plain), without
