def log = new File(basedir, 'build.log').getText('UTF-8')
def made = new File(basedir, 'src/main/harness/wires.harness.json')
assert made.exists()
assert new groovy.json.JsonSlurper().parse(made).sketch == true
assert log.contains('197 wires, UTF-8')
assert (log =~ /error cavity-doubled X5:2 holds \S+ and \S+;/).find()
assert (log =~ /error cavity-doubled/).count == 1
assert new File(basedir, 'target/tugtest/outcome.txt').text.trim() == 'findings'
return true
