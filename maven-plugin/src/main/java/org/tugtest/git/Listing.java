package org.tugtest.git;

import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.eclipse.jgit.lib.FileMode;
import org.eclipse.jgit.lib.ObjectId;
import org.tugtest.files.Folders;
import org.tugtest.text.NaturalOrder;

/**
 * The harness files of a commit or of the index.
 *
 * @param entries by path from the harness folder, sorted
 * @param remarks what was passed over and a person may wonder about
 */
record Listing(Map<String, Entry> entries, List<String> remarks) {
  Listing {
    entries = Collections.unmodifiableMap(new TreeMap<>(entries));
    remarks = List.copyOf(remarks);
  }

  /** Gathers a listing from paths of the work tree. */
  static final class Gathered {
    private final Folders folders;
    private final Path top;
    private final Map<String, Entry> entries = new TreeMap<>(NaturalOrder.NATURAL);
    private final Set<String> remarks = new TreeSet<>(NaturalOrder.NATURAL);

    Gathered(Folders folders, Path top) {
      this.folders = folders;
      this.top = top;
    }

    /** The folders to look into, from the top of the work tree; empty when it is all of it. */
    List<String> below() {
      Set<String> below = new LinkedHashSet<>();
      for (Path folder : folders.all()) {
        if (folder.startsWith(top)) {
          below.add(Folders.slashed(top.relativize(folder)));
        }
      }
      return below.contains("") ? List.of() : new ArrayList<>(below);
    }

    /** Whether a folder to look into lies in the work tree. */
    boolean any() {
      return folders.all().stream().anyMatch(folder -> folder.startsWith(top));
    }

    /** Whether the file of that path in the work tree could be part of a harness. */
    boolean takes(String path) {
      try {
        return folders.takes(top.resolve(path));
      } catch (InvalidPathException notOnThisSystem) {
        return false;
      }
    }

    /** Adds what there is at a path; what is no file and no link is left out. */
    void add(String path, FileMode mode, ObjectId id) {
      if (mode.equals(FileMode.REGULAR_FILE) || mode.equals(FileMode.EXECUTABLE_FILE)) {
        put(path, new Entry.Blob(id));
      } else if (mode.equals(FileMode.SYMLINK)) {
        put(path, new Entry.Link());
      }
    }

    void put(String path, Entry entry) {
      entries.put(folders.pathOf(top.resolve(path)), entry);
    }

    void remark(String sentence) {
      remarks.add(sentence);
    }

    Listing done() {
      return new Listing(entries, List.copyOf(remarks));
    }
  }
}
