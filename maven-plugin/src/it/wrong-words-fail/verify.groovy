def log = new File(basedir, 'build.log').getText('UTF-8')
[
  'tugtest.failOn is "eror"; did you mean error?',
  'tugtest.failOn is "sometimes"; it takes error, warning, note, never',
  'tugtest.rules is "wire-end-opne"; did you mean wire-end-open?',
  'tugtest.formats is "sarf"; did you mean sarif?',
  'there is no parameter tugtest.faliOn; did you mean tugtest.failOn?',
  'tugtest.today is "tomorrow"; it takes a day such as 2027-03-31',
  'did you mean cavity-doubled?',
  'tugtest.staged is "maybe"; it takes true or false',
  'there is no parameter <failon> in the POM; did you mean failOn?',
].each { assert log.contains(it) : it }
assert !log.contains('No enum constant')
return true
