"""What staff see: the command line."""
