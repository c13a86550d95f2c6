import java.util.jar.JarEntry
import java.util.jar.JarOutputStream
import javax.tools.ToolProvider

// A jar of a team with one rule, put where Maven finds it.
def libraries = ['validator-core', 'harness-model'].collect { name ->
  def found = new File(localRepositoryPath, 'org/tugtest/' + name).listFiles().findAll { it.directory }
      .collectMany { it.listFiles().toList() }.find { it.name.endsWith('.jar') }
  assert found != null : name
  found.path
}
def classes = new File(basedir, 'target/rule')
classes.mkdirs()
def code = ToolProvider.systemJavaCompiler.run(null, null, null, '--release', '17',
    '-cp', libraries.join(File.pathSeparator), '-d', classes.path,
    new File(basedir, 'rule/CircuitUnnamed.java').path)
assert code == 0
def folder = new File(localRepositoryPath, 'org/acme/acme-rules/1')
folder.mkdirs()
new JarOutputStream(new FileOutputStream(new File(folder, 'acme-rules-1.jar'))).withCloseable { jar ->
  jar.putNextEntry(new JarEntry('META-INF/services/org.tugtest.rule.Rule'))
  jar.write('org.acme.CircuitUnnamed\n'.bytes)
  jar.putNextEntry(new JarEntry('org/acme/CircuitUnnamed.class'))
  jar.write(new File(classes, 'org/acme/CircuitUnnamed.class').bytes)
}
new File(folder, 'acme-rules-1.pom').text = '''<project>
  <modelVersion>4.0.0</modelVersion>
  <groupId>org.acme</groupId>
  <artifactId>acme-rules</artifactId>
  <version>1</version>
</project>
'''
return true
