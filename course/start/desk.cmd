@echo off
rem Opens the instructor's desk on Windows: double-click it, or type course\start\desk.cmd
py -3 "%~dp0." --desk %*
if errorlevel 1 pause
