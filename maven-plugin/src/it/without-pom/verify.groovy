def log = new File(basedir, 'build.log').getText('UTF-8')
assert log.contains('the present folder holds harness files: add -Dtugtest.harnessDirectory=.')
assert log.contains('passes: lamp.harness.json')
assert log.contains('report: target/tugtest/report.html')
// What to type next is given with full coordinates, since no POM names the plugin.
assert log =~ /next: mvn org\.tugtest:tugtest-maven-plugin:\S+:/
assert new File(basedir, 'folder/target/tugtest/report.html').length() > 0
assert !new File(basedir, 'folder/${project.basedir}').exists()
return true
