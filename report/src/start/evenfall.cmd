@echo off
rem Starts Evenfall in the way that suits what it does: DEVELOPERS.md, "What starting and compiling cost", says why.
rem EVENFALL_JAVA_OPTIONS adds options for the Java machine, such as -Xmx4g.
setlocal
set "java=java"
if defined JAVA_HOME set "java=%JAVA_HOME%\bin\java"
"%java%" -XX:TieredStopAtLevel=1 -XX:Tier3BackEdgeThreshold=5000 -XX:+UseSerialGC -XX:SharedArchiveFile="%~dp0lib\evenfall.jsa" -Xshare:auto -Xlog:disable -Xlog:all=error:stderr %EVENFALL_JAVA_OPTIONS% -jar "%~dp0evenfall.jar" %*
exit /b %ERRORLEVEL%
