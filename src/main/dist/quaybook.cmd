@echo off
rem Runs quaybook from an unpacked archive.
setlocal
set "java=java"
if defined JAVA_HOME if exist "%JAVA_HOME%\bin\java.exe" set "java=%JAVA_HOME%\bin\java.exe"
rem An option that Java knows from 17 on (JEP 412).
"%java%" --enable-native-access=ALL-UNNAMED -version >nul 2>nul
if errorlevel 1 (
  echo quaybook: Java is missing or too old. Install a Java runtime, version 17 or newer. >&2
  exit /b 2
)
"%java%" -XX:+UseSerialGC -XX:TieredStopAtLevel=1 -Djava.awt.headless=true -cp "%~dp0quaybook.jar" org.quaybook.cli.Main %*
exit /b %ERRORLEVEL%
