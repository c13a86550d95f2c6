def git = { String... words ->
  def builder = new ProcessBuilder(['git'] + words.toList()).directory(basedir).redirectErrorStream(true)
  builder.environment().keySet().removeIf { it.startsWith('GIT_') }
  def process = builder.start()
  def said = process.inputStream.getText('UTF-8')
  [code: process.waitFor(), said: said]
}
def log = new File(basedir, 'build.log').getText('UTF-8')
assert log.contains('the hook pre-commit is in place')
assert log.contains('its classes are prepared for quick starts')
assert log.contains('the commit guard is installed already; nothing was changed')
assert git('status', '--porcelain').said == ''

def left = new File(basedir, 'src/main/harness/looms/left.json')
def sound = left.getText('UTF-8')
left.setText(sound.replace('X1:1', 'X1:2'), 'UTF-8')
def blocked = git('commit', '-a', '-m', 'doubled')
assert blocked.code == 1 : blocked.said
assert blocked.said.contains('error cavity-doubled X1:2 holds W1 and W2') : blocked.said
assert blocked.said.contains('left to continuous integration: ') : blocked.said
assert !blocked.said.contains('SLF4J') : blocked.said

left.setText(sound.replace('X1:1', 'X1:3'), 'UTF-8')
def passes = git('commit', '-a', '-m', 'moved')
assert passes.code == 0 : passes.said
assert passes.said.contains('passes: car.harness.json') : passes.said
assert git('log', '--format=%s', '-1').said.trim() == 'moved'
return true
