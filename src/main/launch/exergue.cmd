@echo off
rem Runs exergue.jar beside it, with the settings of Java under which a book is made soonest.
rem exergue.jsa holds the program's classes ready to use; where it is missing or does not fit, Java does without a word.

setlocal
set "JAVA=java"
if defined JAVA_HOME if exist "%JAVA_HOME%\bin\java.exe" set "JAVA=%JAVA_HOME%\bin\java.exe"
set "ARCHIVE="
if exist "%~dp0exergue.jsa" set ARCHIVE="-XX:SharedArchiveFile=%~dp0exergue.jsa"
"%JAVA%" -Xlog:disable -Xlog:all=error:stderr -XX:TieredStopAtLevel=1 -XX:+UseSerialGC %EXERGUE_JAVA% %ARCHIVE% -jar "%~dp0exergue.jar" %*
exit /b %ERRORLEVEL%
