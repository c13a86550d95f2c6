package org.tugtest.git;

import java.util.concurrent.TimeUnit;
import org.eclipse.jgit.lib.Config;
import org.eclipse.jgit.lib.StoredConfig;
import org.eclipse.jgit.storage.file.FileBasedConfig;
import org.eclipse.jgit.util.FS;
import org.eclipse.jgit.util.SystemReader;

/**
 * Keeps JGit to the repository alone, and to reading it: it starts no git program, reads no
 * configuration of the system or the user, writes none, and does not try out the file system by
 * writing into it.
 */
final class QuietReader extends SystemReader.Delegate {
  private final Unwritten nothing = new Unwritten(new Config(), FS.DETECTED);

  private QuietReader(SystemReader usual) {
    super(usual);
  }

  /** Makes it the reader of this class loader; a plugin has one of its own. */
  static synchronized void install() {
    SystemReader present = SystemReader.getInstance();
    if (!(present instanceof QuietReader)) {
      SystemReader.setInstance(new QuietReader(present));
    }
  }

  @Override
  public StoredConfig getSystemConfig() {
    return nothing;
  }

  @Override
  public StoredConfig getUserConfig() {
    return nothing;
  }

  @Override
  public StoredConfig getJGitConfig() {
    return nothing;
  }

  @Override
  public FileBasedConfig openSystemConfig(Config parent, FS fs) {
    return new Unwritten(parent, fs);
  }

  @Override
  public FileBasedConfig openUserConfig(Config parent, FS fs) {
    return new Unwritten(parent, fs);
  }

  @Override
  public FileBasedConfig openJGitConfig(Config parent, FS fs) {
    return new Unwritten(parent, fs);
  }

  /** An empty configuration that stays in memory. */
  private static final class Unwritten extends FileBasedConfig {
    /** No file system that git is used on tells times apart more coarsely than FAT, by two. */
    private static final long COARSEST_SECONDS = 2;

    Unwritten(Config parent, FS fs) {
      super(parent, null, fs);
    }

    /**
     * How finely a file system tells times apart. JGit would find it out by writing into the
     * repository; without it, it merely reads a young file once more.
     */
    @Override
    public long getTimeUnit(
        String section, String subsection, String name, long unset, TimeUnit unit) {
      return section.equals("filesystem")
          ? unit.convert(COARSEST_SECONDS, TimeUnit.SECONDS)
          : super.getTimeUnit(section, subsection, name, unset, unit);
    }

    @Override
    public void load() {
      // There is no file.
    }

    @Override
    public void save() {
      // Nothing is kept.
    }

    @Override
    public boolean isOutdated() {
      return false;
    }
  }
}
