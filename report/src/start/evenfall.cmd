@echo off
rem Starts Evenfall in the way that suits what it does: DEVELOPERS.md, "What starting and compiling cost", says why.
rem EVENFALL_JAVA_OPTIONS adds options for the Java machine, such as -Xmx4g.
setlocal
set "java=java"
if defined JAVA_HOME set "java=%JAVA_HOME%\bin\java"
"%java%" -version >nul 2>&1
if errorlevel 1 (
  echo Evenfall needs Java 17 or newer and finds no "%java%": install one, or set JAVA_HOME to where it is. 1>&2
  exit /b 1
)
rem Without its archive of classes Java would not even use its own.
set "archive="
if exist "%~dp0lib\evenfall.jsa" set archive=-XX:SharedArchiveFile="%~dp0lib\evenfall.jsa" -Xshare:auto
rem Two collectors are one too many.
set "collector=-XX:+UseSerialGC"
if defined EVENFALL_JAVA_OPTIONS if not "%EVENFALL_JAVA_OPTIONS:GC=%"=="%EVENFALL_JAVA_OPTIONS%" set "collector="
"%java%" -XX:TieredStopAtLevel=1 -XX:Tier3BackEdgeThreshold=5000 -Xlog:disable -Xlog:all=error,cds=off:stderr %collector% %EVENFALL_JAVA_OPTIONS% %archive% -jar "%~dp0evenfall.jar" %*
exit /b %ERRORLEVEL%
