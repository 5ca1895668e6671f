@echo off
rem Opens the course on Windows: double-click it.
py -3 "%~dp0course\start" %*
if errorlevel 1 pause
