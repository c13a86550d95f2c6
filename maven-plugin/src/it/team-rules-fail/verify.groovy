def log = new File(basedir, 'build.log').getText('UTF-8')
assert log.contains('car.harness.json:5:5: error acme-circuit-unnamed wire W2 names no circuit')
assert !log.contains('wire W1 names no circuit')
assert log.contains('blocked: car.harness.json by 1 error')
assert log.contains('not run: acme-circuit-unnamed (skipped by tugtest.skipRules)')
assert log.contains('Our drawings are sorted by circuit.')
return true
