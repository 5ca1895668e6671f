"""The answers: fields, reading what people write, saving, forms."""
