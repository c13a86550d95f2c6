def log = new File(basedir, 'build.log').getText('UTF-8')
assert log.contains('looms/nose loom #2 100%.json:1:')
assert log.contains('cavity-doubled X1:4 holds N3 and N4')
def copy = new File(basedir, 'loom #2 100% f\u00fcr +1')
def sarif = new groovy.json.JsonSlurper().parse(new File(copy, 'target/tugtest/report.sarif'), 'UTF-8')
def uris = sarif.runs*.results*.locations.flatten()*.physicalLocation.artifactLocation.uri
assert uris.any { it.endsWith('loom%20%232%20100%25%20f%C3%BCr%20+1/src/main/harness/looms/nose%20loom%20%232%20100%25.json') } : uris
uris.each { assert !new URI(it).absolute }
assert new File(copy, 'target/tugtest/outcome.txt').text == 'findings\n'
return true
