package org.tugtest.files;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.LinkOption;
import java.nio.file.NoSuchFileException;
import java.nio.file.OpenOption;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.BasicFileAttributes;
import java.text.Normalizer;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.tugtest.read.ReadLimits;
import org.tugtest.read.SourceFiles;
import org.tugtest.text.Nearest;

/**
 * The files below the harness folder and the library folders. Folders are listed once; contents are
 * read when asked for. Nothing is followed out of the folders, and no symbolic link inside them.
 */
public final class DiskFiles implements SourceFiles {
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

  /** Every file that could have been chosen, sorted by path. */
  public List<String> all() {
    return listing.paths();
  }

  /** What a person should know of the folders, each a sentence. */
  public List<String> remarks() {
    return listing.remarks();
  }

  @Override
  public Content open(String path) {
    if (!plain(path)) {
      return new Content.Refused(
          "is no relative path with / between its names",
          "Write it relative to the file that uses it, with /.");
    }
    Path file;
    try {
      file = folders.harness().resolve(path).normalize();
    } catch (InvalidPathException cannotBe) {
      return new Content.Refused(
          "is no path that this system knows", "Use letters, digits, - and _ in names of files.");
    }
    Optional<Path> folder = folders.holding(file);
    if (folder.isEmpty()) {
      return new Content.Refused(
          "lies outside the harness folder and the library folders",
          "Move the file into one of them, or add its folder to tugtest.libraryDirectories.");
    }
    String straight = folders.pathOf(file);
    if (!straight.equals(path)) {
      return new Content.Refused(
          "leaves the harness folder and comes back", "Write \"" + straight + "\".");
    }
    try {
      return inside(path, folder.get(), file);
    } catch (NoSuchFileException gone) {
      return notThere(path);
    } catch (IOException failed) {
      return new Content.Refused(
          "cannot be read: " + reason(failed), "Make the file readable and run again.");
    }
  }

  private static boolean plain(String path) {
    if (path.isEmpty() || path.indexOf('\\') >= 0 || path.indexOf('\0') >= 0) {
      return false;
    }
    return Stream.of(path.split("/", -1)).noneMatch(name -> name.isEmpty() || name.equals("."));
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
        return notThere(path);
      }
      if (last && !attributes.isRegularFile()) {
        return new Content.Refused(
            attributes.isDirectory() ? "is a folder" : "is no plain file",
            "Name a file of the harness.");
      }
      if (last && attributes.size() > limits.bytes()) {
        return tooLong(attributes.size() + " bytes");
      }
    }
    Content spelled = spelled(path, folder, file);
    return spelled == null ? read(file) : spelled;
  }

  private Content link(Path step, boolean last) {
    return new Content.Refused(
        last
            ? "is a symbolic link; links are not followed"
            : "lies below " + folders.pathOf(step) + ", a symbolic link; links are not followed",
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
      return bytes.length > most ? tooLong("over " + most + " bytes") : new Content.Bytes(bytes);
    }
  }

  private Content tooLong(String length) {
    return new Content.Refused(
        "is " + length + " long; at most " + limits.bytes() + " are read",
        "Split the file, and name the pieces under \"uses\".");
  }

  private Content notThere(String path) {
    String near = Nearest.question(path, listing.paths());
    return new Content.Refused(
        near.isEmpty() ? "is not there" : "is not there; " + near,
        "Correct the path, or add the file.");
  }

  private static BasicFileAttributes attributes(Path file) throws IOException {
    return Files.readAttributes(file, BasicFileAttributes.class, LinkOption.NOFOLLOW_LINKS);
  }

  /** What went wrong, in a few words without a path. */
  static String reason(IOException failed) {
    if (failed instanceof java.nio.file.AccessDeniedException) {
      return "access is denied";
    }
    if (failed instanceof NoSuchFileException) {
      return "it is not there";
    }
    if (failed instanceof FileSystemException system && system.getReason() != null) {
      return system.getReason();
    }
    String message = failed.getMessage();
    return message == null ? failed.getClass().getSimpleName() : message;
  }
}
