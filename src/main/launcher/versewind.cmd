@echo off
rem Starts Versewind on Windows: a command in this console, everything else in a window.
setlocal
set "folder=%~dp0.."
set "java=java"
set "javaw=javaw"
if defined JAVA_HOME set "java=%JAVA_HOME%\bin\java" & set "javaw=%JAVA_HOME%\bin\javaw"
set "options=-XX:TieredStopAtLevel=1 -XX:+UseSerialGC -Xmx256m -Dversewind.home="%folder%""

rem Commands that print. The first word decides, after --library and its folder.
set "first=%~1"
if /i "%first%"=="--library" set "first=%~3"
for %%c in (assess calc calibrate change estimate export find help import list propose read-stops reckon room sheet show usual -h --help -V --version) do (
  if /i "%first%"=="%%c" goto console
)
start "" "%javaw%" %options% -cp "%folder%\lib\*" versewind.Main --window %*
if errorlevel 1 echo versewind: Java 17 or later is needed, and neither JAVA_HOME nor PATH leads to any.
exit /b %errorlevel%

:console
"%java%" %options% -cp "%folder%\lib\*" versewind.Main %*
exit /b %errorlevel%
