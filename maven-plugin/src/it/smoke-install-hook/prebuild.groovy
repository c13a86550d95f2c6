def git = { String... words ->
  def process = (['git'] + words.toList()).execute(null, basedir)
  def said = process.text
  assert process.waitFor() == 0 : words
  said
}
git('init', '-q', '-b', 'main', '.')
git('config', 'user.name', 'bench')
git('config', 'user.email', 'bench@localhost')
new File(basedir, '.gitignore').text = 'target/\nbuild.log\n'
git('add', '-A')
git('commit', '-q', '-m', 'looms')
return true
