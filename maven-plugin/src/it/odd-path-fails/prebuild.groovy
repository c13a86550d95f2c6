import java.nio.file.Files

// Names as people give them; made here, since not every system can check them out.
def plain = new File(basedir, 'plain').toPath()
def copy = new File(basedir, 'loom #2 100% f\u00fcr +1').toPath()
Files.walk(plain).forEach { Files.copy(it, copy.resolve(plain.relativize(it))) }
def looms = copy.resolve('src/main/harness/looms')
Files.move(looms.resolve('extra.json'), looms.resolve('nose loom #2 100%.json'))
return true
