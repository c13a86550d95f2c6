def log = new File(basedir, 'build.log').getText('UTF-8')
assert log.contains('open target/tugtest/documents/index.html')
assert log.contains('documents is skipped: tugtest.documents.skip is true')

// Every sheet says what it is of, and what it is for is there.
def files = { folder ->
  def found = [:] as TreeMap
  folder.eachFileRecurse { if (it.file) found[folder.toPath().relativize(it.toPath()).toString().replace('\\', '/')] = it }
  found
}
def documents = files(new File(basedir, 'target/tugtest/documents'))
['index.html', 'contents.txt', 'shopping.html', 'loom-nose/wire-list.html', 'loom-nose/wire-list.csv',
 'loom-nose/cut-list.csv', 'loom-nose/labels.csv', 'loom-nose/crimps.html', 'loom-nose/build-order.html'].each {
  assert documents.containsKey(it) : it + ' is missing from ' + documents.keySet()
}
documents.findAll { it.key.endsWith('.html') }.each { name, file ->
  assert file.getText('UTF-8').contains('2026-11-25') : name
}
def wires = documents['loom-nose/wire-list.csv'].readLines('UTF-8')
assert wires.size() == 4
assert wires[2].startsWith('R014,FB:1,FB,1,device pin,R1:1,R1,1,fan-skt,w1.0,YE,')
assert wires[2].contains('not known: the harness has no layout')
assert documents['contents.txt'].readLines('UTF-8').toSet() == documents.keySet() - 'contents.txt'

// Two runs give the same bytes.
def again = files(new File(basedir, 'target/again/documents'))
assert again.keySet() == documents.keySet()
documents.each { name, file -> assert Arrays.equals(file.bytes, again[name].bytes) : name }

// Nothing is written of a root that cannot be read; the place is told.
assert !new File(basedir, 'target/none').exists()
assert !new File(basedir, 'target/broken/documents').exists()
assert log.contains('car.harness.json:4:3')
assert log.contains('car.harness.json cannot be read, so no document was written')
return true
