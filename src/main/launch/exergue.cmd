@echo off
rem Runs exergue.jar beside it, with the settings of Java under which a book is made soonest.
rem exergue.jsa holds the program's classes ready to use; where it is missing or does not fit, Java does without a word.

setlocal
set "JAVA=java"
if defined JAVA_HOME if exist "%JAVA_HOME%\bin\java.exe" set "JAVA=%JAVA_HOME%\bin\java.exe"
set "ARCHIVE="
if exist "%~dp0exergue.jsa" set ARCHIVE="-XX:SharedArchiveFile=%~dp0exergue.jsa"
set "SETTINGS=-XX:+IgnoreUnrecognizedVMOptions -XX:TieredStopAtLevel=1 -XX:C1MaxInlineSize=20 -XX:C1MaxInlineLevel=4"
set "SETTINGS=%SETTINGS% -XX:Tier3InvocationThreshold=25 -XX:Tier3MinInvocationThreshold=12 -XX:Tier3CompileThreshold=250"
set "SETTINGS=%SETTINGS% -XX:+UseParallelGC -XX:-UseAdaptiveSizePolicy -XX:InitialRAMPercentage=5 -Xmn96m -XX:MaxTenuringThreshold=0"
rem A proof goes on for hours: for that Java's slow compiler pays.
if "%~1"=="proof" set "SETTINGS=-XX:+UseParallelGC"
"%JAVA%" -Xlog:disable -Xlog:all=error:stderr %SETTINGS% %EXERGUE_JAVA% %ARCHIVE% -jar "%~dp0exergue.jar" %*
exit /b %ERRORLEVEL%
