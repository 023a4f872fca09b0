@echo off
rem Starts Matraloom with the Java of this machine, version 17 or later. Not tried on Windows.
setlocal
set "JAR=%~dp0..\lib\matraloom\matraloom.jar"
set "JAVA=java.exe"
if defined JAVA_HOME if exist "%JAVA_HOME%\bin\java.exe" set "JAVA=%JAVA_HOME%\bin\java.exe"
"%JAVA%" -Xlog:disable -XX:+UseSerialGC -XX:TieredStopAtLevel=1 -Djava.awt.headless=true -jar "%JAR%" %*
exit /b %ERRORLEVEL%
