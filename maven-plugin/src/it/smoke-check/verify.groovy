def log = new File(basedir, 'build.log').getText('UTF-8')
assert log.contains('passes: lamp.harness.json')
assert !log.contains('Plugin validation issues')
assert new File(basedir, 'target/tugtest/outcome.txt').text == 'clean\n'
['report.html', 'report.md', 'report.sarif', 'report.junit.xml', 'report.gitlab.json', 'report.json'].each {
  assert new File(basedir, 'target/tugtest/' + it).length() > 0 : it
}
return true
