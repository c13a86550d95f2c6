// Three commits: sound looms, a wire moved, and a cavity doubled; then a change that is staged only.
def git = { String... words ->
  def process = (['git'] + words.toList()).execute(null, basedir)
  def said = process.text
  assert process.waitFor() == 0 : words
  said
}
def left = new File(basedir, 'src/main/harness/looms/left.json')
def sound = left.getText('UTF-8')
git('init', '-q', '-b', 'main', '.')
git('config', 'user.name', 'bench')
git('config', 'user.email', 'bench@localhost')
new File(basedir, '.gitignore').text = 'target/\nbuild.log\n'
git('add', '-A')
git('commit', '-q', '-m', 'sound')
git('tag', 'sound')
left.setText(sound.replace('X1:1', 'X1:3'), 'UTF-8')
git('commit', '-q', '-a', '-m', 'moved')
git('tag', 'moved')
// Two branches that git merges without a conflict, each with a wire into one cavity.
def right = new File(basedir, 'src/main/harness/looms/right.json')
git('checkout', '-q', '-b', 'one')
left.setText(sound.replace('X1:1', 'X1:3').replace('1.0}', '1.0},\n    "W5": {"from": "X1:5", "to": "X2:5", "areaMm2": 1.0}'), 'UTF-8')
git('commit', '-q', '-a', '-m', 'one')
git('checkout', '-q', '-b', 'two', 'main')
right.setText(right.getText('UTF-8').replace('1.0}', '1.0},\n    "W6": {"from": "X1:5", "to": "X3:6", "areaMm2": 1.0}'), 'UTF-8')
git('commit', '-q', '-a', '-m', 'two')
git('checkout', '-q', 'main')
git('checkout', '-q', '-b', 'side')
left.setText(sound.replace('X1:1', 'X1:2'), 'UTF-8')
git('commit', '-q', '-a', '-m', 'doubled')
left.setText(sound, 'UTF-8')
git('add', '-A')
left.setText(sound.replace('X1:1', 'X1:4'), 'UTF-8')
return true
