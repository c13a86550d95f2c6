package org.tugtest.goal;

import java.util.List;
import org.apache.maven.plugin.MojoExecutionException;
import org.apache.maven.plugin.logging.Log;
import org.tugtest.files.DiskFiles;
import org.tugtest.read.HarnessReader;
import org.tugtest.read.ReadHarness;
import org.tugtest.read.ReadLimits;

/**
 * The roots of a folder, read.
 *
 * @param read each root with the files it uses
 */
record Roots(DiskFiles files, List<ReadHarness> read) {

  /** Reads all roots; one at the least. */
  static Roots of(Surroundings around, Workplace place, Log log) throws MojoExecutionException {
    DiskFiles files = place.files();
    files.remarks().forEach(log::warn);
    HarnessReader reader = new HarnessReader(files, ReadLimits.STANDARD);
    List<String> roots = reader.roots();
    if (roots.isEmpty()) {
      throw new MojoExecutionException(place.nothingFound(around));
    }
    return new Roots(files, roots.stream().map(reader::read).toList());
  }
}
