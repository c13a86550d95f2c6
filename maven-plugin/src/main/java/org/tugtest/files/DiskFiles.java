package org.tugtest.files;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.NoSuchFileException;
import java.nio.file.OpenOption;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.BasicFileAttributes;
import java.text.Normalizer;
import java.util.List;
import java.util.Optional;
import org.tugtest.read.ReadLimits;

/**
 * The files below the harness folder and the library folders. Folders are listed once; contents are
 * read when asked for. Nothing is followed out of the folders, and no symbolic link inside them.
 */
public final class DiskFiles implements HarnessFiles {
  private static final OpenOption[] PLAIN_FILE = {
    StandardOpenOption.READ, LinkOption.NOFOLLOW_LINKS
  };

  private final Folders folders;
  private final ReadLimits limits;
  private final FolderListing listing;
  private final List<String> chosen;

  private DiskFiles(Folders folders, Choice choice, ReadLimits limits, FolderListing listing) {
    this.folders = folders;
    this.limits = limits;
    this.listing = listing;
    this.chosen = listing.paths().stream().filter(choice::takes).toList();
  }

  /**
   * Lists the folders. One that is not there counts as empty.
   *
   * @param choice which files {@link #paths} names; a file that is used by another can be opened
   *     whether it is chosen or not
   * @throws IOException when a folder cannot be listed, with a sentence that says which and why
   */
  public static DiskFiles of(Folders folders, Choice choice, ReadLimits limits) throws IOException {
    return new DiskFiles(folders, choice, limits, FolderListing.of(folders));
  }

  @Override
  public List<String> paths() {
    return chosen;
  }

  @Override
  public List<String> all() {
    return listing.paths();
  }

  @Override
  public List<String> remarks() {
    return listing.remarks();
  }

  @Override
  public Content open(String path) {
    Optional<Content.Refused> refused = Refusals.ofPath(folders, path);
    if (refused.isPresent()) {
      return refused.get();
    }
    Path file = folders.at(path);
    try {
      return inside(path, folders.holding(file).orElseThrow(), file);
    } catch (NoSuchFileException gone) {
      return Refusals.notThere(path, listing.paths());
    } catch (IOException failed) {
      return new Content.Refused(
          "cannot be read: " + reason(failed), "Make the file readable and run again.");
    }
  }

  private Content inside(String path, Path folder, Path file) throws IOException {
    Path step = folder;
    for (Path name : folder.relativize(file)) {
      step = step.resolve(name);
      BasicFileAttributes attributes = attributes(step);
      boolean last = step.equals(file);
      if (attributes.isSymbolicLink() || (!last && attributes.isOther())) {
        return link(step, last);
      }
      if (!last && !attributes.isDirectory()) {
        return Refusals.notThere(path, listing.paths());
      }
      if (last && !attributes.isRegularFile()) {
        return new Content.Refused(
            attributes.isDirectory() ? "is a folder" : "is no plain file",
            "Name a file of the harness.");
      }
      if (last && attributes.size() > limits.bytes()) {
        return Refusals.tooLong(attributes.size() + " bytes", limits);
      }
    }
    Content spelled = spelled(path, folder, file);
    return spelled == null ? read(file) : spelled;
  }

  private Content link(Path step, boolean last) {
    if (last) {
      return Refusals.link();
    }
    return new Content.Refused(
        "lies below " + folders.pathOf(step) + ", a symbolic link; links are not followed",
        "Put the file itself there, or add its folder to tugtest.libraryDirectories.");
  }

  /** A refusal where the system finds the file under another spelling, as others would not. */
  private static @org.jspecify.annotations.Nullable Content spelled(
      String path, Path folder, Path file) throws IOException {
    Path real = file.toRealPath(LinkOption.NOFOLLOW_LINKS);
    Path inFolder = folder.relativize(file);
    int names = inFolder.getNameCount();
    Path tail = real.subpath(real.getNameCount() - names, real.getNameCount());
    String written = Normalizer.normalize(Folders.slashed(inFolder), Normalizer.Form.NFC);
    String onDisk = Normalizer.normalize(Folders.slashed(tail), Normalizer.Form.NFC);
    if (written.equals(onDisk)) {
      return null;
    }
    String right = path.substring(0, path.length() - Folders.slashed(inFolder).length()) + onDisk;
    return new Content.Refused(
        "is spelled " + right + " on disk, and other systems tell the two apart",
        "Write \"" + right + "\".");
  }

  private Content read(Path file) throws IOException {
    int most = Math.toIntExact(Math.min(limits.bytes(), Integer.MAX_VALUE - 16L));
    try (InputStream in = Files.newInputStream(file, PLAIN_FILE)) {
      byte[] bytes = in.readNBytes(most + 1);
      if (bytes.length > most) {
        return Refusals.tooLong("over " + most + " bytes", limits);
      }
      return LfsPointer.is(bytes)
          ? new Content.Refused(
              "is a pointer of Git LFS, not the file itself", "Fetch the file with: git lfs pull")
          : new Content.Bytes(bytes);
    }
  }

  private static BasicFileAttributes attributes(Path file) throws IOException {
    return Files.readAttributes(file, BasicFileAttributes.class, LinkOption.NOFOLLOW_LINKS);
  }

  /** What went wrong, in a few words without a path. */
  static String reason(IOException failed) {
    if (failed instanceof AccessDeniedException) {
      return "access is denied";
    }
    if (failed instanceof NoSuchFileException) {
      return "it is not there";
    }
    if (failed instanceof FileAlreadyExistsException) {
      return "a file of that name is in the way";
    }
    if (failed instanceof FileSystemException system && system.getReason() != null) {
      return system.getReason();
    }
    String message = failed.getMessage();
    return message == null ? failed.getClass().getSimpleName() : message;
  }
}
