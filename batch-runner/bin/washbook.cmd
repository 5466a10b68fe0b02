@echo off
rem Starts washbook.jar, which lies beside this file or in ..\target, with a Java 17 or later: the one
rem in ..\jre, in JAVA_HOME, on the PATH or in the registry. Files dropped on this file are filled, and
rem the window stays open with what was said. WASHBOOK_JAVA_OPTIONS goes to Java.
setlocal EnableExtensions DisableDelayedExpansion

set "here=%~dp0"
set "jar=%here%washbook.jar"
if not exist "%jar%" set "jar=%here%..\target\washbook.jar"
if not exist "%jar%" (
  echo washbook: there is no washbook.jar in "%here%" or in "%here%..\target" 1>&2
  set "code=2"
  goto end
)

set "java="
if exist "%here%..\jre\bin\java.exe" set "java=%here%..\jre\bin\java.exe"
if not defined java if defined JAVA_HOME if exist "%JAVA_HOME%\bin\java.exe" set "java=%JAVA_HOME%\bin\java.exe"
if not defined java for %%J in (java.exe) do set "java=%%~$PATH:J"
if not defined java call :registry "HKLM\SOFTWARE\JavaSoft\JDK"
if not defined java call :registry "HKLM\SOFTWARE\JavaSoft\JRE"
if not defined java (
  echo washbook: Java 17 or later is needed; put it on the PATH or set JAVA_HOME 1>&2
  set "code=2"
  goto end
)

rem Umlauts in names and results: the window is set to UTF-8 and back again.
set "page="
for /f "tokens=2 delims=:." %%P in ('chcp') do set "page=%%P"
chcp 65001 >nul

set "utf8=-Dfile.encoding=UTF-8 -Dstdout.encoding=UTF-8 -Dsun.stdout.encoding=UTF-8 -Dstderr.encoding=UTF-8 -Dsun.stderr.encoding=UTF-8"

rem What is dropped is a full path; every command of ours is a single word.
set "command="
set "first=%~1"
if "%first:~1,2%"==":\" set "command=fill"
if "%first:~0,2%"=="\\" set "command=fill"

"%java%" -Xshare:auto -XX:+UseSerialGC %utf8% %WASHBOOK_JAVA_OPTIONS% -cp "%jar%" washbook.runner.cli.Main %command% %*
set "code=%ERRORLEVEL%"
if defined page chcp %page% >nul
if defined command goto stay
goto end

:stay
pause
:end
exit /b %code%

:registry
set "version="
for /f "tokens=2,*" %%A in ('reg query %1 /v CurrentVersion 2^>nul ^| find "REG_SZ"') do set "version=%%B"
if not defined version exit /b
for /f "tokens=2,*" %%A in ('reg query "%~1\%version%" /v JavaHome 2^>nul ^| find "REG_SZ"') do (
  if exist "%%B\bin\java.exe" set "java=%%B\bin\java.exe"
)
exit /b
