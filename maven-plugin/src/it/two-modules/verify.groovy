def log = new File(basedir, 'build.log').getText('UTF-8')
assert !log.contains('not marked @threadSafe')
assert !log.contains('not marked as thread-safe')
['front', 'rear'].each { module ->
  assert log.contains('passes: ' + module + '.harness.json')
  def parallel = new File(basedir, module + '/target/tugtest')
  def serial = new File(basedir, module + '/target/serial')
  assert parallel.list().size() >= 7
  parallel.eachFileRecurse {
    if (it.file) {
      def name = parallel.toPath().relativize(it.toPath()).toString()
      assert Arrays.equals(it.bytes, new File(serial, name).bytes) : module + ' ' + name
    }
  }
}
return true
