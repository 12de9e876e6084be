@echo off
rem Runs quaybook from an unpacked archive.
setlocal EnableExtensions DisableDelayedExpansion

rem Called by its name alone, in quotes, cmd knows the folder of this file in a subroutine only.
call :home
goto :java
:home
set "home=%~dp0"
exit /b 0

:java
set "java=java"
if not defined JAVA_HOME goto :version
rem Some have quotes in it.
set "JAVA_HOME=%JAVA_HOME:"=%"
if exist "%JAVA_HOME%\bin\java.exe" set "java=%JAVA_HOME%\bin\java.exe"
:version
rem An option that Java knows from 17 on (JEP 412).
"%java%" --enable-native-access=ALL-UNNAMED -version >nul 2>nul
if %ERRORLEVEL% equ 0 goto :speed
echo quaybook: Java is missing or too old. Install a Java runtime, version 17 or newer. >&2
exit /b 2

:speed
rem Compiles quickly rather than well, unless the arguments name many jobs to pack: as the launcher for POSIX shells.
set "speed=-XX:TieredStopAtLevel=1"
set "jobs=0"
set "before="
if not "%~1"=="pack" goto :run
:argument
shift /1
if "%~1"=="" goto :counted
set "argument=%~1"
set "former=%before%"
set "before="
for %%o in (--list --to --templates --at-once) do if "%argument%"=="%%o" set "before=%%o"
if "%former%"=="--list" goto :list
if defined former goto :argument
if "%argument:~0,1%"=="-" goto :argument
if not exist "%argument%\*" goto :job
if exist "%argument%\job.yaml" goto :job
for /r "%argument%" %%f in (job.yaml) do if exist "%%f" set /a jobs+=1
goto :argument
:job
set /a jobs+=1
goto :argument
:list
if exist "%argument%" for /f "usebackq delims=" %%l in ("%argument%") do set /a jobs+=1
goto :argument
:counted
if %jobs% geq 60 set "speed="

:run
rem Java finds out whether there is a terminal: cmd cannot, and later runtimes only with the console of java.base.
rem Last, so that its exit code is that of this file however it was called.
"%java%" -XX:+UseSerialGC -Djava.awt.headless=true %speed% -Dquaybook.terminal=console -Djdk.console=java.base -cp "%home%quaybook.jar" org.quaybook.cli.Main %*
