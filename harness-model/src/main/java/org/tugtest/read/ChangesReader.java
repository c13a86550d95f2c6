package org.tugtest.read;

import static org.tugtest.read.Fields.map;
import static org.tugtest.read.Fields.refs;
import static org.tugtest.read.Fields.text;

import java.util.Collections;
import java.util.List;
import java.util.Map;
import org.tugtest.model.AnnouncedChange;
import org.tugtest.schema.PublishedSchema;
import org.tugtest.text.NaturalOrder;

/** Reads announced circuit changes ({@code changes/NAME.json}). Safe for several threads. */
public final class ChangesReader {
  private static final String FOLDER = "changes/";

  private final SourceFiles files;
  private final FileParser parser;

  /** A reader of these files within these limits. */
  public ChangesReader(SourceFiles files, ReadLimits limits) {
    this.files = files;
    this.parser = new FileParser(limits, PublishedSchema.CHANGES);
  }

  /** The paths of all files of announced changes, sorted. */
  public List<String> paths() {
    return files.paths().stream()
        .filter(path -> path.endsWith(".json") && isChanges(path))
        .sorted(NaturalOrder.NATURAL)
        .toList();
  }

  static boolean isChanges(String path) {
    return path.startsWith(FOLDER);
  }

  /** Reads one file. Whatever is wrong is a problem of the result; nothing is thrown. */
  public ReadFile<Map<String, AnnouncedChange>> read(String path) {
    ParsedFile parsed = parser.parse(path, files.open(path));
    Map<String, AnnouncedChange> changes =
        map(
            parsed.tree(),
            "changes",
            (id, fields) ->
                new AnnouncedChange(
                    id, refs(fields, "nets"), text(fields, "reason"), text(fields, "by")));
    return parsed.as(Collections.unmodifiableMap(changes));
  }
}
