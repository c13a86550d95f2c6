def log = new File(basedir, 'build.log').getText('UTF-8')
def compared = { folder ->
  new groovy.json.JsonSlurper().parse(new File(basedir, 'target/' + folder + '/compare.json')).harnesses[0]
}
def moved = compared('moved')
assert !moved.circuits.same
assert moved.changes.any { it.sentence?.contains('X1:3') } : moved.changes
assert moved.verdict == 'pass'
assert new File(basedir, 'target/moved/compare.md').getText('UTF-8').contains('X1:3')

// auto: the branch side left main at the moved wire.
assert log.contains(', where this branch left main: ')
assert log.contains('blocked: car.harness.json by 1 new error')
assert compared('doubled').findings.find { it.rule == 'cavity-doubled' }.age == 'new'

// The index holds what the tag holds; the file on disk does not.
assert compared('staged').circuits.same
assert compared('staged').changes.isEmpty()

assert log.contains('the circuits change and changes/ does not say so: ')
assert log.contains('there is no revision "sond"; did you mean sound?')
assert log.contains('against side: 0 new findings, 0 known, 1 resolved; circuits change: ')
assert compared('same').changes.isEmpty()

// A merge of two branches, made without touching a file.
assert log.contains('error cavity-doubled X1:5 holds W5 and W6')
assert log.contains('in the merge alone; ours: Wire W5 ')
assert log.contains('theirs: Wire W6 ')
assert compared('merge').changes.size() == 2
return true
