"""What leaves the course: exports and evidence."""
