def lines = new File(basedir, 'build.log').readLines('UTF-8')
    .collect { it.replaceFirst(/^\[(ERROR|WARNING|INFO)\] /, '').replaceAll(/^\S*src\/main\/harness\//, '') }
new File(basedir, 'expected.txt').readLines('UTF-8').each { wanted ->
  assert lines.contains(wanted) : 'missing in build.log: ' + wanted
}
assert new File(basedir, 'target/tugtest/outcome.txt').text.trim() == 'cannot-check'
return true
