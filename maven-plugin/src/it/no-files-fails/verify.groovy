def log = new File(basedir, 'build.log').getText('UTF-8')
assert log.contains('no file *.harness.json in src/main/harness or below; name the root file NAME.harness.json')
assert log.contains('nothing to check: no file *.harness.json in src/main/harness or below')
assert log.contains('there is no folder elsewhere; make it and put a file named NAME.harness.json there')
// The last run could not check anything.
assert new File(basedir, 'target/tugtest/outcome.txt').text == 'cannot-check\n'
return true
