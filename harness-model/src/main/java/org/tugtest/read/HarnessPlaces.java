package org.tugtest.read;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.tugtest.text.Place;
import org.tugtest.text.Places;

/** The places of one root: the indexes of its files, asked in the order of reading. */
final class HarnessPlaces implements Places {
  private final String root;
  private final List<FileIndex> files;

  HarnessPlaces(String root, List<FileIndex> files) {
    this.root = root;
    this.files = List.copyOf(files);
  }

  @Override
  public Place of(String thing, String... names) {
    int slash = thing.indexOf('/');
    String section = slash < 0 ? thing : thing.substring(0, slash);
    String id = slash < 0 ? "" : thing.substring(slash + 1);
    if (section.equals("files")) {
      return file(id).top();
    }
    if (section.equals("looms")) {
      return loom(id, names);
    }
    if (slash < 0) {
      return section.equals("harness") ? best(names) : best(path(names, section));
    }
    if (section.equals("nodes") || section.equals("segments")) {
      return entry(new String[] {"layout", section}, id, names);
    }
    if (section.equals("parts")) {
      int second = id.indexOf('/');
      return second < 0
          ? best(path(names, section, id))
          : entry(new String[] {section, id.substring(0, second)}, id.substring(second + 1), names);
    }
    return entry(new String[] {section}, id, names);
  }

  private FileIndex file(String path) {
    for (FileIndex file : files) {
      if (file.source().path().equals(path)) {
        return file;
      }
    }
    return new FileIndex(org.tugtest.text.SourceText.of(files.isEmpty() ? root : path, ""));
  }

  private Place loom(String id, String... names) {
    List<FileIndex> its = new ArrayList<>();
    for (FileIndex file : files) {
      if (file.says(id, "loom", "id")) {
        its.add(file);
      }
    }
    return new HarnessPlaces(root, its)
        .best(names.length == 0 ? path(names, "loom", "id") : path(names, "loom"));
  }

  private Place entry(String[] section, String id, String... names) {
    String[] exact = path(names, concat(section, id));
    Place itself = best(section.length + 1, exact);
    if (itself != null) {
      return itself;
    }
    int colon = id.indexOf(':');
    int cut = colon >= 0 ? colon : id.indexOf('.');
    if (cut >= 0) {
      String owner = id.substring(0, cut);
      String member = id.substring(cut + 1);
      String[] maps =
          colon >= 0 ? new String[] {"cavities", "pins"} : new String[] {"elements", "ports"};
      for (String map : maps) {
        String[] inner = path(names, concat(section, owner, map, member));
        Place place = best(section.length + 3, inner);
        if (place != null) {
          return place;
        }
      }
      Place around = best(section.length + 1, concat(section, owner));
      if (around != null) {
        return around;
      }
    }
    return best(concat(section));
  }

  private Place best(String... path) {
    Place place = best(0, path);
    return place == null ? Place.point(root, 1, 1, "") : place;
  }

  /** The place in the file where most of the path is written; null under {@code least} names. */
  private @org.jspecify.annotations.Nullable Place best(int least, String... path) {
    FileIndex.Hit best = null;
    for (FileIndex file : files) {
      FileIndex.Hit hit = file.find(path.length <= least, path);
      if (hit.found() >= least && (best == null || hit.found() > best.found())) {
        best = hit;
      }
    }
    return best == null ? null : best.place();
  }

  private static String[] path(String[] names, String... before) {
    return concat(before, names);
  }

  private static String[] concat(String[] first, String... second) {
    String[] all = Arrays.copyOf(first, first.length + second.length);
    System.arraycopy(second, 0, all, first.length, second.length);
    return all;
  }
}
