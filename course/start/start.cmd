@echo off
rem Opens the course on Windows: double-click it, or type course\start\start.cmd
py -3 "%~dp0." %*
if errorlevel 1 pause
