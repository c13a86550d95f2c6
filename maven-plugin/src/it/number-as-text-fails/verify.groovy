// Every expected line stands in the log as a whole; paths count from the harness folder.
def lines = new File(basedir, 'build.log').readLines('UTF-8')
    .collect { it.replaceFirst(/^\[(ERROR|WARNING|INFO)\] /, '').replaceAll(/\S*src\/main\/harness\//, '') }
def expected = new File(basedir, 'expected.txt').readLines('UTF-8')
assert expected.size() >= 2
expected.each { wanted ->
  assert lines.contains(wanted) : 'missing in build.log: ' + wanted
}
assert new File(basedir, 'target/tugtest/outcome.txt').text.trim() == 'findings'
return true
