@echo off
rem Builds the program with a Java of its own, for this platform: target\distribution. Needs a JDK and Maven on the path.
setlocal
cd /d "%~dp0"
set JAVA=java
if defined JAVA_HOME set JAVA=%JAVA_HOME%\bin\java
"%JAVA%" .ci\Distribute.java %*
