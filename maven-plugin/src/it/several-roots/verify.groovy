def log = new File(basedir, 'build.log').getText('UTF-8')
assert log.contains('blocked: 1 of 2 roots (night.harness.json) by 1 error')
assert log.contains('in night.harness.json')
assert log.contains('passes: day.harness.json')

// Two runs give the same bytes, whatever the order of the work.
def files = { folder ->
  def found = [:] as TreeMap
  folder.eachFileRecurse { if (it.file) found[folder.toPath().relativize(it.toPath()).toString()] = it.bytes }
  found
}
def one = files(new File(basedir, 'target/tugtest'))
def other = files(new File(basedir, 'target/again'))
assert one.size() >= 7
assert one.keySet() == other.keySet()
one.each { name, bytes -> assert Arrays.equals(bytes, other[name]) : name }

def json = new groovy.json.JsonSlurper().parse(new File(basedir, 'target/tugtest/report.json'))
assert json.harnesses*.root == ['day.harness.json', 'night.harness.json']
assert json.harnesses*.verdict == ['pass', 'blocked']
assert new File(basedir, 'target/day/outcome.txt').text == 'clean\n'
return true
