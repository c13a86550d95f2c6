package org.tugtest.git;

import org.eclipse.jgit.lib.Config;
import org.eclipse.jgit.storage.file.FileBasedConfig;
import org.eclipse.jgit.util.FS;
import org.eclipse.jgit.util.SystemReader;

/**
 * Keeps JGit to the repository alone: it starts no git program, reads no configuration of the
 * system or the user, and writes none.
 */
final class QuietReader extends SystemReader.Delegate {
  private QuietReader(SystemReader usual) {
    super(usual);
  }

  /** Makes it the reader of this class loader; a plugin has one of its own. */
  static synchronized void install() {
    SystemReader present = SystemReader.getInstance();
    if (!(present instanceof QuietReader)) {
      FS.FileStoreAttributes.setBackground(true);
      SystemReader.setInstance(new QuietReader(present));
    }
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
    Unwritten(Config parent, FS fs) {
      super(parent, null, fs);
    }

    @Override
    public void load() {
      // There is no file.
    }

    @Override
    public void save() {
      // What JGit measures of a file system is kept for this run only.
    }

    @Override
    public boolean isOutdated() {
      return false;
    }
  }
}
