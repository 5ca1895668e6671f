#!/bin/sh
# Opens the instructor's desk: double-click it (on Linux, choose to run it).
exec python3 "$(dirname "$0")" --desk "$@"
