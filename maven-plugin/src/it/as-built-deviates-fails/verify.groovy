def log = new File(basedir, 'build.log').readLines('UTF-8')
    .collect { it.replaceFirst(/^\[(ERROR|WARNING|INFO)\] /, '') }
def bare = log.collect { it.replaceAll(/^\S*src\/main\/harness\//, '') }
new File(basedir, 'expected.txt').readLines('UTF-8').each { wanted ->
  assert log.contains(wanted) || bare.contains(wanted) : 'missing in build.log: ' + wanted
}
def loom = new File(basedir, 'src/main/harness/front.json').getText('UTF-8')
assert loom.contains('"id": "front", "revision": "D"')
assert loom.contains('"W3": {"from": "X1:4", "to": "X2:4", "part": "w1.0", "colour": "VT", "cutMm": 1000}')
def record = new groovy.json.JsonSlurper().parse(new File(basedir, 'src/main/harness/built/41.record.json'))
assert record.record.revision == 'D'
assert record.entries.keySet() == ['2'] as Set
def compared = new groovy.json.JsonSlurper().parse(new File(basedir, 'target/tugtest/compare.json'))
assert compared.harnesses[0].root == 'car.harness.json'
def built = compared.harnesses[0].asBuilt
assert built.deviations.find { it.subject == 'wires/W3' }.standing == 'accepted'
assert built.deviations.find { it.subject == 'wires/W4' }.standing == 'error: nobody has accepted that'
assert built.explanations[0].sets[0][0].what == 'W1 and W2 are exchanged in X1 (cavities 1 and 2, side by side)'
['compare.html', 'compare.md'].each { name ->
  def text = new File(basedir, 'target/tugtest/' + name).getText('UTF-8')
  ['wire W4 was built of w0.5', 'W1 and W2 are exchanged in X1', 'a meter shows the same for the first two'].each {
    assert text.contains(it) : it + ' is missing in ' + name
  }
}
assert new File(basedir, 'target/comment').list().sort() == ['compare.md', 'outcome.txt']
assert log.any { it.contains('names built/none*, which fits no file; there are built/41.record.json') }
assert new File(basedir, 'target/tugtest/outcome.txt').text.trim() == 'cannot-check'
return true
