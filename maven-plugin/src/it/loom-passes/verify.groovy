def log = new File(basedir, 'build.log').getText('UTF-8')
assert log.contains('0 errors, 0 warnings, 0 notes, 0 waived')
// trace: the wire, what it meets, and the fuse before it
assert log.contains('R014')
assert log.contains('FAN:1')
assert log.contains('mini-10') || log.contains('FB.f1')
// explain: the page of a rule, and the meaning of a property
assert log.contains('two or more wire ends share a cavity or pin that takes one')
assert log.contains('cutMm')
// sheet out and in again
assert log.contains('no file changed')
// tidy only tells
assert log.contains('nothing was written')
assert new File(basedir, 'target/tugtest/outcome.txt').text.trim() == 'clean'
['report.html', 'report.md', 'report.sarif', 'report.junit.xml', 'report.gitlab.json', 'report.json'].each {
  assert new File(basedir, 'target/tugtest/' + it).length() > 0 : it
}
return true
