package org.tugtest.fleet;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.tugtest.files.HarnessFiles;
import org.tugtest.model.AnnouncedChange;
import org.tugtest.read.ChangesReader;
import org.tugtest.read.ReadFile;
import org.tugtest.read.ReadLimits;
import org.tugtest.read.SourceFiles;
import org.tugtest.text.Problem;

/**
 * All that the folder {@code changes/} announces, whichever roots are chosen.
 *
 * @param problems what is wrong with its files
 */
public record AnnouncedChanges(List<AnnouncedChange> changes, List<Problem> problems) {
  public AnnouncedChanges {
    changes = List.copyOf(changes);
    problems = List.copyOf(problems);
  }

  /** Reads them, in the order of the files. */
  public static AnnouncedChanges of(HarnessFiles files, ReadLimits limits) {
    ChangesReader reader = new ChangesReader(new All(files), limits);
    List<AnnouncedChange> changes = new ArrayList<>();
    List<Problem> problems = new ArrayList<>();
    for (String path : reader.paths()) {
      ReadFile<Map<String, AnnouncedChange>> file = reader.read(path);
      changes.addAll(file.value().values());
      problems.addAll(file.problems());
    }
    return new AnnouncedChanges(changes, problems);
  }

  private record All(HarnessFiles files) implements SourceFiles {
    @Override
    public List<String> paths() {
      return files.all();
    }

    @Override
    public Content open(String path) {
      return files.open(path);
    }
  }
}
