package org.tugtest.hook;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.attribute.PosixFileAttributeView;
import java.nio.file.attribute.PosixFilePermission;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * The hooks of a repository. A hook that is not ours is never written over: it is kept beside ours,
 * called first, and put back in the end.
 *
 * @param folder where git looks for hooks
 */
record HookFolder(Path folder) {
  /** The hooks that run before a commit, and before a merge that needs no hand makes one. */
  private static final List<String> NAMES = List.of("pre-commit", "pre-merge-commit");

  /** Folder of what our hooks start. */
  Path own() {
    return folder.resolve("tugtest");
  }

  /**
   * Refuses a folder in which a hook that is not ours would have to be kept twice.
   *
   * @throws IOException when it is so; the message is a whole sentence
   */
  void refuseTwo() throws IOException {
    for (String name : NAMES) {
      if (isThere(name) && !isOurs(name) && Files.exists(kept(name), LinkOption.NOFOLLOW_LINKS)) {
        throw new IOException(
            "there are two hooks that are not ours, "
                + folder.resolve(name)
                + " and "
                + kept(name).getFileName()
                + " beside it; make one of them, or move one away, and run again");
      }
    }
  }

  /**
   * Puts the script in place of each hook.
   *
   * @return what was done, each a sentence; empty when all was so already
   */
  List<String> install(String script) throws IOException {
    byte[] content = script.getBytes(StandardCharsets.UTF_8);
    List<String> done = new ArrayList<>();
    for (String name : NAMES) {
      Path hook = folder.resolve(name);
      if (isThere(name) && !isOurs(name)) {
        Files.move(hook, kept(name));
        done.add("the hook " + name + " that was there is kept and called first");
      }
      if (!isThere(name) || !Arrays.equals(Files.readAllBytes(hook), content)) {
        put(hook, content);
        done.add("the hook " + name + " is in place");
      } else if (!Files.isExecutable(hook)) {
        allow(hook);
        done.add("the hook " + name + " may be run again");
      }
    }
    return done;
  }

  private static void put(Path hook, byte[] content) throws IOException {
    Files.createDirectories(hook.getParent());
    Path beside = Files.createTempFile(hook.getParent(), "tugtest", ".part");
    try {
      Files.write(beside, content);
      allow(beside);
      Files.move(beside, hook, StandardCopyOption.REPLACE_EXISTING);
    } finally {
      Files.deleteIfExists(beside);
    }
  }

  /** Lets whoever may read a file run it too. */
  private static void allow(Path file) throws IOException {
    PosixFileAttributeView view = Files.getFileAttributeView(file, PosixFileAttributeView.class);
    if (view == null) {
      return;
    }
    Set<PosixFilePermission> all = new HashSet<>(Set.of(PosixFilePermission.values()));
    all.remove(PosixFilePermission.GROUP_WRITE);
    all.remove(PosixFilePermission.OTHERS_WRITE);
    view.setPermissions(all);
  }

  /**
   * Takes our hooks away and puts back what was there before.
   *
   * @return what was done, each a sentence; empty when none of ours was there
   */
  List<String> remove() throws IOException {
    List<String> done = new ArrayList<>();
    for (String name : NAMES) {
      if (isThere(name) && isOurs(name)) {
        Files.delete(folder.resolve(name));
        done.add("the hook " + name + " is taken away");
      }
      if (Files.exists(kept(name), LinkOption.NOFOLLOW_LINKS)) {
        if (isThere(name)) {
          done.add(
              "the hook "
                  + name
                  + " is not ours, so "
                  + kept(name).getFileName()
                  + " beside it stays where it is");
        } else {
          Files.move(kept(name), folder.resolve(name));
          done.add("the hook " + name + " that was there before is back");
        }
      }
    }
    return done;
  }

  private boolean isThere(String name) {
    return Files.exists(folder.resolve(name), LinkOption.NOFOLLOW_LINKS);
  }

  private boolean isOurs(String name) throws IOException {
    Path hook = folder.resolve(name);
    return Files.isRegularFile(hook, LinkOption.NOFOLLOW_LINKS)
        && HookScript.isOurs(Files.readAllBytes(hook));
  }

  private Path kept(String name) {
    return folder.resolve(name + HookScript.KEPT);
  }
}
