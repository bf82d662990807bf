@echo off
rem Starts Bandwright on Windows; builds it on first use. Untested: no Windows machine was at hand.
setlocal
set "HERE=%~dp0"
for %%I in ("%HERE%..") do set "HOME_DIR=%%~fI"
set "JAR=%HERE%target\bandwright-pipeline.jar"
set "LOG=%HERE%target\first-use.log"
set "JAVA=java"
if defined JAVA_HOME set "JAVA=%JAVA_HOME%\bin\java"

if exist "%JAR%" goto run
"%JAVA%" -version >nul 2>&1
if errorlevel 1 (
  echo bandwright: needs a Java 17 JDK: install one, or set JAVA_HOME to its folder. 1>&2
  exit /b 1
)
where mvn >nul 2>&1
if errorlevel 1 (
  echo bandwright: needs Maven to build itself: install it, then run this again. 1>&2
  exit /b 1
)
echo bandwright: building for the first use, a minute or two, once ... 1>&2
if not exist "%HERE%target" mkdir "%HERE%target"
pushd "%HOME_DIR%"
call mvn -q -B -Dfirst.use -Dmaven.test.skip=true -pl pipeline -am package >"%LOG%" 2>&1
if errorlevel 1 (
  popd
  echo bandwright: the build failed; "%LOG%" says why. 1>&2
  exit /b 1
)
popd

:run
"%JAVA%" -XX:TieredStopAtLevel=1 -XX:+UseSerialGC -Xmn48m -Xms192m -Dfile.encoding=UTF-8 -Djava.awt.headless=true %BANDWRIGHT_JAVA_OPTS% -cp "%JAR%" bandwright.pipeline.cli.Main %*
exit /b %ERRORLEVEL%
