def log = new File(basedir, 'build.log').getText('UTF-8')
assert log.contains('[INFO] check is skipped: tugtest.skip is true')
assert log.contains('[INFO] check is skipped: tugtest.check.skip is true')
assert !new File(basedir, 'target/tugtest').exists()
return true
